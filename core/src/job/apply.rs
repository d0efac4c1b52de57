use std::collections::BTreeSet;

use super::change::{Change, Values};
use super::command::{Command, Context, Sent, SplitOff};
use super::draft::Draft;
use super::whole::Job;
use crate::costing::{self, QuoteCost};
use crate::problem::{Code, Hint, Problem};
use crate::quantity::bounds;
use crate::record::{Entry, EntryId, FieldName, Id, Item, Kind, Op, Value};

/// What came of a command.
#[derive(Debug, Clone, PartialEq)]
pub struct Applied {
    /// What to write: one entry, or none when a problem is an error or the command was done before.
    pub entries: Vec<Entry>,
    /// What is wrong with it.
    pub problems: Vec<Problem>,
    /// It was carried out before; nothing is to be written.
    pub again: bool,
}

/// Works out what a command writes. Nothing is changed: whoever calls stores the entries first, then
/// [absorbs](Job::absorb) them, then answers.
///
/// ```
/// use asfound_core::job::{apply, Command, Context, Job, Sent};
/// use asfound_core::quantity::Millis;
/// use asfound_core::record::{Id, Kind, Replica};
/// let context = Context { replica: Replica::from_bytes([1; 8]), device: Id::from_bytes([2; 16]), at: Millis(0) };
/// let command = Command::Create { id: Id::from_bytes([3; 16]), kind: Kind::Job, changes: vec![] };
/// let sent = Sent { id: Id::from_bytes([4; 16]), command };
/// let mut job = Job::new();
/// let applied = apply(&job, &sent, &context);
/// job.absorb(applied.entries);
/// assert!(apply(&job, &sent, &context).again);
/// ```
#[must_use]
pub fn apply(job: &Job, sent: &Sent, context: &Context) -> Applied {
    if job.record().is_done(sent.id) {
        return Applied { entries: Vec::new(), problems: Vec::new(), again: true };
    }
    let mut draft = Draft::new(job, context);
    draft.carry_out(&sent.command);
    draft.check_gates();
    if draft.ops.is_empty() && draft.problems.is_empty() {
        draft.refuse(Problem::error(Code::Missing).hint(Hint::CorrectValue));
    }
    if draft.has_error() {
        return Applied { entries: Vec::new(), problems: draft.problems, again: false };
    }
    let mut ops = draft.ops;
    ops.push(Op { record: sent.id, field: FieldName::Done.id(), value: Value::Flag(true), over: Vec::new() });
    let id = EntryId { replica: context.replica, seq: job.record().last_seq(context.replica).saturating_add(1) };
    Applied { entries: vec![Entry { id, at: context.at, ops }], problems: draft.problems, again: false }
}

/// Whether a record was struck out before an entry said whether it is: by strikes that had seen all that stands in it
/// now, but for what the entry itself wrote.
fn was_struck(job: &Job, item: &Item, entry: EntryId, op: &Op) -> bool {
    let mut seen = BTreeSet::from([entry]);
    for former in item.history(op.field).into_iter().filter(|head| op.over.contains(&head.entry)) {
        seen.insert(former.entry);
        let written = job.record().entry(former.entry).into_iter().flat_map(|entry| &entry.ops);
        let strike = written.filter(|other| other.record == op.record && other.field == op.field);
        seen.extend(strike.flat_map(|strike| &strike.over));
    }
    item.all_head_entries().iter().all(|head| seen.contains(head))
}

impl Draft<'_> {
    fn carry_out(&mut self, command: &Command) {
        match command {
            Command::Create { id, kind, changes } => self.create(*id, *kind, changes),
            Command::Change { ids, changes, seen } => {
                for id in ids {
                    self.change(*id, changes, seen.as_ref());
                    self.warn_of_tags(*id, changes);
                }
            }
            Command::Undo { entry } => self.undo(*entry),
            Command::Split { part, into } => self.split(*part, into),
            Command::Choose { id, quote, part, who } => self.choose(*id, *quote, *part, who.as_deref()),
            Command::All { commands } => commands.iter().for_each(|command| self.carry_out(command)),
        }
    }

    fn create(&mut self, id: Id, kind: Kind, changes: &[Change]) {
        if kind == Kind::Job && (self.job.id().is_some() || self.began(Kind::Job)) {
            return self.refuse(Problem::error(Code::OtherJob).at(id));
        }
        self.begin(id, kind);
        self.change(id, changes, None);
        match kind {
            Kind::Part => self.complete_part(id),
            Kind::Place => self.complete_place(id),
            _ => {}
        }
        self.warn_of_tags(id, changes);
    }

    /// What a new part gets unasked: a tag, off the vehicle, its position in the order of removal.
    fn complete_part(&mut self, id: Id) {
        if self.read::<i64>(id, FieldName::Tag).is_none() {
            let tag = self.draw_tag();
            self.write(id, &Change::Tag(tag), Vec::new());
        }
        self.claim_block_for(id);
        if self.read::<bool>(id, FieldName::FromBoxes) == Some(true) {
            self.write(id, &Change::Off(true), Vec::new());
            return;
        }
        if self.read::<bool>(id, FieldName::Off).unwrap_or(true) {
            self.write(id, &Change::Off(true), Vec::new());
            if self.read::<i64>(id, FieldName::Order).is_none() {
                let order = self.next_removal();
                self.write(id, &Change::Order(order), Vec::new());
            }
        }
    }

    /// A new place gets a tag unasked.
    fn complete_place(&mut self, id: Id) {
        if self.read::<i64>(id, FieldName::Tag).is_none() {
            let tag = self.draw_place_tag();
            self.write(id, &Change::Tag(tag), Vec::new());
        }
        self.claim_block_for(id);
    }

    /// The position after the last part that came off.
    pub(super) fn next_removal(&mut self) -> i64 {
        if self.removed == 0 {
            self.removed = self.job.numbers().last_removal().unwrap_or(0).max(0);
        }
        self.removed = (self.removed + 1).min(bounds::ORDER.most);
        self.removed
    }

    /// A tag that another part or place carries is kept, and said.
    fn warn_of_tags(&mut self, id: Id, changes: &[Change]) {
        for tag in changes.iter().filter_map(|change| if let Change::Tag(tag) = change { Some(*tag) } else { None }) {
            let others = self.job.parts_with_tag(tag).chain(self.job.places_with_tag(tag)).filter(|other| *other != id);
            let others: Vec<Id> = others.filter(|other| self.read(*other, FieldName::Tag) == Some(tag)).collect();
            let is_drawn = self.tags.parts.contains(&tag) || self.tags.places.contains(&tag);
            let of = if self.kind(id) == Some(Kind::Place) { &mut self.tags.places } else { &mut self.tags.parts };
            let again = is_drawn || !of.insert(tag);
            if again || !others.is_empty() {
                let problem = Problem::warning(Code::TagTwice).at(id).field(FieldName::Tag).value("tag", tag);
                self.refuse(problem.with(others).hint(Hint::RetagOne));
            }
        }
    }

    fn undo(&mut self, entry: EntryId) {
        let Some(entry) = self.job.record().entry(entry) else {
            return self.refuse(Problem::error(Code::NothingToUndo).value("entry", entry));
        };
        let before = self.ops.len();
        for op in entry.ops.iter().filter(|op| op.field != FieldName::Done.id()) {
            self.undo_op(entry, op);
        }
        if self.ops.len() == before {
            self.refuse(Problem::error(Code::NothingToUndo).value("entry", entry.id));
        }
    }

    /// Takes one write back: the values it overwrote come again, all of them where it settled a conflict; a record it
    /// began is struck out. What somebody else wrote stays, and a record that an edit brought back stays with it.
    fn undo_op(&mut self, entry: &Entry, op: &Op) {
        let Some(item) = self.job.item(op.record) else { return };
        if op.field == FieldName::Kind.id() {
            // Blocks of tags and devices stay: they were claimed on the way, not said by anybody.
            if matches!(self.job.kind(op.record), Some(Kind::Job | Kind::Device | Kind::Block) | None) {
                return;
            }
            let over = item.all_head_entries();
            self.write(op.record, &Change::Struck(true), over);
            return;
        }
        let began_here = item.history(FieldName::Kind.id()).iter().any(|head| head.entry == entry.id);
        if began_here || !item.head_entries(op.field).contains(&entry.id) {
            return;
        }
        let seen: BTreeSet<EntryId> = op.over.iter().copied().collect();
        let history = item.history(op.field).into_iter();
        let mut former: BTreeSet<Value> =
            history.filter(|head| seen.contains(&head.entry)).map(|head| head.value.clone()).collect();
        if former.is_empty() {
            former.insert(Value::Cleared);
        }
        if op.field == FieldName::Struck.id() && former == BTreeSet::from([Value::Flag(true)]) {
            let struck = was_struck(self.job, item, entry.id, op);
            let over = if struck { item.all_head_entries() } else { vec![entry.id] };
            return self.put_back(Op { record: op.record, field: op.field, value: Value::Flag(struck), over });
        }
        for value in former {
            self.put_back(Op { record: op.record, field: op.field, value, over: vec![entry.id] });
        }
    }

    fn split(&mut self, part: Id, into: &[SplitOff]) {
        let Some(item) = self.job.item_of(Kind::Part, part) else {
            return self.refuse(Problem::error(Code::UnknownRecord).at(part).value("id", part));
        };
        if into.is_empty() {
            return self.refuse(Problem::error(Code::Missing).at(part).hint(Hint::CorrectValue));
        }
        let taken: i64 = into.iter().map(|one| one.quantity.unwrap_or(1)).fold(0, i64::saturating_add);
        let pieces = self.read::<i64>(part, FieldName::Quantity).unwrap_or(1);
        let known = Values::of(item);
        for one in into {
            self.split_off(part, &known, one);
        }
        if pieces > 1 {
            self.change(part, &[Change::Quantity(pieces.saturating_sub(taken).max(1))], None);
        }
    }

    /// A part with a tag of its own that is known to be what the first one is.
    fn split_off(&mut self, part: Id, known: &Values, one: &SplitOff) {
        let name = one.name.clone().or_else(|| known.name.clone());
        let mut changes = vec![Change::SplitFrom(part), Change::Quantity(one.quantity.unwrap_or(1))];
        changes.extend(name.map(Change::Name));
        // What points at a record that is not here is left to the first part: a new write could not say so.
        let here = |id: &Id, kind| self.kind(*id) == Some(kind);
        changes.extend(known.assembly.filter(|id| here(id, Kind::Assembly)).map(Change::Assembly));
        changes.extend(known.side.map(Change::Side));
        changes.extend(known.place.filter(|id| here(id, Kind::Place)).map(Change::Place));
        changes.extend(known.family.clone().map(Change::Family));
        changes.extend(known.material.clone().map(Change::Material));
        changes.extend(known.makers_number.clone().map(Change::MakersNumber));
        changes.extend(known.order.map(Change::Order));
        changes.extend(known.off.map(Change::Off));
        changes.extend(known.from_boxes.map(Change::FromBoxes));
        self.create(one.id, Kind::Part, &changes);
    }

    fn choose(&mut self, id: Id, quote: Id, part: Option<Id>, who: Option<&str>) {
        let part = part.or_else(|| self.job.item_of(Kind::Quote, quote)?.read::<Id>(FieldName::Of));
        let Some(part) = part else {
            return self.refuse(Problem::error(Code::UnknownRecord).at(quote).value("id", quote));
        };
        let Some(costed) = self.costed(part, quote) else {
            return self.refuse(Problem::error(Code::UnknownRecord).at(quote).value("id", quote));
        };
        if let Some(why) = costed.why {
            let problem = Problem::error(Code::ChoiceStale).at(quote).value("why", why.word());
            return self.refuse(problem.hint(Hint::ChooseAgain));
        }
        self.begin(id, Kind::Choice);
        let mut changes = vec![
            Change::Of(part),
            Change::Quote(quote),
            Change::Route(costed.route),
            Change::Taken(self.context.at),
            Change::OwnTime(costed.own_time),
            Change::Chance(costed.chance),
            Change::StripAgain(costed.strip_again),
            Change::HourValueThen(self.job.settings().hour_value),
            Change::ExpectedThen(costed.present.minor),
        ];
        changes.extend(costed.cash.map(Change::Cash));
        changes.extend(costed.from.clone().map(Change::From));
        changes.extend(who.map(|who| Change::Who(who.to_owned())));
        self.change(id, &changes, None);
        self.change(part, &[Change::Chosen(id)], None);
    }

    /// A quote as it stands; one that is put down in this very entry counts, so that one undo takes both back.
    fn costed(&self, part: Id, quote: Id) -> Option<QuoteCost> {
        if self.job.item(quote).is_some() {
            return costing::quote_now(self.job, part, quote);
        }
        costing::quote_now(&self.ahead(), part, quote)
    }
}
