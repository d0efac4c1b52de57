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
/// Nothing where the three are not there, or the bore is no larger than the shaft; nor where they may be inches: the sign
/// between them changes, as in fractions, or an inch follows.
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
    let (sign, rest) = times(rest)?;
    let (bore, rest) = size(rest)?;
    let (again, rest) = times(rest)?;
    let (width, rest) = size(rest)?;
    let is_metric = sign == again && !is_inch(rest);
    (shaft < bore && is_metric).then(|| Seal {
        shaft,
        bore,
        width,
        not_read: rest.trim_start_matches([' ', '-']).to_owned(),
    })
}

/// The figures in front, and what follows them.
fn size(text: &str) -> Option<(Length, &str)> {
    let text = text.trim_start();
    let end = text.find(|letter: char| !matches!(letter, '0'..='9' | '.' | ',')).unwrap_or(text.len());
    let length = Length::read(&text[..end], Unit::Millimetre).ok()?;
    (0 < length.0 && length.0 <= bounds::READING.most).then(|| (length, text[end..].trim()))
}

/// The sign between two sizes, and what follows it.
fn times(text: &str) -> Option<(char, &str)> {
    let sign = text.chars().next().filter(|sign| matches!(sign, 'x' | 'X' | '×' | '*' | '-' | '/'))?;
    Some((sign.to_ascii_lowercase(), &text[sign.len_utf8()..]))
}

fn is_inch(rest: &str) -> bool {
    let word = rest.split(|letter: char| letter.is_whitespace() || letter == '.').next().unwrap_or_default();
    matches!(word.to_lowercase().as_str(), "in" | "inch" | "inches" | "\"" | "″" | "''")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_may_be_inches_is_not_read_as_millimetres() {
        for text in ["1/2x3/4x1/4", "1-1/4x2x3", "1x2x0.5 in", "1x2x0.5in.", "1x2x.5\"", "1 x 2 x 0.5 inch TC", "1-2/3"]
        {
            assert_eq!(seal(text), None, "{text}");
        }
        for text in ["25x40x7", "25X40x7 mm", "25×40×7", "25*40*7", "25-40-7 TC", "25/40/7", "25 x 40 x 7/10"] {
            assert!(seal(text).is_some(), "{text}");
        }
    }
}
