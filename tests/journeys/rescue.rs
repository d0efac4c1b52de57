//! The rescue page needs neither wasm nor the app: with the wasm gone from the server and nothing kept of the app, all
//! photos and entries leave as a file.

use std::fs;
use std::path::Path;
use std::time::Duration;

use anyhow::ensure;
use asfound_core::job::Job;
use asfound_core::record::{FieldName, Kind};
use asfound_demo::workspace;
use asfound_journeys::{Engine, SentJob, Size, Visit};
use serde_json::json;

/// Takes away everything that the app left, but not the database.
const FORGET_THE_APP: &str = "
    for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
    for (const name of await caches.keys()) await caches.delete(name);";

fn everything_leaves(engine: Engine, size: Size) -> anyhow::Result<()> {
    let mut visit = Visit::first(engine, size)?;
    visit.browser.start_job("The grey saloon")?;
    visit.browser.record_part(2)?;
    visit.browser.next_tag()?;
    visit.browser.record_part(1)?;
    visit.browser.click(".td-plate")?;
    visit.browser.write_into("asf-more", "Name", "Stub axle")?;
    visit.browser.click("dialog[open] .dialog-close")?;
    visit.browser.go("parts")?;
    visit.browser.wait_for_text("asf-place-parts", "Stub axle")?;
    let before = visit.browser.stored()?;

    let bare = tempfile::tempdir()?;
    copy_without_wasm(&workspace::dist(), bare.path())?;
    visit.browser.run_async_js(FORGET_THE_APP, vec![])?;
    visit.serve(|site| site.folder = bare.path().to_owned())?;
    let rescue = format!("{}rescue.html", visit.app.address());
    visit.browser.open(&rescue)?;
    let kept =
        "return (await caches.keys()).length > 0 || (await navigator.serviceWorker.getRegistrations()).length > 0";
    ensure!(visit.browser.run_async_js(kept, vec![])? == json!(false), "the app is still there");
    visit.browser.click("#rescue button")?;
    visit.browser.click("#rescue a.save")?;
    let file = visit.profile.wait_for_download(".zip", Duration::from_secs(20))?;
    looked_into(&file, before.photos.keys().cloned().collect(), before.count("tail"))
}

fn looked_into(file: &Path, photos: Vec<String>, entries: usize) -> anyhow::Result<()> {
    let sent = SentJob::read(file)?;
    ensure!(sent.photos.iter().eq(&photos), "{:?} left, {photos:?} lay there", sent.photos);
    let job: &Job = &sent.job;
    ensure!(job.record().len() == entries, "{} entries left, {entries} lay there", job.record().len());
    let named = |id| job.item(id).and_then(|part| part.read::<String>(FieldName::Name));
    let names: Vec<_> = job.standing_ids(Kind::Part).map(named).collect();
    ensure!(names.len() == 2 && names.contains(&Some("Stub axle".to_owned())), "parts: {names:?}");
    Ok(())
}

#[test]
fn chromium() -> anyhow::Result<()> {
    everything_leaves(Engine::Chromium, Size::Phone)
}

#[test]
fn firefox() -> anyhow::Result<()> {
    everything_leaves(Engine::Firefox, Size::Desk)
}

fn copy_without_wasm(from: &Path, to: &Path) -> anyhow::Result<()> {
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let (path, target) = (entry.path(), to.join(entry.file_name()));
        if path.is_dir() {
            fs::create_dir(&target)?;
            copy_without_wasm(&path, &target)?;
        } else if path.extension().is_none_or(|ending| ending != "wasm") {
            fs::copy(&path, &target)?;
        }
    }
    Ok(())
}
