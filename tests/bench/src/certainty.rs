//! How long it takes to say how sure one part is, and to rank 300 of them: in the reckoning worker's wasm, run by Node.

use std::fmt::Write;
use std::fs;
use std::path::Path;
use std::process::Command;

use anyhow::Context;
use asfound_demo::workspace;
use serde_json::{Value, json};

use crate::row::Row;
use crate::site::here;

const PARTS: u64 = 300;

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let folder = tempfile::tempdir()?;
    let zip = folder.path().join("job.zip");
    write_job(folder.path(), &zip)?;
    let pkg = workspace::shell().join("pkg/reckon");
    let ours = answered(Command::new("node").arg(here().join("certainty.mjs")).args([&pkg, &zip]))?;
    anyhow::ensure!(ours["parts"] == PARTS, "{} parts", ours["parts"]);
    // Whoever has no numpy measures beside plain JavaScript alone.
    let numpy = here().join(".venv/bin/python");
    let numpy = numpy.exists().then(|| answered(Command::new(numpy).arg(here().join("certainty.py")))).transpose()?;
    eprintln!(
        "   chances: {}, numpy {}",
        ours["chances"],
        numpy.as_ref().map_or(&Value::Null, |found| &found["chances"])
    );
    let beside = |name: &str| {
        let mut said = format!("plain JavaScript: {}", p50_p95(&ours[format!("js_{name}")]));
        if let Some(numpy) = &numpy {
            let _ = write!(said, "; numpy {}: {}", numpy["numpy"].as_str().unwrap_or_default(), p50_p95(&numpy[name]));
        }
        said
    };
    let what = "Certainty of one part, 3 quotes, 10,000 draws, with what knowing each of 7 figures is worth, p50 / p95";
    Ok(vec![
        Row::new(what, p50_p95(&ours["one"])).beside(format!("the draws alone: {}", beside("one"))),
        Row::new("300 undecided parts ranked, 3 quotes, 1,000 draws each, p50 / p95", p50_p95(&ours["ranking"]))
            .beside(beside("ranking")),
    ])
}

/// A job of parts with three quotes each, made through the native door.
fn write_job(folder: &Path, zip: &Path) -> anyhow::Result<()> {
    let id = |kind: u64, number: u64| format!("{:032x}", kind * 1_000_000 + number);
    let create =
        |id: String, kind: &str, changes: Value| json!({"do": "create", "id": id, "kind": kind, "changes": changes});
    let cash = |minor: u64| json!({"cash": {"minor": minor, "currency": "GBP"}});
    let mut lines =
        vec![create(id(9, 1), "job", json!([{"currency": "GBP"}, {"hour_value": {"minor": 2000, "currency": "GBP"}}]))];
    for part in 1..=PARTS {
        let of = json!({"of": id(1, part)});
        lines.push(create(id(1, part), "part", json!([{"name": format!("Part {part}")}])));
        lines.push(create(id(2, part), "quote", json!([of, {"route": "repair-here"}, cash(1_800), {"cash_certainty": "about"},
            {"own_time": 120}, {"own_time_certainty": "wild-guess"}, {"chance": 2000}, {"chance_certainty": "about"}, {"strip_again": 90}])));
        lines.push(create(id(3, part), "quote", json!([of, {"route": "send-out"}, cash(7_500), {"cash_certainty": "about"},
            {"own_time": 45}, {"own_time_certainty": "about"}, {"chance": 500}, {"chance_certainty": "about"}, {"strip_again": 60}])));
        lines.push(create(
            id(4, part),
            "quote",
            json!([of, {"route": "buy"}, cash(10_600), {"cash_certainty": "about"}, {"own_time": 15}]),
        ));
    }
    let commands = folder.join("commands.jsonl");
    fs::write(&commands, lines.iter().map(|line| format!("{line}\n")).collect::<String>())?;
    let door = [
        "run",
        "--quiet",
        "--package",
        "asfound-demo",
        "--no-default-features",
        "--features",
        "door",
        "--bin",
        "asfound",
        "--",
    ];
    let mut make = Command::new("cargo");
    make.args(door).args(["apply", "-"]).arg(&commands).arg(zip);
    make.args(["--replica", "0102030405060708", "--at", "2026-05-01T09:30:00Z"]).current_dir(workspace::root());
    let made = make.output()?;
    anyhow::ensure!(
        made.status.success(),
        "{}{}",
        String::from_utf8_lossy(&made.stdout),
        String::from_utf8_lossy(&made.stderr)
    );
    Ok(())
}

fn answered(command: &mut Command) -> anyhow::Result<Value> {
    let output = command.output()?;
    anyhow::ensure!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).context("no JSON")
}

fn p50_p95(times: &Value) -> String {
    let mut times: Vec<f64> = times.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
    times.sort_by(f64::total_cmp);
    let at = |share: usize| times.get(times.len() * share / 100).copied().unwrap_or(f64::NAN);
    format!("{:.0} / {:.0} ms (n = {})", at(50), at(95), times.len())
}
