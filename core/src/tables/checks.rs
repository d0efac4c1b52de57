//! What is looked at in a part: questions with their outcomes. Common practice, no source, but where a standard is named.

use crate::record::stored_enum;

stored_enum! {
    /// What an outcome means for using the part again.
    pub enum Condition {
        /// Nothing against it.
        Sound = "sound",
        /// It stays open until someone has looked again.
        Doubtful = "doubtful",
        /// Not as it is; it can be put right.
        Rework = "rework",
        /// Not again.
        Scrap = "scrap",
    }
}

/// One question of a check-list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Look {
    /// Its code; its words are written at the edge.
    pub code: &'static str,
    /// What may be answered, best first.
    pub outcomes: &'static [Outcome],
    /// The standard that names the damage, where one does.
    pub standard: Option<&'static str>,
}

/// One answer to a question.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Outcome {
    /// Its code, unique within its question.
    pub code: &'static str,
    /// What it means.
    pub condition: Condition,
}

/// The question of a code.
#[must_use]
pub fn look(code: &str) -> Option<&'static Look> {
    LOOKS.iter().find(|look| look.code == code)
}

macro_rules! looks {
    ($($code:literal $([$standard:literal])?: $($outcome:literal $condition:ident),+;)*) => {
        /// All questions.
        pub const LOOKS: &[Look] = &[$(Look {
            code: $code,
            outcomes: &[$(Outcome { code: $outcome, condition: Condition::$condition },)+],
            standard: looks!(@standard $($standard)?),
        },)*];
    };
    (@standard $standard:literal) => { Some($standard) };
    (@standard) => { None };
}

looks! {
    // Rolling bearings: the damage groups of ISO 15243:2017, clauses 5.1 to 5.6.
    "spalls" ["ISO 15243, 5.1"]: "none" Sound, "flaked" Scrap;
    "wear-scoring" ["ISO 15243, 5.2"]: "none" Sound, "light" Doubtful, "deep" Scrap;
    "smearing" ["ISO 15243, 5.2"]: "none" Sound, "smeared" Scrap;
    "track-rust" ["ISO 15243, 5.3"]: "none" Sound, "stain" Doubtful, "etched" Scrap;
    "fluting" ["ISO 15243, 5.4"]: "none" Sound, "washboard" Scrap;
    "dents" ["ISO 15243, 5.5"]: "none" Sound, "faint" Doubtful, "at-pitch" Scrap;
    "track-cracks" ["ISO 15243, 5.6"]: "none" Sound, "cracked" Scrap;
    "heat-colour": "none" Sound, "straw" Doubtful, "blue" Scrap;
    "cage": "sound" Sound, "loose" Doubtful, "cracked" Scrap;
    "runs": "quiet" Sound, "not-clean" Doubtful, "rough" Scrap;
    "pulled-through": "no" Sound, "unknown" Doubtful, "yes" Scrap;
    "kept-together": "yes" Sound, "mixed" Doubtful;

    // Rust and old coatings.
    "rust-grade" ["ISO 8501-1"]: "a" Sound, "b" Sound, "c" Rework, "d" Rework;
    "coating" ["ISO 4628-3"]: "ri0" Sound, "ri1" Sound, "ri2" Sound, "ri3" Rework, "ri4" Rework, "ri5" Rework;

    // Cracks, bends, wear.
    "cracks": "none" Sound, "not-tested" Doubtful, "cracked" Scrap;
    "crack-test": "clean" Sound, "not-tested" Doubtful, "shows" Scrap;
    "bend": "straight" Sound, "unsure" Doubtful, "bent" Scrap;
    "thread": "clean" Sound, "worn" Rework, "stripped" Scrap;
    "tapped-thread": "clean" Sound, "stripped" Rework;
    "pits": "none" Sound, "light" Doubtful, "deep" Scrap;
    "steps": "none" Sound, "felt" Scrap;
    "rock": "none" Sound, "slight" Doubtful, "rocks" Scrap;
    "scoring": "none" Sound, "light" Doubtful, "deep" Rework;
    "ridge": "none" Sound, "felt" Rework;
    "burnt": "no" Sound, "burnt" Scrap;
    "lugs": "whole" Sound, "broken" Rework;
    "faces": "flat" Sound, "warped" Rework;

    // Rubber, boots, hoses.
    "rubber": "sound" Sound, "cracked" Scrap, "swollen" Scrap;
    "set": "none" Sound, "set" Scrap;
    "bond": "holds" Sound, "parted" Scrap;
    "boot": "sound" Sound, "split" Rework;
    "pattern": "kept" Sound, "not-yet" Doubtful;
    "orientation": "photographed" Sound, "not-yet" Doubtful;
    "age": "known-new" Sound, "unknown" Scrap, "years" Scrap;
    "ends": "sound" Sound, "rusty" Scrap;

    // Springs and dampers.
    "sag": "level" Sound, "sags" Rework;
    "leaf": "whole" Sound, "broken" Rework;
    "eye": "round" Sound, "worn" Rework;
    "leaks": "dry" Sound, "damp" Doubtful, "leaks" Rework;
    "stroke": "smooth" Sound, "rough" Doubtful, "dead-spot" Rework;
    "spindle-rock": "none" Sound, "rocks" Rework;
    "matches-pair": "matches" Sound, "not-tried" Doubtful, "differs" Rework;

    // Brakes.
    "lip": "none" Sound, "lip" Rework;
    "bell-mouth": "none" Sound, "bell-mouthed" Rework;
    "lining": "clean" Sound, "contaminated" Rework;
    "lining-cracks": "none" Sound, "cracked" Rework;
    "cylinder-bore": "unmarked" Sound, "light" Rework, "deep" Rework;
    "piston": "free" Sound, "stuck" Rework;

    // Gears and shafts.
    "teeth": "unmarked" Sound, "pitted" Doubtful, "chipped" Scrap;
    "contact": "centred" Sound, "not-looked" Doubtful, "off" Doubtful;
    "numbers-match": "match" Sound, "unread" Doubtful, "differ" Scrap;
    "splines": "straight" Sound, "stepped" Doubtful, "twisted" Scrap;
    "seal-track": "smooth" Sound, "groove" Rework;
    "joint-play": "none" Sound, "play" Rework;

    // Units, wiring.
    "works": "tested-good" Sound, "not-tested" Doubtful, "fails" Rework;
    "complete": "complete" Sound, "pieces-missing" Rework;
    "cover": "supple" Sound, "stiff" Doubtful, "brittle" Scrap;
    "copper": "bright" Sound, "green" Scrap;
    "fraying": "none" Sound, "frayed" Scrap;
    "connections": "photographed" Sound, "not-yet" Doubtful;

    // Body and trim.
    "rust-through": "none" Sound, "pin-holes" Rework, "holes" Rework;
    "panel-dents": "none" Sound, "dents" Rework;
    "filler": "none" Sound, "found" Rework;
    "plating": "sound" Sound, "pitted" Rework, "worn-through" Rework;
    "glass": "sound" Sound, "chipped" Doubtful, "cracked" Scrap;
    "fabric": "sound" Sound, "torn" Rework, "rotten" Scrap;
    "clips": "complete" Sound, "missing" Rework;

    // Fasteners.
    "head": "crisp" Sound, "rounded" Scrap;
    "stretch": "none" Sound, "unsure" Doubtful, "stretched" Scrap;
    "marking": "read" Sound, "unread" Doubtful;
    "nick": "none" Sound, "nicked" Scrap;
    "hole": "noted" Sound, "not-noted" Doubtful;
}

/// The answers to a question of the user's own.
pub const OWN_OUTCOMES: &[Outcome] = &[
    Outcome { code: "good", condition: Condition::Sound },
    Outcome { code: "doubtful", condition: Condition::Doubtful },
    Outcome { code: "rework", condition: Condition::Rework },
    Outcome { code: "scrap", condition: Condition::Scrap },
];
