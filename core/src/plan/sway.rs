//! Which parts change route when prices and hours move within their guesses.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::answer::on_turned;
use super::of_job::{Planned, planned};
use super::query::PlanQuery;
use super::search::{PlanLinks, Search};
use crate::costing::{WhatIf, drawn_figures};
use crate::job::Job;
use crate::job::vocabulary::Route;
use crate::record::{FieldName, Id, Kind};

/// How many steps are made for each draw where nothing is said.
const NODES: u32 = 20;
const MOST_NODES: u32 = 1_000;
/// How often figures are drawn where nothing is said, and at most.
const DRAWS: u32 = 20;
const MOST_DRAWS: u32 = 400;

/// What it is asked with.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SwayQuery {
    /// The plan that is looked at; `nodes` are the steps for each draw, `seed` is what figures are drawn from.
    pub plan: PlanQuery,
    /// How often figures are drawn, from 1 to 400; left out, 20 times.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub draws: Option<u32>,
}

/// How steady the plan of the whole job is, its figures being guesses.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SwayView {
    /// How often figures were drawn.
    pub draws: u32,
    /// How often a plan was found that fits.
    pub fitted: u32,
    /// The parts that go another way in some draw, the least steady first.
    pub parts: Vec<SwayPart>,
    /// How many parts go the same way every time.
    pub steady: u32,
}

/// A part that goes another way in some draw.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SwayPart {
    /// Which part.
    pub part: Id,
    /// Its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// Its name; empty when it has none.
    pub name: String,
    /// Its quotes, the one taken most often first.
    pub quotes: Vec<SwayQuote>,
}

/// How often a quote was in the best plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SwayQuote {
    /// Which quote.
    pub quote: Id,
    /// Its route.
    pub route: Route,
    /// From whom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<String>,
    /// In how many draws.
    pub times: u32,
    /// It is in the plan with figures as they stand.
    pub planned: bool,
}

/// Draws the unsure figures of all open parts over and over and plans the whole job each time.
///
/// In one draw all figures move together, each within its own guess, as in the certainty of one part. Each plan begins from the
/// one with figures as they stand, so that what changes was found to be better, and is not chance.
#[must_use]
pub fn sway(job: &Job, query: &SwayQuery) -> SwayView {
    on_turned(job, &query.plan, |job| {
        let nodes = query.plan.nodes.unwrap_or(NODES).clamp(1, MOST_NODES);
        let draws = query.draws.unwrap_or(DRAWS).clamp(1, MOST_DRAWS);
        let seed = query.plan.seed.unwrap_or(1);
        let base = planned(job, &query.plan);
        let mut view = SwayView { draws, fitted: 0, parts: Vec::new(), steady: 0 };
        // The same steps several times over: what is planned is compared with plans that were looked for less.
        let Some(today) = best(&base, None, nodes.saturating_mul(4)) else { return view };
        let mut times: BTreeMap<Id, BTreeMap<Id, (Route, u32)>> = BTreeMap::new();
        for settled in base.settled(&today) {
            times.entry(settled.part).or_default().insert(settled.quote, (settled.route, 0));
        }
        let parts: Vec<Id> = job.standing_ids(Kind::Part).collect();
        for draw in 0..draws {
            let mut set: WhatIf = query.plan.set.clone().unwrap_or_default();
            for part in &parts {
                drawn_figures(
                    job,
                    *part,
                    query.plan.today,
                    query.plan.set.as_ref(),
                    (seed.into(), draw.into()),
                    &mut set,
                );
            }
            let turned = planned(job, &PlanQuery { set: Some(set), ..query.plan.clone() });
            let from = turned.of_quotes(|part| {
                base.settled(&today).find(|settled| settled.part == part).map(|settled| settled.quote)
            });
            let Some(taken) = best(&turned, from.as_deref(), nodes) else { continue };
            view.fitted += 1;
            for settled in turned.settled(&taken) {
                let known = times.entry(settled.part).or_default().entry(settled.quote).or_insert((settled.route, 0));
                known.1 += 1;
            }
        }
        let planned_quotes: BTreeMap<Id, Id> =
            base.settled(&today).map(|settled| (settled.part, settled.quote)).collect();
        for (part, quotes) in times {
            let is_steady =
                quotes.iter().all(|(quote, (_, times))| *times == 0 || planned_quotes.get(&part) == Some(quote));
            if is_steady {
                view.steady += 1;
                continue;
            }
            let told = quotes.into_iter().map(|(quote, (route, times))| SwayQuote {
                quote,
                route,
                from: job.item(quote).and_then(|item| item.read(FieldName::From)),
                times,
                planned: planned_quotes.get(&part) == Some(&quote),
            });
            let mut quotes: Vec<SwayQuote> = told.collect();
            quotes.sort_by_key(|quote| (std::cmp::Reverse(quote.times), quote.quote));
            let tag = job.item(part).and_then(|item| item.read(FieldName::Tag));
            view.parts.push(SwayPart { part, tag, name: job.name(part), quotes });
        }
        view.parts
            .sort_by_key(|part| (part.quotes.iter().find(|quote| quote.planned).map(|quote| quote.times), part.part));
        view
    })
}

/// The best plan after so many steps.
fn best(planned: &Planned, from: Option<&[usize]>, nodes: u32) -> Option<Vec<usize>> {
    let links = PlanLinks::of(&planned.model);
    let mut search = Search::begin(&planned.model, &links, 1);
    if let Some(from) = from {
        search.offer(from);
    }
    for _ in 0..nodes {
        if !search.step() {
            break;
        }
    }
    search.solved().taken
}
