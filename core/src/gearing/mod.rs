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

/// Millimetres in an inch, exact.
const INCH: f64 = 25.4;
/// Millimetres in a mile, exact: 63 360 in.
const MILE: f64 = 1_609_344.0;
