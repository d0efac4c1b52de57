use serde::{Deserialize, Serialize};

use super::{Currency, Estimate, Money};

/// A duration of work or waiting in whole minutes.
///
/// ```
/// use asfound_core::quantity::{Currency, Minutes, Money};
/// let twenty_an_hour = Money::from_minor(20_00, Currency::GBP);
/// assert_eq!(Minutes::new(90).at(twenty_an_hour).minor, 3000.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Minutes(pub i64);

impl Minutes {
    /// So many minutes.
    #[must_use]
    pub const fn new(minutes: i64) -> Self {
        Self(minutes)
    }

    /// What this time costs at a value of an hour: minutes ÷ 60 × value.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "minutes and money within bounds are below 2^53")]
    pub fn at(self, value_of_an_hour: Money) -> Estimate {
        let minor = self.0 as f64 * value_of_an_hour.minor as f64 / 60.0;
        Estimate::from_minor(minor, value_of_an_hour.currency)
    }

    /// No time at all costs nothing, in whatever currency.
    #[must_use]
    pub const fn none_in(currency: Currency) -> Estimate {
        Estimate::from_minor(0.0, currency)
    }
}
