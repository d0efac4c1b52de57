use serde::{Deserialize, Serialize};

use super::Unit;
use super::typed::{Unreadable, read};

/// A tightening figure in whole micronewton-metres, up to ten thousand newton-metres ([`bounds::TORQUE`](super::bounds::TORQUE)).
///
/// ```
/// use asfound_core::quantity::{Torque, Unit};
/// assert_eq!(Torque::read("54", Unit::NewtonMetre), Ok(Torque(54_000_000)));
/// // 4.4482216152605 N (a pound of force) × 0.3048 m, both exact by definition.
/// assert_eq!(Torque::read("40 lbf ft", Unit::NewtonMetre), Ok(Torque(54_232_718)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Torque(pub i64);

impl Torque {
    /// In micronewton-metres.
    #[must_use]
    pub const fn micronewton_metres(self) -> i64 {
        self.0
    }

    /// What a person typed; figures without a unit are in `default`, which is a unit of torque.
    ///
    /// # Errors
    ///
    /// As [`read`].
    pub fn read(text: &str, default: Unit) -> Result<Self, Unreadable> {
        read(text, default).map(|typed| Self(typed.amount))
    }
}
