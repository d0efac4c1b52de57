//! The processes of a browser, found by its profile, so that only our own are ever touched.

use std::fs;
use std::path::Path;

/// The browser's first process names the profile; the others descend from it.
pub(crate) fn processes(profile: &Path) -> Vec<i32> {
    let mark = format!("--user-data-dir={}", profile.display());
    let Ok(entries) = fs::read_dir("/proc") else { return Vec::new() };
    let all: Vec<i32> = entries.flatten().filter_map(|entry| entry.file_name().to_str()?.parse().ok()).collect();
    let named = |pid: &i32| {
        let line = fs::read(format!("/proc/{pid}/cmdline")).unwrap_or_default();
        String::from_utf8_lossy(&line).split('\0').any(|word| word == mark)
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
