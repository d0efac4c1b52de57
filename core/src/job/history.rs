//! Records as they cross the protocol: values, what was seen, conflicts, history.

use std::collections::BTreeMap;

use super::change::{Change, Values};
use super::command::Seen;
use super::view::{ConflictView, HistoryLine, HistoryView, RecordView, WrittenView};
use super::whole::Job;
use crate::record::{EntryId, FieldName, Head, Id, Item, Kind, in_order};

impl Job {
    /// One record with its values; nothing when it is not known what it is.
    #[must_use]
    pub fn record_view(&self, id: Id) -> Option<RecordView> {
        let kind = self.kind(id)?;
        let item = self.item(id)?;
        let conflicts = self.conflicts_of(id, item);
        Some(RecordView {
            id,
            kind,
            values: Values::of(item),
            struck: item.is_struck(),
            seen: seen_of(item),
            conflicts,
        })
    }

    /// Records of a kind that point at `target`, in their own order and then in order of their coming about.
    pub(crate) fn ordered(&self, kind: Kind, field: FieldName, target: Id, struck: bool) -> Vec<RecordView> {
        let ids = self.pointing(field, target).filter(|id| self.kind(*id) == Some(kind));
        let views = ids.filter_map(|id| self.record_view(id)).filter(|view| struck || !view.struck).collect();
        in_order(views, |view| (view.struck, view.values.order.unwrap_or(i64::MAX), view.values.taken, view.id))
    }

    /// Fields of a record with more than one value.
    pub(super) fn conflicts_of(&self, id: Id, item: &Item) -> Vec<ConflictView> {
        let fields = item.conflicts().into_iter().filter_map(FieldName::of).filter(|field| is_settled(*field));
        let conflicts = fields.map(|field| {
            let heads = item.heads(field.id());
            ConflictView { id, field, values: heads.iter().map(|head| self.written(field, head)).collect() }
        });
        conflicts.collect()
    }

    fn written(&self, field: FieldName, head: &Head) -> WrittenView {
        let change = Change::read(field, &head.value);
        let named = change.as_ref().and_then(Change::target).map(|id| self.name(id)).filter(|name| !name.is_empty());
        WrittenView { entry: head.entry, at: head.at, change, named }
    }

    /// What was ever written to a record and to what was said about it, in order of the clocks, latest last.
    #[must_use]
    pub fn history_view(&self, id: Id) -> Option<HistoryView> {
        let mut lines = self.lines_of(id, None)?;
        for about in [FieldName::Of, FieldName::Part].into_iter().flat_map(|field| self.pointing(field, id)) {
            let said = self.kind(about).filter(|kind| SAID.contains(kind));
            lines.extend(said.and_then(|_| self.lines_of(about, Some(about))).unwrap_or_default());
        }
        let lines = in_order(lines, |line: &HistoryLine| (line.at, line.entry, line.about));
        Some(HistoryView { id, kind: self.kind(id), home: self.home_of(id), lines })
    }

    /// The latest entry about a record, by the clocks.
    pub(super) fn latest_of(&self, id: Id) -> Option<EntryId> {
        let lines = self.lines_of(id, None)?;
        lines.iter().max_by_key(|line| (line.at, line.entry)).map(|line| line.entry)
    }

    /// What was written to one record, an entry a line.
    fn lines_of(&self, id: Id, about: Option<Id>) -> Option<Vec<HistoryLine>> {
        let item = self.item(id)?;
        let kind = about.and_then(|about| self.kind(about));
        let mut lines: BTreeMap<EntryId, HistoryLine> = BTreeMap::new();
        for field in item.fields().filter_map(FieldName::of) {
            for head in item.history(field.id()) {
                let line = HistoryLine { entry: head.entry, at: head.at, about, kind, changes: Vec::new() };
                lines.entry(head.entry).or_insert(line).changes.extend(Change::read(field, &head.value));
            }
        }
        Some(lines.into_values().collect())
    }

    /// What a record hangs on in the end: of a finding or a quote the part, of a mark the photo.
    fn home_of(&self, id: Id) -> Option<Id> {
        let mut at = id;
        // A circle, which only a broken record has, is left.
        for _ in 0..MOST_STEPS {
            let item = self.item(at)?;
            at = [FieldName::Of, FieldName::Joint, FieldName::Part].into_iter().find_map(|field| item.read(field))?;
            if matches!(self.kind(at)?, Kind::Part | Kind::Photo | Kind::Assembly | Kind::Place | Kind::Vehicle) {
                return Some(at);
            }
        }
        None
    }
}

impl Job {
    /// The entries behind the values of several records together, by field; what is not here has none.
    #[must_use]
    pub fn seen_of(&self, ids: &[Id]) -> Seen {
        let mut seen = Seen::new();
        for (field, entries) in ids.iter().filter_map(|id| self.item(*id)).flat_map(seen_of) {
            seen.entry(field).or_default().extend(entries);
        }
        seen
    }
}

/// What is said about a part, and stands in its history.
const SAID: [Kind; 10] = [
    Kind::Finding,
    Kind::Reading,
    Kind::Limit,
    Kind::Quote,
    Kind::Choice,
    Kind::Purchase,
    Kind::Note,
    Kind::Delivery,
    Kind::Outing,
    Kind::Sighting,
];
/// From the content of a kit over its quote to the part, with room to spare.
const MOST_STEPS: usize = 8;

fn seen_of(item: &Item) -> Seen {
    let fields = item.fields().filter_map(FieldName::of);
    fields.map(|field| (field, item.head_entries(field.id()))).collect()
}

/// Whether somebody has to say which of several values holds: of job files that two devices made, each counts.
pub(super) const fn is_settled(field: FieldName) -> bool {
    !matches!(field, FieldName::HandedOut | FieldName::Held)
}
