//! A job file that has left the browser, looked into with the core.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use anyhow::{anyhow, ensure};
use asfound_core::job::Job;
use asfound_core::papers::job_file::JobFile;

/// What a job file holds.
#[derive(Debug)]
pub struct SentJob {
    /// The job.
    pub job: Job,
    /// The names of photos and sounds whose bytes match them.
    pub photos: BTreeSet<String>,
}

impl SentJob {
    /// Reads all of it; anything damaged is an error.
    pub fn read(path: &Path) -> anyhow::Result<Self> {
        let bytes = fs::read(path)?;
        let length = bytes.len() as u64;
        let file = JobFile::open(bytes.as_slice(), length).map_err(|error| anyhow!("{}: {error:?}", path.display()))?;
        let mut photos = BTreeSet::new();
        for (hash, member) in file.blobs() {
            // The reader gives only bytes that have the hash they are named by.
            file.read(member).map_err(|error| anyhow!("{hash}: {error:?}"))?;
            photos.insert(hash.to_string());
        }
        let (job, problems) = file.to_job();
        ensure!(problems.is_empty(), "{}: {problems:?}", path.display());
        let named: BTreeSet<String> = job.blobs().into_keys().map(|hash| hash.to_string()).collect();
        ensure!(photos == named, "the record names {named:?}, the file holds {photos:?}");
        Ok(Self { job, photos })
    }
}
