use serde::{Deserialize, Serialize};

use super::heavy_query::HeavyQuery;
use crate::costing::{CertaintyView, Drawing, UndecidedView, certainty, undecided};
use crate::job::{ContentsView, Job};
use crate::plan::{FrontierView, KeptPlansView, PlanView, SwayView, frontier, kept_plans, plan, sway};
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
    /// To [`HeavyQuery::KitContents`].
    KitContents(ContentsView),
    /// To [`HeavyQuery::Plan`].
    Plan(Box<PlanView>),
    /// To [`HeavyQuery::Frontier`].
    Frontier(Box<FrontierView>),
    /// To [`HeavyQuery::Sway`].
    Sway(Box<SwayView>),
    /// To [`HeavyQuery::KeptPlans`].
    KeptPlans(Box<KeptPlansView>),
    /// What was asked about is not in this job.
    Nothing,
}

/// Answers a heavy question.
///
/// ```
/// use asfound_core::reckoning::{reckon, HeavyQuery, Reckoned};
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
        HeavyQuery::KitContents { quote, lines } => {
            job.contents_view(*quote, lines).map_or(Reckoned::Nothing, Reckoned::KitContents)
        }
        HeavyQuery::Plan(query) => Reckoned::Plan(Box::new(plan(job, query))),
        HeavyQuery::Frontier(query) => Reckoned::Frontier(Box::new(frontier(job, query))),
        HeavyQuery::Sway(query) => Reckoned::Sway(Box::new(sway(job, query))),
        HeavyQuery::KeptPlans { today } => Reckoned::KeptPlans(Box::new(kept_plans(job, *today))),
    }
}
