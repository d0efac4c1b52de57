//! What leaves the phone: lists and the job file.
//!
//! - [`PartsList`]: the rows and sums that both lists show, so that they agree to the cent.
//! - [`parts_csv`], [`parts_html`]: the parts list as a table and as a page.
//! - [`errands_csv`], [`errands_html`]: what is to be bought, and what is to be sent out, by whom it goes to.
//! - [`refit_html`]: the steps of an assembly, for the wall.
//! - [`tags_pdf`]: labels and strips for parts and places.
//! - [`job_file`]: everything in one zip, out and in.

mod base64;
mod errands;
mod errands_csv;
mod errands_html;
mod figures;
pub mod job_file;
mod list;
mod now;
mod parts_csv;
mod parts_html;
mod refit_html;
mod tag_drawing;
mod tags;
mod without_location;
mod words;

pub use errands::{Errand, Errands, Group};
pub use errands_csv::errands_csv;
pub use errands_html::errands_html;
pub use list::{Decision, Mark, NowSums, PartsList, Row, Sum, Totals};
pub use now::{Now, Prices};
pub use parts_csv::{as_entered, harmless, parts_csv};
pub use parts_html::{Thumbs, parts_html};
pub use refit_html::{photos_of_refit, refit_html};
pub use tags::{
    Symbol, TagGrid, TagLabel, TagLabels, TagNudge, TagShape, TagSheet, TagSheetView, TagSheets, TagsPaper, tags_pdf,
};
pub use without_location::without_location;
pub use words::{
    CautionWords, Columns, MarkWords, PageWords, PaperWords, PriceWords, RefitWords, RouteWords, SideWords,
    StandingWords,
};
