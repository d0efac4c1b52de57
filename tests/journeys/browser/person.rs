//! Doing the job as a person does it: by taps, keys and the words on the screen.

use std::time::Duration;

use anyhow::{Context, bail};
use serde_json::{Value, json};

use crate::browser::Browser;

/// How long a photo may take until its tick on a machine that does two things at once.
const TICKED: Duration = Duration::from_secs(20);

/// Finds what can be pressed by the words on it, or by the name that a reader of the screen hears.
const BY_WORDS: &str = "
    const [scope, words] = arguments;
    const plain = (text) => (text ?? '').replace(/\\s+/g, ' ').trim();
    const seen = (element) => element.getClientRects().length > 0 && !element.disabled;
    const named = (element) => [plain(element.textContent), plain(element.getAttribute('aria-label'))];
    const all = [...document.querySelectorAll(scope)]
        .flatMap((within) => [...within.querySelectorAll('button, a[href], label, summary, select')]).filter(seen);
    return all.find((one) => named(one).includes(words)) ?? all.find((one) => named(one).some((name) => name.startsWith(words))) ?? null;";

/// Finds a field by its label.
const BY_LABEL: &str = "
    const [scope, words] = arguments;
    const plain = (text) => (text ?? '').replace(/\\s+/g, ' ').trim();
    const fields = [...document.querySelectorAll(scope)].flatMap((within) => [...within.querySelectorAll('input, textarea, select')]);
    const labels = (field) => [...(field.labels ?? [])].map((label) => plain(label.textContent));
    return fields.find((field) => field.getClientRects().length > 0 && labels(field).includes(words)) ?? null;";

impl Browser {
    /// Presses the button, link or tile with these words on it (or that begins with them), within a part of the page.
    pub fn press_words(&self, within: &str, words: &str) -> anyhow::Result<()> {
        let element = self.found(BY_WORDS, within, words)?;
        self.run_js("arguments[0].scrollIntoView({ block: 'center' })", vec![element.to_json()?])?;
        self.ask(|_| element.click()).with_context(|| format!("pressing {words:?} within {within}"))
    }

    /// Whether something with these words could be pressed now.
    pub fn offers(&self, within: &str, words: &str) -> anyhow::Result<bool> {
        Ok(!self.run_js(BY_WORDS, vec![json!(within), json!(words)])?.is_null())
    }

    /// Types into the field with this label, after what it holds.
    pub fn write_into(&self, within: &str, label: &str, words: &str) -> anyhow::Result<()> {
        let element = self.found(BY_LABEL, within, label)?;
        self.ask(|_| element.send_keys(words)).with_context(|| format!("typing into {label:?}"))
    }

    /// What the field with this label holds.
    pub fn value_of(&self, within: &str, label: &str) -> anyhow::Result<String> {
        let element = self.found(BY_LABEL, within, label)?;
        let value = self.run_js("return arguments[0].value", vec![element.to_json()?])?;
        Ok(value.as_str().unwrap_or_default().to_owned())
    }

    /// Goes to a place of the app, without loading the page again.
    pub fn go(&self, place: &str) -> anyhow::Result<()> {
        self.run_js("location.hash = arguments[0]", vec![json!(format!("#/{place}"))])?;
        let name = place.split(['/', '?']).next().unwrap_or(place);
        self.wait_for(&format!("asf-place-{name} h1")).with_context(|| format!("going to {place}"))
    }

    /// From the first screen to the strip of a new job, whose camera is live.
    pub fn start_job(&self, name: &str) -> anyhow::Result<()> {
        self.start_job_without_camera(name)?;
        self.wait_for_camera()
    }

    /// From the first screen to the strip of a new job.
    pub fn start_job_without_camera(&self, name: &str) -> anyhow::Result<()> {
        self.press_words("asf-place-first", "Start a job")?;
        self.write_into("asf-place-first", "What is the vehicle called?", name)?;
        self.press_words("asf-place-first form", "Start")?;
        self.wait_for("asf-place-teardown .td-tag")
    }

    /// Waits until the strip can take a photo.
    pub fn wait_for_camera(&self) -> anyhow::Result<()> {
        self.wait_for("asf-place-teardown .sight-live .td-tag").context("the camera at the strip")
    }

    /// One tap on the shutter.
    pub fn shoot(&self) -> anyhow::Result<()> {
        self.click("asf-shutter button")
    }

    /// Waits until the part in hand has as many photos with a tick as this.
    pub fn wait_until_ticked(&self, photos: u64) -> anyhow::Result<()> {
        let ticked = format!("Number(document.querySelector('.td-count [data-safe]')?.dataset.safe ?? 0) >= {photos}");
        self.wait_for_js(&ticked, TICKED).with_context(|| format!("{photos} ticks"))
    }

    /// How many photos of the part in hand have a tick.
    pub fn ticked(&self) -> anyhow::Result<u64> {
        let ticked =
            self.run_js("return Number(document.querySelector('.td-count [data-safe]')?.dataset.safe ?? 0)", vec![])?;
        ticked.as_u64().context("a count of ticks")
    }

    /// The tag in hand at the strip.
    pub fn tag_in_hand(&self) -> anyhow::Result<String> {
        let tag = self.run_js("return document.querySelector('asf-place-teardown .td-tag')?.number ?? ''", vec![])?;
        Ok(tag.as_str().unwrap_or_default().to_owned())
    }

    /// One tap on the next tag; the strip shows it.
    pub fn next_tag(&self) -> anyhow::Result<()> {
        let before = self.tag_in_hand()?;
        self.click("asf-next-tag button")?;
        let changed = format!("document.querySelector('asf-place-teardown .td-tag')?.number !== {}", json!(before));
        self.wait_for_js(&changed, Duration::from_secs(5)).context("the next tag")
    }

    /// Records a part with so many photos, and waits for their ticks.
    pub fn record_part(&self, photos: u64) -> anyhow::Result<()> {
        for _ in 0..photos {
            self.shoot()?;
        }
        self.wait_until_ticked(photos)
    }

    /// Opens the first job that the first screen lists.
    pub fn open_first_job(&self) -> anyhow::Result<()> {
        self.click("asf-place-first .first-job")?;
        self.wait_for("asf-place-teardown")
    }

    fn found(&self, script: &str, within: &str, words: &str) -> anyhow::Result<thirtyfour::WebElement> {
        let start = std::time::Instant::now();
        loop {
            let answer = self.ask(|session| session.execute(script, vec![json!(within), json!(words)]));
            if let Ok(answer) = answer
                && *answer.json() != Value::Null
            {
                return Ok(answer.element()?);
            }
            if start.elapsed() > Duration::from_secs(10) {
                bail!(
                    "nothing called {words:?} within {within}\nthe page says: {}",
                    self.text("body").unwrap_or_default()
                );
            }
            std::thread::sleep(Duration::from_millis(25));
        }
    }
}
