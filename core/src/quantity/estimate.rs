use serde::{Deserialize, Serialize};

use super::{Currency, Money};

/// An expectation in money: float minor units, never rounded here; rounding happens once, where it is shown.
///
/// ```
/// use asfound_core::quantity::{Currency, Estimate, Money};
/// let bench = Estimate::of(Money::from_minor(18_00, Currency::GBP)).plus_minor(4000.0);
/// assert_eq!(bench.minor, 5800.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Estimate {
    /// Minor units, with fractions.
    pub minor: f64,
    /// ISO 4217 code.
    pub currency: Currency,
}

impl Estimate {
    /// An estimate from float minor units.
    #[must_use]
    pub const fn from_minor(minor: f64, currency: Currency) -> Self {
        Self { minor, currency }
    }

    /// Exact money as an estimate.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "money within bounds is below 2^53")]
    pub fn of(money: Money) -> Self {
        Self { minor: money.minor as f64, currency: money.currency }
    }

    /// This estimate and so many minor units more.
    #[must_use]
    pub fn plus_minor(self, minor: f64) -> Self {
        Self { minor: self.minor + minor, ..self }
    }
}
