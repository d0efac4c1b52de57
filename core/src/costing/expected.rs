use std::collections::BTreeSet;

use super::figures::{Figures, Terms};
use super::interest::{a_year, worth_now};
use crate::record::{Id, ordered_by};

/// What a quote really costs, in named lines that add up: all in minor units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cost {
    /// The price.
    pub cash: f64,
    /// Freight.
    pub freight: f64,
    /// Tax.
    pub tax: f64,
    /// Duty.
    pub duty: f64,
    /// What the work uses up.
    pub consumables: f64,
    /// Surcharge × the chance that it is withheld.
    pub surcharge: f64,
    /// What the other parts in a kit take off its price; nothing or below.
    pub shared: f64,
    /// Own hours × value of an hour.
    pub own_time: f64,
    /// Chance × (fallback + hours to strip again × value of an hour).
    pub risk: f64,
    /// All of it again, and stripping again, whenever its life ends while the vehicle is kept, discounted.
    pub renewals: f64,
    /// How often it is done again.
    pub times: usize,
    /// The quote that is turned to first when it fails.
    pub fallback: Option<Id>,
}

impl Cost {
    /// What it is expected to cost now: the lines but the renewals.
    #[must_use]
    pub fn expected(&self) -> f64 {
        self.direct() + self.risk
    }

    /// What it is worth now over the years that the vehicle is kept: all lines.
    #[must_use]
    pub fn present(&self) -> f64 {
        self.expected() + self.renewals
    }

    /// The same as equal sums at the end of every year.
    #[must_use]
    pub fn yearly(&self, terms: &Terms) -> f64 {
        self.present() * a_year(terms.interest, terms.years)
    }

    /// What it costs if nothing goes wrong.
    fn direct(&self) -> f64 {
        let prices = self.cash + self.freight + self.tax + self.duty + self.consumables;
        prices + self.surcharge + self.shared + self.own_time
    }
}

/// What every quote costs.
///
/// - Expected cost E = cash + hours × value of an hour + chance × (E of the fallback + stripping again), the last only when
///   the failure shows after refitting: an expectation over two outcomes, each weighted by its chance (decision-tree
///   roll-back, any textbook of engineering economy).
/// - The fallback is the one that was named; where none was, the allowed quotes that are left, in the order that is
///   cheapest on the whole: by (cost + chance × stripping again) ÷ (1 − chance). That order of trying until one succeeds
///   costs least, since exchanging two neighbours of it never pays. What has failed once is not tried again, so that
///   fallbacks never go round in a circle.
/// - Over the years that the vehicle is kept: E again, and stripping again, whenever the life ends before they do,
///   discounted ([`worth_now`]). A life beyond them counts as they do.
///
/// ```
/// use asfound_core::costing::{costs, Figures, Terms};
/// use asfound_core::job::vocabulary::Route;
/// use asfound_core::record::Id;
/// // Repair: 18 + 2 h at 20, fails 25 of 100, then buy for 106 and strip again for 1.5 h.
/// let (one, other) = (Id::from_bytes([1; 16]), Id::from_bytes([2; 16]));
/// let repair = Figures { cash: 18_00.0, own_time: 120.0, chance: 0.25, strip_again: 90.0, ..Figures::bare(one, Route::RepairHere) };
/// let buy = Figures { cash: 106_00.0, ..Figures::bare(other, Route::Buy) };
/// let terms = Terms { hour_value: 20_00.0, interest: 0.0, years: 10.0 };
/// let found = costs(&[repair, buy], &terms);
/// assert_eq!(found[0].risk, 34_00.0);
/// assert_eq!(found[0].present(), 92_00.0);
/// ```
#[must_use]
pub fn costs(all: &[Figures], terms: &Terms) -> Vec<Cost> {
    let order = order_of_trying(all, terms);
    all.iter().map(|quote| cost(quote, all, &order, terms)).collect()
}

fn cost(quote: &Figures, all: &[Figures], order: &[usize], terms: &Terms) -> Cost {
    let after = chain(quote, all, order);
    // From the last fallback back to the first, each expectation inside the one before it.
    let then =
        after.iter().rev().fold(0.0, |then, next| direct(next, terms) + next.chance * (failing(next, terms) + then));
    let mut cost = Cost {
        cash: quote.cash,
        freight: quote.freight,
        tax: quote.tax,
        duty: quote.duty,
        consumables: quote.consumables,
        surcharge: quote.surcharge * quote.withheld,
        shared: -quote.saved(),
        own_time: quote.own_time / 60.0 * terms.hour_value,
        risk: quote.chance * (failing(quote, terms) + then),
        renewals: 0.0,
        times: 0,
        fallback: after.first().map(|next| next.id),
    };
    let each = cost.expected() + stripping(quote, terms);
    let ends = renewals(quote, terms);
    cost.times = ends.len();
    cost.renewals = ends.into_iter().map(|years| each * worth_now(terms.interest, years)).sum();
    cost
}

/// When a life ends before the vehicle is given away, in years from now.
pub(super) fn renewals(quote: &Figures, terms: &Terms) -> Vec<f64> {
    let Some(life) = quote.life.filter(|months| *months >= 1.0) else { return Vec::new() };
    let ends = (1_u32..).map(|time| f64::from(time) * life);
    ends.take_while(|months| *months < terms.years * 12.0).map(|months| months / 12.0).collect()
}

/// What is turned to when a quote fails, and when that fails, and so on; it ends with what cannot fail.
fn chain<'a>(quote: &Figures, all: &'a [Figures], order: &[usize]) -> Vec<&'a Figures> {
    let mut tried = BTreeSet::from([quote.id]);
    let mut found: Vec<&Figures> = Vec::new();
    let mut last = *quote;
    loop {
        // Whatever cannot fail has no fallback that counts; the first is told all the same.
        if last.chance == 0.0 && last.id != quote.id {
            return found;
        }
        let is_open = |next: &&Figures| next.allowed && !tried.contains(&next.id);
        let named = all.iter().find(|next| Some(next.id) == last.fallback).filter(is_open);
        let Some(next) = named.or_else(|| order.iter().map(|at| &all[*at]).find(is_open)) else { return found };
        tried.insert(next.id);
        found.push(next);
        last = *next;
    }
}

/// The quotes in the order in which trying until one succeeds costs least; of equal ones the first by id, so that the order
/// in which they were entered does not matter.
fn order_of_trying(all: &[Figures], terms: &Terms) -> Vec<usize> {
    let ratio = |quote: &Figures| match tried(quote, terms) / (1.0 - quote.chance) {
        ratio if ratio.is_finite() && quote.chance < 1.0 => ratio,
        // One that always fails comes after all that may succeed.
        _ => f64::INFINITY,
    };
    let ratios: Vec<f64> = all.iter().map(ratio).collect();
    let order: Vec<usize> = (0..all.len()).collect();
    ordered_by(order, |a, b| ratios[*a].total_cmp(&ratios[*b]).then(all[*a].id.cmp(&all[*b].id)))
}

/// What trying a quote costs: itself, and stripping again should it fail.
pub(super) fn tried(quote: &Figures, terms: &Terms) -> f64 {
    direct(quote, terms) + quote.chance * failing(quote, terms)
}

/// What a quote costs if nothing goes wrong.
pub(super) fn direct(quote: &Figures, terms: &Terms) -> f64 {
    let prices = quote.cash + quote.freight + quote.tax + quote.duty + quote.consumables;
    let price = prices + quote.surcharge * quote.withheld - quote.saved();
    price + quote.own_time / 60.0 * terms.hour_value
}

/// What failing costs besides the fallback.
pub(super) fn failing(quote: &Figures, terms: &Terms) -> f64 {
    if quote.fails_at_bench { 0.0 } else { stripping(quote, terms) }
}

pub(super) fn stripping(quote: &Figures, terms: &Terms) -> f64 {
    quote.strip_again / 60.0 * terms.hour_value
}

/// The cheapest of the allowed quotes: the least present value, of equal ones the first by id.
#[must_use]
pub fn cheapest(all: &[Figures], costs: &[Cost]) -> Option<usize> {
    let allowed = all.iter().zip(costs).enumerate().filter(|(_, (quote, _))| quote.allowed);
    let least = allowed
        .min_by(|(_, (a, one)), (_, (b, other))| one.present().total_cmp(&other.present()).then(a.id.cmp(&b.id)));
    least.map(|(at, _)| at)
}
