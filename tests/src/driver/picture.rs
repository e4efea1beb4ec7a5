//! Pictures of the page, for a person to look at.

use super::{Browser, Result};
use base64::{Engine, engine::general_purpose::STANDARD};
use serde_json::{Value, json};
use std::{fs, path::PathBuf};
use xtask::places;

impl Browser {
    /// Takes a picture of what is on screen, as `target/shots/NAME.png`.
    pub fn shot(&self, name: &str) -> Result<PathBuf> {
        let png = self.ask(|client| async move { client.screenshot().await })?;
        save(name, &png)
    }

    /// Takes a picture of the whole page, however long.
    pub fn long_shot(&self, name: &str) -> Result<PathBuf> {
        let wish = json!({ "format": "png", "captureBeyondViewport": true });
        let answer = self.devtools("Page.captureScreenshot", wish)?;
        save(name, &png_in(&answer)?)
    }

    /// A picture of what is on screen as the bytes of a PNG, one pixel of it
    /// `scale` across, on a screen of this size in CSS pixels.
    pub fn picture(&self, (width, height): (u32, u32), scale: f64) -> Result<Vec<u8>> {
        let mobile = width < 600;
        let size = json!({ "width": width, "height": height, "deviceScaleFactor": scale, "mobile": mobile });
        self.devtools("Emulation.setDeviceMetricsOverride", size)?;
        let answer = self.devtools("Page.captureScreenshot", json!({ "format": "png" }))?;
        png_in(&answer)
    }
}

/// The picture in an answer of the debugging protocol.
fn png_in(answer: &Value) -> Result<Vec<u8>> {
    let data = answer["data"].as_str().unwrap_or("");
    match STANDARD.decode(data) {
        Ok(bytes) if !bytes.is_empty() => Ok(bytes),
        _ => Err("The driver sent no picture.".into()),
    }
}

fn save(name: &str, png: &[u8]) -> Result<PathBuf> {
    let file = places::shots().join(format!("{name}.png"));
    fs::create_dir_all(places::shots())
        .and_then(|()| fs::write(&file, png))
        .map_err(|e| format!("{}: {e}", file.display()))?;
    Ok(file)
}
