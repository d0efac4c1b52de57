//! How far a reading may be off: the GUM (JCGM 100:2008) for repeats of one place with one instrument.
//!
//! All figures are in the base unit of what is measured: nanometres, millinewtons, or a count.

use serde::{Deserialize, Serialize};

use super::student::{above, tail};
use crate::record::stored_enum;

/// What is measured with.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Instrument {
    /// The least step that it shows, or that is read off between two marks.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub resolution: Option<f64>,
    /// The expanded uncertainty that is stated for it, by its maker or a calibration.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stated: Option<f64>,
    /// The coverage factor of what is stated; 2 unless something else is said.
    pub factor: f64,
    /// What it shows where it should show nothing; nothing when nobody looked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub zero_error: Option<f64>,
}

impl Default for Instrument {
    fn default() -> Self {
        Self { resolution: None, stated: None, factor: 2.0, zero_error: None }
    }
}

stored_enum! {
    /// Where a part of the uncertainty comes from.
    pub enum Source {
        /// The scatter of repeats: type A.
        Repeats = "repeats",
        /// The least step of the instrument: type B, rectangular.
        Resolution = "resolution",
        /// What is stated for the instrument: type B.
        Stated = "stated",
        /// Reading the zero error, to the least step once more: type B, rectangular.
        Zero = "zero",
    }
}

/// One part of an uncertainty.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct UncertaintyPart {
    /// Where it comes from.
    pub from: Source,
    /// The standard uncertainty.
    pub standard: f64,
    /// Its degrees of freedom; left out where they are without limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub freedom: Option<f64>,
}

/// A place as measured: the mean of its repeats, its zero error taken off, and how far that may be off.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Measured {
    /// The corrected mean.
    pub value: f64,
    /// How many repeats; of a difference, on the side that has fewer.
    pub count: usize,
    /// The sample deviation of the repeats; left out where there is one only, or for a difference.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub deviation: Option<f64>,
    /// The parts of the uncertainty. One reading alone says nothing of its scatter: the part `repeats` is missing then.
    pub parts: Vec<UncertaintyPart>,
    /// The combined standard uncertainty: the root of the sum of squares.
    pub combined: f64,
    /// The effective degrees of freedom; left out where they are without limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub freedom: Option<f64>,
    /// The coverage factor for 95.45 %.
    pub factor: f64,
    /// The expanded uncertainty U: `factor` × `combined`.
    pub expanded: f64,
    /// On how many sides something was read: 2 for a difference.
    pub sides: usize,
}

/// The share within the expanded uncertainty: 95.45 %, the normal share within two standard deviations, so that many
/// degrees of freedom give the factor 2 that ISO 14253-2 and calibrations take. GUM table G.2 has it as a column of its own.
const BEYOND_TWO: f64 = 0.022_750_131_948_179_21;

/// The repeats of one place, all with one instrument: mean, parts, combination; nothing where there are no readings.
///
/// - Type A (GUM 4.2): s ÷ √n with n − 1 degrees of freedom.
/// - Resolution (GUM F.2.2.1): rectangular, r ÷ √12, whether a scale or figures are read.
/// - Stated: U ÷ k, taken as known well.
/// - Zero error: taken off first; it was itself read to the least step.
///
/// Temperature is not counted. The scatter of repeats holds some of the resolution already; both count, on the safe side.
///
/// ```
/// use asfound_core::inspect::{Instrument, measured};
/// let micrometer = Instrument { resolution: Some(10_000.0), stated: Some(4_000.0), ..Instrument::default() };
/// let place = measured(&[31_760_000.0], &micrometer).unwrap();
/// assert!((place.combined - (2_886.75_f64 * 2_886.75 + 2_000.0 * 2_000.0).sqrt()).abs() < 0.01);
/// assert_eq!(place.factor, 2.0);
/// ```
#[must_use]
pub fn measured(readings: &[f64], instrument: &Instrument) -> Option<Measured> {
    let count = readings.len();
    let first = *readings.first()?;
    // Taken from the first reading: equal readings then have that mean to the bit.
    let mean = first + readings.iter().map(|reading| reading - first).sum::<f64>() / number(count);
    let deviation = (count > 1).then(|| {
        let squares: f64 = readings.iter().map(|reading| (reading - mean) * (reading - mean)).sum();
        libm::sqrt(squares / number(count - 1))
    });
    let repeats = deviation.map(|deviation| repeats(deviation, count));
    let parts = repeats.into_iter().chain(instrument.parts()).collect();
    Some(combine(mean - instrument.zero_error.unwrap_or(0.0), count, deviation, parts, 1).covered())
}

/// The difference of two sides, `left` − `right`, or of two planes of a place: what each may be off by counts in full, as if
/// they were independent.
#[must_use]
pub fn difference(left: &Measured, right: &Measured) -> Measured {
    let parts = left.parts.iter().chain(&right.parts).copied().collect();
    combine(left.value - right.value, left.count.min(right.count), None, parts, left.sides + right.sides).covered()
}

impl Instrument {
    fn parts(&self) -> impl Iterator<Item = UncertaintyPart> {
        let step = self.resolution.map(|resolution| resolution / libm::sqrt(12.0));
        let known = |from, standard| UncertaintyPart { from, standard, freedom: None };
        [
            step.map(|standard| known(Source::Resolution, standard)),
            self.stated.map(|stated| known(Source::Stated, stated / self.factor)),
            self.zero_error.and(step).map(|standard| known(Source::Zero, standard)),
        ]
        .into_iter()
        .flatten()
    }
}

fn repeats(deviation: f64, count: usize) -> UncertaintyPart {
    let standard = deviation / libm::sqrt(number(count));
    UncertaintyPart { from: Source::Repeats, standard, freedom: Some(number(count - 1)) }
}

/// A standard uncertainty with its degrees of freedom.
#[derive(Clone, Copy)]
struct Width {
    standard: f64,
    freedom: f64,
}

impl Width {
    /// The root of the sum of squares; degrees of freedom by Welch and Satterthwaite (GUM G.4.1, formula G.2b).
    fn of<'a>(parts: impl Iterator<Item = &'a UncertaintyPart>) -> Self {
        let (mut variance, mut weighed) = (0.0, 0.0);
        for part in parts {
            let square = part.standard * part.standard;
            variance += square;
            weighed += part.freedom.map_or(0.0, |freedom| square * square / freedom);
        }
        let freedom = if weighed > 0.0 { variance * variance / weighed } else { f64::INFINITY };
        Self { standard: libm::sqrt(variance), freedom }
    }
}

/// Combined, but not yet covered: its expanded uncertainty is worked out last, and only where it is asked for.
fn combine(value: f64, count: usize, deviation: Option<f64>, parts: Vec<UncertaintyPart>, sides: usize) -> Measured {
    let Width { standard: combined, freedom } = Width::of(parts.iter());
    let freedom = freedom.is_finite().then_some(freedom);
    Measured { value, count, deviation, parts, combined, freedom, factor: 2.0, expanded: 0.0, sides }
}

impl Measured {
    /// Whether anything is known of the instrument: without it nothing can be proved, however well repeats agree.
    #[must_use]
    pub fn is_known(&self) -> bool {
        self.parts.iter().any(|part| part.from != Source::Repeats)
    }

    /// The chance that what was measured lies more than `distance` above (or below) the reading, for a distance of nothing
    /// or more: Student's t about the reading, scaled by the combined uncertainty.
    ///
    /// With few repeats the effective degrees of freedom grow faster than the uncertainty when a part is added, so that a
    /// worse instrument could seem to measure better. So nothing counts for less than the repeats alone would.
    #[must_use]
    pub fn beyond(&self, distance: f64) -> f64 {
        let of = |width: Width| match width.standard > 0.0 {
            true => tail(distance / width.standard, width.freedom),
            false => 0.0,
        };
        self.widths().map(of).into_iter().fold(0.0, f64::max)
    }

    /// The distance from the reading beyond which, on one side, lies the share `beyond`: the inverse of [`Self::beyond`].
    #[must_use]
    pub fn within(&self, beyond: f64) -> f64 {
        let of = |width: Width| match (width.standard > 0.0, width.freedom.is_infinite()) {
            (false, _) => 0.0,
            (true, true) if beyond == BEYOND_TWO => 2.0 * width.standard,
            (true, _) => above(beyond, width.freedom) * width.standard,
        };
        self.widths().map(of).into_iter().fold(0.0, f64::max)
    }

    /// The expanded uncertainty, for 95.45 %.
    pub(super) fn interval(&self) -> f64 {
        self.within(BEYOND_TWO)
    }

    fn covered(self) -> Self {
        let expanded = self.interval();
        let factor = if self.combined > 0.0 { expanded / self.combined } else { 2.0 };
        Self { factor, expanded, ..self }
    }

    /// The same mean and scatter with so many repeats on each side that has fewer; nothing where the scatter is not known.
    #[must_use]
    pub fn repeated(&self, count: usize) -> Option<Self> {
        self.if_repeated(count).map(Self::covered)
    }

    /// The same mean and scatter with an instrument whose every part is this share of the one at hand.
    #[must_use]
    pub fn finer(&self, share: f64) -> Self {
        self.if_finer(share).covered()
    }

    /// The same mean and scatter with another instrument, on each side.
    #[must_use]
    pub fn with(&self, instrument: &Instrument) -> Self {
        self.if_with(instrument).covered()
    }

    pub(super) fn if_repeated(&self, count: usize) -> Option<Self> {
        let mut parts = self.parts.clone();
        let mut known = 0;
        for part in &mut parts {
            let Some(freedom) = part.freedom else { continue };
            let (before, after) = (freedom + 1.0, number(count).max(freedom + 1.0));
            part.standard *= libm::sqrt(before / after);
            part.freedom = Some(after - 1.0);
            known += 1;
        }
        (known == self.sides).then(|| combine(self.value, self.count.max(count), self.deviation, parts, self.sides))
    }

    pub(super) fn if_finer(&self, share: f64) -> Self {
        let mut parts = self.parts.clone();
        for part in parts.iter_mut().filter(|part| part.from != Source::Repeats) {
            part.standard *= share;
        }
        combine(self.value, self.count, self.deviation, parts, self.sides)
    }

    pub(super) fn if_with(&self, instrument: &Instrument) -> Self {
        let kept = self.parts.iter().copied().filter(|part| part.from == Source::Repeats);
        let parts = kept.chain((0..self.sides).flat_map(|_| instrument.parts())).collect();
        combine(self.value, self.count, self.deviation, parts, self.sides)
    }

    fn widths(&self) -> [Width; 2] {
        [
            Width { standard: self.combined, freedom: self.freedom.unwrap_or(f64::INFINITY) },
            Width::of(self.parts.iter().filter(|part| part.from == Source::Repeats)),
        ]
    }
}

#[expect(clippy::cast_precision_loss, reason = "a count of readings")]
fn number(count: usize) -> f64 {
    count as f64
}
