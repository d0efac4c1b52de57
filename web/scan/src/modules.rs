use crate::SIDE;
use crate::grey::Grey;
use crate::grid::Grid;
use crate::solomon::ALL;

/// The codewords as they were seen, each with how sure its least sure module is.
pub(crate) struct Reading {
    pub(crate) words: [u8; ALL],
    pub(crate) sure: [f32; ALL],
}

/// Format information of level Q by mask, 15 bits: ISO/IEC 18004, 2-bit level 11, BCH, mask 101010000010010.
const FORMATS: [u16; 8] = [0x355f, 0x3068, 0x3f31, 0x3a06, 0x24b4, 0x2183, 0x2eda, 0x2bed];

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

/// How far around a module others are looked at to tell dark from light: the usual reach, and the others.
const REACH: usize = 5;
const REACHES: [usize; 3] = [REACH, 3, 9];

/// The likeliest reading of a grid.
pub(crate) fn reading(grey: &Grey<'_>, grid: &Grid) -> Option<Reading> {
    let dark = darkness(&grid.sampled(grey)?, REACH);
    Some(read(&dark, masks(&dark)[0]))
}

/// All readings of a grid: several ways to tell dark from light, and the two masks that fit best.
pub(crate) fn readings(grey: &Grey<'_>, grid: &Grid) -> impl Iterator<Item = Reading> + use<> {
    let sampled = grid.sampled(grey);
    let ways = sampled.into_iter().flat_map(|values| REACHES.map(|reach| darkness(&values, reach)));
    ways.flat_map(|dark| masks(&dark).map(|mask| read(&dark, mask)))
}

/// How dark each module is beside those around it: above nothing dark, below it light, at most 1 either way.
fn darkness(values: &[f32], reach: usize) -> Vec<f32> {
    let near = |at: usize| at.saturating_sub(reach)..(at + reach + 1).min(SIDE);
    // Least and most along rows first, then along columns: what is no number counts for neither.
    let both = |(least, most): (f32, f32), (low, high): (f32, f32)| (least.min(low), most.max(high));
    let none = (f32::MAX, f32::MIN);
    let cells = || (0..SIDE).flat_map(|row| (0..SIDE).map(move |column| (row, column)));
    let rows: Vec<(f32, f32)> = cells()
        .map(|(row, column)| {
            near(column).map(|at| values[row * SIDE + at]).fold(none, |sum, one| both(sum, (one, one)))
        })
        .collect();
    let one = |(row, column): (usize, usize)| {
        let value = values[row * SIDE + column];
        let (least, most) = near(row).map(|at| rows[at * SIDE + column]).fold(none, both);
        let spread = most - least;
        if !value.is_finite() || spread < 4.0 { 0.0 } else { ((most + least) / 2.0 - value) / spread * 2.0 }
    };
    cells().map(one).collect()
}

/// The two masks whose format information agrees best, in both of its places.
fn masks(dark: &[f32]) -> [usize; 2] {
    let at = |row: usize, column: usize| dark[row * SIDE + column];
    let first = [
        (8, 0),
        (8, 1),
        (8, 2),
        (8, 3),
        (8, 4),
        (8, 5),
        (8, 7),
        (8, 8),
        (7, 8),
        (5, 8),
        (4, 8),
        (3, 8),
        (2, 8),
        (1, 8),
        (0, 8),
    ];
    let second = |nth: usize| if nth < 7 { (SIDE - 1 - nth, 8) } else { (8, SIDE - 15 + nth) };
    let mut scores: Vec<(f32, usize)> = FORMATS
        .iter()
        .enumerate()
        .map(|(mask, bits)| {
            let agrees = |nth: usize| {
                let seen = at(first[nth].0, first[nth].1) + at(second(nth).0, second(nth).1);
                if bits >> (14 - nth) & 1 == 1 { seen } else { -seen }
            };
            ((0..15).map(agrees).sum(), mask)
        })
        .collect();
    scores.sort_by(|one, other| other.0.total_cmp(&one.0));
    [scores[0].1, scores[1].1]
}

fn read(dark: &[f32], mask: usize) -> Reading {
    let mut reading = Reading { words: [0; ALL], sure: [f32::MAX; ALL] };
    for (nth, (row, column)) in places().enumerate() {
        let value = dark[row * SIDE + column];
        let bit = (value > 0.0) ^ MASKS[mask](row, column);
        let word = nth / 8;
        reading.words[word] = reading.words[word] << 1 | u8::from(bit);
        reading.sure[word] = reading.sure[word].min(value.abs());
    }
    reading
}

/// The modules that hold codewords, in the order of their bits: pairs of columns from the lower right, up and down in turn.
fn places() -> impl Iterator<Item = (usize, usize)> {
    let is_fixed = |row: usize, column: usize| {
        row == 6 || (row < 9 && column < 9) || (row < 9 && column > 12) || (row > 12 && column < 9)
    };
    [20, 18, 16, 14, 12, 10, 8, 5, 3, 1].into_iter().enumerate().flat_map(move |(nth, right)| {
        (0..SIDE).flat_map(move |along| {
            let row = if nth % 2 == 0 { SIDE - 1 - along } else { along };
            [(row, right), (row, right - 1)].into_iter().filter(move |(row, column)| !is_fixed(*row, *column))
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_codeword_has_its_eight_modules() {
        assert_eq!(places().count(), ALL * 8);
    }

    /// Each is worked out from its five bits: BCH (15,5) by x¹⁰ + x⁸ + x⁵ + x⁴ + x² + x + 1.
    #[test]
    fn formats_are_those_of_level_q() {
        for (mask, format) in FORMATS.iter().enumerate() {
            let data = (0b11_u16 << 3 | mask as u16) << 10;
            let rest = (0..5)
                .rev()
                .fold(data, |rest, bit| if rest >> (bit + 10) & 1 == 1 { rest ^ 0x537 << bit } else { rest });
            assert_eq!((data | rest) ^ 0b101_0100_0001_0010, *format, "mask {mask}");
        }
    }
}
