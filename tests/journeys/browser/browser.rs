//! Starting and ending a browser.

use std::future::Future;
use std::thread;
use std::time::Duration;

use anyhow::{Context, bail};
use serde_json::{Value, json};
use thirtyfour::WebDriver;
use thirtyfour::error::WebDriverResult;
use tokio::runtime::{Builder, Runtime};

use crate::capabilities::capabilities;
use crate::complaints::{Complaints, TELL_REFUSALS};
use crate::driver::{Driver, Killer};
use crate::engine::{Engine, Size};
use crate::profile::Profile;

/// The longest a single command may take: past that a test fails, not hangs.
const COMMAND: Duration = Duration::from_secs(60);

/// A running browser. Dropping it ends the browser, its driver and its display, and fails the test when a page has complained.
pub struct Browser {
    engine: Engine,
    session: Option<WebDriver>,
    runtime: Runtime,
    driver: Driver,
    pub(crate) complaints: Complaints,
}

impl Browser {
    /// Starts an engine with a window of a size and everything in a profile.
    /// The profile may come from a browser that was killed.
    pub fn start(engine: Engine, size: Size, profile: &Profile) -> anyhow::Result<Self> {
        let runtime = Builder::new_current_thread().enable_all().build()?;
        let driver = Driver::start(engine, profile)?;
        let wanted = capabilities(engine, size, profile);
        let opening = async { WebDriver::builder(driver.address(), wanted).request_timeout(COMMAND).await };
        let session = runtime.block_on(opening).with_context(|| format!("{engine:?} does not start"))?;
        let browser = Self { engine, session: Some(session), runtime, driver, complaints: Complaints::default() };
        browser.prepare(size)?;
        Ok(browser)
    }

    /// The engine this is.
    pub fn engine(&self) -> Engine {
        self.engine
    }

    /// Ends the browser with all its processes at once (SIGKILL), as when a
    /// phone takes the memory back. The profile stays as it was at that moment.
    pub fn kill(mut self) -> anyhow::Result<()> {
        self.has_no_complaints()?;
        self.forget_session();
        match self.driver.kill_browser() {
            0 => bail!("{:?} was not running any more", self.engine),
            _ => Ok(()),
        }
    }

    /// What kills this browser from another thread, in the middle of whatever it is asked.
    pub fn killer(&self) -> Killer {
        self.driver.killer()
    }

    /// Ends the browser in the orderly way.
    pub fn quit(mut self) -> anyhow::Result<()> {
        self.has_no_complaints()?;
        match self.session.take() {
            Some(session) => Ok(self.runtime.block_on(session.quit())?),
            None => Ok(()),
        }
    }

    /// A command of Chromium's own protocol, such as a frozen window.
    pub fn devtools(&self, method: &str, parameters: Value) -> anyhow::Result<Value> {
        if self.engine != Engine::Chromium {
            bail!("{:?} has no such protocol", self.engine);
        }
        self.ask(|session| async move { session.cdp().send_raw(method, parameters).await })
    }

    /// One command to the driver, by the client library itself, for whatever
    /// this harness has no word for.
    pub fn ask<'a, T, F>(&'a self, command: impl FnOnce(&'a WebDriver) -> F) -> anyhow::Result<T>
    where
        F: Future<Output = WebDriverResult<T>>,
    {
        let session = self.session.as_ref().context("the browser has ended")?;
        Ok(self.runtime.block_on(command(session))?)
    }

    fn prepare(&self, size: Size) -> anyhow::Result<()> {
        self.ask(|session| session.set_script_timeout(COMMAND))?;
        if self.engine == Engine::Chromium {
            self.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": TELL_REFUSALS }))?;
            return Ok(());
        }
        self.fit(size)
    }

    /// Makes the window as much larger than the page as its frame needs. The
    /// engine may refuse to be as narrow as a phone.
    fn fit(&self, size: Size) -> anyhow::Result<()> {
        let (width, height) = size.pixels();
        let measure = "return [outerWidth - innerWidth, outerHeight - innerHeight]";
        let frame = self.run_js(measure, vec![])?;
        let extra = |at: usize| u32::try_from(frame[at].as_i64().unwrap_or(0).max(0)).unwrap_or(0);
        self.ask(|session| session.set_window_rect(0, 0, width + extra(0), height + extra(1)))
    }

    /// Without this the client would wait for an answer from a dead browser.
    fn forget_session(&mut self) {
        if let Some(session) = self.session.take() {
            // It fails only for a session that has ended, which is the aim.
            let _ = session.leak();
        }
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        let is_over = self.session.is_none() || self.driver.was_killed() || thread::panicking();
        let complained = if is_over { Ok(()) } else { self.has_no_complaints() };
        self.forget_session();
        if let Err(complaints) = complained {
            panic!("{complaints}");
        }
    }
}
