//! Putting it together again: in which order, what each assembly waits for, one step after the other, what is left over.
//!
//! - [`order`]: the order of removal turned round, with what goes on after what.
//! - [`lack`]: what a part still lacks before it can go on.
//! - [`ready`]: which assembly can begin, what blocks the others, and from when on.
//! - [`step`]: one part after the other, with its hardware and tightening figures.
//! - [`loose`]: what is still loose, and what that stands in the way of.
//! - [`evening`]: what can be done with the hours at hand.
//! - [`commissioning`]: from the last assembly to the road.

pub mod commissioning;
pub mod evening;
pub mod lack;
pub mod loose;
pub mod order;
pub mod ready;
mod reference;
pub mod step;

pub use commissioning::{BeforeLine, CommissioningLine, CommissioningView, LeftView, Renewed};
pub use evening::{EveningItem, EveningKind, EveningView};
pub use lack::{Lack, LackWhy};
pub use loose::{Gate, LooseJoint};
pub use order::{Circle, RefitOrder};
pub(crate) use order::{is_donor, vehicle_done};
pub use ready::{ReadyView, RefitAssembly, RefitState};
pub use reference::ReferenceView;
pub(crate) use reference::reference_of;
pub use step::{BesidePhoto, RefitStepView, RefitStepsView, StepJoint, StepLine, StepPiece, StepState};
