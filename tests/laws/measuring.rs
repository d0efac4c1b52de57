//! Readings, what they prove, and the reader of what is typed.

use asfound_core::inspect::{Bounds, Instrument, Measured, Proved, Rule, chance, difference, measured, prove};
use asfound_core::quantity::{Dimension, Force, Length, Unit, Unreadable, bounds, read};
use proptest::prelude::*;

use crate::cases;

const RULES: [Rule; 2] = [Rule::Whole1998, Rule::OneSided2017];

/// Readings about 30 mm in nanometres, with the scatter of a garage.
fn any_readings() -> impl Strategy<Value = Vec<f64>> {
    let scatter = prop_oneof![Just(1_i32), 2..2_000, 2_000..60_000];
    (scatter, 1_usize..7).prop_flat_map(|(scatter, count)| {
        prop::collection::vec((-scatter..=scatter).prop_map(|off| 30_000_000.0 + f64::from(off)), count)
    })
}

fn any_instrument() -> impl Strategy<Value = Instrument> {
    let stated = prop::option::of((1_u32..60_000).prop_map(f64::from));
    let zero_error = prop::option::of((-20_000_i32..20_000).prop_map(f64::from));
    (1_u32..60_000, stated, zero_error, 100_u32..300).prop_map(|(resolution, stated, zero_error, factor)| Instrument {
        resolution: Some(f64::from(resolution)),
        stated,
        factor: f64::from(factor) / 100.0,
        zero_error,
    })
}

/// Limits whose ends lie so many of ten expanded uncertainties from a reading.
#[derive(Debug, Clone, Copy)]
struct Ends {
    least: Option<f64>,
    most: Option<f64>,
}

impl Ends {
    fn about(self, place: &Measured) -> Bounds {
        let scale = place.expanded.max(1.0);
        let at = |end: f64| place.value + end * scale;
        Bounds { least: self.least.map(|end| -end).map(at), most: self.most.map(at) }
    }
}

fn any_ends() -> impl Strategy<Value = Ends> {
    let end = || (-200_i32..300).prop_map(|hundredths| f64::from(hundredths) / 100.0);
    let both = (end(), end()).prop_filter_map("the least is above the most", |(least, most)| {
        (-least < most).then_some(Ends { least: Some(least), most: Some(most) })
    });
    // Two ends nearer to one another than the instrument tells apart.
    let narrow = (-30_i32..30, 0_u32..10).prop_map(|(middle, half)| {
        let (middle, half) = (f64::from(middle) / 100.0, f64::from(half) / 100.0);
        Ends { least: Some(half - middle), most: Some(middle + half) }
    });
    prop_oneof![
        end().prop_map(|most| Ends { least: None, most: Some(most) }),
        end().prop_map(|least| Ends { least: Some(least), most: None }),
        both,
        narrow,
    ]
}

fn proved(place: &Measured, limits: &Bounds, rule: Rule) -> Proved {
    prove(place, limits, rule).expect("limited").proved
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// A tighter limit never turns bad into good, nor not proved into good; and never raises the chance of conforming.
    /// Breaks with `inside <= 0.0` for `inside >= 0.0` in `outside`, or `margin <= measured.expanded` in `verdict`.
    #[test]
    fn tighter_is_never_better(
        readings in any_readings(),
        instrument in any_instrument(),
        ends in any_ends(),
        (up, down) in (0_u32..200, 0_u32..200),
    ) {
        let place = measured(&readings, &instrument).expect("readings");
        let wide = ends.about(&place);
        let by = |hundredths| f64::from(hundredths) / 100.0 * place.expanded;
        let tight = Bounds { least: wide.least.map(|least| least + by(up)), most: wide.most.map(|most| most - by(down)) };
        for rule in RULES {
            prop_assert!(proved(&place, &tight, rule) <= proved(&place, &wide, rule));
        }
        prop_assert!(chance(&place, &tight) <= chance(&place, &wide) + 1e-12);
    }

    /// What is proved stays proved with an instrument that is better in any part, for the same readings.
    /// Breaks when `widths` leaves out the repeats alone, when the degrees of freedom are cut to whole ones, or when what has
    /// little chance of conforming counts as proved bad.
    #[test]
    fn a_better_instrument_takes_no_proof_away(
        readings in any_readings(),
        instrument in any_instrument(),
        ends in any_ends(),
        (step, stated) in (1_u32..=100, 1_u32..=100),
    ) {
        let better = Instrument {
            resolution: instrument.resolution.map(|all| all * f64::from(step) / 100.0),
            stated: instrument.stated.map(|all| all * f64::from(stated) / 100.0),
            ..instrument
        };
        let (worse, better) = (measured(&readings, &instrument), measured(&readings, &better));
        let (worse, better) = (worse.expect("readings"), better.expect("readings"));
        prop_assert!(better.expanded <= worse.expanded * (1.0 + 1e-12));
        let limits = ends.about(&worse);
        for rule in RULES {
            let before = proved(&worse, &limits, rule);
            prop_assert!(before == Proved::Nothing || proved(&better, &limits, rule) == before);
        }
    }

    /// The chance of conforming is the share of draws that conform: of a normal distribution where the instrument is all, of
    /// Student's t where the repeats are nearly all.
    /// Breaks when `beyond` divides by the expanded uncertainty, or `beta_share` is not halved in `tail`.
    #[test]
    fn the_chance_agrees_with_draws(
        readings in any_readings(),
        step in 1_u32..60_000,
        by_instrument in any::<bool>(),
        ends in any_ends(),
        seed in any::<u64>(),
    ) {
        prop_assume!(by_instrument || readings.iter().any(|reading| *reading != readings[0]));
        let resolution = if by_instrument { f64::from(step) } else { 1e-3 };
        let instrument = Instrument { resolution: Some(resolution), ..Instrument::default() };
        let readings = if by_instrument { &readings[..1] } else { &readings };
        let place = measured(readings, &instrument).expect("readings");
        let limits = ends.about(&place);
        let freedom = if by_instrument { 0 } else { readings.len() - 1 };
        let mut draws = Draws(seed);
        let conforms = |value: f64| limits.margin(value) >= 0.0;
        let hits = (0..2_000).filter(|_| conforms(place.value + place.combined * draws.student(freedom))).count();
        let share = f64::from(u32::try_from(hits).expect("few")) / 2_000.0;
        let expected = chance(&place, &limits);
        let room = 5.0 * (expected * (1.0 - expected) / 2_000.0).sqrt() + 0.003;
        prop_assert!((share - expected).abs() <= room, "{share} of the draws, {expected} expected");
    }

    /// Taking off a zero error moves the reading by it, and neither scatter nor verdict against limits that move along.
    /// Breaks with `mean + zero_error` in `measured`.
    #[test]
    fn a_zero_error_moves_the_reading(readings in any_readings(), instrument in any_instrument()) {
        let zero = instrument.zero_error.unwrap_or(0.0);
        let raw = measured(&readings, &Instrument { zero_error: None, ..instrument }).expect("readings");
        let corrected = measured(&readings, &instrument).expect("readings");
        prop_assert_eq!(corrected.value.to_bits(), (raw.value - zero).to_bits());
        prop_assert_eq!(corrected.deviation, raw.deviation);
        prop_assert!(corrected.combined >= raw.combined);
    }

    /// A least size is a greatest one in the mirror: the same proof, to the bit. So is the other way round of a difference.
    /// Breaks with `>` for `>=` at one end in `verdict`, or `least - value` in `inside`.
    #[test]
    fn least_and_most_are_mirrored(
        readings in any_readings(),
        others in any_readings(),
        instrument in any_instrument(),
        ends in any_ends(),
    ) {
        let mirrored = |readings: &[f64]| readings.iter().map(|reading| -reading).collect::<Vec<_>>();
        let glass = Instrument { zero_error: instrument.zero_error.map(|zero| -zero), ..instrument };
        let [left, right] = [&readings, &others].map(|all| measured(all, &instrument).expect("readings"));
        let image = measured(&mirrored(&readings), &glass).expect("readings");
        let limits = ends.about(&left);
        let reflected = Bounds { least: limits.most.map(|most| -most), most: limits.least.map(|least| -least) };
        let apart = Bounds::differ_by(limits.margin(left.value).abs());
        for rule in RULES {
            let (one, other) = (prove(&left, &limits, rule).expect("limited"), prove(&image, &reflected, rule).expect("limited"));
            prop_assert_eq!((one.proved, one.guard, one.margin), (other.proved, other.guard, other.margin));
            prop_assert!((one.chance.expect("known") - other.chance.expect("known")).abs() < 1e-12);
            let (one, other) = (difference(&left, &right), difference(&right, &left));
            prop_assert_eq!(proved(&one, &apart, rule), proved(&other, &apart, rule));
        }
    }

    /// A length or force that was written is read as what it was, in every unit.
    /// Breaks with one decimal less for inches in `Unit::size`.
    #[test]
    fn what_is_written_is_read(amount in bounds::READING.least..=bounds::READING.most) {
        for unit in Unit::ALL {
            let text = format!("{} {}", unit.figures(amount), unit.symbol());
            // Nothing is tightened by less than nothing.
            let is_read = unit.dimension() != Dimension::Torque || bounds::TORQUE.holds(amount);
            let expected = if is_read { Ok(amount) } else { Err(Unreadable::OutOfBounds) };
            prop_assert_eq!(read(&text, *unit).map(|typed| typed.amount), expected, "{}", text);
        }
        for unit in [Unit::Millimetre, Unit::Inch, Unit::Thou] {
            prop_assert_eq!(Length::read(&Length(amount).write(unit), Unit::Millimetre), Ok(Length(amount)));
        }
        prop_assert_eq!(Force::read(&Force(amount).write(Unit::PoundForce), Unit::Newton), Ok(Force(amount)));
    }

    /// Whatever is typed is read or refused, within bounds; and what is read as a plain decimal is what any reader of
    /// decimals makes of it.
    /// Breaks when `digits` no longer counts figures, or `decimal` counts tens from the whole text.
    #[test]
    fn any_text_is_read_or_refused(
        wild in ".{0,40}",
        near in "[-+ ]{0,2}[0-9]{0,12}[-., /]{0,2}[0-9]{0,12}[ /]{0,1}[0-9]{0,3} ?(mm|in|\"|thou|ths|N|lbf|½|´|)",
        figures in "[0-9]{1,4}[.][0-9]{1,7}",
    ) {
        for text in [&wild, &near] {
            for unit in Unit::ALL {
                if let Ok(typed) = read(text, *unit) {
                    prop_assert!(bounds::READING.holds(typed.amount));
                    prop_assert_eq!(typed.unit.dimension(), unit.dimension());
                }
            }
        }
        let plain = figures.parse::<f64>().expect("a decimal") * 1e6;
        match Length::read(&figures, Unit::Millimetre) {
            #[expect(clippy::cast_precision_loss, reason = "below ten thousand millimetres")]
            Ok(length) => prop_assert!((length.0 as f64 - plain).abs() <= 0.501),
            Err(why) => prop_assert!(why == Unreadable::OutOfBounds && plain > 1e10),
        }
    }
}

/// Draws of our own, from a seed: `SplitMix64`, and Box and Muller's normal.
struct Draws(u64);

impl Draws {
    fn share(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut bits = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        bits = (bits ^ (bits >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        let high = u32::try_from((bits ^ (bits >> 31)) >> 32).expect("half of it");
        (f64::from(high) + 0.5) / 4_294_967_296.0
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * self.share().ln()).sqrt() * (std::f64::consts::TAU * self.share()).cos()
    }

    /// With no degrees of freedom: normal.
    fn student(&mut self, freedom: usize) -> f64 {
        let normal = self.normal();
        if freedom == 0 {
            return normal;
        }
        let squares: f64 = (0..freedom).map(|_| self.normal()).map(|draw| draw * draw).sum();
        normal / (squares / f64::from(u32::try_from(freedom).expect("few"))).sqrt()
    }
}
