//! What must hold in a worker: the store over the browser's database, and every fault told for what it is.
#![cfg(target_arch = "wasm32")]

mod faults;
mod suite;

use asfound_core::record::{Entry, Hash, Id, chunk};
use asfound_web::recorder::Recorder;
use asfound_web::store::{Blob, Failure, Indexed, STORES, Store, TroubleCode, VERSION, Write, last_durability};
use asfound_web::{chance, clock};
use faults::{create_job, create_part};
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_dedicated_worker);

async fn fresh(name: &str) -> (String, Indexed) {
    let name = format!("{name}-{}", chance::id());
    let store = Indexed::open(&name).await.unwrap();
    (name, store)
}

async fn recorder(name: &str) -> Recorder<Indexed> {
    Recorder::over(Indexed::open(name).await.unwrap(), chance::id(), chance::replica()).await.unwrap()
}

/// A recorder with an open job.
async fn working(name: &str) -> (String, Recorder<Indexed>, Id) {
    let name = format!("{name}-{}", chance::id());
    let recorder = recorder(&name).await;
    let job = chance::id();
    recorder.begin(job);
    let answer = recorder.command(&create_job(job), vec![], clock::now()).await;
    assert!(answer.ok, "{answer:?}");
    (name, recorder, job)
}

fn photo() -> (Hash, Blob) {
    let blob =
        Blob { media_type: "image/jpeg".to_owned(), bytes: (0..5_000_000_u32).map(|at| (at % 253) as u8).collect() };
    (Hash::of(&blob.bytes), blob)
}

#[wasm_bindgen_test]
async fn the_database_passes_the_suite() {
    let (_, store) = fresh("suite").await;
    suite::passes(&store, 7).await;
}

#[wasm_bindgen_test]
fn the_list_of_stores_only_grows() {
    // Taking a name out of this list deletes what people have stored. Add to its end, and raise the version.
    let first = ["meta", "tail", "chunk", "photo", "thumb", "task", "quarantine"];
    assert_eq!(STORES[..first.len()], first);
    assert_eq!(VERSION, 1);
}

#[wasm_bindgen_test]
async fn what_is_written_is_written_strictly() {
    let (_, store) = fresh("strict").await;
    store.commit(vec![Write::Meta("a".to_owned(), "b".to_owned())]).await.unwrap();
    if faults::durability_is_told() {
        assert_eq!(last_durability().as_deref(), Some("strict"));
    }
}

#[wasm_bindgen_test]
async fn what_was_answered_is_there_after_a_new_start() {
    let (name, first, job) = working("again").await;
    let (hash, blob) = photo();
    let sent = create_part(chance::id(), Some(hash));
    let answer = first.command(&sent, vec![(hash, blob.clone())], clock::now()).await;
    assert!(answer.ok, "{answer:?}");
    drop(first);

    let second = recorder(&name).await;
    assert!(second.open(job).await.ok);
    assert_eq!(faults::parts(&second), 1);
    assert_eq!(second.store().blob(hash).await.unwrap(), Some(blob));
    assert_eq!(second.jobs().await.unwrap().len(), 1);
}

#[wasm_bindgen_test]
async fn a_command_sent_again_after_the_worker_ended_makes_one_part() {
    let (name, first, job) = working("resend").await;
    let sent = create_part(chance::id(), None);
    // Committed, but the worker ends before anybody hears of it.
    let lost = first.command(&sent, vec![], clock::now()).await;
    drop(first);

    let second = recorder(&name).await;
    assert!(second.open(job).await.ok);
    let answer = second.command(&sent, vec![], clock::now()).await;
    assert!(answer.ok, "{answer:?}");
    assert_eq!(answer.entry, lost.entry);
    assert_eq!(faults::parts(&second), 1);
}

#[wasm_bindgen_test]
async fn a_transaction_taken_back_after_its_put_is_no_answer() {
    let (name, recorder, job) = working("abort").await;
    let sent = create_part(chance::id(), None);
    faults::abort_after_put(None);
    let answer = recorder.command(&sent, vec![], clock::now()).await;
    told(&answer, TroubleCode::TransactionAborted);
    assert_eq!(faults::parts(&recorder), 0);
    let again = recorder.command(&sent, vec![], clock::now()).await;
    assert!(again.ok, "{again:?}");
    assert_eq!(faults::parts_stored(&name, job).await, 1);
}

#[wasm_bindgen_test]
async fn no_room_is_told_whether_it_comes_with_the_put_or_with_the_end() {
    let (_, recorder, _) = working("quota").await;
    let sent = create_part(chance::id(), None);
    let restore = faults::refuse_puts("QuotaExceededError");
    let answer = recorder.command(&sent, vec![], clock::now()).await;
    restore.call0(&wasm_bindgen::JsValue::NULL).unwrap();
    told(&answer, TroubleCode::QuotaExceeded);

    faults::abort_after_put(Some("QuotaExceededError"));
    let answer = recorder.command(&sent, vec![], clock::now()).await;
    told(&answer, TroubleCode::QuotaExceeded);
    assert!(recorder.command(&sent, vec![], clock::now()).await.ok);
    assert_eq!(faults::parts(&recorder), 1);
}

#[wasm_bindgen_test]
async fn a_closed_connection_is_opened_again() {
    let (_, recorder, _) = working("closed").await;
    faults::lose_connections(1);
    let answer = recorder.command(&create_part(chance::id(), None), vec![], clock::now()).await;
    assert!(answer.ok, "{answer:?}");
    faults::lose_connections(2);
    let answer = recorder.command(&create_part(chance::id(), None), vec![], clock::now()).await;
    told(&answer, TroubleCode::ConnectionLost);
    assert_eq!(faults::parts(&recorder), 1);
}

#[wasm_bindgen_test]
async fn a_newer_database_is_left_alone() {
    let (name, recorder, _) = working("newer").await;
    faults::raise_version(&name, VERSION + 1).await.unwrap();
    let failure = Indexed::open(&name).await.unwrap_err();
    assert_eq!(failure.code, TroubleCode::NewerDatabase);
    // The window that was open meanwhile was closed by the newer one, and says so.
    let answer = recorder.command(&create_part(chance::id(), None), vec![], clock::now()).await;
    told(&answer, TroubleCode::ClosedElsewhere);
}

#[wasm_bindgen_test]
async fn a_damaged_chunk_is_told_and_set_aside_until_a_sound_one_comes() {
    let (name, first, job) = working("damage").await;
    for _ in 0..3 {
        assert!(first.command(&create_part(chance::id(), None), vec![], clock::now()).await.ok);
    }
    assert!(first.seal(1).await.unwrap());
    let sound: Vec<chunk::Sealed> = first.chunks();
    assert!(first.command(&create_part(chance::id(), None), vec![], clock::now()).await.ok);
    faults::flip_bit(&name, "chunk").await.unwrap();

    let second = recorder(&name).await;
    let answer = second.open(job).await;
    assert_eq!(answer.trouble.map(|trouble| trouble.code), Some(TroubleCode::ChunkDamaged));
    assert_eq!(faults::parts(&second), 1, "what is sound is there");
    for chunk in sound {
        second.bring_in(job, chunk.name, chunk.bytes).await.unwrap();
    }
    assert_eq!(faults::parts(&second), 4);
    let third = recorder(&name).await;
    assert_eq!(third.open(job).await.trouble, None);
}

#[wasm_bindgen_test]
async fn a_damaged_entry_is_told_and_set_aside_until_a_chunk_brings_it() {
    let (name, first, job) = working("damaged-entry").await;
    assert!(first.command(&create_part(chance::id(), None), vec![], clock::now()).await.ok);
    let sound: Vec<chunk::Sealed> = first.chunks();
    faults::flip_bit(&name, "tail").await.unwrap();

    let second = recorder(&name).await;
    assert_eq!(second.open(job).await.trouble.map(|trouble| trouble.code), Some(TroubleCode::ChunkDamaged));
    for chunk in sound {
        second.bring_in(job, chunk.name, chunk.bytes).await.unwrap();
    }
    let third = recorder(&name).await;
    assert_eq!(third.open(job).await.trouble, None);
    assert_eq!(faults::parts(&third), 1);
}

#[wasm_bindgen_test]
async fn one_window_hears_what_another_stored() {
    let (name, first, job) = working("windows").await;
    let second = recorder(&name).await;
    assert!(second.open(job).await.ok);
    for _ in 0..3 {
        assert!(first.command(&create_part(chance::id(), None), vec![], clock::now()).await.ok);
    }
    let last = first.chunks().iter().map(|chunk| entries(chunk).len()).sum::<usize>();
    assert!(first.seal(1).await.unwrap(), "even when it is sealed before the other one looks");
    let touched = second.hear(job, first.replica(), last as u64).await.unwrap();
    assert!(touched.len() >= 3);
    assert_eq!(faults::parts(&second), 3);
}

fn entries(sealed: &chunk::Sealed) -> Vec<Entry> {
    chunk::open(sealed.name, &sealed.bytes).unwrap()
}

fn told(answer: &asfound_web::answer::Answer, code: TroubleCode) {
    assert!(!answer.ok);
    let trouble: Option<&Failure> = answer.trouble.as_ref();
    assert_eq!(trouble.map(|trouble| trouble.code), Some(code), "{trouble:?}");
}
