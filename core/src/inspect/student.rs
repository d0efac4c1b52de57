//! Student's t: how likely a reading is off by so much when its scatter is itself known from a few repeats only.
//!
//! The tail is the incomplete beta function (Abramowitz and Stegun 26.7.1 and 26.5.2, the continued fraction 26.5.8 by Lentz's
//! method), for degrees of freedom that need not be whole.

use core::f64::consts::{FRAC_1_SQRT_2, PI};

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

/// The `t` above which lies the share `beyond` (0 to 0.5, neither included): the inverse of [`tail`], by the Illinois form of
/// false position on the logarithm of the share.
///
/// ```
/// use asfound_core::inspect::above;
/// assert!((above(0.05, f64::INFINITY) - 1.644_854).abs() < 1e-6);
/// ```
#[must_use]
pub fn above(beyond: f64, freedom: f64) -> f64 {
    let off = |t: f64| libm::log(tail(t, freedom) / beyond);
    let (mut low, mut high) = (0.0, 1.0);
    let (mut over, mut under) = (off(low), off(high));
    while under > 0.0 && high < 1e12 {
        (low, over) = (high, under);
        high *= 2.0;
        under = off(high);
    }
    // Which end moved last: one that stays twice counts for half, so that it moves, too.
    let mut moved_low = None;
    for _ in 0..60 {
        let between = low + (high - low) * over / (over - under);
        let now = off(between);
        let is_low = now > 0.0;
        let stays = if moved_low.replace(is_low) == Some(is_low) { 0.5 } else { 1.0 };
        if is_low {
            (low, over, under) = (between, now, stays * under);
        } else {
            (high, under, over) = (between, now, stays * over);
        }
        if now.abs() < 1e-14 || high - low <= 1e-15 * high {
            return between;
        }
    }
    0.5 * (low + high)
}

/// The two-sided tail: the regularised incomplete beta function of ν/(ν + t²), ν/2 and 1/2.
fn beta_share(t: f64, freedom: f64) -> f64 {
    let (half, square) = (0.5 * freedom, t * t);
    let (x, rest) = (freedom / (freedom + square), square / (freedom + square));
    if rest == 0.0 {
        return 1.0;
    }
    // The logarithm of the beta function of ν/2 and 1/2; Γ(1/2) is √π.
    let beta = libm::lgamma(half) + 0.5 * libm::log(PI) - libm::lgamma(half + 0.5);
    let front = libm::exp(half * libm::log(x) + 0.5 * libm::log(rest) - beta);
    if x < (half + 1.0) / (half + 2.5) {
        front * continued_fraction(half, 0.5, x) / half
    } else {
        1.0 - front * continued_fraction(0.5, half, rest) / 0.5
    }
}

fn continued_fraction(a: f64, b: f64, x: f64) -> f64 {
    const TINY: f64 = 1e-300;
    let kept = |value: f64| if value.abs() < TINY { TINY } else { value };
    let mut c = 1.0;
    let mut d = 1.0 / kept(1.0 - (a + b) * x / (a + 1.0));
    let mut product = d;
    for step in 1_u16..300 {
        let m = f64::from(step);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        let before = product;
        for term in [even, odd] {
            d = 1.0 / kept(1.0 + term * d);
            c = kept(1.0 + term / c);
            product *= d * c;
        }
        if (product - before).abs() <= 1e-16 * before.abs() {
            break;
        }
    }
    product
}
