//! From a dirty part to a verdict, by taps: ten parts of ten kinds on a phone; a caution that is read once; what was not
//! finished is there again after a kill; on a desk all of it by keys.

use std::fs;
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Key, Size, Visit};
use serde_json::{Value, json};

/// A part as it is judged: its name as typed, its family as proposed, the answers that are not the best, what it comes to.
struct Judged {
    name: &'static str,
    family: &'static str,
    answers: &'static [(&'static str, &'static str)],
    verdict: &'static str,
}

const PARTS: [Judged; 10] = [
    Judged { name: "o/s f wheel bearing", family: "Ball or roller bearing", answers: &[], verdict: "Fit to use again" },
    Judged { name: "Oil seal", family: "Seal, O-ring, gasket, boot", answers: &[], verdict: "Single use" },
    Judged {
        name: "Brake drum",
        family: "Brake drum",
        answers: &[("working surface scored", "felt by nail")],
        verdict: "Can be put right",
    },
    Judged {
        name: "Leading shoe",
        family: "Brake shoe or pad",
        answers: &[("lining clean", "oil or fluid")],
        verdict: "Can be put right",
    },
    Judged {
        name: "King pin",
        family: "King pin, swivel or shackle pin",
        answers: &[("rock in its bush", "rocks")],
        verdict: "Scrap",
    },
    Judged {
        name: "Rear spring",
        family: "Coil or leaf spring",
        answers: &[("every leaf", "broken")],
        verdict: "Can be put right",
    },
    Judged {
        name: "Lever arm damper",
        family: "Damper (shock absorber)",
        answers: &[("Does it leak", "leaks")],
        verdict: "Can be put right",
    },
    Judged {
        name: "Bracket",
        family: "Casting, housing, bracket",
        answers: &[("bare steel rusted", "D: pits all over")],
        verdict: "Can be put right",
    },
    Judged {
        name: "Wiring loom",
        family: "Wiring loom, cable",
        answers: &[("its cover", "brittle, cracked")],
        verdict: "Scrap",
    },
    Judged {
        name: "High tensile bolt",
        family: "High-strength or safety bolt",
        answers: &[("Has it stretched", "Skip")],
        verdict: "Not known yet",
    },
];

const PLACE: &str = "asf-place-judge";
const SOON: Duration = Duration::from_secs(10);

/// A job in one assembly with a part of each name; gives their ids.
fn with_parts(browser: &Browser, names: &[&str]) -> anyhow::Result<Vec<String>> {
    browser.start_job_without_camera("The grey saloon")?;
    let ids = browser.run_async_js(MAKE, vec![json!(names)])?;
    Ok(serde_json::from_value(ids)?)
}

const MAKE: &str = "
    const id = () => crypto.randomUUID().replaceAll('-', '');
    const assembly = id();
    const parts = given[0].map((name, i) => ({ do: 'create', id: id(), kind: 'part', changes: [{ name }, { tag: i + 1 }, { assembly }, { order: i + 1 }] }));
    const answer = await globalThis.desk.command({ do: 'all', commands: [
        { do: 'create', id: assembly, kind: 'assembly', changes: [{ name: 'Corner' }, { open: true }] }, ...parts] });
    if (!answer.ok) throw new Error(JSON.stringify(answer));
    return parts.map((one) => one.id);";

/// What the place asks now; empty where it asks nothing.
fn question(browser: &Browser) -> anyhow::Result<String> {
    let asked = browser.run_js("return document.querySelector('asf-judge-question h2')?.textContent ?? ''", vec![])?;
    Ok(asked.as_str().unwrap_or_default().to_owned())
}

/// Waits for another question, or for the result.
fn wait_past(browser: &Browser, asked: &str) -> anyhow::Result<()> {
    let turned = format!(
        "(document.querySelector('asf-judge-question h2')?.textContent ?? '') !== {} && document.querySelector('asf-judge-question h2, {PLACE} asf-verdict')",
        json!(asked)
    );
    browser.wait_for_js(&turned, SOON).with_context(|| format!("after {asked:?}"))
}

/// Goes to a part from its sheet and says which family it is of.
fn say_family(browser: &Browser, part: &str, family: &str) -> anyhow::Result<()> {
    browser.go(&format!("part/{part}"))?;
    browser.press_words("asf-sheet-judged", "Say what it is")?;
    browser.wait_for("asf-judge-family .judge-tile")?;
    browser.press_words("asf-judge-family asf-section:first-of-type", family)?;
    browser.wait_for("asf-judge-question h2")
}

/// Answers everything that is asked, best first where nothing else is said.
fn answer_all(browser: &Browser, judged: &Judged) -> anyhow::Result<()> {
    for _ in 0..20 {
        let asked = question(browser)?;
        if asked.is_empty() {
            return Ok(());
        }
        match judged.answers.iter().find(|(about, _)| asked.contains(about)) {
            Some((_, "Skip")) => browser.press_words(".judge-turn", "Skip")?,
            Some((_, answer)) => browser.press_words("asf-answers", answer)?,
            None => browser.click("asf-answers .answer")?,
        }
        wait_past(browser, &asked)?;
    }
    anyhow::bail!("{} is asked without end", judged.name)
}

fn inspect(browser: &Browser, part: &str) -> anyhow::Result<Value> {
    browser.view(&json!({ "ask": "inspect", "part": part }))
}

#[test]
fn chromium_ten_parts_are_judged_on_a_phone() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    let ids = with_parts(browser, &PARTS.map(|part| part.name))?;
    for (judged, id) in PARTS.iter().zip(&ids) {
        say_family(browser, id, judged.family).with_context(|| judged.name)?;
        answer_all(browser, judged)?;
        browser.wait_for_text(&format!("{PLACE} .verdict-word"), judged.verdict).with_context(|| judged.name)?;
    }
    // What was scrapped stays as a pattern; what is used once is decided; what was answered stands in the record.
    browser.go(&format!("judge/{}", ids[4]))?;
    browser.wait_for_text("asf-routes-left", "Keep it on the shelf as a pattern")?;
    let seal = browser.view(&json!({ "ask": "part", "part": ids[1] }))?;
    ensure!(seal["line"]["standing"] == "decided" && seal["line"]["route"] == "buy", "{seal}");
    let drum = inspect(browser, &ids[2])?;
    let scored = drum["asked"].as_array().into_iter().flatten().find(|one| one["question"] == "scoring");
    ensure!(scored.context("asked for scores")?["answer"] == "deep", "{drum}");
    // An answer is changed later, from the list of what was looked at.
    browser.press_words("asf-findings", "Change: Rock, rocks")?;
    browser.press_words("asf-answers", "none")?;
    // A pin of the steering is not fit before it has been measured.
    browser.wait_for_text(&format!("{PLACE} .verdict-word"), "Not known yet")?;
    browser.press_words(PLACE, "To its routes")?;
    browser.wait_for("asf-place-routes h1")
}

#[test]
fn chromium_a_caution_is_read_once() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    let ids = with_parts(browser, &["Brake drum", "Leading shoe"])?;
    browser.go(&format!("judge/{}", ids[0]))?;
    browser.press_words("asf-cautions", "Caution: asbestos dust")?;
    browser.wait_for_text("asf-cautions", "No air line, no dry brush")?;
    browser.wait_for_text("asf-cautions", "29 CFR 1910.1001")?;
    let violations = browser.axe(&["asf-cautions"])?;
    ensure!(violations.is_empty(), "{violations:?}");
    browser.press_words("asf-cautions", "Read and understood")?;
    browser.press_words("dialog[open]", "Keep it without a name")?;
    browser.wait_for_text(".cautions-read", "1\u{a0}caution read")?;
    // What is left is the other one; it is a line of its own.
    ensure!(browser.offers("asf-cautions", "Caution: safety-critical part")?, "the other one is gone");
    // Nor is it asked again for another part, another step, or after the app was closed.
    let visit = visit.killed_and_back()?;
    let Visit { browser, .. } = &visit;
    browser.wait_for("asf-place-judge h1")?;
    browser.go(&format!("judge/{}", ids[1]))?;
    browser.wait_for_text(".cautions-read", "1\u{a0}caution read")?;
    ensure!(!browser.offers("asf-cautions", "Caution: asbestos dust")?, "it is asked again");
    browser.go("cautions")?;
    browser.wait_for_text("asf-place-cautions", "Putting together")?;
    let kept = browser.view(&json!({ "ask": "cautions", "step": "judge", "part": ids[1] }))?;
    ensure!(kept["cautions"][0]["acknowledged"]["values"]["hazard"] == "asbestos", "{kept}");
    Ok(())
}

#[test]
fn chromium_a_photo_shows_what_was_found_and_a_kill_takes_nothing() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let picture = visit.profile.stored().join("found.jpg");
    let part = {
        let Visit { browser, .. } = &visit;
        let ids = with_parts(browser, &["King pin"])?;
        fs::write(&picture, serde_json::from_value::<Vec<u8>>(browser.run_async_js(ANY_PHOTO, vec![])?)?)?;
        say_family(browser, &ids[0], "King pin, swivel or shackle pin")?;
        // The photo comes first, and stays with the answer that follows it.
        browser.upload(".judge-file", &picture)?;
        browser.wait_for(".judge-photos asf-photo img")?;
        let asked = question(browser)?;
        browser.press_words("asf-answers", "rocks")?;
        wait_past(browser, &asked)?;
        browser.go(&format!("judge/{}?at=own", ids[0]))?;
        browser.write_into("asf-own-check", "What else is looked at?", "Grease nipple clear?")?;
        let typed = browser.value_of("asf-own-check", "What else is looked at?")?;
        ensure!(typed == "Grease nipple clear?", "before the kill: {typed}");
        ids.first().cloned().context("a part")?
    };
    let visit = visit.killed_and_back()?;
    let Visit { browser, .. } = &visit;
    // Back at the same form with what was typed in it.
    browser.wait_for("asf-own-check input")?;
    let typed = browser.value_of("asf-own-check", "What else is looked at?")?;
    ensure!(typed == "Grease nipple clear?", "{typed}");
    browser.press_words("asf-own-check", "Add the question")?;
    browser.wait_for_text("asf-judge-question h2", "Grease nipple clear?")?;
    browser.press_words("asf-answers", "needs work")?;
    let view = inspect(browser, &part)?;
    let rock = &view["asked"][0];
    ensure!(rock["answer"] == "rocks" && rock["photos"].as_array().is_some_and(|photos| photos.len() == 1), "{rock}");
    Ok(())
}

#[test]
fn chromium_judged_by_keys() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Desk)?;
    let Visit { browser, .. } = &visit;
    let ids = with_parts(browser, &["Wheel bearing"])?;
    say_family(browser, &ids[0], "Ball or roller bearing")?;
    let mut asked = question(browser)?;
    for key in ["1", "s", "3"] {
        browser.type_text(key)?;
        wait_past(browser, &asked)?;
        asked = question(browser)?;
    }
    browser.press(Key::Backspace)?;
    wait_past(browser, &asked)?;
    browser.wait_for_text(".answer-chosen", "one per roller")?;
    let here = question(browser)?;
    browser.press(Key::Enter)?;
    wait_past(browser, &here)?;
    let view = inspect(browser, &ids[0])?;
    ensure!(view["asked"][0]["answer"] == "none" && view["asked"][1]["skipped"] == true, "{view}");
    ensure!(view["asked"][2]["answer"] == "at-pitch" && view["verdict"] == "scrap", "{view}");
    Ok(())
}

const ANY_PHOTO: &str = "
    const canvas = new OffscreenCanvas(64, 48);
    canvas.getContext('2d').fillRect(8, 8, 32, 24);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];";
