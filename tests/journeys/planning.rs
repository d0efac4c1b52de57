//! The whole job at once: an order lifted over free carriage, taken with one tap and undone with one; a budget that nothing keeps;
//! what was chosen compared with the plan, what is tried out, and what is drawn.

use std::time::Duration;

use anyhow::ensure;
use asfound_journeys::{Browser, Size, Visit};
use serde_json::{Value, json};

const PLACE: &str = "asf-whole-job";
const SOON: Duration = Duration::from_secs(20);

/// A bearing for 45 from a supplier whose carriage of 8 is free from 50; a seal for 5 elsewhere, or for 6 from there.
const FURNISH: &str = "
    const id = () => crypto.randomUUID().replaceAll('-', '');
    const pounds = (minor) => ({ minor: minor * 100, currency: 'GBP' });
    const [bearing, seal] = [id(), id()];
    const quote = (of, cash, from) => ({ do: 'create', id: id(), kind: 'quote', changes: [{ of }, { route: 'buy' }, { cash: pounds(cash) }, { from }] });
    const answer = await globalThis.desk.command({ do: 'all', commands: [
        { do: 'create', id: bearing, kind: 'part', changes: [{ name: 'Wheel bearing' }, { tag: 21 }] },
        { do: 'create', id: seal, kind: 'part', changes: [{ name: 'Felt ring' }, { tag: 22 }] },
        { do: 'create', id: id(), kind: 'supplier', changes: [{ name: 'Sloe Hill Spares' }, { shipping: pounds(8) }, { free_from: pounds(50) }] },
        quote(bearing, 45, 'Sloe Hill Spares'), quote(seal, 5, 'Elsewhere'), quote(seal, 6, 'Sloe Hill Spares'),
    ] });
    if (!answer.ok) throw new Error(JSON.stringify(answer));
    return [bearing, seal];";

fn decided(browser: &Browser) -> anyhow::Result<Value> {
    Ok(browser.view(&json!({ "ask": "totals" }))?["decided"].clone())
}

#[test]
fn chromium_the_whole_job_is_taken_and_undone() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job_without_camera("The grey saloon")?;
    let ids: Vec<String> = serde_json::from_value(browser.run_async_js(FURNISH, vec![])?)?;
    browser.go("plan")?;
    browser.says(PLACE, "£7 less than each part’s own cheapest.")?;
    browser.says(PLACE, "Proved: nothing is cheaper.")?;
    browser.says(
        PLACE,
        "0022 Felt ring: Buy, Sloe Hill Spares its own cheapest would cost £7 more, by carriage or a least charge",
    )?;
    browser.says(PLACE, "Sloe Hill Spares 2 quotes, carriage free")?;

    browser.press_words(PLACE, "Take all 2 that are open")?;
    browser.wait_for_text(".undo", "2\u{a0}parts decided as planned")?;
    ensure!(decided(browser)? == json!(2), "not both are decided");
    let cost = browser.view(&json!({ "ask": "cost", "part": ids[1] }))?;
    ensure!(cost["chosen"]["values"]["from"] == json!("Sloe Hill Spares"), "the felt ring is from {}", cost["chosen"]);
    browser.press_words(".undo", "Undo")?;
    browser.wait_for_js(&format!("document.querySelector('{PLACE} asf-primary')"), SOON)?;
    ensure!(decided(browser)? == json!(0), "one undo takes both back");

    browser.click("asf-what-if summary")?;
    slide(browser, "Budget", 4_000)?;
    browser.says(PLACE, "Nothing keeps all limits and rules.")?;
    browser.says(PLACE, "The budget: £11 more would do.")?;
    browser.press_words("asf-what-if", "As it is set")?;
    browser.says(PLACE, "Proved: nothing is cheaper.")?;
    Ok(())
}

/// Slides a figure of what is tried out.
fn slide(browser: &Browser, label: &str, to: i64) -> anyhow::Result<()> {
    let script = format!(
        "const input = [...document.querySelectorAll('asf-slider')].find((one) => one.label === '{label}').querySelector('input');
        input.value = '{to}'; input.dispatchEvent(new Event('input', {{ bubbles: true }})); return input.value;"
    );
    ensure!(browser.run_js(&script, vec![])? == json!(to.to_string()), "{label} does not slide to {to}");
    Ok(())
}

#[test]
fn chromium_what_was_chosen_is_compared_tried_and_drawn() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job_without_camera("The grey saloon")?;
    let ids: Vec<String> = serde_json::from_value(browser.run_async_js(FURNISH, vec![])?)?;
    let chosen = format!(
        "const id = () => crypto.randomUUID().replaceAll('-', '');
        const view = await globalThis.desk.ask({{ ask: 'cost', part: '{seal}' }});
        const quote = view.quotes.find(({{ record }}) => record.values.from === 'Elsewhere').id;
        const answer = await globalThis.desk.command({{ do: 'all', commands: [{{ do: 'choose', id: id(), quote, part: '{seal}' }},
            {{ do: 'create', id: id(), kind: 'quote', changes: [{{ of: '{seal}' }}, {{ route: 'repair-here' }}, {{ own_time: 600 }}] }}] }});
        if (!answer.ok) throw new Error(JSON.stringify(answer));",
        seal = ids[1]
    );
    browser.run_async_js(&chosen, vec![])?;
    browser.go("plan")?;
    browser.says(PLACE, "Each part’s own cheapest is the best together, too.")?;
    browser.press_words(PLACE, "may change")?;
    browser.says(PLACE, "£7 less than your own choices.")?;
    browser.press_words(PLACE, "Change the one")?;
    browser.wait_for_text(".undo", "1\u{a0}part decided as planned")?;
    browser.says(PLACE, "Your own choices are the best together, too.")?;

    browser.press_words("asf-frontier", "Draw it")?;
    browser.says("asf-frontier", "You set no limit to your hours.")?;
    browser.wait_for_js("document.querySelector('asf-frontier .fr-plan')", SOON)?;
    browser.press_words("asf-frontier", "Budget")?;
    browser.says("asf-frontier", "With less than")?;
    browser.press_words("asf-sway", "Try it")?;
    browser.says("asf-sway", "All 2 parts go the same way every time.")?;
    browser.press_words("asf-two-aims", "show standard")?;
    browser.says("asf-two-aims", "Every part goes the same way.")?;

    browser.run_js("document.querySelector('asf-what-if summary').scrollIntoView({ block: 'center' })", vec![])?;
    browser.click("asf-what-if summary")?;
    browser.press_words("asf-what-if", "Sloe Hill Spares")?;
    browser.says(PLACE, "1 part without a quote that may be chosen: not in it.")?;
    Ok(())
}

/// Two plans are kept, one without a supplier, told side by side; one is adopted, and the adopting is undone.
#[test]
fn chromium_kept_plans_are_compared_and_adopted() -> anyhow::Result<()> {
    const KEPT: &str = "asf-kept-plans";
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job_without_camera("The grey saloon")?;
    let ids: Vec<String> = serde_json::from_value(browser.run_async_js(FURNISH, vec![])?)?;
    let dearer = format!(
        "const changes = [{{ of: '{}' }}, {{ route: 'buy' }}, {{ cash: {{ minor: 6000, currency: 'GBP' }} }}, {{ from: 'Elsewhere' }}];
        const answer = await globalThis.desk.command({{ do: 'create', id: crypto.randomUUID().replaceAll('-', ''), kind: 'quote', changes }});
        if (!answer.ok) throw new Error(JSON.stringify(answer));",
        ids[0]
    );
    browser.run_async_js(&dearer, vec![])?;
    browser.go("plan")?;
    browser.says(PLACE, "Proved: nothing is cheaper.")?;
    browser.press_words(KEPT, "Keep it")?;
    browser.says(KEPT, "Give it a name.")?;
    browser.write_into(KEPT, "Keep this plan as", "All from one")?;
    browser.press_words(KEPT, "Keep it")?;
    browser.wait_for_text(".undo", "Plan kept")?;
    browser.says(KEPT, "Nothing has changed since. 2 parts change with it.")?;

    browser.click("asf-what-if summary")?;
    browser.press_words("asf-what-if", "Sloe Hill Spares")?;
    browser.says(PLACE, "£65")?;
    browser.write_into(KEPT, "Keep this plan as", "Without them")?;
    browser.press_words(KEPT, "Keep it")?;
    browser.wait_for_js(&format!("document.querySelectorAll('{KEPT} tbody tr:first-child td').length === 2"), SOON)?;
    browser.press_words("asf-what-if", "As it is set")?;
    browser.says(&format!("{KEPT} tbody"), "worth now£51£65")?;

    let adopt = format!("document.querySelector('{KEPT} [aria-label=\"Adopt it: Without them\"]')");
    browser.wait_for_js(&adopt, SOON)?;
    browser.run_js(&format!("{adopt}.click()"), vec![])?;
    browser.wait_for_text(".undo", "2\u{a0}parts decided as kept")?;
    ensure!(decided(browser)? == json!(2), "not both are decided");
    let cost = browser.view(&json!({ "ask": "cost", "part": ids[0] }))?;
    ensure!(cost["chosen"]["values"]["from"] == json!("Elsewhere"), "the bearing is from {}", cost["chosen"]);
    browser.says(KEPT, "All that can be chosen of it is chosen.")?;
    browser.press_words(".undo", "Undo")?;
    browser.wait_for_js(&adopt, SOON)?;
    ensure!(decided(browser)? == json!(0), "one undo takes both back");

    let strike = format!("document.querySelector('{KEPT} [aria-label=\"Strike out: All from one\"]')");
    browser.run_js(&format!("{strike}.click()"), vec![])?;
    browser.wait_for_js(&format!("document.querySelectorAll('{KEPT} tbody tr:first-child td').length === 1"), SOON)?;
    browser.wait_for_text(".undo", "Plan struck out")?;
    Ok(())
}
