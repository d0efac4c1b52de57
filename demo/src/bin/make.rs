//! Builds the whole app into `web/dist`, or only installs the shell's packages.
//!
//! `make [install]`

use std::time::Instant;

use anyhow::bail;
use asfound_demo::{bindings, sample, shell, workspace};

fn main() -> anyhow::Result<()> {
    match std::env::args().nth(1).as_deref() {
        None => {
            step("wasm and its bindings", bindings::make)?;
            step("the sample job, as web/dist/sample.zip", || {
                sample::write(&workspace::shell().join("public/sample.zip"))
            })?;
            step("page, workers, service worker", shell::make)
        }
        Some("install") => step("the shell's packages", shell::install),
        Some(other) => bail!("unknown argument {other}"),
    }
}

fn step(name: &str, make: fn() -> anyhow::Result<()>) -> anyhow::Result<()> {
    println!("building: {name}");
    let start = Instant::now();
    make()?;
    println!("  {:.1} s", start.elapsed().as_secs_f64());
    Ok(())
}
