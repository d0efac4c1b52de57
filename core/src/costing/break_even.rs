use serde::{Deserialize, Serialize};

use super::input::{Dial, Input, Setting};
use super::line::{Piece, Turning};
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
    turning.pieces(0.0, true).find_map(|piece| turning.crossing(&piece, one, other))
}

/// Break-evens between any two quotes that may be chosen: of the hours on each, and of the value of an hour.
pub(super) fn break_evens(setting: &Setting) -> Vec<BreakEven> {
    let open: Vec<usize> = (0..setting.quotes.len()).filter(|at| setting.quotes[*at].allowed).collect();
    let by_value = Turning::new(setting, Dial { input: Input::HourValue, quote: None });
    let by_value = (&by_value, by_value.pieces(0.0, true).collect::<Vec<_>>());
    let mut found = Vec::new();
    for one in open.iter().copied() {
        let quote = setting.quotes[one].id;
        let by_hours = Turning::new(setting, Dial { input: Input::OwnTime, quote: Some(quote) });
        let by_hours = (&by_hours, by_hours.pieces(0.0, true).collect::<Vec<_>>());
        for other in open.iter().copied().filter(|other| *other != one) {
            let first = |(turning, pieces): &(&Turning<'_>, Vec<Piece>)| {
                pieces.iter().find_map(|piece| turning.crossing(piece, one, other))
            };
            // Hours that are worth nothing break nothing even.
            let hours = first(&by_hours).map(|minutes| minutes / 60.0).filter(|_| setting.terms.hour_value > 0.0);
            let hour_value = first(&by_value);
            if hours.is_some() || hour_value.is_some() {
                found.push(BreakEven { quote, against: setting.quotes[other].id, hours, hour_value });
            }
        }
    }
    found
}
