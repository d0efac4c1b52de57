//! The whole job at once: one quote for every part, so that all of them together cost least.
//!
//! - [`plan`]: asked of a job, told with its reasons; where nothing fits, what collides.
//! - [`Model`]: a job in whole numbers, as a plan sees it; [`Worth`]: what a plan comes to, counted from nothing.
//! - [`Search`]: the best plan, with what is proved of it. A relaxation bounds it from below, small changes find plans.

mod answer;
mod bands;
mod collide;
mod cover;
mod descent;
mod domain;
mod frontier;
mod kept;
mod model;
mod of_job;
mod query;
mod relaxed;
mod search;
mod state;
mod steps;
mod sway;
mod view;
mod worth;

pub use answer::{plan, plan_while};
pub use frontier::{FrontierPoint, FrontierQuery, FrontierView, OneMore, Scarce, frontier};
pub use kept::{KeptPart, KeptPlan, KeptPlansView, KeptSince, KeptSums, kept_plans};
pub use model::{Carriage, Cell, Chosen, Limits, Load, Model, Order, Rule, Shared, Take};
pub use query::{PlanQuery, StageBudget};
pub use search::{PlanLinks, PlanProof, Search, Solved, solve};
pub use sway::{SwayPart, SwayQuery, SwayQuote, SwayView, sway};
pub use view::{
    Because, Collides, Collision, PlanChoice, PlanDonor, PlanKit, PlanOrder, PlanStep, PlanSums, PlanTaken, PlanView,
    PlanWhy, Spare, StepWhy,
};
pub use worth::{Breach, Ordered, Worth};
