//! What is measured in a part. Common practice, no source: the vehicle's workshop manual says the figures.

use crate::record::stored_enum;

stored_enum! {
    /// What kind of limit a measure has.
    pub enum LimitKind {
        /// It may be no less.
        Minimum = "minimum",
        /// It may be no more.
        Maximum = "maximum",
        /// It lies between the two.
        Range = "range",
        /// The two sides may differ by no more.
        Difference = "difference",
        /// A size to note: nothing is judged by it.
        Size = "size",
    }
}

stored_enum! {
    /// What is measured in: each has one unit in which it is kept.
    pub enum Dimension {
        /// A length, kept in nanometres.
        Length = "length",
        /// A force, kept in millinewtons.
        Force = "force",
        /// A count.
        Number = "number",
    }
}

stored_enum! {
    /// Where a limit comes from.
    pub enum LimitSource {
        /// The vehicle's workshop manual; its page stands beside.
        Manual = "manual",
        /// A usual figure, that nobody has confirmed for this vehicle.
        Usual = "usual",
        /// The user's own.
        Own = "own",
    }
}

stored_enum! {
    /// What is cut.
    pub enum Surface {
        /// A bore, opened to an oversize.
        Bore = "bore",
        /// A journal, ground to an undersize.
        Journal = "journal",
    }
}

/// One thing that is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Feature {
    /// Its code; its words are written at the edge.
    pub code: &'static str,
    /// In what.
    pub dimension: Dimension,
    /// Which kind of limit it has.
    pub kind: LimitKind,
    /// A usual limit in the unit of its dimension: no source, to be overridden by the manual.
    pub usual: Option<i64>,
    /// What is cut to bring it to the next standard size, where there are such sizes.
    pub surface: Option<Surface>,
    /// A part on the wrong side of it can still be worked on: skimmed, bushed, sleeved.
    pub reworkable: bool,
}

const MILLIMETRE: i64 = 1_000_000;

const fn length(code: &'static str, kind: LimitKind) -> Feature {
    Feature { code, dimension: Dimension::Length, kind, usual: None, surface: None, reworkable: false }
}

impl Feature {
    const fn reworkable(self) -> Self {
        Self { reworkable: true, ..self }
    }

    const fn cut(self, surface: Surface) -> Self {
        Self { surface: Some(surface), reworkable: true, ..self }
    }

    const fn usually(self, usual: i64) -> Self {
        Self { usual: Some(usual), ..self }
    }
}

use LimitKind::{Difference, Maximum, Minimum, Range, Size};

/// All that is measured.
pub const FEATURES: &[Feature] = &[
    length("bore-size", Size),
    length("outside-size", Size),
    length("width-size", Size),
    length("length-size", Size),
    length("thread-size", Size),
    length("plain-shank", Size),
    length("pattern-size", Size),
    length("bush-bore", Maximum).reworkable(),
    length("pin-diameter", Minimum),
    length("clearance", Maximum).reworkable(),
    length("run-out", Maximum),
    length("shaft-diameter", Minimum),
    length("free-length", Range).reworkable(),
    length("free-length-sides", Difference).reworkable(),
    Feature {
        code: "fitted-load",
        dimension: Dimension::Force,
        kind: Range,
        usual: None,
        surface: None,
        reworkable: true,
    },
    length("disc-thickness", Minimum),
    // 0.10 mm is common practice, no source.
    length("disc-run-out", Maximum).usually(MILLIMETRE / 10).reworkable(),
    length("drum-bore", Maximum),
    length("drum-ovality", Maximum).reworkable(),
    // 3 mm for pads is common practice, no source; a lining is measured above its rivet heads, or above the shoe.
    length("lining-thickness", Minimum).usually(3 * MILLIMETRE).reworkable(),
    length("cylinder-bore", Maximum).reworkable(),
    length("backlash", Range),
    length("end-float", Range).reworkable(),
    length("seal-track-diameter", Minimum).reworkable(),
    length("flatness", Maximum).reworkable(),
    length("journal", Minimum).cut(Surface::Journal),
    length("cylinder-wear", Maximum).cut(Surface::Bore),
    length("spindle-clearance", Maximum).reworkable(),
    length("brush-length", Minimum).reworkable(),
    length("metal-left", Minimum).reworkable(),
];

/// The feature of a code.
#[must_use]
pub fn feature(code: &str) -> Option<&'static Feature> {
    FEATURES.iter().find(|feature| feature.code == code)
}
