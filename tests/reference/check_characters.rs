//! Check characters of ISO/IEC 7064 MOD 11-2.

use asfound_core::job::check_character;

/// Figures and their check character.
const ROWS: [(&str, char, &str); 6] = [
    ("079", 'X', "example of ISO/IEC 7064, as several libraries quote it; from memory"),
    ("0794", '0', "the same"),
    ("000000021825009", '7', "an identifier of researchers printed as an example: 0000-0002-1825-0097; from memory"),
    ("000000021694233", 'X', "another: 0000-0002-1694-233X; from memory"),
    ("1234", '4', "by hand: (((1·2+2)·2+3)·2+4)·2 = 52 = 8 modulo 11; 12 − 8"),
    ("0147", '7', "by hand: ((1·2+4)·2+7)·2 = 38 = 5 modulo 11; 12 − 5 = 7"),
];

#[test]
fn check_characters_are_those_that_are_printed() {
    for (figures, check, source) in ROWS {
        assert_eq!(check_character(figures), Some(check), "{figures}: {source}");
    }
}
