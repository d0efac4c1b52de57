//! The undecided, one after another: all of them on a desk by keyboard alone; both sides of an axle together; and a reading that
//! is proved on a phone.

use std::time::Duration;

use anyhow::ensure;
use asfound_journeys::{Browser, Key, Size, Visit};
use serde_json::{Value, json};

const PLACE: &str = "asf-place-decide";
const SOON: Duration = Duration::from_secs(10);

/// Six parts: two with unsure quotes, a pair of dampers, a seal that is decided unasked, one with no quote at all.
const FURNISH: &str = "
    const id = () => crypto.randomUUID().replaceAll('-', '');
    const pounds = (minor) => ({ minor: minor * 100, currency: 'GBP' });
    const part = (number, changes) => ({ do: 'create', id: number, kind: 'part', changes });
    const quote = (of, route, cash, more = []) => ({ do: 'create', id: id(), kind: 'quote', changes: [{ of }, { route }, { cash: pounds(cash) }, { cash_certainty: 'about' }, ...more] });
    const [box, cap, left, right, seal, bare] = [id(), id(), id(), id(), id(), id()];
    const answer = await globalThis.desk.command({ do: 'all', commands: [
        part(box, [{ name: 'Steering box' }, { tag: 11 }]), quote(box, 'exchange', 180), quote(box, 'buy', 190),
        part(cap, [{ name: 'Grease cap' }, { tag: 12 }]), quote(cap, 'buy', 4), quote(cap, 'donor', 3),
        part(left, [{ name: 'Damper' }, { tag: 13 }, { side: 'left' }, { family: 'damper' }]), quote(left, 'exchange', 60), quote(left, 'buy', 95),
        part(right, [{ name: 'Damper' }, { tag: 14 }, { side: 'right' }, { family: 'damper' }]),
        part(seal, [{ name: 'Oil seal' }, { tag: 15 }, { family: 'seal' }]),
        part(bare, [{ name: 'Badge' }, { tag: 16 }, { triage: 'doubtful' }]),
    ] });
    if (!answer.ok) throw new Error(JSON.stringify(answer));
    return [box, cap, left, right, seal, bare];";

fn furnished(browser: &Browser) -> anyhow::Result<Vec<String>> {
    browser.start_job_without_camera("The grey saloon")?;
    Ok(serde_json::from_value(browser.run_async_js(FURNISH, vec![])?)?)
}

/// Waits until another part is in hand than the one of this tag, or nothing is open any more.
fn wait_past(browser: &Browser, tag: &str) -> anyhow::Result<()> {
    let turned = format!(
        "document.querySelector('{PLACE} asf-empty') || (document.querySelector('{PLACE} .decide-columns') && document.querySelector('{PLACE} asf-tag')?.number !== {})",
        json!(tag)
    );
    browser.wait_for_js(&turned, SOON)
}

fn in_hand(browser: &Browser) -> anyhow::Result<String> {
    let tag = browser.run_js(&format!("return document.querySelector('{PLACE} asf-tag')?.getAttribute('number') ?? document.querySelector('{PLACE} asf-tag')?.number ?? ''"), vec![])?;
    Ok(tag.as_str().unwrap_or_default().to_owned())
}

fn part(browser: &Browser, id: &str) -> anyhow::Result<Value> {
    Ok(browser.view(&json!({ "ask": "part", "part": id }))?["line"].clone())
}

#[test]
fn chromium_all_open_parts_are_decided_by_keys() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Desk)?;
    let Visit { browser, .. } = &visit;
    let ids = furnished(browser)?;
    browser.go("decide")?;
    browser.wait_for(&format!("{PLACE} .decide-columns"))?;
    browser.wait_for_text(PLACE, "of\u{a0}5 open")?;
    // Most at stake first: the two dear ways that are close to one another.
    ensure!(in_hand(browser)? == "0011", "{} comes first", in_hand(browser)?);
    // The first decision asks for a name; it is not asked again.
    browser.type_text("2")?;
    browser.press(Key::Enter)?;
    browser.wait_for("dialog[open] input")?;
    browser.type_text("Ada")?;
    browser.press(Key::Enter)?;
    wait_past(browser, "0011")?;
    ensure!(part(browser, &ids[0])?["route"] == "buy", "{}", part(browser, &ids[0])?);
    // Undone by a key, decided again.
    browser.type_text("z")?;
    browser.wait_for_js(&format!("document.querySelector('{PLACE} asf-tag')?.number === '0011'"), SOON)?;
    ensure!(part(browser, &ids[0])?["standing"] != "decided", "it was not taken back");
    browser.wait_for_text(PLACE, "of\u{a0}5 open")?;
    browser.press(Key::Enter)?;
    wait_past(browser, "0011")?;
    for _ in 0..8 {
        if browser.count(&format!("{PLACE} asf-empty"))? > 0 {
            break;
        }
        let tag = in_hand(browser)?;
        if tag == "0016" {
            // No quote yet: one is put down, by keys too.
            browser.type_text("a")?;
            browser.wait_for_js("document.activeElement?.matches('dialog[open] input.field-figure')", SOON)?;
            browser.type_text("14")?;
            browser.press(Key::Enter)?;
            browser.wait_until_gone("dialog[open]")?;
            browser.wait_for(&format!("{PLACE} .route-pick"))?;
        }
        browser.press(Key::Enter)?;
        wait_past(browser, &tag)?;
    }
    browser.wait_for_text(PLACE, "Nothing is open.")?;
    for id in &ids {
        ensure!(part(browser, id)?["standing"] == "decided", "{}", part(browser, id)?);
    }
    // Both sides of an axle went together, at the same figures.
    ensure!(
        part(browser, &ids[2])?["route"] == "exchange" && part(browser, &ids[3])?["route"] == "exchange",
        "the dampers"
    );
    let right = browser.view(&json!({ "ask": "cost", "part": ids[3] }))?;
    ensure!(right["quotes"][0]["cash"]["minor"] == 6000, "{right}");
    Ok(())
}

#[test]
fn chromium_a_reading_is_proved() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job_without_camera("The grey saloon")?;
    let drum = browser.run_async_js(
        "const id = crypto.randomUUID().replaceAll('-', '');
         const answer = await globalThis.desk.command({ do: 'create', id, kind: 'part', changes: [{ name: 'Brake drum' }, { tag: 7 }, { family: 'brake-drum' }] });
         if (!answer.ok) throw new Error(JSON.stringify(answer));
         return id;",
        vec![],
    )?;
    let drum = drum.as_str().unwrap_or_default().to_owned();
    browser.go(&format!("judge/{drum}?at=result"))?;
    browser.press_words("asf-measures", "Say the limit: Inside diameter")?;
    browser.write_into("dialog[open]", "No more than", "9.060 in")?;
    browser.write_into("dialog[open]", "Page", "p. 61")?;
    browser.press_words("dialog[open]", "Put it down")?;
    browser.wait_until_gone("dialog[open]")?;
    browser.press_words("asf-measures", "Put a reading down: Inside diameter")?;
    // What cannot be read is told, and stays to be corrected.
    browser.write_into("dialog[open]", "Read off", "two thirty")?;
    browser.press_words("dialog[open]", "Put it down")?;
    browser.wait_for_text("dialog[open]", "That is not a figure.")?;
    browser.replace_in("dialog[open] asf-field:first-of-type input", "230.10")?;
    browser.run_js(
        "const pick = document.querySelector('dialog[open] select'); pick.value = 'bore-gauge'; pick.dispatchEvent(new Event('change', { bubbles: true }))",
        vec![],
    )?;
    browser.press_words("dialog[open]", "Put it down")?;
    browser.wait_until_gone("dialog[open]")?;
    browser.wait_for_text("asf-measures", "Proved good as it is.")?;
    browser.wait_for_text("asf-measures", "ISO 14253-1:2017")?;
    browser.wait_for_text("asf-measures", "manual, p. 61")?;
    browser.wait_for("asf-number-line svg")?;
    let view = browser.view(&json!({ "ask": "inspect", "part": drum }))?;
    let bore = &view["measures"][0];
    ensure!(
        bore["places"][0]["measured"]["value"] == 230_100_000.0 && bore["limits"]["discard"]["most"] == 230_124_000.0,
        "{bore}"
    );
    let violations = browser.axe(&["asf-measures"])?;
    ensure!(violations.is_empty(), "{violations:?}");
    Ok(())
}
