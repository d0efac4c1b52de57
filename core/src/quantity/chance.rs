use serde::{Deserialize, Serialize};

/// A chance in parts of ten thousand, so that it is stored exactly: 2500 is 25 of 100.
///
/// ```
/// use asfound_core::quantity::Chance;
/// assert_eq!(Chance::of_100(25).share(), 0.25);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Chance(pub i64);

impl Chance {
    /// So many of a hundred.
    #[must_use]
    pub const fn of_100(times: i64) -> Self {
        Self(times * 100)
    }

    /// As a share from 0 to 1.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "at most ten thousand")]
    pub fn share(self) -> f64 {
        self.0 as f64 / 10_000.0
    }
}
