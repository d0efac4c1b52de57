//! Figures as they stand in lists: a point before the fraction, no grouping, so that every reader takes them as numbers.

use crate::job::vocabulary::Units;
use crate::quantity::{Currency, ExchangeRate, Mass, Minutes, Money};

/// Minor units with as many decimals as the currency has: `106.00`.
pub(super) fn money(money: Money) -> String {
    decimal(money.minor, money.currency)
}

/// The same for an amount without its currency.
pub(super) fn decimal(minor: i64, currency: Currency) -> String {
    let decimals = currency.decimals();
    if decimals == 0 {
        return minor.to_string();
    }
    let unit = 10_u64.pow(decimals);
    let (whole, rest) = (minor.unsigned_abs() / unit, minor.unsigned_abs() % unit);
    let sign = if minor < 0 { "-" } else { "" };
    format!("{sign}{whole}.{rest:0width$}", width = decimals as usize)
}

/// A rate, exact: `0.85`.
pub(super) fn rate(rate: ExchangeRate) -> String {
    let sign = if rate.0 < 0 { "-" } else { "" };
    let (whole, rest) = (rate.0.unsigned_abs() / 1_000_000, rate.0.unsigned_abs() % 1_000_000);
    let text = format!("{sign}{whole}.{rest:06}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// Hours and minutes, exact: `1:30`.
pub(super) fn hours(minutes: Minutes) -> String {
    let sign = if minutes.0 < 0 { "-" } else { "" };
    let minutes = minutes.0.unsigned_abs();
    format!("{sign}{}:{:02}", minutes / 60, minutes % 60)
}

/// Kilograms, exact, or pounds with two decimals (1 lb = 453.592 37 g, exact by definition).
#[expect(clippy::cast_precision_loss, reason = "masses within bounds are below 2^53")]
pub(super) fn mass(mass: Mass, units: Units) -> String {
    match units {
        Units::Metric => {
            let (sign, grams) = (if mass.grams() < 0 { "-" } else { "" }, mass.grams().unsigned_abs());
            let text = format!("{sign}{}.{:03}", grams / 1000, grams % 1000);
            text.trim_end_matches('0').trim_end_matches('.').to_owned()
        }
        Units::Inch => format!("{:.2}", mass.grams() as f64 / 453.592_37),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn money_has_the_decimals_of_its_currency() {
        let currency = |code| Currency::parse(code).unwrap();
        assert_eq!(decimal(10_600, Currency::GBP), "106.00");
        assert_eq!(decimal(-5, Currency::GBP), "-0.05");
        assert_eq!(decimal(1500, currency("JPY")), "1500");
        assert_eq!(decimal(1500, currency("KWD")), "1.500");
        assert_eq!(decimal(i64::MIN, Currency::GBP), "-92233720368547758.08");
    }

    #[test]
    fn a_rate_is_exact() {
        assert_eq!(rate(ExchangeRate(850_000)), "0.85");
        assert_eq!(rate(ExchangeRate(2_000_000)), "2");
        assert_eq!(rate(ExchangeRate(5_201)), "0.005201");
    }

    #[test]
    fn hours_are_exact() {
        assert_eq!(hours(Minutes::new(90)), "1:30");
        assert_eq!(hours(Minutes::new(5)), "0:05");
        assert_eq!(hours(Minutes::new(6135)), "102:15");
    }

    #[test]
    fn a_mass_stands_in_the_units_of_the_job() {
        assert_eq!(mass(Mass(15_250), Units::Metric), "15.25");
        assert_eq!(mass(Mass(15_000), Units::Metric), "15");
        assert_eq!(mass(Mass(40), Units::Metric), "0.04");
        assert_eq!(mass(Mass(0), Units::Metric), "0");
        assert_eq!(mass(Mass(1_000), Units::Inch), "2.20");
    }
}
