//! What is drawn on a sheet, in millimetres from its upper left corner. All of it is black.

use serde::{Deserialize, Serialize};

/// One thing that is drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "draw", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum TagShape {
    /// A line through points.
    Line {
        /// The points.
        points: Vec<(f64, f64)>,
        /// It comes back to the first.
        closed: bool,
        /// How thick it is.
        thick: f64,
        /// It is broken: to be folded there.
        dashed: bool,
    },
    /// A circle.
    Ring {
        /// Its middle.
        x: f64,
        /// Its middle.
        y: f64,
        /// Its radius.
        radius: f64,
        /// How thick its line is.
        thick: f64,
    },
    /// Bold letters on a line.
    Text {
        /// Where they begin.
        x: f64,
        /// The line they stand on.
        y: f64,
        /// The size of the letters.
        size: f64,
        /// How long they are set.
        length: f64,
        /// The letters.
        text: String,
        /// They stand upside down, and run to the left.
        turned: bool,
    },
    /// Filled rectangles: the dark modules of a QR, those side by side as one.
    Dark {
        /// Left, top, width, height.
        boxes: Vec<(f64, f64, f64, f64)>,
    },
}

/// A rectangle on the page whose own coordinates begin at its upper left corner, or, turned round, at its lower right.
#[derive(Debug, Clone, Copy)]
pub(super) struct Frame {
    pub(super) at: (f64, f64),
    pub(super) size: (f64, f64),
    pub(super) turned: bool,
}

impl Frame {
    fn point(&self, (x, y): (f64, f64)) -> (f64, f64) {
        if self.turned {
            (self.at.0 + self.size.0 - x, self.at.1 + self.size.1 - y)
        } else {
            (self.at.0 + x, self.at.1 + y)
        }
    }

    pub(super) fn line(&self, points: &[(f64, f64)], closed: bool, thick: f64) -> TagShape {
        TagShape::Line { points: points.iter().map(|point| self.point(*point)).collect(), closed, thick, dashed: false }
    }

    pub(super) fn ring(&self, middle: (f64, f64), radius: f64, thick: f64) -> TagShape {
        let (x, y) = self.point(middle);
        TagShape::Ring { x, y, radius, thick }
    }

    pub(super) fn text(&self, at: (f64, f64), size: f64, text: &str, length: f64) -> TagShape {
        let (x, y) = self.point(at);
        TagShape::Text { x, y, size, length, text: text.to_owned(), turned: self.turned }
    }

    /// Rectangles of whole modules, from a corner.
    pub(super) fn dark(&self, corner: (f64, f64), module: f64, runs: &[(usize, usize, usize)]) -> TagShape {
        let boxed = |&(row, column, length): &(usize, usize, usize)| {
            let [row, column, length] = [row, column, length].map(super::grid::whole);
            let (width, height) = (length * module, module);
            let (left, top) = (corner.0 + column * module, corner.1 + row * module);
            let (x, y) = self.point(if self.turned { (left + width, top + height) } else { (left, top) });
            (x, y, width, height)
        };
        TagShape::Dark { boxes: runs.iter().map(boxed).collect() }
    }
}
