use std::fs::{self, File};
use std::io::Write;
use std::path::Path;

use asfound_core::job::Job;
use asfound_core::papers::PaperWords;
use asfound_core::papers::job_file::{JobFileError, Writer};
use asfound_core::problem::Problem;
use asfound_core::record::Hash;

use super::Unreadable;
use super::blobs::Blobs;

/// What came of writing a job file.
pub(super) struct Written {
    /// How many photos and sounds are in it.
    pub(super) blobs: usize,
    /// One for each that is not.
    pub(super) problems: Vec<Problem>,
}

/// Writes a job file beside its place, then puts it there, so that a file half written never stands in its place.
pub(super) fn job_file(out: &Path, job: &Job, blobs: &Blobs<'_>) -> Result<Written, Unreadable> {
    replace(out, |file| {
        let mut writer = Writer::begin(file, job, &PaperWords::default())?;
        let mut written = Written { blobs: 0, problems: Vec::new() };
        let wanted: Vec<Hash> = writer.wanted().map(|(hash, _)| hash).collect();
        for hash in wanted {
            match blobs.read(hash) {
                Ok(bytes) => {
                    writer.blob(hash, &bytes)?;
                    written.blobs += 1;
                }
                Err(problem) => written.problems.push(problem),
            }
        }
        writer.finish()?;
        Ok(written)
    })
}

/// Writes bytes in the same way.
pub(super) fn put(out: &Path, bytes: &[u8]) -> Result<(), Unreadable> {
    replace(out, |file| Ok(file.write_all(bytes)?))
}

fn replace<T>(out: &Path, write: impl FnOnce(&mut File) -> Result<T, JobFileError>) -> Result<T, Unreadable> {
    let told = |error| Unreadable::file(out, &error);
    let mut beside = out.as_os_str().to_owned();
    beside.push(".part");
    let beside = Path::new(&beside);
    let mut file = File::create(beside).map_err(told)?;
    let written = write(&mut file)
        .map_err(|error| Unreadable::of(error.of_file().value("file", out.display())))
        .and_then(|written| file.sync_all().and_then(|()| fs::rename(beside, out)).map_err(told).map(|()| written));
    if written.is_err() {
        // What is wrong is told already; a part that cannot be taken away adds nothing to it.
        let _ = fs::remove_file(beside);
    }
    written
}
