//! Faults on purpose: each is visible within two seconds, with what is safe and what to do, and nothing that was not stored
//! has a tick.

use std::time::{Duration, Instant};

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Size, Visit};
use serde_json::json;

use crate::troubles::is_told;

/// A strip with one photo that has its tick.
fn at_the_strip() -> anyhow::Result<Visit> {
    let visit = Visit::with_faults(Size::Phone)?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.record_part(1)?;
    visit.browser.run_js(WATCH_TICKS, vec![])?;
    Ok(visit)
}

/// A tap on the shutter, with its moment kept.
const TAP: &str = "window.__since = performance.now(); document.querySelector('asf-shutter button').click();";

/// With this fault a photo is told of and gets no tick; without it, it is saved after all.
fn photo_waits(fault: &str, code: &str) -> anyhow::Result<()> {
    let visit = at_the_strip()?;
    let Visit { browser, .. } = &visit;
    let before = browser.stored_keys()?;
    browser.fault(fault, true)?;
    browser.run_js(TAP, vec![])?;
    let told = is_told(browser, code, "__since")?;
    no_false_tick(browser)?;
    let safe = &told[1];
    ensure!(safe.contains(|figure: char| figure.is_ascii_digit()), "{fault}: it does not say how much is safe: {safe}");
    browser.fault(fault, false)?;
    recovers(browser).with_context(|| format!("after {fault}"))?;
    let after = browser.stored()?;
    ensure!(
        after.is_sound() && after.count("tail") == before.count("tail") + 1,
        "{fault}: stored {after:?}, before {before:?}"
    );
    Ok(())
}

/// Not for one moment since the strip was reached had more than the first photo its tick; what is not saved stands in place
/// of the count.
fn no_false_tick(browser: &Browser) -> anyhow::Result<()> {
    let most = browser.run_js("return window.__mostTicks", vec![])?;
    ensure!(most.as_u64() == Some(1), "a false tick: {most} were shown");
    Ok(())
}

/// Keeps the most ticks that were ever on the screen, in the count or as stamps.
const WATCH_TICKS: &str = "
    window.__mostTicks = 0;
    const look = () => {
        const counted = Number(document.querySelector('.td-count [data-safe]')?.dataset.safe ?? 0);
        const stamps = document.querySelectorAll('asf-strip asf-stamp[state=kept]').length;
        window.__mostTicks = Math.max(window.__mostTicks, counted, stamps);
    };
    look();
    new MutationObserver(look).observe(document.body, { subtree: true, childList: true, attributes: true });";

/// The photo is saved by itself or by the button that says so; then nothing is told any more.
fn recovers(browser: &Browser) -> anyhow::Result<()> {
    let start = Instant::now();
    while browser.ticked()? < 2 {
        ensure!(start.elapsed() < Duration::from_secs(20), "it is not saved: {}", browser.text("body")?);
        browser.run_js("document.querySelector('.td-again')?.click()", vec![])?;
        std::thread::sleep(Duration::from_millis(200));
    }
    browser.wait_until_gone("asf-message[data-trouble]")
}

#[test]
fn chromium_quota_exceeded() -> anyhow::Result<()> {
    photo_waits("quota-exceeded", "quota-exceeded")
}

#[test]
fn chromium_transaction_aborted_after_a_successful_put() -> anyhow::Result<()> {
    photo_waits("transaction-aborted", "transaction-aborted")
}

#[test]
fn chromium_connection_lost() -> anyhow::Result<()> {
    photo_waits("connection-lost", "connection-lost")
}

#[test]
fn chromium_connection_hung() -> anyhow::Result<()> {
    photo_waits("connection-hung", "connection-lost")
}

/// The worker traps: it is told at once, another takes over, and the photo is saved under the same command.
#[test]
fn chromium_trapped_worker() -> anyhow::Result<()> {
    let visit = at_the_strip()?;
    let Visit { browser, .. } = &visit;
    // The message may be gone again within a moment: everything that appears is kept.
    let keep = "window.__told = [];
        const look = () => { const told = document.querySelector('asf-message[data-trouble]'); const words = told?.textContent.replace(/\\s+/g, ' ').trim();
            if (words) window.__told.push([performance.now(), told.dataset.trouble, words, Number(document.querySelector('.td-count [data-safe]')?.dataset.safe ?? 0)]); };
        new MutationObserver(look).observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });";
    browser.run_js(keep, vec![])?;
    browser.fault("worker-trapped", true)?;
    browser.run_js(TAP, vec![])?;
    browser.wait_until_ticked(2)?;
    let told = browser.run_js("return window.__told.filter(([, code, words]) => code === 'worker-trapped' && words.length > 30).map(([at, , words, ticks]) => [at - window.__since, words, ticks])", vec![])?;
    let first = told[0].clone();
    ensure!(first[0].as_f64().is_some_and(|took| took <= 2000.0), "a trapped worker is not told in time: {told}");
    ensure!(first[2] == json!(1), "a false tick: {first}");
    let stored = browser.stored()?;
    ensure!(stored.is_sound() && stored.photos.len() == 2, "{stored:?}");
    browser.wait_until_gone("asf-message[data-trouble]")
}

/// Another window has raised the database: nothing is read and nothing written, and no work is lost.
#[test]
fn chromium_newer_database() -> anyhow::Result<()> {
    let visit = at_the_strip()?;
    let Visit { browser, .. } = &visit;
    browser.fault("newer-database", true)?;
    browser.run_js(TAP, vec![])?;
    let code = "document.querySelector('asf-message[data-trouble=closed-elsewhere], asf-message[data-trouble=newer-database]')?.dataset.trouble";
    browser.wait_for_js(code, Duration::from_secs(2))?;
    let code = browser.run_js(&format!("return {code}"), vec![])?;
    is_told(browser, code.as_str().unwrap_or_default(), "__since")?;
    no_false_tick(browser)?;
    browser.run_js("sessionStorage.setItem('loaded', String(Date.now()))", vec![])?;
    visit.open()?;
    browser.run_js("window.__loaded = 0", vec![])?;
    is_told(browser, "newer-database", "__loaded").map(drop)
}

/// A piece of the record is damaged: it is told when the job is opened, everything sound is there, and work goes on.
#[test]
fn chromium_damaged_chunk() -> anyhow::Result<()> {
    let visit = at_the_strip()?;
    let Visit { browser, .. } = &visit;
    browser.next_tag()?;
    browser.record_part(1)?;
    browser.fault("chunk-damaged", true)?;
    visit.open()?;
    browser.run_js("window.__loaded = 0", vec![])?;
    is_told(browser, "chunk-damaged", "__loaded")?;
    ensure!(browser.stored_keys()?.count("quarantine") == 1, "it was not set aside");
    Ok(())
}

/// A window that keeps nothing says so before anything is recorded.
#[test]
fn chromium_private_window() -> anyhow::Result<()> {
    opening_fails("private-window", "private-window")
}

/// A database that never answers when it is opened.
#[test]
fn chromium_open_hung() -> anyhow::Result<()> {
    opening_fails("open-hung", "open-hung")
}

/// The fault holds over a restart of the worker, which the lost connection brings about.
fn opening_fails(fault: &str, code: &str) -> anyhow::Result<()> {
    let visit = at_the_strip()?;
    let Visit { browser, .. } = &visit;
    browser.fault(fault, true)?;
    browser.fault("worker-trapped", true)?;
    browser.run_js(TAP, vec![])?;
    is_told(browser, code, "__since").map(drop).or_else(|_| is_told_after_trap(browser, code))?;
    no_false_tick(browser)
}

/// Opening begins only once the trapped worker was replaced and its wasm loaded again.
fn is_told_after_trap(browser: &Browser, code: &str) -> anyhow::Result<()> {
    browser.wait_for(&format!("asf-message[data-trouble={code}] .message-todo"))
}
