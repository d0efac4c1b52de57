//! The engines and the two sizes the app is looked at in.

use std::path::PathBuf;

use asfound_demo::workspace;

/// A browser engine with its driver.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Chromium, headless; emulates phones, camera and touch.
    Chromium,
    /// Firefox, headless; no narrower than 500 px.
    Firefox,
    /// WebKitGTK on a display of its own; no narrower than 447 px, and nothing
    /// it stores outlives it.
    WebKit,
}

/// The size of the page, in CSS pixels.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Size {
    /// 390 × 844, touch, three device pixels each.
    Phone,
    /// 1280 × 800.
    Desk,
}

impl Size {
    /// Width and height.
    pub fn pixels(self) -> (u32, u32) {
        match self {
            Size::Phone => (390, 844),
            Size::Desk => (1280, 800),
        }
    }
}

impl Engine {
    /// The browser's program.
    pub(crate) fn program(self) -> &'static str {
        match self {
            Engine::Chromium => "/usr/bin/chromium",
            Engine::Firefox => "/usr/bin/firefox-esr",
            Engine::WebKit => "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser",
        }
    }

    /// The driver's program; the usual variable for it may name another.
    pub(crate) fn driver(self) -> PathBuf {
        let (variable, usual) = match self {
            Engine::Chromium => ("CHROMEDRIVER", PathBuf::from("/usr/bin/chromedriver")),
            Engine::Firefox => ("GECKODRIVER", workspace::root().join("tests/.tools/bin/geckodriver")),
            Engine::WebKit => ("SAFARIDRIVER", PathBuf::from("/usr/bin/WebKitWebDriver")),
        };
        std::env::var_os(variable).map_or(usual, PathBuf::from)
    }
}
