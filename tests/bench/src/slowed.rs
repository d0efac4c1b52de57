//! A browser that gets every fourth slice of time: all its threads and processes, workers too. The browser's own
//! throttling slows the page's main thread alone.

use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

use nix::sys::signal::{Signal, kill};
use nix::unistd::Pid;

use crate::processes::processes;

const SLICE: Duration = Duration::from_millis(5);

/// While it lives, the processes over a profile run one slice and rest three.
pub(crate) struct Slowed {
    over: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
}

impl Slowed {
    pub(crate) fn start(profile: &Path) -> Self {
        let over = Arc::new(AtomicBool::new(false));
        let (told, profile) = (Arc::clone(&over), profile.to_owned());
        let thread = thread::spawn(move || {
            let mut pids = processes(&profile);
            let mut looked = Instant::now();
            while !told.load(Ordering::Relaxed) {
                if looked.elapsed() > Duration::from_millis(100) {
                    pids = processes(&profile);
                    looked = Instant::now();
                }
                send(&pids, Signal::SIGSTOP);
                thread::sleep(SLICE * 3);
                send(&pids, Signal::SIGCONT);
                thread::sleep(SLICE);
            }
        });
        Self { over, thread: Some(thread) }
    }
}

impl Drop for Slowed {
    fn drop(&mut self) {
        self.over.store(true, Ordering::Relaxed);
        if let Some(thread) = self.thread.take() {
            // It cannot panic; and if it did, the browser is ended anyway.
            let _ = thread.join();
        }
    }
}

fn send(pids: &[i32], signal: Signal) {
    for pid in pids {
        // It may have ended in the meantime.
        let _ = kill(Pid::from_raw(*pid), signal);
    }
}
