//! What a history tells of a record and of what was said about it.

use serde_json::{Value, json};

use crate::bench::{Bench, PART, id, money};

fn history(bench: &Bench, number: u16) -> Value {
    bench.asked(json!({ "ask": "history", "id": id(number) }))
}

/// What was seen, measured and quoted stands in the history of the part, each line with what it is about; undoing one is
/// undoing that alone.
#[test]
fn a_part_tells_what_was_said_about_it() {
    let mut bench = Bench::new();
    let finding = json!([{ "of": id(PART) }, { "question": "cracks" }]);
    bench.done(json!({ "do": "create", "id": id(10), "kind": "finding", "changes": finding }));
    bench.quote(11, PART, "buy", 40_00, json!([]));
    bench.change(11, json!({ "cash": money(42_00) }));
    bench.change(PART, json!({ "name": "Brake drum" }));
    let told = history(&bench, PART);
    let lines = told["lines"].as_array().expect("lines");
    let kinds: Vec<&Value> = lines.iter().map(|line| &line["kind"]).collect();
    assert_eq!(kinds, [&Value::Null, &json!("finding"), &json!("quote"), &json!("quote"), &Value::Null]);
    assert_eq!((&lines[3]["about"], &lines[3]["changes"]), (&json!(id(11)), &json!([{ "cash": money(42_00) }])));
    let part = bench.asked(json!({ "ask": "part", "part": id(PART) }));
    assert_eq!(part["latest"], lines[4]["entry"], "undo on the sheet takes back what was written to the part itself");
}

/// What has no page of its own says what it hangs on in the end.
#[test]
fn what_hangs_on_something_says_on_what() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "kit", 40_00, json!([]));
    bench.done(
        json!({ "do": "create", "id": id(11), "kind": "cover", "changes": [{ "of": id(10) }, { "part": id(PART) }] }),
    );
    for (number, kind) in [(10, "quote"), (11, "cover")] {
        let told = history(&bench, number);
        assert_eq!((&told["home"], &told["kind"]), (&json!(id(PART)), &json!(kind)));
    }
    assert_eq!(history(&bench, PART).get("home"), None);
}
