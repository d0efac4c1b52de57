//! Serves the finished app on loopback and prints its address.
//!
//! `serve [--dir DIR] [--port PORT] [--under /PATH/]`

use std::path::PathBuf;

use anyhow::{Context, bail};
use asfound_demo::server::{Site, serve};
use asfound_demo::workspace;

fn main() -> anyhow::Result<()> {
    let site = read_arguments(std::env::args().skip(1))?;
    serve(site, |address| println!("{address}"))
}

fn read_arguments(mut arguments: impl Iterator<Item = String>) -> anyhow::Result<Site> {
    let mut site = Site { folder: workspace::dist(), under: "/".into(), port: 0 };
    while let Some(name) = arguments.next() {
        let value = arguments.next().with_context(|| format!("{name} needs a value"))?;
        match name.as_str() {
            "--dir" => site.folder = PathBuf::from(value),
            "--port" => site.port = value.parse().context("--port needs a number")?,
            "--under" => site.under = with_slashes(&value),
            _ => bail!("unknown argument {name}"),
        }
    }
    Ok(site)
}

fn with_slashes(path: &str) -> String {
    match path.trim_matches('/') {
        "" => "/".into(),
        inner => format!("/{inner}/"),
    }
}
