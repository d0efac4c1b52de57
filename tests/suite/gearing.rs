//! Gearings of a job: before, after, candidates; what of them is compared, and what cannot be read.

use serde_json::{Value, json};

use crate::bench::{Bench, id};

fn gearing(bench: &mut Bench, number: u16, name: &str, changes: Value) {
    let mut all = vec![json!({ "name": name })];
    all.extend(changes.as_array().cloned().unwrap_or_default());
    bench.done(json!({ "do": "create", "id": id(number), "kind": "gearing", "changes": all }));
}

fn asked(bench: &Bench) -> Value {
    bench.asked(json!({ "ask": "gearing" }))
}

fn close(value: &Value, expected: f64, within: f64) {
    let value = value.as_f64().expect("a number");
    assert!((value - expected).abs() <= within, "{value} is not {expected}");
}

fn before() -> Value {
    json!([{ "swap": "before" }, { "axle_ratio": 42_200 }, { "gear_ratios": "3.33, 2.05, 1.37, 1" }, { "turns_per_mile": 90_000 }])
}

/// Before, after, candidates, the rest; each by name. Gear by gear beside the one before.
#[test]
fn each_is_compared_with_the_one_before() {
    let mut bench = Bench::new();
    gearing(&mut bench, 10, "plain", json!([]));
    gearing(&mut bench, 11, "b", json!([{ "swap": "candidate" }]));
    gearing(&mut bench, 12, "a", json!([{ "swap": "candidate" }]));
    let after = json!([{ "swap": "after" }, { "axle_ratio": 37_000 }, { "gear_ratios": "1; 1.37; 2.05; 3.33" }, { "turns_per_mile": 90_000 },
        { "overdrive": 8_000 }, { "overdrive_on": 2 }, { "highest_turns": 6_000 }]);
    gearing(&mut bench, 13, "new", after);
    gearing(&mut bench, 14, "old", before());
    let told = asked(&bench);
    let names: Vec<_> =
        told["sets"].as_array().expect("sets").iter().map(|set| &set["record"]["values"]["name"]).collect();
    assert_eq!(names, ["old", "new", "a", "b", "plain"]);
    let (old, new) = (&told["sets"][0], &told["sets"][1]);
    assert_eq!(
        (&old["against"], &old["rows"][3]["change"], &old["rows"][3]["top"]),
        (&Value::Null, &Value::Null, &json!(true))
    );
    let rows = new["rows"].as_array().expect("rows");
    let gears: Vec<_> = rows.iter().map(|row| (row["gear"].as_u64(), row["overdriven"].as_bool())).collect();
    let expected = [(1, false), (2, false), (3, false), (3, true), (4, false), (4, true)];
    assert_eq!(gears, expected.map(|(gear, over)| (Some(gear), Some(over))));
    close(&rows[4]["change"], 3.70 / 4.22 - 1.0, 1e-12);
    assert_eq!(rows[5]["change"], Value::Null);
    close(&new["against"]["top"], 3.70 * 0.8 / 4.22 - 1.0, 1e-12);
    close(&new["against"]["speedometer"], 3.70 / 4.22 - 1.0, 1e-12);
    close(&new["against"]["wheel_speedometer"], 0.0, 1e-12);
    close(&rows[4]["mph"], 60_000.0 / 900.0 / 3.70, 1e-9);
    close(&rows[4]["highest_kmh"], 6.0 * 60_000.0 / 900.0 / 3.70 * 1.609_344, 1e-9);
    assert_eq!(told["sets"][2]["needs"], json!(["axle_ratio", "gear_ratios", "tyre"]));
}

/// A speed that nobody drives is told, and asks nothing.
#[test]
fn the_engine_speed_at_a_road_speed() {
    let mut bench = Bench::new();
    gearing(&mut bench, 14, "old", before());
    let top = |query: Value| bench.asked(query)["sets"][0]["rows"][3]["turns"].clone();
    close(&top(json!({ "ask": "gearing", "speed": 60 })), 900.0 * 4.22, 1e-9);
    close(&top(json!({ "ask": "gearing", "speed": 60.0 * 1.609_344, "unit": "kmh" })), 900.0 * 4.22, 1e-9);
    for speed in [0.0, -5.0, 1e300] {
        let told = bench.asked(json!({ "ask": "gearing", "speed": speed }));
        assert_eq!(
            (&told["problems"][0]["code"], &told["sets"][0]["rows"][3]["turns"]),
            (&json!("out-of-bounds"), &Value::Null)
        );
    }
}

/// The best that is known of a tyre counts: the floor, a data book, across the tread, its marking; the latter two leave out the weight.
#[test]
fn what_was_measured_goes_before_the_marking() {
    let mut bench = Bench::new();
    gearing(&mut bench, 10, "one", json!([{ "tyre": "185/70-13" }]));
    let mut seen = Vec::new();
    for change in [
        json!(null),
        json!({ "diameter": 575_000_000 }),
        json!({ "turns_per_mile": 88_100 }),
        json!({ "circumference": 1_820_000_000 }),
    ] {
        if !change.is_null() {
            bench.change(10, change);
        }
        let told = asked(&bench)["sets"][0]["rolling"].clone();
        seen.push((
            told["from"].clone(),
            told["measured"] == true,
            told["loaded"].is_null(),
            told["beside_marking"].is_null(),
        ));
    }
    let expected = [
        ("marking", false, false, true),
        ("diameter", true, false, false),
        ("turns", true, true, false),
        ("circumference", true, true, false),
    ];
    assert_eq!(seen, expected.map(|(from, measured, loaded, beside)| (json!(from), measured, loaded, beside)));
    // A data book's 881 turns beside 869.4 by geometry: 1.3 % more.
    bench.change(10, json!({ "clear": "circumference" }));
    close(&asked(&bench)["sets"][0]["rolling"]["beside_marking"], 0.0133, 1e-3);
}

/// What cannot be read is stored as it was written, told at its field, and hinders nothing that can be counted without it.
#[test]
fn what_cannot_be_read_is_kept_and_told() {
    let mut bench = Bench::new();
    gearing(&mut bench, 14, "old", before());
    bench.change(14, json!({ "tyre": "ER70-13" }));
    bench.change(14, json!({ "gear_ratios": "3.33, 1.37, 2.05" }));
    let set = asked(&bench)["sets"][0].clone();
    let told: Vec<_> = set["problems"]
        .as_array()
        .expect("problems")
        .iter()
        .map(|one| (&one["code"], &one["place"]["field"], &one["values"]["why"]))
        .collect();
    assert_eq!(
        told,
        [
            (&json!("tyre-unreadable"), &json!("tyre"), &json!("form")),
            (&json!("ratios-unreadable"), &json!("gear_ratios"), &json!("order"))
        ]
    );
    assert_eq!(
        (&set["record"]["values"]["tyre"], &set["record"]["values"]["gear_ratios"]),
        (&json!("ER70-13"), &json!("3.33, 1.37, 2.05"))
    );
    assert_eq!((&set["rolling"]["from"], &set["needs"]), (&json!("turns"), &json!(["gear_ratios"])));
    bench.change(14, json!({ "tyre": " " }));
    assert_eq!(asked(&bench)["sets"][0]["problems"].as_array().map(Vec::len), Some(1));
    let typed = bench.asked(json!({ "ask": "gearing-typed", "tyre": "5.20-13", "gears": "x" }));
    assert_eq!(
        (&typed["tyre"]["aspect_from"], &typed["problems"][0]["code"]),
        (&json!("inch"), &json!("ratios-unreadable"))
    );
}

/// Vehicles are compared each with its own; a gearing of no vehicle with any.
#[test]
fn vehicles_are_not_mixed() {
    let mut bench = Bench::new();
    for number in [5, 6] {
        bench.done(json!({ "do": "create", "id": id(number), "kind": "vehicle", "changes": [{ "name": format!("V{number}") }] }));
    }
    gearing(&mut bench, 14, "old", before());
    gearing(&mut bench, 15, "new", before());
    bench.change(15, json!({ "swap": "after" }));
    let against = |bench: &Bench| asked(bench)["sets"][1]["against"]["before"].clone();
    assert_eq!(against(&bench), id(14).to_string());
    bench.change(15, json!({ "vehicle": id(5) }));
    assert_eq!(against(&bench), id(14).to_string());
    assert_eq!(asked(&bench)["sets"][1]["vehicle"], "V5");
    bench.change(14, json!({ "vehicle": id(6) }));
    assert_eq!(against(&bench), Value::Null);
    gearing(&mut bench, 16, "older", before());
    bench.change(16, json!({ "vehicle": id(5) }));
    assert_eq!(asked(&bench)["sets"][2]["against"]["before"], id(16).to_string());
    bench.change(16, json!({ "struck": true }));
    assert_eq!(against(&bench), Value::Null);
}
