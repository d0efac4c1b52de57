//! Writes the TypeScript types of the protocol, or checks that they are fresh.
//!
//! `types [--check]`

use std::fs;

use anyhow::{Context, bail};
use asfound_core::protocol::declarations;
use asfound_demo::workspace;

fn main() -> anyhow::Result<()> {
    let path = workspace::shell().join("bridge/protocol.ts");
    let fresh = declarations();
    match std::env::args().nth(1).as_deref() {
        None => fs::write(&path, fresh).with_context(|| format!("writing {}", path.display())),
        Some("--check") if fs::read_to_string(&path).is_ok_and(|written| written == fresh) => Ok(()),
        Some("--check") => bail!("web/shell/bridge/protocol.ts is stale: cargo run -p asfound-demo --bin types"),
        Some(other) => bail!("unknown argument {other}"),
    }
}
