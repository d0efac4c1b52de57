//! The smaller pictures of a 12 MP photo.

use std::time::Duration;

use asfound_journeys::{Profile, Size};
use serde_json::{Value, json};

use crate::figures::Figures;
use crate::garage::{browser, empty_job};
use crate::row::Row;
use crate::site::{Site, ask};

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let site = Site::start()?;
    let profile = Profile::fresh()?;
    let browser = browser(Size::Phone, &profile)?;
    empty_job(&site, &browser, "teardown")?;
    ask(&browser, "twelveMegapixels().then(() => 0)")?;
    let ours = ask(&browser, "derives('ours', 20)")?;
    let bare = ask(&browser, "derives('bare', 20)")?;
    let megabytes = ours["bytes"].as_f64().unwrap_or_default() / 1e6;
    let (spent, bare) = (Figures::read(&ours["spent"])?, Figures::read(&bare["spent"])?);
    let long = in_the_app(&site, &browser)?;
    Ok(vec![
        Row::new(format!("12 MP ({megabytes:.1} MB) → 2560 px and thumb, in the worker, p50 / p95"), spent.said())
            .beside(format!("one decode, drawing, encoding: {}; ours {:.1} ×", bare.said(), spent.p50() / bare.p50()))
            .target("p95 ≤ 1.2 s", spent.p95() <= 1200.0),
        Row::new("Long tasks of the app's main thread while it derives three of them", said(&long))
            .target("none > 50 ms", long.is_empty()),
    ])
}

/// Three such photos as files into the app; the long tasks from the last tick to the last smaller picture.
fn in_the_app(site: &Site, browser: &asfound_journeys::Browser) -> anyhow::Result<Vec<f64>> {
    // They are handed over through a cache, since a page cannot keep files for another.
    let keep = "const photos = await bench.photosOf(3, '12');
        const cache = await caches.open('bench');
        for (const [i, photo] of photos.entries()) await cache.put(`/bench-photo-${i}`, new Response(photo));";
    browser.run_async_js(keep, vec![])?;
    site.open_app(browser, "teardown")?;
    browser.wait_for(".td-files")?;
    let hand = "const files = new DataTransfer();
        for (const i of [0, 1, 2]) {
            const photo = await (await caches.match(`/bench-photo-${i}`)).arrayBuffer();
            files.items.add(new File([photo], `${i}.jpg`, { type: 'image/jpeg' }));
        }
        const field = document.querySelector('.td-files');
        field.files = files.files;
        field.dispatchEvent(new Event('change', { bubbles: true }));";
    browser.run_async_js(hand, vec![])?;
    let stored = "__seen.commands.length >= 3 && __seen.commands.every((one) => one.answered)";
    browser.wait_for_js(stored, Duration::from_secs(30))?;
    browser.wait_for_js("__seen.derived.length >= 3", Duration::from_secs(30))?;
    // The pictures that arrive are drawn in this time, too.
    std::thread::sleep(Duration::from_millis(500));
    let long = browser.run_js(
        "const from = Math.max(...__seen.commands.map((one) => one.answered)) + 300;
         return __seen.long.filter(([start]) => start > from).map(([, duration]) => duration)",
        vec![],
    )?;
    Ok(long.as_array().unwrap_or(&vec![]).iter().filter_map(Value::as_f64).collect())
}

fn said(long: &[f64]) -> String {
    match long.iter().copied().reduce(f64::max) {
        None => "none".to_owned(),
        Some(most) => format!("{}, the longest {most:.0} ms", json!(long.len())),
    }
}
