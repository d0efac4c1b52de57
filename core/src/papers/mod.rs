//! What leaves the phone: lists and the job file.
//!
//! - [`PartsList`]: the rows and sums that both lists show, so that they agree to the cent.
//! - [`parts_csv`]: the parts list as a table.
//! - [`job_file`]: everything in one zip, out and in.

mod figures;
pub mod job_file;
mod list;
mod parts_csv;
mod without_location;
mod words;

pub use list::{Decision, Mark, PartsList, Row, Sum, Totals};
pub use parts_csv::{as_entered, harmless, parts_csv};
pub use without_location::without_location;
pub use words::{Columns, MarkWords, PageWords, PaperWords, RouteWords, SideWords, StandingWords};
