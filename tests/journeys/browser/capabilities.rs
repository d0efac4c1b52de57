//! What each engine is asked for: headless, a camera that draws itself, a
//! profile in the test's hands, quiet towards the outside.

use serde_json::{Map, Value, json};
use thirtyfour::Capabilities;

use crate::engine::{Engine, Size};
use crate::profile::Profile;

pub(crate) fn capabilities(engine: Engine, size: Size, profile: &Profile) -> Capabilities {
    let wanted = match engine {
        Engine::Chromium => chromium(size, profile),
        Engine::Firefox => firefox(size, profile),
        Engine::WebKit => webkit(),
    };
    let wanted: Map<String, Value> = match wanted {
        Value::Object(map) => map,
        _ => Map::new(),
    };
    Capabilities::from(wanted)
}

fn chromium(size: Size, profile: &Profile) -> Value {
    let (width, height) = size.pixels();
    let phone = size == Size::Phone;
    let metrics = json!({
        "width": width, "height": height, "pixelRatio": if phone { 3.0 } else { 1.0 }, "touch": phone, "mobile": phone,
    });
    let mut arguments: Vec<String> = [
        "--headless=new",
        "--no-sandbox",
        "--disable-dev-shm-usage",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
    ]
    .map(str::to_owned)
    .to_vec();
    arguments.push(format!("--user-data-dir={}", profile.stored().display()));
    arguments.push(format!("--window-size={width},{height}"));
    arguments.extend(profile.film().map(|film| format!("--use-file-for-fake-video-capture={}", film.display())));
    json!({
        "browserName": "chrome",
        "goog:loggingPrefs": { "browser": "ALL" },
        "goog:chromeOptions": {
            "binary": Engine::Chromium.program(),
            "args": arguments,
            "mobileEmulation": { "deviceMetrics": metrics },
            "prefs": {
                "download.default_directory": profile.downloads(),
                "download.prompt_for_download": false,
                "profile.default_content_setting_values.automatic_downloads": 1,
            },
        },
    })
}

fn firefox(size: Size, profile: &Profile) -> Value {
    let (width, height) = size.pixels();
    json!({
        "browserName": "firefox",
        "moz:firefoxOptions": {
            "binary": Engine::Firefox.program(),
            "args": [
                "-headless", "-profile", profile.stored(),
                format!("--width={width}"), format!("--height={height}"),
            ],
            "prefs": {
                "media.navigator.streams.fake": true,
                "media.navigator.permission.disabled": true,
                // Otherwise the wish to keep storage waits for a person.
                "dom.storageManager.prompt.testing": true,
                "dom.storageManager.prompt.testing.allow": true,
                "browser.download.folderList": 2,
                "browser.download.dir": profile.downloads(),
                "browser.download.useDownloadDir": true,
                "browser.download.alwaysOpenPanel": false,
            },
        },
    })
}

fn webkit() -> Value {
    json!({
        "browserName": "MiniBrowser",
        "webkitgtk:browserOptions": {
            "binary": Engine::WebKit.program(),
            "args": ["--automation", "--enable-media-stream=true", "--enable-mock-capture-devices=true"],
        },
    })
}
