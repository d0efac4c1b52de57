use serde::{Deserialize, Serialize};

use super::break_even::BreakEven;
use super::flips::Flip;
use super::kit::KitView;
use super::limits::WhyNot;
use super::rated::Rated;
use super::starting::StartingValues;
use crate::job::RecordView;
use crate::job::vocabulary::{Certainty, Route};
use crate::quantity::{Chance, Currency, Estimate, Minutes, Money};
use crate::record::Id;

/// The quotes of a part, side by side.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CostView {
    /// Which part.
    pub part: Id,
    /// The currency of all estimates.
    pub currency: Currency,
    /// What an hour is worth: of the job, or as it was turned for this question, like the two below.
    pub hour_value: Estimate,
    /// Yearly rate of interest, as a share.
    pub interest: f64,
    /// How many years the vehicle will be kept.
    pub years_kept: f64,
    /// Its quotes, in order of id; kits that are quoted on other parts and cover this one among them.
    pub quotes: Vec<QuoteCost>,
    /// The allowed quote of the least present value.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cheapest: Option<Id>,
    /// The figures are so unsure that each of these may be cheaper than the cheapest after all: the order is open.
    pub open_with: Vec<Id>,
    /// At which value of which figure another quote becomes the cheapest.
    pub flips: Vec<Flip>,
    /// Where two quotes cost the same.
    pub break_evens: Vec<BreakEven>,
    /// The kits among the quotes, with what they cover.
    pub kits: Vec<KitView>,
    /// The decision that holds, with the figures it was made at.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chosen: Option<RecordView>,
    /// Another quote is cheaper than the chosen one by more than the threshold of the job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub overtaken: Option<Overtaken>,
    /// The routes that are left for the part, whatever its quotes say: the usual ones of its family first.
    pub left: Vec<Route>,
    /// What a quote of each route starts with.
    pub starting: Vec<StartingValues>,
}

/// A decision that another quote has overtaken.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Overtaken {
    /// The quote that is cheaper now.
    pub by: Id,
    /// How much cheaper.
    pub saves: Estimate,
}

/// One quote with what it really costs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct QuoteCost {
    /// Its id.
    pub id: Id,
    /// Its route.
    pub route: Route,
    /// The supplier or specialist.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<String>,
    /// Whether it may be chosen.
    pub allowed: bool,
    /// Why not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub why: Option<WhyNot>,
    /// The lines that add up to the present value; a line that is nothing is left out, but for cash, own time and risk.
    pub lines: Vec<CostLine>,
    /// What it is expected to cost now: the lines but the renewals.
    pub expected: Estimate,
    /// What it is worth now over the years that the vehicle is kept.
    pub present: Estimate,
    /// The same as equal sums at the end of every year.
    pub yearly: Estimate,
    /// How often it is done again within those years.
    pub renewals: usize,
    /// So low 8 times in 10, at least.
    pub low: Estimate,
    /// So high 8 times in 10, at most.
    pub high: Estimate,
    /// The share of the lines that rests on guesses, from 0 to 1.
    pub guessed: f64,
    /// All that is paid at first: prices, and the surcharge in full.
    pub peak: Money,
    /// Cash as entered, or as it comes to at the rate that was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cash: Option<Money>,
    /// How that came about, where a rate was entered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated: Option<Rated>,
    /// The rate at which its duty was worked out by the terms of its supplier, in parts of ten thousand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub duty_rate: Option<i64>,
    /// The same of its tax.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tax_rate: Option<i64>,
    /// Own hours as entered, in minutes.
    pub own_time: Minutes,
    /// The chance that it fails, as entered.
    pub chance: Chance,
    /// Own hours to strip again as entered, in minutes.
    pub strip_again: Minutes,
    /// Whether the cost rests on a guess.
    pub guess: bool,
    /// How sure the cash is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cash_certainty: Option<Certainty>,
    /// How sure the own hours are.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own_time_certainty: Option<Certainty>,
    /// How sure the chance is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chance_certainty: Option<Certainty>,
    /// The quote that is turned to first when it fails.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fallback: Option<Id>,
    /// It can fail, and there is no other quote to fall back on: the cost of that is not known, and not counted.
    pub fails_into_nothing: bool,
    /// Its record, for editing.
    pub record: RecordView,
}

/// A named part of a cost.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CostLine {
    /// Which part.
    pub kind: LineKind,
    /// How much.
    pub amount: Estimate,
    /// It rests on a guess.
    pub guess: bool,
}

/// The parts of a cost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum LineKind {
    /// Cash.
    Cash,
    /// Freight.
    Freight,
    /// Tax.
    Tax,
    /// Duty.
    Duty,
    /// What the work uses up.
    Consumables,
    /// Surcharge × the chance that it is withheld.
    Surcharge,
    /// What the other parts in a kit save by it.
    Shared,
    /// Own hours at the value of an hour.
    OwnTime,
    /// Chance × (fallback + stripping again).
    Risk,
    /// All of it again, with stripping again, whenever its life ends.
    Renewals,
}
