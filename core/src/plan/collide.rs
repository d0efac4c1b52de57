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
    let rest: Vec<Held> = all(model).into_iter().filter(|held| *held != one).collect();
    let mut model_without = only(model, &rest);
    let limit = match one {
        Held::Cash => model.limits.cash?,
        Held::Stage(at) => model.limits.stages[at].1,
        Held::Minutes => model.limits.minutes?,
        Held::LeastOrder(_) | Held::Rule(_) => return (solve(&model_without, nodes, 1).taken.is_some()).then_some(0),
    };
    // What a plan costs is now how much of the limit it uses.
    let stage = if let Held::Stage(at) = one { Some(model.limits.stages[at].0) } else { None };
    let of_cash = |cash: i64, at: usize| if stage.is_none_or(|stage| stage == at) { cash } else { 0 };
    let of = |cash: i64, minutes: i64, at: usize| if one == Held::Minutes { minutes } else { of_cash(cash, at) };
    for take in model_without.cells.iter_mut().flat_map(|cell| &mut cell.takes) {
        take.cost = of(take.cash, take.minutes, take.stage);
    }
    for shared in &mut model_without.shared {
        shared.cost = of(shared.cash, shared.minutes, shared.stage);
    }
    model_without.rules.retain(super::model::Rule::is_hard);
    let taken = solve(&model_without, nodes, 1).taken?;
    let worth = model_without.worth(&taken);
    let used = match one {
        Held::Minutes => worth.minutes,
        Held::Stage(at) => worth.stages[model.limits.stages[at].0],
        _ => worth.cash,
    };
    Some(used - limit)
}
