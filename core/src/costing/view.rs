use serde::{Deserialize, Serialize};

use super::break_even::BreakEven;
use super::quote::WhyNot;
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
    /// What an hour is worth.
    pub hour_value: Money,
    /// Its quotes, in order of id.
    pub quotes: Vec<QuoteCost>,
    /// The allowed quote of the least expected cost.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cheapest: Option<Id>,
    /// Own hours at which two quotes cost the same.
    pub break_evens: Vec<BreakEven>,
    /// The decision that holds, with the figures it was made at.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chosen: Option<RecordView>,
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
    /// The lines that add up to the expected cost.
    pub lines: Vec<CostLine>,
    /// What it is expected to cost.
    pub expected: Estimate,
    /// Cash as entered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cash: Option<Money>,
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
    /// The quote that is fallen back on when it fails.
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
}

/// The parts of a cost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum LineKind {
    /// Cash.
    Cash,
    /// Own hours at the value of an hour.
    OwnTime,
    /// Chance × (fallback + stripping again).
    Risk,
}
