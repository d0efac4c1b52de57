use std::fmt;

use serde::{Deserialize, Serialize};

use super::Millis;

/// A day of the calendar, as `YYYY-MM-DD` (ISO 8601).
///
/// ```
/// use asfound_core::quantity::Day;
/// let day = Day::parse("2024-02-29").unwrap();
/// assert_eq!(day.to_string(), "2024-02-29");
/// assert!(day < Day::parse("2024-03-01").unwrap());
/// assert_eq!(Day::parse("2023-02-29"), None);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Day(#[cfg_attr(feature = "ts", tsify(type = "string"))] pub(crate) i64);

const LAST: i64 = 2_932_896;

impl Day {
    /// Days since 1970-01-01, in the years 1 to 9999.
    #[must_use]
    pub fn from_count(days: i64) -> Option<Self> {
        (-719_162..=LAST).contains(&days).then_some(Self(days))
    }

    /// Days since 1970-01-01.
    #[must_use]
    pub const fn count(self) -> i64 {
        self.0
    }

    /// The day of a date; nothing when there is no such day.
    ///
    /// Civil date to days after the proleptic Gregorian calendar (ISO 8601), counted in 400-year eras of 146,097 days.
    #[must_use]
    pub fn parse(date: &str) -> Option<Self> {
        let mut parts = date.split('-');
        let mut next = |digits: usize| {
            let part = parts.next().filter(|part| part.len() == digits && part.bytes().all(|b| b.is_ascii_digit()))?;
            part.parse::<i64>().ok()
        };
        let (year, month, day) = (next(4)?, next(2)?, next(2)?);
        let shifted_year = if month <= 2 { year - 1 } else { year };
        let era = shifted_year.div_euclid(400);
        let year_of_era = shifted_year.rem_euclid(400);
        let day_of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
        let day_of_era = 365 * year_of_era + year_of_era / 4 - year_of_era / 100 + day_of_year;
        let found = Self::from_count(era * 146_097 + day_of_era - 719_468)?;
        // A month or day that does not exist comes out as another date.
        (found.to_string() == date).then_some(found)
    }
}

impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&Millis(self.0.saturating_mul(86_400_000)).date())
    }
}

impl From<Day> for String {
    fn from(day: Day) -> Self {
        day.to_string()
    }
}

impl TryFrom<String> for Day {
    type Error = String;

    fn try_from(date: String) -> Result<Self, Self::Error> {
        Self::parse(&date).ok_or_else(|| format!("not a day as YYYY-MM-DD: {date}"))
    }
}
