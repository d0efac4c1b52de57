//! What a command may say: which records a field may point at, and which numbers it may hold.

use asfound_core::job::{Change, Command, Job, troubles};
use asfound_core::problem::{Code, Problem};
use asfound_core::quantity::{Area, Chance, Currency, ExchangeRate, Mass, Millis, Minutes, Money, Torque};
use asfound_core::record::{Entry, EntryId, Id, KeptQuote, KeptQuotes, Kind, Op};

use crate::any_entry::replica;
use crate::garage::Garage;

/// What `of` may name, by what it stands in.
fn of(kind: Kind) -> &'static [Kind] {
    match kind {
        Kind::Photo | Kind::Note => {
            &[Kind::Vehicle, Kind::Assembly, Kind::Part, Kind::Joint, Kind::Piece, Kind::Place, Kind::Purchase]
        }
        Kind::Cover => &[Kind::Quote],
        Kind::Joint
        | Kind::Quote
        | Kind::Choice
        | Kind::Finding
        | Kind::Reading
        | Kind::Limit
        | Kind::Delivery
        | Kind::Outing => &[Kind::Part],
        Kind::Count => &[Kind::Place],
        Kind::Sighting => &[Kind::Part, Kind::Place],
        Kind::GoesAfter => &[Kind::Assembly, Kind::Part],
        Kind::Consumable => &[Kind::Assembly, Kind::Part, Kind::Joint],
        Kind::Fluid => &[Kind::Assembly, Kind::Vehicle],
        Kind::Commissioning => &[Kind::Vehicle],
        Kind::Mark => &[Kind::Photo],
        Kind::Slice => &[Kind::Note],
        Kind::Tier => &[Kind::Supplier],
        Kind::Rule => &[Kind::Vehicle, Kind::Part, Kind::Quote],
        _ => &[],
    }
}

/// A garage with one record of each kind.
fn one_of_each() -> (Garage, Vec<(Kind, Id)>) {
    let mut garage = Garage::new();
    let mut ids = Vec::new();
    for kind in Kind::ALL.iter().copied().filter(|kind| *kind != Kind::Job) {
        let id = garage.fresh();
        let applied = garage.command(0, Command::Create { id, kind, changes: vec![] });
        assert_eq!(applied.problems, vec![], "{kind:?}");
        ids.push((kind, id));
    }
    ids.push((Kind::Job, garage.devices[0].id().expect("a job")));
    (garage, ids)
}

fn codes(problems: &[Problem]) -> Vec<Code> {
    problems.iter().map(|problem| problem.code).collect()
}

/// Break: in `Job::targets` let a mark be of a part.
#[test]
fn of_names_what_it_makes_sense_for() {
    let (mut garage, ids) = one_of_each();
    for (kind, id) in &ids {
        for (other, target) in &ids {
            let changes = vec![Change::Of(*target)];
            let problems = garage.command(0, Command::Change { ids: vec![*id], changes, seen: None }).problems;
            let expected = if of(*kind).contains(other) { vec![] } else { vec![Code::WrongKind] };
            let told: Vec<Code> = codes(&problems).into_iter().take(1).collect();
            assert_eq!(told, expected, "{kind:?} of {other:?}");
        }
    }
}

/// What came in from elsewhere is kept and told.
/// Break: in `of_target` ask for nothing.
#[test]
fn of_the_wrong_kind_that_came_in_is_told() {
    let id = |number| Id::from_bytes([number; 16]);
    let op = |number, change: &Change| Op {
        record: id(number),
        field: change.field().id(),
        value: change.store(),
        over: vec![],
    };
    let of = Op { record: id(1), ..op(1, &Change::Of(id(2))) };
    let ops = vec![op(1, &Change::Kind(Kind::Mark)), op(2, &Change::Kind(Kind::Place)), of];
    let entry = Entry { id: EntryId { replica: replica(1), seq: 1 }, at: Millis(0), ops };
    let problems = troubles(&Job::from_entries([entry]));
    assert_eq!(codes(&problems), vec![Code::WrongKind]);
}

/// A number as a change.
type Saying = fn(i64) -> Change;

/// Each number with one below and one above what it may be, and the ends of it.
fn numbers() -> Vec<(Kind, Saying, i64, i64)> {
    vec![
        (Kind::Job, |n| Change::HourValue(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Job, |n| Change::HandedOut(Millis(n)), -62_135_596_800_000, 253_402_300_799_999),
        (Kind::Block, Change::Number, 0, 19_999),
        (Kind::Vehicle, Change::Year, 1_000, 9_999),
        (Kind::Part, Change::Tag, 1, 9_999_999),
        (Kind::Part, Change::Quantity, 1, 100_000),
        (Kind::Part, |n| Change::Mass(Mass(n)), 0, 50_000_000),
        (Kind::Part, Change::Order, -1_000_000_000_000, 1_000_000_000_000),
        (Kind::Piece, Change::Thickness, 0, 50_000_000),
        (Kind::Photo, Change::Length, 0, 1_000_000_000_000),
        (Kind::Photo, |n| Change::Taken(Millis(n)), -62_135_596_800_000, 253_402_300_799_999),
        (Kind::Slice, Change::Lasts, 0, 1_000_000_000_000),
        (Kind::Mark, Change::X, -10_000, 20_000),
        (Kind::Mark, Change::Dy, -10_000, 20_000),
        (Kind::Quote, |n| Change::Cash(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Quote, |n| Change::Freight(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Quote, |n| Change::Surcharge(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Quote, |n| Change::CashMost(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Quote, |n| Change::Withheld(Chance(n)), 0, 10_000),
        (Kind::Quote, |n| Change::ExchangeRate(ExchangeRate(n)), 1, 1_000_000_000_000),
        (Kind::Quote, Change::Life, 1, 1_200),
        (Kind::Quote, Change::Wait, 0, 3_650),
        (Kind::Job, Change::Interest, 0, 5_000),
        (Kind::Job, Change::YearsKept, 1, 100),
        (Kind::Job, Change::TaxRate, 0, 10_000),
        (Kind::Quote, |n| Change::Rate(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Part, |n| Change::Area(Area(n)), 0, 1_000_000_000),
        (Kind::Supplier, Change::DutyRate, 0, 10_000),
        (Kind::Job, |n| Change::Threshold(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Reading, Change::Measured, -10_000_000_000, 10_000_000_000),
        (Kind::Instrument, Change::ZeroError, -10_000_000_000, 10_000_000_000),
        (Kind::Instrument, Change::Resolution, 0, 1_000_000_000),
        (Kind::Instrument, Change::Uncertainty, 0, 1_000_000_000),
        (Kind::Instrument, Change::Coverage, 50, 1_000),
        (Kind::Limit, Change::Least, -10_000_000_000, 10_000_000_000),
        (Kind::Limit, Change::MachiningMost, -10_000_000_000, 10_000_000_000),
        (Kind::Gearing, Change::AxleRatio, 5_000, 200_000),
        (Kind::Gearing, Change::Overdrive, 3_000, 30_000),
        (Kind::Gearing, Change::OverdriveOn, 1, 20),
        (Kind::Gearing, Change::Circumference, 500_000_000, 10_000_000_000),
        (Kind::Gearing, Change::TurnsPerMile, 16_094, 321_868),
        (Kind::Gearing, Change::Diameter, 160_000_000, 3_180_000_000),
        (Kind::Gearing, Change::HighestTurns, 100, 30_000),
        (Kind::Part, Change::Long, 1, 10_000_000_000),
        (Kind::Joint, |n| Change::Torque(Torque(n)), 0, 10_000_000_000),
        (Kind::Piece, Change::Angle, 0, 1_800),
        (Kind::Piece, Change::InHand, 0, 100_000),
        (Kind::Fluid, Change::Drained, 0, 1_000_000),
        (Kind::Job, Change::CheckingDays, 0, 3_650),
        (Kind::Assembly, |n| Change::FitTime(Minutes::new(n)), 0, 6_000_000),
        (Kind::Count, |n| Change::Ended(Millis(n)), -62_135_596_800_000, 253_402_300_799_999),
        (Kind::Quote, |n| Change::OwnTime(Minutes::new(n)), 0, 6_000_000),
        (Kind::Plan, |n| Change::Cash(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
        (Kind::Plan, |n| Change::OwnTime(Minutes::new(n)), 0, 6_000_000),
        (Kind::Choice, |n| Change::HourValueThen(Money::from_minor(n, Currency::GBP)), 0, 1_000_000_000_000),
    ]
}

/// Break: in `Change::bounded` leave out the value of an hour, or let `bounds::PRICE` begin below nothing.
#[test]
fn numbers_beyond_what_can_be_meant_are_refused() {
    let (mut garage, ids) = one_of_each();
    for (kind, change, least, most) in numbers() {
        let (_, id) = ids.iter().find(|(known, _)| *known == kind).expect("one of each");
        for (number, fits) in
            [(least, true), (most, true), (least - 1, false), (most + 1, false), (i64::MIN, false), (i64::MAX, false)]
        {
            let changes = vec![change(number)];
            let problems = garage.command(0, Command::Change { ids: vec![*id], changes, seen: None }).problems;
            let expected = if fits { vec![] } else { vec![Code::OutOfBounds] };
            assert_eq!(codes(&problems), expected, "{:?} of {number}", change(number).field());
        }
    }
}

/// Break: in `Change::bounded` leave out `Quotes`.
#[test]
fn a_plan_has_no_more_quotes_than_any_job() {
    let (mut garage, ids) = one_of_each();
    let (_, plan) = ids.iter().find(|(kind, _)| *kind == Kind::Plan).expect("one of each");
    for (count, fits) in [(1_000, true), (20_000, true), (20_001, false)] {
        let quotes = vec![KeptQuote { part: *plan, quote: *plan, cash: 1 }; count];
        let changes = vec![Change::Quotes(KeptQuotes(quotes))];
        let problems = garage.command(0, Command::Change { ids: vec![*plan], changes, seen: None }).problems;
        assert_eq!(problems.is_empty(), fits, "{count}");
    }
}

/// An expectation is no whole number: it must be one at all.
/// Break: in `Change::bounded` leave out `ExpectedThen`.
#[test]
fn an_expectation_is_a_number() {
    let (mut garage, ids) = one_of_each();
    let (_, choice) = ids.iter().find(|(kind, _)| *kind == Kind::Choice).expect("one of each");
    for (expected, fits) in [(9_200.5, true), (-1.0, true), (f64::NAN, false), (f64::INFINITY, false), (-1e300, false)]
    {
        let changes = vec![Change::ExpectedThen(expected)];
        let problems = garage.command(0, Command::Change { ids: vec![*choice], changes, seen: None }).problems;
        assert_eq!(problems.is_empty(), fits, "{expected}");
    }
}
