//! What would settle a reading, which place governs, limits kept apart, and sizes to machine to.

use asfound_core::inspect::{
    Bounds, Instrument, Limits, Measured, Proved, Rule, SizeSteps, Surface, Use, after_cut, against, measured,
    next_size, prove, settling, wear, worst,
};
use asfound_core::tables::UsualInstrument;
use proptest::prelude::*;

use crate::cases;

const RULES: [Rule; 2] = [Rule::Whole1998, Rule::OneSided2017];

/// A place about 30 mm, in nanometres.
fn any_place() -> impl Strategy<Value = Measured> {
    let readings = prop::collection::vec((-20_000_i32..20_000).prop_map(|off| 30_000_000.0 + f64::from(off)), 1..6);
    let stated = prop::option::of((1_u32..40_000).prop_map(f64::from));
    (readings, 1_u32..60_000, stated).prop_map(|(readings, resolution, stated)| {
        let instrument = Instrument { resolution: Some(f64::from(resolution)), stated, ..Instrument::default() };
        measured(&readings, &instrument).expect("readings")
    })
}

/// An end of a limit, near enough to matter.
fn any_end() -> impl Strategy<Value = f64> {
    (-60_000_i32..60_000).prop_map(|off| 30_000_000.0 + f64::from(off))
}

fn any_bounds() -> impl Strategy<Value = Bounds> {
    prop_oneof![
        any_end().prop_map(Bounds::at_least),
        any_end().prop_map(Bounds::at_most),
        (any_end(), 0_u32..90_000)
            .prop_map(|(least, wide)| Bounds { least: Some(least), most: Some(least + f64::from(wide)) }),
    ]
}

fn proved(place: &Measured, bounds: &Bounds, rule: Rule) -> Proved {
    prove(place, bounds, rule).expect("limited").proved
}

fn mirrored(place: &Measured) -> Measured {
    Measured { value: -place.value, ..place.clone() }
}

fn mirror(bounds: &Bounds) -> Bounds {
    Bounds { least: bounds.most.map(|most| -most), most: bounds.least.map(|least| -least) }
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// What is said to settle a reading settles it, and one repeat less does not; nothing is said where it is settled.
    /// Breaks with `measured.count + 3..` for `measured.count + 1..`, or `high` for `low` as the share.
    #[test]
    fn what_would_settle_settles(place in any_place(), bounds in any_bounds(), by_whole in any::<bool>()) {
        let rule = RULES[usize::from(by_whole)];
        let found = settling(&place, &bounds, rule);
        prop_assert_eq!(found.is_some(), proved(&place, &bounds, rule) == Proved::Nothing);
        let Some(found) = found else { return Ok(()) };
        let settles = |place: Measured| proved(&place, &bounds, rule) != Proved::Nothing;
        let repeated = |count| place.repeated(count).is_some_and(settles);
        let first = (place.count + 1..=30).find(|count| repeated(*count));
        prop_assert_eq!(found.repeats, first);
        prop_assert_eq!(place.deviation.is_none(), place.repeated(30).is_none());
        match found.share {
            Some(share) => {
                prop_assert!(settles(place.finer(share)));
                prop_assert!(!settles(place.finer(share + 3e-6)), "{} is not the largest", share);
            }
            None => prop_assert!(!settles(place.finer(1e-6))),
        }
        for usual in UsualInstrument::ALL {
            prop_assert_eq!(found.instruments.contains(usual), settles(place.with(&Instrument::from(*usual))));
        }
    }

    /// Several places are good only when each of them is, and bad when one is, in whatever order they were measured; the
    /// place that governs one limit is the one that the mirror shows.
    /// Breaks with `max_by` for `min_by` in `worst`.
    #[test]
    fn the_worst_place_governs(places in prop::collection::vec(any_place(), 1..6), bounds in any_bounds(), turn in 0_usize..6) {
        for rule in RULES {
            let all: Vec<_> = places.iter().map(|place| proved(place, &bounds, rule)).collect();
            let (at, proof) = worst(&places, &bounds, rule).expect("limited");
            prop_assert_eq!(Some(proof.proved), all.iter().copied().min());
            prop_assert_eq!(Some(proof), prove(&places[at], &bounds, rule));
            let mut turned = places.clone();
            turned.rotate_left(turn % places.len());
            prop_assert_eq!(worst(&turned, &bounds, rule).map(|(_, proof)| proof.margin), Some(proof.margin));
            let reflected: Vec<_> = places.iter().map(mirrored).collect();
            prop_assert_eq!(worst(&reflected, &mirror(&bounds), rule).map(|(at, _)| at), Some(at));
        }
    }

    /// Equally unsure places: the least mean governs a least size, the greatest a greatest one.
    /// Breaks when `worst` compares the margins the other way round.
    #[test]
    fn of_equally_unsure_places_the_extreme_governs(offs in prop::collection::vec(-40_000_i32..40_000, 1..6), end in any_end()) {
        let gauge = Instrument { resolution: Some(10_000.0), ..Instrument::default() };
        let values: Vec<_> = offs.iter().map(|off| 30_000_000.0 + f64::from(*off)).collect();
        let places: Vec<_> = values.iter().map(|value| measured(&[*value], &gauge).expect("one")).collect();
        let governs = |bounds| worst(&places, &bounds, Rule::OneSided2017).map(|(at, _)| values[at]);
        prop_assert_eq!(governs(Bounds::at_least(end)), values.iter().copied().reduce(f64::min));
        prop_assert_eq!(governs(Bounds::at_most(end)), values.iter().copied().reduce(f64::max));
    }

    /// A stricter machining limit never makes scrap usable nor allows more; and all is the same in the mirror: shafts and
    /// bores. What may be cut off at most is still proved good, a little more is not.
    /// Breaks when `allows` asks the machining limit before the discard limit, or `most_cut` leaves out the guard band.
    #[test]
    fn limits_are_kept_apart(
        place in any_place(),
        (discard, stricter, stricter_yet) in (any_end(), -40_000_i32..40_000, 0_u32..40_000),
        new in any_end(),
    ) {
        let machining = discard + f64::from(stricter);
        let limits = |machining| {
            let as_new = Some(new);
            Limits { discard: Bounds::at_least(discard), machining: Bounds::at_least(machining), as_new }
        };
        let reflected = Limits {
            discard: mirror(&limits(machining).discard),
            machining: mirror(&limits(machining).machining),
            as_new: Some(-new),
        };
        for rule in RULES {
            let found = against(&place, &limits(machining), rule);
            let strict = against(&place, &limits(machining + f64::from(stricter_yet)), rule);
            prop_assert_eq!(found.allows == Use::Scrap, proved(&place, &Bounds::at_least(discard), rule) == Proved::Bad);
            prop_assert_eq!(found.allows == Use::Scrap, strict.allows == Use::Scrap);
            prop_assert_eq!(found.allows == Use::NotProved, strict.allows == Use::NotProved);
            prop_assert!(found.allows == Use::MayBeCut || strict.allows != Use::MayBeCut);
            // Also where somebody typed the two limits the wrong way round.
            let is_good = proved(&place, &Bounds::at_least(discard), rule) == Proved::Good;
            prop_assert!(is_good || [Use::Scrap, Use::NotProved].contains(&found.allows));
            let image = against(&mirrored(&place), &reflected, rule);
            prop_assert_eq!((found.allows, found.wear, found.most_cut), (image.allows, image.wear, image.most_cut));
            if let Some(most) = found.most_cut {
                let after = |cut| after_cut(&place, cut, &limits(machining), rule).expect("one limit").proved;
                prop_assert_eq!(after((most - 0.01).max(0.0)), Proved::Good);
                prop_assert_ne!(after(most + 0.01), Proved::Good);
            }
        }
    }

    /// Wear is 0 at the size when new, 1 at the discard limit, and grows evenly between and beyond.
    /// Breaks with `value - new` in `wear`.
    #[test]
    fn wear_is_a_share_of_the_allowance(new in any_end(), end in any_end(), hundredths in -300_i32..500) {
        prop_assume!((new - end).abs() > 1_000.0);
        let discard = if end < new { Bounds::at_least(end) } else { Bounds::at_most(end) };
        let limits = Limits { discard, as_new: Some(new), ..Limits::default() };
        let share = f64::from(hundredths) / 100.0;
        let found = wear(new + share * (end - new), &limits).expect("an allowance");
        prop_assert!((found.share - share).abs() < 1e-6);
        prop_assert_eq!(wear(new, &limits).map(|wear| wear.share), Some(0.0));
        prop_assert_eq!(wear(end, &limits).map(|wear| wear.share), Some(1.0));
    }

    /// The next size removes all wear wherever it is, with the cut asked for; the step before it would not; a journal is a
    /// bore in the mirror.
    /// Breaks when `next_size` leaves out the uncertainty, or takes the last step.
    #[test]
    fn the_next_size_cleans_up(
        places in prop::collection::vec(any_place(), 1..6),
        (worn, cut) in (0_i32..1_800_000, 0_u32..100_000),
        is_inch in any::<bool>(),
    ) {
        let steps = if is_inch { SizeSteps::Inch } else { SizeSteps::Metric };
        let (new, cut) = (30_000_000.0 - f64::from(worn), f64::from(cut));
        let cleans = |step: f64| places.iter().all(|place| new + step >= place.value + place.expanded + cut);
        let found = next_size(&places, new, Surface::Bore, steps, cut);
        let first = steps.nanometres().iter().copied().find(|step| cleans(*step));
        prop_assert_eq!(found.map(|next| next.step), first);
        let reflected: Vec<_> = places.iter().map(mirrored).collect();
        let journal = next_size(&reflected, -new, Surface::Journal, steps, cut);
        prop_assert_eq!(journal.map(|next| (next.step, -next.size, next.spare)), found.map(|next| (next.step, next.size, next.spare)));
    }
}
