//! Expected cost and break-even, against rows from outside that the shipped formulas cover.
#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

use asfound_core::costing::{Figures, break_even_hours, expected_costs};
use asfound_core::quantity::{Chance, Currency, Minutes, Money};
use asfound_core::record::Id;

/// Cash, own minutes, chance in parts of ten thousand, minutes to strip again.
fn quote(id: u8, cash: i64, own: i64, chance: i64, strip: i64) -> Figures {
    Figures {
        id: Id::from_bytes([id; 16]),
        cash,
        own_time: Minutes::new(own),
        chance: Chance(chance),
        strip_again: Minutes::new(strip),
        allowed: true,
    }
}

fn hour(minor: i64) -> Money {
    Money::from_minor(minor, Currency::GBP)
}

fn near(one: f64, other: f64, tolerance: f64) {
    assert!((one - other).abs() <= tolerance, "{one} is not {other}");
}

/// Worked by hand: repair for 18 with two hours at 20, failing 25 times of 100, then a new one for 106 and 1.5 hours again:
/// 18 + 40 + 0.25 × (106 + 30) = 92. Expected cost = 18 + 34 + 20 h, so it meets 106 at 2.7 h; never failing at 4.4 h.
#[test]
fn repair_against_a_new_one() {
    let (repair, buy) = (quote(1, 18_00, 120, 2_500, 90), quote(2, 106_00, 0, 0, 0));
    let costs = expected_costs(&[repair, buy], hour(20_00));
    assert_eq!((costs[0].cash, costs[0].own_time, costs[0].risk), (18_00.0, 40_00.0, 34_00.0));
    assert_eq!((costs[0].total(), costs[1].total()), (92_00.0, 106_00.0));
    near(break_even_hours(&repair, &buy, &[repair, buy], hour(20_00)).expect("they meet"), 2.7, 1e-12);
    let sure = Figures { chance: Chance(0), ..repair };
    near(break_even_hours(&sure, &buy, &[sure, buy], hour(20_00)).expect("they meet"), 4.4, 1e-12);
}

/// Worked by hand, three quotes at 24 an hour: repair 30 + 1 h, 10 of 100, 2 h again; send out 75 + 0.5 h, 5 of 100, 1 h
/// again; buy 120. Repair falls back on sending out: 30 + 24 + 0.1 × (87 + 48) = 67.50. Sending out falls back on the
/// repair: 75 + 12 + 0.05 × (54 + 24) = 90.90.
#[test]
fn each_falls_back_on_the_cheapest_other() {
    let all = [quote(1, 30_00, 60, 1_000, 120), quote(2, 75_00, 30, 500, 60), quote(3, 120_00, 0, 0, 0)];
    let totals: Vec<f64> = expected_costs(&all, hour(24_00)).iter().map(|cost| cost.total()).collect();
    near(totals[0], 67_50.0, 1e-9);
    near(totals[1], 90_90.0, 1e-9);
    near(totals[2], 120_00.0, 1e-9);
}

/// Worked by hand, held against a quote that itself falls back on the varied one, at 20 an hour. Buying costs 100, fails
/// 20 of 100, and 60 again with 1 h to strip: while repairing (10 + 20 h) is the cheapest other, buying costs
/// 100 + 0.2 × (10 + 20 h + 20) = 106 + 4 h, so 10 + 20 h = 106 + 4 h at h = 6. With a third for 70, the bend is at 3 h:
/// beyond it buying stays at 100 + 0.2 × 90 = 118, and 10 + 20 h = 118 at h = 5.4.
#[test]
fn against_one_that_falls_back_on_it() {
    let (repair, buy) = (quote(1, 10_00, 0, 0, 0), quote(2, 100_00, 0, 2_000, 60));
    near(break_even_hours(&repair, &buy, &[repair, buy], hour(20_00)).expect("they meet"), 6.0, 1e-12);
    let third = quote(3, 70_00, 0, 0, 0);
    near(break_even_hours(&repair, &buy, &[repair, buy, third], hour(20_00)).expect("they meet"), 5.4, 1e-12);
}

/// Nothing to break even on: an hour that is worth nothing, one that is dearer without any hours, one held against itself.
#[test]
fn where_nothing_breaks_even() {
    let (dear, cheap) = (quote(1, 50_00, 0, 0, 0), quote(2, 10_00, 0, 0, 0));
    assert_eq!(break_even_hours(&dear, &cheap, &[dear, cheap], hour(20_00)), None);
    assert_eq!(break_even_hours(&cheap, &dear, &[dear, cheap], hour(0)), None);
    assert_eq!(break_even_hours(&cheap, &cheap, &[dear, cheap], hour(20_00)), None);
}

/// Facility size, operations-management text, supplement A, slides: with P = .6 and .4, large (200 000,
/// -180 000) is worth 48 000, small (100 000, -20 000) 52 000. A gain is a negative cost: the sure outcome is the cash, the
/// other one a fallback that costs so much more.
#[test]
fn a_decision_table() {
    let rows = [(-200_000, 180_000, -48_000.0), (-100_000, 20_000, -52_000.0)];
    for (good, bad, expected) in rows {
        // The formula adds chance × fallback to the cash, so the fallback is the difference of the two outcomes.
        let all = [quote(1, good, 0, 4_000, 0), quote(2, bad - good, 0, 0, 0)];
        near(expected_costs(&all, hour(0))[0].total(), expected, 1e-9);
    }
}

/// Break-even hours of two motors of 500 hp: board-exam problem with its answer. 240 000 at 15 % and 2 000 a year with
/// 149.20 an hour, against 300 000 at 15 % and 4 000 with 146.0 an hour (as the source rounds): 38 000 + 149.2 h =
/// 49 000 + 146 h at 3 437.5 h; unrounded (145.9565) at 3 391.42 h. Both motors cost by the hour; what differs is varied here.
#[test]
fn break_even_hours_of_two_motors() {
    let (less, more) = (quote(1, 38_000_0000, 0, 0, 0), quote(2, 49_000_0000, 0, 0, 0));
    let rounded = break_even_hours(&less, &more, &[less, more], hour(149_2000 - 146_0000)).expect("they meet");
    near(rounded, 3_437.5, 1e-9);
    let exact = break_even_hours(&less, &more, &[less, more], hour(149_2000 - 145_9565)).expect("they meet");
    near(exact, 3_391.4, 0.1);
}

/// Common practice, no source: the expectation by counting out ten thousand tries, one after the other.
#[test]
fn the_expectation_by_counting() {
    let all = [quote(1, 18_37, 95, 1_234, 47), quote(2, 61_13, 20, 0, 0)];
    let (tried, failing) = (10_000, 1_234);
    let direct = |figures: &Figures| figures.cash * 60 + figures.own_time.0 * 19_99;
    let fails = direct(&all[0]) + direct(&all[1]) + all[0].strip_again.0 * 19_99;
    let sum = (tried - failing) * direct(&all[0]) + failing * fails;
    let mean = f64::from(i32::try_from(sum / 1_000).expect("small")) / 600.0;
    near(expected_costs(&all, hour(19_99))[0].total(), mean, 0.01);
}
