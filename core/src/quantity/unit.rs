use serde::{Deserialize, Serialize};

/// What is measured; each is kept as a whole number of one base unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Dimension {
    /// A length, kept in nanometres.
    Length,
    /// A force, kept in millinewtons.
    Force,
    /// A torque, kept in micronewton-metres.
    Torque,
    /// A count, kept as it is.
    Count,
}

/// A unit that people read off an instrument or a manual.
///
/// ```
/// use asfound_core::quantity::Unit;
/// assert_eq!(Unit::Inch.figures(31_762_700), "1.2505");
/// assert_eq!(Unit::Millimetre.figures(-50_800), "-0.0508");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Unit {
    /// mm.
    Millimetre,
    /// cm.
    Centimetre,
    /// µm.
    Micrometre,
    /// in, 25.4 mm.
    Inch,
    /// A thousandth of an inch.
    Thou,
    /// N.
    Newton,
    /// kN.
    Kilonewton,
    /// lbf, 4.4482216152605 N.
    PoundForce,
    /// kgf, 9.80665 N.
    KilogramForce,
    /// N·m.
    NewtonMetre,
    /// lbf·ft, 1.3558179483314004 N·m.
    PoundFoot,
    /// lbf·in, a twelfth of that.
    PoundInch,
    /// kgf·m, 9.80665 N·m.
    KilogramMetre,
    /// A plain count.
    One,
}

/// The base units in one unit, as a fraction; and how many decimals tell neighbouring base units apart.
struct Size {
    over: i64,
    under: i64,
    decimals: u32,
}

const fn size(over: i64, under: i64, decimals: u32) -> Size {
    Size { over, under, decimals }
}

impl Unit {
    /// All of them, in order of declaration.
    pub const ALL: &'static [Self] = &[
        Self::Millimetre,
        Self::Centimetre,
        Self::Micrometre,
        Self::Inch,
        Self::Thou,
        Self::Newton,
        Self::Kilonewton,
        Self::PoundForce,
        Self::KilogramForce,
        Self::NewtonMetre,
        Self::PoundFoot,
        Self::PoundInch,
        Self::KilogramMetre,
        Self::One,
    ];

    /// What it measures.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Millimetre | Self::Centimetre | Self::Micrometre | Self::Inch | Self::Thou => Dimension::Length,
            Self::Newton | Self::Kilonewton | Self::PoundForce | Self::KilogramForce => Dimension::Force,
            Self::NewtonMetre | Self::PoundFoot | Self::PoundInch | Self::KilogramMetre => Dimension::Torque,
            Self::One => Dimension::Count,
        }
    }

    /// Its sign.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Micrometre => "µm",
            Self::Inch => "in",
            Self::Thou => "thou",
            Self::Newton => "N",
            Self::Kilonewton => "kN",
            Self::PoundForce => "lbf",
            Self::KilogramForce => "kgf",
            Self::NewtonMetre => "N·m",
            Self::PoundFoot => "lbf·ft",
            Self::PoundInch => "lbf·in",
            Self::KilogramMetre => "kgf·m",
            Self::One => "",
        }
    }

    /// The inch of 1959 and the pound and kilogram under standard gravity are exact by definition.
    const fn size(self) -> Size {
        match self {
            Self::Millimetre => size(1_000_000, 1, 6),
            Self::Centimetre => size(10_000_000, 1, 7),
            Self::Micrometre => size(1_000, 1, 3),
            Self::Inch => size(25_400_000, 1, 8),
            Self::Thou => size(25_400, 1, 5),
            Self::Newton => size(1_000, 1, 3),
            Self::Kilonewton => size(1_000_000, 1, 6),
            Self::PoundForce => size(44_482_216_152_605, 10_000_000_000, 4),
            Self::KilogramForce => size(980_665, 100, 4),
            Self::NewtonMetre => size(1_000_000, 1, 6),
            Self::PoundFoot => size(13_558_179_483_314_004, 10_000_000_000, 7),
            Self::PoundInch => size(1_129_848_290_276_167, 10_000_000_000, 6),
            Self::KilogramMetre => size(9_806_650, 1, 7),
            Self::One => size(1, 1, 0),
        }
    }

    /// `over` ÷ `under` of this unit in whole base units, rounded to the nearest, halves up; and whether that is exact.
    pub(super) fn whole(self, over: i128, under: i128) -> (i128, bool) {
        let Size { over: more, under: less, .. } = self.size();
        let (over, under) = (over * i128::from(more), under * i128::from(less));
        ((over + under / 2) / under, over % under == 0)
    }

    /// So many base units, as figures in this unit: enough of them that reading them gives the same base units again.
    #[must_use]
    pub fn figures(self, amount: i64) -> String {
        self.figures_to(amount, self.size().decimals)
    }

    /// The same, rounded to so many decimals (12 at most), halves up; noughts at the end are left out.
    ///
    /// ```
    /// use asfound_core::quantity::Unit;
    /// assert_eq!(Unit::PoundFoot.figures_to(54_232_718, 2), "40");
    /// assert_eq!(Unit::NewtonMetre.figures_to(54_232_718, 2), "54.23");
    /// ```
    #[must_use]
    pub fn figures_to(self, amount: i64, decimals: u32) -> String {
        let decimals = decimals.min(12);
        let Size { over, under, .. } = self.size();
        let tens = 10_i128.pow(decimals);
        let scaled = i128::from(amount.unsigned_abs()) * i128::from(under) * tens;
        let (whole, part) = {
            let nearest = (scaled + i128::from(over) / 2) / i128::from(over);
            (nearest / tens, nearest % tens)
        };
        let sign = if amount < 0 { "-" } else { "" };
        let width = decimals as usize;
        let text = if width == 0 { format!("{sign}{whole}") } else { format!("{sign}{whole}.{part:0width$}") };
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
    }
}
