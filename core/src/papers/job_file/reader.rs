use std::io::Read;

use rawzip::{CompressionMethod, RECOMMENDED_BUFFER_SIZE, ReaderAt, ZipArchive, ZipFileHeaderRecord, ZipLocator};

use super::member::{Member, MemberKind};
use super::{FORM, JobFileError};
use crate::job::Job;
use crate::problem::{Code, Hint, Problem};
use crate::record::chunk;
use crate::record::{Entry, Hash, Id};

/// No photo, sound or list comes near this; a hostile member must not fill the memory.
const MOST_BYTES: u64 = 512 << 20;
/// Nor does any job have so many files.
const MOST_MEMBERS: usize = 1 << 20;

/// A job file that was opened: its list of members. Members are read one at a time, whenever they are wanted.
#[derive(Debug)]
pub struct JobFile<R> {
    zip: ZipArchive<R>,
    members: Vec<Member>,
    form: Option<u32>,
    job: Option<Id>,
    problems: Vec<Problem>,
}

/// What the chunks of a job file say.
#[derive(Debug, Clone, Default)]
pub struct Opened {
    /// Entries of all sound chunks.
    pub entries: Vec<Entry>,
    /// One for each chunk that could not be opened.
    pub problems: Vec<Problem>,
}

impl<R: ReaderAt> JobFile<R> {
    /// Opens a job file of `length` bytes and lists its members.
    ///
    /// # Errors
    /// When it is no zip, is cut off, or is a zip that holds nothing of a job.
    pub fn open(source: R, length: u64) -> Result<Self, JobFileError> {
        let mut buffer = vec![0; RECOMMENDED_BUFFER_SIZE];
        let located = ZipLocator::new().locate_in_reader(source, &mut buffer, length);
        let zip = located.map_err(|(_, error)| match JobFileError::from(error) {
            JobFileError::Outside(error) => JobFileError::Outside(error),
            _ => JobFileError::NotAZip,
        })?;
        let (form, job) = told_by(&comment(&zip));
        let mut file = Self { zip, members: Vec::new(), form, job, problems: Vec::new() };
        file.list(&mut buffer);
        if form.is_none() && file.chunks().next().is_none() {
            return Err(JobFileError::NotAJobFile);
        }
        Ok(file)
    }

    fn list(&mut self, buffer: &mut [u8]) {
        let mut entries = self.zip.entries(buffer);
        loop {
            match entries.next_entry() {
                Ok(Some(entry)) if self.members.len() < MOST_MEMBERS => {
                    self.members.extend((!entry.is_dir()).then(|| member(&entry)));
                }
                Ok(None) => break,
                Ok(Some(_)) => return self.problems.push(JobFileError::TooLarge.of_member("")),
                Err(error) => return self.problems.push(JobFileError::from(error).of_member("")),
            }
        }
        let misnamed = self.members.iter().filter(|member| MemberKind::was_chunk(&member.path));
        self.problems.extend(misnamed.map(|member| JobFileError::NameDiffers.of_member(&member.path)));
        if let Some(form) = self.form.filter(|form| *form > FORM) {
            self.problems.push(Problem::warning(Code::NewerForm).value("form", form).hint(Hint::UseNewer));
        }
    }

    /// Its members, in the order of the file.
    #[must_use]
    pub fn members(&self) -> &[Member] {
        &self.members
    }

    /// The members that hold entries.
    pub fn chunks(&self) -> impl Iterator<Item = &Member> {
        self.members.iter().filter(|member| matches!(member.kind, MemberKind::Chunk(_)))
    }

    /// The members that hold photos and sounds, with their hashes.
    pub fn blobs(&self) -> impl Iterator<Item = (Hash, &Member)> {
        self.members.iter().filter_map(|member| match member.kind {
            MemberKind::Blob(hash) => Some((hash, member)),
            _ => None,
        })
    }

    /// The job that it says it holds.
    #[must_use]
    pub const fn job(&self) -> Option<Id> {
        self.job
    }

    /// What was wrong when it was opened: a newer form, a list of members that breaks off.
    #[must_use]
    pub fn problems(&self) -> &[Problem] {
        &self.problems
    }

    /// The bytes of one member: those of a chunk, photo or sound are the ones that its name was made from.
    ///
    /// # Errors
    /// When they are not, when it is damaged otherwise, or when the source fails.
    pub fn read(&self, member: &Member) -> Result<Vec<u8>, JobFileError> {
        if member.length > MOST_BYTES {
            return Err(JobFileError::TooLarge);
        }
        let packed = self.packed(member)?;
        let bytes = match member.deflated {
            Some(false) => packed,
            Some(true) => inflated(&packed, member.length)?,
            None => return Err(JobFileError::Packing),
        };
        // The hash is the stronger check of the two; where there is one, a damaged checksum does no harm.
        match member.kind.hash() {
            Some(hash) if Hash::of(&bytes) != hash => Err(JobFileError::NameDiffers),
            None if rawzip::crc32(&bytes) != member.checksum => Err(JobFileError::Wrapping),
            _ => Ok(bytes),
        }
    }

    fn packed(&self, member: &Member) -> Result<Vec<u8>, JobFileError> {
        let entry = self.zip.get_entry(member.way)?;
        let (from, to) = entry.compressed_data_range();
        let length = to.saturating_sub(from);
        if length > MOST_BYTES {
            return Err(JobFileError::TooLarge);
        }
        let mut bytes = Vec::new();
        entry.reader().take(length).read_to_end(&mut bytes)?;
        Ok(bytes)
    }

    /// The entries of one chunk.
    ///
    /// # Errors
    /// When it is damaged or of a newer form.
    pub fn chunk(&self, member: &Member) -> Result<Vec<Entry>, JobFileError> {
        let MemberKind::Chunk(name) = member.kind else { return Err(JobFileError::NameDiffers) };
        chunk::open(name, &self.read(member)?).map_err(JobFileError::Chunk)
    }

    /// The entries of all sound chunks, and what is wrong with the others.
    pub fn open_chunks(&self) -> Opened {
        let mut opened = Opened::default();
        for member in self.chunks() {
            match self.chunk(member) {
                Ok(entries) => opened.entries.extend(entries),
                Err(error) => opened.problems.push(error.of_member(&member.path)),
            }
        }
        opened
    }

    /// The job that its sound chunks make, and everything that is wrong with the file.
    pub fn to_job(&self) -> (Job, Vec<Problem>) {
        let opened = self.open_chunks();
        let problems = self.problems.iter().cloned().chain(opened.problems).collect();
        (Job::from_entries(opened.entries), problems)
    }
}

fn member(entry: &ZipFileHeaderRecord<'_>) -> Member {
    let path = String::from_utf8_lossy(entry.file_path().as_ref()).into_owned();
    let method = entry.compression_method();
    Member {
        kind: MemberKind::of(&path),
        path,
        length: entry.uncompressed_size_hint(),
        way: entry.wayfinder(),
        checksum: entry.crc32(),
        deflated: match method {
            CompressionMethod::STORE => Some(false),
            CompressionMethod::DEFLATE => Some(true),
            _ => None,
        },
    }
}

fn inflated(packed: &[u8], length: u64) -> Result<Vec<u8>, JobFileError> {
    let limit = usize::try_from(length).map_err(|_| JobFileError::TooLarge)?;
    miniz_oxide::inflate::decompress_to_vec_with_limit(packed, limit).map_err(|_| JobFileError::Wrapping)
}

fn comment<R: ReaderAt>(zip: &ZipArchive<R>) -> String {
    let mut comment = Vec::new();
    // A comment that cannot be read says nothing; the members still do.
    let _ = zip.comment().read_to_end(&mut comment);
    String::from_utf8_lossy(&comment).into_owned()
}

/// The form and the job that the comment names.
fn told_by(comment: &str) -> (Option<u32>, Option<Id>) {
    let mut words = comment.strip_prefix("asfound job file ").unwrap_or_default().split(' ');
    (words.next().and_then(|form| form.parse().ok()), words.next().and_then(|job| job.parse().ok()))
}
