//! Where the record is kept: one contract, kept in memory and in the browser's database, with one suite for both.

mod contract;
mod failure;
mod indexed;
mod memory;
mod rows;
mod strict;

pub use contract::{Blob, Derived, PIECE, Quarantined, Store, TailRow, Task, Write};
pub use failure::{Failure, TroubleCode};
pub use indexed::{Indexed, STORES, VERSION};
pub use memory::Memory;
pub use strict::{last_durability, make_strict};
