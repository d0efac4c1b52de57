//! Gearing: how fast the road goes by at an engine speed, from axle, gearbox, overdrive and tyre; and what a swap changes.
//!
//! Pure figures: ratios are turns in for one turn out, lengths millimetres, speeds [`Speed`], engine speeds turns a minute.
//! A tyre is known by its [marking](Tyre), which tells a nominal size, or by what was [measured](Rolling).

mod drive;
mod ratios;
mod rolling;
mod speed;
mod tyre;

pub use drive::{Drive, Drivetrain, more_turns};
pub use ratios::{RatiosUnread, read_ratios};
pub use rolling::{LOADED_MORE_TURNS, Rolling, RollingFrom};
pub use speed::{Speed, engine_speed, per_1000};
pub use tyre::{AspectFrom, Tyre, TyreUnread};

/// Figures with at most one point, seven at most: exact, and far shorter than a reader of all floats.
fn figures(text: &str) -> Option<f64> {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let count = whole.len() + part.len();
    let digits = whole.bytes().chain(part.bytes());
    if count == 0 || count > 7 || !digits.clone().all(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let value = digits.fold(0_u32, |value, byte| value * 10 + u32::from(byte - b'0'));
    let under = part.bytes().fold(1_u32, |under, _| under * 10);
    Some(f64::from(value) / f64::from(under))
}

/// Millimetres in an inch, exact.
const INCH: f64 = 25.4;
/// Millimetres in a mile, exact: 63 360 in.
const MILE: f64 = 1_609_344.0;
