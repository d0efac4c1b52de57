//! Plans of recorded jobs, asked as the page and the native door ask. Worked by hand.
#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

use asfound_core::job::{Query, View, ask};
use asfound_core::reckoning::{HeavyQuery, reckon};
use serde_json::{Value, json};

use crate::bench::{Bench, id, money};

fn plan(bench: &Bench, more: Value) -> Value {
    let mut query = json!({ "ask": "plan", "today": "2026-03-01" });
    query.as_object_mut().expect("an object").extend(more.as_object().expect("an object").clone());
    let quick: Query = serde_json::from_value(json!({ "ask": "plan" })).expect("a query");
    assert!(matches!(ask(&bench.job, &quick, id(2)), View::Refused(_)));
    let query: HeavyQuery = serde_json::from_value(query).expect("a heavy query");
    serde_json::to_value(reckon(&bench.job, &query)).expect("a view")
}

fn cost(view: &Value) -> i64 {
    view["sums"]["cost"]["minor"].as_i64().expect("a plan")
}

fn supplier(bench: &mut Bench, number: u16, name: &str, terms: Value) {
    let mut changes = vec![json!({ "name": name })];
    changes.extend(terms.as_array().cloned().unwrap_or_default());
    bench.done(json!({ "do": "create", "id": id(number), "kind": "supplier", "changes": changes }));
}

/// Parts A to E with a single price each, and a kit of A to D for 48.
fn kit_of_four(singles: [i64; 5]) -> Bench {
    let mut bench = Bench::new();
    bench.change(100, json!({ "struck": true }));
    for (number, price) in (201..).zip(singles) {
        bench.part(number, 1);
        bench.quote(number + 100, number, "buy", price, json!([]));
    }
    bench.quote(400, 201, "kit", 48_00, json!([]));
    for number in 202..=204 {
        let changes = json!([{ "of": id(400) }, { "part": id(number) }]);
        bench.done(json!({ "do": "create", "id": id(number + 200), "kind": "cover", "changes": changes }));
    }
    bench
}

/// Kit 48 and E 6 beat 62 singly; with D kept for 4 the singles, 44, beat the kit.
#[test]
fn a_kit_is_bought_whole_or_not() {
    let bench = kit_of_four([14_00, 11_00, 9_00, 22_00, 6_00]);
    let view = plan(&bench, json!({}));
    assert_eq!((cost(&view), &view["proof"]), (54_00, &json!("best")));
    assert_eq!(view["kits"], json!([{ "quote": id(400), "copies": 1, "price": money(48_00), "spare": [] }]));
    let mut bench = kit_of_four([14_00, 11_00, 9_00, 22_00, 6_00]);
    bench.quote(500, 204, "use-again", 4_00, json!([]));
    let view = plan(&bench, json!({}));
    assert_eq!((cost(&view), &view["kits"]), (44_00, &json!([])));
}

/// Two of A are needed: kit, A once more and E, 68, beat 76; what the kit has too few of is bought singly.
#[test]
fn what_a_kit_has_too_few_of_is_bought_singly() {
    let mut bench = kit_of_four([28_00, 11_00, 9_00, 22_00, 6_00]);
    bench.change(201, json!({ "quantity": 2 }));
    bench.done(json!({ "do": "create", "id": id(600), "kind": "cover", "changes": [{ "of": id(400) }, { "part": id(201) }, { "quantity": 1 }] }));
    let view = plan(&bench, json!({}));
    assert_eq!(cost(&view), 68_00);
    let first = &view["choices"][0];
    assert_eq!((&first["quote"], &first["rest"]), (&json!(id(400)), &json!(id(301))));
}

/// Minimum 75, freight 16, 4.50 a piece: one batch of 12 costs 91, of 16 91, of 17 92.50; two lots of eight 182.
#[test]
fn a_batch_pays_its_least_charge_and_its_freight_once() {
    for (pieces, stages, expected) in [(12, 1, 91_00), (16, 1, 91_00), (17, 1, 92_50), (16, 2, 182_00)] {
        let mut bench = Bench::new();
        bench.change(100, json!({ "struck": true }));
        supplier(&mut bench, 20, "Plater", json!([{ "minimum_charge": money(75_00) }, { "shipping": money(16_00) }]));
        for number in 0..pieces {
            bench.part(200 + number, 1);
            bench.quote(300 + number, 200 + number, "send-out", 4_50, json!([{ "from": " plater" }]));
            if stages == 2 && number % 2 == 1 {
                bench.change(200 + number, json!({ "stage": 2 }));
            }
        }
        let view = plan(&bench, json!({}));
        assert_eq!(cost(&view), expected, "{pieces} pieces in {stages}");
        assert_eq!(view["orders"].as_array().map(Vec::len), Some(stages));
    }
}

/// The same as one part of so many pieces at a rate: 12 pieces 91, 16 pieces 91, 17 pieces 92.50; two lots of eight, in two
/// stages, 182.
#[test]
fn a_rate_a_piece_counts_toward_the_least_charge() {
    for (lots, expected) in [(vec![12], 91_00), (vec![16], 91_00), (vec![17], 92_50), (vec![8, 8], 182_00)] {
        let mut bench = Bench::new();
        bench.change(100, json!({ "struck": true }));
        supplier(&mut bench, 20, "Plater", json!([{ "minimum_charge": money(75_00) }, { "shipping": money(16_00) }]));
        for (number, pieces) in (0_u16..).zip(&lots) {
            bench.part(200 + number, *pieces);
            bench.change(200 + number, json!({ "stage": number + 1 }));
            let rate = json!([{ "of": id(200 + number) }, { "route": "send-out" }, { "from": "Plater" }, { "rate": money(4_50) }, { "rate_basis": "piece" }]);
            bench.done(json!({ "do": "create", "id": id(300 + number), "kind": "quote", "changes": rate }));
        }
        let view = plan(&bench, json!({}));
        assert_eq!(cost(&view), expected, "{lots:?}");
        let value: i64 = view["orders"]
            .as_array()
            .expect("orders")
            .iter()
            .filter_map(|order| order["value"]["minor"].as_i64())
            .sum();
        assert_eq!(value, 4_50 * lots.iter().sum::<i64>());
    }
}

/// Prices, carriage and least charge come before duty and tax: (75 + 10) at 20 % is 102; with 5 % duty before it 107.10. Where
/// the quote says its own tax, that is taken: 54 + 1 on the pieces, 25.20 and 12 on what is the batch's. However little the pieces
/// cost, a batch comes to no more than that.
#[test]
fn duty_and_tax_come_on_carriage_and_least_charges() {
    let batch = |price: i64, terms: Value, own: Value| {
        let mut bench = Bench::new();
        let mut all = vec![json!({ "minimum_charge": money(75_00) }), json!({ "shipping": money(10_00) })];
        all.extend(terms.as_array().cloned().unwrap_or_default());
        supplier(&mut bench, 20, "Plater", json!(all));
        let mut more = vec![json!({ "from": "plater" })];
        more.extend(own.as_array().cloned().unwrap_or_default());
        bench.quote(10, 100, "send-out", price, json!(more));
        let view = plan(&bench, json!({}));
        assert_eq!((&view["orders"][0]["value"], view["orders"].as_array().map(Vec::len)), (&money(price), Some(1)));
        cost(&view)
    };
    assert_eq!(batch(54_00, json!([]), json!([])), 85_00);
    assert_eq!(batch(54_00, json!([{ "tax_rate": 2_000 }]), json!([])), 102_00);
    assert_eq!(batch(54_00, json!([{ "tax_rate": 2_000 }, { "duty_rate": 500 }]), json!([])), 107_10);
    assert_eq!(batch(54_00, json!([{ "tax_rate": 2_000 }]), json!([{ "tax": money(1_00) }])), 92_20);
    assert_eq!(batch(1, json!([{ "tax_rate": 2_000 }]), json!([])), 102_00);
    assert_eq!(batch(1, json!([{ "tax_rate": 2_000 }, { "duty_rate": 500 }]), json!([])), 107_10);
    assert_eq!(batch(75_00, json!([{ "tax_rate": 2_000 }]), json!([])), 102_00);
    assert_eq!(batch(80_00, json!([{ "tax_rate": 2_000 }]), json!([])), 108_00);
}

/// Carriage that is free from a value counts what stands before tax; a tier's carriage is taxed as any. Rounded once each:
/// 17.5 % of 9.99 is 1.74825.
#[test]
fn tiers_are_taxed_and_free_stays_free() {
    for (price, expected) in [(40_00, 47_00 + 11_74), (50_00, 58_75 + 7_05), (60_00, 70_50)] {
        let mut bench = Bench::new();
        let terms = json!([{ "shipping": money(9_99) }, { "free_from": money(60_00) }, { "tax_rate": 1_750 }]);
        supplier(&mut bench, 20, "Spares", terms);
        let tier = json!([{ "of": id(20) }, { "from_value": money(50_00) }, { "shipping": money(6_00) }]);
        bench.done(json!({ "do": "create", "id": id(21), "kind": "tier", "changes": tier }));
        bench.quote(10, 100, "buy", price, json!([{ "from": "Spares" }]));
        assert_eq!(cost(&plan(&bench, json!({}))), expected, "{price}");
    }
}

/// A dearer seal lifts the order over free carriage; the plan says so, and what it saves.
#[test]
fn an_order_is_lifted_over_free_carriage() {
    let mut bench = Bench::new();
    supplier(&mut bench, 20, "Spares", json!([{ "shipping": money(8_00) }, { "free_from": money(50_00) }]));
    bench.quote(10, 100, "buy", 45_00, json!([{ "from": "Spares" }]));
    bench.part(101, 1);
    bench.quote(11, 101, "buy", 5_00, json!([{ "from": "Elsewhere" }]));
    bench.quote(12, 101, "buy", 6_00, json!([{ "from": "SPARES" }]));
    let view = plan(&bench, json!({}));
    assert_eq!((cost(&view), view["singly"]["cost"]["minor"].as_i64()), (51_00, Some(58_00)));
    let seal = &view["choices"][1];
    assert_eq!((&seal["quote"], &seal["instead_of"]), (&json!(id(12)), &json!(id(11))));
    assert_eq!(seal["why"], json!({ "because": "carriage", "more": 7_00 }));
}

/// A budget that nothing keeps: the two limits that collide, with how much more of each would do.
#[test]
fn what_collides_is_told_with_the_way_out() {
    let mut bench = Bench::new();
    bench.quote(10, 100, "buy", 90_00, json!([]));
    bench.quote(11, 100, "repair-here", 10_00, json!([{ "own_time": 300 }]));
    let view = plan(&bench, json!({ "budget": 50_00, "minutes": 120 }));
    assert_eq!((&view["proof"], view.get("sums")), (&json!("nothing-fits"), None));
    assert_eq!(view["collide"], json!([{ "limit": "hours", "more": 180 }, { "limit": "budget", "more": 40_00 }]));
    assert_eq!(cost(&plan(&bench, json!({ "budget": 90_00, "minutes": 120 }))), 90_00);
    assert_eq!(cost(&plan(&bench, json!({ "budget": 50_00, "minutes": 300 }))), 110_00);
}

/// Needs, rules out, goes with; a donor is paid for once, and not when it is here already.
#[test]
fn rules_hold_and_a_donor_is_paid_for_once() {
    let mut bench = Bench::new();
    bench.part(101, 1);
    bench.done(json!({ "do": "create", "id": id(30), "kind": "vehicle", "changes": [{ "donor": true }, { "cash": money(60_00) }] }));
    for part in [100, 101] {
        bench.quote(part * 10, part, "buy", 50_00, json!([]));
        bench.quote(part * 10 + 1, part, "donor", 2_00, json!([{ "vehicle": id(30) }]));
    }
    let view = plan(&bench, json!({}));
    assert_eq!((cost(&view), view["donors"][0]["parts"].as_array().map(Vec::len)), (64_00, Some(2)));
    let rule = |bench: &mut Bench, relation: &str, other: u16, price: i64| {
        let changes =
            json!([{ "of": id(1001) }, { "relation": relation }, { "other": id(other) }, { "cash": money(price) }]);
        bench.done(json!({ "do": "create", "id": id(40), "kind": "rule", "changes": changes }));
    };
    rule(&mut bench, "rules-out", 1011, 0);
    assert_eq!(cost(&plan(&bench, json!({}))), 100_00);
    bench.change(40, json!({ "relation": "needs" }));
    assert_eq!(cost(&plan(&bench, json!({}))), 64_00);
    bench.change(40, json!({ "other": id(1010) }));
    bench.change(30, json!({ "bought": true }));
    // The drum from the donor needs the new hub: 2 + 50, cheaper than two new ones.
    assert_eq!(cost(&plan(&bench, json!({}))), 52_00);
    bench.change(40, json!({ "relation": "goes-with" }));
    bench.change(40, json!({ "cash": money(7_00) }));
    let view = plan(&bench, json!({}));
    assert_eq!((cost(&view), &view["unkept"]), (11_00, &json!([id(40)])));
}

/// What is pinned is taken where it offers something, what is forbidden never; what would come too late is left out.
#[test]
fn pinned_forbidden_and_too_late() {
    let mut bench = Bench::new();
    supplier(&mut bench, 20, "Near", json!([]));
    bench.quote(10, 100, "buy", 40_00, json!([{ "from": "Near" }, { "wait": 5 }]));
    bench.quote(11, 100, "buy", 30_00, json!([{ "from": "Far" }, { "wait": 60 }]));
    let quote = |view: &Value| view["choices"][0]["quote"].clone();
    assert_eq!(quote(&plan(&bench, json!({}))), json!(id(11)));
    assert_eq!(quote(&plan(&bench, json!({ "latest": "2026-04-01" }))), json!(id(10)));
    assert_eq!(quote(&plan(&bench, json!({ "pin": [id(20)] }))), json!(id(10)));
    assert_eq!(quote(&plan(&bench, json!({ "forbid": [id(11)] }))), json!(id(10)));
    bench.change(20, json!({ "stance": "forbidden" }));
    assert_eq!(plan(&bench, json!({ "latest": "2026-04-01" }))["unplanned"], json!([id(100)]));
}

/// Both sides of a pair go one way: together, and after the side that is decided.
#[test]
fn both_sides_go_one_way() {
    let mut bench = Bench::new();
    bench.change(100, json!({ "struck": true }));
    for (number, side) in [(101, "left"), (102, "right")] {
        bench.part(number, 1);
        for change in [json!({ "name": "Brake drum" }), json!({ "side": side }), json!({ "pair": true })] {
            bench.change(number, change);
        }
    }
    bench.quote(10, 101, "buy", 50_00, json!([]));
    bench.quote(11, 101, "send-out", 30_00, json!([]));
    bench.quote(20, 102, "buy", 50_00, json!([]));
    bench.quote(21, 102, "send-out", 90_00, json!([]));
    let routes = |view: &Value| [view["choices"][0]["route"].clone(), view["choices"][1]["route"].clone()];
    let view = plan(&bench, json!({}));
    assert_eq!((routes(&view), cost(&view)), ([json!("buy"), json!("buy")], 100_00));
    assert_eq!(view["choices"][0]["why"]["because"], json!("together"));
    bench.done(json!({ "do": "choose", "id": id(30), "quote": id(11), "part": id(101) }));
    let view = plan(&bench, json!({}));
    assert_eq!((routes(&view), cost(&view)), ([json!("send-out"), json!("send-out")], 120_00));
}
