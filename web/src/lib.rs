//! The record worker's side: store first, then answer.
//!
//! - [`store`]: where the record is kept; one contract, two implementations, one suite.
//! - [`load`] and [`seal`]: from the store into memory, and from the tail into chunks.
//! - [`recorder`]: the open job over a store. All that is decided is decided by the core.
//! - [`exports`]: what the worker calls.
//! - [`clock`] and [`chance`]: the only places that ask for either.

pub mod answer;
pub mod chance;
pub mod clock;
mod contents;
mod damage;
pub mod exports;
mod line;
pub mod load;
pub mod recorder;
pub mod seal;
pub mod store;
