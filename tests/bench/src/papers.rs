//! Lists and the job file.

use std::time::Duration;

use anyhow::Context;
use asfound_journeys::{Browser, Profile, Size};
use serde_json::{Value, json};

use crate::figures::{Figures, ms};
use crate::garage::{browser, parts_with_photos};
use crate::memory::Memory;
use crate::row::Row;
use crate::site::{Site, ask};

const PARTS: usize = 1000;
/// With one photo a part: a job of about 500 MB.
const PHOTO: usize = 500_000;

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let site = Site::start()?;
    let profile = Profile::fresh()?;
    let browser = browser(Size::Desk, &profile)?;
    parts_with_photos(&site, &browser, PARTS, &[1], PHOTO)?;
    let memory = Memory::watch(&profile.stored());
    let peer = ask(&browser, "peerZip()")?;
    let peer_extra = memory.extra()?;
    // With `faults` the page's desk can be reached from outside; no fault is turned on.
    browser.open(&format!("{}?faults#/parts", site.app.address()))?;
    browser.wait_for_js("globalThis.desk?.current()", Duration::from_secs(20))?;
    let mut rows = Vec::new();
    for (kind, name, limit) in [("parts-csv", "CSV", 300.0), ("parts-html", "HTML with thumbs", 3000.0)] {
        let (spent, bytes) = list(&browser, kind).with_context(|| name.to_owned())?;
        rows.push(
            Row::new(format!("{name} list of 1,000 parts ({:.1} MB), p50 / p95", bytes / 1e6), spent.said())
                .beside(format!("bare read of what it is made of: {} ms", ms(bare_read(&browser, kind)?)))
                .target(format!("p95 ≤ {} ms", limit), spent.p95() <= limit),
        );
    }
    rows.push(job_file(&browser, &profile, &peer, peer_extra)?);
    Ok(rows)
}

fn list(browser: &Browser, kind: &str) -> anyhow::Result<(Figures, f64)> {
    let body = "const spent = [];
        let size = 0;
        for (let i = 0; i < 11; i++) {
            const from = performance.now();
            const file = await desk.prepareList(given[0], { find: '', group: 'assembly', struck: false, from: 0 }, undefined, { page: { language: 'en-GB' } });
            if (i > 0) spent.push(performance.now() - from);
            size = file.size;
        }
        return { spent, size };";
    let answer = browser.run_async_js(body, vec![json!(kind)])?;
    Ok((Figures::read(&answer["spent"])?, answer["size"].as_f64().context("size")?))
}

/// The entries, and for the page the small pictures, read with nothing done to them.
fn bare_read(browser: &Browser, kind: &str) -> anyhow::Result<f64> {
    let stores = if kind == "parts-html" { json!(["chunk", "tail", "thumb"]) } else { json!(["chunk", "tail"]) };
    let body = "const done = (request) => new Promise((resolve, reject) => {
            request.onsuccess = () => resolve(request.result);
            request.onerror = () => reject(request.error);
        });
        const from = performance.now();
        const database = await done(indexedDB.open('asfound'));
        const transaction = database.transaction(given[0], 'readonly');
        await Promise.all(given[0].map((store) => done(transaction.objectStore(store).getAll())));
        database.close();
        return performance.now() - from;";
    browser.run_async_js(body, vec![stores])?.as_f64().context("no time")
}

fn job_file(browser: &Browser, profile: &Profile, peer: &Value, peer_extra: f64) -> anyhow::Result<Row> {
    let body = "const from = performance.now();
        const { file } = await desk.prepareJobFile(undefined, { page: { language: 'en-GB' } });
        return { spent: performance.now() - from, size: file.size };";
    let memory = Memory::watch(&profile.stored());
    let answer = browser.run_async_js(body, vec![])?;
    let extra = memory.extra()?;
    let speed = |answer: &Value| -> anyhow::Result<f64> {
        Ok(answer["size"].as_f64().context("size")? / 1e3 / answer["spent"].as_f64().context("spent")?)
    };
    let (ours, theirs) = (speed(&answer)?, speed(peer)?);
    let size = answer["size"].as_f64().unwrap_or_default();
    Ok(Row::new(
        format!("Job file of {:.0} MB", size / 1e6),
        format!(
            "{ours:.0} MB/s ({} ms), {extra:.0} MB of memory more",
            ms(answer["spent"].as_f64().unwrap_or_default())
        ),
    )
    .beside(format!("client-zip of the same photos: {theirs:.0} MB/s, {peer_extra:.0} MB more"))
    .target("≥ 40 MB/s, ≤ 64 MB more", ours >= 40.0 && extra <= 64.0))
}
