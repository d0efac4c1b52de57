//! Student's t: how likely a reading is off by so much when its scatter is itself known from a few repeats only.
//!
//! The tail is the incomplete beta function (Abramowitz and Stegun 26.7.1 and 26.5.2), for degrees of freedom that need not be
//! whole.

use core::f64::consts::FRAC_1_SQRT_2;

use crate::beta::{Shape, root};

/// Above so many degrees of freedom the tail is interpolated, in their reciprocal, towards the normal one: the difference is
/// below a millionth, and the tail has no jump.
const MANY: f64 = 200.0;

/// The chance of lying more than `t` above the middle, for `t` of nothing or more; `freedom` may be infinite (normal).
///
/// ```
/// use asfound_core::inspect::tail;
/// assert!((tail(2.0, f64::INFINITY) - 0.022_75).abs() < 1e-5);
/// assert!((tail(1.0, 1.0) - 0.25).abs() < 1e-12);
/// ```
#[must_use]
pub fn tail(t: f64, freedom: f64) -> f64 {
    if freedom <= MANY {
        return 0.5 * beta_share(t, freedom);
    }
    let normal = 0.5 * libm::erfc(t * FRAC_1_SQRT_2);
    if freedom.is_infinite() { normal } else { normal + (tail(t, MANY) - normal) * MANY / freedom }
}

/// The `t` above which lies the share `beyond` (0 to 0.5, neither included): the inverse of [`tail`], found on the
/// logarithm of the share.
///
/// ```
/// use asfound_core::inspect::above;
/// assert!((above(0.05, f64::INFINITY) - 1.644_854).abs() < 1e-6);
/// ```
#[must_use]
pub fn above(beyond: f64, freedom: f64) -> f64 {
    let off = |t: f64| libm::log(beyond / tail(t, freedom));
    let (mut low, mut high) = (0.0, 1.0);
    while off(high) < 0.0 && high < 1e12 {
        low = high;
        high *= 2.0;
    }
    root(low, high, off)
}

/// The two-sided tail: the regularised incomplete beta function of ν/(ν + t²), ν/2 and 1/2.
fn beta_share(t: f64, freedom: f64) -> f64 {
    let square = t * t;
    Shape::new(0.5 * freedom, 0.5).below_with(freedom / (freedom + square), square / (freedom + square))
}
