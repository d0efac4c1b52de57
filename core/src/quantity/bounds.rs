//! What is accepted, in one table: each bound with the words used when it is broken.
//!
//! The bounds are far beyond anything met in a garage; they exist so that sums of a whole job stay exact in 64 bits.

/// One bounded quantity: the least and the most that is accepted, both inclusive.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Bound {
    /// What is bounded, as named in problems.
    pub what: &'static str,
    /// The least accepted value.
    pub least: i64,
    /// The most accepted value.
    pub most: i64,
}

impl Bound {
    /// Whether `value` lies within the bound.
    ///
    /// ```
    /// assert!(asfound_core::quantity::bounds::PIECES.holds(4));
    /// assert!(!asfound_core::quantity::bounds::PIECES.holds(0));
    /// ```
    #[must_use]
    pub const fn holds(&self, value: i64) -> bool {
        self.least <= value && value <= self.most
    }
}

/// Money in minor units: up to ten thousand million, either way.
pub const MONEY: Bound = Bound { what: "money", least: -1_000_000_000_000, most: 1_000_000_000_000 };
/// A price, or what an hour is worth: money that is never owed to whoever pays it.
pub const PRICE: Bound = Bound { what: "price", least: 0, most: MONEY.most };
/// What is expected to be spent: hours at their value come on top of money.
pub const EXPECTED: Bound =
    Bound { what: "expected", least: -1_000_000_000_000_000_000, most: 1_000_000_000_000_000_000 };
/// A duration in minutes: up to about eleven years of working day and night.
pub const MINUTES: Bound = Bound { what: "minutes", least: 0, most: 6_000_000 };
/// A chance in parts of ten thousand.
pub const CHANCE: Bound = Bound { what: "chance", least: 0, most: 10_000 };
/// Pieces under one tag.
pub const PIECES: Bound = Bound { what: "pieces", least: 1, most: 100_000 };
/// A tag number.
pub const TAG: Bound = Bound { what: "tag", least: 1, most: 9_999_999 };
/// A block of tag numbers, from 0.
pub const BLOCK: Bound = Bound { what: "block", least: 0, most: 19_999 };
/// A year of four figures.
pub const YEAR: Bound = Bound { what: "year", least: 1_000, most: 9_999 };
/// A moment, in milliseconds since 1970: the years 1 to 9999.
pub const MOMENT: Bound = Bound { what: "moment", least: -62_135_596_800_000, most: 253_402_300_799_999 };
/// The bytes of a picture or a sound.
pub const BYTES: Bound = Bound { what: "bytes", least: 0, most: 1_000_000_000_000 };
/// How long a sound lasts, in milliseconds.
pub const SOUND: Bound = Bound { what: "sound", least: 0, most: 1_000_000_000_000 };
/// Mass in grams: up to fifty tonnes.
pub const MASS: Bound = Bound { what: "mass", least: 0, most: 50_000_000 };
/// How long, wide or high a part is, in nanometres: up to ten metres.
pub const SPAN: Bound = Bound { what: "span", least: 1, most: 10_000_000_000 };
/// A tightening figure in micronewton-metres: up to ten thousand newton-metres.
pub const TORQUE: Bound = Bound { what: "torque", least: 0, most: 10_000_000_000 };
/// A tightening angle in degrees: up to five turns.
pub const ANGLE: Bound = Bound { what: "angle", least: 0, most: 1_800 };
/// Pieces that are here.
pub const IN_HAND: Bound = Bound { what: "in-hand", least: 0, most: 100_000 };
/// A volume in millilitres: up to a thousand litres.
pub const VOLUME: Bound = Bound { what: "volume", least: 0, most: 1_000_000 };
/// Area in square millimetres: up to a thousand square metres.
pub const AREA: Bound = Bound { what: "area", least: 0, most: 1_000_000_000 };
/// Thickness or length in micrometres: up to fifty metres.
pub const LENGTH: Bound = Bound { what: "length", least: 0, most: 50_000_000 };
/// A share of a picture's width or height, in parts of ten thousand; a mark may run over the edge.
pub const SHARE: Bound = Bound { what: "share", least: -10_000, most: 20_000 };
/// Position in an order somebody set.
pub const ORDER: Bound = Bound { what: "order", least: -1_000_000_000_000, most: 1_000_000_000_000 };
/// Devices that wrote in one job.
pub const DEVICES: Bound = Bound { what: "devices", least: 0, most: 10_000 };
/// Quotes of a plan that is kept.
pub const PLANNED: Bound = Bound { what: "planned", least: 0, most: 20_000 };
/// The longest text, in bytes.
pub const TEXT: Bound = Bound { what: "text", least: 0, most: 20_000 };
/// Years that a vehicle will be kept.
pub const YEARS: Bound = Bound { what: "years", least: 1, most: 100 };
/// A service life in months: up to a hundred years.
pub const LIFE: Bound = Bound { what: "life", least: 1, most: 1_200 };
/// A stage of ordering.
pub const STAGE: Bound = Bound { what: "stage", least: 1, most: 99 };
/// A wait in days: up to ten years.
pub const DAYS: Bound = Bound { what: "days", least: 0, most: 3_650 };
/// A yearly rate of interest in parts of ten thousand: up to 50 %.
pub const INTEREST: Bound = Bound { what: "interest", least: 0, most: 5_000 };
/// A rate of tax in parts of ten thousand: up to the price itself.
pub const TAX: Bound = Bound { what: "tax", least: 0, most: 10_000 };
/// A reading, in nanometres (up to ten metres), millinewtons or a count.
pub const READING: Bound = Bound { what: "reading", least: -10_000_000_000, most: 10_000_000_000 };
/// An uncertainty or a resolution, in nanometres: up to a metre.
pub const UNCERTAINTY: Bound = Bound { what: "uncertainty", least: 0, most: 1_000_000_000 };
/// A coverage factor, in hundredths: 0.5 to 10.
pub const COVERAGE: Bound = Bound { what: "coverage", least: 50, most: 1_000 };
/// A rate of exchange in millionths.
pub const EXCHANGE: Bound = Bound { what: "exchange", least: 1, most: 1_000_000_000_000 };
/// The ratio of an axle, in parts of ten thousand: 0.5 to 20.
pub const AXLE_RATIO: Bound = Bound { what: "axle-ratio", least: 5_000, most: 200_000 };
/// The ratio of an overdrive or of a second gearbox, in parts of ten thousand: 0.3 to 3.
pub const OVERDRIVE: Bound = Bound { what: "overdrive", least: 3_000, most: 30_000 };
/// On how many gears an overdrive works.
pub const OVERDRIVE_ON: Bound = Bound { what: "overdrive-on", least: 1, most: 20 };
/// How far a tyre rolls in one turn, in nanometres: half a metre to ten.
pub const CIRCUMFERENCE: Bound = Bound { what: "circumference", least: 500_000_000, most: 10_000_000_000 };
/// Turns of a tyre in a mile, in hundredths: those of tyres that roll half a metre to ten in a turn.
pub const TURNS_PER_MILE: Bound = Bound { what: "turns-per-mile", least: 16_094, most: 321_868 };
/// How much a tyre measures across, in nanometres: those that roll half a metre to ten in a turn.
pub const DIAMETER: Bound = Bound { what: "diameter", least: 160_000_000, most: 3_180_000_000 };
/// Turns of an engine a minute.
pub const HIGHEST_TURNS: Bound = Bound { what: "highest-turns", least: 100, most: 30_000 };
