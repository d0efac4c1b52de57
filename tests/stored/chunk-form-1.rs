//! What was stored by the first form is read ever after; words and numbers once stored mean the same for ever.

use std::fmt::Write as _;

use asfound_core::costing::WhyNot;
use asfound_core::job::vocabulary as words;
use asfound_core::quantity::Millis;
use asfound_core::record::{Entry, EntryId, FieldId, FieldName, Hash, Id, Kind, Op, Replica, Value, chunk};
use asfound_core::tables::features::{Dimension, LimitKind, LimitSource};
use asfound_core::tables::hazards::Hazard;

const CHUNK: &[u8] = include_bytes!("chunk-form-1.chunk");
const NAME: &str = include_str!("chunk-form-1.name");
const WORDS: &str = include_str!("chunk-words.txt");

fn id(number: u8) -> Id {
    Id::from_bytes([number; 16])
}

fn entry(replica: u8, seq: u64, at: i64, ops: Vec<Op>) -> Entry {
    Entry { id: EntryId { replica: Replica::from_bytes([replica; 8]), seq }, at: Millis(at), ops }
}

fn op(record: u8, field: u16, value: Value) -> Op {
    Op { record: id(record), field: FieldId(field), value, over: vec![] }
}

fn text(text: &str) -> Value {
    Value::Text(text.to_owned())
}

/// What the frozen chunk holds; `chunk-form-1.md` says it in words.
fn contents() -> Vec<Entry> {
    let seen = vec![
        EntryId { replica: Replica::from_bytes([1; 8]), seq: 2 },
        EntryId { replica: Replica::from_bytes([2; 8]), seq: u64::MAX },
    ];
    vec![
        entry(
            1,
            1,
            1_700_000_000_000,
            vec![op(1, 1, text("job")), op(1, 10, text("EUR")), op(200, 4, Value::Flag(true))],
        ),
        entry(
            1,
            2,
            -1,
            vec![op(2, 1, text("part")), op(2, 2, text("Achsschenkel, “left”")), op(2, 50, Value::Whole(7))],
        ),
        entry(
            1,
            3,
            0,
            vec![
                op(2, 3, Value::Flag(false)),
                op(2, 58, Value::Ref(id(3))),
                op(4, 85, Value::Blob(Hash::of(b"a photo"))),
                op(5, 101, Value::Money(-12_345, *b"EUR")),
                op(6, 112, Value::Real(92.125_f64.to_bits())),
                op(6, 66, Value::Whole(i64::MIN)),
                op(6, 66, Value::Whole(i64::MAX)),
            ],
        ),
        entry(2, u64::MAX, i64::MAX, vec![Op { over: seen, ..op(2, 2, Value::Cleared) }]),
        entry(
            2,
            7,
            5,
            vec![
                op(2, 60_000, text("a field of a later version")),
                op(2, 5, Value::Unknown(99, vec![0, 1, 2, 255])),
                op(2, 66, Value::Unknown(2, vec![0x80, 0x00])),
            ],
        ),
        entry(3, 1, 6, vec![]),
    ]
}

/// Break: any change of the codec, of a mark of a value, of the header.
#[test]
fn the_frozen_chunk_opens_to_the_same_entries() {
    let name: Hash = NAME.trim().parse().expect("a name");
    let mut entries = contents();
    entries.sort_unstable();
    assert_eq!(chunk::open(name, CHUNK), Ok(entries));
}

/// Every stored word and number, a line each. New ones are added at the end of their list in the file; none is ever changed
/// or taken out.
fn listing() -> String {
    let mut listing = String::new();
    for field in FieldName::ALL {
        let name = serde_json::to_value(field).expect("a word");
        let _ = writeln!(listing, "field {} {}", field.id().0, name.as_str().expect("a word"));
    }
    macro_rules! list {
        ($($what:literal $words:expr;)*) => {
            $(for word in $words { let _ = writeln!(listing, concat!($what, " {}"), word.word()); })*
        };
    }
    list! {
        "kind" Kind::ALL; "side" words::Side::ALL; "vocabulary" words::Vocabulary::ALL; "units" words::Units::ALL;
        "aim" words::Aim::ALL; "triage" words::Triage::ALL; "moment" words::Moment::ALL; "shot" words::Shot::ALL;
        "shape" words::Shape::ALL; "place" words::PlaceKind::ALL; "check" words::Check::ALL; "route" words::Route::ALL;
        "certainty" words::Certainty::ALL; "correctness" words::Correctness::ALL; "standing" words::Standing::ALL; "why-not" WhyNot::ALL;
        "limit" LimitKind::ALL; "limit-source" LimitSource::ALL; "dimension" Dimension::ALL; "stance" words::Stance::ALL; "relation" words::Relation::ALL; "swap" words::Swap::ALL; "hazard" Hazard::ALL;
        "rate-basis" words::RateBasis::ALL; "build" words::Build::ALL; "out-for" words::OutFor::ALL;
        "compared" words::Compared::ALL; "fit" words::Fit::ALL; "paint" words::Paint::ALL;
        "torque-unit" words::TorqueUnit::ALL; "lubrication" words::Lubrication::ALL;
        "tightened" words::Tightened::ALL; "commissioning-step" words::CommissioningStep::ALL;
    }
    listing
}

/// Break: any word or number of a field, kind or vocabulary renamed or renumbered.
#[test]
fn words_and_numbers_mean_the_same_for_ever() {
    let now = listing();
    for line in WORDS.lines() {
        assert!(now.lines().any(|known| known == line), "no longer stored as it was: {line}");
    }
    for line in now.lines() {
        assert!(WORDS.lines().any(|known| known == line), "new: add it to chunk-words.txt: {line}");
    }
    let mut numbers: Vec<u16> = FieldName::ALL.iter().map(|field| field.id().0).collect();
    numbers.sort_unstable();
    numbers.dedup();
    assert_eq!(numbers.len(), FieldName::ALL.len(), "a number is given twice");
}
