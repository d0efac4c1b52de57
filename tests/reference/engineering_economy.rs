//! Money over years, against compound interest tables and worked problems. Each row says where it is from.

use asfound_core::costing::{a_year, present_value, worth_now};

fn near(one: f64, other: f64, tolerance: f64) {
    assert!((one - other).abs() <= tolerance, "{one} is not {other} within {tolerance}");
}

/// Equal sums at the end of every year that are worth the same as these amounts.
fn equal_sums(rate: f64, years: i32, amounts: impl IntoIterator<Item = (f64, f64)>) -> f64 {
    present_value(rate, amounts) * a_year(rate, f64::from(years))
}

fn yearly(years: i32, amount: f64) -> impl Iterator<Item = (f64, f64)> {
    (1..=years).map(move |year| (f64::from(year), amount))
}

/// Compound interest table, 8 %: A/P at 10 and 5 years; A/F, which is A/P less the rate.
#[test]
fn capital_recovery_at_8_percent() {
    near(a_year(0.08, 10.0), 0.149_03, 5e-6);
    near(a_year(0.08, 5.0), 0.250_46, 5e-6);
    near(a_year(0.08, 5.0) - 0.08, 0.170_46, 5e-6);
    // numpy-financial 1.0.0: -pmt(.08, 10, 1), -pmt(.08, 5, 1).
    near(a_year(0.08, 10.0), 0.149_029_488_697, 1e-12);
    near(a_year(0.08, 5.0), 0.250_456_454_567, 1e-12);
}

/// Engineering-economy text, appendix C, 8 % table: P/A of one to five years, A/P of 1, 3, 4, 5, 6, 7.
#[test]
fn columns_at_8_percent() {
    for (years, worth) in (1..).zip([0.926, 1.783, 2.577, 3.312, 3.993]) {
        near(present_value(0.08, yearly(years, 1.0)), worth, 5e-4);
        near(1.0 / a_year(0.08, f64::from(years)), worth, 5e-4);
    }
    for (years, recovered) in [(1.0, 1.08), (3.0, 0.388), (4.0, 0.3019), (5.0, 0.2505), (6.0, 0.2163), (7.0, 0.1921)] {
        near(a_year(0.08, years), recovered, 5e-5);
    }
}

/// University course assignment MS303 no. 11: keep the old machine or replace it, at 15 %.
#[test]
fn old_against_new() {
    let new = [(0.0, 30_000.0), (12.0, -2_000.0)].into_iter().chain(yearly(12, 16_000.0));
    near(equal_sums(0.15, 12, new), 21_465.46, 0.005);
    let marginal = [21_460.0, 25_775.0, 30_665.0];
    let kept = |years: i32| (1..=years).zip(marginal).map(|(year, cost)| (f64::from(year), cost)).collect::<Vec<_>>();
    let expected = [(21_460.00, 18_660.87), (23_466.98, 38_150.47), (25_539.84, 58_313.21)];
    for (years, (each, worth)) in (1..).zip(expected) {
        near(equal_sums(0.15, years, kept(years)), each, 0.005);
        near(present_value(0.15, kept(years)), worth, 0.005);
    }
}

/// The cost of owning for so many years, as equal sums: first price, running costs, less what it is sold for.
fn owned(rate: f64, price: f64, costs: &[f64], sold: &[f64]) -> Vec<f64> {
    let years = (1_i32..).zip(costs).map(|(year, _)| year);
    let each = years.map(|years| {
        let running = (1..=years).zip(costs).map(|(year, cost)| (f64::from(year), *cost));
        let last = usize::try_from(years).expect("small") - 1;
        equal_sums(rate, years, running.chain([(0.0, price), (f64::from(years), -sold[last])]))
    });
    each.collect()
}

fn all_near(found: &[f64], expected: &[f64], tolerance: f64) {
    assert_eq!(found.len(), expected.len());
    for (found, expected) in found.iter().zip(expected) {
        near(*found, *expected, tolerance);
    }
}

/// Lecture slide "Economic Life": 10 %, 20 000; it is cheapest to keep it four years.
#[test]
fn economic_life() {
    let costs = [5_000.0, 6_500.0, 9_000.0, 11_000.0, 15_000.0];
    let found = owned(0.10, 20_000.0, &costs, &[10_000.0, 8_000.0, 5_000.0, 5_000.0, 3_000.0]);
    all_near(&found, &[17_000.0, 13_429.0, 13_239.0, 12_864.0, 13_623.0], 1.0);
}

/// Blank and Tarquin style problem: 15 %, 150 000, sold for 120 000 − 20 000 k, running at 60 000 + 10 000 k.
#[test]
fn economic_life_of_what_loses_value() {
    let years: Vec<f64> = (1..=7).map(f64::from).collect();
    let costs: Vec<f64> = years.iter().map(|year| 60_000.0 + 10_000.0 * year).collect();
    let sold: Vec<f64> = years.iter().map(|year| (120_000.0 - 20_000.0 * year).max(0.0)).collect();
    let expected = [142_500.0, 129_709.0, 127_489.0, 127_792.0, 129_009.0, 130_607.0, 130_553.0];
    all_near(&owned(0.15, 150_000.0, &costs, &sold), &expected, 1.0);
}

/// Worked answer, machine A: 10 %, 15 000, sold for 3 000 after two years, 1 500 a year.
#[test]
fn a_machine_of_two_years() {
    near(owned(0.10, 15_000.0, &[1_500.0; 2], &[0.0, 3_000.0])[1], 8_714.4, 0.5);
}

/// numpy-financial documentation: npv of −40 000, 5 000, 8 000, 12 000, 30 000 at 8 % (from memory; numpy-financial 1.0.0
/// answers 3065.2226681795).
#[test]
fn net_present_value() {
    let amounts = [-40_000.0, 5_000.0, 8_000.0, 12_000.0, 30_000.0];
    near(present_value(0.08, (0..).map(f64::from).zip(amounts)), 3_065.222_668_179_5, 1e-6);
}

/// IE 492 course notes: 10 000 a year for a hundred years at 10 %: 99 990 by the table of five digits, 99 992.74 exact.
#[test]
fn a_hundred_years() {
    near(10_000.0 / a_year(0.10, 100.0), 99_992.74, 0.01);
    near(present_value(0.10, yearly(100, 10_000.0)), 99_992.743, 0.001);
}

/// By definition: without interest money keeps its worth, and is spread evenly; a small rate comes close to that.
#[test]
fn without_interest() {
    near(worth_now(0.0, 7.5), 1.0, 0.0);
    near(a_year(0.0, 8.0), 0.125, 0.0);
    near(a_year(1e-13, 8.0), 0.125, 1e-12);
}
