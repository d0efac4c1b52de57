//! Safe keeping: its state one tap away, the reminder when a job file is due, and installing before the first record where
//! the platform clears what is in a tab.

use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{App, Browser, Engine, Profile, Size, Visit};
use serde_json::{Value, json};

const SOON: Duration = Duration::from_secs(10);
const CELL: &str = ".td asf-head a[href='#/safe-keeping']";
const HEAD_SAYS: &str = "document.querySelector(\".td asf-head a[href='#/safe-keeping']\")?.textContent.trim()";
const PLACE: &str = "asf-place-safe-keeping";

fn at_the_strip(photos: u64) -> anyhow::Result<Visit> {
    let visit = Visit::with_faults(Size::Phone)?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.record_part(photos)?;
    Ok(visit)
}

fn head_says(browser: &Browser, word: &str) -> anyhow::Result<()> {
    browser
        .wait_for_js(&format!("{HEAD_SAYS} === {}", json!(word)), SOON)
        .with_context(|| format!("the head says {word}"))
}

/// What the head says while nothing is due. Half of what is set is the limit where the browser has promised nothing.
struct Promise {
    word: &'static str,
    half: u64,
}

fn promise(browser: &Browser) -> anyhow::Result<Promise> {
    let persisted = browser.run_async_js("return (await globalThis.desk.keeping()).persisted", vec![])?;
    Ok(if persisted == Value::Bool(true) {
        Promise { word: "kept", half: 1 }
    } else {
        Promise { word: "kept, not promised", half: 2 }
    })
}

fn place_says(browser: &Browser, words: &[&str]) -> anyhow::Result<()> {
    for words in words {
        let says =
            format!("document.querySelector('{PLACE}')?.innerText.replace(/\\s+/g, ' ').includes({})", json!(words));
        browser.wait_for_js(&says, SOON).with_context(|| format!("it does not say {words:?}"))?;
    }
    Ok(())
}

fn make_a_job_file(visit: &Visit) -> anyhow::Result<()> {
    visit.browser.press_words(PLACE, "Make a job file")?;
    visit.browser.press_words("asf-job-file-out asf-prepared", "Save to this device")?;
    visit.profile.wait_for_download(".zip", Duration::from_secs(30))?;
    // A download cannot be followed: it counts once the person says that the file is there.
    visit.browser.press_words(PLACE, "Yes, it is there")
}

#[test]
fn chromium_one_tap_away() -> anyhow::Result<()> {
    let visit = at_the_strip(2)?;
    let browser = &visit.browser;
    let promise = promise(browser)?;
    head_says(browser, promise.word)?;
    browser.click(CELL)?;
    let title = if promise.half == 1 { "Everything is kept" } else { "Kept, not promised" };
    place_says(
        browser,
        &[
            title,
            "2 photos",
            "Room",
            "room for about",
            "Last job file",
            "never",
            "photos not in it 2",
            "all 2 photos are lost",
        ],
    )?;
    make_a_job_file(&visit)?;
    place_says(browser, &["today", "photos not in it 0"])
}

/// So many photos since the last job file.
#[test]
fn chromium_due_by_photos() -> anyhow::Result<()> {
    let visit = at_the_strip(1)?;
    let browser = &visit.browser;
    let promise = promise(browser)?;
    browser.click(CELL)?;
    browser.press_words(PLACE, "Remind me after")?;
    browser.replace_in("asf-place-safe-keeping dialog input", &(2 * promise.half).to_string())?;
    browser.press_words("asf-place-safe-keeping dialog", "Set")?;
    browser.wait_until_gone("asf-place-safe-keeping dialog[open]")?;
    browser.go("teardown")?;
    browser.wait_for_camera()?;
    head_says(browser, promise.word)?;
    browser.record_part(2)?;
    head_says(browser, "file due")?;
    ensure!(browser.text(CELL)? == "file due", "the word is not in sight");
    browser.click(CELL)?;
    place_says(browser, &["reminder due"])?;
    make_a_job_file(&visit)?;
    place_says(browser, &["photos not in it 0"])?;
    browser.wait_for_js(&format!("!document.querySelector('{PLACE}').textContent.includes('reminder due')"), SOON)?;
    browser.go("teardown")?;
    head_says(browser, promise.word)
}

/// So many days since the last job file, with something recorded since.
#[test]
fn chromium_due_by_days() -> anyhow::Result<()> {
    let visit = at_the_strip(1)?;
    let browser = &visit.browser;
    let promise = promise(browser)?;
    browser.click(CELL)?;
    make_a_job_file(&visit)?;
    place_says(browser, &["photos not in it 0"])?;
    let last = 7_u64.div_ceil(promise.half);
    days_later(&visit, last + 1)?;
    head_says(browser, promise.word).context("nothing was recorded since")?;
    browser.record_part(2)?;
    head_says(browser, "file due")?;
    days_later(&visit, last - 1)?;
    head_says(browser, promise.word).context("a day before")?;
    days_later(&visit, last)?;
    head_says(browser, "file due")?;
    browser.click(CELL)?;
    place_says(browser, &["reminder due", &format!("{last} days ago"), "photos not in it 1", "that photo is lost"])
}

/// Loads the app at the strip with the page's clock so far ahead of what was recorded.
fn days_later(visit: &Visit, days: u64) -> anyhow::Result<()> {
    let ahead =
        format!("{{ const now = (Date.__now ??= Date.now); Date.now = () => now.call(Date) + {days} * 86400000; }}");
    visit.browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": ahead }))?;
    visit.browser.run_js("location.hash = '#/teardown'", vec![])?;
    visit.open()?;
    visit.browser.wait_for_camera()
}

const PHONE_OF_APPLE: &str = "Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1";
const INSTALL: &str = "asf-place-first asf-message";

/// A phone that clears what is in a tab after seven days is offered installing before anything is recorded; from the home
/// screen, and on others, nothing stands in the way.
#[test]
fn chromium_installing_comes_before_the_first_record() -> anyhow::Result<()> {
    let app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(Engine::Chromium, Size::Phone, &profile)?;
    let arrive = || {
        browser.open(app.address())?;
        browser.wait_for("asf-place-first .first-do button")
    };
    arrive()?;
    ensure!(browser.count(INSTALL)? == 0, "it is asked for where it is not needed");

    let agent = json!({ "userAgent": PHONE_OF_APPLE, "platform": "iPhone" });
    browser.devtools("Emulation.setUserAgentOverride", agent)?;
    arrive()?;
    let in_sight = "
        const box = (selector) => document.querySelector(selector)?.getBoundingClientRect();
        const [message, start] = [box('asf-place-first asf-message'), box('.first-do button')];
        return Boolean(message && message.height > 0 && message.top >= 0 && message.bottom <= innerHeight && message.bottom <= start.top);";
    ensure!(browser.run_js(in_sight, vec![])? == json!(true), "it is not in sight before the first button");
    for words in ["on the home screen before the first record", "after seven days", "Add to Home Screen"] {
        browser.wait_for_text(INSTALL, words)?;
    }
    browser.press_words(INSTALL, "Go on in the tab")?;
    browser.wait_until_gone(INSTALL)?;
    ensure!(browser.offers("asf-place-first", "Start a job")?, "one cannot go on in the tab");

    // What that platform says of an app opened from the home screen.
    let from_home = "Object.defineProperty(navigator, 'standalone', { value: true })";
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": from_home }))?;
    arrive()?;
    ensure!(browser.count(INSTALL)? == 0, "it is asked for on the home screen");
    Ok(())
}
