use std::f64::consts::PI;

use super::{MILE, Tyre};
use crate::record::stored_enum;

/// By how much more often a tyre turns with the vehicle on it than its unloaded size says, as shares: least and most.
///
/// Seen: 1.3 % and 2.8 % between data-book turns per mile and the geometry of two radials; 3.1 % in one list of three sizes.
pub const LOADED_MORE_TURNS: [f64; 2] = [0.013, 0.031];

stored_enum! {
    /// From what it is known how far a tyre rolls in one turn, best first.
    pub enum RollingFrom {
        /// Measured on the floor: so far for one turn, with the vehicle's weight on it.
        Circumference = "circumference",
        /// Turns in a mile or a kilometre, from a data book: rolling, under load.
        Turns = "turns",
        /// Measured across the tread: unloaded.
        Diameter = "diameter",
        /// Its marking: nominal, unloaded.
        Marking = "marking",
    }
}

impl RollingFrom {
    /// Whether somebody measured it, or the maker did.
    #[must_use]
    pub fn is_measured(self) -> bool {
        self != Self::Marking
    }

    /// Whether the weight of the vehicle is left out, so that the tyre turns oftener by [`LOADED_MORE_TURNS`].
    #[must_use]
    pub const fn is_unloaded(self) -> bool {
        matches!(self, Self::Diameter | Self::Marking)
    }
}

/// How far a tyre rolls in one turn, and from what that is known. Never outside 0.5 to 10 m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rolling {
    circumference: f64,
    from: RollingFrom,
}

impl Rolling {
    fn new(circumference: f64, from: RollingFrom) -> Option<Self> {
        (500.0..=10_000.0).contains(&circumference).then_some(Self { circumference, from })
    }

    /// Rolled so many millimetres in one turn. Nothing outside 500 to 10 000.
    ///
    /// ```
    /// use asfound_core::gearing::Rolling;
    /// assert_eq!(Rolling::of_circumference(2_000.0).unwrap().turns_per_km(), 500.0);
    /// assert_eq!(Rolling::of_circumference(12.0), None);
    /// ```
    #[must_use]
    pub fn of_circumference(millimetres: f64) -> Option<Self> {
        Self::new(millimetres, RollingFrom::Circumference)
    }

    /// Turns so often in a mile. Nothing outside about 161 to 3218.
    ///
    /// ```
    /// use asfound_core::gearing::Rolling;
    /// assert_eq!(Rolling::of_turns_per_mile(881.0).unwrap().circumference().round(), 1_827.0);
    /// assert_eq!(Rolling::of_turns_per_mile(0.0), None);
    /// ```
    #[must_use]
    pub fn of_turns_per_mile(turns: f64) -> Option<Self> {
        Self::new(MILE / turns, RollingFrom::Turns)
    }

    /// Is so many millimetres across, unloaded. Nothing outside about 160 to 3183.
    ///
    /// ```
    /// use asfound_core::gearing::Rolling;
    /// assert_eq!(Rolling::of_diameter(600.0).unwrap().circumference().round(), 1_885.0);
    /// ```
    #[must_use]
    pub fn of_diameter(millimetres: f64) -> Option<Self> {
        Self::new(millimetres * PI, RollingFrom::Diameter)
    }

    /// As its marking says: the circumference of its nominal diameter.
    ///
    /// ```
    /// use asfound_core::gearing::{Rolling, Tyre};
    /// let tyre = Tyre::read("145/80-13").unwrap();
    /// assert_eq!((Rolling::of_tyre(&tyre).unwrap().turns_per_mile() * 10.0).round(), 9_112.0);
    /// ```
    #[must_use]
    pub fn of_tyre(tyre: &Tyre) -> Option<Self> {
        Self::new(tyre.diameter() * PI, RollingFrom::Marking)
    }

    /// How far it rolls in one turn, in millimetres.
    #[must_use]
    pub const fn circumference(self) -> f64 {
        self.circumference
    }

    /// Circumference ÷ π, in millimetres. Under load no distance on the tyre is as long.
    #[must_use]
    pub fn diameter(self) -> f64 {
        self.circumference / PI
    }

    /// Turns in a mile.
    #[must_use]
    pub fn turns_per_mile(self) -> f64 {
        MILE / self.circumference
    }

    /// Turns in a kilometre.
    #[must_use]
    pub fn turns_per_km(self) -> f64 {
        1e6 / self.circumference
    }

    /// From what that is known.
    #[must_use]
    pub const fn from(self) -> RollingFrom {
        self.from
    }
}
