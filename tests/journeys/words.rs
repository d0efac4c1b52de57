//! The trade's words follow the setting of the job, everywhere and at once.

use asfound_journeys::{Engine, Key, Size, Visit};

#[test]
fn chromium_american_words() -> anyhow::Result<()> {
    let mut visit = Visit::first(Engine::Chromium, Size::Phone)?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.record_part(1)?;
    visit.browser.click(".td-joint-next")?;
    visit.browser.wait_for_text(".td-joint-count b", "1")?;
    kinds_say(&visit, "Split pin", "Cotter pin")?;
    visit.browser.go("settings")?;
    visit.browser.press_words("asf-place-settings", "American")?;
    visit.browser.wait_for_text(".undo", "Trade words")?;
    visit.browser.go("teardown")?;
    kinds_say(&visit, "Cotter pin", "Split pin")?;
    // The words are the job's: they are the same after a fresh start without a network.
    visit.app.go_offline()?;
    visit.browser.reload()?;
    visit.browser.wait_for("asf-place-joint asf-piece .jt-open")?;
    visit.browser.go("teardown")?;
    kinds_say(&visit, "Cotter pin", "Split pin")?;
    Ok(())
}

fn kinds_say(visit: &Visit, this: &str, not_this: &str) -> anyhow::Result<()> {
    let browser = &visit.browser;
    browser.click("a.td-joint-open")?;
    browser.wait_for("asf-piece .jt-open")?;
    // By key: what can be taken back may lie over it for some seconds.
    browser.run_js("document.querySelector('asf-piece .jt-open').focus()", vec![])?;
    browser.press(Key::Enter)?;
    browser.wait_for_text("asf-piece .choice-word", this)?;
    let tiles = browser.text("asf-piece")?;
    anyhow::ensure!(!tiles.contains(not_this), "both words stand there: {tiles}");
    Ok(())
}
