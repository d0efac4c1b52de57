//! Sheets of tags: chosen, looked at, made as a PDF and handed out.

use std::fs;
use std::time::Duration;

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Size, Visit};
use serde_json::json;

const SOON: Duration = Duration::from_secs(20);

/// The paper as it is sold, in millimetres: its word, width and height, and how many labels are on it.
struct Paper {
    word: &'static str,
    page: (f64, f64),
    labels: usize,
}

const PAPERS: [Paper; 3] = [
    Paper { word: "A4 labels", page: (210.0, 297.0), labels: 21 },
    Paper { word: "Letter labels", page: (215.9, 279.4), labels: 30 },
    Paper { word: "Strips to tie on", page: (210.0, 297.0), labels: 18 },
];

const PLACE: &str = "asf-place-tags-sheet";

/// Whether the preview shows a sheet so wide, so many symbols, and says these words.
fn shows(browser: &Browser, width: f64, symbols: usize, words: &str) -> anyhow::Result<()> {
    let sheet = "document.querySelector('.ts-sheet')";
    let seen = format!(
        "{sheet} && Math.abs({sheet}.viewBox.baseVal.width - {width}) < 0.05
         && {sheet}.querySelectorAll('.ts-dark').length === {symbols} && {sheet}.getAttribute('aria-label').includes({})",
        json!(words)
    );
    browser.wait_for_js(&seen, SOON)
}

/// Makes the file and saves it: its pages, in points.
fn made(visit: &Visit) -> anyhow::Result<Vec<(f64, f64)>> {
    visit.browser.press_words(PLACE, "Make the PDF")?;
    visit.browser.wait_for("asf-prepared .prepared-save")?;
    visit.browser.press_words("asf-prepared", "Save to this device")?;
    let path = visit.profile.wait_for_download("-tags.pdf", SOON)?;
    let file = fs::read(&path)?;
    fs::remove_file(path)?;
    ensure!(file.starts_with(b"%PDF-1."), "it is no PDF");
    let file = String::from_utf8_lossy(&file).into_owned();
    let sizes = file.split("/MediaBox [").skip(1).filter_map(|rest| {
        let mut figures = rest.split(']').next()?.split_whitespace().skip(2).map(str::parse);
        Some((figures.next()?.ok()?, figures.next()?.ok()?))
    });
    Ok(sizes.collect())
}

/// The first label of the preview, as a camera would see it, given to the reader.
const READ: &str = "
    const dark = document.querySelector('.ts-dark');
    const box = dark.getBBox();
    const canvas = new OffscreenCanvas(480, 360);
    const paint = canvas.getContext('2d');
    paint.fillStyle = '#ffffff';
    paint.fillRect(0, 0, 480, 360);
    paint.setTransform(9, 0, 0, 9, 150 - 9 * box.x, 90 - 9 * box.y);
    paint.fillStyle = '#14191b';
    paint.fill(new Path2D(dark.getAttribute('d')));
    const image = paint.getImageData(0, 0, 480, 360);
    return desk.readFrame(image.data.buffer, 480, 360);";

fn prints(size: Size) -> anyhow::Result<()> {
    let visit = Visit::with_faults(size)?;
    let browser = &visit.browser;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.go("tags-sheet")?;
    browser.wait_for(".ts-sheet")?;
    browser.press_words(PLACE, "One sheet more")?;
    for paper in PAPERS {
        browser.press_words(PLACE, paper.word)?;
        let is_strips = paper.word.starts_with("Strips");
        if is_strips {
            browser.press_words(&format!("{PLACE} asf-choice:nth-of-type(2)"), "A4")?;
        }
        let sides = if is_strips { 2 } else { 1 };
        // The part that is there has taken number 1: the sheet begins with the next one.
        shows(browser, paper.page.0, paper.labels * sides, "0002-8 to").context(paper.word)?;
        let sizes = made(&visit).context(paper.word)?;
        let near = |here: f64, millimetres: f64| (here - millimetres / 25.4 * 72.0).abs() < 0.05;
        let fits = |page: &(f64, f64)| near(page.0, paper.page.0) && near(page.1, paper.page.1);
        ensure!(sizes.len() == 2 && sizes.iter().all(fits), "{}: pages of {sizes:?} points", paper.word);
    }
    ensure!(browser.run_async_js(READ, vec![])? == json!(["00028"]), "the first label is not read");
    // Labels that do not fit are told, and no file is made of them.
    browser.press_words(PLACE, "Labels of your own")?;
    browser.replace_in("asf-own-sheet asf-field:nth-of-type(6) input", "9")?;
    browser.says(PLACE, "The labels need more than the sheet has: height 333.5 mm needed, 297.0 mm there.")?;
    ensure!(!browser.offers(PLACE, "Make the PDF")?, "a file is offered all the same");
    browser.replace_in("asf-own-sheet asf-field:nth-of-type(6) input", "8")?;
    shows(browser, 210.0, 24, "0002-8 to")?;
    // The part with its name, and no place that has a number.
    browser.press_words(PLACE, "Partswith their names")?;
    shows(browser, 210.0, 1, "0001-X")?;
    browser.press_words(PLACE, "Placesboxes")?;
    browser.says(PLACE, "Nothing to print.")
}

#[test]
fn chromium_prints_on_phone() -> anyhow::Result<()> {
    prints(Size::Phone)
}

#[test]
fn chromium_prints_on_desk() -> anyhow::Result<()> {
    prints(Size::Desk)
}
