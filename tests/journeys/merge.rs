//! Two devices work on one job apart and hand each other their files: brought in in either order, both orders come to the
//! same, with every photo, and with both values of what they disagree on.

use std::path::{Path, PathBuf};
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, SentJob, Size, Visit};
use serde_json::json;

use crate::main_job::views;

const SAVED: Duration = Duration::from_secs(30);

#[test]
fn chromium_merge_in_either_order_is_equal() -> anyhow::Result<()> {
    let one = Visit::with_faults(Size::Phone)?;
    one.browser.start_job("The grey saloon")?;
    one.browser.record_part(1)?;
    let start = sent(&one)?;

    let other = Visit::with_faults(Size::Desk)?;
    bring_in(&other.browser, &start)?;
    other.browser.press_words("asf-job-file-in", "Open that job")?;
    other.browser.wait_for("asf-place-parts a.row")?;
    other.browser.go("teardown")?;
    other.browser.wait_for_camera()?;
    work_on(&other.browser, "Hub carrier")?;
    work_on(&one.browser, "Stub axle")?;
    std::fs::remove_file(&start)?;
    let (first, second) = (sent(&one)?, sent(&other)?);
    drop((one.browser, other.browser));

    let ways = [[&first, &second], [&second, &first]];
    let mut came = Vec::new();
    for files in ways {
        let fresh = Visit::with_faults(Size::Phone)?;
        for file in files {
            bring_in(&fresh.browser, file)?;
        }
        fresh.browser.press_words("asf-job-file-in", "Open that job")?;
        fresh.browser.wait_for("asf-place-parts a.row")?;
        let stored = fresh.browser.stored()?;
        ensure!(stored.is_sound() && stored.photos.len() == 3, "{stored:?}");
        came.push((views(&fresh.browser)?, stored.photos));
    }
    assert_eq!(came[0], came[1]);
    let problems = came[0].0.iter().find(|view| view["view"] == json!("problems")).context("the problems")?;
    ensure!(
        problems["conflicts"].as_array().map(Vec::len) == Some(1),
        "both names stay until they are settled: {problems}"
    );
    Ok(())
}

/// The first part gets this name, and one more part is recorded.
fn work_on(browser: &Browser, name: &str) -> anyhow::Result<()> {
    let part = browser.view(&json!({ "ask": "parts" }))?["rows"][0]["id"].clone();
    if browser.ticked()? > 0 {
        browser.next_tag()?;
    }
    browser.record_part(1)?;
    let change = json!({ "do": "change", "ids": [part], "changes": [{ "name": name }], "seen": { "name": [] } });
    let answer = browser.run_async_js("return await globalThis.desk.command(given[0])", vec![change])?;
    ensure!(answer["ok"] == json!(true), "{answer}");
    Ok(())
}

fn sent(visit: &Visit) -> anyhow::Result<PathBuf> {
    visit.browser.go("hand-over")?;
    visit.browser.press_words("asf-job-file-out", "Make a job file")?;
    visit.browser.press_words("asf-job-file-out asf-prepared", "Save to this device")?;
    let file = visit.profile.wait_for_download(".zip", SAVED)?;
    SentJob::read(&file)?;
    visit.browser.go("teardown")?;
    visit.browser.wait_for_camera()?;
    Ok(file)
}

fn bring_in(browser: &Browser, file: &Path) -> anyhow::Result<()> {
    browser.go("hand-over")?;
    browser.upload("asf-job-file-in input[type=file]", file)?;
    browser.press_words("asf-job-file-in", "Bring it in")?;
    browser.wait_for_text("asf-job-file-in", "Brought in")
}
