use super::model::Model;
use super::state::{Links, State};
use crate::costing::Stream;

/// Makes plans better by small changes: one cell at a time, everything that uses something shared at once, everything that goes
/// with an order at once, two cells against one another.
///
/// While limits are passed a plan pays for it, more from round to round, so that the way to a good plan may lead through plans
/// that may not be shown.
#[derive(Debug)]
pub(super) struct Descent<'m> {
    pub(super) model: &'m Model,
    pub(super) links: &'m Links,
    /// For each shared thing, and each order, the cells that have a take with it.
    with_shared: Vec<Vec<usize>>,
    with_order: Vec<Vec<usize>>,
    weights: Weights,
    chance: Stream,
    drawn: u64,
}

/// What a unit of each breach is charged.
#[derive(Debug, Clone, Copy)]
struct Weights {
    cash: i64,
    minutes: i64,
    orders: i64,
    rules: i64,
}

/// As often as limits that are passed are charged more.
const ROUNDS: usize = 10;

impl<'m> Descent<'m> {
    pub(super) fn new(model: &'m Model, links: &'m Links, seed: u64) -> Self {
        let mut with_shared = vec![Vec::new(); model.shared.len()];
        let mut with_order = vec![Vec::new(); model.orders.len()];
        for (cell, takes) in model.cells.iter().enumerate().map(|(at, cell)| (at, &cell.takes)) {
            let add = |all: &mut Vec<usize>| {
                if all.last() != Some(&cell) {
                    all.push(cell)
                }
            };
            for take in takes {
                take.uses.iter().for_each(|at| add(&mut with_shared[*at]));
                take.loads.iter().for_each(|load| add(&mut with_order[load.order]));
                for load in take.uses.iter().flat_map(|at| &model.shared[*at].loads) {
                    add(&mut with_order[load.order]);
                }
            }
        }
        let all = || model.cells.iter().flat_map(|cell| &cell.takes);
        let count = i64::try_from(all().count()).unwrap_or(1).max(1);
        let mean = all().map(|take| take.cost.saturating_abs() / count).sum::<i64>();
        let minutes = all().map(|take| take.minutes.saturating_abs() / count).sum::<i64>();
        let weights = Weights { cash: 1, minutes: (mean / minutes.max(1)).max(1), orders: 1, rules: mean.max(1) };
        Self { model, links, with_shared, with_order, weights, chance: Stream::seeded(seed), drawn: 0 }
    }

    /// A number below `below`.
    pub(super) fn draw(&mut self, below: usize) -> usize {
        self.drawn += 1;
        let bits = self.chance.bits(self.drawn) >> 32;
        usize::try_from((bits * below as u64) >> 32).unwrap_or(0)
    }

    /// The takes that are cheapest each for itself.
    pub(super) fn cheapest(&self) -> Vec<usize> {
        let least = |takes: &[super::model::Take]| (0..takes.len()).min_by_key(|at| takes[*at].cost).unwrap_or(0);
        self.model.cells.iter().map(|cell| least(&cell.takes)).collect()
    }

    /// The takes that cost least cash.
    pub(super) fn thriftiest(&self) -> Vec<usize> {
        let least = |takes: &[super::model::Take]| {
            (0..takes.len()).min_by_key(|at| (takes[*at].cash, takes[*at].cost)).unwrap_or(0)
        };
        self.model.cells.iter().map(|cell| least(&cell.takes)).collect()
    }

    /// The best plan that is found from some takes; nothing where limits stay passed.
    pub(super) fn down(&mut self, taken: &[usize], swaps: usize) -> Option<(i64, Vec<usize>)> {
        let mut state = State::new(self.model, self.links, taken);
        let first = self.weights;
        for _ in 0..ROUNDS {
            self.settle(&mut state, swaps);
            let breach = state.breach();
            if breach.is_none() {
                break;
            }
            let more = |weight: &mut i64, broken: i64| {
                if broken > 0 {
                    *weight = weight.saturating_mul(3).min(1 << 24)
                }
            };
            more(&mut self.weights.cash, breach.cash);
            more(&mut self.weights.minutes, breach.minutes);
            more(&mut self.weights.orders, breach.orders);
            more(&mut self.weights.rules, breach.rules);
        }
        // Another time is begun a little dearer than the first, and forgotten by and by.
        let less = |weight: i64, first: i64| (weight / 9).max(first);
        self.weights = Weights {
            cash: less(self.weights.cash, first.cash),
            minutes: less(self.weights.minutes, first.minutes),
            orders: less(self.weights.orders, first.orders),
            rules: less(self.weights.rules, first.rules),
        };
        state.breach().is_none().then(|| (state.cost(), state.taken))
    }

    /// Cells one by one, then what moves many of them, until nothing is better.
    fn settle(&mut self, state: &mut State<'m>, swaps: usize) {
        loop {
            self.one_by_one(state);
            let before = self.merit(state);
            self.all_at_once(state);
            if self.merit(state) >= before && !self.swap(state, swaps) {
                return;
            }
        }
    }

    fn merit(&self, state: &State<'m>) -> i64 {
        let breach = state.breach();
        let Weights { cash, minutes, orders, rules } = self.weights;
        let charged = [(breach.cash, cash), (breach.minutes, minutes), (breach.orders, orders), (breach.rules, rules)];
        charged
            .into_iter()
            .map(|(broken, weight)| broken.saturating_mul(weight))
            .fold(state.cost(), i64::saturating_add)
    }

    fn one_by_one(&self, state: &mut State<'m>) {
        let mut idle = 0;
        let cells = self.model.cells.len();
        for cell in (0..cells).cycle() {
            if idle >= cells {
                return;
            }
            idle = if self.better(state, cell, |_| true) { 0 } else { idle + 1 };
        }
    }

    /// Turns a cell to its best among some takes; whether that is another one.
    fn better(&self, state: &mut State<'m>, cell: usize, may: impl Fn(usize) -> bool) -> bool {
        let from = state.taken[cell];
        let mut best = (if may(from) { self.merit(state) } else { i64::MAX }, from);
        for take in (0..self.model.cells[cell].takes.len()).filter(|take| *take != from && may(*take)) {
            state.turn(cell, take);
            let merit = self.merit(state);
            if merit < best.0 {
                best = (merit, take);
            }
        }
        state.turn(cell, best.1);
        best.1 != from
    }

    fn all_at_once(&self, state: &mut State<'m>) {
        for shared in 0..self.model.shared.len() {
            let uses = |cell: usize, take: usize| self.model.cells[cell].takes[take].uses.contains(&shared);
            let used = state.is_used(shared);
            self.tried(state, |state| {
                self.together(state, &self.with_shared[shared], |cell, take| uses(cell, take) != used)
            });
        }
        for order in 0..self.model.orders.len() {
            let goes = |cell: usize, take: usize| {
                let take = &self.model.cells[cell].takes[take];
                let shared = take.uses.iter().flat_map(|at| &self.model.shared[*at].loads);
                take.loads.iter().chain(shared).any(|load| load.order == order)
            };
            if state.ordered(order).count > 0 {
                self.tried(state, |state| {
                    self.together(state, &self.with_order[order], |cell, take| !goes(cell, take))
                });
            }
            self.tried(state, |state| self.together(state, &self.with_order[order], goes));
            self.tried(state, |state| self.fill(state, order));
        }
    }

    /// Turns cells to their best among some takes, where they have one, then lets each find its own again.
    fn together(&self, state: &mut State<'m>, cells: &[usize], may: impl Fn(usize, usize) -> bool) {
        for cell in cells {
            if (0..self.model.cells[*cell].takes.len()).any(|take| may(*cell, take)) {
                self.better(state, *cell, |take| may(*cell, take));
            }
        }
        for cell in cells {
            self.better(state, *cell, |_| true);
        }
    }

    /// Brings an order up to the next value from which something is charged less, by what costs least for it.
    fn fill(&self, state: &mut State<'m>, order: usize) {
        let terms = &self.model.orders[order];
        let now = state.ordered(order).value;
        let steps = terms
            .tiers
            .iter()
            .map(|tier| tier.from_value)
            .chain(terms.free_from)
            .chain([terms.minimum_order, terms.minimum_charge]);
        let Some(wanted) = steps.filter(|step| *step > now).min() else { return };
        let value = |cell: usize, take: usize| -> i64 {
            let loads = self.model.cells[cell].takes[take].loads.iter();
            loads.filter(|load| load.order == order).map(|load| load.value).sum()
        };
        let mut ways: Vec<(i64, usize, usize)> = Vec::new();
        for cell in &self.with_order[order] {
            let from = state.taken[*cell];
            for take in (0..self.model.cells[*cell].takes.len()).filter(|take| value(*cell, *take) > value(*cell, from))
            {
                let dearer = self.model.cells[*cell].takes[take].cost - self.model.cells[*cell].takes[from].cost;
                let more = value(*cell, take) - value(*cell, from);
                ways.push((dearer.saturating_mul(1_000) / more.max(1), *cell, take));
            }
        }
        ways.sort_unstable();
        for (_, cell, take) in ways {
            if state.ordered(order).value >= wanted {
                break;
            }
            if value(cell, take) > value(cell, state.taken[cell]) {
                state.turn(cell, take);
            }
        }
    }

    /// Does something, and takes it back where nothing is better for it.
    fn tried(&self, state: &mut State<'m>, what: impl FnOnce(&mut State<'m>)) {
        let before = (self.merit(state), state.taken.clone());
        what(state);
        if self.merit(state) >= before.0 {
            before.1.iter().enumerate().for_each(|(cell, take)| {
                state.turn(cell, *take);
            });
        }
    }

    /// Turns two cells together: one that becomes cheaper, and one that makes room for it. `tries` first cells are drawn.
    fn swap(&mut self, state: &mut State<'m>, tries: usize) -> bool {
        let limits = &self.model.limits;
        if limits.cash.is_none() && limits.minutes.is_none() && limits.stages.is_empty() {
            return false;
        }
        let cells = self.model.cells.len();
        for _ in 0..tries.min(cells) {
            let one = self.draw(cells);
            let before = self.merit(state);
            let from = state.taken[one];
            for take in (0..self.model.cells[one].takes.len()).filter(|take| *take != from) {
                if self.model.cells[one].takes[take].cost >= self.model.cells[one].takes[from].cost {
                    continue;
                }
                state.turn(one, take);
                for other in (0..cells).filter(|other| *other != one) {
                    let there = state.taken[other];
                    if self.better(state, other, |_| true) && self.merit(state) < before {
                        return true;
                    }
                    state.turn(other, there);
                }
            }
            state.turn(one, from);
        }
        false
    }

    /// Other takes for a few cells.
    pub(super) fn shaken(&mut self, taken: &[usize]) -> Vec<usize> {
        let mut taken = taken.to_vec();
        let cells = taken.len();
        let turned = 2 + self.draw(2 + cells / 12);
        for _ in 0..turned {
            let cell = self.draw(cells);
            taken[cell] = self.draw(self.model.cells[cell].takes.len());
        }
        taken
    }
}
