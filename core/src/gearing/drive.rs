use super::{Rolling, per_1000};

/// One way through gearbox, overdrive and axle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drive {
    /// Which gear, from 1, the shortest.
    pub gear: usize,
    /// With the overdrive in.
    pub overdriven: bool,
    /// Turns of the engine for one of the gearbox, overdrive counted.
    pub ratio: f64,
    /// Turns of the engine for one of the wheel.
    pub overall: f64,
}

/// Axle, gearbox and overdrive.
#[derive(Debug, Clone, PartialEq)]
pub struct Drivetrain {
    axle: f64,
    gears: Vec<f64>,
    overdrive: Option<(f64, usize)>,
}

impl Drivetrain {
    /// `axle`: turns of the propeller shaft for one of the wheel. `gears`: turns in for one out, shortest first, as
    /// [`read_ratios`](super::read_ratios) answers them. `overdrive`: its ratio, and on how many of the upper gears it works.
    /// Nothing where there is no gear, or a ratio is not a number above 0.
    ///
    /// ```
    /// use asfound_core::gearing::Drivetrain;
    /// let train = Drivetrain::new(4.22, vec![3.33, 1.0], Some((0.8, 1))).unwrap();
    /// let overall: Vec<f64> = train.drives().iter().map(|drive| (drive.overall * 100.0).round()).collect();
    /// assert_eq!(overall, [1_405.0, 422.0, 338.0]);
    /// assert_eq!(Drivetrain::new(0.0, vec![1.0], None), None);
    /// ```
    #[must_use]
    pub fn new(axle: f64, gears: Vec<f64>, overdrive: Option<(f64, usize)>) -> Option<Self> {
        let is_ratio = |ratio: f64| ratio.is_finite() && ratio > 0.0;
        let all = !gears.is_empty() && gears.iter().all(|gear| is_ratio(*gear));
        let fits = all && is_ratio(axle) && overdrive.is_none_or(|(ratio, _)| is_ratio(ratio));
        fits.then_some(Self { axle, gears, overdrive })
    }

    /// All ways through: gear by gear, the shortest first; a gear with the overdrive right after the same without.
    #[must_use]
    pub fn drives(&self) -> Vec<Drive> {
        let count = self.gears.len();
        let mut drives = Vec::new();
        for (at, ratio) in self.gears.iter().copied().enumerate() {
            let gear = at + 1;
            drives.push(Drive { gear, overdriven: false, ratio, overall: ratio * self.axle });
            if let Some((over, _)) = self.overdrive.filter(|(_, on)| at.saturating_add(*on) >= count) {
                drives.push(Drive { gear, overdriven: true, ratio: ratio * over, overall: ratio * over * self.axle });
            }
        }
        drives
    }
}

/// By which share the engine turns more often at the same road speed after a change of gearing and of tyre; below 0: less.
/// overall after ÷ overall before × circumference before ÷ circumference after − 1. Source: what it means.
///
/// ```
/// use asfound_core::gearing::{Rolling, more_turns};
/// let tyre = Rolling::of_turns_per_mile(850.0).unwrap();
/// assert_eq!((more_turns((4.22, tyre), (3.70, tyre)) * 1_000.0).round(), -123.0);
/// ```
#[must_use]
pub fn more_turns(before: (f64, Rolling), after: (f64, Rolling)) -> f64 {
    per_1000(before.0, before.1).kmh() / per_1000(after.0, after.1).kmh() - 1.0
}
