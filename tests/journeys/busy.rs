//! A heavy question never delays a tick, and is stopped at once.
//!
//! The bound: with a 10-second question running all the while, half of 20 ticks come within 1.5 times the half without it
//! plus 50 ms, and each within a second or twice the slowest without it, all in the same run. (With two cores the question
//! takes one of them; a question that held the record worker would add 10 s to the first tick.) Stopping it takes 200 ms at
//! most.

use anyhow::ensure;
use asfound_journeys::{Browser, Size, Visit};
use serde_json::{Value, json};

const PHOTOS: u64 = 20;
const STOPPED_WITHIN: f64 = 200.0;

/// From the tap to the tick of each of some photos, in milliseconds.
const TICKS: &str = "
    const ticked = () => Number(document.querySelector('.td-count [data-safe]')?.dataset.safe ?? 0);
    const times = [];
    for (let photo = 1; photo <= given[0]; photo += 1) {
        const tapped = performance.now();
        document.querySelector('asf-shutter button').click();
        while (ticked() < photo) await new Promise((soon) => { const { port1, port2 } = new MessageChannel(); port1.onmessage = soon; port2.postMessage(0); });
        times.push(performance.now() - tapped);
        await new Promise((soon) => setTimeout(soon, 30));
    }
    return times;";

/// A question of ten seconds, asked again whenever it ends.
const KEEP_BUSY: &str = "
    window.__busy = { stop: new AbortController(), asked: 0, over: false, failed: null };
    (async () => {
        while (!window.__busy.over) {
            window.__busy.asked += 1;
            await globalThis.desk.reckon({ ask: 'busy', seconds: 10 }, window.__busy.stop.signal);
        }
    })().catch((error) => { window.__busy.failed = String(error); window.__busy.ended = performance.now(); });
    await new Promise((soon) => setTimeout(soon, 500));";

const STOP: &str = "
    window.__busy.over = true;
    const from = performance.now();
    window.__busy.stop.abort();
    while (window.__busy.failed === null && performance.now() - from < 5000) await new Promise((soon) => setTimeout(soon, 1));
    return [window.__busy.failed, performance.now() - from];";

#[test]
fn chromium_ticks_come_while_a_question_runs() -> anyhow::Result<()> {
    let visit = Visit::with_faults(Size::Phone)?;
    let Visit { browser, .. } = &visit;
    browser.start_job("The grey saloon")?;
    browser.record_part(2)?;
    browser.next_tag()?;
    let without = ticks(browser)?;
    browser.next_tag()?;
    browser.run_async_js(KEEP_BUSY, vec![])?;
    let with = ticks(browser)?;
    let state = browser.run_js("return [window.__busy.asked, window.__busy.failed]", vec![])?;
    ensure!(state[1].is_null() && state[0].as_u64() >= Some(1), "the question did not run all the while: {state}");

    println!(
        "tap to tick, half of {PHOTOS}: {:.0} ms without, {:.0} ms with; slowest {:.0} and {:.0}",
        without.half, with.half, without.slowest, with.slowest
    );
    ensure!(with.half <= 1.5 * without.half + 50.0, "half of the ticks: {with:?}, without {without:?}");
    ensure!(with.slowest <= (2.0 * without.slowest).max(1000.0), "the slowest tick: {with:?}, without {without:?}");

    let stopped = browser.run_async_js(STOP, vec![])?;
    ensure!(stopped[0].as_str().is_some_and(|why| why.contains("Abort")), "it ended otherwise: {stopped}");
    ensure!(stopped[1].as_f64() <= Some(STOPPED_WITHIN), "stopping took {stopped}");
    let again = browser.run_async_js("return await globalThis.desk.reckon({ ask: 'busy', seconds: 0 })", vec![])?;
    ensure!(again != Value::String(String::new()), "no question is answered any more");
    Ok(())
}

#[derive(Debug)]
struct Ticks {
    half: f64,
    slowest: f64,
}

fn ticks(browser: &Browser) -> anyhow::Result<Ticks> {
    let mut times: Vec<f64> = serde_json::from_value(browser.run_async_js(TICKS, vec![json!(PHOTOS)])?)?;
    times.sort_by(f64::total_cmp);
    Ok(Ticks { half: times[times.len() / 2], slowest: times[times.len() - 1] })
}
