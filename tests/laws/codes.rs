//! The check character on a tag: whatever is wrong in one place, or swapped between two, is noticed.

use asfound_core::job::{TagCode, TagRead};
use proptest::prelude::*;

use crate::cases;

const CHARACTERS: &str = "0123456789X";

/// What both ways of reading say of a spoilt code: that it is none. `alike` is the number that it was made from.
fn is_noticed(spoilt: &str, alike: i64) -> Result<(), String> {
    for (way, read) in [("scanned", TagCode::scanned(spoilt)), ("typed", TagCode::typed(spoilt))] {
        if !matches!(read, TagRead::WrongCheck | TagRead::NotOurs) {
            return Err(format!("{spoilt}, made from {alike}, was {way} as {read:?}"));
        }
    }
    Ok(())
}

/// Every code that comes of one wrong character or of two swapped ones.
fn spoilt(code: &str) -> Vec<String> {
    let letters: Vec<char> = code.chars().collect();
    let mut all = Vec::new();
    for at in 0..letters.len() {
        for other in CHARACTERS.chars().filter(|other| *other != letters[at]) {
            let mut wrong = letters.clone();
            wrong[at] = other;
            all.push(wrong.into_iter().collect());
        }
        for with in at + 1..letters.len() {
            let mut swapped = letters.clone();
            swapped.swap(at, with);
            if swapped != letters {
                all.push(swapped.into_iter().collect());
            }
        }
    }
    all
}

/// Breaks when figures count with 1, 2, 1, 2 instead of with powers of two, or when a check character of 10 is written 0.
#[test]
fn one_wrong_or_two_swapped_are_noticed_on_every_tag_of_four_figures() {
    let mut tried = 0;
    for number in 1..=9_999 {
        let code = TagCode::new(number).unwrap().bare();
        assert_eq!(TagCode::scanned(&code), TagRead::Code { number });
        for wrong in spoilt(&code) {
            is_noticed(&wrong, number).unwrap();
            tried += 1;
        }
    }
    assert!(tried > 500_000, "{tried}");
}

fn any_number() -> impl Strategy<Value = i64> {
    prop_oneof![10_000_i64..100_000, 100_000_i64..1_000_000, 1_000_000_i64..=9_999_999]
}

proptest! {
    #![proptest_config(cases(2_000))]

    /// The same for longer ones. Breaks when `scanned` or `typed` takes five figures without a right check character as a number.
    #[test]
    fn one_wrong_or_two_swapped_are_noticed_on_longer_tags(number in any_number()) {
        let code = TagCode::new(number).unwrap().bare();
        for wrong in spoilt(&code) {
            prop_assert_eq!(is_noticed(&wrong, number), Ok(()));
        }
    }

    /// However a code is typed, its number comes back. Breaks when a small x is not an X, or zeros in front count.
    #[test]
    fn a_code_is_read_however_it_is_typed(
        number in prop_oneof![1_i64..10_000, any_number()], short: bool, small: bool,
        between in proptest::sample::select(vec!["-", " ", " - ", "\u{2013}", "\u{a0}"]), around in "[ \t-]{0,2}",
    ) {
        let code = TagCode::new(number).unwrap();
        let figures = if short { number.to_string() } else { code.figures() };
        let check = if small { code.check().to_ascii_lowercase() } else { code.check() };
        let read = TagCode::typed(&format!("{around}{figures}{between}{check}{around}"));
        prop_assert_eq!(read, TagRead::Code { number });
    }

    /// A number alone is never taken as a code without a word about it. Breaks when a right check character alone makes a code.
    #[test]
    fn a_number_alone_is_told_apart(number in prop_oneof![1_i64..10_000, any_number()]) {
        match TagCode::typed(&number.to_string()) {
            TagRead::Number { number: read } => prop_assert_eq!(read, number),
            TagRead::Either { other, .. } => prop_assert_eq!(other, number),
            TagRead::WrongCheck => prop_assert!(number > 9_999),
            read => prop_assert!(false, "{:?}", read),
        }
    }

    /// Whatever is held before the camera or typed is answered. Breaks when letters are cut by bytes.
    #[test]
    fn anything_is_answered(text in ".{0,12}") {
        let _ = (TagCode::scanned(&text), TagCode::typed(&text));
    }
}
