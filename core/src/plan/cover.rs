use super::bands::as_f64;
use super::relaxed::GRAIN;

/// What it costs at least to bring together a weight, out of whole things that each have a weight and a cost (a knapsack turned
/// upside down). Things are tried with and without, the cheapest by weight first; what is left is bounded by taking the last
/// thing in part. Where that takes too long the bound is told: never more than what whole things cost.
#[derive(Debug, Clone, Default)]
pub(super) struct Cover {
    offered: Vec<Offered>,
    path: Vec<bool>,
    best: f64,
    best_path: Vec<bool>,
    /// The least bound of what was not looked into.
    floor: f64,
    looks: u32,
    taken: Vec<(usize, f64)>,
}

#[derive(Debug, Clone, Copy)]
struct Offered {
    number: usize,
    weight: i64,
    cost: f64,
    rate: f64,
}

/// As many looks are taken at most.
const LOOKS: u32 = 80;

impl Cover {
    pub(super) fn begin(&mut self) {
        self.offered.clear();
    }

    /// `weight` is more than nothing, `cost` at least nothing.
    pub(super) fn offer(&mut self, number: usize, weight: i64, cost: f64) {
        self.offered.push(Offered { number, weight, cost, rate: 0.0 });
    }

    /// The least cost, in grains and never too much; nothing where all together are not enough.
    pub(super) fn least(&mut self, need: i64) -> Option<f64> {
        for one in &mut self.offered {
            // None counts for more than is needed.
            one.weight = one.weight.min(need);
            one.rate = one.cost / as_f64(one.weight);
        }
        self.offered.sort_unstable_by(|one, other| one.rate.total_cmp(&other.rate).then(one.number.cmp(&other.number)));
        self.taken.clear();
        let in_part = self.in_part(0, need)?;
        (self.best, self.floor, self.looks) = (f64::INFINITY, f64::INFINITY, 0);
        self.path.clear();
        self.look(need, 0.0);
        if self.floor < self.best {
            // What is taken in part says best where the whole would go.
            let mut left = need;
            for one in &self.offered {
                let part = if one.weight < left { 1.0 } else { as_f64(left) / as_f64(one.weight) };
                self.taken.push((one.number, part));
                left -= one.weight;
                if left <= 0 {
                    break;
                }
            }
            return Some(self.floor.max(in_part));
        }
        let numbers = self.offered.iter().zip(&self.best_path).filter(|(_, taken)| **taken);
        self.taken.extend(numbers.map(|(one, _)| (one.number, 1.0)));
        Some(self.best)
    }

    /// The next thing with and without.
    fn look(&mut self, left: i64, cost: f64) {
        let at = self.path.len();
        let Some(more) = self.in_part(at, left) else { return };
        if cost + more >= self.best {
            return;
        }
        self.looks += 1;
        if self.looks > LOOKS {
            self.floor = self.floor.min(cost + more);
            return;
        }
        let one = self.offered[at];
        self.path.push(true);
        if one.weight < left {
            self.look(left - one.weight, cost + one.cost);
        } else if cost + one.cost < self.best {
            self.best = cost + one.cost;
            self.best_path.clone_from(&self.path);
        }
        self.path.pop();
        self.path.push(false);
        self.look(left, cost);
        self.path.pop();
    }

    /// The cost of what is still needed where the last thing may be taken in part; nothing where there is not enough.
    fn in_part(&self, from: usize, need: i64) -> Option<f64> {
        let (mut left, mut cost) = (need, 0.0);
        for one in &self.offered[from..] {
            if one.weight < left {
                left -= one.weight;
                cost += one.cost;
                continue;
            }
            if one.weight == left {
                return Some(cost + one.cost);
            }
            // A grain less than what the part comes to: dividing may round up.
            let part = one.cost * (as_f64(left) / as_f64(one.weight));
            return Some(cost + (libm::floor(part * GRAIN) - 1.0).max(0.0) / GRAIN);
        }
        None
    }

    /// What was taken, and how much of it.
    pub(super) fn taken(&self) -> impl Iterator<Item = (usize, f64)> {
        self.taken.iter().copied()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked by hand: 10 are needed; 6 for 6 and 8 for 12. In part: 6, and half of the other.
    /// Break: in `least` let things count for more than is needed.
    #[test]
    fn what_is_enough_by_itself_is_not_taken_in_a_small_part() {
        let mut cover = Cover::default();
        cover.begin();
        cover.offer(0, 6, 6.0);
        cover.offer(1, 8, 12.0);
        let grain = 1.0 / GRAIN;
        assert_eq!(cover.least(10), Some(12.0 - grain));
        assert_eq!(cover.taken().collect::<Vec<_>>(), [(0, 1.0), (1, 0.5)]);
        cover.begin();
        cover.offer(0, 1_000, 50.0);
        assert_eq!(cover.least(5), Some(50.0));
        assert_eq!(cover.least(2_000), None);
    }

    /// Break: in `least` leave the grain that is taken off a part as it is, or sort the dearest first.
    #[test]
    fn whole_things_never_cost_less() {
        let things = [(3, 2.5), (5, 7.25), (7, 3.125), (2, 0.5), (9, 11.0), (4, 6.0)];
        for need in 1..=30 {
            let sums = (0..64_u32).map(|mask| {
                let of = |at: &usize| mask >> at & 1 == 1;
                let inside = (0..6).filter(of).map(|at| things[at]);
                inside.fold((0, 0.0), |(weight, cost), thing| (weight + thing.0, cost + thing.1))
            });
            let whole = sums.filter(|(weight, _)| *weight >= need).map(|(_, cost)| cost).fold(f64::INFINITY, f64::min);
            let mut cover = Cover::default();
            cover.begin();
            things.iter().enumerate().for_each(|(at, (weight, cost))| cover.offer(at, *weight, *cost));
            let least = cover.least(need).unwrap_or(f64::INFINITY);
            assert!(least <= whole && (need < 30 || least == 30.375), "{need}: {least} {whole}");
        }
    }
}
