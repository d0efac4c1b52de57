//! Measures the core beside the bare operation, on this machine: `cargo run --release --example bench-core`.

use std::collections::BTreeMap;
use std::hint::black_box;
use std::time::{Duration, Instant};

use asfound_core::job::{Change, Command, Context, Group, Job, PartsQuery, Query, Sent, apply, ask, troubles};
use asfound_core::quantity::Millis;
use asfound_core::record::{Entry, EntryId, FieldId, Id, Kind, Op, Replica, Value};
use simsearch::Index;

const PARTS: u64 = 10_000;
const WORDS: [&str; 24] = [
    "bearing", "hub", "stub", "axle", "seal", "spring", "damper", "bush", "hose", "caliper", "carrier", "washer",
    "bolt", "flange", "bracket", "shaft", "gear", "cover", "lever", "spindle", "trunnion", "shackle", "pinion",
    "sleeve",
];

fn id(purpose: &str, number: u64) -> Id {
    Id::derived(Id::from_bytes([1; 16]), purpose, number)
}

fn op(record: Id, change: &Change) -> Op {
    Op { record, field: change.field().id(), value: change.store(), over: vec![] }
}

fn name_of(part: u64) -> String {
    let word = |number: u64| WORDS[usize::try_from(number % 24).unwrap_or(0)];
    format!("{} {} {}", word(part), word(part / 24 + part), part % 977)
}

/// A job of 10,000 parts and 110,000 entries: each part is made, photographed, named, laid away, edited on.
fn entries() -> Vec<Entry> {
    let mut entries = vec![vec![op(id("job", 0), &Change::Kind(Kind::Job))]];
    for place in 0..200 {
        let record = id("place", place);
        entries.push(vec![op(record, &Change::Kind(Kind::Place)), op(record, &Change::Name(format!("Box {place}")))]);
    }
    for part in 0..PARTS {
        let (record, photo) = (id("part", part), id("photo", part));
        let tag = i64::try_from(part + 1).unwrap_or(1);
        entries.push(vec![
            op(record, &Change::Kind(Kind::Part)),
            op(record, &Change::Tag(tag)),
            op(record, &Change::Off(true)),
        ]);
        entries.push(vec![
            op(photo, &Change::Kind(Kind::Photo)),
            op(photo, &Change::Of(record)),
            op(photo, &Change::Order(1)),
        ]);
        entries.push(vec![op(record, &Change::Name(name_of(part)))]);
        entries.push(vec![op(record, &Change::Place(id("place", part % 200)))]);
        for edit in 0..7 {
            entries.push(vec![op(record, &Change::Remark(format!("word {}", edit + part % 13)))]);
        }
    }
    let replica = Replica::from_bytes([5; 8]);
    let mut last: BTreeMap<(Id, FieldId), EntryId> = BTreeMap::new();
    let numbered = entries.into_iter().zip(1..).map(|(mut ops, seq)| {
        let entry = EntryId { replica, seq };
        for op in &mut ops {
            op.over = last.insert((op.record, op.field), entry).into_iter().collect();
        }
        Entry { id: entry, at: Millis(0), ops }
    });
    numbered.collect()
}

fn ms(duration: Duration) -> f64 {
    duration.as_secs_f64() * 1_000.0
}

/// p50 and p95 in milliseconds.
fn measured(what: &str, times: usize, mut work: impl FnMut(usize)) {
    let mut taken: Vec<f64> = (0..times)
        .map(|number| {
            let began = Instant::now();
            work(number);
            ms(began.elapsed())
        })
        .collect();
    taken.sort_by(f64::total_cmp);
    println!("{what:<58} p50 {:9.3} ms   p95 {:9.3} ms", taken[times / 2], taken[times * 95 / 100]);
}

/// What is typed, a beginning longer by a letter at each keystroke; every other word has two letters swapped.
fn keystrokes() -> Vec<String> {
    let mut typed = Vec::new();
    for (number, word) in WORDS.iter().enumerate() {
        let mut word: Vec<char> = word.chars().collect();
        if number % 2 == 1 {
            word.swap(1, 2);
        }
        typed.extend((1..=word.len()).map(|length| word[..length].iter().collect::<String>()));
    }
    typed
}

fn asking(job: &Job) {
    let device = id("device", 0);
    let parts = PartsQuery { count: Some(40), from: 5_000, ..PartsQuery::default() };
    measured("window of 40 of 10,000 parts, by assembly", 20, |_| drop(black_box(job.parts_view(&parts))));
    let by_place = PartsQuery { group: Group::Place, ..parts };
    measured("window of 40 of 10,000 parts, by place", 20, |_| drop(black_box(job.parts_view(&by_place))));
    measured("troubles", 20, |_| drop(black_box(troubles(job))));
    measured("head", 20, |_| drop(black_box(ask(job, &Query::Head, device))));
    measured("places", 20, |_| drop(black_box(ask(job, &Query::Places, device))));
    let teardown = Query::Teardown { assembly: None, part: Some(id("part", 77)) };
    measured("teardown", 20, |_| drop(black_box(ask(job, &teardown, device))));
    let context = Context { replica: Replica::from_bytes([6; 8]), device, at: Millis(0) };
    measured("one more part: apply and absorb", 20, |number| {
        let number = number as u64;
        let command = Command::Create { id: id("new", number), kind: Kind::Part, changes: vec![] };
        let applied = apply(job, &Sent { id: id("command", number), command }, &context);
        drop(black_box(applied));
    });
}

fn finding(job: &Job) {
    let typed = keystrokes();
    measured("keystroke to found parts", typed.len(), |number| drop(black_box(job.find_parts(&typed[number]))));
    let window =
        |find: &String| PartsQuery { find: find.clone(), count: Some(40), group: Group::None, ..PartsQuery::default() };
    measured("keystroke to window of 40 rows", typed.len(), |number| {
        drop(black_box(job.parts_view(&window(&typed[number]))))
    });
    let names: Vec<String> = (0..PARTS).map(name_of).collect();
    let mut general: Index<usize> = Index::new();
    names.iter().enumerate().for_each(|(number, name)| general.insert(number, name));
    measured("  beside it: simsearch 0.4, the same names", typed.len(), |number| {
        drop(black_box(general.search(&typed[number])))
    });
    measured("  beside it: a bare scan for the exact letters", typed.len(), |number| {
        black_box(names.iter().filter(|name| name.contains(&typed[number])).count());
    });
}

/// A garage from its first part on: each part is a command of its own, taken in before the next.
fn making() {
    let context = Context { replica: Replica::from_bytes([6; 8]), device: id("device", 0), at: Millis(0) };
    let mut job = Job::new();
    let mut make = |what: u64, kind: Kind| {
        let command = Command::Create { id: id("made", what), kind, changes: vec![] };
        let applied = apply(&job, &Sent { id: id("making", what), command }, &context);
        job.absorb(applied.entries);
    };
    make(0, Kind::Job);
    let mut thousand = |from: u64| {
        let began = Instant::now();
        (from + 1..=from + 1_000).for_each(|number| make(number, Kind::Part));
        ms(began.elapsed())
    };
    let taken: Vec<f64> = (0..PARTS / 1_000).map(|number| thousand(number * 1_000)).collect();
    let (first, last) = (taken[0], taken[taken.len() - 1]);
    let all: f64 = taken.iter().sum();
    println!("10,000 parts made one by one: {all:.0} ms; the first 1,000 {first:.1} ms, the last {last:.1} ms");
}

/// What nobody honest makes: chains and logs as long as a file can hold.
fn hostile() {
    let replica = Replica::from_bytes([7; 8]);
    let chain = (1..=20_000_u64).map(|seq| {
        let place = id("place", seq);
        let ops = vec![op(place, &Change::Kind(Kind::Place)), op(place, &Change::Within(id("place", seq + 1)))];
        Entry { id: EntryId { replica, seq }, at: Millis(0), ops }
    });
    let deep = Job::from_entries(chain);
    measured("hostile: troubles of places 20,000 deep", 3, |_| drop(black_box(troubles(&deep))));
    measured("hostile: places 20,000 deep", 3, |_| drop(black_box(deep.places_view())));
    let one = id("part", 0);
    let log = |over: bool| {
        (1..=50_000_u64).map(move |seq| {
            let before = EntryId { replica, seq: seq - 1 };
            let value = Value::Text(seq.to_string());
            let over = if over { vec![before] } else { vec![] };
            let name = Op { record: one, field: Change::Name(String::new()).field().id(), value, over };
            Entry { id: EntryId { replica, seq }, at: Millis(0), ops: vec![op(one, &Change::Kind(Kind::Part)), name] }
        })
    };
    measured("hostile: fold of 50,000 writes over one another", 3, |_| drop(black_box(Job::from_entries(log(true)))));
    measured("hostile: fold of 50,000 writes beside one another", 3, |_| {
        drop(black_box(Job::from_entries(log(false))))
    });
    let beside = Job::from_entries(log(false));
    measured("hostile: troubles of 50,000 values of one field", 3, |_| drop(black_box(troubles(&beside))));
    measured("hostile: part with 50,000 values of one field", 3, |_| drop(black_box(beside.part_view(one))));
}

fn main() {
    let entries = entries();
    println!("{} entries, {} parts", entries.len(), PARTS);
    measured("fold of all, the bare clone of the entries in it", 5, |_| {
        drop(black_box(Job::from_entries(entries.clone())))
    });
    measured("  beside it: the bare clone", 5, |_| drop(black_box(entries.clone())));
    let job = Job::from_entries(entries);
    asking(&job);
    finding(&job);
    making();
    hostile();
}
