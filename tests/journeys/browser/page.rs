//! Looking at a page.

use std::path::Path;
use std::time::{Duration, Instant};

use anyhow::{Context, bail};
use serde_json::{Value, json};
use thirtyfour::{By, WebElement, WindowHandle};

use crate::browser::Browser;

/// How long things may take to appear when a test names no time of its own.
const SOON: Duration = Duration::from_secs(10);
const PAUSE: Duration = Duration::from_millis(25);

impl Browser {
    /// Goes to an address and waits for the page to have loaded.
    pub fn open(&self, address: &str) -> anyhow::Result<()> {
        self.ask(|session| session.goto(address)).with_context(|| format!("opening {address}"))
    }

    /// Loads the page again as the app itself would. A driver's own refresh
    /// goes past the service worker in Firefox.
    pub fn reload(&self) -> anyhow::Result<()> {
        self.run_js("window.__old = 1; setTimeout(() => location.reload(), 0)", vec![])?;
        self.wait_for_js("!window.__old && document.readyState === 'complete'", SOON)
    }

    /// Runs the body of a function; `arguments` holds what it is given.
    pub fn run_js(&self, body: &str, arguments: Vec<Value>) -> anyhow::Result<Value> {
        let answer = self.ask(|session| session.execute(body, arguments)).with_context(|| format!("running {body}"))?;
        Ok(answer.json().clone())
    }

    /// Runs the body of an async function, which may use `await`; `given`
    /// holds what it is given.
    pub fn run_async_js(&self, body: &str, given: Vec<Value>) -> anyhow::Result<Value> {
        let whole = format!(
            "const given = arguments[0], done = arguments[1];
             (async () => {{ {body} }})().then(
                (value) => done({{ value: value ?? null }}),
                (error) => done({{ error: String(error?.stack ?? error) }}));"
        );
        let run = self.ask(|session| session.execute_async(whole, vec![Value::Array(given)]));
        let answer = run.with_context(|| format!("running {body}"))?.json().clone();
        match answer.get("error").and_then(Value::as_str) {
            Some(error) => bail!("{error}\nin {body}"),
            None => Ok(answer["value"].clone()),
        }
    }

    /// Waits for an element to be there.
    pub fn wait_for(&self, selector: &str) -> anyhow::Result<()> {
        let there = format!("document.querySelector({}) !== null", json!(selector));
        self.wait_for_js(&there, SOON)
    }

    /// Waits for an element to be gone.
    pub fn wait_until_gone(&self, selector: &str) -> anyhow::Result<()> {
        let gone = format!("document.querySelector({}) === null", json!(selector));
        self.wait_for_js(&gone, SOON)
    }

    /// Waits for an element whose text holds some words.
    pub fn wait_for_text(&self, selector: &str, words: &str) -> anyhow::Result<()> {
        let reads = format!(
            "[...document.querySelectorAll({})].some((e) => e.textContent.includes({}))",
            json!(selector),
            json!(words)
        );
        self.wait_for_js(&reads, SOON)
    }

    /// Waits until an element says some words; spaces that keep words together count as any other.
    pub fn says(&self, within: &str, words: &str) -> anyhow::Result<()> {
        let said = format!(
            "[...document.querySelectorAll({})].some((one) => one.textContent.replace(/\\s+/g, ' ').includes({}))",
            json!(within),
            json!(words)
        );
        self.wait_for_js(&said, SOON).with_context(|| format!("{within} does not say {words:?}"))
    }

    /// Waits for a JavaScript expression to be true. While a page is being
    /// replaced a script may fail; only the last failure counts.
    pub fn wait_for_js(&self, expression: &str, within: Duration) -> anyhow::Result<()> {
        let start = Instant::now();
        loop {
            let answer = self.run_js(&format!("return Boolean({expression})"), vec![]);
            if matches!(answer, Ok(Value::Bool(true))) {
                return Ok(());
            }
            if start.elapsed() > within {
                let said = answer.map_or_else(|e| format!("{e:#}"), |_| self.text("body").unwrap_or_default());
                bail!("not within {within:?}: {expression}\nthe page says: {said}");
            }
            std::thread::sleep(PAUSE);
        }
    }

    /// The element's visible text.
    pub fn text(&self, selector: &str) -> anyhow::Result<String> {
        let element = self.element(selector)?;
        self.ask(|_| element.text())
    }

    /// How many elements there are.
    pub fn count(&self, selector: &str) -> anyhow::Result<u64> {
        let number = self.run_js("return document.querySelectorAll(arguments[0]).length", vec![json!(selector)])?;
        number.as_u64().context("a count is a number")
    }

    /// Saves a picture of what is in the window.
    pub fn screenshot(&self, path: &Path) -> anyhow::Result<()> {
        if let Some(folder) = path.parent() {
            std::fs::create_dir_all(folder)?;
        }
        self.ask(|session| session.screenshot(path))
    }

    /// Lets the page believe in a light or dark system (Chromium only).
    pub fn prefer_dark(&self, dark: bool) -> anyhow::Result<()> {
        let value = if dark { "dark" } else { "light" };
        let feature = json!({ "features": [{ "name": "prefers-color-scheme", "value": value }] });
        self.devtools("Emulation.setEmulatedMedia", feature).map(drop)
    }

    /// Waits until the app would start with no signal: the service worker is
    /// active and holds every file of its list.
    pub fn wait_until_kept(&self) -> anyhow::Result<()> {
        let kept = self.run_async_js(
            "await navigator.serviceWorker.ready;
             const at = (file) => caches.match(new URL(file, document.baseURI).href, { ignoreSearch: true });
             const files = await (await at('precache.json'))?.json();
             return Boolean(files?.length) && (await Promise.all(files.map(at))).every(Boolean);",
            vec![],
        )?;
        if kept != json!(true) {
            bail!("the service worker is active, and not every file is kept");
        }
        Ok(())
    }

    /// Opens another window on the same profile and turns to it.
    pub fn new_window(&self) -> anyhow::Result<WindowHandle> {
        let handle = self.ask(|session| session.new_tab())?;
        self.switch_to(&handle)?;
        Ok(handle)
    }

    /// The window in use.
    pub fn window(&self) -> anyhow::Result<WindowHandle> {
        self.ask(|session| session.window())
    }

    /// Turns to a window.
    pub fn switch_to(&self, window: &WindowHandle) -> anyhow::Result<()> {
        self.ask(|session| session.switch_to_window(window.clone()))
    }

    pub(crate) fn element(&self, selector: &str) -> anyhow::Result<WebElement> {
        self.ask(|session| session.find(By::Css(selector))).with_context(|| format!("finding {selector}"))
    }
}
