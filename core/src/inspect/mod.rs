//! Judging a part: what a reading is worth, what it proves against a limit, what would settle it.

mod limits;
mod proof;
mod settle;
mod sizes;
mod student;
mod uncertainty;

pub use limits::{Against, Limits, Use, Wear, WearStands, after_cut, against, wear};
pub use proof::{Bounds, DEFAULT_RULE, Proof, Proved, Rule, chance, prove, worst};
pub use settle::{Settling, settling};
pub use sizes::{NextSize, SizeSteps, Surface, next_size};
pub use student::{above, tail};
pub use uncertainty::{Instrument, Measured, Source, UncertaintyPart, difference, measured};
