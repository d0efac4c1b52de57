//! The next size that a worn bore is opened to, or a worn journal ground to.

use serde::{Deserialize, Serialize};

use super::uncertainty::Measured;
use crate::record::stored_enum;
use crate::tables::features::Surface;

stored_enum! {
    /// Which steps the parts for it come in: common practice, no source; the supplier's list goes before.
    pub enum SizeSteps {
        /// 0.010, 0.020, 0.030, 0.040, 0.060 in.
        Inch = "inch",
        /// 0.25, 0.50, 0.75, 1.00 mm.
        Metric = "metric",
    }
}

impl SizeSteps {
    /// The steps in nanometres, least first.
    #[must_use]
    pub const fn nanometres(self) -> &'static [f64] {
        match self {
            Self::Inch => &[254_000.0, 508_000.0, 762_000.0, 1_016_000.0, 1_524_000.0],
            Self::Metric => &[250_000.0, 500_000.0, 750_000.0, 1_000_000.0],
        }
    }
}

/// A size to machine to, in nanometres.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct NextSize {
    /// Over or under the size when new, on the diameter.
    pub step: f64,
    /// The size it comes to.
    pub size: f64,
    /// What is cut off beyond what cleaning up needs.
    pub spare: f64,
}

/// The first step that still removes all wear: from the worst of all places, its expanded uncertainty on the bad side, and
/// `cut`, what has to come off the diameter there for the tool to clean up. Nothing where no step does, or nothing was
/// measured. Whether that size is still allowed, the limits say.
///
/// ```
/// use asfound_core::inspect::{Instrument, SizeSteps, Surface, measured, next_size};
/// let gauge = Instrument { stated: Some(10_000.0), ..Instrument::default() };
/// let bore = measured(&[80_210_000.0], &gauge).unwrap();
/// let next = next_size(&[bore], 80_000_000.0, Surface::Bore, SizeSteps::Metric, 50_000.0).unwrap();
/// assert_eq!((next.step, next.size, next.spare), (500_000.0, 80_500_000.0, 230_000.0));
/// ```
#[must_use]
pub fn next_size(places: &[Measured], as_new: f64, surface: Surface, steps: SizeSteps, cut: f64) -> Option<NextSize> {
    let outwards = if surface == Surface::Bore { 1.0 } else { -1.0 };
    let worn = places.iter().map(|place| (place.value - as_new) * outwards + place.expanded);
    let needed = worn.reduce(f64::max)? + cut;
    let step = steps.nanometres().iter().copied().find(|step| *step >= needed)?;
    Some(NextSize { step, size: as_new + outwards * step, spare: step - needed })
}
