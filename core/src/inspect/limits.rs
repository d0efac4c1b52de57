//! Two limits kept apart: beyond the discard limit a part is scrap; beyond the machining limit it may be used, but not cut.

use serde::{Deserialize, Serialize};

use super::proof::{Bounds, Proof, Proved, Rule, prove};
use super::uncertainty::Measured;
use crate::record::stored_enum;

/// The limits of one feature, in the base unit of what is measured.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Limits {
    /// Beyond it the part is scrap.
    pub discard: Bounds,
    /// What it may be after machining; stricter than the discard limit.
    pub machining: Bounds,
    /// What it was when new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub as_new: Option<f64>,
}

stored_enum! {
    /// What a reading allows.
    pub enum Use {
        /// Proved beyond the discard limit.
        Scrap = "scrap",
        /// Not proved: measure better, or treat it as scrap.
        NotProved = "not-proved",
        /// Proved good as it is, and proved beyond the machining limit: not to be cut.
        NotToBeCut = "not-to-be-cut",
        /// Proved good as it is; whether it may be cut is not proved, or no limit says.
        AsItIs = "as-it-is",
        /// Proved good, and within the machining limit as it is.
        MayBeCut = "may-be-cut",
    }
}

stored_enum! {
    /// Where wear stands.
    pub enum WearStands {
        /// Nothing is worn, or it is on the other side of new: a reading or the size when new may be wrong.
        Unworn = "unworn",
        /// Some of the allowance is used.
        Within = "within",
        /// More than the allowance is used.
        Beyond = "beyond",
    }
}

/// Wear as a share of what may be worn.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Wear {
    /// 0 as new, 1 at the discard limit; below 0 and above 1 as it comes out.
    pub share: f64,
    /// Where that stands.
    pub stands: WearStands,
}

/// A reading against both limits.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Against {
    /// What it allows.
    pub allows: Use,
    /// What it proves against the discard limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub discard: Option<Proof>,
    /// What it proves against the machining limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machining: Option<Proof>,
    /// The most that may be cut off a size that has one machining limit, with both limits still proved kept; left out where
    /// nothing may.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_cut: Option<f64>,
    /// Wear as a share of the allowance.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wear: Option<Wear>,
}

impl Limits {
    /// Where cutting ends, where there is one machining limit: at it, or at the discard limit should that be stricter.
    fn end_of_cutting(&self) -> Option<Bounds> {
        let Self { discard, machining, .. } = self;
        match (machining.least, machining.most) {
            (Some(least), None) => Some(Bounds::at_least(discard.least.map_or(least, |discard| discard.max(least)))),
            (None, Some(most)) => Some(Bounds::at_most(discard.most.map_or(most, |discard| discard.min(most)))),
            _ => None,
        }
    }
}

/// A reading against the limits of its feature.
///
/// ```
/// use asfound_core::inspect::{Bounds, Instrument, Limits, Rule, Use, against, measured};
/// // A disc, new 9.5 mm, to be discarded below 8.4, not to be skimmed below 8.9.
/// let (discard, machining) = (Bounds::at_least(8_400_000.0), Bounds::at_least(8_900_000.0));
/// let limits = Limits { discard, machining, as_new: Some(9_500_000.0) };
/// let micrometer = Instrument { resolution: Some(10_000.0), ..Instrument::default() };
/// let disc = measured(&[8_620_000.0], &micrometer).unwrap();
/// let found = against(&disc, &limits, Rule::OneSided2017);
/// assert_eq!(found.allows, Use::NotToBeCut);
/// assert!((found.wear.unwrap().share - 0.8).abs() < 1e-12);
/// ```
#[must_use]
pub fn against(measured: &Measured, limits: &Limits, rule: Rule) -> Against {
    let discard = prove(measured, &limits.discard, rule);
    let machining = prove(measured, &limits.machining, rule);
    let allows = allows(discard.map(|proof| proof.proved), machining.map(|proof| proof.proved));
    let end = limits.end_of_cutting().filter(|_| allows == Use::MayBeCut);
    Against {
        allows,
        discard,
        machining,
        most_cut: end.and_then(|end| prove(measured, &end, rule)).map(|proof| proof.margin - proof.guard),
        wear: wear(measured.value, limits),
    }
}

const fn allows(discard: Option<Proved>, machining: Option<Proved>) -> Use {
    match (discard, machining) {
        (Some(Proved::Bad), _) => Use::Scrap,
        (Some(Proved::Nothing), _) => Use::NotProved,
        (_, Some(Proved::Good)) => Use::MayBeCut,
        (Some(Proved::Good), Some(Proved::Bad)) => Use::NotToBeCut,
        (Some(Proved::Good), _) => Use::AsItIs,
        (None, _) => Use::NotProved,
    }
}

/// What the part would be proved after so much (0 or more) is cut off a size that has one machining limit; nothing where it
/// has none, or two. It is measured again once it is cut.
#[must_use]
pub fn after_cut(measured: &Measured, cut: f64, limits: &Limits, rule: Rule) -> Option<Proof> {
    let end = limits.end_of_cutting()?;
    let value = if end.least.is_some() { measured.value - cut } else { measured.value + cut };
    prove(&Measured { value, ..measured.clone() }, &end, rule)
}

/// (new − reading) ÷ (new − discard limit): for what shrinks as for what grows. Where there are two limits, the one on the
/// side to which it has moved.
#[must_use]
pub fn wear(value: f64, limits: &Limits) -> Option<Wear> {
    let new = limits.as_new?;
    let end = match (limits.discard.least, limits.discard.most) {
        (Some(least), Some(most)) => {
            if value < new {
                least
            } else {
                most
            }
        }
        (least, most) => least.or(most)?,
    };
    let share = (new - value) / (new - end);
    let stands = match share {
        share if share <= 0.0 => WearStands::Unworn,
        share if share <= 1.0 => WearStands::Within,
        _ => WearStands::Beyond,
    };
    share.is_finite().then_some(Wear { share, stands })
}
