//! What is remembered: a change log in which nothing is dropped and no value hides another.
//!
//! Everything a person says becomes an [`Entry`]; [`Record`] folds entries, in whatever order they arrive and however
//! often, into the heads of each field. A [`chunk`] is a sealed batch of entries under its own hash.

pub mod chunk;
mod codec;
mod entry;
mod fold;
mod held;
mod id;
mod in_order;
mod kept;
mod schema;
mod stored;
mod value;

pub use codec::Unreadable;
pub use entry::{Entry, Op};
pub use fold::{Fault, Head, Item, Missing, Record};
pub use held::Held;
pub use id::{EntryId, Hash, Id, Replica};
pub(crate) use in_order::{in_order, ordered_by};
pub use kept::{KeptQuote, KeptQuotes};
pub use schema::{FieldId, FieldName, Kind};
pub use stored::Stored;
pub(crate) use stored::{said_as_word, stored_enum};
pub use value::Value;
