//! Killed between two keys, away from the strip: what was typed is there again, to the last letter, though its field was never
//! left; and so is the form or dialog that it was typed in.

use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Size, Visit};
use serde_json::json;

const WORDS: &str = "Stub axle, nicked at the keyway – 2 washers";

/// A field of some place, and what opens it the first time.
struct Field {
    open: fn(&Browser) -> anyhow::Result<()>,
    selector: &'static str,
}

fn sheet_of_first_part(browser: &Browser) -> anyhow::Result<()> {
    browser.go("parts")?;
    browser.click("asf-place-parts a.row")?;
    browser.wait_for("asf-part-sheet asf-sheet-named")
}

fn is_there_after_a_kill(field: &Field) -> anyhow::Result<()> {
    let mut visit = Visit::with_faults(Size::Phone)?;
    visit.app.go_offline()?;
    let browser = &visit.browser;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    sheet_of_first_part(browser)?;
    (field.open)(browser)?;
    let stored = browser.stored_keys()?.count("tail");
    browser.type_into(field.selector, WORDS)?;
    let stands = format!("document.querySelector(\"{}\")?.value", field.selector);
    let typed = browser
        .run_js(&format!("return [{stands}, document.activeElement?.matches(\"{}\")]", field.selector), vec![])?;
    ensure!(typed == json!([WORDS, true]), "typed {typed}");

    let visit = visit.killed_and_back()?;
    let browser = &visit.browser;
    browser.wait_for("asf-part-sheet h1, asf-place-routes h1")?;
    browser.wait_for_js(&stands, Duration::from_secs(10)).context("the field after the kill")?;
    let there = browser.run_js(&format!("return {stands}"), vec![])?;
    ensure!(there == json!(WORDS), "{there} is there");
    ensure!(browser.stored_keys()?.count("tail") == stored, "it was put down although nobody said so");
    Ok(())
}

#[test]
fn chromium_a_name_on_the_sheet() -> anyhow::Result<()> {
    is_there_after_a_kill(&Field {
        open: |browser| browser.press_words("asf-sheet-named", "Name"),
        selector: "asf-sheet-named form input",
    })
}

#[test]
fn chromium_a_new_note() -> anyhow::Result<()> {
    is_there_after_a_kill(&Field { open: |_| Ok(()), selector: "asf-sheet-notes .note-new textarea" })
}

#[test]
fn chromium_a_quote() -> anyhow::Result<()> {
    is_there_after_a_kill(&Field {
        open: |browser| {
            browser.press_words("asf-sheet-routes", "Routes")?;
            browser.press_words("asf-place-routes", "Add a quote")?;
            browser.wait_for("asf-quote-form asf-field")
        },
        selector: "asf-quote-form > form > asf-field:last-of-type input",
    })
}
