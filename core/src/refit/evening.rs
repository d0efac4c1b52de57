//! What can be done with the hours at hand.

use serde::{Deserialize, Serialize};

use super::lack::LackWhy;
use super::order::assembly_of;
use super::ready::{Readiness, USUAL_MINUTES, minutes_of};
use crate::job::Job;
use crate::job::vocabulary::{Fit, Side};
use crate::quantity::{Day, Minutes};
use crate::record::{FieldName, Id, in_order, stored_enum};

/// Minutes to compare what came in with the old part: a starting value (common practice, no source).
const COMPARING: i64 = 10;
/// Minutes to repair something at the bench: a starting value (common practice, no source).
const REPAIRING: i64 = 60;
/// Minutes to take a part that was tried off again: a starting value (common practice, no source).
const OFF_AGAIN: i64 = 15;

stored_enum! {
    /// What can be done.
    pub enum EveningKind {
        /// Go on with an assembly, or begin it.
        Refit = "refit",
        /// Compare what came in with the old one.
        Compare = "compare",
        /// Repair at the bench.
        Repair = "repair",
        /// Take what was tried off again, for finish.
        TakeOff = "take-off",
    }
}

/// What can be done in an evening.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct EveningView {
    /// The time at hand.
    pub minutes: Minutes,
    /// Everything that nothing stands in the way of, in the order it is best taken up.
    pub items: Vec<EveningItem>,
    /// How long all that fits takes.
    pub picked: Minutes,
}

/// One thing that can be done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct EveningItem {
    /// What.
    pub kind: EveningKind,
    /// The assembly, or the part.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The tag of a part.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// Left or right.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// Steps that can be done one after the other before something stands in the way.
    pub steps: usize,
    /// It is done with that: nothing of the assembly is left.
    pub whole: bool,
    /// Own time for it.
    pub minutes: Minutes,
    /// That is a starting value, at least for some of it.
    pub starting: bool,
    /// Steps that fit into what is left of the time once what stands before it is done; none where it does not fit.
    pub fits: usize,
}

/// What nothing stands in the way of, and how much of it fits. What was begun comes first, then what is done with in the time.
#[must_use]
pub fn this_evening(job: &Job, minutes: Minutes, today: Option<Day>) -> EveningView {
    let readiness = Readiness::of(job, today);
    let mut items = refits(&readiness);
    items.extend(single(&readiness));
    let mut items = in_order(items, |found: &Found| {
        let item = &found.item;
        (!found.begun, item.minutes.0 > minutes.0 || !item.whole, item.kind, item.minutes.0, item.id)
    });
    let mut left = minutes.0.max(0);
    for found in &mut items {
        // Step after step, each with its own time, until the next one is too long.
        for time in &found.times {
            if *time > left {
                break;
            }
            left -= time;
            found.item.fits += 1;
        }
    }
    let picked = Minutes::new(minutes.0.max(0) - left);
    EveningView { minutes, items: items.into_iter().map(|found| found.item).collect(), picked }
}

/// Something that can be done, whether it was begun, and how long each of its steps takes.
struct Found {
    item: EveningItem,
    begun: bool,
    times: Vec<i64>,
}

/// Assemblies with a run of steps that can be done.
fn refits(readiness: &Readiness<'_>) -> Vec<Found> {
    let job = readiness.job;
    let lines = readiness.assemblies().into_iter();
    let items = lines.filter_map(|line| {
        let parts = readiness.order.of_assembly(job, line.id);
        let open: Vec<Id> = parts.iter().copied().filter(|part| job.fit(*part) != Some(Fit::Fitted)).collect();
        // A step counts when all it lacks is a step of this very run.
        let mut run: Vec<Id> = Vec::new();
        for part in open.iter().copied() {
            let waits = |lack: &super::Lack| {
                lack.why != LackWhy::GoesAfter
                    || lack.other.is_none_or(|other| !run.contains(&other) && !is_all_in(job, other, &run))
            };
            if readiness.lacks(part).iter().any(waits) {
                break;
            }
            run.push(part);
        }
        if run.is_empty() {
            return None;
        }
        let (minutes, starting) = minutes_of(job, line.id, &run, parts.len());
        let times = times_of(job, line.id, &run, minutes);
        let item = EveningItem {
            kind: EveningKind::Refit,
            id: line.id,
            name: line.name,
            tag: None,
            side: line.side,
            whole: run.len() == open.len(),
            steps: run.len(),
            minutes,
            starting,
            fits: 0,
        };
        Some(Found { item, begun: line.fitted > 0, times })
    });
    items.collect()
}

/// How long each step of a run takes; where one time was said for the whole assembly, its steps share it.
fn times_of(job: &Job, assembly: Id, run: &[Id], minutes: Minutes) -> Vec<i64> {
    let said = |id: Id| job.item(id)?.read::<Minutes>(FieldName::FitTime);
    if said(assembly).is_none() {
        return run.iter().map(|part| said(*part).map_or(USUAL_MINUTES, |minutes| minutes.0)).collect();
    }
    let count = i64::try_from(run.len()).unwrap_or(i64::MAX).max(1);
    // What does not divide falls on the first ones, so that all of them take the time of all.
    (0..count).map(|at| minutes.0 / count + i64::from(at < minutes.0 % count)).collect()
}

/// Whether all parts of an assembly that were off are in a run, or on.
fn is_all_in(job: &Job, assembly: Id, run: &[Id]) -> bool {
    if job.kind(assembly) != Some(crate::record::Kind::Assembly) {
        return false;
    }
    let inside = job.within(crate::record::Kind::Assembly, FieldName::Inside, assembly);
    inside.into_iter().all(|assembly| {
        let parts = job.children(crate::record::Kind::Part, FieldName::Assembly, assembly);
        let mut off = parts.filter(|part| job.item(*part).is_some_and(|item| item.is(FieldName::Off)));
        off.all(|part| run.contains(&part) || job.fit(part) == Some(Fit::Fitted))
    })
}

/// What is done with one part: compare, repair, take off again.
fn single(readiness: &Readiness<'_>) -> Vec<Found> {
    let job = readiness.job;
    let parts = readiness.order.parts.iter().copied();
    let items = parts.filter_map(|part| {
        let (kind, usual) = readiness.lacks(part).iter().find_map(|lack| match lack.why {
            LackWhy::ToCompare => Some((EveningKind::Compare, COMPARING)),
            LackWhy::ToRepair => Some((EveningKind::Repair, REPAIRING)),
            LackWhy::TriedOnly => Some((EveningKind::TakeOff, OFF_AGAIN)),
            _ => None,
        })?;
        let own_time = job.choice_of(part).and_then(|choice| job.item(choice)?.read::<Minutes>(FieldName::OwnTime));
        let own_time = own_time.filter(|minutes| kind == EveningKind::Repair && minutes.0 > 0);
        let minutes = own_time.unwrap_or(Minutes::new(usual));
        let item = EveningItem {
            kind,
            id: part,
            name: job.name(part),
            tag: job.item(part).and_then(|item| item.read(FieldName::Tag)),
            side: assembly_of(job, part).and_then(|assembly| job.side_of_assembly(assembly)),
            steps: 1,
            whole: true,
            minutes,
            starting: own_time.is_none(),
            fits: 0,
        };
        Some(Found { times: vec![item.minutes.0], item, begun: false })
    });
    items.collect()
}
