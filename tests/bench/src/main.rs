//! Measures the finished app in a browser, always beside a peer or the bare
//! operation in the same run, and writes a table.
//!
//! `bench [AREA…] [--out FILE]`: areas are named in `AREAS`.

mod capture;
mod certainty;
mod derive;
mod figures;
mod garage;
mod memory;
mod papers;
mod plan;
mod processes;
mod row;
mod scan;
mod scroll;
mod search;
mod site;
mod sizes;
mod slowed;
mod start;

use std::fs;
use std::path::PathBuf;

use anyhow::Context;

use crate::row::Row;

type Area = (&'static str, fn() -> anyhow::Result<Vec<Row>>);

const AREAS: [Area; 10] = [
    ("sizes", sizes::measure),
    ("capture", capture::measure),
    ("derive", derive::measure),
    ("start", start::measure),
    ("search", search::measure),
    ("scroll", scroll::measure),
    ("papers", papers::measure),
    ("certainty", certainty::measure),
    ("plan", plan::measure),
    ("scan", scan::measure),
];

fn main() -> anyhow::Result<()> {
    let mut wanted: Vec<String> = std::env::args().skip(1).collect();
    let mut out = None;
    if let Some(at) = wanted.iter().position(|word| word == "--out") {
        let name = wanted.get(at + 1).context("--out wants a file")?;
        out = Some(PathBuf::from(name));
        wanted.drain(at..=at + 1);
    }
    let known = |name: &String| AREAS.iter().any(|(area, _)| area == name);
    anyhow::ensure!(wanted.iter().all(known), "areas are {:?}", AREAS.map(|(name, _)| name));
    let mut failed = 0;
    let mut table = row::head();
    for (name, measure) in AREAS {
        if !wanted.is_empty() && !wanted.iter().any(|word| word == name) {
            continue;
        }
        eprintln!("== {name}");
        match measure() {
            Ok(rows) => {
                rows.iter().for_each(|row| table.push_str(&row.line()));
                table.push_str(&row::load(name));
            }
            Err(error) => {
                failed += 1;
                eprintln!("{name} FAILED: {error:#}");
                table.push_str(&row::failed(name, &error));
            }
        }
    }
    println!("{table}");
    if let Some(out) = out {
        fs::write(&out, table).with_context(|| out.display().to_string())?;
    }
    anyhow::ensure!(failed == 0, "{failed} areas failed");
    Ok(())
}
