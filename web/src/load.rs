//! From the store into memory. What is damaged is set aside, and everything else is there.

use std::collections::BTreeSet;

use asfound_core::record::chunk::{self, ChunkError};
use asfound_core::record::{Entry, EntryId, Hash, Id};

use crate::contents;
use crate::store::{Failure, Quarantined, Store, TailRow, Write};

/// What was found of a job.
#[derive(Debug, Default)]
pub struct Loaded {
    /// Its entries.
    pub entries: Vec<Entry>,
    /// The chunks they came from.
    pub chunks: BTreeSet<Hash>,
    /// Names of chunks and entries that are damaged, this time or before.
    pub damaged: BTreeSet<String>,
    /// Chunks that a newer version wrote; they are left as they are.
    pub newer: BTreeSet<String>,
}

/// All of a job.
///
/// # Errors
/// When the store does not answer. Damage is no error.
pub async fn all<S: Store>(store: &S, job: Id) -> Result<Loaded, Failure> {
    let mut loaded = Loaded::default();
    loaded.damaged.extend(store.quarantined(job).await?.into_iter().map(|damaged| damaged.name));
    // The tail first: what is sealed in between is then in the chunks as well, and in neither never.
    let rows = store.tail(job).await?;
    unknown_chunks(store, job, &mut loaded).await?;
    entries(store, job, rows, &mut loaded).await;
    make_good(store, job, &mut loaded).await?;
    Ok(loaded)
}

/// The chunks that are not among those known.
///
/// # Errors
/// When the store does not answer.
pub async fn unknown_chunks<S: Store>(store: &S, job: Id, loaded: &mut Loaded) -> Result<(), Failure> {
    for name in store.chunk_names(job).await? {
        if loaded.chunks.contains(&name) {
            continue;
        }
        // Another window may have set it aside in between.
        let Some(bytes) = store.chunk(job, name).await? else { continue };
        match chunk::open(name, &bytes) {
            Ok(entries) => {
                loaded.entries.extend(entries);
                loaded.chunks.insert(name);
            }
            Err(ChunkError::NewerForm(_)) => drop(loaded.newer.insert(name.to_string())),
            Err(_) => set_aside(store, job, Quarantined { name: name.to_string(), bytes }, loaded).await,
        }
    }
    Ok(())
}

/// The entries of tail rows.
pub async fn entries<S: Store>(store: &S, job: Id, rows: Vec<TailRow>, loaded: &mut Loaded) {
    for row in rows {
        match sound(&row) {
            Some(entry) => loaded.entries.push(entry),
            None => set_aside(store, job, Quarantined { name: row.entry.to_string(), bytes: row.bytes }, loaded).await,
        }
    }
}

/// The entry of a row, if the row is as it was written.
pub(crate) fn sound(row: &TailRow) -> Option<Entry> {
    let entry = Entry::from_bytes(&row.bytes).ok()?;
    (Hash::of(&row.bytes) == row.hash && entry.id == row.entry).then_some(entry)
}

/// What was damaged and has come back otherwise is damaged no more.
async fn make_good<S: Store>(store: &S, job: Id, loaded: &mut Loaded) -> Result<(), Failure> {
    if loaded.damaged.is_empty() {
        return Ok(());
    }
    let known: BTreeSet<EntryId> = loaded.entries.iter().map(|entry| entry.id).collect();
    for name in std::mem::take(&mut loaded.damaged) {
        if contents::is_made_good(store, job, &name, &known).await? {
            // As when it was set aside: what cannot be written now is found again.
            let _ = store.commit(vec![Write::Healed(job, name)]).await;
        } else {
            loaded.damaged.insert(name);
        }
    }
    Ok(())
}

async fn set_aside<S: Store>(store: &S, job: Id, damaged: Quarantined, loaded: &mut Loaded) {
    loaded.damaged.insert(damaged.name.clone());
    // Where even that cannot be written it stays where it is, and is found again.
    let _ = store.commit(vec![Write::Quarantine(job, damaged)]).await;
}
