//! The workers' wasm and the JavaScript that loads it.

use std::fs;
use std::path::Path;

use wasm_bindgen_cli_support::Bindgen;

use crate::workspace;

/// One worker: its package, and the name of its folder in the shell.
struct Worker {
    package: &'static str,
    name: &'static str,
}

const WORKERS: [Worker; 2] =
    [Worker { package: "asfound-web", name: "record" }, Worker { package: "asfound-reckon", name: "reckon" }];

/// Builds both workers' wasm into `web/shell/pkg`.
pub fn make() -> anyhow::Result<()> {
    compile()?;
    for worker in &WORKERS {
        bind(worker)?;
    }
    Ok(())
}

fn compile() -> anyhow::Result<()> {
    let mut cargo = workspace::cargo();
    cargo.args(["build", "--locked", "--lib", "--target", "wasm32-unknown-unknown", "--profile", "wasm"]);
    for worker in &WORKERS {
        cargo.args(["--package", worker.package]);
    }
    workspace::run(&mut cargo)
}

fn bind(worker: &Worker) -> anyhow::Result<()> {
    let built = workspace::target().join("wasm32-unknown-unknown/wasm");
    let wasm = built.join(format!("{}.wasm", worker.package.replace('-', "_")));
    let folder = workspace::shell().join("pkg").join(worker.name);
    let mut bindgen = Bindgen::new();
    bindgen.input_path(&wasm).web(true)?.typescript(true).out_name(worker.name);
    bindgen.remove_name_section(true).remove_producers_section(true);
    bindgen.generate(&folder)?;
    say_size(worker.name, &folder)
}

fn say_size(name: &str, folder: &Path) -> anyhow::Result<()> {
    let bytes = fs::metadata(folder.join(format!("{name}_bg.wasm")))?.len();
    println!("  {name}: {} kB of wasm", bytes.div_ceil(1000));
    Ok(())
}
