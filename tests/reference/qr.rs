//! QR symbols codeword by codeword, read back from their modules by a reader of this file's own: ISO/IEC 18004 places them in
//! pairs of columns from the lower right, and masks them by what the format information says.

use asfound_core::papers::Symbol;
use qrcode::{Color, EcLevel, QrCode};

/// The modules of a version 1 symbol.
struct Modules(Vec<Vec<bool>>);

/// The masks in the order of their numbers.
const MASKS: [fn(usize, usize) -> bool; 8] = [
    |i, j| (i + j) % 2 == 0,
    |i, _| i % 2 == 0,
    |_, j| j % 3 == 0,
    |i, j| (i + j) % 3 == 0,
    |i, j| (i / 2 + j / 3) % 2 == 0,
    |i, j| (i * j) % 2 + (i * j) % 3 == 0,
    |i, j| ((i * j) % 2 + (i * j) % 3) % 2 == 0,
    |i, j| ((i + j) % 2 + (i * j) % 3) % 2 == 0,
];

impl Modules {
    fn of(symbol: &Symbol) -> Self {
        assert_eq!(symbol.size(), 21);
        Self((0..21).map(|row| (0..21).map(|column| symbol.is_dark(row, column)).collect()).collect())
    }

    fn of_code(code: &QrCode) -> Self {
        assert_eq!(code.width(), 21);
        let dark: Vec<bool> = code.to_colors().into_iter().map(|color| color == Color::Dark).collect();
        Self(dark.chunks(21).map(<[bool]>::to_vec).collect())
    }

    /// Level and number of the mask: the first five of the fifteen bits beside the upper left finder, unmasked.
    fn format(&self) -> (u8, usize) {
        let bits = (0..5).map(|column| self.0[8][column]).fold(0, |sum, bit| sum << 1 | u8::from(bit));
        let plain = bits ^ 0b10101;
        (plain >> 3, usize::from(plain & 0b111))
    }

    /// All codewords in their order.
    fn codewords(&self) -> Vec<u8> {
        let mask = MASKS[self.format().1];
        let is_fixed = |row: usize, column: usize| {
            let finder = (row < 9 && !(9..=12).contains(&column)) || (row > 12 && column < 9);
            finder || row == 6 || column == 6
        };
        let mut bits = Vec::new();
        let pairs = [20, 18, 16, 14, 12, 10, 8, 5, 3, 1];
        for (nth, right) in pairs.into_iter().enumerate() {
            let rows: Vec<usize> = if nth % 2 == 0 { (0..21).rev().collect() } else { (0..21).collect() };
            for row in rows {
                for column in [right, right - 1].into_iter().filter(|column| !is_fixed(row, *column)) {
                    bits.push(self.0[row][column] ^ mask(row, column));
                }
            }
        }
        assert_eq!(bits.len(), 26 * 8);
        bits.chunks(8).map(|byte| byte.iter().fold(0, |sum, bit| sum << 1 | u8::from(*bit))).collect()
    }
}

const M: u8 = 0b00;
const Q: u8 = 0b11;

/// ISO/IEC 18004:2006, Annex I.2: `01234567` in numeric mode, version 1-M, as tests of six public libraries quote it.
#[test]
fn the_standards_own_example_is_met_codeword_by_codeword() {
    let modules = Modules::of_code(&QrCode::with_error_correction_level("01234567", EcLevel::M).unwrap());
    assert_eq!(modules.format().0, M);
    let data = [0x10, 0x20, 0x0C, 0x56, 0x61, 0x80, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11, 0xEC, 0x11];
    let correction = [0xA5, 0x24, 0xD4, 0xC1, 0xED, 0x36, 0xC7, 0x87, 0x2C, 0x55];
    assert_eq!(modules.codewords(), [&data[..], &correction].concat());
}

/// Ours, level Q. Data: a page that explains QR bit by bit; correction: a Python library (qrcode 8.2), computed.
#[test]
fn our_symbols_are_of_level_q_codeword_by_codeword() {
    let modules = Modules::of(&Symbol::of("HELLO WORLD").unwrap());
    assert_eq!(modules.format().0, Q);
    let data = [0x20, 0x5B, 0x0B, 0x78, 0xD1, 0x72, 0xDC, 0x4D, 0x43, 0x40, 0xEC, 0x11, 0xEC];
    let correction = [168, 72, 22, 82, 217, 54, 156, 0, 46, 15, 180, 122, 16];
    assert_eq!(modules.codewords(), [&data[..], &correction].concat());
}

/// Data by hand: alphanumeric mode 0010, count 5 in nine bits, 00 = 0·45 + 0, 79 = 7·45 + 9, X = 33.
#[test]
fn a_tags_code_is_what_it_holds() {
    let bits = "0010 000000101 00000000000 00101000100 100001 0000 0000000";
    let bits: Vec<u8> = bits.bytes().filter(|bit| *bit != b' ').map(|bit| bit - b'0').collect();
    let mut data: Vec<u8> = bits
        .chunks(8)
        .filter(|byte| byte.len() == 8)
        .map(|byte| byte.iter().fold(0, |sum, bit| sum << 1 | bit))
        .collect();
    data.extend([0xEC, 0x11].into_iter().cycle().take(13 - data.len()));
    let modules = Modules::of(&Symbol::of("0079X").unwrap());
    assert_eq!(modules.codewords()[..13], data);
}

/// A well-known tutorial's correction codewords of HELLO WORLD at 1-M; from memory, and met by a Python library (qrcode 8.2).
#[test]
fn correction_at_level_m_is_the_tutorials() {
    let modules = Modules::of_code(&QrCode::with_error_correction_level("HELLO WORLD", EcLevel::M).unwrap());
    assert_eq!(modules.codewords()[16..], [196, 35, 39, 119, 235, 215, 231, 226, 93, 23]);
}
