//! A cold start with no network: browser, page, workers, record, the first rows on the screen.

use std::time::Duration;

use anyhow::Context;
use asfound_journeys::{Profile, Size};
use serde_json::json;

use crate::figures::{Figures, ms};
use crate::garage::{JOB, browser, parts_with_photos};
use crate::row::Row;
use crate::site::{Site, ask};
use crate::slowed::Slowed;

const STARTS: usize = 12;

/// How much slower the machine is made.
#[derive(Clone, Copy, PartialEq)]
enum Pace {
    Full,
    PageQuarter,
    AllQuarter,
}

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let mut site = Site::start()?;
    let profile = Profile::fresh()?;
    let first = browser(Size::Phone, &profile)?;
    // Two and three in turn: 5,000 photos.
    let weights = parts_with_photos(&site, &first, 2000, &[2, 3], 40_000)?;
    eprintln!("   each photo {weights}");
    let fold = Figures::read(&json!([
        ask(&first, &format!("timedOpen('{JOB}')"))?,
        ask(&first, &format!("timedOpen('{JOB}')"))?,
        ask(&first, &format!("timedOpen('{JOB}')"))?
    ]))?;
    site.open_app(&first, "parts")?;
    first.wait_for_js("__seen.rows?.shown", Duration::from_secs(30))?;
    first.wait_until_kept()?;
    first.quit()?;
    site.app.go_offline()?;
    let full = starts(&site, &profile, Pace::Full)?;
    let page = starts(&site, &profile, Pace::PageQuarter)?;
    let all = starts(&site, &profile, Pace::AllQuarter)?;
    let line = |what: &str, (shown, bare): &(Figures, Figures), limit: f64, target: &str| {
        Row::new(what, format!("p50 {} / p75 {} ms (n = {})", ms(shown.p50()), ms(shown.at(0.75)), shown.count()))
            .beside(format!("bare read of the same rows: {} ms", ms(bare.p50())))
            .target(target, shown.at(0.75) <= limit)
    };
    Ok(vec![
        line("Cold offline start → usable Parts list, 2,000 parts, 5,000 photos", &full, 1500.0, "p75 ≤ 1.5 s"),
        line("… page's main thread at a quarter (the browser's own throttling)", &page, 2500.0, "p75 ≤ 2.5 s"),
        line("… every thread and process of the browser at a quarter", &all, 2500.0, "p75 ≤ 2.5 s"),
        Row::new(
            "… of which loading and folding the record",
            format!("p50 {} ms (n = {})", ms(fold.p50()), fold.count()),
        ),
    ])
}

/// Fresh browser processes over the same profile, each with no server to ask.
fn starts(site: &Site, profile: &Profile, pace: Pace) -> anyhow::Result<(Figures, Figures)> {
    let (mut shown, mut bare) = (Vec::new(), Vec::new());
    for number in 0..=STARTS {
        let browser = browser(Size::Phone, profile)?;
        if pace == Pace::PageQuarter {
            browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 4 }))?;
        }
        let slowed = (pace == Pace::AllQuarter).then(|| Slowed::start(&profile.stored()));
        site.open_app(&browser, "parts")?;
        browser.wait_for_js("__seen.rows?.shown", Duration::from_secs(30))?;
        let at = browser.run_js("return __seen.rows.shown", vec![])?.as_f64().context("no time")?;
        let spent = browser.run_async_js(BARE_READ, vec![])?.as_f64().context("no bare time")?;
        drop(slowed);
        browser.quit()?;
        // The first one reads the files from the disk.
        if number > 0 {
            shown.push(at);
            bare.push(spent);
        }
    }
    Ok((Figures::of(shown)?, Figures::of(bare)?))
}

/// What the app must read before it can show a list, with nothing around it.
const BARE_READ: &str = "const done = (request) => new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
    });
    const from = performance.now();
    const database = await done(indexedDB.open('asfound'));
    const transaction = database.transaction(['chunk', 'tail', 'meta'], 'readonly');
    await Promise.all(['chunk', 'tail', 'meta'].map((store) => done(transaction.objectStore(store).getAll())));
    const spent = performance.now() - from;
    database.close();
    return spent;";
