//! How dense what parts are made of is, and how much of the box around a part it fills: for guessing a mass from a size.
//!
//! Densities at room temperature. Those of elements are handbook values (CRC Handbook of Chemistry and Physics, "Physical
//! Constants of the Elements"; figures from memory); those of alloys, rubbers, plastics and woods are the middle of what such
//! handbooks give for the kind (from memory), with nothing said about the alloy.

use crate::job::vocabulary::Build;

/// What something is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Density {
    /// Words that tell it, in small letters; the first of the rows that has one holds.
    pub words: &'static [&'static str],
    /// Kilograms in a cubic metre.
    pub density: i64,
}

/// What parts are made of. What is said more closely stands before: `cast iron` before `iron`, `stainless steel` before `steel`.
pub const DENSITIES: &[Density] = &[
    // As steel, below.
    Density { words: &["alloy steel", "steel alloy"], density: 7_850 },
    // Aluminium bronzes 7,500 to 7,700 (from memory).
    Density { words: &["aluminium bronze", "aluminum bronze"], density: 7_600 },
    // Grey and malleable iron 7,100 to 7,400 (from memory).
    Density { words: &["cast iron", "grey iron", "gray iron", "malleable iron", "ductile iron"], density: 7_200 },
    // 18/8 stainless 7,900 to 8,000 (from memory).
    Density { words: &["stainless"], density: 7_900 },
    // Plain and low-alloy steel 7,800 to 7,870 (from memory).
    Density { words: &["steel", "forging", "spring steel"], density: 7_850 },
    // Iron, the element: 7,870 (handbook, from memory).
    Density { words: &["iron"], density: 7_870 },
    // Cast and wrought aluminium alloys 2,640 to 2,800 (from memory); the element 2,700 (handbook, from memory).
    Density { words: &["aluminium", "aluminum", "light alloy"], density: 2_700 },
    // Magnesium alloys 1,740 to 1,830 (from memory); the element 1,740 (handbook, from memory).
    Density { words: &["magnesium"], density: 1_800 },
    // Zinc die casting alloys 6,600 to 6,700 (from memory).
    Density { words: &["zinc", "pot metal", "die cast", "die-cast", "mazak", "zamak"], density: 6_700 },
    // Brasses 8,400 to 8,700 (from memory).
    Density { words: &["brass"], density: 8_500 },
    // Tin and phosphor bronzes 8,700 to 8,900 (from memory).
    Density { words: &["bronze", "gunmetal"], density: 8_800 },
    // Copper, the element: 8,960 (handbook, from memory).
    Density { words: &["copper"], density: 8_960 },
    // Lead, the element: 11,340 (handbook, from memory).
    Density { words: &["lead"], density: 11_340 },
    // Soda-lime glass 2,500 (from memory).
    Density { words: &["glass"], density: 2_500 },
    // Filled natural and synthetic rubbers 1,100 to 1,300 (from memory).
    Density { words: &["rubber", "neoprene"], density: 1_200 },
    // Thermosets and thermoplastics 1,000 to 1,400 (from memory).
    Density { words: &["plastic", "bakelite", "nylon", "fibreglass", "fiberglass", "grp"], density: 1_300 },
    // Ash, the usual wood of body frames, 650 to 700 dry (from memory); plywood about as much.
    Density { words: &["wood", "timber", "ash", "oak", "plywood"], density: 680 },
    // Leather about 900, felts and cloths less (from memory).
    Density { words: &["leather", "cloth", "felt", "carpet", "vinyl"], density: 900 },
    // Alloy, and nothing more, is aluminium in a workshop (common practice, no source).
    Density { words: &["alloy"], density: 2_700 },
];

/// How much of the box around it a part fills: least, usual, most (common practice, no source).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Filled {
    /// Hundredths of the box.
    Share([i64; 3]),
    /// A skin of so many micrometres over the largest face of the box: the thickness of the sheet with its flanges and lips.
    Skin([i64; 3]),
}

/// How much a build fills.
///
/// A round bar fills 78 hundredths of the square box around it, a ball 52; a drum or a housing is mostly air. Body sheet is
/// 0.7 to 1.2 mm, brackets and frames up to 3 mm.
#[must_use]
pub const fn filled(build: Option<Build>) -> Filled {
    match build {
        Some(Build::Solid) => Filled::Share([45, 65, 90]),
        Some(Build::Hollow) => Filled::Share([12, 25, 45]),
        Some(Build::Sheet) => Filled::Skin([700, 1_300, 4_800]),
        // Nobody said: from a housing to a shaft.
        None => Filled::Share([12, 30, 90]),
    }
}

/// The density of what a material is called; nothing where its words are not known.
///
/// ```
/// use asfound_core::tables::densities::density;
/// assert_eq!(density("Cast iron"), Some(7_200));
/// assert_eq!(density("mild steel, zinc plated"), Some(7_850));
/// assert_eq!(density("leaded bronze"), Some(8_800));
/// assert_eq!(density("unobtainium"), None);
/// ```
#[must_use]
pub fn density(material: &str) -> Option<i64> {
    let material = material.to_lowercase();
    let at = |words: &str| {
        let ends = |at: usize| !material[at + words.len()..].chars().next().is_some_and(char::is_alphanumeric);
        let begins = |at: usize| !material[..at].chars().next_back().is_some_and(char::is_alphanumeric);
        material.match_indices(words).map(|(at, _)| at).find(|at| begins(*at) && ends(*at))
    };
    // Plating and lining are named after what carries them.
    let found = DENSITIES.iter().filter_map(|row| Some((row.words.iter().filter_map(|words| at(words)).min()?, row)));
    // Of rows that begin at the same word the first holds.
    let mut first: Option<(usize, &Density)> = None;
    for (at, row) in found {
        if first.is_none_or(|(known, _)| at < known) {
            first = Some((at, row));
        }
    }
    first.map(|(_, row)| row.density)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_closer_word_and_the_first_named_hold() {
        let known = [
            ("Cast iron", 7_200),
            ("iron", 7_870),
            ("stainless steel", 7_900),
            ("steel", 7_850),
            ("aluminium with steel liner", 2_700),
            ("rubber bonded to steel", 1_200),
            ("GRP", 1_300),
            ("Al alloy", 2_700),
        ];
        for (material, kilograms) in known {
            assert_eq!(density(material), Some(kilograms), "{material}");
        }
        for unknown in ["", "ashtray", "misleading", "irons?x", "ステンレス"] {
            assert_eq!(density(unknown), None, "{unknown}");
        }
    }

    #[test]
    fn shares_are_in_order() {
        for build in [None, Some(Build::Solid), Some(Build::Hollow), Some(Build::Sheet)] {
            let (Filled::Share([least, usual, most]) | Filled::Skin([least, usual, most])) = filled(build);
            assert!(0 < least && least < usual && usual < most);
        }
    }

    /// Break: let the row of `alloy` alone stand first.
    #[test]
    fn an_alloy_is_what_it_is_an_alloy_of() {
        let told =
            ["alloy steel", "aluminium bronze", "zinc alloy", "brass alloy", "alloy", "light alloy"].map(density);
        assert_eq!(told, [7_850, 7_600, 6_700, 8_500, 2_700, 2_700].map(Some));
    }
}
