//! Where terms are kept: a supplier from a name that quotes carry, what carriage costs there and from when it is free, and a
//! rule between two parts.

use anyhow::ensure;
use asfound_journeys::{Browser, Size, Visit};
use serde_json::json;

fn put_term(browser: &Browser, label: &str, figure: &str) -> anyhow::Result<()> {
    browser.press_words("asf-supplier", label)?;
    browser.write_into("asf-supplier", label, figure)?;
    browser.press_words("asf-supplier .edit-line", "Put down")?;
    browser.wait_until_gone("asf-supplier .edit-line")
}

/// Two parts; three quotes name one supplier, written in two ways.
const QUOTED: &str = "
    const id = () => crypto.randomUUID().replaceAll('-', '');
    const [drum, hub] = [id(), id()];
    const quote = (of, from) => ({ do: 'create', id: id(), kind: 'quote', changes: [{ of }, { route: 'buy' }, { cash: { minor: 4000, currency: 'GBP' } }, { from }] });
    const answer = await globalThis.desk.command({ do: 'all', commands: [
        { do: 'create', id: drum, kind: 'part', changes: [{ name: 'Later drum' }, { tag: 61 }] },
        { do: 'create', id: hub, kind: 'part', changes: [{ name: 'Later hub' }, { tag: 62 }] },
        quote(drum, 'Sloe Hill Spares'), quote(hub, 'Sloe Hill Spares'), quote(hub, 'sloe hill  spares'),
    ] });
    if (!answer.ok) throw new Error(JSON.stringify(answer));";

#[test]
fn chromium_terms_and_a_fit_rule() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job_without_camera("The grey saloon")?;
    browser.run_async_js(QUOTED, vec![])?;

    browser.go("job")?;
    browser.press_words("asf-place-job", "Suppliers and specialists")?;
    browser.says("asf-place-suppliers .offered-row", "Sloe Hill Spares3 quotes")?;
    browser.press_words("asf-place-suppliers .offered", "Add Sloe Hill Spares")?;
    browser.wait_until_gone("asf-place-suppliers .offered-row")?;
    browser.press_words("asf-place-suppliers", "Sloe Hill Spares")?;
    browser.wait_for("asf-supplier")?;
    put_term(browser, "Carriage of an order", "9")?;
    put_term(browser, "Free from", "150")?;
    let told = browser.view(&json!({ "ask": "suppliers" }))?;
    let line = &told["suppliers"][0];
    let values = &line["record"]["values"];
    ensure!(line["quotes"] == json!(3) && told["unnamed"] == json!([]), "{told}");
    ensure!(values["shipping"]["minor"] == json!(900) && values["free_from"]["minor"] == json!(15_000), "{told}");
    browser.go("suppliers")?;
    browser.says("asf-place-suppliers a.store-row", "carriage £9 · free from £150")?;

    browser.go("rules")?;
    browser.press_words("asf-place-rules .foot", "Add a fit rule")?;
    browser.wait_for("asf-rule-form select option:nth-child(3)")?;
    browser.write_into("asf-rule-form", "This", "Later drum")?;
    browser.write_into("asf-rule-form", "With this", "Later hub")?;
    browser.press_words("asf-rule-form", "Put the rule down")?;
    browser.wait_until_gone("asf-rule-form")?;
    browser.says("asf-place-rules .rule-words", "Later drum · needs · Later hub")?;
    browser.press_words("asf-undo", "Undo")?;
    browser.wait_until_gone("asf-place-rules .rule")?;
    let told = browser.view(&json!({ "ask": "rules" }))?;
    ensure!(told["rules"] == json!([]), "{told}");
    Ok(())
}
