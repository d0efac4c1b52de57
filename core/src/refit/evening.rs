//! What can be done with the hours at hand.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::lack::{Lack, LackWhy};
use super::order::assembly_of;
use super::ready::{Readiness, USUAL_MINUTES, fit_time, minutes_of};
use crate::job::Job;
use crate::job::vocabulary::{Fit, Side};
use crate::quantity::{Day, Minutes, bounds};
use crate::record::{FieldName, Id, in_order, stored_enum};

/// Minutes to compare what came in with the old part: a starting value (common practice, no source).
const COMPARING: i64 = 10;
/// Minutes to repair something at the bench: a starting value (common practice, no source).
const REPAIRING: i64 = 60;
/// Minutes to take a part that was tried off again: a starting value (common practice, no source).
const OFF_AGAIN: i64 = 15;
/// Minutes to finish something that was tried, drying left out: a starting value (common practice, no source).
const FINISHING: i64 = 60;
/// Minutes to take something off a donor: a starting value (common practice, no source).
const FETCHING: i64 = 30;
/// Minutes to judge something and decide what happens to it: a starting value (common practice, no source).
const DECIDING: i64 = 10;

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
        /// Finish what was tried and is off again.
        Finish = "finish",
        /// Take it off the donor.
        Fetch = "fetch",
        /// Judge it, and decide what happens to it.
        Decide = "decide",
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
        // What all of the assembly lacks is in the way of its first step.
        if line
            .lacks
            .iter()
            .any(|lack| matches!(lack.why, LackWhy::Hardware | LackWhy::Consumable) && lack.part.is_none())
        {
            return None;
        }
        let parts = readiness.parts_of(line.id);
        let open: Vec<Id> = parts.iter().copied().filter(|part| job.fit(*part) != Some(Fit::Fitted)).collect();
        let mut run: Vec<Id> = Vec::new();
        let mut in_run: BTreeSet<Id> = BTreeSet::new();
        for part in open.iter().copied() {
            // A step counts when all it lacks is a step of this very run.
            let by_rule = |lack: &Lack| matches!(lack.why, LackWhy::GoesAfter | LackWhy::Circle);
            if !readiness.lacks(part).iter().all(by_rule) || readiness.waits_beyond(part, &in_run) {
                break;
            }
            run.push(part);
            in_run.insert(part);
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
    if fit_time(job, assembly).is_none() {
        return run.iter().map(|part| fit_time(job, *part).unwrap_or(USUAL_MINUTES)).collect();
    }
    let count = i64::try_from(run.len()).unwrap_or(i64::MAX).max(1);
    // What does not divide falls on the first ones, so that all of them take the time of all.
    (0..count).map(|at| minutes.0 / count + i64::from(at < minutes.0 % count)).collect()
}

/// What is done with one part: compare, repair, take off again and finish, fetch, decide.
fn single(readiness: &Readiness<'_>) -> Vec<Found> {
    let job = readiness.job;
    let parts = readiness.order.parts.iter().copied();
    let items = parts.filter_map(|part| {
        let (kind, usual) = readiness.lacks(part).iter().find_map(|lack| match lack.why {
            LackWhy::ToCompare => Some((EveningKind::Compare, COMPARING)),
            LackWhy::ToRepair => Some((EveningKind::Repair, REPAIRING)),
            LackWhy::TriedOnly => Some((EveningKind::TakeOff, OFF_AGAIN)),
            LackWhy::ToFinish => Some((EveningKind::Finish, FINISHING)),
            LackWhy::ToFetch => Some((EveningKind::Fetch, FETCHING)),
            LackWhy::Undecided => Some((EveningKind::Decide, DECIDING)),
            _ => None,
        })?;
        let own_time = job.choice_of(part).and_then(|choice| job.item(choice)?.read::<Minutes>(FieldName::OwnTime));
        let is_quoted = matches!(kind, EveningKind::Repair | EveningKind::Fetch);
        let own_time = own_time.filter(|minutes| is_quoted && minutes.0 > 0 && bounds::MINUTES.holds(minutes.0));
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
