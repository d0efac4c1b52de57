use super::model::Model;

/// What a plan comes to, counted from nothing in whole numbers. Whatever is shown of a plan was counted so.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Worth {
    /// Present value, all in.
    pub cost: i64,
    /// All that is paid at first.
    pub cash: i64,
    /// The same by stage.
    pub stages: Vec<i64>,
    /// Own time.
    pub minutes: i64,
    /// What goes with each order.
    pub orders: Vec<Ordered>,
    /// Whether each shared thing is used.
    pub used: Vec<bool>,
    /// By how much limits are passed and rules broken; 0 of a plan that may be shown.
    pub breach: Breach,
}

/// What goes with one order.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Ordered {
    /// How many takes and shared things.
    pub count: u32,
    /// Their value.
    pub value: i64,
    /// Their mass.
    pub mass: i64,
    /// Carriage, and what is short of the least charge.
    pub charge: i64,
}

/// By how much what must hold does not.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Breach {
    /// Cash beyond the limits, those of stages too.
    pub cash: i64,
    /// Minutes beyond the limit.
    pub minutes: i64,
    /// What orders are short of the least that is accepted.
    pub orders: i64,
    /// Broken rules.
    pub rules: i64,
}

impl Breach {
    /// Whether all holds.
    #[must_use]
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }
}

impl Model {
    /// How many stages there are.
    #[must_use]
    pub fn stages(&self) -> usize {
        let takes = self.cells.iter().flat_map(|cell| &cell.takes).map(|take| take.stage);
        let shared = self.shared.iter().map(|shared| shared.stage);
        let orders = self.orders.iter().map(|order| order.stage);
        let limits = self.limits.stages.iter().map(|(stage, _)| *stage);
        takes.chain(shared).chain(orders).chain(limits).max().map_or(1, |last| last + 1)
    }

    /// What a plan comes to; `taken` has the take of each cell.
    ///
    /// # Panics
    ///
    /// Where `taken` names a take that its cell does not have.
    #[must_use]
    pub fn worth(&self, taken: &[usize]) -> Worth {
        let mut worth = Worth {
            stages: vec![0; self.stages()],
            orders: vec![Ordered::default(); self.orders.len()],
            used: vec![false; self.shared.len()],
            ..Worth::default()
        };
        for (cell, at) in self.cells.iter().zip(taken) {
            let take = &cell.takes[*at];
            take.uses.iter().for_each(|at| worth.used[*at] = true);
            worth.add(take.cost, take.cash, take.minutes, take.stage, &take.loads);
        }
        for (shared, _) in self.shared.iter().zip(worth.used.clone()).filter(|(_, used)| *used) {
            worth.add(shared.cost, shared.cash, shared.minutes, shared.stage, &shared.loads);
        }
        for (order, at) in self.orders.iter().zip(0..) {
            let ordered = worth.orders[at];
            if ordered.count > 0 {
                let charge = order.charge(ordered.value, ordered.mass);
                worth.orders[at].charge = charge;
                worth.add(charge, charge, 0, order.stage, &[]);
                worth.breach.orders += (order.minimum_order - ordered.value).max(0);
            }
        }
        for rule in self.rules.iter().filter(|rule| rule.is_broken(taken, |at| worth.used[at])) {
            if rule.is_hard() {
                worth.breach.rules += 1;
            } else {
                worth.cost += rule.price;
            }
        }
        let over = |limit: Option<i64>, spent: i64| limit.map_or(0, |limit| (spent - limit).max(0));
        worth.breach.minutes = over(self.limits.minutes, worth.minutes);
        worth.breach.cash = over(self.limits.cash, worth.cash);
        for (stage, limit) in &self.limits.stages {
            worth.breach.cash += over(Some(*limit), worth.stages[*stage]);
        }
        worth
    }
}

impl Worth {
    fn add(&mut self, cost: i64, cash: i64, minutes: i64, stage: usize, loads: &[super::model::Load]) {
        self.cost += cost;
        self.cash += cash;
        self.stages[stage] += cash;
        self.minutes += minutes;
        for load in loads {
            let ordered = &mut self.orders[load.order];
            ordered.count += 1;
            ordered.value += load.value;
            ordered.mass += load.mass;
        }
    }
}
