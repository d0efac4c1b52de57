use serde::{Deserialize, Serialize};

use super::{Currency, bounds};

/// Money that was paid, quoted or summed: exact, in minor units of a currency.
///
/// An expectation is never a `Money` but an [`Estimate`](super::Estimate).
///
/// ```
/// use asfound_core::quantity::{Currency, Money};
/// let eighteen = Money::from_minor(18_00, Currency::GBP);
/// let freight = Money::from_minor(4_50, Currency::GBP);
/// assert_eq!(eighteen.plus(freight), Some(Money::from_minor(22_50, Currency::GBP)));
/// assert_eq!(eighteen.plus(Money::from_minor(1, Currency::EUR)), None);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Money {
    /// Minor units: pence, cents.
    pub minor: i64,
    /// ISO 4217 code.
    pub currency: Currency,
}

impl Money {
    /// Money from minor units.
    #[must_use]
    pub const fn from_minor(minor: i64, currency: Currency) -> Self {
        Self { minor, currency }
    }

    /// The exact sum; nothing when the currencies differ or the sum leaves 64 bits.
    #[must_use]
    pub fn plus(self, other: Self) -> Option<Self> {
        let minor = (self.currency == other.currency).then(|| self.minor.checked_add(other.minor))??;
        Some(Self { minor, ..self })
    }

    /// Whether the amount is one that is accepted ([`bounds::MONEY`]).
    #[must_use]
    pub const fn is_within_bounds(self) -> bool {
        bounds::MONEY.holds(self.minor)
    }
}
