//! The front hub on the left, taken apart in September.

use asfound_core::job::Change;
use asfound_core::job::vocabulary::{Certainty, Check, Correctness, Moment, Route, Shape, Side, Triage};
use asfound_core::quantity::Mass;
use asfound_core::record::{Id, Kind};

use super::bench::{Bench, piece};
use super::garage::Garage;
use super::picture::Picture;
use super::quote::{again, buy, by, pounds};

const GOOD: Change = Change::Triage(Triage::LooksGood);
const DOUBTFUL: Change = Change::Triage(Triage::Doubtful);
const SCRAP: Change = Change::Triage(Triage::Scrap);
const SAFETY: Change = Change::SafetyCritical(true);
const ONCE: Change = Change::SingleUse(true);
const LEFT: Change = Change::Side(Side::Left);
const SLOE: &str = "Sloe Hill Spares";
const KETTLEBY: &str = "Kettleby Bearings";
const TARN: &str = "Bramble & Tarn, brake linings";

pub(super) fn strip(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-09-05T09:00:00Z");
    before(bench, garage)?;
    bearings(bench, garage)?;
    brakes(bench, garage)?;
    swivel(bench, garage)
}

fn before(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let looked =
        |check, text: &str| vec![Change::Assembly(garage.hub), Change::Check(check), Change::Text(text.into())];
    bench.create(Kind::Before, looked(Check::Height, "Wheel arch to hub centre 342 mm left, 346 mm right."));
    bench.create(
        Kind::Before,
        looked(Check::FreePlay, "Rock at the wheel, brake held: about 2 mm at the rim, top and bottom."),
    );
    bench.create(Kind::Before, looked(Check::TightFasteners, "Hub nut cracked with the wheel on the ground."));
    let drum = Picture::Drum { holes: 5 };
    bench.picture(garage.hub, Moment::Before, (drum, None), "As found, wheel off")?;
    bench.picture(
        garage.front,
        Moment::Before,
        (Picture::LeafSpring { leaves: 5 }, None),
        "Front axle from the left",
    )?;
    Ok(())
}

fn bearings(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let here = (garage.hub, garage.box_7);
    let cap = bench.part("Grease cap", here, (Picture::GreaseCap, Some((0.42, 0.34))), vec![LEFT, DOUBTFUL])?;
    bench.note(cap, "Rim bruised by a chisel. Holds its grease.");
    bench.quotes(cap, vec![again(20, 4).strip(5).taken(), buy(SLOE, 6_50).is(Correctness::FaithfulReproduction)]);

    let pin = Picture::Pins { pieces: 1, cotter: true };
    let split =
        bench.part("Split pin, hub nut", (garage.hub, garage.bag_7a), (pin, None), vec![LEFT, ONCE, SAFETY, SCRAP])?;
    bench.quotes(split, vec![again(2, 30).strip(30), buy(SLOE, 40).fails(0).taken()]);

    let nut = bench.part("Hub nut", here, (Picture::CastleNut, Some((0.5, -0.3))), vec![LEFT, DOUBTFUL, SAFETY])?;
    bench.note(nut, "Two corners rounded, thread clean. Somebody used a chisel.");
    bench.quotes(
        nut,
        vec![
            again(25, 8).strip(40),
            buy(SLOE, 9_80).freight(2_40).taken(),
            by(Route::Donor).own(40).fails(10).strip(40),
        ],
    );

    let washer = bench.part("Thrust washer", here, (Picture::Washer { tab: true }, None), vec![LEFT, GOOD])?;
    bench.quotes(washer, vec![again(5, 2).strip(40).taken(), buy(SLOE, 3_10)]);

    let outer = bench.part(
        "Outer wheel bearing",
        here,
        (Picture::Bearing { rollers: 13 }, Some((0.52, 0.2))),
        vec![LEFT, DOUBTFUL, Change::MakersNumber("KB 30-62 T".into())],
    )?;
    bench.note(outer, "One roller with a line of rust stain. Runs rough by hand after washing.");
    bench.quotes(
        outer,
        vec![
            again(25, 35).chance_is(Certainty::About).strip(100),
            buy(KETTLEBY, 18_40).freight(3_50).fails(2).strip(100).lasts(180).waits(4).taken(),
            buy("Marsh End Autojumble", 6_00)
                .cash_is(Certainty::About)
                .fails(20)
                .strip(100)
                .is(Correctness::NewOldStock)
                .lasts(96),
        ],
    );

    let drum = bench.part(
        "Brake drum, front",
        (garage.hub, garage.floor),
        (Picture::Drum { holes: 5 }, Some((-0.55, 0.1))),
        vec![LEFT, DOUBTFUL, SAFETY, Change::Mass(Mass(5_400)), Change::Material("cast iron".into())],
    )?;
    let found =
        bench.picture(drum, Moment::After, (Picture::Drum { holes: 5 }, Some((-0.55, 0.1))), "After wire brushing")?;
    bench.mark(found, Shape::Ring, (-0.55, 0.1));
    bench.note(drum, "Lip of 0.6 mm, two deep scores. 229.1 mm at the worst place; no limit marked.");
    bench.quotes(
        drum,
        vec![
            buy(SLOE, 68_00).freight(9_50).tax(15_50).fails(4).strip(45).is(Correctness::Pattern),
            by(Route::SendOut)
                .from("Pennock Machine Shop")
                .cash(24_00)
                .freight(8_00)
                .own(40)
                .fails(15)
                .chance_is(Certainty::About)
                .strip(45)
                .at_bench()
                .else_as(0)
                .lasts(120)
                .waits(10),
            by(Route::Donor).own(60).own_between(40, 110).fails(40).fails_between(25, 60).strip(45).lasts(72),
        ],
    );

    let hub = bench.part(
        "Front hub",
        here,
        (Picture::Hub { studs: 5 }, None),
        vec![LEFT, GOOD, SAFETY, Change::Mass(Mass(2_900)), Change::CastingNumber("T57-118".into())],
    )?;
    let shot = bench.picture(hub, Moment::Before, (Picture::Hub { studs: 5 }, None), "Drum off")?;
    bench.mark(shot, Shape::Arrow, (0.12, -0.44));
    bench.note(hub, "Bearing seats bright, no spin marks. Three stud holes punched with one dot.");
    bench.quotes(
        hub,
        vec![
            again(45, 3).strip(120).taken(),
            by(Route::Donor).own(90).fails(12).strip(120),
            by(Route::Buy)
                .from("Ferrand & Fils")
                .own(10)
                .euros(64_00, 860_000)
                .duty(3_20)
                .freight(11_00)
                .fails(4)
                .strip(120)
                .is(Correctness::NewOldStock)
                .waits(21)
                .remark("Price in euros, rate of 20 September"),
        ],
    );

    let inner = bench.part(
        "Inner wheel bearing",
        here,
        (Picture::Bearing { rollers: 16 }, None),
        vec![LEFT, GOOD, Change::MakersNumber("KB 35-72 T".into())],
    )?;
    bench.note(inner, "Tracks and rollers unmarked, cage sound. Cup left in the hub.");
    bench.quotes(
        inner,
        vec![
            again(25, 10).chance_is(Certainty::About).strip(100).lasts(96),
            buy(KETTLEBY, 24_70).freight(3_50).fails(2).strip(100).lasts(180).waits(4).taken(),
        ],
    );

    let studs = bench.part(
        "Wheel studs",
        (garage.hub, garage.bag_7a),
        (Picture::Bolts { pieces: 5 }, Some((0.5, 0.35))),
        vec![LEFT, Change::Quantity(5), DOUBTFUL, SAFETY],
    )?;
    bench.note(studs, "One stretched: the gauge drops between threads.");
    bench.quotes(
        studs,
        vec![
            buy(SLOE, 16_50).fails(3).strip(60).taken(),
            again(20, 30).strip(60),
            buy("Hatchet Lane Fasteners", 9_00).fails(12).strip(60).is(Correctness::Uprated),
        ],
    );
    bench.joint(
        hub,
        (garage.hub, garage.bag_7a),
        "Hub to stub axle",
        "07a-1",
        &[
            piece("Split pin", 1, "1/8 in × 1 3/4"),
            piece("Castle nut", 1, "3/4 in UNF"),
            piece("Thrust washer, tab inwards", 1, "3/4 in"),
        ],
    );
    receipt(bench, outer, 43_10)
}

/// What both bearings and a tin of grease came to, over the counter.
fn receipt(bench: &mut Bench, part: Id, pence: i64) -> anyhow::Result<()> {
    let bought = vec![
        Change::Part(part),
        Change::Route(Route::Buy),
        Change::Cash(pounds(pence)),
        Change::From(KETTLEBY.into()),
        Change::Remark("Both bearings, pair price over the counter".into()),
        Change::Taken(bench.now()),
    ];
    let purchase = bench.create(Kind::Purchase, bought);
    bench.picture(purchase, Moment::After, (Picture::Receipt { minor: pence }, None), "Receipt")?;
    Ok(())
}

fn brakes(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let here = (garage.hub, garage.box_8);
    for (name, worn) in [("Brake shoe, leading", (-0.1, -0.36)), ("Brake shoe, trailing", (-0.13, 0.3))] {
        let shoe = bench.part(name, here, (Picture::Shoe { pieces: 1 }, Some(worn)), vec![LEFT, SCRAP, SAFETY])?;
        bench.note(shoe, "Lining down to the rivets at one end, oil on it. May hold asbestos: kept wet and bagged.");
        bench.quotes(
            shoe,
            vec![
                by(Route::SendOut)
                    .from(TARN)
                    .cash(11_00)
                    .freight(2_50)
                    .own(15)
                    .fails(3)
                    .strip(90)
                    .lasts(120)
                    .waits(12)
                    .taken(),
                by(Route::Exchange)
                    .from(SLOE)
                    .cash(14_00)
                    .surcharge(8_00, 10)
                    .own(20)
                    .fails(6)
                    .strip(90)
                    .lasts(96)
                    .waits(5),
                buy(SLOE, 19_50).fails(10).strip(90).is(Correctness::Pattern).lasts(72),
            ],
        );
    }
    let springs = bench.part(
        "Pull-off springs",
        here,
        (Picture::CoilSprings { pieces: 2 }, None),
        vec![LEFT, Change::Quantity(2), GOOD],
    )?;
    bench.quotes(springs, vec![again(10, 8).strip(60), buy(SLOE, 5_20).fails(2).strip(60).taken()]);

    for name in ["Wheel cylinder, upper", "Wheel cylinder, lower"] {
        let cylinder =
            bench.part(name, here, (Picture::WheelCylinder, Some((-0.45, 0.1))), vec![LEFT, DOUBTFUL, SAFETY])?;
        bench.note(cylinder, "Piston free, bore with three pits by the open end. 22.2 mm.");
        bench.quotes(
            cylinder,
            vec![
                by(Route::RepairHere).cash(4_60).own(60).own_is(Certainty::About).fails(25).strip(75),
                by(Route::SendOut)
                    .from(TARN)
                    .cash(38_00)
                    .freight(4_00)
                    .own(20)
                    .fails(3)
                    .strip(75)
                    .lasts(240)
                    .waits(20)
                    .remark("Stainless sleeve, new seals"),
                buy(SLOE, 29_00).fails(8).strip(75).is(Correctness::Pattern).lasts(96).waits(3),
                by(Route::Exchange)
                    .from("Ottery Hydraulics")
                    .cash(34_00)
                    .surcharge(15_00, 20)
                    .own(15)
                    .fails(4)
                    .strip(75)
                    .lasts(120)
                    .until("2026-10-31"),
            ],
        );
    }

    let plate = bench.part(
        "Backplate, front",
        (garage.hub, garage.floor),
        (Picture::Backplate { holes: 4 }, Some((0.6, 0.42))),
        vec![LEFT, DOUBTFUL, Change::Mass(Mass(2_100))],
    )?;
    bench.note(plate, "Rusted through beside one shoe rest, the size of a thumb. The rest stands proud and square.");
    bench.quotes(
        plate,
        vec![
            by(Route::RepairHere)
                .cash(18_00)
                .own(120)
                .own_is(Certainty::About)
                .own_between(90, 240)
                .fails(25)
                .chance_is(Certainty::About)
                .strip(90),
            buy(SLOE, 88_00).until("2030-12-31").waits(7).is(Correctness::FaithfulReproduction),
            by(Route::Donor).cash(30_00).own(150).fails(30).strip(90).chance_is(Certainty::WildGuess),
        ],
    );

    let hose = bench.part("Brake hose", here, (Picture::Hose, None), vec![LEFT, ONCE, SAFETY, SCRAP])?;
    bench.note(hose, "Cracked all round at the lower end.");
    bench.quotes(hose, vec![buy(SLOE, 13_40).fails(2).strip(45).lasts(120).taken(), again(5, 60).strip(45)]);
    Ok(())
}

fn swivel(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-09-12T09:30:00Z");
    let here = (garage.hub, garage.box_9);
    let stub = Picture::Shaft { flange: true, spline: false, taper: true };
    let stub = bench.part(
        "Stub axle",
        here,
        (stub, None),
        vec![LEFT, GOOD, SAFETY, Change::Mass(Mass(3_700)), Change::Material("forged steel".into())],
    )?;
    bench.note(stub, "No step under either bearing. To be crack tested on bare metal before anything else.");
    bench.quotes(
        stub,
        vec![
            by(Route::SendOut)
                .from("Pennock Machine Shop")
                .cash(25_00)
                .freight(8_00)
                .own(50)
                .fails(6)
                .at_bench()
                .strip(60)
                .waits(14)
                .remark("Crack test and cleaning")
                .taken(),
            by(Route::Donor).own(120).fails(10).strip(60),
            by(Route::Buy)
                .from("Ferrand & Fils")
                .own(10)
                .euros(148_00, 860_000)
                .duty(7_40)
                .fails(2)
                .strip(60)
                .is(Correctness::NewOldStock),
        ],
    );

    let pin = bench.part(
        "King pin",
        here,
        (Picture::Pins { pieces: 1, cotter: false }, Some((0.4, -0.02))),
        vec![LEFT, SCRAP, SAFETY],
    )?;
    bench.note(pin, "Rock felt by hand. 19.02 mm unworn, 18.84 mm where the lower bush ran.");
    let bushes = bench.part(
        "King pin bushes",
        here,
        (Picture::Bushes { pieces: 2 }, None),
        vec![LEFT, Change::Quantity(2), SCRAP],
    )?;
    let thrust =
        bench.part("Thrust bearing, king pin", here, (Picture::Bearing { rollers: 18 }, None), vec![LEFT, DOUBTFUL])?;
    let cotter = bench.part(
        "King pin cotter",
        (garage.hub, garage.bag_7a),
        (Picture::Pins { pieces: 1, cotter: false }, Some((-0.3, 0.1))),
        vec![LEFT, SCRAP, SAFETY],
    )?;
    let seal = bench.part("Grease seal, hub", here, (Picture::Seal, None), vec![LEFT, ONCE, SCRAP])?;
    bench.note(bushes, "Upper oval, lower scored. They want reaming when new ones are in.");

    let singles = [(pin, 31_00), (bushes, 16_40), (thrust, 14_90), (cotter, 4_20), (seal, 6_80)];
    for (part, pence) in singles {
        bench.quotes(part, vec![buy(SLOE, pence).fails(3).strip(150).lasts(180)]);
    }
    bench.quotes(thrust, vec![again(15, 35).strip(150)]);
    let kit = by(Route::Kit).from(SLOE).cash(52_00).freight(2_50).own(10).fails(3).strip(150).lasts(180).waits(5);
    let kit = bench.quotes(pin, vec![kit.remark("Swivel overhaul kit, one side")])[0];
    for (part, pieces) in [(pin, 1), (bushes, 2), (thrust, 1), (cotter, 1), (seal, 1)] {
        bench.covers(kit, part, pieces);
    }
    for part in [pin, bushes, cotter, seal] {
        bench.choose(kit, part);
    }

    let shims = bench.part(
        "Shims, king pin",
        (garage.hub, garage.bag_7a),
        (Picture::Shims { pieces: 3 }, None),
        vec![LEFT, Change::Quantity(3), GOOD],
    )?;
    bench.note(shims, "Two of 0.25 and one of 0.13 mm, all above the axle eye.");
    bench.quotes(shims, vec![again(5, 2).strip(60).taken()]);
    bench.joint(
        pin,
        (garage.hub, garage.bag_7a),
        "Swivel to axle beam",
        "07a-2",
        &[
            piece("Cotter nut", 1, "5/16 in UNF"),
            piece("Spring washer", 1, "5/16 in"),
            piece("Shim", 2, "0.25 mm").thick(250),
            piece("Shim, thin", 1, "0.13 mm").thick(130),
        ],
    );
    Ok(())
}
