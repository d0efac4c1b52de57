//! A job in the list of jobs, without opening it.

use std::collections::BTreeMap;

use asfound_core::job::{Job, Query, View, ask};
use asfound_core::quantity::Millis;
use asfound_core::record::Id;
use serde::{Deserialize, Serialize};

use crate::load;
use crate::store::{Failure, Store, Write};

const PREFIX: &str = "job:";

/// One line of the list of jobs; noted again whenever the job has changed, and worked out anew where it is not there.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct JobLine {
    /// The job.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// Parts that are not struck out.
    pub parts: usize,
    /// Photos that are not struck out.
    pub photos: usize,
    /// When something was last said.
    pub last: Millis,
}

impl JobLine {
    /// The line of an open job; nothing before its first entry.
    #[must_use]
    pub fn of(id: Id, job: &Job, device: Id) -> Option<Self> {
        let last = job.record().entries().map(|entry| entry.at).max()?;
        let (parts, photos) = match ask(job, &Query::Head, device) {
            View::Head(head) => (head.parts, head.photos),
            _ => (0, 0),
        };
        Some(Self { id, name: job.name(id), parts, photos, last })
    }

    /// What is kept while nobody knows the line.
    #[must_use]
    pub fn unknown(id: Id) -> Write {
        Write::Meta(format!("{PREFIX}{id}"), String::new())
    }

    /// How it is kept.
    #[must_use]
    pub fn write(&self) -> Write {
        Write::Meta(format!("{PREFIX}{}", self.id), serde_json::to_string(self).unwrap_or_default())
    }
}

/// All jobs, latest first.
///
/// # Errors
/// When the store does not answer.
pub(crate) async fn all<S: Store>(store: &S, device: Id) -> Result<Vec<JobLine>, Failure> {
    let noted = store.metas(PREFIX).await?;
    let noted = noted.iter().filter_map(|(_, text)| serde_json::from_str::<JobLine>(text).ok());
    let mut lines: BTreeMap<Id, JobLine> = noted.map(|line| (line.id, line)).collect();
    for job in store.jobs().await? {
        if !lines.contains_key(&job) {
            let folded = Job::from_entries(load::all(store, job).await?.entries);
            lines.extend(JobLine::of(job, &folded, device).map(|line| (job, line)));
        }
    }
    let mut lines: Vec<JobLine> = lines.into_values().collect();
    lines.sort_by_key(|line| (std::cmp::Reverse(line.last), line.id));
    Ok(lines)
}
