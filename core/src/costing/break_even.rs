use serde::{Deserialize, Serialize};

use super::cost::{direct, expected};
use super::quote::Figures;
use super::view::QuoteCost;
use crate::job::vocabulary::Route;
use crate::quantity::{Minutes, Money};
use crate::record::Id;

/// Own hours on one quote at which it costs the same as another.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct BreakEven {
    /// The quote whose own hours are varied.
    pub quote: Id,
    /// The quote it is held against.
    pub against: Id,
    /// The hours, with fractions, at which both cost the same.
    pub hours: f64,
}

/// Own hours at which `quote` and `against` cost the same, all other figures as they are; nothing when no number of hours
/// from zero up makes them equal (an hour is worth nothing, or one is dearer at any number of hours).
///
/// The expected cost of `quote` is a straight line in its own hours. That of `against` is one with at most one bend, since
/// it may itself fall back on `quote`; both stretches are solved, and the first crossing is taken. Break-even analysis:
/// any textbook of engineering economy.
///
/// ```
/// use asfound_core::costing::{break_even_hours, Figures};
/// use asfound_core::quantity::{Chance, Currency, Minutes, Money};
/// use asfound_core::record::Id;
/// let quote = |id, cash, percent, strip| Figures {
///     id: Id::from_bytes([id; 16]), cash, own_time: Minutes::new(0), chance: Chance::of_100(percent),
///     strip_again: Minutes::new(strip), allowed: true,
/// };
/// let (repair, buy) = (quote(1, 18_00, 25, 90), quote(2, 106_00, 0, 0));
/// let twenty = Money::from_minor(20_00, Currency::GBP);
/// let hours = break_even_hours(&repair, &buy, &[repair, buy], twenty).unwrap();
/// assert!((hours - 2.7).abs() < 1e-12);
/// ```
#[must_use]
pub fn break_even_hours(quote: &Figures, against: &Figures, all: &[Figures], hour_value: Money) -> Option<f64> {
    #[expect(clippy::cast_precision_loss, reason = "money within bounds is below 2^53")]
    let value = hour_value.minor as f64;
    if hour_value.minor <= 0 || quote.id == against.id {
        return None;
    }
    let idle = Figures { own_time: Minutes::new(0), ..*quote };
    let others: Vec<Figures> = all.iter().filter(|other| other.id != quote.id).copied().collect();
    let fixed = expected(&idle, all, hour_value).total();
    let chance = against.chance.share();
    // While the quote is what the other would fall back on, each hour on it makes the other dearer too.
    let strip = against.strip_again.at(hour_value).minor;
    let rest =
        others.iter().filter(|other| other.allowed && other.id != against.id).map(|other| direct(other, hour_value));
    let rest = rest.min_by(f64::total_cmp);
    let start = direct(against, hour_value) + chance * strip;
    let bend = rest.map(|rest| (rest - direct(&idle, hour_value)) / value);
    let falls_back = quote.allowed && bend.is_none_or(|bend| bend > 0.0);
    if falls_back {
        let gap = start + chance * direct(&idle, hour_value) - fixed;
        let slope = value * (1.0 - chance);
        let hours = gap / slope;
        if slope > 0.0 && hours >= 0.0 && bend.is_none_or(|bend| hours <= bend) {
            return Some(hours);
        }
    }
    let beyond = start + chance * rest.unwrap_or(0.0) - fixed;
    let hours = beyond / value;
    let from = if falls_back { bend? } else { 0.0 };
    (hours >= from.max(0.0)).then_some(hours)
}

/// Break-evens between the routes worked at the own bench and those that bring another part: the numbers that settle
/// repairing against buying.
pub(super) fn break_evens(views: &[QuoteCost], all: &[Figures], hour_value: Money) -> Vec<BreakEven> {
    let figures = |id: Id| all.iter().find(|figures| figures.id == id);
    let mut found = Vec::new();
    for quote in views.iter().filter(|view| view.allowed && is_own_work(view.route)) {
        for against in views.iter().filter(|view| view.allowed && brings_another(view.route)) {
            let (Some(one), Some(other)) = (figures(quote.id), figures(against.id)) else { continue };
            let hours = break_even_hours(one, other, all, hour_value);
            found.extend(hours.map(|hours| BreakEven { quote: quote.id, against: against.id, hours }));
        }
    }
    found
}

const fn is_own_work(route: Route) -> bool {
    matches!(route, Route::UseAgain | Route::RepairHere | Route::SendOut | Route::Irreplaceable)
}

const fn brings_another(route: Route) -> bool {
    matches!(route, Route::Exchange | Route::Buy | Route::Kit | Route::Donor)
}
