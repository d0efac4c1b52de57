//! Prices that are worked out: at a rate for a piece, an area or a mass; duty and tax by the terms of a supplier.

use serde::{Deserialize, Serialize};

use super::figures::in_job_currency;
use crate::job::Job;
use crate::job::vocabulary::RateBasis;
use crate::quantity::{Area, Mass, Money, bounds};
use crate::record::{FieldName, Id, Item, Kind};

/// How a price at a rate came about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Rated {
    /// The price for one.
    pub rate: Money,
    /// One of what.
    pub basis: RateBasis,
    /// How many pieces.
    pub pieces: i64,
    /// How much of it all: pieces, square millimetres, grams.
    pub amount: i64,
    /// What it comes to, rounded once to the minor unit.
    pub total: Money,
}

impl RateBasis {
    /// The field of a part that says how much of it one piece has; nothing for pieces.
    #[must_use]
    pub const fn field(self) -> Option<FieldName> {
        match self {
            Self::Piece => None,
            Self::Kilogram | Self::Pound => Some(FieldName::Mass),
            _ => Some(FieldName::Area),
        }
    }

    /// One of it is so many pieces, square millimetres or grams, as a fraction: exact by definition (international yard and
    /// pound, 1959).
    const fn size(self) -> (i128, i128) {
        match self {
            Self::Piece => (1, 1),
            Self::SquareCentimetre => (100, 1),
            Self::SquareDecimetre => (10_000, 1),
            Self::SquareMetre => (1_000_000, 1),
            Self::SquareInch => (64_516, 100),
            Self::SquareFoot => (9_290_304, 100),
            Self::Kilogram => (1_000, 1),
            Self::Pound => (45_359_237, 100_000),
        }
    }
}

/// The price of an amount at a rate, rounded once to the minor unit, a half up.
///
/// ```
/// use asfound_core::costing::at_rate;
/// use asfound_core::job::vocabulary::RateBasis;
/// assert_eq!(at_rate(4_50, RateBasis::Piece, 12), 54_00);
/// // 2.5 kg at 3.33: 8.325.
/// assert_eq!(at_rate(3_33, RateBasis::Kilogram, 2_500), 8_33);
/// ```
#[must_use]
pub fn at_rate(rate: i64, basis: RateBasis, amount: i64) -> i64 {
    let (one, of) = basis.size();
    let exact = i128::from(rate) * i128::from(amount) * of;
    i64::try_from((2 * exact + one).div_euclid(2 * one)).unwrap_or(i64::MAX)
}

/// A share of an amount in parts of ten thousand, rounded once, a half up.
#[must_use]
fn share(amount: i64, rate: i64) -> i64 {
    let exact = i128::from(amount) * i128::from(rate);
    i64::try_from((exact + 5_000).div_euclid(10_000)).unwrap_or(i64::MAX)
}

/// Rates of duty and of tax that a supplier's prices come without.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) struct OnTop {
    duty: i64,
    tax: i64,
}

impl OnTop {
    pub(crate) fn of(job: &Job, supplier: Id) -> Self {
        let rate = |field| on_top(job, supplier, field).unwrap_or(0);
        Self { duty: rate(FieldName::DutyRate), tax: rate(FieldName::TaxRate) }
    }

    /// What comes on top of a sum: duty, then tax on both, each rounded once.
    pub(crate) fn on(self, net: i64) -> i64 {
        let duty = share(net, self.duty);
        duty.saturating_add(share(net.saturating_add(duty), self.tax))
    }
}

/// A price of a quote as it was said, with its field: a rate goes before a price for all.
pub(super) fn said(quote: &Item, field: FieldName) -> Option<(FieldName, Money)> {
    let rate = (field == FieldName::Cash).then(|| quote.read(FieldName::Rate)).flatten();
    rate.map(|rate| (FieldName::Rate, rate)).or_else(|| Some((field, quote.read(field)?)))
}

/// Of a quote with a rate, what of its part has to be known before it is a price; nothing where all is.
#[must_use]
pub(crate) fn lacks(job: &Job, quote: &Item) -> Option<FieldName> {
    quote.read::<Money>(FieldName::Rate)?;
    match quote.read::<RateBasis>(FieldName::RateBasis) {
        None => Some(FieldName::RateBasis),
        Some(basis) => basis.field().filter(|_| rated(job, quote).is_none()),
    }
}

/// The price of a quote with a rate.
#[must_use]
pub(crate) fn rated(job: &Job, quote: &Item) -> Option<Rated> {
    let (rate, basis): (Money, RateBasis) = (quote.read(FieldName::Rate)?, quote.read(FieldName::RateBasis)?);
    let part = job.item(quote.read::<Id>(FieldName::Of)?)?;
    let within = |bound: bounds::Bound, value: i64| value.clamp(bound.least, bound.most);
    let pieces = within(bounds::PIECES, part.read(FieldName::Quantity).unwrap_or(1));
    let each = match basis.field() {
        None => 1,
        Some(FieldName::Mass) => within(bounds::MASS, part.read::<Mass>(FieldName::Mass)?.grams()),
        Some(_) => within(bounds::AREA, part.read::<Area>(FieldName::Area)?.square_millimetres()),
    };
    let amount = each.saturating_mul(pieces);
    let minor = at_rate(within(bounds::PRICE, rate.minor), basis, amount);
    // What weighs nothing was not weighed.
    (amount > 0).then_some(Rated { rate, basis, pieces, amount, total: Money { minor, ..rate } })
}

/// A price of a quote as it is paid: at its rate; duty and tax that were not said, by the terms of its supplier.
pub(crate) fn paid(job: &Job, quote: &Item, field: FieldName) -> Option<Money> {
    match field {
        FieldName::Cash => match said(quote, field)? {
            (FieldName::Rate, _) => rated(job, quote).map(|rated| rated.total),
            (_, money) => Some(money),
        },
        FieldName::Duty | FieldName::Tax => quote.read(field).or_else(|| by_terms(job, quote, field)),
        _ => quote.read(field),
    }
}

/// Duty or tax by the terms of the supplier, in the job's currency: duty on price and freight, tax on both with duty. Only where
/// a price was said.
fn by_terms(job: &Job, quote: &Item, field: FieldName) -> Option<Money> {
    let rate = terms_rate(job, quote, field)?;
    let minor = |field| Some(in_job_currency(job, quote, paid(job, quote, field)?)?.clamp(0, bounds::PRICE.most));
    let mut base = minor(FieldName::Cash)?.saturating_add(minor(FieldName::Freight).unwrap_or(0));
    if field == FieldName::Tax {
        base = base.saturating_add(minor(FieldName::Duty).unwrap_or(0));
    }
    Some(Money::from_minor(share(base, rate), job.settings().currency))
}

/// The rate of duty or tax that the terms of its supplier put on a quote that says none.
pub(super) fn terms_rate(job: &Job, quote: &Item, field: FieldName) -> Option<i64> {
    if quote.read::<Money>(field).is_some() {
        return None;
    }
    let supplier = job.supplier_called(&quote.read::<String>(FieldName::From)?)?;
    on_top(job, supplier, if field == FieldName::Duty { FieldName::DutyRate } else { FieldName::TaxRate })
}

/// A rate that a supplier's prices come without.
fn on_top(job: &Job, supplier: Id, field: FieldName) -> Option<i64> {
    let rate: i64 = job.item_of(Kind::Supplier, supplier)?.read(field)?;
    (rate > 0).then_some(rate.min(bounds::TAX.most))
}
