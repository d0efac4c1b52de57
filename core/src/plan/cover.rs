use super::bands::as_f64;
use super::relaxed::GRAIN;

/// What it costs at least to bring together a weight, out of things that each have a weight and a cost (a knapsack turned upside
/// down): things may be taken in part, but none counts for more than is needed, so that one that is enough by itself is not
/// taken in a small part. Never more than what whole things cost.
#[derive(Debug, Clone, Default)]
pub(super) struct Cover {
    offered: Vec<Offered>,
    taken: Vec<(usize, f64)>,
}

#[derive(Debug, Clone, Copy)]
struct Offered {
    number: usize,
    weight: i64,
    cost: f64,
    rate: f64,
}

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
        self.taken.clear();
        for one in &mut self.offered {
            one.weight = one.weight.min(need);
            one.rate = one.cost / as_f64(one.weight);
        }
        self.offered.sort_unstable_by(|one, other| one.rate.total_cmp(&other.rate).then(one.number.cmp(&other.number)));
        let (mut left, mut cost) = (need, 0.0);
        for one in &self.offered {
            if one.weight < left {
                left -= one.weight;
                cost += one.cost;
                self.taken.push((one.number, 1.0));
                continue;
            }
            let part = as_f64(left) / as_f64(one.weight);
            // A grain less than what the part comes to: dividing may round up.
            let exact = if left == one.weight {
                one.cost
            } else {
                (libm::floor(one.cost * part * GRAIN) - 1.0).max(0.0) / GRAIN
            };
            self.taken.push((one.number, part));
            return Some(cost + exact);
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
