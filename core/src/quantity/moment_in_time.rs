use serde::{Deserialize, Serialize};

/// A moment by the device's clock, in milliseconds since 1970-01-01 UTC: for display only, never for order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Millis(pub i64);

impl Millis {
    /// The civil date and time of day (UTC) as `YYYY-MM-DD`, hours and minutes.
    ///
    /// Days to civil date after the proleptic Gregorian calendar (ISO 8601), counted in 400-year eras of 146,097 days.
    ///
    /// ```
    /// use asfound_core::quantity::Millis;
    /// assert_eq!(Millis(0).date(), "1970-01-01");
    /// assert_eq!(Millis(951_782_400_000).date(), "2000-02-29");
    /// ```
    #[must_use]
    pub fn date(self) -> String {
        let shifted = self.0.div_euclid(86_400_000) + 719_468;
        let era = shifted.div_euclid(146_097);
        let day_of_era = shifted.rem_euclid(146_097);
        let year_of_era = (day_of_era - day_of_era / 1460 + day_of_era / 36_524 - day_of_era / 146_096) / 365;
        let day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
        let shifted_month = (5 * day_of_year + 2) / 153;
        let day = day_of_year - (153 * shifted_month + 2) / 5 + 1;
        let month = if shifted_month < 10 { shifted_month + 3 } else { shifted_month - 9 };
        let year = year_of_era + era * 400 + i64::from(month <= 2);
        format!("{year:04}-{month:02}-{day:02}")
    }
}
