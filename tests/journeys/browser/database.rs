//! What lies in the database, read past the app: with nothing but the browser.

use std::collections::BTreeMap;

use anyhow::Context;
use asfound_core::record::Hash;
use serde_json::{Value, json};

use crate::browser::Browser;

/// Keys of every store; the bytes of photos as their BLAKE3 hash.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stored {
    /// Keys by store, as JSON.
    pub keys: BTreeMap<String, Vec<String>>,
    /// The name of each photo or sound, with the hash of the bytes that lie under it.
    pub photos: BTreeMap<String, String>,
}

const READ: &str = "
    const opened = await new Promise((done, failed) => {
        const request = indexedDB.open('asfound');
        request.onupgradeneeded = () => request.transaction.abort();
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
    });
    const all = (request) => new Promise((done, failed) => { request.onsuccess = () => done(request.result); request.onerror = () => failed(request.error); });
    const keys = {};
    for (const name of opened.objectStoreNames) {
        keys[name] = (await all(opened.transaction(name).objectStore(name).getAllKeys())).map((key) => JSON.stringify(key));
    }
    const photos = {};
    const store = () => opened.transaction('photo').objectStore('photo');
    for (const text of given[0] ? keys.photo : []) {
        const [hash] = JSON.parse(text);
        const { bytes } = await all(store().get(JSON.parse(text)));
        photos[hash] = (photos[hash] ?? '') + Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('');
    }
    opened.close();
    return { keys, photos };";

impl Browser {
    /// Reads the database, with the photos' bytes.
    pub fn stored(&self) -> anyhow::Result<Stored> {
        self.read_database(true)
    }

    /// Reads only the keys.
    pub fn stored_keys(&self) -> anyhow::Result<Stored> {
        self.read_database(false)
    }

    /// Asks the core a question through the page: only where its address says `?faults`.
    pub fn view(&self, query: &Value) -> anyhow::Result<Value> {
        self.run_async_js("return await globalThis.desk.ask(given[0])", vec![query.clone()])
    }

    /// Turns a fault on purpose on or off: only where the address says `?faults`.
    pub fn fault(&self, name: &str, on: bool) -> anyhow::Result<()> {
        self.run_async_js("await globalThis.desk.fault(given[0], given[1])", vec![json!(name), json!(on)]).map(drop)
    }

    fn read_database(&self, bytes: bool) -> anyhow::Result<Stored> {
        let read = self.run_async_js(READ, vec![json!(bytes)]).context("reading the database")?;
        let keys = serde_json::from_value(read["keys"].clone())?;
        let bytes: BTreeMap<String, String> = serde_json::from_value(read["photos"].clone())?;
        let photos =
            bytes.into_iter().map(|(name, figures)| Ok((name, Hash::of(&from_figures(&figures)?).to_string())));
        Ok(Stored { keys, photos: photos.collect::<anyhow::Result<_>>()? })
    }
}

fn from_figures(figures: &str) -> anyhow::Result<Vec<u8>> {
    let pairs = figures.as_bytes().chunks(2);
    pairs.map(|pair| Ok(u8::from_str_radix(std::str::from_utf8(pair)?, 16)?)).collect()
}

impl Stored {
    /// How many keys a store has.
    pub fn count(&self, store: &str) -> usize {
        self.keys.get(store).map_or(0, Vec::len)
    }

    /// Whether every photo's bytes have the hash that is its name.
    pub fn is_sound(&self) -> bool {
        self.photos.iter().all(|(name, found)| name == found)
    }
}
