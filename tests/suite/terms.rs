//! Suppliers with their terms, and rules between parts, as the page lists them.

use serde_json::{Value, json};

use crate::bench::{Bench, PART, id, money};

fn supplier(bench: &mut Bench, number: u16, name: &str) {
    bench.done(json!({ "do": "create", "id": id(number), "kind": "supplier", "changes": [{ "name": name }] }));
}

fn names(told: &Value, member: &str) -> Vec<(String, u64)> {
    let of =
        |line: &Value| line["name"].as_str().or_else(|| line["record"]["values"]["name"].as_str()).map(str::to_owned);
    let lines = told[member].as_array().expect("lines").iter();
    lines.map(|line| (of(line).expect("a name"), line["quotes"].as_u64().expect("a count"))).collect()
}

fn named(name: &str, quotes: u64) -> (String, u64) {
    (name.to_owned(), quotes)
}

/// Quotes are a supplier's by name, spaces and case aside; a name without a record is offered as most quotes spell it.
#[test]
fn suppliers_are_found_by_name() {
    let mut bench = Bench::new();
    let from = ["Sloe Hill Spares", "sloe hill  spares", "Sloe Hill Spares", "Hare & Wick", " "];
    for (number, from) in (200..).zip(from) {
        bench.quote(number, PART, "buy", 40_00, json!([{ "from": from }]));
    }
    let told = bench.asked(json!({ "ask": "suppliers" }));
    assert_eq!(names(&told, "suppliers"), []);
    assert_eq!(names(&told, "unnamed"), [named("Sloe Hill Spares", 3), named("Hare & Wick", 1)]);

    supplier(&mut bench, 10, "SLOE hill spares ");
    supplier(&mut bench, 11, "Anvil Row");
    let told = bench.asked(json!({ "ask": "suppliers" }));
    assert_eq!(names(&told, "suppliers"), [named("Anvil Row", 0), named("SLOE hill spares ", 3)]);
    assert_eq!(names(&told, "unnamed"), [named("Hare & Wick", 1)]);

    bench.change(10, json!({ "struck": true }));
    let told = bench.asked(json!({ "ask": "suppliers" }));
    assert_eq!(names(&told, "suppliers"), [named("Anvil Row", 0)]);
    assert_eq!(names(&told, "unnamed"), [named("Sloe Hill Spares", 3), named("Hare & Wick", 1)]);
}

/// Quotes that are struck out, or whose part is, count for nobody; a donor is not offered as a supplier.
#[test]
fn what_is_struck_out_and_donors_are_nobodys() {
    let mut bench = Bench::new();
    bench.part(101, 1);
    bench.quote(200, PART, "buy", 40_00, json!([{ "from": "Hare & Wick" }]));
    bench.quote(201, 101, "buy", 40_00, json!([{ "from": "Hare & Wick" }]));
    bench.quote(202, PART, "donor", 0, json!([{ "from": "the green one" }]));
    bench.change(200, json!({ "struck": true }));
    bench.change(101, json!({ "struck": true }));
    let donor = json!([{ "name": "The green one" }, { "donor": true }]);
    bench.done(json!({ "do": "create", "id": id(12), "kind": "vehicle", "changes": donor }));
    assert_eq!(names(&bench.asked(json!({ "ask": "suppliers" })), "unnamed"), []);
}

/// Of two of one name the first by id has the quotes, as in a plan.
#[test]
fn of_two_of_one_name_the_first_has_the_quotes() {
    let mut bench = Bench::new();
    bench.quote(200, PART, "buy", 40_00, json!([{ "from": "Hare & Wick" }]));
    supplier(&mut bench, 11, "hare & wick");
    supplier(&mut bench, 10, "Hare & Wick");
    let told = bench.asked(json!({ "ask": "suppliers" }));
    let quotes: Vec<(&Value, &Value)> = told["suppliers"]
        .as_array()
        .expect("lines")
        .iter()
        .map(|line| (&line["record"]["id"], &line["quotes"]))
        .collect();
    assert_eq!(quotes, [(&json!(id(10)), &json!(1)), (&json!(id(11)), &json!(0))]);
}

/// Carriage by value and by mass stands with its supplier, the least first.
#[test]
fn tiers_stand_in_order() {
    let mut bench = Bench::new();
    supplier(&mut bench, 10, "Hare & Wick");
    let mut tier = |number: u16, changes: Value| {
        let mut all = vec![json!({ "of": id(10) })];
        all.extend(changes.as_array().cloned().unwrap_or_default());
        bench.done(json!({ "do": "create", "id": id(number), "kind": "tier", "changes": all }));
    };
    tier(20, json!([{ "from_value": money(10_000) }, { "shipping": money(5_00) }]));
    tier(21, json!([{ "from_mass": 10_000 }, { "shipping": money(30_00) }]));
    tier(22, json!([{ "from_mass": 2_000 }, { "shipping": money(12_00) }]));
    bench.change(21, json!({ "struck": true }));
    let told = bench.asked(json!({ "ask": "suppliers" }));
    let tiers = told["suppliers"][0]["tiers"].as_array().expect("tiers").iter();
    assert_eq!(tiers.map(|tier| &tier["id"]).collect::<Vec<_>>(), [&json!(id(22)), &json!(id(20))]);
}

/// A rule tells what stands on each of its sides: a part by its name, by its tag too where two are called the same, a
/// quote by its part and whom it is from, a donor.
#[test]
fn rules_name_their_sides() {
    let mut bench = Bench::new();
    bench.part(101, 1);
    bench.part(102, 1);
    for (part, name) in [(PART, "Later drum, left"), (101, "Later hub"), (102, "Later drum, right")] {
        bench.change(part, json!({ "name": name }));
    }
    bench.quote(200, 101, "buy", 40_00, json!([{ "from": "Hare & Wick" }]));
    let rule = |of: u16, relation: &str, other: u16| json!([{ "of": id(of) }, { "relation": relation }, { "other": id(other) }, { "cash": money(3_00) }]);
    bench.done(json!({ "do": "create", "id": id(30), "kind": "rule", "changes": rule(PART, "needs", 101) }));
    bench.done(json!({ "do": "create", "id": id(31), "kind": "rule", "changes": rule(200, "goes-with", PART) }));
    let told = bench.asked(json!({ "ask": "rules" }));
    let said = |at: usize, member: &str| told["rules"][at][member].clone();
    assert_eq!((said(0, "subject"), said(0, "other")), (json!("Later drum, left 0001"), json!("Later hub")));
    assert_eq!((said(1, "subject"), said(1, "subject_route")), (json!("Later hub, Hare & Wick"), json!("buy")));
    assert_eq!((said(1, "other_route"), said(1, "record")["values"]["cash"].clone()), (Value::Null, money(3_00)));

    bench.change(102, json!({ "struck": true }));
    assert_eq!(bench.asked(json!({ "ask": "rules" }))["rules"][0]["subject"], "Later drum, left");
    bench.change(30, json!({ "struck": true }));
    assert_eq!(bench.asked(json!({ "ask": "rules" }))["rules"].as_array().map(Vec::len), Some(1));
}

/// What nobody said of the limits is left out; a budget in another currency than the job's is none.
#[test]
fn limits_of_the_job_are_told_when_they_were_said() {
    let mut bench = Bench::new();
    let settings = |bench: &Bench| bench.asked(json!({ "ask": "head" }))["settings"].clone();
    for member in ["budget", "own_hours", "latest"] {
        assert_eq!(settings(&bench).get(member), None);
    }
    for change in [json!({ "budget": money(90_000) }), json!({ "own_hours": 2_400 }), json!({ "latest": "2027-04-01" })]
    {
        bench.change(1, change);
    }
    let told = settings(&bench);
    assert_eq!(
        (&told["budget"], &told["own_hours"], &told["latest"]),
        (&money(90_000), &json!(2_400), &json!("2027-04-01"))
    );
    bench.change(1, json!({ "currency": "EUR" }));
    assert_eq!(settings(&bench).get("budget"), None);
}
