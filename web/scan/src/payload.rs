use asfound_core::job::{TagCode, TagRead};

use crate::modules::Reading;
use crate::solomon::{ALL, PARITY, corrected};

const DATA: usize = ALL - PARITY;
const ALPHANUMERIC: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/// How a code may lie in the codewords: figures alone are numeric, an X makes it alphanumeric; four to seven figures and the check.
const SHAPES: [(Mode, usize); 8] = [
    (Mode::Numeric, 5),
    (Mode::Alphanumeric, 5),
    (Mode::Numeric, 6),
    (Mode::Alphanumeric, 6),
    (Mode::Numeric, 7),
    (Mode::Alphanumeric, 7),
    (Mode::Numeric, 8),
    (Mode::Alphanumeric, 8),
];

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Mode {
    Numeric,
    Alphanumeric,
}

impl Mode {
    const fn header(self) -> (u32, usize) {
        match self {
            Self::Numeric => (0b0001, 10),
            Self::Alphanumeric => (0b0010, 9),
        }
    }

    const fn length(self, letters: usize) -> usize {
        match self {
            Self::Numeric => letters / 3 * 10 + [0, 4, 7][letters % 3],
            Self::Alphanumeric => letters / 2 * 11 + letters % 2 * 6,
        }
    }
}

/// How many of the least sure codewords are given up, in turn.
const GIVEN_UP: [usize; 4] = [0, 4, 7, 9];

/// The code that codewords hold; nothing when they hold none of ours, or not as they are.
pub(crate) fn in_haste(reading: &Reading) -> Option<String> {
    corrected(&reading.words, &[]).and_then(|words| decoded(&words))
}

/// The same with all that can be put right.
pub(crate) fn with_care(reading: &Reading) -> Option<String> {
    if let Some(text) = in_haste(reading) {
        return Some(text);
    }
    // What fills a code up is known: it is put in, so that errors are looked for in the others alone.
    SHAPES.iter().find_map(|(mode, letters)| {
        let filled = filled(reading, *mode, *letters)?;
        let mut weakest: Vec<usize> = (0..ALL).filter(|at| filled.sure[*at] < f32::MAX).collect();
        weakest.sort_by(|one, other| filled.sure[*one].total_cmp(&filled.sure[*other]));
        GIVEN_UP.iter().find_map(|count| {
            let words = corrected(&filled.words, &weakest[..*count])?;
            decoded(&words).filter(|text| text.len() == *letters)
        })
    })
}

/// A reading with the codewords that are the same for every code of this shape; nothing when too few of them were seen so.
fn filled(reading: &Reading, mode: Mode, letters: usize) -> Option<Reading> {
    let bits = 4 + mode.header().1 + mode.length(letters);
    let used = (bits + 4).div_ceil(8);
    let mut filled = Reading { words: reading.words, sure: reading.sure };
    let mut same = 0;
    for (at, pad) in (used..DATA).zip([0xEC, 0x11].into_iter().cycle()) {
        same += usize::from(filled.words[at] == pad);
        filled.words[at] = pad;
        filled.sure[at] = f32::MAX;
    }
    let (header, count) = mode.header();
    let known = (header << count | letters as u32) << (16 - 4 - count);
    let [first, second] = [(known >> 8) as u8, known as u8];
    same += usize::from(filled.words[0] == first);
    filled.words[0] = first;
    filled.sure[0] = f32::MAX;
    let rest = 4 + count - 8;
    let low = 0xff_u8 >> rest;
    filled.words[1] = second & !low | filled.words[1] & low;
    (same >= 2).then_some(filled)
}

/// The text, when all of it is as we write it: mode, count, code with its check character, and what fills it up.
fn decoded(words: &[u8; ALL]) -> Option<String> {
    let mut bits = Bits { words: &words[..DATA], at: 0 };
    let mode = match bits.take(4)? {
        0b0001 => Mode::Numeric,
        0b0010 => Mode::Alphanumeric,
        _ => return None,
    };
    let letters = bits.take(mode.header().1)? as usize;
    if !(5..=8).contains(&letters) {
        return None;
    }
    let mut text = String::new();
    while text.len() < letters {
        let left = letters - text.len();
        match mode {
            Mode::Numeric => {
                let figures = left.min(3);
                let value = bits.take([4, 7, 10][figures - 1])?;
                text.push_str(&format!("{value:0figures$}"));
            }
            Mode::Alphanumeric => {
                let pair = left.min(2);
                let value = bits.take([6, 11][pair - 1])? as usize;
                let letter = |at: usize| ALPHANUMERIC.get(at).map(|letter| char::from(*letter));
                if pair == 2 {
                    text.push(letter(value / 45)?);
                }
                text.push(letter(value % 45)?);
            }
        }
    }
    let ends = bits.take(4)? == 0 && bits.take(bits.left() % 8)? == 0;
    let pads = words[bits.at / 8..DATA].iter().zip([0xEC, 0x11].into_iter().cycle()).all(|(word, pad)| *word == pad);
    let ours = matches!(TagCode::scanned(&text), TagRead::Code { .. });
    (ends && pads && ours && text.len() == letters).then_some(text)
}

struct Bits<'a> {
    words: &'a [u8],
    at: usize,
}

impl Bits<'_> {
    fn take(&mut self, count: usize) -> Option<u32> {
        if count > self.left() {
            return None;
        }
        let bit = |at: usize| u32::from(self.words[at / 8] >> (7 - at % 8) & 1);
        let value = (self.at..self.at + count).fold(0, |sum, at| sum << 1 | bit(at));
        self.at += count;
        Some(value)
    }

    const fn left(&self) -> usize {
        self.words.len() * 8 - self.at
    }
}
