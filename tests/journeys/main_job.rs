//! The main job: first visit, no network, five parts taken off, the process killed, everything still there, out as files,
//! in on a clean profile.
//!
//! In all three engines, with these exceptions:
//!
//! | engine | what is otherwise | why |
//! | --- | --- | --- |
//! | Firefox | at desk size only | its windows are no narrower than 500 px, and it emulates no phone |
//! | WebKitGTK | at desk size only | its windows are no narrower than 447 px |
//! | WebKitGTK | photos come through the file lane | its camera for tests gives a track whose frames are 0 × 0 |
//! | WebKitGTK | loaded again instead of killed; in again beside what is there instead of on a clean profile | under automation nothing it stores outlives its process |

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_core::record::Kind;
use asfound_journeys::{Browser, Engine, Profile, SentJob, Size, Visit};
use serde_json::{Value, json};

use crate::picture::picture;

const SAVED: Duration = Duration::from_secs(30);
/// Photos of each of the five parts.
const PHOTOS: [u64; 5] = [1, 2, 1, 1, 2];
const NAMED: &str = "Stub axle, with a nick";

fn main_job(engine: Engine, size: Size) -> anyhow::Result<()> {
    let mut visit = Visit::first(engine, size)?;
    visit.app.go_offline()?;
    visit.browser.start_job_without_camera("The grey saloon")?;
    take_up_assembly(&visit.browser)?;
    record_five(&visit.browser)?;
    type_a_name(&visit.browser)?;
    let before = Strip::of(&visit.browser)?;
    ensure!(before.typed == NAMED, "typed {before:?}");

    let visit = if engine == Engine::WebKit {
        visit.browser.reload()?;
        visit
    } else {
        visit.killed_and_back()?
    };
    let after = Strip::of(&visit.browser).context("back after the kill")?;
    assert_eq!(after, before);
    let stored = visit.browser.stored()?;
    ensure!(stored.is_sound(), "photos differ from their names: {stored:?}");
    assert_eq!(stored.photos.len() as u64, PHOTOS.iter().sum::<u64>());

    let file = hand_out(&visit.browser, &visit.profile)?;
    come_back_in(visit, engine, size, &file, &stored.photos)
}

#[test]
fn chromium_phone() -> anyhow::Result<()> {
    main_job(Engine::Chromium, Size::Phone)
}

#[test]
fn chromium_desk() -> anyhow::Result<()> {
    main_job(Engine::Chromium, Size::Desk)
}

#[test]
fn firefox() -> anyhow::Result<()> {
    main_job(Engine::Firefox, Size::Desk)
}

#[test]
fn webkit() -> anyhow::Result<()> {
    main_job(Engine::WebKit, Size::Desk)
}

/// What is in hand at the strip, and what stands in the field that was being filled in.
#[derive(Debug, PartialEq, Eq)]
struct Strip {
    assembly: String,
    tag: String,
    photos: u64,
    typed: String,
}

impl Strip {
    fn of(browser: &Browser) -> anyhow::Result<Self> {
        browser.wait_for("asf-place-teardown dialog[open] asf-more")?;
        browser.wait_until_ticked(PHOTOS[4])?;
        Ok(Self {
            assembly: browser
                .run_js("return document.querySelector('asf-place-teardown h1').textContent.trim()", vec![])?
                .to_string(),
            tag: browser.tag_in_hand()?,
            photos: browser.ticked()?,
            typed: browser.value_of("asf-more", "Name")?,
        })
    }
}

fn take_up_assembly(browser: &Browser) -> anyhow::Result<()> {
    browser.go("assemblies")?;
    browser.press_words("asf-place-assemblies", "Add an assembly")?;
    browser.write_into("asf-assembly-form", "Name", "Front hub")?;
    browser.press_words("asf-assembly-form", "Left")?;
    browser.press_words("asf-assembly-form", "Make it")?;
    browser.press_words("asf-place-before", "Take it apart")?;
    browser.wait_for_text("asf-place-teardown h1", "Front hub")
}

fn record_five(browser: &Browser) -> anyhow::Result<()> {
    for (part, photos) in PHOTOS.into_iter().enumerate() {
        if part > 0 {
            browser.next_tag()?;
        }
        take_photos(browser, part, photos)?;
        browser.wait_until_ticked(photos)?;
    }
    Ok(())
}

fn take_photos(browser: &Browser, part: usize, photos: u64) -> anyhow::Result<()> {
    if browser.engine() != Engine::WebKit {
        browser.wait_for_camera()?;
        return (0..photos).try_for_each(|_| browser.shoot());
    }
    for photo in 0..photos {
        let file = picture(u8::try_from(part * 10)? + u8::try_from(photo)?)?;
        browser.upload("asf-place-teardown .td-files", file.path())?;
        browser.wait_until_ticked(photo + 1)?;
    }
    Ok(())
}

fn type_a_name(browser: &Browser) -> anyhow::Result<()> {
    browser.click(".td-plate")?;
    browser.write_into("asf-more", "Name", NAMED)
}

fn hand_out(browser: &Browser, profile: &Profile) -> anyhow::Result<PathBuf> {
    browser.go("hand-over")?;
    browser.press_words("asf-list-out", "table for a spreadsheet")?;
    browser.press_words("asf-list-out", "Prepare")?;
    browser.press_words("asf-list-out asf-prepared", "Save to this device")?;
    let list = fs::read_to_string(profile.wait_for_download(".csv", SAVED)?)?;
    for tag in 1..=PHOTOS.len() {
        ensure!(
            list.lines().any(|line| line.starts_with(&format!("{tag},"))),
            "the list does not name tag {tag}: {list}"
        );
    }
    browser.press_words("asf-job-file-out", "Make a job file")?;
    browser.press_words("asf-job-file-out asf-prepared", "Save to this device")?;
    let file = profile.wait_for_download(".zip", SAVED)?;
    let sent = SentJob::read(&file)?;
    assert_eq!(sent.job.standing_ids(Kind::Part).count(), PHOTOS.len());
    Ok(file)
}

fn come_back_in(
    mut out: Visit,
    engine: Engine,
    size: Size,
    file: &std::path::Path,
    photos: &BTreeMap<String, String>,
) -> anyhow::Result<()> {
    if engine != Engine::Chromium {
        return come_in_here(&out.browser, file);
    }
    out.open_with_desk()?;
    let sent = views(&out.browser)?;
    let mut fresh = Visit::first(engine, size)?;
    come_in_here(&fresh.browser, file)?;
    fresh.browser.press_words("asf-job-file-in", "Open that job")?;
    fresh.browser.wait_for("asf-place-parts a.row")?;
    assert_eq!(&fresh.browser.stored()?.photos, photos);
    fresh.open_with_desk()?;
    assert_eq!(views(&fresh.browser)?, sent);
    Ok(())
}

fn come_in_here(browser: &Browser, file: &std::path::Path) -> anyhow::Result<()> {
    browser.go("hand-over")?;
    browser.upload("asf-job-file-in input[type=file]", file)?;
    browser.press_words("asf-job-file-in", "Bring it in")?;
    browser.wait_for_text("asf-job-file-in", "Brought in")
}

/// Everything that a person sees of a job, from the core; without the tags of the device.
pub(crate) fn views(browser: &Browser) -> anyhow::Result<Vec<Value>> {
    browser.wait_for_js("globalThis.desk?.current() && document.querySelector('main h1')", Duration::from_secs(10))?;
    let parts = browser.view(&json!({ "ask": "parts" }))?;
    let mut seen = Vec::new();
    for row in parts["rows"].as_array().into_iter().flatten() {
        seen.push(browser.view(&json!({ "ask": "part", "part": row["id"] }))?);
    }
    for ask in ["assemblies", "places", "problems"] {
        seen.push(browser.view(&json!({ "ask": ask }))?);
    }
    seen.push(parts);
    Ok(seen)
}
