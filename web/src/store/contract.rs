use asfound_core::record::{EntryId, Hash, Id, Replica};

use super::Failure;

/// The most bytes of a photo in one stored value: one browser wedges its database on very large ones.
pub const PIECE: usize = 4 << 20;

/// Where the record is kept. Every implementation passes the same suite.
#[expect(async_fn_in_trait, reason = "one thread: nothing here is ever sent to another")]
pub trait Store {
    /// Keeps all of these or none. `Ok` means that they are on the disk, as far as the browser can know.
    async fn commit(&self, writes: Vec<Write>) -> Result<(), Failure>;
    /// A value that belongs to the whole database.
    async fn meta(&self, key: &str) -> Result<Option<String>, Failure>;
    /// All values whose keys begin so.
    async fn metas(&self, prefix: &str) -> Result<Vec<(String, String)>, Failure>;
    /// Every job of which anything is kept.
    async fn jobs(&self) -> Result<Vec<Id>, Failure>;
    /// The entries of a job that are not sealed yet.
    async fn tail(&self, job: Id) -> Result<Vec<TailRow>, Failure>;
    /// Those of one replica with a greater number.
    async fn tail_of(&self, job: Id, replica: Replica, after: u64) -> Result<Vec<TailRow>, Failure>;
    /// The names of a job's chunks.
    async fn chunk_names(&self, job: Id) -> Result<Vec<Hash>, Failure>;
    /// One chunk's bytes.
    async fn chunk(&self, job: Id, name: Hash) -> Result<Option<Vec<u8>>, Failure>;
    /// A photo or sound as it came.
    async fn blob(&self, of: Hash) -> Result<Option<Blob>, Failure>;
    /// A smaller picture made from a photo.
    async fn derived(&self, of: Hash, derived: Derived) -> Result<Option<Vec<u8>>, Failure>;
    /// Photos of which smaller pictures are still to be made.
    async fn tasks(&self) -> Result<Vec<Task>, Failure>;
    /// What was found damaged, and set aside.
    async fn quarantined(&self, job: Id) -> Result<Vec<Quarantined>, Failure>;
    /// Reads one small thing, to learn whether the store answers.
    async fn probe(&self) -> Result<(), Failure>;
}

/// One thing to keep or to remove.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Write {
    /// An entry; the whole commit fails when one of this identity is there.
    Tail(Id, TailRow),
    /// The entry is in a chunk now.
    Sealed(Id, EntryId),
    /// A chunk of entries.
    Chunk(Id, Hash, Vec<u8>),
    /// A photo or sound, under its hash.
    Blob(Hash, Blob),
    /// A smaller picture.
    Derived(Hash, Derived, Vec<u8>),
    /// Smaller pictures are to be made.
    Task(Task),
    /// They are made.
    TaskDone(Hash),
    /// A value that belongs to the whole database.
    Meta(String, String),
    /// The same; the whole commit fails when there is one.
    FirstMeta(String, String),
    /// Moves a damaged chunk or tail row aside.
    Quarantine(Id, Quarantined),
    /// A sound copy came: what was set aside is not needed.
    Healed(Id, String),
}

/// One entry as it lies in the tail.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TailRow {
    /// Its identity.
    pub entry: EntryId,
    /// Its bytes.
    pub bytes: Vec<u8>,
    /// Their hash.
    pub hash: Hash,
}

/// A photo or sound.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Blob {
    /// Which form the bytes have.
    pub media_type: String,
    /// The bytes.
    pub bytes: Vec<u8>,
}

/// What is made from a photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Derived {
    /// For lists.
    Thumb,
    /// For the screen.
    View,
}

/// Smaller pictures of a photo are to be made.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Task {
    /// Of which photo.
    pub of: Hash,
    /// How often it was begun: what kills the worker each time is left alone.
    pub begun: u32,
}

/// Something damaged, set aside.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Quarantined {
    /// The chunk's name, or the entry's identity.
    pub name: String,
    /// Its bytes as they were found.
    pub bytes: Vec<u8>,
}

impl TailRow {
    /// A row for these bytes.
    #[must_use]
    pub fn new(entry: EntryId, bytes: Vec<u8>) -> Self {
        Self { entry, hash: Hash::of(&bytes), bytes }
    }
}

impl Derived {
    /// The word it is kept under.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Thumb => "thumb",
            Self::View => "view",
        }
    }

    /// What is kept under a word.
    #[must_use]
    pub fn of(word: &str) -> Option<Self> {
        [Self::Thumb, Self::View].into_iter().find(|derived| derived.word() == word)
    }
}
