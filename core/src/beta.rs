//! The beta distribution on 0 to 1: its share below a value, and the value below which a share lies. Guesses of three points
//! are drawn from it, and Student's t hangs on it.

/// The share of a beta distribution below `x`: the regularised incomplete beta function I_x(a, b).
///
/// `a` and `b` above 0; `x` from 0 to 1. Continued fraction of NIST DLMF 8.17.22, by Lentz's method, taken from the side on
/// which it converges fast (DLMF 8.17.4).
///
/// ```
/// use asfound_core::beta::beta_below;
/// // Of even chances all are as likely; of two of them the larger is below x as often as x squared.
/// assert!((beta_below(0.3, 1.0, 1.0) - 0.3).abs() < 1e-15);
/// assert!((beta_below(0.3, 2.0, 1.0) - 0.09).abs() < 1e-15);
/// ```
#[must_use]
pub fn beta_below(x: f64, a: f64, b: f64) -> f64 {
    Shape::new(a, b).below(x)
}

/// A beta distribution with its constant worked out once.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shape {
    a: f64,
    b: f64,
    /// The logarithm of 1 ÷ B(a, b).
    constant: f64,
}

impl Shape {
    pub(crate) fn new(a: f64, b: f64) -> Self {
        Self { a, b, constant: libm::lgamma(a + b) - libm::lgamma(a) - libm::lgamma(b) }
    }

    /// How densely values lie at `x`.
    pub(crate) fn density(&self, x: f64) -> f64 {
        let power = |base: f64, exponent: f64| if exponent == 0.0 { 1.0 } else { libm::pow(base, exponent) };
        libm::exp(self.constant) * power(x, self.a - 1.0) * power(1.0 - x, self.b - 1.0)
    }

    /// The share below `x`.
    pub(crate) fn below(&self, x: f64) -> f64 {
        self.below_with(x, 1.0 - x)
    }

    /// The same where what is left of `x` up to 1 is known by itself, more exactly than by taking `x` off.
    pub(crate) fn below_with(&self, x: f64, rest: f64) -> f64 {
        let (a, b) = (self.a, self.b);
        if x <= 0.0 || rest <= 0.0 {
            return if x <= 0.0 { 0.0 } else { 1.0 };
        }
        let front = libm::exp(self.constant + a * libm::log(x) + b * libm::log(rest));
        if x < (a + 1.0) / (a + b + 2.0) {
            front * fraction(x, a, b) / a
        } else {
            1.0 - front * fraction(rest, b, a) / b
        }
    }

    /// The value below which a share lies; `share` from 0 to 1. Newton's method, kept within what is known to hold it.
    pub(crate) fn quantile(&self, share: f64) -> f64 {
        if share <= 0.0 || share >= 1.0 {
            return if share <= 0.0 { 0.0 } else { 1.0 };
        }
        let (mut low, mut high) = (0.0, 1.0);
        let mut x = self.a / (self.a + self.b);
        for _ in 0..100 {
            let off = self.below(x) - share;
            if off < 0.0 {
                low = x
            } else {
                high = x
            }
            let step = off / self.density(x);
            let next = x - step;
            let next = if next > low && next < high { next } else { f64::midpoint(low, high) };
            if (next - x).abs() <= 1e-15 {
                return next;
            }
            x = next;
        }
        x
    }
}

/// The continued fraction of the incomplete beta function.
fn fraction(x: f64, a: f64, b: f64) -> f64 {
    const SMALL: f64 = 1e-300;
    let kept = |value: f64| if value.abs() < SMALL { SMALL } else { value };
    let mut c = 1.0;
    let mut d = 1.0 / kept(1.0 - (a + b) * x / (a + 1.0));
    let mut result = d;
    for step in 1..300_u32 {
        let m = f64::from(step);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        let before = result;
        for term in [even, odd] {
            d = 1.0 / kept(1.0 + term * d);
            c = kept(1.0 + term / c);
            result *= c * d;
        }
        if (result - before).abs() <= result.abs() * 1e-16 {
            break;
        }
    }
    result
}

/// Where a growing function is nothing, between two places: regula falsi that halves what stays (Illinois).
pub(crate) fn root(mut low: f64, mut high: f64, function: impl Fn(f64) -> f64) -> f64 {
    let (mut at_low, mut at_high) = (function(low), function(high));
    let (mut side, mut last) = (0_i8, low);
    let room = (high - low) * 1e-14;
    for _ in 0..100 {
        let next = high - at_high * (high - low) / (at_high - at_low);
        if !next.is_finite() || (next - last).abs() <= room {
            break;
        }
        last = next;
        let found = function(next);
        if found < 0.0 {
            (low, at_low) = (next, found);
            if side == -1 {
                at_high *= 0.5;
            }
            side = -1;
        } else {
            (high, at_high) = (next, found);
            if side == 1 {
                at_low *= 0.5;
            }
            side = 1;
        }
    }
    last
}
