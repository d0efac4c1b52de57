//! The record worker ends between the commit and its answer: the command is sent again under its id, and done once.

use std::time::Duration;

use asfound_journeys::{Size, Visit};
use serde_json::json;

use crate::troubles::{listen, troubles};

#[test]
fn chromium_sent_again_is_one_part() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.next_tag()?;
    listen(browser)?;
    browser.fault("end-before-answer", true)?;
    browser.shoot()?;
    browser.wait_until_ticked(1)?;

    // It really ended: otherwise nothing was sent again.
    browser.wait_for_js("window.__troubles.includes('null')", Duration::from_secs(5))?;
    assert!(troubles(browser)?.iter().any(|code| code != "null"), "the worker never ended");
    let parts = browser.view(&json!({ "ask": "parts" }))?;
    assert_eq!((&parts["total"], parts["rows"].as_array().map(Vec::len)), (&json!(2), Some(2)));
    let head = browser.view(&json!({ "ask": "head" }))?;
    assert_eq!(head["photos"], json!(2));
    let stored = browser.stored()?;
    assert!(stored.is_sound());
    assert_eq!(json!(stored.count("tail")), head["entries"], "an entry lies there that is not counted");

    // The next one is a part of its own, with the tag that follows.
    let tag = browser.tag_in_hand()?;
    browser.next_tag()?;
    assert_eq!(browser.tag_in_hand()?.parse::<u32>()?, tag.parse::<u32>()? + 1);
    browser.record_part(1)?;
    assert_eq!(browser.view(&json!({ "ask": "parts" }))?["total"], json!(3));
    Ok(())
}
