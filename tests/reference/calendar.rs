use asfound_core::quantity::Millis;
use jiff::Timestamp;

/// Every day of four hundred years and the ends of the clock, against jiff 1.0.2 (proleptic Gregorian calendar).
#[test]
fn every_day_has_the_date_of_another_calendar() {
    const DAY: i64 = 86_400_000;
    for day in -80_000..70_000 {
        for within in [0, 1, DAY - 1] {
            let at = day * DAY + within;
            let other = Timestamp::from_millisecond(at).expect("within its years");
            assert_eq!(Millis(at).date(), other.strftime("%Y-%m-%d").to_string(), "{at}");
        }
    }
}

/// A clock that is as wrong as a clock can be still has a date.
#[test]
fn the_ends_of_the_clock_have_a_date() {
    assert!(Millis(i64::MAX).date().ends_with("-08-17"));
    assert!(Millis(i64::MIN).date().starts_with('-'));
}
