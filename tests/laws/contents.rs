//! What a list says is in a kit.

use std::collections::BTreeMap;

use asfound_core::job::vocabulary::Route;
use asfound_core::job::{Change, Command, ContentsLine, ContentsView, bare_number, names_like};
use asfound_core::reckoning::{HeavyQuery, Reckoned, reckon};
use asfound_core::record::{Id, Kind};
use proptest::prelude::*;

use crate::cases;
use crate::garage::Garage;

fn any_name() -> impl Strategy<Value = String> {
    let words =
        ["hub", "Seal", "seals", "bearing", "bearring", "left", "RH", "front", "oil", "M8", "of", "bush", "bushes"];
    prop::collection::vec(proptest::sample::select(words.to_vec()), 0..4).prop_map(|words| words.join(" "))
}

fn any_number() -> impl Strategy<Value = String> {
    proptest::sample::select(vec!["", "AB 12", "ab-12", "AB13", "  ", "-", "12"]).prop_map(str::to_owned)
}

fn any_lines() -> impl Strategy<Value = Vec<ContentsLine>> {
    let line = (any_number(), any_name(), prop::option::of(1_i64..6))
        .prop_map(|(number, name, quantity)| ContentsLine { number, name, quantity });
    prop::collection::vec(line, 0..6)
}

fn any_parts() -> impl Strategy<Value = Vec<(String, String, i64)>> {
    prop::collection::vec((any_name(), any_number(), 1_i64..4), 0..7)
}

fn told(parts: &[(String, String, i64)], lines: &[ContentsLine]) -> (BTreeMap<Id, String>, ContentsView) {
    let mut garage = Garage::new();
    let mut make = |kind, changes| {
        let id = garage.fresh();
        let _ = garage.command(0, Command::Create { id, kind, changes });
        id
    };
    let first = make(Kind::Part, vec![Change::Name("the kit is on it".to_owned())]);
    let quote = make(Kind::Quote, vec![Change::Of(first), Change::Route(Route::Kit)]);
    let mut numbers = BTreeMap::new();
    for (name, number, pieces) in parts {
        let said = [Change::Name(name.clone()), Change::MakersNumber(number.clone()), Change::Quantity(*pieces)];
        numbers.insert(make(Kind::Part, said.to_vec()), number.clone());
    }
    let query = HeavyQuery::KitContents { quote, lines: lines.to_vec() };
    match reckon(&garage.devices[0], &query) {
        Reckoned::KitContents(view) => (numbers, view),
        other => panic!("{other:?}"),
    }
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// No part is proposed twice, every line is told, all of its pieces are given out, a number is matched by its letters and
    /// figures alone, and nothing that is found by number goes to another number.
    /// Break: in `contents_view` leave out `taken`; or in `rows_of` what is left over.
    #[test]
    fn a_list_is_given_out_once(parts in any_parts(), lines in any_lines()) {
        let (numbers, view) = told(&parts, &lines);
        let mut seen: Vec<Id> = view.rows.iter().filter_map(|row| row.part).collect();
        let count = seen.len();
        seen.sort_unstable();
        seen.dedup();
        prop_assert_eq!(seen.len(), count);
        for (at, line) in lines.iter().enumerate() {
            let rows: Vec<_> = view.rows.iter().filter(|row| row.line == at).collect();
            prop_assert!(!rows.is_empty());
            if let Some(quantity) = line.quantity {
                prop_assert_eq!(rows.iter().map(|row| row.pieces).sum::<i64>(), quantity);
            }
            let wanted = bare_number(&line.number);
            let is_there = !wanted.is_empty() && numbers.values().any(|number| bare_number(number) == wanted);
            for part in rows.iter().filter_map(|row| row.part).filter(|_| is_there) {
                prop_assert_eq!(numbers.get(&part).map(|number| bare_number(number)), Some(wanted.clone()));
            }
            prop_assert!(rows.iter().all(|row| !row.sure || row.part.is_some()));
            prop_assert!(rows.iter().all(|row| !row.others.iter().any(|other| Some(*other) == row.part)));
        }
    }

    /// Likeness is the same both ways, at most whole, and whole with itself but for names without words.
    /// Break: in `like` use a word of the other twice.
    #[test]
    fn likeness_goes_both_ways(one in any_name(), other in any_name()) {
        prop_assert_eq!(names_like(&one, &other), names_like(&other, &one));
        prop_assert!(names_like(&one, &other) <= 1_000);
        prop_assert!([0, 1_000].contains(&names_like(&one, &one)));
    }
}
