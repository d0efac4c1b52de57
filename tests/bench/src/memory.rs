//! How much memory a browser takes while it works: all its processes, what is theirs alone.

use std::fs;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::Duration;

use anyhow::anyhow;

use crate::processes::processes;

/// Watches from its start until it is asked.
pub(crate) struct Memory {
    over: Arc<AtomicBool>,
    thread: JoinHandle<u64>,
    before: u64,
}

impl Memory {
    pub(crate) fn watch(profile: &Path) -> Self {
        let over = Arc::new(AtomicBool::new(false));
        let (told, profile) = (Arc::clone(&over), profile.to_owned());
        let before = taken(&profile);
        let thread = thread::spawn(move || {
            let mut most = 0;
            while !told.load(Ordering::Relaxed) {
                most = most.max(taken(&profile));
                thread::sleep(Duration::from_millis(40));
            }
            most
        });
        Self { over, thread, before }
    }

    /// The most that was taken beyond what was taken before, in megabytes.
    pub(crate) fn extra(self) -> anyhow::Result<f64> {
        self.over.store(true, Ordering::Relaxed);
        let most = self.thread.join().map_err(|_| anyhow!("the watcher ended"))?;
        Ok(most.saturating_sub(self.before) as f64 / 1000.0)
    }
}

/// Kilobytes that no file stands for.
fn taken(profile: &Path) -> u64 {
    let own = |pid: &i32| {
        let status = fs::read_to_string(format!("/proc/{pid}/status")).ok()?;
        let line = status.lines().find(|line| line.starts_with("RssAnon:"))?;
        line.split_whitespace().nth(1)?.parse::<u64>().ok()
    };
    processes(profile).iter().filter_map(own).sum()
}
