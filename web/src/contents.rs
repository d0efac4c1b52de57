//! What a chunk holds, noted when it is sealed: when its bytes are damaged it is still known which entries make it good,
//! in whatever other chunk they come back.

use std::collections::BTreeSet;

use asfound_core::record::{Entry, EntryId, Hash, Id};

use crate::store::{Failure, Store, Write};

/// First and last of entries of one replica that follow on.
type Stretch = (EntryId, EntryId);

fn key(job: Id, name: &str) -> String {
    format!("holds:{job}:{name}")
}

/// The note that goes with a chunk.
pub(crate) fn note(job: Id, name: Hash, entries: &[Entry]) -> Write {
    let ids: BTreeSet<EntryId> = entries.iter().map(|entry| entry.id).collect();
    let mut stretches: Vec<Stretch> = Vec::new();
    for id in ids {
        match stretches.last_mut() {
            Some((_, last)) if last.replica == id.replica && last.seq + 1 == id.seq => *last = id,
            _ => stretches.push((id, id)),
        }
    }
    let words: Vec<String> = stretches.iter().map(|(first, last)| format!("{first} {last}")).collect();
    Write::Meta(key(job, &name.to_string()), words.join("\n"))
}

/// Whether all that a damaged chunk or entry held is known by now. False where nobody noted what that was.
pub(crate) async fn is_made_good<S: Store>(
    store: &S,
    job: Id,
    name: &str,
    known: &BTreeSet<EntryId>,
) -> Result<bool, Failure> {
    if let Ok(entry) = name.parse::<EntryId>() {
        return Ok(known.contains(&entry));
    }
    let Some(text) = store.meta(&key(job, name)).await? else { return Ok(false) };
    let stretches: Option<Vec<Stretch>> = text.lines().map(read).collect();
    let is_known = |(first, last): &Stretch| known.range(first..=last).count() as u64 == last.seq - first.seq + 1;
    Ok(stretches.is_some_and(|stretches| !stretches.is_empty() && stretches.iter().all(is_known)))
}

fn read(line: &str) -> Option<Stretch> {
    let (first, last) = line.split_once(' ')?;
    let (first, last): Stretch = (first.parse().ok()?, last.parse().ok()?);
    (first.replica == last.replica && first.seq <= last.seq).then_some((first, last))
}
