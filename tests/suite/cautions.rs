//! Every hazard arises by what is in hand, and not without it.

use asfound_core::job::PartsQuery;
use asfound_core::papers::{Errand, PaperWords, Thumbs, errands_csv, errands_html};
use asfound_core::tables::hazards::{Hazard, TRIGGERS};
use serde_json::{Value, json};

use crate::bench::{Bench, PART, id};

/// What brings a hazard about: the step; what is said of the part, of its assembly and of a quote; the year and the name of
/// the vehicle.
#[derive(Clone, Default)]
struct Hand {
    step: &'static str,
    part: Vec<Value>,
    assembly: &'static str,
    quote: &'static str,
    finding: Option<(&'static str, &'static str)>,
    year: Option<i64>,
    vehicle: &'static str,
}

fn told(hand: &Hand) -> Vec<String> {
    let mut bench = Bench::new();
    let mut vehicle = vec![json!({ "name": hand.vehicle })];
    vehicle.extend(hand.year.map(|year| json!({ "year": year })));
    bench.done(json!({ "do": "create", "id": id(10), "kind": "vehicle", "changes": vehicle }));
    let assembly = json!([{ "name": hand.assembly }]);
    bench.done(json!({ "do": "create", "id": id(11), "kind": "assembly", "changes": assembly }));
    bench.change(PART, json!({ "assembly": id(11) }));
    for change in &hand.part {
        bench.change(PART, change.clone());
    }
    if !hand.quote.is_empty() {
        bench.quote(20, PART, "send-out", 10, json!([{ "remark": hand.quote }]));
    }
    if let Some((question, outcome)) = hand.finding {
        let changes = json!([{ "of": id(PART) }, { "question": question }, { "outcome": outcome }]);
        bench.done(json!({ "do": "create", "id": id(30), "kind": "finding", "changes": changes }));
    }
    let view = bench.asked(json!({ "ask": "cautions", "step": hand.step, "part": id(PART) }));
    let cautions = view["cautions"].as_array().expect("cautions").iter();
    cautions.map(|caution| caution["hazard"].as_str().expect("a hazard").to_owned()).collect()
}

fn named(step: &'static str, name: &str) -> Hand {
    Hand { step, part: vec![json!({ "name": name })], ..Hand::default() }
}

fn of_family(step: &'static str, family: &str) -> Hand {
    Hand { step, part: vec![json!({ "family": family })], ..Hand::default() }
}

fn of_process(quote: &'static str) -> Hand {
    Hand { step: "route", quote, ..Hand::default() }
}

/// What has it in hand, and what nearly has.
fn cases() -> Vec<(&'static str, Hand, Hand)> {
    let assembly = |step, assembly| Hand { step, assembly, ..Hand::default() };
    let plated = Hand { part: vec![json!({ "family": "spring" })], ..of_process("zinc plate") };
    let heavy = |grams: i64| Hand { step: "take-apart", part: vec![json!({ "mass": grams })], ..Hand::default() };
    let wheel = |vehicle| Hand { vehicle, ..named("take-apart", "Road wheel") };
    let old = |year| Hand { year: Some(year), ..of_family("judge", "brake-lining") };
    let seal = |outcome| Hand { finding: Some(("burnt", outcome)), ..of_family("judge", "seal") };
    let dial = |year| Hand { year: Some(year), ..named("judge", "Speedometer") };
    let zinc = |material: &str| Hand { step: "route", part: vec![json!({ "material": material })], ..Hand::default() };
    vec![
        ("vehicle-falls", assembly("take-apart", "Front suspension"), assembly("take-apart", "Dashboard")),
        ("stored-spring", of_family("take-apart", "spring"), of_family("judge", "spring")),
        ("asbestos", old(1957), old(2005)),
        ("dust", of_process("shot blasting"), of_process("nickel")),
        ("isocyanates", of_process("two-pack, satin"), of_process("cellulose by brush")),
        ("solvents", named("take-apart", "Fuel pump"), named("take-apart", "Water pump")),
        ("burnt-rubber", seal("burnt"), seal("no")),
        ("pressurised", of_family("judge", "damper"), of_family("judge", "casting")),
        ("safety-parts", of_family("route", "stub-axle"), of_family("route", "casting")),
        ("embrittlement", plated.clone(), Hand { quote: "set again", ..plated }),
        ("metal-fume", zinc("galvanised steel"), zinc("steel")),
        ("battery", named("take-apart", "Battery tray"), named("take-apart", "Tool tray")),
        ("lifting", heavy(15_000), heavy(14_999)),
        ("phosgene", of_process("weld the crack"), of_process("wash")),
        ("tanks", named("route", "Petrol tank"), named("route", "Petrol cap")),
        ("exhaust-gas", assembly("refit", "Engine"), assembly("refit", "Door")),
        ("caustic", of_process("hot caustic dip"), of_process("wash")),
        ("split-rims", wheel("Corrie delivery van"), wheel("Corrie tourer")),
        ("injection", of_family("judge", "hydraulic-cylinder"), of_family("judge", "gear")),
        ("radium", dial(1957), dial(1985)),
    ]
}

#[test]
fn each_hazard_arises_by_its_trigger_and_not_without() {
    let cases = cases();
    for hazard in Hazard::ALL {
        let (_, with, without) =
            cases.iter().find(|(word, ..)| *word == hazard.word()).expect("a case for every hazard");
        assert!(told(with).contains(&hazard.word().to_owned()), "{hazard:?} does not arise: {:?}", told(with));
        assert!(!told(without).contains(&hazard.word().to_owned()), "{hazard:?} arises of nothing");
        assert!(TRIGGERS.iter().any(|trigger| trigger.hazard == *hazard));
    }
}

/// Nothing at all is in hand: nothing is said.
#[test]
fn nothing_in_hand_brings_no_caution() {
    for step in ["take-apart", "judge", "route", "refit"] {
        assert_eq!(told(&Hand { step, ..Hand::default() }), Vec::<String>::new());
    }
}

/// An answer that is put right takes the caution with it.
/// Break: in `is_burnt` look through all findings instead of the latest.
#[test]
fn an_answer_put_right_holds() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "family": "seal" }));
    for (number, outcome) in [(30_u16, "burnt"), (31, "no")] {
        let changes = json!([{ "of": id(PART) }, { "question": "burnt" }, { "outcome": outcome }, { "taken": i64::from(number) }]);
        bench.done(json!({ "do": "create", "id": id(number), "kind": "finding", "changes": changes }));
        let view = bench.asked(json!({ "ask": "cautions", "step": "judge", "part": id(PART) }));
        let told = view["cautions"].as_array().expect("cautions").iter().any(|one| one["hazard"] == "burnt-rubber");
        assert_eq!(told, outcome == "burnt");
    }
}

/// A mass that is known goes before a name that is usually heavy.
#[test]
fn a_light_engine_part_is_not_lifted_by_two() {
    let mut hand = named("take-apart", "Cylinder head");
    assert!(told(&hand).contains(&"lifting".to_owned()));
    hand.part.push(json!({ "mass": 6_000 }));
    assert!(!told(&hand).contains(&"lifting".to_owned()));
}

/// A caution is acknowledged once for the whole job.
#[test]
fn acknowledged_once_for_the_job() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "family": "damper" }));
    bench.part(101, 1);
    bench.change(101, json!({ "family": "damper" }));
    let changes = json!([{ "hazard": "pressurised" }, { "who": "Ada" }, { "taken": 1 }]);
    bench.done(json!({ "do": "create", "id": id(40), "kind": "caution", "changes": changes }));
    for part in [PART, 101] {
        let view = bench.asked(json!({ "ask": "cautions", "step": "judge", "part": id(part) }));
        assert_eq!(view["cautions"][0]["acknowledged"]["values"]["who"], "Ada");
    }
    let job = bench.asked(json!({ "ask": "cautions", "step": "judge" }));
    assert_eq!(job["cautions"][0]["because"], json!([id(PART), id(101)]));
}

/// Break: a caution waits for somebody to say the family.
#[test]
fn a_name_is_enough_for_a_caution() {
    let drum = told(&named("judge", "Brake drum, left"));
    assert_eq!(drum, ["asbestos", "safety-parts"]);
    assert_eq!(told(&named("refit", "Rear spring")), ["vehicle-falls", "stored-spring", "safety-parts"]);
}

/// Break: a name goes before what the user said.
#[test]
fn what_was_said_goes_before_the_name() {
    let with = |change: Value| {
        let mut hand = named("judge", "Brake drum");
        hand.part.push(change);
        told(&hand)
    };
    assert!(with(json!({ "family": "casting" })).is_empty());
    assert_eq!(with(json!({ "safety_critical": false })), ["asbestos"]);
}

/// Break: a word of older records is taken for a family: the part would be of none, and none would be proposed.
#[test]
fn a_word_that_names_no_family_says_nothing() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "name": "Wheel bearing" }));
    bench.change(PART, json!({ "family": "bearings" }));
    let view = bench.asked(json!({ "ask": "inspect", "part": id(PART) }));
    assert_eq!(view["family"], Value::Null);
    assert_eq!(view["proposed"][0]["family"], "rolling-bearing");
}

/// A vehicle of which nobody knows the year may be older than one whose year is known; where all years are known, the oldest counts.
/// Break: in `InHand::of` leave out what has no year.
#[test]
fn an_unknown_year_may_be_old() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "family": "brake-lining" }));
    let hazards = |bench: &Bench| {
        let view = bench.asked(json!({ "ask": "cautions", "step": "judge", "part": id(PART) }));
        let all = view["cautions"].as_array().expect("cautions").clone();
        all.into_iter().map(|one| one["hazard"].clone()).collect::<Vec<_>>()
    };
    bench.done(json!({ "do": "create", "id": id(10), "kind": "vehicle", "changes": [{ "year": 2015 }] }));
    assert_eq!(hazards(&bench), ["safety-parts"]);
    bench.done(json!({ "do": "create", "id": id(11), "kind": "vehicle", "changes": [{ "name": "Corvane" }] }));
    assert_eq!(hazards(&bench), ["asbestos", "safety-parts"]);
    bench.change(11, json!({ "year": 2009 }));
    assert_eq!(hazards(&bench), ["safety-parts"]);
}

/// What is not in the job, or is no such thing, has no cautions to be told of: that is said, not that there are none.
#[test]
fn what_is_not_here_is_not_free_of_hazards() {
    let mut bench = Bench::new();
    bench.done(json!({ "do": "create", "id": id(11), "kind": "assembly", "changes": [{ "name": "Brake" }] }));
    let view = |about: Value| {
        let mut query = json!({ "ask": "cautions", "step": "judge" });
        query.as_object_mut().expect("an object").extend(about.as_object().expect("an object").clone());
        bench.asked(query)["view"].clone()
    };
    assert_eq!(view(json!({ "part": id(PART) })), "cautions");
    assert_eq!(view(json!({ "assembly": id(11) })), "cautions");
    for about in [json!({ "part": id(999) }), json!({ "part": id(11) }), json!({ "assembly": id(PART) })] {
        assert_eq!(view(about.clone()), "nothing", "{about}");
    }
}

/// What goes out of the house carries the cautions that concern whoever gets it, in each form of the list.
/// Break: in `Errands::of` leave the cautions out.
#[test]
fn whoever_gets_it_is_told() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "family": "damper" }));
    let list = |bench: &Bench, errand| {
        let words = PaperWords::default();
        let query = PartsQuery::default();
        let csv = errands_csv(&bench.job, errand, &query, None, &words);
        let html = errands_html(&bench.job, errand, &query, None, &Thumbs::new(), &words);
        [csv, html].map(|paper| paper.contains(words.cautions.pressurised.as_str()))
    };
    bench.quote(20, PART, "send-out", 45, json!([]));
    assert_eq!(list(&bench, Errand::Send), [false, false]);
    bench.done(json!({ "do": "choose", "id": id(21), "quote": id(20) }));
    assert_eq!(list(&bench, Errand::Send), [true, true]);
    // What is bought carries none: it is not the old part that travels.
    bench.quote(22, PART, "exchange", 60, json!([]));
    bench.done(json!({ "do": "choose", "id": id(23), "quote": id(22) }));
    assert_eq!(list(&bench, Errand::Buy), [false, false]);
}
