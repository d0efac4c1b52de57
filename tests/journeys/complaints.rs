//! The harness itself: a page that complains fails its journey, whichever page of it that was.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::Duration;

use anyhow::ensure;
use asfound_journeys::{App, Browser, Engine, Profile, Size};

const COMPLAIN: &str = "
    setTimeout(() => { throw new Error('uncaught on purpose'); }, 0);
    Promise.reject(new Error('rejected on purpose'));
    console.error('told on purpose');
    document.head.append(Object.assign(document.createElement('style'), { textContent: 'b { color: red }' }));";

fn complains(browser: &Browser, app: &App) -> anyhow::Result<()> {
    browser.open(app.address())?;
    browser.wait_for("asf-place-first")?;
    ensure!(browser.complaints()?.is_empty(), "{:?}", browser.complaints()?);
    browser.run_js(COMPLAIN, vec![])?;
    std::thread::sleep(Duration::from_millis(200));
    // The page that complained is gone.
    browser.open(app.address())?;
    browser.wait_for("asf-place-first")
}

#[test]
fn chromium_complaints_are_heard_and_fail() -> anyhow::Result<()> {
    let (app, profile) = (App::start()?, Profile::fresh()?);
    let browser = Browser::start(Engine::Chromium, Size::Phone, &profile)?;
    complains(&browser, &app)?;
    let heard = browser.complaints()?;
    for words in ["uncaught on purpose", "rejected on purpose", "told on purpose", "policy: style-src"] {
        ensure!(heard.iter().any(|one| one.contains(words)), "{words:?} is not heard: {heard:#?}");
    }
    ensure!(catch_unwind(AssertUnwindSafe(|| drop(browser))).is_err(), "the browser ends without a word");
    Ok(())
}

#[test]
fn chromium_expected_complaints_pass() -> anyhow::Result<()> {
    let (app, profile) = (App::start()?, Profile::fresh()?);
    let browser = Browser::start(Engine::Chromium, Size::Phone, &profile)?;
    for words in ["on purpose", "style-src", "Applying inline style"] {
        browser.expect_complaints(words);
    }
    complains(&browser, &app)?;
    ensure!(browser.complaints()?.is_empty(), "{:?}", browser.complaints()?);
    browser.quit()
}
