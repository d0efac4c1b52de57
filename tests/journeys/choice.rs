//! A choice among quotes is kept with who made it, when and at which figures, whatever becomes of the quotes later.

use std::time::{SystemTime, UNIX_EPOCH};

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Size, Visit};
use serde_json::{Value, json};

const WHO: &str = "Ada Finch";

#[test]
fn chromium_a_choice_with_a_name() -> anyhow::Result<()> {
    let mut visit = Visit::with_faults(Size::Phone)?;
    let browser = &visit.browser;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.go("parts")?;
    browser.click("asf-place-parts a.row")?;
    browser.press_words("asf-sheet-routes", "Routes")?;
    quote(browser, "Add a quote", "Repair here", &[("Cash", "18"), ("Own time", "1:30"), ("From whom", "Own bench")])?;
    quote(browser, "Another quote", "Buy", &[("Cash", "145")])?;
    let from = now()?;
    browser.press_words(".routes-foot", "Choose")?;
    browser.write_into("asf-who-dialog", "Name", WHO)?;
    browser.press_words("asf-who-dialog form", "Choose")?;
    let chosen = shows_the_choice(browser)?;
    let taken = chosen["taken"].as_u64().unwrap_or_default();
    ensure!((from..=now()?).contains(&taken), "it says {chosen}");

    // The quote rises: the choice stands at the figures of its day, and the difference is said.
    browser.press_words("asf-place-routes", "Change")?;
    browser.replace_in("asf-quote-form asf-field input", "30")?;
    browser.press_words("asf-quote-form", "Put the quote down")?;
    browser.wait_until_gone("asf-quote-form")?;
    browser.wait_for_text("asf-place-routes", "It stood at")?;
    ensure!(shows_the_choice(browser)? == chosen, "the choice has moved with the quote");

    visit.app.go_offline()?;
    visit.browser.reload()?;
    ensure!(shows_the_choice(&visit.browser).context("after a reload")? == chosen, "another choice after a reload");
    let visit = visit.killed_and_back()?;
    let browser = &visit.browser;
    ensure!(shows_the_choice(browser).context("after a kill")? == chosen, "another choice after a kill");

    // The name is asked once on a device.
    browser.press_words(".routes-foot", "Choose")?;
    browser.wait_for_js("!document.querySelector('asf-place-routes')?.textContent.includes('It stood at')", SOON)?;
    let again = chosen_now(browser)?;
    ensure!(again["who"] == json!(WHO) && again["cash"]["minor"] == json!(3000), "{again}");
    Ok(())
}

const SOON: std::time::Duration = std::time::Duration::from_secs(10);

fn now() -> anyhow::Result<u64> {
    Ok(u64::try_from(SystemTime::now().duration_since(UNIX_EPOCH)?.as_millis())?)
}

fn quote(browser: &Browser, add: &str, route: &str, figures: &[(&str, &str)]) -> anyhow::Result<()> {
    browser.press_words("asf-place-routes", add)?;
    browser.press_words("asf-quote-form", route)?;
    for (label, figure) in figures {
        browser.write_into("asf-quote-form", label, figure)?;
    }
    browser.press_words("asf-quote-form", "Put the quote down")?;
    browser.wait_until_gone("asf-quote-form")
}

/// What the record holds of the choice.
fn chosen_now(browser: &Browser) -> anyhow::Result<Value> {
    browser.wait_for_js("globalThis.desk?.current()", SOON)?;
    let part = browser.run_js("return location.hash.split('/')[2]", vec![])?;
    Ok(browser.view(&json!({ "ask": "cost", "part": part }))?["chosen"]["values"].clone())
}

/// Who, when and the figures stand on the screen, as the record holds them.
fn shows_the_choice(browser: &Browser) -> anyhow::Result<Value> {
    browser.wait_for_text("asf-place-routes", &format!("Repair here, chosen by {WHO} on "))?;
    let chosen = chosen_now(browser)?;
    ensure!(
        chosen["who"] == json!(WHO) && chosen["cash"]["minor"] == json!(1800) && chosen["own_time"] == json!(90),
        "the record holds {chosen}"
    );
    let day = "return new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' }).format(arguments[0])";
    let day = browser.run_js(day, vec![chosen["taken"].clone()])?;
    let shown = browser.run_js(
        "return [...document.querySelectorAll('asf-place-routes asf-section')].map((one) => one.textContent.replace(/\\s+/g, ' ')).find((text) => text.includes('chosen by')) ?? ''",
        vec![],
    )?;
    let shown = shown.as_str().unwrap_or_default();
    let expected = chosen["expected_then"].as_f64().context("what it was expected to come to")? / 100.0;
    let figures = [day.as_str().unwrap_or_default(), "Own bench", "£18", "1 h 30 min", &format!("£{expected:.0}")];
    for figure in figures {
        ensure!(shown.contains(figure), "{figure} does not stand there: {shown}");
    }
    Ok(chosen)
}
