//! Judging a part: what its family asks to be looked at and measured, what a reading proves against a limit, what all that
//! comes to, what it leaves to choose from; and what can hurt whoever works on it.

mod cautions;
mod checklist;
mod counterpart;
mod heft;
mod limits;
mod nature;
mod proof;
mod proof_query;
mod readings;
mod settle;
mod sizes;
mod student;
mod uncertainty;
mod verdict;
mod view;

pub use crate::tables::features::Surface;
pub use cautions::{CautionView, CautionsView, caution_codes, cautions};
pub(crate) use checklist::{answers_apart, has_answer};
pub(crate) use counterpart::couples;
pub use counterpart::{counterpart, together};
pub use heft::{Heft, HeftGuess, Lift, TWO_AT_REACH_FROM, TWO_FROM, build_of, heft, lift};
pub use limits::{Against, Limits, Use, Wear, WearStands, after_cut, against, wear};
pub use nature::{Nature, nature, nature_of};
pub use proof::{Bounds, DEFAULT_RULE, Proof, Proved, Rule, chance, prove, worst};
pub use proof_query::{ProofQuery, ProofView, TypedView, UnreadView, proof, typed};
pub(crate) use readings::crossed;
pub use readings::{MeasureView, PlaceMeasured};
pub use settle::{Settling, settling};
pub use sizes::{NextSize, SizeSteps, next_size};
pub use student::{above, tail};
pub use uncertainty::{Instrument, Measured, Source, UncertaintyPart, difference, measured};
pub(crate) use verdict::verdict_if_touched;
pub use verdict::{Reason, ReasonFrom, Verdict, verdict};
pub use view::{AskedView, InspectView, OutcomeView, ProposedView, RouteLeft, UsualInstrumentView, inspect};
