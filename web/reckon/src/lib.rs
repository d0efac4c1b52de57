//! The reckoning worker's exports: heavy questions over a copy of the job. Nothing here writes to the database.
//!
//! - [`copy`]: the job, folded from what is stored.
//! - [`lists`]: the parts list on paper.
//! - [`job_file_out`], [`job_file_in`]: everything in one file, piece by piece.
//! - [`tags`]: sheets of tags, to be printed and to be looked at before.
//! - [`frames`]: tags read from the frames of a camera.
//! - [`weigh`]: how sure the quotes of a part are, and what is to be decided first.
//! - [`busy`]: work without end, to prove that it delays nobody.

mod boundary;
pub mod busy;
pub mod copy;
pub mod frames;
pub mod job_file_in;
pub mod job_file_out;
pub mod lists;
pub mod tags;
pub mod weigh;
