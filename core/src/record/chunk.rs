//! A chunk: a sealed batch of entries under its own hash. Form 1, frozen; read ever after.
//!
//! Bytes: `ASFOUND` and a line feed, the form (one byte), the number of entries and of body bytes before deflation, then
//! the deflated body. The body is a run (length, bytes) an entry. The chunk's name is the BLAKE3 hash of all of it.

use super::codec::{Reader, Unreadable, Writer};
use super::{Entry, Hash};

/// The most entries in one chunk.
pub const MOST_ENTRIES: usize = 1_000;
const MAGIC: &[u8; 8] = b"ASFOUND\n";
const FORM: u8 = 1;
/// No chunk of a thousand entries comes near this; a hostile one must not fill the memory. A longer body is not deflated,
/// so that what it unfolds to is no longer than what is there.
const MOST_BODY: u64 = 64 << 20;

/// A sealed chunk.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sealed {
    /// Its name: the hash of its bytes.
    pub name: Hash,
    /// Its bytes.
    pub bytes: Vec<u8>,
}

/// Why a chunk cannot be opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ChunkError {
    /// The bytes are not those that the name was made from.
    NameDiffers,
    /// It does not begin like a chunk.
    NotAChunk,
    /// It was written by a newer version.
    NewerForm(u8),
    /// The body is damaged in a way that its maker already wrote.
    Body(Unreadable),
}

impl From<Unreadable> for ChunkError {
    fn from(unreadable: Unreadable) -> Self {
        Self::Body(unreadable)
    }
}

/// Seals entries, sorted by identity, into one chunk. The same entries give the same chunk.
///
/// # Panics
/// Never; more than [`MOST_ENTRIES`] make a larger chunk, which can be opened all the same.
#[must_use]
pub fn seal(entries: &[Entry]) -> Sealed {
    let mut sorted: Vec<&Entry> = entries.iter().collect();
    sorted.sort_unstable();
    let mut body = Writer::default();
    for entry in &sorted {
        body.run(&entry.to_bytes());
    }
    let body = body.into_bytes();
    let mut out = Writer::default();
    out.bytes(MAGIC);
    out.byte(FORM);
    out.number(sorted.len() as u64);
    out.number(body.len() as u64);
    let level = if body.len() as u64 > MOST_BODY { 0 } else { 6 };
    out.bytes(&miniz_oxide::deflate::compress_to_vec(&body, level));
    let bytes = out.into_bytes();
    Sealed { name: Hash::of(&bytes), bytes }
}

/// Opens a chunk under its name.
///
/// # Errors
/// When the bytes do not match the name, are no chunk, are of a newer form, or hold a damaged body.
pub fn open(name: Hash, bytes: &[u8]) -> Result<Vec<Entry>, ChunkError> {
    if Hash::of(bytes) != name {
        return Err(ChunkError::NameDiffers);
    }
    let mut from = Reader::new(bytes);
    if from.take(MAGIC.len()).ok() != Some(MAGIC) {
        return Err(ChunkError::NotAChunk);
    }
    let form = from.byte()?;
    if form != FORM {
        return Err(ChunkError::NewerForm(form));
    }
    let (count, length) = (from.number()?, from.number()?);
    read_body(count, &inflate(from.rest(), length)?)
}

fn inflate(bytes: &[u8], length: u64) -> Result<Vec<u8>, ChunkError> {
    if length > MOST_BODY.max(bytes.len() as u64) {
        return Err(Unreadable::Long.into());
    }
    let limit = usize::try_from(length).map_err(|_| Unreadable::Long)?;
    let body = miniz_oxide::inflate::decompress_to_vec_with_limit(bytes, limit).map_err(|_| Unreadable::Short)?;
    if body.len() == limit { Ok(body) } else { Err(Unreadable::Short.into()) }
}

fn read_body(count: u64, body: &[u8]) -> Result<Vec<Entry>, ChunkError> {
    let mut from = Reader::new(body);
    let mut entries = Vec::new();
    while !from.is_empty() {
        entries.push(Entry::from_bytes(from.run()?)?);
    }
    if entries.len() as u64 == count { Ok(entries) } else { Err(Unreadable::Short.into()) }
}
