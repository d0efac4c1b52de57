use super::limits;
use super::rated::paid;
use crate::job::Job;
use crate::job::vocabulary::Route;
use crate::quantity::{Chance, ExchangeRate, Minutes, Money, bounds};
use crate::record::{FieldName, Id, Item};

/// The figures of one quote, in one currency: what the formulas work on.
///
/// What was not said counts as nothing: no cash, no hours, no chance of failing, no fallback named; a service life that was
/// not said lasts as long as the vehicle is kept.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figures {
    /// Which quote.
    pub id: Id,
    /// Its route.
    pub route: Route,
    /// Whether it may be chosen at all.
    pub allowed: bool,
    /// The price, in minor units of the job's currency.
    pub cash: f64,
    /// Freight both ways, minor units.
    pub freight: f64,
    /// Tax, minor units.
    pub tax: f64,
    /// Duty, minor units.
    pub duty: f64,
    /// Abrasive, gas, grease: what the work uses up, minor units.
    pub consumables: f64,
    /// Paid at first, and returned when the old unit is accepted, minor units.
    pub surcharge: f64,
    /// The chance that the surcharge is withheld, from 0 to 1.
    pub withheld: f64,
    /// What the other parts in a kit save by it, minor units; no more than its bill counts.
    pub shared: f64,
    /// Own hours, in minutes.
    pub own_time: f64,
    /// The chance that the route fails, from 0 to 1.
    pub chance: f64,
    /// Own hours to strip again, in minutes.
    pub strip_again: f64,
    /// A failure shows at the bench: nothing is stripped again for it.
    pub fails_at_bench: bool,
    /// Service life in months.
    pub life: Option<f64>,
    /// The quote that is turned to when it fails, where one was named.
    pub fallback: Option<Id>,
}

/// What holds for all quotes of a job.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Terms {
    /// What an own hour is worth, in minor units.
    pub hour_value: f64,
    /// Yearly rate of interest, as a share.
    pub interest: f64,
    /// Years that the vehicle will be kept, above 0.
    pub years: f64,
}

impl Figures {
    /// A quote of which nothing is said but its route.
    #[must_use]
    pub const fn bare(id: Id, route: Route) -> Self {
        Self {
            id,
            route,
            allowed: true,
            cash: 0.0,
            freight: 0.0,
            tax: 0.0,
            duty: 0.0,
            consumables: 0.0,
            surcharge: 0.0,
            withheld: 0.0,
            shared: 0.0,
            own_time: 0.0,
            chance: 0.0,
            strip_again: 0.0,
            fails_at_bench: false,
            life: None,
            fallback: None,
        }
    }

    /// Price, freight, tax and duty.
    pub(super) const fn bill(&self) -> f64 {
        self.cash + self.freight + self.tax + self.duty
    }

    /// What others in the kit save by it: all of its bill at most.
    pub(super) const fn saved(&self) -> f64 {
        self.shared.min(self.bill().max(0.0))
    }
}

/// The figures of a stored quote, without what a kit is shared by.
pub(super) fn figures(job: &Job, id: Id, quote: &Item, allowed: bool) -> Option<Figures> {
    let minor = |field| {
        let money: Option<Money> = paid(job, quote, field);
        let minor = money.and_then(|money| in_job_currency(job, quote, money)).unwrap_or(0);
        // Whatever was stored is told as a problem where it is beyond the accepted, and counted as if it were at the bound.
        whole(minor.clamp(bounds::PRICE.least, bounds::PRICE.most))
    };
    let share = |field| quote.read::<Chance>(field).unwrap_or_default().share().clamp(0.0, 1.0);
    let minutes = |field| {
        let minutes: Minutes = quote.read(field).unwrap_or_default();
        whole(minutes.0.clamp(bounds::MINUTES.least, bounds::MINUTES.most))
    };
    Some(Figures {
        id,
        route: quote.read(FieldName::Route)?,
        allowed,
        cash: minor(FieldName::Cash),
        freight: minor(FieldName::Freight),
        tax: minor(FieldName::Tax),
        duty: minor(FieldName::Duty),
        consumables: minor(FieldName::Consumables),
        surcharge: minor(FieldName::Surcharge),
        withheld: share(FieldName::Withheld),
        shared: 0.0,
        own_time: minutes(FieldName::OwnTime),
        chance: share(FieldName::Chance),
        strip_again: minutes(FieldName::StripAgain),
        fails_at_bench: quote.is(FieldName::FailsAtBench),
        life: quote.read::<i64>(FieldName::Life).filter(|months| bounds::LIFE.holds(*months)).map(whole),
        fallback: quote.read(FieldName::Fallback),
    })
}

/// A price in the job's currency, in its minor units: as it is, or at the rate that the quote gives. Nothing where it is in
/// another currency and no rate is given.
#[must_use]
pub(crate) fn in_job_currency(job: &Job, quote: &Item, money: Money) -> Option<i64> {
    let currency = job.settings().currency;
    if money.currency == currency {
        return Some(money.minor);
    }
    let rate: ExchangeRate = quote.read(FieldName::ExchangeRate)?;
    (limits::foreign(quote, currency) == Some(money.currency)).then(|| rate.exchanged(money, currency))?
}

#[expect(clippy::cast_precision_loss, reason = "what is within bounds is below 2^53")]
pub(super) const fn whole(number: i64) -> f64 {
    number as f64
}
