//! Cautions, and the family they rest on, over recorded jobs, asked as the page and the native door ask.

use asfound_core::job::{Command, Context, Job, Query, Sent, View, apply, ask};
use asfound_core::quantity::Millis;
use asfound_core::record::{Id, Replica};
use serde_json::{Value, json};

const PART: u16 = 100;

/// The id of a number.
fn id(number: u16) -> Id {
    format!("{number:032x}").parse().expect("an id")
}

/// A job with one part of this name, and what else is said of it.
fn job_with(name: &str, more: &[Value]) -> Job {
    let mut changes = vec![json!({ "name": name })];
    changes.extend_from_slice(more);
    let mut job = Job::new();
    let commands = [
        json!({ "do": "create", "id": id(1), "kind": "job", "changes": [] }),
        json!({ "do": "create", "id": id(PART), "kind": "part", "changes": changes }),
    ];
    for (number, command) in (9_000..).zip(commands) {
        let command: Command = serde_json::from_value(command).expect("a command");
        let context = Context { replica: Replica::from_bytes([7; 8]), device: id(2), at: Millis(0) };
        let applied = apply(&job, &Sent { id: id(number), command }, &context);
        assert_eq!(applied.problems, vec![]);
        job.absorb(applied.entries);
    }
    job
}

fn asked(job: &Job, query: Value) -> Value {
    let query: Query = serde_json::from_value(query).expect("a query");
    let view: View = ask(job, &query, id(2));
    serde_json::to_value(view).expect("a view")
}

fn hazards(job: &Job, step: &str) -> Vec<String> {
    let view = asked(job, json!({ "ask": "cautions", "step": step, "part": id(PART) }));
    let all = view["cautions"].as_array().expect("cautions").iter();
    all.map(|one| one["hazard"].as_str().expect("a hazard").to_owned()).collect()
}

/// Breaks when a caution waits for somebody to say the family: `Handled::of` without its `propose`.
#[test]
fn a_name_is_enough_for_a_caution() {
    let drum = job_with("Brake drum, left", &[]);
    assert_eq!(hazards(&drum, "judge"), ["asbestos", "safety-parts"]);
    assert!(hazards(&drum, "take-apart").contains(&"vehicle-falls".to_owned()));
    assert_eq!(hazards(&job_with("Rear spring", &[]), "refit"), ["vehicle-falls", "stored-spring", "safety-parts"]);
}

/// Breaks when a name goes before what the user said.
#[test]
fn what_was_said_goes_before_the_name() {
    let said = job_with("Brake drum", &[json!({ "family": "casting" })]);
    assert!(hazards(&said, "judge").is_empty());
    let harmless = job_with("Brake drum", &[json!({ "safety_critical": false })]);
    assert_eq!(hazards(&harmless, "judge"), ["asbestos"]);
}

/// Breaks when a word of older records is taken for a family: the part would be of none, and none would be proposed.
#[test]
fn a_word_that_names_no_family_says_nothing() {
    let old = job_with("Wheel bearing", &[json!({ "family": "bearings" })]);
    let view = asked(&old, json!({ "ask": "inspect", "part": id(PART) }));
    assert_eq!(view["family"], Value::Null);
    assert_eq!(view["proposed"][0]["family"], "rolling-bearing");
}
