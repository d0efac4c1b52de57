use std::collections::BTreeMap;

use asfound_core::job::{Group, Job, PartsQuery, View, ask};
use asfound_core::record::{Entry, Id, Kind, Record};
use proptest::prelude::*;

use crate::cases;
use crate::garage::{Deed, Garage, Step, any_steps, context};
use crate::views::{GROUPS, all_views};

fn entries(job: &Job) -> Vec<Entry> {
    job.record().entries().cloned().collect()
}

fn merged(one: &Job, other: &Job) -> Record {
    let mut job = one.clone();
    job.absorb(entries(other));
    job.record().clone()
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// Merging is associative, commutative and idempotent, and adds nothing of its own.
    /// Break: in `Record::absorb` drop every fifth entry.
    #[test]
    fn merging_is_a_join(steps in any_steps(), more in any_steps(), less in any_steps()) {
        let (a, b) = (Garage::after(&steps).devices[0].clone(), Garage::after(&more).devices[1].clone());
        let c = Garage::after(&less).devices[0].clone();
        prop_assert_eq!(merged(&a, &b), merged(&b, &a));
        prop_assert_eq!(&merged(&a, &a), a.record());
        let left = Job::from_entries(merged(&a, &b).entries().cloned());
        let right = Job::from_entries(merged(&b, &c).entries().cloned());
        prop_assert_eq!(merged(&left, &c), merged(&a, &right));
    }

    /// However two devices record and exchange, after the last exchange a person sees the same on both, and the same as on
    /// a third that got everything at once.
    /// Break: in `Job::absorb` leave out what mentions a record that has changed.
    #[test]
    fn both_devices_come_to_the_same(steps in any_steps()) {
        let mut garage = Garage::after(&steps);
        garage.bring_all();
        let device = context(0).device;
        let seen = all_views(&garage.devices[0], device);
        prop_assert_eq!(&seen, &all_views(&garage.devices[1], device));
        prop_assert_eq!(&seen, &all_views(&Job::from_entries(entries(&garage.devices[0])), device));
    }

    /// Whatever two devices do, nothing that is not struck out disappears from its list, and nothing stands there twice.
    /// Break: in `Job::nested` leave out those that are left in circles.
    #[test]
    fn nothing_disappears_from_a_list(steps in any_steps(), inner in 0_usize..12, outer in 0_usize..12) {
        let mut garage = Garage::after(&steps);
        garage.bring_all();
        // Of assemblies and of places two are moved into one another, each by a device that does not see the other move.
        for (device, deed) in [(0, Deed::Move(inner, outer)), (1, Deed::Move(outer, inner))] {
            garage.step(&Step::Do(device, deed));
        }
        garage.bring_all();
        let job = &garage.devices[0];
        for group in GROUPS {
            prop_assert_eq!(listed(job, group), standing(job, Kind::Part), "{:?}", group);
        }
        let assemblies = job.assemblies_view().assemblies.into_iter().map(|line| line.record.id);
        prop_assert_eq!(counted(assemblies), standing(job, Kind::Assembly));
        let places = job.places_view().places.into_iter().map(|line| line.record.id);
        prop_assert_eq!(counted(places), standing(job, Kind::Place));
    }
}

fn listed(job: &Job, group: Group) -> BTreeMap<Id, usize> {
    let query = asfound_core::job::Query::Parts(PartsQuery { group, ..PartsQuery::default() });
    let View::Parts(view) = ask(job, &query, context(0).device) else { panic!("parts were asked for") };
    if group != Group::None {
        assert_eq!(view.groups.iter().map(|group| group.count).sum::<usize>(), view.found);
    }
    counted(view.rows.into_iter().map(|row| row.id))
}

fn standing(job: &Job, kind: Kind) -> BTreeMap<Id, usize> {
    counted(job.standing_ids(kind))
}

fn counted(ids: impl Iterator<Item = Id>) -> BTreeMap<Id, usize> {
    let mut counted = BTreeMap::new();
    for id in ids {
        *counted.entry(id).or_insert(0) += 1;
    }
    counted
}
