//! Jobs of a size in a browser's database, and the browser at the size asked for.

use asfound_journeys::{Browser, Engine, Profile, Size};
use serde_json::{Value, json};

use crate::site::{Site, ask};

/// The job that everything here is measured in.
pub(crate) const JOB: &str = "be000000000000000000000000000001";

pub(crate) fn browser(size: Size, profile: &Profile) -> anyhow::Result<Browser> {
    let browser = Browser::start(Engine::Chromium, size, profile)?;
    // Peers say what they like on the console: this measures them.
    browser.expect_complaints("");
    Ok(browser)
}

/// An empty job in the app's database; the app will come up in it at a place.
pub(crate) fn empty_job(site: &Site, browser: &Browser, place: &str) -> anyhow::Result<()> {
    site.open_bench(browser)?;
    ask(browser, "startRecord('asfound')")?;
    ask(browser, &format!("newJob({}, {})", json!(JOB), json!(format!("#/{place}")))).map(drop)
}

/// Parts without photos.
pub(crate) fn parts_alone(site: &Site, browser: &Browser, count: usize) -> anyhow::Result<()> {
    empty_job(site, browser, "parts")?;
    ask(browser, "fillGround()")?;
    for from in (0..count).step_by(500) {
        ask(browser, &format!("fillParts({count}, {from}, {})", (from + 500).min(count)))?;
    }
    ask(browser, "settle()").map(drop)
}

/// Parts with photos of a weight: `each` photos in turn, as `[2, 3]`.
pub(crate) fn parts_with_photos(
    site: &Site,
    browser: &Browser,
    count: usize,
    each: &[usize],
    bytes: usize,
) -> anyhow::Result<Value> {
    empty_job(site, browser, "parts")?;
    ask(browser, "fillGround()")?;
    let mut weights = Value::Null;
    for from in (0..count).step_by(50) {
        let to = (from + 50).min(count);
        weights = ask(browser, &format!("fillWithPhotos({count}, {from}, {to}, {}, {bytes})", json!(each)))?;
        if from % 500 == 0 {
            eprintln!("   {from} of {count} parts");
        }
    }
    ask(browser, "settle()")?;
    Ok(weights)
}
