//! What goes together again, late in the year: pedals that are refitted, a hand brake that could be, a hub that waits.

use asfound_core::job::Change;
use asfound_core::job::vocabulary::{
    CommissioningStep, Compared, Fit, Lubrication, Moment, OutFor, Tightened, TorqueUnit,
};
use asfound_core::quantity::{Day, Mass, Minutes, Torque};
use asfound_core::record::{Id, Kind};

use super::bench::{Bench, piece};
use super::garage::Garage;
use super::picture::Picture;
use super::quote::{again, buy};

const SLOE: &str = "Sloe Hill Spares";

pub(super) fn refit(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    pedals(bench, garage)?;
    hand_brake(bench, garage)?;
    hub(bench);
    count(bench, garage)?;
    fluids(bench, garage);
    Ok(())
}

fn assembly(bench: &mut Bench, garage: &Garage, name: &str) -> Id {
    let said = vec![Change::Name(name.into()), Change::Vehicle(garage.van), Change::Open(false)];
    bench.create(Kind::Assembly, said)
}

fn day(text: &str) -> Option<Day> {
    Day::parse(text)
}

/// New pieces of a part: in and right, or due.
fn delivery(bench: &mut Bench, part: Id, from: &str, pieces: i64, arrived: Option<&str>, due: &str) {
    let mut said =
        vec![Change::Of(part), Change::From(from.into()), Change::Quantity(pieces), Change::Taken(bench.now())];
    said.extend(day(due).map(Change::Due));
    if let Some(arrived) = arrived.and_then(day) {
        said.extend([Change::Arrived(arrived), Change::Compared(Compared::Right)]);
    }
    bench.create(Kind::Delivery, said);
}

fn newton_metres(figure: i64) -> [Change; 3] {
    let source = Change::TorqueSource("manual, page 64".into());
    [Change::Torque(Torque(figure * 1_000_000)), Change::TorqueUnit(TorqueUnit::NewtonMetre), source]
}

fn pedals(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-09-19T10:00:00Z");
    let pedals = assembly(bench, garage, "Pedals");
    let here = (pedals, garage.box_9);
    let spring = bench.part(
        "Pedal return springs",
        here,
        (Picture::CoilSprings { pieces: 2 }, None),
        vec![Change::Quantity(2)],
    )?;
    let brake = bench.part("Brake pedal", here, (Picture::Lever { eyes: 2 }, None), vec![Change::Mass(Mass(1_250))])?;
    let clutch = bench.part("Clutch pedal", here, (Picture::Lever { eyes: 2 }, None), vec![])?;
    let shaft = bench.part("Pedal pivot shaft", here, (Picture::Pins { pieces: 1, cotter: false }, None), vec![])?;
    for part in [spring, brake, clutch, shaft] {
        bench.quotes(part, vec![again(10, 2).taken()]);
    }
    let pieces = [
        piece("Split pin", 1, "3/32 in × 1"),
        piece("Slotted nut", 1, "7/16 in UNF"),
        piece("Plain washer", 1, "7/16 in"),
    ];
    let joint = bench.joint(shaft, (pedals, garage.bag_7a), "F", "F", &pieces);
    bench.say(joint, newton_metres(34).into_iter().chain([Change::Lubrication(Lubrication::Dry)]).collect());
    bench.day("2026-11-14T14:00:00Z");
    for part in [shaft, clutch, brake, spring] {
        bench.say(part, vec![Change::Fit(Fit::Fitted)]);
    }
    bench.say(joint, vec![Change::Tightened(Tightened::Tight)]);
    bench.picture(brake, Moment::After, (Picture::Lever { eyes: 2 }, None), "Both pedals on, springs hooked behind")?;
    Ok(())
}

fn hand_brake(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-09-20T10:00:00Z");
    let hand_brake = assembly(bench, garage, "Hand brake");
    bench.say(hand_brake, vec![Change::FitTime(Minutes::new(75))]);
    let here = (hand_brake, garage.box_9);
    let cable = bench.part("Hand-brake cable", here, (Picture::Hose, None), vec![])?;
    bench.quotes(cable, vec![buy(SLOE, 24_50).fails(3).taken()]);
    let pawl = bench.part("Pawl and rod", here, (Picture::Link { bent: true }, None), vec![])?;
    let lever = bench.part("Hand-brake lever", here, (Picture::Lever { eyes: 1 }, None), vec![])?;
    for part in [pawl, lever] {
        bench.quotes(part, vec![again(15, 3).taken()]);
    }
    let pieces = [
        piece("Nut, self-locking", 2, "3/8 in UNF"),
        piece("Bolt", 2, "3/8 in UNF × 1"),
        piece("Plain washer", 2, "3/8 in"),
    ];
    let joint = bench.joint(lever, (hand_brake, garage.bag_7a), "G", "G", &pieces);
    bench
        .say(joint, newton_metres(41).into_iter().chain([Change::Remark("Lever down, cable slack.".into())]).collect());
    let nut = bench.first_piece_of(joint);
    bench.say(nut, vec![Change::InHand(2)]);
    let grease = vec![Change::Of(hand_brake), Change::Name("Grease for the pawl".into()), Change::InHand(1)];
    bench.create(Kind::Consumable, grease);
    bench.day("2026-11-15T10:00:00Z");
    delivery(bench, cable, SLOE, 1, Some("2026-11-13"), "2026-11-13");
    Ok(())
}

/// Bearings are in, other things are due: it waits.
fn hub(bench: &mut Bench) {
    bench.day("2026-11-16T19:00:00Z");
    for (name, arrived, due) in [
        ("Outer wheel bearing", Some("2026-11-14"), "2026-11-14"),
        ("Inner wheel bearing", Some("2026-11-14"), "2026-11-14"),
        ("Hub nut", None, "2026-12-04"),
        ("Grease seal, hub", None, "2026-12-09"),
    ] {
        let part = bench.named(name);
        delivery(bench, part, "Kettleby Bearings", 1, arrived, due);
    }
    let stub = bench.named("Stub axle");
    let mut out = vec![
        Change::Of(stub),
        Change::OutFor(OutFor::Work),
        Change::Who("Pennock Machine Shop".into()),
        Change::Taken(bench.now()),
    ];
    out.extend(day("2026-12-11").map(Change::Due));
    bench.create(Kind::Outing, out);
    let drum = bench.named("Brake drum, front");
    bench.create(Kind::GoesAfter, vec![Change::Of(drum), Change::Other(bench.named("Front hub"))]);
    let nut = newton_metres(54);
    let castle = bench.named("Castle nut");
    let more = [
        Change::Lubrication(Lubrication::Dry),
        Change::Remark("Turning the hub, then back one flat. Pin bent round the nut.".into()),
    ];
    bench.say(castle, nut.into_iter().chain(more).collect());
    for name in ["Front hub", "Hub nut", "Thrust washer"] {
        let part = bench.named(name);
        bench.say(part, vec![Change::Oiled(true), Change::Wrapped(true)]);
    }
}

/// Box 07 was gone through: the grease cap is not there, and a wheel cylinder is that belongs in Box 08.
fn count(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-11-20T20:00:00Z");
    bench.picture(garage.box_7, Moment::Off, (Picture::Shelf, None), "Second shelf, from the left")?;
    let count = bench.create(Kind::Count, vec![Change::Of(garage.box_7), Change::Taken(bench.now())]);
    let names = [
        "Hub nut",
        "Thrust washer",
        "Outer wheel bearing",
        "Front hub",
        "Inner wheel bearing",
        "Wheel cylinder, upper",
    ];
    let seen: Vec<Id> = names.into_iter().map(|name| bench.named(name)).chain([garage.bag_7a]).collect();
    for id in seen {
        let taken = bench.now();
        bench.create(
            Kind::Sighting,
            vec![Change::Of(id), Change::Place(garage.box_7), Change::InCount(count), Change::Taken(taken)],
        );
    }
    bench.say(count, vec![Change::Ended(bench.now())]);
    Ok(())
}

/// What was drained, and the first of the steps to the road.
fn fluids(bench: &mut Bench, garage: &Garage) {
    bench.day("2026-11-21T10:00:00Z");
    for (name, drained, capacity, text) in [
        ("Axle oil", 850, 1_100, "Black, with fine glitter. Smells burnt."),
        ("Brake fluid", 240, 400, "Brown, with water."),
        ("Steering box oil", 120, 250, "Thick, clean."),
    ] {
        bench.create(
            Kind::Fluid,
            vec![
                Change::Of(garage.van),
                Change::Name(name.into()),
                Change::Drained(drained),
                Change::Capacity(capacity),
                Change::Text(text.into()),
            ],
        );
    }
    let taken = bench.now();
    bench.create(
        Kind::Commissioning,
        vec![
            Change::Of(garage.van),
            Change::CommissioningStep(CommissioningStep::Settings),
            Change::Text("Pedal height 142 mm, free play 20 mm.".into()),
            Change::Taken(taken),
        ],
    );
}
