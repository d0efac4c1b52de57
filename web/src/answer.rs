use asfound_core::problem::{Problem, Severity};
use asfound_core::record::{EntryId, Id};
use serde::Serialize;

use crate::store::Failure;

/// What a command came to. `ok` means: stored, read back, and in memory.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Answer {
    /// Whether it is done.
    pub ok: bool,
    /// What is wrong with it, or worth a look.
    pub problems: Vec<Problem>,
    /// The entry it made.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub entry: Option<EntryId>,
    /// The job it was done in.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub job: Option<Id>,
    /// Why the store did not take it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub trouble: Option<Failure>,
    /// Records that look different now.
    pub touched: Vec<Id>,
}

impl Answer {
    /// Done, unless one of the problems is an error.
    #[must_use]
    pub fn with(problems: Vec<Problem>) -> Self {
        let ok = problems.iter().all(|problem| problem.severity != Severity::Error);
        Self { ok, problems, entry: None, job: None, trouble: None, touched: Vec::new() }
    }

    /// Not done: the store did not take it.
    #[must_use]
    pub fn failed(trouble: Failure) -> Self {
        Self { ok: false, trouble: Some(trouble), ..Self::with(Vec::new()) }
    }

    /// In this job.
    #[must_use]
    pub fn of(mut self, job: Id) -> Self {
        self.job = Some(job);
        self
    }
}
