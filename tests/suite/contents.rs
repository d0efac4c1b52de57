//! What is in a kit, from a pasted list: matched by number, else by name.

use asfound_core::job::{bare_number, names_like};
use asfound_core::reckoning::{HeavyQuery, reckon};
use serde_json::{Value, json};

use crate::bench::{Bench, PART, id, money};

/// A heavy question, as the page asks its reckoning worker.
fn reckoned(bench: &Bench, query: Value) -> Value {
    let query: HeavyQuery = serde_json::from_value(query).expect("a heavy query");
    serde_json::to_value(reckon(&bench.job, &query)).expect("a view")
}

/// A kit on the first part, and parts of these names and numbers from 101 on.
fn kit(parts: &[(&str, &str, i64)]) -> Bench {
    let mut bench = Bench::new();
    bench.quote(200, PART, "kit", 4_800, json!([]));
    for (number, (name, makers, pieces)) in (101..).zip(parts) {
        bench.part(number, *pieces);
        bench.change(number, json!({ "name": name }));
        if !makers.is_empty() {
            bench.change(number, json!({ "makers_number": makers }));
        }
    }
    bench
}

/// For each row: line, part, pieces, by what, sure.
fn rows(bench: &Bench, lines: &[(&str, &str, Option<i64>)]) -> Vec<(i64, Option<u16>, i64, String, bool)> {
    let line = |(number, name, quantity): &(&str, &str, Option<i64>)| json!({ "number": number, "name": name, "quantity": quantity });
    let lines: Vec<Value> = lines.iter().map(line).collect();
    let view = reckoned(bench, json!({ "ask": "kit-contents", "quote": id(200), "lines": lines }));
    let part = |row: &Value| (100..120).find(|number| row["part"] == json!(id(*number)));
    let row = |row: &Value| {
        let by = row["by"].as_str().unwrap_or_default().to_owned();
        (row["line"].as_i64().unwrap_or(-1), part(row), row["pieces"].as_i64().unwrap_or(-1), by, row["sure"] == true)
    };
    view["rows"].as_array().expect("rows").iter().map(row).collect()
}

fn row(line: i64, part: u16, pieces: i64, by: &str, sure: bool) -> (i64, Option<u16>, i64, String, bool) {
    (line, Some(part), pieces, by.to_owned(), sure)
}

#[test]
fn numbers_are_the_same_however_they_are_written() {
    for written in ["GHB 1234-A", "ghb1234a", " GHB-1234.A "] {
        assert_eq!(bare_number(written), "GHB1234A");
    }
    let bench = kit(&[("Hose", "GHB 1234-A", 2), ("Seal", "25/7", 1)]);
    assert_eq!(rows(&bench, &[("ghb-1234a", "something else", Some(2))]), [row(0, 101, 2, "number", true)]);
    assert_eq!(rows(&bench, &[("GHB 1234", "", None)]), [(0, None, 1, String::new(), false)]);
}

/// Names as they stand in lists, beside those that people give.
#[test]
fn names_are_compared_by_their_words() {
    let like = |one: &str, other: &str| names_like(one, other);
    assert_eq!((like("Wheel bearing", "BEARING, WHEEL"), like("Bushes", "Bush")), (1000, 1000));
    assert_eq!(like("Oil seal, front hub", "Front hub seal"), 857);
    assert_eq!(like("Bearring", "Bearing"), 800);
    assert_eq!(
        (like("Left damper", "Damper LH"), like("Left damper", "Right damper"), like("Damper", "Right damper")),
        (1000, 0, 1000)
    );
    // Figures are the same or not, and short words are not guessed.
    assert_eq!((like("Bolt M8", "Bolt M6"), like("Pin", "Pan"), like("", "Pin")), (500, 0, 0));
    assert!(like("Brake hose", "Brake drum") == 500 && like("Kingpin", "Gasket") == 0);
}

/// One line with pieces for both sides covers both; a part is proposed once; who was found by number goes first.
#[test]
fn a_line_may_be_for_both_sides() {
    let bench =
        kit(&[("Bearing left", "LM 11949", 1), ("Bearing right", "LM11949", 1), ("Hub seal", "", 2), ("Hub", "", 1)]);
    assert_eq!(
        rows(&bench, &[("lm11949", "", Some(2))]),
        [row(0, 101, 1, "number", true), row(0, 102, 1, "number", true)]
    );
    assert_eq!(rows(&bench, &[("lm11949", "", Some(1))]), [row(0, 101, 1, "number", false)]);
    assert_eq!(rows(&bench, &[("", "Bearing", Some(2))]), [row(0, 101, 1, "name", true), row(0, 102, 1, "name", true)]);
    // The seal of the hub is not the hub: the likest line takes it.
    let both = rows(&bench, &[("", "Hub", None), ("", "Seals for hub", Some(2))]);
    assert_eq!(both, [row(0, 104, 1, "name", true), row(1, 103, 2, "name", true)]);
    let twice = rows(&bench, &[("", "Hub seal", Some(2)), ("", "Hub seal", Some(2))]);
    assert_eq!((twice[0].1, twice[1].1), (Some(103), Some(104)));
    assert!(!twice[1].4);
}

/// What the kit covers already is told so; nothing is written; of no kit nothing is told.
#[test]
fn what_is_covered_already_is_told() {
    let mut bench = kit(&[("Hub seal", "", 2)]);
    let view = |bench: &Bench| {
        reckoned(bench, json!({ "ask": "kit-contents", "quote": id(200), "lines": [{ "name": "hub seals" }] }))
    };
    assert_eq!(view(&bench)["rows"][0]["covered"], false);
    bench.done(
        json!({ "do": "create", "id": id(300), "kind": "cover", "changes": [{ "of": id(200) }, { "part": id(101) }] }),
    );
    assert_eq!(view(&bench)["rows"][0]["covered"], true);
    assert_eq!(bench.cost(PART)["kits"][0]["price"], money(4_800));
    assert_eq!(reckoned(&bench, json!({ "ask": "kit-contents", "quote": id(101), "lines": [] }))["view"], "nothing");
}
