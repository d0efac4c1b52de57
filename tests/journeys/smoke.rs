//! The app comes up, with and without a network, in every engine.

use std::path::Path;

use asfound_journeys::{App, Browser, Engine, Profile, Size};

fn comes_up(engine: Engine, size: Size) -> anyhow::Result<()> {
    let mut app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(engine, size, &profile)?;
    browser.open(app.address())?;
    browser.wait_for("asfound-app main")?;
    browser.wait_until_kept()?;

    app.go_offline()?;
    browser.reload()?;
    browser.wait_for("asfound-app main")?;
    browser.open(&format!("{}rescue.html", app.address()))?;
    browser.wait_for("#rescue")?;
    Ok(())
}

#[test]
fn chromium_phone() -> anyhow::Result<()> {
    comes_up(Engine::Chromium, Size::Phone)
}

#[test]
fn chromium_desk() -> anyhow::Result<()> {
    comes_up(Engine::Chromium, Size::Desk)
}

#[test]
fn firefox() -> anyhow::Result<()> {
    comes_up(Engine::Firefox, Size::Desk)
}

#[test]
fn webkit() -> anyhow::Result<()> {
    comes_up(Engine::WebKit, Size::Desk)
}

fn starts_cold_after_a_kill(engine: Engine) -> anyhow::Result<()> {
    let mut app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(engine, Size::Phone, &profile)?;
    browser.open(app.address())?;
    browser.wait_until_kept()?;
    browser.kill()?;

    app.go_offline()?;
    let browser = Browser::start(engine, Size::Phone, &profile)?;
    browser.open(app.address())?;
    browser.wait_for("asfound-app main")?;
    browser.quit()
}

#[test]
fn chromium_starts_cold_after_a_kill() -> anyhow::Result<()> {
    starts_cold_after_a_kill(Engine::Chromium)
}

#[test]
fn firefox_starts_cold_after_a_kill() -> anyhow::Result<()> {
    starts_cold_after_a_kill(Engine::Firefox)
}

fn is_accessible(engine: Engine) -> anyhow::Result<()> {
    let app = App::start()?;
    let profile = Profile::fresh()?;
    let browser = Browser::start(engine, Size::Phone, &profile)?;
    browser.open(app.address())?;
    browser.wait_for("asfound-app main")?;
    let seen = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../.seen"));
    browser.screenshot(&seen.join(format!("first-{engine:?}.png")))?;
    let found = browser.axe(&[])?;
    anyhow::ensure!(found.is_empty(), "{}", found.iter().map(ToString::to_string).collect::<String>());
    Ok(())
}

#[test]
fn chromium_is_accessible() -> anyhow::Result<()> {
    is_accessible(Engine::Chromium)
}

#[test]
fn firefox_is_accessible() -> anyhow::Result<()> {
    is_accessible(Engine::Firefox)
}

#[test]
fn webkit_is_accessible() -> anyhow::Result<()> {
    is_accessible(Engine::WebKit)
}

#[test]
fn chromium_measures_as_asked() -> anyhow::Result<()> {
    let app = App::start()?;
    for size in [Size::Phone, Size::Desk] {
        let profile = Profile::fresh()?;
        let browser = Browser::start(Engine::Chromium, size, &profile)?;
        browser.open(app.address())?;
        let (width, height) = size.pixels();
        assert_eq!(browser.run_js("return [innerWidth, innerHeight]", vec![])?, serde_json::json!([width, height]));
        browser.prefer_dark(true)?;
        let dark = "return matchMedia('(prefers-color-scheme: dark)').matches";
        assert_eq!(browser.run_js(dark, vec![])?, serde_json::json!(true));
    }
    Ok(())
}
