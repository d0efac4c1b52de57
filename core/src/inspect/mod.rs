//! Judging a part: what a reading is worth, what it proves against a limit, what would settle it.

mod proof;
mod student;
mod uncertainty;

pub use proof::{Bounds, DEFAULT_RULE, Proof, Proved, Rule, chance, prove, worst};
pub use student::{above, tail};
pub use uncertainty::{Instrument, Measured, Source, UncertaintyPart, difference, measured};
