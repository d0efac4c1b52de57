use crate::beta::{Shape, root};

/// A guess by its least, likeliest and most: a beta-PERT distribution, with twice as much said of the middle as of the ends
/// together.
///
/// Beta distribution over least to most with a = 1 + 4 (likely − least) ÷ (most − least) and b = 6 − a; so its mean is
/// (least + 4 likely + most) ÷ 6, the rule of PERT (Malcolm, Roseboom, Clark and Fazar 1959), and its likeliest value is
/// `likely`. Of what has no range (`least` = `most`) every value is that one. Any unit.
///
/// ```
/// use asfound_core::costing::ThreePoint;
/// let hours = ThreePoint::new(2.0, 4.0, 12.0);
/// assert_eq!(hours.mean(), 5.0);
/// assert_eq!(ThreePoint::sure(3.0).quantile(0.9), 3.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreePoint {
    least: f64,
    likely: f64,
    most: f64,
}

impl ThreePoint {
    /// From its ends and its likeliest value; what is said the wrong way round is put in order.
    #[must_use]
    pub const fn new(least: f64, likely: f64, most: f64) -> Self {
        let (low, high) = (least.min(most), least.max(most));
        Self { least: low, likely: likely.max(low).min(high), most: high }
    }

    /// A value without a range.
    #[must_use]
    pub const fn sure(value: f64) -> Self {
        Self { least: value, likely: value, most: value }
    }

    /// From a likeliest value and the bracket in which it is found 8 times in 10: below `low` 1 time in 10, above `high` 1
    /// time in 10. So the ends lie outside the bracket. They lie within `floor` and `ceiling`, which the figure cannot pass:
    /// an end that would pass them is put there, and the other one keeps its 1 in 10 as far as it can. A side on which
    /// nothing was left open ends at the likeliest value.
    ///
    /// ```
    /// use asfound_core::costing::ThreePoint;
    /// let about = ThreePoint::bracket(100.0, 85.0, 125.0, 0.0, f64::INFINITY);
    /// assert!((about.quantile(0.1) - 85.0).abs() < 1e-9 && (about.quantile(0.9) - 125.0).abs() < 1e-9);
    /// assert_eq!(about.likely(), 100.0);
    /// ```
    #[must_use]
    pub fn bracket(likely: f64, low: f64, high: f64, floor: f64, ceiling: f64) -> Self {
        let (under, over) = ((likely - low).max(0.0), (high - likely).max(0.0));
        if under + over <= 0.0 {
            return Self::sure(likely);
        }
        let at = place(under, over);
        let shape = of_place(at);
        let range = if under <= 0.0 {
            over / shape.quantile(0.9)
        } else if over <= 0.0 {
            under / (1.0 - shape.quantile(0.1))
        } else {
            (under + over) / (shape.quantile(0.9) - shape.quantile(0.1))
        };
        let (least, most) = (likely - at * range, likely + (1.0 - at) * range);
        let (bottom, top) = (floor.min(likely), ceiling.max(likely));
        match (least < bottom, most > top) {
            (false, false) => Self { least, likely, most },
            (true, true) => Self { least: bottom, likely, most: top },
            (true, false) => Self { least: bottom, likely, most: (likely + beyond(likely - bottom, over)).min(top) },
            (false, true) => Self { least: (likely - beyond(top - likely, under)).max(bottom), likely, most: top },
        }
    }

    /// The least that it can be.
    #[must_use]
    pub const fn least(&self) -> f64 {
        self.least
    }

    /// The likeliest value.
    #[must_use]
    pub const fn likely(&self) -> f64 {
        self.likely
    }

    /// The most that it can be.
    #[must_use]
    pub const fn most(&self) -> f64 {
        self.most
    }

    /// Whether it has no range.
    #[must_use]
    pub fn is_sure(&self) -> bool {
        self.range() <= 0.0
    }

    /// (least + 4 likely + most) ÷ 6.
    #[must_use]
    pub fn mean(&self) -> f64 {
        if self.is_sure() { self.likely } else { (self.least + 4.0 * self.likely + self.most) / 6.0 }
    }

    /// The standard deviation: √((mean − least)(most − mean) ÷ 7), that of the beta distribution whose a and b add up to 6.
    #[must_use]
    pub fn deviation(&self) -> f64 {
        let mean = self.mean();
        libm::sqrt(((mean - self.least) * (self.most - mean)).max(0.0) / 7.0)
    }

    /// The share below a value.
    #[must_use]
    pub fn below(&self, value: f64) -> f64 {
        if self.is_sure() {
            return if value < self.likely { 0.0 } else { 1.0 };
        }
        self.shape().below((value - self.least) / self.range())
    }

    /// The value below which a share lies; `share` from 0 to 1.
    #[must_use]
    pub fn quantile(&self, share: f64) -> f64 {
        if self.is_sure() { self.likely } else { self.at(self.shape().quantile(share)) }
    }

    /// The means of so many equal shares of it, from the lowest; so their mean is its own.
    pub(super) fn of_equal_shares(&self, count: u32) -> Vec<f64> {
        if self.is_sure() {
            return vec![self.likely; count as usize];
        }
        let (a, b) = (1.0 + 4.0 * self.place(), 5.0 - 4.0 * self.place());
        // The mean below x is a ÷ (a + b) × the share below x with a + 1 in place of a.
        let (shape, raised) = (Shape::new(a, b), Shape::new(a + 1.0, b));
        let shares = f64::from(count);
        let up_to = |share: u32| raised.below(shape.quantile(f64::from(share) / shares)) * a / 6.0;
        (0..count).map(|share| self.at((up_to(share + 1) - up_to(share)) * shares)).collect()
    }

    /// Where between the ends the likeliest value is, from 0 to 1: all that the form of the distribution hangs on.
    pub(super) fn place(&self) -> f64 {
        ((self.likely - self.least) / self.range()).clamp(0.0, 1.0)
    }

    pub(super) fn shape(&self) -> Shape {
        of_place(self.place())
    }

    /// The value at a share of the way from the least to the most.
    pub(super) fn at(&self, share: f64) -> f64 {
        self.least + share * self.range()
    }

    fn range(&self) -> f64 {
        self.most - self.least
    }
}

pub(super) fn of_place(place: f64) -> Shape {
    Shape::new(1.0 + 4.0 * place, 5.0 - 4.0 * place)
}

/// Where the likeliest value lies between the ends, so that it divides the bracket of 8 in 10 as it was said: the share below
/// it grows with its place all the way.
fn place(under: f64, over: f64) -> f64 {
    if under <= 0.0 || over <= 0.0 {
        return if under <= 0.0 { 0.0 } else { 1.0 };
    }
    let wanted = under / (under + over);
    root(0.0, 1.0, |place| {
        let shape = of_place(place);
        let (low, high) = (shape.quantile(0.1), shape.quantile(0.9));
        (place - low) / (high - low) - wanted
    })
}

/// How far the open end lies from the likeliest value, when the other one lies `fixed` from it and 1 in 10 lies more than
/// `tenth` beyond it.
fn beyond(fixed: f64, tenth: f64) -> f64 {
    if tenth <= 0.0 {
        return 0.0;
    }
    // With all of the range beyond it, 1 in 10 is above the 0.369th part of it: more than that is never needed.
    root(tenth, tenth / 0.36 + fixed, |open| {
        let range = fixed + open;
        of_place(fixed / range).quantile(0.9) * range - fixed - tenth
    })
}
