//! A browser in a test's hands: start it, use it, take its network away, end it
//! the hard way. Every call blocks, is bounded in time, and fails with words.
//!
//! ```no_run
//! use asfound_journeys::{App, Browser, Engine, Profile, Size};
//!
//! let app = App::start()?;
//! let profile = Profile::fresh()?;
//! let browser = Browser::start(Engine::Chromium, Size::Phone, &profile)?;
//! browser.open(app.address())?;
//! browser.wait_for("asfound-app")?;
//! # anyhow::Ok(())
//! ```

mod app;
mod axe;
mod browser;
mod capabilities;
mod complaints;
mod database;
mod driver;
mod engine;
mod input;
mod page;
mod person;
mod processes;
mod profile;
mod sent_job;
mod visit;

pub use app::App;
pub use axe::Violation;
pub use browser::Browser;
pub use database::Stored;
pub use driver::Killer;
pub use engine::{Engine, Size};
pub use profile::Profile;
pub use sent_job::SentJob;
pub use thirtyfour::{Key, WindowHandle};
pub use visit::Visit;
