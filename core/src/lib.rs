//! The core of asfound: what came off, what is known of it, what it costs. Pure: no clock, chance or I/O.
//!
//! The folders are the reading order; each uses only those above it.
//!
//! - [`quantity`]: one quantity, one type; [`quantity::bounds`] is the table of what is accepted.
//! - [`beta`]: the beta distribution, for guesses and for readings.
//! - [`record`]: the change log. Entries with what they overwrote, the fold with heads and conflicts, chunks.
//! - [`problem`]: what is wrong, as data.
//! - [`gearing`]: road speed by axle, gearbox and tyre.
//! - [`job`]: what the record says. Commands in, entries out; questions in, views out.
//! - [`tables`]: what the trade and the standards say, as data.
//! - [`inspect`]: judging a part: check-lists, readings, cautions.
//! - [`costing`]: what each way to follow a route really costs.
//! - [`stores`]: where things lie, what was counted, what is missing.
//! - [`refit`]: putting it together again.
//! - [`plan`]: the whole job at once.
//! - [`reckoning`]: heavy questions, answered apart.
//! - [`papers`]: lists and the job file.
//!
//! One tap, end to end: the page sends a [`job::Sent`]; [`job::apply`] answers with entries; whoever called stores them,
//! [absorbs](job::Job::absorb) them and answers; then [`job::ask`] gives the view that is drawn.
#![forbid(unsafe_code)]
#![warn(missing_docs)]

pub mod beta;
pub mod costing;
pub mod gearing;
pub mod inspect;
pub mod job;
pub mod papers;
pub mod plan;
pub mod problem;
#[cfg(feature = "ts")]
pub mod protocol;
pub mod quantity;
pub mod reckoning;
pub mod record;
pub mod refit;
pub mod stores;
pub mod tables;
