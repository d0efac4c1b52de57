use std::collections::{BTreeMap, BTreeSet};

use super::alike::bare_name;
use super::change::Change;
use super::find::FindIndex;
use super::suppliers::called;
use super::tags::Numbers;
use super::troubles::of_item;
use crate::problem::Problem;
use crate::record::{Entry, FieldName, Id, Item, Kind, Record, Stored};

/// A job: its record, and what is needed to answer quickly.
///
/// ```
/// use asfound_core::job::Job;
/// let job = Job::new();
/// assert!(job.id().is_none());
/// ```
#[derive(Debug, Clone, Default)]
pub struct Job {
    record: Record,
    kinds: BTreeMap<Kind, BTreeSet<Id>>,
    /// Who points at whom, by which field.
    links: BTreeMap<(FieldName, Id), BTreeSet<Id>>,
    /// Who points at whom by a value that another one stands beside and goes before.
    rivals: BTreeMap<Id, BTreeSet<Id>>,
    indexed: BTreeMap<Id, Indexed>,
    parts: BTreeMap<Id, PartKey>,
    numbers: Numbers,
    /// Parts by their name without the words for a side.
    alike: BTreeMap<String, BTreeSet<Id>>,
    /// Suppliers by what they are called.
    suppliers: BTreeMap<String, BTreeSet<Id>>,
    find: FindIndex,
}

/// What lists of parts look at in every part, read once.
#[derive(Debug, Clone, Copy)]
pub(super) struct PartKey {
    pub(super) tag: Option<i64>,
    pub(super) order: Option<i64>,
    pub(super) struck: bool,
    pub(super) assembly: Option<Id>,
    pub(super) place: Option<Id>,
    pub(super) chosen: Option<Id>,
}

impl PartKey {
    fn of(item: &Item) -> Self {
        Self {
            tag: item.read(FieldName::Tag),
            order: item.read(FieldName::Order),
            struck: item.is_struck(),
            assembly: item.read(FieldName::Assembly),
            place: item.read(FieldName::Place),
            chosen: item.read(FieldName::Chosen),
        }
    }
}

/// What is known of one record, so that it is worked out once, and can be taken out of the indexes again.
#[derive(Debug, Clone, Default)]
struct Indexed {
    kind: Option<Kind>,
    struck: bool,
    links: Vec<(FieldName, Id)>,
    rivals: Vec<Id>,
    /// Of a part with a name: that without the words for a side.
    bare_name: Option<String>,
    /// Of a supplier what it is called.
    called: Option<String>,
    /// Of a place its tag.
    place_tag: Option<i64>,
    problems: Vec<Problem>,
}

impl Job {
    /// A job of which nothing is known.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// A job from its entries.
    #[must_use]
    pub fn from_entries(entries: impl IntoIterator<Item = Entry>) -> Self {
        let mut job = Self::new();
        job.absorb(entries);
        job
    }

    /// Takes entries in. Answers which records they touched, sorted; none for entries that were here already.
    pub fn absorb(&mut self, entries: impl IntoIterator<Item = Entry>) -> Vec<Id> {
        let mut touched = BTreeSet::new();
        for entry in entries {
            touched.extend(self.record.absorb(entry));
        }
        // What is wrong with a record hangs on what it points at: on its kind, and whether it is struck out.
        let mut unsure = touched.clone();
        for id in &touched {
            if self.index(*id) {
                unsure.extend(self.mentioning(*id));
            }
        }
        for id in unsure {
            let problems = self.item(id).map(|item| of_item(self, id, item)).unwrap_or_default();
            if let Some(indexed) = self.indexed.get_mut(&id) {
                indexed.problems = problems;
            }
        }
        touched.into_iter().collect()
    }

    /// Everything that names a record in any of its fields.
    fn mentioning(&self, id: Id) -> BTreeSet<Id> {
        let linked = POINTING.iter().filter_map(|field| self.links.get(&(*field, id)));
        linked.chain(self.rivals.get(&id)).flatten().copied().collect()
    }

    /// What is wrong with each record by itself, in order of id.
    pub(super) fn record_problems(&self) -> impl Iterator<Item = &Problem> {
        self.indexed.values().flat_map(|indexed| &indexed.problems)
    }

    /// The change log under the job.
    #[must_use]
    pub const fn record(&self) -> &Record {
        &self.record
    }

    /// The id of the job: that of its first record of kind `job`.
    #[must_use]
    pub fn id(&self) -> Option<Id> {
        self.ids(Kind::Job).next()
    }

    /// One record, if anything was ever said of it.
    #[must_use]
    pub fn item(&self, id: Id) -> Option<&Item> {
        self.record.item(id)
    }

    /// One record of a kind, struck out or not.
    #[must_use]
    pub fn item_of(&self, kind: Kind, id: Id) -> Option<&Item> {
        self.item(id).filter(|_| self.kind(id) == Some(kind))
    }

    /// What a record is.
    #[must_use]
    pub fn kind(&self, id: Id) -> Option<Kind> {
        self.indexed.get(&id)?.kind
    }

    /// All records of a kind in order of id, struck-out ones too.
    pub fn ids(&self, kind: Kind) -> impl Iterator<Item = Id> {
        self.kinds.get(&kind).into_iter().flatten().copied()
    }

    /// All records of a kind that are not struck out, in order of id.
    pub fn standing_ids(&self, kind: Kind) -> impl Iterator<Item = Id> {
        self.ids(kind).filter(|id| !self.is_struck(*id))
    }

    /// The records that point at `target` by `field`, in order of id, struck-out ones too.
    pub fn pointing(&self, field: FieldName, target: Id) -> impl Iterator<Item = Id> {
        self.links.get(&(field, target)).into_iter().flatten().copied()
    }

    /// The records of a kind that point at `target` by `field` and are not struck out, in order of id.
    pub fn children(&self, kind: Kind, field: FieldName, target: Id) -> impl Iterator<Item = Id> {
        self.pointing(field, target).filter(move |id| self.kind(*id) == Some(kind) && !self.is_struck(*id))
    }

    /// Whether a record is struck out.
    #[must_use]
    pub fn is_struck(&self, id: Id) -> bool {
        self.indexed.get(&id).is_some_and(|indexed| indexed.struck)
    }

    /// The name of a record; empty when it has none.
    #[must_use]
    pub fn name(&self, id: Id) -> String {
        self.item(id).and_then(|item| item.read(FieldName::Name)).unwrap_or_default()
    }

    /// All parts in order of id, struck-out ones too.
    pub(super) const fn part_keys(&self) -> &BTreeMap<Id, PartKey> {
        &self.parts
    }

    /// Tags and positions of removal of all parts, struck-out ones too.
    pub(super) const fn numbers(&self) -> &Numbers {
        &self.numbers
    }

    /// Parts by their name without the words for a side.
    pub(super) const fn alike_index(&self) -> &BTreeMap<String, BTreeSet<Id>> {
        &self.alike
    }

    /// The supplier of a name, spaces and case aside; of several of one name the first by id.
    #[must_use]
    pub(crate) fn supplier_called(&self, name: &str) -> Option<Id> {
        if self.suppliers.is_empty() {
            return None;
        }
        self.suppliers.get(&called(name))?.iter().copied().find(|id| !self.is_struck(*id))
    }

    /// The index of words.
    pub(super) const fn find_index(&self) -> &FindIndex {
        &self.find
    }

    /// Follows a field from record to record, outwards; a circle is left at the record where it would close.
    pub fn outwards(&self, field: FieldName, from: Id) -> impl Iterator<Item = Id> {
        let mut passed = BTreeSet::from([from]);
        std::iter::successors(Some(from), move |at| {
            let next = self.item(*at)?.read::<Id>(field)?;
            (self.item(next).is_some() && passed.insert(next)).then_some(next)
        })
    }

    /// Brings the indexes up to date; whether its kind, or whether it is struck out, has changed.
    fn index(&mut self, id: Id) -> bool {
        let Some(item) = self.record.item(id) else { return false };
        let links = links_of(item);
        let rivals = rivals_of(item, &links);
        let is_part = item.kind() == Some(Kind::Part);
        let is_supplier = item.kind() == Some(Kind::Supplier);
        let name: Option<String> = item.read(FieldName::Name).filter(|_| is_part || is_supplier);
        let called = name.as_deref().filter(|_| is_supplier).map(called).filter(|name| !name.is_empty());
        let bare_name = name.filter(|_| is_part).map(|name| bare_name(&name)).filter(|name| !name.is_empty());
        let fresh = Indexed {
            kind: item.kind(),
            struck: item.is_struck(),
            links,
            rivals,
            bare_name,
            called,
            place_tag: item.read(FieldName::Tag).filter(|_| item.kind() == Some(Kind::Place)),
            problems: Vec::new(),
        };
        let stale = self.indexed.insert(id, fresh.clone()).unwrap_or_default();
        for rival in &stale.rivals {
            if let Some(ids) = self.rivals.get_mut(rival) {
                ids.remove(&id);
            }
        }
        for rival in fresh.rivals {
            self.rivals.entry(rival).or_default().insert(id);
        }
        if stale.bare_name != fresh.bare_name {
            if let Some(ids) = stale.bare_name.as_ref().and_then(|name| self.alike.get_mut(name)) {
                ids.remove(&id);
            }
            if let Some(name) = fresh.bare_name {
                self.alike.entry(name).or_default().insert(id);
            }
        }
        if stale.called != fresh.called {
            if let Some(ids) = stale.called.as_ref().and_then(|name| self.suppliers.get_mut(name)) {
                ids.remove(&id);
            }
            if let Some(name) = fresh.called {
                self.suppliers.entry(name).or_default().insert(id);
            }
        }
        if stale.place_tag != fresh.place_tag {
            if let Some(tag) = stale.place_tag {
                self.numbers.remove_place(id, tag);
            }
            if let Some(tag) = fresh.place_tag {
                self.numbers.add_place(id, tag);
            }
        }
        if stale.kind != fresh.kind {
            if let Some(ids) = stale.kind.and_then(|kind| self.kinds.get_mut(&kind)) {
                ids.remove(&id);
            }
            if let Some(kind) = fresh.kind {
                self.kinds.entry(kind).or_default().insert(id);
            }
        }
        for link in stale.links.iter().filter(|link| !fresh.links.contains(link)) {
            if let Some(ids) = self.links.get_mut(link) {
                ids.remove(&id);
            }
        }
        for link in fresh.links {
            self.links.entry(link).or_default().insert(id);
        }
        let key = (fresh.kind == Some(Kind::Part)).then(|| PartKey::of(item));
        let former = match key {
            Some(key) => self.parts.insert(id, key),
            None => self.parts.remove(&id),
        };
        if let Some(former) = former {
            self.numbers.remove(id, former.tag, former.order);
        }
        if let Some(key) = key {
            self.numbers.add(id, key.tag, key.order);
        }
        self.find.replace(id, fresh.kind, item);
        stale.kind != fresh.kind || stale.struck != fresh.struck
    }
}

/// What a record points at.
fn links_of(item: &Item) -> Vec<(FieldName, Id)> {
    let fields = item.fields().filter_map(FieldName::of).filter(|field| POINTING.contains(field));
    fields.filter_map(|field| Some((field, item.read::<Id>(field)?))).collect()
}

/// What it points at by values beside those that are read.
fn rivals_of(item: &Item, links: &[(FieldName, Id)]) -> Vec<Id> {
    let heads = links.iter().flat_map(|(field, read)| item.heads(field.id()).into_iter().map(move |head| (head, read)));
    heads.filter_map(|(head, read)| Id::read(&head.value).filter(|id| id != read)).collect()
}

/// The fields that point at another record.
const POINTING: [FieldName; 17] = [
    FieldName::Device,
    FieldName::Vehicle,
    FieldName::Inside,
    FieldName::Assembly,
    FieldName::Place,
    FieldName::SplitFrom,
    FieldName::Chosen,
    FieldName::Joint,
    FieldName::Of,
    FieldName::Within,
    FieldName::Quote,
    FieldName::Fallback,
    FieldName::Part,
    FieldName::Finding,
    FieldName::Instrument,
    FieldName::Other,
    FieldName::InCount,
];

impl Job {
    /// The kinds of record that a pointing field of a record of kind `holder` may lead to.
    #[must_use]
    pub(super) const fn targets(holder: Kind, change: &Change) -> &'static [Kind] {
        match change {
            Change::Device(_) => &[Kind::Device],
            Change::Vehicle(_) => &[Kind::Vehicle],
            Change::Inside(_) | Change::Assembly(_) => &[Kind::Assembly],
            Change::Place(_) | Change::Within(_) => &[Kind::Place],
            Change::SplitFrom(_) => &[Kind::Part],
            Change::Chosen(_) => &[Kind::Choice],
            Change::Joint(_) => &[Kind::Joint],
            Change::Quote(_) | Change::Fallback(_) => &[Kind::Quote],
            Change::Part(_) => &[Kind::Part],
            Change::Finding(_) => &[Kind::Finding],
            Change::Instrument(_) => &[Kind::Instrument],
            Change::Other(_) if matches!(holder, Kind::GoesAfter) => &[Kind::Part, Kind::Assembly],
            Change::Other(_) => &[Kind::Quote, Kind::Part, Kind::Vehicle],
            Change::InCount(_) => &[Kind::Count],
            Change::Of(_) => Self::targets_of(holder),
            _ => &[],
        }
    }

    /// What a record may be `of`: what can be seen or spoken about, what a joint holds, what a quote is for.
    const fn targets_of(holder: Kind) -> &'static [Kind] {
        match holder {
            Kind::Photo | Kind::Note => {
                &[Kind::Part, Kind::Assembly, Kind::Joint, Kind::Piece, Kind::Place, Kind::Vehicle, Kind::Purchase]
            }
            Kind::Joint
            | Kind::Quote
            | Kind::Choice
            | Kind::Finding
            | Kind::Reading
            | Kind::Limit
            | Kind::Delivery
            | Kind::Outing => &[Kind::Part],
            Kind::Count => &[Kind::Place],
            Kind::Sighting => &[Kind::Part, Kind::Place],
            Kind::GoesAfter => &[Kind::Part, Kind::Assembly],
            Kind::Consumable => &[Kind::Part, Kind::Assembly, Kind::Joint],
            Kind::Fluid => &[Kind::Assembly, Kind::Vehicle],
            Kind::Commissioning => &[Kind::Vehicle],
            Kind::Cover => &[Kind::Quote],
            Kind::Mark => &[Kind::Photo],
            Kind::Slice => &[Kind::Note],
            Kind::Tier => &[Kind::Supplier],
            Kind::Rule => &[Kind::Quote, Kind::Part, Kind::Vehicle],
            // Other kinds have no such field, which is told as that.
            _ => &[],
        }
    }
}
