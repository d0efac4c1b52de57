//! Whether a reading proves that a part is within its limit.
//!
//! The rules are told as ISO 14253-1 is told of on pages of little authority; the standard itself was not at hand. Chances
//! of conforming are those of JCGM 106:2012, clause 7, with nothing known beforehand of what is measured.

use serde::{Deserialize, Serialize};

use super::uncertainty::Measured;
use crate::record::stored_enum;

/// What may be: no less, no more, or both, in the base unit of what is measured. With neither, nothing is limited.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Bounds {
    /// The least that is good.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least: Option<f64>,
    /// The most that is good.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most: Option<f64>,
}

impl Bounds {
    /// No less than this.
    #[must_use]
    pub const fn at_least(least: f64) -> Self {
        Self { least: Some(least), most: None }
    }

    /// No more than this.
    #[must_use]
    pub const fn at_most(most: f64) -> Self {
        Self { least: None, most: Some(most) }
    }

    /// Two sides may differ by no more than this, either way.
    #[must_use]
    pub const fn differ_by(most: f64) -> Self {
        Self { least: Some(-most), most: Some(most) }
    }

    /// Whether nothing is limited: a size to note.
    #[must_use]
    pub const fn is_open(&self) -> bool {
        self.least.is_none() && self.most.is_none()
    }

    /// Whether the least lies above the most: nothing can keep it.
    #[must_use]
    pub fn is_crossed(&self) -> bool {
        self.least.zip(self.most).is_some_and(|(least, most)| least > most)
    }

    /// How far inside each end it is; less than nothing outside.
    fn inside(&self, value: f64) -> impl Iterator<Item = f64> {
        self.least.map(|least| value - least).into_iter().chain(self.most.map(|most| most - value))
    }

    /// How far inside the nearer end it is; less than nothing outside.
    #[must_use]
    pub fn margin(&self, value: f64) -> f64 {
        self.inside(value).fold(f64::INFINITY, f64::min)
    }
}

stored_enum! {
    /// Which rule decides.
    pub enum Rule {
        /// ISO 14253-1:1998: the whole interval reading ± U lies inside, or the whole of it outside. U is for 95.45 %.
        Whole1998 = "iso-14253-1-1998",
        /// ISO 14253-1:2017: the chance of conforming (of not conforming) is 95 % or more. At one limit that is a guard band of
        /// 1.65 standard uncertainties; with few degrees of freedom it is wider, by Student's t.
        OneSided2017 = "iso-14253-1-2017",
    }
}

/// The rule in force where nothing else is said: the edition of 2017.
pub const DEFAULT_RULE: Rule = Rule::OneSided2017;

/// The chance at which something counts as proved by the edition of 2017.
const PROVED: f64 = 0.95;

stored_enum! {
    /// What a reading proves. In order: the worst first.
    pub enum Proved {
        /// The part is outside its limit.
        Bad = "proved-bad",
        /// Neither: measure better, or treat it as bad.
        Nothing = "not-proved",
        /// The part is within its limit.
        Good = "proved-good",
    }
}

/// What a reading proves against a limit, and by which rule.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Proof {
    /// What is proved.
    pub proved: Proved,
    /// By which rule.
    pub rule: Rule,
    /// The chance of conforming, from 0 to 1; left out where nothing is known of the instrument.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chance: Option<f64>,
    /// How wide the guard band is on each side of a limit. By the edition of 2017, between two limits so near to one another
    /// that both are in doubt, what is proved good may have to lie further inside than this.
    pub guard: f64,
    /// How far inside the nearer end the reading is; less than nothing outside.
    pub margin: f64,
}

/// What a reading proves; nothing where nothing is limited. Without anything known of the instrument, nothing is proved.
///
/// ```
/// use asfound_core::inspect::{Bounds, Instrument, Proved, Rule, measured, prove};
/// let gauge = Instrument { stated: Some(15_000.0), ..Instrument::default() };
/// let at = |nanometres| {
///     let place = measured(&[nanometres], &gauge).unwrap();
///     prove(&place, &Bounds::at_most(20_050_000.0), Rule::Whole1998).unwrap().proved
/// };
/// assert_eq!(at(20_035_000.0), Proved::Good);
/// assert_eq!(at(20_040_000.0), Proved::Nothing);
/// assert_eq!(at(20_065_000.0), Proved::Bad);
/// ```
#[must_use]
pub fn prove(measured: &Measured, bounds: &Bounds, rule: Rule) -> Option<Proof> {
    let margin = (!bounds.is_open()).then(|| bounds.margin(measured.value))?;
    let guard = match rule {
        Rule::Whole1998 => measured.expanded,
        Rule::OneSided2017 => measured.within(1.0 - PROVED),
    };
    if !measured.is_known() {
        return Some(Proof { proved: Proved::Nothing, rule, chance: None, guard, margin });
    }
    Some(Proof { proved: verdict(measured, bounds, rule), rule, chance: Some(chance(measured, bounds)), guard, margin })
}

/// The chance that what was measured is within its limits: normal, or Student's t with few degrees of freedom
/// (JCGM 106:2012, 7.3 and 7.4).
#[must_use]
pub fn chance(measured: &Measured, bounds: &Bounds) -> f64 {
    (1.0 - bounds.inside(measured.value).map(|inside| outside(measured, inside)).sum::<f64>()).clamp(0.0, 1.0)
}

/// The chance of lying outside an end that the reading is so far inside of.
fn outside(measured: &Measured, inside: f64) -> f64 {
    if inside >= 0.0 { measured.beyond(inside) } else { 1.0 - measured.beyond(-inside) }
}

pub(super) fn verdict(measured: &Measured, bounds: &Bounds, rule: Rule) -> Proved {
    let margin = bounds.margin(measured.value);
    let (is_good, is_bad) = match rule {
        Rule::Whole1998 => {
            let expanded = measured.interval();
            (margin >= expanded, -margin >= expanded)
        }
        // Bad by one end alone: that a reading is too coarse for two near ends proves nothing.
        Rule::OneSided2017 => {
            (chance(measured, bounds) >= PROVED, margin < 0.0 && 1.0 - measured.beyond(-margin) >= PROVED)
        }
    };
    match (is_good, is_bad) {
        (true, _) => Proved::Good,
        (_, true) => Proved::Bad,
        _ => Proved::Nothing,
    }
}

/// The place that governs, with what it proves: proved bad before not proved before good, then the one with the least margin
/// (the least mean for a least size, the greatest for a greatest). So the whole is good only when every place is.
#[must_use]
pub fn worst(places: &[Measured], bounds: &Bounds, rule: Rule) -> Option<(usize, Proof)> {
    let proofs = places.iter().enumerate().filter_map(|(at, place)| Some((at, prove(place, bounds, rule)?)));
    proofs.min_by(|(_, one), (_, other)| one.proved.cmp(&other.proved).then(one.margin.total_cmp(&other.margin)))
}
