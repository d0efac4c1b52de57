//! Processes found by their parents, so that only our own are ever ended.

use std::fs;

use nix::sys::signal::{Signal, kill};
use nix::unistd::Pid;

/// Kills everything a process started, at once and without warning, but not
/// the process itself.
pub(crate) fn kill_descendants(of: u32) -> usize {
    let found = descendants(of);
    for pid in &found {
        // It may have ended in the meantime.
        let _ = kill(Pid::from_raw(*pid), Signal::SIGKILL);
    }
    found.len()
}

fn descendants(of: u32) -> Vec<i32> {
    let all = parents();
    let mut found = vec![of as i32];
    let mut next = 0;
    while next < found.len() {
        let parent = found[next];
        found.extend(all.iter().filter(|(_, its)| *its == parent).map(|(pid, _)| *pid));
        next += 1;
    }
    found.split_off(1)
}

/// Every process with its parent.
fn parents() -> Vec<(i32, i32)> {
    let Ok(entries) = fs::read_dir("/proc") else { return Vec::new() };
    entries.flatten().filter_map(|entry| entry.file_name().to_str()?.parse().ok()).filter_map(parent).collect()
}

fn parent(pid: i32) -> Option<(i32, i32)> {
    let stat = fs::read_to_string(format!("/proc/{pid}/stat")).ok()?;
    // The name in parentheses may hold anything; the parent is the second
    // field after it.
    let rest = stat.rsplit_once(')')?.1;
    Some((pid, rest.split_whitespace().nth(1)?.parse().ok()?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::process::Command;

    #[test]
    fn kills_what_a_process_started_and_not_the_process() {
        let mut shell = Command::new("bash").args(["-c", "sleep 60 & wait; exit 7"]).spawn().unwrap();
        while descendants(shell.id()).is_empty() {
            std::thread::yield_now();
        }
        assert_eq!(kill_descendants(shell.id()), 1);
        assert_eq!(shell.wait().unwrap().code(), Some(7));
    }
}
