//! Where things lie: places with what is in them, what was counted, what is missing, where something may be laid next.
//!
//! What a count found is worked out, never stored: sightings say which tags were seen, and the places of parts at the moment
//! when it was ended, by the clocks, say which were expected. So the result of a count stands, whatever is moved afterwards.

mod advice;
mod count;
mod line;
mod missed;
mod missing;
mod place;
mod rack;
mod tag;
mod view;
mod whereabouts;

pub(crate) use line::code_of;
pub use missing::{OUT_DAYS, UNSEEN_DAYS};
pub use view::*;
pub use whereabouts::Whereabouts;
