use serde::{Deserialize, Serialize};

use super::typed::{Unreadable, read};
use super::{Unit, bounds};

/// A length in whole nanometres, up to ten metres either way ([`bounds::READING`]): 25 400 000 to the inch, so that what an
/// instrument shows is exact in both systems.
///
/// ```
/// use asfound_core::quantity::{Length, Unit};
/// assert_eq!(Length::read("1 1/4", Unit::Millimetre), Length::read("31.75", Unit::Millimetre));
/// assert_eq!(Length::read("-2 thou", Unit::Millimetre), Ok(Length(-50_800)));
/// assert_eq!(Length(31_762_700).write(Unit::Inch), "1.2505 in");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Length(pub i64);

impl Length {
    /// So many micrometres.
    #[must_use]
    pub const fn from_micrometres(micrometres: i64) -> Self {
        Self(micrometres * 1_000)
    }

    /// In nanometres.
    #[must_use]
    pub const fn nanometres(self) -> i64 {
        self.0
    }

    /// What a person typed; figures without a unit are in `default`, which is a unit of length.
    ///
    /// # Errors
    ///
    /// As [`read`].
    pub fn read(text: &str, default: Unit) -> Result<Self, Unreadable> {
        read(text, default).map(|typed| Self(typed.amount))
    }

    /// With its unit, in a form that [`read`] takes: the same length comes back.
    #[must_use]
    pub fn write(self, unit: Unit) -> String {
        format!("{} {}", unit.figures(self.0), unit.symbol())
    }

    /// Whether it is one that is accepted ([`bounds::READING`]).
    #[must_use]
    pub const fn is_within_bounds(self) -> bool {
        bounds::READING.holds(self.0)
    }
}
