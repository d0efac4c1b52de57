//! The main job once, in a headless browser, for `demo/run --check`: a job, a part with its photo, two quotes and a
//! choice, no network any more, all of it out as files.

use std::fs;
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_core::record::Kind;
use asfound_journeys::{App, Browser, Engine, Profile, SentJob, Size};

const SAVED: Duration = Duration::from_secs(30);

fn main() -> anyhow::Result<()> {
    let mut app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(Engine::Chromium, Size::Phone, &profile)?;
    browser.open(app.address())?;
    said("the app comes up", browser.wait_for("asf-place-first"))?;
    browser.wait_until_kept()?;
    said("a job is started", browser.start_job("The grey saloon"))?;
    said("a part is recorded with a photo", browser.record_part(1))?;
    said("two quotes are entered and one is chosen", weigh(&browser))?;
    app.go_offline()?;
    browser.reload()?;
    said("all is there with the server stopped", browser.wait_for_text("asf-place-routes", "chosen"))?;
    said("the parts list leaves as a file", list_leaves(&browser, &profile))?;
    said("the job leaves as a file", job_leaves(&browser, &profile))?;
    browser.quit()
}

fn said(what: &str, done: anyhow::Result<()>) -> anyhow::Result<()> {
    println!("  {what}: {}", if done.is_ok() { "yes" } else { "NO" });
    done.context(what.to_owned())
}

fn weigh(browser: &Browser) -> anyhow::Result<()> {
    browser.go("parts")?;
    browser.click("asf-place-parts a.row")?;
    browser.press_words("asf-sheet-routes", "Routes")?;
    quote(browser, "Add a quote", "Repair here", "18")?;
    quote(browser, "Another quote", "Buy", "45")?;
    browser.press_words(".routes-foot", "Choose")?;
    browser.press_words("asf-who-dialog", "Choose without a name")?;
    browser.wait_for_text("asf-place-routes", "chosen")
}

fn quote(browser: &Browser, add: &str, route: &str, cash: &str) -> anyhow::Result<()> {
    browser.press_words("asf-place-routes", add)?;
    browser.press_words("asf-quote-form", route)?;
    browser.write_into("asf-quote-form", "Cash", cash)?;
    browser.press_words("asf-quote-form", "Put the quote down")?;
    browser.wait_until_gone("asf-quote-form")
}

fn list_leaves(browser: &Browser, profile: &Profile) -> anyhow::Result<()> {
    browser.go("hand-over")?;
    browser.press_words("asf-list-out", "table for a spreadsheet")?;
    browser.press_words("asf-list-out", "Prepare")?;
    browser.press_words("asf-list-out asf-prepared", "Save to this device")?;
    let list = fs::read_to_string(profile.wait_for_download(".csv", SAVED)?)?;
    let row = list.lines().nth(1).context("the list has no row")?;
    ensure!(row.starts_with("1,"), "the list does not name the tag: {list}");
    ensure!(row.contains("Repair here") && row.contains("18.00"), "the list does not name what was chosen: {list}");
    Ok(())
}

fn job_leaves(browser: &Browser, profile: &Profile) -> anyhow::Result<()> {
    browser.press_words("asf-job-file-out", "Make a job file")?;
    browser.press_words("asf-job-file-out asf-prepared", "Save to this device")?;
    let file = profile.wait_for_download(".zip", SAVED)?;
    let (sent, stored) = (SentJob::read(&file)?, browser.stored()?);
    ensure!(stored.is_sound() && stored.photos.len() == 1, "the database holds {:?}", stored.photos);
    ensure!(sent.photos.iter().eq(stored.photos.keys()), "the file holds {:?}", sent.photos);
    let parts = sent.job.standing_ids(Kind::Part).count();
    ensure!(parts == 1, "the file holds {parts} parts");
    Ok(())
}
