//! The suite of the store, over memory.
#![cfg(not(target_arch = "wasm32"))]

mod suite;

use std::future::Future;
use std::pin::pin;
use std::task::{Context, Poll, Waker};

use asfound_core::job::{Change, Command, Sent};
use asfound_core::problem::Code;
use asfound_core::quantity::Millis;
use asfound_core::record::{Hash, Id, Kind, Replica};
use asfound_web::load;
use asfound_web::recorder::Recorder;
use asfound_web::store::{Blob, Memory, Store};

/// Memory never waits for anything.
fn at_once<T>(future: impl Future<Output = T>) -> T {
    match pin!(future).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(value) => value,
        Poll::Pending => panic!("memory waited"),
    }
}

#[test]
fn memory_passes_the_suite() {
    at_once(suite::passes(&Memory::default(), 7));
}

fn create(number: u8, kind: Kind, changes: Vec<Change>) -> Sent {
    let id = Id::from_bytes([number; 16]);
    Sent { id: Id::from_bytes([number + 100; 16]), command: Command::Create { id, kind, changes } }
}

/// Breaks when a command is answered as done while all before it lies in memory alone.
#[test]
fn a_database_that_was_taken_away_is_filled_again_from_memory() {
    let job = Id::from_bytes([1; 16]);
    let photo = Blob { media_type: "image/jpeg".to_owned(), bytes: b"photo".to_vec() };
    let hash = Hash::of(&photo.bytes);
    at_once(async {
        let device = Id::from_bytes([9; 16]);
        let recorder = Recorder::over(Memory::default(), device, Replica::from_bytes([1; 8])).await.unwrap();
        recorder.begin(job);
        assert!(recorder.command(&create(1, Kind::Job, vec![]), vec![], Millis(1)).await.ok);
        let taken = create(2, Kind::Photo, vec![Change::Blob(hash)]);
        assert!(recorder.command(&taken, vec![(hash, photo)], Millis(2)).await.ok);

        recorder.store().forget();
        let answer = recorder.command(&create(3, Kind::Part, vec![]), vec![], Millis(3)).await;
        assert!(answer.ok);
        let lost: Vec<_> = answer.problems.iter().map(|problem| (problem.code, &problem.values["hash"])).collect();
        assert_eq!(lost, [(Code::BlobMissing, &hash.to_string())]);
        let mut kept = load::all(recorder.store(), job).await.unwrap().entries;
        kept.sort();
        kept.dedup();
        assert_eq!(kept.len(), 3);
        assert_eq!(recorder.store().meta("device").await.unwrap(), Some(device.to_string()));
        assert_eq!(recorder.jobs().await.unwrap().len(), 1);

        let next = recorder.command(&create(4, Kind::Part, vec![]), vec![], Millis(4)).await;
        assert!(next.ok && next.problems.is_empty(), "told once");
    });
}
