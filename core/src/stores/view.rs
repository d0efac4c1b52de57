//! What answers about stores look like.

use serde::{Deserialize, Serialize};

use crate::inspect::{Heft, Lift};
use crate::job::vocabulary::PlaceKind;
use crate::job::{PartLine, PhotoView, PlaceLine, RecordView, TagRead};
use crate::quantity::{Millis, Money};
use crate::record::{Hash, Id, stored_enum};

stored_enum! {
    /// Where a part is; always exactly one.
    pub enum LiesIn {
        /// In a place.
        Place = "place",
        /// Off, and in no place.
        Nowhere = "nowhere",
        /// Out of the house.
        Out = "out",
        /// On the vehicle.
        Vehicle = "vehicle",
        /// On for good.
        Refitted = "refitted",
    }
}

stored_enum! {
    /// What a count says of a thing.
    pub enum Counted {
        /// Its tag was seen.
        Here = "here",
        /// The tag of the bag or box that it lies in was seen.
        WithBag = "with-bag",
        /// It should be here, and was not seen.
        Missing = "missing",
        /// It was seen, and does not belong here.
        Foreign = "foreign",
    }
}

stored_enum! {
    /// Why a place suits a part, or does not (common practice, no source).
    pub enum Suits {
        /// Heavy low.
        HeavyLow = "heavy-low",
        /// Fragile high.
        FragileHigh = "fragile-high",
        /// Sheet metal hangs, or stands on edge.
        SheetOnEdge = "sheet-on-edge",
        /// Parts of the same assembly, of the same side, lie there.
        SameAssembly = "same-assembly",
        /// Parts of the same assembly lie in the same area.
        SameArea = "same-area",
        /// There is room: nothing lies there yet.
        Empty = "empty",
        /// Heavy, and high.
        HeavyHigh = "heavy-high",
        /// Fragile, and low.
        FragileLow = "fragile-low",
        /// Sheet metal in a box.
        SheetInBox = "sheet-in-box",
        /// The same part of the other side lies in the same box.
        SidesMixed = "sides-mixed",
        /// Fragile, and heavy things lie in the same box.
        UnderHeavy = "under-heavy",
    }
}

/// How a part is to be kept and lifted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Care {
    /// Oiled against rust.
    pub oiled: bool,
    /// Wrapped up.
    pub wrapped: bool,
    /// Nothing may lie on it.
    pub fragile: bool,
    /// How it is lifted, where that is known or guessed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lift: Option<Lift>,
}

/// When and where something was seen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct SeenAt {
    /// When.
    pub at: Millis,
    /// Where, from the outermost place; empty when nobody said.
    pub path: Vec<String>,
    /// In another place than the record says, after it was put there.
    pub elsewhere: bool,
}

/// One part in stores.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct StoredLine {
    /// As in other lists; `place` is where the record says that it lies.
    pub line: PartLine,
    /// Where it is.
    pub lies: LiesIn,
    /// The place that it lies in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Id>,
    /// The outing, while it is out of the house.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub out: Option<RecordView>,
    /// Out longer than it should be: by so many days past the day it was due, or in all where it has none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub late: Option<i64>,
    /// What another would cost by the cheapest quote, while it is out of the house.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub worth: Option<Money>,
    /// How it is to be kept.
    pub care: Care,
    /// What the count says of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub counted: Option<Counted>,
    /// The sighting in that count, to be taken back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sighting: Option<Id>,
    /// What the count found amiss was put right since: seen again, moved, or laid here.
    pub settled: bool,
    /// When and where it was last seen, or put where it lies.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seen: Option<SeenAt>,
    /// Since when it is missed where it should lie.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub missed: Option<Millis>,
    /// Why it does not lie well.
    pub awkward: Vec<Suits>,
}

/// A place on the way to something.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlaceStep {
    /// Its id.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// Its kind.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place_kind: Option<PlaceKind>,
    /// The code on its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<String>,
    /// Its first photo.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub photo: Option<Hash>,
}

/// One place with what is in it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlaceView {
    /// As in the list of places.
    pub line: PlaceLine,
    /// The way to it, from the outermost place; itself last.
    pub way: Vec<PlaceStep>,
    /// Its photos.
    pub photos: Vec<PhotoView>,
    /// Places right in it, by name.
    pub inside: Vec<PlaceLine>,
    /// The rack that it is, or is in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rack: Option<RackView>,
    /// Parts right here, with those missed anywhere within and those that the last count found foreign: missing first, then
    /// foreign, then by tag.
    pub parts: Vec<StoredLine>,
    /// The last count of it that was ended.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub counted: Option<CountSums>,
    /// The count that is under way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub running: Option<CountSums>,
}

/// A rack as it is drawn.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RackView {
    /// The rack.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// Its shelves, the lowest first: by name, shelf 1 lowest. What stands in the rack without a shelf is in one of its own.
    pub shelves: Vec<ShelfView>,
}

/// One shelf of a rack.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ShelfView {
    /// The shelf; nothing for what stands in the rack without one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub id: Option<Id>,
    /// Its name.
    pub name: String,
    /// Boxes and whatever else stands on it, by name.
    pub boxes: Vec<BoxView>,
    /// Parts that lie on it openly, by name.
    pub loose: Vec<LooseView>,
}

/// Something that stands on a shelf.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct BoxView {
    /// The place.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// Parts in it and all within.
    pub parts: usize,
    /// How many of them are missed.
    pub missing: usize,
    /// The place asked about is this, or in it.
    pub here: bool,
}

/// Parts of one name that lie openly.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct LooseView {
    /// The first of them by tag.
    pub id: Id,
    /// Their name.
    pub name: String,
    /// How many pieces.
    pub pieces: i64,
}

/// What a count comes to. Parts that were seen and parts that are missing are those expected.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CountSums {
    /// The count.
    pub count: Id,
    /// When it began.
    pub began: Millis,
    /// When it was ended.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ended: Option<Millis>,
    /// Parts that should be here.
    pub expected: usize,
    /// Of them those that were seen, or whose bag was.
    pub seen: usize,
    /// Of them those that were not.
    pub missing: usize,
    /// Parts that were seen, and do not belong here.
    pub foreign: usize,
    /// Of them those that lie in another place by the record.
    pub elsewhere: usize,
}

/// A count, under way or ended: as things lay when it was ended.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CountView {
    /// Its record.
    pub record: RecordView,
    /// Of which place.
    pub place: PlaceLine,
    /// What it comes to.
    pub sums: CountSums,
    /// Every part expected once, and every foreign one: missing first, then foreign, then by tag.
    pub lines: Vec<StoredLine>,
    /// Bags and boxes that should be here, and those that should not.
    pub places: Vec<CountedPlace>,
}

/// A bag or box in a count.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CountedPlace {
    /// As in the list of places.
    pub line: PlaceLine,
    /// What the count says of it; with its contents when one of them was seen.
    pub counted: Counted,
    /// The sighting of its own tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sighting: Option<Id>,
}

/// Where a part is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct WhereView {
    /// The part.
    pub part: StoredLine,
    /// The way to the place it lies in, from the outermost.
    pub way: Vec<PlaceStep>,
    /// How heavy it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub heft: Option<Heft>,
    /// Where it may be laid next, the best first.
    pub next: Vec<Advice>,
}

/// A place that is proposed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Advice {
    /// The place.
    pub place: Id,
    /// Names from the outermost place.
    pub path: Vec<String>,
    /// Why, the weightiest first.
    pub because: Vec<Suits>,
}

/// What is not where it should be, or not known to be.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct MissingView {
    /// Not found by the last count of where they lie; the longest first.
    pub missed: Vec<StoredLine>,
    /// All that is out of the house; what is out too long first.
    pub out: Vec<StoredLine>,
    /// Off, and in no place; by tag.
    pub nowhere: Vec<StoredLine>,
    /// Lying in a place, and not seen for long; the longest first.
    pub unseen: Vec<StoredLine>,
    /// How many there are of each, in this order: only the first are listed.
    pub totals: [usize; 4],
    /// Out of the house and late.
    pub late: usize,
    /// What another of each that is out would cost, as far as quotes say.
    pub worth: Money,
    /// Out of the house, and no quote says what another would cost.
    pub unpriced: usize,
    /// Days after which what is out with no day counts as late (a starting value).
    pub out_days: i64,
    /// Days after which what lies in a place counts as not seen for long (a starting value).
    pub unseen_days: i64,
}

/// What carries a code.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TagView {
    /// What came of reading it.
    pub read: TagRead,
    /// The number it stands for; nothing when it was misread or is not ours.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub number: Option<i64>,
    /// The code of that number, as it is printed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<String>,
    /// The parts that carry it: two after a clash.
    pub parts: Vec<StoredLine>,
    /// The places that carry it.
    pub places: Vec<PlaceLine>,
}
