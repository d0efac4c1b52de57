//! What the trade and the standards say, as data.

mod bearing_damage;
mod bearings;
mod instruments;
mod rust_grades;
mod seals;

pub use bearing_damage::{BearingDamage, DamageClass};
pub use bearings::{Bearing, BearingSource, BearingSuffix, bearing};
pub use instruments::UsualInstrument;
pub use rust_grades::{CoatingRust, D610_PERCENT, Preparation, RustGrade, d610_grade};
pub use seals::{Seal, seal};
