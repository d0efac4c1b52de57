use serde::{Deserialize, Serialize};

use super::certainty::{Drawing, certainty};
use super::certainty_view::CertaintyView;
use super::heavy_query::HeavyQuery;
use super::undecided::{UndecidedView, undecided};
use crate::job::Job;
use crate::record::Kind;

/// The answer to a heavy question. It stands beside [`View`](crate::job::View), so that whoever answers quick questions
/// alone does not carry what heavy ones need.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "view", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Reckoned {
    /// To [`HeavyQuery::Certainty`].
    Certainty(Box<CertaintyView>),
    /// To [`HeavyQuery::Undecided`].
    Undecided(Box<UndecidedView>),
    /// What was asked about is not in this job.
    Nothing,
}

/// Answers a heavy question.
///
/// ```
/// use asfound_core::costing::{reckon, HeavyQuery, Reckoned};
/// use asfound_core::job::Job;
/// let query: HeavyQuery = serde_json::from_str(r#"{"ask":"undecided"}"#).unwrap();
/// assert!(matches!(reckon(&Job::new(), &query), Reckoned::Undecided(view) if view.parts.is_empty()));
/// ```
#[must_use]
pub fn reckon(job: &Job, query: &HeavyQuery) -> Reckoned {
    match query {
        HeavyQuery::Certainty { part, today, set, test, draws, seed } => {
            let drawing = Drawing { draws: *draws, seed: *seed };
            let part = job.item_of(Kind::Part, *part).map(|_| *part);
            part.map_or(Reckoned::Nothing, |part| {
                Reckoned::Certainty(Box::new(certainty(job, part, *today, set.as_ref(), test.as_ref(), drawing)))
            })
        }
        HeavyQuery::Undecided { today, draws, seed } => {
            let drawing = Drawing { draws: *draws, seed: *seed };
            Reckoned::Undecided(Box::new(undecided(job, *today, drawing)))
        }
    }
}
