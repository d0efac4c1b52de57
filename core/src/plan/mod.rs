//! The whole job at once: one quote for every part, so that all of them together cost least.
//!
//! - [`model`]: a job in whole numbers, as a plan sees it.
//! - [`worth`]: what a plan comes to, counted from nothing.
//! - [`search`]: the best plan, with what is proved of it; [`relaxed`] bounds it from below, [`descent`] finds plans.

mod bands;
mod descent;
mod domain;
mod model;
mod relaxed;
mod search;
mod state;
mod worth;

pub use model::{Carriage, Cell, Chosen, Limits, Load, Model, Order, Rule, Shared, Take};
pub use search::{PlanLinks, Proof, Search, Solved, solve};
pub use worth::{Breach, Ordered, Worth};
