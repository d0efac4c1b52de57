//! The rear axle: springs, half shafts, the drive.

use asfound_core::job::Change;
use asfound_core::job::vocabulary::{Certainty, Check, Correctness, Moment, Route, Shape, Side, Triage};
use asfound_core::quantity::Mass;
use asfound_core::record::Kind;

use super::bench::{Bench, piece};
use super::garage::Garage;
use super::picture::Picture;
use super::quote::{again, buy, by};

const GOOD: Change = Change::Triage(Triage::LooksGood);
const DOUBTFUL: Change = Change::Triage(Triage::Doubtful);
const SCRAP: Change = Change::Triage(Triage::Scrap);
const SAFETY: Change = Change::SafetyCritical(true);
const ONCE: Change = Change::SingleUse(true);
const SLOE: &str = "Sloe Hill Spares";
const KETTLEBY: &str = "Kettleby Bearings";
const SMITHY: &str = "Lower Wick Spring Works";

pub(super) fn strip(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-10-17T09:00:00Z");
    springs(bench, garage)?;
    half_shafts(bench, garage)?;
    drive(bench, garage)?;
    donor(bench, garage)
}

fn springs(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let looked = vec![
        Change::Assembly(garage.rear),
        Change::Check(Check::Height),
        Change::Text("Arch to hub centre 318 mm left, 331 mm right: the left one sags.".into()),
    ];
    bench.create(Kind::Before, looked);
    for (name, side, found) in [
        ("Leaf spring, left", Side::Left, "Third leaf broken by the clip. 13 mm lower than its pair."),
        ("Leaf spring, right", Side::Right, "No crack found. Leaves rusted together."),
    ] {
        let worn = (side == Side::Left).then_some((0.46, 0.1));
        let drawing = (Picture::LeafSpring { leaves: 5 }, worn);
        let spring = bench.part(
            name,
            (garage.rear, garage.yard),
            drawing,
            vec![Change::Side(side), if worn.is_some() { SCRAP } else { DOUBTFUL }, SAFETY, Change::Mass(Mass(11_500))],
        )?;
        if let Some(at) = worn {
            let shot = bench.picture(
                spring,
                Moment::Before,
                (Picture::LeafSpring { leaves: 5 }, None),
                "On the axle, before the shackle was touched",
            )?;
            bench.mark(shot, Shape::Ring, at);
        }
        bench.note(spring, found);
        bench.quotes(
            spring,
            vec![
                by(Route::SendOut)
                    .from(SMITHY)
                    .cash(58_00)
                    .freight(14_00)
                    .own(60)
                    .fails(5)
                    .strip(150)
                    .lasts(150)
                    .lasts_between(96, 240)
                    .waits(21)
                    .waits_between(14, 56)
                    .remark("Re-set, one new leaf, as a pair"),
                buy(SMITHY, 118_00)
                    .freight(16_00)
                    .fails(3)
                    .strip(150)
                    .is(Correctness::FaithfulReproduction)
                    .lasts(240)
                    .waits(28)
                    .wait_is(Certainty::About),
                by(Route::Donor).own(90).fails(35).strip(150).lasts(60),
            ],
        );
    }
    let pins = bench.part(
        "Shackle pins",
        (garage.rear, garage.box_12),
        (Picture::Pins { pieces: 4, cotter: false }, Some((0.25, -0.2))),
        vec![Change::Quantity(4), SCRAP, SAFETY],
    )?;
    bench.note(pins, "Steps of 0.4 mm where the bushes ran.");
    let bushes = bench.part(
        "Shackle bushes",
        (garage.rear, garage.box_12),
        (Picture::Bushes { pieces: 3 }, None),
        vec![Change::Quantity(8), SCRAP],
    )?;
    bench.quotes(pins, vec![buy(SLOE, 26_00).fails(2).strip(150).lasts(180)]);
    bench.quotes(bushes, vec![buy(SLOE, 14_00).fails(2).strip(150).lasts(120)]);
    let kit = by(Route::Kit)
        .from(SMITHY)
        .cash(29_50)
        .freight(3_00)
        .own(20)
        .fails(2)
        .strip(150)
        .lasts(150)
        .remark("Shackle kit, both sides");
    let kit = bench.quotes(pins, vec![kit])[0];
    bench.covers(kit, pins, 4);
    bench.covers(kit, bushes, 8);
    bench.choose(kit, pins);
    bench.choose(kit, bushes);
    let bolts = bench.part(
        "U-bolts",
        (garage.rear, garage.box_12),
        (Picture::UBolts { pieces: 3 }, None),
        vec![Change::Quantity(4), DOUBTFUL, SAFETY],
    )?;
    bench.quotes(bolts, vec![buy(SMITHY, 24_00).fails(1).strip(60).taken(), again(30, 20).strip(60)]);
    bench.joint(
        bolts,
        (garage.rear, garage.bag_12a),
        "Axle to spring",
        "12a-1",
        &[piece("Nut", 8, "7/16 in UNF"), piece("Spring washer", 8, "7/16 in"), piece("Spring plate", 2, "")],
    );
    Ok(())
}

fn half_shafts(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    for (name, side, found) in [
        ("Half shaft, left", Side::Left, "Splines straight. Groove of 0.1 mm where the seal ran."),
        ("Half shaft, right", Side::Right, "Splines twisted by a hair against a straight edge."),
    ] {
        let worn = (side == Side::Right).then_some((0.85, -0.38));
        let drawing = (Picture::Shaft { flange: true, spline: true, taper: false }, worn);
        let shaft = bench.part(
            name,
            (garage.rear, garage.rack),
            drawing,
            vec![Change::Side(side), if worn.is_some() { SCRAP } else { DOUBTFUL }, SAFETY, Change::Mass(Mass(4_600))],
        )?;
        bench.note(shaft, found);
        let mut quotes = vec![
            by(Route::Donor).own(60).fails(15).chance_is(Certainty::About).strip(90).lasts(120),
            buy(SLOE, 112_00).freight(12_00).fails(3).strip(90).is(Correctness::Pattern).waits(14),
        ];
        if side == Side::Left {
            quotes.push(
                by(Route::SendOut)
                    .from("Pennock Machine Shop")
                    .cash(22_00)
                    .freight(8_00)
                    .own(30)
                    .fails(5)
                    .strip(90)
                    .remark("Sleeve for the seal")
                    .taken(),
            );
        }
        bench.quotes(shaft, quotes);
    }
    for (name, side) in [("Half shaft bearing, left", Side::Left), ("Half shaft bearing, right", Side::Right)] {
        let bearing = bench.part(
            name,
            (garage.rear, garage.box_12),
            (Picture::Bearing { rollers: 11 }, Some((0.1, 0.55))),
            vec![Change::Side(side), SCRAP],
        )?;
        bench.note(bearing, "Pulled off through its balls: scrap whatever it looks like.");
        bench.quotes(
            bearing,
            vec![buy(KETTLEBY, 27_60).freight(3_50).fails(2).strip(90).lasts(180).taken(), again(10, 70).strip(90)],
        );
    }
    Ok(())
}

fn drive(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let here = (garage.rear, garage.box_12);
    let cover = bench.part(
        "Axle cover",
        (garage.rear, garage.floor),
        (Picture::Cover { bolts: 10 }, Some((-0.2, 0.58))),
        vec![DOUBTFUL],
    )?;
    bench.note(cover, "Dented by a jack, thread of the filler plug gone.");
    bench.quotes(
        cover,
        vec![
            by(Route::RepairHere).cash(9_50).own(75).own_is(Certainty::About).fails(10).strip(40).taken(),
            by(Route::Donor).own(45).fails(5).strip(40),
            buy("Marsh End Autojumble", 35_00)
                .cash_is(Certainty::WildGuess)
                .fails(10)
                .strip(40)
                .is(Correctness::Original),
        ],
    );
    let gasket = bench.part("Gasket, axle cover", here, (Picture::Gasket { bolts: 10 }, None), vec![ONCE, SCRAP])?;
    let seals = bench.part("Half shaft seals", here, (Picture::Seal, None), vec![Change::Quantity(2), ONCE, SCRAP])?;
    let pinion = bench.part("Pinion oil seal", here, (Picture::Seal, Some((0.45, 0.35))), vec![ONCE, SCRAP])?;
    for (part, pence) in [(gasket, 4_10), (seals, 11_80), (pinion, 6_90)] {
        bench.quotes(part, vec![buy(SLOE, pence).fails(3).strip(120).lasts(96)]);
    }
    let kit =
        by(Route::Kit).from(SLOE).cash(19_50).own(15).fails(3).strip(120).lasts(96).remark("Axle seal and gasket kit");
    let kit = bench.quotes(gasket, vec![kit])[0];
    for (part, pieces) in [(gasket, 1), (seals, 2), (pinion, 1)] {
        bench.covers(kit, part, pieces);
    }
    for part in [gasket, seals, pinion] {
        bench.choose(kit, part);
    }

    let gears = bench.part(
        "Crown wheel and pinion",
        (garage.rear, garage.rack),
        (Picture::CrownWheel { teeth: 37 }, Some((-0.9, -0.3))),
        vec![DOUBTFUL, Change::CastingNumber("37/8, pair 412".into()), Change::Mass(Mass(7_900))],
    )?;
    bench.picture(
        gears,
        Moment::Before,
        (Picture::CrownWheel { teeth: 37 }, None),
        "Contact pattern taken, backlash 0.35 mm",
    )?;
    bench.note(gears, "Two teeth chipped at the heel. Pair numbers agree.");
    bench.quotes(
        gears,
        vec![
            again(60, 30).chance_is(Certainty::WildGuess).strip(300).lasts(72).life_is(Certainty::WildGuess),
            by(Route::Donor)
                .own(240)
                .own_is(Certainty::About)
                .fails(15)
                .chance_is(Certainty::About)
                .strip(300)
                .lasts(120),
            by(Route::Buy)
                .from("Ferrand & Fils")
                .euros(395_00, 860_000)
                .duty(19_75)
                .own(60)
                .fails(5)
                .strip(300)
                .is(Correctness::NewOldStock)
                .waits(35),
        ],
    );
    let bearing = bench.part("Pinion bearing", here, (Picture::Bearing { rollers: 15 }, None), vec![GOOD])?;
    bench.quotes(
        bearing,
        vec![
            again(20, 12).chance_is(Certainty::Starting).strip(300).lasts(96).life_is(Certainty::Starting),
            buy(KETTLEBY, 34_50).freight(3_50).fails(2).strip(300).lasts(180),
        ],
    );
    let shims = bench.part(
        "Shims, pinion depth",
        (garage.rear, garage.bag_12a),
        (Picture::Shims { pieces: 2 }, None),
        vec![Change::Quantity(2), GOOD],
    )?;
    bench.quotes(shims, vec![again(5, 10).strip(120).taken()]);
    bench.joint(
        cover,
        (garage.rear, garage.bag_12a),
        "Cover to axle case",
        "12a-2",
        &[
            piece("Set screw", 10, "5/16 in UNF × 5/8"),
            piece("Spring washer", 10, "5/16 in"),
            piece("Tag: axle ratio", 1, "37/8"),
        ],
    );
    let cotters = bench.part(
        "Castle nuts, half shafts",
        (garage.rear, garage.bag_12a),
        (Picture::CastleNut, None),
        vec![Change::Quantity(2), GOOD, SAFETY],
    )?;
    bench.quotes(cotters, vec![again(15, 4).strip(40).taken(), buy(SLOE, 12_00).fails(1).strip(40)]);
    Ok(())
}

/// What is still on the donor, and may be wanted.
fn donor(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let still_on = || vec![Change::Off(false)];
    let place = (garage.donor_rear, garage.yard);
    let gears =
        bench.part("Crown wheel and pinion, donor", place, (Picture::CrownWheel { teeth: 37 }, None), still_on())?;
    bench.note(gears, "Seen through the filler: teeth bright, no chip.");
    bench.part(
        "Half shaft, donor, right",
        place,
        (Picture::Shaft { flange: true, spline: true, taper: false }, None),
        still_on(),
    )?;
    bench.picture(garage.yard, Moment::Off, (Picture::Shelf, None), "What lies where, October")?;
    Ok(())
}
