//! Suppliers with their terms, and rules between parts, as the page lists them.
#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

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

fn rule(bench: &mut Bench, number: u16, of: u16, relation: &str, other: u16, price: i64) {
    let changes = json!([{ "of": id(of) }, { "relation": relation }, { "other": id(other) }, { "cash": money(price) }]);
    bench.done(json!({ "do": "create", "id": id(number), "kind": "rule", "changes": changes }));
}

fn choose(bench: &mut Bench, number: u16, part: u16, quote: u16) {
    bench.done(json!({ "do": "choose", "id": id(number), "part": id(part), "quote": id(quote) }));
}

/// Why a rule is broken, which quotes mend it for which parts, and what that costs more.
type Told = (String, Vec<(Value, Value)>, i64);

/// What is told of the only rule: why it is broken, which quotes mend it, and what that costs more.
fn told(bench: &Bench) -> Option<Told> {
    let breach = bench.asked(json!({ "ask": "rules" }))["rules"][0]["breach"].clone();
    let choices = breach["mend"]["choices"].as_array().cloned().unwrap_or_default();
    let choices = choices.iter().map(|choice| (choice["part"].clone(), choice["quote"].clone()));
    let more = breach["mend"]["more"]["minor"].as_f64().unwrap_or(f64::NAN);
    #[expect(clippy::cast_possible_truncation, reason = "whole pence")]
    let more = more as i64;
    Some((breach["why"].as_str()?.to_owned(), choices.collect(), more))
}

fn mended(why: &str, part: u16, quote: u16, more: i64) -> Option<Told> {
    Some((why.to_owned(), vec![(json!(id(part)), json!(id(quote)))], more))
}

/// Later drums (quote 200 at 30, else use again at 4) need later hubs (quote 210 at 52.40, else new ones at 40): nothing chosen
/// for the hubs, so the later hubs are 12.40 more than the hubs would cost anyway, against 26 less for other drums.
#[test]
fn a_breach_is_told_with_its_cheapest_mend() {
    let mut bench = Bench::new();
    bench.part(101, 1);
    bench.quote(200, PART, "buy", 30_00, json!([]));
    bench.quote(210, 101, "donor", 52_40, json!([]));
    bench.quote(211, 101, "buy", 40_00, json!([]));
    rule(&mut bench, 30, 200, "needs", 210, 0);
    assert_eq!(told(&bench), None);
    choose(&mut bench, 40, PART, 200);
    assert_eq!(told(&bench), mended("nothing-chosen", 101, 210, 12_40));

    // Another route for the drums, 8 more, is cheaper than that.
    bench.quote(201, PART, "buy", 38_00, json!([{ "from": "Hare & Wick" }]));
    assert_eq!(told(&bench), mended("nothing-chosen", PART, 201, 8_00));
    let breach = bench.asked(json!({ "ask": "rules" }))["rules"][0]["breach"].clone();
    assert_eq!(breach["parts"], json!([id(PART), id(101)]));
    assert_eq!((&breach["mend"]["choices"][0]["from"], breach.get("price")), (&json!("Hare & Wick"), None));

    // The other hubs are chosen: what the later ones cost more than these.
    choose(&mut bench, 41, 101, 211);
    bench.change(201, json!({ "struck": true }));
    assert_eq!(told(&bench), mended("other-chosen", 101, 210, 12_40));
    let breach = bench.asked(json!({ "ask": "rules" }))["rules"][0]["breach"].clone();
    assert_eq!(breach["instead"], "buy");
    choose(&mut bench, 42, 101, 210);
    assert_eq!(told(&bench), None);

    // What is about another part is left out.
    let of = |part: u16| bench.asked(json!({ "ask": "rules", "part": id(part) }))["rules"].as_array().map(Vec::len);
    assert_eq!((of(PART), of(101), of(102)), (Some(1), Some(1), Some(0)));
}

/// Ruled out: the cheaper of giving up the one or the other. Where nothing else is quoted there is no mend.
#[test]
fn of_two_that_rule_one_another_out_the_cheaper_gives_way() {
    let mut bench = Bench::new();
    bench.part(101, 1);
    bench.quote(200, PART, "buy", 30_00, json!([]));
    bench.quote(210, 101, "buy", 40_00, json!([]));
    choose(&mut bench, 40, PART, 200);
    choose(&mut bench, 41, 101, 210);
    rule(&mut bench, 30, PART, "rules-out", 101, 0);
    assert_eq!(bench.asked(json!({ "ask": "rules" }))["rules"][0]["breach"]["why"], "both");
    assert_eq!(bench.asked(json!({ "ask": "rules" }))["rules"][0]["breach"].get("mend"), None);
    bench.quote(201, PART, "use-again", 35_00, json!([]));
    bench.quote(211, 101, "use-again", 44_00, json!([]));
    assert_eq!(told(&bench), mended("both", 101, 211, 4_00));
}

/// What goes with something costs 15 without it: the other, at 12 more, saves 3; at 20 more it would cost 5, and is told so.
#[test]
fn what_goes_with_something_is_weighed_against_its_price() {
    let mut bench = Bench::new();
    bench.part(101, 1);
    bench.quote(200, PART, "buy", 30_00, json!([]));
    bench.quote(210, 101, "buy", 22_00, json!([]));
    bench.quote(211, 101, "use-again", 10_00, json!([]));
    rule(&mut bench, 30, PART, "goes-with", 101, 15_00);
    choose(&mut bench, 40, PART, 200);
    choose(&mut bench, 41, 101, 211);
    assert_eq!(told(&bench), mended("other-chosen", 101, 210, -3_00));
    bench.change(210, json!({ "cash": money(30_00) }));
    assert_eq!(told(&bench), mended("other-chosen", 101, 210, 5_00));
    assert_eq!(bench.asked(json!({ "ask": "rules" }))["rules"][0]["breach"]["price"], money(15_00));
}

/// A mend never breaks another rule that must hold, and a donor that it brings in is paid for: 50 less 20 for its surplus.
#[test]
fn a_mend_breaks_nothing_and_pays_the_donor() {
    let mut bench = Bench::new();
    bench.part(101, 1);
    bench.part(102, 1);
    let donor =
        json!([{ "name": "The green one" }, { "donor": true }, { "cash": money(50_00) }, { "sold": money(20_00) }]);
    bench.done(json!({ "do": "create", "id": id(12), "kind": "vehicle", "changes": donor }));
    bench.quote(200, PART, "buy", 30_00, json!([]));
    bench.quote(210, 101, "donor", 5_00, json!([{ "vehicle": id(12) }]));
    bench.quote(211, 101, "use-again", 4_00, json!([]));
    bench.quote(212, 101, "buy", 9_00, json!([]));
    bench.quote(220, 102, "buy", 1_00, json!([]));
    choose(&mut bench, 40, PART, 200);
    choose(&mut bench, 41, 101, 211);
    choose(&mut bench, 42, 102, 220);
    rule(&mut bench, 30, PART, "needs", 101, 0);
    assert_eq!(told(&bench), mended("other-chosen", 101, 212, 5_00));
    rule(&mut bench, 31, 212, "rules-out", 220, 0);
    assert_eq!(told(&bench), mended("other-chosen", 101, 210, 31_00));
    bench.change(12, json!({ "bought": true }));
    assert_eq!(told(&bench), mended("other-chosen", 101, 210, 1_00));
}

/// What is decided together with a part goes the same way with it: both sides of an axle.
#[test]
fn both_sides_are_mended_together() {
    let mut bench = Bench::new();
    bench.done(json!({ "do": "create", "id": id(5), "kind": "assembly", "changes": [{ "name": "Front axle" }] }));
    for (part, side) in [(101, "left"), (102, "right")] {
        bench.part(part, 1);
        for change in [
            json!({ "name": "Damper" }),
            json!({ "pair": true }),
            json!({ "side": side }),
            json!({ "assembly": id(5) }),
        ] {
            bench.change(part, change);
        }
        bench.quote(part + 100, part, "use-again", 2_00, json!([]));
        bench.quote(part + 200, part, "buy", 20_00, json!([]));
        choose(&mut bench, part + 300, part, part + 100);
    }
    bench.quote(200, PART, "buy", 30_00, json!([]));
    choose(&mut bench, 40, PART, 200);
    rule(&mut bench, 30, PART, "needs", 101, 0);
    let both = vec![(json!(id(101)), json!(id(301))), (json!(id(102)), json!(id(302)))];
    assert_eq!(told(&bench), Some(("other-chosen".to_owned(), both, 36_00)));
}

/// What a donor gave and has, what its surplus brought, and what it came to: 400 less 60 and less the wing at 45.
#[test]
fn a_donor_tells_what_is_left_and_what_it_came_to() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "name": "Hub" }));
    bench.part(101, 1);
    bench.change(101, json!({ "name": "Drum" }));
    let donor =
        json!([{ "name": "The green one" }, { "donor": true }, { "cash": money(400_00) }, { "sold": money(60_00) }]);
    bench.done(json!({ "do": "create", "id": id(12), "kind": "vehicle", "changes": donor }));
    bench.done(json!({ "do": "create", "id": id(13), "kind": "assembly", "changes": [{ "name": "Body" }, { "vehicle": id(12) }] }));
    bench.done(json!({ "do": "create", "id": id(14), "kind": "assembly", "changes": [{ "name": "Front" }, { "inside": id(13) }] }));
    for (part, name) in [(102_u16, "Wing"), (103, "Grille")] {
        let changes = json!([{ "name": name }, { "assembly": id(14) }, { "off": false }]);
        bench.done(json!({ "do": "create", "id": id(part), "kind": "part", "changes": changes }));
    }
    bench.quote(200, PART, "donor", 0, json!([{ "vehicle": id(12) }]));
    bench.quote(201, 101, "donor", 0, json!([{ "vehicle": id(12) }]));
    let names = |bench: &Bench, member: &str| {
        let told = bench.asked(json!({ "ask": "donor", "vehicle": id(12) }));
        let lines = told[member].as_array().expect("lines").iter();
        lines.map(|line| line["name"].as_str().expect("a name").to_owned()).collect::<Vec<_>>()
    };
    assert_eq!(
        (names(&bench, "taken"), names(&bench, "left")),
        (vec![], vec!["Drum".to_owned(), "Grille".into(), "Hub".into(), "Wing".into()])
    );
    choose(&mut bench, 40, PART, 200);
    bench.change(201, json!({ "fetched": true }));
    bench.change(102, json!({ "off": true }));
    bench.change(102, json!({ "sold": money(45_00) }));
    assert_eq!(
        (names(&bench, "taken"), names(&bench, "left")),
        (vec!["Drum".to_owned(), "Hub".into(), "Wing".into()], vec!["Grille".to_owned()])
    );
    let told = bench.asked(json!({ "ask": "donor", "vehicle": id(12) }));
    assert_eq!((&told["sold"], &told["really"]), (&money(105_00), &money(295_00)));
    assert_eq!(bench.asked(json!({ "ask": "donor", "vehicle": id(PART) }))["view"], "nothing");
}
