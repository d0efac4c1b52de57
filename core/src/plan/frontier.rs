//! How a plan's cost hangs on a limit: the frontier.

use serde::{Deserialize, Serialize};

use super::answer::on_turned;
use super::collide::least_use;
use super::model::Model;
use super::of_job::planned;
use super::query::PlanQuery;
use super::search::{PlanLinks, PlanProof, Search, Solved};
use crate::job::Job;
use crate::quantity::{Currency, Minutes, Money};

/// How many steps are made for each point where nothing is said.
const NODES: u32 = 60;
const MOST_NODES: u32 = 10_000;
/// How many points are worked out where nothing is said, and at most.
const POINTS: u32 = 7;
const MOST_POINTS: u32 = 40;
/// One hour.
const HOUR: i64 = 60;
/// So many units of money more are tried, in minor units.
const MONEY: i64 = 10_00;

/// What a frontier is asked for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct FrontierQuery {
    /// Against what.
    pub of: Scarce,
    /// The plan whose frontier it is; `nodes` are the steps for each point.
    #[serde(default)]
    pub plan: PlanQuery,
    /// How many points between the least that will do and as much as is ever wanted, from 2 to 40.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub points: Option<u32>,
}

/// What there is never enough of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Scarce {
    /// All that is paid at first, in minor units.
    Cash,
    /// Own time, in minutes.
    Hours,
}

/// How what the whole job costs hangs on the budget, or on the own hours.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct FrontierView {
    /// Against what.
    pub of: Scarce,
    /// The currency of all sums.
    pub currency: Currency,
    /// The limit that is kept today, in minor units or minutes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit: Option<i64>,
    /// Nothing is to be had with less than this; nothing where that is not proved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least: Option<i64>,
    /// The best plan for each limit, the least limit first: none costs more than the one before.
    pub points: Vec<FrontierPoint>,
    /// The plan at today's limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plan: Option<FrontierPoint>,
    /// What was chosen, with each open part's own cheapest: what it uses, and what it costs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own: Option<FrontierPoint>,
    /// What a little more of the limit saves; nothing where there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub more: Option<OneMore>,
}

/// The best plan for one limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct FrontierPoint {
    /// The limit, in minor units or minutes.
    pub limit: i64,
    /// How much of it the plan uses.
    pub used: i64,
    /// Its present value, all in.
    pub cost: Money,
    /// No plan within the limit costs less.
    pub bound: Money,
    /// What is paid at first.
    pub cash: Money,
    /// Own time.
    pub own_time: Minutes,
    /// How sure it is that nothing is better.
    pub proof: PlanProof,
}

/// What a little more of a limit saves.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct OneMore {
    /// So much more, in minor units or minutes.
    pub more: i64,
    /// By how much less the job then costs.
    pub saves: Money,
    /// It is sure to the minor unit: both plans are proved.
    pub sure: bool,
}

/// The frontier of a job: by solving again and again, the least limit first, each plan handed on to the next.
///
/// Worked out are the least that any plan needs, and as much as the best plan uses where there is no such limit; between them
/// lie the points.
#[must_use]
pub fn frontier(job: &Job, query: &FrontierQuery) -> FrontierView {
    on_turned(job, &query.plan, |job| {
        let planned = planned(job, &query.plan);
        let currency = job.settings().currency;
        let nodes = query.plan.nodes.unwrap_or(NODES).clamp(1, MOST_NODES);
        let mut along = Along { of: query.of, model: planned.model.clone(), nodes, currency, last: planned.own() };
        let limit = along.limit();
        let least = least_use(&along.model, query.of, nodes);
        let mut view = FrontierView {
            of: query.of,
            currency,
            limit,
            least: least.filter(|(_, is_proved)| *is_proved).map(|(least, _)| least),
            points: Vec::new(),
            plan: None,
            own: planned.own().map(|own| along.point(i64::MAX, &own, None)),
            more: None,
        };
        let free = along.solve(None);
        let (Some((from, _)), Some(free)) = (least, free) else { return view };
        let count = i64::from(query.points.unwrap_or(POINTS).clamp(2, MOST_POINTS)) - 1;
        let span = (free.used - from).max(0);
        let mut limits: Vec<i64> = (0..=count).map(|at| from + span * at / count).collect();
        limits.extend(limit.filter(|limit| *limit > from && *limit < free.used));
        limits.sort_unstable();
        limits.dedup();
        along.last = None;
        for limit in limits {
            let Some(point) = along.solve(Some(limit)) else { continue };
            view.points.push(point);
        }
        if let Some(limit) = limit {
            along.last = None;
            view.plan = along.solve(Some(limit));
            let step = if query.of == Scarce::Hours { HOUR } else { MONEY };
            let more = along.solve(Some(limit.saturating_add(step)));
            view.more = view.plan.zip(more).map(|(now, then)| OneMore {
                more: step,
                saves: Money::from_minor(now.cost.minor - then.cost.minor, currency),
                sure: now.proof == PlanProof::Best && then.proof == PlanProof::Best,
            });
        } else {
            view.plan = Some(free);
        }
        view
    })
}

/// One limit after another.
struct Along {
    of: Scarce,
    model: Model,
    nodes: u32,
    currency: Currency,
    /// The plan of the limit before: it keeps a larger one, too.
    last: Option<Vec<usize>>,
}

impl Along {
    const fn limit(&self) -> Option<i64> {
        match self.of {
            Scarce::Cash => self.model.limits.cash,
            Scarce::Hours => self.model.limits.minutes,
        }
    }

    fn solve(&mut self, limit: Option<i64>) -> Option<FrontierPoint> {
        match self.of {
            Scarce::Cash => self.model.limits.cash = limit,
            Scarce::Hours => self.model.limits.minutes = limit,
        }
        let links = PlanLinks::of(&self.model);
        let mut search = Search::begin(&self.model, &links, 1);
        if let Some(last) = &self.last {
            search.offer(last);
        }
        for _ in 0..self.nodes {
            if !search.step() {
                break;
            }
        }
        let solved = search.solved();
        let taken = solved.taken.clone()?;
        let point = self.point(limit.unwrap_or(i64::MAX), &taken, Some(&solved));
        self.last = Some(taken);
        Some(FrontierPoint { limit: limit.unwrap_or(point.used), ..point })
    }

    fn point(&self, limit: i64, taken: &[usize], solved: Option<&Solved>) -> FrontierPoint {
        let worth = self.model.worth(taken);
        let used = if self.of == Scarce::Hours { worth.minutes } else { worth.cash };
        let bound = solved.and_then(|solved| solved.bound).unwrap_or(worth.cost);
        FrontierPoint {
            limit: if limit == i64::MAX { used } else { limit },
            used,
            cost: Money::from_minor(worth.cost, self.currency),
            bound: Money::from_minor(bound, self.currency),
            cash: Money::from_minor(worth.cash, self.currency),
            own_time: Minutes(worth.minutes),
            proof: solved.map_or(PlanProof::Within, |solved| solved.proof),
        }
    }
}
