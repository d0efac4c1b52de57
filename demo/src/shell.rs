//! The page, its workers and its service worker, by the shell's own tools.

use std::fs;
use std::process::Command;

use anyhow::Context;

use crate::workspace;

/// Packages, then the finished app in `web/dist`.
pub fn make() -> anyhow::Result<()> {
    install()?;
    workspace::run(npm().args(["run", "--silent", "build"]))
}

/// Installs what the lock file names; nothing when it has not changed.
pub fn install() -> anyhow::Result<()> {
    let lock = fs::read(workspace::shell().join("package-lock.json")).context("web/shell/package-lock.json")?;
    let stamp = workspace::shell().join("node_modules/.installed-lock.json");
    if fs::read(&stamp).is_ok_and(|installed| installed == lock) {
        return Ok(());
    }
    workspace::run(npm().args(["ci", "--no-audit", "--no-fund"]))?;
    fs::write(&stamp, lock).context("noting what was installed")
}

fn npm() -> Command {
    let mut npm = Command::new("npm");
    npm.current_dir(workspace::shell());
    npm
}
