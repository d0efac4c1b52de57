//! Reading a measure as people type it: exact, generous, and never by guessing between two meanings.

use serde::{Deserialize, Serialize};

use super::{Dimension, Unit, bounds};

/// What was typed: how much, and the unit that was meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Typed {
    /// In base units: nanometres, millinewtons, micronewton-metres, or a count.
    pub amount: i64,
    /// The unit it was typed in, to show it in again.
    pub unit: Unit,
}

/// Why something typed is not a measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Unreadable {
    /// Nothing was typed.
    Empty,
    /// It is not one number, or one whole number with one fraction.
    NotANumber,
    /// A fraction over nothing, or beside a whole number one that is itself a whole or more.
    Fraction,
    /// A unit that is not known.
    UnknownUnit,
    /// A word that means different units to different people: a mil is a thou to some and a millimetre to others.
    AmbiguousUnit,
    /// A unit of something else: newtons where a length is measured.
    OtherDimension,
    /// A comma before three figures, where thousands may be meant.
    ThousandsOrDecimals,
    /// A count that is not whole.
    NotWhole,
    /// More figures than any instrument shows.
    TooManyFigures,
    /// Beyond what is accepted ([`bounds::READING`]).
    OutOfBounds,
}

impl Unreadable {
    /// All of them, in order of declaration.
    pub const ALL: &'static [Self] = &[
        Self::Empty,
        Self::NotANumber,
        Self::Fraction,
        Self::UnknownUnit,
        Self::AmbiguousUnit,
        Self::OtherDimension,
        Self::ThousandsOrDecimals,
        Self::NotWhole,
        Self::TooManyFigures,
        Self::OutOfBounds,
    ];
}

/// The longest text that is looked at, in bytes.
const LONGEST: usize = 64;
/// The most figures of a number; of each number in a fraction, half as many.
const MOST_FIGURES: usize = 18;

/// Reads a measure of the dimension of `default`, the unit of figures that have none.
///
/// - `31.76`, `31,76`, `.5`: a comma is a decimal point. Thousands are never set apart; where a force or a count has a comma
///   before three figures it is refused.
/// - `5/16`, `1 1/4`, `1-1/4`, `1¼`, `5/64ths`, `5 64ths`: a length given as a fraction is in inches, whatever the default,
///   unless a unit follows.
/// - `Nm`, `lbf ft`, `ft.lb`, `lb in`, `kgf m`: a torque.
/// - `mm`, `cm`, `µm`, `um`, `micron`, `in`, `inch`, `"`, `thou`; `N`, `kN`, `lbf`, `lb`, `kgf`, `kg`: with or without a
///   space, in capitals or not.
/// - A sign before it.
///
/// The arithmetic is in whole numbers; what is finer than a base unit is rounded to the nearest, halves away from nothing.
///
/// ```
/// use asfound_core::quantity::{Typed, Unit, Unreadable, read};
/// assert_eq!(read("1.2505\"", Unit::Millimetre), Ok(Typed { amount: 31_762_700, unit: Unit::Inch }));
/// assert_eq!(read("31,76", Unit::Millimetre), Ok(Typed { amount: 31_760_000, unit: Unit::Millimetre }));
/// assert_eq!(read("1..2", Unit::Millimetre), Err(Unreadable::NotANumber));
/// ```
///
/// # Errors
///
/// Why it cannot be read; the accepted forms are words of the page.
pub fn read(text: &str, default: Unit) -> Result<Typed, Unreadable> {
    let text = plain(text.trim())?;
    let (is_negative, rest) = sign(text.trim());
    let end = rest.find(|letter| !matches!(letter, '0'..='9' | '.' | ',' | '/' | '-' | ' ')).unwrap_or(rest.len());
    let (figures, word) = (rest[..end].trim(), rest[end..].trim().trim_end_matches('.'));
    if figures.is_empty() {
        return Err(if text.trim().is_empty() { Unreadable::Empty } else { Unreadable::NotANumber });
    }
    let figures = match word {
        "ths" | "th" | "nds" | "nd" => &parted(figures)?,
        _ => figures,
    };
    let unit = unit_of(word, figures.contains('/'), default)?;
    let (over, under) = number(figures, unit.dimension())?;
    let (whole, is_exact) = unit.whole(over, under);
    if unit == Unit::One && !is_exact {
        return Err(Unreadable::NotWhole);
    }
    let amount = i64::try_from(if is_negative { -whole } else { whole }).map_err(|_| Unreadable::OutOfBounds)?;
    // Nothing is tightened by less than nothing.
    let bound = if unit.dimension() == Dimension::Torque { bounds::TORQUE } else { bounds::READING };
    if bound.holds(amount) { Ok(Typed { amount, unit }) } else { Err(Unreadable::OutOfBounds) }
}

/// Small letters, plain marks: what keyboards and papers put in their place is put back.
fn plain(text: &str) -> Result<String, Unreadable> {
    if text.len() > LONGEST {
        let has_figures = text.contains(|letter: char| letter.is_ascii_digit());
        return Err(if has_figures { Unreadable::TooManyFigures } else { Unreadable::NotANumber });
    }
    let mut out = String::with_capacity(text.len());
    // A fraction in one letter stands apart from the figures on either side: what follows it is no part of it.
    for letter in text.chars() {
        match letter {
            '−' | '–' | '‐' | '‑' => out.push('-'),
            '⁄' | '∕' => out.push('/'),
            'µ' | 'μ' => out.push('u'),
            '″' | '”' | '“' => out.push('"'),
            '½' => out.push_str(" 1/2 "),
            '¼' => out.push_str(" 1/4 "),
            '¾' => out.push_str(" 3/4 "),
            '⅛' => out.push_str(" 1/8 "),
            '⅜' => out.push_str(" 3/8 "),
            '⅝' => out.push_str(" 5/8 "),
            '⅞' => out.push_str(" 7/8 "),
            letter if letter.is_whitespace() => out.push(' '),
            letter => out.push(letter.to_ascii_lowercase()),
        }
    }
    Ok(out)
}

fn sign(text: &str) -> (bool, &str) {
    match text.strip_prefix('-') {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text.strip_prefix('+').unwrap_or(text).trim_start()),
    }
}

/// `5 64` of `5 64ths` as `5/64`; `5/64` stays.
fn parted(figures: &str) -> Result<String, Unreadable> {
    if figures.contains('/') {
        return Ok(figures.to_owned());
    }
    let (over, under) = figures.rsplit_once(' ').ok_or(Unreadable::UnknownUnit)?;
    Ok(format!("{}/{under}", over.trim_end()))
}

fn unit_of(word: &str, is_fraction: bool, default: Unit) -> Result<Unit, Unreadable> {
    // `ft-lb`, `ft.lb`, `ft·lb` and `ft lb` are one, with an s or without.
    let plain = word.replace(['-', '.', '·', '⋅'], " ").replace("lbs", "lb");
    let unit = match plain.trim() {
        "" if is_fraction && default.dimension() == Dimension::Length => Unit::Inch,
        "" => default,
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => Unit::Millimetre,
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => Unit::Centimetre,
        "um" | "micron" | "microns" | "micrometre" | "micrometres" => Unit::Micrometre,
        "in" | "inch" | "inches" | "\"" | "''" | "ths" | "th" | "nds" | "nd" => Unit::Inch,
        "thou" | "thous" => Unit::Thou,
        "n" | "newton" | "newtons" => Unit::Newton,
        "kn" => Unit::Kilonewton,
        "lbf" | "lb" | "pound" | "pounds" => Unit::PoundForce,
        "kgf" | "kg" | "kp" => Unit::KilogramForce,
        // As it stands in manuals of all ages; "ft lb" and "lb ft" are one.
        "nm" | "n m" | "newton metre" | "newton metres" | "newton meter" | "newton meters" => Unit::NewtonMetre,
        "lbf ft" | "lb ft" | "lbft" | "ft lb" | "ft lbf" | "ftlb" | "ftlbf" | "foot pound" | "foot pounds"
        | "pound foot" | "pound feet" => Unit::PoundFoot,
        "lbf in" | "lb in" | "lbin" | "in lb" | "in lbf" | "inlb" | "inlbf" | "inch pound" | "inch pounds"
        | "pound inch" | "pound inches" => Unit::PoundInch,
        "kgf m" | "kgm" | "kg m" | "mkg" | "mkp" | "kpm" | "kp m" | "m kg" => Unit::KilogramMetre,
        "mil" | "mils" | "tenth" | "tenths" | "hundredth" | "hundredths" => return Err(Unreadable::AmbiguousUnit),
        _ => return Err(Unreadable::UnknownUnit),
    };
    if unit.dimension() == default.dimension() { Ok(unit) } else { Err(Unreadable::OtherDimension) }
}

/// The number as one fraction.
fn number(figures: &str, dimension: Dimension) -> Result<(i128, i128), Unreadable> {
    match figures.split_once('/') {
        Some((over, under)) => fraction(over.trim(), under.trim()),
        None => decimal(figures, dimension),
    }
}

fn decimal(figures: &str, dimension: Dimension) -> Result<(i128, i128), Unreadable> {
    let (whole, part) = figures.split_once(['.', ',']).unwrap_or((figures, ""));
    if figures.contains(',') && part.len() == 3 && !whole.is_empty() && dimension != Dimension::Length {
        return Err(Unreadable::ThousandsOrDecimals);
    }
    let tens = (0..part.len().min(MOST_FIGURES)).fold(1_i128, |tens, _| tens * 10);
    Ok((digits(&format!("{whole}{part}"), MOST_FIGURES)?, tens))
}

fn fraction(over: &str, under: &str) -> Result<(i128, i128), Unreadable> {
    let (whole, over) = match over.split_once('-') {
        Some((whole, over)) => (Some(whole), over),
        None => over.rsplit_once(' ').map_or((None, over), |(whole, over)| (Some(whole.trim_end()), over)),
    };
    let number = |figures| digits(figures, MOST_FIGURES / 2);
    let (whole, over, under) = (whole.map(number).transpose()?, number(over)?, number(under)?);
    if under == 0 || (whole.is_some() && over >= under) {
        return Err(Unreadable::Fraction);
    }
    Ok((whole.unwrap_or(0) * under + over, under))
}

/// Figures and nothing else.
fn digits(figures: &str, most: usize) -> Result<i128, Unreadable> {
    if figures.is_empty() || !figures.bytes().all(|byte| byte.is_ascii_digit()) {
        return Err(Unreadable::NotANumber);
    }
    if figures.len() > most {
        return Err(Unreadable::TooManyFigures);
    }
    Ok(figures.bytes().fold(0, |value, byte| value * 10 + i128::from(byte - b'0')))
}

#[cfg(test)]
mod tests {
    use super::*;

    const INCH: i64 = 25_400_000;

    #[test]
    fn every_accepted_form() {
        let metric = [
            ("31.76", 31_760_000, Unit::Millimetre),
            ("31,76", 31_760_000, Unit::Millimetre),
            ("20,012", 20_012_000, Unit::Millimetre),
            ("31.76 mm", 31_760_000, Unit::Millimetre),
            (" 31.76MM. ", 31_760_000, Unit::Millimetre),
            (".5", 500_000, Unit::Millimetre),
            ("5.", 5_000_000, Unit::Millimetre),
            ("+0.05mm", 50_000, Unit::Millimetre),
            ("3 cm", 30_000_000, Unit::Centimetre),
            ("12 µm", 12_000, Unit::Micrometre),
            ("12 um", 12_000, Unit::Micrometre),
            ("12 μm", 12_000, Unit::Micrometre),
            ("12 micron", 12_000, Unit::Micrometre),
            ("1.2505in", 31_762_700, Unit::Inch),
            ("1.2505\"", 31_762_700, Unit::Inch),
            ("1.2505″", 31_762_700, Unit::Inch),
            ("1.2505''", 31_762_700, Unit::Inch),
            ("1 1/4", 31_750_000, Unit::Inch),
            ("1-1/4 in", 31_750_000, Unit::Inch),
            ("1¼", 31_750_000, Unit::Inch),
            ("1 ¼ in", 31_750_000, Unit::Inch),
            ("-½\"", -12_700_000, Unit::Inch),
            ("¾mm", 750_000, Unit::Millimetre),
            ("5/16", 7_937_500, Unit::Inch),
            ("5 / 16", 7_937_500, Unit::Inch),
            ("5/4", 31_750_000, Unit::Inch),
            ("-1 1/2", -INCH * 3 / 2, Unit::Inch),
            ("5/64ths", 1_984_375, Unit::Inch),
            ("5 64ths", 1_984_375, Unit::Inch),
            ("1 5/64ths", INCH + 1_984_375, Unit::Inch),
            ("3 32nds", 2_381_250, Unit::Inch),
            ("1/2 mm", 500_000, Unit::Millimetre),
            ("-2 thou", -50_800, Unit::Thou),
            ("− 2 Thou", -50_800, Unit::Thou),
            ("1/3", 8_466_667, Unit::Inch),
            ("0.0000005", 1, Unit::Millimetre),
        ];
        for (text, amount, unit) in metric {
            assert_eq!(read(text, Unit::Millimetre), Ok(Typed { amount, unit }), "{text}");
        }
        let others = [
            ("1.2505", Unit::Inch, 31_762_700, Unit::Inch),
            ("31.76 mm", Unit::Inch, 31_760_000, Unit::Millimetre),
            ("250", Unit::Newton, 250_000, Unit::Newton),
            ("1.5 kN", Unit::Newton, 1_500_000, Unit::Kilonewton),
            ("100 lb", Unit::Newton, 444_822, Unit::PoundForce),
            ("1,5 kgf", Unit::PoundForce, 14_710, Unit::KilogramForce),
            ("1/2 lbf", Unit::Newton, 2_224, Unit::PoundForce),
            ("54", Unit::NewtonMetre, 54_000_000, Unit::NewtonMetre),
            ("54 N·m", Unit::PoundFoot, 54_000_000, Unit::NewtonMetre),
            ("40 lbf·ft", Unit::NewtonMetre, 54_232_718, Unit::PoundFoot),
            ("40 ft.lb", Unit::NewtonMetre, 54_232_718, Unit::PoundFoot),
            ("100 lb in", Unit::NewtonMetre, 11_298_483, Unit::PoundInch),
            ("5,5 kgf m", Unit::NewtonMetre, 53_936_575, Unit::KilogramMetre),
            ("42", Unit::One, 42, Unit::One),
            ("4/2", Unit::One, 2, Unit::One),
        ];
        for (text, default, amount, unit) in others {
            assert_eq!(read(text, default), Ok(Typed { amount, unit }), "{text}");
        }
    }

    #[test]
    fn what_is_refused() {
        use Unreadable::*;
        let refused = [
            ("", Empty),
            ("  ", Empty),
            ("-", NotANumber),
            ("abc", NotANumber),
            ("NaN", NotANumber),
            ("mm", NotANumber),
            ("1..2", NotANumber),
            ("1.2.3", NotANumber),
            ("1,234.5", NotANumber),
            ("1 250", NotANumber),
            ("--2", NotANumber),
            ("1.5/2", NotANumber),
            ("1/2/3", NotANumber),
            ("1 -1/4", NotANumber),
            ("/4", NotANumber),
            ("3½4", NotANumber),
            ("½0", NotANumber),
            ("½½", NotANumber),
            ("1/½", NotANumber),
            (".", NotANumber),
            ("1/0", Fraction),
            ("1 5/4", Fraction),
            ("1e3", UnknownUnit),
            ("12 furlong", UnknownUnit),
            ("5'", UnknownUnit),
            ("5ths", UnknownUnit),
            ("5 mil", AmbiguousUnit),
            ("2 tenths", AmbiguousUnit),
            ("5 N", OtherDimension),
            ("10.1 m", UnknownUnit),
            ("10001", OutOfBounds),
            ("1234567890123456789", TooManyFigures),
            ("1/1234567890", TooManyFigures),
        ];
        for (text, why) in refused {
            assert_eq!(read(text, Unit::Millimetre), Err(why), "{text}");
        }
        assert_eq!(read(&"9".repeat(400), Unit::Millimetre), Err(TooManyFigures));
        assert_eq!(read(&"ж".repeat(400), Unit::Millimetre), Err(NotANumber));
        assert_eq!(read("1,250", Unit::Newton), Err(ThousandsOrDecimals));
        assert_eq!(read("2.5", Unit::One), Err(NotWhole));
        assert_eq!(read("2 mm", Unit::One), Err(OtherDimension));
    }

    /// One pound of force times one foot is 1.3558179483314004 N·m, one inch of it a twelfth, one kilogram of force times one
    /// metre 9.80665 N·m (all exact by definition).
    #[test]
    fn a_tightening_figure_is_read_as_manuals_print_it() {
        let foot = [
            "40 lbf·ft",
            "40 lbf ft",
            "40 ft-lb",
            "40 ft-lbs",
            "40 ft.lb",
            "40 lb-ft",
            "40 lbs ft",
            "40 lbf-ft",
            "40 pound feet",
            "40 foot-pounds",
        ];
        for text in foot {
            assert_eq!(
                read(text, Unit::NewtonMetre).map(|typed| (typed.amount, typed.unit)),
                Ok((54_232_718, Unit::PoundFoot)),
                "{text}"
            );
        }
        for text in ["100 in-lb", "100 lbf·in", "100 in lbs", "100 lb-in", "100 inch pounds"] {
            assert_eq!(read(text, Unit::NewtonMetre).map(|typed| typed.amount), Ok(11_298_483), "{text}");
        }
        for text in ["54 N·m", "54 Nm", "54 N⋅m", "54 newton-metres", "54"] {
            assert_eq!(read(text, Unit::NewtonMetre).map(|typed| typed.amount), Ok(54_000_000), "{text}");
        }
        for text in ["5.5 kgf·m", "5,5 mkg", "5.5 kpm"] {
            assert_eq!(read(text, Unit::NewtonMetre).map(|typed| typed.amount), Ok(53_936_575), "{text}");
        }
        assert_eq!(read("-5", Unit::NewtonMetre), Err(Unreadable::OutOfBounds));
        assert_eq!(read("12000 Nm", Unit::NewtonMetre), Err(Unreadable::OutOfBounds));
    }
}
