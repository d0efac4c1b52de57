//! No one is kept out: axe finds nothing on any screen and dialog, light and dark, on phone and desk; the main flow goes by
//! keyboard alone; nothing runs off sideways on a narrow phone and in large type.

use std::path::Path;
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Key, Size, Visit};
use serde_json::json;

/// A job with three parts, an assembly, a joint, quotes, a kit, a purchase: every place has something to show. Gives all addresses.
fn furnished(size: Size) -> anyhow::Result<(Visit, Vec<String>)> {
    let visit = Visit::with_faults(size)?;
    let Visit { browser, .. } = &visit;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    let made = browser.run_async_js(FURNISH, vec![])?;
    let id = |name: &str| made[name].as_str().unwrap_or_default().to_owned();
    let mut places: Vec<String> = [
        "first",
        "job",
        "teardown",
        "assemblies",
        "parts",
        "stores",
        "scan",
        "scan?mode=move",
        "where",
        "missing",
        "missing/out",
        "plan",
        "bought",
        "paste",
        "refit",
        "vehicles",
        "suppliers",
        "rules",
        "gearing",
        "settings",
        "problems",
        "cautions",
        "hand-over",
        "safe-keeping",
        "self-test",
        "tags-sheet",
    ]
    .map(str::to_owned)
    .to_vec();
    let with_ids = [
        ("part", "part"),
        ("photo", "photo"),
        ("routes", "part"),
        ("judge", "part"),
        ("history", "part"),
        ("before", "assembly"),
        ("joint", "joint"),
        ("stores", "place"),
        ("refit", "assembly"),
        ("where", "part"),
        ("where", "lent"),
        ("scan?mode=count&count=", "count"),
        ("suppliers", "supplier"),
    ];
    let at =
        |place: &str, id: String| if place.ends_with('=') { format!("{place}{id}") } else { format!("{place}/{id}") };
    places.extend(with_ids.map(|(place, of)| at(place, id(of))));
    let judged = id("judged");
    places.push(format!("decide/{judged}"));
    places.extend(["refit/loose", "refit/commissioning", "refit/fluids", "refit/none"].map(str::to_owned));
    places.push(format!("refit/{}?step={}", id("assembly"), id("part")));
    places.extend(["lining", "result", "own"].map(|at| format!("judge/{judged}?at={at}")));
    every_place_is_looked_at(browser, &places)?;
    Ok((visit, places))
}

const FURNISH: &str = "
    const id = () => crypto.randomUUID().replaceAll('-', '');
    const desk = globalThis.desk;
    const { rows: [{ id: part }] } = await desk.ask({ ask: 'parts' });
    const view = await desk.ask({ ask: 'part', part });
    const [rule, assembly, joint, place, quote, other, note, kit, seal, judged, supplier, donor, rack, shelf, counted, count, lent] = Array.from({ length: 17 }, id);
    const pounds = (minor) => ({ minor, currency: 'GBP' });
    const answer = await desk.command({ do: 'all', commands: [
        { do: 'create', id: assembly, kind: 'assembly', changes: [{ name: 'Front hub' }, { open: true }, { side: 'left' }] },
        { do: 'create', id: rack, kind: 'place', changes: [{ name: 'Rack B' }, { place_kind: 'rack' }] },
        { do: 'create', id: shelf, kind: 'place', changes: [{ name: 'Shelf 2' }, { place_kind: 'shelf' }, { within: rack }] },
        { do: 'create', id: id(), kind: 'place', changes: [{ name: 'Shelf 1' }, { place_kind: 'shelf' }, { within: rack }] },
        { do: 'create', id: place, kind: 'place', changes: [{ name: 'Box 07' }, { place_kind: 'box' }, { within: shelf }] },
        { do: 'change', ids: [part], changes: [{ assembly }, { place }, { name: 'Wheel bearing' }, { stuck: false }, { single_use: true }] },
        { do: 'create', id: joint, kind: 'joint', changes: [{ name: 'A' }, { assembly }, { of: part }] },
        { do: 'create', id: id(), kind: 'piece', changes: [{ joint }, { order: 1 }, { name: 'Split pin' }] },
        { do: 'create', id: id(), kind: 'piece', changes: [{ joint }, { order: 2 }, { name: 'Castle nut' }, { torque: 54000000 }, { torque_unit: 'newton-metre' }, { angle: 90 }, { lubrication: 'dry' }, { torque_source: 'manual, page 112' }, { remark: 'turning the hub, then back one flat' }] },
        { do: 'create', id: id(), kind: 'consumable', changes: [{ of: part }, { name: 'Grease' }, { quantity: 2 }, { in_hand: 1 }, { due: '2030-03-14' }] },
        { do: 'create', id: id(), kind: 'delivery', changes: [{ of: part }, { quantity: 1 }, { from: 'Hare & Wick' }, { arrived: '2026-03-01' }] },
        { do: 'create', id: id(), kind: 'fluid', changes: [{ name: 'Axle oil' }, { drained: 1200 }, { text: 'Milky' }] },
        { do: 'create', id: id(), kind: 'before', changes: [{ assembly }, { check: 'free-play' }, { text: 'Rocks' }] },
        { do: 'create', id: id(), kind: 'commissioning', changes: [{ commissioning_step: 'bleed' }, { text: 'Firm' }, { taken: Date.now() }] },
        { do: 'create', id: id(), kind: 'part', changes: [{ name: 'Grease cap' }, { assembly }, { tag: 78 }, { fit: 'fitted' }] },
        { do: 'create', id: note, kind: 'note', changes: [{ of: part }, { text: 'Blue on the inner race' }, { taken: Date.now() }] },
        { do: 'create', id: quote, kind: 'quote', changes: [{ of: part }, { route: 'send-out' }, { cash: pounds(1800) }, { cash_certainty: 'about' }, { own_time: 90 }, { own_time_certainty: 'about' }, { chance: 2500 }, { chance_certainty: 'starting' }, { life: 48 }] },
        { do: 'create', id: seal, kind: 'part', changes: [{ name: 'Grease seal' }] },
        { do: 'create', id: kit, kind: 'quote', changes: [{ of: part }, { route: 'kit' }, { from: 'Hare & Wick' }, { cash: pounds(5000) }] },
        { do: 'create', id: id(), kind: 'cover', changes: [{ of: kit }, { part: seal }, { quantity: 1 }] },
        { do: 'create', id: id(), kind: 'quote', changes: [{ of: part }, { route: 'donor' }, { cash: pounds(900) }, { valid_until: '2020-01-01' }] },
        { do: 'create', id: id(), kind: 'purchase', changes: [{ cash: pounds(1234) }, { taken: Date.now() }, { part }] },
        { do: 'create', id: other, kind: 'quote', changes: [{ of: part }, { route: 'buy' }, { cash: pounds(4500) }] },
        { do: 'create', id: id(), kind: 'part', changes: [{ assembly }] },
        { do: 'create', id: judged, kind: 'part', changes: [{ assembly }, { name: 'Brake shoe' }, { tag: 77 }, { family: 'brake-lining' }] },
        { do: 'create', id: rule, kind: 'goes-after', changes: [{ of: judged }, { other: part }] },
        { do: 'create', id: id(), kind: 'joint', changes: [{ name: 'B' }, { assembly }, { tightened: 'finger-tight' }, { at_ride_height: true }] },
        { do: 'create', id: id(), kind: 'joint', changes: [{ name: 'C' }, { assembly }, { tightened: 'tight' }] },
        { do: 'create', id: id(), kind: 'finding', changes: [{ of: judged }, { question: 'lining' }, { outcome: 'contaminated' }, { taken: Date.now() }] },
        { do: 'create', id: id(), kind: 'caution', changes: [{ hazard: 'asbestos' }, { taken: Date.now() }] },
        { do: 'create', id: lent, kind: 'part', changes: [{ name: 'Damper' }] },
        { do: 'create', id: id(), kind: 'outing', changes: [{ of: lent }, { out_for: 'work' }, { who: 'Anvil Row Plating' }, { due: '2020-01-01' }, { taken: 1577836800000 }] },
        { do: 'create', id: counted, kind: 'count', changes: [{ of: place }, { taken: Date.now() }] },
        { do: 'create', id: id(), kind: 'sighting', changes: [{ of: seal }, { place }, { in_count: counted }, { taken: Date.now() }] },
        { do: 'change', ids: [counted], changes: [{ ended: Date.now() }] },
        { do: 'create', id: count, kind: 'count', changes: [{ of: shelf }, { taken: Date.now() }] },
        { do: 'create', id: supplier, kind: 'supplier', changes: [{ name: 'Anvil Row Plating' }, { shipping: pounds(900) }, { free_from: pounds(15000) }, { wait: 12 }, { wait_certainty: 'about' }, { stance: 'pinned' }] },
        { do: 'create', id: id(), kind: 'tier', changes: [{ of: supplier }, { from_mass: 10000 }, { shipping: pounds(2400) }] },
        { do: 'create', id: donor, kind: 'vehicle', changes: [{ name: 'The green one' }, { donor: true }, { cash: pounds(40000) }, { sold: pounds(26000) }, { bought: true }] },
        { do: 'create', id: id(), kind: 'gearing', changes: [{ name: 'As found' }, { swap: 'before' }, { axle_ratio: 42200 }, { gear_ratios: '3.94, 2.30, 1.49, 1.00' }, { tyre: '5.60-13' }, { highest_turns: 4800 }] },
        { do: 'create', id: id(), kind: 'gearing', changes: [{ name: 'Later axle' }, { swap: 'after' }, { axle_ratio: 37000 }, { gear_ratios: '3.94, 2.30, 1.49, 1.00' }, { overdrive: 8000 }, { overdrive_on: 2 }, { tyre: 'ER70-13' }, { circumference: 1862000000 }] },
        { do: 'create', id: id(), kind: 'rule', changes: [{ of: quote }, { relation: 'goes-with' }, { other: donor }, { cash: pounds(1500) }] },
    ] });
    if (!answer.ok) throw new Error(JSON.stringify(answer));
    const head = await desk.ask({ ask: 'head' });
    for (const command of [{ do: 'change', ids: [head.job.id], changes: [{ hour_value: pounds(2000) }] }, { do: 'choose', id: id(), quote }]) {
        const { ok, problems } = await desk.command(command);
        if (!ok) throw new Error(JSON.stringify(problems));
    }
    return { part, judged, photo: view.photos[0].record.id, assembly, joint, place, supplier, count, lent };";

/// A place that is added to the app has to be added here.
fn every_place_is_looked_at(browser: &Browser, places: &[String]) -> anyhow::Result<()> {
    let known = std::fs::read_to_string(asfound_demo::workspace::shell().join("page/places.ts"))?;
    let entries = known.lines().filter(|line| line.contains("load: () => import("));
    let names: Vec<&str> =
        entries.filter_map(|line| line.trim().split(':').next()).map(|name| name.trim_matches('\'')).collect();
    ensure!(names.len() > 15, "page/places.ts reads otherwise now: {names:?}");
    for name in names {
        ensure!(
            places.iter().any(|place| place.split(['/', '?']).next() == Some(name)),
            "the place {name} is not looked at"
        );
    }
    browser.wait_for("main").context("the app")
}

fn nothing_is_found(size: Size) -> anyhow::Result<()> {
    let (visit, places) = furnished(size)?;
    let Visit { browser, .. } = &visit;
    let mut found = Vec::new();
    for dark in [false, true] {
        browser.prefer_dark(dark)?;
        for place in &places {
            browser.go(place)?;
            settled(browser)?;
            look(
                browser,
                &format!(
                    "{size:?}-{}-{}",
                    place.split(['/', '?']).next().unwrap_or(place),
                    if dark { "dark" } else { "light" }
                ),
                &mut found,
            )?;
        }
        for (place, steps, shown, name) in STATES {
            reach_state(browser, &places, place, steps, shown).with_context(|| format!("the state {name}"))?;
            look(browser, &format!("{size:?}-{name}-{}", if dark { "dark" } else { "light" }), &mut found)?;
        }
        for (place, within, opener, dialog) in DIALOGS {
            let place = places.iter().find(|one| one.split('/').next() == Some(place)).context(place)?;
            browser.go(place)?;
            settled(browser)?;
            browser.press_words(within, opener)?;
            browser.wait_for("dialog[open]").with_context(|| format!("the dialog {dialog}"))?;
            browser.run_js(UNFOLD, vec![])?;
            settled(browser)?;
            look(browser, &format!("{size:?}-dialog-{dialog}-{}", if dark { "dark" } else { "light" }), &mut found)?;
            browser.run_js("document.querySelector('dialog[open]').close()", vec![])?;
        }
    }
    ensure!(found.is_empty(), "{}", found.concat());
    Ok(())
}

/// Dialogs: the place, where the button lies, its words, a name.
const DIALOGS: [(&str, &str, &str, &str); 12] = [
    ("teardown", "asf-place-teardown .td-plates", "More", "more"),
    ("assemblies", "asf-place-assemblies", "Add an assembly", "assembly"),
    ("part", "asf-sheet-split", "Split the tag", "split"),
    ("routes", "asf-place-routes", "Another quote", "quote"),
    ("routes", "asf-place-routes", "Change", "quote-changed"),
    ("routes", "asf-place-routes .foot", "Choose", "who"),
    ("suppliers", "asf-place-suppliers .foot", "Add a supplier", "supplier"),
    ("rules", "asf-place-rules .foot", "Add a fit rule", "rule"),
    ("gearing", "asf-place-gearing .foot", "Add a gearing", "gearing"),
    ("joint", "asf-how-tight", "The whole joint", "how-tight"),
    ("part", "asf-deliveries", "It is ordered", "delivery"),
    ("bought", "asf-place-bought .foot", "I bought something", "bought"),
];

/// Whatever is folded away.
const UNFOLD: &str = "for (const folded of document.querySelectorAll('main details')) folded.open = true;";

/// Places after a step or two: the place, what is done there, what is to be seen then, a name.
const STATES: [(&str, &str, &str, &str); 3] = [
    (
        "routes",
        "for (const one of document.querySelectorAll('.route-pick')) if (one.textContent.includes('Kit')) one.click();",
        "asf-kit .kit-cover",
        "routes-kit",
    ),
    (
        "paste",
        "const area = document.querySelector('asf-place-paste textarea');
         area.value = 'tag;part;supplier;price\\n1;;Hare & Wick;20,00\\n;Gaiter for the track-rod end;Hare & Wick;3,10\\n99;;;4,00';
         area.dispatchEvent(new Event('input', { bubbles: true }));
         area.form.requestSubmit();",
        "asf-place-paste .paste-row",
        "paste-rows",
    ),
    (
        "hand-over",
        "document.querySelector('asf-list-out input[value=to-buy]').click();
         document.querySelector('asf-list-out asf-primary button').click();",
        "asf-prepared",
        "list-prepared",
    ),
];

fn reach_state(browser: &Browser, places: &[String], place: &str, steps: &str, shown: &str) -> anyhow::Result<()> {
    let place = places.iter().find(|one| one.split('/').next() == Some(place)).context("the place")?;
    browser.go(place)?;
    settled(browser)?;
    browser.run_js(steps, vec![])?;
    browser.wait_for(shown)?;
    browser.run_js(UNFOLD, vec![])?;
    settled(browser)
}

fn look(browser: &Browser, name: &str, found: &mut Vec<String>) -> anyhow::Result<()> {
    let mut violations = browser.axe(&[])?;
    for violation in violations.iter_mut().filter(|violation| violation.rule == "target-size") {
        violation.places.retain(|place| !is_large_enough_in_the_middle(browser, place).unwrap_or(false));
    }
    violations.retain(|violation| !violation.places.is_empty());
    if !violations.is_empty() {
        let seen = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../.seen"));
        browser.screenshot(&seen.join(format!("axe-{name}.png")))?;
        found.push(format!("\n{name}\n{}", violations.iter().map(ToString::to_string).collect::<String>()));
    }
    Ok(())
}

/// What lies half under the foot of a page, wherever that was scrolled to, is looked at again in the middle.
fn is_large_enough_in_the_middle(browser: &Browser, place: &str) -> anyhow::Result<bool> {
    let selectors =
        serde_json::Deserializer::from_str(place).into_iter::<Vec<String>>().next().context("a selector")??;
    let selector = selectors.first().context("a selector")?;
    browser
        .run_js("document.querySelector(arguments[0]).scrollIntoView({ block: 'center' })", vec![json!(selector)])?;
    settled(browser)?;
    Ok(browser.axe(&[selector])?.is_empty())
}

/// Answers have come, pictures are drawn, nothing moves.
fn settled(browser: &Browser) -> anyhow::Result<()> {
    browser
        .run_async_js(
            "await new Promise((soon) => setTimeout(soon, 120));
         await Promise.all(document.getAnimations().map((one) => one.finished.catch(() => undefined)));
         await new Promise((soon) => requestAnimationFrame(() => requestAnimationFrame(soon)));",
            vec![],
        )
        .map(drop)
}

#[test]
fn chromium_axe_phone() -> anyhow::Result<()> {
    nothing_is_found(Size::Phone)
}

#[test]
fn chromium_axe_desk() -> anyhow::Result<()> {
    nothing_is_found(Size::Desk)
}

/// 320 px wide, and at 200 % type on a phone and on a desk: every place stays within its width.
#[test]
fn chromium_nothing_runs_off_sideways() -> anyhow::Result<()> {
    let (visit, places) = furnished(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    let mut found = Vec::new();
    for (width, type_size) in [(320, 100), (390, 200), (1280, 200)] {
        browser.devtools(
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": width, "height": 844, "deviceScaleFactor": 1, "mobile": true }),
        )?;
        browser.devtools("Emulation.setEmulatedMedia", json!({ "media": "" }))?;
        browser.run_js("document.documentElement.style.fontSize = arguments[0] + '%'", vec![json!(type_size)])?;
        for place in &places {
            browser.go(place)?;
            settled(browser)?;
            too_wide(browser, place, (width, type_size), &mut found)?;
        }
        for (place, steps, shown, name) in STATES {
            reach_state(browser, &places, place, steps, shown).with_context(|| format!("the state {name}"))?;
            too_wide(browser, name, (width, type_size), &mut found)?;
        }
    }
    ensure!(found.is_empty(), "{}", found.concat());
    Ok(())
}

fn too_wide(
    browser: &Browser,
    name: &str,
    (width, type_size): (u32, u32),
    found: &mut Vec<String>,
) -> anyhow::Result<()> {
    let wide = browser.run_js(WIDEST, vec![])?;
    if wide[0].as_f64() > wide[1].as_f64().map(|width| width + 1.0) {
        let seen = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../.seen"));
        let file = name.split(['/', '?']).next().unwrap_or(name);
        browser.screenshot(&seen.join(format!("wide-{width}-{type_size}-{file}.png")))?;
        found.push(format!("\n{name} at {width} px and {type_size} %: {wide}"));
    }
    Ok(())
}

/// How wide the page can be scrolled, how wide it is, and what sticks out.
const WIDEST: &str = "
    const root = document.documentElement;
    const width = root.clientWidth;
    const out = [...document.querySelectorAll('main *')].filter((one) => one.getBoundingClientRect().right > width + 1 && one.getClientRects().length > 0 && !one.closest('asf-undo'));
    out.sort((one, other) => other.getBoundingClientRect().right - one.getBoundingClientRect().right);
    return [Math.max(root.scrollWidth, document.body.scrollWidth), width, out.slice(0, 5).map((one) => `${one.parentElement.className} > ${one.tagName} ${one.className} ${Math.round(one.getBoundingClientRect().right)}`)];";

/// From the first screen to a chosen route with Tab, Enter, Space and letters only; the focus is always to be seen.
#[test]
fn chromium_keyboard_alone() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Desk)?;
    let Visit { browser, .. } = &visit;
    reach(browser, "asf-place-first asf-primary button")?;
    browser.press(Key::Enter)?;
    browser.wait_for("asf-place-first form input")?;
    browser.type_text("The grey saloon")?;
    browser.press(Key::Enter)?;
    browser.wait_for_camera()?;
    reach(browser, "asf-shutter button")?;
    browser.press(Key::Space)?;
    browser.wait_until_ticked(1)?;
    reach(browser, ".td-plate")?;
    browser.press(Key::Enter)?;
    browser.wait_for("dialog[open] asf-more")?;
    reach(browser, "asf-more input[type=text]")?;
    browser.type_text("Wheel bearing")?;
    browser.press(Key::Enter)?;
    browser.press(Key::Escape)?;
    browser.wait_until_gone("dialog[open]")?;
    reach(browser, "asf-index a[href='#/parts']")?;
    browser.press(Key::Enter)?;
    reach(browser, "asf-place-parts a.row")?;
    browser.press(Key::Enter)?;
    reach(browser, "asf-sheet-routes a")?;
    browser.press(Key::Enter)?;
    browser.wait_for("asf-place-routes h1")?;
    for (route, cash) in [("repair-here", "18"), ("buy", "45")] {
        browser.type_text("a")?;
        browser.wait_for("dialog[open] asf-quote-form")?;
        reach(browser, "asf-quote-form asf-choice input")?;
        pick(browser, route)?;
        reach(browser, "asf-quote-form input.field-figure")?;
        browser.type_text(cash)?;
        browser.press(Key::Enter)?;
        browser.wait_until_gone("asf-quote-form")?;
    }
    browser.type_text("c")?;
    browser.wait_for("dialog[open] asf-field input")?;
    reach(browser, "asf-who-dialog input")?;
    browser.type_text("A. Carver")?;
    browser.press(Key::Enter)?;
    browser.wait_for_text("asf-place-routes", "chosen by A. Carver")
}

/// Tab until the focus is there, as anybody would; at every step the focus can be seen.
fn reach(browser: &Browser, selector: &str) -> anyhow::Result<()> {
    browser.wait_for(selector)?;
    for _ in 0..120 {
        let there = browser.run_js(
            "const now = document.activeElement;
             const ring = now && now !== document.body ? getComputedStyle(now) : null;
             const label = now?.closest('label');
             const shown = ring && (ring.outlineStyle !== 'none' || ring.boxShadow !== 'none' || (label && (getComputedStyle(label).outlineStyle !== 'none' || getComputedStyle(label).boxShadow !== 'none')) || (now.closest('.field-box') && getComputedStyle(now.closest('.field-box')).outlineStyle !== 'none'));
             return [Boolean(now?.matches(arguments[0])), now === document.body || Boolean(shown), `${now?.tagName} ${now?.className}`];",
            vec![json!(selector)],
        )?;
        if there[0] == json!(true) {
            ensure!(there[1] == json!(true), "the focus cannot be seen on {}", there[2]);
            return Ok(());
        }
        browser.press(Key::Tab)?;
    }
    anyhow::bail!("{selector} is not reached by Tab")
}

/// Arrow keys in a group of radios until the one with this value is chosen.
fn pick(browser: &Browser, value: &str) -> anyhow::Result<()> {
    for _ in 0..10 {
        let now = browser.run_js("const now = document.activeElement; return [now.value, now.checked]", vec![])?;
        if now == json!([value, true]) {
            return Ok(());
        }
        browser.press(Key::Down)?;
        std::thread::sleep(Duration::from_millis(30));
    }
    anyhow::bail!("{value} is not reached by arrow keys")
}
