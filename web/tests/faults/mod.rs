//! Faults put between the store and the browser, and a little job to suffer them.

use asfound_core::job::{Change, Command, PartsQuery, Query, Sent, View};
use asfound_core::record::{Hash, Id, Kind};
use asfound_web::chance;
use asfound_web::recorder::Recorder;
use asfound_web::store::{Indexed, Store};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen(module = "/tests/faults.js")]
extern "C" {
    #[wasm_bindgen(js_name = abortAfterPut)]
    pub(crate) fn abort_after_put(name: Option<&str>);
    #[wasm_bindgen(js_name = refusePuts)]
    pub(crate) fn refuse_puts(name: &str) -> js_sys::Function;
    #[wasm_bindgen(js_name = loseConnections)]
    pub(crate) fn lose_connections(times: u32);
    #[wasm_bindgen(js_name = raiseVersion, catch)]
    pub(crate) async fn raise_version(name: &str, version: u32) -> Result<JsValue, JsValue>;
    #[wasm_bindgen(js_name = flipBit, catch)]
    pub(crate) async fn flip_bit(name: &str, store: &str) -> Result<JsValue, JsValue>;
    #[wasm_bindgen(js_name = durabilityIsTold)]
    pub(crate) fn durability_is_told() -> bool;
}

pub(crate) fn create_job(id: Id) -> Sent {
    let changes = vec![Change::Name("A job".to_owned())];
    Sent { id: chance::id(), command: Command::Create { id, kind: Kind::Job, changes } }
}

pub(crate) fn create_part(id: Id, photo: Option<Hash>) -> Sent {
    let part = Command::Create { id, kind: Kind::Part, changes: vec![] };
    let photo = photo.map(|hash| Command::Create {
        id: chance::id(),
        kind: Kind::Photo,
        changes: vec![Change::Of(id), Change::Blob(hash)],
    });
    let commands = std::iter::once(part).chain(photo).collect();
    Sent { id: chance::id(), command: Command::All { commands } }
}

pub(crate) fn parts<S: Store>(recorder: &Recorder<S>) -> usize {
    match recorder.ask(&Query::Parts(PartsQuery::default())) {
        View::Parts(parts) => parts.total,
        other => panic!("{other:?}"),
    }
}

/// As a new start finds them.
pub(crate) async fn parts_stored(name: &str, job: Id) -> usize {
    let store = Indexed::open(name).await.unwrap();
    let recorder = Recorder::over(store, chance::id(), chance::replica()).await.unwrap();
    assert!(recorder.open(job).await.ok);
    parts(&recorder)
}
