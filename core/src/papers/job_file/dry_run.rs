use std::collections::{BTreeMap, BTreeSet};

use rawzip::ReaderAt;
use serde::{Deserialize, Serialize};

use super::JobFile;
use crate::job::Job;
use crate::problem::{Code, Hint, Problem};
use crate::record::{FieldId, Hash, Id, Kind};

/// What bringing in a job file would do, before anything is done.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct DryRun {
    /// The job that the file holds; nothing when its first entries are damaged and the file does not say it either.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub job: Option<Id>,
    /// Its name.
    pub name: String,
    /// It is another job than the one it was held against.
    pub other_job: bool,
    /// Entries that are not here yet.
    pub entries_new: usize,
    /// Entries that are here already.
    pub entries_here: usize,
    /// Parts that are not here yet.
    pub parts_new: usize,
    /// Photos and sounds in the file that are not here yet.
    pub photos_new: usize,
    /// Their bytes.
    pub bytes_new: u64,
    /// Photos and sounds in the file that are here already.
    pub photos_here: usize,
    /// Photos and sounds that the file names, and that are neither in it nor here.
    pub missing: Vec<Hash>,
    /// Fields that would have more than one value and have not now.
    pub conflicts_new: usize,
    /// What is wrong with the file.
    pub problems: Vec<Problem>,
}

impl<R: ReaderAt> JobFile<R> {
    /// Holds the file against the job that is here, if one is, and against the photos that are here. Photos are compared by
    /// name; their bytes are read, and checked, when they are brought in.
    pub fn dry_run(&self, here: Option<&Job>, has_blob: &dyn Fn(Hash) -> bool) -> DryRun {
        let opened = self.open_chunks();
        let theirs = Job::from_entries(opened.entries);
        let nothing = Job::new();
        let ours = here.unwrap_or(&nothing);
        let job = theirs.id().or(self.job());
        let other_job = matches!((ours.id(), job), (Some(ours), Some(theirs)) if ours != theirs);
        // Another job comes to stand beside this one: all of it is new, and nothing of it meets anything here.
        let ours = if other_job { &nothing } else { ours };
        let mut merged = ours.clone();
        merged.absorb(theirs.record().entries().cloned());
        let blobs: BTreeMap<Hash, u64> = self.blobs().map(|(hash, member)| (hash, member.length)).collect();
        let entries_new = merged.record().len() - ours.record().len();
        let new = || blobs.iter().filter(|(hash, _)| !has_blob(**hash));
        let missing: Vec<Hash> = missing(&theirs, &blobs, has_blob);
        let mut problems: Vec<Problem> = self.problems().iter().cloned().chain(opened.problems).collect();
        problems.extend(missing.iter().map(|hash| blob_missing(*hash)));
        DryRun {
            name: job.map(|job| theirs.name(job)).unwrap_or_default(),
            job,
            other_job,
            entries_new,
            entries_here: theirs.record().len() - entries_new,
            parts_new: theirs.ids(Kind::Part).filter(|part| ours.item(*part).is_none()).count(),
            photos_new: new().count(),
            bytes_new: new().map(|(_, length)| *length).fold(0, u64::saturating_add),
            photos_here: blobs.len() - new().count(),
            missing,
            conflicts_new: conflicts(&merged).difference(&conflicts(ours)).count(),
            problems,
        }
    }
}

/// A photo or sound that the record names is not here.
#[must_use]
pub fn blob_missing(hash: Hash) -> Problem {
    Problem::warning(Code::BlobMissing).value("hash", hash).hint(Hint::BringInOther).hint(Hint::FetchAgain)
}

fn missing(theirs: &Job, blobs: &BTreeMap<Hash, u64>, has_blob: &dyn Fn(Hash) -> bool) -> Vec<Hash> {
    theirs.blobs().into_keys().filter(|hash| !blobs.contains_key(hash) && !has_blob(*hash)).collect()
}

fn conflicts(job: &Job) -> BTreeSet<(Id, FieldId)> {
    let items = job.record().items();
    items.flat_map(|(id, item)| item.conflicts().into_iter().map(move |field| (id, field))).collect()
}
