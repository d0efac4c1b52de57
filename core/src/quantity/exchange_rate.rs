use serde::{Deserialize, Serialize};

use super::{Currency, Money};

/// What one unit of a foreign currency costs in the job's own, in millionths, so that it is stored exactly: 850000 is 0.85.
///
/// ```
/// use asfound_core::quantity::{Currency, ExchangeRate, Money};
/// let rate = ExchangeRate(850_000);
/// assert_eq!(rate.exchanged(Money::from_minor(100_00, Currency::EUR), Currency::GBP), Some(85_00));
/// let yen = Currency::parse("JPY").unwrap();
/// assert_eq!(ExchangeRate(5_200).exchanged(Money::from_minor(1_000, yen), Currency::GBP), Some(5_20));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ExchangeRate(pub i64);

impl ExchangeRate {
    /// An amount in minor units of the other currency, rounded once to the nearest, halves away from nothing; nothing when
    /// it leaves 64 bits.
    #[must_use]
    pub fn exchanged(self, money: Money, to: Currency) -> Option<i64> {
        let up = 10_i128.pow(to.decimals());
        let down = 10_i128.pow(money.currency.decimals()) * 1_000_000;
        let exact = i128::from(money.minor) * i128::from(self.0) * up;
        let half = if exact < 0 { -down / 2 } else { down / 2 };
        i64::try_from((exact + half) / down).ok()
    }
}
