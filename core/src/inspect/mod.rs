//! Judging a part: what its family asks to be looked at and measured, what that comes to, what it leaves to choose from; and
//! what can hurt whoever works on it.

mod cautions;
mod checklist;
mod counterpart;
mod nature;
mod readings;
mod verdict;
mod view;

pub use cautions::{CautionView, CautionsView, caution_codes, cautions};
pub use counterpart::counterpart;
pub use nature::{Nature, nature, nature_of};
pub(crate) use verdict::verdict_if_touched;
pub use verdict::{Reason, ReasonFrom, Verdict, verdict};
pub use view::{AskedView, InspectView, MeasureView, OutcomeView, ProposedView, RouteLeft, inspect};
