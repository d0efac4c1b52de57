use super::bands::{Band, as_f64, bands_of};
use super::cover::Cover;
use super::domain::{Domain, OrderOpen};
use super::model::{Chosen, Load, Model};
use crate::job::vocabulary::Relation;

/// What every price is a multiple of, so that all sums of prices and whole numbers are exact in a float: then a bound is as good
/// as one counted in integers.
pub(super) const GRAIN: f64 = 65_536.0;
/// Sums below this are exact in grains.
const EXACT: f64 = 68_719_476_736.0;

/// A model whose rows that tie cells together are priced instead of kept (Lagrangian relaxation; Held, Wolfe and Crowder 1974):
/// every cell, every shared thing and every order then finds its own best, and what they come to together is never more than what
/// the best plan costs.
///
/// Rows: a cell uses what is shared only if that is open; what goes with an order is what cells and shared things say goes with
/// it (each order has a copy of its own to choose from: Lagrangian decomposition, Guignard and Kim 1987); limits; rules. An order
/// fills each of its bands as cheaply as its goods allow: so the value from which carriage is free counts for what it is, and
/// not for its share.
#[derive(Debug)]
pub(super) struct Relaxed<'m> {
    pub(super) model: &'m Model,
    pub(super) bands: Vec<Vec<Band>>,
    rows: usize,
    /// For each take of each cell the rows in which it stands: of what it uses, and of what it adds to orders.
    take_rows: Vec<Vec<Vec<usize>>>,
    /// The rows in which what is shared stands as something that is used.
    used_rows: Vec<Vec<usize>>,
    /// The rows in which what is shared stands as something that goes with an order.
    shared_rows: Vec<Vec<usize>>,
    /// What may go with each order.
    goods: Vec<Vec<Good>>,
    goods_row: usize,
    limit_row: usize,
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

/// Whether costs count, or only whether everything can be kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Weighed {
    Costs,
    Nothing,
}

impl Weighed {
    const fn counts(self) -> f64 {
        match self {
            Self::Costs => 1.0,
            Self::Nothing => 0.0,
        }
    }
}

/// What may go with an order.
#[derive(Debug, Clone, Copy)]
struct Good {
    whose: Whose,
    value: i64,
    mass: i64,
    row: usize,
}

#[derive(Debug, Clone, Copy)]
enum Whose {
    Take(usize, usize),
    Shared(usize),
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
    /// What opening each order in each of its bands adds; infinite where it cannot be in that.
    pub(super) bands: Vec<Vec<f64>>,
    /// How far each row is off.
    off: Vec<f64>,
    filling: Filling,
}

/// What an order is filled with, kept from one order to the next.
#[derive(Debug, Clone, Default)]
struct Filling {
    may: Vec<May>,
    gains: Vec<f64>,
    cover: Cover,
    /// How much of each good goes with the order.
    share: Vec<f64>,
    best: Vec<f64>,
}

/// Whether a good may go with its order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum May {
    Not,
    Free,
    Must,
}

impl<'m> Relaxed<'m> {
    pub(super) fn of(model: &'m Model) -> Self {
        let mut rows = 0;
        let mut row = || {
            rows += 1;
            rows - 1
        };
        let mut take_rows: Vec<Vec<Vec<usize>>> =
            model.cells.iter().map(|cell| vec![Vec::new(); cell.takes.len()]).collect();
        let mut used_rows = vec![Vec::new(); model.shared.len()];
        for (cell, rows_of) in model.cells.iter().zip(&mut take_rows) {
            // One row for all takes of a cell that use the same.
            let mut known: Vec<(usize, usize)> = Vec::new();
            for (take, rows_of) in cell.takes.iter().zip(rows_of) {
                for shared in &take.uses {
                    let at = known.iter().find(|(of, _)| of == shared).map(|(_, row)| *row).unwrap_or_else(|| {
                        let at = row();
                        known.push((*shared, at));
                        used_rows[*shared].push(at);
                        at
                    });
                    if !rows_of.contains(&at) {
                        rows_of.push(at);
                    }
                }
            }
        }
        let goods_row = row();
        let mut next = goods_row;
        let mut goods: Vec<Vec<Good>> = vec![Vec::new(); model.orders.len()];
        let mut add = |whose: Whose, loads: &[Load], rows_of: &mut Vec<usize>| {
            let first = next;
            for load in loads {
                let of_order: &mut Vec<Good> = &mut goods[load.order];
                match of_order.iter_mut().find(|good| good.row >= first) {
                    Some(good) => (good.value, good.mass) = (good.value + load.value, good.mass + load.mass),
                    None => {
                        of_order.push(Good { whose, value: load.value, mass: load.mass, row: next });
                        rows_of.push(next);
                        next += 1;
                    }
                }
            }
        };
        for (cell, rows_of) in take_rows.iter_mut().enumerate() {
            for (take, rows_of) in rows_of.iter_mut().enumerate() {
                add(Whose::Take(cell, take), &model.cells[cell].takes[take].loads, rows_of);
            }
        }
        let mut shared_rows = vec![Vec::new(); model.shared.len()];
        for (shared, rows_of) in shared_rows.iter_mut().enumerate() {
            add(Whose::Shared(shared), &model.shared[shared].loads, rows_of);
        }
        let limit_row = next;
        let mut relaxed = Self {
            model,
            bands: bands_of(model),
            rows: 0,
            take_rows,
            used_rows,
            shared_rows,
            goods,
            goods_row,
            limit_row,
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

    fn limit_rows(&self) -> impl Iterator<Item = (usize, i64)> {
        self.cash_row.into_iter().chain(self.minutes_row).chain(self.stage_rows.iter().copied().flatten())
    }

    /// How large the terms of each row are.
    fn measure(&mut self) {
        let mut size = vec![2.0; self.rows];
        let mut most = vec![0.0_f64; self.rows];
        let mut cost = 0.0;
        let mut count = |row: usize, amount: i64| {
            let amount = as_f64(amount).abs();
            size[row] += amount;
            most[row] = most[row].max(amount);
        };
        let mut pay = |relaxed: &Self, cash: i64, minutes: i64, stage: usize| {
            relaxed.cash_row.into_iter().chain(relaxed.stage_rows[stage]).for_each(|(row, _)| count(row, cash));
            relaxed.minutes_row.into_iter().for_each(|(row, _)| count(row, minutes));
        };
        for take in self.model.cells.iter().flat_map(|cell| &cell.takes) {
            pay(self, take.cash, take.minutes, take.stage);
            cost += as_f64(take.cost).abs();
        }
        for shared in &self.model.shared {
            pay(self, shared.cash, shared.minutes, shared.stage);
            cost += as_f64(shared.cost).abs();
        }
        for ((order, bands), goods) in self.model.orders.iter().zip(&self.bands).zip(&self.goods) {
            let most = bands.iter().map(|band| band.charge(band.value.0)).max().unwrap_or(0);
            pay(self, most, 0, order.stage);
            cost += as_f64(most);
            // What comes short of the least charge is worked out good by good.
            if order.minimum_charge > 0 {
                let all = goods.iter().map(|good| good.value).fold(order.minimum_charge, i64::saturating_add);
                pay(self, all, 0, order.stage);
                cost += as_f64(all);
            }
        }
        for rule in &self.model.rules {
            cost += as_f64(rule.price).abs();
        }
        for (row, limit) in self.limit_rows() {
            size[row] += as_f64(limit).abs();
        }
        self.scale = most.into_iter().map(|most| if most > 0.0 { 1.0 / (most * most) } else { 1.0 }).collect();
        self.size = size;
        self.cost_size = cost;
    }

    /// Whether every sum of a bound at these prices is exact.
    pub(super) fn is_exact(&self, prices: &[f64]) -> bool {
        let priced: f64 = prices.iter().zip(&self.size).map(|(price, size)| price.abs() * size).sum();
        priced + self.cost_size < EXACT
    }

    /// Everybody's best at some prices. Where nothing is weighed a plan costs nothing but what it breaks: where that is more than
    /// nothing all the same, no plan keeps everything.
    pub(super) fn find(&self, prices: &[f64], weighed: Weighed, domain: &Domain, found: &mut Found) {
        let model = self.model;
        found.off.clear();
        found.off.resize(self.rows, 0.0);
        found.taken.clear();
        found.dearer.resize(model.cells.len(), Vec::new());
        let mut bound = 0.0;
        let counts = weighed.counts();
        let price_of = |row: Option<(usize, i64)>| row.map_or(0.0, |(row, _)| prices[row]);
        let cash: Vec<f64> = self.stage_rows.iter().map(|row| price_of(self.cash_row) + price_of(*row)).collect();
        let minutes = price_of(self.minutes_row);
        let priced = |rows: &[usize]| rows.iter().map(|row| prices[*row]).sum::<f64>();
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
                    counts * as_f64(take.cost) + cash[take.stage] * as_f64(take.cash) + minutes * as_f64(take.minutes);
                cost += priced(&self.take_rows[cell][at]);
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
            self.count(&mut found.off, take.cash, take.minutes, take.stage);
            self.take_rows[cell][best].iter().for_each(|row| found.off[*row] += 1.0);
            for (rule, is_subject, which) in &self.cell_rules[cell] {
                if which[best] {
                    found.off[self.rule_row + rule] += self.sign(*rule, *is_subject);
                }
            }
        }
        found.shared.clear();
        for (at, shared) in model.shared.iter().enumerate() {
            let mut cost = counts * as_f64(shared.cost)
                + cash[shared.stage] * as_f64(shared.cash)
                + minutes * as_f64(shared.minutes);
            cost += priced(&self.shared_rows[at]) - priced(&self.used_rows[at]);
            for (rule, is_subject) in &self.shared_rules[at] {
                cost += self.sign(*rule, *is_subject) * prices[self.rule_row + rule];
            }
            found.shared.push(cost);
            if domain.shared[at].unwrap_or(cost < 0.0) {
                bound += cost;
                self.count(&mut found.off, shared.cash, shared.minutes, shared.stage);
                self.shared_rows[at].iter().for_each(|row| found.off[*row] += 1.0);
                self.used_rows[at].iter().for_each(|row| found.off[*row] -= 1.0);
                for (rule, is_subject) in &self.shared_rules[at] {
                    found.off[self.rule_row + rule] += self.sign(*rule, *is_subject);
                }
            }
        }
        found.orders.clear();
        found.bands.resize(model.orders.len(), Vec::new());
        for at in 0..model.orders.len() {
            let mut filling = std::mem::take(&mut found.filling);
            let least = self.fill(at, counts + cash[model.orders[at].stage], prices, domain, found, &mut filling);
            let must = domain.orders[at] == OrderOpen::Yes;
            found.orders.push(least);
            if let Some((band, adds)) = least
                && (must || adds < 0.0)
            {
                bound += adds;
                let mut value = 0.0;
                for (good, share) in self.goods[at].iter().zip(&filling.best) {
                    found.off[good.row] -= share;
                    value += share * as_f64(good.value);
                }
                let charge = self.bands[at][band].charge_at(value);
                let rows = self.cash_row.into_iter().chain(self.stage_rows[model.orders[at].stage]);
                rows.for_each(|(row, _)| found.off[row] += charge);
            }
            found.filling = filling;
            if must && least.is_none() {
                found.bound = f64::INFINITY;
                return;
            }
        }
        for (row, limit) in self.limit_rows() {
            bound -= prices[row] * as_f64(limit);
            found.off[row] -= as_f64(limit);
        }
        for (at, _) in model.rules.iter().enumerate().filter(|(_, rule)| rule.relation == Relation::RulesOut) {
            bound -= prices[self.rule_row + at];
            found.off[self.rule_row + at] -= 1.0;
        }
        found.bound = bound;
    }

    /// The band in which an order costs least, what goes with it paying its price; `weigh` is what a unit of cash costs. What
    /// goes with it there is left in `filling.best`.
    fn fill(
        &self,
        order: usize,
        weigh: f64,
        prices: &[f64],
        domain: &Domain,
        found: &mut Found,
        filling: &mut Filling,
    ) -> Option<(usize, f64)> {
        let goods = &self.goods[order];
        let bands = &self.bands[order];
        let Filling { may, gains, cover, share, best } = filling;
        may.clear();
        may.extend(goods.iter().map(|good| match good.whose {
            Whose::Take(cell, take) if !domain.takes[cell][take] => May::Not,
            Whose::Take(cell, _) if domain.is_settled(cell) => May::Must,
            Whose::Shared(at) if domain.shared[at] == Some(false) => May::Not,
            Whose::Shared(at) if domain.shared[at] == Some(true) => May::Must,
            _ => May::Free,
        }));
        let adds = &mut found.bands[order];
        adds.clear();
        adds.resize(bands.len(), f64::INFINITY);
        let mut least: Option<(usize, f64)> = None;
        for short in [false, true] {
            let is_in = |band: usize| domain.may_be_in(order, band) && bands[band].is_short() == short;
            if !(0..bands.len()).any(is_in) {
                continue;
            }
            gains.clear();
            // Below the least charge a good is charged nothing on top of what is charged anyhow.
            gains.extend(
                goods.iter().map(|good| prices[good.row] + if short { weigh * as_f64(good.value) } else { 0.0 }),
            );
            let (mut value, mut mass, mut gained) = (0, 0, 0.0);
            for ((good, may), gain) in goods.iter().zip(&*may).zip(&*gains) {
                if *may == May::Must || (*may == May::Free && *gain > 0.0) {
                    (value, mass, gained) = (value + good.value, mass + good.mass, gained + gain);
                }
            }
            for (at, band) in bands.iter().enumerate().filter(|(at, _)| is_in(*at)) {
                // By value and by mass alone: what both need together is no less than the dearer of the two.
                let mut forced: Option<f64> = None;
                for (now, (low, high), of_mass) in [(value, band.value, false), (mass, band.mass, true)] {
                    let (need, up) = if now < low { (low - now, true) } else { (now - high, false) };
                    if need <= 0 {
                        continue;
                    }
                    cover.begin();
                    for (number, good) in goods.iter().enumerate() {
                        let weight = if of_mass { good.mass } else { good.value };
                        if may[number] == May::Free && weight > 0 && (gains[number] > 0.0) != up {
                            cover.offer(number, weight, gains[number].abs());
                        }
                    }
                    let Some(cost) = cover.least(need) else {
                        forced = Some(f64::INFINITY);
                        break;
                    };
                    if forced.is_none_or(|known| cost > known) {
                        forced = Some(cost);
                        share.clear();
                        share.resize(goods.len(), 0.0);
                        cover.taken().for_each(|(number, part)| share[number] = part);
                    }
                }
                let cost = weigh * as_f64(band.fixed()) - gained + forced.unwrap_or(0.0);
                adds[at] = cost;
                if cost < least.map_or(f64::INFINITY, |(_, known)| known) {
                    least = Some((at, cost));
                    best.clear();
                    best.extend((0..goods.len()).map(|number| {
                        let is_in = may[number] == May::Must || (may[number] == May::Free && gains[number] > 0.0);
                        let turned = if forced.is_some() { share[number] } else { 0.0 };
                        if is_in { 1.0 - turned } else { turned }
                    }));
                }
            }
        }
        least
    }

    /// What a rule adds when its subject, or the other, is chosen.
    fn sign(&self, rule: usize, is_subject: bool) -> f64 {
        if is_subject || self.model.rules[rule].relation == Relation::RulesOut { 1.0 } else { -1.0 }
    }

    fn count(&self, off: &mut [f64], cash: i64, minutes: i64, stage: usize) {
        self.cash_row.into_iter().chain(self.stage_rows[stage]).for_each(|(row, _)| off[row] += as_f64(cash));
        self.minutes_row.into_iter().for_each(|(row, _)| off[row] += as_f64(minutes));
    }

    /// Moves the prices a step along what is off (subgradient step after Polyak), towards a bound of `target`.
    pub(super) fn step(&self, prices: &mut [f64], weighed: Weighed, found: &Found, target: f64, pace: f64) {
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
                    price = price.min(weighed.counts() * as_f64(rule.price));
                }
            }
            *known = libm::rint(price * GRAIN) / GRAIN;
        }
    }

    /// Rows that say *at most*; those of what goes with orders say *the same*.
    const fn is_one_sided(&self, row: usize) -> bool {
        row < self.goods_row || row >= self.limit_row
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
                relaxed.find(&prices, Weighed::Costs, &domain, &mut found);
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
                relaxed.step(&mut prices, Weighed::Costs, &found, 400.0, f64::from(step % 5) * 0.4);
            }
        }
        assert!(kept > 10_000, "{kept} plans keep all limits and rules");
    }
}
