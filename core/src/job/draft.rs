use std::collections::{BTreeMap, BTreeSet};

use super::change::Change;
use super::command::{Context, Seen};
use super::tags::Drawn;
use super::whole::Job;
use crate::inspect;
use crate::problem::{Code, Hint, Problem, Severity};
use crate::record::{Entry, EntryId, FieldName, Id, Kind, Op, Stored, Value};
use crate::refit::is_donor;
use crate::refit::loose::{gates, still_loose};

/// What a limit is, and where its ends are.
const LIMITING: [FieldName; 6] = [
    FieldName::LimitKind,
    FieldName::Feature,
    FieldName::Least,
    FieldName::Most,
    FieldName::MachiningLeast,
    FieldName::MachiningMost,
];

/// An entry that is being put together: what it would write, and what is wrong with it.
pub(super) struct Draft<'a> {
    pub(super) job: &'a Job,
    pub(super) context: &'a Context,
    pub(super) ops: Vec<Op>,
    pub(super) problems: Vec<Problem>,
    created: BTreeMap<Id, Kind>,
    /// Tags given in this entry.
    pub(super) tags: Drawn,
    /// Blocks claimed in this entry.
    pub(super) blocks: Vec<i64>,
    /// Positions of removal given in this entry.
    pub(super) removed: i64,
}

impl<'a> Draft<'a> {
    pub(super) const fn new(job: &'a Job, context: &'a Context) -> Self {
        Self {
            job,
            context,
            ops: Vec::new(),
            problems: Vec::new(),
            created: BTreeMap::new(),
            tags: Drawn { parts: BTreeSet::new(), places: BTreeSet::new() },
            blocks: Vec::new(),
            removed: 0,
        }
    }

    pub(super) fn has_error(&self) -> bool {
        self.problems.iter().any(|problem| problem.severity == Severity::Error)
    }

    pub(super) fn refuse(&mut self, problem: Problem) {
        self.problems.push(problem);
    }

    /// What a record is, in the job or in this entry.
    pub(super) fn kind(&self, id: Id) -> Option<Kind> {
        self.created.get(&id).copied().or_else(|| self.job.kind(id))
    }

    /// A value that a field has in this entry, else in the job.
    pub(super) fn read<T: Stored>(&self, id: Id, field: FieldName) -> Option<T> {
        let written = self.ops.iter().rev().find(|op| op.record == id && op.field == field.id());
        match written {
            Some(op) => T::read(&op.value),
            None => self.job.item(id)?.read(field),
        }
    }

    /// Begins a new record.
    pub(super) fn begin(&mut self, id: Id, kind: Kind) {
        if self.job.item(id).is_some() || self.created.contains_key(&id) {
            self.refuse(Problem::error(Code::IdTaken).at(id));
        }
        self.begin_or_complete(id, kind);
    }

    /// Whether a record of this kind begins in this entry.
    pub(super) fn began(&self, kind: Kind) -> bool {
        self.created.values().any(|began| *began == kind)
    }

    /// Begins a record, or says what it is where only other fields of it are here, since entries are missing.
    pub(super) fn begin_or_complete(&mut self, id: Id, kind: Kind) {
        self.created.insert(id, kind);
        self.write(id, &Change::Kind(kind), Vec::new());
    }

    /// Checks and writes the changes of one record, over what was seen of it.
    pub(super) fn change(&mut self, id: Id, changes: &[Change], seen: Option<&Seen>) {
        let Some(kind) = self.kind(id) else {
            return self.refuse(Problem::error(Code::UnknownRecord).at(id).value("id", id));
        };
        for change in changes {
            if self.may(id, kind, change) {
                let over = self.over(id, change, seen);
                self.write(id, change, over);
            }
        }
        // Only what is said now: what two devices left behind can still be struck out, or put right.
        let says = |fields: &[FieldName]| changes.iter().any(|change| fields.contains(&change.field()));
        match kind {
            Kind::Finding if says(&[FieldName::Question, FieldName::Outcome]) => self.check_answer(id),
            Kind::Limit if says(&LIMITING) => self.check_limit(id),
            Kind::GoesAfter if says(&[FieldName::Of, FieldName::Other]) => self.check_goes_after(id),
            Kind::Part if says(&[FieldName::Place]) && !says(&[FieldName::Off]) => self.lay_off(id),
            _ => {}
        }
    }

    /// What somebody lays in a place has come off, although nobody said so: it goes on again like the rest.
    fn lay_off(&mut self, id: Id) {
        let is_laid = self.read::<Id>(id, FieldName::Place).is_some();
        // A new part is completed by itself.
        if !is_laid || self.read::<bool>(id, FieldName::Off) == Some(true) || self.job.kind(id) != Some(Kind::Part) {
            return;
        }
        let off = Change::Off(true);
        let over = self.over(id, &off, None);
        self.write(id, &off, over);
        if self.read::<i64>(id, FieldName::Order).is_none() {
            let order = self.next_removal();
            self.write(id, &Change::Order(order), Vec::new());
        }
    }

    /// Refuses that something goes on after itself.
    fn check_goes_after(&mut self, id: Id) {
        let (of, other) = (self.read::<Id>(id, FieldName::Of), self.read::<Id>(id, FieldName::Other));
        if of.is_some() && of == other {
            let problem = Problem::error(Code::Loop).at(id).field(FieldName::Other).hint(Hint::CorrectValue);
            self.refuse(problem.with(of.into_iter().collect()));
        }
    }

    /// Whether a change may be written; if not, a problem says why.
    fn may(&mut self, id: Id, kind: Kind, change: &Change) -> bool {
        let before = self.problems.len();
        let field = change.field();
        if matches!(field, FieldName::Kind | FieldName::Done) || !field.is_on(kind) {
            self.refuse(Problem::error(Code::WrongKind).at(id).field(field).value("kind", kind.word()));
        }
        if let Some(bound) = change.broken_bound() {
            let problem = Problem::error(Code::OutOfBounds).at(id).field(field).hint(Hint::CorrectValue);
            let problem = problem.value("what", bound.what).value("least", bound.least);
            self.refuse(problem.value("most", bound.most));
        }
        self.check_target(id, kind, change);
        self.problems.len() == before
    }

    /// Refuses to call a vehicle lowered, or on the road, while something is loose that stands in the way once this entry is
    /// in: what it loosens counts, and so does what it tightens.
    pub(super) fn check_gates(&mut self) {
        let says = |field: FieldName| {
            let ops = self.ops.iter().filter(move |op| op.field == field.id() && op.value == Value::Flag(true));
            ops.map(|op| op.record).collect::<Vec<Id>>()
        };
        let (lowered, on_the_road) = (says(FieldName::Lowered), says(FieldName::OnTheRoad));
        if lowered.is_empty() && on_the_road.is_empty() {
            return;
        }
        let ahead = self.ahead();
        let (lowering, road) = gates(&ahead, &still_loose(&ahead));
        // A donor may stand as it likes.
        for (ids, gate, field) in [(lowered, lowering, FieldName::Lowered), (on_the_road, road, FieldName::OnTheRoad)] {
            if let Some(id) = ids.iter().find(|id| !gate.open && !is_donor(&ahead, **id)) {
                let problem = Problem::error(Code::StillLoose).at(*id).field(field).hint(Hint::TightenFirst);
                self.refuse(problem.value("joints", gate.joints.len()).with(gate.joints));
            }
        }
    }

    /// The job as this very entry leaves it.
    pub(super) fn ahead(&self) -> Job {
        let seq = self.job.record().last_seq(self.context.replica).saturating_add(1);
        let id = EntryId { replica: self.context.replica, seq };
        let mut ahead = self.job.clone();
        ahead.absorb([Entry { id, at: self.context.at, ops: self.ops.clone() }]);
        ahead
    }

    /// Refuses an answer that its question does not have.
    fn check_answer(&mut self, id: Id) {
        let question: String = self.read(id, FieldName::Question).unwrap_or_default();
        let Some(outcome) = self.read::<String>(id, FieldName::Outcome) else { return };
        let is_own = |id| self.kind(id) == Some(Kind::OwnCheck);
        if inspect::has_answer(&question, &outcome, is_own) != Some(true) {
            let problem = Problem::error(Code::NotAnAnswer).at(id).field(FieldName::Outcome).hint(Hint::CorrectValue);
            self.refuse(problem.value("question", question).value("outcome", outcome));
        }
    }

    /// Refuses a limit that nothing can keep.
    fn check_limit(&mut self, id: Id) {
        let (kind, of) = (self.read(id, FieldName::LimitKind), self.read::<String>(id, FieldName::Feature));
        if let Some(field) = inspect::crossed(kind, of.as_deref(), |field| self.read(id, field)) {
            self.refuse(Problem::error(Code::LimitCrossed).at(id).field(field).hint(Hint::CorrectValue));
        }
    }

    /// Refuses a change that points at nothing, at a record of the wrong kind, or back at itself.
    fn check_target(&mut self, id: Id, holder: Kind, change: &Change) {
        let Some(target) = change.target() else { return };
        let field = change.field();
        let Some(kind) = self.kind(target) else {
            return self.refuse(Problem::error(Code::UnknownRecord).at(id).field(field).value("id", target));
        };
        let kinds = Job::targets(holder, change);
        if !kinds.is_empty() && !kinds.contains(&kind) {
            self.refuse(Problem::error(Code::WrongKind).at(id).field(field).value("kind", kind.word()));
        }
        if matches!(field, FieldName::Inside | FieldName::Within | FieldName::Fallback) && self.leads(field, target, id)
        {
            let problem = Problem::error(Code::Loop).at(id).field(field).hint(Hint::MoveOneOut);
            self.refuse(problem.with(vec![target]));
        }
    }

    /// Whether following a field outwards from one record comes to another, this entry's own moves counted.
    fn leads(&self, field: FieldName, from: Id, to: Id) -> bool {
        let mut passed = BTreeSet::new();
        let mut at = Some(from);
        while let Some(id) = at.filter(|id| passed.insert(*id)) {
            if id == to {
                return true;
            }
            at = self.read(id, field);
        }
        false
    }

    /// The entries that a change overwrites: the heads that were seen.
    fn over(&self, id: Id, change: &Change, seen: Option<&Seen>) -> Vec<EntryId> {
        let Some(item) = self.job.item(id) else { return Vec::new() };
        let of_field = |field: FieldName| {
            let heads = item.head_entries(field.id()).into_iter();
            heads.filter(move |head| self.was_seen(field, *head, seen)).collect()
        };
        if *change != Change::Struck(true) {
            return of_field(change.field());
        }
        // Striking out says something of the whole record.
        if seen.is_none() {
            return item.all_head_entries();
        }
        let all: BTreeSet<EntryId> =
            item.fields().filter_map(FieldName::of).flat_map(|field| -> Vec<EntryId> { of_field(field) }).collect();
        all.into_iter().collect()
    }

    /// Whether a head of a field was seen by whoever changes it. What this window wrote itself it has seen, although its
    /// screen may not show it yet.
    fn was_seen(&self, field: FieldName, head: EntryId, seen: Option<&Seen>) -> bool {
        let Some(seen) = seen else { return true };
        head.replica == self.context.replica || seen.get(&field).is_some_and(|entries| entries.contains(&head))
    }

    /// Writes a field; a later write of the same field in this entry takes the place of an earlier one.
    pub(super) fn write(&mut self, id: Id, change: &Change, over: Vec<EntryId>) {
        let op = Op { record: id, field: change.field().id(), value: change.store(), over };
        self.ops.retain(|known| known.record != id || known.field != op.field);
        self.ops.push(op);
    }

    /// Writes a value that was there before; where several stood side by side, each of them.
    pub(super) fn put_back(&mut self, op: Op) {
        if !self.ops.contains(&op) {
            self.ops.push(op);
        }
    }
}
