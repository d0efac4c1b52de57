//! Bearings by what is stamped on them.

use serde::{Deserialize, Serialize};

use crate::quantity::Length;
use crate::record::stored_enum;

stored_enum! {
    /// Where the dimensions of a bearing come from.
    pub enum BearingSource {
        /// Deep groove, metric: DIN 625-1 as in boltsparts/BOLTS `data/bearings.blt`.
        Din625 = "din-625-1",
        /// Deep groove, metric: ISO 15, from memory.
        Iso15Memory = "iso-15-from-memory",
        /// Deep groove, inch: as in boltsparts/BOLTS `data/bearings.blt`; not every version of that file has these rows.
        InchBall = "inch-ball",
        /// Taper roller, metric: a maker's catalogue as in `bd_warehouse` 0.4.0.
        TaperMetric = "taper-metric",
        /// Taper roller, inch: tables of two public repositories.
        TaperInch = "taper-inch",
    }
}

stored_enum! {
    /// What a suffix means, where that is the same with every maker.
    pub enum BearingSuffix {
        /// 2RS and the like: rubbing seals on both sides.
        TwoSeals = "two-seals",
        /// RS and the like: a rubbing seal on one side.
        OneSeal = "one-seal",
        /// ZZ, 2Z: shields on both sides.
        TwoShields = "two-shields",
        /// Z: a shield on one side.
        OneShield = "one-shield",
        /// C2: less play than normal.
        LessPlay = "c2",
        /// C3: more play than normal.
        MorePlay = "c3",
        /// C4: more play than C3.
        MuchPlay = "c4",
        /// NR: a groove in the outer ring, with its snap ring.
        SnapRing = "snap-ring",
        /// N: a groove in the outer ring for a snap ring.
        SnapRingGroove = "snap-ring-groove",
    }
}

/// A bearing with its boundary dimensions.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Bearing {
    /// Its designation without suffixes.
    pub designation: String,
    /// Bore.
    pub bore: Length,
    /// Outside diameter.
    pub outside: Length,
    /// Width; of a taper roller bearing that of cup and cone together.
    pub width: Length,
    /// Sources disagree: another has this width. Measure before ordering.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub or_width: Option<Length>,
    /// What its suffixes mean.
    pub suffixes: Vec<BearingSuffix>,
    /// What follows and is not known here; empty when all was read.
    pub not_read: String,
    /// Where the dimensions come from.
    pub source: BearingSource,
}

/// Bore, outside diameter and width, in the unit of the table.
type Row = (&'static str, [i64; 3]);

/// Rows with their unit in nanometres.
struct Table {
    rows: &'static [Row],
    unit: i64,
    source: BearingSource,
}

const fn table(rows: &'static [Row], unit: i64, source: BearingSource) -> Table {
    Table { rows, unit, source }
}

const MILLIMETRE: i64 = 1_000_000;
const MICROMETRE: i64 = 1_000;
const SIXTEENTH: i64 = 1_587_500;

const TABLES: &[Table] = &[
    table(DEEP_GROOVE, MILLIMETRE, BearingSource::Din625),
    table(DEEP_GROOVE_FROM_MEMORY, MILLIMETRE, BearingSource::Iso15Memory),
    table(INCH_BALL, SIXTEENTH, BearingSource::InchBall),
    table(TAPER_METRIC, MICROMETRE, BearingSource::TaperMetric),
];

/// DIN 625-1, in millimetres. Codes 00 to 03 are bores of 10, 12, 15, 17; from 04 on five times the code.
const DEEP_GROOVE: &[Row] = &[
    ("6000", [10, 26, 8]),
    ("6001", [12, 28, 8]),
    ("6002", [15, 32, 9]),
    ("6003", [17, 35, 10]),
    ("6004", [20, 42, 12]),
    ("6005", [25, 47, 12]),
    ("6006", [30, 55, 13]),
    ("6007", [35, 62, 14]),
    ("6200", [10, 30, 9]),
    ("6201", [12, 32, 10]),
    ("6202", [15, 35, 11]),
    ("6203", [17, 40, 12]),
    ("6204", [20, 47, 14]),
    ("6205", [25, 52, 15]),
    ("6206", [30, 62, 16]),
    ("6207", [35, 72, 17]),
    ("6208", [40, 80, 18]),
    ("6209", [45, 85, 19]),
    ("6300", [10, 35, 11]),
    ("6301", [12, 37, 12]),
    ("6302", [15, 42, 13]),
    ("6303", [17, 47, 14]),
    ("6304", [20, 52, 15]),
    ("6305", [25, 62, 17]),
];

/// ISO 15, in millimetres, from memory.
const DEEP_GROOVE_FROM_MEMORY: &[Row] = &[
    ("6008", [40, 68, 15]),
    ("6009", [45, 75, 16]),
    ("6010", [50, 80, 16]),
    ("6210", [50, 90, 20]),
    ("6306", [30, 72, 19]),
    ("6307", [35, 80, 21]),
    ("6308", [40, 90, 23]),
    ("6309", [45, 100, 25]),
    ("6310", [50, 110, 27]),
];

/// In sixteenths of an inch: ½ × 1 5/16 × ⅜, 1 × 2¼ × ⅝, 1½ × 3¼ × ¾ in.
const INCH_BALL: &[Row] = &[("RLS4", [8, 21, 6]), ("RLS8", [16, 36, 10]), ("RLS12", [24, 52, 12])];

/// In micrometres.
const TAPER_METRIC: &[Row] = &[
    ("30203", [17_000, 40_000, 13_250]),
    ("30204", [20_000, 47_000, 15_250]),
    ("30205", [25_000, 52_000, 16_250]),
    ("30206", [30_000, 62_000, 17_250]),
    ("30302", [15_000, 42_000, 14_250]),
    ("30303", [17_000, 47_000, 15_250]),
    ("30304", [20_000, 52_000, 16_250]),
    ("30305", [25_000, 62_000, 18_250]),
    ("30306", [30_000, 72_000, 20_750]),
    ("32004", [20_000, 42_000, 15_000]),
    ("32005", [25_000, 47_000, 15_000]),
    ("32006", [30_000, 55_000, 17_000]),
    ("32205", [25_000, 52_000, 19_250]),
    ("32206", [30_000, 62_000, 21_250]),
    ("32303", [17_000, 47_000, 20_250]),
    ("32304", [20_000, 52_000, 22_250]),
    ("32305", [25_000, 62_000, 25_250]),
    ("32306", [30_000, 72_000, 28_750]),
];

/// Cone and cup, in micrometres.
const TAPER_INCH: &[(&str, &str, [i64; 3])] = &[
    ("LM11749", "LM11710", [17_462, 39_878, 13_843]),
    ("LM12749", "LM12710", [21_986, 45_237, 15_494]),
    ("LM67048", "LM67010", [31_750, 59_131, 15_875]),
    ("25877", "25821", [34_925, 73_025, 23_812]),
    ("L44643", "L44610", [25_400, 50_292, 14_732]),
];

/// Where sources disagree: one table prints 14.732 mm for the width, from memory it is 14.224.
const OR_WIDTH: (&str, i64) = ("L44643", 14_224);

/// Suffixes in the order they are looked for, longer before shorter.
const SUFFIXES: &[(&str, BearingSuffix)] = &[
    ("2RS1", BearingSuffix::TwoSeals),
    ("2RSH", BearingSuffix::TwoSeals),
    ("2RSR", BearingSuffix::TwoSeals),
    ("2RS", BearingSuffix::TwoSeals),
    ("RS1", BearingSuffix::OneSeal),
    ("RSH", BearingSuffix::OneSeal),
    ("RSR", BearingSuffix::OneSeal),
    ("RS", BearingSuffix::OneSeal),
    ("2Z", BearingSuffix::TwoShields),
    ("ZZ", BearingSuffix::TwoShields),
    ("Z", BearingSuffix::OneShield),
    ("C2", BearingSuffix::LessPlay),
    ("C3", BearingSuffix::MorePlay),
    ("C4", BearingSuffix::MuchPlay),
    ("NR", BearingSuffix::SnapRing),
    ("N", BearingSuffix::SnapRingGroove),
];

/// A bearing by what is stamped on it, in capitals or not, with or without spaces, hyphens and suffixes; a taper roller
/// bearing of inch size by its cone, or cone and cup. Nothing for one that is not in the tables, rather than a guess.
///
/// ```
/// use asfound_core::quantity::Length;
/// use asfound_core::tables::{BearingSuffix, bearing};
/// let found = bearing(" 6204 zz C3").unwrap();
/// let millimetres = |length: Length| length.nanometres() / 1_000_000;
/// assert_eq!([found.bore, found.outside, found.width].map(millimetres), [20, 47, 14]);
/// assert_eq!(found.suffixes, [BearingSuffix::TwoShields, BearingSuffix::MorePlay]);
/// assert_eq!(bearing("6299"), None);
/// ```
#[must_use]
pub fn bearing(stamped: &str) -> Option<Bearing> {
    let letters = stamped.chars().filter(char::is_ascii_alphanumeric);
    let text: String = letters.map(|letter| letter.to_ascii_uppercase()).collect();
    let known = TABLES.iter().flat_map(|table| table.rows.iter().map(move |row| (table, row)));
    let mut found = known.filter_map(|(table, (designation, sizes))| {
        let rest = suffixes(text.strip_prefix(designation)?)?;
        Some(built((*designation).to_owned(), sizes.map(|size| size * table.unit), rest, table.source))
    });
    found.next().or_else(|| taper_inch(&text))
}

fn taper_inch(text: &str) -> Option<Bearing> {
    TAPER_INCH.iter().find_map(|(cone, cup, sizes)| {
        let rest = text.strip_prefix(cone)?;
        let both = rest.strip_prefix(cup).or_else(|| rest.strip_prefix(&cup[cup.len() - 2..]));
        let rest = suffixes(both.unwrap_or(rest))?;
        let sizes = sizes.map(|size| size * MICROMETRE);
        let or_width = (OR_WIDTH.0 == *cone).then_some(Length::from_micrometres(OR_WIDTH.1));
        Some(Bearing { or_width, ..built(format!("{cone}/{cup}"), sizes, rest, BearingSource::TaperInch) })
    })
}

type Rest = (Vec<BearingSuffix>, String);

/// The suffixes known here, then whatever is left; nothing where figures follow that belong to another designation.
fn suffixes(mut rest: &str) -> Option<Rest> {
    let mut read = Vec::new();
    while let Some((after, suffix)) =
        SUFFIXES.iter().find_map(|(word, suffix)| Some((rest.strip_prefix(word)?, suffix)))
    {
        read.push(*suffix);
        rest = after;
    }
    let is_another = read.is_empty() && rest.starts_with(|letter: char| letter.is_ascii_digit());
    (!is_another).then(|| (read, rest.to_owned()))
}

fn built(
    designation: String,
    [bore, outside, width]: [i64; 3],
    (suffixes, not_read): Rest,
    source: BearingSource,
) -> Bearing {
    let [bore, outside, width] = [bore, outside, width].map(Length);
    Bearing { designation, bore, outside, width, or_width: None, suffixes, not_read, source }
}
