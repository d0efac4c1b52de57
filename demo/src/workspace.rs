//! Where things lie in this workspace, and running the tools in it.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, bail};

/// The folder with the workspace's `Cargo.toml`.
pub fn root() -> &'static Path {
    Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/.."))
}

/// The app's TypeScript.
pub fn shell() -> PathBuf {
    root().join("web/shell")
}

/// The finished app, ready for any static host.
pub fn dist() -> PathBuf {
    root().join("web/dist")
}

/// Cargo's folder for what it builds.
pub fn target() -> PathBuf {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(dir) => root().join(dir),
        None => root().join("target"),
    }
}

/// The cargo that runs us, else the first on the path.
pub fn cargo() -> Command {
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.current_dir(root());
    cargo
}

/// Runs a tool to its end; anything but success is an error that names it.
pub fn run(command: &mut Command) -> anyhow::Result<()> {
    let name = format!("{command:?}");
    let status = command.status().with_context(|| format!("cannot start {name}"))?;
    if !status.success() {
        bail!("{name} ended with {status}");
    }
    Ok(())
}
