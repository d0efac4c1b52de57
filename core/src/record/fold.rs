use std::collections::{BTreeMap, BTreeSet};
use std::ops::Bound;

use super::{Entry, EntryId, FieldId, FieldName, Held, Id, Kind, Replica, Stored, Value};
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
    /// Kept along the way, so that nobody looks through all entries for what is wrong.
    tallies: BTreeMap<Replica, Tally>,
    twice: BTreeSet<EntryId>,
    looped: BTreeSet<(Id, FieldId)>,
}

/// How many numbers of a replica are here, from 1, and the last of them: equal when none is missing.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
struct Tally {
    count: u64,
    last: u64,
}

/// One record of whatever kind: all that was ever written to its fields, in order of field and identity.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Item {
    /// What nothing overwrote.
    open: BTreeSet<Write>,
    /// What something overwrote; kept for ever.
    closed: BTreeSet<Write>,
    /// Whose writes to a field are overwritten, those that are still to come too.
    overwritten: BTreeSet<(FieldId, EntryId)>,
}

/// One value of one field. Fields come first in its order, so that those of one field stand together.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Write {
    field: FieldId,
    head: Head,
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
            let item = self.items.entry(op.record).or_default();
            item.absorb(op.field, head, &op.over);
            if item.is_looped(op.field) {
                self.looped.insert((op.record, op.field));
            } else {
                self.looped.remove(&(op.record, op.field));
            }
            touched.push(op.record);
        }
        if !same.is_empty() {
            self.twice.insert(entry.id);
        } else if entry.id.seq > 0 {
            let tally = self.tallies.entry(entry.id.replica).or_default();
            *tally = Tally { count: tally.count + 1, last: tally.last.max(entry.id.seq) };
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

    /// Which entries are here: of each replica those before the first that is missing.
    #[must_use]
    pub fn held(&self) -> Held {
        let mut held: BTreeMap<Replica, u64> =
            self.tallies.iter().map(|(replica, tally)| (*replica, tally.last)).collect();
        for missing in self.missing() {
            held.entry(missing.replica).and_modify(|last| *last = (*last).min(missing.first - 1));
        }
        Held(held.into_iter().filter(|(_, seq)| *seq > 0).map(|(replica, seq)| EntryId { replica, seq }).collect())
    }

    /// What folding found wrong, sorted.
    #[must_use]
    pub fn faults(&self) -> Vec<Fault> {
        let mut faults = self.missing().into_iter().map(Fault::Missing).collect::<Vec<_>>();
        faults.extend(self.twice.iter().map(|id| Fault::EntryTwice(*id)));
        faults.extend(self.looped.iter().map(|(id, field)| Fault::OverwriteLoop(*id, *field)));
        faults.sort_unstable();
        faults
    }

    /// Stretches of entries that are missing before others that are here.
    #[must_use]
    pub fn missing(&self) -> Vec<Missing> {
        let mut missing = Vec::new();
        for (replica, _) in self.tallies.iter().filter(|(_, tally)| tally.count < tally.last) {
            let id = |seq| EntryId { replica: *replica, seq };
            let mut last = 0;
            for here in self.entries.range(id(1)..=id(u64::MAX)).map(|(id, _)| id.seq) {
                if here - last > 1 {
                    missing.push(Missing { replica: *replica, first: last + 1, last: here - 1 });
                }
                last = here;
            }
        }
        missing
    }
}

impl Item {
    fn absorb(&mut self, field: FieldId, head: Head, over: &[EntryId]) {
        for entry in over.iter().filter(|entry| **entry != head.entry) {
            if self.overwritten.insert((field, *entry)) {
                self.close(field, *entry);
            }
        }
        let closed = self.overwritten.contains(&(field, head.entry));
        let writes = if closed { &mut self.closed } else { &mut self.open };
        writes.insert(Write { field, head });
    }

    /// Puts what an entry wrote to a field among the overwritten.
    fn close(&mut self, field: FieldId, entry: EntryId) {
        let from = Write { field, head: Head::least(entry) };
        let written = self.open.range(from..).take_while(|write| write.field == field && write.head.entry == entry);
        for write in written.cloned().collect::<Vec<_>>() {
            self.open.remove(&write);
            self.closed.insert(write);
        }
    }

    /// Writes to a field that nothing overwrote; where each overwrites another in a circle, all of them.
    fn standing(&self, field: FieldId) -> impl DoubleEndedIterator<Item = &Head> {
        let open = of_field(&self.open, field);
        let looped = if open.clone().next().is_none() { Some(of_field(&self.closed, field)) } else { None };
        open.chain(looped.into_iter().flatten())
    }

    /// Whether the writes to a field overwrite one another in a circle.
    fn is_looped(&self, field: FieldId) -> bool {
        of_field(&self.open, field).next().is_none() && of_field(&self.closed, field).next().is_some()
    }

    /// When a field got the value that is read, by the clock of whoever wrote it.
    #[must_use]
    pub fn written_at(&self, field: FieldName) -> Option<Millis> {
        self.standing(field.id()).next_back().map(|head| head.at)
    }

    /// Fields whose writes overwrite one another in a circle.
    fn looped(&self) -> Vec<FieldId> {
        let mut closed: Vec<FieldId> = self.closed.iter().map(|write| write.field).collect();
        closed.dedup();
        closed.retain(|field| of_field(&self.open, *field).next().is_none());
        closed
    }

    /// The heads of a field: the values that nothing overwrote, equal ones counted once, in order of identity.
    #[must_use]
    pub fn heads(&self, field: FieldId) -> Vec<&Head> {
        let mut values = BTreeSet::new();
        self.standing(field).filter(|head| values.insert(&head.value)).collect()
    }

    /// All entries behind the heads of a field, those of equal values too: what overwriting it must name.
    #[must_use]
    pub fn head_entries(&self, field: FieldId) -> Vec<EntryId> {
        let mut entries: Vec<EntryId> = self.standing(field).map(|head| head.entry).collect();
        entries.dedup();
        entries
    }

    /// Everything ever written to a field, in order of identity.
    #[must_use]
    pub fn history(&self, field: FieldId) -> Vec<&Head> {
        let mut history: Vec<&Head> = of_field(&self.open, field).chain(of_field(&self.closed, field)).collect();
        history.sort_unstable();
        history
    }

    /// The numbers of all fields that were ever written, in order.
    pub fn fields(&self) -> impl Iterator<Item = FieldId> {
        let mut fields: Vec<FieldId> = self.open.iter().chain(&self.closed).map(|write| write.field).collect();
        fields.sort_unstable();
        fields.dedup();
        fields.into_iter()
    }

    /// Fields with more than one head.
    #[must_use]
    pub fn conflicts(&self) -> Vec<FieldId> {
        let mut several = self.looped();
        let mut last = None;
        for field in self.open.iter().map(|write| write.field) {
            if last.replace(field) == Some(field) {
                several.push(field);
            }
        }
        several.sort_unstable();
        several.dedup();
        several.retain(|field| self.heads(*field).len() > 1);
        several
    }

    /// The value of a field: of several heads the one of the greatest identity that can be read, so that every device
    /// shows the same until somebody settles it.
    #[must_use]
    pub fn read<T: Stored>(&self, field: FieldName) -> Option<T> {
        self.standing(field.id()).rev().find_map(|head| T::read(&head.value))
    }

    /// Whether a flag is set.
    #[must_use]
    pub fn is(&self, flag: FieldName) -> bool {
        self.read(flag) == Some(true)
    }

    /// Whether it is struck out. An edit that whoever struck it out had not seen brings it back, and so does somebody who
    /// brought it back meanwhile.
    #[must_use]
    pub fn is_struck(&self) -> bool {
        let field = FieldName::Struck.id();
        let mut strikes = self.standing(field).peekable();
        if strikes.peek().is_none() || !strikes.all(|head| head.value == Value::Flag(true)) {
            return false;
        }
        let was_seen = |entry: EntryId| self.overwritten.contains(&(field, entry)) || wrote(&self.open, field, entry);
        self.all_standing().all(|write| write.field == field || was_seen(write.head.entry))
    }

    /// The entries behind the heads of all fields: what striking out must name, so that an edit it had not seen wins.
    #[must_use]
    pub fn all_head_entries(&self) -> Vec<EntryId> {
        self.all_standing().map(|write| write.head.entry).collect::<BTreeSet<_>>().into_iter().collect()
    }

    fn all_standing(&self) -> impl Iterator<Item = &Write> {
        let looped = self.looped();
        self.open.iter().chain(self.closed.iter().filter(move |write| looped.binary_search(&write.field).is_ok()))
    }

    /// What the record is.
    #[must_use]
    pub fn kind(&self) -> Option<Kind> {
        self.read(FieldName::Kind)
    }
}

impl Head {
    /// What comes before everything that an entry can write.
    const fn least(entry: EntryId) -> Self {
        Self { entry, at: Millis(i64::MIN), value: Value::Cleared }
    }
}

/// Whether an entry wrote to a field.
fn wrote(writes: &BTreeSet<Write>, field: FieldId, entry: EntryId) -> bool {
    let from = Write { field, head: Head::least(entry) };
    writes.range(from..).next().is_some_and(|write| write.field == field && write.head.entry == entry)
}

/// The writes of one field.
fn of_field(writes: &BTreeSet<Write>, field: FieldId) -> impl DoubleEndedIterator<Item = &Head> + Clone {
    let least = |field| Write { field, head: Head::least(EntryId { replica: Replica::from_bytes([0; 8]), seq: 0 }) };
    let to = field.0.checked_add(1).map_or(Bound::Unbounded, |next| Bound::Excluded(least(FieldId(next))));
    writes.range((Bound::Included(least(field)), to)).map(|write| &write.head)
}
