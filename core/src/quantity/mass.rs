use serde::{Deserialize, Serialize};

/// A mass in whole grams.
///
/// ```
/// assert_eq!(asfound_core::quantity::Mass::from_kilograms(15).grams(), 15_000);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Mass(pub i64);

impl Mass {
    /// So many kilograms.
    #[must_use]
    pub const fn from_kilograms(kilograms: i64) -> Self {
        Self(kilograms * 1000)
    }

    /// In grams.
    #[must_use]
    pub const fn grams(self) -> i64 {
        self.0
    }
}
