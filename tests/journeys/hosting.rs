//! Any static host, under any path; a new version waits until it is let in.

use std::fs;
use std::path::Path;
use std::time::Duration;

use anyhow::Context;
use asfound_demo::workspace;
use asfound_journeys::{App, Browser, Engine, Profile, Size};
use serde_json::json;

fn works_under_a_path(engine: Engine) -> anyhow::Result<()> {
    let mut app = App::start_from(workspace::dist(), "/deep/er/")?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(engine, Size::Desk, &profile)?;
    browser.open(app.address())?;
    browser.wait_until_kept()?;
    app.go_offline()?;
    browser.reload()?;
    browser.wait_for("asfound-app main")?;
    // Nothing may pretend to be a file that is not there.
    let missing = "return await fetch('assets/gone.wasm').then(() => 'answered', () => 'refused')";
    assert_eq!(browser.run_async_js(missing, vec![])?, json!("refused"));
    Ok(())
}

#[test]
fn chromium_works_under_a_path() -> anyhow::Result<()> {
    works_under_a_path(Engine::Chromium)
}

#[test]
fn firefox_works_under_a_path() -> anyhow::Result<()> {
    works_under_a_path(Engine::Firefox)
}

#[test]
fn webkit_works_under_a_path() -> anyhow::Result<()> {
    works_under_a_path(Engine::WebKit)
}

fn lets_a_new_version_wait(engine: Engine) -> anyhow::Result<()> {
    let folder = tempfile::tempdir()?;
    copy(&workspace::dist(), folder.path())?;
    let app = App::start_from(folder.path().to_owned(), "/")?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(engine, Size::Desk, &profile)?;
    browser.open(app.address())?;
    browser.wait_until_kept()?;

    release_another(folder.path())?;
    browser.run_async_js("await (await navigator.serviceWorker.ready).update()", vec![])?;
    let registration = "navigator.serviceWorker.getRegistration().then((r) => { window.__registration = r; })";
    browser.run_async_js(&format!("await {registration}"), vec![])?;
    browser.wait_for_js("window.__registration.waiting", Duration::from_secs(10))?;
    browser.reload()?;
    assert_eq!(browser.run_js(RELEASE, vec![])?, json!("this"), "it did not wait");

    let agree = "const r = await navigator.serviceWorker.getRegistration();
        const over = new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done));
        r.waiting.postMessage({ type: 'SKIP_WAITING' });
        await over;";
    browser.run_async_js(agree, vec![])?;
    browser.reload()?;
    assert_eq!(browser.run_js(RELEASE, vec![])?, json!("another"));
    browser.wait_until_kept()
}

#[test]
fn chromium_lets_a_new_version_wait() -> anyhow::Result<()> {
    lets_a_new_version_wait(Engine::Chromium)
}

#[test]
fn firefox_lets_a_new_version_wait() -> anyhow::Result<()> {
    lets_a_new_version_wait(Engine::Firefox)
}

#[test]
fn webkit_lets_a_new_version_wait() -> anyhow::Result<()> {
    lets_a_new_version_wait(Engine::WebKit)
}

/// Which release the page is of.
const RELEASE: &str = "return document.documentElement.dataset.release ?? 'this'";

/// The same app with a mark on its page, as the next build would leave it.
fn release_another(folder: &Path) -> anyhow::Result<()> {
    let page = fs::read_to_string(folder.join("index.html"))?;
    fs::write(folder.join("index.html"), page.replacen("<html", "<html data-release=\"another\"", 1))?;
    let worker = fs::read_to_string(folder.join("sw.js"))?;
    let entry = worker.find(r#"url:"index.html",revision:""#).context("sw.js names index.html otherwise now")?;
    let revision = entry + r#"url:"index.html",revision:""#.len();
    let mut changed = worker;
    changed.replace_range(revision..revision + 8, "another0");
    Ok(fs::write(folder.join("sw.js"), changed)?)
}

fn copy(from: &Path, to: &Path) -> anyhow::Result<()> {
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let target = to.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            fs::create_dir(&target)?;
            copy(&entry.path(), &target)?;
        } else {
            fs::copy(entry.path(), &target)?;
        }
    }
    Ok(())
}
