//! Reads the QR of our own tags from grey frames. It knows what it looks for, version 1 at level Q with a tag's code in it, and so
//! reads what a general decoder must give up: two finders are enough, and what fills a short code up is known beforehand.
//!
//! - [`grey`]: a frame, how dark a spot is beside what lies around it.
//! - [`finders`]: the three square marks.
//! - [`grid`]: where the 21 × 21 modules lie, fitted to all that is the same on every tag.
//! - [`modules`]: the modules as codewords, each with how sure it is.
//! - [`solomon`]: errors and erasures put right.
//! - [`payload`]: the text of the codewords.

mod finders;
mod grey;
mod grid;
mod modules;
mod payload;
mod solomon;

use grey::Grey;
use grid::{Fit, Grid};

/// Modules along a side of a version 1 symbol.
const SIDE: usize = 21;
/// How many grids are fitted in vain in one frame at most: what takes longer is left to the next frame.
const IN_VAIN: usize = 2;

/// The codes of all tags that can be read in a frame of `width` × `height` bytes of luminance, each once. What is no frame holds none.
#[must_use]
pub fn read(luma: &[u8], width: usize, height: usize) -> Vec<String> {
    let Some(grey) = Grey::new(luma, width, height) else { return Vec::new() };
    let found = finders::find(&grey);
    let mut texts: Vec<String> = Vec::new();
    let mut used: Vec<usize> = Vec::new();
    let mut in_vain = 0;
    for (grid, of) in grid::from_three(&grey, &found) {
        if of.iter().any(|finder| used.contains(finder)) {
            continue;
        }
        match text_of(&grey, grid) {
            Some(text) => {
                used.extend(of);
                texts.push(text);
            }
            None => in_vain += 1,
        }
        if in_vain == IN_VAIN {
            break;
        }
    }
    if texts.is_empty() {
        texts.extend(grid::from_two(&grey, &found).into_iter().find_map(|grid| text_of(&grey, grid)));
    }
    texts.sort();
    texts.dedup();
    texts
}

/// The text of a grid: tried in haste while it is fitted, and with all care at the end.
fn text_of(grey: &Grey<'_>, grid: Grid) -> Option<String> {
    let mut fit = Fit::new(grey, grid);
    let mut before = None;
    loop {
        // What was not read is not read by asking again.
        if fit.is_sound() && before != Some(fit.grid) {
            let text = modules::reading(grey, &fit.grid).and_then(|reading| payload::in_haste(&reading));
            if text.is_some() {
                return text;
            }
            before = Some(fit.grid);
        }
        if !fit.go_on() {
            break;
        }
    }
    let sound = fit.is_sound().then(|| modules::readings(grey, &fit.grid));
    sound?.find_map(|reading| payload::with_care(&reading))
}

#[cfg(test)]
mod tests {
    use asfound_core::job::TagCode;
    use asfound_core::papers::Symbol;

    use super::*;

    /// A tag straight before the camera, so many pixels to a module, turned by quarters, on a ground of its own.
    fn seen(number: i64, module: usize, quarters: usize, (width, height): (usize, usize)) -> Vec<u8> {
        let symbol = Symbol::of(&TagCode::new(number).unwrap().bare()).unwrap();
        let side = symbol.size() * module;
        let (left, top) = ((width - side) / 2, (height - side) / 2);
        let shade = |x: usize, y: usize| {
            let (Some(x), Some(y)) = (x.checked_sub(left), y.checked_sub(top)) else { return 220 };
            let last = symbol.size() - 1;
            let (row, column) = (y / module, x / module);
            if row > last || column > last {
                return 220;
            }
            let (row, column) = match quarters {
                0 => (row, column),
                1 => (last - column, row),
                2 => (last - row, last - column),
                _ => (column, last - row),
            };
            if symbol.is_dark(row, column) { 30 } else { 220 }
        };
        (0..width * height).map(|at| shade(at % width, at / width)).collect()
    }

    #[test]
    fn tags_of_every_length_are_read_whichever_way_up() {
        for number in [1, 79, 147, 9_999, 12_345, 123_456, 1_234_567, 9_999_999] {
            for (module, quarters) in [(3, 0), (5, 1), (8, 2), (12, 3)] {
                let frame = seen(number, module, quarters, (480, 360));
                let code = TagCode::new(number).unwrap().bare();
                assert_eq!(read(&frame, 480, 360), [code], "{module} pixels, {quarters} quarters");
            }
        }
    }

    #[test]
    fn two_tags_are_both_read() {
        let (one, other) = (seen(147, 5, 0, (240, 240)), seen(2_048, 5, 2, (240, 240)));
        let both: Vec<u8> =
            one.chunks(240).zip(other.chunks(240)).flat_map(|(one, other)| [one, other].concat()).collect();
        let codes = [147, 2_048].map(|number| TagCode::new(number).unwrap().bare());
        assert_eq!(read(&both, 480, 240), codes);
    }

    #[test]
    fn another_symbol_is_none_of_ours() {
        for text in ["HELLO WORLD", "0079-X", "00147", "01478"] {
            let symbol = Symbol::of(text).unwrap();
            let frame: Vec<u8> = (0..300 * 300)
                .map(|at: usize| {
                    let (x, y) = (at % 300 / 6, at / 300 / 6);
                    let dark = x >= 14 && y >= 14 && symbol.is_dark(y - 14, x - 14);
                    if dark { 20 } else { 230 }
                })
                .collect();
            assert_eq!(read(&frame, 300, 300), Vec::<String>::new(), "{text}");
        }
    }

    #[test]
    fn what_is_no_frame_and_what_is_only_noise_holds_none() {
        assert!(read(&[], 0, 0).is_empty() && read(&[0; 100], 640, 480).is_empty());
        assert!(read(&[7; 64 * 64], usize::MAX, 64).is_empty());
        let mut state = 1_u32;
        let mut next = || {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (state >> 24) as u8
        };
        for (width, height) in [(40, 40), (64, 48), (320, 240), (640, 480)] {
            for coarse in [1, 3, 7] {
                let blocks: Vec<u8> = (0..(width / coarse + 1) * (height / coarse + 1)).map(|_| next()).collect();
                let at = |x: usize, y: usize| blocks[y / coarse * (width / coarse + 1) + x / coarse];
                let noise: Vec<u8> = (0..width * height).map(|one| at(one % width, one / width)).collect();
                assert_eq!(read(&noise, width, height), Vec::<String>::new());
            }
        }
        for plain in [0, 255] {
            assert!(read(&vec![plain; 640 * 480], 640, 480).is_empty());
        }
    }
}
