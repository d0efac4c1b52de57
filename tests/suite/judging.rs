//! Judging over recorded jobs: what is seen and measured, what that comes to, what it leaves to choose from.

use asfound_core::tables::families::{FAMILIES, family};
use asfound_core::tables::names::{NAMES, names_of};
use asfound_core::tables::{checks, features, propose};
use serde_json::{Value, json};

use crate::bench::{Bench, PART, id, money};

const OTHER: u16 = 101;
const MILLIMETRE: i64 = 1_000_000;

/// A bench whose part is of a family.
fn of_family(family: &str) -> Bench {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "family": family }));
    bench
}

fn found(bench: &mut Bench, number: u16, part: u16, question: &str, outcome: &str) {
    let changes =
        json!([{ "of": id(part) }, { "question": question }, { "outcome": outcome }, { "taken": i64::from(number) }]);
    bench.done(json!({ "do": "create", "id": id(number), "kind": "finding", "changes": changes }));
}

fn inspected(bench: &Bench, part: u16) -> Value {
    bench.asked(json!({ "ask": "inspect", "part": id(part) }))
}

/// Answers every question of a part with its best answer.
fn all_sound(bench: &mut Bench, from: u16, part: u16) {
    let view = inspected(bench, part);
    for (number, asked) in (from..).zip(view["asked"].as_array().expect("questions")) {
        let best = asked["outcomes"][0]["code"].as_str().expect("an answer").to_owned();
        found(bench, number, part, asked["question"].as_str().expect("a question"), &best);
    }
}

fn why(view: &Value, route: &str) -> Value {
    let routes = view["routes"].as_array().expect("routes");
    routes.iter().find(|left| left["route"] == json!(route)).expect("every route")["why"].clone()
}

/// What a table points at is there, once.
#[test]
fn the_tables_hold_together() {
    for one in FAMILIES {
        assert!(one.looks.iter().all(|code| checks::look(code).is_some()), "{}", one.code);
        assert!(one.measures.iter().all(|code| features::feature(code).is_some()), "{}", one.code);
        assert!(
            !one.otherwise.is_empty() && one.otherwise.iter().all(|route| !one.refuses.contains(route)),
            "{}",
            one.code
        );
        assert!(!one.looks.is_empty(), "{}", one.code);
        assert_eq!(family(one.code), Some(one));
        let (_, names) = NAMES.iter().find(|(code, _)| *code == one.code).expect("every family has names");
        for name in names_of(names) {
            let times = NAMES.iter().flat_map(|(_, names)| names_of(names)).filter(|other| *other == name).count();
            assert_eq!(times, 1, "{name} stands in {times} families");
            assert_eq!(propose(name).first().map(|first| first.code), Some(one.code), "{name}");
        }
    }
    for look in checks::LOOKS {
        assert_eq!(checks::LOOKS.iter().filter(|other| other.code == look.code).count(), 1, "{}", look.code);
        assert!(FAMILIES.iter().any(|one| one.looks.contains(&look.code)), "nobody asks {}", look.code);
        assert_eq!(look.outcomes[0].condition, checks::Condition::Sound, "{}", look.code);
    }
    for feature in features::FEATURES {
        assert!(FAMILIES.iter().any(|one| one.measures.contains(&feature.code)), "nobody measures {}", feature.code);
    }
}

#[test]
fn names_as_they_are_typed() {
    for (name, family) in [
        ("o/s f wheel bearing", "rolling-bearing"),
        ("N/S rear brake drum", "brake-drum"),
        ("Split pins", "locking-piece"),
        ("cotter pin", "locking-piece"),
        ("King pin bush", "plain-bearing"),
        ("Track rod end, left", "ball-joint"),
        ("Rear leaf spring (n/s)", "spring"),
        ("bolt for brake caliper", "fastener"),
        ("Wheel cylinders", "hydraulic-cylinder"),
        ("front shock absorbers", "damper"),
        ("Half shaft oil seal", "seal"),
        ("gearbox mounting", "rubber-bush"),
        ("Crown wheel and pinion", "gear"),
        ("handbrake cable", "wiring"),
    ] {
        assert_eq!(propose(name).first().map(|first| first.code), Some(family), "{name}");
    }
    assert!(propose("").is_empty() && propose("thing 7").is_empty());
}

/// Every question answered well is fit; one left out is not known; one bad answer says it, and rules routes out.
#[test]
fn a_bearing_is_looked_over() {
    let mut bench = of_family("rolling-bearing");
    assert_eq!(inspected(&bench, PART)["verdict"], "not-known");
    all_sound(&mut bench, 300, PART);
    let view = inspected(&bench, PART);
    assert_eq!((&view["verdict"], &view["reasons"]), (&json!("fit"), &json!([])));
    assert_eq!(why(&view, "use-again"), Value::Null);
    assert_eq!(why(&view, "repair-here"), "not-in-trade");
    found(&mut bench, 400, PART, "dents", "at-pitch");
    let view = inspected(&bench, PART);
    assert_eq!(view["verdict"], "scrap");
    assert_eq!(view["reasons"][0]["about"], "dents");
    assert_eq!(why(&view, "use-again"), "judged-scrap");
    assert_eq!(why(&view, "buy"), Value::Null);
    assert_eq!(view["keep_as_pattern"], true);
    // What was judged rules the quote out, too, and says why.
    bench.quote(500, PART, "use-again", 0, json!([]));
    assert_eq!(bench.cost(PART)["quotes"][0]["why"], "judged-scrap");
}

#[test]
fn skipped_is_not_answered() {
    let mut bench = of_family("damper");
    all_sound(&mut bench, 300, PART);
    assert_eq!(inspected(&bench, PART)["verdict"], "fit");
    let changes = json!([{ "of": id(PART) }, { "question": "leaks" }, { "skipped": true }, { "taken": 900 }]);
    bench.done(json!({ "do": "create", "id": id(600), "kind": "finding", "changes": changes }));
    let view = inspected(&bench, PART);
    assert_eq!(view["verdict"], "not-known");
    assert_eq!((&view["asked"][0]["skipped"], &view["next"]), (&json!(true), &Value::Null));
}

/// Another family asks other questions; what was answered before stays.
#[test]
fn changing_the_family_keeps_what_was_recorded() {
    let mut bench = of_family("rolling-bearing");
    found(&mut bench, 300, PART, "cage", "cracked");
    bench.change(PART, json!({ "family": "casting" }));
    let view = inspected(&bench, PART);
    let asked: Vec<&str> =
        view["asked"].as_array().unwrap().iter().map(|one| one["question"].as_str().unwrap()).collect();
    assert_eq!(asked, ["cracks", "lugs", "tapped-thread", "faces", "rust-grade", "cage"]);
    assert_eq!(view["verdict"], "scrap");
}

/// What is renewed whatever it looks like is decided to be bought, unasked; its price counts once somebody gives one.
#[test]
fn single_use_is_decided_unasked() {
    let mut bench = of_family("seal");
    let line = || json!({ "ask": "part", "part": id(PART) });
    assert_eq!(bench.asked(line())["line"]["standing"], "decided");
    assert_eq!(bench.asked(line())["line"]["route"], "buy");
    let totals = bench.asked(json!({ "ask": "totals" }));
    assert_eq!((&totals["decided"], &totals["unpriced"], &totals["open"]), (&json!(1), &json!(1), &json!(0)));
    bench.quote(500, PART, "buy", 420, json!([]));
    bench.quote(501, PART, "use-again", 0, json!([]));
    let totals = bench.asked(json!({ "ask": "totals" }));
    assert_eq!((&totals["decided"], &totals["unpriced"], &totals["cash"]), (&json!(1), &json!(0), &money(420)));
    // The user's word goes before the family's: a leather seal may be worked on.
    bench.change(PART, json!({ "single_use": false }));
    assert_ne!(bench.asked(line())["line"]["standing"], "decided");
    // What cannot be bought is not decided to be bought.
    bench.change(PART, json!({ "single_use": true }));
    bench.change(PART, json!({ "cannot_be_bought": true }));
    assert_ne!(bench.asked(line())["line"]["standing"], "decided");
}

/// The user's own family and question count as those of the tables do, and a name is learnt by its family.
#[test]
fn own_families_are_learnt() {
    let mut bench = Bench::new();
    let own = json!([{ "name": "Wooden frame" }, { "pair": true }, { "route": "repair-here" }]);
    bench.done(json!({ "do": "create", "id": id(700), "kind": "own-family", "changes": own }));
    let question = json!([{ "family": id(700) }, { "text": "Woodworm?" }]);
    bench.done(json!({ "do": "create", "id": id(701), "kind": "own-check", "changes": question }));
    bench.change(PART, json!({ "name": "Door pillar" }));
    bench.change(PART, json!({ "family": id(700) }));
    let view = inspected(&bench, PART);
    assert_eq!((&view["own_family"], &view["pair"]), (&json!("Wooden frame"), &json!(true)));
    assert_eq!(view["asked"][0]["text"], "Woodworm?");
    assert_eq!(view["routes"][1], json!({ "route": "repair-here", "usual": true }));
    found(&mut bench, 300, PART, &id(701).to_string(), "rework");
    assert_eq!(inspected(&bench, PART)["verdict"], "rework");
    bench.part(OTHER, 1);
    bench.change(OTHER, json!({ "name": "door pillars" }));
    assert_eq!(inspected(&bench, OTHER)["proposed"][0], json!({ "family": id(700).to_string(), "learnt": true }));
}

/// A pair of drums, left and right.
fn drums() -> Bench {
    let mut bench = of_family("brake-drum");
    bench.part(OTHER, 1);
    for (part, side) in [(PART, "left"), (OTHER, "right")] {
        bench.change(part, json!({ "name": "Brake drum" }));
        bench.change(part, json!({ "side": side }));
        bench.change(part, json!({ "family": "brake-drum" }));
    }
    let gauge = json!([{ "name": "Bore gauge" }, { "resolution": 10_000 }, { "uncertainty": 20_000 }]);
    bench.done(json!({ "do": "create", "id": id(800), "kind": "instrument", "changes": gauge }));
    bench
}

fn read(bench: &mut Bench, number: u16, part: u16, spot: &str, micrometres: i64) {
    let changes = json!([
        { "of": id(part) }, { "feature": "drum-bore" }, { "spot": spot }, { "measured": micrometres * 1_000 },
        { "instrument": id(800) }, { "taken": i64::from(number) }
    ]);
    bench.done(json!({ "do": "create", "id": id(number), "kind": "reading", "changes": changes }));
}

fn limit(bench: &mut Bench, part: u16) {
    let changes = json!([
        { "of": id(part) }, { "feature": "drum-bore" }, { "limit_kind": "maximum" }, { "most": 230_120 * 1_000 },
        { "machining_most": 229_360 * 1_000 }, { "as_new": 228_600 * 1_000 }, { "limit_source": "manual" }, { "text": "p. 61" }
    ]);
    bench.done(json!({ "do": "create", "id": id(810), "kind": "limit", "changes": changes }));
}

/// The worst place governs; the limit typed for one side holds for the other; the discard limit is not the machining limit.
#[test]
fn a_drum_is_measured() {
    let mut bench = drums();
    limit(&mut bench, PART);
    all_sound(&mut bench, 300, PART);
    assert_eq!(inspected(&bench, PART)["verdict"], "not-known", "safety-critical, and not measured");
    read(&mut bench, 820, PART, "open edge", 229_100);
    read(&mut bench, 821, PART, "bottom", 229_600);
    let view = inspected(&bench, PART);
    let bore = &view["measures"][0];
    assert_eq!((&bore["feature"], &bore["source"]), (&json!("drum-bore"), &json!("manual")));
    let worst = usize::try_from(bore["governs"].as_u64().expect("a place")).expect("small");
    assert_eq!(bore["places"][worst]["measured"]["value"], 229_600_000.0);
    assert_eq!(bore["places"][worst]["against"]["allows"], "not-to-be-cut");
    assert_eq!(view["verdict"], "fit");
    // Nearer to the limit than the gauge can tell: not proved, and the app says what would settle it.
    read(&mut bench, 822, PART, "middle", 230_115);
    let view = inspected(&bench, PART);
    assert_eq!(view["verdict"], "not-known");
    assert_eq!(
        view["reasons"][0],
        json!({ "from": "measure", "about": "drum-bore", "outcome": "not-proved", "condition": "doubtful" })
    );
    assert!(view["measures"][0]["settling"].is_object());
    // Proved beyond the discard limit.
    read(&mut bench, 823, OTHER, "bottom", 231_000);
    let view = inspected(&bench, OTHER);
    assert_eq!((&view["verdict"], &view["other_verdict"]), (&json!("scrap"), &json!("not-known")));
    assert_eq!((&view["together"][0]["id"], &view["together"][1]), (&json!(id(PART)), &Value::Null));
    assert_eq!(view["measures"][0]["other_side"].as_array().map(Vec::len), Some(3));
}

/// Repeats are of one place; the zero error comes off first.
#[test]
fn repeats_and_zero_error() {
    let mut bench = drums();
    limit(&mut bench, PART);
    for (number, micrometres) in [(820, 229_010), (821, 229_000), (822, 228_990)] {
        read(&mut bench, number, PART, "bottom", micrometres);
    }
    bench.change(800, json!({ "zero_error": -50_000 }));
    let view = inspected(&bench, PART);
    let place = &view["measures"][0]["places"][0]["measured"];
    assert_eq!((&place["count"], &place["value"]), (&json!(3), &json!(229_050_000.0)));
    assert!((place["deviation"].as_f64().expect("a scatter") - 10_000.0).abs() < 1e-6);
}

/// A first word is not a judgement: "looks good" does not make a part fit, "scrap" does not rule a route out.
#[test]
fn the_first_word_is_only_that() {
    let mut bench = of_family("damper");
    bench.change(PART, json!({ "triage": "scrap" }));
    let view = inspected(&bench, PART);
    assert_eq!((&view["verdict"], &why(&view, "use-again")), (&json!("not-known"), &Value::Null));
    bench.change(PART, json!({ "triage": "looks-good" }));
    assert_eq!(inspected(&bench, PART)["verdict"], "not-known");
}

/// What cannot be bought may still be worked on, whatever it looks like.
#[test]
fn what_cannot_be_bought_is_not_given_up() {
    let mut bench = of_family("casting");
    found(&mut bench, 300, PART, "cracks", "cracked");
    assert_eq!(why(&inspected(&bench, PART), "send-out"), "judged-scrap");
    bench.change(PART, json!({ "cannot_be_bought": true }));
    let view = inspected(&bench, PART);
    assert_eq!((&why(&view, "send-out"), &why(&view, "use-again")), (&Value::Null, &json!("judged-scrap")));
}

/// An answer that its question does not have is refused, and nothing of it is kept.
#[test]
fn odd_answers_are_refused() {
    let mut bench = of_family("damper");
    let odd = json!([{ "of": id(PART) }, { "question": "leaks" }, { "outcome": "purple" }]);
    let problems = bench.tried(json!({ "do": "create", "id": id(600), "kind": "finding", "changes": odd }));
    assert_eq!(serde_json::to_value(&problems).unwrap()[0]["code"], "not-an-answer");
    let crossed =
        json!([{ "of": id(PART) }, { "feature": "run-out" }, { "least": 2 * MILLIMETRE }, { "most": MILLIMETRE }]);
    let problems = bench.tried(json!({ "do": "create", "id": id(601), "kind": "limit", "changes": crossed }));
    assert_eq!(serde_json::to_value(&problems).unwrap()[0]["code"], "limit-crossed");
    assert_eq!(inspected(&bench, PART)["asked"][0]["answer"], Value::Null);
    for (kind, ends, field) in [
        ("difference", json!([{ "most": -1 }]), "most"),
        ("range", json!([{ "machining_least": 2 }, { "machining_most": 1 }]), "machining_least"),
    ] {
        let mut changes = vec![json!({ "of": id(PART) }), json!({ "feature": "own" }), json!({ "limit_kind": kind })];
        changes.extend(ends.as_array().cloned().unwrap_or_default());
        let problems = bench.tried(json!({ "do": "create", "id": id(601), "kind": "limit", "changes": changes }));
        let problem = &serde_json::to_value(&problems).unwrap()[0];
        assert_eq!((&problem["code"], &problem["place"]["field"]), (&json!("limit-crossed"), &json!(field)));
    }
    // What nobody asks has no answers: neither a word that is no question, nor a record that is none.
    for question in ["purple".to_owned(), String::new(), id(777).to_string(), id(PART).to_string()] {
        let changes = json!([{ "of": id(PART) }, { "question": question }, { "outcome": "good" }]);
        let problems = bench.tried(json!({ "do": "create", "id": id(600), "kind": "finding", "changes": changes }));
        assert_eq!(serde_json::to_value(&problems).unwrap()[0]["code"], "not-an-answer", "{question}");
    }
}

fn told(bench: &Bench) -> Vec<(Value, Value)> {
    let view = bench.asked(json!({ "ask": "problems" }));
    let problems = view["problems"].as_array().expect("problems").iter();
    problems.map(|problem| (problem["code"].clone(), problem["place"]["field"].clone())).collect()
}

/// Two devices answer the same finding, each without knowing of the other: until somebody settles it, the worse answer counts,
/// and an answer that one of them took back is open.
/// Break: in `Looked::at` take one of the answers.
#[test]
fn of_two_answers_at_once_the_worst_counts() {
    for (here, there) in [("dry", "leaks"), ("leaks", "dry")] {
        let mut bench = of_family("damper");
        all_sound(&mut bench, 300, PART);
        let mut other = bench.other_device();
        bench.change(300, json!({ "outcome": "damp" }));
        bench.change(300, json!({ "outcome": here }));
        other.change(300, json!({ "outcome": there }));
        bench.bring(&other);
        let view = inspected(&bench, PART);
        assert_eq!((&view["verdict"], &view["reasons"][0]["outcome"]), (&json!("rework"), &json!("leaks")));
        assert_eq!(why(&view, "use-again"), "needs-rework");
        bench.change(300, json!({ "outcome": "dry" }));
        assert_eq!(inspected(&bench, PART)["verdict"], "fit");
    }
    let mut bench = of_family("damper");
    all_sound(&mut bench, 300, PART);
    let mut other = bench.other_device();
    bench.change(300, json!({ "clear": "outcome" }));
    other.change(300, json!({ "outcome": "dry" }));
    other.bring(&bench);
    assert_eq!(inspected(&other, PART)["verdict"], "not-known");
}

/// Two devices answer the same question, each with a finding of its own: the worse answer counts and the other finding is told,
/// until one of them is struck out, or says the same. Of one device the latest holds.
/// Break: in `answers` keep the latest of all alone.
#[test]
fn two_findings_of_one_question_stand_beside_one_another() {
    for (here, there) in [("dry", "leaks"), ("leaks", "dry")] {
        let mut bench = of_family("damper");
        all_sound(&mut bench, 300, PART);
        bench.change(300, json!({ "struck": true }));
        let mut other = bench.other_device();
        found(&mut bench, 600, PART, "leaks", "damp");
        found(&mut bench, 601, PART, "leaks", here);
        found(&mut other, 700, PART, "leaks", there);
        assert_eq!(told(&bench), []);
        bench.bring(&other);
        let view = inspected(&bench, PART);
        assert_eq!((&view["asked"][0]["answer"], &view["verdict"]), (&json!(there), &json!("rework")));
        assert_eq!(why(&view, "use-again"), "needs-rework");
        assert_eq!(told(&bench), [(json!("conflict"), json!("outcome"))]);
        bench.change(601, json!({ "outcome": there }));
        assert_eq!(told(&bench), []);
        bench.change(601, json!({ "struck": true }));
        bench.change(600, json!({ "struck": true }));
        let verdict = if there == "dry" { "fit" } else { "rework" };
        assert_eq!((inspected(&bench, PART)["verdict"].clone(), told(&bench)), (json!(verdict), vec![]));
    }
}

/// One device says which question was answered, another one what: an answer that the question does not have leaves it open. It
/// is told, and can be put right or struck out.
/// Break: in `Asked::condition` take what is not known for sound; in `Draft::change` check the answer whatever is said.
#[test]
fn an_answer_to_another_question_makes_nothing_fit() {
    let mut bench = of_family("damper");
    all_sound(&mut bench, 300, PART);
    bench.change(302, json!({ "struck": true }));
    let only = json!([{ "of": id(PART) }, { "question": "leaks" }, { "taken": 900 }]);
    bench.done(json!({ "do": "create", "id": id(600), "kind": "finding", "changes": only }));
    found(&mut bench, 601, PART, "leaks", "dry");
    bench.change(601, json!({ "taken": 901 }));
    let mut other = bench.other_device();
    bench.change(600, json!({ "question": "spindle-rock" }));
    other.change(600, json!({ "outcome": "damp" }));
    bench.bring(&other);
    let view = inspected(&bench, PART);
    assert_eq!(view["verdict"], "not-known");
    assert_eq!(
        view["reasons"],
        json!([{ "from": "question", "about": "spindle-rock", "outcome": "damp", "condition": "doubtful" }])
    );
    assert_eq!(told(&bench), [(json!("not-an-answer"), json!("outcome"))]);
    bench.change(600, json!({ "who": "R" }));
    let mut right = bench.other_window();
    right.change(600, json!({ "outcome": "none" }));
    assert_eq!((&inspected(&right, PART)["verdict"], told(&right)), (&json!("fit"), vec![]));
    bench.change(600, json!({ "struck": true }));
    assert_eq!(told(&bench), []);
}

/// Two devices, or an undo, leave a limit that nothing can keep: it limits nothing, nothing is proved bad by it, it is told, and
/// it can be put right or struck out.
/// Break: in `of_values` keep what is crossed; in `Draft::change` check the limit whatever is said.
#[test]
fn a_limit_crossed_by_two_devices_scraps_nothing() {
    let mut bench = of_family("damper");
    all_sound(&mut bench, 300, PART);
    let gauge = json!([{ "name": "Micrometer" }, { "resolution": 10_000 }]);
    bench.done(json!({ "do": "create", "id": id(800), "kind": "instrument", "changes": gauge }));
    let range = json!([
        { "of": id(PART) }, { "feature": "own" }, { "limit_kind": "range" }, { "least": MILLIMETRE }, { "most": 9 * MILLIMETRE }
    ]);
    bench.done(json!({ "do": "create", "id": id(810), "kind": "limit", "changes": range }));
    let reading =
        json!([{ "of": id(PART) }, { "feature": "own" }, { "measured": 5 * MILLIMETRE }, { "instrument": id(800) }]);
    bench.done(json!({ "do": "create", "id": id(820), "kind": "reading", "changes": reading }));
    assert_eq!(inspected(&bench, PART)["verdict"], "fit");
    let mut other = bench.other_device();
    bench.change(810, json!({ "least": 8 * MILLIMETRE }));
    other.change(810, json!({ "most": 2 * MILLIMETRE }));
    bench.bring(&other);
    let view = inspected(&bench, PART);
    assert_eq!((&view["verdict"], &view["measures"][0]["condition"]), (&json!("not-known"), &Value::Null));
    assert_eq!(told(&bench), [(json!("limit-crossed"), json!("least"))]);
    bench.change(810, json!({ "text": "p. 61" }));
    let mut right = bench.other_window();
    right.change(810, json!({ "least": MILLIMETRE }));
    assert_eq!((&inspected(&right, PART)["verdict"], told(&right)), (&json!("scrap"), vec![]));
    bench.change(810, json!({ "struck": true }));
    assert_eq!(told(&bench), []);
}

/// The usual instruments measure lengths: none of them settles a force, and no size is cut to by newtons.
/// Break: in `measure` leave the dimension out.
#[test]
fn no_rule_measures_a_force() {
    let settling = |unit: &str, figure: &str| {
        let query =
            json!({ "ask": "proof", "unit": unit, "places": [[figure]], "least": "3000", "uncertainty": "900" });
        Bench::new().asked(query)["settling"]["instruments"].as_array().map(Vec::len)
    };
    assert_eq!(
        (settling("millimetre", "3010"), settling("newton", "3010"), settling("one", "3010")),
        (Some(7), Some(0), Some(0))
    );
    let next = |unit: &str| {
        let query = json!({ "ask": "proof", "unit": unit, "places": [["80.1"]], "as_new": "80", "surface": "bore" });
        Bench::new().asked(query)["next_size"]["size"].as_f64()
    };
    assert_eq!((next("millimetre"), next("newton")), (Some(80_250_000.0), None));
    let mut bench = of_family("spring");
    let scale = json!([{ "name": "Spring scale" }, { "resolution": 1_000_000_000 }]);
    bench.done(json!({ "do": "create", "id": id(800), "kind": "instrument", "changes": scale }));
    let limit =
        json!([{ "of": id(PART) }, { "feature": "fitted-load" }, { "least": 3_000_000 }, { "most": 900_000_000 }]);
    bench.done(json!({ "do": "create", "id": id(810), "kind": "limit", "changes": limit }));
    let reading =
        json!([{ "of": id(PART) }, { "feature": "fitted-load" }, { "measured": 3_800_000 }, { "instrument": id(800) }]);
    bench.done(json!({ "do": "create", "id": id(820), "kind": "reading", "changes": reading }));
    let view = inspected(&bench, PART);
    let load = view["measures"].as_array().unwrap().iter().find(|one| one["feature"] == "fitted-load").expect("a load");
    assert_eq!((&load["dimension"], &load["settling"]["instruments"]), (&json!("force"), &json!([])));
}

/// An instrument of no uncertainty is one of which nothing is known, typed as recorded; what cannot be is told, not mended.
/// Break: in `proof` take the amount of what is below nothing, or 2 for a factor that cannot be.
#[test]
fn an_instrument_without_uncertainty_proves_nothing() {
    let proof = |more: Value| {
        let mut query = json!({ "ask": "proof", "unit": "millimetre", "places": [["5.1"]], "least": "5" });
        query.as_object_mut().expect("an object").extend(more.as_object().expect("an object").clone());
        Bench::new().asked(query)
    };
    for zero in
        [json!({ "resolution": "0" }), json!({ "uncertainty": "0" }), json!({ "resolution": "0", "uncertainty": "-0" })]
    {
        let view = proof(zero);
        assert_eq!((&view["against"][0]["allows"], &view["unread"]), (&json!("not-proved"), &json!([])));
        assert_eq!(view["against"][0]["discard"]["chance"], Value::Null);
    }
    for (member, value) in [
        ("resolution", json!("-0.01")),
        ("uncertainty", json!("-0.02")),
        ("uncertainty", json!("2000")),
        ("cut", json!("-1")),
        ("coverage", json!(0.0)),
        ("coverage", json!(-2.0)),
        ("coverage", json!(1e-300)),
        ("coverage", json!(1e300)),
    ] {
        let view = proof(json!({ member: value }));
        assert_eq!(
            (&view["unread"][0]["member"], &view["unread"][0]["why"]),
            (&json!(member), &json!("out-of-bounds"))
        );
        assert_eq!(view["against"], json!([]), "{member} {value}");
    }
    assert_eq!(proof(json!({ "uncertainty": "0.02", "coverage": 10.0 }))["against"][0]["allows"], "as-it-is");
}

/// What may be cut off ends at the stricter of both limits; between two ends nobody says which way is cut.
/// Break: in `end_of_cutting` leave out the discard limit.
#[test]
fn nothing_is_cut_beyond_the_discard_limit() {
    let most_cut = |ends: Value| {
        let mut query = json!({ "ask": "proof", "unit": "millimetre", "places": [["8.7"]], "uncertainty": "0.02" });
        query.as_object_mut().expect("an object").extend(ends.as_object().expect("an object").clone());
        let view = Bench::new().asked(query);
        assert_eq!(view["against"][0]["allows"], "may-be-cut");
        view["against"][0]["most_cut"].as_f64().map(|most| (most / 1_000.0).floor() * 1_000.0)
    };
    assert_eq!(most_cut(json!({ "least": "8", "machining_least": "8.4" })), Some(283_000.0));
    assert_eq!(most_cut(json!({ "least": "8.4", "machining_least": "8" })), Some(283_000.0));
    assert_eq!(most_cut(json!({ "most": "9", "machining_most": "9.4" })), Some(283_000.0));
    assert_eq!(most_cut(json!({ "least": "8", "most": "9", "machining_least": "8.4", "machining_most": "8.9" })), None);
}

/// The pieces of a matched set are decided together, and nothing else of the same family.
#[test]
fn matched_sets_belong_together() {
    let mut bench = Bench::new();
    let assembly = json!([{ "name": "Rear axle" }]);
    bench.done(json!({ "do": "create", "id": id(11), "kind": "assembly", "changes": assembly }));
    let parts = [
        ("Crown wheel", "gear"),
        ("Pinion", "gear"),
        ("Speedometer gear", "gear"),
        ("Pinion bearing cup", "rolling-bearing"),
        ("Pinion bearing cone", "rolling-bearing"),
        ("Side bearing cup", "rolling-bearing"),
    ];
    for (number, (name, family)) in (200..).zip(parts) {
        bench.part(number, 1);
        bench.done(json!({ "do": "change", "ids": [id(number)], "changes": [{ "name": name }, { "family": family }, { "assembly": id(11) }] }));
    }
    let with = |number: u16| {
        let view = inspected(&bench, number);
        view["together"].as_array().unwrap().iter().map(|line| line["name"].clone()).collect::<Vec<_>>()
    };
    assert_eq!(with(200), ["Pinion"]);
    assert_eq!(with(204), ["Pinion bearing cup"]);
    assert_eq!(with(205), Vec::<Value>::new());
    assert_eq!(with(202), Vec::<Value>::new());
}

/// A limit that nothing can keep is told by the member that holds it.
#[test]
fn a_crossed_limit_is_not_proved_against() {
    let bench = Bench::new();
    let query = json!({ "ask": "proof", "unit": "millimetre", "places": [["3"]], "least": "5", "most": "2" });
    let view = bench.asked(query);
    assert_eq!(view["unread"], json!([{ "member": "least", "text": "5", "why": "out-of-bounds" }]));
    assert_eq!(view["against"], json!([]));
}

/// A new quote is thought of on a route that is left: of a part fit again first that, else the usual ones of its family.
/// Break: in `left` leave out asking why not.
#[test]
fn routes_that_are_left_come_in_their_order() {
    let left = |bench: &Bench| bench.cost(PART)["left"].clone();
    let mut bench = Bench::new();
    assert_eq!(left(&bench)[0], "repair-here");
    bench.change(PART, json!({ "family": "brake-lining" }));
    assert_eq!(left(&bench), json!(["send-out", "buy", "donor", "exchange", "kit", "irreplaceable"]));
    bench.change(PART, json!({ "family": "damper" }));
    all_sound(&mut bench, 300, PART);
    assert_eq!(left(&bench)[0], "use-again");
    assert_eq!(left(&bench)[1], "exchange");
}
