//! What the answers about terms look like: suppliers and specialists, and the rules of what fits what.

use serde::{Deserialize, Serialize};

use super::view::RecordView;
use super::vocabulary::Route;
use crate::costing::BreachView;
use crate::record::Id;

/// Suppliers and specialists.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SuppliersView {
    /// By name.
    pub suppliers: Vec<SupplierLine>,
    /// Names that quotes carry and that no supplier and no vehicle has, the most used first.
    pub unnamed: Vec<UnnamedSupplier>,
}

/// One supplier or specialist. Quotes are theirs by name, spaces and case aside.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SupplierLine {
    /// The record: name and terms.
    pub record: RecordView,
    /// What carriage costs from a value or a mass on, the least first.
    pub tiers: Vec<RecordView>,
    /// How many quotes are from them. Of several of one name the first by id has the quotes.
    pub quotes: usize,
}

/// A name without a record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct UnnamedSupplier {
    /// As most quotes write it.
    pub name: String,
    /// How many quotes carry it.
    pub quotes: usize,
}

/// Rules between parts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RulesView {
    /// In order of what they are about.
    pub rules: Vec<RuleLine>,
}

/// One rule.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RuleLine {
    /// The record: relation, price.
    pub record: RecordView,
    /// What its subject is called: a part, a donor, or the part of a quote with whom that is from. Empty when it is not here.
    pub subject: String,
    /// The route of the subject, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub subject_route: Option<Route>,
    /// What the other is called.
    pub other: String,
    /// The route of the other, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_route: Option<Route>,
    /// The part of the subject, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub subject_part: Option<Id>,
    /// The part of the other, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_part: Option<Id>,
    /// The decisions break it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub breach: Option<BreachView>,
}
