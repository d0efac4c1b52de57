use super::{MILE, Rolling};

/// A road speed.
///
/// ```
/// use asfound_core::gearing::Speed;
/// assert_eq!((Speed::from_mph(100.0).kmh() * 10_000.0).round(), 1_609_344.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Speed(f64);

impl Speed {
    /// So many kilometres an hour.
    #[must_use]
    pub const fn from_kmh(kmh: f64) -> Self {
        Self(kmh)
    }

    /// So many miles an hour.
    #[must_use]
    pub fn from_mph(mph: f64) -> Self {
        Self(mph * MILE / 1e6)
    }

    /// In kilometres an hour.
    #[must_use]
    pub const fn kmh(self) -> f64 {
        self.0
    }

    /// In miles an hour.
    #[must_use]
    pub fn mph(self) -> f64 {
        self.0 * 1e6 / MILE
    }
}

/// The road speed at 1000 turns of the engine a minute, where the engine turns `overall` times for one turn of the wheel:
/// 1000 × 60 × circumference ÷ overall. `overall` is above 0.
///
/// Source: what it means. In miles an hour and inches the same is diameter ÷ (overall × 0.336135), the constant of printed
/// charts: 5280 × 12 ÷ (60 × π) = 336.135.
///
/// ```
/// use asfound_core::gearing::{Rolling, per_1000};
/// let tyre = Rolling::of_turns_per_mile(881.0).unwrap();
/// assert_eq!((per_1000(3.636, tyre).mph() * 100.0).round(), 1_873.0);
/// ```
#[must_use]
pub fn per_1000(overall: f64, rolling: Rolling) -> Speed {
    Speed::from_kmh(60_000.0 * rolling.circumference() / 1e6 / overall)
}

/// Turns of the engine a minute at a road speed: speed ÷ circumference × overall.
///
/// ```
/// use asfound_core::gearing::{Rolling, Speed, engine_speed};
/// let tyre = Rolling::of_diameter(28.0 * 25.4).unwrap();
/// assert_eq!(engine_speed(Speed::from_mph(65.0), 3.08, tyre).round(), 2_403.0);
/// ```
#[must_use]
pub fn engine_speed(speed: Speed, overall: f64, rolling: Rolling) -> f64 {
    speed.kmh() * 1e6 / 60.0 / rolling.circumference() * overall
}
