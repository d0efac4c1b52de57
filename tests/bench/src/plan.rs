//! Plans of drawn jobs: the core's own search beside HiGHS compiled to wasm, both in workers of one page.

use std::fs;
use std::path::Path;
use std::process::Command;
use std::time::Duration;

use anyhow::Context;
use asfound_demo::bindings::Wasm;
use asfound_demo::workspace;
use asfound_journeys::{App, Browser, Profile, Size};
use serde_json::json;

use crate::figures::ms;
use crate::garage::browser;
use crate::row::Row;
use crate::site::{copy, here};

const PARTS: [u32; 4] = [30, 100, 300, 1_000];
const SEEDS: u32 = 3;
/// As long as either may take.
const SECONDS: u32 = 60;
/// Compiled as the reckoning worker is.
const PLANNER: Wasm = Wasm { package: "asfound-bench-planner", profile: "wasm-reckon", name: "planner" };

/// What one of them came to on one job.
struct Run {
    /// Milliseconds, cost of the best plan, bound.
    seen: Vec<(f64, Option<f64>, Option<f64>)>,
    spent: f64,
    proof: String,
    megabytes: f64,
}

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let folder = tempfile::tempdir()?;
    copy(&here().join("page"), folder.path())?;
    fs::copy(folder.path().join("plan.html"), folder.path().join("index.html"))?;
    PLANNER.make(&folder.path().join("planner"))?;
    let peers = folder.path().join("peers");
    fs::create_dir_all(&peers)?;
    // The server knows modules by `.js` alone.
    for (file, name) in [("highs.mjs", "highs.js"), ("highs.wasm", "highs.wasm")] {
        let from = here().join("node_modules/highs/build").join(file);
        fs::copy(&from, peers.join(name)).with_context(|| format!("{}: run tests/bench/run", from.display()))?;
    }
    let app = App::start_from(folder.path().to_owned(), "/")?;
    let profile = Profile::fresh()?;
    let browser = browser(Size::Desk, &profile)?;
    browser.open(app.address())?;
    browser.wait_for_js("globalThis.bench", Duration::from_secs(20))?;
    let mut rows = vec![sizes(folder.path())?];
    for parts in PARTS {
        let mut runs = Vec::new();
        for seed in 1..=SEEDS {
            let ours = run(&browser, "ours", parts, seed, "choose")?;
            let mut highs = run(&browser, "highs", parts, seed, "choose")?;
            if highs.proof == "nothing fits" && ours.last_cost().is_some() {
                eprintln!("   {parts} parts, seed {seed}: HiGHS says that nothing fits; again without its presolve");
                highs = run(&browser, "highs", parts, seed, "off")?;
            }
            runs.push((ours, highs));
        }
        rows.extend(told(parts, &runs));
    }
    Ok(rows)
}

fn run(browser: &Browser, which: &str, parts: u32, seed: u32, presolve: &str) -> anyhow::Result<Run> {
    let given = vec![json!(which), json!(parts), json!(seed), json!(SECONDS), json!(presolve)];
    browser.run_js("bench.start(...arguments)", given)?;
    browser.wait_for_js("bench.seen", Duration::from_secs(u64::from(SECONDS) * 2))?;
    let seen = browser.run_js("return bench.seen", vec![])?;
    anyhow::ensure!(seen["error"].is_null(), "{which}, {parts} parts, seed {seed}: {}", seen["error"]);
    let run = Run {
        seen: seen["seen"]
            .as_array()
            .context("nothing was seen")?
            .iter()
            .map(|line| (line[0].as_f64().unwrap_or_default(), line[1].as_f64(), line[2].as_f64()))
            .collect(),
        spent: seen["spent"].as_f64().context("no time")?,
        proof: seen["proof"].as_str().context("no proof")?.to_owned(),
        megabytes: seen["memory"].as_f64().context("no memory")? / 1e6,
    };
    let (cost, bound) = run.at(f64::INFINITY);
    let said = |figure: Option<f64>| figure.map_or("none".to_owned(), |figure| format!("{figure:.0}"));
    eprintln!(
        "   {parts} parts, seed {seed}, {which}: {} after {} ms; cost {}, bound {}, {} steps",
        run.proof,
        ms(run.spent),
        said(cost),
        said(bound),
        seen["nodes"]
    );
    Ok(run)
}

impl Run {
    /// Cost of the best plan and bound after so many milliseconds.
    fn at(&self, after: f64) -> (Option<f64>, Option<f64>) {
        let last = self.seen.iter().take_while(|(at, _, _)| *at <= after).last();
        last.map_or((None, None), |(_, cost, bound)| (*cost, *bound))
    }

    fn last_cost(&self) -> Option<f64> {
        self.at(f64::INFINITY).0
    }

    fn first(&self) -> Option<f64> {
        self.seen.iter().find(|(_, cost, _)| cost.is_some()).map(|(at, _, _)| *at)
    }

    fn proved(&self) -> Option<f64> {
        (self.proof == "best" || self.proof == "nothing fits").then_some(self.spent)
    }

    /// What it says itself how far its plan may be from the best, in hundredths; none where there is no plan or no bound.
    fn gap(&self, after: f64) -> Option<f64> {
        if self.proved().is_some_and(|spent| spent <= after) {
            return Some(0.0);
        }
        let (cost, bound) = self.at(after);
        cost.zip(bound).map(|(cost, bound)| (cost - bound).max(0.0) / cost * 100.0)
    }

    /// How far its plan is from the best that either knows in the end.
    fn above(&self, after: f64, best: Option<f64>) -> Option<f64> {
        if best.is_none() && self.proved().is_some_and(|spent| spent <= after) {
            return Some(0.0);
        }
        self.at(after).0.zip(best).map(|(cost, best)| (cost - best) / best * 100.0)
    }
}

fn told(parts: u32, runs: &[(Run, Run)]) -> Vec<Row> {
    let best = |(ours, highs): &(Run, Run)| {
        ours.last_cost().into_iter().chain(highs.last_cost()).reduce(f64::min).map(f64::round)
    };
    let both = |what: String, said: &dyn Fn(&Run, Option<f64>) -> String| {
        let of = |which: fn(&(Run, Run)) -> &Run| {
            runs.iter().map(|pair| said(which(pair), best(pair))).collect::<Vec<_>>().join("; ")
        };
        Row::new(what, of(|(ours, _)| ours)).beside(format!("HiGHS: {}", of(|(_, highs)| highs)))
    };
    let time = |spent: Option<f64>, none: &str| spent.map_or(none.to_owned(), |spent| format!("{} ms", ms(spent)));
    let share = |share: Option<f64>| match share {
        None => "none".to_owned(),
        Some(share) if share.abs() < 0.0005 => "0".to_owned(),
        Some(share) => format!("{share:.3} %"),
    };
    let two = |one: Option<f64>, five: Option<f64>| format!("{} / {}", share(one), share(five));
    vec![
        both(format!("Plan of {parts} parts, seeds 1 to {SEEDS}: first plan"), &|run, _| time(run.first(), "none")),
        both("… gap that it tells, at 1 s / 5 s".to_owned(), &|run, _| two(run.gap(1e3), run.gap(5e3))),
        both("… above the best that either knows, at 1 s / 5 s".to_owned(), &|run, best| {
            two(run.above(1e3, best), run.above(5e3, best))
        }),
        both(format!("… proved, within {SECONDS} s"), &|run, _| time(run.proved(), "no")),
        both("… memory of its wasm afterwards".to_owned(), &|run, _| format!("{:.1} MB", run.megabytes)),
    ]
}

/// Packed as hosts pack it. What the plan adds to the worker is less than the search by itself, which brings a standard library.
fn sizes(folder: &Path) -> anyhow::Result<Row> {
    let packed = |file: &Path| -> anyhow::Result<f64> {
        let program = "const { brotliCompressSync } = require('node:zlib');
            console.log(brotliCompressSync(require('node:fs').readFileSync(process.argv[1])).length);";
        let output = Command::new("node").args(["--eval", program]).arg(file).output()?;
        let said = String::from_utf8_lossy(&output.stdout);
        said.trim().parse().with_context(|| format!("{}: {}", file.display(), String::from_utf8_lossy(&output.stderr)))
    };
    let kb = |file: &Path| Ok::<_, anyhow::Error>(format!("{:.0} kB", packed(file)? / 1000.0));
    let ours = kb(&folder.join("planner/planner_bg.wasm"))?;
    let worker = workspace::shell().join("pkg/reckon/reckon_bg.wasm");
    let worker = if worker.exists() { kb(&worker)? } else { "not built".to_owned() };
    let highs = kb(&folder.join("peers/highs.wasm"))?;
    Ok(Row::new("Wasm of the search by itself; of the whole reckoning worker, brotli", format!("{ours}; {worker}"))
        .beside(format!("HiGHS: {highs}")))
}
