use super::bands::{Band, as_f64, bands_of};
use super::domain::{Domain, OrderOpen};
use super::model::{Chosen, Load, Model};
use crate::job::vocabulary::Relation;

/// What every price is a multiple of, so that all sums of prices and whole numbers are exact in a float: then a bound is as good
/// as one counted in integers.
const GRAIN: f64 = 65_536.0;
/// Sums below this are exact in grains.
const EXACT: f64 = 68_719_476_736.0;

/// A model whose rows that tie cells together are priced instead of kept (Lagrangian relaxation; Held, Wolfe and Crowder 1974):
/// every cell, every shared thing and every order then finds its own best, and what they come to together is never more than what
/// the best plan costs.
///
/// Rows: a cell uses what is shared, or is in an order, only if that is open; the value and the mass of an order are those of what
/// goes with it; limits; rules.
#[derive(Debug)]
pub(super) struct Relaxed<'m> {
    pub(super) model: &'m Model,
    pub(super) bands: Vec<Vec<Band>>,
    /// Rows in order: links of cells, links of shared things, values, masses, limits, rules.
    rows: usize,
    /// For each cell what its takes may need open, with the row.
    cell_links: Vec<Vec<(Open, usize)>>,
    /// For each take of each cell the rows of what it needs open.
    take_links: Vec<Vec<Vec<usize>>>,
    /// For each shared thing the rows of the orders it is in.
    shared_links: Vec<Vec<(usize, usize)>>,
    value_row: usize,
    mass_row: usize,
    /// Cash, minutes, and the stages with a limit: the row of each, and the limit.
    cash_row: Option<(usize, i64)>,
    minutes_row: Option<(usize, i64)>,
    stage_rows: Vec<Option<(usize, i64)>>,
    rule_row: usize,
    /// For each cell: rule, whether as its subject, which takes.
    cell_rules: Vec<Vec<(usize, bool, &'m [bool])>>,
    shared_rules: Vec<Vec<(usize, bool)>>,
    /// By how much a step along each row is scaled.
    scale: Vec<f64>,
    /// The sum of what stands in each row, and the greatest sum of all costs: how large a bound's terms can be.
    size: Vec<f64>,
    cost_size: f64,
}

/// Something that is open or not.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Open {
    Shared(usize),
    Order(usize),
}

/// What the cells, shared things and orders find best at some prices.
#[derive(Debug, Clone, Default)]
pub(super) struct Found {
    /// No plan costs less; not to be believed where it is not exact.
    pub(super) bound: f64,
    pub(super) taken: Vec<usize>,
    /// How much dearer each other take of a cell is than its best.
    pub(super) dearer: Vec<Vec<f64>>,
    /// What opening each shared thing adds: below nothing it is opened.
    pub(super) shared: Vec<f64>,
    /// The least band of each order, and what opening it there adds.
    pub(super) orders: Vec<Option<(usize, f64)>>,
    /// How far each row is off.
    off: Vec<f64>,
}

impl<'m> Relaxed<'m> {
    pub(super) fn of(model: &'m Model) -> Self {
        let mut rows = 0;
        let mut row = || {
            rows += 1;
            rows - 1
        };
        let mut cell_links = Vec::new();
        let mut take_links = Vec::new();
        for cell in &model.cells {
            let mut links: Vec<(Open, usize)> = Vec::new();
            let mut of_takes = Vec::new();
            for take in &cell.takes {
                let shared = take.uses.iter().map(|at| Open::Shared(*at));
                let opens = shared.chain(take.loads.iter().map(|load| Open::Order(load.order)));
                let mut of_take: Vec<usize> = Vec::new();
                for open in opens {
                    let known = links.iter().find(|(known, _)| *known == open).map(|(_, row)| *row);
                    let at = known.unwrap_or_else(|| {
                        let at = row();
                        links.push((open, at));
                        at
                    });
                    if !of_take.contains(&at) {
                        of_take.push(at);
                    }
                }
                of_takes.push(of_take);
            }
            cell_links.push(links);
            take_links.push(of_takes);
        }
        let mut shared_links = Vec::new();
        for shared in &model.shared {
            let mut links: Vec<(usize, usize)> = Vec::new();
            for load in &shared.loads {
                if links.iter().all(|(order, _)| *order != load.order) {
                    links.push((load.order, row()));
                }
            }
            shared_links.push(links);
        }
        let links = row();
        let mut relaxed = Self {
            model,
            bands: bands_of(model),
            rows: 0,
            cell_links,
            take_links,
            shared_links,
            value_row: links,
            mass_row: links + model.orders.len(),
            cash_row: None,
            minutes_row: None,
            stage_rows: vec![None; model.stages()],
            rule_row: 0,
            cell_rules: vec![Vec::new(); model.cells.len()],
            shared_rules: vec![Vec::new(); model.shared.len()],
            scale: Vec::new(),
            size: Vec::new(),
            cost_size: 0.0,
        };
        let mut next = links + 2 * model.orders.len();
        let mut limit = |limit: Option<i64>| {
            limit.map(|limit| {
                next += 1;
                (next - 1, limit)
            })
        };
        relaxed.cash_row = limit(model.limits.cash);
        relaxed.minutes_row = limit(model.limits.minutes);
        for (stage, most) in &model.limits.stages {
            relaxed.stage_rows[*stage] = limit(Some(*most));
        }
        relaxed.rule_row = next;
        relaxed.rows = next + model.rules.len();
        for (at, rule) in model.rules.iter().enumerate() {
            for (chosen, is_subject) in [(&rule.subject, true), (&rule.other, false)] {
                match chosen {
                    Chosen::Takes { cell, which } => relaxed.cell_rules[*cell].push((at, is_subject, which)),
                    Chosen::Shared(shared) => relaxed.shared_rules[*shared].push((at, is_subject)),
                    Chosen::Never => {}
                }
            }
        }
        relaxed.measure();
        relaxed
    }

    pub(super) fn no_prices(&self) -> Vec<f64> {
        vec![0.0; self.rows]
    }

    /// How large the terms of each row are.
    fn measure(&mut self) {
        let mut size = vec![2.0; self.rows];
        let mut most = vec![0.0_f64; self.rows];
        let mut cost = 0.0;
        let mut count = |row: usize, amount: i64| {
            let amount = as_f64(amount.abs());
            size[row] += amount;
            most[row] = most[row].max(amount);
        };
        let mut pay = |relaxed: &Self, cash: i64, minutes: i64, stage: usize, loads: &[Load]| {
            relaxed.cash_row.into_iter().chain(relaxed.stage_rows[stage]).for_each(|(row, _)| count(row, cash));
            relaxed.minutes_row.into_iter().for_each(|(row, _)| count(row, minutes));
            for load in loads {
                count(relaxed.value_row + load.order, load.value);
                count(relaxed.mass_row + load.order, load.mass);
            }
        };
        for take in self.model.cells.iter().flat_map(|cell| &cell.takes) {
            pay(self, take.cash, take.minutes, take.stage, &take.loads);
            cost += as_f64(take.cost.abs());
        }
        for shared in &self.model.shared {
            pay(self, shared.cash, shared.minutes, shared.stage, &shared.loads);
            cost += as_f64(shared.cost.abs());
        }
        for (order, bands) in self.model.orders.iter().zip(&self.bands) {
            let most = bands.iter().map(|band| band.charge(band.value.0)).max().unwrap_or(0);
            pay(self, most, 0, order.stage, &[]);
            cost += as_f64(most);
        }
        for rule in &self.model.rules {
            cost += as_f64(rule.price.abs());
        }
        for (row, limit) in
            self.cash_row.into_iter().chain(self.minutes_row).chain(self.stage_rows.iter().copied().flatten())
        {
            size[row] += as_f64(limit.abs());
        }
        // The value and the mass of an order stand on both sides of their rows.
        size[self.value_row..self.mass_row + self.model.orders.len()].iter_mut().for_each(|size| *size *= 2.0);
        self.scale = most.into_iter().map(|most| if most > 0.0 { 1.0 / (most * most) } else { 1.0 }).collect();
        self.size = size;
        self.cost_size = cost;
    }

    /// Whether every sum of a bound at these prices is exact.
    pub(super) fn is_exact(&self, prices: &[f64]) -> bool {
        let priced: f64 = prices.iter().zip(&self.size).map(|(price, size)| price.abs() * size).sum();
        priced + self.cost_size < EXACT
    }

    /// Everybody's best at some prices.
    pub(super) fn find(&self, prices: &[f64], domain: &Domain, found: &mut Found) {
        let model = self.model;
        found.off.clear();
        found.off.resize(self.rows, 0.0);
        found.taken.clear();
        found.dearer.resize(model.cells.len(), Vec::new());
        let mut bound = 0.0;
        let price_of = |row: Option<(usize, i64)>| row.map_or(0.0, |(row, _)| prices[row]);
        let cash: Vec<f64> = self.stage_rows.iter().map(|row| price_of(self.cash_row) + price_of(*row)).collect();
        let minutes = price_of(self.minutes_row);
        let loaded = |loads: &[Load]| -> f64 {
            let of = |load: &Load| {
                as_f64(load.value) * prices[self.value_row + load.order]
                    + as_f64(load.mass) * prices[self.mass_row + load.order]
            };
            loads.iter().map(of).sum()
        };
        for (cell, takes) in model.cells.iter().enumerate().map(|(at, cell)| (at, &cell.takes)) {
            let dearer = &mut found.dearer[cell];
            dearer.clear();
            let mut best: Option<usize> = None;
            for (at, take) in takes.iter().enumerate() {
                if !domain.takes[cell][at] {
                    dearer.push(f64::INFINITY);
                    continue;
                }
                let mut cost =
                    as_f64(take.cost) + cash[take.stage] * as_f64(take.cash) + minutes * as_f64(take.minutes)
                        - loaded(&take.loads);
                cost += self.take_links[cell][at].iter().map(|row| prices[*row]).sum::<f64>();
                for (rule, is_subject, which) in &self.cell_rules[cell] {
                    if which[at] {
                        cost += self.sign(*rule, *is_subject) * prices[self.rule_row + rule];
                    }
                }
                dearer.push(cost);
                if best.is_none_or(|best: usize| cost < dearer[best]) {
                    best = Some(at);
                }
            }
            let Some(best) = best else {
                found.bound = f64::INFINITY;
                return;
            };
            let least = dearer[best];
            bound += least;
            dearer.iter_mut().for_each(|cost| *cost -= least);
            found.taken.push(best);
            let take = &takes[best];
            self.count(&mut found.off, take.cash, take.minutes, take.stage, &take.loads);
            self.take_links[cell][best].iter().for_each(|row| found.off[*row] += 1.0);
            for (rule, is_subject, which) in &self.cell_rules[cell] {
                if which[best] {
                    found.off[self.rule_row + rule] += self.sign(*rule, *is_subject);
                }
            }
        }
        let mut open_cost: Vec<f64> = Vec::with_capacity(model.shared.len());
        for (at, shared) in model.shared.iter().enumerate() {
            let mut cost =
                as_f64(shared.cost) + cash[shared.stage] * as_f64(shared.cash) + minutes * as_f64(shared.minutes)
                    - loaded(&shared.loads);
            cost += self.shared_links[at].iter().map(|(_, row)| prices[*row]).sum::<f64>();
            for (rule, is_subject) in &self.shared_rules[at] {
                cost += self.sign(*rule, *is_subject) * prices[self.rule_row + rule];
            }
            open_cost.push(cost);
        }
        let mut order_links = vec![0.0; model.orders.len()];
        for (open, row) in self.cell_links.iter().flatten() {
            match open {
                Open::Shared(at) => open_cost[*at] -= prices[*row],
                Open::Order(at) => order_links[*at] += prices[*row],
            }
        }
        for (order, row) in self.shared_links.iter().flatten() {
            order_links[*order] += prices[*row];
        }
        let mut shared_open = vec![false; model.shared.len()];
        for (at, cost) in open_cost.iter().enumerate() {
            let open = domain.shared[at].unwrap_or(*cost < 0.0);
            if open {
                bound += cost;
                shared_open[at] = true;
                let shared = &model.shared[at];
                self.count(&mut found.off, shared.cash, shared.minutes, shared.stage, &shared.loads);
                self.shared_links[at].iter().for_each(|(_, row)| found.off[*row] += 1.0);
                for (rule, is_subject) in &self.shared_rules[at] {
                    found.off[self.rule_row + rule] += self.sign(*rule, *is_subject);
                }
            }
        }
        found.orders.clear();
        let mut order_open = vec![false; model.orders.len()];
        for (at, order) in model.orders.iter().enumerate() {
            let weigh = 1.0 + cash[order.stage];
            let mut least: Option<(usize, (f64, i64, i64))> = None;
            for (band_at, band) in self.bands[at].iter().enumerate().filter(|(band, _)| domain.may_be_in(at, *band)) {
                let corner = band.least(weigh, prices[self.value_row + at], prices[self.mass_row + at]);
                if least.is_none_or(|(_, known)| corner.0 < known.0) {
                    least = Some((band_at, corner));
                }
            }
            let must = domain.orders[at] == OrderOpen::Yes;
            let Some((band, (cost, value, mass))) = least else {
                if must {
                    found.bound = f64::INFINITY;
                    return;
                }
                found.orders.push(None);
                continue;
            };
            let adds = cost - order_links[at];
            found.orders.push(Some((band, adds)));
            if must || (domain.orders[at] == OrderOpen::Free && adds < 0.0) {
                bound += adds;
                order_open[at] = true;
                let charge = self.bands[at][band].charge(value);
                self.count(&mut found.off, charge, 0, order.stage, &[]);
                found.off[self.value_row + at] += as_f64(value);
                found.off[self.mass_row + at] += as_f64(mass);
            }
        }
        for (open, row) in self.cell_links.iter().flatten() {
            let is_open = match open {
                Open::Shared(at) => shared_open[*at],
                Open::Order(at) => order_open[*at],
            };
            found.off[*row] -= f64::from(u8::from(is_open));
        }
        for (order, row) in self.shared_links.iter().flatten() {
            found.off[*row] -= f64::from(u8::from(order_open[*order]));
        }
        for (row, limit) in
            self.cash_row.into_iter().chain(self.minutes_row).chain(self.stage_rows.iter().copied().flatten())
        {
            bound -= prices[row] * as_f64(limit);
            found.off[row] -= as_f64(limit);
        }
        for (at, _) in model.rules.iter().enumerate().filter(|(_, rule)| rule.relation == Relation::RulesOut) {
            bound -= prices[self.rule_row + at];
            found.off[self.rule_row + at] -= 1.0;
        }
        found.shared = open_cost;
        found.bound = bound;
    }

    /// What a rule adds when its subject, or the other, is chosen.
    fn sign(&self, rule: usize, is_subject: bool) -> f64 {
        if is_subject || self.model.rules[rule].relation == Relation::RulesOut { 1.0 } else { -1.0 }
    }

    fn count(&self, off: &mut [f64], cash: i64, minutes: i64, stage: usize, loads: &[Load]) {
        self.cash_row.into_iter().chain(self.stage_rows[stage]).for_each(|(row, _)| off[row] += as_f64(cash));
        self.minutes_row.into_iter().for_each(|(row, _)| off[row] += as_f64(minutes));
        for load in loads {
            off[self.value_row + load.order] -= as_f64(load.value);
            off[self.mass_row + load.order] -= as_f64(load.mass);
        }
    }

    /// Moves the prices a step along what is off (subgradient step after Polyak), towards a bound of `target`.
    pub(super) fn step(&self, prices: &mut [f64], found: &Found, target: f64, pace: f64) {
        let moved: f64 = found
            .off
            .iter()
            .zip(&self.scale)
            .zip(prices.iter())
            .enumerate()
            .map(|(row, ((off, scale), price))| {
                // A price that is nothing already, and would be less, stands still.
                if self.is_one_sided(row) && *price <= 0.0 && *off < 0.0 { 0.0 } else { off * off * scale }
            })
            .sum();
        if moved <= 0.0 {
            return;
        }
        let step = pace * (target - found.bound).max(1.0) / moved;
        for (row, known) in prices.iter_mut().enumerate() {
            let mut price = *known + step * found.off[row] * self.scale[row];
            if self.is_one_sided(row) {
                price = price.max(0.0);
            }
            if row >= self.rule_row {
                let rule = &self.model.rules[row - self.rule_row];
                if !rule.is_hard() {
                    price = price.min(as_f64(rule.price));
                }
            }
            *known = libm::rint(price * GRAIN) / GRAIN;
        }
    }

    /// Rows that say *at most*; those of value and mass say *the same*.
    const fn is_one_sided(&self, row: usize) -> bool {
        row < self.value_row || row >= self.mass_row + self.model.orders.len()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Limits;
    use crate::plan::model::one_of_everything;

    /// At whatever prices: what all find best, and how much dearer it is to take what a plan takes, comes to no more than that
    /// plan costs. So nothing is left out that a better plan needs.
    /// Break: in `find` leave out what its users pay for what is shared; in `sign` let the other be needed to be absent.
    #[test]
    fn no_plan_costs_less_than_it_is_bounded_by() {
        let plans: Vec<Vec<usize>> =
            (0..81_usize).map(|plan| [1, 3, 9, 27].map(|unit| plan / unit % 3).to_vec()).collect();
        let mut kept = 0;
        for (cash, minutes) in [(None, None), (Some(260), None), (None, Some(9)), (Some(230), Some(12))] {
            let mut model = one_of_everything();
            model.limits = Limits { cash, minutes, stages: Vec::new() };
            let relaxed = Relaxed::of(&model);
            let domain = Domain::all(&model, relaxed.bands.iter().map(Vec::len));
            let (mut prices, mut found) = (relaxed.no_prices(), Found::default());
            for step in 0..300_u32 {
                relaxed.find(&prices, &domain, &mut found);
                assert!(relaxed.is_exact(&prices));
                for plan in &plans {
                    let worth = model.worth(plan);
                    let dearer: f64 = plan.iter().zip(&found.dearer).map(|(take, dearer)| dearer[*take]).sum();
                    if worth.breach.is_none() {
                        kept += 1;
                        assert!(found.bound + dearer <= as_f64(worth.cost), "{plan:?} after {step} steps");
                    }
                }
                // Paces that rest, and some that overshoot.
                relaxed.step(&mut prices, &found, 400.0, f64::from(step % 5) * 0.4);
            }
        }
        assert!(kept > 10_000, "{kept} plans keep all limits and rules");
    }
}
