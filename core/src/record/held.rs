use serde::{Deserialize, Serialize};

use super::{EntryId, Stored, Value};

/// Which entries somebody has: of each replica named here those from 1 to this number.
///
/// ```
/// use asfound_core::record::{EntryId, Held, Replica};
/// let entry = |seq| EntryId { replica: Replica::from_bytes([1; 8]), seq };
/// let held = Held(vec![entry(4)]);
/// assert!(held.holds(entry(4)) && !held.holds(entry(5)));
/// ```
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Held(pub Vec<EntryId>);

impl Held {
    /// Whether an entry is among them.
    #[must_use]
    pub fn holds(&self, entry: EntryId) -> bool {
        self.0.iter().any(|last| last.replica == entry.replica && entry.seq <= last.seq)
    }
}

/// Kept as a text, a blank between two entries.
impl Stored for Held {
    fn store(&self) -> Value {
        Value::Text(self.0.iter().map(EntryId::to_string).collect::<Vec<_>>().join(" "))
    }

    fn read(value: &Value) -> Option<Self> {
        let Value::Text(text) = value else { return None };
        let held = Self(text.split_whitespace().map(|entry| entry.parse().ok()).collect::<Option<_>>()?);
        (held.store() == *value).then_some(held)
    }
}
