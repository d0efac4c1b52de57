//! The code on a printed tag: the number in at least four figures, and a check character after it.
//!
//! The check character is ISO/IEC 7064 MOD 11-2 (0–9 or X). It catches any one wrong character and any two that were
//! swapped, neighbours or not: each figure counts with a power of two, and no two of the first ten powers are the same
//! modulo 11.

use std::fmt;

use serde::{Deserialize, Serialize};

use super::find::tag_text;
use crate::quantity::bounds;

/// The most figures of a number, and the fewest with which it is written.
const MOST_FIGURES: usize = 7;
const FEWEST_FIGURES: usize = 4;

/// The code of one tag number; parts and places draw from the same numbers.
///
/// ```
/// use asfound_core::job::TagCode;
/// let code = TagCode::new(79).unwrap();
/// assert_eq!(code.to_string(), "0079-X");
/// assert_eq!(code.bare(), "0079X");
/// assert_eq!(TagCode::new(0), None);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct TagCode(i64);

/// What came of reading a code.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "read", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum TagRead {
    /// A complete code, and its check character is right.
    Code {
        /// The number.
        number: i64,
    },
    /// Figures without anything between them that are right as a code, and are a number as well. Whoever asked takes the code,
    /// unless something carries the other number: then the person is asked.
    Either {
        /// The number when it is read as a code.
        number: i64,
        /// The number when all figures belong to it.
        other: i64,
    },
    /// A number without a check character: to be confirmed by the person, for a slip is not noticed.
    Number {
        /// The number.
        number: i64,
    },
    /// It looks like a code, but the check character is another: something was misread or mistyped.
    WrongCheck,
    /// No code of ours.
    NotOurs,
}

impl TagCode {
    /// The code of a tag number; nothing when no tag can carry the number.
    #[must_use]
    pub const fn new(number: i64) -> Option<Self> {
        if bounds::TAG.holds(number) { Some(Self(number)) } else { None }
    }

    /// The number.
    #[must_use]
    pub const fn number(self) -> i64 {
        self.0
    }

    /// The number as it is written: `0147`.
    #[must_use]
    pub fn figures(self) -> String {
        tag_text(self.0)
    }

    /// The check character.
    #[must_use]
    pub fn check(self) -> char {
        check_character(&self.figures()).unwrap_or('0')
    }

    /// Figures and check character with nothing between them: what the QR holds.
    #[must_use]
    pub fn bare(self) -> String {
        format!("{}{}", self.figures(), self.check())
    }

    /// Reads what stood in a QR: exactly what is printed there, and nothing else.
    ///
    /// ```
    /// use asfound_core::job::{TagCode, TagRead};
    /// assert_eq!(TagCode::scanned("0079X"), TagRead::Code { number: 79 });
    /// assert_eq!(TagCode::scanned("0097X"), TagRead::WrongCheck);
    /// assert_eq!(TagCode::scanned("79X"), TagRead::NotOurs);
    /// assert_eq!(TagCode::scanned("https://0079X"), TagRead::NotOurs);
    /// ```
    #[must_use]
    pub fn scanned(text: &str) -> TagRead {
        let Some((figures, check)) = parted(text) else { return TagRead::NotOurs };
        match number_of(figures) {
            Some(number) if figures == tag_text(number) => checked(figures, check, number),
            _ => TagRead::NotOurs,
        }
    }

    /// Reads what a person typed: spaces and hyphens, a small x and leading zeros make no difference.
    ///
    /// One character apart from the rest is the check character. Without that, and without an X, four figures or fewer are a
    /// number, as it stands large on the tag; five or more are a code.
    ///
    /// ```
    /// use asfound_core::job::{TagCode, TagRead};
    /// for typed in ["0079-X", "0079x", "79 x", "79-X", " 00079 X"] {
    ///     assert_eq!(TagCode::typed(typed), TagRead::Code { number: 79 }, "{typed}");
    /// }
    /// assert_eq!(TagCode::typed("0097-X"), TagRead::WrongCheck);
    /// assert_eq!(TagCode::typed("147"), TagRead::Number { number: 147 });
    /// assert_eq!(TagCode::typed("0147"), TagRead::Number { number: 147 });
    /// assert_eq!(TagCode::typed("1479-0"), TagRead::WrongCheck);
    /// assert_eq!(TagCode::typed("hub"), TagRead::NotOurs);
    /// ```
    #[must_use]
    pub fn typed(text: &str) -> TagRead {
        let bare: String = text.chars().filter(|letter| !is_between(*letter)).map(|x| x.to_ascii_uppercase()).collect();
        let Some((figures, check)) = parted(&bare) else { return alone(&bare) };
        let is_apart = text.trim_end_matches(is_between).chars().rev().nth(1).is_some_and(is_between);
        if !is_apart && check != 'X' && bare.len() <= FEWEST_FIGURES {
            return alone(&bare);
        }
        let Some(number) = number_of(figures) else { return TagRead::NotOurs };
        match (checked(figures, check, number), number_of(&bare)) {
            (TagRead::Code { number }, Some(other)) if !is_apart && !bare.starts_with('0') => {
                TagRead::Either { number, other }
            }
            (read, _) => read,
        }
    }
}

impl fmt::Display for TagCode {
    /// As people read it: `0147-X` style.
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{}-{}", self.figures(), self.check())
    }
}

/// The check character after figures by ISO/IEC 7064 MOD 11-2; nothing when they are none.
///
/// ```
/// use asfound_core::job::check_character;
/// assert_eq!(check_character("079"), Some('X'));
/// assert_eq!(check_character("0794"), Some('0'));
/// assert_eq!(check_character(""), None);
/// assert_eq!(check_character("07X"), None);
/// ```
#[must_use]
pub fn check_character(figures: &str) -> Option<char> {
    if figures.is_empty() {
        return None;
    }
    let sum = figures.chars().try_fold(0, |sum, figure| Some((sum + figure.to_digit(10)?) * 2 % 11))?;
    match (12 - sum) % 11 {
        10 => Some('X'),
        check => char::from_digit(check, 10),
    }
}

/// Spaces and all that is drawn as a hyphen.
fn is_between(letter: char) -> bool {
    letter.is_whitespace() || matches!(letter, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

/// Figures and the check character behind them.
fn parted(bare: &str) -> Option<(&str, char)> {
    let check = bare.chars().next_back().filter(|check| check.is_ascii_digit() || *check == 'X')?;
    let figures = &bare[..bare.len() - 1];
    (!figures.is_empty() && figures.bytes().all(|figure| figure.is_ascii_digit())).then_some((figures, check))
}

fn alone(bare: &str) -> TagRead {
    number_of(bare).map_or(TagRead::NotOurs, |number| TagRead::Number { number })
}

/// The number that figures write, when a tag can carry it.
fn number_of(figures: &str) -> Option<i64> {
    let all = figures.bytes().all(|figure| figure.is_ascii_digit());
    let number = figures.trim_start_matches('0');
    (all && number.len() <= MOST_FIGURES)
        .then(|| number.parse().ok())
        .flatten()
        .filter(|number| bounds::TAG.holds(*number))
}

fn checked(figures: &str, check: char, number: i64) -> TagRead {
    if check_character(figures) == Some(check) { TagRead::Code { number } } else { TagRead::WrongCheck }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_that_may_be_both_are_told() {
        // By hand: (((1·2+2)·2+3)·2+4)·2 = 52, which is 8 modulo 11, and 12 − 8 = 4.
        assert_eq!(check_character("1234"), Some('4'));
        assert_eq!(TagCode::typed("12344"), TagRead::Either { number: 1234, other: 12344 });
        assert_eq!(TagCode::typed("1234-4"), TagRead::Code { number: 1234 });
        assert_eq!(TagCode::typed("1234 4 "), TagRead::Code { number: 1234 });
        assert_eq!(TagCode::typed("12345"), TagRead::WrongCheck);
        assert_eq!(TagCode::scanned("12344"), TagRead::Code { number: 1234 });
    }

    #[test]
    fn what_is_no_code_is_told() {
        for text in ["", " ", "-", "X", "0", "0000-1", "12x4", "ABCX", "1234567890", "-5X-3", "٣٤٥", "99999999-0"] {
            assert_eq!(TagCode::typed(text), TagRead::NotOurs, "{text}");
        }
        for text in ["", "X", "0", "0147", "00147X", "0000X1", "014 7X", "0079x", "10000000X"] {
            assert_ne!(TagCode::scanned(text), TagRead::Code { number: 147 }, "{text}");
            assert!(!matches!(TagCode::scanned(text), TagRead::Code { .. }), "{text}");
        }
    }

    #[test]
    fn any_length_comes_back() {
        for number in [1, 9, 10, 999, 1_000, 9_999, 10_000, 123_456, 9_999_999] {
            let code = TagCode::new(number).unwrap();
            assert_eq!(TagCode::scanned(&code.bare()), TagRead::Code { number });
            assert_eq!(TagCode::typed(&code.to_string()), TagRead::Code { number });
        }
    }
}
