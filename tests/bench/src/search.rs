//! Finding as one types among 10,000 parts.

use std::time::Duration;

use anyhow::Context;
use asfound_journeys::{Browser, Profile, Size};
use serde_json::json;

use crate::figures::{Figures, ms};
use crate::garage::{browser, parts_alone};
use crate::row::Row;
use crate::site::{Site, ask};

const PARTS: usize = 10_000;
const QUERIES: usize = 40;

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let site = Site::start()?;
    let profile = Profile::fresh()?;
    let browser = browser(Size::Phone, &profile)?;
    parts_alone(&site, &browser, PARTS)?;
    let built = ask(&browser, &format!("buildPeers({PARTS})"))?;
    let mut rows = vec![core_alone(&browser)?, without_rows(&browser)?, as_listed(&browser)?];
    rows.extend(recall(&browser)?);
    rows.push(after_an_edit(&browser)?);
    let peer = Figures::read(&ask(&browser, &format!("paintedKeystrokes('minisearch', 12, {PARTS})"))?)?;
    eprintln!("   the peer's index was built in {}", built["built"]);
    let queries = ask(&browser, "typedQueries(12)")?;
    site.open_app(&browser, "parts")?;
    let ours = painted(&browser, &queries)?;
    rows.insert(
        3,
        Row::new("Key → results on the screen, 10,000 parts, p50 / p95", ours.said())
            .beside(format!("MiniSearch and a plain list, same browser: {}", peer.said()))
            .target("p95 ≤ 50 ms", ours.p95() <= 50.0),
    );
    Ok(rows)
}

fn core_alone(browser: &Browser) -> anyhow::Result<Row> {
    let of = |peer: &str, queries: usize| -> anyhow::Result<Figures> {
        ask(browser, &format!("keystrokes('{peer}', 5)"))?;
        Figures::read(&ask(browser, &format!("keystrokes('{peer}', {queries})"))?)
    };
    let (core, mini) = (of("core", QUERIES)?, of("minisearch", QUERIES)?);
    let fuse = Figures::read(&ask(browser, "keystrokes('fuse', 4)")?)?;
    Ok(Row::new("Query alone, every keystroke, best 48 as rows with their marks, p50 / p95", core.said())
        .beside(format!("MiniSearch (ids only): {}; Fuse: {}", mini.said(), fuse.said()))
        .target("p95 ≤ 5 ms", core.p95() <= 5.0))
}

/// What is left is finding and sorting: no row is written out, none crosses to JavaScript.
fn without_rows(browser: &Browser) -> anyhow::Result<Row> {
    let found = Figures::read(&ask(browser, &format!("keystrokes('no-rows', {QUERIES})"))?)?;
    Ok(Row::new("… finding and sorting alone, no rows made or handed over", found.said())
        .target("p95 ≤ 5 ms", found.p95() <= 5.0))
}

fn as_listed(browser: &Browser) -> anyhow::Result<Row> {
    let core = Figures::read(&ask(browser, &format!("keystrokes('as-listed', {QUERIES})"))?)?;
    Ok(Row::new("… as the list asks it: grouped by assembly, with sums", core.said())
        .target("p95 ≤ 5 ms", core.p95() <= 5.0))
}

fn recall(browser: &Browser) -> anyhow::Result<Vec<Row>> {
    let mut rows = Vec::new();
    let sets = [
        (1, "300 queries with one letter wrong, missing, extra or swapped"),
        (2, "the same with such a letter in each of two words"),
    ];
    for (mistakes, what) in sets {
        let core = missed(browser, "core", mistakes)?;
        eprintln!("   missed by the core: {core:?}");
        let share = |missed: &[String]| 100.0 * (MISSPELT - missed.len()) as f64 / MISSPELT as f64;
        let ours = share(&core);
        let mut best: f64 = 0.0;
        let mut said = Vec::new();
        for (peer, name) in PEERS {
            let theirs = share(&missed(browser, peer, mistakes)?);
            best = best.max(theirs);
            said.push(format!("{name} {theirs:.1} %"));
        }
        rows.push(
            Row::new(format!("Recall at 5: {what}"), format!("{ours:.1} %"))
                .beside(said.join("; "))
                .target("≥ 95 % and ≥ the best peer", ours >= 95.0 && ours >= best),
        );
    }
    Ok(rows)
}

const MISSPELT: usize = 300;

/// As their own pages advise, and as lenient as they go.
const PEERS: [(&str, &str); 4] = [
    ("minisearch", "MiniSearch all words, fuzzy 0.2"),
    ("minisearch-or", "any word"),
    ("minisearch-2", "all words, fuzzy 2"),
    ("fuse", "Fuse"),
];

/// The queries that do not bring what was meant; in steps, since one of the peers takes its time.
fn missed(browser: &Browser, peer: &str, mistakes: usize) -> anyhow::Result<Vec<String>> {
    let mut missed = Vec::new();
    for from in (0..MISSPELT).step_by(50) {
        let answer = ask(browser, &format!("recall('{peer}', {mistakes}, {from}, {})", from + 50))?;
        missed.extend(serde_json::from_value::<Vec<String>>(answer["missed"].clone())?);
    }
    Ok(missed)
}

/// A rename among 10,000 parts beside a rename among ten: what the size of the job costs.
fn after_an_edit(browser: &Browser) -> anyhow::Result<Row> {
    let many =
        Figures::read(&ask(browser, "timedRenames(Array.from({ length: 40 }, (_, i) => bench.hexId(1, i * 9)))")?)?;
    let small = format!("newJob({}, '#/parts')", json!("be000000000000000000000000000002"));
    ask(browser, &small)?;
    ask(browser, "fillGround()")?;
    ask(browser, "fillParts(10, 0, 10)")?;
    let few =
        Figures::read(&ask(browser, "timedRenames(Array.from({ length: 40 }, (_, i) => bench.hexId(1, i % 10)))")?)?;
    // Back to the job of 10,000.
    ask(browser, &format!("timedOpen('{}')", crate::garage::JOB))?;
    ask(browser, &format!("comeUpIn('{}', '#/parts')", crate::garage::JOB))?;
    let more = many.p50() - few.p50();
    Ok(Row::new("Rename among 10,000 parts, stored and in the index, p50 / p95", many.said())
        .beside(format!("among ten parts: {}; the size costs {} ms", few.said(), ms(more.max(0.0))))
        .target("index ≤ 2 ms", more <= 2.0))
}

/// Keys into the app's own field, each timed until the rows that answer it are on the screen.
fn painted(browser: &Browser, queries: &serde_json::Value) -> anyhow::Result<Figures> {
    browser.wait_for_js("__seen.rows?.shown", Duration::from_secs(30))?;
    let body = "const field = document.querySelector('asf-parts-list .parts-foot input');
        const list = document.querySelector('asf-parts-list');
        const spent = [];
        for (const typed of given[0]) {
            for (let length = 1; length <= typed.length; length++) {
                await new Promise((resolve) => setTimeout(resolve, 30));
                field.value = typed.slice(0, length);
                const turn = list.rows.turn;
                const from = performance.now();
                field.dispatchEvent(new Event('input', { bubbles: true }));
                if (list.rows.turn === turn) throw new Error('the key was not heard');
                while (list.rows.answered !== list.rows.turn) await new Promise((resolve) => { const c = new MessageChannel(); c.port1.onmessage = resolve; c.port2.postMessage(0); });
                await list.updateComplete;
                spent.push((await __shown()) - from);
            }
        }
        return spent;";
    let all = queries.as_array().context("queries")?;
    let mut spent = Vec::new();
    for some in all.chunks(4) {
        let answer = browser.run_async_js(body, vec![json!(some)])?;
        spent.extend(answer.as_array().context("times")?.iter().filter_map(serde_json::Value::as_f64));
    }
    Figures::of(spent)
}
