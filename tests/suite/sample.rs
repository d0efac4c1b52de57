//! A front brake taken apart: invented, with names that would run as formulas and a photo that tells where it was taken.

use std::collections::BTreeMap;

use asfound_core::job::{Command, Context, Job, Sent, apply};
use asfound_core::papers::PaperWords;
use asfound_core::papers::job_file::Writer;
use asfound_core::problem::{Problem, Severity};
use asfound_core::quantity::Millis;
use asfound_core::record::{Hash, Id, Replica};

/// Photos by hash.
pub(crate) type Photos = BTreeMap<Hash, Vec<u8>>;

const COMMANDS: &str = include_str!("front-brake.jsonl");
const FILES: [(&str, &[u8]); 3] = [
    ("hub.jpg", include_bytes!("photos/hub.jpg")),
    ("shoe.jpg", include_bytes!("photos/shoe.jpg")),
    ("drum.jpg", include_bytes!("photos/drum.jpg")),
];

/// The sample job.
pub(crate) fn job() -> Job {
    let mut job = Job::new();
    for (number, line) in (1..).zip(COMMANDS.lines()) {
        let line = FILES.iter().fold(line.to_owned(), |line, (name, bytes)| {
            line.replace(&format!("$file:{name}"), &Hash::of(bytes).to_string())
        });
        assert_eq!(send(&mut job, 1, number, &line), [], "{line}");
    }
    job
}

/// Its photos.
pub(crate) fn photos() -> Photos {
    FILES.iter().map(|(_, bytes)| (Hash::of(bytes), bytes.to_vec())).collect()
}

/// Carries out one command as a device of its own; answers with the problems that were errors.
pub(crate) fn send(job: &mut Job, device: u8, number: u64, command: &str) -> Vec<Problem> {
    let command: Command = serde_json::from_str(command).unwrap();
    let device_id = Id::from_bytes([device; 16]);
    let sent = Sent { id: Id::derived(device_id, "command", number), command };
    let at = Millis(1_735_725_600_000 + i64::try_from(number).unwrap() * 60_000);
    let context = Context { replica: Replica::from_bytes([device; 8]), device: device_id, at };
    let applied = apply(job, &sent, &context);
    job.absorb(applied.entries);
    applied.problems.into_iter().filter(|problem| problem.severity == Severity::Error).collect()
}

/// The job file of a job.
pub(crate) fn job_file(job: &Job, photos: &Photos) -> Vec<u8> {
    let mut writer = Writer::begin(Vec::new(), job, &PaperWords::default()).unwrap();
    for (hash, bytes) in photos {
        writer.blob(*hash, bytes).unwrap();
    }
    writer.finish().unwrap().sink
}
