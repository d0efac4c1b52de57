//! What every later journey leans on: a file can be taken from a page.

use std::fs;
use std::time::Duration;

use asfound_journeys::{App, Browser, Engine, Profile, Size};

fn saves_a_file(engine: Engine) -> anyhow::Result<()> {
    let app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(engine, Size::Desk, &profile)?;
    browser.open(app.address())?;
    // A page that is still coming up may take the link away with it.
    browser.wait_for("asfound-app main")?;
    browser.wait_until_kept()?;
    let save = "const link = document.createElement('a');
        link.href = URL.createObjectURL(new Blob(['tag,name'], { type: 'text/csv' }));
        link.download = 'list.csv';
        document.body.append(link);
        link.click();";
    browser.run_js(save, vec![])?;
    let file = profile.wait_for_download("list.csv", Duration::from_secs(30))?;
    assert_eq!(fs::read_to_string(file)?, "tag,name");
    Ok(())
}

#[test]
fn chromium_saves_a_file() -> anyhow::Result<()> {
    saves_a_file(Engine::Chromium)
}

#[test]
fn firefox_saves_a_file() -> anyhow::Result<()> {
    saves_a_file(Engine::Firefox)
}

#[test]
fn webkit_saves_a_file() -> anyhow::Result<()> {
    saves_a_file(Engine::WebKit)
}
