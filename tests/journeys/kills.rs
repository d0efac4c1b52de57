//! The browser is killed at random moments, with all its processes, while photos are taken and words typed: whatever had
//! its tick is there afterwards, and every word up to the last stroke that was seen in the field.
//!
//! `ASFOUND_SEED` repeats a run, `ASFOUND_KILLS` says how many kills (20 here, 200 in the bench).

use std::thread;
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{App, Browser, Engine, Profile, Size};
use serde::Deserialize;
use serde_json::json;

/// What the page showed, told by the page itself before each of its acts.
#[derive(Debug, Default, Clone, Deserialize)]
struct Shown {
    /// Ticks by the id of the part in hand.
    ticks: std::collections::BTreeMap<String, u64>,
    /// What stands in the field, and of which part.
    typed: Option<(String, String)>,
}

/// The page works by itself: a photo, a letter, a photo, now and then the next tag; after each look it tells what it shows.
/// The look comes before the next act, so nothing is told that was not on the screen.
const WORK: &str = "
    const [seed] = arguments;
    let state = seed;
    const chance = () => { state = (Math.imul(state, 1664525) + 1013904223) >>> 0; return state / 4294967296; };
    const place = document.querySelector('asf-place-teardown');
    const bench = place.bench;
    window.__ticks = {};
    window.__typed = null;
    const look = () => {
        const count = document.querySelector('.td-count [data-safe]');
        const strip = document.querySelector('asf-strip');
        if (count && strip.tag === String(bench.tag).padStart(4, '0') && bench.part) {
            const shown = document.querySelectorAll('asf-strip asf-stamp[state=kept]').length;
            window.__ticks[bench.part] = Math.max(window.__ticks[bench.part] ?? 0, Math.min(Number(count.dataset.safe), shown));
        }
        const field = document.querySelector('asf-more input');
        if (field?.value && bench.part) window.__typed = [bench.part, field.value];
    };
    const act = () => {
        look();
        const dialog = document.querySelector('asf-place-teardown dialog[open]');
        const dice = chance();
        if (dialog) {
            const field = document.querySelector('asf-more input');
            if (field && dice < 0.9) {
                field.value += 'abcdefghijklmnopqrstuvwxyz '[Math.floor(chance() * 27)];
                field.dispatchEvent(new InputEvent('input', { bubbles: true }));
            } else if (dice > 0.97) dialog.close();
        } else if (dice < 0.75) document.querySelector('asf-shutter button').click();
        else if (dice < 0.9) document.querySelector('.td-plate').click();
        else if (document.querySelectorAll('asf-strip asf-stamp[state=kept]').length > 0) document.querySelector('asf-next-tag button').click();
        setTimeout(act, 20 + chance() * 60);
    };
    act();";

const TOLD: &str = "return { ticks: window.__ticks ?? {}, typed: window.__typed ?? null }";

#[test]
fn chromium_nothing_with_a_tick_is_lost() -> anyhow::Result<()> {
    let kills = setting("ASFOUND_KILLS").unwrap_or(20);
    let seed = setting("ASFOUND_SEED").unwrap_or_else(random);
    println!("ASFOUND_SEED={seed} ASFOUND_KILLS={kills}");
    let mut chance = Chance(seed);
    let app = App::start()?;
    let profile = Profile::fresh()?;
    let mut run =
        Run { address: format!("{}?faults#/teardown", app.address()), profile: &profile, ticks: 0, letters: 0 };
    run.begin(app.address())?;
    for kill in 0..kills {
        let moment = Duration::from_millis(150 + chance.below(1850));
        run.kill_once(moment, chance.below(u64::from(u32::MAX)))
            .with_context(|| format!("kill {kill} after {moment:?}, ASFOUND_SEED={seed}"))?;
    }
    println!("{kills} kills: {} ticks and {} letters were shown, all there", run.ticks, run.letters);
    ensure!(run.ticks >= kills / 2 && run.letters > 0, "hardly anything was recorded between the kills");
    Ok(())
}

struct Run<'a> {
    address: String,
    profile: &'a Profile,
    ticks: u64,
    letters: usize,
}

impl Run<'_> {
    /// A job with one part.
    fn begin(&self, address: &str) -> anyhow::Result<()> {
        let browser = Browser::start(Engine::Chromium, Size::Phone, self.profile)?;
        browser.open(address)?;
        browser.start_job("The grey saloon")?;
        browser.record_part(1)?;
        browser.quit()
    }

    fn kill_once(&mut self, moment: Duration, seed: u64) -> anyhow::Result<()> {
        let browser = Browser::start(Engine::Chromium, Size::Phone, self.profile)?;
        browser.open(&self.address)?;
        browser.wait_for_camera()?;
        // What was being typed when it was killed stands open again; it is closed as a person would.
        browser.run_js("document.querySelector('asf-place-teardown dialog[open]')?.close()", vec![])?;
        browser.run_js(WORK, vec![json!(seed)])?;
        // One kill in three falls anywhere from the start; the others once something was ticked, however slow the machine.
        // A wait that ends without a tick is a kill anywhere, too.
        if !seed.is_multiple_of(3) {
            let ticked = "Object.values(window.__ticks ?? {}).some((ticks) => ticks > 0)";
            browser.wait_for_js(ticked, Duration::from_secs(8)).ok();
        }
        let shown = watched_until_killed(browser, moment)?;
        let browser = Browser::start(Engine::Chromium, Size::Phone, self.profile)?;
        browser.open(&self.address)?;
        self.all_there(&browser, &shown)?;
        browser.quit()
    }

    fn all_there(&mut self, browser: &Browser, shown: &Shown) -> anyhow::Result<()> {
        browser.wait_for_js(
            "globalThis.desk?.current() && document.querySelector('asf-place-teardown .td-tag')",
            Duration::from_secs(20),
        )?;
        for (part, ticks) in &shown.ticks {
            let view = browser.view(&json!({ "ask": "part", "part": part }))?;
            let photos = view["photos"].as_array().map_or(0, Vec::len) as u64;
            ensure!(photos >= *ticks, "part {part} showed {ticks} ticks and has {photos} photos");
            self.ticks += ticks;
        }
        let stored = browser.stored_keys()?;
        let named = browser.view(&json!({ "ask": "head" }))?["photos"].clone();
        ensure!(
            stored.count("photo") as u64 >= named.as_u64().unwrap_or(u64::MAX).min(1),
            "{named} photos, {} lie there",
            stored.count("photo")
        );
        if let Some((part, typed)) = &shown.typed {
            let kept = "return [(JSON.parse(localStorage.getItem('asfound.typing') ?? 'null')?.value ?? []).find(([key]) => key === `name:${arguments[0]}`)?.[1] ?? null]";
            let kept = browser.run_js(kept, vec![json!(part)])?[0].as_str().unwrap_or_default().to_owned();
            let name = browser.view(&json!({ "ask": "part", "part": part }))?["record"]["values"]["name"]
                .as_str()
                .unwrap_or_default()
                .to_owned();
            ensure!(
                kept.starts_with(typed) || name.starts_with(typed),
                "typed {typed:?}, kept {kept:?}, recorded {name:?}"
            );
            self.letters += typed.chars().count();
        }
        Ok(())
    }
}

/// Polls what the page shows until a thread kills the browser: the kill falls anywhere.
fn watched_until_killed(browser: Browser, moment: Duration) -> anyhow::Result<Shown> {
    let killer = browser.killer();
    let kill = thread::spawn(move || {
        thread::sleep(moment);
        killer.kill()
    });
    let mut shown = Shown::default();
    while let Ok(told) = browser.run_js(TOLD, vec![]) {
        shown = serde_json::from_value(told)?;
    }
    let ended = kill.join().map_err(|_| anyhow::anyhow!("the killing thread failed"))?;
    ensure!(ended > 0, "no process was killed");
    Ok(shown)
}

fn setting(name: &str) -> Option<u64> {
    std::env::var(name).ok()?.parse().ok()
}

fn random() -> u64 {
    let now = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH).unwrap_or_default();
    u64::from(now.subsec_nanos()) ^ now.as_secs()
}

/// A small generator whose run a seed repeats (splitmix64).
struct Chance(u64);

impl Chance {
    fn below(&mut self, end: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ mixed >> 30).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ mixed >> 27).wrapping_mul(0x94d0_49bb_1331_11eb);
        (mixed ^ mixed >> 31) % end
    }
}
