//! A person at the app: a browser, what it keeps, and the server behind it.

use std::path::Path;

use asfound_demo::server::Site;

use crate::app::App;
use crate::browser::Browser;
use crate::engine::{Engine, Size};
use crate::profile::Profile;

/// One person's browser at the app. The browser ends before what it needs.
pub struct Visit {
    /// The browser.
    pub browser: Browser,
    /// What it keeps.
    pub profile: Profile,
    /// The server.
    pub app: App,
    size: Size,
    after: &'static str,
}

impl Visit {
    /// Someone who was never here, at the first screen, with everything kept for use without a network.
    pub fn first(engine: Engine, size: Size) -> anyhow::Result<Self> {
        Self::at(engine, size, "", Profile::fresh()?)
    }

    /// The same with faults on purpose at hand, and the desk at `globalThis.desk`.
    pub fn with_faults(size: Size) -> anyhow::Result<Self> {
        Self::at(Engine::Chromium, size, "?faults", Profile::fresh()?)
    }

    /// The same with a film before the camera.
    pub fn with_film(size: Size, film: &Path) -> anyhow::Result<Self> {
        Self::at(Engine::Chromium, size, "?faults", Profile::with_film(film)?)
    }

    fn at(engine: Engine, size: Size, after: &'static str, profile: Profile) -> anyhow::Result<Self> {
        let app = App::start()?;
        let browser = Browser::start(engine, size, &profile)?;
        let visit = Self { browser, profile, app, size, after };
        visit.open()?;
        visit.browser.wait_for("asf-place-first")?;
        visit.browser.wait_until_kept()?;
        Ok(visit)
    }

    /// Loads the app at its plain address: it goes to where the person was.
    pub fn open(&self) -> anyhow::Result<()> {
        self.browser.open(&format!("{}{}", self.app.address(), self.after))
    }

    /// Loads it so that the core can be asked through `Browser::view`.
    pub fn open_with_desk(&mut self) -> anyhow::Result<()> {
        self.after = "?faults";
        self.open()
    }

    /// The browser is killed with all its processes, started again on the same profile, and the app opened.
    pub fn killed_and_back(self) -> anyhow::Result<Self> {
        let Self { browser, profile, app, size, after } = self;
        let engine = browser.engine();
        browser.kill()?;
        let browser = Browser::start(engine, size, &profile)?;
        let visit = Self { browser, profile, app, size, after };
        visit.open()?;
        Ok(visit)
    }

    /// The same address, but another folder behind it.
    pub fn serve(&mut self, site: impl FnOnce(&mut Site)) -> anyhow::Result<()> {
        self.app.change(site)
    }
}
