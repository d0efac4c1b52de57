//! What a swap does: what is in and what could go in are put down, what cannot be read is told beside its field, and the
//! comparison is read off: sentence, drawing, table, cautions.

use anyhow::ensure;
use asfound_journeys::{Browser, Size, Visit};
use serde_json::json;

/// Miles and inches, as where the car is from.
const IN_MILES: &str = "
    const head = await globalThis.desk.ask({ ask: 'head' });
    const answer = await globalThis.desk.command({ do: 'change', ids: [head.job.id], changes: [{ units: 'inch' }] });
    if (!answer.ok) throw new Error(JSON.stringify(answer));";

/// Control and A: all that stands in a field.
const ALL: &str = "\u{e009}a\u{e000}";

fn open_form(browser: &Browser) -> anyhow::Result<()> {
    browser.press_words("asf-place-gearing .foot", "Add a gearing")?;
    browser.wait_for("asf-gearing-form input")
}

fn put_down(browser: &Browser) -> anyhow::Result<()> {
    browser.press_words("asf-gearing-form", "Put it down")?;
    browser.wait_until_gone("asf-gearing-form")
}

fn before_and_after(size: Size) -> anyhow::Result<()> {
    let visit = Visit::with_faults(size)?;
    let Visit { browser, .. } = &visit;
    browser.start_job_without_camera("The grey saloon")?;
    browser.run_async_js(IN_MILES, vec![])?;

    browser.go("plan")?;
    browser.press_words("asf-place-plan", "Gearing of a swap")?;
    browser.says("asf-place-gearing asf-empty", "No gearing yet.")?;

    open_form(browser)?;
    // What stands there already is typed over.
    let write = |label: &str, text: &str| browser.write_into("asf-gearing-form", label, &format!("{ALL}{text}"));
    write("Name", "As found")?;
    write("Axle ratio", "4.22")?;
    write("Gears", "1.00, 1.41, 2.21, 3.75")?;
    write("Tyre marking", "ER70-13")?;
    browser.press_words("asf-gearing-form", "Put it down")?;
    browser.says("asf-gearing-form .field-error", "No tyre size.")?;
    write("Tyre marking", "5.20-13")?;
    put_down(browser)?;
    browser.says("asf-place-gearing .gearing-said", "In top, 1000 turns a minute is")?;
    browser.says("asf-place-gearing .gearing-tyre", "A cross-ply size tells no height")?;

    // The next one begins like the first: only what is other has to be typed.
    open_form(browser)?;
    write("Name", "Later axle")?;
    write("Axle ratio", "3.70")?;
    write("Rolls in one turn, measured", "70.4 in")?;
    write("Tyre marking", "165 R 13")?;
    put_down(browser)?;
    browser.says("asf-place-gearing .gearing-said", "fewer turns at the same speed.")?;

    let told = browser.view(&json!({ "ask": "gearing" }))?;
    let top = |set: usize| told["sets"][set]["rows"][3].clone();
    let change = told["sets"][1]["against"]["top"].as_f64().unwrap_or_default();
    ensure!(told["sets"][1]["record"]["values"]["swap"] == json!("after"), "{told}");
    ensure!(told["sets"][1]["rolling"]["from"] == json!("circumference"), "{told}");
    // 4.22 to 3.70, and a tyre that rolls 70.4 in where the marking of the old one says 71.9.
    ensure!((change - (3.70 / 4.22 * (22.88 * std::f64::consts::PI) / 70.4 - 1.0)).abs() < 1e-6, "{told}");
    let said = |row: &serde_json::Value| format!("{:.1}", row["mph"].as_f64().unwrap_or_default());
    let (was, is) = (said(&top(0)), said(&top(1)));
    browser.says("asf-place-gearing .gearing-said", &format!("{was} mph before, {is} mph after"))?;
    browser.says("asf-place-gearing .gearing-mind", "Have it recalibrated")?;
    browser.says("asf-place-gearing .gearing-mind", "What the manual says goes before all of this.")?;

    // The drawing has a line for each gear of both; the table says the same.
    let drawn = browser.run_js(
        "const lines = (kind) => document.querySelectorAll(`asf-gearing-chart svg[viewBox] line.${kind}`).length;
         const row = [...document.querySelectorAll('.gearing-table tbody tr')].at(-1);
         return [lines('gc-before'), lines('gc-after'), document.querySelector('asf-gearing-chart [role=img]').getAttribute('aria-label'), [...row.cells].map((cell) => cell.textContent)]",
        vec![],
    )?;
    ensure!(drawn[0] == json!(4) && drawn[1] == json!(4), "{drawn}");
    ensure!(drawn[2].as_str().is_some_and(|label| label.contains("As found and Later axle")), "{drawn}");
    ensure!(drawn[3][0] == json!("top") && drawn[3][1] == json!(was) && drawn[3][2] == json!(is), "{drawn}");

    browser.write_into("asf-place-gearing", "Engine speed at", "60")?;
    browser.wait_for("asf-gearing-chart .gc-is")?;
    browser.says("asf-place-gearing", "turns at 60 mph")?;
    ensure!(
        browser.view(&json!({ "ask": "gearing", "speed": 60 }))?["sets"][0]["rows"][3]["turns"].is_f64(),
        "no turns"
    );

    // Taken back, it is as it was before.
    browser.press_words("asf-undo", "Undo")?;
    browser.wait_until_gone("asf-place-gearing .gearing-mind")
}

#[test]
fn chromium_gearing_before_and_after_phone() -> anyhow::Result<()> {
    before_and_after(Size::Phone)
}

#[test]
fn chromium_gearing_before_and_after_desk() -> anyhow::Result<()> {
    before_and_after(Size::Desk)
}
