//! Pictures of the page, for a person to look at.

use super::{Browser, Result, wire};
use crate::places;
use serde_json::json;
use std::{fs, path::PathBuf};

impl Browser {
    /// Takes a picture of what is on screen, as `target/shots/NAME.png`.
    pub fn shot(&self, name: &str) -> Result<PathBuf> {
        let data = wire::text(self.get("/screenshot")?)?;
        save(name, &data)
    }

    /// Takes a picture of the whole page, however long.
    pub fn long_shot(&self, name: &str) -> Result<PathBuf> {
        let wish = json!({ "format": "png", "captureBeyondViewport": true });
        let answer = self.devtools("Page.captureScreenshot", wish)?;
        save(name, answer["data"].as_str().unwrap_or(""))
    }

    /// A picture of what is on screen as the bytes of a PNG, one pixel of it
    /// `scale` across, on a screen of this size in CSS pixels.
    pub fn picture(&self, (width, height): (u32, u32), scale: f64) -> Result<Vec<u8>> {
        let mobile = width < 600;
        let size = json!({ "width": width, "height": height, "deviceScaleFactor": scale, "mobile": mobile });
        self.devtools("Emulation.setDeviceMetricsOverride", size)?;
        let answer = self.devtools("Page.captureScreenshot", json!({ "format": "png" }))?;
        let data = answer["data"].as_str().unwrap_or("");
        Ok(from_base64(data).ok_or("The driver sent no picture.")?)
    }
}

fn save(name: &str, base64: &str) -> Result<PathBuf> {
    let file = places::shots().join(format!("{name}.png"));
    let bytes = from_base64(base64).ok_or("The driver sent no picture.")?;
    fs::create_dir_all(places::shots())
        .and_then(|()| fs::write(&file, bytes))
        .map_err(|e| format!("{}: {e}", file.display()))?;
    Ok(file)
}

/// Reads base64; `None` when it is not.
fn from_base64(text: &str) -> Option<Vec<u8>> {
    let mut out = Vec::with_capacity(text.len() / 4 * 3);
    let (mut bits, mut count) = (0u32, 0);
    for byte in text
        .bytes()
        .filter(|b| *b != b'=' && !b.is_ascii_whitespace())
    {
        let value = match byte {
            b'A'..=b'Z' => byte - b'A',
            b'a'..=b'z' => byte - b'a' + 26,
            b'0'..=b'9' => byte - b'0' + 52,
            b'+' => 62,
            b'/' => 63,
            _ => return None,
        };
        bits = bits << 6 | u32::from(value);
        count += 6;
        if count >= 8 {
            count -= 8;
            out.push(u8::try_from(bits >> count & 0xff).ok()?);
        }
    }
    (!out.is_empty()).then_some(out)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn base64_is_read() {
        assert_eq!(from_base64("QW1wcw==").as_deref(), Some(&b"Amps"[..]));
        assert_eq!(from_base64("//79").as_deref(), Some(&[255, 254, 253][..]));
        assert_eq!(from_base64("no picture!"), None);
    }
}
