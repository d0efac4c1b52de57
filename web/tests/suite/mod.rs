//! What every store must do, whatever it is made of. Each check works on a job of its own, so that all can run on one
//! database and after one another.

use asfound_core::quantity::Millis;
use asfound_core::record::{Entry, EntryId, Hash, Id, Replica};
use asfound_web::load;
use asfound_web::seal::seal;
use asfound_web::store::{Blob, Derived, PIECE, Quarantined, Store, TailRow, Task, TroubleCode, Write};

/// All checks, one after the other. `salt` keeps the jobs of one run apart from those of another.
pub(crate) async fn passes<S: Store>(store: &S, salt: u8) {
    keeps_all_or_nothing(store, job(salt, 1)).await;
    tells_replicas_apart(store, job(salt, 2)).await;
    gives_photos_back(store, salt).await;
    keeps_values(store, salt).await;
    keeps_tasks(store, salt).await;
    sealing_changes_nothing(store, job(salt, 3)).await;
    half_a_sealing_is_harmless(store, job(salt, 4)).await;
    sets_damage_aside(store, job(salt, 5)).await;
    what_comes_back_otherwise_heals(store, job(salt, 6)).await;
    store.probe().await.unwrap();
}

fn job(salt: u8, number: u8) -> Id {
    let mut bytes = [salt; 16];
    bytes[0] = number;
    Id::from_bytes(bytes)
}

fn entry(replica: u8, seq: u64) -> Entry {
    Entry {
        id: EntryId { replica: Replica::from_bytes([replica; 8]), seq },
        at: Millis(1_000 + seq.cast_signed()),
        ops: vec![],
    }
}

fn tail(job: Id, entry: &Entry) -> Write {
    Write::Tail(job, TailRow::new(entry.id, entry.to_bytes()))
}

async fn loaded<S: Store>(store: &S, job: Id) -> Vec<Entry> {
    let mut entries = load::all(store, job).await.unwrap().entries;
    entries.sort();
    entries.dedup();
    entries
}

async fn keeps_all_or_nothing<S: Store>(store: &S, job: Id) {
    store.commit(vec![tail(job, &entry(1, 1))]).await.unwrap();
    // The second is there already: the first of this commit must not stay either.
    let failure = store.commit(vec![tail(job, &entry(1, 2)), tail(job, &entry(1, 1))]).await.unwrap_err();
    assert_eq!(failure.code, TroubleCode::TransactionAborted, "{failure:?}");
    assert_eq!(loaded(store, job).await, [entry(1, 1)]);
    assert!(store.jobs().await.unwrap().contains(&job));
}

async fn tells_replicas_apart<S: Store>(store: &S, job: Id) {
    let entries = [entry(1, 1), entry(1, 2), entry(1, 300), entry(2, 1)];
    store.commit(entries.iter().map(|entry| tail(job, entry)).collect()).await.unwrap();
    let of_one = store.tail_of(job, Replica::from_bytes([1; 8]), 1).await.unwrap();
    assert_eq!(of_one.iter().map(|row| row.entry.seq).collect::<Vec<_>>(), [2, 300]);
    assert_eq!(store.tail(job).await.unwrap().len(), 4);
}

async fn gives_photos_back<S: Store>(store: &S, salt: u8) {
    for length in [0, 1, PIECE, PIECE + 1, 2 * PIECE + 7] {
        let bytes: Vec<u8> = (0..length).map(|at| (at % 251) as u8 ^ salt).collect();
        let blob = Blob { media_type: "image/jpeg".to_owned(), bytes };
        let name = Hash::of(&blob.bytes);
        store.commit(vec![Write::Blob(name, blob.clone())]).await.unwrap();
        assert_eq!(store.blob(name).await.unwrap(), Some(blob));
    }
    assert_eq!(store.blob(Hash::of(b"never stored")).await.unwrap(), None);
}

async fn keeps_values<S: Store>(store: &S, salt: u8) {
    let key = |name: &str| format!("suite-{salt}:{name}");
    let write = |name: &str| Write::Meta(key(name), name.to_owned());
    store.commit(vec![write("a"), write("b")]).await.unwrap();
    assert_eq!(store.meta(&key("a")).await.unwrap().as_deref(), Some("a"));
    assert_eq!(store.metas(&key("")).await.unwrap().len(), 2);
    store.commit(vec![Write::FirstMeta(key("a"), "later".to_owned())]).await.unwrap_err();
    assert_eq!(store.meta(&key("a")).await.unwrap().as_deref(), Some("a"));
}

async fn keeps_tasks<S: Store>(store: &S, salt: u8) {
    let of = Hash::of(&[salt]);
    store.commit(vec![Write::Task(Task { of, begun: 2 })]).await.unwrap();
    assert!(store.tasks().await.unwrap().contains(&Task { of, begun: 2 }));
    store.commit(vec![Write::Derived(of, Derived::Thumb, vec![1, 2]), Write::TaskDone(of)]).await.unwrap();
    assert_eq!(store.derived(of, Derived::Thumb).await.unwrap(), Some(vec![1, 2]));
    assert_eq!(store.derived(of, Derived::View).await.unwrap(), None);
    assert!(store.tasks().await.unwrap().iter().all(|task| task.of != of));
}

async fn sealing_changes_nothing<S: Store>(store: &S, job: Id) {
    let entries: Vec<Entry> = (1..=1_010).map(|seq| entry(1, seq)).collect();
    store.commit(entries.iter().map(|entry| tail(job, entry)).collect()).await.unwrap();
    assert_eq!(seal(store, job, 2_000).await.unwrap(), None);
    let name = seal(store, job, 1_000).await.unwrap().unwrap();
    assert_eq!(store.chunk_names(job).await.unwrap(), [name]);
    assert_eq!(store.tail(job).await.unwrap().len(), 10);
    assert_eq!(loaded(store, job).await, entries);
}

/// Whatever is left after a sealing that ended between its two steps: the chunk and its rows, both.
async fn half_a_sealing_is_harmless<S: Store>(store: &S, job: Id) {
    let entries: Vec<Entry> = (1..=5).map(|seq| entry(1, seq)).collect();
    let rows: Vec<Write> = entries.iter().map(|entry| tail(job, entry)).collect();
    store.commit(rows.clone()).await.unwrap();
    let name = seal(store, job, 1).await.unwrap().unwrap();
    store.commit(rows).await.unwrap();
    assert_eq!(loaded(store, job).await, entries);
    assert_eq!(seal(store, job, 1).await.unwrap(), Some(name), "sealed again it is the same chunk");
    assert_eq!(loaded(store, job).await, entries);
    assert!(store.tail(job).await.unwrap().is_empty());
}

async fn sets_damage_aside<S: Store>(store: &S, job: Id) {
    let (sealed, kept) = (entry(1, 1), entry(1, 2));
    let chunk = asfound_core::record::chunk::seal(std::slice::from_ref(&sealed));
    let mut damaged = chunk.bytes.clone();
    *damaged.last_mut().unwrap() ^= 1;
    let mut row = TailRow::new(entry(1, 3).id, entry(1, 3).to_bytes());
    row.bytes[0] ^= 1;
    store.commit(vec![Write::Chunk(job, chunk.name, damaged), tail(job, &kept), Write::Tail(job, row)]).await.unwrap();

    let loaded = load::all(store, job).await.unwrap();
    assert_eq!(loaded.entries, std::slice::from_ref(&kept));
    assert_eq!(loaded.damaged.len(), 2);
    let aside = store.quarantined(job).await.unwrap();
    assert_eq!(aside.len(), 2);
    assert!(store.chunk_names(job).await.unwrap().is_empty());
    assert_eq!(store.tail(job).await.unwrap().len(), 1);
    assert_eq!(load::all(store, job).await.unwrap().damaged, loaded.damaged, "told again until it is healed");

    // A sound copy comes.
    let name = chunk.name.to_string();
    store.commit(vec![Write::Chunk(job, chunk.name, chunk.bytes), Write::Healed(job, name.clone())]).await.unwrap();
    let healed = load::all(store, job).await.unwrap();
    assert!(healed.entries.contains(&sealed));
    assert!(!healed.damaged.contains(&name));
    let rest: Vec<Quarantined> = store.quarantined(job).await.unwrap();
    assert_eq!(rest.len(), 1);
}

/// A job file seals the same entries into other chunks than the database did.
async fn what_comes_back_otherwise_heals<S: Store>(store: &S, job: Id) {
    let entries = [entry(1, 1), entry(1, 2), entry(2, 7)];
    store.commit(entries.iter().map(|entry| tail(job, entry)).collect()).await.unwrap();
    let name = seal(store, job, 1).await.unwrap().unwrap();
    let mut bytes = store.chunk(job, name).await.unwrap().unwrap();
    *bytes.last_mut().unwrap() ^= 1;
    store.commit(vec![Write::Chunk(job, name, bytes)]).await.unwrap();
    assert_eq!(load::all(store, job).await.unwrap().damaged.len(), 1);

    let others = entries.each_ref().map(|entry| asfound_core::record::chunk::seal(std::slice::from_ref(entry)));
    for (place, chunk) in others.into_iter().enumerate() {
        store.commit(vec![Write::Chunk(job, chunk.name, chunk.bytes)]).await.unwrap();
        let missing = usize::from(place < 2);
        assert_eq!(load::all(store, job).await.unwrap().damaged.len(), missing, "after {place}");
    }
    assert!(store.quarantined(job).await.unwrap().is_empty());
    assert_eq!(loaded(store, job).await, entries);
}
