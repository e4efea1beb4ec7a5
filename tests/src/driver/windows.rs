//! Several windows of one browser.

use super::{Browser, Result, wire};
use serde_json::json;

impl Browser {
    /// The name of the window in use.
    pub fn window(&self) -> Result<String> {
        wire::text(self.get("/window")?)
    }

    /// Opens another window, goes on in it, and says its name.
    pub fn open_window(&self) -> Result<String> {
        let new = self.post("/window/new", json!({ "type": "tab" }))?;
        let name = wire::text(new["handle"].clone())?;
        self.use_window(&name)?;
        Ok(name)
    }

    /// Goes on in this window.
    pub fn use_window(&self, name: &str) -> Result<()> {
        self.post("/window", json!({ "handle": name })).map(|_| ())
    }

    /// Closes the window in use and goes on in this one.
    pub fn close_window(&self, next: &str) -> Result<()> {
        self.wire.delete(&self.path("/window"))?;
        self.use_window(next)
    }

    /// Puts what is downloaded into a folder.
    pub fn download_to(&self, folder: &std::path::Path) -> Result<()> {
        let to = json!({ "behavior": "allow", "downloadPath": folder });
        self.devtools("Page.setDownloadBehavior", to).map(|_| ())
    }
}
