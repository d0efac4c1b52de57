//! Builds the whole app into `web/dist`.

use std::time::Instant;

use asfound_demo::{bindings, shell};

fn main() -> anyhow::Result<()> {
    step("wasm and its bindings", bindings::make)?;
    step("page, workers, service worker", shell::make)
}

fn step(name: &str, make: fn() -> anyhow::Result<()>) -> anyhow::Result<()> {
    println!("building: {name}");
    let start = Instant::now();
    make()?;
    println!("  {:.1} s", start.elapsed().as_secs_f64());
    Ok(())
}
