use super::view::Settings;
use super::vocabulary::{Aim, Side, Units, Vocabulary};
use super::whole::Job;
use crate::quantity::{Currency, Money, bounds};
use crate::record::{FieldName, Item, Stored};

impl Job {
    /// The settings of the job; what the user has not said yet has its starting value.
    #[must_use]
    pub fn settings(&self) -> Settings {
        let item = self.id().and_then(|id| self.item(id));
        let currency = said(item, FieldName::Currency).unwrap_or(Currency::GBP);
        let hour_value: Option<Money> = said(item, FieldName::HourValue);
        // A value of an hour in another currency than the job's would be added to money it is not: it counts as unsaid.
        let hour_value = hour_value.filter(|value| value.currency == currency);
        let threshold: Option<Money> = said(item, FieldName::Threshold);
        let threshold = threshold.filter(|value| value.currency == currency);
        let budget: Option<Money> = said(item, FieldName::Budget);
        Settings {
            currency,
            hour_value: hour_value.unwrap_or(Money::from_minor(0, currency)),
            vocabulary: said(item, FieldName::Vocabulary).unwrap_or(Vocabulary::British),
            units: said(item, FieldName::Units).unwrap_or(Units::Metric),
            aim: said(item, FieldName::Aim).unwrap_or(Aim::RegularRoadUse),
            driver_side: said(item, FieldName::DriverSide).unwrap_or(Side::Right),
            interest: said(item, FieldName::Interest).filter(|rate| bounds::INTEREST.holds(*rate)).unwrap_or(0),
            years_kept: said(item, FieldName::YearsKept).filter(|years| bounds::YEARS.holds(*years)).unwrap_or(10),
            tax_rate: said(item, FieldName::TaxRate).filter(|rate| bounds::TAX.holds(*rate)).unwrap_or(0),
            threshold: threshold.unwrap_or(Money::from_minor(10 * 10_i64.pow(currency.decimals()), currency)),
            budget: budget.filter(|value| value.currency == currency),
            own_hours: said(item, FieldName::OwnHours),
            latest: said(item, FieldName::Latest),
        }
    }
}

fn said<T: Stored>(item: Option<&Item>, field: FieldName) -> Option<T> {
    item?.read(field)
}
