//! What each way to follow a route really costs: cash, own hours, the chance that it goes wrong, how long it lasts; and what
//! would change the answer.

mod beta;
mod break_even;
mod cost;
mod draws;
mod expected;
mod figures;
mod flips;
mod input;
mod interest;
mod kit;
mod limits;
mod line;
mod spread;
mod starting;
mod three_point;
mod totals;
mod view;
mod what_if;

pub use beta::beta_below;
pub use break_even::{BreakEven, break_even};
pub use cost::cost;
pub(crate) use cost::{chosen_now, quote_now};
pub use draws::{Drawn, Stream};
pub use expected::{Cost, cheapest, costs};
pub(crate) use figures::in_job_currency;
pub use figures::{Figures, Terms};
pub use flips::{Beyond, Flip, flip, flips};
pub use input::{Dial, Input, Setting};
pub use interest::{a_year, present_value, worth_now};
pub use kit::{CoverView, KitView};
pub use limits::WhyNot;
pub(crate) use limits::{PRICES, stray_price, why_not_choose};
pub use spread::{Spread, open_with, ranges, spread_of};
pub use starting::{StartingValues, starting_values};
pub use three_point::ThreePoint;
pub use totals::{PurchaseView, TotalsView, totals};
pub use view::{CostLine, CostView, LineKind, Overtaken, QuoteCost};
pub use what_if::WhatIf;
