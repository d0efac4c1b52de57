//! Two windows at one job: a frozen one holds nothing up and catches up when it thaws; what two windows wrote without
//! seeing one another is shown and settled.

use std::time::{Duration, Instant};

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Key, Size, Visit};
use serde_json::json;

const TICKED_WITHIN: f64 = 2000.0;

const TAP_TO_TICK: &str = "
    const ticked = () => Number(document.querySelector('.td-count [data-safe]')?.dataset.safe ?? 0);
    const [from, before] = [performance.now(), ticked()];
    document.querySelector('asf-shutter button').click();
    while (ticked() === before && performance.now() - from < 20000) await new Promise((soon) => setTimeout(soon, 5));
    return performance.now() - from;";

#[test]
fn chromium_a_frozen_window_holds_nothing_up() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Desk)?;
    let Visit { browser, .. } = &visit;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.go("parts")?;
    browser.wait_for("asf-place-parts a.row")?;
    let first = browser.window()?;
    let beat = "window.__beats = []; setInterval(() => window.__beats.push(Date.now()), 100);";
    browser.run_js(beat, vec![])?;

    let second = browser.new_window()?;
    browser.open(&format!("{}?faults#/teardown", visit.app.address()))?;
    browser.wait_for_camera()?;
    browser.switch_to(&first)?;
    come_to_rest(browser)?;
    browser.devtools("Page.setWebLifecycleState", json!({ "state": "frozen" }))?;
    let frozen = Instant::now();
    browser.switch_to(&second)?;
    browser.wait_for_camera()?;
    browser.next_tag()?;
    let took = browser.run_async_js(TAP_TO_TICK, vec![])?;
    ensure!(took.as_f64() <= Some(TICKED_WITHIN), "the tick took {took} ms");
    println!("tick beside a frozen window: {took} ms");
    std::thread::sleep(Duration::from_millis(1500));

    browser.switch_to(&first)?;
    browser.devtools("Page.setWebLifecycleState", json!({ "state": "active" }))?;
    let slept = frozen.elapsed();
    browser
        .wait_for_js("document.querySelectorAll('asf-place-parts a.row').length === 2", Duration::from_secs(5))
        .context("after the thaw")?;
    let gap = "return Math.max(...window.__beats.slice(1).map((beat, i) => beat - window.__beats[i]))";
    let gap = browser.run_js(gap, vec![])?;
    ensure!(
        gap.as_f64() >= Some(slept.as_secs_f64() * 500.0),
        "the window was not frozen: at most {gap} ms between two beats of {slept:?}"
    );
    Ok(())
}

/// Being looked at makes a window read. No browser freezes one that is in the middle of that and holds another's writing
/// up; the order to freeze, which the journey gives, asks for no such thing.
fn come_to_rest(browser: &Browser) -> anyhow::Result<()> {
    const AT_REST: &str = "
        await globalThis.desk.lookAgain();
        await new Promise((soon) => setTimeout(soon, 1500));
        return (await navigator.locks.query()).held.length;";
    let start = Instant::now();
    while browser.run_async_js(AT_REST, vec![])? != json!(0) {
        ensure!(start.elapsed() < Duration::from_secs(20), "the window does not come to rest");
    }
    Ok(())
}

/// Leaving a window puts down what is typed there, so two windows of one browser can only miss one another for moments.
/// The first one here writes over what was on its screen before the second wrote, as one that was frozen then does.
#[test]
fn chromium_two_edits_unseen_are_shown_and_settled() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Desk)?;
    let Visit { browser, .. } = &visit;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.go("parts")?;
    browser.click("asf-place-parts a.row")?;
    name_it(browser, "Hub")?;
    let first = browser.window()?;
    let sheet = browser.run_js("return location.hash", vec![])?;
    let part = sheet.as_str().unwrap_or_default().rsplit('/').next().unwrap_or_default().to_owned();
    let query = json!({ "ask": "part", "part": part });
    let seen = browser.view(&query)?["record"]["seen"]["name"].clone();
    ensure!(seen.as_array().is_some_and(|entries| entries.len() == 1), "{seen}");

    let second = browser.new_window()?;
    browser.open(&format!("{}?faults#/part/{part}", visit.app.address()))?;
    browser.wait_for_text("asf-part-sheet h1", "Hub")?;
    name_it(browser, "Hub carrier")?;

    browser.switch_to(&first)?;
    browser.wait_for_text("asf-part-sheet h1", "Hub carrier").context("what the other window wrote")?;
    let command =
        json!({ "do": "change", "ids": [part], "changes": [{ "name": "Stub axle" }], "seen": { "name": seen } });
    let answer = browser.run_async_js("return await globalThis.desk.command(given[0])", vec![command])?;
    ensure!(answer["ok"] == json!(true), "{answer}");
    for window in [&second, &first] {
        browser.switch_to(window)?;
        browser.wait_for("asf-conflict").context("two values, neither thrown away")?;
        let shown = browser.text("asf-conflict")?;
        ensure!(shown.contains("Stub axle") && shown.contains("Hub carrier"), "the conflict shows {shown}");
    }
    browser.press_words("asf-conflict", "This one holds: Stub axle")?;
    for window in [&first, &second] {
        browser.switch_to(window)?;
        browser.wait_until_gone("asf-conflict").context("settled in both")?;
        browser.wait_for_text("asf-part-sheet h1", "Stub axle")?;
    }
    let view = browser.view(&query)?;
    ensure!(view["line"]["name"] == json!("Stub axle") && view["record"]["conflicts"] == json!([]), "{view}");
    Ok(())
}

fn name_it(browser: &Browser, name: &str) -> anyhow::Result<()> {
    browser.press_words("asf-sheet-named", "Name")?;
    browser.click("asf-sheet-named form input")?;
    browser.run_js("document.querySelector('asf-sheet-named form input').select()", vec![])?;
    browser.type_into("asf-sheet-named form input", name)?;
    browser.press(Key::Enter)?;
    browser.wait_for_text("asf-part-sheet h1", name)
}
