//! A job as a model: which quotes may be taken for which parts, what they share, what goes with which order.

use std::collections::{BTreeMap, BTreeSet};

use super::bands::as_f64;
use super::model::{Carriage, Cell, Chosen, Limits, Load, Model, Order, Rule, Shared, Take};
use super::query::PlanQuery;
pub(super) use crate::costing::donor_cost;
use crate::costing::{KitView, Offers, OnTop, QuoteCost, in_job_currency, offers, wait_of};
use crate::inspect::together;
use crate::job::Job;
use crate::job::vocabulary::{Relation, Route, Stance};
use crate::quantity::{Mass, Money};
use crate::record::{FieldName, Id, Item, Kind};

/// A model with what its numbers stand for.
pub(super) struct Planned {
    pub(super) model: Model,
    /// For each cell, for each take: what it settles, part by part.
    pub(super) settles: Vec<Vec<Vec<Settled>>>,
    /// For each cell whether it was decided before, and the part's own cheapest quote by part.
    pub(super) decided: Vec<bool>,
    pub(super) cheapest: BTreeMap<Id, Id>,
    /// What somebody chose, by part.
    pub(super) chosen: BTreeMap<Id, Id>,
    /// What was chosen may be chosen otherwise.
    pub(super) reopened: bool,
    /// Copies of kits by number, and donors.
    pub(super) shared: Vec<What>,
    /// Supplier and stage of each order.
    pub(super) orders: Vec<(Id, i64)>,
    /// The record of each rule.
    pub(super) rules: Vec<Id>,
    pub(super) stages: Vec<i64>,
    pub(super) unplanned: Vec<Id>,
    /// How long each quote takes to come in.
    pub(super) waits: BTreeMap<Id, i64>,
    /// What is paid at first for each quote in full that may be taken, by part and quote.
    pub(super) peaks: BTreeMap<(Id, Id), i64>,
}

/// For each part a quote that is taken for it, and one for the pieces that a kit has too few of.
pub(super) type Fixed = BTreeMap<Id, (Id, Option<Id>)>;

/// What is taken for one part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Settled {
    pub(super) part: Id,
    pub(super) quote: Id,
    pub(super) route: Route,
    pub(super) rest: Option<Id>,
}

/// Something that is paid once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum What {
    /// A copy of a kit, with the pieces in it by part.
    Kit {
        quote: Id,
        pieces: Vec<(Id, i64)>,
    },
    Donor(Id),
}

/// A take of one part, before parts are put together.
#[derive(Clone)]
struct Way {
    take: Take,
    settled: Settled,
}

struct Builder<'a> {
    job: &'a Job,
    query: &'a PlanQuery,
    model: Model,
    shared: Vec<What>,
    kits: BTreeMap<Id, Vec<usize>>,
    donors: BTreeMap<Id, usize>,
    orders: BTreeMap<(Id, i64), usize>,
    /// Duty and tax of each order.
    on_top: Vec<OnTop>,
    stages: Vec<i64>,
    waits: BTreeMap<Id, i64>,
    peaks: BTreeMap<(Id, Id), i64>,
    pinned: BTreeSet<Id>,
    forbidden: BTreeSet<Id>,
}

pub(super) fn planned(job: &Job, query: &PlanQuery) -> Planned {
    planned_with(job, query, &Fixed::new())
}

/// The same, where parts go with what is given for them, as if that was decided, as far as it may be taken.
pub(super) fn planned_with(job: &Job, query: &PlanQuery, fixed: &Fixed) -> Planned {
    let mut builder = Builder::new(job, query);
    let parts: Vec<Id> = job.standing_ids(Kind::Part).collect();
    let mut all: BTreeMap<Id, Offers> = BTreeMap::new();
    for part in parts {
        let mut offers = offers(job, part, query.today, query.set.as_ref(), query.reopen);
        // What is given and was chosen is as decided as if nothing was open again: it stays, whatever is pinned or forbidden.
        let chosen = offers.chosen.filter(|chosen| fixed.get(&part) == Some(&(*chosen, None)));
        if chosen.is_some() {
            offers.quotes.retain(|quote| Some(quote.id) == chosen);
        }
        all.insert(part, offers);
    }
    builder.stages = stages(job, all.keys().copied());
    let mut ways: BTreeMap<Id, (bool, Vec<Way>)> = BTreeMap::new();
    let mut unplanned = Vec::new();
    for (part, offers) in &all {
        let mut found = builder.ways(*part, offers);
        let is_fixed = fixed.get(part).is_some_and(|fixed| retain_fixed(&mut found, *fixed));
        if found.is_empty() {
            unplanned.push(*part);
        } else {
            ways.insert(*part, (offers.decided || is_fixed, found));
        }
    }
    follow_decided(job, &mut ways);
    let chosen = all.iter().filter_map(|(part, offers)| Some((*part, offers.chosen?))).collect();
    let cheapest = all.iter().filter_map(|(part, offers)| Some((*part, offers.cheapest?))).collect();
    let (mut settles, mut decided) = (Vec::new(), Vec::new());
    let mut done: BTreeSet<Id> = BTreeSet::new();
    for part in ways.keys().copied().collect::<Vec<_>>() {
        if !done.insert(part) {
            continue;
        }
        let mut group = vec![part];
        if !ways[&part].0 {
            let others = together(job, part).into_iter();
            group.extend(
                others.filter(|other| ways.get(other).is_some_and(|(decided, _)| !decided) && !done.contains(other)),
            );
        }
        let cells = match group.len() {
            1 => None,
            _ => combined(&group.iter().map(|part| ways[part].1.as_slice()).collect::<Vec<_>>()),
        };
        match cells {
            Some(takes) => {
                done.extend(&group);
                let (of_takes, of_settles) = takes.into_iter().unzip();
                builder.model.cells.push(Cell { takes: of_takes });
                settles.push(of_settles);
                decided.push(false);
            }
            // One alone, or parts that no route is left for together.
            None => {
                let (was_decided, of_part) = &ways[&part];
                builder.model.cells.push(Cell { takes: of_part.iter().map(|way| way.take.clone()).collect() });
                settles.push(of_part.iter().map(|way| vec![way.settled]).collect());
                decided.push(*was_decided);
            }
        }
    }
    builder.tax_least_charges();
    let rules = builder.rules(&settles);
    builder.limit();
    let mut orders: Vec<(usize, (Id, i64))> = builder.orders.iter().map(|(key, at)| (*at, *key)).collect();
    orders.sort_unstable();
    Planned {
        model: builder.model,
        settles,
        decided,
        cheapest,
        chosen,
        reopened: query.reopen,
        shared: builder.shared,
        orders: orders.into_iter().map(|(_, key)| key).collect(),
        rules,
        stages: builder.stages,
        unplanned,
        waits: builder.waits,
        peaks: builder.peaks,
    }
}

/// Leaves only the ways to take a quote, with what the kit has too few of from the same where that is still so; whether any is left.
fn retain_fixed(ways: &mut Vec<Way>, (quote, rest): (Id, Option<Id>)) -> bool {
    let takes = |way: &Way| way.settled.quote == quote;
    let is_same = |way: &Way| takes(way) && way.settled.rest == rest;
    if ways.iter().any(is_same) {
        ways.retain(is_same);
    } else if ways.iter().any(takes) {
        ways.retain(takes);
    } else {
        return false;
    }
    true
}

/// What is decided together with a part that is decided already goes the same way, where anything is quoted for that.
fn follow_decided(job: &Job, ways: &mut BTreeMap<Id, (bool, Vec<Way>)>) {
    let decided = ways.iter().filter(|(_, (decided, _))| *decided);
    let routes: BTreeMap<Id, Route> =
        decided.filter_map(|(part, (_, ways))| Some((*part, ways.first()?.settled.route))).collect();
    for (part, (_, ways)) in ways.iter_mut().filter(|(_, (decided, _))| !decided) {
        let Some(route) = together(job, *part).iter().find_map(|other| routes.get(other)) else { continue };
        if ways.iter().any(|way| way.settled.route == *route) {
            ways.retain(|way| way.settled.route == *route);
        }
    }
}

/// The takes of parts that are decided together: each with the same route. Nothing where there is none.
fn combined(parts: &[&[Way]]) -> Option<Vec<(Take, Vec<Settled>)>> {
    /// More are not tried: four wheels with four suppliers each are 256.
    const MOST: usize = 400;
    let mut all: Vec<(Take, Vec<Settled>)> = Vec::new();
    for route in Route::ALL {
        let mut of_route: Vec<(Take, Vec<Settled>)> = vec![(Take::default(), Vec::new())];
        for ways in parts {
            let same: Vec<&Way> = ways.iter().filter(|way| way.settled.route == *route).collect();
            let mut next = Vec::new();
            for (take, settled) in &of_route {
                next.extend(same.iter().map(|way| {
                    let mut settled = settled.clone();
                    settled.push(way.settled);
                    (both(take, &way.take, settled.len() == 1), settled)
                }));
            }
            next.truncate(MOST);
            of_route = next;
        }
        all.extend(of_route);
    }
    (!all.is_empty()).then_some(all)
}

fn both(one: &Take, other: &Take, is_first: bool) -> Take {
    let mut uses = one.uses.clone();
    uses.extend(other.uses.iter().filter(|at| !one.uses.contains(at)));
    Take {
        cost: one.cost + other.cost,
        cash: one.cash + other.cash,
        minutes: one.minutes + other.minutes,
        // Parts that are decided together are paid in the stage of the first.
        stage: if is_first { other.stage } else { one.stage },
        loads: one.loads.iter().chain(&other.loads).copied().collect(),
        uses,
    }
}

/// The stages in which parts are ordered, in order; parts of which nothing is said are in the first.
fn stages(job: &Job, parts: impl Iterator<Item = Id>) -> Vec<i64> {
    let all: BTreeSet<i64> = parts.map(|part| stage_of(job, part)).chain([1]).collect();
    all.into_iter().collect()
}

/// The stage of a part: its own, else that of the assembly it is from, or of one that holds that.
fn stage_of(job: &Job, part: Id) -> i64 {
    let item = job.item(part);
    let own: Option<i64> = item.and_then(|item| item.read(FieldName::Stage));
    let assembly: Option<Id> = item.and_then(|item| item.read(FieldName::Assembly));
    let mut assemblies = assembly.into_iter().flat_map(|assembly| job.outwards(FieldName::Inside, assembly));
    own.or_else(|| assemblies.find_map(|assembly| job.item(assembly)?.read(FieldName::Stage))).unwrap_or(1)
}

impl<'a> Builder<'a> {
    fn new(job: &'a Job, query: &'a PlanQuery) -> Self {
        let with = |stance: Stance, more: &[Id]| {
            let kinds =
                [Kind::Quote, Kind::Supplier, Kind::Vehicle].into_iter().flat_map(|kind| job.standing_ids(kind));
            let said = kinds.filter(|id| job.item(*id).and_then(|item| item.read(FieldName::Stance)) == Some(stance));
            said.chain(more.iter().copied()).collect::<BTreeSet<Id>>()
        };
        Self {
            job,
            query,
            model: Model::default(),
            shared: Vec::new(),
            kits: BTreeMap::new(),
            donors: BTreeMap::new(),
            orders: BTreeMap::new(),
            on_top: Vec::new(),
            stages: vec![1],
            waits: BTreeMap::new(),
            peaks: BTreeMap::new(),
            pinned: with(Stance::Pinned, &query.pin),
            forbidden: with(Stance::Forbidden, &query.forbid),
        }
    }

    fn supplier_of(&self, quote: &Item) -> Option<Id> {
        self.job.supplier_called(&quote.read::<String>(FieldName::From)?)
    }

    fn donor_of(&self, quote: &QuoteCost) -> Option<Id> {
        let donor = quote.record.values.vehicle.filter(|_| quote.route == Route::Donor)?;
        self.job.item_of(Kind::Vehicle, donor).map(|_| donor)
    }

    /// Every way to settle one part.
    fn ways(&mut self, part: Id, offers: &Offers) -> Vec<Way> {
        let mut quotes: Vec<&QuoteCost> = Vec::new();
        for quote in &offers.quotes {
            if self.is_open(quote) || offers.chosen == Some(quote.id) {
                quotes.push(quote);
            }
        }
        let is_pinned = |builder: &Self, quote: &QuoteCost| {
            let item = builder.job.item(quote.id);
            let whose = [Some(quote.id), item.and_then(|item| builder.supplier_of(item)), builder.donor_of(quote)];
            whose.into_iter().flatten().any(|id| builder.pinned.contains(&id))
        };
        if quotes.iter().any(|quote| is_pinned(self, quote)) {
            quotes.retain(|quote| is_pinned(self, quote));
        }
        self.peaks.extend(quotes.iter().map(|quote| ((part, quote.id), quote.peak.minor)));
        let pieces = self.job.item(part).and_then(|item| item.read(FieldName::Quantity)).unwrap_or(1_i64).max(1);
        let stage = stage_of(self.job, part);
        let stage = self.stages.iter().position(|known| *known == stage).unwrap_or(0);
        let mut ways: Vec<Way> = Vec::new();
        let (kits, singles): (Vec<&QuoteCost>, Vec<&QuoteCost>) =
            quotes.into_iter().partition(|quote| quote.route == Route::Kit);
        for quote in &singles {
            let take = self.take(part, quote, stage, (pieces, pieces));
            ways.push(Way { take, settled: Settled { part, quote: quote.id, route: quote.route, rest: None } });
        }
        for kit in kits {
            let Some(view) = offers.kits.iter().find(|view| view.quote == kit.id) else { continue };
            let held = view.covers.iter().find(|cover| cover.part == part).map_or(0, |cover| cover.pieces);
            if held <= 0 {
                continue;
            }
            for copies in 1..=(pieces + held - 1) / held {
                // As many copies as this are bought for nobody.
                if copies > 12 {
                    break;
                }
                let uses = self.copies(kit, view, stage, usize::try_from(copies).unwrap_or(1));
                let rest = pieces - copies * held;
                let settled = Settled { part, quote: kit.id, route: Route::Kit, rest: None };
                if rest <= 0 {
                    ways.push(Way { take: Take { stage, uses, ..Take::default() }, settled });
                    continue;
                }
                for single in singles.iter().filter(|single| single.route == Route::Buy) {
                    let mut take = self.take(part, single, stage, (rest, pieces));
                    take.uses.extend(uses.iter().copied());
                    ways.push(Way { take, settled: Settled { rest: Some(single.id), ..settled } });
                }
            }
        }
        ways
    }

    /// Whether a quote may be taken at all.
    fn is_open(&mut self, quote: &QuoteCost) -> bool {
        let Some(item) = self.job.item(quote.id) else { return false };
        let supplier = self.supplier_of(item);
        let whose = [Some(quote.id), supplier, self.donor_of(quote)];
        let supplier_wait = || self.job.item(supplier?).and_then(wait_of);
        let wait = wait_of(item).or_else(supplier_wait).map(|(likely, _, _)| whole(likely));
        if let Some(wait) = wait {
            self.waits.insert(quote.id, wait);
        }
        let latest =
            self.query.latest.or_else(|| self.of_job(FieldName::Latest).filter(|_| !self.query.without_limits));
        let days = latest.zip(self.query.today).map(|(latest, today)| latest.0 - today.0);
        !whose.into_iter().flatten().any(|id| self.forbidden.contains(&id))
            && !self.query.forbid_routes.contains(&quote.route)
            && wait.zip(days).is_none_or(|(wait, days)| wait <= days)
    }

    fn of_job<T: crate::record::Stored>(&self, field: FieldName) -> Option<T> {
        self.job.id().and_then(|id| self.job.item(id)?.read(field))
    }

    /// A quote for some of the pieces of a part.
    fn take(&mut self, part: Id, quote: &QuoteCost, stage: usize, (wanted, of): (i64, i64)) -> Take {
        let share = |amount: i64| share_of(amount, wanted, of);
        let mass =
            self.job.item(part).and_then(|item| item.read::<Mass>(FieldName::Mass)).map_or(0, |mass| mass.grams());
        let mut take = Take {
            cost: share(rounded(quote.present.minor)),
            cash: share(quote.peak.minor),
            minutes: share(quote.own_time.0),
            stage,
            loads: self.loads(quote, stage, share(self.price(quote)), mass.saturating_mul(wanted)),
            uses: Vec::new(),
        };
        if let Some(donor) = self.donor_of(quote) {
            take.uses.push(self.donor(donor));
        }
        take
    }

    /// Its price without carriage, tax and duty: what a supplier counts.
    fn price(&self, quote: &QuoteCost) -> i64 {
        let item = self.job.item(quote.id);
        item.zip(quote.cash).and_then(|(item, cash)| in_job_currency(self.job, item, cash)).unwrap_or(0).max(0)
    }

    /// What a quote adds to the order of its supplier, where the terms of that one are known.
    fn loads(&mut self, quote: &QuoteCost, stage: usize, value: i64, mass: i64) -> Vec<Load> {
        let supplier = self.job.item(quote.id).and_then(|item| self.supplier_of(item));
        let load = supplier.map(|supplier| Load { order: self.order(supplier, stage), value, mass });
        load.into_iter().collect()
    }

    fn order(&mut self, supplier: Id, stage: usize) -> usize {
        let key = (supplier, self.stages[stage]);
        if let Some(known) = self.orders.get(&key) {
            return *known;
        }
        let money = |id: Id, field| {
            let money: Option<Money> = self.job.item(id).and_then(|item| item.read(field));
            let currency = self.job.settings().currency;
            money.filter(|money| money.currency == currency).map(|money| money.minor.max(0))
        };
        // What they charge comes without duty and tax where their terms say so.
        let on_top = OnTop::of(self.job, supplier);
        let with_on_top = |net: i64| net.saturating_add(on_top.on(net));
        let tiers = self.job.children(Kind::Tier, FieldName::Of, supplier).filter_map(|tier| {
            let from_mass: Option<Mass> = self.job.item(tier).and_then(|item| item.read(FieldName::FromMass));
            Some(Carriage {
                from_value: money(tier, FieldName::FromValue).unwrap_or(0),
                from_mass: from_mass.map_or(0, |mass| mass.grams()),
                carriage: with_on_top(money(tier, FieldName::Shipping)?),
            })
        });
        let mut tiers: Vec<Carriage> = tiers.collect();
        tiers.sort_unstable();
        let at = self.model.orders.len();
        self.model.orders.push(Order {
            stage,
            carriage: with_on_top(money(supplier, FieldName::Shipping).unwrap_or(0)),
            tiers,
            free_from: money(supplier, FieldName::FreeFrom),
            minimum_order: money(supplier, FieldName::MinimumOrder).unwrap_or(0),
            minimum_charge: money(supplier, FieldName::MinimumCharge).unwrap_or(0),
        });
        self.on_top.push(on_top);
        self.orders.insert(key, at);
        at
    }

    /// Duty and tax of a least charge: what those of its pieces come short of them is paid on top, as with the charge itself.
    /// These stand after all orders that are told.
    fn tax_least_charges(&mut self) {
        let mut taxed: BTreeMap<usize, usize> = BTreeMap::new();
        for (at, on_top) in self.on_top.iter().enumerate() {
            let Order { stage, minimum_charge, .. } = self.model.orders[at];
            let least = on_top.on(minimum_charge);
            if least > 0 {
                taxed.insert(at, self.model.orders.len());
                self.model.orders.push(Order { stage, minimum_charge: least, ..Order::default() });
            }
        }
        let takes = self.model.cells.iter_mut().flat_map(|cell| &mut cell.takes).map(|take| &mut take.loads);
        for loads in takes.chain(self.model.shared.iter_mut().map(|shared| &mut shared.loads)) {
            let on_top = |load: &Load| {
                let order = *taxed.get(&load.order)?;
                Some(Load { order, value: self.on_top[load.order].on(load.value), mass: 0 })
            };
            let more: Vec<Load> = loads.iter().filter_map(on_top).collect();
            loads.extend(more);
        }
    }

    /// So many copies of a kit.
    fn copies(&mut self, kit: &QuoteCost, view: &KitView, stage: usize, copies: usize) -> Vec<usize> {
        let mut known = self.kits.remove(&kit.id).unwrap_or_default();
        while known.len() < copies {
            let loads = self.loads(kit, stage, self.price(kit), 0);
            known.push(self.model.shared.len());
            self.model.shared.push(Shared {
                cost: rounded(kit.present.minor),
                cash: kit.peak.minor,
                minutes: kit.own_time.0,
                stage,
                loads,
            });
            let pieces = view.covers.iter().map(|cover| (cover.part, cover.pieces)).collect();
            self.shared.push(What::Kit { quote: kit.id, pieces });
        }
        let first = known[..copies].to_vec();
        self.kits.insert(kit.id, known);
        first
    }

    fn donor(&mut self, vehicle: Id) -> usize {
        if let Some(known) = self.donors.get(&vehicle) {
            return *known;
        }
        let (cost, cash) = donor_cost(self.job, vehicle);
        let at = self.model.shared.len();
        self.model.shared.push(Shared { cost, cash, ..Shared::default() });
        self.shared.push(What::Donor(vehicle));
        self.donors.insert(vehicle, at);
        at
    }

    /// The rules that can be read, with their records.
    fn rules(&mut self, settles: &[Vec<Vec<Settled>>]) -> Vec<Id> {
        let mut ids = Vec::new();
        for id in self.job.standing_ids(Kind::Rule).collect::<Vec<_>>() {
            let Some(item) = self.job.item(id) else { continue };
            let subject: Option<Id> = item.read(FieldName::Of);
            let (Some(relation), Some(subject), Some(other)) =
                (item.read::<Relation>(FieldName::Relation), subject, item.read::<Id>(FieldName::Other))
            else {
                continue;
            };
            let price: Option<Money> = item.read(FieldName::Cash);
            let rule = Rule {
                relation,
                subject: self.chosen(settles, subject),
                other: self.chosen(settles, other),
                price: price.map_or(0, |price| price.minor.max(0)),
            };
            self.model.rules.push(rule);
            ids.push(id);
        }
        ids
    }

    /// What of a rule a plan can choose: a quote; a part that another piece comes in for; a donor.
    fn chosen(&self, settles: &[Vec<Vec<Settled>>], id: Id) -> Chosen {
        if let Some(at) = self.donors.get(&id) {
            return Chosen::Shared(*at);
        }
        // A kit is taken for any of its parts; whoever uses more of it uses the first, too.
        if let Some(first) = self.kits.get(&id).and_then(|copies| copies.first()) {
            return Chosen::Shared(*first);
        }
        let is_renewed = |route| matches!(route, Route::Exchange | Route::Buy | Route::Kit | Route::Donor);
        let counts = |settled: &Settled| {
            settled.quote == id || settled.rest == Some(id) || (settled.part == id && is_renewed(settled.route))
        };
        for (cell, takes) in settles.iter().enumerate() {
            let which: Vec<bool> = takes.iter().map(|settled| settled.iter().any(counts)).collect();
            if which.contains(&true) {
                return Chosen::Takes { cell, which };
            }
        }
        Chosen::Never
    }

    fn limit(&mut self) {
        let counts = !self.query.without_limits;
        let currency = self.job.settings().currency;
        let budget: Option<Money> = self.of_job(FieldName::Budget);
        let budget = budget.filter(|budget| counts && budget.currency == currency).map(|budget| budget.minor);
        let hours: Option<crate::quantity::Minutes> = self.of_job(FieldName::OwnHours);
        let stages = self.query.stages.iter().filter_map(|one| {
            Some((self.stages.iter().position(|stage| *stage == one.stage)?, within(one.budget.max(0))))
        });
        self.model.limits = Limits {
            cash: self.query.budget.or(budget).map(within),
            stages: stages.collect::<BTreeMap<_, _>>().into_iter().collect(),
            minutes: self.query.minutes.or_else(|| hours.filter(|_| counts).map(|hours| hours.0)).map(within),
        };
    }
}

/// No sum of a plan is anywhere near: limits beyond it are none, and can be added to.
const LARGEST: i64 = 1 << 44;

fn within(limit: i64) -> i64 {
    limit.clamp(-LARGEST, LARGEST)
}

/// A share of an amount, rounded up to the unit.
fn share_of(amount: i64, wanted: i64, of: i64) -> i64 {
    let exact = i128::from(amount) * i128::from(wanted);
    i64::try_from((exact + i128::from(of) - 1).div_euclid(i128::from(of.max(1)))).unwrap_or(i64::MAX)
}

/// An estimate, rounded once.
#[expect(clippy::cast_possible_truncation, reason = "costs are bounded, and a plan of larger ones would be refused")]
pub(super) fn rounded(minor: f64) -> i64 {
    libm::rint(minor.clamp(-as_f64(LARGEST), as_f64(LARGEST))) as i64
}

#[expect(clippy::cast_possible_truncation, reason = "waits are whole days within their bound")]
const fn whole(days: f64) -> i64 {
    days as i64
}
