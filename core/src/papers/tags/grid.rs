//! Where labels lie on a sheet.

use serde::{Deserialize, Serialize};

use crate::problem::{Code, Hint, Problem};

const INCH: f64 = 25.4;
/// What figures in millimetres may differ by when they are added up.
const ALIKE: f64 = 0.011;
/// The least label that holds a QR that prints, and figures beside it.
const LEAST: (f64, f64) = (24.0, 10.0);
/// The largest sheet.
const LARGEST: f64 = 1_200.0;
/// The most labels across or down a sheet.
const MOST: usize = 100;

/// The sheets that are ready made, and one of the user's own.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum TagSheet {
    /// A4, 3 × 7 labels of 63.5 × 38.1 mm.
    #[default]
    A4,
    /// Letter, 3 × 10 labels of 2⅝ × 1 in.
    Letter,
    /// A4 card, 3 × 6 strips to be cut, folded and tied on.
    StripsA4,
    /// Letter card, 3 × 5 of the same strips.
    StripsLetter,
    /// Labels of the user's own.
    Own(TagGrid),
}

/// Where labels lie on a sheet, in millimetres.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TagGrid {
    /// Width and height of the sheet.
    pub page: (f64, f64),
    /// Width and height of a label.
    pub label: (f64, f64),
    /// How many across.
    pub across: usize,
    /// How many down.
    pub down: usize,
    /// From the left edge of the sheet to the first label.
    pub left: f64,
    /// From its upper edge.
    pub top: f64,
    /// From one label to the next, across and down.
    pub pitch: (f64, f64),
    /// They are strips: to be cut, folded in the middle and tied on.
    #[serde(default)]
    pub strips: bool,
}

const A4: (f64, f64) = (210.0, 297.0);
const LETTER: (f64, f64) = (8.5 * INCH, 11.0 * INCH);
/// Ours: as wide as three fit across both papers, as high as a QR of 15 mm needs on either side of the fold.
const STRIP: (f64, f64) = (63.0, 46.0);

impl TagSheet {
    /// Its grid. Measures of label sheets are common practice, no source.
    #[must_use]
    pub fn grid(&self) -> TagGrid {
        match self {
            Self::A4 => TagGrid {
                page: A4,
                label: (63.5, 38.1),
                across: 3,
                down: 7,
                left: 7.21,
                top: 15.15,
                pitch: (66.04, 38.1),
                strips: false,
            },
            Self::Letter => TagGrid {
                page: LETTER,
                label: (2.625 * INCH, INCH),
                across: 3,
                down: 10,
                left: 0.1875 * INCH,
                top: 0.5 * INCH,
                pitch: (2.75 * INCH, INCH),
                strips: false,
            },
            Self::StripsA4 => strips(A4, 6),
            Self::StripsLetter => strips(LETTER, 5),
            Self::Own(grid) => grid.clone(),
        }
    }
}

/// Strips side by side in the middle of a sheet: one cut parts two of them.
fn strips(page: (f64, f64), down: usize) -> TagGrid {
    let across = 3;
    TagGrid {
        page,
        label: STRIP,
        across,
        down,
        left: (page.0 - STRIP.0 * whole(across)) / 2.0,
        top: (page.1 - STRIP.1 * whole(down)) / 2.0,
        pitch: STRIP,
        strips: true,
    }
}

#[expect(clippy::cast_precision_loss, reason = "a small count")]
pub(super) const fn whole(count: usize) -> f64 {
    count as f64
}

impl TagGrid {
    /// How many labels are on a sheet.
    #[must_use]
    pub const fn on_a_sheet(&self) -> usize {
        self.across * self.down
    }

    /// The upper left corner of a label, counted from 0 along the rows.
    #[must_use]
    pub fn corner(&self, slot: usize) -> (f64, f64) {
        let (column, row) = (slot % self.across, slot / self.across);
        (self.left + whole(column) * self.pitch.0, self.top + whole(row) * self.pitch.1)
    }

    /// Whether all labels lie on the sheet, beside one another, and can hold what is printed on them.
    ///
    /// # Errors
    /// A problem that says what does not fit, what it needs, and how much room there is, in millimetres.
    pub fn check(&self) -> Result<(), Problem> {
        let counted = |count: usize| (1..=MOST).contains(&count);
        // What is no number is within nothing.
        let room = 0.0..=LARGEST;
        let sides =
            [self.page.0, self.page.1, self.label.0, self.label.1, self.left, self.top, self.pitch.0, self.pitch.1];
        if !counted(self.across) || !counted(self.down) || !sides.iter().all(|side| room.contains(side)) {
            return Err(wrong("figures", 0.0, LARGEST));
        }
        let least = if self.strips { (LEAST.0 * 1.5, LEAST.1 * 2.0) } else { LEAST };
        let axes = [
            ("width", self.page.0, self.label.0, self.left, self.pitch.0, self.across, least.0),
            ("height", self.page.1, self.label.1, self.top, self.pitch.1, self.down, least.1),
        ];
        for (side, page, label, first, pitch, count, least) in axes {
            if label < least - ALIKE {
                return Err(wrong("label", least, label).value("side", side));
            }
            if count > 1 && pitch < label - ALIKE {
                return Err(wrong("pitch", label, pitch).value("side", side));
            }
            let needs = first + whole(count - 1) * pitch + label;
            if needs > page + ALIKE {
                return Err(wrong("page", needs, page).value("side", side));
            }
        }
        Ok(())
    }
}

fn wrong(what: &str, needs: f64, has: f64) -> Problem {
    let problem = Problem::error(Code::LabelsDoNotFit).value("what", what).hint(Hint::CorrectValue);
    problem.value("needs", format!("{needs:.1}")).value("has", format!("{has:.1}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(change: impl Fn(&mut TagGrid)) -> Option<(String, Option<String>)> {
        let mut grid = TagSheet::A4.grid();
        change(&mut grid);
        let problem = grid.check().err()?;
        assert_eq!(problem.code, Code::LabelsDoNotFit);
        Some((problem.values["what"].clone(), problem.values.get("side").cloned()))
    }

    fn said(what: &str, side: &str) -> Option<(String, Option<String>)> {
        Some((what.to_owned(), (!side.is_empty()).then(|| side.to_owned())))
    }

    #[test]
    fn what_does_not_fit_is_named() {
        assert_eq!(told(|_| ()), None);
        assert_eq!(told(|grid| grid.left = 15.0), said("page", "width"));
        assert_eq!(told(|grid| grid.down = 8), said("page", "height"));
        assert_eq!(told(|grid| grid.pitch.1 = 38.0), said("pitch", "height"));
        assert_eq!(told(|grid| grid.label.0 = 20.0), said("label", "width"));
        assert_eq!(told(|grid| grid.across = 0), said("figures", ""));
        assert_eq!(told(|grid| grid.top = f64::NAN), said("figures", ""));
        assert_eq!(told(|grid| grid.left = -0.5), said("figures", ""));
        assert_eq!(told(|grid| grid.strips = true), None);
    }

    #[test]
    fn labels_run_along_the_rows() {
        let grid = TagSheet::A4.grid();
        assert_eq!(grid.corner(0), (7.21, 15.15));
        let (x, y) = grid.corner(4);
        assert!((x - 73.25).abs() < 1e-9 && (y - 53.25).abs() < 1e-9);
    }
}
