//! Refitting, checked by hand: what blocks an assembly, and from when on nothing does.

use serde_json::{Value, json};

use crate::bench::{Bench, id};

pub(crate) const HUB: u16 = 50;
pub(crate) const BEARING: u16 = 110;
pub(crate) const SEAL: u16 = 111;
pub(crate) const STUB: u16 = 112;
pub(crate) const TODAY: &str = "2026-03-01";

pub(crate) struct Hub(pub(crate) Bench);

impl Hub {
    /// A hub of two bearings, a seal and a stub axle, all to be bought; a day to compare what comes in.
    pub(crate) fn new() -> Self {
        let mut hub = Self(Bench::new());
        hub.0.change(super::bench::PART, json!({ "struck": true }));
        hub.make(HUB, "assembly", json!([{ "name": "Front hub" }, { "side": "left" }]));
        for (part, name, pieces) in [(STUB, "Stub axle", 1), (BEARING, "Bearing", 2), (SEAL, "Seal", 1)] {
            hub.make(part, "part", json!([{ "name": name }, { "assembly": id(HUB) }, { "quantity": pieces }]));
            hub.chosen(part, "buy");
        }
        hub
    }

    pub(crate) fn make(&mut self, number: u16, kind: &str, changes: Value) {
        self.0.done(json!({ "do": "create", "id": id(number), "kind": kind, "changes": changes }));
    }

    pub(crate) fn chosen(&mut self, part: u16, route: &str) {
        self.0.quote(part + 100, part, route, 10, json!([]));
        self.0.done(json!({ "do": "choose", "id": id(part + 200), "quote": id(part + 100) }));
    }

    /// So many new pieces of a part: due on a day, or in and compared.
    pub(crate) fn delivery(&mut self, number: u16, part: u16, pieces: i64, more: Value) {
        let mut changes = vec![json!({ "of": id(part) }), json!({ "quantity": pieces })];
        changes.extend(more.as_array().cloned().unwrap_or_default());
        self.make(number, "delivery", Value::Array(changes));
    }

    pub(crate) fn ready(&self) -> Value {
        let view = self.0.asked(json!({ "ask": "ready", "today": TODAY }));
        let lines = view["assemblies"].as_array().expect("assemblies").clone();
        lines.into_iter().find(|line| line["id"] == json!(id(HUB))).expect("the hub")
    }

    pub(crate) fn lacks(&self) -> Vec<String> {
        let line = self.ready();
        let lacks = line["lacks"].as_array().expect("lacks").iter();
        lacks.map(|lack| format!("{} {}", lack["name"].as_str().unwrap(), lack["why"].as_str().unwrap())).collect()
    }

    /// Both bearings are in and right; the seal is due on 14 March, the stub axle on the 10th.
    pub(crate) fn expecting() -> Self {
        let mut hub = Self::new();
        hub.delivery(401, BEARING, 2, json!([{ "arrived": "2026-02-20" }, { "compared": "right" }]));
        hub.delivery(402, SEAL, 1, json!([{ "due": "2026-03-14" }]));
        hub.delivery(403, STUB, 1, json!([{ "due": "2026-03-10" }]));
        hub
    }
}

/// Two bearings needed and in, seal due on 14 March, stub axle on 10 March, a day to compare each: blocked by two, and on
/// 15 March by none.
/// Break: in `Terms::checked` leave the checking days out.
#[test]
fn the_last_of_what_is_due_says_when() {
    let hub = Hub::expecting();
    let line = hub.ready();
    assert_eq!(line["state"], "blocked");
    assert_eq!(hub.lacks(), ["Seal on-order", "Stub axle on-order"]);
    assert_eq!(line["earliest"], "2026-03-15");
    assert_eq!((&line["no_date"], &line["own"]), (&json!(false), &json!(false)));
}

/// What was found wrong on comparison has no date, whatever else is due.
/// Break: in `When::of` leave `no_date` out.
#[test]
fn what_is_wrong_has_no_date() {
    let mut hub = Hub::expecting();
    hub.0.done(
        json!({ "do": "change", "ids": [id(402)], "changes": [{ "arrived": "2026-02-27" }, { "compared": "wrong" }] }),
    );
    let line = hub.ready();
    assert_eq!(hub.lacks(), ["Seal wrong", "Stub axle on-order"]);
    assert_eq!((line["state"].as_str(), line.get("earliest"), &line["no_date"]), (Some("blocked"), None, &json!(true)));
    // Another one that is on its way gives a date again.
    hub.delivery(404, SEAL, 1, json!([{ "due": "2026-03-20" }]));
    assert_eq!(hub.ready()["earliest"], "2026-03-21");
}

/// One bearing of two is not ready.
/// Break: in `Delivered::is_complete` ask for one piece.
#[test]
fn one_bearing_of_two_is_not_ready() {
    let mut hub = Hub::new();
    for (number, part) in [(402, SEAL), (403, STUB)] {
        hub.delivery(number, part, 1, json!([{ "arrived": "2026-02-20" }, { "compared": "right" }]));
    }
    hub.delivery(401, BEARING, 1, json!([{ "arrived": "2026-02-20" }, { "compared": "right" }]));
    assert_eq!(hub.lacks(), ["Bearing to-order"]);
    assert_eq!(hub.ready()["lacks"][0]["pieces"], 1);
    hub.delivery(404, BEARING, 1, json!([{ "arrived": "2026-02-28" }]));
    assert_eq!(hub.lacks(), ["Bearing to-compare"]);
    // It is here: comparing it takes until tomorrow.
    assert_eq!((hub.ready()["earliest"].as_str(), &hub.ready()["own"]), (Some("2026-03-02"), &json!(true)));
    hub.0.change(404, json!({ "compared": "right" }));
    assert_eq!(hub.ready()["state"], "ready");
}

/// What is on for trial only is in nobody's way to be taken off, and in the way of everything else.
/// Break: in `of_itself` leave `Fit::Tried` out.
#[test]
fn a_beam_that_is_only_tried_blocks() {
    let mut hub = Hub::expecting();
    hub.make(60, "assembly", json!([{ "name": "Axle beam" }]));
    hub.make(120, "part", json!([{ "name": "Beam" }, { "assembly": id(60) }]));
    hub.chosen(120, "use-again");
    hub.make(500, "goes-after", json!([{ "of": id(HUB) }, { "other": id(60) }]));
    let beam = |hub: &Hub| {
        let view = hub.0.asked(json!({ "ask": "ready", "today": TODAY }));
        view["assemblies"].as_array().unwrap().iter().find(|line| line["id"] == json!(id(60))).unwrap().clone()
    };
    assert_eq!(beam(&hub)["state"], "ready");
    hub.0.change(120, json!({ "fit": "tried" }));
    assert_eq!(
        (beam(&hub)["state"].as_str(), beam(&hub)["lacks"][0]["why"].as_str()),
        (Some("blocked"), Some("tried-only"))
    );
    assert_eq!(hub.lacks(), ["Seal on-order", "Seal goes-after", "Stub axle on-order"]);
    // Off for finish, then finished, then on for good.
    hub.0.change(120, json!({ "fit": "off-again" }));
    assert_eq!(beam(&hub)["lacks"][0]["why"], "to-finish");
    hub.0.change(120, json!({ "finished": true }));
    assert_eq!(beam(&hub)["state"], "ready");
    hub.0.change(120, json!({ "fit": "fitted" }));
    assert_eq!(beam(&hub)["state"], "refitted");
    assert_eq!(hub.lacks(), ["Seal on-order", "Stub axle on-order"]);
}

/// A delivery that should have been here has no date any more.
/// Break: in `Terms::checked` take no notice of today.
#[test]
fn what_is_overdue_has_no_date() {
    let mut hub = Hub::expecting();
    hub.0.change(403, json!({ "due": "2026-02-20" }));
    let line = hub.ready();
    assert_eq!((line.get("earliest"), &line["lacks"][1]["overdue"]), (None, &json!(true)));
}

/// New hardware is wanted by the piece: a split pin by its name, a nut when somebody says so. What is refitted waits for none.
/// Break: in `short_of` count what is here as all.
#[test]
fn hardware_is_counted_by_the_piece() {
    let mut hub = Hub::expecting();
    for number in [402, 403] {
        hub.0.done(json!({ "do": "change", "ids": [id(number)], "changes": [{ "arrived": "2026-02-20" }, { "compared": "right" }] }));
    }
    hub.make(600, "joint", json!([{ "name": "A" }, { "of": id(STUB) }]));
    hub.make(601, "piece", json!([{ "joint": id(600) }, { "name": "Split pin" }, { "quantity": 2 }]));
    hub.make(602, "piece", json!([{ "joint": id(600) }, { "name": "Castle nut" }]));
    assert_eq!(hub.lacks(), ["Split pin hardware"]);
    hub.0.done(json!({ "do": "change", "ids": [id(601)], "changes": [{ "in_hand": 1 }, { "due": "2026-03-05" }] }));
    assert_eq!((&hub.ready()["lacks"][0]["pieces"], &hub.ready()["earliest"]), (&json!(1), &json!("2026-03-05")));
    hub.0.change(601, json!({ "in_hand": 2 }));
    hub.make(603, "consumable", json!([{ "of": id(HUB) }, { "name": "Hub grease" }]));
    assert_eq!(hub.lacks(), ["Hub grease consumable"]);
    hub.0.change(603, json!({ "in_hand": 1 }));
    assert_eq!(hub.ready()["state"], "ready");
    hub.0.change(602, json!({ "renew": true }));
    assert_eq!(hub.lacks(), ["Castle nut hardware"]);
}

/// What is out of the house, sent for work or lent, or missed at a count is in the way; each with what is known of when.
#[test]
fn what_is_not_here_is_in_the_way() {
    let mut hub = Hub::new();
    for part in [BEARING, SEAL] {
        hub.0.change(part, json!({ "fit": "fitted" }));
    }
    hub.0.change(STUB, json!({ "clear": "chosen" }));
    assert_eq!(hub.lacks(), ["Stub axle undecided"]);
    hub.0.quote(700, STUB, "send-out", 10, json!([]));
    hub.0.done(json!({ "do": "choose", "id": id(701), "quote": id(700) }));
    assert_eq!(hub.lacks(), ["Stub axle to-send"]);
    hub.make(702, "outing", json!([{ "of": id(STUB) }, { "out_for": "work" }, { "due": "2026-03-09" }]));
    assert_eq!(
        (hub.lacks(), &hub.ready()["earliest"]),
        (vec!["Stub axle out-for-work".to_owned()], &json!("2026-03-10"))
    );
    hub.0.change(702, json!({ "arrived": "2026-03-01" }));
    assert_eq!(hub.lacks(), ["Stub axle to-compare"]);
    hub.0.change(702, json!({ "compared": "right" }));
    assert_eq!(hub.ready()["state"], "ready");
    hub.make(703, "outing", json!([{ "of": id(STUB) }, { "out_for": "loan" }]));
    assert_eq!((hub.lacks(), &hub.ready()["no_date"]), (vec!["Stub axle on-loan".to_owned()], &json!(true)));
    hub.0.change(703, json!({ "arrived": "2026-03-01" }));
    hub.make(710, "place", json!([{ "name": "Box 07" }]));
    hub.0.change(STUB, json!({ "place": id(710) }));
    hub.make(711, "count", json!([{ "of": id(710) }, { "ended": 5 }]));
    assert_eq!(hub.lacks(), ["Stub axle missing"]);
    hub.make(712, "sighting", json!([{ "of": id(STUB) }, { "taken": 9 }]));
    assert_eq!(hub.ready()["state"], "ready");
}

/// What is only finger-tight keeps the vehicle off its wheels; what is tightened at ride height keeps it off the road alone.
/// Break: in `gates` leave out `at_ride_height`, or in `check_gates` ask for the other one.
#[test]
fn what_is_loose_is_in_the_way() {
    let mut hub = Hub::expecting();
    hub.make(3, "vehicle", json!([{ "name": "Van" }]));
    hub.make(600, "joint", json!([{ "name": "A" }, { "of": id(STUB) }]));
    hub.make(601, "joint", json!([{ "name": "B" }, { "of": id(STUB) }, { "at_ride_height": true }]));
    let loose = |hub: &Hub| hub.0.asked(json!({ "ask": "ready" }))["loose"].as_array().unwrap().len();
    assert_eq!(loose(&hub), 0);
    hub.0.change(STUB, json!({ "fit": "fitted" }));
    assert_eq!(loose(&hub), 2);
    let says = |hub: &mut Hub, change: Value| {
        let problems = hub.0.tried(json!({ "do": "change", "ids": [id(3)], "changes": [change] }));
        problems
            .iter()
            .map(|problem| serde_json::to_value(problem.code).unwrap().as_str().unwrap().to_owned())
            .collect::<Vec<_>>()
    };
    assert_eq!(says(&mut hub, json!({ "lowered": true })), ["still-loose"]);
    hub.0.change(600, json!({ "tightened": "finger-tight" }));
    assert_eq!(says(&mut hub, json!({ "lowered": true })), ["still-loose"]);
    hub.0.change(600, json!({ "tightened": "tight" }));
    assert_eq!(says(&mut hub, json!({ "on_the_road": true })), ["still-loose"]);
    assert_eq!(says(&mut hub, json!({ "lowered": true })), Vec::<String>::new());
    hub.0.change(601, json!({ "tightened": "tight" }));
    assert_eq!(says(&mut hub, json!({ "on_the_road": true })), Vec::<String>::new());
    // Loosened again once it is on the road: it is told.
    hub.0.change(601, json!({ "tightened": "finger-tight" }));
    let told = hub.0.asked(json!({ "ask": "problems" }));
    assert!(told["problems"].as_array().unwrap().iter().any(|problem| problem["code"] == "still-loose"), "{told}");
}

/// What is done in an evening: whole assemblies first, as many steps as fit, and comparing beside it.
/// Break: in `this_evening` leave what is left of the time as it was.
#[test]
fn an_evening_holds_what_fits() {
    let mut hub = Hub::expecting();
    hub.delivery(405, SEAL, 1, json!([{ "arrived": "2026-03-01" }]));
    for (number, name) in [(61, "Pedals"), (62, "Column")] {
        hub.make(number, "assembly", json!([{ "name": name }]));
        for part in 0..3 {
            let part = number * 10 + part;
            hub.make(part, "part", json!([{ "name": name }, { "assembly": id(number) }, { "fit_time": 20 }]));
            hub.chosen(part, "use-again");
        }
    }
    let evening = |minutes: i64| {
        let view = hub.0.asked(json!({ "ask": "this-evening", "minutes": minutes, "today": TODAY }));
        let items = view["items"].as_array().unwrap().iter();
        let items: Vec<String> = items
            .map(|item| {
                format!(
                    "{} {} {}/{}",
                    item["kind"].as_str().unwrap(),
                    item["name"].as_str().unwrap(),
                    item["fits"],
                    item["steps"]
                )
            })
            .collect();
        (items, view["picked"].as_i64().unwrap())
    };
    assert_eq!(evening(90).0, ["refit Pedals 3/3", "refit Column 1/3", "compare Seal 1/1"]);
    assert_eq!(evening(90).1, 90);
    assert_eq!(evening(30).0, ["compare Seal 1/1", "refit Pedals 1/3", "refit Column 0/3"]);
}

/// What is refitted, left over and renewed at the end; fluids, steps and what was found before.
#[test]
fn at_the_end_nothing_is_left_over() {
    let mut hub = Hub::expecting();
    hub.make(3, "vehicle", json!([{ "name": "Van" }]));
    hub.make(600, "joint", json!([{ "name": "A" }, { "of": id(STUB) }]));
    hub.make(601, "piece", json!([{ "joint": id(600) }, { "name": "Split pin" }, { "quantity": 2 }]));
    hub.make(604, "fluid", json!([{ "of": id(3) }, { "name": "Axle oil" }, { "drained": 850 }]));
    hub.make(605, "before", json!([{ "assembly": id(HUB) }, { "check": "free-play" }, { "text": "0.2 mm" }]));
    hub.make(606, "commissioning", json!([{ "of": id(3) }, { "commissioning_step": "bleed" }, { "taken": 5 }]));
    let told = |hub: &Hub| hub.0.asked(json!({ "ask": "commissioning" }));
    assert_eq!(told(&hub)["left"]["parts"].as_array().unwrap().len(), 3);
    assert_eq!(told(&hub)["open"], 1);
    for part in [BEARING, SEAL, STUB] {
        hub.0.change(part, json!({ "fit": "fitted" }));
    }
    let view = told(&hub);
    assert_eq!((view["left"]["parts"].as_array().unwrap().len(), &view["open"]), (0, &json!(0)));
    assert_eq!(view["left"]["never_ticked"].as_array().unwrap().len(), 1);
    assert_eq!(view["left"]["renewed"].as_array().unwrap().len(), 3);
    hub.0.change(600, json!({ "tightened": "tight" }));
    let view = told(&hub);
    let renewed = view["left"]["renewed"].as_array().unwrap();
    assert_eq!((renewed.len(), &renewed[3]["name"], &renewed[3]["pieces"]), (4, &json!("Split pin"), &json!(2)));
    assert_eq!(view["left"]["never_ticked"], json!([]));
    assert_eq!(view["fluids"][0]["values"]["drained"], 850);
    assert_eq!(view["before"][0]["record"]["values"]["text"], "0.2 mm");
    let done: Vec<&Value> =
        view["steps"].as_array().unwrap().iter().filter(|line| line.get("record").is_some()).collect();
    assert_eq!((done.len(), &done[0]["step"]), (1, &json!("bleed")));
}

/// An assembly kept whole as the reference is not stripped before its opposite number is together again.
/// Break: in `reference_of` take every reference for one that may go.
#[test]
fn the_reference_stays_until_the_other_side_is_together() {
    let mut hub = Hub::new();
    hub.make(51, "assembly", json!([{ "name": "Front hub" }, { "side": "right" }, { "reference": true }]));
    hub.make(130, "part", json!([{ "name": "Seal" }, { "assembly": id(51) }, { "off": false }]));
    let early = |hub: &Hub| {
        let view = hub.0.asked(json!({ "ask": "assemblies" }));
        let line = view["assemblies"]
            .as_array()
            .unwrap()
            .iter()
            .find(|line| line["record"]["id"] == json!(id(51)))
            .unwrap()
            .clone();
        line["reference"]["early"].clone()
    };
    assert_eq!(early(&hub), json!(true));
    for part in [BEARING, SEAL, STUB] {
        hub.0.change(part, json!({ "fit": "fitted" }));
    }
    assert_eq!(early(&hub), json!(false));
}

/// Of lots that are on their way those count that come first and are enough; what is overdue is waited for last, and has no date.
/// Break: in `of_new` take the lots as they come.
#[test]
fn the_lots_that_come_first_count() {
    let mut hub = Hub::new();
    for part in [SEAL, STUB] {
        hub.0.change(part, json!({ "fit": "fitted" }));
    }
    hub.delivery(401, BEARING, 2, json!([{ "due": "2026-03-30" }]));
    hub.delivery(402, BEARING, 2, json!([{ "due": "2026-03-05" }]));
    assert_eq!((hub.lacks(), &hub.ready()["earliest"]), (vec!["Bearing on-order".to_owned()], &json!("2026-03-06")));
    hub.0.done(json!({ "do": "change", "ids": [id(401)], "changes": [{ "due": "2026-02-01" }, { "quantity": 1 }] }));
    hub.0.change(402, json!({ "quantity": 1 }));
    let line = hub.ready();
    assert_eq!((&line["lacks"][0]["day"], &line["lacks"][1]["overdue"]), (&json!("2026-03-06"), &json!(true)));
    assert_eq!((line.get("earliest"), &line["no_date"]), (None, &json!(true)));
}

/// New pieces that are right may still be at the painter's, or off again for finish; work done here says nothing of work that
/// is sent out; a donor's part that was found wrong is wrong.
#[test]
fn being_here_is_not_being_ready() {
    let mut hub = Hub::new();
    for part in [BEARING, SEAL] {
        hub.0.change(part, json!({ "fit": "fitted" }));
    }
    hub.delivery(401, STUB, 1, json!([{ "arrived": "2026-02-20" }, { "compared": "right" }]));
    assert_eq!(hub.ready()["state"], "ready");
    hub.make(402, "outing", json!([{ "of": id(STUB) }, { "due": "2026-03-20" }]));
    assert_eq!(
        (hub.lacks(), &hub.ready()["earliest"]),
        (vec!["Stub axle out-for-work".to_owned()], &json!("2026-03-20"))
    );
    hub.0.change(402, json!({ "arrived": "2026-02-28" }));
    hub.0.change(STUB, json!({ "fit": "off-again" }));
    assert_eq!(hub.lacks(), ["Stub axle to-finish"]);
    hub.0.change(STUB, json!({ "finished": true }));
    assert_eq!(hub.ready()["state"], "ready");
    hub.0.change(STUB, json!({ "clear": "fit" }));
    hub.0.done(json!({ "do": "change", "ids": [id(402)], "changes": [{ "struck": true }] }));
    hub.0.quote(700, STUB, "send-out", 10, json!([]));
    hub.0.done(json!({ "do": "choose", "id": id(701), "quote": id(700) }));
    assert_eq!(hub.lacks(), ["Stub axle to-send"]);
    hub.0.quote(710, STUB, "donor", 10, json!([{ "fetched": true }]));
    hub.0.done(json!({ "do": "choose", "id": id(711), "quote": id(710) }));
    assert_eq!(hub.ready()["state"], "ready");
    hub.0.change(401, json!({ "compared": "wrong" }));
    assert_eq!(hub.lacks(), ["Stub axle wrong"]);
}

/// Lowering looks at what the same entry loosens and tightens; what is slackened once it is down is told.
/// Break: in `check_gates` ask the job as it was.
#[test]
fn one_entry_may_tighten_and_lower() {
    let mut hub = Hub::new();
    hub.make(3, "vehicle", json!([{ "name": "Van" }]));
    hub.make(600, "joint", json!([{ "name": "A" }, { "of": id(STUB) }]));
    hub.0.change(STUB, json!({ "fit": "fitted" }));
    let both = |tightened: &str| {
        json!({ "do": "all", "commands": [
            { "do": "change", "ids": [id(600)], "changes": [{ "tightened": tightened }] },
            { "do": "change", "ids": [id(3)], "changes": [{ "lowered": true }] },
        ] })
    };
    assert_eq!(hub.0.tried(both("finger-tight")).len(), 1);
    hub.0.done(both("tight"));
    hub.0.change(600, json!({ "tightened": "finger-tight" }));
    let told = hub.0.asked(json!({ "ask": "problems" }));
    assert!(told["problems"].as_array().unwrap().iter().any(|problem| problem["code"] == "still-loose"), "{told}");
}

/// A step counts with its own time; what waits for a part elsewhere is not offered.
#[test]
fn an_evening_goes_step_by_step() {
    let mut hub = Hub::new();
    hub.make(61, "assembly", json!([{ "name": "Pedals" }]));
    hub.make(62, "assembly", json!([{ "name": "Column" }]));
    for (part, assembly, minutes) in [(131, 61, 10), (132, 61, 60), (133, 62, 5)] {
        hub.make(part, "part", json!([{ "name": "P" }, { "assembly": id(assembly) }, { "fit_time": minutes }]));
        hub.chosen(part, "use-again");
    }
    // The pedal that takes an hour came off last, and goes on first.
    hub.make(500, "goes-after", json!([{ "of": id(133) }, { "other": id(131) }]));
    let evening = |hub: &Hub, minutes: i64| {
        let view = hub.0.asked(json!({ "ask": "this-evening", "minutes": minutes, "today": TODAY }));
        let items = view["items"].as_array().unwrap().iter();
        items
            .map(|item| format!("{} {}/{}", item["name"].as_str().unwrap(), item["fits"], item["steps"]))
            .collect::<Vec<_>>()
    };
    assert_eq!(evening(&hub, 40), ["Pedals 0/2"]);
    assert_eq!(evening(&hub, 60), ["Pedals 1/2"]);
    assert_eq!(evening(&hub, 70), ["Pedals 2/2"]);
    for part in [131, 132] {
        hub.0.change(part, json!({ "fit": "fitted" }));
    }
    assert_eq!(evening(&hub, 40), ["Column 1/1"]);
}

/// Where another goes on in its place, the old piece lies where it was laid.
#[test]
fn the_old_piece_stays_where_it_lies() {
    let mut hub = Hub::new();
    hub.make(710, "place", json!([{ "name": "Box 07" }]));
    for part in [SEAL, STUB] {
        hub.0
            .done(json!({ "do": "change", "ids": [id(part)], "changes": [{ "place": id(710) }, { "fit": "fitted" }] }));
    }
    hub.0.change(STUB, json!({ "clear": "chosen" }));
    hub.0.quote(700, STUB, "use-again", 10, json!([]));
    hub.0.done(json!({ "do": "choose", "id": id(701), "quote": id(700) }));
    let places = hub.0.asked(json!({ "ask": "places" }));
    assert_eq!(places["places"][0]["parts"], 1, "{places}");
}
