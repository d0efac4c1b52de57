//! The order in which parts go on again: what came off last goes on first, unless something goes on after something else,
//! or after the paint.

use std::cmp::Reverse;
use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet, BinaryHeap, VecDeque};

use serde::{Deserialize, Serialize};

use crate::job::Job;
use crate::job::vocabulary::{Fit, Paint};
use crate::record::{FieldName, Id, Kind, in_order};

/// What goes on after one another in a circle: no order can keep all of it.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Circle {
    /// The parts in it, each after the one before.
    pub parts: Vec<Id>,
    /// The rules that make it, in the same order; of each pair of neighbours one.
    pub rules: Vec<Id>,
    /// The paint is one of its steps.
    pub paint: bool,
}

/// A rule between parts: the targets go on after all sources.
#[derive(Debug, Clone)]
pub(super) struct After {
    /// The record that says so.
    pub(super) rule: Id,
    /// What goes on first: a part or an assembly.
    pub(super) other: Id,
    pub(super) sources: BTreeSet<Id>,
    pub(super) targets: BTreeSet<Id>,
}

/// The order in which all parts that were off go on again.
#[derive(Debug, Clone, Default)]
pub struct RefitOrder {
    /// Every part that is off, or was and is on again, once.
    pub parts: Vec<Id>,
    /// What cannot be kept.
    pub circles: Vec<Circle>,
    pub(super) rules: Vec<After>,
}

#[derive(Clone, Copy)]
enum Node {
    Part(Id),
    Rule(usize),
    Paint,
}

impl RefitOrder {
    /// The order for a job. Donors are left apart: nothing goes on to them again.
    ///
    /// First the removals turned round; parts that never had a place in their order (bought in boxes) come last, by tag. Then
    /// what waits moves back until it waits no longer (Kahn's topological order, the least of the first order next). Where
    /// several wait for one another, and for nothing else, the first of those goes on regardless; each rule that it breaks by
    /// that is told with a circle.
    #[must_use]
    pub fn of(job: &Job) -> Self {
        let parts = removals_turned_round(job);
        let known: BTreeSet<Id> = parts.iter().copied().collect();
        let rules: Vec<After> = rules_between(job, &known);
        let paint = painted_around(job, &parts);
        if rules.is_empty() && paint.is_none() {
            return Self { parts, circles: Vec::new(), rules };
        }
        let mut graph = Graph::new(&parts, &rules, paint);
        let (order, circles) = graph.ordered(&rules);
        Self { parts: order, circles, rules }
    }

    /// The circles that anybody can still run into: by each of their rules something waits that is not on for something that
    /// is not.
    pub fn open_circles(&self, job: &Job) -> impl Iterator<Item = &Circle> {
        let is_open = |part: &Id| job.fit(*part) != Some(Fit::Fitted);
        let waits = move |id: &Id| {
            let rule = self.rules.iter().find(|after| after.rule == *id);
            rule.is_none_or(|after| after.sources.iter().any(is_open) && after.targets.iter().any(is_open))
        };
        self.circles.iter().filter(move |circle| circle.rules.iter().all(waits))
    }
}

pub(super) fn assembly_of(job: &Job, part: Id) -> Option<Id> {
    let assembly: Id = job.item(part)?.read(FieldName::Assembly)?;
    job.item_of(Kind::Assembly, assembly).filter(|_| !job.is_struck(assembly)).map(|_| assembly)
}

/// The vehicle that an assembly belongs to: its own, or of the nearest one it is inside.
pub(super) fn vehicle_of(job: &Job, assembly: Id) -> Option<Id> {
    job.outwards(FieldName::Inside, assembly).find_map(|id| job.item(id)?.read(FieldName::Vehicle))
}

pub(super) fn is_of_donor(job: &Job, part: Id) -> bool {
    assembly_of(job, part).is_some_and(|assembly| is_donors(job, assembly))
}

/// Whether an assembly is one of a donor's.
pub(super) fn is_donors(job: &Job, assembly: Id) -> bool {
    vehicle_of(job, assembly).is_some_and(|vehicle| is_donor(job, vehicle))
}

/// Whether a vehicle only gives parts.
pub(crate) fn is_donor(job: &Job, vehicle: Id) -> bool {
    job.item(vehicle).is_some_and(|vehicle| vehicle.is(FieldName::Donor))
}

/// The vehicle being done.
pub(crate) fn vehicle_done(job: &Job) -> Option<Id> {
    job.standing_ids(Kind::Vehicle).find(|vehicle| !is_donor(job, *vehicle))
}

/// Parts that are off, or were, what came off last first.
fn removals_turned_round(job: &Job) -> Vec<Id> {
    let off = job.standing_ids(Kind::Part).filter(|part| job.item(*part).is_some_and(|item| item.is(FieldName::Off)));
    let off: Vec<Id> = off.filter(|part| !is_of_donor(job, *part)).collect();
    in_order(off, |part| {
        let item = job.item(*part);
        let order: Option<i64> = item.and_then(|item| item.read(FieldName::Order));
        let tag: Option<i64> = item.and_then(|item| item.read(FieldName::Tag));
        // The later of two that came off at once, by their ids, comes first, as everywhere in what is turned round.
        (order.is_none(), Reverse(order), if order.is_none() { tag } else { None }, Reverse(*part))
    })
}

/// The rules that say something of parts that are off.
fn rules_between(job: &Job, known: &BTreeSet<Id>) -> Vec<After> {
    let rules = job.standing_ids(Kind::GoesAfter).filter_map(|rule| {
        let item = job.item(rule)?;
        let (of, other): (Id, Id) = (item.read(FieldName::Of)?, item.read(FieldName::Other)?);
        let (mut targets, mut sources) = (parts_of(job, of, known)?, parts_of(job, other, known)?);
        // One inside the other: the rest of the outer one is meant.
        if targets.is_subset(&sources) {
            sources.retain(|part| !targets.contains(part));
        } else {
            targets.retain(|part| !sources.contains(part));
        }
        (!targets.is_empty() && !sources.is_empty()).then_some(After { rule, other, sources, targets })
    });
    rules.collect()
}

/// A part, or the parts of an assembly and of all inside it, as far as they were off.
fn parts_of(job: &Job, id: Id, known: &BTreeSet<Id>) -> Option<BTreeSet<Id>> {
    if job.is_struck(id) {
        return None;
    }
    match job.kind(id)? {
        Kind::Part => Some(known.get(&id).copied().into_iter().collect()),
        Kind::Assembly => {
            let inside = job.within(Kind::Assembly, FieldName::Inside, id).into_iter();
            let parts = inside.flat_map(|assembly| job.children(Kind::Part, FieldName::Assembly, assembly));
            Some(parts.filter(|part| known.contains(part)).collect())
        }
        _ => None,
    }
}

/// When a part goes on: its own word, else that of its assembly or the nearest one around that.
pub(super) fn paint_of(job: &Job, part: Id) -> Option<Paint> {
    let own = job.item(part)?.read(FieldName::Paint);
    own.or_else(|| {
        let mut around = job.outwards(FieldName::Inside, assembly_of(job, part)?);
        around.find_map(|assembly| job.item(assembly)?.read(FieldName::Paint))
    })
}

/// Whether the vehicle of a part is painted; where none is named, that of the job.
pub(super) fn is_painted(job: &Job, part: Id) -> bool {
    let named = assembly_of(job, part).and_then(|assembly| vehicle_of(job, assembly));
    let vehicle = named.or_else(|| vehicle_done(job));
    vehicle.and_then(|vehicle| job.item(vehicle)).is_some_and(|item| item.is(FieldName::Painted))
}

/// Parts before the paint, and after it; nothing where only one of both is said. What is painted waits for no paint.
fn painted_around(job: &Job, parts: &[Id]) -> Option<(Vec<Id>, Vec<Id>)> {
    let waits = |part: &Id, paint| paint_of(job, *part) == Some(paint) && !is_painted(job, *part);
    let of = |paint| parts.iter().copied().filter(|part| waits(part, paint)).collect::<Vec<Id>>();
    let (before, after) = (of(Paint::Before), of(Paint::After));
    (!before.is_empty() && !after.is_empty()).then_some((before, after))
}

struct Graph {
    nodes: Vec<Node>,
    next: Vec<Vec<usize>>,
    previous: Vec<Vec<usize>>,
    /// How many of the previous ones are not placed.
    waits_for: Vec<usize>,
}

impl Graph {
    fn new(parts: &[Id], rules: &[After], paint: Option<(Vec<Id>, Vec<Id>)>) -> Self {
        let mut nodes: Vec<Node> = parts.iter().copied().map(Node::Part).collect();
        let at: BTreeMap<Id, usize> = parts.iter().enumerate().map(|(at, part)| (*part, at)).collect();
        nodes.extend((0..rules.len()).map(Node::Rule));
        nodes.push(Node::Paint);
        let count = nodes.len();
        let mut graph =
            Self { nodes, next: vec![Vec::new(); count], previous: vec![Vec::new(); count], waits_for: vec![0; count] };
        for (rule, after) in rules.iter().enumerate() {
            graph.join(&at, after.sources.iter(), parts.len() + rule, after.targets.iter());
        }
        if let Some((before, after)) = paint {
            graph.join(&at, before.iter(), count - 1, after.iter());
        }
        graph
    }

    fn join<'a>(
        &mut self,
        at: &BTreeMap<Id, usize>,
        sources: impl Iterator<Item = &'a Id>,
        middle: usize,
        targets: impl Iterator<Item = &'a Id>,
    ) {
        let into = sources.filter_map(|part| Some((*at.get(part)?, middle)));
        let out_of = targets.filter_map(|part| Some((middle, *at.get(part)?)));
        for (from, to) in into.chain(out_of) {
            self.next[from].push(to);
            self.previous[to].push(from);
            self.waits_for[to] += 1;
        }
    }

    fn ordered(&mut self, rules: &[After]) -> (Vec<Id>, Vec<Circle>) {
        let count = self.nodes.len();
        let mut placed = vec![false; count];
        let (mut order, mut circles) = (Vec::new(), Vec::new());
        // Assemblies that wait for one another do so part by part, each time by the same rules: told once.
        let mut known: BTreeSet<(BTreeSet<Id>, bool)> = BTreeSet::new();
        let mut free: BinaryHeap<Reverse<(usize, usize)>> = BinaryHeap::new();
        // What is no part is passed at once.
        let key = |nodes: &[Node], at: usize| (if matches!(nodes[at], Node::Part(_)) { at + 1 } else { 0 }, at);
        free.extend((0..count).filter(|at| self.waits_for[*at] == 0).map(|at| Reverse(key(&self.nodes, at))));
        loop {
            while let Some(Reverse((_, at))) = free.pop() {
                placed[at] = true;
                if let Node::Part(part) = self.nodes[at] {
                    order.push(part);
                }
                for to in self.next[at].clone() {
                    self.waits_for[to] = self.waits_for[to].saturating_sub(1);
                    if self.waits_for[to] == 0 && !placed[to] {
                        free.push(Reverse(key(&self.nodes, to)));
                    }
                }
            }
            let Some(stuck) = (0..count).find(|at| !placed[*at]) else { return (order, circles) };
            let first = self.first_of_ring(stuck, &placed);
            let told = self.circles_through(first, &placed).into_iter().map(|circle| self.told(&circle, rules));
            circles.extend(told.filter(|told| known.insert((told.rules.iter().copied().collect(), told.paint))));
            free.push(Reverse(key(&self.nodes, first)));
        }
    }

    /// The first part among nodes that wait for one another and for nothing else, looked for behind one that is stuck.
    fn first_of_ring(&self, stuck: usize, placed: &[bool]) -> usize {
        let mut at = stuck;
        loop {
            let before = reached(&self.previous, at, placed);
            let after = reached(&self.next, at, placed);
            // What it waits for, and does not wait for it, stands before all of this.
            match before.keys().find(|other| !after.contains_key(other)) {
                Some(outside) => at = *outside,
                None => {
                    let parts = before.keys().copied().filter(|at| matches!(self.nodes[*at], Node::Part(_)));
                    return parts.min().unwrap_or(at);
                }
            }
        }
    }

    /// The shortest circle through a node by each of those that it waits for; in each one waits for the one before it.
    fn circles_through(&self, first: usize, placed: &[bool]) -> Vec<Vec<usize>> {
        let from = reached(&self.next, first, placed);
        let waited_for = self.previous[first].iter().filter(|before| !placed[**before]);
        let circles = waited_for.map(|before| {
            let mut circle = vec![*before];
            while let Some(at) = circle.last().and_then(|at| from.get(at)).filter(|at| **at != first) {
                circle.push(*at);
            }
            circle.push(first);
            circle.reverse();
            circle
        });
        circles.collect()
    }

    /// Beginning with its least part, so that one circle is told in one way.
    fn told(&self, circle: &[usize], rules: &[After]) -> Circle {
        let is_part = |at: &usize| matches!(self.nodes[*at], Node::Part(_));
        let begin = circle.iter().enumerate().filter(|(_, at)| is_part(at)).min_by_key(|(_, at)| **at);
        let begin = begin.map_or(0, |(begin, _)| begin);
        let mut told = Circle { parts: Vec::new(), rules: Vec::new(), paint: false };
        for at in circle[begin..].iter().chain(&circle[..begin]) {
            match self.nodes[*at] {
                Node::Part(part) => told.parts.push(part),
                Node::Rule(rule) => told.rules.push(rules[rule].rule),
                Node::Paint => told.paint = true,
            }
        }
        told
    }
}

/// All nodes that are not placed and are reached from one by its neighbours, each with the one it was reached from, the nearest
/// first; itself only where a circle leads back.
fn reached(neighbours: &[Vec<usize>], from: usize, placed: &[bool]) -> BTreeMap<usize, usize> {
    let mut reached = BTreeMap::new();
    let mut waiting = VecDeque::from([from]);
    while let Some(at) = waiting.pop_front() {
        for to in neighbours[at].iter().copied().filter(|to| !placed[*to]) {
            if let Entry::Vacant(entry) = reached.entry(to) {
                entry.insert(at);
                waiting.push_back(to);
            }
        }
    }
    reached
}
