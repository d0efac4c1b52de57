//! The phone's own camera takes the memory, and the page is ended while it is out: on coming back the strip says for which tag
//! it waits, and the picture goes to that same part.

use anyhow::ensure;
use asfound_journeys::{Browser, Size, Visit};
use serde_json::{Value, json};

use crate::picture::picture;

const WAITS: &str = "asf-place-teardown .td-lower > asf-message";

fn parts(browser: &Browser) -> anyhow::Result<Vec<(Value, Value)>> {
    browser.wait_for_js("globalThis.desk?.current()", std::time::Duration::from_secs(10))?;
    let view = browser.view(&json!({ "ask": "parts" }))?;
    Ok(view["rows"].as_array().into_iter().flatten().map(|row| (row["tag"].clone(), row["photos"].clone())).collect())
}

/// The camera is out, as far as the page knows: its chooser opens, and nobody answers it.
fn camera_is_out(browser: &Browser) -> anyhow::Result<()> {
    browser.devtools("Page.enable", json!({}))?;
    browser.devtools("Page.setInterceptFileChooserDialog", json!({ "enabled": true }))?;
    browser.click(".td-plate")?;
    browser.press_words("asf-more", "Phone’s own camera")
}

fn waits_for(browser: &Browser, tag: &str) -> anyhow::Result<()> {
    browser.wait_for_text(WAITS, &format!("for a photo of {tag}"))?;
    ensure!(browser.tag_in_hand()? == tag, "{} is in hand", browser.tag_in_hand()?);
    Ok(())
}

/// A tag that had no photo yet when the page was ended.
#[test]
fn chromium_killed_before_the_first_photo() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.record_part(1)?;
    visit.browser.next_tag()?;
    camera_is_out(&visit.browser)?;
    let visit = visit.killed_and_back()?;
    let browser = &visit.browser;
    waits_for(browser, "0002")?;
    ensure!(parts(browser)? == [(json!(1), json!(1))], "the part that waits is there already: {:?}", parts(browser)?);
    let taken = picture(10)?;
    browser.upload("asf-place-teardown .td-camera", taken.path())?;
    browser.wait_until_ticked(1)?;
    ensure!(parts(browser)? == [(json!(1), json!(1)), (json!(2), json!(1))], "{:?}", parts(browser)?);
    is_over(&visit)
}

/// A part that has photos already; the picture comes as a chosen file this time.
#[test]
fn chromium_killed_between_photos() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.record_part(1)?;
    visit.browser.next_tag()?;
    visit.browser.record_part(2)?;
    camera_is_out(&visit.browser)?;
    let visit = visit.killed_and_back()?;
    let browser = &visit.browser;
    waits_for(browser, "0002")?;
    let taken = picture(20)?;
    browser.upload("asf-place-teardown .td-files", taken.path())?;
    browser.wait_until_ticked(3)?;
    ensure!(parts(browser)? == [(json!(1), json!(1)), (json!(2), json!(3))], "{:?}", parts(browser)?);
    is_over(&visit)
}

/// It does not wait any more, now or after the next start.
fn is_over(visit: &Visit) -> anyhow::Result<()> {
    visit.browser.wait_until_gone(WAITS)?;
    visit.open()?;
    visit.browser.wait_for_camera()?;
    visit.browser.wait_for_js("document.querySelector('.td-count [data-safe]')", std::time::Duration::from_secs(10))?;
    visit.browser.wait_until_gone(WAITS)?;
    let stored = visit.browser.stored()?;
    ensure!(stored.is_sound(), "{stored:?}");
    Ok(())
}
