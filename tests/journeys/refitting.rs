//! Putting it together again: from an empty app to the road; a kill in the middle of a step; what is kept whole asks before it
//! is stripped; what blocks an assembly, and until when.

use std::fs;
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Key, Size, Visit};
use serde_json::{Value, json};

const SOON: Duration = Duration::from_secs(10);
const STEP: &str = "asf-refit-step";

/// An assembly is named, and comes apart.
fn take_up(browser: &Browser) -> anyhow::Result<()> {
    browser.go("assemblies")?;
    browser.press_words("asf-place-assemblies", "Add an assembly")?;
    browser.write_into("asf-assembly-form", "Name", "Front hub")?;
    browser.press_words("asf-assembly-form", "Left")?;
    browser.press_words("asf-assembly-form", "Make it")?;
    browser.write_into("asf-place-before [data-check=free-play]", "Seen or measured", "Rocks a little at the rim")?;
    browser.press_words("asf-place-before", "Fluids")?;
    browser.press_words("asf-fluids", "Put a fluid down")?;
    browser.write_into("asf-fluids form", "Which", "Axle oil")?;
    browser.write_into("asf-fluids form", "Drained", "1.2 L")?;
    browser.press_words("asf-fluids form", "Put it down")?;
    browser.says("asf-fluids .fluid", "1.2 L to fill in, as much as came out")?;
    browser.run_js("history.back()", vec![])?;
    browser.press_words("asf-place-before", "Take it apart")?;
    browser.wait_for_text("asf-place-teardown h1", "Front hub")
}

/// Three parts by the shutter; the second is held by a joint of two pieces.
fn take_off_three(browser: &Browser) -> anyhow::Result<()> {
    browser.wait_for_camera()?;
    for (at, name) in ["Grease cap", "Wheel hub", "Wheel bearing"].into_iter().enumerate() {
        if at > 0 {
            browser.next_tag()?;
        }
        browser.record_part(1)?;
        if at == 1 {
            for pieces in 1..=2 {
                browser.click(".td-joint-next")?;
                browser.wait_for_text(".td-joint-count b", &pieces.to_string())?;
            }
        }
        browser.click(".td-plate")?;
        browser.write_into("asf-more", "Name", name)?;
        browser.press(Key::Enter)?;
        browser.press_words("asf-place-teardown dialog", "Done")?;
        browser.wait_until_gone("asf-place-teardown dialog[open]")?;
        browser.wait_for_text(".td-names", name)?;
    }
    Ok(())
}

/// The pieces are named, and how tight the nut is to be.
fn name_the_hardware(browser: &Browser) -> anyhow::Result<()> {
    let steps = steps(browser)?;
    let part = steps[1]["line"]["id"].as_str().context("the hub")?.to_owned();
    browser.go(&format!("part/{part}"))?;
    browser.press_words("asf-sheet-joints", "A")?;
    for (piece, name) in [(1, "Split pin"), (2, "Nut")] {
        browser.click(&format!(".jt-pieces li:nth-child({piece}) .jt-open"))?;
        browser.press_words(&format!(".jt-pieces li:nth-child({piece})"), name)?;
        browser.wait_for_text(&format!(".jt-pieces li:nth-child({piece}) .row-name"), name)?;
        browser.click(&format!(".jt-pieces li:nth-child({piece}) .jt-open"))?;
    }
    browser.press_words("asf-how-tight", "Nut")?;
    browser.write_into("asf-tightening-form", "Tightening figure", "40 lbf ft")?;
    browser.press_words("asf-tightening-form", "dry")?;
    browser.write_into("asf-tightening-form", "Where the figure stands", "manual, page 112")?;
    browser.press_words("asf-tightening-form", "Put it down")?;
    browser.wait_until_gone("asf-tightening-form")?;
    browser.says("asf-how-tight", "40 lbf·ft")
}

fn steps(browser: &Browser) -> anyhow::Result<Vec<Value>> {
    browser.wait_for_js("globalThis.desk?.current()", SOON)?;
    let assemblies = browser.view(&json!({ "ask": "assemblies" }))?;
    let id = &assemblies["assemblies"][0]["record"]["id"];
    let view = browser.view(&json!({ "ask": "refit-steps", "assembly": id }))?;
    Ok(view["steps"].as_array().context("steps")?.clone())
}

fn at_step(browser: &Browser, name: &str) -> anyhow::Result<()> {
    let there =
        format!("document.querySelector('{STEP} .rf-said h2')?.textContent.trim().split(' × ')[0] === {}", json!(name));
    browser.wait_for_js(&there, SOON).with_context(|| format!("at the step of {name}"))
}

/// The bearing is bought: ordered, in, compared.
fn a_new_bearing(browser: &Browser) -> anyhow::Result<()> {
    browser.press_words(&format!("{STEP} asf-lacks-mended"), "Its routes")?;
    browser.press_words("asf-place-routes", "Add a quote")?;
    browser.press_words("asf-quote-form", "Buy")?;
    browser.write_into("asf-quote-form", "Cash", "45")?;
    browser.press_words("asf-quote-form", "Put the quote down")?;
    browser.wait_until_gone("asf-quote-form")?;
    browser.press_words(".routes-foot", "Choose")?;
    browser.write_into("asf-who-dialog", "Name", "Ada Finch")?;
    browser.press_words("asf-who-dialog form", "Choose")?;
    browser.wait_for_text("asf-place-routes", "chosen by Ada Finch")?;
    browser.run_js("history.back()", vec![])?;
    at_step(browser, "Wheel bearing")?;
    browser.press_words("asf-lacks-mended", "It is ordered")?;
    browser.write_into("asf-delivery-form", "From", "Hare & Wick")?;
    browser.press_words("asf-delivery-form", "Put it down")?;
    browser.says("asf-lacks-mended", "on order, no date known")?;
    browser.press_words("asf-lacks-mended", "In today")?;
    browser.says("asf-lacks-mended", "in, not compared with the old one, yours to do")?;
    browser.press_words("asf-lacks-mended", "Compared: right")?;
    browser.wait_until_gone("asf-lacks-mended")?;
    browser.says(&format!("{STEP} .rf-said"), "new, in place of the old")
}

/// From an empty app by somebody new to it: three parts off, decided, one of them bought, on again step by step; what is
/// finger-tight is in the way of lowering until it is ticked; the way to the road; nothing left over.
/// Break: in `tick.ts` leave the joints out of what is ticked.
#[test]
fn chromium_from_an_empty_app_to_the_road() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job("The grey saloon")?;
    browser.go("refit")?;
    browser.says("asf-place-refit", "Nothing is off yet.")?;
    take_up(browser)?;
    take_off_three(browser)?;
    name_the_hardware(browser)?;

    // What came off last goes on first, and nothing was decided.
    browser.go("refit")?;
    browser.says(".rf-assembly", "4 things of yours to do, no date known")?;
    browser.says(".rf-assembly", "0 of 3 on")?;
    browser.press_words("asf-refit-home .rf-assembly", "Front hub")?;
    browser.press_words("asf-refit-assembly .foot", "Begin")?;
    at_step(browser, "Wheel bearing")?;
    browser.says(&format!("{STEP} .head-second"), "step 1 of 3 · final fit")?;
    a_new_bearing(browser)?;
    browser.press_words(".rf-foot", "Done, tightened")?;

    // Hardware in the order it goes on; the pin is new, and not here; finger-tight for now.
    at_step(browser, "Wheel hub")?;
    browser.says(".hw-piece:first-child", "nut")?;
    browser.says(".hw-piece.hw-new", "split pin, new")?;
    browser.says(".tq", "manual, page 112 · dry")?;
    browser.says(".tq-figure", "40 lbf·ft")?;
    browser.press_words("asf-lacks-mended", "Use it again")?;
    browser.wait_for_js("document.querySelectorAll('asf-lacks-mended li').length === 1", SOON)?;
    browser.press_words("asf-lacks-mended", "It is here")?;
    browser.wait_until_gone("asf-lacks-mended")?;
    browser.press_words(STEP, "Done, finger-tight")?;

    // The last one is blocked: it is ticked all the same, after one question. One undo takes it back.
    at_step(browser, "Grease cap")?;
    browser.press_words(".rf-foot", "Done, tightened")?;
    browser.says("dialog[open]", "nobody has decided what happens to it")?;
    browser.press_words("dialog[open]", "On all the same")?;
    browser.says("asf-refit-assembly .rf-summary", "3 of 3 on")?;
    browser.press_words("asf-undo", "Undo")?;
    at_step(browser, "Grease cap")?;
    browser.press_words("asf-lacks-mended", "Use it again")?;
    browser.wait_until_gone("asf-lacks-mended")?;
    browser.press_words(".rf-foot", "Done, tightened")?;
    browser.says("asf-refit-assembly .rf-summary", "refitted")?;

    loose_until_ticked(browser)?;
    commissioned(browser)
}

/// One joint is finger-tight: neither lowered nor on the road; then it is tight.
fn loose_until_ticked(browser: &Browser) -> anyhow::Result<()> {
    browser.press_words("asf-refit-assembly .foot", "All of it is on")?;
    browser.wait_for_text("asf-refit-home .rf-loose", "Still loose: 1")?;
    browser.press_words("asf-refit-home", "Still loose: 1")?;
    browser.says(".rf-joint-row", "Joint A · 0002 Wheel hub")?;
    browser.says(".rf-joint-row", "finger-tight")?;
    browser.says(".rf-joint-row", "40 lbf·ft, dry")?;
    browser.press_words("asf-gates", "It stands on its wheels")?;
    browser.says("asf-gates asf-message", "1 joint is still loose. Nothing was changed.")?;
    let vehicle = |field: &str| -> anyhow::Result<Value> {
        Ok(browser.view(&json!({ "ask": "head" }))?["vehicles"][0]["values"][field].clone())
    };
    ensure!(vehicle("lowered")?.is_null(), "it was lowered while something is loose");
    browser.press_words(".rf-joint-row", "Tight: Joint A, 0002 Wheel hub")?;
    browser.wait_for_text("asf-refit-loose", "Nothing is loose.")?;
    browser.press_words("asf-gates", "It stands on its wheels")?;
    browser.says("asf-gates", "It stands on its wheels.")?;
    ensure!(vehicle("lowered")? == json!(true), "it is not lowered");
    // Gone over a second time.
    browser.press_words(".rf-joint-row", "Checked again: Joint A")?;
    browser.wait_until_gone(".rf-joint-row")
}

fn commissioned(browser: &Browser) -> anyhow::Result<()> {
    browser.go("refit/commissioning")?;
    browser.press_words("asf-commissioning", "All of it is in: Axle oil")?;
    browser.says("asf-commissioning .fluid", "1.2 L in")?;
    browser.press_words("asf-commissioning [data-step=fluids]", "Done")?;
    browser.says("asf-commissioning", "1 of 8 done")?;
    browser.press_words("asf-commissioning [data-step=leaks]", "Leave it out")?;
    browser.says("asf-commissioning [data-step=leaks]", "left out")?;
    browser.press_words("asf-commissioning .rf-found asf-edit-line", "Now")?;
    browser.write_into("asf-commissioning .rf-found .edit-line", "Now", "No play")?;
    browser.press(Key::Enter)?;
    browser.says("asf-commissioning", "all compared")?;
    browser.says("asf-left-over", "Nothing is left over.")?;
    browser.says("asf-left-over .rf-renewed", "0003 Wheel bearing")?;
    browser.says("asf-left-over .rf-renewed", "0002 Split pin")?;
    browser.press_words("asf-gates", "It is on the road")?;
    // Lines are open: it asks first.
    browser.says("asf-gates dialog[open]", "of commissioning open")?;
    browser.press_words("asf-gates dialog[open]", "On the road all the same")?;
    browser.says("asf-gates", "It is on the road.")?;
    let view = browser.view(&json!({ "ask": "commissioning" }))?;
    ensure!(view["left"]["parts"] == json!([]) && view["left"]["never_ticked"] == json!([]), "{view}");
    ensure!(
        view["road"]["done"] == json!(true) && view["before"][0]["record"]["values"]["found_after"] == "No play",
        "{view}"
    );
    Ok(())
}

/// Three parts of an assembly, decided and ready; the middle one held by a joint.
const READY: &str = "
    const id = () => crypto.randomUUID().replaceAll('-', '');
    const [assembly, other, joint] = [id(), id(), id()];
    const parts = ['Hub cap', 'Hub', 'Bearing'].map((name, i) => ({ id: id(), name, tag: 41 + i }));
    const commands = [
        { do: 'create', id: assembly, kind: 'assembly', changes: [{ name: 'Front hub' }, { side: 'left' }] },
        { do: 'create', id: other, kind: 'assembly', changes: [{ name: 'Front hub' }, { side: 'right' }] },
        ...parts.flatMap(({ id: part, name, tag }) => { const quote = id(); return [
            { do: 'create', id: part, kind: 'part', changes: [{ name }, { tag }, { assembly }] },
            { do: 'create', id: quote, kind: 'quote', changes: [{ of: part }, { route: 'use-again' }] },
            { do: 'choose', id: id(), quote, part }]; }),
        { do: 'create', id: joint, kind: 'joint', changes: [{ name: 'A' }, { of: parts[1].id }, { assembly }] },
        { do: 'create', id: id(), kind: 'piece', changes: [{ joint }, { order: 1 }, { name: 'Bolt' }, { quantity: 4 }] },
    ];
    const answer = await globalThis.desk.command({ do: 'all', commands });
    if (!answer.ok) throw new Error(JSON.stringify(answer));
    return { assembly, other, parts: parts.map((one) => one.id) };";

fn ready(size: Size) -> anyhow::Result<(Visit, Value)> {
    let visit = Visit::with_faults(size)?;
    visit.browser.start_job_without_camera("The grey saloon")?;
    let ids = visit.browser.run_async_js(READY, vec![])?;
    Ok((visit, ids))
}

/// Killed in the middle of a step, with a note half typed and a figure half typed: the same step, the same words; the tick from
/// before is there. From the start of the app and by way of Refit.
/// Break: in `step.ts` do not remember the step.
#[test]
fn chromium_a_kill_comes_back_to_the_step() -> anyhow::Result<()> {
    let (visit, ids) = ready(Size::Phone)?;
    let browser = &visit.browser;
    let assembly = ids["assembly"].as_str().context("an assembly")?;
    browser.go(&format!("refit/{assembly}?step=next"))?;
    at_step(browser, "Bearing")?;
    browser.press_words(".rf-foot", "Done, tightened")?;
    at_step(browser, "Hub")?;
    browser.write_into(STEP, "Note", "Shim of 0.2 ins")?;
    browser.press_words(&format!("{STEP} asf-step-hardware"), "How tight?")?;
    browser.write_into("asf-tightening-form", "Tightening figure", "54 N")?;
    let visit = visit.killed_and_back()?;
    let browser = &visit.browser;
    at_step(browser, "Hub").context("after the kill")?;
    ensure!(browser.value_of("asf-tightening-form", "Tightening figure")? == "54 N", "the figure is gone");
    browser.write_into("asf-tightening-form", "Tightening figure", "m")?;
    browser.press_words("asf-tightening-form", "Put it down")?;
    browser.says(".tq-figure", "54 N·m")?;
    ensure!(browser.value_of(STEP, "Note")? == "Shim of 0.2 ins", "the note is gone");
    ensure!(browser.count(&format!("{STEP} .rf-box-fitted"))? == 1, "the tick is gone");
    // Left for another place, Refit leads back to it.
    browser.go("parts")?;
    browser.go("refit")?;
    browser.press_words("asf-refit-home .foot", "Go on")?;
    at_step(browser, "Hub")
}

/// At the desk by keys alone: photos, on for trial, off again, finger-tight, undo. The list stands beside.
/// Break: in `step.ts` leave `F` out of the keys.
#[test]
fn chromium_steps_by_keys() -> anyhow::Result<()> {
    let (visit, ids) = ready(Size::Desk)?;
    let Visit { browser, .. } = &visit;
    let assembly = ids["assembly"].as_str().context("an assembly")?;
    browser.go(&format!("refit/{assembly}?step=next"))?;
    at_step(browser, "Bearing")?;
    browser.type_text("d")?;
    at_step(browser, "Hub")?;
    browser.wait_for(".rf-panes .rf-step:first-child")?;
    browser.type_text("n")?;
    at_step(browser, "Hub cap")?;
    browser.type_text("p")?;
    at_step(browser, "Hub")?;
    browser.type_text("f")?;
    at_step(browser, "Hub cap")?;
    let told = browser.view(&json!({ "ask": "refit-step", "part": ids["parts"][1] }))?;
    ensure!(
        told["record"]["values"]["fit"] == "fitted"
            && told["joints"][0]["record"]["values"]["tightened"] == "finger-tight",
        "{told}"
    );
    browser.type_text("z")?;
    at_step(browser, "Hub")?;
    let told = browser.view(&json!({ "ask": "refit-step", "part": ids["parts"][1] }))?;
    ensure!(
        told["record"]["values"].get("fit").is_none()
            && told["joints"][0]["record"]["values"].get("tightened").is_none(),
        "one undo takes both back: {told}"
    );
    browser.press_words(STEP, "On for trial")?;
    browser.says(&format!("{STEP} .rf-said"), "It is on for trial.")?;
    browser.type_text("d")?;
    browser.says("asf-lacks-mended", "tried, and off for finish")?;
    // What was pressed is gone: the page scrolls to what has the focus instead, and only then stands still.
    browser.wait_for_js("document.activeElement !== document.body", SOON)?;
    browser.press_words("asf-lacks-mended", "Finish done")?;
    browser.wait_until_gone("asf-lacks-mended")
}

/// The other side is kept whole: it asks before it is stripped, and its opposite number is told of it.
/// Break: in `early.ts` say that nothing is early.
#[test]
fn chromium_the_reference_asks_before_it_is_stripped() -> anyhow::Result<()> {
    let (visit, ids) = ready(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    let (assembly, other) = (ids["assembly"].as_str().context("one")?, ids["other"].as_str().context("other")?);
    // Said before anything of it is off: by then the question has its sense.
    browser.go(&format!("before/{other}"))?;
    browser.press_words("asf-place-before asf-reference", "kept whole")?;
    browser.says("asf-undo", "Kept whole as the reference")?;
    browser.go(&format!("refit/{assembly}"))?;
    browser.says("asf-assembly-about", "Front hub is kept whole: its photos lie beside")?;
    browser.go("assemblies")?;
    browser.says("asf-place-assemblies", "kept whole as the reference")?;
    browser.click(".as-line:has(asf-side[side=right]) .as-take")?;
    browser.says("dialog[open]", "Strip Front hub RIGHT now?")?;
    browser.press_words("dialog[open]", "Leave it")?;
    browser.wait_until_gone("dialog[open]")?;
    browser.go(&format!("before/{other}"))?;
    browser.press_words("asf-place-before", "Take it apart")?;
    browser.says("dialog[open]", "is not together again yet.")?;
    browser.press_words("dialog[open]", "Strip it all the same")?;
    browser.wait_for_text("asf-place-teardown h1", "Front hub")
}

/// What blocks an assembly is named, with the day from which on nothing does; what the evening has room for; a rule, and its sheet.
/// Break: in `when.ts` leave the day out.
#[test]
fn chromium_what_blocks_and_until_when() -> anyhow::Result<()> {
    let (visit, ids) = ready(Size::Phone)?;
    let Visit { browser, profile, .. } = &visit;
    let assembly = ids["assembly"].as_str().context("an assembly")?;
    browser.run_async_js(
        "const { parts: [, , bearing] } = given[0];
        const id = () => crypto.randomUUID().replaceAll('-', '');
        const quote = id();
        const year = new Date().getFullYear() + 1;
        const answer = await globalThis.desk.command({ do: 'all', commands: [
            { do: 'create', id: quote, kind: 'quote', changes: [{ of: bearing }, { route: 'buy' }, { cash: { minor: 4500, currency: 'GBP' } }] },
            { do: 'choose', id: id(), quote, part: bearing },
            { do: 'change', ids: [bearing], changes: [{ quantity: 2 }] },
            { do: 'create', id: id(), kind: 'delivery', changes: [{ of: bearing }, { quantity: 1 }, { arrived: `${year - 2}-03-01` }, { compared: 'right' }] },
            { do: 'create', id: id(), kind: 'delivery', changes: [{ of: bearing }, { quantity: 1 }, { due: `${year}-03-14` }] },
        ] });
        if (!answer.ok) throw new Error(JSON.stringify(answer));",
        vec![ids.clone()],
    )?;
    browser.go("refit")?;
    let year = browser.run_js("return String(new Date().getFullYear() + 1)", vec![])?;
    let year = year.as_str().unwrap_or_default();
    browser.says(".rf-assembly .rf-stand", &format!("blocked by 1, earliest 15 Mar {year}"))?;
    browser.says(".rf-assembly .rf-lack", &format!("0043 Bearing: on order, from 15 Mar {year}"))?;
    browser.press_words("asf-evening", "½ h")?;
    browser.says("asf-evening", "Nothing is left that can be done without waiting.")?;

    // A rule: the cap goes on after the whole other side; struck out again.
    browser.go(&format!("refit/{assembly}"))?;
    browser.press_words("asf-goes-after", "Add a rule")?;
    browser.wait_for("asf-goes-after form select option:nth-child(4)")?;
    browser.write_into("asf-goes-after", "This", "0042 Hub")?;
    browser.write_into("asf-goes-after", "Goes on after", "0041 Hub cap")?;
    browser.press_words("asf-goes-after", "Put the rule down")?;
    browser.says("asf-goes-after .rf-rule", "0042 Hub goes on after 0041 Hub cap")?;
    let order = "[...document.querySelectorAll('asf-refit-assembly .rf-step .row-name')].map((one) => one.textContent.trim()).join() === 'Bearing, 2,Hub cap,Hub'";
    browser.wait_for_js(order, SOON)?;

    browser.press_words("asf-wall-sheet", "Print for the wall")?;
    browser.press_words("asf-wall-sheet asf-prepared", "Save to this device")?;
    let page = fs::read_to_string(profile.wait_for_download(".html", Duration::from_secs(30))?)?;
    ensure!(page.matches("<li class=\"step\">").count() == 3 && page.contains("4\u{a0}× Bolt"), "{page}");
    Ok(())
}
