//! What answers look like. Sentences are written at the edge; here are only facts.

use serde::{Deserialize, Serialize};

use super::change::{Change, Values};
use super::command::Seen;
use super::donors::DonorView;
use super::vocabulary::{Aim, PlaceKind, Route, Side, Standing, Units, Vocabulary};
use crate::costing::{BreachView, CostView, TotalsView};
use crate::gearing::{RollingFrom, Tyre};
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

/// Suppliers and specialists.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SuppliersView {
    /// By name.
    pub suppliers: Vec<SupplierLine>,
    /// Names that quotes carry and that no supplier and no vehicle has, the most used first.
    pub unnamed: Vec<UnnamedSupplier>,
}

/// One supplier or specialist. Quotes are theirs by name, spaces and case aside.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SupplierLine {
    /// The record: name and terms.
    pub record: RecordView,
    /// What carriage costs from a value or a mass on, the least first.
    pub tiers: Vec<RecordView>,
    /// How many quotes are from them. Of several of one name the first by id has the quotes.
    pub quotes: usize,
}

/// A name without a record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct UnnamedSupplier {
    /// As most quotes write it.
    pub name: String,
    /// How many quotes carry it.
    pub quotes: usize,
}

/// Rules between parts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RulesView {
    /// In order of what they are about.
    pub rules: Vec<RuleLine>,
}

/// One rule.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RuleLine {
    /// The record: relation, price.
    pub record: RecordView,
    /// What its subject is called: a part, a donor, or the part of a quote with whom that is from. Empty when it is not here.
    pub subject: String,
    /// The route of the subject, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub subject_route: Option<Route>,
    /// What the other is called.
    pub other: String,
    /// The route of the other, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_route: Option<Route>,
    /// The part of the subject, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub subject_part: Option<Id>,
    /// The part of the other, where it is a quote.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_part: Option<Id>,
    /// The decisions break it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub breach: Option<BreachView>,
}

/// Gearings before and after a swap.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingView {
    /// Before, after, those thought about, the others; each by name.
    pub sets: Vec<GearingLine>,
    /// The road speed that was asked about, in km/h.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kmh: Option<f64>,
    /// Why the speed asked about is none.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub problems: Vec<Problem>,
}

/// One gearing, as far as it is known.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingLine {
    /// The record: name, ratios, tyre.
    pub record: RecordView,
    /// What its vehicle is called.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vehicle: Option<String>,
    /// The marking, read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tyre: Option<Tyre>,
    /// How far the tyre rolls: the best that is known of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rolling: Option<RollingView>,
    /// A row for each gear, the shortest first; with the overdrive in right after the same without.
    pub rows: Vec<GearRow>,
    /// What has to be said before there are rows.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<FieldName>,
    /// What of it cannot be read. It is kept as it is.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub problems: Vec<Problem>,
    /// What changes against the one before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub against: Option<GearingChange>,
}

/// How far a tyre rolls.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RollingView {
    /// From what that is known.
    pub from: RollingFrom,
    /// It was measured, by somebody or by the maker.
    pub measured: bool,
    /// In one turn, in millimetres.
    pub circumference: f64,
    /// Circumference ÷ π, in millimetres.
    pub diameter: f64,
    /// Turns in a mile.
    pub turns_per_mile: f64,
    /// Turns in a kilometre.
    pub turns_per_km: f64,
    /// By how much more often it turns under load, least and most, as shares; nothing where the load is in the figure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loaded: Option<[f64; 2]>,
    /// By which share it turns more often than its marking says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub beside_marking: Option<f64>,
}

/// One gear.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearRow {
    /// Which gear, from 1.
    pub gear: usize,
    /// With the overdrive in.
    pub overdriven: bool,
    /// It is the one in which the engine turns least.
    pub top: bool,
    /// Turns of the engine for one of the gearbox.
    pub ratio: f64,
    /// Turns of the engine for one of the wheel.
    pub overall: f64,
    /// Miles an hour at 1000 turns a minute.
    pub mph: f64,
    /// Kilometres an hour at 1000 turns a minute.
    pub kmh: f64,
    /// Turns a minute at the speed that was asked about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub turns: Option<f64>,
    /// Kilometres an hour at the most turns of the engine.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub highest_kmh: Option<f64>,
    /// By which share the engine turns more often at the same speed than before in the same gear; below 0: less.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub change: Option<f64>,
}

/// What a gearing changes against the one before. Shares: 0.1 is a tenth more, -0.1 a tenth less.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingChange {
    /// The one before.
    pub before: Id,
    /// Turns of the engine at the same speed, each in its highest gear.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub top: Option<f64>,
    /// How far the tyre rolls.
    pub rolling: f64,
    /// What a speedometer that was right shows too much when it is driven from the gearbox.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speedometer: Option<f64>,
    /// What it shows too much when it is driven from a wheel.
    pub wheel_speedometer: f64,
}

/// What a marking and a list of ratios say.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingTypedView {
    /// The tyre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tyre: Option<Tyre>,
    /// How far it rolls.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rolling: Option<RollingView>,
    /// The gears, the shortest first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gears: Option<Vec<f64>>,
    /// What cannot be read, with its field.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub problems: Vec<Problem>,
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
