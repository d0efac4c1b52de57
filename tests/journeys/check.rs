//! The main job once, in a headless browser, for `demo/run --check`.

use asfound_journeys::{App, Browser, Engine, Profile, Size};

fn main() -> anyhow::Result<()> {
    let app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(Engine::Chromium, Size::Phone, &profile)?;
    browser.open(app.address())?;
    browser.wait_for("asfound-app main")?;
    println!("the app comes up at {}", app.address());
    browser.quit()
}
