use serde::{Deserialize, Serialize};

use super::certainty::{Drawing, certainty};
use super::certainty_view::CertaintyView;
use super::undecided::{UndecidedView, undecided};
use crate::job::{Job, Query};
use crate::record::Kind;

/// The answer to a heavy question. It stands beside [`View`](crate::job::View), so that whoever answers quick questions
/// alone does not carry what heavy ones need.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "view", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Reckoned {
    /// To [`Query::Certainty`].
    Certainty(Box<CertaintyView>),
    /// To [`Query::Undecided`].
    Undecided(Box<UndecidedView>),
    /// What was asked about is not in this job.
    Nothing,
}

/// Answers a heavy question; nothing when it is not one, and [`ask`](crate::job::ask) answers it.
///
/// ```
/// use asfound_core::costing::{reckon, Reckoned};
/// use asfound_core::job::{Job, Query};
/// let query: Query = serde_json::from_str(r#"{"ask":"undecided"}"#).unwrap();
/// assert!(matches!(reckon(&Job::new(), &query), Some(Reckoned::Undecided(view)) if view.parts.is_empty()));
/// assert_eq!(reckon(&Job::new(), &Query::Places), None);
/// ```
#[must_use]
pub fn reckon(job: &Job, query: &Query) -> Option<Reckoned> {
    match query {
        Query::Certainty { part, today, set, test, draws, seed } => {
            let drawing = Drawing { draws: *draws, seed: *seed };
            let view = job
                .item_of(Kind::Part, *part)
                .map(|_| certainty(job, *part, *today, set.as_ref(), test.as_ref(), drawing));
            Some(view.map_or(Reckoned::Nothing, |view| Reckoned::Certainty(Box::new(view))))
        }
        Query::Undecided { today, draws, seed } => {
            let drawing = Drawing { draws: *draws, seed: *seed };
            Some(Reckoned::Undecided(Box::new(undecided(job, *today, drawing))))
        }
        _ => None,
    }
}
