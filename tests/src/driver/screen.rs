//! On what kind of screen the page is tried.

use super::Result;
use serde_json::{Map, Value, json};
use std::path::Path;
use xtask::programs;

/// A screen to try the page on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Screen {
    /// A small phone: 360 x 800 CSS pixels, touch.
    Phone,
    /// A desk or a chart table: 1280 x 800 CSS pixels, mouse.
    Desk,
    /// A touch screen of any other size, in CSS pixels.
    Touch { width: u32, height: u32 },
}

impl Screen {
    /// Its width and height in CSS pixels.
    pub fn size(self) -> (u32, u32) {
        match self {
            Screen::Phone => (360, 800),
            Screen::Desk => (1280, 800),
            Screen::Touch { width, height } => (width, height),
        }
    }
}

const SWITCHES: [&str; 12] = [
    "--headless=new",
    // The browser ends when nobody drives it any more.
    "--remote-debugging-pipe",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--disable-dev-shm-usage",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--force-color-profile=srgb",
    "--lang=en",
];

/// The wishes with which the driver opens a browser.
pub fn options(screen: Screen, profile: &Path) -> Result<Map<String, Value>> {
    let browser = programs::browser()
        .ok_or("No Chromium is on the search path; `cargo xtask test` says how to install it.")?;
    let mut switches: Vec<String> = SWITCHES.iter().map(|s| s.to_string()).collect();
    switches.push(format!("--user-data-dir={}", profile.display()));
    let mut options = json!({
        "binary": browser,
        "perfLoggingPrefs": { "enableNetwork": true, "enablePage": false },
    });
    match screen {
        Screen::Phone => options["mobileEmulation"] = touch(360, 800),
        Screen::Touch { width, height } => options["mobileEmulation"] = touch(width, height),
        Screen::Desk => switches.push("--window-size=1280,800".to_string()),
    }
    switches.push("about:blank".to_string());
    options["args"] = json!(switches);
    let mut wishes = Map::new();
    let logs = json!({ "browser": "ALL", "performance": "ALL" });
    wishes.insert("goog:chromeOptions".into(), options);
    wishes.insert("goog:loggingPrefs".into(), logs);
    wishes.insert("unhandledPromptBehavior".into(), json!("ignore"));
    // A script that looks at every element takes its time on a busy machine.
    wishes.insert("timeouts".into(), json!({ "script": 180_000 }));
    Ok(wishes)
}

fn touch(width: u32, height: u32) -> Value {
    json!({ "deviceMetrics": {
        "width": width, "height": height, "pixelRatio": 2.0, "touch": true, "mobile": true,
    } })
}
