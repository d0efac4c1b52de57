use std::io;

use crate::problem::{Code, Hint, Problem};
use crate::record::Hash;
use crate::record::chunk::ChunkError;

/// What can go wrong with a job file or one member of it.
#[derive(Debug)]
pub enum JobFileError {
    /// What it is read from, or written to, failed.
    Outside(io::Error),
    /// It is no zip, or is cut off.
    NotAZip,
    /// It is a zip, but holds nothing of a job.
    NotAJobFile,
    /// A member is damaged in its wrapping.
    Wrapping,
    /// A member does not match its name.
    NameDiffers,
    /// A member is packed in a way that is not read.
    Packing,
    /// A member is larger than anything that is written.
    TooLarge,
    /// A chunk cannot be opened.
    Chunk(ChunkError),
    /// The record does not name this photo or sound.
    NotNamed(Hash),
}

impl From<io::Error> for JobFileError {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::UnexpectedEof => Self::Wrapping,
            _ => Self::Outside(error),
        }
    }
}

impl From<rawzip::Error> for JobFileError {
    fn from(error: rawzip::Error) -> Self {
        match error.into_kind() {
            rawzip::ErrorKind::IO(error) => error.into(),
            rawzip::ErrorKind::MissingEndOfCentralDirectory | rawzip::ErrorKind::InvalidEndOfCentralDirectory => {
                Self::NotAZip
            }
            _ => Self::Wrapping,
        }
    }
}

impl JobFileError {
    /// As a problem of the whole file: nothing of it can be read.
    #[must_use]
    pub fn of_file(&self) -> Problem {
        let code = match self {
            Self::NotAZip | Self::NotAJobFile => Code::NotOurs,
            _ => Code::Damaged,
        };
        self.told(Problem::error(code)).hint(Hint::FetchAgain)
    }

    /// As a problem of one member: the others come in.
    #[must_use]
    pub fn of_member(&self, path: &str) -> Problem {
        let (code, hint) = match self {
            Self::Chunk(ChunkError::NewerForm(_)) => (Code::NewerForm, Hint::UseNewer),
            _ => (Code::Damaged, Hint::FetchAgain),
        };
        self.told(Problem::warning(code)).value("file", path).hint(hint)
    }

    fn told(&self, problem: Problem) -> Problem {
        let problem = problem.value("why", self.word());
        match self {
            Self::Outside(error) => problem.value("detail", error),
            Self::Chunk(ChunkError::NewerForm(form)) => problem.value("form", form),
            Self::NotNamed(hash) => problem.value("hash", hash),
            _ => problem,
        }
    }

    const fn word(&self) -> &'static str {
        match self {
            Self::Outside(_) => "outside",
            Self::NotAZip => "not-a-zip",
            Self::NotAJobFile => "not-a-job-file",
            Self::Wrapping => "wrapping",
            Self::NameDiffers | Self::Chunk(ChunkError::NameDiffers) => "name-differs",
            Self::Packing => "packing",
            Self::TooLarge => "too-large",
            Self::Chunk(ChunkError::NewerForm(_)) => "newer-form",
            Self::Chunk(_) => "chunk",
            Self::NotNamed(_) => "not-named",
        }
    }
}
