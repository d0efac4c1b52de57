//! The sample job comes in like any job file, with no network, once.

use asfound_journeys::{Engine, Size, Visit};

#[test]
fn chromium_sample() -> anyhow::Result<()> {
    let mut visit = Visit::first(Engine::Chromium, Size::Phone)?;
    visit.browser.wait_for(".first-ready[data-ready=yes]")?;
    visit.app.go_offline()?;
    visit.browser.reload()?;
    open_sample(&visit)?;
    visit.browser.wait_for_text("asf-place-parts", "Grease cap")?;
    // A second time, beside a job of one's own: nothing is doubled, and the two are told apart.
    visit.browser.go("first")?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.go("first")?;
    open_sample(&visit)?;
    visit.browser.go("first")?;
    visit.browser.wait_for_text(".first-job strong", "Sample")?;
    let jobs = "return [[...document.querySelectorAll('.first-job')].map((job) => !!job.querySelector('strong'))].flat().sort()";
    let jobs = visit.browser.run_js(jobs, vec![])?;
    anyhow::ensure!(jobs == serde_json::json!([false, true]), "the first screen lists {jobs}");
    visit.browser.wait_for_text("asf-place-first", "75\u{a0}parts, 90\u{a0}photos")?;
    Ok(())
}

fn open_sample(visit: &Visit) -> anyhow::Result<()> {
    visit.browser.press_words("asf-place-first", "Open the sample job")?;
    visit.browser.wait_for("asf-place-parts")
}
