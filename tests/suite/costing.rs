//! Costing over recorded jobs, asked as the page and the native door ask.
#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

use asfound_core::record::Replica;
use serde_json::{Value, json};

use crate::bench::{Bench, PART, id, money};

/// One quote in a view.
fn of(view: &Value, number: u16) -> &Value {
    let all = view["quotes"].as_array().expect("quotes");
    all.iter().find(|quote| quote["id"] == json!(id(number))).expect("the quote")
}

pub(crate) fn minor(estimate: &Value) -> f64 {
    estimate["minor"].as_f64().expect("an amount")
}

fn near(one: f64, other: f64) {
    assert!((one - other).abs() < 1e-6, "{one} is not {other}");
}

/// What is turned for one question is told as it was used.
#[test]
fn the_answer_tells_the_figures_it_was_worked_out_with() {
    let mut bench = Bench::new();
    bench.change(1, json!({ "interest": 300 }));
    bench.change(1, json!({ "years_kept": 12 }));
    bench.quote(200, PART, "repair-here", 18_00, json!([{ "own_time": 60 }]));
    let told = |view: &Value| {
        [minor(&view["hour_value"]), view["interest"].as_f64().unwrap(), view["years_kept"].as_f64().unwrap()]
    };
    assert_eq!(told(&bench.cost(PART)), [20_00.0, 0.03, 12.0]);
    let turned = json!({ "ask": "cost", "part": id(PART), "set": { "job": { "hour_value": 2550.5, "interest": 0.045, "years": 8 } } });
    let view = bench.asked(turned);
    assert_eq!(told(&view), [2550.5, 0.045, 8.0]);
    near(minor(&of(&view, 200)["expected"]), 18_00.0 + 2550.5);
}

/// Worked by hand: 18 + 34 + 20 h against 106: cheapest as long as the hours stay under 2.7, which is 162 minutes.
#[test]
fn the_flip_of_the_hours() {
    let mut bench = Bench::new();
    bench.quote(
        10,
        PART,
        "repair-here",
        18_00,
        json!([{ "own_time": 120 }, { "chance": 2500 }, { "strip_again": 90 }]),
    );
    bench.quote(11, PART, "buy", 106_00, json!([]));
    let view = bench.cost(PART);
    assert_eq!(view["cheapest"], json!(id(10)));
    let flip = |view: &Value, input: &str, number: u16| {
        let all = view["flips"].as_array().expect("flips").clone();
        all.into_iter().find(|flip| flip["input"] == input && flip["quote"] == json!(id(number)))
    };
    let hours = flip(&view, "own_time", 10).expect("it flips");
    near(hours["at"].as_f64().expect("minutes"), 162.0);
    assert_eq!((&hours["beyond"], &hours["then"]), (&json!("above"), &json!(id(11))));
    // At 20 an hour the price may rise by 14, and the new one fall by 14 ÷ 0.75, since the repair falls back on it.
    near(flip(&view, "cash", 10).expect("it flips")["at"].as_f64().expect("money"), 32_00.0);
    near(flip(&view, "cash", 11).expect("it flips")["at"].as_f64().expect("money"), 106_00.0 - 14_00.0 / 0.75);
    // 18 + 40 + p × 136 = 106.
    near(flip(&view, "chance", 10).expect("it flips")["at"].as_f64().expect("a share"), 48.0 / 136.0);
    let beyond = json!({ "quotes": { id(10).to_string(): { "own_time": 162.1 } } });
    let turned = bench.asked(json!({ "ask": "cost", "part": id(PART), "set": beyond }));
    assert_eq!(turned["cheapest"], json!(id(11)));
    let evens = view["break_evens"].as_array().expect("break-evens");
    let even = evens.iter().find(|even| even["quote"] == json!(id(10))).expect("they break even");
    near(even["hours"].as_f64().expect("hours"), 2.7);
    near(even["hour_value"].as_f64().expect("minor units"), (106_00.0 - 18_00.0 - 26_50.0) / 2.375);
}

/// Worked by hand: 100 euros with 20 of freight and 10 of surcharge at 0.85, that is 85 + 17 + 0.5 × 8.50; without a rate
/// it cannot be chosen.
#[test]
fn a_foreign_price_at_its_rate() {
    let mut bench = Bench::new();
    let euros = |minor: i64| json!({ "minor": minor, "currency": "EUR" });
    let changes = json!([{ "cash": euros(100_00) }, { "freight": euros(20_00) }, { "surcharge": euros(10_00) }, { "withheld": 5000 }]);
    bench.quote(10, PART, "exchange", 0, changes);
    assert_eq!(of(&bench.cost(PART), 10)["why"], "other-currency");
    assert_eq!(bench.cost(PART)["cheapest"], Value::Null);
    bench.change(10, json!({ "exchange_rate": 850_000 }));
    let view = bench.cost(PART);
    near(minor(&of(&view, 10)["present"]), 85_00.0 + 17_00.0 + 4_25.0);
    assert_eq!(of(&view, 10)["cash"], euros(100_00));
    assert_eq!(of(&view, 10)["peak"], money(85_00 + 17_00 + 8_50));
    // A third currency has no rate.
    bench.change(10, json!({ "duty": { "minor": 1_00, "currency": "USD" } }));
    assert_eq!(of(&bench.cost(PART), 10)["why"], "other-currency");
}

/// What is not allowed is shown with its reason, and is never the cheapest, never fallen back on and never chosen.
#[test]
fn what_may_not_be_chosen() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "repair-here", 1_00, json!([]));
    bench.quote(11, PART, "buy", 30_00, json!([{ "correctness": "pattern" }, { "valid_until": "2026-03-31" }]));
    bench.quote(12, PART, "buy", 80_00, json!([{ "correctness": "faithful-reproduction" }, { "chance": 1000 }]));
    bench.change(PART, json!({ "safety_critical": true }));
    let view = bench.cost(PART);
    assert_eq!((&of(&view, 10)["why"], &view["cheapest"]), (&json!("safety"), &json!(id(11))));
    assert_eq!(of(&view, 12)["fallback"], json!(id(11)));
    bench.change(1, json!({ "aim": "show-standard" }));
    let view = bench.cost(PART);
    assert_eq!((&of(&view, 11)["why"], &view["cheapest"]), (&json!("below-aim"), &json!(id(12))));
    assert_eq!((&of(&view, 12)["fallback"], &of(&view, 12)["fails_into_nothing"]), (&Value::Null, &json!(true)));
    let refused = bench.tried(json!({ "do": "choose", "id": id(50), "quote": id(11) }));
    assert_eq!(refused[0].values.get("why").map(String::as_str), Some("below-aim"));
    bench.change(1, json!({ "aim": "conserve" }));
    let on = |day: &str| bench.asked(json!({ "ask": "cost", "part": id(PART), "today": day }));
    assert_eq!(of(&on("2026-03-31"), 11)["allowed"], json!(true));
    assert_eq!(of(&on("2026-04-01"), 11)["why"], "run-out");
}

/// Worked by hand: a kit A to D for 48, with singles A 14, B 11, C 9, D 22 and E 6.
#[test]
fn a_kit_beside_its_singles() {
    let mut bench = Bench::new();
    let singles = [(101, 14_00), (102, 11_00), (103, 9_00), (104, 22_00)];
    for (part, price) in singles {
        bench.part(part, 1);
        bench.quote(part + 100, part, "buy", price, json!([]));
    }
    bench.quote(300, 101, "kit", 48_00, json!([]));
    for (number, part) in [(301, 102), (302, 103), (303, 104)] {
        let changes = json!([{ "of": id(300) }, { "part": id(part) }, { "quantity": 1 }]);
        bench.done(json!({ "do": "create", "id": id(number), "kind": "cover", "changes": changes }));
    }
    // Kit + E = 54 beats 62: without E 48 beats 56. So it is on every part: D costs 48 − 34 = 14 in the kit.
    let cheapest = |bench: &Bench, part: u16| bench.cost(part)["cheapest"].clone();
    for part in [101, 102, 103, 104] {
        assert_eq!(cheapest(&bench, part), json!(id(300)), "{part}");
        assert_eq!(bench.cost(part)["kits"][0]["singly"], money(56_00));
    }
    near(minor(&of(&bench.cost(104), 300)["present"]), 14_00.0);
    // Two of A needed, one in the kit: kit + A + E = 68 beats 76: without E 62 beats 70.
    bench.change(101, json!({ "quantity": 2 }));
    bench.change(201, json!({ "cash": money(28_00) }));
    bench.done(json!({ "do": "create", "id": id(304), "kind": "cover", "changes": [{ "of": id(300) }, { "part": id(101) }, { "quantity": 1 }] }));
    let kit = bench.cost(101)["kits"][0].clone();
    assert_eq!((&kit["singly"], &kit["with_kit"]), (&money(70_00), &money(62_00)));
    assert_eq!(cheapest(&bench, 101), json!(id(300)));
    bench.change(101, json!({ "quantity": 1 }));
    bench.change(201, json!({ "cash": money(14_00) }));
    // With D kept for 4, the singles (44 with E, 34 without) beat it.
    bench.quote(400, 104, "use-again", 4_00, json!([]));
    bench.done(json!({ "do": "choose", "id": id(500), "quote": id(400) }));
    for part in [101, 102, 103] {
        assert_eq!(cheapest(&bench, part), json!(id(part + 100)), "{part}");
        assert_eq!(bench.cost(part)["kits"][0]["singly"], money(34_00));
    }
    // A kit is chosen for a part that it covers, and counts once.
    bench.done(json!({ "do": "choose", "id": id(501), "quote": id(300), "part": id(102) }));
    bench.done(json!({ "do": "choose", "id": id(502), "quote": id(300), "part": id(103) }));
    let totals = bench.asked(json!({ "ask": "totals" }));
    assert_eq!((&totals["cash"], &totals["decided"]), (&money(52_00), &json!(3)));
    near(minor(&totals["present"]), 52_00.0);
    let refused = bench.tried(json!({ "do": "choose", "id": id(503), "quote": id(300), "part": id(PART) }));
    assert!(!refused.is_empty());
}

/// A decision comes back once another quote is cheaper by more than the threshold.
#[test]
fn an_overtaken_decision_comes_back() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "buy", 50_00, json!([]));
    bench.done(json!({ "do": "choose", "id": id(50), "quote": id(10) }));
    bench.quote(11, PART, "buy", 40_00, json!([]));
    // The threshold starts at 10.
    assert_eq!(bench.cost(PART)["overtaken"], Value::Null);
    bench.change(11, json!({ "cash": money(39_99) }));
    let overtaken = bench.cost(PART)["overtaken"].clone();
    assert_eq!(overtaken["by"], json!(id(11)));
    near(minor(&overtaken["saves"]), 10_01.0);
    assert_eq!(bench.asked(json!({ "ask": "totals" }))["overtaken"], json!([id(PART)]));
    bench.change(1, json!({ "threshold": money(20_00) }));
    assert_eq!(bench.cost(PART)["overtaken"], Value::Null);
}

/// Fallbacks that name one another are refused, and told as a problem where merging brings them about.
#[test]
fn a_loop_of_fallbacks_is_named() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "buy", 50_00, json!([{ "chance": 1000 }]));
    bench.quote(11, PART, "send-out", 40_00, json!([{ "chance": 1000 }, { "fallback": id(10) }]));
    let refused = bench.tried(json!({ "do": "change", "ids": [id(10)], "changes": [{ "fallback": id(11) }] }));
    assert_eq!(serde_json::to_value(refused[0].code).expect("a word"), json!("loop"));
    let mut other = bench.other_window();
    other.change(11, json!({ "clear": "fallback" }));
    other.change(10, json!({ "fallback": id(11) }));
    let before = bench.job.record().len();
    let theirs: Vec<_> = other.job.record().entries().cloned().collect();
    bench.change(11, json!({ "fallback": id(10) }));
    // Two windows: what the other wrote carries another replica.
    let theirs = theirs.into_iter().skip(before).map(|mut entry| {
        entry.id.replica = Replica::from_bytes([8; 8]);
        entry.id.seq -= u64::try_from(before).expect("small");
        entry
    });
    bench.job.absorb(theirs.collect::<Vec<_>>());
    let problems = bench.asked(json!({ "ask": "problems" }));
    let told = problems["problems"].as_array().expect("problems");
    assert!(
        told.iter().any(|problem| problem["code"] == "loop" && problem["place"]["field"] == "fallback"),
        "{problems}"
    );
    assert!(minor(&of(&bench.cost(PART), 10)["present"]).is_finite());
}

/// The range follows from the words, the lines say which rest on guesses, and the order is told to be open.
#[test]
fn guesses_are_counted() {
    let mut bench = Bench::new();
    bench.quote(10, PART, "repair-here", 20_00, json!([{ "own_time": 60 }, { "own_time_certainty": "wild-guess" }]));
    bench.quote(11, PART, "buy", 45_00, json!([]));
    let view = bench.cost(PART);
    let repair = of(&view, 10);
    // 20 + half an hour at least, 20 + 2 h at most, at 20 an hour.
    near(minor(&repair["low"]), 30_00.0);
    near(minor(&repair["high"]), 60_00.0);
    near(repair["guessed"].as_f64().expect("a share"), 0.5);
    assert_eq!(view["open_with"], json!([id(11)]));
    bench.change(10, json!({ "own_time_most": 70 }));
    let view = bench.cost(PART);
    near(minor(&of(&view, 10)["high"]), 20_00.0 + 20_00.0 * 70.0 / 60.0);
    assert_eq!(view["open_with"], json!([]));
}

/// Purchases are summed, with the photos of their receipts and the part they were for.
#[test]
fn what_was_bought() {
    let mut bench = Bench::new();
    bench.change(PART, json!({ "name": "Hub" }));
    let bought = json!([{ "cash": money(12_34) }, { "name": "Grease" }, { "part": id(PART) }, { "taken": 5 }]);
    bench.done(json!({ "do": "create", "id": id(60), "kind": "purchase", "changes": bought }));
    let elsewhere = json!([{ "cash": { "minor": 500, "currency": "EUR" } }, { "taken": 9 }]);
    bench.done(json!({ "do": "create", "id": id(61), "kind": "purchase", "changes": elsewhere }));
    bench.done(json!({ "do": "create", "id": id(62), "kind": "photo", "changes": [{ "of": id(60) }, { "order": 1 }] }));
    let totals = bench.asked(json!({ "ask": "totals" }));
    assert_eq!((&totals["spent"], &totals["spent_elsewhere"]), (&money(12_34), &json!(1)));
    assert_eq!(totals["purchases"][0]["record"]["id"], json!(id(61)));
    assert_eq!(totals["purchases"][1]["part_name"], "Hub");
    assert_eq!(totals["purchases"][1]["photos"][0]["record"]["id"], json!(id(62)));
}

/// A quote may be put down and chosen with one stroke, and one undo takes both back.
#[test]
fn put_down_and_chosen_in_one_undone_in_one() {
    let mut bench = Bench::new();
    let quote = json!({ "do": "create", "id": id(10), "kind": "quote", "changes": [{ "of": id(PART) }, { "route": "buy" }, { "cash": money(40_00) }] });
    let choose = json!({ "do": "choose", "id": id(11), "quote": id(10), "part": id(PART) });
    bench.done(json!({ "do": "all", "commands": [quote, choose] }));
    assert_eq!(bench.cost(PART)["chosen"]["values"]["cash"], money(40_00));
    let entry = &bench.asked(json!({ "ask": "part", "part": id(PART) }))["latest"];
    bench.done(json!({ "do": "undo", "entry": entry }));
    let undone = bench.cost(PART);
    assert_eq!((undone.get("chosen"), &undone["quotes"]), (None, &json!([])));
}
