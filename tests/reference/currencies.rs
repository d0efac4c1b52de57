use asfound_core::quantity::Currency as Ours;
use iso_currency::{Currency, IntoEnumIterator};

/// Decimals of every currency of ISO 4217 as `iso_currency` 0.7.1 has them. Known differences: codes without a minor unit
/// (metals, bond units, tests), which nobody is paid in, count as two here.
#[test]
fn decimals_are_those_of_the_list() {
    let mut compared = 0;
    for currency in Currency::iter() {
        let ours = Ours::parse(currency.code()).expect("three capital letters");
        match currency.exponent() {
            Some(exponent) => assert_eq!(ours.decimals(), u32::from(exponent), "{}", currency.code()),
            None => assert_eq!(ours.decimals(), 2, "{}", currency.code()),
        }
        compared += 1;
    }
    assert!(compared > 150, "{compared}");
}

/// The same for a handful that babel 2.18, iso4217 1.16 and currency-codes 2.2 agree on.
#[test]
fn decimals_that_three_libraries_agree_on() {
    let codes = ["GBP", "USD", "EUR", "JPY", "KWD", "TND", "BHD", "IQD", "CLF", "UYW", "ISK", "VND"];
    let decimals: Vec<u32> = codes.iter().map(|code| Ours::parse(code).expect("a code").decimals()).collect();
    assert_eq!(decimals, [2, 2, 2, 0, 3, 3, 3, 3, 4, 4, 0, 0]);
}
