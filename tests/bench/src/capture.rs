//! From the tap to the tick, and from one shot to the next.

use std::time::{Duration, Instant};

use anyhow::Context;
use asfound_journeys::{Browser, Profile, Size};
use serde_json::{Value, json};

use crate::figures::{Figures, ms};
use crate::garage::{browser, empty_job};
use crate::row::Row;
use crate::site::{Site, ask};

const TAPS: usize = 60;
const SOON: Duration = Duration::from_secs(10);

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let site = Site::start()?;
    let profile = Profile::fresh()?;
    let browser = browser(Size::Phone, &profile)?;
    empty_job(&site, &browser, "teardown")?;
    site.open_app(&browser, "teardown")?;
    browser.wait_for_js("document.querySelector('.sight-live')", SOON)?;
    let opened = browser.run_js("return performance.now()", vec![])?.as_f64().unwrap_or_default();
    let mut rows = vec![Row::new("Teardown with a live camera, from the address", format!("{} ms", ms(opened)))];
    let (taps, bytes) = taps(&browser)?;
    rows.extend(shots(&browser)?);
    drop(browser);
    rows.splice(1..1, beside_bare(&site, &taps, bytes)?);
    Ok(rows)
}

/// What one series of taps came to.
struct Taps {
    acknowledged: Figures,
    ticked: Figures,
    encoded: Figures,
    command: Figures,
}

/// One tap after the other, each when the one before has its tick.
fn taps(browser: &Browser) -> anyhow::Result<(Taps, u64)> {
    let at = shutter(browser)?;
    for number in 1..=TAPS + 3 {
        tap(browser, at)?;
        browser.wait_for_js(&format!("__seen.ticks.length >= {number}"), SOON)?;
    }
    let seen = browser.run_js("return __seen", vec![])?;
    let list = |name: &str| seen[name].as_array().cloned().with_context(|| format!("no {name}"));
    let (ups, ticks, blinks, commands) = (list("ups")?, list("ticks")?, list("blinks")?, list("commands")?);
    let counts = [&ups, &ticks, &blinks, &commands].map(Vec::len);
    anyhow::ensure!(counts == [TAPS + 3; 4], "taps, ticks, blinks and commands do not match: {counts:?}");
    // The first three warm up.
    let of = |pick: &dyn Fn(usize) -> f64| Figures::of((3..ups.len()).map(pick).collect());
    let number = |value: &Value| value.as_f64().unwrap_or(f64::NAN);
    let taps = Taps {
        acknowledged: of(&|i| number(&blinks[i]) - number(&ups[i]))?,
        ticked: of(&|i| number(&ticks[i]) - number(&ups[i]))?,
        encoded: of(&|i| number(&commands[i]["sent"]) - number(&ups[i]))?,
        command: of(&|i| number(&commands[i]["answered"]) - number(&commands[i]["sent"]))?,
    };
    Ok((taps, commands[3]["bytes"].as_u64().unwrap_or_default()))
}

/// The bare transaction with the same bytes, and the record's command without the app around it.
fn beside_bare(site: &Site, taps: &Taps, bytes: u64) -> anyhow::Result<Vec<Row>> {
    let profile = Profile::fresh()?;
    let browser = browser(Size::Phone, &profile)?;
    empty_job(site, &browser, "teardown")?;
    let bare = Figures::read(&ask(&browser, &format!("barePuts({bytes}, {TAPS})"))?)?;
    let weight =
        |bytes: f64| if bytes < 1e5 { format!("{:.0} kB", bytes / 1e3) } else { format!("{:.1} MB", bytes / 1e6) };
    let ratio = |ours: &Figures, bare: &Figures| ours.p50() / bare.p50();
    let mut rows = vec![
        Row::new("Tap → the sight darkens, p50 / p95", taps.acknowledged.said())
            .target("p95 ≤ 100 ms", taps.acknowledged.p95() <= 100.0),
        Row::new(format!("Tap → tick on the screen ({} of the fake camera)", weight(bytes as f64)), taps.ticked.said())
            .beside(format!("bare strict transaction: {}; ours {:.1} ×", bare.said(), ratio(&taps.ticked, &bare)))
            .target("≤ 250 / 600 ms; ≤ 1.5 × bare", met(&taps.ticked, &bare)),
        Row::new("… of which the camera's still and its encoding", taps.encoded.said()),
        Row::new("… of which command → answer (hash, apply, store, read back)", taps.command.said())
            .beside(format!("bare strict transaction: {}; ours {:.1} ×", bare.said(), ratio(&taps.command, &bare)))
            .target("≤ 1.5 × bare", ratio(&taps.command, &bare) <= 1.5),
    ];
    for kind in ["small", "12"] {
        let times = ask(&browser, &format!("timedPhotosBeside(25, '{kind}')"))?;
        let (ours, bare) = (Figures::read(&times["ours"])?, Figures::read(&times["bare"])?);
        let bytes = times["bytes"].as_f64().unwrap_or_default();
        rows.push(
            Row::new(format!("Command → answer without the app around it, a photo of {}", weight(bytes)), ours.said())
                .beside(format!("bare strict transaction: {}; ours {:.1} ×", bare.said(), ratio(&ours, &bare)))
                .target("≤ 250 / 600 ms; ≤ 1.5 × bare", met(&ours, &bare)),
        );
    }
    Ok(rows)
}

fn met(ours: &Figures, bare: &Figures) -> bool {
    ours.p50() <= 250.0 && ours.p95() <= 600.0 && ours.p50() / bare.p50() <= 1.5
}

/// Thirty shots as fast as the app takes them: none may be lost.
fn shots(browser: &Browser) -> anyhow::Result<Vec<Row>> {
    let at = shutter(browser)?;
    browser.run_js("__seen.ups.length = 0; __seen.before = __seen.commands.length", vec![])?;
    let start = Instant::now();
    for number in 1..=30 {
        browser.wait_for_js("!document.querySelector('.shutter').disabled", SOON)?;
        tap(browser, at)?;
        browser.wait_for_js(&format!("__seen.ups.length >= {number}"), SOON)?;
    }
    let kept = "__seen.commands.length - __seen.before === 30 && __seen.commands.every((one) => one.answered)";
    browser.wait_for_js(kept, Duration::from_secs(30))?;
    let spent = start.elapsed().as_secs_f64();
    let ups = browser.run_js("return __seen.ups", vec![])?;
    let ups: Vec<f64> = ups.as_array().context("taps")?.iter().filter_map(Value::as_f64).collect();
    let gaps = Figures::of(ups.windows(2).map(|pair| pair[1] - pair[0]).collect())?;
    Ok(vec![
        Row::new("Shot to shot, 30 in a row, as soon as the shutter is free", gaps.said())
            .target("p95 ≤ 400 ms", gaps.p95() <= 400.0),
        Row::new("30 shots, all stored", format!("{spent:.1} s, 30 of 30")).target("≤ 30 s, 0 lost", spent <= 30.0),
    ])
}

fn shutter(browser: &Browser) -> anyhow::Result<(f64, f64)> {
    let body = "const { x, y, width, height } = document.querySelector('.shutter').getBoundingClientRect();
        return [x + width / 2, y + height / 2]";
    let at = browser.run_js(body, vec![])?;
    Ok((at[0].as_f64().context("x")?, at[1].as_f64().context("y")?))
}

/// A finger, by the browser's own input.
fn tap(browser: &Browser, (x, y): (f64, f64)) -> anyhow::Result<()> {
    let touch = |kind: &str, points: Value| json!({ "type": kind, "touchPoints": points });
    browser.devtools("Input.dispatchTouchEvent", touch("touchStart", json!([{ "x": x, "y": y }])))?;
    browser.devtools("Input.dispatchTouchEvent", touch("touchEnd", json!([]))).map(drop)
}
