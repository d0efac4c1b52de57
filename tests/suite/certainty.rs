//! How sure the quotes of recorded jobs are, asked as the reckoning worker and the native door ask.
#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

use asfound_core::job::{Query, View, ask};
use asfound_core::reckoning::{HeavyQuery, reckon};
use serde_json::{Value, json};

use crate::bench::{Bench, PART, id, money};
use crate::costing::minor;

fn asked(bench: &Bench, query: Value) -> Value {
    // Whoever answers quick questions alone says so.
    let quick: Query = serde_json::from_value(query.clone()).expect("a query");
    assert!(matches!(ask(&bench.job, &quick, id(2)), View::Refused(_)));
    let query: HeavyQuery = serde_json::from_value(query).expect("a heavy query");
    serde_json::to_value(reckon(&bench.job, &query)).expect("a view")
}

fn certainty(bench: &Bench) -> Value {
    asked(bench, json!({ "ask": "certainty", "part": id(PART), "draws": 2000 }))
}

/// A figure with the word *sure* or none has no range: then the cheapest is certain, and is worth what costing says.
#[test]
fn what_is_sure_is_certain() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "repair-here", 18_00, json!([{ "own_time": 120 }, { "cash_certainty": "sure" }]));
    bench.quote(11, PART, "buy", 106_00, json!([]));
    let view = certainty(&bench);
    assert_eq!(view["quotes"][0]["cheapest"], json!(1.0));
    assert_eq!((minor(&view["quotes"][0]["mean"]), minor(&view["quotes"][0]["exact_mean"])), (58_00.0, 58_00.0));
    assert_eq!((minor(&view["regret"]), minor(&view["worth_of_all"])), (0.0, 0.0));
    assert_eq!(view["knowing"], json!([]));
}

/// The word and what was said give the same guess where they say the same; a turned figure takes its range along.
#[test]
fn the_word_is_a_bracket_of_eight_in_ten() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "buy", 100_00, json!([{ "cash_certainty": "about" }]));
    let by_word = certainty(&bench);
    for (at, expected) in [("p10", 85_00.0), ("p90", 125_00.0)] {
        let found = minor(&by_word["quotes"][0][at]);
        assert!((found - expected).abs() < 1_50.0, "{at} is {found}");
    }
    bench.change(10, json!({ "cash_least": money(85_00) }));
    bench.change(10, json!({ "cash_most": money(125_00) }));
    assert_eq!(by_word["quotes"], certainty(&bench)["quotes"]);
    let set = json!({ "quotes": { id(10).to_string(): { "cash": 200_00 } } });
    let turned = asked(&bench, json!({ "ask": "certainty", "part": id(PART), "set": set }));
    assert!(minor(&turned["quotes"][0]["p10"]) > 125_00.0);
}

/// What may not be chosen takes no part: neither chosen, nor fallen back on, nor worth knowing.
#[test]
fn what_may_not_be_chosen_takes_no_part() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "repair-here", 18_00, json!([{ "cash_certainty": "about" }, { "chance": 5000 }]));
    bench.quote(11, PART, "buy", 5_00, json!([{ "cash_certainty": "about" }, { "valid_until": "2026-01-01" }]));
    let query = json!({ "ask": "certainty", "part": id(PART), "today": "2026-02-01" });
    let view = asked(&bench, query);
    assert_eq!(view["quotes"].as_array().map(Vec::len), Some(1));
    assert_eq!((&view["quotes"][0]["id"], &view["quotes"][0]["cheapest"]), (&json!(id(10)), &json!(1.0)));
    assert!(view["knowing"].as_array().expect("a list").iter().all(|known| known["quote"] == json!(id(10))));
}

/// A wait has three points like any other figure, and moves no sum: P10 and P90 are the ends of the bracket that was said.
#[test]
fn a_wait_has_its_bracket_and_moves_no_sum() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "send-out", 50_00, json!([{ "wait": 21 }]));
    bench.quote(11, PART, "buy", 60_00, json!([]));
    let sure = certainty(&bench);
    assert_eq!(
        sure["quotes"][0]["wait"],
        json!({ "likely": 21.0, "mean": 21.0, "p10": 21.0, "p50": 21.0, "p90": 21.0 })
    );
    assert!(sure["quotes"][1].get("wait").is_none());
    bench.change(10, json!({ "wait_certainty": "about" }));
    let by_word = certainty(&bench)["quotes"][0].clone();
    bench.change(10, json!({ "wait_least": 14 }));
    bench.change(10, json!({ "wait_most": 56 }));
    let given = certainty(&bench)["quotes"][0].clone();
    for (quote, low, high) in [(&by_word, 21.0 * 0.85, 21.0 * 1.25), (&given, 14.0, 56.0)] {
        let found = ["p10", "p90"].map(|at| quote["wait"][at].as_f64().expect("days"));
        assert!((found[0] - low).abs() < 1e-9 && (found[1] - high).abs() < 1e-9, "{found:?}");
        assert_eq!((&quote["p90"], &quote["regret"]), (&sure["quotes"][0]["p90"], &sure["quotes"][0]["regret"]));
    }
}

/// A least above its most is a range said the wrong way round: it is put in order, and does not make a guess sure.
/// Break: in `in_order` answer both as they came.
#[test]
fn a_range_the_wrong_way_round_is_put_in_order() {
    let asked = |more: Value| {
        let mut bench = Bench::new();
        bench.quote(10, PART, "buy", 100_00, more);
        bench.quote(11, PART, "donor", 105_00, json!([]));
        let cost = bench.cost(PART);
        (certainty(&bench)["quotes"].clone(), certainty(&bench)["knowing"].clone(), cost["quotes"][0]["high"].clone())
    };
    let right = asked(
        json!([{ "cash_least": money(80_00) }, { "cash_most": money(130_00) }, { "wait": 20 }, { "wait_least": 10 }, { "wait_most": 30 }]),
    );
    let round = asked(
        json!([{ "cash_least": money(130_00) }, { "cash_most": money(80_00) }, { "wait": 20 }, { "wait_least": 30 }, { "wait_most": 10 }]),
    );
    assert_eq!(right, round);
    assert_eq!(right.1.as_array().map(Vec::len), Some(1));
}

/// A test beyond what is accepted is counted at the bound: whatever is asked, every figure is one.
/// Break: in `tested` take the price as it comes.
#[test]
fn a_test_beyond_all_bounds_has_a_price() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "repair-here", 18_00, json!([{ "chance": 2500 }]));
    bench.quote(11, PART, "buy", 106_00, json!([]));
    let costs = |price: f64, own_time: f64| {
        let test =
            json!({ "quote": id(10), "sensitivity": 0.9, "specificity": 0.9, "price": price, "own_time": own_time });
        let view = asked(&bench, json!({ "ask": "certainty", "part": id(PART), "draws": 10, "test": test }));
        minor(&view["test"]["costs"])
    };
    assert_eq!(costs(1_00.0, 30.0), 11_00.0);
    assert_eq!(costs(-5.0, -5.0), 0.0);
    assert_eq!(costs(1e308, 1e308), 1e12 + 6e6 / 60.0 * 20_00.0);
}

/// What is turned below the least that is accepted is turned to that: a life of nothing is the shortest, not one without end;
/// years of nothing are one. A figure of the job is not one of a quote.
/// Break: in `WhatIf::turn` leave out the least.
#[test]
fn what_is_turned_stays_within_what_is_accepted() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "buy", 10_00, json!([{ "life": 12 }, { "own_time": 60 }]));
    let with = |set: Value| {
        let view = bench.asked(json!({ "ask": "cost", "part": id(PART), "set": set }));
        let quote = &view["quotes"][0];
        (quote["renewals"].as_u64(), minor(&quote["yearly"]), minor(&view["hour_value"]))
    };
    let of_quote = |input: &str, to: f64| with(json!({ "quotes": { id(10).to_string(): { input: to } } }));
    assert_eq!(of_quote("life", 0.0), of_quote("life", 1.0));
    assert_eq!(of_quote("life", 0.0).0, Some(119));
    assert_eq!(with(json!({ "job": { "years": 0.0 } })), with(json!({ "job": { "years": 1.0 } })));
    assert_eq!(of_quote("hour_value", 7.0), with(json!({})));
}

/// First what a wrong choice would cost, then the cash at stake, then what waits, and for what.
#[test]
fn the_most_consequential_comes_first() {
    let mut bench = Bench::new();
    let judged = json!({ "triage": "doubtful" });
    for part in 101..=108 {
        bench.part(part, 1);
    }
    // Close together and unsure, dear and cheap; far apart; one alone, dear; none; none allowed; not judged; not off; decided.
    for (part, cash, other) in [(101, 20_00, 21_00), (102, 200_00, 210_00), (103, 10_00, 500_00)] {
        bench.quote(part * 10, part, "buy", cash, json!([{ "cash_certainty": "about" }]));
        bench.quote(part * 10 + 1, part, "donor", other, json!([{ "cash_certainty": "about" }]));
    }
    bench.quote(1040, 104, "buy", 900_00, json!([{ "cash_certainty": "wild-guess" }]));
    bench.change(105, judged.clone());
    bench.change(106, judged);
    bench.change(106, json!({ "missing_from_start": true }));
    bench.quote(1060, 106, "use-again", 0, json!([]));
    bench.change(108, json!({ "off": false }));
    bench.quote(4, PART, "buy", 1_00, json!([]));
    bench.done(json!({ "do": "choose", "id": id(3), "quote": id(4) }));
    let view = asked(&bench, json!({ "ask": "undecided" }));
    let rows = view["parts"].as_array().expect("parts");
    let order: Vec<&Value> = rows.iter().map(|row| &row["part"]).collect();
    let expected: Vec<Value> = [102, 101, 104, 103, 105, 106, 107, 108].map(|part| json!(id(part))).to_vec();
    assert_eq!(order, expected.iter().collect::<Vec<_>>());
    let waits: Vec<Option<&str>> = rows.iter().map(|row| row["waits"].as_str()).collect();
    let expected = [Some("quote"), Some("allowed-quote"), Some("first-word"), Some("coming-off")];
    assert_eq!(waits, [[None; 4], expected].concat());
    assert!(minor(&rows[0]["regret"]) > minor(&rows[1]["regret"]) && minor(&rows[2]["regret"]) == 0.0);
    assert_eq!(rows[2]["cash"]["minor"], json!(900_00));
    assert_eq!(rows[2]["chance"], json!(1.0));
}
