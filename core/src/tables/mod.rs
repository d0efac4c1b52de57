//! What the trade and the standards say, as data: families of parts with their check-lists, hazards, bearings, densities, instruments.
//!
//! Trade facts here are common practice, with no source, unless a row names one; the vehicle's own workshop manual
//! overrides them. There are codes alone: the words for people are written at the edge.

mod bearing_damage;
mod bearings;
pub mod checks;
pub mod densities;
pub mod families;
pub mod features;
pub mod hazards;
mod instruments;
pub mod names;
mod naming;
mod renewed;
mod rust_grades;
mod seals;

pub use bearing_damage::{BearingDamage, DamageClass};
pub use bearings::{Bearing, BearingSource, BearingSuffix, bearing};
pub use checks::{Look, Outcome};
pub use families::Family;
pub use features::Feature;
pub use instruments::UsualInstrument;
pub use naming::{propose, words_of};
pub use renewed::renewed_by_name;
pub use rust_grades::{CoatingRust, D610_PERCENT, Preparation, RustGrade, d610_grade};
pub use seals::{Seal, seal};
