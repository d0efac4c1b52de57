//! How many bytes cross the network before the app can be used.

use std::process::Command;

use anyhow::Context;
use asfound_demo::workspace;
use asfound_journeys::{App, Profile, Size};
use serde_json::Value;

use crate::garage::browser;
use crate::row::Row;
use crate::site::here;

const LARGEST: usize = 8;

struct Sized {
    file: String,
    raw: u64,
    gzip: u64,
    brotli: u64,
}

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let files = sizes()?;
    let is_record = |file: &str| file.contains("record_bg");
    let record = files.iter().find(|one| is_record(&one.file)).context("no record wasm")?;
    let asked = asked_at_start()?;
    let at_start: Vec<&Sized> = files.iter().filter(|one| asked.contains(&one.file)).collect();
    let all: Vec<&Sized> = files.iter().collect();
    let mut rows = vec![
        Row::new("Record wasm", said(&[record])).target("≤ 350 kB packed", record.gzip <= 350_000),
        Row::new(
            format!("Everything asked for until the first screen stands ({} files)", at_start.len()),
            said(&at_start),
        )
        .target("≤ 600 kB packed", sum(&at_start, |one| one.gzip) <= 600_000),
        Row::new(format!("All {} files that are then kept for use with no signal", all.len()), said(&all)),
    ];
    let mut largest = all;
    largest.sort_by_key(|one| std::cmp::Reverse(one.gzip));
    let names: Vec<String> = largest
        .iter()
        .take(LARGEST)
        .map(|one| format!("{} {}", one.file.trim_start_matches("assets/"), kb(one.gzip)))
        .collect();
    rows.push(Row::new("Largest files, gzip", names.join(", ")));
    Ok(rows)
}

fn sizes() -> anyhow::Result<Vec<Sized>> {
    let output = Command::new("node").arg(here().join("sizes.mjs")).arg(workspace::dist()).output()?;
    anyhow::ensure!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let list: Vec<Value> = serde_json::from_slice(&output.stdout)?;
    let number = |one: &Value, name: &str| one[name].as_u64().with_context(|| format!("no {name}"));
    list.iter()
        .map(|one| {
            let file = one["file"].as_str().context("no file")?.to_owned();
            Ok(Sized { file, raw: number(one, "raw")?, gzip: number(one, "gzip")?, brotli: number(one, "brotli")? })
        })
        .collect()
}

/// What a first visit's page asks for, with the record worker and its wasm, which a page does not list.
fn asked_at_start() -> anyhow::Result<Vec<String>> {
    let app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = browser(Size::Phone, &profile)?;
    browser.open(app.address())?;
    browser.wait_for("asfound-app main")?;
    browser.run_async_js("await new Promise((resolve) => setTimeout(resolve, 1000))", vec![])?;
    let names = browser.run_js("return performance.getEntriesByType('resource').map(({ name }) => name)", vec![])?;
    let mut files: Vec<String> = names
        .as_array()
        .context("no list")?
        .iter()
        .filter_map(|name| Some(name.as_str()?.strip_prefix(app.address())?.to_owned()))
        .collect();
    files.push("index.html".to_owned());
    let loads_record = |file: &str| file.contains("record_bg") || file.starts_with("assets/worker-");
    files.extend(sizes()?.into_iter().map(|one| one.file).filter(|file| loads_record(file)));
    files.sort();
    files.dedup();
    Ok(files)
}

fn said(files: &[&Sized]) -> String {
    format!(
        "{} gzip -9, {} brotli, {} raw",
        kb(sum(files, |one| one.gzip)),
        kb(sum(files, |one| one.brotli)),
        kb(sum(files, |one| one.raw))
    )
}

fn sum(files: &[&Sized], of: impl Fn(&Sized) -> u64) -> u64 {
    files.iter().map(|one| of(one)).sum()
}

fn kb(bytes: u64) -> String {
    format!("{:.1} kB", bytes as f64 / 1000.0)
}
