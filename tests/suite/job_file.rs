use std::collections::BTreeSet;
use std::io::{self, Write};

use asfound_core::job::{Job, PartsQuery, Query, ask, troubles};
use asfound_core::papers::PaperWords;
use asfound_core::papers::job_file::{JobFile, JobFileError, MemberKind, PIECE, Writer};
use asfound_core::problem::{Code, Severity};
use asfound_core::quantity::Millis;
use asfound_core::record::{Entry, EntryId, FieldId, Hash, Id, Op, Replica, Value};

use crate::sample::{self, job_file, send};

fn open(bytes: &[u8]) -> JobFile<&[u8]> {
    let length = bytes.len() as u64;
    JobFile::open(bytes, length).unwrap()
}

fn views(job: &Job) -> String {
    let device = Id::from_bytes([0; 16]);
    let queries = [Query::Head, Query::Assemblies, Query::Parts(PartsQuery::default()), Query::Places, Query::Problems];
    let views = queries.iter().map(|query| ask(job, query, device));
    let parts = job.ids(asfound_core::record::Kind::Part).flat_map(|part| {
        [Query::Part { part }, Query::Cost { part, today: None, set: None }, Query::History { id: part }]
            .map(|query| ask(job, &query, device))
    });
    serde_json::to_string(&views.chain(parts).collect::<Vec<_>>()).unwrap()
}

#[test]
fn out_and_in_again_gives_the_same_views_and_photos() {
    let (job, photos) = (sample::job(), sample::photos());
    let bytes = job_file(&job, &photos);
    let file = open(&bytes);
    let (back, problems) = file.to_job();
    assert_eq!(problems, []);
    assert_eq!(back.record(), job.record());
    assert_eq!(views(&back), views(&job));
    let hashes: BTreeSet<Hash> = file
        .blobs()
        .map(|(hash, member)| {
            assert_eq!(Hash::of(&file.read(member).unwrap()), hash);
            hash
        })
        .collect();
    assert_eq!(hashes, photos.keys().copied().collect());
    assert_eq!(file.job(), job.id());
}

#[test]
fn people_find_their_way_in_it() {
    let bytes = job_file(&sample::job(), &sample::photos());
    let file = open(&bytes);
    let text = |path: &str| {
        let member = file.members().iter().find(|member| member.path == path).unwrap();
        String::from_utf8(file.read(member).unwrap()).unwrap()
    };
    assert!(text("READ ME.txt").contains("They may hold the place where they were taken"));
    let snapshot: serde_json::Value = serde_json::from_str(&text("job.json")).unwrap();
    assert_eq!(snapshot["form"], 1);
    assert_eq!(snapshot["records"]["job"][0]["values"]["name"], "Corvane tourer");
    assert_eq!(snapshot["records"]["part"].as_array().unwrap().len(), 5);
    assert_eq!(snapshot["records"]["part"][0]["written"]["name"], 1);
    for hash in sample::photos().keys() {
        let path = format!("photos/{hash}.jpg");
        assert!(text("parts.csv").contains(&path));
        assert!(file.members().iter().any(|member| member.path == path));
    }
}

#[test]
fn the_same_record_gives_the_same_bytes_whatever_the_order_of_its_entries() {
    let job = sample::job();
    let backwards: Vec<Entry> = job.record().entries().cloned().collect();
    let again = Job::from_entries(backwards.into_iter().rev());
    assert_eq!(job_file(&job, &sample::photos()), job_file(&again, &sample::photos()));
}

#[test]
fn brought_in_twice_it_is_harmless() {
    let job = sample::job();
    let photos = sample::photos();
    let bytes = job_file(&job, &photos);
    let dry = open(&bytes).dry_run(Some(&job), &|hash| photos.contains_key(&hash));
    assert_eq!((dry.entries_new, dry.photos_new, dry.parts_new, dry.conflicts_new), (0, 0, 0, 0));
    assert_eq!((dry.entries_here, dry.photos_here), (job.record().len(), 3));
    assert_eq!((dry.missing.len(), dry.problems.len(), dry.other_job), (0, 0, false));
    let mut twice = job.clone();
    for _ in 0..2 {
        twice.absorb(open(&bytes).open_chunks().entries);
    }
    assert_eq!(twice.record(), job.record());
}

#[test]
fn a_dry_run_tells_what_is_new_what_conflicts_and_what_is_missing() {
    let start = sample::job();
    let hub = "00000000000000000000000000000100";
    let rename = |name| format!(r#"{{"do":"change","ids":["{hub}"],"changes":[{{"name":"{name}"}}]}}"#);
    let (mut here, mut there) = (start.clone(), start.clone());
    assert_eq!(send(&mut here, 2, 1, &rename("Hub")), []);
    assert_eq!(send(&mut there, 3, 1, &rename("Hub with studs")), []);
    let part = r#"{"do":"create","id":"00000000000000000000000000000fff","kind":"part","changes":[{"name":"Pin"}]}"#;
    assert_eq!(send(&mut there, 3, 2, part), []);
    let mut photos = sample::photos();
    let (gone, _) = photos.pop_first().unwrap();
    let bytes = job_file(&there, &photos);
    let (known, _) = photos.first_key_value().unwrap();
    let dry = open(&bytes).dry_run(Some(&here), &|hash| hash == *known);
    assert_eq!((dry.entries_new, dry.entries_here), (2, start.record().len()));
    assert_eq!((dry.parts_new, dry.conflicts_new), (1, 1));
    assert_eq!((dry.photos_new, dry.photos_here), (1, 1));
    assert_eq!(dry.missing, [gone]);
    assert_eq!(dry.problems.iter().map(|problem| problem.code).collect::<Vec<_>>(), [Code::BlobMissing]);
    assert_eq!(dry.name, "Corvane tourer");
    assert_eq!(dry.bytes_new, photos.values().next_back().unwrap().len() as u64);

    let (mut one, mut other) = (here.clone(), there.clone());
    one.absorb(there.record().entries().cloned());
    other.absorb(here.record().entries().cloned());
    assert_eq!(views(&one), views(&other));
    assert_eq!(job_file(&one, &photos), job_file(&other, &photos));
    assert!(troubles(&one).iter().any(|problem| problem.code == Code::Conflict));
}

#[test]
fn another_job_comes_to_stand_beside() {
    let mut other = Job::new();
    let create = r#"{"do":"create","id":"000000000000000000000000000000aa","kind":"job","changes":[{"name":"Other"}]}"#;
    assert_eq!(send(&mut other, 9, 1, create), []);
    let bytes = job_file(&other, &sample::Photos::new());
    let dry = open(&bytes).dry_run(Some(&sample::job()), &|_| false);
    assert!(dry.other_job);
    assert_eq!((dry.entries_new, dry.entries_here, dry.name.as_str()), (1, 0, "Other"));
}

/// One flipped bit rejects exactly one member; the others still come in.
#[test]
fn one_flipped_bit_costs_one_member() {
    let (job, photos) = (sample::job(), sample::photos());
    let whole = job_file(&job, &photos);
    let count = open(&whole).members().len();
    assert_eq!(count, 3 + 1 + photos.len());
    for (hash, bytes) in &photos {
        let mut damaged = whole.clone();
        let from = damaged.windows(bytes.len()).position(|window| window == &bytes[..]).unwrap();
        damaged[from + bytes.len() / 2] ^= 0x10;
        let file = open(&damaged);
        let bad: Vec<_> = file.members().iter().filter(|member| file.read(member).is_err()).collect();
        assert_eq!(bad.len(), 1);
        assert_eq!(bad[0].kind, MemberKind::Blob(*hash));
        let error = file.read(bad[0]).unwrap_err();
        assert!(matches!(error, JobFileError::NameDiffers));
        let problem = error.of_member(&bad[0].path);
        assert_eq!((problem.code, problem.severity), (Code::Damaged, Severity::Warning));
        assert_eq!(problem.values["file"], format!("photos/{hash}.jpg"));
        assert_eq!(file.to_job().0.record(), job.record());
    }
}

/// Breaks when a member whose path no longer reads as that of a chunk is passed over.
#[test]
fn no_flipped_bit_in_the_list_of_members_loses_an_entry_unsaid() {
    let job = sample::job();
    let whole = job_file(&job, &sample::Photos::new());
    let list = whole.windows(4).position(|window| window == b"PK\x01\x02").unwrap();
    for bit in list * 8..whole.len() * 8 {
        let mut damaged = whole.clone();
        damaged[bit / 8] ^= 1 << (bit % 8);
        let Ok(file) = JobFile::open(&damaged[..], damaged.len() as u64) else { continue };
        let (back, problems) = file.to_job();
        assert!(back.record() == job.record() || !problems.is_empty(), "bit {} of byte {}", bit % 8, bit / 8 - list);
    }
}

#[test]
fn a_damaged_chunk_is_told_and_the_others_come_in() {
    let mut job = sample::job();
    for number in 1..=1500 {
        let change = format!(
            r#"{{"do":"change","ids":["00000000000000000000000000000101"],"changes":[{{"remark":"{number}"}}]}}"#
        );
        assert_eq!(send(&mut job, 7, number, &change), []);
    }
    let mut bytes = job_file(&job, &sample::photos());
    let file = open(&bytes);
    let chunks: Vec<String> = file.chunks().map(|member| member.path.clone()).collect();
    assert_eq!(chunks.len(), 2);
    let last = file.read(file.chunks().last().unwrap()).unwrap();
    let from = bytes.windows(last.len()).position(|window| window == &last[..]).unwrap();
    bytes[from + 40] ^= 1;
    let (back, problems) = open(&bytes).to_job();
    assert_eq!(problems.len(), 1);
    assert_eq!((problems[0].code, &problems[0].values["file"]), (Code::Damaged, &chunks[1]));
    assert_eq!(back.record().len(), 1000);
    assert_eq!(back.name(job.id().unwrap()), "Corvane tourer");
}

/// Breaks when a length or an offset out of the file is trusted.
#[test]
fn whatever_is_damaged_nothing_panics() {
    let (job, photos) = (sample::job(), sample::photos());
    let whole = job_file(&job, &photos);
    // Behind the list of members stands where it begins: damage there may cost them all, but not the program.
    let list_ends = whole.windows(4).rposition(|window| window == b"PK\x05\x06").unwrap();
    for place in (0..whole.len()).step_by(7) {
        let mut damaged = whole.clone();
        damaged[place] ^= 1 << (place % 8);
        let length = damaged.len() as u64;
        let Ok(file) = JobFile::open(&damaged[..], length) else { continue };
        let sound = file.members().iter().filter(|member| file.read(member).is_ok()).count();
        assert!(place >= list_ends || sound + 1 >= file.members().len(), "byte {place}");
        let _ = file.dry_run(Some(&job), &|_| false);
    }
    for length in (0..whole.len()).step_by(101) {
        let cut = &whole[..length];
        assert!(matches!(JobFile::open(cut, length as u64), Err(JobFileError::NotAZip)), "{length}");
    }
}

#[test]
fn what_is_no_job_file_is_refused() {
    let problem = JobFile::open(&b"not a zip"[..], 9).unwrap_err().of_file();
    assert_eq!((problem.code, problem.severity), (Code::NotOurs, Severity::Error));
    let empty_zip = [&b"PK\x05\x06"[..], &[0; 18]].concat();
    let error = JobFile::open(&empty_zip[..], 22).unwrap_err();
    assert!(matches!(error, JobFileError::NotAJobFile));
}

#[test]
fn a_newer_form_is_told_and_what_can_be_read_is_read() {
    let mut bytes = job_file(&sample::job(), &sample::photos());
    let comment = b"asfound job file 1";
    let from = bytes.windows(comment.len()).rposition(|window| window == comment).unwrap();
    bytes[from + comment.len() - 1] = b'2';
    let (job, problems) = open(&bytes).to_job();
    assert_eq!(problems.iter().map(|problem| problem.code).collect::<Vec<_>>(), [Code::NewerForm]);
    assert_eq!(job.record(), sample::job().record());
}

#[test]
fn fields_of_a_later_version_pass_through() {
    let mut job = sample::job();
    let id = EntryId { replica: Replica::from_bytes([5; 8]), seq: 1 };
    let value = Value::Unknown(77, b"later".to_vec());
    let op = Op { record: job.id().unwrap(), field: FieldId(9000), value, over: Vec::new() };
    job.absorb([Entry { id, at: Millis(0), ops: vec![op] }]);
    let bytes = job_file(&job, &sample::photos());
    assert_eq!(open(&bytes).to_job().0.record(), job.record());
}

#[test]
fn a_photo_that_is_not_its_own_is_not_written() {
    let job = sample::job();
    let mut photos = sample::photos();
    let (hash, bytes) = photos.pop_first().unwrap();
    let mut writer = Writer::begin(Vec::new(), &job, &PaperWords::default()).unwrap();
    assert!(matches!(writer.blob(hash, b"something else"), Err(JobFileError::NameDiffers)));
    assert!(matches!(writer.blob(Hash::of(b"x"), b"x"), Err(JobFileError::NotNamed(_))));
    writer.blob(hash, &bytes).unwrap();
    writer.blob(hash, &bytes).unwrap();
    assert_eq!(writer.wanted().map(|(hash, _)| hash).collect::<Vec<_>>(), photos.keys().copied().collect::<Vec<_>>());
    let written = writer.finish().unwrap();
    assert_eq!(written.missing, photos.keys().copied().collect::<Vec<_>>());
    assert_eq!(open(&written.sink).blobs().count(), 1);
}

/// Takes bytes as a file in the browser does, and notes the largest piece.
#[derive(Default)]
struct Largest {
    largest: usize,
    written: usize,
}

impl Write for &mut Largest {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.largest = self.largest.max(bytes.len());
        self.written += bytes.len();
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

#[test]
fn no_piece_is_larger_than_one_mebibyte() {
    let mut job = sample::job();
    let photo = vec![0x5a; 5 * PIECE + 3];
    let hash = Hash::of(&photo);
    let create = format!(
        r#"{{"do":"create","id":"000000000000000000000000000002ff","kind":"photo","changes":[{{"of":"00000000000000000000000000000100"}},{{"blob":"{hash}"}},{{"media_type":"image/jpeg"}}]}}"#
    );
    assert_eq!(send(&mut job, 4, 1, &create), []);
    let mut sink = Largest::default();
    let mut writer = Writer::begin(&mut sink, &job, &PaperWords::default()).unwrap();
    writer.blob(hash, &photo).unwrap();
    writer.finish().unwrap();
    assert!(sink.written > photo.len());
    assert_eq!(sink.largest, PIECE);
}
