use std::collections::{BTreeMap, BTreeSet};

use super::{Entry, EntryId, FieldId, FieldName, Id, Kind, Replica, Stored, Value};
use crate::quantity::Millis;

/// All entries of a job, folded.
///
/// Order and repetition of [`absorb`](Self::absorb) do not matter: two records that have absorbed the same entries are
/// equal.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Record {
    /// Usually one a place; more only where two different entries carry the same identity.
    entries: BTreeMap<EntryId, Vec<Entry>>,
    items: BTreeMap<Id, Item>,
    done: BTreeSet<Id>,
}

/// One record of whatever kind: its fields with all that was ever written to them.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Item {
    fields: BTreeMap<FieldId, Log>,
}

/// Everything ever written to one field, in order of identity.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
struct Log {
    writes: Vec<Head>,
    overwritten: BTreeSet<EntryId>,
}

/// One value of a field, by whom and when.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Head {
    /// The entry that wrote it.
    pub entry: EntryId,
    /// When, by the clock of the device.
    pub at: Millis,
    /// The value.
    pub value: Value,
}

/// A stretch of entries of one replica that is not here although later ones are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Missing {
    /// Whose.
    pub replica: Replica,
    /// The first one missing.
    pub first: u64,
    /// The last one missing.
    pub last: u64,
}

/// What folding itself found wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fault {
    /// Entries of this field overwrite one another in a circle; all their values are shown.
    OverwriteLoop(Id, FieldId),
    /// Two different entries carry this identity; both are kept.
    EntryTwice(EntryId),
    /// Entries are missing.
    Missing(Missing),
}

impl Record {
    /// Takes an entry in. Answers which records it touched: none when it was here already.
    pub fn absorb(&mut self, entry: Entry) -> Vec<Id> {
        let same = self.entries.entry(entry.id).or_default();
        let Err(place) = same.binary_search(&entry) else { return Vec::new() };
        let mut touched = Vec::new();
        for op in &entry.ops {
            if op.field == FieldName::Done.id() {
                self.done.insert(op.record);
                continue;
            }
            let head = Head { entry: entry.id, at: entry.at, value: op.value.clone() };
            let log = self.items.entry(op.record).or_default().fields.entry(op.field).or_default();
            log.absorb(head, &op.over);
            touched.push(op.record);
        }
        same.insert(place, entry);
        touched.sort_unstable();
        touched.dedup();
        touched
    }

    /// Whether the command of this id was carried out.
    #[must_use]
    pub fn is_done(&self, command: Id) -> bool {
        self.done.contains(&command)
    }

    /// One record, if anything was ever said of it.
    #[must_use]
    pub fn item(&self, id: Id) -> Option<&Item> {
        self.items.get(&id)
    }

    /// All records in order of id.
    pub fn items(&self) -> impl Iterator<Item = (Id, &Item)> {
        self.items.iter().map(|(id, item)| (*id, item))
    }

    /// All entries in order of identity.
    pub fn entries(&self) -> impl Iterator<Item = &Entry> {
        self.entries.values().flatten()
    }

    /// How many entries there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.entries.values().map(Vec::len).sum()
    }

    /// Whether nothing was ever said.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// The entry of an identity.
    #[must_use]
    pub fn entry(&self, id: EntryId) -> Option<&Entry> {
        self.entries.get(&id)?.first()
    }

    /// The last number that a replica has used; 0 when it has said nothing.
    #[must_use]
    pub fn last_seq(&self, replica: Replica) -> u64 {
        let upto = EntryId { replica, seq: u64::MAX };
        self.entries.range(EntryId { replica, seq: 0 }..=upto).next_back().map_or(0, |(id, _)| id.seq)
    }

    /// What folding found wrong, sorted.
    #[must_use]
    pub fn faults(&self) -> Vec<Fault> {
        let mut faults = self.missing().into_iter().map(Fault::Missing).collect::<Vec<_>>();
        faults.extend(self.entries.iter().filter(|(_, same)| same.len() > 1).map(|(id, _)| Fault::EntryTwice(*id)));
        for (id, item) in &self.items {
            let looped = item.fields.iter().filter(|(_, log)| log.is_looped());
            faults.extend(looped.map(|(field, _)| Fault::OverwriteLoop(*id, *field)));
        }
        faults.sort_unstable();
        faults
    }

    /// Stretches of entries that are missing before others that are here.
    #[must_use]
    pub fn missing(&self) -> Vec<Missing> {
        let mut missing = Vec::new();
        let mut before: Option<EntryId> = None;
        for id in self.entries.keys() {
            let expected =
                before.filter(|last| last.replica == id.replica).map_or(1, |last| last.seq.saturating_add(1));
            if id.seq > expected {
                missing.push(Missing { replica: id.replica, first: expected, last: id.seq - 1 });
            }
            before = Some(*id);
        }
        missing
    }
}

impl Item {
    /// The heads of a field: the values that nothing overwrote, equal ones counted once, in order of identity.
    #[must_use]
    pub fn heads(&self, field: FieldId) -> Vec<&Head> {
        self.fields.get(&field).map(Log::heads).unwrap_or_default()
    }

    /// All entries behind the heads of a field, those of equal values too: what overwriting it must name.
    #[must_use]
    pub fn head_entries(&self, field: FieldId) -> Vec<EntryId> {
        let mut entries: Vec<EntryId> =
            self.fields.get(&field).map(Log::open).unwrap_or_default().iter().map(|head| head.entry).collect();
        entries.dedup();
        entries
    }

    /// Everything ever written to a field, in order of identity.
    #[must_use]
    pub fn history(&self, field: FieldId) -> &[Head] {
        self.fields.get(&field).map_or(&[], |log| &log.writes)
    }

    /// The numbers of all fields that were ever written.
    pub fn fields(&self) -> impl Iterator<Item = FieldId> {
        self.fields.keys().copied()
    }

    /// Fields with more than one head.
    #[must_use]
    pub fn conflicts(&self) -> Vec<FieldId> {
        self.fields.iter().filter(|(_, log)| log.writes.len() > 1 && log.heads().len() > 1).map(|(id, _)| *id).collect()
    }

    /// The value of a field: of several heads the one of the greatest identity that can be read, so that every device
    /// shows the same until somebody settles it.
    #[must_use]
    pub fn read<T: Stored>(&self, field: FieldName) -> Option<T> {
        let log = self.fields.get(&field.id())?;
        if let [only] = log.writes.as_slice() {
            return T::read(&only.value);
        }
        log.heads().iter().rev().find_map(|head| T::read(&head.value))
    }

    /// Whether a flag is set.
    #[must_use]
    pub fn is(&self, flag: FieldName) -> bool {
        self.read(flag) == Some(true)
    }

    /// Whether it is struck out. An edit that whoever struck it out had not seen brings it back.
    #[must_use]
    pub fn is_struck(&self) -> bool {
        let Some(log) = self.fields.get(&FieldName::Struck.id()).filter(|_| self.is(FieldName::Struck)) else {
            return false;
        };
        let was_seen = |id: &EntryId| log.overwritten.contains(id) || log.writes.iter().any(|head| head.entry == *id);
        self.fields.values().all(|other| other.open().iter().all(|head| was_seen(&head.entry)))
    }

    /// The entries behind the heads of all fields: what striking out must name, so that an edit it had not seen wins.
    #[must_use]
    pub fn all_head_entries(&self) -> Vec<EntryId> {
        let open = self.fields.values().flat_map(|log| log.open());
        open.map(|head| head.entry).collect::<BTreeSet<_>>().into_iter().collect()
    }

    /// What the record is.
    #[must_use]
    pub fn kind(&self) -> Option<Kind> {
        self.read(FieldName::Kind)
    }
}

impl Log {
    fn absorb(&mut self, head: Head, over: &[EntryId]) {
        self.overwritten.extend(over.iter().filter(|id| **id != head.entry));
        if let Err(place) = self.writes.binary_search(&head) {
            self.writes.insert(place, head);
        }
    }

    /// Writes that nothing overwrote; where each overwrites another in a circle, all of them.
    fn open(&self) -> Vec<&Head> {
        let open: Vec<&Head> = self.writes.iter().filter(|head| !self.overwritten.contains(&head.entry)).collect();
        if open.is_empty() { self.writes.iter().collect() } else { open }
    }

    fn heads(&self) -> Vec<&Head> {
        let mut heads: Vec<&Head> = Vec::new();
        for head in self.open() {
            if heads.iter().all(|known| known.value != head.value) {
                heads.push(head);
            }
        }
        heads
    }

    fn is_looped(&self) -> bool {
        !self.writes.is_empty() && self.writes.iter().all(|head| self.overwritten.contains(&head.entry))
    }
}
