//! What leaves the phone: lists and the job file.
//!
//! - [`PartsList`]: the rows and sums that both lists show, so that they agree to the cent.
//! - [`parts_csv`], [`parts_html`]: the parts list as a table and as a page.
//! - [`job_file`]: everything in one zip, out and in.

mod base64;
mod figures;
pub mod job_file;
mod list;
mod parts_csv;
mod parts_html;
mod tag_drawing;
mod without_location;
mod words;

pub use list::{Decision, Mark, PartsList, Row, Sum, Totals};
pub use parts_csv::{as_entered, harmless, parts_csv};
pub use parts_html::{Thumbs, parts_html};
pub use without_location::without_location;
pub use words::{Columns, MarkWords, PageWords, PaperWords, RouteWords, SideWords, StandingWords};
