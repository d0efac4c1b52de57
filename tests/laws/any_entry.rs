//! Entries that no honest device would write: few ids, so that they meet; every field, known or not; every value.

use asfound_core::job::vocabulary::{Certainty, Route, Side, Triage};
use asfound_core::quantity::Millis;
use asfound_core::record::{Entry, EntryId, FieldId, FieldName, Hash, Id, Kind, Op, Replica, Value};
use asfound_core::tables::checks::LOOKS;
use asfound_core::tables::families::FAMILIES;
use proptest::prelude::*;

/// How many records there are.
pub(crate) const RECORDS: u8 = 7;

pub(crate) fn record(number: u8) -> Id {
    Id::from_bytes([number; 16])
}

pub(crate) fn replica(number: u8) -> Replica {
    Replica::from_bytes([number; 8])
}

fn any_id() -> impl Strategy<Value = Id> {
    prop_oneof![20 => (0..RECORDS).prop_map(record), 1 => any::<[u8; 16]>().prop_map(Id::from_bytes)]
}

pub(crate) fn any_entry_id() -> impl Strategy<Value = EntryId> {
    let seq = prop_oneof![20 => 0_u64..5, 1 => any::<u64>(), 1 => Just(u64::MAX)];
    let replicas = prop_oneof![20 => (0_u8..3).prop_map(replica), 1 => any::<[u8; 8]>().prop_map(Replica::from_bytes)];
    (replicas, seq).prop_map(|(replica, seq)| EntryId { replica, seq })
}

fn any_field() -> impl Strategy<Value = FieldId> {
    let known = proptest::sample::select(FieldName::ALL).prop_map(FieldName::id);
    // What points at others, and what decides whether a record is shown, comes oftener than its share.
    let shaping = proptest::sample::select(vec![
        FieldName::Struck,
        FieldName::Inside,
        FieldName::Within,
        FieldName::Assembly,
        FieldName::Place,
        FieldName::Of,
        FieldName::Chosen,
        FieldName::Tag,
        FieldName::Number,
        FieldName::Family,
        FieldName::Question,
        FieldName::Outcome,
        FieldName::Feature,
    ]);
    prop_oneof![6 => known, 4 => shaping.prop_map(FieldName::id), 1 => any::<u16>().prop_map(FieldId)]
}

fn words() -> Vec<String> {
    let mut words: Vec<String> = Kind::ALL.iter().map(|word| word.word().to_owned()).collect();
    words.extend(Route::ALL.iter().map(|word| word.word().to_owned()));
    words.extend(Side::ALL.iter().map(|word| word.word().to_owned()));
    words.extend(Triage::ALL.iter().map(|word| word.word().to_owned()));
    words.extend(Certainty::ALL.iter().map(|word| word.word().to_owned()));
    words.extend(FAMILIES.iter().map(|family| family.code.to_owned()));
    words.extend(LOOKS.iter().flat_map(|look| look.outcomes).map(|outcome| outcome.code.to_owned()));
    words.extend(LOOKS.iter().map(|look| look.code.to_owned()));
    words.extend((0..RECORDS).map(|number| record(number).to_string()));
    words.extend(["before", "after", "205/65 R 15", "6.00-16", "3.33, 2.05, 1.00"].map(str::to_owned));
    words.extend(["EUR", "GBP", "gbp", "", "Box 12", "büchse", "\u{0}", "99999999999999999999"].map(str::to_owned));
    words
}

pub(crate) fn any_value() -> impl Strategy<Value = Value> {
    let numbers = prop_oneof![4 => -3_i64..1200, 1 => any::<i64>(), 1 => Just(i64::MAX), 1 => Just(i64::MIN)];
    prop_oneof![
        1 => Just(Value::Cleared),
        2 => any::<bool>().prop_map(Value::Flag),
        4 => numbers.prop_map(Value::Whole),
        1 => any::<u64>().prop_map(Value::Real),
        3 => proptest::sample::select(words()).prop_map(Value::Text),
        1 => ".{0,12}".prop_map(Value::Text),
        6 => any_id().prop_map(Value::Ref),
        1 => any::<[u8; 32]>().prop_map(|bytes| Value::Blob(Hash::from_bytes(bytes))),
        2 => (any::<i64>(), prop_oneof![Just(*b"GBP"), Just(*b"EUR"), any::<[u8; 3]>()])
            .prop_map(|(minor, letters)| Value::Money(minor, letters)),
        1 => (8_u8.., prop::collection::vec(any::<u8>(), 0..9)).prop_map(|(mark, bytes)| Value::Unknown(mark, bytes)),
    ]
}

fn any_kind() -> impl Strategy<Value = Value> {
    proptest::sample::select(Kind::ALL).prop_map(|kind| Value::Text(kind.word().to_owned()))
}

fn any_op() -> impl Strategy<Value = Op> {
    let over = || prop::collection::vec(any_entry_id(), 0..3);
    let kind = (any_id(), any_kind(), over()).prop_map(|(record, value, over)| Op {
        record,
        field: FieldName::Kind.id(),
        value,
        over,
    });
    let other = (any_id(), any_field(), any_value(), over()).prop_map(|(record, field, value, over)| Op {
        record,
        field,
        value,
        over,
    });
    prop_oneof![1 => kind, 4 => other]
}

pub(crate) fn any_entry() -> impl Strategy<Value = Entry> {
    (any_entry_id(), any::<i64>(), prop::collection::vec(any_op(), 0..6)).prop_map(|(id, at, ops)| Entry {
        id,
        at: Millis(at),
        ops,
    })
}

pub(crate) fn any_entries() -> impl Strategy<Value = Vec<Entry>> {
    prop::collection::vec(any_entry(), 0..24)
}
