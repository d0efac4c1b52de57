//! The workers' wasm and the JavaScript that loads it.

use std::fs;
use std::panic;
use std::path::Path;
use std::thread;

use wasm_bindgen_cli_support::Bindgen;

use crate::workspace;

/// One wasm: its package, how it is compiled, and the name of its files.
#[derive(Debug, Clone, Copy)]
pub struct Wasm {
    /// The package.
    pub package: &'static str,
    /// The profile of `Cargo.toml`.
    pub profile: &'static str,
    /// The name of what is made.
    pub name: &'static str,
}

const WORKERS: [Wasm; 2] = [
    Wasm { package: "asfound-web", profile: "wasm", name: "record" },
    Wasm { package: "asfound-reckon", profile: "wasm-reckon", name: "reckon" },
];

/// Builds both workers' wasm into `web/shell/pkg`, side by side: each ends in a long step on one core.
pub fn make() -> anyhow::Result<()> {
    let folder = |worker: &Wasm| workspace::shell().join("pkg").join(worker.name);
    thread::scope(|scope| {
        let building = WORKERS.each_ref().map(|worker| scope.spawn(move || worker.make(&folder(worker))));
        building.into_iter().try_for_each(|one| one.join().unwrap_or_else(|panicked| panic::resume_unwind(panicked)))
    })?;
    WORKERS.iter().try_for_each(|worker| say_size(worker.name, &folder(worker)))
}

impl Wasm {
    /// Compiles it into a folder, with the JavaScript that loads it.
    pub fn make(&self, folder: &Path) -> anyhow::Result<()> {
        let mut cargo = workspace::cargo();
        cargo.args(["build", "--locked", "--lib", "--target", "wasm32-unknown-unknown"]);
        cargo.args(["--profile", self.profile, "--package", self.package]);
        workspace::run(&mut cargo)?;
        let built = workspace::target().join("wasm32-unknown-unknown").join(self.profile);
        let wasm = built.join(format!("{}.wasm", self.package.replace('-', "_")));
        let mut bindgen = Bindgen::new();
        bindgen.input_path(&wasm).web(true)?.typescript(true).out_name(self.name);
        bindgen.remove_name_section(true).remove_producers_section(true);
        bindgen.generate(folder)
    }
}

fn say_size(name: &str, folder: &Path) -> anyhow::Result<()> {
    let bytes = fs::metadata(folder.join(format!("{name}_bg.wasm")))?.len();
    println!("  {name}: {} kB of wasm", bytes.div_ceil(1000));
    Ok(())
}
