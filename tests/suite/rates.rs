//! Prices at a rate: by the piece, by area, by mass; duty and tax by the terms of a supplier. Worked by hand.
#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

use serde_json::{Value, json};

use crate::bench::{Bench, PART, id, money};

fn rated(bench: &mut Bench, rate: i64, basis: &str, more: Value) {
    let mut changes = vec![
        json!({ "of": id(PART) }),
        json!({ "route": "send-out" }),
        json!({ "rate": money(rate) }),
        json!({ "rate_basis": basis }),
    ];
    changes.extend(more.as_array().cloned().unwrap_or_default());
    bench.done(json!({ "do": "create", "id": id(200), "kind": "quote", "changes": changes }));
}

fn line(view: &Value, kind: &str) -> Option<f64> {
    let lines = view["quotes"][0]["lines"].as_array().expect("lines").iter();
    lines.filter(|line| line["kind"] == kind).find_map(|line| line["amount"]["minor"].as_f64())
}

fn problems(bench: &Bench) -> Vec<(Value, Value)> {
    let told = bench.asked(json!({ "ask": "problems" }));
    let all = told["problems"].as_array().cloned().unwrap_or_default();
    all.iter().map(|problem| (problem["code"].clone(), problem["place"]["field"].clone())).collect()
}

/// 12 pieces at 4.50 are 54; the rate goes before a price for all, and the choice keeps what it came to.
#[test]
fn a_rate_a_piece_is_multiplied() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "quantity": 12 }));
    rated(&mut bench, 4_50, "piece", json!([{ "cash": money(99_00) }]));
    let view = bench.cost(PART);
    let quote = &view["quotes"][0];
    assert_eq!((&quote["cash"], &quote["peak"], line(&view, "cash")), (&money(54_00), &money(54_00), Some(54_00.0)));
    assert_eq!(
        quote["rated"],
        json!({ "rate": money(4_50), "basis": "piece", "pieces": 12, "amount": 12, "total": money(54_00) })
    );
    bench.done(json!({ "do": "choose", "id": id(40), "quote": id(200) }));
    assert_eq!(bench.asked(json!({ "ask": "totals" }))["cash"], money(54_00));
    assert_eq!(bench.cost(PART)["chosen"]["values"]["cash"], money(54_00));
    assert_eq!(problems(&bench), []);
}

/// By area and mass: each piece has it, all pieces are paid for, and the minor unit is rounded once, a half up.
/// 3 × 12.5 dm² at 2.10 are 78.75; the same at 0.19 a square inch (581.25 in²) 110.44; 4 × 2.45 kg at 3.33 are 32.634.
#[test]
fn areas_and_masses_are_paid_for() {
    for (pieces, of_part, rate, basis, expected) in [
        (3, json!({ "area": 125_000 }), 2_10, "square-decimetre", 78_75),
        (3, json!({ "area": 125_000 }), 2_10, "square-centimetre", 7_875_00),
        (3, json!({ "area": 125_000 }), 210_00, "square-metre", 78_75),
        (3, json!({ "area": 125_000 }), 19, "square-inch", 110_44),
        (3, json!({ "area": 125_000 }), 27_36, "square-foot", 110_44),
        (4, json!({ "mass": 2_450 }), 3_33, "kilogram", 32_63),
        (4, json!({ "mass": 2_450 }), 1_51, "pound", 32_62),
        // 0.5 of a penny: up.
        (1, json!({ "mass": 500 }), 1, "kilogram", 1),
        (1, json!({ "mass": 499 }), 1, "kilogram", 0),
    ] {
        let mut bench = Bench::new();
        bench.change(PART, json!({ "quantity": pieces }));
        bench.change(PART, of_part);
        rated(&mut bench, rate, basis, json!([]));
        assert_eq!(bench.cost(PART)["quotes"][0]["cash"], money(expected), "{basis}");
    }
}

/// What was not weighed or measured is never nothing: the quote cannot be chosen, and the part is told to lack it.
#[test]
fn what_is_not_known_is_told() {
    for (basis, field, known) in
        [("kilogram", "mass", json!({ "mass": 900 })), ("square-decimetre", "area", json!({ "area": 9 }))]
    {
        let mut bench = Bench::new();
        rated(&mut bench, 3_00, basis, json!([]));
        let quote = &bench.cost(PART)["quotes"][0];
        assert_eq!((&quote["why"], quote.get("cash")), (&json!("amount-missing"), None));
        assert_eq!(problems(&bench), [(json!("missing"), json!(field))]);
        bench.change(PART, json!({ field: 0 }));
        assert_eq!(bench.cost(PART)["quotes"][0]["why"], "amount-missing");
        bench.change(PART, known);
        assert_eq!(bench.cost(PART)["quotes"][0]["allowed"], true);
        assert_eq!(problems(&bench), []);
        bench.change(200, json!({ "clear": "rate_basis" }));
        assert_eq!(bench.cost(PART)["quotes"][0]["why"], "amount-missing");
        assert_eq!(problems(&bench), [(json!("missing"), json!("rate_basis"))]);
    }
}

/// A rate in another currency is exchanged like a price, and refused like one without a rate of exchange.
#[test]
fn a_rate_abroad_is_exchanged() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "quantity": 3 }));
    let abroad = json!([{ "rate": { "minor": 10_00, "currency": "EUR" } }, { "exchange_rate": 850_000 }]);
    rated(&mut bench, 1, "piece", abroad);
    assert_eq!(line(&bench.cost(PART), "cash"), Some(25_50.0));
    bench.change(200, json!({ "clear": "exchange_rate" }));
    assert_eq!(bench.cost(PART)["quotes"][0]["why"], "other-currency");
    assert_eq!(problems(&bench), [(json!("other-currency"), json!("rate"))]);
}

/// Duty on price and freight, tax on both with the duty, by the terms of the supplier that a quote names: 100 + 10 at 4 % are
/// 4.40; 114.40 at 17.5 % are 20.02. What the quote says itself goes before, and nothing said of a price is no tax.
#[test]
fn duty_and_tax_follow_the_terms() {
    let mut bench = Bench::new();
    let terms = json!([{ "name": "Abroad & Son" }, { "tax_rate": 1_750 }, { "duty_rate": 400 }]);
    bench.done(json!({ "do": "create", "id": id(20), "kind": "supplier", "changes": terms }));
    bench.quote(200, PART, "buy", 100_00, json!([{ "freight": money(10_00) }, { "from": "abroad  & SON" }]));
    let view = bench.cost(PART);
    assert_eq!((line(&view, "duty"), line(&view, "tax")), (Some(4_40.0), Some(20_02.0)));
    assert_eq!((&view["quotes"][0]["tax_rate"], &view["quotes"][0]["peak"]), (&json!(1_750), &money(134_42)));
    bench.change(200, json!({ "duty": money(0) }));
    assert_eq!(line(&bench.cost(PART), "tax"), Some(19_25.0));
    bench.change(200, json!({ "tax": money(1_00) }));
    let view = bench.cost(PART);
    assert_eq!((line(&view, "tax"), view["quotes"][0].get("tax_rate")), (Some(1_00.0), None));
    bench.change(200, json!({ "clear": "tax" }));
    bench.change(200, json!({ "clear": "cash" }));
    assert_eq!(line(&bench.cost(PART), "tax"), None);
}
