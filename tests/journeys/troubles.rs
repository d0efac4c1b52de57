//! What is told of trouble: by the desk, and to the person.

use std::time::Duration;

use anyhow::ensure;
use asfound_journeys::Browser;
use serde_json::json;

const VISIBLE_WITHIN: Duration = Duration::from_secs(2);

/// Keeps every trouble from now on; `null` is the end of one.
pub(crate) fn listen(browser: &Browser) -> anyhow::Result<()> {
    let keep = "window.__troubles = [];
        globalThis.desk.addEventListener('trouble', ({ detail }) => window.__troubles.push(String(detail?.code ?? null)));";
    browser.run_js(keep, vec![]).map(drop)
}

/// What was told since.
pub(crate) fn troubles(browser: &Browser) -> anyhow::Result<Vec<String>> {
    Ok(serde_json::from_value(browser.run_js("return window.__troubles", vec![])?)?)
}

/// Waits until a message says what happened, what is safe and what to do, all of it in sight: within the window, under nothing
/// else. Timed in the page, from `window[since]` on.
const WAIT: &str = "
    const [code, since] = given;
    const inSight = (element) => {
        const { left, top, width, height } = element.getBoundingClientRect();
        const [x, y] = [left + width / 2, top + height / 2];
        return width > 0 && height > 0 && Boolean(document.elementFromPoint(x, y)?.closest('asf-message')?.contains(element));
    };
    const texts = (message) => ['happened', 'safe', 'todo'].map((part) => message.querySelector(`.message-${part}`));
    const all = () => [...document.querySelectorAll(`asf-message[data-trouble='${code}']`)].map(texts);
    const told = () => all().find((parts) => parts.every((part) => part && inSight(part)));
    while (!told() && performance.now() - window[since] < 6000) await new Promise((soon) => setTimeout(soon, 5));
    return { took: performance.now() - window[since], words: told()?.map((part) => part.textContent.trim()) ?? null, there: all().length };";

/// The trouble is visible in time, from the moment kept in `window[since]` on; answers with its words.
pub(crate) fn is_told(browser: &Browser, code: &str, since: &str) -> anyhow::Result<Vec<String>> {
    let told = browser.run_async_js(WAIT, vec![json!(code), json!(since)])?;
    let took = told["took"].as_f64().unwrap_or(f64::MAX);
    let words: Option<Vec<String>> = serde_json::from_value(told["words"].clone())?;
    let Some(words) = words else {
        anyhow::bail!("{code} is not in sight ({} messages): {}", told["there"], browser.text("body")?)
    };
    ensure!(took <= VISIBLE_WITHIN.as_secs_f64() * 1000.0, "{code} took {took:.0} ms: {words:?}");
    ensure!(words.iter().all(|words| words.len() > 10), "{code} does not say all: {words:?}");
    println!("{code}: told after {took:.0} ms");
    Ok(words)
}
