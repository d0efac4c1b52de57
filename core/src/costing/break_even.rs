use serde::{Deserialize, Serialize};

use super::input::{Dial, Input, Setting};
use super::line::{Turning, zero_within};
use crate::record::Id;

/// Where two quotes cost the same.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct BreakEven {
    /// The quote whose own hours are varied.
    pub quote: Id,
    /// The quote it is held against.
    pub against: Id,
    /// Own hours on the first, with fractions, at which both cost the same; left out when there are none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hours: Option<f64>,
    /// The value of an hour, in minor units, at which both cost the same; left out when there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hour_value: Option<f64>,
}

/// The least value of a figure from nothing up at which two quotes are worth the same now, all other figures as they are;
/// nothing when there is none within what is accepted.
///
/// Exact for money, hours, the value of an hour and chances: the crossing of straight pieces. Break-even analysis: any
/// textbook of engineering economy.
///
/// ```
/// use asfound_core::costing::{break_even, Dial, Figures, Input, Setting, Terms};
/// use asfound_core::job::vocabulary::Route;
/// use asfound_core::record::Id;
/// let (one, other) = (Id::from_bytes([1; 16]), Id::from_bytes([2; 16]));
/// let repair = Figures { cash: 18_00.0, chance: 0.25, strip_again: 90.0, ..Figures::bare(one, Route::RepairHere) };
/// let buy = Figures { cash: 106_00.0, ..Figures::bare(other, Route::Buy) };
/// let setting = Setting {
///     quotes: vec![repair, buy],
///     terms: Terms { hour_value: 20_00.0, interest: 0.0, years: 10.0 },
/// };
/// let minutes = break_even(&setting, Dial { input: Input::OwnTime, quote: Some(one) }, one, other).unwrap();
/// assert!((minutes / 60.0 - 2.7).abs() < 1e-12);
/// ```
#[must_use]
pub fn break_even(setting: &Setting, dial: Dial, one: Id, other: Id) -> Option<f64> {
    let at = |id: Id| setting.quotes.iter().position(|quote| quote.id == id);
    let (one, other) = (at(one)?, at(other)?);
    if one == other || !Turning::is_straight(dial.input) {
        return None;
    }
    let turning = Turning::new(setting, dial);
    for (start, end) in turning.pieces(0.0, true) {
        let gap = |at: f64| {
            let presents = turning.presents(at);
            presents[one] - presents[other]
        };
        if let Some(found) = zero_within((start, end), gap) {
            return Some(found);
        }
    }
    None
}

/// Break-evens between any two quotes that may be chosen: of the hours on each, and of the value of an hour.
pub(super) fn break_evens(setting: &Setting) -> Vec<BreakEven> {
    let open: Vec<Id> = setting.quotes.iter().filter(|quote| quote.allowed).map(|quote| quote.id).collect();
    let pairs = open.iter().flat_map(|one| open.iter().map(move |other| (*one, *other)));
    let found = pairs.filter(|(one, other)| one != other).map(|(quote, against)| {
        let minutes = break_even(setting, Dial { input: Input::OwnTime, quote: Some(quote) }, quote, against);
        let hour_value = break_even(setting, Dial { input: Input::HourValue, quote: None }, quote, against);
        // Hours that are worth nothing break nothing even.
        let hours = minutes.map(|minutes| minutes / 60.0).filter(|_| setting.terms.hour_value > 0.0);
        BreakEven { quote, against, hours, hour_value }
    });
    found.filter(|found| found.hours.is_some() || found.hour_value.is_some()).collect()
}
