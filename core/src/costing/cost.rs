use super::break_even::break_evens;
use super::quote::{Figures, figures, why_not};
use super::view::{CostLine, CostView, LineKind, QuoteCost};
use crate::job::Job;
use crate::job::vocabulary::{Certainty, Route};
use crate::quantity::{Estimate, Money};
use crate::record::{FieldName, Id, Item, Kind};

/// The expected cost of a quote, in named lines that add up to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Expected {
    /// Cash, minor units.
    pub cash: f64,
    /// Own hours × value of an hour, minor units.
    pub own_time: f64,
    /// Chance × (fallback + hours to strip again × value of an hour), minor units.
    pub risk: f64,
    /// The quote that is fallen back on.
    pub fallback: Option<Id>,
}

impl Expected {
    /// The sum of the lines, minor units.
    #[must_use]
    pub fn total(&self) -> f64 {
        self.cash + self.own_time + self.risk
    }
}

/// What a quote costs if nothing goes wrong: cash + own hours × value of an hour, minor units.
pub(super) fn direct(figures: &Figures, hour_value: Money) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "money within bounds is below 2^53")]
    let cash = figures.cash as f64;
    cash + figures.own_time.at(hour_value).minor
}

/// The quote that is fallen back on when `figures` fails: the one among the other allowed quotes that costs least if
/// nothing goes wrong; of equal ones the first by id, so that the order of quotes does not matter.
pub(super) fn fallback<'a>(figures: &Figures, all: &'a [Figures], hour_value: Money) -> Option<&'a Figures> {
    let others = all.iter().filter(|other| other.allowed && other.id != figures.id);
    others.min_by(|a, b| direct(a, hour_value).total_cmp(&direct(b, hour_value)).then(a.id.cmp(&b.id)))
}

/// Expected cost of every quote:
/// cash + hours × value of an hour + chance × (cheapest other allowed quote + hours to strip again × value of an hour).
///
/// Expectation over two outcomes, each weighted by its chance (decision-tree roll-back, any textbook of engineering
/// economy). The fallback is taken at its cash and hours; where there is none, only the stripping again is counted.
///
/// ```
/// use asfound_core::costing::{expected_costs, Figures};
/// use asfound_core::quantity::{Chance, Currency, Minutes, Money};
/// use asfound_core::record::Id;
/// let quote = |id, cash, hours: i64, percent, strip| Figures {
///     id: Id::from_bytes([id; 16]), cash, own_time: Minutes::new(hours * 60), chance: Chance::of_100(percent),
///     strip_again: Minutes::new(strip), allowed: true,
/// };
/// // Repair: 18 + 2 h at 20, fails 25 of 100, then buy for 106 and strip again for 1.5 h.
/// let twenty = Money::from_minor(20_00, Currency::GBP);
/// let costs = expected_costs(&[quote(1, 18_00, 2, 25, 90), quote(2, 106_00, 0, 0, 0)], twenty);
/// assert_eq!(costs[0].risk, 34_00.0);
/// assert_eq!(costs[0].total(), 92_00.0);
/// ```
#[must_use]
pub fn expected_costs(all: &[Figures], hour_value: Money) -> Vec<Expected> {
    all.iter().map(|figures| expected(figures, all, hour_value)).collect()
}

pub(super) fn expected(figures: &Figures, all: &[Figures], hour_value: Money) -> Expected {
    let fallback = fallback(figures, all, hour_value);
    let after = fallback.map_or(0.0, |other| direct(other, hour_value)) + figures.strip_again.at(hour_value).minor;
    #[expect(clippy::cast_precision_loss, reason = "money within bounds is below 2^53")]
    let cash = figures.cash as f64;
    Expected {
        cash,
        own_time: figures.own_time.at(hour_value).minor,
        risk: figures.chance.share() * after,
        fallback: fallback.map(|other| other.id),
    }
}

/// The quotes of a part, side by side.
#[must_use]
pub fn cost(job: &Job, part: Id) -> CostView {
    let settings = job.settings();
    let hour_value = settings.hour_value;
    let quotes = quotes(job, part);
    let all: Vec<Figures> = quotes.iter().map(|(_, figures)| *figures).collect();
    let costs = expected_costs(&all, hour_value);
    let views: Vec<QuoteCost> =
        quotes.iter().zip(&costs).filter_map(|((item, figures), cost)| view(job, part, item, figures, cost)).collect();
    let cheapest = views.iter().filter(|view| view.why.is_none());
    let cheapest = cheapest.min_by(|a, b| a.expected.minor.total_cmp(&b.expected.minor).then(a.id.cmp(&b.id)));
    let choice = job.choice_of(part);
    CostView {
        part,
        currency: settings.currency,
        hour_value,
        cheapest: cheapest.map(|view| view.id),
        break_evens: break_evens(&views, &all, hour_value),
        chosen: choice.and_then(|choice| job.record_view(choice)),
        quotes: views,
    }
}

/// The quotes of a part that are not struck out, in order of id.
fn quotes(job: &Job, part: Id) -> Vec<(&Item, Figures)> {
    let Some(part_item) = job.item(part) else { return Vec::new() };
    let currency = job.settings().currency;
    let ids = job.children(Kind::Quote, FieldName::Of, part);
    let quotes = ids.filter_map(|id| {
        let item = job.item(id)?;
        let why = why_not(job, part_item, item.read(FieldName::Route)?, item.read(FieldName::Cash));
        Some((item, figures(id, item, currency, why.is_none())))
    });
    quotes.collect()
}

fn view(job: &Job, part: Id, item: &Item, figures: &Figures, cost: &Expected) -> Option<QuoteCost> {
    let settings = job.settings();
    let route: Route = item.read(FieldName::Route)?;
    let cash: Option<Money> = item.read(FieldName::Cash);
    let why = why_not(job, job.item(part)?, route, cash);
    let in_currency = |minor| Estimate::from_minor(minor, settings.currency);
    let certainty = |field, given: bool| item.read::<Certainty>(field).filter(|_| given);
    let cash_certainty = certainty(FieldName::CashCertainty, cash.is_some());
    let own_time_certainty = certainty(FieldName::OwnTimeCertainty, figures.own_time.0 > 0);
    let chance_certainty = certainty(FieldName::ChanceCertainty, figures.chance.0 > 0);
    let guessed = |certainty: Option<Certainty>| certainty.is_some_and(|certainty| certainty != Certainty::Sure);
    Some(QuoteCost {
        id: figures.id,
        route,
        from: item.read(FieldName::From),
        allowed: why.is_none(),
        why,
        lines: vec![
            CostLine { kind: LineKind::Cash, amount: in_currency(cost.cash) },
            CostLine { kind: LineKind::OwnTime, amount: in_currency(cost.own_time) },
            CostLine { kind: LineKind::Risk, amount: in_currency(cost.risk) },
        ],
        expected: in_currency(cost.total()),
        cash,
        own_time: figures.own_time,
        chance: figures.chance,
        strip_again: figures.strip_again,
        guess: guessed(cash_certainty) || guessed(own_time_certainty) || guessed(chance_certainty),
        cash_certainty,
        own_time_certainty,
        chance_certainty,
        fallback: cost.fallback.filter(|_| figures.chance.0 > 0),
        fails_into_nothing: figures.chance.0 > 0 && cost.fallback.is_none(),
        record: job.record_view(figures.id)?,
    })
}
