//! Chance from a seed: the same on every machine, whatever is asked first.

use super::input::{Dial, Input};
use super::three_point::{ThreePoint, of_place};
use crate::beta::Shape;
use crate::record::Id;

/// A row of even chances between 0 and 1, each worked out from its number alone: SplitMix64 (Steele, Lea and Flood 2014),
/// whose n-th answer is a mixture of seed + n × a constant.
///
/// ```
/// use asfound_core::costing::Stream;
/// let stream = Stream::seeded(1);
/// assert_eq!(stream.even(7), Stream::seeded(1).even(7));
/// assert_ne!(stream.even(7), stream.even(8));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stream {
    seed: u64,
}

/// The golden ratio in 64 bits.
const STEP: u64 = 0x9e37_79b9_7f4a_7c15;

impl Stream {
    /// From a seed.
    #[must_use]
    pub const fn seeded(seed: u64) -> Self {
        Self { seed }
    }

    /// The row of one figure: its seed is mixed from the seed of all, whose figure it is, and which. So what is drawn for a
    /// figure hangs on no other one, nor on the order in which quotes are given.
    pub(super) fn of(seed: u64, dial: Dial, purpose: u64) -> Self {
        let bytes = dial.quote.unwrap_or_else(|| Id::from_bytes([0; 16]));
        let [high, low] = [0, 8].map(|from| {
            let mut half = [0; 8];
            half.copy_from_slice(&bytes.bytes()[from..from + 8]);
            u64::from_be_bytes(half)
        });
        let mixed = [purpose, high, low, number_of(dial.input)].into_iter();
        Self { seed: mixed.fold(seed, |state, more| Self::seeded(state ^ more).bits(0)) }
    }

    /// The 64 bits of one number in the row, counted from 0.
    #[must_use]
    pub const fn bits(&self, number: u64) -> u64 {
        let mixed = self.seed.wrapping_add(number.wrapping_add(1).wrapping_mul(STEP));
        let mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// One number in the row as an even chance, above 0 and below 1.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "52 bits and a half are exact")]
    pub const fn even(&self, number: u64) -> f64 {
        ((self.bits(number) >> 12) as f64 + 0.5) / 4_503_599_627_370_496.0
    }
}

/// Its place in the list of all: part of the seed, so that it never changes.
const fn number_of(input: Input) -> u64 {
    match input {
        Input::Cash => 1,
        Input::Freight => 2,
        Input::Tax => 3,
        Input::Duty => 4,
        Input::Consumables => 5,
        Input::Surcharge => 6,
        Input::Withheld => 7,
        Input::OwnTime => 8,
        Input::StripAgain => 9,
        Input::Chance => 10,
        Input::Life => 11,
        Input::HourValue => 12,
        Input::Interest => 13,
        Input::Years => 14,
    }
}

/// How many steps between the ends are worked out before anything is drawn.
const CELLS: usize = 128;

/// A guess made ready for being drawn from many times, by turning round its distribution: a larger even chance never gives a
/// smaller value, and a likeliest value that is larger never gives smaller ones.
///
/// Between steps the distribution is a cubic through its values and its densities; what is drawn is off by less than a
/// millionth of the range.
///
/// ```
/// use asfound_core::costing::{Drawn, ThreePoint};
/// let guess = ThreePoint::new(2.0, 4.0, 12.0);
/// assert!((Drawn::new(guess).at(0.3) - guess.quantile(0.3)).abs() < 1e-5);
/// ```
#[derive(Debug, Clone)]
pub struct Drawn {
    guess: ThreePoint,
    /// At every step: where it is, the share below it, the density there.
    steps: Vec<(f64, f64, f64)>,
}

impl Drawn {
    /// Makes a guess ready.
    #[must_use]
    pub fn new(guess: ThreePoint) -> Self {
        let steps = if guess.is_sure() { Vec::new() } else { steps(&of_place(guess.place())) };
        Self { guess, steps }
    }

    /// The value below which an even chance lies.
    #[must_use]
    pub fn at(&self, even: f64) -> f64 {
        if self.steps.is_empty() {
            return self.guess.likely();
        }
        let above = self.steps.partition_point(|(_, share, _)| *share <= even).clamp(1, CELLS);
        self.guess.at(within(self.steps[above - 1], self.steps[above], even))
    }
}

fn steps(shape: &Shape) -> Vec<(f64, f64, f64)> {
    let step = |number: u32| {
        let even = f64::from(number) / 128.0;
        // Closer together towards the ends, where the distribution bends most.
        let at = even * even * even * ((6.0 * even - 15.0) * even + 10.0);
        (at, shape.below(at), shape.density(at))
    };
    (0..=128).map(step).collect()
}

/// Where between two steps a share is reached, by Newton's method on the cubic, kept between them.
fn within(before: (f64, f64, f64), after: (f64, f64, f64), share: f64) -> f64 {
    let width = after.0 - before.0;
    let rise = after.1 - before.1;
    if rise <= 0.0 {
        return before.0;
    }
    let wanted = (share - before.1) / rise;
    let (start, end) = (before.2 * width / rise, after.2 * width / rise);
    // The cubic from 0 to 1 with these slopes at its ends.
    let (third, second) = (start + end - 2.0, 3.0 - 2.0 * start - end);
    let (mut low, mut high) = (0.0, 1.0);
    let mut at = wanted;
    for _ in 0..20 {
        let off = ((third * at + second) * at + start) * at - wanted;
        if off < 0.0 {
            low = at
        } else {
            high = at
        }
        let next = at - off / ((3.0 * third * at + 2.0 * second) * at + start);
        let next = if next >= low && next <= high { next } else { f64::midpoint(low, high) };
        let moved = (next - at).abs();
        at = next;
        if moved <= 1e-9 {
            break;
        }
    }
    before.0 + at * width
}
