//! From the tail into a chunk: one transaction. Half of it, or twice, is harmless: an entry that is in both is one entry.

use asfound_core::record::{Hash, Id, chunk};

use crate::contents;
use crate::load::sound;
use crate::store::{Failure, Store, Write};

/// Seals the oldest entries of a tail that has grown to `least`. Answers the new chunk's name.
///
/// # Errors
/// When the store does not take it; everything is as before then.
pub async fn seal<S: Store>(store: &S, job: Id, least: usize) -> Result<Option<Hash>, Failure> {
    let rows = store.tail(job).await?;
    if rows.len() < least.max(1) {
        return Ok(None);
    }
    // Damaged rows stay where they are: whoever opens the job next sets them aside.
    let mut entries: Vec<_> = rows.iter().filter_map(sound).collect();
    entries.sort_by_key(|entry| (entry.at, entry.id));
    entries.truncate(chunk::MOST_ENTRIES);
    if entries.is_empty() {
        return Ok(None);
    }
    let sealed = chunk::seal(&entries);
    let mut writes = vec![contents::note(job, sealed.name, &entries), Write::Chunk(job, sealed.name, sealed.bytes)];
    writes.extend(entries.iter().map(|entry| Write::Sealed(job, entry.id)));
    store.commit(writes).await?;
    Ok(Some(sealed.name))
}
