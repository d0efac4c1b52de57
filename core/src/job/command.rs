use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::change::Change;
use crate::quantity::Millis;
use crate::record::{EntryId, FieldName, Id, Kind, Replica};

/// A command under its own id: sent again after a crash, it is recognised and not done twice.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Sent {
    /// Made by whoever sends it, once.
    pub id: Id,
    /// What is to be done.
    pub command: Command,
}

/// What is to be done. Ids of new records are made by whoever sends it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "do", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Command {
    /// A new record with its first values.
    ///
    /// A part without a tag draws the next one of the device's block. A part that is not from boxes is off the vehicle,
    /// next in the order of removal, unless `off` is said to be false.
    Create {
        /// Its id.
        id: Id,
        /// What it is.
        kind: Kind,
        /// Its first values.
        #[serde(default)]
        changes: Vec<Change>,
    },
    /// New values for one record or many.
    Change {
        /// Which ones.
        ids: Vec<Id>,
        /// The values.
        changes: Vec<Change>,
        /// The entries seen on screen, by field, as the view gave them; for striking out those of all fields. Left out:
        /// all that are here now were seen. What the same window wrote counts as seen by it.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        seen: Option<Seen>,
    },
    /// Takes back what one entry wrote, where nobody has written since.
    Undo {
        /// Which entry.
        entry: EntryId,
    },
    /// Several parts come out of one: each gets a tag of its own and what is known of the first.
    Split {
        /// The part whose tag is split; it stays, with the rest of its pieces.
        part: Id,
        /// The new ones.
        into: Vec<SplitOff>,
    },
    /// Decides for a quote, and keeps who, when and at which figures.
    Choose {
        /// Id of the decision.
        id: Id,
        /// The quote.
        quote: Id,
        /// For which part; left out: the one that the quote is of. A kit may be chosen for any part that it covers.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        part: Option<Id>,
        /// Who decided.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        who: Option<String>,
    },
    /// Several commands as one: all of them or none.
    All {
        /// In this order.
        commands: Vec<Command>,
    },
}

/// A part that comes out of another.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SplitOff {
    /// Its id.
    pub id: Id,
    /// Its name, if it differs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// How many pieces; one if left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quantity: Option<i64>,
}

/// The entries seen on screen, by field.
pub type Seen = BTreeMap<FieldName, Vec<EntryId>>;

/// What the outside says with a command: who records, and when it is by their clock.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Context {
    /// This start of this window.
    pub replica: Replica,
    /// The phone or computer; it draws tag numbers from its own block.
    pub device: Id,
    /// Now, by the device's clock.
    pub at: Millis,
}
