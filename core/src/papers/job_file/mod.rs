//! The job file: one zip that holds everything, and that anyone can open without this app. Form 1.
//!
//! - `READ ME.txt`: what it is, that originals may hold a location, how to read it;
//! - `parts.csv`: the parts list;
//! - `job.json`: every record with its values;
//! - `chunks/HASH.chunk`: the entries, sealed;
//! - `photos/HASH.jpg` and so on: photos and stretches of sound as they were taken, stored as they are.
//!
//! The comment of the zip names the form and the job. Written and read piece by piece: no more than one member is in
//! memory at a time. [`Writer`] makes the same bytes of the same record; [`JobFile`] reads, and checks every chunk and
//! photo against its name; a damaged one is reported, the others still come in.

mod dry_run;
mod error;
mod member;
mod reader;
mod snapshot;
mod writer;

pub use dry_run::{DryRun, blob_missing};
pub use error::JobFileError;
pub use member::{Member, MemberKind, blob_path};
pub use rawzip::ReaderAt;
pub use reader::{JobFile, Opened};
pub use snapshot::{FORM, snapshot};
pub use writer::{PIECE, Writer, Written};
