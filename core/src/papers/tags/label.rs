//! One label: the QR at the left, the tie-on tag or the box with its figures beside it, and below these what it is for. A strip
//! is itself a tag, and says the same on both sides of its fold.

use super::entries::Entry;
use super::grid::{TagGrid, whole};
use super::letters;
use super::shape::{Frame, TagShape};
use super::symbol::{QUIET, Symbol};
use crate::papers::tag_drawing::{CUT, FOUR_FIGURES, HEIGHT, HOLE_IN, LENGTH, ONE_MORE, RING};

/// White left at the edges of a label: printers are not exact.
const EDGE: f64 = 2.5;
/// Of a label's width and height, how much QR and quiet zone may take.
const WIDE: f64 = 0.38;
const HIGH: f64 = 29.0 / 31.0;
/// The largest module: more does not read better from an arm's length.
const LARGEST: f64 = 1.2;
const THICK: f64 = 0.45;
const HAIR: f64 = 0.15;

/// In heights of the tag: the size of the figures and where they stand; hyphen and check character are smaller.
const FIGURES: f64 = 0.63;
const FIGURES_AT: f64 = 0.62;
const BASE: f64 = 0.724;
const CHECK: f64 = 0.42;
const CHECK_LENGTH: f64 = 0.42;
const APART: f64 = 0.06;
/// A box: white at its sides, the height of its lid, the line its figures stand on.
const BOX_SIDE: f64 = 0.24;
const LID: f64 = 0.17;
const BOX_BASE: f64 = 0.81;

/// Of a strip: where the hole is punched, and how far its corners are cut.
const PUNCH_IN: f64 = 6.5;
const PUNCH: f64 = 2.6;
const CORNER: f64 = 5.0;

/// What is drawn for an entry on the label whose corner is given.
pub(super) fn drawn(grid: &TagGrid, entry: &Entry, corner: (f64, f64)) -> Vec<TagShape> {
    let Some(symbol) = Symbol::of(&entry.code.bare()) else { return Vec::new() };
    let around = match (entry.is_place, grid.strips) {
        (true, _) => Around::Box,
        (false, true) => Around::Nothing,
        (false, false) => Around::Tag,
    };
    let label = Label { entry, symbol, around };
    let mut shapes = Vec::new();
    let size = grid.label;
    if grid.strips {
        let half = (size.0, size.1 / 2.0);
        outline(Frame { at: corner, size, turned: false }, &mut shapes);
        let front = Frame { at: corner, size: half, turned: false };
        let back = Frame { at: (corner.0, corner.1 + half.1), size: half, turned: true };
        shapes.push(front.ring((PUNCH_IN, half.1 / 2.0), PUNCH, HAIR * 2.0));
        shapes.push(back.ring((half.0 - PUNCH_IN, half.1 / 2.0), PUNCH, HAIR * 2.0));
        // Folded, the holes lie on one another: on the back the hole is at the reader's right.
        let hole = PUNCH_IN + PUNCH + 2.0;
        label.draw(front, (hole, half.0), &mut shapes);
        label.draw(back, (0.0, half.0 - hole), &mut shapes);
    } else {
        label.draw(Frame { at: corner, size, turned: false }, (0.0, size.0), &mut shapes);
    }
    shapes
}

/// Where a strip is cut and folded.
fn outline(frame: Frame, shapes: &mut Vec<TagShape>) {
    let (w, h) = frame.size;
    let cut = [(CORNER, 0.0), (w, 0.0), (w, h), (CORNER, h), (0.0, h - CORNER), (0.0, CORNER)];
    shapes.push(frame.line(&cut, true, HAIR));
    let (x, y) = frame.at;
    shapes.push(TagShape::Line {
        points: vec![(x, y + h / 2.0), (x + w, y + h / 2.0)],
        closed: false,
        thick: HAIR,
        dashed: true,
    });
}

struct Label<'a> {
    entry: &'a Entry,
    symbol: Symbol,
    around: Around,
}

/// What is drawn around the figures.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Around {
    /// The tie-on tag of a part.
    Tag,
    /// A box with its lid.
    Box,
    /// A strip is itself the tag.
    Nothing,
}

impl Label<'_> {
    /// Draws it between two positions of a frame.
    fn draw(&self, frame: Frame, (from, to): (f64, f64), shapes: &mut Vec<TagShape>) {
        let modules = whole(self.symbol.size()) + 2.0 * QUIET;
        let wide = if from > 0.0 || to < frame.size.0 { 0.5 } else { WIDE };
        let module = (frame.size.1 * HIGH / modules).min((to - from) * wide / modules).min(LARGEST);
        let square = module * modules;
        let top = (frame.size.1 - square) / 2.0;
        shapes.push(frame.dark((from + module * QUIET, top + module * QUIET), module, &self.symbol.runs()));
        self.beside(frame, from + square, to - EDGE, shapes);
    }

    /// The figures in their tag or box, and the words below, in the middle of the height.
    fn beside(&self, frame: Frame, left: f64, right: f64, shapes: &mut Vec<TagShape>) {
        let (width, height) = (right - left, frame.size.1 - 2.0 * EDGE);
        let size = (height * 0.13).clamp(2.0, 4.0);
        let mut lines = self.lines(size, width);
        let words_of = |lines: &[(String, f64)]| lines.iter().map(|(_, size)| size * 1.3).sum::<f64>();
        // The figures are what a tag is for: words give way until they have most of what is left.
        while !lines.is_empty() && height - words_of(&lines) - size * 0.4 < (width / self.width()).min(height * 0.5) {
            lines.pop();
        }
        let words = words_of(&lines);
        let gap = if lines.is_empty() { 0.0 } else { size * 0.4 };
        let unit = (width / self.width()).min(height - words - gap);
        let top = (frame.size.1 - unit - gap - words) / 2.0;
        self.figures(frame, (left, top), unit, shapes);
        let mut y = top + unit + gap;
        for (line, size) in lines {
            let length = letters::length(&line, size);
            shapes.push(frame.text((left, y + size * 0.95), size, &line, length));
            y += size * 1.3;
        }
    }

    /// The name on up to two lines, side and assembly or path on what three leave, each with its size.
    fn lines(&self, size: f64, width: f64) -> Vec<(String, f64)> {
        let name = letters::lines(&self.entry.name, size, width, 2);
        let small = (size * 0.8).max(1.8);
        let second = letters::lines(&self.entry.second, small, width, 3 - name.len().max(1));
        name.into_iter().map(|line| (line, size)).chain(second.into_iter().map(|line| (line, small))).collect()
    }

    /// How long the figures are set, in heights.
    fn length(&self) -> f64 {
        hundredths(LENGTH) + hundredths(ONE_MORE) * whole(self.entry.code.figures().len() - 4)
    }

    /// Width of the tag or box, in heights.
    fn width(&self) -> f64 {
        let sides = match self.around {
            Around::Tag => hundredths(FOUR_FIGURES) - hundredths(LENGTH),
            Around::Box => 2.0 * BOX_SIDE,
            Around::Nothing => 0.0,
        };
        sides + self.length() + APART + CHECK_LENGTH
    }

    fn figures(&self, frame: Frame, (x, y): (f64, f64), unit: f64, shapes: &mut Vec<TagShape>) {
        let at = |(dx, dy): (f64, f64)| (x + dx * unit, y + dy * unit);
        let width = self.width();
        let thick = THICK.min(unit * 0.05);
        let (first, base) = match self.around {
            Around::Box => {
                let corners = [(0.0, 0.0), (width, 0.0), (width, 1.0), (0.0, 1.0)];
                shapes.push(frame.line(&corners.map(at), true, thick));
                shapes.push(frame.line(&[(0.0, LID), (width, LID)].map(at), false, thick));
                (BOX_SIDE, BOX_BASE)
            }
            Around::Tag => {
                let cut = hundredths(CUT);
                let corners = [(cut, 0.0), (width, 0.0), (width, 1.0), (cut, 1.0), (0.0, 1.0 - cut), (0.0, cut)];
                shapes.push(frame.line(&corners.map(at), true, thick));
                // The hole is a mark to punch through, so only its ring is printed.
                shapes.push(frame.ring(at((hundredths(HOLE_IN), 0.5)), hundredths(RING) * unit, thick));
                (FIGURES_AT, BASE)
            }
            Around::Nothing => (0.0, BASE),
        };
        let length = self.length();
        shapes.push(frame.text(at((first, base)), FIGURES * unit, &self.entry.code.figures(), length * unit));
        let check = format!("-{}", self.entry.code.check());
        let behind = first + length + APART;
        shapes.push(frame.text(at((behind, base)), CHECK * unit, &check, CHECK_LENGTH * unit));
    }
}

fn hundredths(part: usize) -> f64 {
    whole(part) / whole(HEIGHT)
}
