//! Gearing: what must hold whatever the figures.

use asfound_core::gearing::{Drivetrain, Rolling, Speed, Tyre, engine_speed, more_turns, per_1000, read_ratios};
use proptest::prelude::*;

use crate::cases;

fn any_rolling() -> impl Strategy<Value = Rolling> {
    (800.0..4_000.0).prop_map(|length: f64| Rolling::of_circumference(length).expect("within bounds"))
}

fn near(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * one.abs().max(other.abs()).max(1.0)
}

fn shortest_first(mut gears: Vec<f64>) -> Vec<f64> {
    gears.sort_by(f64::total_cmp);
    gears.reverse();
    gears.dedup();
    gears
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// The speed at 1000 turns, driven, turns the engine 1000 times.
    /// Break: in `engine_speed` divide by `overall`.
    #[test]
    fn speed_and_turns_undo_one_another(overall in 0.5..20.0_f64, rolling in any_rolling()) {
        prop_assert!(near(engine_speed(per_1000(overall, rolling), overall, rolling), 1_000.0));
    }

    /// Miles and kilometres: by turns a mile and by turns a kilometre a tyre is the same.
    /// Break: in `turns_per_km` divide by `MILE`.
    #[test]
    fn a_tyre_is_the_same_in_either_unit(rolling in any_rolling()) {
        let again = Rolling::of_turns_per_mile(rolling.turns_per_km() * 1.609_344).expect("within bounds");
        prop_assert!(near(again.circumference(), rolling.circumference()));
        prop_assert!(near(Rolling::of_diameter(rolling.diameter()).expect("within bounds").circumference(), rolling.circumference()));
        prop_assert!(near(Speed::from_kmh(Speed::from_mph(70.0).kmh()).mph(), 70.0));
    }

    /// There and back is nothing; by way of a third it is the same.
    /// Break: in `more_turns` divide after by before.
    #[test]
    fn changes_multiply(ratios in prop::array::uniform3(0.5..20.0_f64), rollings in prop::array::uniform3(any_rolling())) {
        let at = |index: usize| (ratios[index], rollings[index]);
        let share = |from, to| 1.0 + more_turns(at(from), at(to));
        prop_assert!(near(share(0, 1) * share(1, 2), share(0, 2)));
        prop_assert!(near(share(0, 1) * share(1, 0), 1.0));
        // A longer axle turns the engine less, a larger tyre too.
        prop_assert_eq!(share(0, 1) < 1.0, ratios[1] / rollings[1].circumference() < ratios[0] / rollings[0].circumference());
    }

    /// Of each gear there is one row, and one more for each on which the overdrive works; never another.
    /// Break: in `drives` let the overdrive work on the lower gears.
    #[test]
    fn the_overdrive_works_on_the_upper_gears(gears in prop::collection::vec(0.3..5.0_f64, 1..7), on in 1_usize..9, over in 0.6..0.9_f64) {
        let gears = shortest_first(gears);
        let train = Drivetrain::new(4.0, gears.clone(), Some((over, on))).expect("ratios");
        let drives = train.drives();
        prop_assert_eq!(drives.len(), gears.len() + on.min(gears.len()));
        for (at, gear) in gears.iter().enumerate() {
            let of: Vec<_> = drives.iter().filter(|drive| drive.gear == at + 1).collect();
            prop_assert!(near(of[0].overall, gear * 4.0) && !of[0].overdriven);
            prop_assert_eq!(of.len() == 2, at + on >= gears.len());
            prop_assert!(of.iter().skip(1).all(|drive| drive.overdriven && near(drive.overall, gear * 4.0 * over)));
        }
    }

    /// However a list is written, the gears are the same.
    /// Break: in `read_ratios` leave out the turning round.
    #[test]
    fn a_list_of_gears_reads_alike(hundredths in prop::collection::btree_set(20_u32..900, 2..8), form in 0..4_usize) {
        let mut gears: Vec<f64> = hundredths.iter().map(|gear| f64::from(*gear) / 100.0).collect();
        let rising: Vec<String> = gears.iter().map(|gear| format!("{gear:.2}")).collect();
        gears.reverse();
        let falling: Vec<String> = rising.iter().rev().cloned().collect();
        let text = match form {
            0 => falling.join(", "),
            1 => rising.join("/"),
            2 => falling.join(" ").replace('.', ","),
            _ => rising.join("; ").replace('.', ","),
        };
        prop_assert_eq!(read_ratios(&text), Ok(gears), "{}", text);
    }

    /// A size that is written out in any of the usual ways says the same, and never a diameter below the rim.
    /// Break: in `Tyre::diameter` count the height once.
    #[test]
    fn a_marking_reads_alike(width in 21_u32..70, aspect in 5_u32..17, rim in 10_u32..20, form in 0..5_usize) {
        let (width, aspect) = (width * 5, aspect * 5);
        let text = match form {
            0 => format!("{width}/{aspect} R {rim}"),
            1 => format!("{width}/{aspect}R{rim} 91H"),
            2 => format!("{width}-{aspect}-{rim}"),
            3 => format!("{width}/{aspect} hr {rim} (82S) TL"),
            _ => format!("P{width}/{aspect}ZR{rim}"),
        };
        let tyre = Tyre::read(&text);
        let height = f64::from(width * aspect) / 100.0;
        prop_assert!(tyre.is_ok_and(|tyre| near(tyre.diameter() - tyre.rim, height * 2.0) && near(tyre.rim, f64::from(rim) * 25.4)), "{}", text);
    }

    /// Whatever is typed: read or refused, never a size that no wheel has.
    /// Break: in `Tyre::of` take any width.
    #[test]
    fn nothing_typed_is_a_size_that_no_wheel_has(text in "[0-9]{0,4}[./, xR-]{0,2}[0-9]{0,3}[ /RX-]{0,2}[0-9]{0,3}.{0,4}") {
        if let Ok(tyre) = Tyre::read(&text) {
            prop_assert!((250.0..2_000.0).contains(&tyre.diameter()), "{} {:?}", text, tyre);
            prop_assert!(Rolling::of_tyre(&tyre).is_some());
        }
        if let Ok(gears) = read_ratios(&text) {
            prop_assert!(gears.windows(2).all(|pair| pair[0] > pair[1]) && gears.iter().all(|gear| (0.2..=20.0).contains(gear)));
        }
    }
}
