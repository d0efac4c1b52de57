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

/// A rule about a kit holds for whichever part it is taken: the first of them is pinned to 1, the kit for the others is 48. It goes
/// with the dearer of two for the fifth, 9 instead of 6, or costs 10 extra: 58.
#[test]
fn a_rule_about_a_kit_sees_it_on_any_part() {
    let mut bench = kit_of_four([1_00, 30_00, 30_00, 30_00, 6_00]);
    bench.quote(500, 205, "buy", 9_00, json!([]));
    bench.change(301, json!({ "stance": "pinned" }));
    assert_eq!(cost(&plan(&bench, json!({}))), 55_00);
    let changes =
        json!([{ "of": id(400) }, { "relation": "goes-with" }, { "other": id(500) }, { "cash": money(10_00) }]);
    bench.done(json!({ "do": "create", "id": id(40), "kind": "rule", "changes": changes }));
    assert_eq!(cost(&plan(&bench, json!({}))), 58_00);
}

fn kept(bench: &Bench) -> Value {
    let query: HeavyQuery =
        serde_json::from_value(json!({ "ask": "kept-plans", "today": "2026-03-01" })).expect("a heavy query");
    serde_json::to_value(reckon(&bench.job, &query)).expect("a view")
}

/// Keeps what a plan takes, as the page does.
fn keep(bench: &mut Bench, number: u16, name: &str, view: &Value) {
    let mut quotes = Vec::new();
    for choice in view["choices"].as_array().expect("choices") {
        quotes.push(json!({ "part": choice["part"], "quote": choice["quote"], "cash": choice["cash"] }));
        if choice.get("rest").is_some() {
            quotes.push(json!({ "part": choice["part"], "quote": choice["rest"], "cash": choice["rest_cash"] }));
        }
    }
    let sums = &view["sums"];
    let changes = json!([{ "name": name }, { "quotes": quotes }, { "cash": sums["cash"] }, { "own_time": sums["own_time"] }, { "expected_then": sums["cost"]["minor"] }, { "hour_value_then": money(20_00) }]);
    bench.done(json!({ "do": "create", "id": id(number), "kind": "plan", "changes": changes }));
}

/// Parts that something has changed for: which, what, by how much.
fn since(plan: &Value) -> Vec<(Value, String, i64)> {
    let parts = plan["parts"].as_array().expect("parts").iter();
    let told = parts.filter_map(|part| {
        let since = part.get("since")?.as_str()?.to_owned();
        Some((part["part"].clone(), since, part["more"]["minor"].as_i64().unwrap_or(0)))
    });
    told.collect()
}

/// A hub for 45, a seal for 6 from the same supplier, carriage 8 and free from 50: 51. The hub for 43: 49 and 8, 57. A part comes,
/// 4 at its cheapest: 61. The seal's quote is struck, elsewhere it is 5: 43 + 8 + 5 + 4 = 60. The hub's quote is forbidden, its
/// repair is 10 and two hours: 50 + 5 + 4 = 59.
#[test]
fn a_plan_that_was_kept_tells_what_changed_since() {
    let mut bench = Bench::new();
    supplier(&mut bench, 20, "Spares", json!([{ "shipping": money(8_00) }, { "free_from": money(50_00) }]));
    bench.quote(10, 100, "buy", 45_00, json!([{ "from": "Spares" }]));
    bench.quote(14, 100, "repair-here", 10_00, json!([{ "own_time": 120 }]));
    bench.part(101, 1);
    bench.quote(11, 101, "buy", 5_00, json!([{ "from": "Elsewhere" }]));
    bench.quote(12, 101, "buy", 6_00, json!([{ "from": "SPARES" }]));
    let view = plan(&bench, json!({}));
    keep(&mut bench, 50, "One", &view);
    let told = |bench: &Bench| kept(bench)["plans"][0].clone();
    let first = told(&bench);
    assert_eq!((&first["kept"]["cost"], &first["now"]["cost"]), (&money(51_00), &money(51_00)));
    assert_eq!((since(&first), &first["record"]["values"]["name"]), (vec![], &json!("One")));

    bench.change(10, json!({ "cash": money(43_00) }));
    let cheaper = told(&bench);
    assert_eq!((&cheaper["now"]["cost"], &cheaper["now"]["carriage"]), (&money(57_00), &money(8_00)));
    assert_eq!((&cheaper["more"], since(&cheaper)), (&money(-2_00), vec![(json!(id(100)), "price".to_owned(), -2_00)]));
    assert_eq!(&cheaper["kept"]["cost"], &money(51_00));

    bench.part(102, 1);
    bench.quote(15, 102, "buy", 4_00, json!([]));
    let grown = told(&bench);
    assert_eq!((&grown["now"]["cost"], &since(&grown)[1]), (&money(61_00), &(json!(id(102)), "later".to_owned(), 0)));

    bench.change(12, json!({ "struck": true }));
    let struck = told(&bench);
    assert_eq!(struck["now"]["cost"], money(60_00));
    assert_eq!(since(&struck)[1], (json!(id(101)), "quote-gone".to_owned(), 0));
    assert_eq!((&struck["parts"][1]["open"], &struck["parts"][1]["route"]), (&json!(false), &json!("buy")));

    bench.change(1, json!({ "budget": money(30_00) }));
    assert_eq!(told(&bench)["now"]["fits"], json!(false));
    bench.change(10, json!({ "stance": "forbidden" }));
    let barred = told(&bench);
    assert_eq!((&barred["now"]["cost"], &barred["now"]["own_time"]), (&money(59_00), &json!(120)));
    assert_eq!((&barred["now"]["fits"], &since(&barred)[0].1), (&json!(true), &"barred".to_owned()));
    bench.change(101, json!({ "struck": true }));
    assert_eq!(since(&told(&bench))[1].1, "part-gone");
}

/// Decisions that were made otherwise do not count for it, and what is known of a quote that is not here is told without a fall.
#[test]
fn kept_plans_stand_side_by_side() {
    let mut bench = kit_of_four([28_00, 11_00, 9_00, 22_00, 6_00]);
    bench.change(201, json!({ "quantity": 2 }));
    bench.done(json!({ "do": "create", "id": id(600), "kind": "cover", "changes": [{ "of": id(400) }, { "part": id(201) }, { "quantity": 1 }] }));
    let (with, without) = (plan(&bench, json!({})), plan(&bench, json!({ "forbid_routes": ["kit"] })));
    keep(&mut bench, 50, "With the kit", &with);
    keep(&mut bench, 51, "Without", &without);
    for part in 202..=204 {
        bench.done(json!({ "do": "choose", "id": id(part + 500), "quote": id(part + 100) }));
    }
    let unknown = json!([{ "part": id(201), "quote": id(9) }, { "part": id(8), "quote": id(302) }]);
    let unknown: Vec<Value> = unknown
        .as_array()
        .expect("two")
        .iter()
        .map(|one| json!({ "part": one["part"], "quote": one["quote"], "cash": i64::MAX }))
        .collect();
    bench.done(
        json!({ "do": "create", "id": id(52), "kind": "plan", "changes": [{ "name": "Odd" }, { "quotes": unknown }] }),
    );
    let told = kept(&bench);
    let plans = told["plans"].as_array().expect("plans");
    let sums = |at: usize| {
        (plans[at]["record"]["values"]["name"].clone(), plans[at]["now"]["cost"].clone(), since(&plans[at]).len())
    };
    assert_eq!(sums(1), (json!("With the kit"), money(68_00), 0));
    assert_eq!(sums(2), (json!("Without"), money(76_00), 0));
    let chosen = |at: usize| {
        plans[at]["parts"].as_array().expect("parts").iter().filter(|part| part["chosen"] == json!(true)).count()
    };
    assert_eq!((chosen(1), chosen(2)), (0, 3));
    let odd: Vec<String> = since(&plans[0]).into_iter().map(|(_, since, _)| since).collect();
    assert_eq!(odd, ["part-gone", "quote-gone", "later", "later", "later", "later"]);
}
