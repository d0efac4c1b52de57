use std::collections::BTreeMap;

use super::collide::collide;
use super::of_job::{Planned, Settled, What, donor_cost, planned};
use super::query::PlanQuery;
use super::search::{PlanLinks, Search, Solved};
use super::steps::{By, Step, steps};
use super::view::{
    Because, PlanChoice, PlanDonor, PlanKit, PlanOrder, PlanStep, PlanSums, PlanTaken, PlanView, PlanWhy, Spare,
    StepWhy,
};
use super::worth::Worth;
use crate::job::vocabulary::Route;
use crate::job::{Job, called};
use crate::quantity::{Currency, Millis, Minutes, Money};
use crate::record::{Entry, EntryId, FieldName, Id, Op, Replica, Stored};

/// How many steps are made where nothing is said.
const NODES: u32 = 300;
/// The most steps.
const MOST_NODES: u32 = 100_000;

/// One quote for every part, so that all together cost least: present value, carriage, least charges, kits and donors once, under
/// the budget, the own hours and the fit rules. Every sum that is told was counted again in whole numbers.
#[must_use]
pub fn plan(job: &Job, query: &PlanQuery) -> PlanView {
    plan_while(job, query, &mut |_| true)
}

/// The same, as long as `go_on` says so: it is asked before every step, and may look at what the plan has come to.
#[must_use]
pub fn plan_while(job: &Job, query: &PlanQuery, go_on: &mut dyn FnMut(&dyn Fn() -> PlanView) -> bool) -> PlanView {
    on_turned(job, query, |job| searched(job, query, go_on))
}

fn searched(job: &Job, query: &PlanQuery, go_on: &mut dyn FnMut(&dyn Fn() -> PlanView) -> bool) -> PlanView {
    let planned = planned(job, query);
    let nodes = query.nodes.unwrap_or(NODES).clamp(1, MOST_NODES);
    let links = PlanLinks::of(&planned.model);
    let mut search = Search::begin(&planned.model, &links, query.seed.unwrap_or(1).into());
    if let Some(own) = planned.own() {
        search.offer(&own);
    }
    for _ in 0..nodes {
        if !go_on(&|| planned.told(job, search.solved())) || !search.step() {
            break;
        }
    }
    let mut view = planned.told(job, search.solved());
    if view.sums.is_none() {
        view.collide = collide(job, &planned, nodes);
    }
    view
}

/// Does something with the job as a query turns it.
pub(super) fn on_turned<T>(job: &Job, query: &PlanQuery, what: impl FnOnce(&Job) -> T) -> T {
    match query.aim {
        Some(aim) => what(&with_aim(job, aim)),
        None => what(job),
    }
}

/// The same job with another aim, as an entry that nobody stores would make it.
fn with_aim(job: &Job, aim: crate::job::vocabulary::Aim) -> Job {
    let mut turned = job.clone();
    let Some((record, item)) = job.id().and_then(|id| Some((id, job.item(id)?))) else { return turned };
    let field = FieldName::Aim.id();
    let op = Op { record, field, value: aim.store(), over: item.head_entries(field) };
    let id = EntryId {
        replica: Replica::from_bytes([0; 8]),
        seq: job.record().last_seq(Replica::from_bytes([0; 8])).saturating_add(1),
    };
    turned.absorb([Entry { id, at: Millis(0), ops: vec![op] }]);
    turned
}

impl Planned {
    /// A plan of the model with what its numbers stand for.
    fn told(&self, job: &Job, solved: Solved) -> PlanView {
        let model = &self.model;
        let currency = job.settings().currency;
        let money = |minor| Money::from_minor(minor, currency);
        let summed = |taken: Vec<usize>| (model.worth(&taken), taken);
        let singly = self.singly().map(summed);
        let own = self.own().map(summed);
        let mut view = PlanView {
            currency,
            proof: solved.proof,
            nodes: solved.nodes,
            sums: None,
            bound: solved.bound.map(money),
            singly: singly.as_ref().map(|(worth, taken)| self.sums(worth, taken, currency)),
            own: own
                .as_ref()
                .filter(|_| self.reopened && !self.chosen.is_empty())
                .map(|(worth, taken)| self.sums(worth, taken, currency)),
            steps: Vec::new(),
            choices: Vec::new(),
            orders: Vec::new(),
            kits: Vec::new(),
            donors: Vec::new(),
            unplanned: self.unplanned.clone(),
            unkept: Vec::new(),
            collide: Vec::new(),
        };
        let Some(taken) = solved.taken else { return view };
        let worth = model.worth(&taken);
        view.sums = Some(self.sums(&worth, &taken, currency));
        view.steps = own.map(|(_, own)| self.told_steps(job, &own, &taken)).unwrap_or_default();
        view.choices = self.choices(job, &worth, &taken, singly.as_ref().map(|(_, taken)| taken.as_slice()));
        view.orders = self.told_orders(job, &worth, &taken, currency);
        view.kits = self.told_kits(job, &worth, &taken, currency);
        view.donors = self.told_donors(job, &worth, &taken, currency);
        let broken =
            model.rules.iter().zip(&self.rules).filter(|(rule, _)| rule.is_broken(&taken, |at| worth.used[at]));
        view.unkept = broken.map(|(_, id)| *id).collect();
        view
    }

    fn told_steps(&self, job: &Job, own: &[usize], taken: &[usize]) -> Vec<PlanStep> {
        let currency = job.settings().currency;
        let money = |minor| Money::from_minor(minor, currency);
        let tell = |step: Step| {
            let settled = step.cells.iter().flat_map(|cell| &self.settles[*cell][taken[*cell]]);
            let mut parts: Vec<PlanTaken> =
                settled.map(|settled| PlanTaken { part: settled.part, quote: settled.quote }).collect();
            parts.sort_unstable();
            let of_shared = |shared: usize| match &self.shared[shared] {
                What::Donor(vehicle) => (true, Some(job.name(*vehicle))),
                What::Kit { quote, .. } => (false, job.item(*quote).and_then(|item| item.read(FieldName::From))),
            };
            let of_order = |order: usize| Some(job.name(self.orders[order].0));
            let (why, name) = match step.by {
                By::Itself => (StepWhy::Itself, None),
                By::Rest => (StepWhy::Rest, None),
                By::Order(order) => (StepWhy::Order, of_order(order)),
                By::NoOrder(order) => (StepWhy::NoOrder, of_order(order)),
                By::Shared(shared) => match of_shared(shared) {
                    (true, name) => (StepWhy::Donor, name),
                    (false, name) => (StepWhy::Kit, name),
                },
                By::NoShared(shared) => match of_shared(shared) {
                    (true, name) => (StepWhy::NoDonor, name),
                    (false, name) => (StepWhy::NoKit, name),
                },
            };
            PlanStep {
                parts,
                why,
                name,
                saves: money(step.saves),
                cash: money(step.cash),
                own_time: Minutes(step.minutes),
            }
        };
        steps(&self.model, own, taken).into_iter().map(tell).collect()
    }

    /// The take of each cell that has each part's own cheapest quote; the cheapest by itself where parts are decided together.
    pub(super) fn singly(&self) -> Option<Vec<usize>> {
        self.of_quotes(|part| self.cheapest.get(&part).copied())
    }

    /// What was chosen, with each open part's own cheapest.
    pub(super) fn own(&self) -> Option<Vec<usize>> {
        self.of_quotes(|part| self.chosen.get(&part).or_else(|| self.cheapest.get(&part)).copied())
    }

    /// The take of each cell that has these quotes.
    pub(super) fn of_quotes(&self, wanted: impl Fn(Id) -> Option<Id>) -> Option<Vec<usize>> {
        let fits = |settled: &Settled| wanted(settled.part) == Some(settled.quote);
        let of_cell = |(cell, takes): (usize, &Vec<Vec<Settled>>)| {
            let of = |take: usize| &self.model.cells[cell].takes[take];
            let alone =
                |take: usize| of(take).cost + of(take).uses.iter().map(|at| self.model.shared[*at].cost).sum::<i64>();
            (0..takes.len()).min_by_key(|take| (!takes[*take].iter().all(fits), alone(*take), of(*take).uses.len()))
        };
        self.settles.iter().enumerate().map(of_cell).collect()
    }

    pub(super) fn sums(&self, worth: &Worth, taken: &[usize], currency: Currency) -> PlanSums {
        let money = |minor| Money::from_minor(minor, currency);
        let quotes = self.settled(taken).flat_map(|settled| [Some(settled.quote), settled.rest]).flatten();
        PlanSums {
            cost: money(worth.cost),
            cash: money(worth.cash),
            own_time: Minutes(worth.minutes),
            wait: quotes.filter_map(|quote| self.waits.get(&quote).copied()).max().unwrap_or(0),
            carriage: money(worth.orders.iter().map(|order| order.charge).sum()),
            fits: worth.breach.is_none(),
        }
    }

    pub(super) fn settled<'a>(&'a self, taken: &'a [usize]) -> impl Iterator<Item = &'a Settled> {
        self.settles.iter().zip(taken).flat_map(|(takes, at)| &takes[*at])
    }

    fn choices(&self, job: &Job, worth: &Worth, taken: &[usize], singly: Option<&[usize]>) -> Vec<PlanChoice> {
        let mut choices: Vec<PlanChoice> = Vec::new();
        for (cell, take) in taken.iter().enumerate() {
            let alone = singly.map(|singly| singly[cell]).filter(|alone| alone != take && !self.decided[cell]);
            for (at, settled) in self.settles[cell][*take].iter().enumerate() {
                let Settled { part, quote, route, rest } = *settled;
                let other = self.cheapest.get(&part).copied().filter(|other| *other != quote && !self.decided[cell]);
                let offered = |take: &Vec<Settled>| take.get(at).is_some_and(|settled| Some(settled.quote) == other);
                let own = alone.filter(|alone| offered(&self.settles[cell][*alone]));
                let own = own.or_else(|| self.settles[cell].iter().position(offered).filter(|_| other.is_some()));
                let why = match (other, own) {
                    (Some(_), Some(own)) => Some(self.why(worth, taken, cell, own)),
                    // No take of the cell has it: the others that are decided with it do not go that way.
                    (Some(_), None) => Some(PlanWhy { because: Because::Together, more: 0 }),
                    (None, _) => None,
                };
                let tag = job.item(part).and_then(|item| item.read(FieldName::Tag));
                let from = job.item(quote).and_then(|item| item.read(FieldName::From));
                let peak = |quote| self.peaks.get(&(part, quote)).copied().unwrap_or(0);
                choices.push(PlanChoice {
                    tag,
                    name: job.name(part),
                    from,
                    part,
                    quote,
                    route,
                    rest,
                    decided: self.decided[cell],
                    chosen: self.chosen.get(&part) == Some(&quote),
                    instead_of: other,
                    why,
                    cash: peak(quote),
                    rest_cash: rest.map(peak),
                });
            }
        }
        choices.sort_unstable_by_key(|choice| choice.part);
        choices
    }

    /// What stands against another take of a cell, all others as they are.
    fn why(&self, worth: &Worth, taken: &[usize], cell: usize, own: usize) -> PlanWhy {
        let mut turned = taken.to_vec();
        turned[cell] = own;
        let then = self.model.worth(&turned);
        let breach = then.breach;
        let more = then.cost - worth.cost;
        let carriage = |worth: &Worth| worth.orders.iter().map(|order| order.charge).sum::<i64>();
        let dearer_carriage = carriage(&then) - carriage(worth);
        let is_shared = self.model.cells[cell].takes[taken[cell]].uses.iter().any(|at| worth.used[*at]);
        let (because, more) = if breach.rules > 0 {
            (Because::Rule, more)
        } else if breach.orders > 0 {
            (Because::LeastOrder, breach.orders)
        } else if breach.cash > 0 {
            (Because::Budget, breach.cash)
        } else if breach.minutes > 0 {
            (Because::Hours, breach.minutes)
        } else if dearer_carriage > 0 && 2 * dearer_carriage > more {
            (Because::Carriage, more)
        } else if is_shared {
            (Because::Shared, more)
        } else if self.settles[cell][taken[cell]].len() > 1 {
            (Because::Together, more)
        } else {
            (Because::Dearer, more)
        };
        PlanWhy { because, more }
    }

    fn told_orders(&self, job: &Job, worth: &Worth, taken: &[usize], currency: Currency) -> Vec<PlanOrder> {
        let money = |minor| Money::from_minor(minor, currency);
        let mut told: Vec<PlanOrder> = Vec::new();
        for ((order, ordered), (supplier, stage)) in self.model.orders.iter().zip(&worth.orders).zip(&self.orders) {
            if ordered.count == 0 {
                continue;
            }
            let carriage = order.carriage_of(ordered.value, ordered.mass);
            let to_free = order.free_from.filter(|free| *free > ordered.value).map(|free| money(free - ordered.value));
            told.push(PlanOrder {
                supplier: *supplier,
                name: job.name(*supplier),
                stage: *stage,
                quotes: Vec::new(),
                value: money(ordered.value),
                mass: ordered.mass,
                carriage: money(carriage),
                short: money(ordered.charge - carriage),
                to_free,
            });
        }
        let names: BTreeMap<String, Id> =
            told.iter().map(|order| (called(&job.name(order.supplier)), order.supplier)).collect();
        for (cell, take) in taken.iter().enumerate() {
            let stage = self.stages[self.model.cells[cell].takes[*take].stage];
            for quote in
                self.settles[cell][*take].iter().flat_map(|settled| [Some(settled.quote), settled.rest]).flatten()
            {
                let from: Option<String> = job.item(quote).and_then(|item| item.read(FieldName::From));
                let supplier = from.and_then(|from| names.get(&called(&from)).copied());
                let order = told.iter_mut().find(|order| Some(order.supplier) == supplier && order.stage == stage);
                if let Some(order) = order
                    && !order.quotes.contains(&quote)
                {
                    order.quotes.push(quote);
                }
            }
        }
        told.iter_mut().for_each(|order| order.quotes.sort_unstable());
        told.sort_unstable_by_key(|order| (order.stage, order.supplier));
        told
    }

    fn told_kits(&self, job: &Job, worth: &Worth, taken: &[usize], currency: Currency) -> Vec<PlanKit> {
        let mut kits: BTreeMap<Id, PlanKit> = BTreeMap::new();
        for ((what, shared), used) in self.shared.iter().zip(&self.model.shared).zip(&worth.used) {
            let What::Kit { quote, pieces } = what else { continue };
            if !used {
                continue;
            }
            let price = Money::from_minor(shared.cash, currency);
            let kit = kits.entry(*quote).or_insert(PlanKit {
                quote: *quote,
                from: job.item(*quote).and_then(|item| item.read(FieldName::From)),
                copies: 0,
                price,
                spare: Vec::new(),
            });
            kit.copies += 1;
            for (part, held) in pieces {
                match kit.spare.iter_mut().find(|spare| spare.part == *part) {
                    Some(spare) => spare.pieces += held,
                    None => kit.spare.push(Spare { part: *part, pieces: *held }),
                }
            }
        }
        for settled in self.settled(taken).filter(|settled| settled.route == Route::Kit) {
            let needed = job.item(settled.part).and_then(|item| item.read(FieldName::Quantity)).unwrap_or(1_i64).max(1);
            let kit = kits.get_mut(&settled.quote);
            if let Some(spare) = kit.and_then(|kit| kit.spare.iter_mut().find(|spare| spare.part == settled.part)) {
                spare.pieces = (spare.pieces - needed).max(0);
            }
        }
        let mut kits: Vec<PlanKit> = kits.into_values().collect();
        for kit in &mut kits {
            kit.spare.retain(|spare| spare.pieces > 0);
            kit.spare.sort_unstable();
        }
        kits
    }

    fn told_donors(&self, job: &Job, worth: &Worth, taken: &[usize], currency: Currency) -> Vec<PlanDonor> {
        let used = self.shared.iter().zip(&worth.used).filter(|(_, used)| **used);
        let donors = used.filter_map(|(what, _)| if let What::Donor(vehicle) = what { Some(*vehicle) } else { None });
        let mut told: Vec<PlanDonor> = donors
            .map(|vehicle| {
                let gives = |settled: &&Settled| {
                    let from: Option<Id> = job.item(settled.quote).and_then(|item| item.read(FieldName::Vehicle));
                    settled.route == Route::Donor && from == Some(vehicle)
                };
                let mut parts: Vec<Id> = self.settled(taken).filter(gives).map(|settled| settled.part).collect();
                parts.sort_unstable();
                PlanDonor {
                    vehicle,
                    name: job.name(vehicle),
                    cost: Money::from_minor(donor_cost(job, vehicle).0, currency),
                    parts,
                }
            })
            .collect();
        told.sort_unstable_by_key(|donor| donor.vehicle);
        told
    }
}
