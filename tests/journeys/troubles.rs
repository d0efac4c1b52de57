//! What the desk tells of trouble, kept in the order it was told.

use asfound_journeys::Browser;

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
