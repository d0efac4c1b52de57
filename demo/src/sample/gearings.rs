//! The donor's longer axle and what it would do: before, after, and one more that is thought about.

use asfound_core::job::Change;
use asfound_core::job::vocabulary::Swap;
use asfound_core::record::Kind;

use super::bench::Bench;
use super::garage::Garage;

const GEARS: &str = "3.94, 2.30, 1.49, 1.00";
const CROSS_PLY: &str = "5.60-13";

/// Puts the gearings down.
pub(super) fn swap(bench: &mut Bench, garage: &Garage) {
    bench.day("2026-11-09T19:30:00Z");
    let mut gearing = |name: &str, swap, axle, tyre: &str, more: Vec<Change>| {
        let known = [
            Change::Name(name.into()),
            Change::Swap(swap),
            Change::Vehicle(garage.van),
            Change::AxleRatio(axle),
            Change::GearRatios(GEARS.into()),
            Change::Tyre(tyre.into()),
            Change::HighestTurns(4_800),
        ];
        bench.create(Kind::Gearing, known.into_iter().chain(more).collect());
    };
    let floor = Change::Circumference(1_862_000_000);
    let measured = Change::Remark("Tyre rolled on the garage floor, van on its wheels.".into());
    gearing("As found", Swap::Before, 42_200, CROSS_PLY, vec![floor.clone(), measured]);
    let donor = Change::Remark("10/37 is stamped on the donor's nose piece.".into());
    gearing("Axle from the pick-up", Swap::After, 37_000, CROSS_PLY, vec![floor, donor]);
    gearing("The same on radials", Swap::Candidate, 37_000, "165 R 13", Vec::new());
}
