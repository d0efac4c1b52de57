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

    fn of(things: &[(i64, f64)]) -> Cover {
        let mut cover = Cover::default();
        cover.begin();
        things.iter().enumerate().for_each(|(at, (weight, cost))| cover.offer(at, *weight, *cost));
        cover
    }

    /// Worked by hand: 10 are needed, of 6 for 6 and 8 for 12: both. 8 of 6 for 6, 5 for 5.5 and 8 for 11: the third alone, though
    /// the first and half of the second would be 7.1.
    /// Break: in `look` leave out trying without.
    #[test]
    fn things_are_taken_whole() {
        let mut cover = of(&[(6, 6.0), (8, 12.0)]);
        assert_eq!(cover.least(10), Some(18.0));
        assert_eq!(cover.taken().collect::<Vec<_>>(), [(0, 1.0), (1, 1.0)]);
        let mut cover = of(&[(6, 6.0), (5, 5.5), (8, 11.0)]);
        assert_eq!(cover.least(8), Some(11.0));
        assert_eq!(cover.taken().collect::<Vec<_>>(), [(2, 1.0)]);
        let mut cover = of(&[(1_000, 50.0)]);
        assert_eq!((cover.least(5), of(&[(1_000, 50.0)]).least(2_000)), (Some(50.0), None));
    }

    /// By trying every subset.
    /// Break: in `in_part` take the part of what is left from the whole need.
    #[test]
    fn whole_things_cost_what_they_cost_at_least() {
        let things = [(3, 2.5), (5, 7.25), (7, 3.125), (2, 0.5), (9, 11.0), (4, 6.0)];
        for need in 1..=30 {
            let sums = (0..64_u32).map(|mask| {
                let inside = (0..6).filter(|at| mask >> at & 1 == 1).map(|at: usize| things[at]);
                inside.fold((0, 0.0), |(weight, cost), thing| (weight + thing.0, cost + thing.1))
            });
            let whole = sums.filter(|(weight, _)| *weight >= need).map(|(_, cost)| cost).fold(f64::INFINITY, f64::min);
            assert_eq!(of(&things).least(need), Some(whole), "{need}");
        }
    }

    /// Where there are too many to look into, the bound is still none too high: beside a table filled weight by weight.
    /// Break: in `look` forget what was not looked into.
    #[test]
    fn what_was_not_looked_into_counts() {
        let mut is_near = 0;
        for turn in 0..40_i64 {
            let things: Vec<(i64, f64)> = (0..40_i64)
                .map(|at| {
                    let weight = 100 + (at * 7_919 + turn * 104_729) % 900;
                    (weight, as_f64(weight + (at * 31 + turn) % 60))
                })
                .collect();
            let need = 2_345 + turn * 17;
            let size = usize::try_from(need).expect("small");
            let mut best = vec![f64::INFINITY; size + 1];
            best[0] = 0.0;
            for (weight, cost) in &things {
                let weight = usize::try_from(*weight).expect("small");
                for reached in (0..=size).rev() {
                    let to = (reached + weight).min(size);
                    best[to] = best[to].min(best[reached] + cost);
                }
            }
            let least = of(&things).least(need).expect("enough");
            assert!(least <= best[size], "{turn}: {least} {}", best[size]);
            is_near += usize::from(least < best[size]);
        }
        assert!(is_near > 0, "none was too many to look into");
    }
}
