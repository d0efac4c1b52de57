use std::collections::{BTreeMap, BTreeSet};

use asfound_core::job::{BLOCK, Change, Command, Job, troubles};
use asfound_core::problem::Code;
use asfound_core::record::{FieldName, Id, Kind};
use proptest::prelude::*;

use crate::cases;
use crate::garage::{Garage, any_steps, context};

fn tag(job: &Job, part: Id) -> i64 {
    job.record_view(part).and_then(|view| view.values.tag).expect("a part carries a tag")
}

/// Which devices claimed each block.
fn claims(job: &Job) -> BTreeMap<i64, BTreeSet<Id>> {
    let mut claims: BTreeMap<i64, BTreeSet<Id>> = BTreeMap::new();
    for values in job.ids(Kind::Block).filter_map(|block| Some(job.record_view(block)?.values)) {
        claims.entry(values.number.expect("a number")).or_default().extend(values.device);
    }
    claims
}

/// The next tag of a device, found by looking through all parts and blocks.
fn next_by_looking(job: &Job, device: Id) -> i64 {
    let tags: BTreeSet<i64> =
        job.ids(Kind::Part).filter_map(|part| job.record_view(part)?.values.tag).filter(|tag| *tag > 0).collect();
    let on_places: BTreeSet<i64> =
        job.ids(Kind::Place).filter_map(|place| job.record_view(place)?.values.tag).collect();
    let claims = claims(job);
    let greatest = |block: i64| tags.iter().copied().filter(|tag| (tag - 1) / BLOCK == block).max();
    let own = claims.iter().filter(|(_, devices)| devices.first() == Some(&device));
    let mut room = own.flat_map(|(block, _)| greatest(*block).unwrap_or(block * BLOCK) + 1..=(block + 1) * BLOCK);
    if let Some(next) = room.find(|tag| !on_places.contains(tag)) {
        return next;
    }
    let free = (0..).find(|block| {
        let is_on_place = on_places.iter().any(|tag| (tag - 1) / BLOCK == *block);
        !claims.contains_key(block) && greatest(*block).is_none() && !is_on_place
    });
    free.expect("blocks enough") * BLOCK + 1
}

/// What two devices do with tags.
#[derive(Debug, Clone)]
enum Step {
    /// Parts are made, each drawing a tag.
    Draw(usize, usize),
    /// A part is made under the number that is shown as next.
    TakeShown(usize),
    /// Somebody writes a number by hand.
    ByHand(usize, i64),
    Bring(usize),
}

fn any_draws() -> impl Strategy<Value = Vec<Step>> {
    let step = prop_oneof![
        4 => (0_usize..2, 1_usize..4).prop_map(|(device, count)| Step::Draw(device, count)),
        3 => (0_usize..2).prop_map(Step::TakeShown),
        2 => (0_usize..2, prop_oneof![1..4 * BLOCK, Just(BLOCK), Just(BLOCK - 1), Just(2 * BLOCK)])
            .prop_map(|(device, tag)| Step::ByHand(device, tag)),
        3 => (0_usize..2).prop_map(Step::Bring),
    ];
    prop::collection::vec(step, 1..30)
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// Two devices never draw the same number, except from a block that both claimed before either had seen the other's
    /// claim; and one device never draws a number twice.
    /// Break: in `next_tag_after` draw on from a block that is full.
    #[test]
    fn devices_draw_different_numbers(steps in any_draws()) {
        let mut garage = Garage::new();
        let mut drawn: BTreeMap<i64, Vec<usize>> = BTreeMap::new();
        let mut by_hand = BTreeSet::new();
        for step in &steps {
            match step {
                Step::Draw(device, count) => {
                    let ids: Vec<Id> = (0..*count).map(|_| garage.fresh()).collect();
                    let make = |id: &Id| Command::Create { id: *id, kind: Kind::Part, changes: vec![] };
                    let _ = garage.command(*device, Command::All { commands: ids.iter().map(make).collect() });
                    for id in ids {
                        drawn.entry(tag(&garage.devices[*device], id)).or_default().push(*device);
                    }
                }
                Step::TakeShown(device) => {
                    let shown = garage.devices[*device].next_tag(context(*device).device);
                    let changes = vec![Change::Tag(shown)];
                    let id = garage.fresh();
                    let _ = garage.command(*device, Command::Create { id, kind: Kind::Part, changes });
                    drawn.entry(shown).or_default().push(*device);
                }
                Step::ByHand(device, tag) => {
                    let id = garage.fresh();
                    let _ = garage.command(*device, Command::Create { id, kind: Kind::Part, changes: vec![Change::Tag(*tag)] });
                    by_hand.insert(*tag);
                }
                Step::Bring(from) => garage.bring(*from),
            }
        }
        garage.bring_all();
        let claims = claims(&garage.devices[0]);
        for (tag, devices) in drawn.into_iter().filter(|(_, devices)| devices.len() > 1) {
            prop_assert!(devices.len() == 2 && devices[0] != devices[1], "{} drawn twice by one device", tag);
            let block = (tag - 1) / BLOCK;
            prop_assert!(claims.get(&block).is_some_and(|devices| devices.len() > 1), "{} of block {}", tag, block);
        }
    }

    /// Once two devices that claimed the same block have seen it, neither draws what the other could draw.
    /// Break: in `next_tag_after` count a block as own whoever of its claimants has the least id.
    #[test]
    fn after_a_clash_each_goes_its_own_way(before in 1_usize..5, after in 1_usize..5) {
        let mut garage = Garage::new();
        let make = |garage: &mut Garage, device: usize| {
            let id = garage.fresh();
            let _ = garage.command(device, Command::Create { id, kind: Kind::Part, changes: vec![] });
            tag(&garage.devices[device], id)
        };
        for device in 0..2 {
            for _ in 0..before {
                make(&mut garage, device);
            }
        }
        garage.bring_all();
        let told = troubles(&garage.devices[0]);
        prop_assert_eq!(told.iter().filter(|problem| problem.code == Code::BlockTwice).count(), 1);
        let mut drawn = BTreeSet::new();
        for _ in 0..after {
            for device in 0..2 {
                prop_assert!(drawn.insert(make(&mut garage, device)));
            }
        }
    }

    /// What is kept of tags and positions along the way says what looking through all parts says, whatever was made,
    /// retagged, split, struck out, undone and merged.
    /// Break: in `Job::index` leave out that a part leaves the tag it had.
    #[test]
    fn what_is_kept_of_numbers_is_what_the_parts_say(steps in any_steps(), draws in any_draws()) {
        let mut garage = Garage::after(&steps);
        for step in &draws {
            let (device, changes) = match step {
                Step::Draw(device, _) | Step::TakeShown(device) => (*device, vec![]),
                Step::ByHand(device, tag) => (*device, vec![Change::Tag(*tag), Change::Order(*tag * 3)]),
                Step::Bring(from) => { garage.bring(*from); continue; }
            };
            let job = &garage.devices[device];
            let orders = job.ids(Kind::Part).filter_map(|part| job.record_view(part)?.values.order);
            let last = orders.max().unwrap_or(0).max(0);
            let next = next_by_looking(job, context(device).device);
            prop_assert_eq!(job.next_tag(context(device).device), next);
            let id = garage.fresh();
            let is_drawn = changes.is_empty();
            let _ = garage.command(device, Command::Create { id, kind: Kind::Part, changes });
            let job = &garage.devices[device];
            if is_drawn {
                prop_assert_eq!(tag(job, id), next);
                prop_assert_eq!(job.record_view(id).and_then(|view| view.values.order), Some(last + 1));
            }
            let carrying: Vec<Id> = job.standing_ids(Kind::Part).filter(|part| tag(job, *part) == tag(job, id)).collect();
            prop_assert_eq!(job.parts_with_tag(tag(job, id)).collect::<Vec<_>>(), carrying);
        }
    }

    /// Two parts with the same tag from two devices: both are kept under it, and it is told once.
    /// Break: in `twice` tell it only where three share a number.
    #[test]
    fn the_same_tag_is_kept_twice_and_told_once(steps in any_steps(), tag_number in 2_000_i64..9_000) {
        let mut garage = Garage::after(&steps);
        let parts: Vec<Id> = (0..2).map(|_| garage.fresh()).collect();
        for (device, part) in parts.iter().enumerate() {
            let changes = vec![Change::Tag(tag_number)];
            let _ = garage.command(device, Command::Create { id: *part, kind: Kind::Part, changes });
        }
        garage.bring_all();
        for job in &garage.devices {
            let mut carrying: Vec<Id> = job.parts_with_tag(tag_number).collect();
            carrying.sort_unstable();
            let mut both = parts.clone();
            both.sort_unstable();
            prop_assert_eq!(&carrying, &both);
            let problems = troubles(job);
            let told: Vec<_> = problems.iter().filter(|problem| problem.values.get("tag") == Some(&tag_number.to_string())).collect();
            prop_assert_eq!(told.len(), 1);
            prop_assert_eq!(told[0].code, Code::TagTwice);
            prop_assert_eq!(told[0].place.field, Some(FieldName::Tag));
        }
    }
}
