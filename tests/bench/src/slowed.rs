//! A browser that gets every fourth slice of time: all its threads and processes, workers too. The browser's own
//! throttling slows the page's main thread alone.

use std::fs;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

use nix::sys::signal::{Signal, kill};
use nix::unistd::Pid;

const SLICE: Duration = Duration::from_millis(5);

/// While it lives, the processes over a profile run one slice and rest three.
pub(crate) struct Slowed {
    over: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
}

impl Slowed {
    pub(crate) fn start(profile: &Path) -> Self {
        let over = Arc::new(AtomicBool::new(false));
        let (told, mark) = (Arc::clone(&over), profile.display().to_string());
        let thread = thread::spawn(move || {
            let mut pids = processes(&mark);
            let mut looked = Instant::now();
            while !told.load(Ordering::Relaxed) {
                if looked.elapsed() > Duration::from_millis(100) {
                    pids = processes(&mark);
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

/// The browser's first process names the profile; the others descend from it.
fn processes(mark: &str) -> Vec<i32> {
    let Ok(entries) = fs::read_dir("/proc") else { return Vec::new() };
    let all: Vec<i32> = entries.flatten().filter_map(|entry| entry.file_name().to_str()?.parse().ok()).collect();
    let named = |pid: &i32| {
        let line = fs::read(format!("/proc/{pid}/cmdline")).unwrap_or_default();
        String::from_utf8_lossy(&line).split('\0').any(|word| word == format!("--user-data-dir={mark}"))
    };
    let parents: Vec<(i32, i32)> = all.iter().filter_map(|pid| Some((*pid, parent(*pid)?))).collect();
    let mut found: Vec<i32> = all.iter().copied().filter(named).collect();
    let mut next = 0;
    while next < found.len() {
        let of = found[next];
        let children = parents.iter().filter(|(pid, its)| *its == of && !found.contains(pid)).map(|(pid, _)| *pid);
        let children: Vec<i32> = children.collect();
        found.extend(children);
        next += 1;
    }
    found
}

fn parent(pid: i32) -> Option<i32> {
    let stat = fs::read_to_string(format!("/proc/{pid}/stat")).ok()?;
    stat.rsplit_once(')')?.1.split_whitespace().nth(1)?.parse().ok()
}
