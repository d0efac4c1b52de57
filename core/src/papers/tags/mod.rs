//! Printed tags: labels for parts and places, on sheets as they are sold, on strips that are cut and tied on, or on a grid of
//! the user's own. Each carries a QR of its code alone, and the number in figures that a person reads from afar.
//!
//! - [`TagGrid`]: where the labels lie; [`TagSheet`] names those that are ready made.
//! - [`TagSheets`]: what is printed, and each sheet as shapes in millimetres: the PDF and the preview draw the same.
//! - [`Symbol`]: the QR.
//! - [`tags_pdf`]: the file.

mod entries;
mod grid;
mod label;
mod letters;
mod pdf;
mod shape;
mod symbol;

use serde::{Deserialize, Serialize};

pub use grid::{TagGrid, TagSheet};
pub use pdf::tags_pdf;
pub use shape::TagShape;
pub use symbol::Symbol;

use self::entries::Entry;
use super::PaperWords;
use crate::job::Job;
use crate::problem::{Code, Hint, Problem};
use crate::record::Id;

/// The most labels in one file: more than any job has tags within a garage's reach.
const MOST: usize = 20_000;
/// How far a printer may be off, in millimetres.
const FARTHEST: f64 = 10.0;

/// Which tags are printed, and on what.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TagsPaper {
    /// The sheet.
    #[serde(default)]
    pub sheet: TagSheet,
    /// What stands on the labels; left out: all parts.
    #[serde(default)]
    pub labels: TagLabels,
    /// How many labels of the first sheet are used already.
    #[serde(default)]
    pub skip: usize,
    /// How far everything is moved, for a printer that is off.
    #[serde(default)]
    pub nudge: TagNudge,
}

/// What stands on the labels.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "of", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum TagLabels {
    /// Numbers alone, to be tied on later.
    Blank {
        /// The first number.
        from: i64,
        /// How many.
        count: usize,
        /// They are meant for places instead of parts.
        #[serde(default)]
        places: bool,
    },
    /// Parts of the job, in order of their tags.
    Parts {
        /// Which; left out: all that are not struck out.
        #[serde(default)]
        ids: Option<Vec<Id>>,
        /// Only those of this assembly, or of one inside it.
        #[serde(default)]
        assembly: Option<Id>,
    },
    /// Places of the job, each after the one it is within.
    Places {
        /// Which; left out: all that are not struck out.
        #[serde(default)]
        ids: Option<Vec<Id>>,
    },
}

impl Default for TagLabels {
    fn default() -> Self {
        Self::Parts { ids: None, assembly: None }
    }
}

/// How far everything is moved, in millimetres.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TagNudge {
    /// To the right.
    pub right: f64,
    /// Downwards.
    pub down: f64,
}

/// All that is printed, ready to be drawn sheet by sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct TagSheets {
    grid: TagGrid,
    entries: Vec<Entry>,
    skip: usize,
    nudge: TagNudge,
    /// Parts or places that were asked for and carry no tag yet: they are not printed.
    pub untagged: usize,
}

/// One label on its sheet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TagLabel {
    /// What stands in its QR.
    pub code: String,
    /// Its left edge on the page, in millimetres.
    pub x: f64,
    /// Its upper edge.
    pub y: f64,
    /// What is drawn, in millimetres from the upper left corner of the page.
    pub shapes: Vec<TagShape>,
}

/// One sheet to be looked at before it is printed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TagSheetView {
    /// Its grid.
    pub grid: TagGrid,
    /// Its labels.
    pub labels: Vec<TagLabel>,
    /// How many sheets there are in all.
    pub sheets: usize,
    /// How many labels on all of them.
    pub all: usize,
    /// Parts or places that were asked for and carry no tag yet.
    pub untagged: usize,
    /// Labels with letters that cannot be printed: a question mark stands for each.
    pub unprinted: usize,
}

impl TagSheets {
    /// What a question prints.
    ///
    /// # Errors
    /// When the grid does not fit, a number is out of bounds, or nothing is left to print.
    pub fn of(job: &Job, paper: &TagsPaper, words: &PaperWords) -> Result<Self, Problem> {
        let grid = paper.sheet.grid();
        grid.check()?;
        let off = |name, by: f64| {
            let problem = Problem::error(Code::OutOfBounds).value("what", name).hint(Hint::CorrectValue);
            // What is no number is never within.
            if by.abs() <= FARTHEST { Ok(()) } else { Err(problem.value("least", -FARTHEST).value("most", FARTHEST)) }
        };
        off("nudge-right", paper.nudge.right)?;
        off("nudge-down", paper.nudge.down)?;
        let (entries, untagged) = entries::of(job, &paper.labels, words)?;
        if entries.is_empty() {
            return Err(Problem::error(Code::Missing).value("what", "labels").value("untagged", untagged));
        }
        let skip = paper.skip % grid.on_a_sheet();
        Ok(Self { grid, entries, skip, nudge: paper.nudge, untagged })
    }

    /// The grid.
    #[must_use]
    pub const fn grid(&self) -> &TagGrid {
        &self.grid
    }

    /// How many labels there are on all sheets.
    #[must_use]
    pub const fn labels(&self) -> usize {
        self.entries.len()
    }

    /// How many labels have letters that the face does not: it is every reader's own, and has those of Western Europe. A
    /// question mark stands for each; what is scanned is the code.
    #[must_use]
    pub fn unprinted(&self) -> usize {
        let can_print = |entry: &&Entry| letters::can_print(&entry.name) && letters::can_print(&entry.second);
        self.entries.len() - self.entries.iter().filter(can_print).count()
    }

    /// How many sheets there are.
    #[must_use]
    pub const fn sheets(&self) -> usize {
        (self.skip + self.entries.len()).div_ceil(self.grid.on_a_sheet())
    }

    /// The labels of one sheet, counted from 0.
    #[must_use]
    pub fn sheet(&self, nth: usize) -> Vec<TagLabel> {
        let a_sheet = self.grid.on_a_sheet();
        let slots = nth.saturating_mul(a_sheet)..nth.saturating_add(1).saturating_mul(a_sheet);
        let on_it = slots.filter_map(|slot| Some((slot % a_sheet, self.entries.get(slot.checked_sub(self.skip)?)?)));
        on_it.map(|(slot, entry)| self.label(slot, entry)).collect()
    }

    fn label(&self, slot: usize, entry: &Entry) -> TagLabel {
        let (x, y) = self.grid.corner(slot);
        let (x, y) = (x + self.nudge.right, y + self.nudge.down);
        TagLabel { code: entry.code.bare(), x, y, shapes: label::drawn(&self.grid, entry, (x, y)) }
    }

    /// The first sheet with what there is in all.
    #[must_use]
    pub fn view(&self) -> TagSheetView {
        TagSheetView {
            grid: self.grid.clone(),
            labels: self.sheet(0),
            sheets: self.sheets(),
            all: self.labels(),
            untagged: self.untagged,
            unprinted: self.unprinted(),
        }
    }
}
