//! The open job in memory over a store: store first, read back, then answer.

use std::cell::{Cell, RefCell};
use std::collections::BTreeSet;

use asfound_core::job::{Context, Job, Query, Sent, View, apply, ask};
use asfound_core::papers::job_file::blob_missing;
use asfound_core::problem::Problem;
use asfound_core::quantity::Millis;
use asfound_core::record::{Entry, EntryId, FieldName, Hash, Id, Replica, chunk};

use crate::answer::Answer;
use crate::line::JobLine;
use crate::load::{self, Loaded};
use crate::store::{Blob, Failure, Store, TailRow, Task, TroubleCode, Write};
use crate::{damage, seal};

/// One start of one window: a store, and at most one open job.
#[derive(Debug)]
pub struct Recorder<S> {
    store: S,
    device: Id,
    replica: Replica,
    open: RefCell<Option<Open>>,
    /// A commit failed in a way that leaves open whether it happened: the store is asked before anything is added.
    unsure: Cell<bool>,
}

#[derive(Debug)]
struct Open {
    id: Id,
    job: Job,
    loaded: Loaded,
}

/// Where the database knows whose it is.
const DEVICE: &str = "device";

/// A photo or sound that comes with a command.
pub type Beside = (Hash, Blob);

impl<S: Store> Recorder<S> {
    /// Over a store. `device` is used if the store does not know its device yet.
    ///
    /// # Errors
    /// When the store does not answer.
    pub async fn over(store: S, device: Id, replica: Replica) -> Result<Self, Failure> {
        let device = device_of(&store, device).await?;
        Ok(Self { store, device, replica, open: RefCell::new(None), unsure: Cell::new(false) })
    }

    /// The store beneath.
    pub const fn store(&self) -> &S {
        &self.store
    }

    /// Which phone or computer this is.
    pub const fn device(&self) -> Id {
        self.device
    }

    /// This start of this window.
    pub const fn replica(&self) -> Replica {
        self.replica
    }

    /// The open job.
    pub fn current(&self) -> Option<Id> {
        self.open.borrow().as_ref().map(|open| open.id)
    }

    /// How many entries of the open job are safe.
    pub fn safe(&self) -> usize {
        self.open.borrow().as_ref().map_or(0, |open| open.job.record().len())
    }

    /// Opens a job of which nothing is kept yet; its first command creates its record.
    pub fn begin(&self, job: Id) {
        self.open.replace(Some(Open { id: job, job: Job::new(), loaded: Loaded::default() }));
        self.unsure.set(false);
    }

    /// Loads and folds a job. Damage is told, and everything sound is there.
    pub async fn open(&self, job: Id) -> Answer {
        match load::all(&self.store, job).await {
            Err(failure) => Answer::failed(failure),
            Ok(mut loaded) => {
                let folded = Job::from_entries(std::mem::take(&mut loaded.entries));
                let answer = damage::told(&loaded).of(job);
                self.open.replace(Some(Open { id: job, job: folded, loaded }));
                self.unsure.set(false);
                answer
            }
        }
    }

    /// Answers a question from memory; nothing when no job is open.
    pub fn ask(&self, query: &Query) -> View {
        self.open.borrow().as_ref().map_or(View::Nothing, |open| ask(&open.job, query, self.device))
    }

    /// Carries out a command: stored, read back, then answered. Sent again, it is not done twice.
    pub async fn command(&self, sent: &Sent, beside: Vec<Beside>, at: Millis) -> Answer {
        let Some(job) = self.current() else { return Answer::failed(closed()) };
        if let Err(failure) = self.make_sure(job).await {
            return Answer::failed(failure).of(job);
        }
        let context = Context { replica: self.replica, device: self.device, at };
        let applied = self.open.borrow().as_ref().map(|open| apply(&open.job, sent, &context));
        let Some(applied) = applied else { return Answer::failed(closed()) };
        let mut answer = Answer::with(applied.problems).of(job);
        if !answer.ok {
            return answer;
        }
        let kept = if applied.again {
            self.keep_beside(&beside).await
        } else {
            self.keep(job, applied.entries, &beside).await
        };
        if let Err(failure) = kept {
            return Answer::failed(failure).of(job);
        }
        match self.keep_anew(job).await {
            Ok(lost) => answer.problems.extend(lost),
            Err(failure) => return Answer::failed(failure).of(job),
        }
        if let Some(entry) = self.entry_of(sent.id) {
            answer.entry = Some(entry.id);
            answer.touched = touched(&entry);
        }
        answer
    }

    /// The entry that a command made.
    fn entry_of(&self, command: Id) -> Option<Entry> {
        let open = self.open.borrow();
        let record = open.as_ref()?.job.record();
        let own = EntryId { replica: self.replica, seq: record.last_seq(self.replica) };
        let made = |entry: &&Entry| entry.ops.iter().any(|op| op.record == command && op.field == FieldName::Done.id());
        record.entry(own).filter(made).or_else(|| record.entries().find(made)).cloned()
    }

    async fn keep(&self, job: Id, entries: Vec<Entry>, beside: &[Beside]) -> Result<(), Failure> {
        let rows = entries.iter().map(|entry| Write::Tail(job, TailRow::new(entry.id, entry.to_bytes())));
        let writes = rows.chain(beside.iter().flat_map(blob_writes)).collect();
        if let Err(failure) = self.store.commit(writes).await {
            self.unsure.set(true);
            return Err(failure);
        }
        self.absorb(entries);
        self.read_back(beside).await
    }

    /// The photos of a command that was done before: there and sound, or stored now.
    async fn keep_beside(&self, beside: &[Beside]) -> Result<(), Failure> {
        if self.read_back(beside).await.is_ok() {
            return Ok(());
        }
        self.store.commit(beside.iter().flat_map(blob_writes).collect()).await?;
        self.read_back(beside).await
    }

    /// A database that no longer knows its device was taken away under the open window, and made again for this command:
    /// everything that memory still holds is kept once more. Answers the photos and sounds that went with it.
    async fn keep_anew(&self, job: Id) -> Result<Vec<Problem>, Failure> {
        if self.store.meta(DEVICE).await?.is_some() {
            return Ok(Vec::new());
        }
        let chunks = self.chunks();
        let names: Vec<Hash> = chunks.iter().map(|chunk| chunk.name).collect();
        let mut writes: Vec<Write> =
            chunks.into_iter().map(|chunk| Write::Chunk(job, chunk.name, chunk.bytes)).collect();
        writes.extend([Write::Meta(DEVICE.to_owned(), self.device.to_string()), JobLine::unknown(job)]);
        self.store.commit(writes).await?;
        if let Some(open) = self.open.borrow_mut().as_mut().filter(|open| open.id == job) {
            open.loaded.chunks.extend(names);
        }
        let named = self.open.borrow().as_ref().map(|open| open.job.blobs()).unwrap_or_default();
        let mut lost = Vec::new();
        for hash in named.into_keys() {
            if self.store.blob(hash).await?.is_none() {
                lost.push(blob_missing(hash));
            }
        }
        Ok(lost)
    }

    async fn read_back(&self, beside: &[Beside]) -> Result<(), Failure> {
        for (hash, _) in beside {
            let found = self.store.blob(*hash).await?.map(|blob| Hash::of(&blob.bytes));
            if found != Some(*hash) {
                return Err(Failure::new(TroubleCode::ReadFailed, format!("{hash} reads back as {found:?}")));
            }
        }
        Ok(())
    }

    /// After a commit that failed: what is stored after all, be it sealed by another window by now. A number that is
    /// taken must not be given again.
    async fn make_sure(&self, job: Id) -> Result<(), Failure> {
        if self.unsure.get() {
            self.catch_up(job).await?;
            self.unsure.set(false);
        }
        Ok(())
    }

    /// Takes in what another window has stored. Answers which records it touched.
    ///
    /// # Errors
    /// When the store does not answer.
    pub async fn hear(&self, job: Id, replica: Replica, last: u64) -> Result<Vec<Id>, Failure> {
        if self.current() != Some(job) {
            return Ok(Vec::new());
        }
        let known = self.last_seq(replica);
        let rows = self.store.tail_of(job, replica, known).await?;
        let mut loaded = Loaded::default();
        load::entries(&self.store, job, rows, &mut loaded).await;
        let mut touched = self.absorb(std::mem::take(&mut loaded.entries));
        if self.last_seq(replica) < last {
            // Sealed in the meantime.
            touched.extend(self.catch_up(job).await?);
        }
        Ok(touched)
    }

    /// Takes in whatever is stored and not here: after a sleep in which nobody could tell.
    ///
    /// # Errors
    /// When the store does not answer.
    pub async fn catch_up(&self, job: Id) -> Result<Vec<Id>, Failure> {
        let known = self.open.borrow().as_ref().map(|open| open.loaded.chunks.clone()).unwrap_or_default();
        let mut loaded = Loaded { chunks: known, ..Loaded::default() };
        let rows = self.store.tail(job).await?;
        load::unknown_chunks(&self.store, job, &mut loaded).await?;
        load::entries(&self.store, job, rows, &mut loaded).await;
        if self.current() != Some(job) {
            return Ok(Vec::new());
        }
        let touched = self.absorb(std::mem::take(&mut loaded.entries));
        if let Some(open) = self.open.borrow_mut().as_mut() {
            open.loaded.chunks = loaded.chunks;
        }
        Ok(touched)
    }

    /// Brings in a chunk from a job file: kept under its name, then absorbed. Twice is harmless.
    ///
    /// # Errors
    /// When it is damaged, or the store does not take it.
    pub async fn bring_in(&self, job: Id, name: Hash, bytes: Vec<u8>) -> Result<Vec<Id>, Failure> {
        let entries = chunk::open(name, &bytes)
            .map_err(|error| Failure::new(TroubleCode::ChunkDamaged, format!("{name}: {error:?}")))?;
        if self.knows_all(job, name, &entries) {
            return Ok(Vec::new());
        }
        let healed = self.healed(job, name, &entries);
        // The line of a job that is not open is worked out anew.
        let mut writes = vec![Write::Chunk(job, name, bytes), JobLine::unknown(job)];
        writes.extend(healed.iter().map(|name| Write::Healed(job, name.clone())));
        self.store.commit(writes).await?;
        if self.current() != Some(job) {
            return Ok(Vec::new());
        }
        if let Some(open) = self.open.borrow_mut().as_mut() {
            open.loaded.chunks.insert(name);
            open.loaded.damaged.retain(|damaged| !healed.contains(damaged));
        }
        Ok(self.absorb(entries))
    }

    /// What a sound chunk makes good: itself, and single entries of it that were damaged before they were sealed.
    fn healed(&self, job: Id, name: Hash, entries: &[Entry]) -> Vec<String> {
        let open = self.open.borrow();
        let open = open.as_ref().filter(|open| open.id == job);
        let was_damaged = |name: &String| open.is_some_and(|open| open.loaded.damaged.contains(name));
        let single = entries.iter().map(|entry| entry.id.to_string()).filter(was_damaged);
        std::iter::once(name.to_string()).chain(single).collect()
    }

    /// Everything of the open job as chunks; what is not sealed is sealed for the occasion, in memory.
    pub fn chunks(&self) -> Vec<chunk::Sealed> {
        let open = self.open.borrow();
        let entries: Vec<Entry> = open.iter().flat_map(|open| open.job.record().entries().cloned()).collect();
        entries.chunks(chunk::MOST_ENTRIES).map(chunk::seal).collect()
    }

    /// Whether a chunk would bring nothing: else every job file that comes back would be kept once more.
    fn knows_all(&self, job: Id, name: Hash, entries: &[Entry]) -> bool {
        let open = self.open.borrow();
        let Some(open) = open.as_ref().filter(|open| open.id == job) else { return false };
        let known = |entry: &Entry| open.job.record().entry(entry.id) == Some(entry);
        !open.loaded.damaged.contains(&name.to_string()) && entries.iter().all(known)
    }

    /// Seals the oldest entries once there are `least` of them. Answers whether it did.
    ///
    /// # Errors
    /// When the store does not take it.
    pub async fn seal(&self, least: usize) -> Result<bool, Failure> {
        let Some(job) = self.current() else { return Ok(false) };
        let Some(name) = seal::seal(&self.store, job, least).await? else { return Ok(false) };
        if let Some(open) = self.open.borrow_mut().as_mut().filter(|open| open.id == job) {
            open.loaded.chunks.insert(name);
        }
        Ok(true)
    }

    /// Notes the line that the list of jobs shows.
    ///
    /// # Errors
    /// When the store does not take it.
    pub async fn note_line(&self) -> Result<(), Failure> {
        let line = self.open.borrow().as_ref().and_then(|open| JobLine::of(open.id, &open.job, self.device));
        match line {
            Some(line) => self.store.commit(vec![line.write()]).await,
            None => Ok(()),
        }
    }

    /// A line for every job, latest first.
    ///
    /// # Errors
    /// When the store does not answer.
    pub async fn jobs(&self) -> Result<Vec<JobLine>, Failure> {
        crate::line::all(&self.store, self.device).await
    }

    fn absorb(&self, entries: Vec<Entry>) -> Vec<Id> {
        self.open.borrow_mut().as_mut().map(|open| open.job.absorb(entries)).unwrap_or_default()
    }

    fn last_seq(&self, replica: Replica) -> u64 {
        self.open.borrow().as_ref().map_or(0, |open| open.job.record().last_seq(replica))
    }
}

fn touched(entry: &Entry) -> Vec<Id> {
    let said = entry.ops.iter().filter(|op| op.field != FieldName::Done.id());
    said.map(|op| op.record).collect::<BTreeSet<_>>().into_iter().collect()
}

fn closed() -> Failure {
    Failure::new(TroubleCode::ConnectionLost, "no job is open")
}

fn blob_writes((hash, blob): &Beside) -> Vec<Write> {
    let mut writes = vec![Write::Blob(*hash, blob.clone())];
    if blob.media_type.starts_with("image/") {
        writes.push(Write::Task(Task { of: *hash, begun: 0 }));
    }
    writes
}

async fn device_of<S: Store>(store: &S, fresh: Id) -> Result<Id, Failure> {
    if let Some(known) = store.meta(DEVICE).await?.and_then(|text| text.parse().ok()) {
        return Ok(known);
    }
    let first = store.commit(vec![Write::FirstMeta(DEVICE.to_owned(), fresh.to_string())]).await;
    // Another window may have been first: then its device is this one's, too.
    match store.meta(DEVICE).await?.and_then(|text| text.parse().ok()) {
        Some(known) => Ok(known),
        None => first.map(|()| fresh),
    }
}
