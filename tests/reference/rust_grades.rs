//! Grades of rust and preparation, against the standards as restated.

use asfound_core::tables::{CoatingRust, D610_PERCENT, Preparation, RustGrade, d610_grade};

/// ASTM D610-08 (2012), table 1: the most rust, in percent of the surface, of each grade.
#[test]
fn d610() {
    let rows =
        [(10, 0.01), (9, 0.03), (8, 0.1), (7, 0.3), (6, 1.0), (5, 3.0), (4, 10.0), (3, 16.0), (2, 33.0), (1, 50.0)];
    for ((grade, most), shipped) in rows.into_iter().zip(D610_PERCENT) {
        assert_eq!((d610_grade(most), d610_grade(most * 1.001)), (Some(grade), Some(grade - 1)), "{most} %");
        assert_eq!(shipped.to_bits(), f64::to_bits(most));
    }
    assert_eq!(d610_grade(100.0), Some(0));
    assert_eq!([-0.1, 100.1, f64::NAN].map(d610_grade), [None; 3]);
}

/// ISO 4628-3, correlation table of a coating survey site: Ri 0 to Ri 5 are 0, .05, .5, 1, 8, 40 to 50 %.
#[test]
fn coating_rust() {
    use CoatingRust::{Ri0, Ri1, Ri2, Ri3, Ri4, Ri5};
    let rows = [(Ri0, 0.0), (Ri1, 0.05), (Ri2, 0.5), (Ri3, 1.0), (Ri4, 8.0), (Ri5, 40.0), (Ri5, 50.0)];
    for (grade, percent) in rows {
        assert_eq!(CoatingRust::of_percent(percent), Some(grade), "{percent} %");
    }
    assert_eq!([0.01, 0.051, 0.6, 1.1, 8.1].map(CoatingRust::of_percent), [Ri1, Ri2, Ri3, Ri4, Ri5].map(Some));
    assert_eq!([-0.1, 50.1, f64::NAN].map(CoatingRust::of_percent), [None; 3]);
}

/// ISO 8501-1:2007 as restated by an inspection guide: four grades of rust, which have no shares of the surface; and six of
/// preparation (the Sa ones by a book of rust grades, St from memory).
#[test]
fn iso_8501_1() {
    assert_eq!(RustGrade::ALL.iter().map(|grade| grade.word()).collect::<Vec<_>>(), ["a", "b", "c", "d"]);
    let words: Vec<_> = Preparation::ALL.iter().map(|grade| grade.word()).collect();
    assert_eq!(words, ["st-2", "st-3", "sa-1", "sa-2", "sa-2-half", "sa-3"]);
}
