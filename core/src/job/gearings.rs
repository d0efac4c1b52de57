use super::gearing_view::{GearRow, GearingChange, GearingLine, GearingTypedView, GearingView, RollingView};
use super::query::SpeedUnit;
use super::vocabulary::Swap;
use super::whole::Job;
use crate::gearing::{
    Drive, Drivetrain, LOADED_MORE_TURNS, Rolling, Speed, Tyre, engine_speed, more_turns, per_1000, read_ratios,
};
use crate::problem::{Code, Hint, Problem};
use crate::quantity::bounds::{self, Bound};
use crate::record::{FieldName, Id, Item, Kind, in_order};

/// The fastest that is asked about, in km/h.
const FASTEST: i32 = 2_000;

/// A gearing as far as it is known.
#[derive(Default)]
struct Known {
    tyre: Option<Tyre>,
    rolling: Option<Rolling>,
    drives: Vec<Drive>,
    axle: Option<f64>,
    needs: Vec<FieldName>,
    problems: Vec<Problem>,
}

impl Job {
    /// Gearings before and after a swap; `speed` is one at which the engine speed is asked.
    #[must_use]
    pub fn gearing_view(&self, speed: Option<f64>, unit: SpeedUnit) -> GearingView {
        let mut ids: Vec<Id> = self.standing_ids(Kind::Gearing).collect();
        self.sort_by_name(&mut ids);
        let ids = in_order(ids.into_iter().enumerate().collect(), |(at, id): &(usize, Id)| {
            (self.swap_of(*id).map_or(Swap::ALL.len(), |swap| swap as usize), *at)
        });
        let asked = speed.map(|speed| match unit {
            SpeedUnit::Mph => Speed::from_mph(speed),
            SpeedUnit::Kmh => Speed::from_kmh(speed),
        });
        let speed = asked.filter(|speed| speed.kmh() > 0.0 && speed.kmh() <= f64::from(FASTEST));
        let problems = match (asked, speed) {
            (Some(_), None) => {
                let problem = Problem::error(Code::OutOfBounds).value("what", "speed").hint(Hint::CorrectValue);
                vec![problem.value("least", 0).value("most", FASTEST)]
            }
            _ => Vec::new(),
        };
        let sets = ids.into_iter().filter_map(|(_, id)| self.gearing_line(id, speed)).collect();
        GearingView { sets, kmh: speed.map(Speed::kmh), problems }
    }

    fn swap_of(&self, gearing: Id) -> Option<Swap> {
        self.item(gearing)?.read(FieldName::Swap)
    }

    /// The gearing that another is compared with: the one before of the same vehicle, else one of no particular vehicle.
    fn before_of(&self, gearing: Id) -> Option<Id> {
        let vehicle = |id: Id| self.item(id).and_then(|item| item.read::<Id>(FieldName::Vehicle));
        let own = vehicle(gearing);
        let is_before = |id: &Id| *id != gearing && self.swap_of(*id) == Some(Swap::Before);
        let before: Vec<Id> = self.standing_ids(Kind::Gearing).filter(is_before).collect();
        let same = before.iter().find(|id| vehicle(**id) == own);
        let any = || before.iter().find(|id| own.is_none() || vehicle(**id).is_none());
        same.or_else(any).copied().filter(|_| self.swap_of(gearing) != Some(Swap::Before))
    }

    fn gearing_line(&self, id: Id, speed: Option<Speed>) -> Option<GearingLine> {
        let record = self.record_view(id)?;
        let known = known(id, self.item(id)?);
        let before = self.before_of(id).and_then(|before| Some((before, self.item(before)?)));
        let before = before.map(|(before, item)| (before, self::known(before, item)));
        let vehicle = record.values.vehicle.map(|vehicle| self.name(vehicle)).filter(|name| !name.is_empty());
        let highest = self.item(id)?.read(FieldName::HighestTurns).filter(|most| bounds::HIGHEST_TURNS.holds(*most));
        let against = before.as_ref().and_then(|(before, then)| change(*before, then, &known));
        let rows = rows(&known, before.as_ref().map(|(_, known)| known), speed, highest);
        let rolling = known.rolling.map(|rolling| rolling_view(rolling, known.tyre.as_ref()));
        let Known { tyre, needs, problems, .. } = known;
        Some(GearingLine { record, vehicle, tyre, rolling, rows, needs, problems, against })
    }
}

fn rows(known: &Known, before: Option<&Known>, speed: Option<Speed>, highest: Option<i64>) -> Vec<GearRow> {
    let Some(rolling) = known.rolling else { return Vec::new() };
    let top = top(known).map(|top| (top.gear, top.overdriven));
    let row = |drive: &Drive| {
        let per = per_1000(drive.overall, rolling);
        let same = |other: &&Drive| (other.gear, other.overdriven) == (drive.gear, drive.overdriven);
        let then = before.and_then(|before| Some((before.drives.iter().find(same)?.overall, before.rolling?)));
        GearRow {
            gear: drive.gear,
            overdriven: drive.overdriven,
            top: top == Some((drive.gear, drive.overdriven)),
            ratio: drive.ratio,
            overall: drive.overall,
            mph: per.mph(),
            kmh: per.kmh(),
            turns: speed.map(|speed| engine_speed(speed, drive.overall, rolling)),
            highest_kmh: highest.map(|most| per.kmh() * whole(most) / 1000.0),
            change: then.map(|then| more_turns(then, (drive.overall, rolling))),
        }
    };
    known.drives.iter().map(row).collect()
}

/// The drive in which the engine turns least.
fn top(known: &Known) -> Option<&Drive> {
    known.drives.iter().reduce(|best, drive| if drive.overall < best.overall { drive } else { best })
}

fn change(before: Id, then: &Known, now: &Known) -> Option<GearingChange> {
    let (old, new) = (then.rolling?, now.rolling?);
    let tops = top(then).zip(top(now));
    let wheel = more_turns((1.0, old), (1.0, new));
    Some(GearingChange {
        before,
        top: tops.map(|(was, is)| more_turns((was.overall, old), (is.overall, new))),
        rolling: new.circumference() / old.circumference() - 1.0,
        // A cable from the gearbox turns as often as the propeller shaft.
        speedometer: then.axle.zip(now.axle).map(|(was, is)| more_turns((was, old), (is, new))),
        wheel_speedometer: wheel,
    })
}

/// What can be read of a gearing.
fn known(id: Id, item: &Item) -> Known {
    let mut known = Known::default();
    let marking: Option<String> = item.read(FieldName::Tyre);
    known.tyre = marking.and_then(|marking| match read_tyre(&marking) {
        Ok(tyre) => Some(tyre),
        Err(problem) => {
            known.problems.extend(problem.map(|problem| problem.at(id)));
            None
        }
    });
    let list: Option<String> = item.read(FieldName::GearRatios);
    let gears = list.and_then(|list| match read_gears(&list) {
        Ok(gears) => Some(gears),
        Err(problem) => {
            known.problems.extend(problem.map(|problem| problem.at(id)));
            None
        }
    });
    let mut figure = |field, bound: Bound| {
        let value: i64 = item.read(field)?;
        if bound.holds(value) {
            return Some(whole(value));
        }
        let problem = Problem::error(Code::OutOfBounds).at(id).field(field).hint(Hint::CorrectValue);
        let problem = problem.value("what", bound.what).value("least", bound.least);
        known.problems.push(problem.value("most", bound.most));
        None
    };
    let axle = figure(FieldName::AxleRatio, bounds::AXLE_RATIO).map(|ratio| ratio / 1e4);
    let overdrive = figure(FieldName::Overdrive, bounds::OVERDRIVE).map(|ratio| ratio / 1e4);
    let on: Option<i64> = item.read(FieldName::OverdriveOn).filter(|on| bounds::OVERDRIVE_ON.holds(*on));
    let on = on.and_then(|on| usize::try_from(on).ok()).unwrap_or(1);
    let floor = figure(FieldName::Circumference, bounds::CIRCUMFERENCE);
    let book = figure(FieldName::TurnsPerMile, bounds::TURNS_PER_MILE);
    let across = figure(FieldName::Diameter, bounds::DIAMETER);
    let floor = floor.and_then(|length| Rolling::of_circumference(length / 1e6));
    let book = book.and_then(|turns| Rolling::of_turns_per_mile(turns / 100.0));
    let across = across.and_then(|length| Rolling::of_diameter(length / 1e6));
    // What was measured with the weight on it goes before what was not.
    known.rolling = floor.or(book).or(across).or_else(|| known.tyre.as_ref().and_then(Rolling::of_tyre));
    known.axle = axle;
    let train = axle
        .zip(gears.clone())
        .and_then(|(axle, gears)| Drivetrain::new(axle, gears, overdrive.map(|ratio| (ratio, on))));
    known.drives = train.map(|train| train.drives()).unwrap_or_default();
    let missing = [
        (FieldName::AxleRatio, axle.is_none()),
        (FieldName::GearRatios, gears.is_none()),
        (FieldName::Tyre, known.rolling.is_none()),
    ];
    known.needs = missing.into_iter().filter(|(_, is_missing)| *is_missing).map(|(field, _)| field).collect();
    known
}

/// A marking, read; a problem where it cannot be, unless it is empty.
fn read_tyre(marking: &str) -> Result<Tyre, Option<Problem>> {
    Tyre::read(marking).map_err(|why| {
        let problem = Problem::warning(Code::TyreUnreadable).field(FieldName::Tyre).value("text", marking.trim());
        let problem = problem.value("why", why.word()).hint(Hint::CorrectValue).hint(Hint::MeasureRolling);
        (!marking.trim().is_empty()).then_some(problem)
    })
}

fn read_gears(list: &str) -> Result<Vec<f64>, Option<Problem>> {
    read_ratios(list).map_err(|why| {
        let problem = Problem::warning(Code::RatiosUnreadable).field(FieldName::GearRatios).value("text", list.trim());
        (!list.trim().is_empty()).then_some(problem.value("why", why.word()).hint(Hint::CorrectValue))
    })
}

fn rolling_view(rolling: Rolling, tyre: Option<&Tyre>) -> RollingView {
    let marked = tyre.and_then(Rolling::of_tyre).filter(|_| rolling.from().is_measured());
    RollingView {
        from: rolling.from(),
        measured: rolling.from().is_measured(),
        circumference: rolling.circumference(),
        diameter: rolling.diameter(),
        turns_per_mile: rolling.turns_per_mile(),
        turns_per_km: rolling.turns_per_km(),
        loaded: rolling.from().is_unloaded().then_some(LOADED_MORE_TURNS),
        beside_marking: marked.map(|marked| more_turns((1.0, marked), (1.0, rolling))),
    }
}

/// What a marking and a list of ratios say.
pub(super) fn typed(tyre: Option<&str>, gears: Option<&str>) -> GearingTypedView {
    let mut view = GearingTypedView::default();
    match tyre.map(read_tyre) {
        Some(Ok(tyre)) => {
            view.rolling = Rolling::of_tyre(&tyre).map(|rolling| rolling_view(rolling, None));
            view.tyre = Some(tyre);
        }
        Some(Err(problem)) => view.problems.extend(problem),
        None => {}
    }
    match gears.map(read_gears) {
        Some(Ok(gears)) => view.gears = Some(gears),
        Some(Err(problem)) => view.problems.extend(problem),
        None => {}
    }
    view
}

#[expect(clippy::cast_precision_loss, reason = "bounds keep them far below 2^53")]
const fn whole(value: i64) -> f64 {
    value as f64
}
