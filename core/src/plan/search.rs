use std::cmp::Ordering;
use std::collections::BinaryHeap;
use std::rc::Rc;

use serde::{Deserialize, Serialize};

use super::bands::as_f64;
use super::descent::Descent;
use super::domain::{Domain, Empty, OrderOpen, Said};
use super::model::Model;
use super::relaxed::{Found, Relaxed, Weighed};
use super::state::Links;

/// How sure it is that no plan is better.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum PlanProof {
    /// No plan costs less, to the minor unit.
    Best,
    /// No plan is less than the bound; this one may be the best.
    Within,
    /// Nothing keeps all limits and rules.
    NothingFits,
    /// No plan is found yet, and none is ruled out.
    Open,
}

/// What a search has come to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Solved {
    /// The take of each cell; none while nothing is found that fits.
    pub taken: Option<Vec<usize>>,
    /// What it costs.
    pub cost: Option<i64>,
    /// No plan costs less than this; none where nothing fits.
    pub bound: Option<i64>,
    /// How sure that is.
    pub proof: PlanProof,
    /// How many steps were made.
    pub nodes: u32,
}

/// Steps of the relaxation at the beginning, and at every node after it.
const FIRST_STEPS: u32 = 1500;
const STEPS: u32 = 100;
/// While no plan is known, prices are moved as if one cost so much more than what is known that none costs less than.
const AIMED_ABOVE: f64 = 0.1;
/// Prices that move less are near where they come to rest.
const SLOW_PACE: f64 = 0.4;
/// Prices that move less have come to rest.
const LEAST_PACE: f64 = 0.01;
/// At one node in so many a plan is looked for near what is found there, and at one in so many by digging.
const LOOKED_NEAR: u32 = 4;
const DIG: u32 = 24;
const DIG_STEPS: u32 = 40;
/// As many nodes wait at most: what is beyond is not looked into, and the bound stays honest.
const MOST_WAITING: usize = 4_000;

/// Looks for the best plan, step by step, for as long as whoever asks wants.
///
/// A first plan comes from [`Descent`]. Then nodes of a tree are bounded by [`Relaxed`]; what cannot be in a better plan is left
/// out for good, and where that does not settle it the node is divided: first by whether anything goes with an order and for how
/// much, then by what is shared, then by cells. The node of the least bound comes first. Nothing hangs on a clock: as many steps
/// give the same plan on every machine.
pub struct Search<'m> {
    relaxed: Relaxed<'m>,
    descent: Descent<'m>,
    best: Option<(i64, Vec<usize>)>,
    /// No plan that fits costs as much.
    ceiling: i64,
    waiting: BinaryHeap<Node>,
    /// The least bound of nodes that were let go unlooked.
    let_go: f64,
    root: Domain,
    /// Prices that speak against any plan at all.
    against: Vec<f64>,
    found: Found,
    nodes: u32,
}

/// A part of what may be chosen.
struct Node {
    bound: f64,
    depth: u32,
    number: u32,
    way: Option<Rc<Way>>,
    prices: Rc<Vec<f64>>,
}

/// What was said on the way to a node, the last first.
struct Way {
    said: Said,
    before: Option<Rc<Self>>,
}

impl Ord for Node {
    fn cmp(&self, other: &Self) -> Ordering {
        // The least bound first, of equal ones the deepest.
        other.bound.total_cmp(&self.bound).then(self.depth.cmp(&other.depth)).then(other.number.cmp(&self.number))
    }
}

impl PartialOrd for Node {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Node {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Node {}

/// How prices are moved: how far at first, and how often.
#[derive(Debug, Clone, Copy)]
struct Pace {
    first: f64,
    steps: u32,
}

/// What moving prices has come to.
struct Priced {
    bound: f64,
    prices: Vec<f64>,
    seen: Seen,
}

/// How often things were found open while prices settled.
#[derive(Clone)]
struct Seen {
    times: u32,
    takes: Vec<Vec<u32>>,
    shared: Vec<u32>,
    bands: Vec<Vec<u32>>,
}

impl<'m> Search<'m> {
    /// Begins; a first plan is there at once where one is easily found.
    #[must_use]
    pub fn begin(model: &'m Model, links: &'m PlanLinks, seed: u64) -> Self {
        let relaxed = Relaxed::of(model);
        let root = Domain::all(model, relaxed.bands.iter().map(Vec::len));
        let all: i64 = model.cells.iter().map(|cell| cell.takes.iter().map(|take| take.cost).max().unwrap_or(0)).sum();
        let shared: i64 = model.shared.iter().map(|shared| shared.cost.max(0)).sum();
        let bands =
            relaxed.bands.iter().map(|bands| bands.iter().map(|band| band.charge(band.value.0)).max().unwrap_or(0));
        let rules: i64 = model.rules.iter().map(|rule| rule.price.max(0)).sum();
        let ceiling = all + shared + bands.sum::<i64>() + rules + 1;
        let (prices, against) = (Rc::new(relaxed.no_prices()), relaxed.no_prices());
        let first = Node { bound: f64::NEG_INFINITY, depth: 0, number: 0, way: None, prices };
        let mut search = Self {
            relaxed,
            descent: Descent::new(model, &links.0, seed),
            best: None,
            ceiling,
            waiting: BinaryHeap::from([first]),
            let_go: f64::INFINITY,
            root,
            against,
            found: Found::default(),
            nodes: 0,
        };
        if model.cells.iter().all(|cell| !cell.takes.is_empty()) {
            for taken in [search.descent.cheapest(), search.descent.thriftiest()] {
                let plan = search.descent.down(&taken, 0);
                search.keep(plan);
            }
        }
        search
    }

    /// Takes note of a plan that is known from elsewhere, where it keeps all limits and rules.
    pub fn offer(&mut self, taken: &[usize]) {
        let worth = self.descent.model.worth(taken);
        self.keep(Some((worth.cost, taken.to_vec())));
    }

    /// Looks at one node more, and for a better plan near the best; whether there is anything left to look at.
    pub fn step(&mut self) -> bool {
        let Some(node) = self.waiting.pop() else { return false };
        self.nodes += 1;
        if !self.is_above(node.bound) {
            self.look_into(&node);
        }
        if let Some((_, taken)) = self.best.clone().filter(|_| self.nodes.is_multiple_of(4)) {
            let shaken = self.descent.shaken(&taken);
            let plan = self.descent.down(&shaken, 4);
            self.keep(plan);
        }
        while self.waiting.peek().is_some_and(|node| self.is_above(node.bound)) {
            // The least bound is no less than the best plan: so are all others.
            self.waiting.clear();
        }
        !self.waiting.is_empty()
    }

    /// What it has come to.
    #[must_use]
    pub fn solved(&self) -> Solved {
        let lower = self.waiting.peek().map_or(f64::INFINITY, |node| node.bound).min(self.let_go);
        let cost = self.best.as_ref().map(|(cost, _)| *cost);
        let taken = self.best.as_ref().map(|(_, taken)| taken.clone());
        let is_done = match cost {
            Some(cost) => ceil(lower) >= cost,
            None => lower == f64::INFINITY,
        };
        let proof = match (is_done, &taken) {
            (true, Some(_)) => PlanProof::Best,
            (true, None) => PlanProof::NothingFits,
            (false, Some(_)) => PlanProof::Within,
            (false, None) => PlanProof::Open,
        };
        let bound = if is_done { cost } else { Some(ceil(lower)).filter(|bound| *bound > i64::MIN) };
        Solved { taken, cost, bound, proof, nodes: self.nodes }
    }

    fn keep(&mut self, plan: Option<(i64, Vec<usize>)>) {
        let Some((cost, taken)) = plan else { return };
        // Counted again from nothing before anything is made of it.
        let worth = self.descent.model.worth(&taken);
        if worth.breach.is_none() && worth.cost == cost && self.best.as_ref().is_none_or(|(best, _)| cost < *best) {
            self.best = Some((cost, taken));
        }
    }

    /// Whether nothing of this bound can be better than what is known.
    fn is_above(&self, bound: f64) -> bool {
        ceil(bound) >= self.best.as_ref().map_or(self.ceiling, |(cost, _)| *cost)
    }

    fn look_into(&mut self, node: &Node) {
        let model = self.descent.model;
        let mut domain = self.root.clone();
        let mut way = node.way.as_ref();
        while let Some(step) = way {
            domain.say(&step.said);
            way = step.before.as_ref();
        }
        let is_first = node.depth == 0;
        if domain.follow(model) == Err(Empty) {
            return;
        }
        if self.best.is_none() && self.is_ruled_out(&domain, if is_first { FIRST_STEPS } else { STEPS }) {
            return;
        }
        let pace = if is_first { Pace { first: 1.6, steps: FIRST_STEPS } } else { Pace { first: 0.8, steps: STEPS } };
        let Some(priced) = self.price(&domain, &node.prices, node.bound, pace) else { return };
        if is_first || self.nodes.is_multiple_of(LOOKED_NEAR) {
            let plan = self.descent.down(&priced.seen.often(), 2);
            self.keep(plan);
        }
        if is_first || self.nodes.is_multiple_of(DIG) {
            self.dig(domain.clone(), &priced);
        }
        if self.fix(&priced.prices, &mut domain, is_first).is_err() {
            return;
        }
        let Some((one, other)) = self.divide(&priced.seen, &domain) else {
            // One take is left in every cell.
            let taken: Vec<usize> =
                domain.takes.iter().map(|takes| takes.iter().position(|left| *left).unwrap_or(0)).collect();
            let worth = model.worth(&taken);
            if worth.breach.is_none() {
                self.keep(Some((worth.cost, taken)));
            }
            return;
        };
        let (bound, prices) = (priced.bound, Rc::new(priced.prices));
        for (said, number) in [(one, 0), (other, 1)] {
            if self.waiting.len() >= MOST_WAITING {
                self.let_go = self.let_go.min(bound);
                continue;
            }
            let way = Some(Rc::new(Way { said, before: node.way.clone() }));
            let number = self.nodes * 2 + number;
            self.waiting.push(Node { bound, depth: node.depth + 1, number, way, prices: Rc::clone(&prices) });
        }
    }

    /// Moves prices to where the bound of a domain is greatest; nothing where no plan in it is better than the best known.
    fn price(&mut self, domain: &Domain, prices: &[f64], bound: f64, pace: Pace) -> Option<Priced> {
        let mut seen = Seen::of(self.descent.model, &self.relaxed);
        let (mut prices, mut bound) = (prices.to_vec(), bound);
        let mut best_prices = prices.clone();
        let (mut length, mut idle) = (pace.first, 0);
        let mut found = std::mem::take(&mut self.found);
        for step in 0..pace.steps {
            self.relaxed.find(&prices, Weighed::Costs, domain, &mut found);
            let is_better = found.bound > bound && self.relaxed.is_exact(&prices);
            if is_better {
                bound = found.bound;
                best_prices.clone_from(&prices);
                idle = 0;
            } else {
                idle += 1;
            }
            if found.bound == f64::INFINITY || self.is_above(bound) {
                self.found = found;
                return None;
            }
            // What is found while prices still leap says little of where to divide.
            if step * 2 >= pace.steps || length < SLOW_PACE {
                seen.count(&found);
            }
            if pace.steps == FIRST_STEPS && step % 25 == 24 {
                let plan = self.descent.down(&found.taken, 0);
                self.keep(plan);
            }
            if idle >= 20 {
                length *= 0.8;
                if length < LEAST_PACE {
                    break;
                }
                idle = 0;
            }
            let known = bound.max(found.bound);
            let aim = self.best.as_ref().map_or(known + AIMED_ABOVE * known.abs(), |(cost, _)| as_f64(*cost));
            self.relaxed.step(&mut prices, Weighed::Costs, &found, aim, length);
        }
        self.found = found;
        Some(Priced { bound, prices: best_prices, seen })
    }

    /// Looks for a plan: leaves in each cell what was nearly always found there, works prices out again, and so on until every
    /// cell is settled or nothing better is left.
    fn dig(&mut self, mut domain: Domain, from: &Priced) {
        let model = self.descent.model;
        let (mut seen, mut prices) = (from.seen.clone(), from.prices.clone());
        loop {
            let mut open: Vec<(u32, usize, usize)> = Vec::new();
            for (cell, takes) in seen.takes.iter().enumerate().filter(|(cell, _)| !domain.is_settled(*cell)) {
                let left = (0..takes.len()).filter(|take| domain.takes[cell][*take]);
                let Some(most) = left.max_by_key(|take| (takes[*take], usize::MAX - take)) else { return };
                open.push((takes[most], cell, most));
            }
            open.sort_unstable_by_key(|(count, cell, _)| (std::cmp::Reverse(*count), *cell));
            let sure = open.iter().filter(|(count, _, _)| u64::from(*count) * 20 >= u64::from(seen.times) * 19).count();
            for (_, cell, take) in &open[..sure.max(open.len().div_ceil(8))] {
                if domain.takes[*cell][*take] {
                    domain.say(&Said::Take(*cell, *take, true));
                    if domain.follow(model).is_err() {
                        return;
                    }
                }
            }
            let Some(priced) = self.price(&domain, &prices, f64::NEG_INFINITY, Pace { first: 0.6, steps: DIG_STEPS })
            else {
                return;
            };
            (seen, prices) = (priced.seen, priced.prices);
            if domain.is_all_settled() {
                let plan = self.descent.down(&seen.often(), 2);
                self.keep(plan);
                return;
            }
        }
    }

    /// Whether nothing can keep all limits and rules: looked for while no plan is known.
    fn is_ruled_out(&mut self, domain: &Domain, steps: u32) -> bool {
        let mut found = std::mem::take(&mut self.found);
        let mut ruled_out = false;
        for _ in 0..steps {
            self.relaxed.find(&self.against, Weighed::Nothing, domain, &mut found);
            ruled_out = found.bound > 0.0 && (found.bound == f64::INFINITY || self.relaxed.is_exact(&self.against));
            if ruled_out {
                break;
            }
            // How far prices go does not matter, only where.
            self.relaxed.step(&mut self.against, Weighed::Nothing, &found, as_f64(self.ceiling), 1.0);
        }
        self.found = found;
        ruled_out
    }

    /// Leaves out whatever cannot be in a plan that is better than the best known.
    fn fix(&mut self, prices: &[f64], domain: &mut Domain, for_good: bool) -> Result<(), Empty> {
        let model = self.descent.model;
        if !self.relaxed.is_exact(prices) {
            return Ok(());
        }
        let mut found = std::mem::take(&mut self.found);
        self.relaxed.find(prices, Weighed::Costs, domain, &mut found);
        let bound = found.bound;
        for (cell, dearer) in found.dearer.iter().enumerate() {
            for (take, more) in dearer.iter().enumerate() {
                if domain.takes[cell][take] && self.is_above(bound + more) {
                    domain.takes[cell][take] = false;
                }
            }
        }
        for (at, adds) in found.shared.iter().enumerate().filter(|(at, _)| model.shared.len() > *at) {
            if domain.shared[at].is_none() && self.is_above(bound + adds.abs()) {
                domain.shared[at] = Some(*adds < 0.0);
            }
        }
        for (at, order) in found.orders.iter().enumerate() {
            let Some((_, adds)) = order else { continue };
            if domain.orders[at] == OrderOpen::Free && self.is_above(bound + adds.abs()) {
                domain.orders[at] = if *adds < 0.0 { OrderOpen::Yes } else { OrderOpen::No };
            }
            let without = bound - if domain.orders[at] == OrderOpen::Yes { *adds } else { adds.min(0.0) };
            for (band, adds) in found.bands[at].iter().enumerate() {
                if domain.may_be_in(at, band) && self.is_above(without + adds) {
                    domain.bar(at, band);
                }
            }
        }
        self.found = found;
        domain.follow(model)?;
        if for_good {
            self.root = domain.clone();
        }
        Ok(())
    }

    /// What to say on two sides of a node so that what is half one and half the other is neither, the likelier side first;
    /// nothing where all is settled.
    fn divide(&self, seen: &Seen, domain: &Domain) -> Option<(Said, Said)> {
        let model = self.descent.model;
        let times = seen.times.max(1);
        let half = |count: u32| (u64::from(count.min(times - count.min(times))) * 1_000) / u64::from(times);
        let mut best: Option<(u64, Said, Said)> = None;
        let mut offer = |weight: u64, one: Said, other: Said| {
            if weight > 0 && best.as_ref().is_none_or(|(known, _, _)| weight > *known) {
                best = Some((weight, one, other));
            }
        };
        for (at, order) in model.orders.iter().enumerate() {
            // What hangs on it: the dearer the carriage, the more is settled.
            let stake = u64::try_from(order.charge(0, 0)).unwrap_or(1).max(1);
            let open: u32 = seen.bands[at].iter().sum();
            if domain.orders[at] == OrderOpen::Free {
                let likelier = open * 2 >= times;
                offer(half(open) * stake, Said::Order(at, likelier), Said::Order(at, !likelier));
            }
            let mut below = 0;
            for (band, count) in seen.bands[at].iter().enumerate() {
                below += count;
                let weight = half(below).min(half(open - below));
                let likelier = below * 2 >= open;
                offer(weight * stake, Said::Bands(at, band, likelier), Said::Bands(at, band, !likelier));
            }
        }
        for at in (0..model.shared.len()).filter(|at| domain.shared[*at].is_none()) {
            let stake = u64::try_from(model.shared[at].cost).unwrap_or(1).max(1);
            let likelier = seen.shared[at] * 2 >= times;
            offer(half(seen.shared[at]) * stake, Said::Shared(at, likelier), Said::Shared(at, !likelier));
        }
        for (cell, counts) in seen.takes.iter().enumerate() {
            if domain.takes[cell].iter().filter(|left| **left).count() > 1 {
                let most = counts
                    .iter()
                    .enumerate()
                    .filter(|(at, _)| domain.takes[cell][*at])
                    .max_by_key(|(at, count)| (**count, usize::MAX - at));
                let Some((take, count)) = most else { continue };
                // Even what is always the same is divided in the end.
                let dearer = self.found.dearer[cell]
                    .iter()
                    .enumerate()
                    .filter(|(at, _)| *at != self.found.taken[cell] && domain.takes[cell][*at]);
                let gap = dearer.map(|(_, more)| *more).fold(f64::INFINITY, f64::min);
                let stake = u64::try_from(ceil(gap)).unwrap_or(0);
                offer((half(*count) * stake).max(1), Said::Take(cell, take, true), Said::Take(cell, take, false));
            }
        }
        best.map(|(_, one, other)| (one, other))
    }
}

impl Seen {
    fn of(model: &Model, relaxed: &Relaxed<'_>) -> Self {
        Self {
            times: 0,
            takes: model.cells.iter().map(|cell| vec![0; cell.takes.len()]).collect(),
            shared: vec![0; model.shared.len()],
            bands: relaxed.bands.iter().map(|bands| vec![0; bands.len()]).collect(),
        }
    }

    /// The take of each cell that was found most often.
    fn often(&self) -> Vec<usize> {
        let most = |takes: &Vec<u32>| (0..takes.len()).max_by_key(|at| (takes[*at], usize::MAX - at)).unwrap_or(0);
        self.takes.iter().map(most).collect()
    }

    fn count(&mut self, found: &Found) {
        self.times += 1;
        self.takes.iter_mut().zip(&found.taken).for_each(|(takes, taken)| takes[*taken] += 1);
        self.shared.iter_mut().zip(&found.shared).for_each(|(count, adds)| *count += u32::from(*adds < 0.0));
        for (bands, order) in self.bands.iter_mut().zip(&found.orders) {
            if let Some((band, adds)) = order
                && *adds < 0.0
            {
                bands[*band] += 1;
            }
        }
    }
}

/// Which rules hang on what: worked out once for a model.
#[derive(Debug, Clone)]
pub struct PlanLinks(Links);

impl PlanLinks {
    /// Of a model.
    #[must_use]
    pub fn of(model: &Model) -> Self {
        Self(Links::of(model))
    }
}

/// The least whole number that is no less; costs are whole.
#[expect(clippy::cast_possible_truncation, reason = "a float beyond 64 bits becomes the greatest or least of them")]
fn ceil(bound: f64) -> i64 {
    libm::ceil(bound) as i64
}

/// Searches as far as so many steps go.
///
/// ```
/// use asfound_core::plan::{Cell, Model, PlanProof, Take, solve};
/// let take = |cost| Take { cost, ..Take::default() };
/// let model = Model { cells: vec![Cell { takes: vec![take(12), take(9)] }], ..Model::default() };
/// let solved = solve(&model, 100, 1);
/// assert_eq!((solved.cost, solved.bound, solved.proof), (Some(9), Some(9), PlanProof::Best));
/// ```
#[must_use]
pub fn solve(model: &Model, nodes: u32, seed: u64) -> Solved {
    let links = PlanLinks::of(model);
    let mut search = Search::begin(model, &links, seed);
    for _ in 0..nodes {
        if !search.step() {
            break;
        }
    }
    search.solved()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::model::one_of_everything;

    /// Break: in `is_above` leave out what is one unit better than the best plan.
    #[test]
    fn what_may_be_one_unit_better_is_looked_into() {
        let model = one_of_everything();
        let links = PlanLinks::of(&model);
        let mut search = Search::begin(&model, &links, 1);
        search.best = Some((200, vec![0; 4]));
        let told = [198.5, 199.0, 199.25, 200.0, 201.0].map(|bound| search.is_above(bound));
        assert_eq!(told, [false, false, true, true, true]);
    }
}
