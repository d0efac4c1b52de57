//! Each code of a problem is shown at least once: how it arises, in the smallest job that has it.

use std::collections::BTreeMap;

use asfound_core::job::vocabulary::{Route, Tightened};
use asfound_core::job::{Change, Command, Job, Query, SplitOff, View, ask, troubles};
use asfound_core::papers::{TagGrid, TagSheet};
use asfound_core::problem::{Code, Problem};
use asfound_core::quantity::{Currency, Millis, Money};
use asfound_core::record::{Entry, EntryId, FieldId, FieldName, Id, Kind, Op, Value};

use crate::any_entry::{record, replica};
use crate::garage::Garage;

fn entry(device: u8, seq: u64, ops: Vec<Op>) -> Entry {
    Entry { id: EntryId { replica: replica(device), seq }, at: Millis(0), ops }
}

fn op(number: u8, change: &Change) -> Op {
    Op { record: record(number), field: change.field().id(), value: change.store(), over: vec![] }
}

/// Troubles of a job in which each device wrote one entry.
fn written(entries: &[&[Op]]) -> Vec<Problem> {
    let entries = entries.iter().zip(1_u8..).map(|(ops, device)| entry(device, 1, ops.to_vec()));
    troubles(&Job::from_entries(entries))
}

/// What a command is answered in a garage with one part.
fn refused(command: impl Fn(Id) -> Command) -> Vec<Problem> {
    let mut garage = Garage::new();
    let part = garage.fresh();
    let _ = garage.command(0, Command::Create { id: part, kind: Kind::Part, changes: vec![] });
    garage.command(0, command(part)).problems
}

fn change(id: Id, change: Change) -> Command {
    Command::Change { ids: vec![id], changes: vec![change], seen: None }
}

fn part(number: u8) -> Op {
    op(number, &Change::Kind(Kind::Part))
}

/// A part with a chosen quote that is struck out afterwards.
fn stale_choice() -> Vec<Problem> {
    let mut garage = Garage::new();
    let (part, quote, choice) = (garage.fresh(), garage.fresh(), garage.fresh());
    let _ = garage.command(0, Command::Create { id: part, kind: Kind::Part, changes: vec![] });
    let changes = vec![Change::Of(part), Change::Route(Route::Buy)];
    let _ = garage.command(0, Command::Create { id: quote, kind: Kind::Quote, changes });
    let _ = garage.command(0, Command::Choose { id: choice, quote, part: None, who: None });
    assert_eq!(troubles(&garage.devices[0]), vec![]);
    let _ = garage.command(0, change(part, Change::CannotBeBought(true)));
    let barred = troubles(&garage.devices[0]);
    assert_eq!(barred.first().map(|problem| problem.code), Some(Code::ChoiceStale));
    let _ = garage.command(0, change(part, Change::CannotBeBought(false)));
    let _ = garage.command(0, change(quote, Change::Struck(true)));
    troubles(&garage.devices[0])
}

fn quote_in_euros() -> Vec<Problem> {
    let money = Money::from_minor(5, Currency::EUR);
    written(&[&[op(1, &Change::Kind(Kind::Quote)), op(1, &Change::Route(Route::Buy)), op(1, &Change::Cash(money))]])
}

fn overwrite_loop() -> Vec<Problem> {
    let id = |device| EntryId { replica: replica(device), seq: 1 };
    let name = |text: &str, over| Op { over: vec![over], ..op(1, &Change::Name(text.to_owned())) };
    written(&[&[part(1), name("a", id(2))], &[part(1), name("b", id(1))]])
}

fn circle() -> Vec<Problem> {
    let assembly = |number| op(number, &Change::Kind(Kind::Assembly));
    written(&[&[assembly(1), assembly(2), op(1, &Change::Inside(record(2)))], &[op(2, &Change::Inside(record(1)))]])
}

fn lying_in(struck: bool) -> Vec<Problem> {
    let place = op(2, &Change::Kind(Kind::Place));
    let there = [part(1), op(1, &Change::Place(record(2)))];
    if struck {
        written(&[&[place, op(2, &Change::Struck(true)), there[0].clone(), there[1].clone()]])
    } else {
        written(&[&there])
    }
}

/// A left and a right drum, one of them bought, the other from a donor.
fn pair_apart() -> Vec<Problem> {
    use asfound_core::job::vocabulary::{Route, Side};
    let side = |part, quote, choice, side, route| {
        vec![
            op(part, &Change::Kind(Kind::Part)),
            op(part, &Change::Name("Brake drum".to_owned())),
            op(part, &Change::Family("brake-drum".to_owned())),
            op(part, &Change::Side(side)),
            op(part, &Change::Chosen(record(choice))),
            op(quote, &Change::Kind(Kind::Quote)),
            op(quote, &Change::Of(record(part))),
            op(quote, &Change::Route(route)),
            op(choice, &Change::Kind(Kind::Choice)),
            op(choice, &Change::Of(record(part))),
            op(choice, &Change::Quote(record(quote))),
            op(choice, &Change::Route(route)),
        ]
    };
    written(&[&side(1, 2, 3, Side::Left, Route::Buy), &side(4, 5, 6, Side::Right, Route::Donor)])
}

/// What a gearing with these values is told of.
fn of_gearing(changes: &[Change]) -> Vec<Problem> {
    use asfound_core::job::SpeedUnit;
    let ops = std::iter::once(&Change::Kind(Kind::Gearing)).chain(changes).map(|change| op(1, change)).collect();
    match ask(&Job::from_entries([entry(1, 1, ops)]), &Query::Gearing { speed: None, unit: SpeedUnit::Mph }, record(1))
    {
        View::Gearing(told) => told.sets.into_iter().flat_map(|set| set.problems).collect(),
        _ => Vec::new(),
    }
}

/// Two parts that each go on after the other.
fn refit_circle() -> Vec<Problem> {
    let off = |number| [part(number), op(number, &Change::Off(true))];
    let after = |rule, one, other| {
        [
            op(rule, &Change::Kind(Kind::GoesAfter)),
            op(rule, &Change::Of(record(one))),
            op(rule, &Change::Other(record(other))),
        ]
    };
    written(&[&off(1), &off(2), &after(3, 1, 2), &after(4, 2, 1)])
}

/// How each code arises; `None` where the core alone cannot raise it, with who does.
fn arises(code: Code) -> Result<Vec<Problem>, &'static str> {
    let named = |text: &str| op(1, &Change::Name(text.to_owned()));
    let tagged = |number| op(number, &Change::Tag(7));
    Ok(match code {
        Code::Conflict => written(&[&[part(1), named("a")], &[named("b")]]),
        Code::TagTwice => written(&[&[part(1), tagged(1)], &[part(2), tagged(2)]]),
        Code::BlockTwice => {
            let block = |number| [op(number, &Change::Kind(Kind::Block)), op(number, &Change::Number(3))];
            written(&[&block(1), &block(2)])
        }
        Code::Loop => circle(),
        Code::Dangling => lying_in(false),
        Code::InStruckOut => lying_in(true),
        Code::KindMissing => written(&[&[named("a")]]),
        Code::KindTwice => written(&[&[part(1)], &[op(1, &Change::Kind(Kind::Place))]]),
        Code::ValueUnreadable => {
            let odd = Op { value: Value::Unknown(77, vec![]), ..named("") };
            written(&[&[part(1), odd]])
        }
        Code::FieldOutOfPlace => written(&[&[part(1), op(1, &Change::Year(1931))]]),
        Code::OverwriteLoop => overwrite_loop(),
        Code::EntryTwice => {
            let entries = ["a", "b"].map(|text| entry(1, 1, vec![part(1), named(text)]));
            troubles(&Job::from_entries(entries))
        }
        Code::EntriesMissing => troubles(&Job::from_entries([entry(1, 3, vec![part(1)])])),
        Code::ChoiceStale => stale_choice(),
        Code::OtherCurrency => quote_in_euros(),
        Code::UnknownRecord => refused(|_| change(record(99), Change::Stuck(true))),
        Code::WrongKind => refused(|part| change(part, Change::Year(1931))),
        Code::IdTaken => refused(|part| Command::Create { id: part, kind: Kind::Place, changes: vec![] }),
        Code::OutOfBounds => refused(|part| change(part, Change::Quantity(0))),
        Code::Missing => refused(|part| Command::Split { part, into: Vec::<SplitOff>::new() }),
        Code::NothingToUndo => refused(|_| Command::Undo { entry: EntryId { replica: replica(9), seq: 9 } }),
        Code::OtherJob => refused(|_| Command::Create { id: record(98), kind: Kind::Job, changes: vec![] }),
        Code::NotAnAnswer => {
            let changes = vec![Change::Question("spalls".to_owned()), Change::Outcome("purple".to_owned())];
            refused(|_| Command::Create { id: record(98), kind: Kind::Finding, changes: changes.clone() })
        }
        Code::LimitCrossed => {
            let changes = vec![Change::Least(2), Change::Most(1)];
            refused(|_| Command::Create { id: record(98), kind: Kind::Limit, changes: changes.clone() })
        }
        Code::PairApart => pair_apart(),
        Code::HeavyQuestion => match ask(&Job::new(), &Query::Undecided, record(1)) {
            View::Refused(problem) => vec![problem],
            _ => Vec::new(),
        },
        Code::TyreUnreadable => of_gearing(&[Change::Tyre("ER70-14".to_owned())]),
        Code::RatiosUnreadable => of_gearing(&[Change::GearRatios("3.33, 1.37, 2.05".to_owned())]),
        Code::RefitCircle => refit_circle(),
        Code::StillLoose => {
            let joint = [op(2, &Change::Kind(Kind::Joint)), op(2, &Change::Tightened(Tightened::FingerTight))];
            let vehicle = [op(3, &Change::Kind(Kind::Vehicle)), op(3, &Change::OnTheRoad(true))];
            written(&[&joint, &vehicle])
        }
        Code::LabelsDoNotFit => {
            let grid = TagGrid { down: 8, ..TagSheet::A4.grid() };
            grid.check().err().into_iter().collect()
        }
        // A job in memory has no files: whoever reads them tells these, and shows them in tests of its own.
        Code::Damaged | Code::NewerForm | Code::NotOurs | Code::BlobMissing => return Err("reading of job files"),
    })
}

#[test]
fn each_code_arises() {
    let mut elsewhere: BTreeMap<&str, Vec<Code>> = BTreeMap::new();
    for code in Code::ALL.iter().copied() {
        match arises(code) {
            Ok(problems) => {
                let told = problems.iter().filter(|problem| problem.code == code).count();
                assert!(told >= 1, "{code:?} does not arise: {problems:?}");
            }
            Err(by) => elsewhere.entry(by).or_default().push(code),
        }
    }
    assert_eq!(elsewhere.values().flatten().count(), 4);
}

/// What nothing is wrong with has no problem: the cases above are not told of everything.
#[test]
fn a_sound_job_has_none() {
    let mut garage = Garage::new();
    let (part, place) = (garage.fresh(), garage.fresh());
    let _ = garage.command(0, Command::Create { id: place, kind: Kind::Place, changes: vec![] });
    let changes = vec![Change::Place(place), Change::Name("Hub".to_owned())];
    let _ = garage.command(0, Command::Create { id: part, kind: Kind::Part, changes });
    assert_eq!(troubles(&garage.devices[0]), vec![]);
    assert_eq!(FieldId(2), FieldName::Name.id());
}
