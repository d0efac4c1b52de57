use super::figures;
use crate::record::stored_enum;

/// The longest list that is looked at, in bytes.
const LONGEST: usize = 400;
/// The most gears.
const MOST_GEARS: usize = 20;

stored_enum! {
    /// Why a list of gear ratios cannot be read.
    pub enum RatiosUnread {
        /// Nothing was typed.
        Empty = "empty",
        /// Something in it is no ratio between 0.2 and 20.
        NotARatio = "not-a-ratio",
        /// Commas could be decimal points, or stand between gears.
        Commas = "commas",
        /// They neither fall nor rise throughout: which gear is which would be a guess.
        Order = "order",
        /// More than 20.
        TooMany = "too-many",
    }
}

/// The ratios of the gears, first gear first, from what a person typed: `3.33, 2.05, 1.37, 1.00`, `3,33 2,05 1,37 1`,
/// `1.00/1.37/2.05/3.33`, `3.33:1; 2.05:1`. Listed top first, as books do, they are turned round. Each is between 0.2 and 20.
///
/// ```
/// use asfound_core::gearing::{RatiosUnread, read_ratios};
/// assert_eq!(read_ratios("1.00, 1.37, 2.05, 3.33"), Ok(vec![3.33, 2.05, 1.37, 1.0]));
/// assert_eq!(read_ratios("3,33 2,05 1"), Ok(vec![3.33, 2.05, 1.0]));
/// assert_eq!(read_ratios("3,33,2,05"), Err(RatiosUnread::Commas));
/// ```
///
/// # Errors
///
/// Why it cannot be read. Nothing is guessed: reverse is left out, and a gap in the order is told.
pub fn read_ratios(text: &str) -> Result<Vec<f64>, RatiosUnread> {
    if text.len() > LONGEST {
        return Err(RatiosUnread::TooMany);
    }
    let text = with_points(text.trim())?;
    let items = text.split(|letter: char| letter.is_whitespace() || matches!(letter, ',' | ';' | '/' | '|' | '·'));
    let items: Vec<&str> = items.filter(|item| !item.is_empty()).collect();
    if items.is_empty() {
        return Err(RatiosUnread::Empty);
    }
    if items.len() > MOST_GEARS {
        return Err(RatiosUnread::TooMany);
    }
    let ratios: Option<Vec<f64>> = items.into_iter().map(ratio).collect();
    let mut ratios = ratios.ok_or(RatiosUnread::NotARatio)?;
    if ratios.windows(2).all(|pair| pair[0] < pair[1]) {
        ratios.reverse();
    }
    let falls = ratios.windows(2).all(|pair| pair[0] > pair[1]);
    if falls { Ok(ratios) } else { Err(RatiosUnread::Order) }
}

/// Decimal commas as points, where it is plain that they are that.
fn with_points(text: &str) -> Result<String, RatiosUnread> {
    let within = |word: &str| {
        let between = |pair: &[char]| pair[0].is_ascii_digit() && pair[1] == ',' && pair[2].is_ascii_digit();
        word.chars().collect::<Vec<_>>().windows(3).filter(|three| between(three)).count()
    };
    if text.contains('.') {
        return Ok(text.to_owned());
    }
    match text.split(|letter: char| letter.is_whitespace() || matches!(letter, ';' | '/' | '|')).map(within).max() {
        None | Some(0) => Ok(text.to_owned()),
        // A comma at the end of a word stands between gears; one within it is a point.
        Some(1) => Ok(text
            .split_whitespace()
            .map(|word| word.trim_end_matches(',').replace(',', "."))
            .collect::<Vec<_>>()
            .join(" ")),
        Some(_) => Err(RatiosUnread::Commas),
    }
}

/// `3.33`, `3.33:1`.
fn ratio(item: &str) -> Option<f64> {
    figures(item.strip_suffix(":1").unwrap_or(item)).filter(|ratio| (0.2..=20.0).contains(ratio))
}

#[cfg(test)]
mod tests {
    use super::{RatiosUnread::*, read_ratios};

    #[test]
    fn every_accepted_form() {
        let four = [3.33, 2.05, 1.37, 1.0];
        for text in [
            "3.33, 2.05, 1.37, 1.00",
            "3.33,2.05,1.37,1",
            " 3.33 2.05  1.37 1. ",
            "3.33/2.05/1.37/1.00",
            "3.33:1; 2.05:1; 1.37:1; 1:1",
            "1.00 1.37 2.05 3.33",
            "3,33 2,05 1,37 1",
            "3,33; 2,05; 1,37; 1,0",
            "3,33, 2,05, 1,37, 1",
            "3.33\n2.05\n1.37\n1",
        ] {
            assert_eq!(read_ratios(text).as_deref(), Ok(&four[..]), "{text}");
        }
        assert_eq!(read_ratios("3, 2, 1"), Ok(vec![3.0, 2.0, 1.0]));
        assert_eq!(read_ratios("1"), Ok(vec![1.0]));
        assert_eq!(read_ratios(".82"), Ok(vec![0.82]));
    }

    #[test]
    fn what_is_refused() {
        for (text, why) in [
            ("", Empty),
            (" , ;", Empty),
            ("first 3.33", NotARatio),
            ("3.33, -2", NotARatio),
            ("3.33, 0.1", NotARatio),
            ("3.33, 25", NotARatio),
            ("3.33:2", NotARatio),
            ("1e0", NotARatio),
            ("inf", NotARatio),
            ("NaN", NotARatio),
            ("3.3.3", NotARatio),
            ("3,33,2,05", Commas),
            ("3.33, 1.37, 2.05", Order),
            ("3.33, 2.05, 2.05", Order),
            ("3.33, 2.05, 3.83", Order),
            ("9.9 9.8 9.7 9.6 9.5 9.4 9.3 9.2 9.1 9 8.9 8.8 8.7 8.6 8.5 8.4 8.3 8.2 8.1 8 7", TooMany),
        ] {
            assert_eq!(read_ratios(text), Err(why), "{text}");
        }
        assert_eq!(read_ratios(&"1 ".repeat(4_000)), Err(TooMany));
        assert_eq!(read_ratios("3,33 ж"), Err(NotARatio));
    }
}
