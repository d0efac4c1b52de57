//! The strip, where parts come off: taps, keys, a series, files, speech, joints, and what is said before.

use std::collections::BTreeSet;
use std::time::{Duration, Instant};

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Engine, Key, Size, Visit};
use serde_json::{Value, json};

use crate::picture::picture;

fn at_the_strip(size: Size) -> anyhow::Result<Visit> {
    let visit = Visit::with_faults(size)?;
    visit.browser.start_job("The grey saloon")?;
    Ok(visit)
}

fn parts(browser: &Browser) -> anyhow::Result<Vec<Value>> {
    let view = browser.view(&json!({ "ask": "parts" }))?;
    Ok(view["rows"].as_array().cloned().unwrap_or_default())
}

/// The open job, then at most two taps: the place Teardown, the shutter. Each further photo is one tap.
#[test]
fn chromium_first_part_within_two_taps() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.go("job")?;
    browser.click("asf-index a[href='#/teardown']")?;
    browser.wait_for_camera()?;
    browser.shoot()?;
    browser.wait_until_ticked(1)?;
    assert_eq!(parts(browser)?.len(), 1);
    browser.shoot()?;
    browser.wait_until_ticked(2)?;
    let [part] = &parts(browser)?[..] else { anyhow::bail!("another part was made") };
    assert_eq!((&part["tag"], &part["photos"]), (&json!(1), &json!(2)));
    Ok(())
}

/// Thirty taps in thirty seconds, none slower than the other: thirty photos, none lost, none double.
#[test]
fn chromium_thirty_shots_in_thirty_seconds() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    let taps = "
        for (let tap = 0; tap < 30; tap += 1) {
            const due = performance.now() + 1000;
            document.querySelector('asf-shutter button').click();
            await new Promise((soon) => setTimeout(soon, due - performance.now()));
        }";
    let start = Instant::now();
    browser.run_async_js(taps, vec![])?;
    let took = start.elapsed();
    browser.wait_until_ticked(30)?;
    ensure!(took < Duration::from_secs(33), "the taps themselves took {took:?}");
    let [part] = &parts(browser)?[..] else { anyhow::bail!("not one part") };
    assert_eq!(part["photos"], json!(30));
    let view = browser.view(&json!({ "ask": "part", "part": part["id"] }))?;
    let of = |field: &str| {
        view["photos"]
            .as_array()
            .into_iter()
            .flatten()
            .map(|photo| photo["record"]["values"][field].to_string())
            .collect::<Vec<_>>()
    };
    let different = |field: &str| of(field).into_iter().collect::<BTreeSet<_>>().len();
    ensure!(
        of("blob").len() == 30 && different("taken") == 30 && different("order") == 30,
        "a photo is double: {view}"
    );
    // The camera for tests gives the same frame again now and then; equal bytes lie there once.
    let stored = browser.stored()?;
    ensure!(stored.is_sound() && stored.photos.len() == different("blob"), "{} photos lie there", stored.photos.len());
    ensure!(different("blob") > 15, "the camera stood still");
    Ok(())
}

/// A series takes a photo every few seconds with no hand on it, until it is stopped.
#[test]
fn chromium_timed_series() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.click(".td-plate")?;
    browser.press_words("asf-more", "One every 3 s")?;
    browser.wait_for(".sight-left")?;
    browser.wait_until_ticked(2)?;
    browser.click(".sight-stop")?;
    browser.wait_until_gone(".sight-left")?;
    let stopped = browser.ticked()?;
    std::thread::sleep(Duration::from_secs(4));
    let later = browser.ticked()?;
    ensure!(later <= stopped + 1, "it went on: {stopped}, then {later}");
    Ok(())
}

/// A wireless shutter sends Space or Enter: no pointer is touched from the strip on.
#[test]
fn chromium_keys_alone() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Desk)?;
    let Visit { browser, .. } = &visit;
    browser.run_js("document.activeElement?.blur()", vec![])?;
    browser.press(Key::Space)?;
    browser.wait_until_ticked(1)?;
    browser.press(Key::Enter)?;
    browser.wait_until_ticked(2)?;
    // On the next tag itself the same keys press it.
    browser.run_js("document.querySelector('asf-next-tag button').focus()", vec![])?;
    browser.press(Key::Enter)?;
    browser.wait_for_js(
        "document.querySelector('asf-place-teardown .td-tag')?.number === '0002'",
        Duration::from_secs(5),
    )?;
    browser.run_js("document.activeElement?.blur()", vec![])?;
    browser.press(Key::Space)?;
    browser.wait_until_ticked(1)?;
    assert_eq!(parts(browser)?.len(), 2);
    Ok(())
}

/// Without permission for the camera the shutter says so, and pictures come from files.
#[test]
fn chromium_files_without_a_camera() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    let deny =
        "navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('denied', 'NotAllowedError'))";
    browser.run_js(deny, vec![])?;
    browser.start_job_without_camera("The grey saloon")?;
    browser.wait_for_text(".sight-words", "No permission for the camera")?;
    let files = [picture(10)?, picture(20)?];
    let paths: Vec<_> = files.iter().map(|file| file.path().to_string_lossy().into_owned()).collect();
    browser.type_into("asf-place-teardown .td-files", &paths.join("\n"))?;
    browser.wait_until_ticked(2)?;
    let stored = browser.stored()?;
    ensure!(stored.is_sound() && stored.photos.len() == 2, "{stored:?}");
    let camera = picture(30)?;
    browser.upload("asf-place-teardown .td-camera", camera.path())?;
    browser.wait_until_ticked(3)
}

/// Speech is stored slice by slice: a kill in the middle keeps every slice that had its stamp.
#[test]
fn chromium_speech_survives_a_kill() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Phone)?;
    visit.browser.record_part(1)?;
    let hold = "const button = document.querySelector('asf-hold-to-speak button');
        button.dispatchEvent(new PointerEvent('pointerdown', { isPrimary: true, button: 0, bubbles: true, pointerId: 1 }));";
    // A synthetic pointer cannot be captured, which is not what this is about.
    visit.browser.run_js("Element.prototype.setPointerCapture = () => undefined", vec![])?;
    visit.browser.run_js(hold, vec![])?;
    visit
        .browser
        .wait_for_js("document.querySelector('asf-hold-to-speak')?.safe >= 2", Duration::from_secs(20))
        .context("two slices")?;
    let visit = visit.killed_and_back()?;
    let Visit { browser, .. } = &visit;
    browser.wait_for_js("globalThis.desk?.current() && document.querySelector('.td-tag')", Duration::from_secs(20))?;
    let [part] = &parts(browser)?[..] else { anyhow::bail!("the part is not there") };
    let view = browser.view(&json!({ "ask": "part", "part": part["id"] }))?;
    let slices = view["notes"][0]["slices"].as_array().cloned().unwrap_or_default();
    ensure!(slices.len() >= 2, "slices: {}", view["notes"]);
    let stored = browser.stored()?;
    ensure!(stored.is_sound(), "{stored:?}");
    for slice in &slices {
        let blob = slice["values"]["blob"].as_str().unwrap_or_default();
        ensure!(stored.photos.contains_key(blob), "the sound {blob} is not there");
    }
    Ok(())
}

/// The hardware of a joint in the order it came off, each piece one tap; what it is may be said later.
#[test]
fn chromium_joints_in_order() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.record_part(1)?;
    for pieces in 1..=3 {
        browser.click(".td-joint-next")?;
        browser.wait_for_text(".td-joint-count b", &pieces.to_string())?;
    }
    browser.click("a.td-joint-open")?;
    browser
        .wait_for_js("document.querySelectorAll('asf-place-joint asf-piece').length === 3", Duration::from_secs(5))?;
    browser.click("asf-piece .jt-open")?;
    browser.press_words("asf-piece", "Shim")?;
    browser.write_into("asf-piece", "Thickness", "0.25\n")?;
    browser.wait_for_text("asf-piece .row-name", "Shim")?;
    let view = browser.view(&json!({ "ask": "teardown" }))?;
    let part = parts(browser)?[0]["id"].clone();
    let joints = browser.view(&json!({ "ask": "part", "part": part }))?["joints"].clone();
    let pieces = joints[0]["pieces"].as_array().cloned().unwrap_or_default();
    let orders: Vec<_> = pieces.iter().map(|piece| piece["values"]["order"].clone()).collect();
    ensure!(orders == [json!(1), json!(2), json!(3)], "orders {orders:?} of {joints}; {view}");
    browser.wait_for_text("asf-piece", "0.25")?;
    browser.write_into("asf-place-joint", "Its bag", "B 12\n")?;
    let bag = json!({ "ask": "part", "part": part });
    eventually(|| Ok(browser.view(&bag)?["joints"][0]["record"]["values"]["bag"] == json!("B 12"))).context("the bag")
}

/// Before it is slackened: answered in words, by a photo, or skipped.
#[test]
fn chromium_before_it_is_slackened() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.go("assemblies")?;
    browser.press_words("asf-place-assemblies", "Add an assembly")?;
    browser.write_into("asf-assembly-form", "Name", "Front hub")?;
    browser.press_words("asf-assembly-form", "Right")?;
    browser.press_words("asf-assembly-form", "Make it")?;
    browser.write_into("[data-check=height]", "Seen or measured", "312 mm left, 309 right\n")?;
    browser.wait_for_text("[data-check=height]", "answered")?;
    browser.press_words("[data-check=gaps]", "Skip Gaps")?;
    browser.wait_for_text("[data-check=gaps]", "skipped")?;
    browser.press_words("[data-check=photos]", "Photo for Photos all round")?;
    browser.wait_for("asf-place-before .sight-live")?;
    browser.press_words("asf-place-before .pair", "Photo for Photos all round")?;
    browser.wait_for_text("[data-check=photos]", "1 photo")?;
    browser.wait_for_text("asf-place-before asf-head", "3\u{a0}of\u{a0}6")?;
    browser.press_words("asf-place-before .foot", "Take it apart")?;
    browser
        .wait_for_text("asf-place-teardown asf-side", "RIGHT")
        .or_else(|_| browser.wait_for_text("asf-place-teardown asf-side", "Right"))
}

/// One tag becomes several; a misspelt name finds the part; struck out and brought back; taken back.
#[test]
fn chromium_split_find_strike_undo() -> anyhow::Result<()> {
    let visit = at_the_strip(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.record_part(1)?;
    browser.click(".td-plate")?;
    browser.write_into("asf-more", "Name", "Wheel bearing\n")?;
    browser.run_js("document.querySelector('asf-place-teardown dialog[open]').close()", vec![])?;
    browser.next_tag()?;
    browser.record_part(1)?;
    browser.go("parts")?;
    browser.wait_for_text("asf-place-parts", "Wheel bearing")?;
    find(browser, "bearign", 1)?;
    find(browser, "weel", 1)?;
    find(browser, "xyzzy", 0)?;
    find(browser, "", 2)?;

    browser.press_words("asf-place-parts", "Wheel bearing").or_else(|_| browser.click("asf-place-parts a.row"))?;
    browser.press_words("asf-sheet-split", "Split the tag")?;
    browser.press_words("asf-sheet-split form", "2")?;
    browser.press_words("asf-sheet-split form", "Split")?;
    browser.wait_for_js("document.querySelectorAll('asf-sheet-split a.row').length === 2", Duration::from_secs(5))?;
    eventually(|| Ok(parts(browser)?.len() == 4)).context("two more tags")?;

    browser.press_words("asf-part-sheet", "Strike out")?;
    browser.wait_for_text("asf-part-sheet", "This part is struck out")?;
    eventually(|| Ok(parts(browser)?.len() == 3)).context("one is struck out")?;
    browser.press_words("asf-part-sheet", "Bring back")?;
    eventually(|| Ok(parts(browser)?.len() == 4)).context("it is back")?;
    // The bar says what was done last, and takes that back.
    browser.wait_for_text(".undo", "Part brought back")?;
    browser.press_words(".undo", "Undo")?;
    eventually(|| Ok(parts(browser)?.len() == 3)).context("bringing back is taken back")?;
    Ok(())
}

fn find(browser: &Browser, words: &str, found: u64) -> anyhow::Result<()> {
    let type_it = "const field = document.querySelector('.parts-foot input'); field.value = arguments[0]; field.dispatchEvent(new InputEvent('input', { bubbles: true }));";
    browser.run_js(type_it, vec![json!(words)])?;
    let rows = format!("document.querySelectorAll('asf-place-parts .row').length === {found}");
    browser.wait_for_js(&rows, Duration::from_secs(5)).with_context(|| format!("finding {words:?}"))
}

fn eventually(is_so: impl Fn() -> anyhow::Result<bool>) -> anyhow::Result<()> {
    let start = Instant::now();
    while !is_so()? {
        ensure!(start.elapsed() < Duration::from_secs(10), "it never was so");
        std::thread::sleep(Duration::from_millis(50));
    }
    Ok(())
}

#[test]
fn firefox_first_part() -> anyhow::Result<()> {
    let visit = Visit::first(Engine::Firefox, Size::Desk)?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.record_part(3)?;
    let stored = visit.browser.stored()?;
    ensure!(stored.is_sound() && stored.photos.len() == 3, "{stored:?}");
    Ok(())
}
