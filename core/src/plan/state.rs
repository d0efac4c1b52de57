use super::model::{Chosen, Load, Model};
use super::worth::{Breach, Ordered};

/// A plan under way, whose sums follow each change. It says the same as [`Model::worth`], faster.
#[derive(Debug, Clone)]
pub(super) struct State<'m> {
    model: &'m Model,
    links: &'m Links,
    pub(super) taken: Vec<usize>,
    /// How many takes use what is shared.
    uses: Vec<u32>,
    orders: Vec<Ordered>,
    broken: Vec<bool>,
    cost: i64,
    cash: i64,
    minutes: i64,
    stages: Vec<i64>,
    short: i64,
    rules: i64,
}

/// Which rules hang on which cell and on what is shared.
#[derive(Debug, Clone)]
pub(super) struct Links {
    of_cell: Vec<Vec<usize>>,
    of_shared: Vec<Vec<usize>>,
    stages: usize,
}

impl Links {
    pub(super) fn of(model: &Model) -> Self {
        let mut links = Self {
            of_cell: vec![Vec::new(); model.cells.len()],
            of_shared: vec![Vec::new(); model.shared.len()],
            stages: model.stages(),
        };
        for (at, rule) in model.rules.iter().enumerate() {
            for chosen in [&rule.subject, &rule.other] {
                match chosen {
                    Chosen::Takes { cell, .. } => links.of_cell[*cell].push(at),
                    Chosen::Shared(shared) => links.of_shared[*shared].push(at),
                    Chosen::Never => {}
                }
            }
        }
        links
    }
}

impl<'m> State<'m> {
    pub(super) fn new(model: &'m Model, links: &'m Links, taken: &[usize]) -> Self {
        let mut state = Self {
            model,
            links,
            taken: taken.to_vec(),
            uses: vec![0; model.shared.len()],
            orders: vec![Ordered::default(); model.orders.len()],
            broken: vec![false; model.rules.len()],
            cost: 0,
            cash: 0,
            minutes: 0,
            stages: vec![0; links.stages],
            short: 0,
            rules: 0,
        };
        for (cell, at) in taken.iter().enumerate() {
            state.put(cell, *at, true);
        }
        (0..model.rules.len()).for_each(|rule| state.follow(rule));
        state
    }

    pub(super) const fn cost(&self) -> i64 {
        self.cost
    }

    pub(super) const fn cash(&self) -> i64 {
        self.cash
    }

    pub(super) const fn minutes(&self) -> i64 {
        self.minutes
    }

    pub(super) fn is_used(&self, shared: usize) -> bool {
        self.uses[shared] > 0
    }

    pub(super) fn ordered(&self, order: usize) -> Ordered {
        self.orders[order]
    }

    pub(super) fn breach(&self) -> Breach {
        let limits = &self.model.limits;
        let over = |limit: i64, spent: i64| (spent - limit).max(0);
        let of_stages: i64 = limits.stages.iter().map(|(stage, limit)| over(*limit, self.stages[*stage])).sum();
        Breach {
            cash: limits.cash.map_or(0, |limit| over(limit, self.cash)) + of_stages,
            minutes: limits.minutes.map_or(0, |limit| over(limit, self.minutes)),
            orders: self.short,
            rules: self.rules,
        }
    }

    /// Takes something else for a cell; what was taken before.
    pub(super) fn turn(&mut self, cell: usize, to: usize) -> usize {
        let from = self.taken[cell];
        if from != to {
            self.put(cell, from, false);
            self.taken[cell] = to;
            self.put(cell, to, true);
            let links = self.links;
            links.of_cell[cell].iter().for_each(|rule| self.follow(*rule));
        }
        from
    }

    /// Adds a take, or takes it away.
    fn put(&mut self, cell: usize, at: usize, add: bool) {
        let model = self.model;
        let take = &model.cells[cell].takes[at];
        self.pay(take.cost, take.cash, take.minutes, take.stage, add);
        self.load(&take.loads, add);
        for at in &take.uses {
            if !add {
                self.uses[*at] -= 1;
            }
            if self.uses[*at] == 0 {
                let shared = &model.shared[*at];
                self.pay(shared.cost, shared.cash, shared.minutes, shared.stage, add);
                self.load(&shared.loads, add);
                if add {
                    self.uses[*at] = 1;
                }
                let links = self.links;
                links.of_shared[*at].iter().for_each(|rule| self.follow(*rule));
            } else if add {
                self.uses[*at] += 1;
            }
        }
    }

    const fn pay(&mut self, cost: i64, cash: i64, minutes: i64, stage: usize, add: bool) {
        let sign = if add { 1 } else { -1 };
        self.cost += sign * cost;
        self.cash += sign * cash;
        self.minutes += sign * minutes;
        self.pay_stage(stage, sign * cash);
    }

    const fn pay_stage(&mut self, stage: usize, cash: i64) {
        let stages = self.stages.as_mut_slice();
        stages[stage] += cash;
    }

    fn load(&mut self, loads: &[Load], add: bool) {
        for load in loads {
            let order = &self.model.orders[load.order];
            let before = self.orders[load.order];
            let after = if add {
                Ordered {
                    count: before.count + 1,
                    value: before.value + load.value,
                    mass: before.mass + load.mass,
                    charge: 0,
                }
            } else {
                Ordered {
                    count: before.count - 1,
                    value: before.value - load.value,
                    mass: before.mass - load.mass,
                    charge: 0,
                }
            };
            let charge = if after.count > 0 { order.charge(after.value, after.mass) } else { 0 };
            let short =
                |ordered: &Ordered| if ordered.count > 0 { (order.minimum_order - ordered.value).max(0) } else { 0 };
            self.short += short(&after) - short(&before);
            self.orders[load.order] = Ordered { charge, ..after };
            let more = charge - before.charge;
            self.cost += more;
            self.cash += more;
            self.pay_stage(order.stage, more);
        }
    }

    /// Brings a rule up to date.
    fn follow(&mut self, at: usize) {
        let rule = &self.model.rules[at];
        let is_broken = rule.is_broken(&self.taken, |shared| self.uses[shared] > 0);
        if is_broken == self.broken[at] {
            return;
        }
        self.broken[at] = is_broken;
        let sign = if is_broken { 1 } else { -1 };
        if rule.is_hard() {
            self.rules += sign;
        } else {
            self.cost += sign * rule.price;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::model::one_of_everything;

    /// Break: in `put` count what is shared again with its second user.
    #[test]
    fn sums_follow_every_turn() {
        let model = one_of_everything();
        let links = Links::of(&model);
        let mut state = State::new(&model, &links, &[0; 4]);
        for number in 0..81_usize {
            for cell in 0..4 {
                state.turn(cell, number / 3_usize.pow(u32::try_from(cell).unwrap_or(0)) % 3);
                let worth = model.worth(&state.taken);
                assert_eq!(
                    (state.cost, state.cash, state.minutes),
                    (worth.cost, worth.cash, worth.minutes),
                    "{:?}",
                    state.taken
                );
                assert_eq!((state.breach(), &state.stages), (worth.breach, &worth.stages), "{:?}", state.taken);
            }
        }
    }
}
