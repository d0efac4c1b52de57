//! Months later: a box is counted and put right, tags are scanned to open and to move, a part is found, a box takes along what
//! is in it.

use std::time::{Duration, Instant};

use anyhow::{Context, ensure};
use asfound_core::job::TagCode;
use asfound_journeys::{Browser, Key, Size, Visit};
use serde_json::{Value, json};

use crate::film::film;
use crate::picture::picture;

/// How long a tag may take from before the camera to done, on a machine that does two things at once.
const READ: Duration = Duration::from_secs(40);

/// A garage with a rack, two boxes and four parts. Gives their ids.
const FURNISH: &str = "
    const id = () => crypto.randomUUID().replaceAll('-', '');
    const [garage, rack, shelf, high, seven, eleven, bearing, cap, axle, cylinder] = Array.from({ length: 10 }, id);
    const place = (id, name, place_kind, within, tag) => ({ do: 'create', id, kind: 'place', changes: [{ name }, { place_kind }, { tag }, ...(within ? [{ within }] : [])] });
    const part = (id, name, tag, place, more = []) => ({ do: 'create', id, kind: 'part', changes: [{ name }, { tag }, { place }, ...more] });
    const answer = await desk.command({ do: 'all', commands: [
        place(garage, 'Garage', 'area', null, 490), place(rack, 'Rack B', 'rack', garage, 491), place(shelf, 'Shelf 1', 'shelf', rack, 492), place(high, 'Shelf 2', 'shelf', rack, 493),
        place(seven, 'Box 07', 'box', shelf, 494), place(eleven, 'Box 11', 'box', high, 495),
        part(bearing, 'Outer bearing', 144, seven), part(cap, 'Grease cap', 151, seven), part(axle, 'Stub axle', 152, seven, [{ oiled: true }, { wrapped: true }]), part(cylinder, 'Wheel cylinder', 212, eleven),
    ] });
    if (!answer.ok) throw new Error(JSON.stringify(answer));
    return { seven, eleven, high, bearing, cap, axle, cylinder };";

fn furnished(visit: &Visit) -> anyhow::Result<Value> {
    visit.browser.start_job("The grey saloon")?;
    visit.browser.run_async_js(FURNISH, vec![])
}

fn id<'a>(made: &'a Value, name: &str) -> anyhow::Result<&'a str> {
    made[name].as_str().context("an id")
}

/// The code as it stands on the tag.
fn code(tag: i64) -> anyhow::Result<String> {
    Ok(TagCode::new(tag).context("no number of a tag")?.to_string())
}

fn type_code(browser: &Browser, code: &str, said: &str) -> anyhow::Result<()> {
    browser.replace_in("asf-keypad input", code)?;
    browser.press(Key::Enter)?;
    browser.wait_for_text(".scan-sign", said).with_context(|| format!("the sign after {code}"))
}

fn lies_in(browser: &Browser, part: &str) -> anyhow::Result<Vec<String>> {
    let view = browser.view(&json!({ "ask": "where", "part": part }))?;
    let way = view["way"].as_array().into_iter().flatten();
    Ok(way.filter_map(|step| step["name"].as_str().map(str::to_owned)).collect())
}

/// Counted by typed codes: three should be there, two are, and one that does not belong there. All of it is put right.
fn counts_and_settles(size: Size) -> anyhow::Result<()> {
    let visit = Visit::with_faults(size)?;
    let made = furnished(&visit)?;
    let browser = &visit.browser;
    let seven = id(&made, "seven")?;
    browser.go(&format!("stores/{seven}"))?;
    browser.wait_for_text("asf-one-place", "here, oiled and wrapped")?;
    browser.press_words("asf-one-place", "Count what is here")?;
    browser.wait_for_text(".scan-sign", "Counting Box 07")?;
    browser.press_words("asf-place-scan", "Type the code")?;
    browser.wait_for("asf-keypad input")?;
    type_code(browser, &code(144)?, "Outer bearing")?;
    browser.wait_for_text(".scan-progress", "1 of 3")?;
    // A swapped pair is caught, and nothing is counted for it.
    type_code(browser, &code(152)?.replacen("15", "51", 1), "Not a right code")?;
    type_code(browser, &code(152)?, "Stub axle")?;
    type_code(browser, &code(212)?, "foreign, belongs in Box 11")?;
    browser.wait_for_text(".scan-progress", "2 of 3")?;
    browser.wait_for_text(".scan-progress", "1 foreign")?;
    // Taken back and seen once more.
    browser.press_words("asf-place-scan", "Take back")?;
    browser.wait_for_text(".scan-sign", "Taken back")?;
    type_code(browser, &code(212)?, "foreign, belongs in Box 11")?;
    // The page is left and come back to: the count goes on.
    browser.reload()?;
    browser.wait_for_text(".scan-progress", "2 of 3")?;
    browser.press_words("asf-place-scan .foot", "End the count")?;
    browser.wait_for_text("asf-one-place", "Counted 2 of 3")?;
    let rows = browser.text("asf-one-place")?;
    ensure!(rows.contains("missing, seen here") && rows.contains("foreign, belongs in Box 11"), "{rows}");
    let missing = browser.view(&json!({ "ask": "missing" }))?;
    ensure!(missing["totals"] == json!([1, 0, 0, 0]), "{missing}");
    browser.press_words("asf-one-place", "It lies here now: Wheel cylinder")?;
    browser.press_words("asf-one-place", "Found it here: Grease cap")?;
    browser.wait_until_gone("asf-one-place asf-settle")?;
    let missing = browser.view(&json!({ "ask": "missing" }))?;
    ensure!(missing["totals"] == json!([0, 0, 0, 0]), "{missing}");
    ensure!(
        lies_in(browser, id(&made, "cylinder")?)?.last().map(String::as_str) == Some("Box 07"),
        "it lies elsewhere"
    );
    // Once all of it is put right, the sum of that evening stands there no more.
    browser.wait_for_text("asf-one-place", "Parts here")?;
    let rows = browser.text("asf-one-place")?;
    ensure!(!rows.contains("Counted 2 of 3"), "{rows}");
    Ok(())
}

#[test]
fn chromium_counts_a_box_on_phone() -> anyhow::Result<()> {
    counts_and_settles(Size::Phone)
}

#[test]
fn chromium_counts_a_box_on_desk() -> anyhow::Result<()> {
    counts_and_settles(Size::Desk)
}

/// A tag before the camera opens its part, with nothing pressed.
#[test]
fn chromium_scans_to_open() -> anyhow::Result<()> {
    let film = film(&[212], 2)?;
    let visit = Visit::with_film(Size::Phone, film.path())?;
    let made = furnished(&visit)?;
    let browser = &visit.browser;
    browser.go("stores")?;
    browser.press_words("asf-place-stores .foot", "Scan")?;
    let part = id(&made, "cylinder")?;
    browser.wait_for_js(&format!("location.hash === '#/part/{part}'"), READ)?;
    browser.wait_for_text("asf-part-sheet", "Wheel cylinder")
}

/// A part, then a place: it lies there, with nothing pressed; and again is taken back with a tap.
#[test]
fn chromium_scans_to_move() -> anyhow::Result<()> {
    let film = film(&[212, 494], 4)?;
    let visit = Visit::with_film(Size::Phone, film.path())?;
    let made = furnished(&visit)?;
    let browser = &visit.browser;
    let part = id(&made, "cylinder")?;
    browser.go("scan?mode=move")?;
    let start = Instant::now();
    while lies_in(browser, part)?.last().map(String::as_str) != Some("Box 07") {
        ensure!(start.elapsed() < READ, "it was not moved: {}", browser.text("asf-place-scan")?);
        std::thread::sleep(Duration::from_millis(100));
    }
    browser.wait_for_text(".scan-sign", "Wheel cylinder laid in Box 07")?;
    browser.press_words("asf-place-scan", "Take back")?;
    let start = Instant::now();
    while lies_in(browser, part)?.last().map(String::as_str) != Some("Box 11") {
        ensure!(start.elapsed() < READ, "it was not taken back");
        std::thread::sleep(Duration::from_millis(100));
    }
    Ok(())
}

/// From an empty app to the way to a part, by name and by code, with the photo of the place.
#[test]
fn chromium_where_is_it() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let browser = &visit.browser;
    browser.start_job("The grey saloon")?;
    browser.go("stores")?;
    browser.press_words("asf-place-stores", "Where is it?")?;
    browser.wait_for_text("asf-place-where", "There are no parts yet")?;
    let made = browser.run_async_js(FURNISH, vec![])?;
    browser.go(&format!("stores/{}", id(&made, "seven")?))?;
    browser.wait_for("asf-place-photos input")?;
    let taken = picture(60)?;
    browser.upload("asf-place-photos input", taken.path())?;
    browser.wait_for("asf-place-photos .store-photo")?;
    browser.go("where")?;
    for sought in ["grease cpa", &code(151)?] {
        browser.replace_in("asf-where-find input", sought)?;
        browser.wait_for_text(".where-grid li:first-child", "Grease cap").with_context(|| sought.to_owned())?;
    }
    browser.click(".where-grid li:first-child a")?;
    browser.wait_for_text(".way-last", "Box 07")?;
    let way = browser.text("asf-where-one .way")?;
    let names = ["Garage", "Rack B", "Shelf 1", "Box 07"].map(|name| way.find(name));
    ensure!(names.is_sorted() && names[0].is_some(), "the way is {way}");
    browser.wait_for_js("document.querySelector('.way-last img')?.naturalWidth > 0", Duration::from_secs(20))
}

/// A box is moved to another shelf: what is in it comes along, and one tap takes both back.
#[test]
fn chromium_a_moved_box_moves_what_is_in_it() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let made = furnished(&visit)?;
    let browser = &visit.browser;
    let axle = id(&made, "axle")?;
    browser.go(&format!("stores/{}", id(&made, "seven")?))?;
    browser.press_words("asf-one-place .foot", "Move the box")?;
    browser.press_words("asf-place-chooser", "Shelf 2")?;
    browser.wait_for_text("asf-one-place asf-head", "Shelf 2")?;
    ensure!(lies_in(browser, axle)? == ["Garage", "Rack B", "Shelf 2", "Box 07"], "{:?}", lies_in(browser, axle)?);
    browser.go(&format!("where/{axle}"))?;
    browser.wait_for_text("asf-where-one .way", "Shelf 2")?;
    browser.press_words("asf-undo", "Undo")?;
    browser.wait_for_text("asf-where-one .way", "Shelf 1")
}

/// A part is sent away from its sheet, stands late in the list, and is in again with a tap.
#[test]
fn chromium_out_of_the_house_and_in_again() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Desk)?;
    let made = furnished(&visit)?;
    let browser = &visit.browser;
    browser.go(&format!("part/{}", id(&made, "axle")?))?;
    browser.press_words("asf-sheet-where", "Send for work or lend")?;
    browser.write_into("asf-send-form", "Who has it", "Anvil Row")?;
    browser.run_js(
        "const day = document.querySelector('asf-send-form input[type=date]'); day.value = '2020-01-01'; day.dispatchEvent(new Event('input', { bubbles: true }))",
        vec![],
    )?;
    browser.press_words("asf-send-form", "It leaves now")?;
    browser.wait_for_text("asf-sheet-where", "Out for work at Anvil Row")?;
    browser.go("missing")?;
    browser.wait_for_text("asf-place-missing", "Out too long")?;
    browser.go("missing/out")?;
    browser.press_words("asf-place-missing", "In again")?;
    browser.wait_for_text("asf-place-missing", "Nothing is out of the house")
}
