//! What each way to follow a route really costs: cash, own hours, and the chance that it goes wrong.

mod break_even;
mod cost;
mod quote;
mod view;

pub use break_even::{BreakEven, break_even_hours};
pub use cost::{Expected, cost, expected_costs};
pub(crate) use quote::why_not_choose;
pub use quote::{Figures, WhyNot};
pub use view::{CostLine, CostView, LineKind, QuoteCost};
