//! How many tags are read from frames made by code, and how fast, beside a general decoder: both as wasm in one process of Node.

use std::process::Command;

use anyhow::Context;
use asfound_demo::workspace;
use serde_json::Value;

use crate::row::Row;

const EACH: &str = "100";

pub(crate) fn measure() -> anyhow::Result<Vec<Row>> {
    let script = workspace::root().join("tests/scan/rates.mjs");
    let output = Command::new("node").arg(script).arg(EACH).output()?;
    anyhow::ensure!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let told: Value = serde_json::from_slice(&output.stdout).context("no JSON")?;
    let reader =
        |name: &str| -> anyhow::Result<&Value> { told.get(name).with_context(|| format!("nothing of {name}")) };
    let (ours, fast, hard) = (reader("ours")?, reader("zxing-wasm fast")?, reader("zxing-wasm hard")?);
    let figure = |of: &Value, name: &str| of[name].as_f64().unwrap_or(f64::NAN);
    let read = |of: &Value| {
        let kinds = of["rates"].as_object().into_iter().flatten().map(|(kind, rate)| format!("{kind} {rate}"));
        format!("{} % ({})", of["overall"], kinds.collect::<Vec<_>>().join(", "))
    };
    let times = |of: &Value| {
        let [p50, p95, worked50, worked95, mean, same50, same95] =
            ["p50", "p95", "worked50", "worked95", "mean", "same50", "same95"].map(|name| figure(of, name));
        format!(
            "{p50:.1} / {p95:.1} ms; of the processor {worked50:.1} / {worked95:.1}, mean {mean:.1}; \
             where all read it {same50:.1} / {same95:.1}"
        )
    };
    // The manner that sets the rate sets the time as well.
    let best = if figure(hard, "overall") > figure(fast, "overall") { hard } else { fast };
    let frames = format!("{} frames of 640 × 480, seed {}", told["frames"], told["seed"]);
    Ok(vec![
        Row::new(format!("Tags read, {frames}"), read(ours))
            .beside(format!("zxing-wasm {}; trying harder {}", read(fast), read(hard)))
            .target("not behind by more than 2 points", figure(ours, "overall") >= figure(best, "overall") - 2.0),
        Row::new("… a frame, p50 / p95", times(ours))
            .beside(format!("zxing-wasm {}; trying harder {}", times(fast), times(hard)))
            .target("faster where all read it, at p95", figure(ours, "same95") < figure(best, "same95")),
    ])
}
