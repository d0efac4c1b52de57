//! The steps of an assembly as a page for the wall.

use asfound_core::papers::{PaperWords, Thumbs, photos_of_refit, refit_html};
use asfound_core::record::Hash;

use serde_json::json;

use crate::bench::{Bench, id};

const HUB: u16 = 50;
const WHEEL: u16 = 110;
const JOINT: u16 = 120;

/// A hub with one joint: names that would run as markup, a figure, a split pin that is renewed.
fn hub() -> Bench {
    let mut bench = Bench::new();
    let mut make = |number: u16, kind: &str, changes: serde_json::Value| {
        bench.done(json!({ "do": "create", "id": id(number), "kind": kind, "changes": changes }));
    };
    make(HUB, "assembly", json!([{ "name": "Front hub <b>" }, { "side": "left" }]));
    make(WHEEL, "part", json!([{ "name": "Wheel hub" }, { "tag": 147 }, { "assembly": id(HUB) }, { "quantity": 2 }]));
    make(111, "part", json!([{ "name": "Drum" }, { "tag": 148 }, { "assembly": id(HUB) }]));
    make(
        JOINT,
        "joint",
        json!([{ "name": "A" }, { "of": id(WHEEL) }, { "assembly": id(HUB) }, { "bag": "3" }, { "at_ride_height": true }]),
    );
    make(
        121,
        "piece",
        json!([{ "joint": id(JOINT) }, { "order": 2 }, { "name": "Castle nut" }, { "torque": 54_232_718 },
        { "torque_unit": "pound-foot" }, { "lubrication": "dry" }, { "torque_source": "manual, page 112" },
        { "remark": "turning the hub" }, { "angle": 60 }]),
    );
    make(122, "piece", json!([{ "joint": id(JOINT) }, { "order": 1 }, { "name": "Split pin" }, { "quantity": 2 }]));
    make(130, "consumable", json!([{ "of": id(HUB) }, { "name": "Grease" }, { "quantity": 1 }]));
    make(131, "note", json!([{ "of": id(WHEEL) }, { "text": "<script>" }]));
    bench
}

fn page(bench: &Bench) -> String {
    refit_html(&bench.job, id(HUB), None, &Thumbs::new(), &PaperWords::default()).expect("a page")
}

/// What came off last stands first; a piece that came off last goes on first; the figure stands in its unit; what is renewed is said.
/// Break: in `step_joint` do not turn the pieces round.
#[test]
fn the_steps_stand_in_their_order() {
    let page = page(&hub());
    let at = |text: &str| page.find(text).unwrap_or_else(|| panic!("{text} is not there: {page}"));
    assert!(at("Drum") < at("Wheel hub"), "last off, first on");
    assert!(
        at("<li>Castle nut</li>") < at("<li class=\"new\">2\u{a0}× Split pin, NEW</li>"),
        "the nut goes on before its pin"
    );
    assert!(page.contains("<b>40</b>\u{a0}lbf·ft"), "{page}");
    for text in [
        "2\u{a0}× Wheel hub",
        "aria-label=\"0147\"",
        "Joint A, bag 3",
        "at ride height",
        "dry · <b>then on by 60°</b> · turning the hub · manual, page 112",
        "Grease <i>not here</i>",
    ] {
        at(text);
    }
    assert_eq!(page.matches("<li class=\"step\">").count(), 2);
    assert_eq!(page.matches("class=\"tick\"").count(), 2, "a box for each");
}

/// A part that is on, and a joint that is tight, are ticked; the others are not.
/// Break: in `Sheet::step` draw an empty box for each.
#[test]
fn what_is_on_is_ticked() {
    let mut bench = hub();
    assert_eq!(page(&bench).matches('\u{2713}').count(), 0);
    bench.change(WHEEL, json!({ "fit": "fitted" }));
    assert_eq!(page(&bench).matches('\u{2713}').count(), 1);
    bench.change(JOINT, json!({ "tightened": "tight" }));
    assert_eq!(page(&bench).matches('\u{2713}').count(), 2);
    bench.change(JOINT, json!({ "checked_again": true }));
    assert_eq!(page(&bench).matches('\u{2713}').count(), 3);
}

/// What somebody typed stands for itself.
/// Break: in `Sheet::opening` put the name in as it is.
#[test]
fn nothing_typed_is_markup() {
    let page = page(&hub());
    assert!(page.contains("Front hub &lt;b&gt;") && page.contains("&lt;script&gt;"), "{page}");
    assert!(!page.contains("<script"), "{page}");
}

/// Its photos are those that were asked for, without where they were taken.
/// Break: in `photo` leave `without_location` out.
#[test]
fn photos_carry_no_location() {
    let job = crate::sample::job();
    let mut assemblies = job.ids(asfound_core::record::Kind::Assembly);
    let assembly = assemblies.find(|id| !photos_of_refit(&job, *id).is_empty()).expect("an assembly with photos");
    let photos = photos_of_refit(&job, assembly);
    let all = crate::sample::photos();
    let thumbs: Thumbs = photos.iter().filter_map(|hash: &Hash| Some((*hash, all.get(hash)?.clone()))).collect();
    let page = refit_html(&job, assembly, None, &thumbs, &PaperWords::default()).expect("a page");
    assert_eq!(page.matches("data:image/jpeg;base64,").count(), thumbs.len());
    // The beginning of an Exif segment, in each of its three places in base64.
    for exif in ["RXhpZg", "V4aWYA", "FeGlmA"] {
        assert!(!page.contains(exif), "the page carries Exif");
    }
}

/// A new piece does not lie where the old one does, and what is out of the house lies nowhere.
/// Break: in `second` print the place of each.
#[test]
fn where_it_lies_is_told_of_what_lies_there() {
    let mut bench = hub();
    bench.done(json!({ "do": "create", "id": id(80), "kind": "place", "changes": [{ "name": "Box 07" }] }));
    bench.change(WHEEL, json!({ "place": id(80) }));
    assert!(page(&bench).contains("Box 07"));
    bench.done(json!({ "do": "create", "id": id(70), "kind": "outing", "changes": [{ "of": id(WHEEL) }] }));
    assert!(!page(&bench).contains("Box 07"));
    bench.change(70, json!({ "arrived": "2026-03-01" }));
    assert!(page(&bench).contains("Box 07"));
    bench.quote(200, WHEEL, "buy", 10, json!([]));
    bench.done(json!({ "do": "choose", "id": id(201), "quote": id(200) }));
    assert!(!page(&bench).contains("Box 07"));
}

/// Nothing was off: no page.
#[test]
fn what_was_never_off_has_no_page() {
    let mut bench = Bench::new();
    bench.done(json!({ "do": "create", "id": id(HUB), "kind": "assembly", "changes": [{ "name": "Engine" }] }));
    assert!(refit_html(&bench.job, id(HUB), None, &Thumbs::new(), &PaperWords::default()).is_none());
}
