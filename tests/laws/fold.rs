use std::collections::{BTreeMap, BTreeSet};

use asfound_core::record::{Entry, EntryId, Fault, Record, Value};
use proptest::prelude::*;

use crate::any_entry::any_entries;
use crate::{cases, oracle};

fn folded<'a>(entries: impl IntoIterator<Item = &'a Entry>) -> Record {
    let mut record = Record::default();
    for entry in entries {
        record.absorb(entry.clone());
    }
    record
}

/// Entries, and the same in another order with some of them twice.
fn shuffled() -> impl Strategy<Value = (Vec<Entry>, Vec<Entry>)> {
    any_entries().prop_flat_map(|entries| {
        let mut twice = entries.clone();
        twice.extend(entries.iter().step_by(2).cloned());
        (Just(entries), Just(twice).prop_shuffle())
    })
}

proptest! {
    #![proptest_config(cases(2_000))]

    /// Order and repetition do not matter.
    /// Break: in `Item::absorb` take `closed` to be false, so that what came after its overwriting is a head again.
    #[test]
    fn order_and_repetition_do_not_matter((entries, other) in shuffled()) {
        prop_assert_eq!(folded(&entries), folded(&other));
    }

    /// No value is lost: all are in the history, and each is a head unless someone who saw it overwrote it.
    /// Break: in `Item::close` drop the write instead of putting it among the closed.
    #[test]
    fn no_value_is_lost(entries in any_entries()) {
        let record = folded(&entries);
        for ((id, number), field) in oracle::fold(&entries) {
            let item = record.item(id).expect("something was said of it");
            let history: BTreeSet<_> =
                item.history(number).into_iter().map(|head| (head.entry, head.value.clone())).collect();
            prop_assert_eq!(&history, &field.writes);
            let heads: BTreeSet<Value> = item.heads(number).into_iter().map(|head| head.value.clone()).collect();
            prop_assert_eq!(heads, field.heads());
        }
    }

    /// Heads that say the same count once, and a conflict is told exactly where two values stand.
    /// Break: in `Item::heads` leave the filter of equal values out.
    #[test]
    fn a_conflict_is_told_where_two_values_stand(entries in any_entries()) {
        let record = folded(&entries);
        for ((id, number), field) in oracle::fold(&entries) {
            let told = record.item(id).expect("something was said of it").conflicts().contains(&number);
            prop_assert_eq!(told, field.heads().len() > 1);
        }
    }

    /// What folding found wrong is what is wrong: identities of two different entries, fields overwritten in a circle.
    /// Break: in `Record::absorb` leave out that a field is in no circle any more.
    #[test]
    fn faults_are_told_exactly(entries in any_entries()) {
        let mut distinct: BTreeMap<EntryId, BTreeSet<&Entry>> = BTreeMap::new();
        for entry in &entries {
            distinct.entry(entry.id).or_default().insert(entry);
        }
        let mut expected: BTreeSet<Fault> =
            distinct.iter().filter(|(_, same)| same.len() > 1).map(|(id, _)| Fault::EntryTwice(*id)).collect();
        let looped = oracle::fold(&entries).into_iter().filter(|(_, field)| field.is_looped());
        expected.extend(looped.map(|((id, field), _)| Fault::OverwriteLoop(id, field)));
        let told = folded(&entries).faults().into_iter().filter(|fault| !matches!(fault, Fault::Missing(_)));
        prop_assert_eq!(told.collect::<BTreeSet<_>>(), expected);
    }

    /// Every stretch that is missing is told exactly: with the entries that are here it makes whole numbers from one on.
    /// Break: in `Record::missing` take the last number missing to be `id.seq`.
    #[test]
    fn what_is_missing_is_told_exactly(numbers in prop::collection::btree_set(1_u64..40, 1..20)) {
        let entry = |seq| {
            let id = asfound_core::record::EntryId { replica: crate::any_entry::replica(1), seq };
            Entry { id, at: asfound_core::quantity::Millis(0), ops: vec![] }
        };
        let entries: Vec<Entry> = numbers.iter().copied().map(entry).collect();
        let mut all = numbers.clone();
        for missing in folded(&entries).missing() {
            for number in missing.first..=missing.last {
                prop_assert!(all.insert(number), "{number} is here");
            }
        }
        let last = *numbers.last().expect("one at least");
        prop_assert_eq!(all, (1..=last).collect::<BTreeSet<_>>());
    }
}
