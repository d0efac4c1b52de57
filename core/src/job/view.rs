//! What answers look like. Sentences are written at the edge; here are only facts.

use serde::{Deserialize, Serialize};

use super::change::{Change, Values};
use super::command::Seen;
use super::donors::DonorView;
use super::gearing_view::{GearingTypedView, GearingView};
use super::terms_view::{RulesView, SuppliersView};
use super::vocabulary::{Aim, PlaceKind, Route, Side, Standing, Units, Vocabulary};
use crate::costing::{CostView, TotalsView};
use crate::inspect::{CautionsView, InspectView, ProofView, TypedView};
use crate::problem::Problem;
use crate::quantity::{Currency, Day, Millis, Minutes, Money};
use crate::record::{EntryId, FieldName, Hash, Id, Kind};
use crate::refit::{CommissioningView, EveningView, ReadyView, ReferenceView, RefitStepView, RefitStepsView};
use crate::stores::{CountView, MissingView, PlaceView, TagView, WhereView};
use crate::tables::{Bearing, Seal};

/// The answer to a [`Query`](super::Query).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "view", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum View {
    /// To [`Query::Head`](super::Query::Head).
    Head(HeadView),
    /// To [`Query::Teardown`](super::Query::Teardown).
    Teardown(TeardownView),
    /// To [`Query::Assemblies`](super::Query::Assemblies).
    Assemblies(AssembliesView),
    /// To [`Query::Parts`](super::Query::Parts).
    Parts(PartsView),
    /// To [`Query::Part`](super::Query::Part).
    Part(Box<PartView>),
    /// To [`Query::Photo`](super::Query::Photo).
    Photo(PhotoView),
    /// To [`Query::Cost`](super::Query::Cost).
    Cost(Box<CostView>),
    /// To [`Query::Totals`](super::Query::Totals).
    Totals(Box<TotalsView>),
    /// To [`Query::Inspect`](super::Query::Inspect).
    Inspect(Box<InspectView>),
    /// To [`Query::Proof`](super::Query::Proof).
    Proof(Box<ProofView>),
    /// To [`Query::Typed`](super::Query::Typed).
    Typed(TypedView),
    /// To [`Query::Identify`](super::Query::Identify).
    Identify(IdentifyView),
    /// To [`Query::Cautions`](super::Query::Cautions).
    Cautions(CautionsView),
    /// To [`Query::Ready`](super::Query::Ready).
    Ready(Box<ReadyView>),
    /// To [`Query::RefitSteps`](super::Query::RefitSteps).
    RefitSteps(Box<RefitStepsView>),
    /// To [`Query::RefitStep`](super::Query::RefitStep).
    RefitStep(Box<RefitStepView>),
    /// To [`Query::ThisEvening`](super::Query::ThisEvening).
    ThisEvening(EveningView),
    /// To [`Query::Commissioning`](super::Query::Commissioning).
    Commissioning(Box<CommissioningView>),
    /// To [`Query::Places`](super::Query::Places).
    Places(PlacesView),
    /// To [`Query::Place`](super::Query::Place).
    Place(Box<PlaceView>),
    /// To [`Query::Where`](super::Query::Where).
    Where(Box<WhereView>),
    /// To [`Query::Count`](super::Query::Count).
    Count(Box<CountView>),
    /// To [`Query::Missing`](super::Query::Missing).
    Missing(Box<MissingView>),
    /// To [`Query::Tag`](super::Query::Tag).
    Tag(Box<TagView>),
    /// To [`Query::Suppliers`](super::Query::Suppliers).
    Suppliers(SuppliersView),
    /// To [`Query::Rules`](super::Query::Rules).
    Rules(RulesView),
    /// To [`Query::Donor`](super::Query::Donor).
    Donor(Box<DonorView>),
    /// To [`Query::Gearing`](super::Query::Gearing).
    Gearing(GearingView),
    /// To [`Query::GearingTyped`](super::Query::GearingTyped).
    GearingTyped(GearingTypedView),
    /// To [`Query::Problems`](super::Query::Problems): the problems stand beside every answer.
    Problems(ProblemsView),
    /// To [`Query::History`](super::Query::History).
    History(HistoryView),
    /// It is not answered here; the problem says where.
    Refused(Problem),
    /// To [`Query::Seen`](super::Query::Seen).
    Seen(SeenView),
    /// What was asked about is not in this job.
    Nothing,
}

/// What a text stamped on a part says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct IdentifyView {
    /// A bearing of that designation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bearing: Option<Bearing>,
    /// A shaft seal of that size.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seal: Option<Seal>,
}

/// What a change of several records at once names as seen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SeenView {
    /// The entries behind the values of all of them, by field.
    pub seen: Seen,
}

/// One record with its values and what an edit of it must name as seen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RecordView {
    /// Its id.
    pub id: Id,
    /// What it is.
    pub kind: Kind,
    /// Its values.
    pub values: Values,
    /// Whether it is struck out.
    pub struck: bool,
    /// The entries behind its values, by field: sent back with an edit.
    pub seen: Seen,
    /// Fields with more than one value, to be settled.
    pub conflicts: Vec<ConflictView>,
}

/// A field with more than one value.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ConflictView {
    /// The record.
    pub id: Id,
    /// The field.
    pub field: FieldName,
    /// Its values.
    pub values: Vec<WrittenView>,
}

/// A value, by whom and when.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct WrittenView {
    /// The entry that wrote it.
    pub entry: EntryId,
    /// When, by the clock of the device.
    pub at: Millis,
    /// The value; nothing when this version cannot read it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub change: Option<Change>,
    /// The values it points at, by name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub named: Option<String>,
}

/// Name, settings and counts of the job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct HeadView {
    /// The job's own record.
    pub job: RecordView,
    /// Settings, each with its starting value where the user said nothing.
    pub settings: Settings,
    /// The vehicle being done, then its donors.
    pub vehicles: Vec<RecordView>,
    /// Parts that are not struck out.
    pub parts: usize,
    /// Parts for which no quote is chosen.
    pub undecided: usize,
    /// Photos that are not struck out.
    pub photos: usize,
    /// All entries.
    pub entries: usize,
    /// When the last job file was made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub handed_out: Option<Millis>,
    /// Photos taken since.
    pub photos_since: usize,
    /// How many problems wait.
    pub problems: usize,
}

/// Settings of a job.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Settings {
    /// Its currency.
    pub currency: Currency,
    /// What an hour is worth.
    pub hour_value: Money,
    /// Trade words.
    pub vocabulary: Vocabulary,
    /// Units.
    pub units: Units,
    /// How original.
    pub aim: Aim,
    /// Where the driver sits.
    pub driver_side: Side,
    /// Yearly rate of interest, in parts of ten thousand.
    pub interest: i64,
    /// How many years the vehicle will be kept.
    pub years_kept: i64,
    /// Usual rate of tax, in parts of ten thousand.
    pub tax_rate: i64,
    /// By how much another route must be cheaper before a decision comes back.
    pub threshold: Money,
    /// The most cash that may be out at once; nothing while nobody said one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub budget: Option<Money>,
    /// The most own hours.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own_hours: Option<Minutes>,
    /// The day by which everything must be in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub latest: Option<Day>,
}

/// What the strip needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TeardownView {
    /// The assembly that is being taken apart.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembly: Option<AssemblyLine>,
    /// All that are open.
    pub open: Vec<AssemblyLine>,
    /// The part in hand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub part: Option<Box<PartView>>,
    /// The tag that the next part will carry.
    pub next_tag: i64,
    /// Names likely to come next, learnt from this job, likeliest first.
    pub names: Vec<String>,
    /// The places used last, latest first.
    pub places: Vec<PlaceLine>,
    /// The joints of the assembly.
    pub joints: Vec<JointView>,
    /// Its parts, in order of removal, latest last.
    pub parts: Vec<PartLine>,
}

/// Vehicles and assemblies.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct AssembliesView {
    /// The vehicle being done, then its donors.
    pub vehicles: Vec<RecordView>,
    /// Each after the one it is inside.
    pub assemblies: Vec<AssemblyLine>,
}

/// One assembly.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct AssemblyLine {
    /// Its record.
    pub record: RecordView,
    /// Left or right: its own, or of the assembly it is inside.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// How deep it is inside others.
    pub depth: usize,
    /// Parts of its own.
    pub parts: usize,
    /// What was looked at before anything was slackened.
    pub before: Vec<RecordView>,
    /// Photos of the assembly itself.
    pub photos: Vec<PhotoView>,
    /// It is kept whole as the reference, or its opposite number is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reference: Option<ReferenceView>,
}

/// One part in a list.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PartLine {
    /// Its id.
    pub id: Id,
    /// Its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// Its name; empty when nobody gave one.
    pub name: String,
    /// The assembly it came from.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembly: Option<Id>,
    /// The name of that assembly; empty when there is none.
    pub assembly_name: String,
    /// Left or right: its own, or of its assembly.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// How many pieces.
    pub quantity: i64,
    /// Where it lies, from the outermost place.
    pub place: Vec<String>,
    /// Where it stands.
    pub standing: Standing,
    /// It is out on loan, for no work.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub lent: bool,
    /// The route chosen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub route: Option<Route>,
    /// There is no other.
    pub irreplaceable: bool,
    /// It was not there when the work began.
    pub missing: bool,
    /// A former owner fitted a wrong piece.
    pub wrong_piece: bool,
    /// It will not come off.
    pub stuck: bool,
    /// It is struck out.
    pub struck: bool,
    /// Its first photo.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub photo: Option<Hash>,
    /// How many photos.
    pub photos: usize,
    /// Where the words sought were found.
    pub found: Vec<Found>,
}

/// A place in a text where words sought were found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Found {
    /// In what.
    pub within: FoundIn,
    /// The text that holds it.
    pub text: String,
    /// Where it begins, in UTF-16 units as a browser counts.
    pub from: usize,
    /// Where it ends.
    pub to: usize,
}

/// What was searched.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum FoundIn {
    /// The tag.
    Tag,
    /// The name.
    Name,
    /// The maker's or casting number.
    Number,
    /// Where it lies.
    Place,
    /// A note or remark.
    Note,
}

/// A list of parts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PartsView {
    /// Parts in the job that are not struck out.
    pub total: usize,
    /// Parts that match.
    pub found: usize,
    /// Groups in order; each begins at a row.
    pub groups: Vec<PartsGroup>,
    /// The first row given.
    pub from: usize,
    /// The rows.
    pub rows: Vec<PartLine>,
    /// Sums over all that match.
    pub sums: Sums,
}

/// A group of rows.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PartsGroup {
    /// The assembly or place, where it is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub id: Option<Id>,
    /// Its name; empty for those that have none.
    pub title: String,
    /// Left or right.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// The route, where it is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub route: Option<Route>,
    /// The standing, where it is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub standing: Option<Standing>,
    /// How many rows.
    pub count: usize,
    /// Its first row.
    pub from: usize,
}

/// Exact sums over chosen quotes.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Sums {
    /// Cash, one sum a currency.
    pub cash: Vec<Money>,
    /// Own hours.
    pub own_time: Minutes,
    /// Parts with a chosen quote.
    pub decided: usize,
}

/// All about one part.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PartView {
    /// As in a list.
    pub line: PartLine,
    /// Its record.
    pub record: RecordView,
    /// Its photos in order, struck-out ones last.
    pub photos: Vec<PhotoView>,
    /// Its notes in order of time.
    pub notes: Vec<NoteView>,
    /// The joints that hold it.
    pub joints: Vec<JointView>,
    /// New pieces of it, ordered or here.
    pub deliveries: Vec<RecordView>,
    /// Parts split from it, and the one it was split from.
    pub split: Vec<PartLine>,
    /// The latest entry about it, to be undone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub latest: Option<EntryId>,
}

/// One photo.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PhotoView {
    /// Its record: hash, moment, shot, caption.
    pub record: RecordView,
    /// Its rings and arrows in order.
    pub marks: Vec<RecordView>,
}

/// One note.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct NoteView {
    /// Its record: text, when.
    pub record: RecordView,
    /// The stretches of a spoken note in order.
    pub slices: Vec<RecordView>,
}

/// One joint.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct JointView {
    /// Its record: name, bag, place.
    pub record: RecordView,
    /// Its pieces in the order they came off.
    pub pieces: Vec<RecordView>,
}

/// All places.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlacesView {
    /// Each after the one it is within.
    pub places: Vec<PlaceLine>,
    /// Parts that lie nowhere.
    pub nowhere: usize,
}

/// One place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlaceLine {
    /// Its record.
    pub record: RecordView,
    /// Its kind.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place_kind: Option<PlaceKind>,
    /// The code on its tag, as it is printed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<String>,
    /// Names from the outermost place to this one.
    pub path: Vec<String>,
    /// How deep it is.
    pub depth: usize,
    /// Parts that lie right here.
    pub parts: usize,
    /// Parts here and in all places within.
    pub parts_within: usize,
}

/// What waits for a person.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ProblemsView {
    /// Worst first.
    pub problems: Vec<Problem>,
    /// Fields with more than one value.
    pub conflicts: Vec<ConflictView>,
}

/// What was ever written to a record, and to what was said about it: findings, readings, quotes and the like.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct HistoryView {
    /// The record.
    pub id: Id,
    /// What it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<Kind>,
    /// What it hangs on in the end: the part that a finding is of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub home: Option<Id>,
    /// One line for an entry and a record, latest last.
    pub lines: Vec<HistoryLine>,
}

/// One entry as far as it concerns one record.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct HistoryLine {
    /// The entry.
    pub entry: EntryId,
    /// When.
    pub at: Millis,
    /// The record, where it is another one than was asked for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub about: Option<Id>,
    /// What that record is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<Kind>,
    /// What it wrote.
    pub changes: Vec<Change>,
}
