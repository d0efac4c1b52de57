//! What the record says: the job with its vehicles, assemblies, parts; commands that add to it, questions over it.

mod alike;
mod answer;
mod apply;
mod assembly;
mod change;
mod command;
mod draft;
mod find;
mod gearings;
mod history;
mod list;
mod part;
mod photo;
mod place;
mod query;
mod rules;
mod settings;
mod suppliers;
mod tags;
mod teardown;
mod troubles;
mod view;
pub mod vocabulary;
mod whole;

pub(crate) use alike::bare_name;
pub use answer::ask;
pub use apply::{Applied, apply};
pub use change::{Change, Values};
pub use command::{Command, Context, Seen, Sent, SplitOff};
pub use find::tag_text;
pub use query::{Group, PartsQuery, Query, SpeedUnit};
pub(crate) use suppliers::called;
pub use tags::BLOCK;
pub use troubles::troubles;
pub use view::*;
pub use whole::Job;
