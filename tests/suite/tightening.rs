//! What is loose, what is tight and not gone over again; and new pieces beside the step they are wanted at.

use serde_json::{Value, json};

use crate::bench::{Bench, id};

const HUB: u16 = 50;
const WHEEL: u16 = 110;
const JOINT: u16 = 120;

/// A part that is on, held by a joint whose nut has a figure.
fn hub() -> Bench {
    let mut bench = Bench::new();
    let mut make = |number: u16, kind: &str, changes: Value| {
        bench.done(json!({ "do": "create", "id": id(number), "kind": kind, "changes": changes }));
    };
    make(HUB, "assembly", json!([{ "name": "Front hub" }]));
    make(WHEEL, "part", json!([{ "name": "Wheel hub" }, { "assembly": id(HUB) }, { "fit": "fitted" }]));
    make(JOINT, "joint", json!([{ "name": "A" }, { "of": id(WHEEL) }, { "assembly": id(HUB) }]));
    make(121, "piece", json!([{ "joint": id(JOINT) }, { "name": "Castle nut" }, { "torque": 54_000_000 }]));
    bench
}

fn ready(bench: &Bench) -> Value {
    bench.asked(json!({ "ask": "ready" }))
}

/// A loose joint comes with its pieces and figures; tight, it is to be gone over again; checked, it is in neither list.
/// Break: in `to_check_again` leave `checked_again` out.
#[test]
fn what_is_tight_is_gone_over_again() {
    let mut bench = hub();
    let view = ready(&bench);
    assert_eq!(view["loose"][0]["hardware"]["pieces"][0]["record"]["values"]["torque"], 54_000_000);
    assert_eq!(view["unchecked"], json!([]));
    bench.change(JOINT, json!({ "tightened": "tight" }));
    let view = ready(&bench);
    assert_eq!(view["loose"], json!([]));
    assert_eq!(
        (&view["unchecked"][0]["joint"], &view["unchecked"][0]["part_name"]),
        (&json!(id(JOINT)), &json!("Wheel hub"))
    );
    bench.change(JOINT, json!({ "checked_again": true }));
    assert_eq!(ready(&bench)["unchecked"], json!([]));
    // Off again: what was checked does not count any more.
    bench.done(json!({ "do": "change", "ids": [id(JOINT)], "changes": [{ "tightened": "finger-tight" }, { "clear": "checked_again" }] }));
    assert_eq!(ready(&bench)["loose"][0]["finger_tight"], true);
}

/// Joints of a donor's parts are in neither list.
/// Break: in `told` leave the donor out.
#[test]
fn nothing_of_a_donor_is_gone_over() {
    let mut bench = hub();
    bench.done(json!({ "do": "create", "id": id(60), "kind": "vehicle", "changes": [{ "name": "The green one" }, { "donor": true }] }));
    bench.change(HUB, json!({ "vehicle": id(60) }));
    bench.change(JOINT, json!({ "tightened": "tight" }));
    assert_eq!(ready(&bench)["unchecked"], json!([]));
}

/// New pieces stand with the part and at its step, in the order they were put down; what was struck out does not.
/// Break: in `part_view` list struck-out ones, too.
#[test]
fn new_pieces_stand_with_the_part() {
    let mut bench = hub();
    for (number, at) in [(401, 3), (402, 1), (403, 2)] {
        bench.done(json!({ "do": "create", "id": id(number), "kind": "delivery", "changes": [{ "of": id(WHEEL) }, { "taken": at }] }));
    }
    bench.change(403, json!({ "struck": true }));
    let listed = |view: &Value| -> Vec<Value> {
        view["deliveries"].as_array().expect("deliveries").iter().map(|one| one["id"].clone()).collect()
    };
    let wanted = [json!(id(402)), json!(id(401))];
    assert_eq!(listed(&bench.asked(json!({ "ask": "part", "part": id(WHEEL) }))), wanted);
    let step = bench.asked(json!({ "ask": "refit-step", "part": id(WHEEL) }));
    assert_eq!(listed(&step), wanted);
    assert_eq!(step["outings"], json!([]));
    let history = bench.asked(json!({ "ask": "history", "id": id(WHEEL) }));
    let told =
        history["lines"].as_array().expect("lines").iter().filter(|line| line["about"] == json!(id(401))).count();
    assert_eq!(told, 1, "what was said of it stands in its history");
}
