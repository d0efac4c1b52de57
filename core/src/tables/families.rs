//! Families of parts: what to look at, what to measure, when to use again, which routes otherwise.
//!
//! Common practice, no source; the vehicle's workshop manual overrides it.

use crate::job::vocabulary::Route;

/// A family of parts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Family {
    /// Its code, as stored in the field `family`; its words are written at the edge.
    pub code: &'static str,
    /// What is looked at: codes of [`super::checks`], in order.
    pub looks: &'static [&'static str],
    /// What is measured: codes of [`super::features`], in order.
    pub measures: &'static [&'static str],
    /// The usual routes when it is not used again, the usual one first.
    pub otherwise: &'static [Route],
    /// Routes that the trade would not take.
    pub refuses: &'static [Route],
    /// Renewed whatever it looks like.
    pub single_use: bool,
    /// Both sides of an axle together.
    pub pair: bool,
    /// Kept and renewed together with what it was matched to: words that tell the pieces of one set apart in their names.
    pub matched: &'static [&'static str],
    /// Somebody can be hurt when it breaks.
    pub safety_critical: bool,
}

/// The family of a code.
#[must_use]
pub fn family(code: &str) -> Option<&'static Family> {
    FAMILIES.iter().find(|family| family.code == code)
}

use Route::{Buy, Donor, Exchange, Kit, RepairHere, SendOut, UseAgain};

const PLAIN: Family = Family {
    code: "",
    looks: &[],
    measures: &[],
    otherwise: &[Buy],
    refuses: &[],
    single_use: false,
    pair: false,
    matched: &[],
    safety_critical: false,
};

/// All families.
pub const FAMILIES: &[Family] = &[
    Family {
        code: "rolling-bearing",
        looks: &[
            "spalls",
            "track-rust",
            "dents",
            "wear-scoring",
            "smearing",
            "heat-colour",
            "fluting",
            "track-cracks",
            "cage",
            "runs",
            "pulled-through",
            "kept-together",
        ],
        measures: &["bore-size", "outside-size", "width-size"],
        refuses: &[RepairHere, SendOut],
        matched: &["cup", "cone", "race", "ring"],
        ..PLAIN
    },
    Family {
        code: "seal",
        looks: &["pattern", "burnt"],
        measures: &["bore-size", "outside-size", "width-size"],
        otherwise: &[Buy, Kit],
        refuses: &[UseAgain],
        single_use: true,
        ..PLAIN
    },
    Family {
        code: "crush-spacer",
        looks: &["pattern"],
        measures: &["length-size"],
        refuses: &[UseAgain, RepairHere, SendOut],
        single_use: true,
        ..PLAIN
    },
    Family {
        code: "locking-piece",
        looks: &["pattern"],
        measures: &["pattern-size"],
        refuses: &[UseAgain, RepairHere, SendOut],
        single_use: true,
        ..PLAIN
    },
    Family {
        code: "rubber-bush",
        looks: &["rubber", "set", "bond", "orientation"],
        measures: &["bore-size", "outside-size", "length-size"],
        otherwise: &[Buy, Kit],
        refuses: &[RepairHere],
        pair: true,
        ..PLAIN
    },
    Family {
        code: "plain-bearing",
        looks: &["scoring"],
        measures: &["bush-bore", "clearance"],
        otherwise: &[Buy],
        ..PLAIN
    },
    Family {
        code: "pivot-pin",
        looks: &["rock", "steps", "pits"],
        measures: &["pin-diameter", "bush-bore"],
        otherwise: &[Kit, Buy],
        refuses: &[RepairHere],
        pair: true,
        safety_critical: true,
        ..PLAIN
    },
    Family {
        code: "stub-axle",
        looks: &["crack-test", "bend", "thread"],
        measures: &["shaft-diameter", "run-out"],
        otherwise: &[Buy, Donor],
        refuses: &[RepairHere],
        safety_critical: true,
        ..PLAIN
    },
    Family {
        code: "ball-joint",
        looks: &["rock", "boot"],
        refuses: &[RepairHere],
        pair: true,
        safety_critical: true,
        ..PLAIN
    },
    Family {
        code: "spring",
        looks: &["cracks", "pits", "sag", "leaf", "eye"],
        measures: &["free-length", "free-length-sides", "fitted-load"],
        otherwise: &[SendOut, Buy],
        refuses: &[RepairHere],
        pair: true,
        safety_critical: true,
        ..PLAIN
    },
    Family {
        code: "damper",
        looks: &["leaks", "stroke", "spindle-rock", "matches-pair"],
        otherwise: &[Exchange, SendOut],
        refuses: &[RepairHere],
        pair: true,
        ..PLAIN
    },
    Family {
        code: "brake-disc",
        looks: &["cracks", "scoring", "lip"],
        measures: &["disc-thickness", "disc-run-out"],
        pair: true,
        safety_critical: true,
        refuses: &[RepairHere],
        ..PLAIN
    },
    Family {
        code: "brake-drum",
        looks: &["cracks", "scoring", "bell-mouth", "lip"],
        measures: &["drum-bore", "drum-ovality"],
        pair: true,
        safety_critical: true,
        refuses: &[RepairHere],
        ..PLAIN
    },
    Family {
        code: "brake-lining",
        looks: &["lining", "lining-cracks"],
        measures: &["lining-thickness"],
        otherwise: &[SendOut, Buy],
        refuses: &[RepairHere],
        pair: true,
        matched: &["brake", "shoe", "pad", "lining", "leading", "trailing", "primary", "secondary"],
        safety_critical: true,
        ..PLAIN
    },
    Family {
        code: "hydraulic-cylinder",
        looks: &["cylinder-bore", "piston"],
        measures: &["cylinder-bore"],
        otherwise: &[Kit, SendOut, Buy],
        refuses: &[UseAgain, RepairHere],
        pair: true,
        safety_critical: true,
        ..PLAIN
    },
    Family {
        code: "hose-pipe",
        looks: &["age", "rubber", "ends"],
        measures: &["length-size"],
        refuses: &[RepairHere, SendOut],
        safety_critical: true,
        ..PLAIN
    },
    Family {
        code: "gear",
        looks: &["teeth", "contact", "numbers-match"],
        measures: &["backlash", "end-float"],
        otherwise: &[Donor, Buy],
        refuses: &[RepairHere],
        matched: &["crown", "wheel", "ring", "gear", "pinion", "and"],
        ..PLAIN
    },
    Family {
        code: "shaft",
        looks: &["splines", "cracks", "seal-track", "joint-play"],
        measures: &["run-out", "seal-track-diameter"],
        otherwise: &[Donor, Buy],
        ..PLAIN
    },
    Family {
        code: "casting",
        looks: &["cracks", "lugs", "tapped-thread", "faces", "rust-grade"],
        measures: &["flatness"],
        otherwise: &[RepairHere, Donor],
        ..PLAIN
    },
    Family {
        code: "engine-internal",
        looks: &["scoring", "ridge", "heat-colour", "cracks"],
        measures: &["journal", "cylinder-wear", "clearance"],
        otherwise: &[SendOut],
        matched: &["cap", "shell", "half"],
        ..PLAIN
    },
    Family {
        code: "unit",
        looks: &["works", "leaks", "spindle-rock", "complete"],
        measures: &["spindle-clearance", "brush-length"],
        otherwise: &[SendOut, Exchange, Kit],
        ..PLAIN
    },
    Family {
        code: "wiring",
        looks: &["cover", "copper", "fraying", "connections"],
        measures: &["length-size"],
        ..PLAIN
    },
    Family {
        code: "panel",
        looks: &["rust-through", "panel-dents", "filler", "rust-grade", "coating"],
        measures: &["metal-left"],
        otherwise: &[RepairHere, SendOut, Buy],
        ..PLAIN
    },
    Family { code: "bright-trim", looks: &["plating", "panel-dents", "cracks"], otherwise: &[SendOut], ..PLAIN },
    Family {
        code: "glass",
        looks: &["glass", "pattern"],
        measures: &["pattern-size"],
        otherwise: &[Kit, SendOut],
        refuses: &[RepairHere],
        ..PLAIN
    },
    Family {
        code: "soft-trim",
        looks: &["fabric", "clips", "pattern"],
        measures: &["pattern-size"],
        otherwise: &[SendOut, Kit],
        ..PLAIN
    },
    Family {
        code: "fastener",
        looks: &["head", "thread", "stretch", "pits", "marking"],
        measures: &["thread-size", "length-size", "plain-shank"],
        ..PLAIN
    },
    Family {
        code: "safety-fastener",
        looks: &["head", "thread", "stretch", "pits", "nick", "marking", "hole"],
        measures: &["thread-size", "length-size", "plain-shank"],
        refuses: &[RepairHere, SendOut],
        safety_critical: true,
        ..PLAIN
    },
];
