//! The fold again, as slowly and plainly as it can be said: what the real one is held against.

use std::collections::{BTreeMap, BTreeSet};

use asfound_core::record::{Entry, EntryId, FieldId, FieldName, Id, Value};

/// What was written to one field, and which entries somebody overwrote.
#[derive(Default)]
pub(crate) struct Field {
    pub(crate) writes: BTreeSet<(EntryId, Value)>,
    overwritten: BTreeSet<EntryId>,
}

impl Field {
    /// Whether each write was overwritten by another.
    pub(crate) fn is_looped(&self) -> bool {
        self.writes.iter().all(|(entry, _)| self.overwritten.contains(entry))
    }

    /// What nobody overwrote; all of it where everything was overwritten in a circle.
    pub(crate) fn heads(&self) -> BTreeSet<Value> {
        let value = |(_, value): &(EntryId, Value)| value.clone();
        let open: BTreeSet<Value> =
            self.writes.iter().filter(|(entry, _)| !self.overwritten.contains(entry)).map(value).collect();
        if open.is_empty() { self.writes.iter().map(value).collect() } else { open }
    }
}

pub(crate) fn fold(entries: &[Entry]) -> BTreeMap<(Id, FieldId), Field> {
    let mut fields: BTreeMap<(Id, FieldId), Field> = BTreeMap::new();
    for entry in entries {
        for op in entry.ops.iter().filter(|op| op.field != FieldName::Done.id()) {
            let field = fields.entry((op.record, op.field)).or_default();
            field.writes.insert((entry.id, op.value.clone()));
            field.overwritten.extend(op.over.iter().filter(|over| **over != entry.id));
        }
    }
    fields
}
