//! Some of the parts looked over and measured, once they were clean. The manual and its pages are invented like the rest.

use anyhow::{Context as _, anyhow};
use asfound_core::job::vocabulary::Side;
use asfound_core::job::{Change, Command};
use asfound_core::record::{Id, Kind};
use asfound_core::tables::features::{LimitKind, LimitSource};

use super::bench::Bench;

const MICROMETRE: i64 = 1_000;

pub(super) fn judge(bench: &mut Bench) -> anyhow::Result<()> {
    bench.day("2026-10-10T10:00:00Z");
    let gauge = instrument(bench, "Bore gauge", 10, 20);
    let micrometer = instrument(bench, "Micrometer", 10, 4);
    drums(bench, gauge)?;
    springs(bench)?;
    bearings(bench)?;
    king_pin(bench, micrometer)?;
    for seal in ["Grease seal, hub", "Half shaft seals", "Pinion oil seal", "Gasket, axle cover"] {
        let seal = named(bench, seal, None)?;
        bench.say(seal, vec![Change::Family("seal".into())]);
    }
    Ok(())
}

/// The part of a name, on a side where there are two.
fn named(bench: &Bench, name: &str, side: Option<Side>) -> anyhow::Result<Id> {
    let is = |changes: &[Change]| {
        changes.contains(&Change::Name(name.into())) && side.is_none_or(|side| changes.contains(&Change::Side(side)))
    };
    let mut created = bench.commands.iter().filter_map(|(_, command)| part_of(command));
    created.find(|(_, changes)| is(changes)).map(|(id, _)| id).with_context(|| anyhow!("no part is named {name}"))
}

/// What a command says of a new part, which may come with its photo.
fn part_of(command: &Command) -> Option<(Id, &[Change])> {
    match command {
        Command::Create { id, kind: Kind::Part, changes } => Some((*id, changes)),
        Command::All { commands } => commands.iter().find_map(part_of),
        _ => None,
    }
}

fn instrument(bench: &mut Bench, name: &str, step: i64, uncertainty: i64) -> Id {
    bench.create(
        Kind::Instrument,
        vec![
            Change::Name(name.into()),
            Change::Resolution(step * MICROMETRE),
            Change::Uncertainty(uncertainty * MICROMETRE),
        ],
    )
}

/// A family, and the answers to its questions.
fn found(bench: &mut Bench, part: Id, family: &str, answers: &[(&str, &str)]) {
    bench.say(part, vec![Change::Family(family.into())]);
    for (question, outcome) in answers {
        let taken = bench.now();
        bench.create(
            Kind::Finding,
            vec![
                Change::Of(part),
                Change::Question((*question).into()),
                Change::Outcome((*outcome).into()),
                Change::Taken(taken),
            ],
        );
    }
}

fn read(bench: &mut Bench, part: Id, feature: &str, instrument: Id, readings: &[(&str, i64)]) {
    for (spot, micrometres) in readings {
        let taken = bench.now();
        bench.create(
            Kind::Reading,
            vec![
                Change::Of(part),
                Change::Feature(feature.into()),
                Change::Spot((*spot).into()),
                Change::Measured(micrometres * MICROMETRE),
                Change::Instrument(instrument),
                Change::Taken(taken),
            ],
        );
    }
}

/// A greatest size by the manual, in micrometres: to be discarded, after machining, when new.
fn most(bench: &mut Bench, part: Id, feature: &str, [discard, machining, new]: [i64; 3], page: &str) {
    bench.create(
        Kind::Limit,
        vec![
            Change::Of(part),
            Change::Feature(feature.into()),
            Change::LimitKind(LimitKind::Maximum),
            Change::Most(discard * MICROMETRE),
            Change::MachiningMost(machining * MICROMETRE),
            Change::AsNew(new * MICROMETRE),
            Change::LimitSource(LimitSource::Manual),
            Change::Text(page.into()),
        ],
    );
}

fn drums(bench: &mut Bench, gauge: Id) -> anyhow::Result<()> {
    let front = named(bench, "Brake drum, front", None)?;
    let answers = [("cracks", "none"), ("scoring", "deep"), ("bell-mouth", "none"), ("lip", "lip")];
    found(bench, front, "brake-drum", &answers);
    most(bench, front, "drum-bore", [230_120, 229_360, 228_600], "page 61");
    read(bench, front, "drum-bore", gauge, &[("open edge", 228_960), ("bottom", 229_100), ("bottom", 229_090)]);
    let (left, right) =
        (named(bench, "Brake drum, rear", Some(Side::Left))?, named(bench, "Brake drum, rear", Some(Side::Right))?);
    let sound = [("cracks", "none"), ("scoring", "none"), ("bell-mouth", "none"), ("lip", "none")];
    found(bench, left, "brake-drum", &sound);
    most(bench, left, "drum-bore", [204_720, 203_960, 203_200], "page 88");
    read(bench, left, "drum-bore", gauge, &[("bottom", 203_400), ("open edge", 203_410)]);
    found(bench, right, "brake-drum", &[("cracks", "none"), ("scoring", "light"), ("bell-mouth", "none")]);
    read(bench, right, "drum-bore", gauge, &[("bottom", 203_900), ("open edge", 203_880)]);
    Ok(())
}

fn springs(bench: &mut Bench) -> anyhow::Result<()> {
    let (left, right) = (named(bench, "Leaf spring, left", None)?, named(bench, "Leaf spring, right", None)?);
    found(bench, left, "spring", &[("cracks", "none"), ("sag", "sags"), ("leaf", "broken"), ("eye", "round")]);
    let better = [("cracks", "none"), ("pits", "light"), ("sag", "level"), ("leaf", "whole"), ("eye", "round")];
    found(bench, right, "spring", &better);
    Ok(())
}

fn bearings(bench: &mut Bench) -> anyhow::Result<()> {
    let outer = named(bench, "Outer wheel bearing", None)?;
    found(bench, outer, "rolling-bearing", &[("spalls", "none"), ("track-rust", "stain"), ("dents", "at-pitch")]);
    let pinion = named(bench, "Pinion bearing", None)?;
    let answers =
        [("spalls", "none"), ("track-rust", "none"), ("dents", "faint"), ("cage", "sound"), ("runs", "quiet")];
    found(bench, pinion, "rolling-bearing", &answers);
    Ok(())
}

fn king_pin(bench: &mut Bench, micrometer: Id) -> anyhow::Result<()> {
    let pin = named(bench, "King pin", None)?;
    found(bench, pin, "pivot-pin", &[("rock", "rocks"), ("steps", "felt"), ("pits", "none")]);
    read(
        bench,
        pin,
        "pin-diameter",
        micrometer,
        &[("top, along", 22_180), ("top, across", 22_120), ("middle", 22_220)],
    );
    Ok(())
}
