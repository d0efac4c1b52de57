//! A sheet of plain tags as it is printed: the size of the page, a tag in the middle of each label, and nothing of the screen.

use anyhow::{Context, ensure};
use asfound_journeys::{Browser, Engine, Size, Visit};
use serde::Deserialize;
use serde_json::json;

/// CSS pixels in a millimetre: 96 to the inch of 25.4.
const PIXELS: f64 = 96.0 / 25.4;
/// What a screen's rounding may move a line by, in millimetres.
const EXACT: f64 = 0.1;

/// The labels as they are sold, in millimetres.
struct Paper {
    word: &'static str,
    page: (f64, f64),
    across: usize,
    down: usize,
    label: (f64, f64),
    first: (f64, f64),
    pitch: (f64, f64),
}

const A4: Paper = Paper {
    word: "A4",
    page: (210.0, 297.0),
    across: 3,
    down: 7,
    label: (63.5, 38.1),
    first: (7.21, 15.15),
    pitch: (66.04, 38.1),
};

const LETTER: Paper = Paper {
    word: "Letter",
    page: (215.9, 279.4),
    across: 3,
    down: 10,
    label: (66.675, 25.4),
    first: (4.7625, 12.7),
    pitch: (69.85, 25.4),
};

/// Left, top, width and height.
type Box = [f64; 4];

#[derive(Deserialize)]
struct Printed {
    sheets: Vec<Box>,
    /// By sheet: the number and the outline of each tag.
    tags: Vec<Vec<(String, Box)>>,
    /// Whatever else can be seen.
    others: Vec<String>,
}

const MEASURE: &str = "
    const box = (element) => { const { left, top, width, height } = element.getBoundingClientRect(); return [left + scrollX, top + scrollY, width, height]; };
    const sheets = [...document.querySelectorAll('.ts-sheet')];
    const tags = sheets.map((sheet) => [...sheet.querySelectorAll('g')].map((tag) => [tag.textContent.trim(), box(tag.querySelector('path'))]));
    const seen = (element) => { const { width, height } = element.getBoundingClientRect(); return width > 1 && height > 1 && element.checkVisibility({ visibilityProperty: true, opacityProperty: true }); };
    const isOther = (element) => !element.closest('.ts-sheet') && (element.matches('svg, img, input, button, video, canvas, dialog') || [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.data.trim()));
    const others = [...document.body.querySelectorAll('*')].filter((element) => isOther(element) && seen(element)).map((element) => element.outerHTML.slice(0, 120));
    return { sheets: sheets.map(box), tags, others };";

fn measured(browser: &Browser) -> anyhow::Result<Printed> {
    browser.devtools("Emulation.setEmulatedMedia", json!({ "media": "print" }))?;
    let printed = browser.run_js(MEASURE, vec![])?;
    browser.devtools("Emulation.setEmulatedMedia", json!({ "media": "" }))?;
    Ok(serde_json::from_value(printed)?)
}

fn near(here: f64, there: f64) -> bool {
    (here - there).abs() <= EXACT
}

impl Paper {
    /// Two sheets, with so many labels used on the first.
    fn is_printed_exactly(&self, printed: &Printed, from: usize, used: usize) -> anyhow::Result<()> {
        ensure!(printed.others.is_empty(), "the screen is printed, too: {:?}", printed.others);
        let all = self.across * self.down;
        let counts: Vec<_> = printed.tags.iter().map(Vec::len).collect();
        ensure!(counts == [all - used, all], "{counts:?} tags instead of {}, {all}", all - used);
        let mut number = from;
        for (nth, (sheet, tags)) in printed.sheets.iter().zip(&printed.tags).enumerate() {
            let [left, top, width, height] = sheet.map(|pixels| pixels / PIXELS);
            ensure!(near(width, self.page.0) && near(height, self.page.1), "the page is {width} × {height} mm");
            ensure!(
                near(left, 0.0) && near(top - printed.sheets[0][1] / PIXELS, self.page.1 * nth as f64),
                "sheet {nth} lies at {left}, {top}"
            );
            let first = if nth == 0 { used } else { 0 };
            for (at, (figures, tag)) in (first..all).zip(tags) {
                ensure!(*figures == format!("{number:04}"), "{figures} instead of {number}");
                self.is_amid_its_label(at, tag.map(|pixels| pixels / PIXELS), (left, top))
                    .with_context(|| format!("tag {number}"))?;
                number += 1;
            }
        }
        Ok(())
    }

    fn is_amid_its_label(&self, at: usize, tag: Box, sheet: (f64, f64)) -> anyhow::Result<()> {
        let (column, row) = ((at % self.across) as f64, (at / self.across) as f64);
        let left = sheet.0 + self.first.0 + column * self.pitch.0;
        let top = sheet.1 + self.first.1 + row * self.pitch.1;
        let middle = (left + self.label.0 / 2.0, top + self.label.1 / 2.0);
        ensure!(
            near(tag[0] + tag[2] / 2.0, middle.0) && near(tag[1] + tag[3] / 2.0, middle.1),
            "{tag:?} is not in the middle of the label at {left}, {top}"
        );
        // As large as fits with 3 mm left around it for printers that are not exact.
        let (beside, above) = ((self.label.0 - tag[2]) / 2.0, (self.label.1 - tag[3]) / 2.0);
        ensure!(beside >= 2.9 && above >= 2.9 && beside.min(above) < 3.5, "{beside} and {above} mm are left around it");
        Ok(())
    }

    /// The pages of the printed file, with their size in points.
    fn has_its_pages(&self, browser: &Browser, pages: usize) -> anyhow::Result<()> {
        let printed =
            browser.devtools("Page.printToPDF", json!({ "preferCSSPageSize": true, "printBackground": true }))?;
        let bytes = browser.run_js("return atob(arguments[0])", vec![printed["data"].clone()])?;
        let file = bytes.as_str().unwrap_or_default();
        let sizes: Vec<(f64, f64)> = file
            .split("/MediaBox [")
            .skip(1)
            .filter_map(|rest| {
                let mut figures = rest.split(']').next()?.split_whitespace().skip(2).map(str::parse);
                Some((figures.next()?.ok()?, figures.next()?.ok()?))
            })
            .collect();
        ensure!(sizes.len() == pages, "{} pages instead of {pages}", sizes.len());
        let points = |millimetres: f64| millimetres / 25.4 * 72.0;
        let fits = |(width, height): &(f64, f64)| {
            (width - points(self.page.0)).abs() < 1.0 && (height - points(self.page.1)).abs() < 1.0
        };
        ensure!(sizes.iter().all(fits), "pages of {sizes:?} points");
        Ok(())
    }
}

fn prints(size: Size) -> anyhow::Result<()> {
    let visit = Visit::first(Engine::Chromium, size)?;
    let browser = &visit.browser;
    browser.start_job("The grey saloon")?;
    browser.record_part(1)?;
    browser.go("tags-sheet")?;
    browser.press_words("asf-place-tags-sheet", "One sheet more")?;
    for paper in [A4, LETTER] {
        browser.press_words("asf-place-tags-sheet", paper.word)?;
        for used in [0, 5] {
            browser.replace_in("asf-place-tags-sheet asf-field:last-of-type input", &used.to_string())?;
            paper
                .is_printed_exactly(&measured(browser)?, 2, used)
                .with_context(|| format!("{}, {used} used", paper.word))?;
        }
        paper.has_its_pages(browser, 2).with_context(|| paper.word)?;
    }
    Ok(())
}

#[test]
fn chromium_prints_on_phone() -> anyhow::Result<()> {
    prints(Size::Phone)
}

#[test]
fn chromium_prints_on_desk() -> anyhow::Result<()> {
    prints(Size::Desk)
}
