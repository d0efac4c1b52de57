use super::frontier::Scarce;
use super::model::Model;
use super::of_job::Planned;
use super::search::{PlanProof, solve};
use super::view::{Collides, Collision};
use crate::job::Job;
use crate::record::{FieldName, Id, Kind};

/// A limit or a rule, by where it stands in a model.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Held {
    Cash,
    Stage(usize),
    Minutes,
    LeastOrder(usize),
    Rule(usize),
}

/// Where nothing fits: a smallest set of limits and rules that collide, each with how much more of it would do while all others
/// are kept. Left out are one after another whatever nothing fits without either (a deletion filter). Nothing where it is not
/// proved that nothing fits.
pub(super) fn collide(job: &Job, planned: &Planned, nodes: u32) -> Vec<Collides> {
    let model = &planned.model;
    if solve(model, nodes, 1).proof != PlanProof::NothingFits {
        return Vec::new();
    }
    let mut held = all(model);
    let mut at = 0;
    while at < held.len() {
        let mut fewer = held.clone();
        fewer.remove(at);
        if solve(&only(model, &fewer), nodes, 1).proof == PlanProof::NothingFits {
            held = fewer;
        } else {
            at += 1;
        }
    }
    let tell = |one: &Held| {
        let (limit, of, stage) = match *one {
            Held::Cash => (Collision::Budget, None, None),
            Held::Stage(at) => (Collision::Stage, None, Some(planned.stages[model.limits.stages[at].0])),
            Held::Minutes => (Collision::Hours, None, None),
            Held::LeastOrder(at) => (Collision::LeastOrder, Some(planned.orders[at].0), Some(planned.orders[at].1)),
            Held::Rule(at) => (Collision::Rule, Some(planned.rules[at]), None),
        };
        let names = of.map(|of| named(job, of)).unwrap_or_default();
        Collides { limit, of, names, stage, more: more(model, *one, nodes) }
    };
    held.iter().map(tell).collect()
}

/// The name of a supplier; of a rule its subject and the other one.
fn named(job: &Job, id: Id) -> Vec<String> {
    let ends = [FieldName::Of, FieldName::Other].into_iter().filter_map(|field| job.item(id)?.read::<Id>(field));
    let named = |end: Id| job.item_of(Kind::Quote, end).and_then(|quote| quote.read(FieldName::Of)).unwrap_or(end);
    let names: Vec<String> = ends.map(|end| job.name(named(end))).collect();
    if names.is_empty() { vec![job.name(id)] } else { names }
}

fn all(model: &Model) -> Vec<Held> {
    let rules = model.rules.iter().enumerate().filter(|(_, rule)| rule.is_hard()).map(|(at, _)| Held::Rule(at));
    let orders = model.orders.iter().enumerate().filter(|(_, order)| order.minimum_order > 0);
    let stages = (0..model.limits.stages.len()).map(Held::Stage);
    let cash = model.limits.cash.map(|_| Held::Cash);
    let minutes = model.limits.minutes.map(|_| Held::Minutes);
    rules.chain(orders.map(|(at, _)| Held::LeastOrder(at))).chain(stages).chain(minutes).chain(cash).collect()
}

/// The model with these alone.
fn only(model: &Model, held: &[Held]) -> Model {
    let mut model = model.clone();
    if !held.contains(&Held::Cash) {
        model.limits.cash = None;
    }
    if !held.contains(&Held::Minutes) {
        model.limits.minutes = None;
    }
    let stages = std::mem::take(&mut model.limits.stages).into_iter().enumerate();
    model.limits.stages = stages.filter(|(at, _)| held.contains(&Held::Stage(*at))).map(|(_, stage)| stage).collect();
    for (at, order) in model.orders.iter_mut().enumerate() {
        if !held.contains(&Held::LeastOrder(at)) {
            order.minimum_order = 0;
        }
    }
    let rules = std::mem::take(&mut model.rules).into_iter().enumerate();
    model.rules =
        rules.filter(|(at, rule)| !rule.is_hard() || held.contains(&Held::Rule(*at))).map(|(_, rule)| rule).collect();
    model
}

/// How much more of one limit would do, all others kept: the least of it that a plan can do with. Rules and least orders give way
/// or do not.
fn more(model: &Model, one: Held, nodes: u32) -> Option<i64> {
    let (used, limit) = match one {
        Held::Cash => (Used::Cash, model.limits.cash?),
        Held::Stage(at) => (Used::Stage(model.limits.stages[at].0), model.limits.stages[at].1),
        Held::Minutes => (Used::Minutes, model.limits.minutes?),
        Held::LeastOrder(_) | Held::Rule(_) => {
            let rest: Vec<Held> = all(model).into_iter().filter(|held| *held != one).collect();
            return solve(&only(model, &rest), nodes, 1).taken.is_some().then_some(0);
        }
    };
    least(model, used, nodes).map(|(least, _)| least - limit)
}

/// What a plan can use less or more of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Used {
    Cash,
    Stage(usize),
    Minutes,
}

/// The least cash, or own time, that a plan needs, all other limits and rules kept; and whether that is proved.
pub(super) fn least_use(model: &Model, of: Scarce, nodes: u32) -> Option<(i64, bool)> {
    least(model, if of == Scarce::Hours { Used::Minutes } else { Used::Cash }, nodes)
}

fn least(model: &Model, of: Used, nodes: u32) -> Option<(i64, bool)> {
    let held = |one: &Held| match (*one, of) {
        (Held::Cash, Used::Cash) | (Held::Minutes, Used::Minutes) => false,
        (Held::Stage(at), Used::Stage(stage)) => model.limits.stages[at].0 != stage,
        _ => true,
    };
    let mut model = only(model, &all(model).into_iter().filter(held).collect::<Vec<_>>());
    // What a plan costs is now how much it uses. Carriage is counted whatever is looked for: a minute more must be dearer than
    // all carriage there is.
    let carriage = |order: &super::model::Order| {
        let tiers = order.tiers.iter().map(|tier| tier.carriage);
        tiers.chain([order.carriage]).max().unwrap_or(0).saturating_add(order.minimum_charge)
    };
    let weight = if of == Used::Minutes { 1 + model.orders.iter().map(carriage).sum::<i64>() } else { 1 };
    let of_stage = |cash: i64, at: usize| if of == Used::Cash || of == Used::Stage(at) { cash } else { 0 };
    let used = |cash: i64, minutes: i64, at: usize| {
        if of == Used::Minutes { minutes.saturating_mul(weight) } else { of_stage(cash, at) }
    };
    for take in model.cells.iter_mut().flat_map(|cell| &mut cell.takes) {
        take.cost = used(take.cash, take.minutes, take.stage);
    }
    for shared in &mut model.shared {
        shared.cost = used(shared.cash, shared.minutes, shared.stage);
    }
    model.rules.retain(super::model::Rule::is_hard);
    let solved = solve(&model, nodes, 1);
    let worth = model.worth(&solved.taken?);
    let reached = match of {
        Used::Minutes => worth.minutes,
        Used::Stage(stage) => worth.stages[stage],
        Used::Cash => worth.cash,
    };
    // Of a stage, carriage of the others counts as well: the least is then near, and not proved.
    let is_proved = solved.proof == PlanProof::Best && !matches!(of, Used::Stage(_));
    Some((reached, is_proved))
}
