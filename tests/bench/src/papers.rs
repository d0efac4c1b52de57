//! Lists and the job file.

use std::time::Duration;

use anyhow::Context;
use asfound_journeys::{Browser, Profile, Size};
use serde_json::{Value, json};

use crate::figures::{Figures, ms};
use crate::garage::{browser, parts_with_photos};
use crate::row::Row;
use crate::site::{Site, ask};

const PARTS: usize = 1000;
/// With one photo a part: a job of about 200 MB.
const PHOTO: usize = 200_000;

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let site = Site::start()?;
    let profile = Profile::fresh()?;
    let browser = browser(Size::Desk, &profile)?;
    parts_with_photos(&site, &browser, PARTS, &[1], PHOTO)?;
    let peer = ask(&browser, "peerZip()")?;
    // With `faults` the page's desk can be reached from outside; no fault is turned on.
    browser.open(&format!("{}?faults#/parts", site.app.address()))?;
    browser.wait_for_js("globalThis.desk?.current()", Duration::from_secs(20))?;
    let mut rows = Vec::new();
    for (kind, name, limit) in [("parts-csv", "CSV", 300.0), ("parts-html", "HTML with thumbs", 3000.0)] {
        let (spent, bytes) = list(&browser, kind).with_context(|| name.to_owned())?;
        rows.push(
            Row::new(format!("{name} list of 1,000 parts ({:.1} MB), p50 / p95", bytes / 1e6), spent.said())
                .target(format!("p95 ≤ {} ms", limit), spent.p95() <= limit),
        );
    }
    rows.push(job_file(&browser, &peer)?);
    Ok(rows)
}

fn list(browser: &Browser, kind: &str) -> anyhow::Result<(Figures, f64)> {
    let body = "const spent = [];
        let size = 0;
        for (let i = 0; i < 11; i++) {
            const from = performance.now();
            const file = await desk.prepareList(given[0], { find: '', group: 'assembly', struck: false, from: 0 });
            if (i > 0) spent.push(performance.now() - from);
            size = file.size;
        }
        return { spent, size };";
    let answer = browser.run_async_js(body, vec![json!(kind)])?;
    Ok((Figures::read(&answer["spent"])?, answer["size"].as_f64().context("size")?))
}

fn job_file(browser: &Browser, peer: &Value) -> anyhow::Result<Row> {
    let body = "const from = performance.now();
        const file = await desk.prepareJobFile();
        return { spent: performance.now() - from, size: file.size };";
    let answer = browser.run_async_js(body, vec![])?;
    let speed = |answer: &Value| -> anyhow::Result<f64> {
        Ok(answer["size"].as_f64().context("size")? / 1e3 / answer["spent"].as_f64().context("spent")?)
    };
    let (ours, theirs) = (speed(&answer)?, speed(peer)?);
    let size = answer["size"].as_f64().unwrap_or_default();
    Ok(Row::new(
        format!("Job file of {:.0} MB", size / 1e6),
        format!("{ours:.0} MB/s, {} ms", ms(answer["spent"].as_f64().unwrap_or_default())),
    )
    .beside(format!("client-zip of the same photos: {theirs:.0} MB/s"))
    .target("≥ 40 MB/s", ours >= 40.0))
}
