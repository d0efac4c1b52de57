use serde::{Deserialize, Serialize};

use crate::quantity::{Length, Unit, bounds};

/// A shaft seal by its size.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Seal {
    /// The shaft it runs on.
    pub shaft: Length,
    /// The bore it sits in.
    pub bore: Length,
    /// How wide it is.
    pub width: Length,
    /// What follows, as it was written: kind, rubber, maker.
    pub not_read: String,
}

/// A seal named shaft × bore × width in millimetres (ISO 6194-1, DIN 3760, as quoted in a table of components): `25x40x7`.
/// Nothing where the three are not there, or the bore is no larger than the shaft.
///
/// ```
/// use asfound_core::quantity::Length;
/// let seal = asfound_core::tables::seal("25x40x7 TC").unwrap();
/// assert_eq!([seal.shaft, seal.bore, seal.width], [25, 40, 7].map(|size| Length(size * 1_000_000)));
/// assert_eq!(seal.not_read, "TC");
/// ```
#[must_use]
pub fn seal(written: &str) -> Option<Seal> {
    let (shaft, rest) = size(written)?;
    let (bore, rest) = size(times(rest)?)?;
    let (width, rest) = size(times(rest)?)?;
    (shaft < bore).then(|| Seal { shaft, bore, width, not_read: rest.trim_start_matches([' ', '-']).to_owned() })
}

/// The figures in front, and what follows them.
fn size(text: &str) -> Option<(Length, &str)> {
    let text = text.trim_start();
    let end = text.find(|letter: char| !matches!(letter, '0'..='9' | '.' | ',')).unwrap_or(text.len());
    let length = Length::read(&text[..end], Unit::Millimetre).ok()?;
    (0 < length.0 && length.0 <= bounds::READING.most).then(|| (length, text[end..].trim()))
}

fn times(text: &str) -> Option<&str> {
    text.strip_prefix(['x', 'X', '×', '*', '-', '/'])
}
