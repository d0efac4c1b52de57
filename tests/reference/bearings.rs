//! Bearings and seals by designation, against tables from outside.

use asfound_core::quantity::Length;
use asfound_core::tables::{Bearing, BearingDamage, BearingSource, BearingSuffix, DamageClass, bearing, seal};

fn sizes(found: &Bearing) -> [i64; 3] {
    [found.bore, found.outside, found.width].map(Length::nanometres)
}

fn millimetres(all: [f64; 3]) -> [i64; 3] {
    #[expect(clippy::cast_possible_truncation, reason = "below a metre")]
    all.map(|size| (size * 1e6).round() as i64)
}

/// boltsparts/BOLTS, `data/bearings.blt` (DIN 625-1): `6204` is 20 × 47 × 14.
#[test]
fn deep_groove() {
    let rows = [
        ("6000", [10.0, 26.0, 8.0]),
        ("6003", [17.0, 35.0, 10.0]),
        ("6007", [35.0, 62.0, 14.0]),
        ("6200", [10.0, 30.0, 9.0]),
        ("6201", [12.0, 32.0, 10.0]),
        ("6202", [15.0, 35.0, 11.0]),
        ("6203", [17.0, 40.0, 12.0]),
        ("6204", [20.0, 47.0, 14.0]),
        ("6205", [25.0, 52.0, 15.0]),
        ("6206", [30.0, 62.0, 16.0]),
        ("6207", [35.0, 72.0, 17.0]),
        ("6209", [45.0, 85.0, 19.0]),
        ("6304", [20.0, 52.0, 15.0]),
        ("6305", [25.0, 62.0, 17.0]),
    ];
    for (designation, expected) in rows {
        let found = bearing(designation).expect(designation);
        assert_eq!((sizes(&found), found.source), (millimetres(expected), BearingSource::Din625), "{designation}");
    }
}

/// The bore code: 00 to 03 are 10, 12, 15, 17 mm, from 04 on five times the code (ISO 15; the rows of DIN 625-1 keep it).
#[test]
fn bore_codes() {
    for series in ["60", "62", "63"] {
        for code in 0..=10_i64 {
            let expected = [10, 12, 15, 17].get(usize::try_from(code).expect("small")).copied().unwrap_or(code * 5);
            let designation = format!("{series}{code:02}");
            assert_eq!(
                bearing(&designation).expect(&designation).bore.nanometres(),
                expected * 1_000_000,
                "{designation}"
            );
        }
    }
}

/// The same table, inch sizes: RLS8 is 1 × 2.25 × .625, RLS4 .5 × 1.3125 × .375, RLS12 1.5 × 3.25 × .75 in.
#[test]
fn inch_balls() {
    let inches = |all: [f64; 3]| millimetres(all.map(|size| size * 25.4));
    assert_eq!(sizes(&bearing("RLS8").expect("known")), inches([1.0, 2.25, 0.625]));
    assert_eq!(sizes(&bearing("rls 4").expect("known")), inches([0.5, 1.312_5, 0.375]));
    assert_eq!(sizes(&bearing("RLS-12").expect("known")), inches([1.5, 3.25, 0.75]));
}

/// `bd_warehouse` 0.4.0, `single_row_tapered_roller_bearing_parameters.csv`: d × D × T.
#[test]
fn metric_tapers() {
    let rows = [
        ("30204", [20.0, 47.0, 15.25]),
        ("30205", [25.0, 52.0, 16.25]),
        ("30206", [30.0, 62.0, 17.25]),
        ("30304", [20.0, 52.0, 16.25]),
        ("32004", [20.0, 42.0, 15.0]),
        ("32306", [30.0, 72.0, 28.75]),
    ];
    for (designation, expected) in rows {
        assert_eq!(sizes(&bearing(designation).expect(designation)), millimetres(expected), "{designation}");
    }
    let found = bearing("32004 X/Q").expect("known");
    assert_eq!((found.designation.as_str(), found.not_read.as_str()), ("32004", "XQ"));
}

/// Tables of two public repositories (LM67048 stands in both), in millimetres; L44643 is doubtful: one table prints a width of
/// 14.732, from memory it is 14.224.
#[test]
fn inch_tapers() {
    let rows = [
        ("LM11749/10", [17.462, 39.878, 13.843]),
        ("LM12749/LM12710", [21.986, 45.237, 15.494]),
        ("lm67048", [31.75, 59.131, 15.875]),
        ("25877/25821", [34.925, 73.025, 23.812]),
    ];
    for (stamped, expected) in rows {
        let found = bearing(stamped).expect(stamped);
        assert_eq!((sizes(&found), found.or_width), (millimetres(expected), None), "{stamped}");
    }
    let doubtful = bearing("L44643/10").expect("known");
    assert_eq!((doubtful.width, doubtful.or_width), (Length(14_732_000), Some(Length(14_224_000))));
}

/// Suffixes, common practice: each is read where its meaning is the same with every maker, and what is not read is said.
#[test]
fn suffixes() {
    let read = |stamped| {
        let found = bearing(stamped).expect(stamped);
        assert_eq!(found.designation, "6204");
        (found.suffixes, found.not_read)
    };
    let (seals, shields) = (BearingSuffix::TwoSeals, BearingSuffix::TwoShields);
    assert_eq!(read("6204-2RS"), (vec![seals], String::new()));
    assert_eq!(read("62042RS"), (vec![seals], String::new()));
    assert_eq!(read("6204 ZZ C3"), (vec![shields, BearingSuffix::MorePlay], String::new()));
    assert_eq!(read(" 6204zz"), (vec![shields], String::new()));
    assert_eq!(read("6204-2RS1/C3GJN"), (vec![seals, BearingSuffix::MorePlay], "GJN".to_owned()));
    assert_eq!(read("6204 N"), (vec![BearingSuffix::SnapRingGroove], String::new()));
    assert_eq!(read("6204 DDU"), (vec![], "DDU".to_owned()));
    for unknown in ["", "6", "62040", "16004", "S6204", "6299", "bearing"] {
        assert_eq!(bearing(unknown), None, "{unknown}");
    }
}

/// ISO 6194-1 / DIN 3760 as quoted in a table of components: shaft, bore, width, in this order.
#[test]
fn seals() {
    for (written, expected) in [("25x40x7", [25, 40, 7]), ("30 × 50 × 8", [30, 50, 8]), ("40-62-10", [40, 62, 10])] {
        let found = seal(written).expect(written);
        assert_eq!([found.shaft, found.bore, found.width], expected.map(|size| Length(size * 1_000_000)), "{written}");
    }
    let halves = seal("22,2X35X6.5 BAUMSLX7").expect("three");
    assert_eq!(
        (halves.shaft, halves.width, halves.not_read.as_str()),
        (Length(22_200_000), Length(6_500_000), "BAUMSLX7")
    );
    for refused in ["", "25x40", "40x25x7", "25x40x", "x40x7", "0x40x7", "25 40 7"] {
        assert_eq!(seal(refused), None, "{refused}");
    }
}

/// ISO 15243:2017, contents, 5.1 to 5.6, and a maker's page that restates the division: two of fatigue, two of wear, three of
/// corrosion, two of electrical erosion, three of plastic deformation, three of fracture.
#[test]
fn damage_groups() {
    let count = |class| BearingDamage::ALL.iter().filter(|damage| damage.class() == class).count();
    let counts: Vec<_> = DamageClass::ALL.iter().map(|class| (class.word(), count(*class))).collect();
    let expected = [
        ("fatigue", 2),
        ("wear", 2),
        ("corrosion", 3),
        ("electrical-erosion", 2),
        ("plastic-deformation", 3),
        ("fracture", 3),
    ];
    assert_eq!(counts, expected);
    assert_eq!(BearingDamage::FalseBrinelling.class(), DamageClass::Corrosion);
    assert_eq!(BearingDamage::CurrentLeakage.class(), DamageClass::ElectricalErosion);
    assert_eq!(BearingDamage::ThermalCracking.class(), DamageClass::Fracture);
}
