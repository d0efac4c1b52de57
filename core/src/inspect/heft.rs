use serde::{Deserialize, Serialize};

use crate::job::vocabulary::Build;
use crate::quantity::{Mass, bounds};
use crate::record::{FieldName, Item, stored_enum};
use crate::tables::densities::{Filled, density, filled};

/// From about so many grams on two people lift (common practice, no source).
pub const TWO_FROM: i64 = 15_000;
/// The same at arm's reach: on a shelf above the shoulder, deep in a rack (common practice, no source).
pub const TWO_AT_REACH_FROM: i64 = 10_000;

/// How heavy one piece of a part is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Heft {
    /// The mass: weighed, or the usual one of such a size and material.
    pub mass: Mass,
    /// Guessed from size, material and build: the least and the most it may be. Nothing when somebody said it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub guess: Option<HeftGuess>,
}

/// The range of a guess.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct HeftGuess {
    /// The least.
    pub least: Mass,
    /// The most.
    pub most: Mass,
    /// Nobody said how much of its size is filled.
    pub any_build: bool,
}

stored_enum! {
    /// How a part is lifted.
    pub enum Lift {
        /// By one.
        Alone = "alone",
        /// By two at arm's reach.
        TwoAtReach = "two-at-reach",
        /// By two.
        Two = "two",
    }
}

/// How heavy a part is: as somebody said, else by its size, material and build; nothing where one of these is not known.
#[must_use]
pub fn heft(part: &Item) -> Option<Heft> {
    if let Some(mass) = part.read::<Mass>(FieldName::Mass) {
        return Some(Heft { mass, guess: None });
    }
    let sides = [FieldName::Long, FieldName::Wide, FieldName::High].map(|side| part.read::<i64>(side));
    let [long, wide, high] = [sides[0]?, sides[1]?, sides[2]?];
    if ![long, wide, high].iter().all(|side| bounds::SPAN.holds(*side)) {
        return None;
    }
    let material: String = part.read(FieldName::Material)?;
    guess_mass([long, wide, high], density(&material)?, build_of(part))
}

/// The mass of a box of these sides (nanometres), of a density (kilograms in a cubic metre), as far as it is filled.
fn guess_mass(sides: [i64; 3], density: i64, build: Option<Build>) -> Option<Heft> {
    // Micrometres are finer than any tape; their product with a density stays exact in 128 bits.
    let mut sides = sides.map(|side| i128::from(side / 1_000));
    sides.sort_unstable();
    let [least, middle, most] = sides;
    // Cubic micrometres × kilograms in a cubic metre: 10^15 of them to the gram.
    let grams = |volume: i128| {
        let grams = volume.checked_mul(i128::from(density))? / 1_000_000_000_000_000;
        i64::try_from(grams).ok().map(|grams| Mass(grams.min(bounds::MASS.most)))
    };
    let mass = |how_much: usize| {
        let face = middle.checked_mul(most)?;
        grams(match filled(build) {
            Filled::Share(shares) => face.checked_mul(least)?.checked_mul(i128::from(shares[how_much]))? / 100,
            // No skin is thicker than the thing itself.
            Filled::Skin(skins) => face.checked_mul(i128::from(skins[how_much]).min(least))?,
        })
    };
    let guess = HeftGuess { least: mass(0)?, most: mass(2)?, any_build: build.is_none() };
    Some(Heft { mass: mass(1)?, guess: Some(guess) })
}

/// How much of its size is filled: as somebody said; a panel is sheet.
#[must_use]
pub fn build_of(part: &Item) -> Option<Build> {
    part.read(FieldName::Build).or_else(|| (part.read::<String>(FieldName::Family)? == "panel").then_some(Build::Sheet))
}

/// How a part is lifted: as somebody said; else by its mass, a guess counting at its usual value. Nothing is known without.
#[must_use]
pub fn lift(part: &Item) -> Option<Lift> {
    if let Some(two) = part.read::<bool>(FieldName::TwoPerson) {
        return Some(if two { Lift::Two } else { Lift::Alone });
    }
    Some(match heft(part)?.mass.grams() {
        TWO_FROM.. => Lift::Two,
        TWO_AT_REACH_FROM.. => Lift::TwoAtReach,
        _ => Lift::Alone,
    })
}

/// Whether that is more than a guess.
pub(super) fn is_lift_known(part: &Item) -> bool {
    part.read::<bool>(FieldName::TwoPerson).is_some() || part.read::<Mass>(FieldName::Mass).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;

    const MILLIMETRE: i64 = 1_000_000;

    /// By hand: 100 × 100 × 100 mm is a litre; of steel, all of it, 7.85 kg.
    #[test]
    fn a_guess_is_size_by_density_by_share() {
        let side = 100 * MILLIMETRE;
        let solid = guess_mass([side; 3], 7_850, Some(Build::Solid)).unwrap();
        assert_eq!(solid.mass, Mass(5_102));
        assert_eq!(solid.guess, Some(HeftGuess { least: Mass(3_532), most: Mass(7_065), any_build: false }));
        // A drum of 280 × 280 × 90 mm in cast iron: 7.056 litres of box, a quarter of it iron.
        let drum = guess_mass([280 * MILLIMETRE, 280 * MILLIMETRE, 90 * MILLIMETRE], 7_200, Some(Build::Hollow));
        assert_eq!(drum.unwrap().mass, Mass(12_700));
        // A wing of 1,200 × 600 × 300 mm in steel: a face of 0.72 m², 1.3 mm of it, makes 0.936 litres.
        let wing = guess_mass([300 * MILLIMETRE, 1_200 * MILLIMETRE, 600 * MILLIMETRE], 7_850, Some(Build::Sheet));
        assert_eq!(wing.unwrap().mass, Mass(7_347));
        // A washer plate of 1 mm is not thicker than that.
        let plate = guess_mass([100 * MILLIMETRE, 100 * MILLIMETRE, MILLIMETRE], 7_850, Some(Build::Sheet)).unwrap();
        assert_eq!([plate.mass, plate.guess.unwrap().most], [Mass(78), Mass(78)]);
    }

    #[test]
    fn the_greatest_stays_within_bounds() {
        let heft = guess_mass([bounds::SPAN.most; 3], 11_340, Some(Build::Solid)).unwrap();
        assert_eq!(heft.mass, Mass(bounds::MASS.most));
    }
}
