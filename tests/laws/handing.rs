//! What of a job is in no job file that left the device.

use asfound_core::job::{Change, Command, Job, troubles};
use asfound_core::quantity::Millis;
use asfound_core::record::{Entry, EntryId, Hash, Held, Id, Kind};

use crate::any_entry::replica;
use crate::garage::Garage;

fn photo(garage: &mut Garage, device: usize, taken: i64) {
    let (part, id) = (garage.fresh(), garage.fresh());
    let _ = garage.command(device, Command::Create { id: part, kind: Kind::Part, changes: vec![] });
    let blob = Hash::of(&taken.to_le_bytes());
    let changes = vec![Change::Of(part), Change::Taken(Millis(taken)), Change::Blob(blob)];
    assert_eq!(garage.command(device, Command::Create { id, kind: Kind::Photo, changes }).problems, vec![]);
}

/// A job file is made at this hour and leaves the device a little later.
fn hand_out(garage: &mut Garage, device: usize, at: i64, held: Option<Held>) {
    let id: Id = garage.devices[device].id().expect("a job");
    let changes = [vec![Change::HandedOut(Millis(at))], held.map(Change::Held).into_iter().collect()].concat();
    let problems = garage.command(device, Command::Change { ids: vec![id], changes, seen: None }).problems;
    assert_eq!(problems, vec![]);
}

fn since(job: &Job) -> usize {
    job.head_view().expect("a head").photos_since
}

/// Break: in `head_view` go by the hour at which a photo was taken.
#[test]
fn photos_count_by_what_the_file_held() {
    let mut garage = Garage::new();
    photo(&mut garage, 0, 100);
    assert_eq!(since(&garage.devices[0]), 1);
    photo(&mut garage, 1, 50);
    let held = garage.devices[0].record().held();
    // Taken while the file is on its way, with a clock that runs behind.
    photo(&mut garage, 0, 90);
    hand_out(&mut garage, 0, 200, Some(held));
    assert_eq!(since(&garage.devices[0]), 1);
    garage.bring(1);
    assert_eq!(since(&garage.devices[0]), 2);
    let held = garage.devices[0].record().held();
    hand_out(&mut garage, 0, 201, Some(held));
    assert_eq!(since(&garage.devices[0]), 0);
    // On the other device the file counts for what was in it.
    garage.bring(0);
    assert_eq!(since(&garage.devices[1]), 0);
    photo(&mut garage, 1, 10);
    assert_eq!(since(&garage.devices[1]), 1);
}

/// Job files of earlier versions told the hour alone.
#[test]
fn without_that_the_hour_tells() {
    let mut garage = Garage::new();
    photo(&mut garage, 0, 100);
    photo(&mut garage, 0, 300);
    hand_out(&mut garage, 0, 200, None);
    assert_eq!(since(&garage.devices[0]), 1);
}

/// Two devices that each made a job file have nothing to settle.
/// Break: in `of_item` leave out which fields are not settled.
#[test]
fn two_job_files_are_no_conflict() {
    let mut garage = Garage::new();
    for device in 0..2 {
        let held = garage.devices[device].record().held();
        hand_out(&mut garage, device, 100, Some(held));
    }
    garage.bring_all();
    assert_eq!(troubles(&garage.devices[0]), vec![]);
}

/// Break: in `Record::held` leave the missing ones out.
#[test]
fn what_comes_after_a_gap_is_not_held() {
    let entry = |seq| Entry { id: EntryId { replica: replica(1), seq }, at: Millis(0), ops: vec![] };
    let held = |seqs: &[u64]| Job::from_entries(seqs.iter().map(|seq| entry(*seq))).record().held();
    assert_eq!(held(&[1, 2, 3]), Held(vec![entry(3).id]));
    assert_eq!(held(&[1, 2, 4, 6]), Held(vec![entry(2).id]));
    assert_eq!(held(&[2, 3]), Held(vec![]));
    assert_eq!(held(&[1, 2, 3, 4, 6]), Held(vec![entry(4).id]));
}
