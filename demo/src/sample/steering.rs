//! The steering, taken apart the week after the hub.

use asfound_core::job::Change;
use asfound_core::job::vocabulary::{Certainty, Check, Correctness, Moment, Route, Shape, Shot, Side, Triage};
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
const OTTERY: &str = "Ottery Lane Steering";
const KETTLEBY: &str = "Kettleby Bearings";

pub(super) fn strip(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    bench.day("2026-09-19T09:15:00Z");
    linkage(bench, garage)?;
    case(bench, garage)?;
    shafts(bench, garage)?;
    wheel(bench, garage)
}

fn linkage(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let here = (garage.steering, garage.box_9);
    let play = vec![
        Change::Assembly(garage.steering),
        Change::Check(Check::FreePlay),
        Change::Text("55 mm at the rim of the steering wheel before the road wheel moves.".into()),
    ];
    bench.create(Kind::Before, play);
    let link = bench.part(
        "Drag link",
        (garage.steering, garage.hook),
        (Picture::Link { bent: true }, Some((0.0, 0.17))),
        vec![DOUBTFUL, SAFETY, Change::Mass(Mass(1_850))],
    )?;
    let shot = bench.picture(
        link,
        Moment::Before,
        (Picture::Link { bent: true }, None),
        "Below the left wing, bow to the ground",
    )?;
    bench.mark(shot, Shape::Ring, (0.0, 0.12));
    bench.note(link, "Bent 6 mm over its length. Not to be straightened: safety.");
    bench.quotes(
        link,
        vec![
            by(Route::Donor).own(75).fails(15).chance_is(Certainty::About).strip(60).taken(),
            buy(SLOE, 74_00).freight(8_50).fails(4).strip(60).is(Correctness::Pattern),
            by(Route::RepairHere).own(60).fails(30).strip(60).remark("Straighten cold"),
        ],
    );
    for (name, side) in [("Track-rod end, left", Side::Left), ("Track-rod end, right", Side::Right)] {
        let side = Change::Side(side);
        let end = bench.part(name, here, (Picture::BallJoint, Some((0.42, 0.42))), vec![side, SCRAP, SAFETY])?;
        bench.note(end, "Boot split, play felt.");
        bench.quotes(
            end,
            vec![
                buy(SLOE, 21_00).fails(6).strip(50).is(Correctness::Pattern).lasts(96).waits(3),
                buy("Marsh End Autojumble", 28_00)
                    .cash_between(20_00, 40_00)
                    .fails(10)
                    .strip(50)
                    .is(Correctness::NewOldStock)
                    .lasts(150)
                    .taken(),
                buy("Hatchet Lane Fasteners", 17_00).fails(5).strip(50).is(Correctness::Uprated).lasts(120),
            ],
        );
    }
    let arm = bench.part(
        "Drop arm",
        here,
        (Picture::Lever { eyes: 2 }, None),
        vec![GOOD, SAFETY, Change::CastingNumber("T57-204".into()), Change::Mass(Mass(1_200))],
    )?;
    let shot =
        bench.picture(arm, Moment::Off, (Picture::Lever { eyes: 2 }, None), "Index mark: two dots on arm and shaft")?;
    bench.say(shot.id, vec![Change::Shot(Shot::IndexMark)]);
    bench.mark(shot, Shape::Arrow, (-0.5, 0.4));
    bench.quotes(arm, vec![again(30, 4).strip(60).taken(), by(Route::Donor).own(60).fails(6).strip(60)]);
    let nut = bench.part(
        "Drop arm nut and tab washer",
        here,
        (Picture::Washer { tab: true }, None),
        vec![ONCE, SAFETY, SCRAP],
    )?;
    bench.quotes(nut, vec![buy(SLOE, 4_60).fails(1).strip(30).taken()]);
    bench.joint(
        arm,
        here,
        "Drop arm to rocker shaft",
        "09-1",
        &[piece("Nut", 1, "7/8 in UNF"), piece("Tab washer", 1, "7/8 in")],
    );
    Ok(())
}

fn case(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let here = (garage.steering, garage.box_9);
    let steering = bench.part(
        "Steering box",
        (garage.steering, garage.floor),
        (Picture::SteeringBox, Some((-0.5, 0.3))),
        vec![
            DOUBTFUL,
            SAFETY,
            Change::Mass(Mass(6_800)),
            Change::CastingNumber("SB 4-57".into()),
            Change::Material("malleable iron".into()),
        ],
    )?;
    let shot =
        bench.picture(steering, Moment::Before, (Picture::SteeringBox, None), "On the frame, oil below the cover")?;
    bench.mark(shot, Shape::Arrow, (-0.4, 0.35));
    bench.note(steering, "Case sound, face of the cover weeps. Worm pitted in the middle inch.");
    bench.quotes(
        steering,
        vec![
            by(Route::Exchange)
                .from(OTTERY)
                .cash(145_00)
                .tax(29_00)
                .freight(18_00)
                .surcharge(60_00, 15)
                .own(50)
                .fails(5)
                .strip(180)
                .lasts(180)
                .waits(7),
            by(Route::SendOut)
                .from(OTTERY)
                .cash(128_00)
                .cash_is(Certainty::About)
                .cash_between(110_00, 210_00)
                .freight(18_00)
                .own(50)
                .fails(6)
                .strip(180)
                .lasts(180)
                .waits(35),
            by(Route::Donor)
                .own(150)
                .fails(45)
                .chance_is(Certainty::WildGuess)
                .strip(180)
                .lasts(60)
                .life_is(Certainty::WildGuess),
            by(Route::RepairHere).cash(62_00).own(420).own_is(Certainty::WildGuess).fails(25).strip(180),
        ],
    );
    let cover =
        bench.part("Top cover, steering box", here, (Picture::Cover { bolts: 6 }, Some((0.5, 0.3))), vec![DOUBTFUL])?;
    bench.note(cover, "Face bowed 0.15 mm over the straight edge.");
    bench.quotes(
        cover,
        vec![
            by(Route::RepairHere).own(40).uses_up(1_20).fails(8).strip(45).taken(),
            by(Route::Donor).own(30).fails(12).strip(45),
            by(Route::SendOut)
                .from("Pennock Machine Shop")
                .cash(16_00)
                .freight(6_00)
                .own(15)
                .fails(2)
                .strip(45)
                .waits(10),
        ],
    );
    let gasket = bench.part("Gasket, top cover", here, (Picture::Gasket { bolts: 6 }, None), vec![ONCE, SCRAP])?;
    bench.quotes(
        gasket,
        vec![
            by(Route::RepairHere)
                .own(25)
                .uses_up(60)
                .fails(10)
                .strip(30)
                .is(Correctness::HomeMade)
                .remark("Cut from sheet"),
            buy(SLOE, 3_20).fails(3).strip(30).taken(),
        ],
    );
    let shims =
        bench.part("Shims, top cover", here, (Picture::Shims { pieces: 4 }, None), vec![Change::Quantity(4), GOOD])?;
    bench.note(shims, "0.05, 0.10, 0.10 and 0.25 mm. They set the mesh: tied together as they came.");
    bench.quotes(shims, vec![again(10, 5).strip(45).taken(), buy(SLOE, 7_90).fails(5).strip(45)]);
    bench.joint(
        cover,
        here,
        "Cover to steering box",
        "09-2",
        &[
            piece("Set screw", 6, "1/4 in UNF × 3/4"),
            piece("Spring washer", 6, "1/4 in"),
            piece("Shim", 1, "0.25 mm").thick(250),
            piece("Shim", 2, "0.10 mm").thick(100),
            piece("Shim", 1, "0.05 mm").thick(50),
        ],
    );
    Ok(())
}

fn shafts(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let here = (garage.steering, garage.box_9);
    let worm = Picture::Shaft { flange: false, spline: true, taper: false };
    let worm = bench.part(
        "Worm and inner column",
        (garage.steering, garage.hook),
        (worm, Some((-0.3, 0.06))),
        vec![SCRAP, SAFETY],
    )?;
    bench.note(worm, "Pitted over the middle inch, where it runs straight ahead.");
    bench.quotes(
        worm,
        vec![
            by(Route::Donor).own(120).fails(35).chance_is(Certainty::WildGuess).strip(180),
            by(Route::Buy)
                .from("Ferrand & Fils")
                .euros(210_00, 860_000)
                .duty(10_50)
                .own(20)
                .fails(4)
                .strip(180)
                .is(Correctness::NewOldStock)
                .waits(28),
        ],
    );
    let races = bench.part(
        "Worm bearings",
        here,
        (Picture::Bearing { rollers: 12 }, Some((0.0, -0.6))),
        vec![Change::Quantity(2), SCRAP],
    )?;
    bench.quotes(races, vec![buy(KETTLEBY, 22_80).fails(2).strip(180).lasts(240).taken(), again(20, 50).strip(180)]);
    let rocker = Picture::Shaft { flange: false, spline: true, taper: true };
    let rocker = bench.part("Rocker shaft", here, (rocker, None), vec![DOUBTFUL, SAFETY])?;
    bench.note(rocker, "Wear just felt by nail at the bush. Splines straight.");
    bench.quotes(
        rocker,
        vec![again(30, 15).chance_is(Certainty::About).strip(180), by(Route::Donor).own(90).fails(25).strip(180)],
    );
    let bush = bench.part("Rocker shaft bush", here, (Picture::Bushes { pieces: 1 }, None), vec![SCRAP])?;
    bench.quotes(
        bush,
        vec![
            buy(SLOE, 12_60).own(45).fails(4).strip(180).taken(),
            by(Route::RepairHere)
                .cash(6_00)
                .own(110)
                .own_is(Certainty::About)
                .fails(10)
                .strip(180)
                .is(Correctness::HomeMade),
        ],
    );
    let seal = bench.part("Oil seal, rocker shaft", here, (Picture::Seal, None), vec![ONCE, SCRAP])?;
    bench.quotes(seal, vec![buy(KETTLEBY, 3_90).fails(3).strip(60).lasts(96).taken()]);
    Ok(())
}

fn wheel(bench: &mut Bench, garage: &Garage) -> anyhow::Result<()> {
    let here = (garage.steering, garage.drawer);
    let only = Change::CannotBeBought(true);
    let wheel = bench.part(
        "Steering wheel",
        (garage.steering, garage.hook),
        (Picture::SteeringWheel { spokes: 3 }, Some((0.63, -0.47))),
        vec![only.clone(), DOUBTFUL, SAFETY],
    )?;
    let shot = bench.picture(
        wheel,
        Moment::After,
        (Picture::SteeringWheel { spokes: 3 }, Some((0.63, -0.47))),
        "The crack, after washing",
    )?;
    bench.mark(shot, Shape::Ring, (0.63, -0.47));
    bench.note(wheel, "One crack in the rim, at two o'clock, to the core. None has been offered in two years.");
    bench.quotes(
        wheel,
        vec![
            by(Route::Irreplaceable)
                .own(60)
                .uses_up(8_00)
                .fails(5)
                .remark("Wrapped, hung, crack left as found")
                .taken(),
            by(Route::SendOut)
                .from("Nan Orchard, rims and grips")
                .cash(165_00)
                .freight(22_00)
                .own(30)
                .fails(8)
                .chance_is(Certainty::About)
                .waits(60),
            buy("Hatchet Lane Fasteners", 88_00).fails(5).is(Correctness::Uprated),
        ],
    );
    let cap = bench.part("Horn push with badge", here, (Picture::HornCap, None), vec![only, GOOD])?;
    bench.note(cap, "Badge unfaded below the rim. Goes into the house.");
    bench.quotes(cap, vec![by(Route::Irreplaceable).own(20).fails(2).taken(), again(20, 6)]);
    Ok(())
}
