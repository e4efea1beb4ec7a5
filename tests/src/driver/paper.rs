//! The page on paper.

use super::{Browser, Result, command::Command};
use base64::{Engine, engine::general_purpose::STANDARD};
use serde_json::json;

/// What the driver prints, as a PDF.
pub struct Paper(pub Vec<u8>);

impl Browser {
    /// Prints the page on A4.
    pub fn print(&self) -> Result<Paper> {
        let wish = json!({ "page": { "width": 21.0, "height": 29.7 } });
        let answer = self.send(Command::post("print", wish))?;
        let text = answer.as_str().unwrap_or_default();
        match STANDARD.decode(text) {
            Ok(pdf) if pdf.starts_with(b"%PDF") => Ok(Paper(pdf)),
            _ => Err("The driver sent no PDF.".into()),
        }
    }
}

impl Paper {
    /// How many pages it has: each is an object of its own that says what it is.
    pub fn pages(&self) -> usize {
        let page = b"/Type /Page";
        let found = self.0.windows(page.len() + 1);
        // "/Pages" is the list of them.
        found
            .filter(|text| text.starts_with(page) && text.last() != Some(&b's'))
            .count()
    }
}
