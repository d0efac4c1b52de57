use std::collections::{BTreeMap, BTreeSet};
use std::io::{self, BufWriter, Write};

use rawzip::time::UtcDateTime;
use rawzip::{CompressionMethod, ZipArchiveWriter, ZipDataWriterConfig, ZipEntryWriter};

use super::member::{blob_path, chunk_path};
use super::{FORM, JobFileError, snapshot};
use crate::job::{Group, Job, PartsQuery};
use crate::papers::{PaperWords, parts_csv};
use crate::record::chunk::{MOST_ENTRIES, seal};
use crate::record::{Entry, Hash};

/// The most bytes that are handed on at once: 1 MiB.
pub const PIECE: usize = 1 << 20;

/// Writes a job file, member by member, to whatever takes bytes.
///
/// The record comes first, so that a photo which cannot be read any more never holds it back; then photos and sounds, one
/// at a time, in any order; [`finish`](Self::finish) says which of them were not brought. The same record and the same
/// order make the same bytes.
///
/// ```
/// use asfound_core::{job::Job, papers::{PaperWords, job_file::{JobFile, Writer}}};
/// let writer = Writer::begin(Vec::new(), &Job::new(), &PaperWords::default()).unwrap();
/// let written = writer.finish().unwrap();
/// let length = written.sink.len() as u64;
/// assert!(JobFile::open(written.sink, length).unwrap().chunks().next().is_none());
/// ```
#[derive(Debug)]
pub struct Writer<W: Write> {
    zip: ZipArchiveWriter<BufWriter<Pieces<W>>>,
    at: UtcDateTime,
    wanted: BTreeMap<Hash, String>,
    brought: BTreeSet<Hash>,
}

/// What came of writing.
#[derive(Debug)]
pub struct Written<W> {
    /// Where the bytes went.
    pub sink: W,
    /// Photos and sounds that the record names and nobody brought.
    pub missing: Vec<Hash>,
}

impl<W: Write> Writer<W> {
    /// Begins, with everything but photos and sounds.
    ///
    /// # Errors
    /// When the sink fails.
    pub fn begin(sink: W, job: &Job, words: &PaperWords) -> Result<Self, JobFileError> {
        let mut zip = ZipArchiveWriter::new(BufWriter::with_capacity(PIECE, Pieces(sink)));
        let id = job.id().map(|id| format!(" {id}")).unwrap_or_default();
        zip.set_comment(format!("asfound job file {FORM}{id}"));
        let at = latest(job);
        let mut writer = Self { zip, at, wanted: job.blobs(), brought: BTreeSet::new() };
        let by_tag = PartsQuery { group: Group::None, ..PartsQuery::default() };
        writer.text("READ ME.txt", words.page.read_me.as_bytes())?;
        writer.text("parts.csv", parts_csv(job, &by_tag, None, words).as_bytes())?;
        writer.text("job.json", snapshot(job).as_bytes())?;
        writer.chunks(job)?;
        Ok(writer)
    }

    /// Photos and sounds that are still to be brought, with their media types, in the order that gives the same bytes.
    pub fn wanted(&self) -> impl Iterator<Item = (Hash, &str)> {
        let open = self.wanted.iter().filter(|(hash, _)| !self.brought.contains(*hash));
        open.map(|(hash, media_type)| (*hash, media_type.as_str()))
    }

    /// Brings one photo or sound. Brought again it is written once.
    ///
    /// # Errors
    /// When the bytes are not those of the hash, or the record does not name it (nothing is written then, and one can go
    /// on with the others); when the sink fails.
    pub fn blob(&mut self, hash: Hash, bytes: &[u8]) -> Result<(), JobFileError> {
        let Some(media_type) = self.wanted.get(&hash) else { return Err(JobFileError::NotNamed(hash)) };
        if Hash::of(bytes) != hash {
            return Err(JobFileError::NameDiffers);
        }
        let path = blob_path(hash, media_type);
        if self.brought.insert(hash) {
            self.stored(&path, bytes)?;
        }
        Ok(())
    }

    /// Ends the file.
    ///
    /// # Errors
    /// When the sink fails.
    pub fn finish(self) -> Result<Written<W>, JobFileError> {
        let missing = self.wanted().map(|(hash, _)| hash).collect();
        let buffered = self.zip.finish()?;
        let pieces = buffered.into_inner().map_err(io::IntoInnerError::into_error)?;
        Ok(Written { sink: pieces.0, missing })
    }

    fn chunks(&mut self, job: &Job) -> Result<(), JobFileError> {
        let mut batch: Vec<Entry> = Vec::with_capacity(MOST_ENTRIES);
        let mut entries = job.record().entries().cloned().peekable();
        while entries.peek().is_some() {
            batch.extend(entries.by_ref().take(MOST_ENTRIES));
            let sealed = seal(&batch);
            self.stored(&chunk_path(sealed.name), &sealed.bytes)?;
            batch.clear();
        }
        Ok(())
    }

    fn stored(&mut self, path: &str, bytes: &[u8]) -> Result<(), JobFileError> {
        let (mut entry, config) = self.member(path, CompressionMethod::STORE)?;
        let mut data = config.wrap(&mut entry);
        data.write_all(bytes)?;
        let (_, descriptor) = data.finish()?;
        entry.finish(descriptor)?;
        Ok(())
    }

    /// What is read by people packs well.
    fn text(&mut self, path: &str, bytes: &[u8]) -> Result<(), JobFileError> {
        let packed = miniz_oxide::deflate::compress_to_vec(bytes, 6);
        let (mut entry, _) = self.member(path, CompressionMethod::DEFLATE)?;
        entry.write_all(&packed)?;
        entry.finish(rawzip::DataDescriptorOutput::new(rawzip::crc32(bytes), bytes.len() as u64))?;
        Ok(())
    }

    #[expect(clippy::type_complexity, reason = "the library's own pair")]
    fn member(
        &mut self,
        path: &str,
        method: CompressionMethod,
    ) -> Result<(ZipEntryWriter<'_, BufWriter<Pieces<W>>>, ZipDataWriterConfig), JobFileError> {
        let builder = self.zip.new_file(path).compression_method(method).last_modified(self.at);
        Ok(builder.unix_permissions(0o644).start()?)
    }
}

/// The time of the latest entry: what the members bear as theirs, since the core has no clock.
fn latest(job: &Job) -> UtcDateTime {
    let latest = job.record().entries().map(|entry| entry.at.0).max().unwrap_or(0);
    UtcDateTime::from_unix(latest.div_euclid(1000).max(315_532_800))
}

/// Hands on no more than a piece at once.
#[derive(Debug)]
struct Pieces<W>(W);

impl<W: Write> Write for Pieces<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.0.write(&bytes[..bytes.len().min(PIECE)])
    }

    fn flush(&mut self) -> io::Result<()> {
        self.0.flush()
    }
}
