//! The order of refitting, for whatever came off and whatever goes on after whatever.

use std::collections::{BTreeMap, BTreeSet};

use asfound_core::job::vocabulary::{Fit, Paint, Route};
use asfound_core::job::{Change, Command, Job, Query, View, ask};
use asfound_core::quantity::Minutes;
use asfound_core::record::{FieldName, Id, Kind};
use asfound_core::refit::{LackWhy, ReadyView, RefitOrder, RefitState};
use petgraph::algo::is_cyclic_directed;
use petgraph::graphmap::DiGraphMap;
use proptest::prelude::*;

use crate::cases;
use crate::garage::Garage;

/// Of a part its assembly, its place in the order of removal if it has one, its paint, and how far it is on.
type Off = (usize, Option<i64>, Option<Paint>, Option<Fit>);

/// A job.
#[derive(Debug, Clone)]
struct Stripped {
    parts: Vec<Off>,
    /// What goes on after what: parts, or assemblies.
    rules: Vec<(bool, usize, bool, usize)>,
}

fn any_stripped(rules: usize) -> impl Strategy<Value = Stripped> {
    let paint = || prop_oneof![8 => Just(None), 1 => Just(Some(Paint::Before)), 1 => Just(Some(Paint::After))];
    let fit = || prop_oneof![6 => Just(None), 1 => Just(Some(Fit::Tried)), 2 => Just(Some(Fit::Fitted))];
    let part = (0_usize..3, prop::option::weighted(0.9, 1_i64..30), paint(), fit());
    let rule = (any::<bool>(), 0_usize..12, any::<bool>(), 0_usize..12);
    (prop::collection::vec(part, 1..10), prop::collection::vec(rule, 0..=rules))
        .prop_map(|(parts, rules)| Stripped { parts, rules })
}

struct Built {
    job: Job,
    parts: Vec<Id>,
}

fn build(stripped: &Stripped) -> Built {
    let mut garage = Garage::new();
    let assemblies: Vec<Id> = (0..3).map(|_| garage.fresh()).collect();
    for (number, id) in assemblies.iter().enumerate() {
        let mut changes = vec![Change::Name(format!("Assembly {number}"))];
        // The second lies inside the first.
        changes.extend((number == 1).then(|| Change::Inside(assemblies[0])));
        let _ = garage.command(0, Command::Create { id: *id, kind: Kind::Assembly, changes });
    }
    let mut parts = Vec::new();
    for (assembly, order, paint, fit) in &stripped.parts {
        let (id, quote, choice) = (garage.fresh(), garage.fresh(), garage.fresh());
        let mut changes = vec![Change::Assembly(assemblies[*assembly])];
        changes.extend(order.map_or(vec![Change::FromBoxes(true)], |order| vec![Change::Order(order)]));
        changes.extend(paint.map(Change::Paint));
        changes.extend(fit.map(Change::Fit));
        let _ = garage.command(0, Command::Create { id, kind: Kind::Part, changes });
        let changes = vec![Change::Of(id), Change::Route(Route::UseAgain)];
        let _ = garage.command(0, Command::Create { id: quote, kind: Kind::Quote, changes });
        let _ = garage.command(0, Command::Choose { id: choice, quote, part: None, who: None });
        parts.push(id);
    }
    for (of_part, of, other_part, other) in &stripped.rules {
        let pick = |is_part: bool, at: usize| if is_part { parts[at % parts.len()] } else { assemblies[at % 3] };
        let id = garage.fresh();
        let changes = vec![Change::Of(pick(*of_part, *of)), Change::Other(pick(*other_part, *other))];
        let _ = garage.command(0, Command::Create { id, kind: Kind::GoesAfter, changes });
    }
    Built { job: garage.devices[0].clone(), parts }
}

/// What must be on before what, by the words of the rules, looked up one by one, and by the paint.
fn before_after(built: &Built, stripped: &Stripped) -> Vec<(Id, Id)> {
    let mut pairs = by_rules(built, stripped);
    let painted = |paint| {
        built.parts.iter().zip(&stripped.parts).filter(move |(_, part)| part.2 == Some(paint)).map(|(id, _)| *id)
    };
    pairs.extend(painted(Paint::Before).flat_map(|before| painted(Paint::After).map(move |after| (before, after))));
    pairs
}

fn by_rules(built: &Built, stripped: &Stripped) -> Vec<(Id, Id)> {
    let inside = |assembly: usize| -> BTreeSet<usize> { if assembly == 0 { [0, 1].into() } else { [assembly].into() } };
    let parts_of = |is_part: bool, at: usize| -> BTreeSet<Id> {
        if is_part {
            return [built.parts[at % built.parts.len()]].into();
        }
        let within = inside(at % 3);
        let parts = built.parts.iter().zip(&stripped.parts);
        parts.filter(|(_, part)| within.contains(&part.0)).map(|(id, _)| *id).collect()
    };
    let mut pairs = Vec::new();
    for (of_part, of, other_part, other) in &stripped.rules {
        let (targets, sources) = (parts_of(*of_part, *of), parts_of(*other_part, *other));
        let targets_left: Vec<Id> = if targets.is_subset(&sources) {
            targets.iter().copied().collect()
        } else {
            targets.difference(&sources).copied().collect()
        };
        let sources_left: Vec<Id> = if targets.is_subset(&sources) {
            sources.difference(&targets).copied().collect()
        } else {
            sources.iter().copied().collect()
        };
        pairs.extend(sources_left.iter().flat_map(|source| targets_left.iter().map(|target| (*source, *target))));
    }
    pairs
}

fn ready(job: &Job) -> ReadyView {
    match ask(job, &Query::Ready { today: None }, Id::from_bytes([1; 16])) {
        View::Ready(view) => *view,
        other => panic!("{other:?}"),
    }
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// Every part that was off stands in the order once, whatever the rules.
    /// Break: in `Graph::ordered` stop where something is stuck.
    #[test]
    fn every_part_stands_once(stripped in any_stripped(6)) {
        let built = build(&stripped);
        let mut order = RefitOrder::of(&built.job).parts;
        let steps: usize = ready(&built.job).assemblies.iter().map(|line| line.parts).sum();
        prop_assert_eq!(steps, built.parts.len());
        order.sort_unstable();
        let mut parts = built.parts.clone();
        parts.sort_unstable();
        prop_assert_eq!(order, parts);
    }

    /// Nothing goes on before what it waits for; where that cannot be, and only there, a circle is named. Whether it can be
    /// is asked of a general graph library (petgraph).
    /// Break: in `Graph::join` leave the rule's targets out.
    #[test]
    fn nothing_before_what_it_waits_for(stripped in any_stripped(6)) {
        let built = build(&stripped);
        let order = RefitOrder::of(&built.job);
        let pairs = before_after(&built, &stripped);
        let graph: DiGraphMap<Id, ()> = DiGraphMap::from_edges(pairs.iter().map(|(before, after)| (*before, *after, ())));
        prop_assert_eq!(is_cyclic_directed(&graph), !order.circles.is_empty());
        if order.circles.is_empty() {
            let at = |part: Id| order.parts.iter().position(|known| *known == part);
            for (before, after) in pairs {
                prop_assert!(at(before) < at(after));
            }
        }
    }

    /// In a circle that is named each part waits for the one before it.
    /// Break: in `circles_through` leave out that the walk is turned round.
    #[test]
    fn a_circle_goes_round(stripped in any_stripped(8)) {
        let built = build(&stripped);
        let pairs: BTreeSet<(Id, Id)> = before_after(&built, &stripped).into_iter().collect();
        for circle in RefitOrder::of(&built.job).circles {
            prop_assert!(circle.parts.len() > 1);
            let next = circle.parts.iter().skip(1).chain(circle.parts.first());
            for (one, after) in circle.parts.iter().zip(next) {
                prop_assert!(pairs.contains(&(*one, *after)), "{:?}", circle);
            }
        }
    }

    /// Turned round again it is the order in which the parts came off, as far as nothing else was said; what never came off
    /// in an order comes last.
    /// Break: in `removals_turned_round` leave one `Reverse` out.
    #[test]
    fn turned_round_again_it_is_the_order_of_removal(stripped in any_stripped(0)) {
        let mut stripped = stripped;
        stripped.parts.iter_mut().for_each(|part| part.2 = None);
        let built = build(&stripped);
        let mut removal: Vec<(i64, Id)> = built.parts.iter().zip(&stripped.parts).filter_map(|(id, part)| Some((part.1?, *id))).collect();
        removal.sort_unstable();
        let order = RefitOrder::of(&built.job).parts;
        let (ordered, rest) = order.split_at(removal.len());
        let back: Vec<Id> = ordered.iter().rev().copied().collect();
        prop_assert_eq!(back, removal.into_iter().map(|(_, id)| id).collect::<Vec<_>>());
        prop_assert!(rest.iter().all(|part| built.job.item(*part).is_some_and(|item| item.read::<i64>(FieldName::Order).is_none())));
    }

    /// A part waits by a rule exactly while something that must be on before it is not on for good; what is only tried is not.
    /// Break: in `unfitted_sources` take what is tried for fitted.
    #[test]
    fn it_waits_while_what_goes_first_is_not_on(stripped in any_stripped(5)) {
        let built = build(&stripped);
        let fit: BTreeMap<Id, Option<Fit>> = built.parts.iter().copied().zip(stripped.parts.iter().map(|part| part.3)).collect();
        let pairs = by_rules(&built, &stripped);
        for part in built.parts.iter().filter(|part| fit[part] != Some(Fit::Fitted)) {
            let View::RefitStep(view) = ask(&built.job, &Query::RefitStep { part: *part, today: None }, Id::from_bytes([1; 16])) else {
                panic!("no step")
            };
            let waits = view.step.lacks.iter().any(|lack| matches!(lack.why, LackWhy::GoesAfter | LackWhy::Circle));
            let not_on = pairs.iter().any(|(before, after)| after == part && fit[before] != Some(Fit::Fitted));
            prop_assert_eq!(waits, not_on);
        }
    }

    /// An assembly is ready exactly when nothing stands in its way, refitted when all is on; a tick takes nothing away from
    /// any other assembly, and the part that is ticked is then lacked by nobody.
    /// Break: in `work_out` tell a part that is on what it lacks.
    #[test]
    fn a_tick_helps(stripped in any_stripped(5), tick in 0_usize..12) {
        let built = build(&stripped);
        let before = ready(&built.job);
        for line in &before.assemblies {
            prop_assert_eq!(line.state == RefitState::Refitted, line.fitted == line.parts);
            prop_assert_eq!(line.state == RefitState::Blocked, !line.lacks.is_empty());
            prop_assert!(line.earliest.is_none() || !line.no_date);
        }
        let part = built.parts[tick % built.parts.len()];
        let entry = asfound_core::record::Entry {
            id: asfound_core::record::EntryId { replica: crate::any_entry::replica(200), seq: 1 },
            at: asfound_core::quantity::Millis(9),
            ops: vec![asfound_core::record::Op {
                record: part,
                field: FieldName::Fit.id(),
                value: Change::Fit(Fit::Fitted).store(),
                over: built.job.item(part).expect("a part").head_entries(FieldName::Fit.id()),
            }],
        };
        let mut job = built.job.clone();
        job.absorb([entry]);
        let after = ready(&job);
        for line in &after.assemblies {
            let was = before.assemblies.iter().find(|known| known.id == line.id).expect("it was there");
            prop_assert!(line.lacks.len() <= was.lacks.len(), "{:?} then {:?}", was.lacks, line.lacks);
            prop_assert!(line.lacks.iter().all(|lack| lack.part != Some(part)));
        }
    }

    /// An evening is never filled beyond its hours, and what fits is never more than there is.
    /// Break: in `this_evening` take the steps that fit as free.
    #[test]
    fn an_evening_is_not_overfilled(stripped in any_stripped(4), minutes in -10_i64..200) {
        let built = build(&stripped);
        let View::ThisEvening(view) = ask(&built.job, &Query::ThisEvening { minutes: Minutes::new(minutes), today: None }, Id::from_bytes([1; 16])) else {
            panic!("no evening")
        };
        prop_assert!(view.picked.0 <= minutes.max(0));
        let done: i64 = view.items.iter().map(|item| item.minutes.0 / i64::try_from(item.steps).expect("few") * i64::try_from(item.fits).expect("few")).sum();
        prop_assert!(done <= minutes.max(0));
        prop_assert!(view.items.iter().all(|item| item.fits <= item.steps));
    }
}
