//! The finished app with the bench's own page beside it, on one origin: both see the same database.

use std::fs;
use std::path::Path;
use std::process::Command;
use std::time::Duration;

use anyhow::Context;
use asfound_demo::workspace;
use asfound_journeys::{App, Browser};
use serde_json::{Value, json};
use tempfile::TempDir;

/// A served copy of the app and the bench.
pub(crate) struct Site {
    pub(crate) app: App,
    _folder: TempDir,
}

impl Site {
    pub(crate) fn start() -> anyhow::Result<Self> {
        let folder = tempfile::tempdir()?;
        copy(&workspace::dist(), folder.path())?;
        let bench = folder.path().join("bench");
        copy(&here().join("page"), &bench)?;
        copy(&workspace::shell().join("pkg/record"), &bench.join("record"))?;
        peers(&bench.join("peers"))?;
        build_derive(&bench.join("built"))?;
        let app = App::start_from(folder.path().to_owned(), "/")?;
        Ok(Self { app, _folder: folder })
    }

    /// The bench's own page, ready to be asked.
    pub(crate) fn open_bench(&self, browser: &Browser) -> anyhow::Result<()> {
        let address = format!("{}bench/index.html", self.app.address());
        browser.ask(|session| session.set_page_load_timeout(Duration::from_secs(15)))?;
        // On a busy machine a first page now and then never finishes loading; nothing is measured yet.
        if let Err(error) = browser.open(&address) {
            eprintln!("   once more: {}", format!("{error:#}").lines().next().unwrap_or_default());
            browser.open(&address)?;
        }
        browser.wait_for_js("globalThis.bench", Duration::from_secs(20))
    }

    /// The app at one of its places, watched from the first line on.
    pub(crate) fn open_app(&self, browser: &Browser, place: &str) -> anyhow::Result<()> {
        watch(browser)?;
        // Another document first: an address that differs in its hash alone loads nothing.
        browser.open("about:blank")?;
        browser.open(&format!("{}#/{place}", self.app.address()))
    }
}

/// Asks the bench's page; within the harness's limit for one call.
pub(crate) fn ask(browser: &Browser, expression: &str) -> anyhow::Result<Value> {
    browser.run_async_js(&format!("return await bench.{expression};"), vec![])
}

/// Notes of `page/watch.js` in every page that is opened from now on.
pub(crate) fn watch(browser: &Browser) -> anyhow::Result<()> {
    let source = fs::read_to_string(here().join("page/watch.js"))?;
    browser.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": source })).map(drop)
}

pub(crate) fn here() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn peers(folder: &Path) -> anyhow::Result<()> {
    fs::create_dir_all(folder)?;
    let files = [
        ("minisearch/dist/es/index.js", "minisearch.js"),
        ("fuse.js/dist/fuse.min.mjs", "fuse.js"),
        ("client-zip/index.js", "client-zip.js"),
    ];
    for (from, to) in files {
        let file = here().join("node_modules").join(from);
        fs::copy(&file, folder.join(to)).with_context(|| format!("{}: run tests/bench/run", file.display()))?;
    }
    Ok(())
}

/// The app's own module for smaller pictures, without its types.
fn build_derive(folder: &Path) -> anyhow::Result<()> {
    let shell = workspace::shell();
    let program = format!(
        "const {{ build }} = await import('vite');
         await build({{ configFile: false, logLevel: 'error', build: {{ outDir: {}, minify: false,
            lib: {{ entry: 'record/derive.ts', formats: ['es'], fileName: 'derive' }} }} }});",
        json!(folder)
    );
    workspace::run(Command::new("node").current_dir(shell).args(["--input-type=module", "--eval", &program]))?;
    anyhow::ensure!(folder.join("derive.js").is_file(), "no derive.js in {}", folder.display());
    Ok(())
}

pub(crate) fn copy(from: &Path, to: &Path) -> anyhow::Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from).with_context(|| format!("{}: run demo/run first", from.display()))? {
        let entry = entry?;
        let target = to.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            copy(&entry.path(), &target)?;
        } else {
            fs::copy(entry.path(), &target)?;
        }
    }
    Ok(())
}
