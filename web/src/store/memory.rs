use std::cell::RefCell;
use std::collections::BTreeMap;

use asfound_core::record::{EntryId, Hash, Id, Replica};

use super::{Blob, Derived, Failure, Quarantined, Store, TailRow, Task, TroubleCode, Write};

/// A store that forgets: for tests, and to say what the contract means.
#[derive(Debug, Default)]
pub struct Memory {
    kept: RefCell<Kept>,
}

#[derive(Debug, Default, Clone)]
struct Kept {
    tail: BTreeMap<(Id, EntryId), TailRow>,
    chunks: BTreeMap<(Id, Hash), Vec<u8>>,
    blobs: BTreeMap<Hash, Blob>,
    derived: BTreeMap<(Hash, Derived), Vec<u8>>,
    tasks: BTreeMap<Hash, Task>,
    meta: BTreeMap<String, String>,
    quarantine: BTreeMap<(Id, String), Vec<u8>>,
}

impl Memory {
    /// Everything is gone, as when a database is taken away under an open window.
    pub fn forget(&self) {
        self.kept.take();
    }
}

impl Kept {
    fn write(&mut self, write: Write) -> Result<(), Failure> {
        match write {
            Write::Tail(job, row) => first(self.tail.insert((job, row.entry), row).is_none())?,
            Write::Sealed(job, entry) => drop(self.tail.remove(&(job, entry))),
            Write::Chunk(job, name, bytes) => drop(self.chunks.insert((job, name), bytes)),
            Write::Blob(of, blob) => drop(self.blobs.insert(of, blob)),
            Write::Derived(of, derived, bytes) => drop(self.derived.insert((of, derived), bytes)),
            Write::Task(task) => drop(self.tasks.insert(task.of, task)),
            Write::TaskDone(of) => drop(self.tasks.remove(&of)),
            Write::Meta(key, value) => drop(self.meta.insert(key, value)),
            Write::FirstMeta(key, value) => first(self.meta.insert(key, value).is_none())?,
            Write::Quarantine(job, damaged) => self.set_aside(job, damaged),
            Write::Healed(job, name) => drop(self.quarantine.remove(&(job, name))),
        }
        Ok(())
    }

    fn set_aside(&mut self, job: Id, damaged: Quarantined) {
        if let Ok(name) = damaged.name.parse() {
            self.chunks.remove(&(job, name));
        }
        if let Ok(entry) = damaged.name.parse() {
            self.tail.remove(&(job, entry));
        }
        self.quarantine.insert((job, damaged.name), damaged.bytes);
    }
}

fn first(is_first: bool) -> Result<(), Failure> {
    let there = || Failure::new(TroubleCode::TransactionAborted, "ConstraintError: the key is there");
    is_first.then_some(()).ok_or_else(there)
}

impl Store for Memory {
    async fn commit(&self, writes: Vec<Write>) -> Result<(), Failure> {
        let mut next = self.kept.borrow().clone();
        writes.into_iter().try_for_each(|write| next.write(write))?;
        *self.kept.borrow_mut() = next;
        Ok(())
    }

    async fn meta(&self, key: &str) -> Result<Option<String>, Failure> {
        Ok(self.kept.borrow().meta.get(key).cloned())
    }

    async fn metas(&self, prefix: &str) -> Result<Vec<(String, String)>, Failure> {
        let kept = self.kept.borrow();
        let begin_so = kept.meta.iter().filter(|(key, _)| key.starts_with(prefix));
        Ok(begin_so.map(|(key, value)| (key.clone(), value.clone())).collect())
    }

    async fn jobs(&self) -> Result<Vec<Id>, Failure> {
        let kept = self.kept.borrow();
        let mut jobs: Vec<Id> = kept.tail.keys().map(|key| key.0).chain(kept.chunks.keys().map(|key| key.0)).collect();
        jobs.sort_unstable();
        jobs.dedup();
        Ok(jobs)
    }

    async fn tail(&self, job: Id) -> Result<Vec<TailRow>, Failure> {
        let kept = self.kept.borrow();
        Ok(kept.tail.iter().filter(|(key, _)| key.0 == job).map(|(_, row)| row.clone()).collect())
    }

    async fn tail_of(&self, job: Id, replica: Replica, after: u64) -> Result<Vec<TailRow>, Failure> {
        let rows = self.tail(job).await?;
        Ok(rows.into_iter().filter(|row| row.entry.replica == replica && row.entry.seq > after).collect())
    }

    async fn chunk_names(&self, job: Id) -> Result<Vec<Hash>, Failure> {
        Ok(self.kept.borrow().chunks.keys().filter(|key| key.0 == job).map(|key| key.1).collect())
    }

    async fn chunk(&self, job: Id, name: Hash) -> Result<Option<Vec<u8>>, Failure> {
        Ok(self.kept.borrow().chunks.get(&(job, name)).cloned())
    }

    async fn blob(&self, of: Hash) -> Result<Option<Blob>, Failure> {
        Ok(self.kept.borrow().blobs.get(&of).cloned())
    }

    async fn derived(&self, of: Hash, derived: Derived) -> Result<Option<Vec<u8>>, Failure> {
        Ok(self.kept.borrow().derived.get(&(of, derived)).cloned())
    }

    async fn tasks(&self) -> Result<Vec<Task>, Failure> {
        Ok(self.kept.borrow().tasks.values().cloned().collect())
    }

    async fn quarantined(&self, job: Id) -> Result<Vec<Quarantined>, Failure> {
        let kept = self.kept.borrow();
        let of_job = kept.quarantine.iter().filter(|(key, _)| key.0 == job);
        Ok(of_job.map(|((_, name), bytes)| Quarantined { name: name.clone(), bytes: bytes.clone() }).collect())
    }

    async fn probe(&self) -> Result<(), Failure> {
        Ok(())
    }
}
