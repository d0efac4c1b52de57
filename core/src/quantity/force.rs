use serde::{Deserialize, Serialize};

use super::typed::{Unreadable, read};
use super::{Unit, bounds};

/// A force in whole millinewtons, up to ten meganewtons either way ([`bounds::READING`]): the load of a spring.
///
/// ```
/// use asfound_core::quantity::{Force, Unit};
/// assert_eq!(Force::read("100 kgf", Unit::Newton), Ok(Force(980_665)));
/// assert_eq!(Force::read("2.5", Unit::PoundForce), Ok(Force(11_121)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Force(pub i64);

impl Force {
    /// In millinewtons.
    #[must_use]
    pub const fn millinewtons(self) -> i64 {
        self.0
    }

    /// What a person typed; figures without a unit are in `default`, which is a unit of force.
    ///
    /// # Errors
    ///
    /// As [`read`].
    pub fn read(text: &str, default: Unit) -> Result<Self, Unreadable> {
        read(text, default).map(|typed| Self(typed.amount))
    }

    /// With its unit, in a form that [`read`] takes: the same force comes back.
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
