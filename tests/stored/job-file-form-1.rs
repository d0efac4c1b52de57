//! A job file of the first form, written once and never again: it must read the same for ever.

use std::collections::BTreeSet;

use asfound_core::job::{Job, PartsQuery, Query, View, ask};
use asfound_core::papers::job_file::JobFile;
use asfound_core::record::{Hash, Id, Kind};

const FILE: &[u8] = include_bytes!("job-file-form-1.zip");

fn open() -> (JobFile<&'static [u8]>, Job) {
    let file = JobFile::open(FILE, FILE.len() as u64).unwrap();
    let (job, problems) = file.to_job();
    assert_eq!(problems, []);
    (file, job)
}

#[test]
fn the_file_is_the_one_that_was_frozen() {
    assert_eq!(Hash::of(FILE).to_string(), include_str!("job-file-form-1.hash").trim());
}

#[test]
fn its_record_reads_the_same() {
    let (_, job) = open();
    assert_eq!(job.record().len(), 24);
    let count = |kind| job.ids(kind).count();
    assert_eq!([Kind::Part, Kind::Photo, Kind::Quote, Kind::Choice, Kind::Place].map(count), [5, 3, 4, 3, 2]);
    let View::Parts(parts) = ask(&job, &Query::Parts(PartsQuery::default()), Id::from_bytes([0; 16])) else {
        panic!("parts are asked for")
    };
    let rows: Vec<_> = parts.rows.iter().map(|row| (row.tag.unwrap(), row.name.as_str())).collect();
    let expected = [
        (5, "Oil seal"),
        (1, "Hub, \"outer\" & <drum>"),
        (2, "Brake shoe, leading"),
        (3, "Drum"),
        (4, "+ Grease cap ½"),
    ];
    assert_eq!(rows, expected);
    assert_eq!(parts.sums.cash.iter().map(|money| money.minor).collect::<Vec<_>>(), [14_350]);
    assert_eq!(job.name(job.id().unwrap()), "Corvane tourer");
}

#[test]
fn its_photos_read_the_same() {
    let (file, job) = open();
    let named: BTreeSet<Hash> = job.blobs().into_keys().collect();
    let held: BTreeSet<Hash> = file
        .blobs()
        .map(|(hash, member)| {
            assert_eq!(Hash::of(&file.read(member).unwrap()), hash);
            hash
        })
        .collect();
    assert_eq!(held, named);
    assert_eq!(held.len(), 3);
}

#[test]
fn every_other_member_can_be_read() {
    let (file, _) = open();
    for member in file.members() {
        assert!(!file.read(member).unwrap().is_empty(), "{}", member.path);
    }
    let paths: Vec<&str> = file.members().iter().map(|member| member.path.as_str()).collect();
    assert_eq!(paths[..3], ["READ ME.txt", "parts.csv", "job.json"]);
}
