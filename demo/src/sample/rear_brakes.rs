//! The drum brakes at the rear, both sides.

use asfound_core::job::Change;
use asfound_core::job::vocabulary::{Certainty, Correctness, Moment, Route, Side, Triage};
use asfound_core::quantity::Mass;
use asfound_core::record::Id;

use super::bench::{Bench, piece};
use super::garage::Garage;
use super::picture::Picture;
use super::quote::{again, buy, by};

const GOOD: Change = Change::Triage(Triage::LooksGood);
const DOUBTFUL: Change = Change::Triage(Triage::Doubtful);
const SCRAP: Change = Change::Triage(Triage::Scrap);
const SAFETY: Change = Change::SafetyCritical(true);
const SLOE: &str = "Sloe Hill Spares";
const TARN: &str = "Bramble & Tarn, brake linings";

pub(super) fn strip(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-10-03T10:00:00Z");
    side(bench, garage, garage.brake_left, Side::Left)?;
    side(bench, garage, garage.brake_right, Side::Right)
}

fn side(bench: &mut Bench, garage: &Garage, assembly: Id, side: Side) -> anyhow::Result<()> {
    let here = (assembly, garage.box_8);
    let is_left = side == Side::Left;
    let side = || Change::Side(side);
    let drum = Picture::Drum { holes: 4 };
    if is_left {
        bench.picture(assembly, Moment::Before, (drum, None), "As found, wheel off")?;
    }
    let drum = bench.part(
        "Brake drum, rear",
        (assembly, garage.floor),
        (drum, (!is_left).then_some((0.5, -0.2))),
        vec![side(), if is_left { GOOD } else { DOUBTFUL }, SAFETY, Change::Mass(Mass(4_800))],
    )?;
    bench.note(
        drum,
        if is_left {
            "203.4 mm, no score that catches a nail."
        } else {
            "Blue spots all round, 203.9 mm at the worst."
        },
    );
    bench.quotes(
        drum,
        vec![
            if is_left { again(30, 5).strip(40).taken() } else { again(30, 40).chance_is(Certainty::About).strip(40) },
            buy(SLOE, 54_00).freight(9_50).fails(4).strip(40).is(Correctness::Pattern),
            by(Route::Donor).own(45).fails(25).strip(40).lasts(84),
        ],
    );
    let shoes = bench.part(
        "Brake shoes, rear",
        here,
        (Picture::Shoe { pieces: 2 }, Some((-0.86, 0.3))),
        vec![side(), Change::Quantity(2), SCRAP, SAFETY],
    )?;
    bench.note(shoes, "Soaked by axle oil. Axle set only.");
    bench.quotes(
        shoes,
        vec![
            by(Route::SendOut).from(TARN).cash(21_00).freight(4_00).own(20).fails(3).strip(70).lasts(120).waits(12),
            by(Route::Exchange)
                .from(SLOE)
                .cash(19_00)
                .surcharge(12_00, 10)
                .own(20)
                .fails(6)
                .strip(70)
                .lasts(120)
                .waits(5)
                .taken(),
        ],
    );
    let cylinder = bench.part(
        "Wheel cylinder, rear",
        here,
        (Picture::WheelCylinder, is_left.then_some((-0.45, 0.1))),
        vec![side(), if is_left { SCRAP } else { DOUBTFUL }, SAFETY],
    )?;
    bench.note(
        cylinder,
        if is_left {
            "Bore rusted right through the seal's path."
        } else {
            "Bore clean after a light polish. 19.05 mm."
        },
    );
    bench.quotes(
        cylinder,
        vec![
            buy(SLOE, 26_50).fails(6).strip(60).is(Correctness::Pattern).lasts(96).waits(3),
            by(Route::SendOut)
                .from(TARN)
                .cash(38_00)
                .freight(4_00)
                .own(20)
                .fails(3)
                .strip(60)
                .lasts(240)
                .waits(20)
                .taken(),
            by(Route::RepairHere).cash(4_60).own(50).fails(20).strip(60),
        ],
    );
    if is_left {
        let lever = bench.part(
            "Hand-brake lever, in the drum",
            here,
            (Picture::Lever { eyes: 3 }, None),
            vec![side(), GOOD],
        )?;
        bench.quotes(lever, vec![again(20, 3).strip(50).taken(), by(Route::Donor).own(40).fails(5).strip(50)]);
        let springs = bench.part(
            "Return springs, rear",
            here,
            (Picture::CoilSprings { pieces: 2 }, None),
            vec![side(), Change::Quantity(4), DOUBTFUL],
        )?;
        bench.note(springs, "One hook opened. Colour of the paint dot: yellow.");
        bench.quotes(springs, vec![buy(SLOE, 9_60).fails(2).strip(50).taken(), again(15, 15).strip(50)]);
    }
    let plate = bench.part(
        "Backplate, rear",
        (assembly, garage.rack),
        (Picture::Backplate { holes: 4 }, None),
        vec![side(), GOOD],
    )?;
    bench.quotes(
        plate,
        vec![
            by(Route::SendOut)
                .from("Pennock Plating")
                .cash(14_00)
                .freight(5_00)
                .own(45)
                .fails(3)
                .strip(80)
                .lasts(240)
                .taken(),
            by(Route::RepairHere).cash(6_00).own(110).own_is(Certainty::About).fails(5).strip(80).lasts(120),
        ],
    );
    if is_left {
        bench.joint(
            plate,
            (assembly, garage.bag_12a),
            "Backplate to axle flange",
            "12a-3",
            &[
                piece("Nut, self-locking", 4, "3/8 in UNF"),
                piece("Bolt", 4, "3/8 in UNF × 1 1/4"),
                piece("Oil thrower", 1, ""),
            ],
        );
    }
    Ok(())
}
