use std::cmp::Reverse;

use serde::{Deserialize, Serialize};

use super::certainty::{Drawing, regret_of};
use super::cost::{peak, unsure};
use super::expected::{cheapest, costs};
use super::guess::guesses;
use super::simulation::simulate;
use crate::job::Job;
use crate::job::vocabulary::{Route, Standing};
use crate::quantity::{Currency, Day, Estimate, Money};
use crate::record::{FieldName, Id, Item, Kind, ordered_by, stored_enum};

/// How often figures are drawn for each part of a ranking where nothing is said.
pub const DRAWS_OF_RANKING: u32 = 1_000;

/// The parts that are not decided, those first where a wrong choice would cost most.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct UndecidedView {
    /// The currency of all estimates.
    pub currency: Currency,
    /// How often figures were drawn for each part.
    pub draws: u32,
    /// The seed they were drawn from.
    pub seed: u32,
    /// The parts: with quotes that may be chosen, by what a wrong choice would cost, then by the cash at stake; then those
    /// that wait for something, by what it is.
    pub parts: Vec<UndecidedPart>,
}

/// A part that is not decided.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct UndecidedPart {
    /// Its id.
    pub part: Id,
    /// Its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// Its name; empty when nobody gave one.
    pub name: String,
    /// Where it stands.
    pub standing: Standing,
    /// How many quotes may be chosen.
    pub quotes: usize,
    /// Which of them costs least at the figures as they were said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cheapest: Option<Id>,
    /// Its route.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub route: Option<Route>,
    /// The chance that it is the cheapest, from 0 to 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chance: Option<f64>,
    /// What choosing it is expected to cost beyond what turns out the cheapest.
    pub regret: Estimate,
    /// All that is paid for it at first, surcharge in full.
    pub cash: Money,
    /// What it waits for, where no quote may be chosen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub waits: Option<Waits>,
}

stored_enum! {
    /// What a part waits for before its route can be decided.
    pub enum Waits {
        /// It is judged, or there is nothing to judge, and has no quote.
        Quote = "quote",
        /// It has quotes, and none of them may be chosen.
        AllowedQuote = "allowed-quote",
        /// It is off, and nobody has said a first word of it.
        FirstWord = "first-word",
        /// It is still on the vehicle.
        ComingOff = "coming-off",
    }
}

/// The parts that are not decided, ranked by what a wrong choice would cost: the expected regret of the quote that is the
/// cheapest now.
#[must_use]
pub fn undecided(job: &Job, today: Option<Day>, drawing: Drawing) -> UndecidedView {
    let (draws, seed) = (drawing.draws_or(DRAWS_OF_RANKING), drawing.seed());
    let open = job.standing_ids(Kind::Part).filter(|part| !job.is_decided(*part));
    let parts = open.filter_map(|part| Some(ranked(job, part, job.item(part)?, today, draws, seed))).collect();
    let key = |part: &UndecidedPart| (part.waits, Reverse(part.cash.minor), part.tag.unwrap_or(i64::MAX), part.part);
    let parts = ordered_by(parts, |one: &UndecidedPart, other: &UndecidedPart| {
        let waits = one.waits.cmp(&other.waits);
        let regret = other.regret.minor.total_cmp(&one.regret.minor);
        waits.then(regret).then_with(|| key(one).cmp(&key(other)))
    });
    UndecidedView { currency: job.settings().currency, draws, seed, parts }
}

fn ranked(job: &Job, part: Id, item: &Item, today: Option<Day>, draws: u32, seed: u32) -> UndecidedPart {
    let currency = job.settings().currency;
    let (setting, spreads) = unsure(job, part, today, None);
    let best = cheapest(&setting.quotes, &costs(&setting.quotes, &setting.terms)).map(|at| setting.quotes[at]);
    let mut row = UndecidedPart {
        part,
        tag: item.read(FieldName::Tag),
        name: job.name(part),
        standing: job.standing(part),
        quotes: setting.quotes.len(),
        cheapest: best.map(|best| best.id),
        route: best.map(|best| best.route),
        chance: None,
        regret: Estimate::from_minor(0.0, currency),
        cash: Money::from_minor(0, currency),
        waits: None,
    };
    let Some(best) = best else {
        row.waits = Some(waits(job, part, item, row.standing));
        return row;
    };
    row.cash = job.item(best.id).map_or(row.cash, |quote| peak(job, quote));
    // What stands alone, or without a range, needs no drawing.
    if setting.quotes.len() == 1 || spreads.is_empty() {
        row.chance = Some(1.0);
        return row;
    }
    let found = simulate(&setting, &guesses(&setting, &spreads), draws, seed.into());
    row.chance = found.quotes.iter().find(|quote| quote.id == best.id).map(|quote| quote.cheapest);
    row.regret.minor = regret_of(&found, Some(best.id));
    row
}

fn waits(job: &Job, part: Id, item: &Item, standing: Standing) -> Waits {
    // Of what was never there nothing can be judged.
    let is_missing = item.is(FieldName::MissingFromStart);
    match standing {
        Standing::On if !is_missing => Waits::ComingOff,
        Standing::Off if !is_missing => Waits::FirstWord,
        _ if job.children(Kind::Quote, FieldName::Of, part).next().is_some() => Waits::AllowedQuote,
        _ => Waits::Quote,
    }
}
