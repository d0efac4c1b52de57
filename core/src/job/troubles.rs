//! What is wrong across the whole job: breaches that merging can bring about are folded all the same, and shown here.

use std::collections::{BTreeMap, BTreeSet};

use super::change::Change;
use super::history::is_settled;
use super::vocabulary::Route;
use super::whole::Job;
use crate::costing;
use crate::inspect;
use crate::problem::{Code, Hint, Problem};
use crate::quantity::{Currency, Money};
use crate::record::{Fault, FieldName, Id, Item, Kind};
use crate::refit::loose::{Gate, gates, still_loose};
use crate::refit::{RefitOrder, vehicle_done};

/// Every problem of a job, sorted: errors first, then by code and place.
#[must_use]
pub fn troubles(job: &Job) -> Vec<Problem> {
    let mut problems: Vec<Problem> = job.record().faults().into_iter().map(of_fault).collect();
    problems.extend(job.record_problems().cloned());
    problems.extend(twice(job, &[Kind::Part, Kind::Place], FieldName::Tag, Code::TagTwice, Hint::RetagOne, "tag"));
    problems.extend(twice(job, &[Kind::Block], FieldName::Number, Code::BlockTwice, Hint::RetagOne, "block"));
    problems.extend(circles(job, Kind::Assembly, FieldName::Inside));
    problems.extend(circles(job, Kind::Place, FieldName::Within));
    problems.extend(circles(job, Kind::Quote, FieldName::Fallback));
    problems.extend(stale_choices(job));
    problems.extend(odd_quotes(job));
    problems.extend(pairs_apart(job));
    problems.extend(answers_apart(job));
    problems.extend(refit_circles(job));
    problems.extend(loose_although(job));
    if job.ids(Kind::Job).count() > 1 {
        problems.push(Problem::error(Code::OtherJob).with(job.ids(Kind::Job).collect()));
    }
    problems.sort_unstable_by(|a, b| a.severity.cmp(&b.severity).then_with(|| a.cmp(b)));
    problems
}

fn of_fault(fault: Fault) -> Problem {
    match fault {
        Fault::OverwriteLoop(id, field) => {
            let problem = Problem::warning(Code::OverwriteLoop).at(id).hint(Hint::SettleValues);
            FieldName::of(field).map_or(problem.clone(), |field| problem.field(field))
        }
        Fault::EntryTwice(entry) => Problem::warning(Code::EntryTwice).value("entry", entry),
        Fault::Missing(missing) => Problem::warning(Code::EntriesMissing)
            .value("replica", missing.replica)
            .value("first", missing.first)
            .value("last", missing.last)
            .hint(Hint::BringInOther)
            .hint(Hint::FetchAgain),
    }
}

/// What is wrong with one record; asked again when it, or what it points at, changes.
pub(super) fn of_item(job: &Job, id: Id, item: &Item) -> Vec<Problem> {
    let Some(kind) = job.kind(id) else {
        return vec![Problem::warning(Code::KindMissing).at(id).hint(Hint::BringInOther)];
    };
    let mut problems = Vec::new();
    if item.heads(FieldName::Kind.id()).len() > 1 {
        problems.push(Problem::warning(Code::KindTwice).at(id));
    }
    if item.is_struck() {
        return problems;
    }
    for field in item
        .conflicts()
        .into_iter()
        .filter_map(FieldName::of)
        .filter(|field| *field != FieldName::Kind && is_settled(*field))
    {
        problems.push(Problem::warning(Code::Conflict).at(id).field(field).hint(Hint::SettleValues));
    }
    for field in item.fields().filter_map(FieldName::of) {
        problems.extend(of_field(job, id, item, kind, field));
    }
    problems.extend(contradicted(job, id, item, kind));
    problems
}

/// Fields that deny one another, as two devices or an undo may leave them: no one command would have been allowed to.
fn contradicted(job: &Job, id: Id, item: &Item, kind: Kind) -> Option<Problem> {
    match kind {
        Kind::Finding => {
            let (question, outcome): (String, String) =
                (item.read(FieldName::Question)?, item.read(FieldName::Outcome)?);
            let is_own = |id| job.kind(id) == Some(Kind::OwnCheck);
            // A question that is not known here may be one of a newer version.
            let is_odd = inspect::has_answer(&question, &outcome, is_own) == Some(false);
            let problem = Problem::warning(Code::NotAnAnswer).at(id).field(FieldName::Outcome).hint(Hint::CorrectValue);
            is_odd.then(|| problem.value("question", question).value("outcome", outcome))
        }
        Kind::Limit => {
            let of: Option<String> = item.read(FieldName::Feature);
            let field = inspect::crossed(item.read(FieldName::LimitKind), of.as_deref(), |field| item.read(field))?;
            Some(Problem::warning(Code::LimitCrossed).at(id).field(field).hint(Hint::CorrectValue))
        }
        _ => None,
    }
}

/// What is wrong with one field of a record.
fn of_field(job: &Job, id: Id, item: &Item, kind: Kind, field: FieldName) -> Vec<Problem> {
    let mut problems = Vec::new();
    if !field.is_on(kind) {
        problems.push(Problem::warning(Code::FieldOutOfPlace).at(id).field(field).value("kind", kind.word()));
    }
    for head in item.heads(field.id()) {
        let Some(change) = Change::read(field, &head.value) else {
            problems.push(Problem::warning(Code::ValueUnreadable).at(id).field(field).hint(Hint::UseNewer));
            continue;
        };
        if let Some(bound) = change.broken_bound() {
            let problem = Problem::warning(Code::OutOfBounds).at(id).field(field).value("what", bound.what);
            problems.push(problem.value("least", bound.least).value("most", bound.most).hint(Hint::CorrectValue));
        }
        problems.extend(change.target().and_then(|target| of_target(job, id, kind, &change, target)));
    }
    problems
}

/// What is wrong with what a field points at.
fn of_target(job: &Job, id: Id, holder: Kind, change: &Change, target: Id) -> Option<Problem> {
    let field = change.field();
    let Some(kind) = job.kind(target) else {
        return Some(Problem::warning(Code::Dangling).at(id).field(field).with(vec![target]).hint(Hint::BringInOther));
    };
    let kinds = Job::targets(holder, change);
    if !kinds.is_empty() && !kinds.contains(&kind) {
        let problem = Problem::warning(Code::WrongKind).at(id).field(field).value("kind", kind.word());
        return Some(problem.with(vec![target]).hint(Hint::CorrectValue));
    }
    // What was seen somewhere is history, and stays true.
    let holds = matches!(field, FieldName::Place | FieldName::Within | FieldName::Assembly | FieldName::Inside)
        && holder != Kind::Sighting;
    (holds && job.is_struck(target))
        .then(|| Problem::warning(Code::InStruckOut).at(id).field(field).with(vec![target]).hint(Hint::BringBackOrMove))
}

/// Records of these kinds that share a number which only one should have.
fn twice(job: &Job, kinds: &[Kind], field: FieldName, code: Code, hint: Hint, what: &str) -> Vec<Problem> {
    let mut holders: BTreeMap<i64, Vec<Id>> = BTreeMap::new();
    for id in kinds.iter().flat_map(|kind| job.standing_ids(*kind)) {
        if let Some(number) = job.item(id).and_then(|item| item.read(field)) {
            holders.entry(number).or_default().push(id);
        }
    }
    let shared = holders.into_iter().filter(|(_, ids)| ids.len() > 1);
    let problems = shared.map(|(number, ids)| {
        let problem = Problem::warning(code).at(ids[0]).field(field).value(what, number);
        problem.with(ids[1..].to_vec()).hint(hint)
    });
    problems.collect()
}

/// Circles of records that are said to be in one another, each told once.
fn circles(job: &Job, kind: Kind, field: FieldName) -> Vec<Problem> {
    let outer = |id: Id| job.item(id).and_then(|item| item.read::<Id>(field));
    let mut problems = Vec::new();
    // Every record is passed once: on which walk, tells whether a walk has come back to itself.
    let mut passed: BTreeMap<Id, usize> = BTreeMap::new();
    for (walk, start) in job.standing_ids(kind).enumerate() {
        let mut at = Some(start);
        while let Some(id) = at.filter(|id| !passed.contains_key(id)) {
            passed.insert(id, walk);
            at = outer(id);
        }
        let Some(closes) = at.filter(|id| passed.get(id) == Some(&walk)) else { continue };
        let mut circle: Vec<Id> = job.outwards(field, closes).collect();
        if circle.iter().any(|id| job.kind(*id) != Some(kind) || job.is_struck(*id)) {
            continue;
        }
        circle.sort_unstable();
        let first = circle.remove(0);
        problems.push(Problem::warning(Code::Loop).at(first).field(field).with(circle).hint(Hint::MoveOneOut));
    }
    problems
}

/// Decisions whose quote was struck out since, or may not be chosen any more.
fn stale_choices(job: &Job) -> Vec<Problem> {
    let parts = job.standing_ids(Kind::Part);
    let stale = parts.filter_map(|part| {
        let quote: Id = job.item(job.choice_of(part)?)?.read(FieldName::Quote)?;
        let why = costing::why_not_choose(job, quote);
        (job.is_struck(quote) || why.is_some()).then(|| {
            let problem = Problem::warning(Code::ChoiceStale).at(part).with(vec![quote]).hint(Hint::ChooseAgain);
            why.map_or(problem.clone(), |why| problem.value("why", why.word()))
        })
    });
    stale.collect()
}

/// Both sides of an axle that were decided for different routes.
fn pairs_apart(job: &Job) -> Vec<Problem> {
    // Nothing is chosen in most jobs for long: then there is nothing to look through.
    if job.ids(Kind::Choice).next().is_none() {
        return Vec::new();
    }
    let apart = inspect::couples(job).into_iter().filter_map(|(left, right)| {
        let (one, other) = (job.route_of(left)?, job.route_of(right)?);
        (one != other).then(|| {
            let problem = Problem::warning(Code::PairApart).at(left).with(vec![right]).hint(Hint::ChooseAgain);
            problem.value("left", one.word()).value("right", other.word())
        })
    });
    apart.collect()
}

/// Parts that go on after one another in a circle.
fn refit_circles(job: &Job) -> Vec<Problem> {
    if job.ids(Kind::GoesAfter).next().is_none() {
        return Vec::new();
    }
    let order = RefitOrder::of(job);
    let problems = order.open_circles(job).filter_map(|circle| {
        let mut rules = circle.rules.iter().copied();
        let problem = Problem::warning(Code::RefitCircle).at(rules.next()?).hint(Hint::DropRule);
        Some(problem.with(rules.chain(circle.parts.iter().copied()).collect()))
    });
    problems.collect()
}

/// A vehicle that is said to stand on its wheels, or to be on the road, although something is loose: what is slackened later,
/// or a merge, may bring that about.
fn loose_although(job: &Job) -> Option<Problem> {
    let done = vehicle_done(job);
    let says = |field| done.filter(|id| job.item(*id).is_some_and(|item| item.is(field)));
    let (lowered, on_the_road) = (says(FieldName::Lowered), says(FieldName::OnTheRoad));
    lowered.or(on_the_road)?;
    let (lowering, road) = gates(job, &still_loose(job));
    let of = |vehicle: Option<Id>, gate: Gate, field| {
        let vehicle = vehicle.filter(|_| !gate.open)?;
        let problem = Problem::warning(Code::StillLoose).at(vehicle).field(field).hint(Hint::TightenFirst);
        Some(problem.value("joints", gate.joints.len()).with(gate.joints))
    };
    of(on_the_road, road, FieldName::OnTheRoad).or_else(|| of(lowered, lowering, FieldName::Lowered))
}

/// Findings by which two devices answered one question differently, neither knowing of the other's.
fn answers_apart(job: &Job) -> Vec<Problem> {
    // One device knows what it wrote: most jobs have one.
    if job.record().held().0.len() < 2 {
        return Vec::new();
    }
    let findings = job.standing_ids(Kind::Finding).filter_map(|id| job.item(id));
    let parts: BTreeSet<Id> = findings.filter_map(|item| item.read(FieldName::Of)).collect();
    let apart = parts.into_iter().flat_map(|part| inspect::answers_apart(job, part));
    let problem = |(id, shown)| Problem::warning(Code::Conflict).at(id).field(FieldName::Outcome).with(vec![shown]);
    apart.map(|pair| problem(pair).hint(Hint::SettleValues)).collect()
}

/// Prices in a currency that nothing can be added to, and quotes that say no route.
fn odd_quotes(job: &Job) -> Vec<Problem> {
    let currency = job.settings().currency;
    let mut problems = Vec::new();
    for (id, item) in job.standing_ids(Kind::Quote).filter_map(|id| Some((id, job.item(id)?))) {
        let stray = costing::stray_price(item, currency);
        problems.extend(stray.and_then(|field| of_currency(id, item, field, currency)));
        if let Some(field) = costing::lacks(job, item) {
            // What is not known of the part is said at the part.
            let part = item.read::<Id>(FieldName::Of).filter(|_| field != FieldName::RateBasis);
            let problem = Problem::warning(Code::Missing).at(part.unwrap_or(id)).field(field);
            problems.push(problem.with(part.map(|_| id).into_iter().collect()).hint(Hint::CorrectValue));
        }
        if item.read::<Route>(FieldName::Route).is_none() {
            let problem = Problem::warning(Code::Missing).at(id).field(FieldName::Route);
            problems.push(problem.hint(Hint::CorrectValue));
        }
    }
    let settings = job.id().and_then(|id| Some((id, job.item(id)?)));
    problems.extend(settings.and_then(|(id, item)| of_currency(id, item, FieldName::HourValue, currency)));
    problems
}

fn of_currency(id: Id, item: &Item, field: FieldName, currency: Currency) -> Option<Problem> {
    let money: Money = item.read(field)?;
    (money.currency != currency).then(|| {
        let problem = Problem::warning(Code::OtherCurrency).at(id).field(field).hint(Hint::EnterInJobCurrency);
        problem.value("currency", money.currency).value("job", currency)
    })
}
