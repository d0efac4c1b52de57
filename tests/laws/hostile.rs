use asfound_core::job::{Change, Command, Context, Job, Sent, SplitOff, apply, troubles};
use asfound_core::quantity::{Chance, Currency, Mass, Millis, Minutes, Money};
use asfound_core::record::chunk::{open, seal};
use asfound_core::record::{Entry, EntryId, FieldName, Id, Kind, Op};
use proptest::prelude::*;

use crate::any_entry::{RECORDS, any_entries, any_entry_id, any_value, record, replica};
use crate::cases;
use crate::views::{all_views, queries};

fn context(device: u8) -> Context {
    Context { replica: replica(device), device: record(device), at: Millis(i64::MAX) }
}

/// A change that writes any value, wherever it can be read as one of its field.
fn any_change() -> impl Strategy<Value = Change> {
    let stored = (proptest::sample::select(FieldName::ALL), any_value())
        .prop_map(|(field, value)| Change::read(field, &value).unwrap_or(Change::Clear(field)));
    let numbers = any::<i64>().prop_flat_map(|number| {
        proptest::sample::select(vec![
            Change::Tag(number),
            Change::Quantity(number),
            Change::Mass(Mass(number)),
            Change::OwnTime(Minutes(number)),
            Change::Chance(Chance(number)),
            Change::Order(number),
            Change::Number(number),
            Change::Cash(Money::from_minor(number, Currency::EUR)),
        ])
    });
    prop_oneof![4 => stored, 1 => numbers]
}

fn any_id() -> impl Strategy<Value = Id> {
    prop_oneof![6 => (0..RECORDS).prop_map(record), 3 => (40_u8..).prop_map(record)]
}

pub(crate) fn any_command() -> impl Strategy<Value = Command> {
    let changes = || prop::collection::vec(any_change(), 0..5);
    let leaf = prop_oneof![
        (any_id(), proptest::sample::select(Kind::ALL), changes()).prop_map(|(id, kind, changes)| Command::Create {
            id,
            kind,
            changes
        }),
        (prop::collection::vec(any_id(), 0..3), changes()).prop_map(|(ids, changes)| Command::Change {
            ids,
            changes,
            seen: None
        }),
        any_entry_id().prop_map(|entry| Command::Undo { entry }),
        (any_id(), prop::collection::vec((any_id(), prop::option::of(any::<i64>())), 0..3)).prop_map(|(part, into)| {
            let into = into.into_iter().map(|(id, quantity)| SplitOff { id, name: None, quantity });
            Command::Split { part, into: into.collect() }
        }),
        (any_id(), any_id()).prop_map(|(id, quote)| Command::Choose { id, quote, part: None, who: None }),
    ];
    leaf.prop_recursive(2, 8, 4, |inner| {
        prop::collection::vec(inner, 0..4).prop_map(|commands| Command::All { commands })
    })
}

proptest! {
    #![proptest_config(cases(1_500))]

    /// Whatever entries anybody may have made: taking in, asking, telling troubles, sealing and undoing never panic.
    /// Break: in `tags_of` leave the bounds out.
    #[test]
    fn hostile_entries_never_panic(entries in any_entries()) {
        let job = Job::from_entries(entries.clone());
        let _ = troubles(&job);
        prop_assert!(!all_views(&job, record(1)).is_empty());
        let sealed = seal(&entries);
        prop_assert!(open(sealed.name, &sealed.bytes).is_ok());
        for entry in &entries {
            let sent = Sent { id: record(200), command: Command::Undo { entry: entry.id } };
            let _ = apply(&job, &sent, &context(1));
        }
    }

    /// Whatever is commanded on top of that: no panic, never an entry beside an error, never silence, and what comes of it
    /// can be taken in and asked about.
    /// Break: in `apply` go on although `has_error`.
    #[test]
    fn hostile_commands_never_panic(entries in any_entries(), commands in prop::collection::vec(any_command(), 1..4)) {
        use asfound_core::problem::Severity;
        let mut job = Job::from_entries(entries);
        for (number, command) in commands.into_iter().enumerate() {
            let sent = Sent { id: record(200 + u8::try_from(number).expect("few")), command };
            let before = job.record().clone();
            let applied = apply(&job, &sent, &context(1));
            prop_assert_eq!(job.record(), &before);
            let error = applied.problems.iter().any(|problem| problem.severity == Severity::Error);
            prop_assert_eq!(applied.entries.is_empty(), error || applied.again);
            prop_assert!(applied.entries.len() <= 1);
            let entries = applied.entries.clone();
            job.absorb(applied.entries);
            for entry in entries {
                prop_assert!(apply(&job, &sent, &context(1)).again);
                prop_assert!(job.record().entries().any(|known| *known == entry));
            }
            let _ = troubles(&job);
        }
        prop_assert!(!all_views(&job, record(1)).is_empty());
    }

    /// A job answers the same however its entries came: one by one in any order, or all at once.
    /// Break: in `Job::index` leave out that a record leaves the links it had.
    #[test]
    fn hostile_entries_are_answered_the_same_in_any_order(
        (entries, other) in any_entries().prop_flat_map(|entries| (Just(entries.clone()), Just(entries).prop_shuffle()))
    ) {
        let all = Job::from_entries(entries);
        let mut one_by_one = Job::new();
        for entry in other {
            one_by_one.absorb([entry]);
        }
        prop_assert_eq!(all_views(&all, record(1)), all_views(&one_by_one, record(1)));
    }
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// Pieces are split off by numbers that make sense, or it is refused; nothing is counted beyond its bounds.
    /// Break: in `split` subtract without a bound.
    #[test]
    fn impossible_pieces_are_refused(pieces in any::<i64>(), off in prop::collection::vec(prop_oneof![-5_i64..9, any::<i64>(), Just(i64::MIN)], 1..4)) {
        let whole = Change::Quantity(pieces).store();
        let op = |change: &Change| Op { record: record(1), field: change.field().id(), value: change.store(), over: vec![] };
        let quantity = Op { value: whole, ..op(&Change::Quantity(1)) };
        let entry = Entry {
            id: EntryId { replica: replica(3), seq: 1 },
            at: Millis(0),
            ops: vec![op(&Change::Kind(Kind::Part)), quantity],
        };
        let job = Job::from_entries([entry]);
        let into = off.iter().zip(50_u8..).map(|(pieces, id)| SplitOff { id: record(id), name: None, quantity: Some(*pieces) });
        let sent = Sent { id: record(200), command: Command::Split { part: record(1), into: into.collect() } };
        let applied = apply(&job, &sent, &context(1));
        let sound = |pieces: &i64| asfound_core::quantity::bounds::PIECES.holds(*pieces);
        prop_assert!(applied.entries.is_empty() || off.iter().all(sound));
    }
}

/// The queries above are all there are: a new one is added there too.
#[test]
fn every_query_is_asked() {
    let asked = queries(&[record(0)]);
    for query in &asked {
        // No wildcard: a new kind of query does not compile until it is here, and then it is asked for above.
        use asfound_core::job::Query as Q;
        match query {
            Q::Head | Q::Assemblies | Q::Places | Q::Suppliers | Q::Rules { .. } | Q::Problems => {}
            Q::Teardown { .. } | Q::Parts(_) | Q::Part { .. } | Q::Photo { .. } => {}
            Q::Cost { .. } | Q::Totals { .. } | Q::History { .. } | Q::Seen { .. } => {}
            Q::Donor { .. } => {}
            Q::Inspect { .. } | Q::Cautions { .. } | Q::Proof(_) | Q::Typed { .. } | Q::Identify { .. } => {}
            Q::Certainty | Q::Undecided | Q::Plan | Q::Frontier | Q::Sway | Q::KeptPlans | Q::KitContents => {}
            Q::Gearing { .. } | Q::GearingTyped { .. } => {}
            Q::Place { .. } | Q::Where { .. } | Q::Count { .. } | Q::Missing { .. } | Q::Tag { .. } => {}
            Q::Ready { .. } | Q::RefitSteps { .. } | Q::RefitStep { .. } | Q::ThisEvening { .. } | Q::Commissioning => {
            }
        }
    }
    let kinds: std::collections::HashSet<_> = asked.iter().map(std::mem::discriminant).collect();
    assert_eq!(kinds.len(), 39);
}
