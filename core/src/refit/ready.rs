//! Which assembly can begin, what blocks the others, and from when on.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::lack::{Lack, LackWhy, Terms, lacks_of, of_consumables, of_joint};
use super::loose::{Gate, LooseJoint, gates, still_loose, to_check_again};
use super::order::{Circle, RefitOrder, assembly_of, is_painted, paint_of};
use super::reference::ReferenceView;
use crate::job::Job;
use crate::job::vocabulary::{Fit, Paint, Side};
use crate::quantity::{Day, Minutes, bounds};
use crate::record::{FieldName, Id, Kind, in_order, stored_enum};

/// Minutes to refit one part until somebody says otherwise: a starting value (common practice, no source).
pub(super) const USUAL_MINUTES: i64 = 10;

stored_enum! {
    /// How an assembly stands.
    pub enum RefitState {
        /// Everything it needs is here.
        Ready = "ready",
        /// Something stands in the way.
        Blocked = "blocked",
        /// All of it is on for good.
        Refitted = "refitted",
    }
}

/// All assemblies to be refitted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ReadyView {
    /// In the order in which they are begun; refitted ones last.
    pub assemblies: Vec<RefitAssembly>,
    /// Parts that are off and in no assembly: they stand in no order.
    pub in_no_assembly: usize,
    /// What cannot be kept of the order.
    pub circles: Vec<Circle>,
    /// What is still loose.
    pub loose: Vec<LooseJoint>,
    /// What is tight, and was not checked a second time.
    pub unchecked: Vec<LooseJoint>,
    /// What stands in the way of lowering the vehicle on to its wheels.
    pub lowering: Gate,
    /// What stands in the way of the road.
    pub road: Gate,
}

/// One assembly to be refitted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RefitAssembly {
    /// Its id.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// Left or right.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// How it stands.
    pub state: RefitState,
    /// Parts that are off, or were.
    pub parts: usize,
    /// How many of them are on for good.
    pub fitted: usize,
    /// How many are on for trial.
    pub tried: usize,
    /// What stands in the way, in the order of its parts.
    pub lacks: Vec<Lack>,
    /// The first day on which nothing does any more; nothing while no such day is known, or nothing stands in the way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub earliest: Option<Day>,
    /// For some of it no day is known.
    pub no_date: bool,
    /// All of it can be done here and now.
    pub own: bool,
    /// Own time for what is not on yet.
    pub minutes: Minutes,
    /// That time is a starting value for some of it.
    pub starting: bool,
    /// Parts that lie nowhere anybody has said.
    pub nowhere: usize,
    /// It is kept whole as the reference, or its opposite number is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reference: Option<ReferenceView>,
}

/// Whether something can go on, and from when.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) struct When {
    pub(super) blocked: bool,
    pub(super) own: bool,
    pub(super) day: Option<Day>,
    pub(super) no_date: bool,
}

impl When {
    pub(super) fn of<'a>(lacks: impl Iterator<Item = &'a Lack>) -> Self {
        let mut when = Self { own: true, ..Self::default() };
        for lack in lacks {
            when.blocked = true;
            when.own &= lack.own && !lack.no_date;
            when.no_date |= lack.no_date;
            when.day = when.day.max(lack.day);
        }
        when.day = when.day.filter(|_| !when.no_date);
        when
    }

    /// When both can.
    fn and(self, other: Self) -> Self {
        let no_date = self.no_date || other.no_date;
        Self {
            blocked: self.blocked || other.blocked,
            own: self.own && other.own,
            day: self.day.max(other.day).filter(|_| !no_date),
            no_date,
        }
    }
}

/// What every part waits for, worked out once.
pub(super) struct Readiness<'a> {
    pub(super) job: &'a Job,
    pub(super) order: RefitOrder,
    terms: Terms,
    /// Of each part the rules that it waits by.
    waits: BTreeMap<Id, Vec<usize>>,
    /// The parts of each assembly, in order; not those of assemblies inside it.
    by_assembly: BTreeMap<Id, Vec<Id>>,
    lacks: BTreeMap<Id, Vec<Lack>>,
}

impl<'a> Readiness<'a> {
    /// In the order of refitting everything that a part waits for is known before it, unless they wait in a circle.
    pub(super) fn of(job: &'a Job, today: Option<Day>) -> Self {
        let order = RefitOrder::of(job);
        let mut waits: BTreeMap<Id, Vec<usize>> = BTreeMap::new();
        for (at, after) in order.rules.iter().enumerate() {
            for part in &after.targets {
                waits.entry(*part).or_default().push(at);
            }
        }
        let mut by_assembly: BTreeMap<Id, Vec<Id>> = BTreeMap::new();
        for part in &order.parts {
            if let Some(assembly) = assembly_of(job, *part) {
                by_assembly.entry(assembly).or_default().push(*part);
            }
        }
        let terms = Terms::of(job, today);
        let mut readiness = Self { job, order, terms, waits, by_assembly, lacks: BTreeMap::new() };
        let mut whens: BTreeMap<Id, When> = BTreeMap::new();
        let mut by_rule: BTreeMap<usize, Option<Lack>> = BTreeMap::new();
        for part in readiness.order.parts.clone() {
            let lacks = readiness.work_out(part, &whens, &mut by_rule);
            whens.insert(part, When::of(lacks.iter()));
            readiness.lacks.insert(part, lacks);
        }
        readiness
    }

    /// The parts of one assembly, in order; not those of assemblies inside it.
    pub(super) fn parts_of(&self, assembly: Id) -> &[Id] {
        self.by_assembly.get(&assembly).map(Vec::as_slice).unwrap_or_default()
    }

    /// Whether a part waits by some rule for anything but those parts.
    pub(super) fn waits_beyond(&self, part: Id, those: &BTreeSet<Id>) -> bool {
        let mut rules = self.waits.get(&part).into_iter().flatten();
        rules.any(|rule| self.unfitted_sources(*rule).any(|source| !those.contains(&source)))
    }

    /// Everything that a part lacks, what it goes on after with it.
    pub(super) fn lacks(&self, part: Id) -> &[Lack] {
        self.lacks.get(&part).map(Vec::as_slice).unwrap_or_default()
    }

    fn work_out(&self, part: Id, whens: &BTreeMap<Id, When>, by_rule: &mut BTreeMap<usize, Option<Lack>>) -> Vec<Lack> {
        if self.job.fit(part) == Some(Fit::Fitted) {
            return Vec::new();
        }
        let mut lacks = lacks_of(self.job, part, self.terms);
        let tag = self.job.item(part).and_then(|item| item.read(FieldName::Tag));
        let named = |lack: Lack| Lack { part: Some(part), tag, name: self.job.name(part), ..lack };
        if paint_of(self.job, part) == Some(Paint::After) && !is_painted(self.job, part) {
            lacks.push(named(Lack { no_date: true, ..Lack::of(LackWhy::Paint) }));
        }
        for rule in self.waits.get(&part).into_iter().flatten() {
            let known = by_rule.get(rule).cloned();
            let lack = known.unwrap_or_else(|| {
                let lack = self.of_rule(*rule, whens);
                // Only whoever stands before what it waits for waits in a circle: the next one by the same rule may not.
                if lack.as_ref().is_none_or(|lack| lack.why != LackWhy::Circle) {
                    by_rule.insert(*rule, lack.clone());
                }
                lack
            });
            lacks.extend(lack.map(named));
        }
        lacks
    }

    /// What waiting by a rule comes to: once what goes on first can be on itself.
    fn of_rule(&self, rule: usize, whens: &BTreeMap<Id, When>) -> Option<Lack> {
        let other = self.order.rules[rule].other;
        let missing: Vec<Id> = self.unfitted_sources(rule).collect();
        if missing.is_empty() {
            return None;
        }
        let other_tag = self.job.item_of(Kind::Part, other).and_then(|item| item.read(FieldName::Tag));
        let other_side = match self.job.kind(other) {
            Some(Kind::Assembly) => self.job.side_of_assembly(other),
            _ => self.job.item(other).and_then(|item| self.job.side_of_part(item)),
        };
        let other_name = self.job.name(other);
        let told =
            |lack: Lack| Lack { other: Some(other), other_name: other_name.clone(), other_tag, other_side, ..lack };
        let known: Option<Vec<When>> = missing.iter().map(|source| whens.get(source).copied()).collect();
        let Some(known) = known else { return Some(told(Lack { no_date: true, ..Lack::of(LackWhy::Circle) })) };
        let when = known.into_iter().fold(When { own: true, ..When::default() }, When::and);
        Some(told(Lack { own: when.own, day: when.day, no_date: when.no_date, ..Lack::of(LackWhy::GoesAfter) }))
    }

    fn unfitted_sources(&self, rule: usize) -> impl Iterator<Item = Id> {
        let sources = self.order.rules[rule].sources.iter().copied();
        sources.filter(|source| self.job.fit(*source) != Some(Fit::Fitted))
    }

    /// What an assembly lacks before work on it can begin. What its parts wait for among themselves is a matter of order.
    pub(super) fn lacks_of_assembly(&self, assembly: Id, parts: &[Id]) -> Vec<Lack> {
        let own: BTreeSet<Id> = parts.iter().copied().collect();
        let mut told: BTreeSet<(LackWhy, Option<Id>)> = BTreeSet::new();
        // Of each rule, looked up once, whether it waits for anything outside.
        let mut outside: BTreeMap<usize, bool> = BTreeMap::new();
        let mut lacks = Vec::new();
        for part in parts.iter().copied() {
            for mut lack in self.lacks(part).iter().cloned() {
                if lack.why == LackWhy::GoesAfter {
                    // One rule for all of it is told once.
                    if told.contains(&(lack.why, lack.other)) {
                        continue;
                    }
                    let waits = self.waits.get(&part).into_iter().flatten().copied();
                    let mut by = waits.filter(|rule| Some(self.order.rules[*rule].other) == lack.other);
                    let is_outside = by.any(|rule| {
                        *outside
                            .entry(rule)
                            .or_insert_with(|| self.unfitted_sources(rule).any(|source| !own.contains(&source)))
                    });
                    if !is_outside {
                        continue;
                    }
                    told.insert((lack.why, lack.other));
                }
                if lack.why == LackWhy::Paint {
                    if !told.insert((lack.why, None)) {
                        continue;
                    }
                    lack = Lack { no_date: true, ..Lack::of(lack.why) };
                }
                lacks.push(lack);
            }
        }
        if parts.iter().any(|part| self.job.fit(*part) != Some(Fit::Fitted)) {
            lacks.extend(of_consumables(self.job, assembly, None, self.terms));
            let joints = self.job.children(Kind::Joint, FieldName::Assembly, assembly);
            let free: Vec<Id> = joints.filter(|joint| holds(self.job, *joint).is_none()).collect();
            lacks.extend(free.into_iter().flat_map(|joint| of_joint(self.job, joint, None, self.terms)));
        }
        lacks
    }

    /// One assembly; nothing when none of its parts was off.
    pub(super) fn assembly(&self, id: Id) -> Option<RefitAssembly> {
        let job = self.job;
        let parts = self.parts_of(id);
        if parts.is_empty() || job.item_of(Kind::Assembly, id).is_none() {
            return None;
        }
        let count = |fit| parts.iter().filter(|part| job.fit(**part) == Some(fit)).count();
        let (fitted, tried) = (count(Fit::Fitted), count(Fit::Tried));
        let lacks = self.lacks_of_assembly(id, parts);
        let when = When::of(lacks.iter());
        let open: Vec<Id> = parts.iter().copied().filter(|part| job.fit(*part) != Some(Fit::Fitted)).collect();
        let (minutes, starting) = minutes_of(job, id, &open, parts.len());
        let is_nowhere = |part: &&Id| is_old_kept(job, **part) && job.is_nowhere(**part);
        Some(RefitAssembly {
            id,
            name: job.name(id),
            side: job.side_of_assembly(id),
            state: match (open.is_empty(), when.blocked) {
                (true, _) => RefitState::Refitted,
                (false, false) => RefitState::Ready,
                (false, true) => RefitState::Blocked,
            },
            parts: parts.len(),
            fitted,
            tried,
            earliest: when.day,
            no_date: when.no_date,
            own: when.blocked && when.own,
            nowhere: open.iter().filter(is_nowhere).count(),
            minutes,
            starting,
            reference: super::reference::reference_of(job, id),
            lacks,
        })
    }

    /// All of them in the order in which they are begun; refitted ones last.
    pub(super) fn assemblies(&self) -> Vec<RefitAssembly> {
        let mut begun: Vec<Id> = Vec::new();
        let mut known: BTreeSet<Id> = BTreeSet::new();
        for part in &self.order.parts {
            if let Some(assembly) = assembly_of(self.job, *part).filter(|assembly| known.insert(*assembly)) {
                begun.push(assembly);
            }
        }
        let lines: Vec<RefitAssembly> = begun.into_iter().filter_map(|id| self.assembly(id)).collect();
        in_order(lines, |line: &RefitAssembly| line.state == RefitState::Refitted)
    }
}

/// The part that a joint holds.
pub(super) fn holds(job: &Job, joint: Id) -> Option<Id> {
    job.item(joint)?.read::<Id>(FieldName::Of).filter(|part| job.kind(*part) == Some(Kind::Part))
}

/// Whether the part itself goes on again, not another in its place.
fn is_old_kept(job: &Job, part: Id) -> bool {
    job.route_of(part).is_none_or(|route| !Job::brings_new(route))
}

/// Own time for what of an assembly is not on yet, and whether it is a starting value for some of it. A time for the whole
/// assembly goes before times of its parts, in proportion to what is left.
pub(super) fn minutes_of(job: &Job, assembly: Id, open: &[Id], parts: usize) -> (Minutes, bool) {
    let whole = |count: usize| i64::try_from(count).unwrap_or(i64::MAX);
    if let Some(all) = fit_time(job, assembly) {
        // Rounded up: what is left takes more than no time.
        let parts = whole(parts.max(1));
        let left = all.saturating_mul(whole(open.len())).saturating_add(parts - 1) / parts;
        return (Minutes::new(left), false);
    }
    let times = open.iter().map(|part| fit_time(job, *part).unwrap_or(USUAL_MINUTES));
    (Minutes::new(times.fold(0, i64::saturating_add)), open.iter().any(|part| fit_time(job, *part).is_none()))
}

/// How many minutes somebody said that a part or an assembly takes to go on.
pub(super) fn fit_time(job: &Job, id: Id) -> Option<i64> {
    let said: Minutes = job.item(id)?.read(FieldName::FitTime)?;
    // Whatever was stored counts as what is accepted.
    Some(said.0.clamp(bounds::MINUTES.least, bounds::MINUTES.most))
}

/// All assemblies to be refitted: what can begin, what blocks the others.
#[must_use]
pub fn ready(job: &Job, today: Option<Day>) -> ReadyView {
    let readiness = Readiness::of(job, today);
    let assemblies = readiness.assemblies();
    let loose = still_loose(job);
    let (lowering, road) = gates(job, &loose);
    let in_no_assembly = readiness.order.parts.iter().filter(|part| assembly_of(job, **part).is_none());
    let in_no_assembly = in_no_assembly.filter(|part| job.fit(**part) != Some(Fit::Fitted)).count();
    let unchecked = to_check_again(job);
    let circles = readiness.order.open_circles(job).cloned().collect();
    ReadyView { assemblies, in_no_assembly, circles, loose, unchecked, lowering, road }
}
