//! What would settle a reading that proves nothing.

use serde::{Deserialize, Serialize};

use super::proof::{Bounds, Proved, Rule, verdict};
use super::uncertainty::{Instrument, Measured};
use crate::tables::UsualInstrument;

/// What would settle it, should mean and scatter stay as they are.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Settling {
    /// So many repeats in all, 30 at most; left out where the instrument is too coarse for that to help, or where one reading
    /// alone does not tell the scatter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub repeats: Option<usize>,
    /// An instrument whose resolution and stated uncertainty are at most this share of those at hand (0 to 1); left out
    /// where the scatter alone is too much, or nothing is known of the instrument.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub share: Option<f64>,
    /// Usual instruments that would, coarsest first, where a length is measured; whether one reaches the place is for the user to know.
    pub instruments: Vec<UsualInstrument>,
}

impl Settling {
    /// Without instruments: those that are usual measure lengths.
    #[must_use]
    pub fn of_no_length(self) -> Self {
        Self { instruments: Vec::new(), ..self }
    }
}

/// The most repeats that anybody is asked for.
const MOST_REPEATS: usize = 30;

/// What would settle a reading that proves nothing; nothing where it is settled, or nothing is limited.
///
/// ```
/// use asfound_core::inspect::{Bounds, Instrument, Rule, measured, settling};
/// let rule = Instrument { resolution: Some(500_000.0), ..Instrument::default() };
/// let place = measured(&[20_100_000.0], &rule).unwrap();
/// let settling = settling(&place, &Bounds::at_least(20_000_000.0), Rule::OneSided2017).unwrap();
/// assert_eq!(settling.repeats, None);
/// assert!((settling.share.unwrap() - 0.42).abs() < 0.01);
/// assert!(!settling.instruments.is_empty());
/// ```
#[must_use]
pub fn settling(measured: &Measured, bounds: &Bounds, rule: Rule) -> Option<Settling> {
    let settles = |measured: &Measured| measured.is_known() && verdict(measured, bounds, rule) != Proved::Nothing;
    if bounds.is_open() || settles(measured) {
        return None;
    }
    let repeats =
        (measured.count + 1..=MOST_REPEATS).find(|count| measured.if_repeated(*count).is_some_and(|all| settles(&all)));
    let share = measured.is_known().then(|| largest_share(|share| settles(&measured.if_finer(share)))).flatten();
    let would = |usual: &UsualInstrument| settles(&measured.if_with(&Instrument::from(*usual)));
    let instruments = UsualInstrument::ALL.iter().copied().filter(would).collect();
    Some(Settling { repeats, share, instruments })
}

/// By halving: what settles with a share settles with a smaller one.
fn largest_share(settles: impl Fn(f64) -> bool) -> Option<f64> {
    let (mut low, mut high) = (0.0, 1.0);
    if !settles(low) {
        return None;
    }
    for _ in 0..20 {
        let middle = 0.5 * (low + high);
        if settles(middle) { low = middle } else { high = middle }
    }
    Some(low).filter(|share| *share > 0.0)
}

impl From<UsualInstrument> for Instrument {
    fn from(usual: UsualInstrument) -> Self {
        #[expect(clippy::cast_precision_loss, reason = "below a millimetre")]
        let nanometres = |length: crate::quantity::Length| length.nanometres() as f64;
        Self {
            resolution: Some(nanometres(usual.resolution())),
            stated: usual.stated().map(nanometres),
            ..Self::default()
        }
    }
}
