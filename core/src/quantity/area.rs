use serde::{Deserialize, Serialize};

/// An area in whole square millimetres.
///
/// ```
/// assert_eq!(asfound_core::quantity::Area::from_square_decimetres(3).square_millimetres(), 30_000);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Area(pub i64);

impl Area {
    /// So many square decimetres.
    #[must_use]
    pub const fn from_square_decimetres(decimetres: i64) -> Self {
        Self(decimetres * 10_000)
    }

    /// In square millimetres.
    #[must_use]
    pub const fn square_millimetres(self) -> i64 {
        self.0
    }
}
