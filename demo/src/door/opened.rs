use std::collections::BTreeSet;
use std::fs::File;
use std::path::Path;

use asfound_core::job::Job;
use asfound_core::papers::job_file::{JobFile, JobFileError, blob_missing};
use asfound_core::problem::Problem;
use asfound_core::record::Hash;
use rawzip::FileReader;

use super::Unreadable;

/// A job file on disk.
pub(super) struct Opened {
    file: JobFile<FileReader>,
    has: BTreeSet<Hash>,
}

impl Opened {
    pub(super) fn read(path: &Path) -> Result<Self, Unreadable> {
        let told = |error| Unreadable::file(path, &error);
        let file = File::open(path).map_err(told)?;
        let length = file.metadata().map_err(told)?.len();
        let file = JobFile::open(FileReader::from(file), length);
        let file = file.map_err(|error| Unreadable::of(error.of_file().value("file", path.display())))?;
        let has = file.blobs().map(|(hash, _)| hash).collect();
        Ok(Self { file, has })
    }

    pub(super) const fn file(&self) -> &JobFile<FileReader> {
        &self.file
    }

    pub(super) fn job(&self) -> (Job, Vec<Problem>) {
        self.file.to_job()
    }

    pub(super) fn has(&self, hash: Hash) -> bool {
        self.has.contains(&hash)
    }

    /// The bytes of a photo or sound; nothing when it is not here.
    pub(super) fn blob(&self, hash: Hash) -> Option<Result<Vec<u8>, Problem>> {
        let mut found = self
            .file
            .blobs()
            .filter(|(one, _)| *one == hash)
            .map(|(_, member)| self.file.read(member).map_err(|error: JobFileError| error.of_member(&member.path)));
        found.next()
    }

    /// Photos and sounds that the record names and the file does not hold.
    pub(super) fn missing(&self, job: &Job) -> Vec<Problem> {
        job.blobs().into_keys().filter(|hash| !self.has(*hash)).map(blob_missing).collect()
    }
}
