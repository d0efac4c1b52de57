//! Faults on purpose away from the strip: on the part sheet, before an assembly is slackened, among the routes. Each is in
//! sight within two seconds; nothing says that it is saved; what was typed stays; once the fault is over a second try stores it.

use std::time::{Duration, Instant};

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Key, Size, Visit};
use serde_json::{Value, json};

use crate::picture::picture;
use crate::troubles::is_told;

/// The last one mends itself: what waits is stored without a second try.
const FAULTS: [&str; 3] = ["quota-exceeded", "transaction-aborted", "connection-lost"];

/// Something that is stored from one screen.
struct Place<'a> {
    browser: &'a Browser,
    /// What is said once it is stored, in the bar or to a reader of the screen.
    saved: &'a str,
    /// Does it for the first time.
    act: &'a dyn Fn(&str) -> anyhow::Result<()>,
    /// Whatever must be so while it is not stored.
    holds: &'a dyn Fn(&str) -> anyhow::Result<()>,
    again: &'a dyn Fn() -> anyhow::Result<()>,
    is_stored: &'a dyn Fn(&str) -> anyhow::Result<bool>,
}

impl Place<'_> {
    fn stands_each_fault(&self) -> anyhow::Result<()> {
        FAULTS.iter().try_for_each(|fault| self.stands(fault).with_context(|| format!("with {fault}")))
    }

    fn stands(&self, fault: &str) -> anyhow::Result<()> {
        let browser = self.browser;
        let before = browser.stored_keys()?.count("tail");
        browser.run_js(WATCH, vec![json!(self.saved)])?;
        browser.fault(fault, true)?;
        (self.act)(fault)?;
        let told = is_told(browser, fault, "__since")?;
        ensure!(told[1].contains(|figure: char| figure.is_ascii_digit()), "it does not say how much is safe: {told:?}");
        (self.holds)(fault)?;
        let lied = browser.run_js("return [window.__lies, window.__stamps()]", vec![])?;
        ensure!(lied[0] == json!([]) && lied[1] == json!(0), "it is said to be saved: {lied}");
        let now = browser.stored_keys()?.count("tail");
        ensure!(now == before, "{now} entries lie there, {before} before");
        browser.fault(fault, false)?;
        if fault != "connection-lost" {
            (self.again)().context("the second try")?;
        }
        eventually(|| (self.is_stored)(fault)).context("it is not stored after all")?;
        browser.wait_until_gone("asf-message[data-trouble]")?;
        browser.wait_until_gone("asf-unsaved asf-message")
    }
}

/// Keeps whatever says from now on that it is saved; how many ticks there are more; and the moment of the last tap or key.
const WATCH: &str = "
    window.__watch?.disconnect();
    window.__lies = [];
    const ticks = () => document.querySelectorAll('asf-place-before asf-stamp[state=kept], asf-part-sheet asf-stamp[state=kept]').length;
    const before = ticks();
    window.__stamps = () => ticks() - before;
    const said = () => [...document.querySelectorAll('[role=status]')].map((one) => one.textContent.trim());
    const old = new Set(said());
    window.__watch = new MutationObserver(() => {
        const now = said();
        for (const words of now) if (words.includes(arguments[0]) && !old.has(words)) window.__lies.push(words);
        for (const words of old) if (!now.includes(words)) old.delete(words);
    });
    window.__watch.observe(document.body, { subtree: true, childList: true, characterData: true });
    const touched = () => { window.__since = performance.now(); };
    if (window.__touched !== true) for (const event of ['click', 'keydown', 'change']) addEventListener(event, touched, true);
    window.__touched = true;";

fn eventually(is_so: impl Fn() -> anyhow::Result<bool>) -> anyhow::Result<()> {
    let start = Instant::now();
    while !is_so()? {
        ensure!(start.elapsed() < Duration::from_secs(20), "it never was so");
        std::thread::sleep(Duration::from_millis(50));
    }
    Ok(())
}

/// The sheet of a part with one photo.
fn at_the_sheet() -> anyhow::Result<Visit> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.go("parts")?;
    browser.click("asf-place-parts a.row")?;
    browser.wait_for("asf-part-sheet asf-sheet-named form, asf-part-sheet asf-sheet-named asf-leader")?;
    Ok(visit)
}

fn part(browser: &Browser) -> anyhow::Result<Value> {
    let hash = browser.run_js("return location.hash.split('/')[2]", vec![])?;
    browser.view(&json!({ "ask": "part", "part": hash }))
}

#[test]
fn chromium_a_name_on_the_sheet() -> anyhow::Result<()> {
    let visit = at_the_sheet()?;
    let browser = &visit.browser;
    let field = "asf-sheet-named form input";
    Place {
        browser,
        saved: "put down",
        act: &|fault| {
            browser.press_words("asf-sheet-named", "Name")?;
            browser.run_js(&format!("document.querySelector('{field}').select()"), vec![])?;
            browser.type_into(field, &format!("Hub after {fault}"))?;
            browser.press(Key::Enter)
        },
        holds: &|fault| {
            let typed = browser.run_js(&format!("return document.querySelector('{field}')?.value"), vec![])?;
            ensure!(typed == json!(format!("Hub after {fault}")), "the field holds {typed}");
            Ok(())
        },
        again: &|| browser.press_words("asf-sheet-named form", "Put down"),
        is_stored: &|fault| Ok(part(browser)?["line"]["name"] == json!(format!("Hub after {fault}"))),
    }
    .stands_each_fault()
}

/// How many are chosen at once: the next one ends the trouble with a transaction that was taken back.
const FILES: [u8; 3] = [2, 1, 2];

#[test]
fn chromium_photos_on_the_sheet() -> anyhow::Result<()> {
    let visit = at_the_sheet()?;
    let browser = &visit.browser;
    let number = |fault: &str| FAULTS.iter().position(|one| *one == fault).unwrap_or(0);
    let chosen = |until: usize| FILES[..=until].iter().map(|files| usize::from(*files)).sum::<usize>();
    Place {
        browser,
        saved: "added",
        act: &|fault| {
            let shade = u8::try_from(number(fault) * 20)?;
            let files = (0..FILES[number(fault)]).map(|file| picture(shade + file)).collect::<Result<Vec<_>, _>>()?;
            let paths: Vec<_> = files.iter().map(|file| file.path().to_string_lossy().into_owned()).collect();
            browser.type_into("asf-sheet-photos input[type=file]", &paths.join("\n"))?;
            // Read as soon as they are given: they may be gone a moment later.
            std::thread::sleep(Duration::from_millis(300));
            Ok(())
        },
        holds: &|fault| {
            let unsaved = match fault {
                "quota-exceeded" => "2\u{a0}photos",
                "transaction-aborted" => "1\u{a0}photo",
                _ => return Ok(()),
            };
            browser.wait_for_text("asf-unsaved", unsaved)
        },
        again: &|| browser.press_words("asf-unsaved", "Save again"),
        is_stored: &|fault| Ok(part(browser)?["photos"].as_array().map(Vec::len) == Some(1 + chosen(number(fault)))),
    }
    .stands_each_fault()?;
    let stored = browser.stored()?;
    ensure!(stored.is_sound() && stored.photos.len() == 1 + chosen(2), "{stored:?}");
    Ok(())
}

#[test]
fn chromium_photos_before_it_is_slackened() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let browser = &visit.browser;
    browser.start_job("The grey saloon")?;
    // So that there is something that is safe.
    browser.record_part(1)?;
    browser.go("assemblies")?;
    browser.press_words("asf-place-assemblies", "Add an assembly")?;
    browser.write_into("asf-assembly-form", "Name", "Front hub")?;
    browser.press_words("asf-assembly-form", "Make it")?;
    browser.press_words("[data-check=photos]", "Photo for Photos all round")?;
    browser.wait_for("asf-place-before .sight-live")?;
    let of = |fault: &str| FAULTS.iter().position(|one| *one == fault).unwrap_or(0);
    Place {
        browser,
        saved: "is safe",
        act: &|_| browser.press_words("asf-place-before .pair", "Photo for Photos all round"),
        holds: &|fault| match fault {
            "connection-lost" => Ok(()),
            _ => browser.wait_for_text("asf-unsaved", "1\u{a0}photo"),
        },
        again: &|| browser.press_words("asf-unsaved", "Save again"),
        is_stored: &|fault| {
            let view = browser.view(&json!({ "ask": "assemblies" }))?;
            let line = &view["assemblies"][0];
            let answers = line["before"].as_array().map_or(0, Vec::len);
            ensure!(answers <= 1, "the check is answered {answers} times");
            Ok(answers == 1 && line["photos"].as_array().map(Vec::len) == Some(of(fault) + 1))
        },
    }
    .stands_each_fault()
}

#[test]
fn chromium_words_before_it_is_slackened() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let browser = &visit.browser;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.go("assemblies")?;
    browser.press_words("asf-place-assemblies", "Add an assembly")?;
    browser.write_into("asf-assembly-form", "Name", "Front hub")?;
    browser.press_words("asf-assembly-form", "Make it")?;
    browser.wait_for("[data-check=gaps] input")?;
    let field = "[data-check=gaps] input";
    let typed = || browser.run_js(&format!("return document.querySelector('{field}').value"), vec![]);
    Place {
        browser,
        saved: "Gaps: kept",
        act: &|fault| browser.replace_in(field, &format!("4 mm after {fault}\n")),
        holds: &|fault| {
            let typed = typed()?;
            ensure!(typed == json!(format!("4 mm after {fault}")), "the field holds {typed}");
            Ok(())
        },
        // Nothing is typed anew: Enter, or leaving the field, is a second try.
        again: &|| browser.type_into(field, "\n"),
        is_stored: &|fault| {
            let view = browser.view(&json!({ "ask": "assemblies" }))?;
            let before = view["assemblies"][0]["before"].clone();
            ensure!(before.as_array().is_none_or(|all| all.len() <= 1), "the check is answered twice: {before}");
            Ok(before[0]["values"]["text"] == json!(format!("4 mm after {fault}")))
        },
    }
    .stands_each_fault()
}

/// The form lies over the page as a dialog: what is told must be in sight over it.
#[test]
fn chromium_a_quote() -> anyhow::Result<()> {
    let visit = at_the_sheet()?;
    let browser = &visit.browser;
    browser.press_words("asf-sheet-routes", "Routes")?;
    let of = |fault: &str| FAULTS.iter().position(|one| *one == fault).unwrap_or(0);
    let routes = browser.run_js("return location.hash.split('/')[2]", vec![])?;
    Place {
        browser,
        saved: "put down",
        act: &|fault| {
            browser.press_words("asf-place-routes", if of(fault) == 0 { "Add a quote" } else { "Another quote" })?;
            browser.press_words("asf-quote-form", "Buy")?;
            browser.write_into("asf-quote-form", "Cash", &format!("{}5", of(fault) + 4))?;
            browser.press_words("asf-quote-form", "Put the quote down")
        },
        holds: &|fault| {
            let cash = browser.value_of("asf-quote-form", "Cash")?;
            ensure!(cash == format!("{}5", of(fault) + 4), "the field holds {cash}");
            Ok(())
        },
        again: &|| browser.press_words("asf-quote-form", "Put the quote down"),
        is_stored: &|fault| {
            let quotes = browser.view(&json!({ "ask": "cost", "part": routes }))?["quotes"].clone();
            let cash = json!((i32::try_from(of(fault))? + 4) * 1000 + 500);
            let all = quotes.as_array().cloned().unwrap_or_default();
            Ok(all.len() == of(fault) + 1 && all.iter().any(|quote| quote["cash"]["minor"] == cash))
        },
    }
    .stands_each_fault()
}
