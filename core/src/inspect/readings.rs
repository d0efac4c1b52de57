use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::counterpart::counterpart;
use super::limits::{Against, Limits, Use, against};
use super::nature::Nature;
use super::proof::{Bounds, DEFAULT_RULE, worst};
use super::settle::{Settling, settling};
use super::sizes::{NextSize, SizeSteps, next_size};
use super::uncertainty::{Instrument, Measured, difference, measured};
use crate::job::vocabulary::Units;
use crate::job::{Job, RecordView, Values};
use crate::record::{FieldName, Id, Kind};
use crate::tables::checks::Condition;
use crate::tables::features::{Dimension, LimitKind, LimitSource, feature};

/// A measure of a part, with its limits, its readings and what they prove. All amounts are in the base unit of the
/// dimension: nanometres, millinewtons, a count.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct MeasureView {
    /// What is measured: a code of the tables, or the user's own word.
    pub feature: String,
    /// In what.
    pub dimension: Dimension,
    /// Which kind of limit it has.
    pub kind: LimitKind,
    /// Its limit: of this part, else of the same part on the other side.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit: Option<RecordView>,
    /// Where the limit that counts comes from; left out where there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub source: Option<LimitSource>,
    /// The limits that count.
    pub limits: Limits,
    /// Its readings, earliest first.
    pub readings: Vec<RecordView>,
    /// The places that were measured, in order of name; for a difference between sides, the places of both.
    pub places: Vec<PlaceMeasured>,
    /// Which of the places governs: the worst.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub governs: Option<usize>,
    /// What would settle it, where it proves nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub settling: Option<Settling>,
    /// The next standard size that a worn bore or journal cleans up at, as far as the readings say; in the steps of the job's
    /// units.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub next_size: Option<NextSize>,
    /// What it comes to; left out where nothing was read, or nothing is limited.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub condition: Option<Condition>,
    /// The places of the other side.
    pub other_side: Vec<PlaceMeasured>,
}

/// One place as measured, with what that proves.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlaceMeasured {
    /// Where it was measured; empty when nobody said.
    pub spot: String,
    /// The mean of its repeats and how far that may be off.
    pub measured: Measured,
    /// What it proves against the limits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub against: Option<Against>,
}

/// What a part is measured for: what its family asks, then whatever else has a limit or a reading.
fn features(job: &Job, part: Id, nature: &Nature) -> Vec<String> {
    let asked = nature.family.map(|family| family.measures).unwrap_or_default();
    let mut all: Vec<String> = asked.iter().map(|code| (*code).to_owned()).collect();
    for kind in [Kind::Limit, Kind::Reading] {
        for id in job.children(kind, FieldName::Of, part) {
            let said: Option<String> = job.item(id).and_then(|item| item.read(FieldName::Feature));
            if let Some(said) = said.filter(|said| !all.contains(said)) {
                all.push(said);
            }
        }
    }
    all
}

/// The measures of a part, without what would settle them: no verdict hangs on that, and it takes longer than all else.
pub(super) fn measures(job: &Job, part: Id, nature: &Nature) -> Vec<MeasureView> {
    let other = counterpart(job, part);
    features(job, part, nature).into_iter().map(|code| measure(job, part, other, code)).collect()
}

fn measure(job: &Job, part: Id, other: Option<Id>, code: String) -> MeasureView {
    let known = feature(&code);
    // What holds on one side holds on the other: a limit is typed once.
    let own = about(job, part, Kind::Limit, &code).pop();
    let limit = own.or_else(|| about(job, other?, Kind::Limit, &code).pop());
    let said = limit.as_ref().map(|limit| &limit.values);
    let kind = said.and_then(|values| values.limit_kind).or(known.map(|known| known.kind)).unwrap_or(LimitKind::Size);
    let dimension = said.and_then(|values| values.dimension).or(known.map(|known| known.dimension));
    let dimension = dimension.unwrap_or(Dimension::Length);
    let usual = known.and_then(|known| known.usual);
    let limits = said.map_or_else(|| of_usual(usual, kind), |values| of_values(values, kind));
    let readings = about(job, part, Kind::Reading, &code);
    let mine = places(job, &readings);
    let theirs = other.map(|other| places(job, &about(job, other, Kind::Reading, &code))).unwrap_or_default();
    let judged = if kind == LimitKind::Difference { differences(&mine, &theirs) } else { mine };
    let places: Vec<PlaceMeasured> = judged.into_iter().map(|(spot, place)| proved(spot, place, &limits)).collect();
    let measured: Vec<Measured> = places.iter().map(|place| place.measured.clone()).collect();
    let governs = worst(&measured, &limits.discard, DEFAULT_RULE).map(|(at, _)| at);
    let condition =
        governs.and_then(|at| condition(places[at].against?.allows, known.is_some_and(|one| one.reworkable)));
    let is_worn = dimension == Dimension::Length && condition.is_some_and(|one| one != Condition::Sound);
    let surface = known.and_then(|known| known.surface).filter(|_| is_worn);
    let steps = if job.settings().units == Units::Inch { SizeSteps::Inch } else { SizeSteps::Metric };
    let next_size =
        surface.zip(limits.as_new).and_then(|(surface, new)| next_size(&measured, new, surface, steps, 0.0));
    MeasureView {
        next_size,
        settling: None,
        source: match said {
            Some(values) => Some(values.limit_source.unwrap_or(LimitSource::Own)),
            None => usual.map(|_| LimitSource::Usual),
        },
        dimension,
        other_side: theirs.into_iter().map(|(spot, place)| proved(spot, place, &limits)).collect(),
        feature: code,
        kind,
        limit,
        limits,
        readings,
        places,
        governs,
        condition,
    }
}

/// The same with what would settle it.
pub(super) fn with_settling(measure: MeasureView) -> MeasureView {
    let worst = measure.governs.and_then(|at| measure.places.get(at));
    let found = worst.and_then(|place| settling(&place.measured, &measure.limits.discard, DEFAULT_RULE));
    let is_length = measure.dimension == Dimension::Length;
    MeasureView { settling: found.map(|found| if is_length { found } else { found.of_no_length() }), ..measure }
}

fn proved(spot: String, measured: Measured, limits: &Limits) -> PlaceMeasured {
    let is_limited = !limits.discard.is_open() || !limits.machining.is_open();
    PlaceMeasured { against: is_limited.then(|| against(&measured, limits, DEFAULT_RULE)), spot, measured }
}

/// What a proof means for using the part again.
const fn condition(allows: Use, reworkable: bool) -> Option<Condition> {
    Some(match allows {
        Use::Scrap if reworkable => Condition::Rework,
        Use::Scrap => Condition::Scrap,
        Use::NotProved => Condition::Doubtful,
        Use::NotToBeCut | Use::AsItIs | Use::MayBeCut => Condition::Sound,
    })
}

/// Records of a kind about one feature of a part, earliest first.
fn about(job: &Job, part: Id, kind: Kind, of: &str) -> Vec<RecordView> {
    let ids = job.children(kind, FieldName::Of, part);
    let all = ids.filter_map(|id| job.record_view(id)).filter(|record| record.values.feature.as_deref() == Some(of));
    let mut all: Vec<RecordView> = all.collect();
    all.sort_by_key(|record| (record.values.taken, record.id));
    all
}

/// The places that were measured: repeats of one place with one instrument belong together. A place that was measured with
/// two instruments counts as two places, so that the worse of them governs.
fn places(job: &Job, readings: &[RecordView]) -> Vec<(String, Measured)> {
    let mut grouped: BTreeMap<(String, Option<Id>, Option<i64>), Vec<f64>> = BTreeMap::new();
    for values in readings.iter().map(|reading| &reading.values) {
        let Some(amount) = values.measured else { continue };
        let spot = values.spot.as_deref().unwrap_or_default().trim().to_lowercase();
        grouped.entry((spot, values.instrument, values.zero_error)).or_default().push(exact(amount));
    }
    let groups = grouped.into_iter();
    let measured = groups.filter_map(|((spot, instrument, zero), amounts)| {
        Some((spot, measured(&amounts, &instrument_of(job, instrument, zero))?))
    });
    measured.collect()
}

fn instrument_of(job: &Job, instrument: Option<Id>, zero: Option<i64>) -> Instrument {
    let values = instrument.and_then(|id| job.record_view(id)).map(|record| record.values).unwrap_or_default();
    Instrument {
        resolution: values.resolution.filter(|step| *step > 0).map(exact),
        stated: values.uncertainty.filter(|stated| *stated > 0).map(exact),
        factor: values.coverage.filter(|factor| *factor > 0).map_or(2.0, |factor| exact(factor) / 100.0),
        zero_error: zero.or(values.zero_error).map(exact),
    }
}

/// Place by place, how far this side is from the other; where no place has the same name, the first of each.
fn differences(mine: &[(String, Measured)], theirs: &[(String, Measured)]) -> Vec<(String, Measured)> {
    let same = |(spot, place): &(String, Measured)| {
        let (_, other) = theirs.iter().find(|(other, _)| other == spot)?;
        Some((spot.clone(), difference(place, other)))
    };
    let all: Vec<_> = mine.iter().filter_map(same).collect();
    match (all.is_empty(), mine.first(), theirs.first()) {
        (true, Some((_, one)), Some((_, other))) => vec![(String::new(), difference(one, other))],
        _ => all,
    }
}

/// The limits as they were typed. What nothing can keep, as two devices may have left it, limits nothing; it is told as a problem.
fn of_values(values: &Values, kind: LimitKind) -> Limits {
    let bounds = |least: Option<i64>, most: Option<i64>| match kind {
        LimitKind::Minimum => Bounds { least: least.map(exact), most: None },
        LimitKind::Maximum => Bounds { least: None, most: most.map(exact) },
        LimitKind::Range => Bounds { least: least.map(exact), most: most.map(exact) },
        LimitKind::Difference => most.map(|most| Bounds::differ_by(exact(most))).unwrap_or_default(),
        LimitKind::Size => Bounds::default(),
    };
    let (discard, machining) =
        (bounds(values.least, values.most), bounds(values.machining_least, values.machining_most));
    let as_new = values.as_new.map(exact);
    if discard.is_crossed() || machining.is_crossed() {
        return Limits { as_new, ..Limits::default() };
    }
    Limits { discard, machining, as_new }
}

/// Which end of a limit lies beyond its other end, so that nothing can keep it; of a difference both ends are one figure.
/// `kind` and `of` are the kind and the feature that are said of it; `end` reads its ends.
pub(crate) fn crossed(
    kind: Option<LimitKind>,
    of: Option<&str>,
    end: impl Fn(FieldName) -> Option<i64>,
) -> Option<FieldName> {
    let kind = kind.or_else(|| Some(feature(of?)?.kind));
    let is_negative = |most| kind == Some(LimitKind::Difference) && end(most).is_some_and(|most| most < 0);
    let is_above = |least, most| end(least).zip(end(most)).is_some_and(|(least, most)| least > most);
    let ends = [(FieldName::Least, FieldName::Most), (FieldName::MachiningLeast, FieldName::MachiningMost)];
    ends.into_iter().find_map(
        |(least, most)| {
            if is_negative(most) { Some(most) } else { is_above(least, most).then_some(least) }
        },
    )
}

fn of_usual(usual: Option<i64>, kind: LimitKind) -> Limits {
    let discard = match (usual.map(exact), kind) {
        (Some(usual), LimitKind::Minimum) => Bounds::at_least(usual),
        (Some(usual), LimitKind::Maximum) => Bounds::at_most(usual),
        (Some(usual), LimitKind::Difference) => Bounds::differ_by(usual),
        _ => Bounds::default(),
    };
    Limits { discard, ..Limits::default() }
}

#[expect(clippy::cast_precision_loss, reason = "what is within bounds is below 2^53")]
pub(super) const fn exact(amount: i64) -> f64 {
    amount as f64
}
