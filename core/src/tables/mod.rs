//! What the trade and the standards say, as data: families of parts with their check-lists, hazards.
//!
//! Trade facts here are common practice, with no source, unless a row names one; the vehicle's own workshop manual
//! overrides them. There are codes alone: the words for people are written at the edge.

pub mod checks;
pub mod families;
pub mod features;
pub mod hazards;
mod naming;

pub use checks::{Look, Outcome};
pub use families::Family;
pub use features::Feature;
pub use naming::{propose, words_of};
