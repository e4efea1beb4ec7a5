//! Several windows of one browser.

use super::{Browser, Result};
use fantoccini::wd::WindowHandle;
use serde_json::json;

impl Browser {
    /// The name of the window in use.
    pub fn window(&self) -> Result<WindowHandle> {
        self.ask(|client| async move { client.window().await })
    }

    /// Opens another window, goes on in it, and says its name.
    pub fn open_window(&self) -> Result<WindowHandle> {
        let new = self.ask(|client| async move { client.new_window(true).await })?;
        self.use_window(&new.handle)?;
        Ok(new.handle)
    }

    /// Goes on in this window.
    pub fn use_window(&self, window: &WindowHandle) -> Result<()> {
        let window = window.clone();
        self.ask(|client| async move { client.switch_to_window(window).await })
    }

    /// Closes the window in use and goes on in this one.
    pub fn close_window(&self, next: &WindowHandle) -> Result<()> {
        self.ask(|client| async move { client.close_window().await })?;
        self.use_window(next)
    }

    /// Puts what is downloaded into a folder.
    pub fn download_to(&self, folder: &std::path::Path) -> Result<()> {
        let to = json!({ "behavior": "allow", "downloadPath": folder });
        self.devtools("Page.setDownloadBehavior", to).map(|_| ())
    }
}
