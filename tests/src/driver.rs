//! Drives a real Chromium through the WebDriver protocol.
//!
//! Every [`Browser`] has its own driver process, its own port and its own
//! profile folder, and takes them all away when it is dropped.

mod element;
mod logs;
mod picture;
mod process;
mod profile;
mod screen;
mod waiting;
mod windows;
mod wire;

pub use element::{Element, keys};
pub use logs::Note;
pub use profile::Profile;
pub use screen::Screen;

use process::Driver;
use serde_json::{Value, json};
use wire::Wire;

/// What every step answers: the reason in plain words when it went wrong.
pub type Result<T> = std::result::Result<T, String>;

/// A browser under control.
pub struct Browser {
    /// The driver's name for the open browser.
    id: Option<String>,
    wire: Wire,
    driver: Driver,
    /// Taken away with the browser, when it is the browser's own.
    _own: Option<Profile>,
}

impl Browser {
    /// Opens a browser with a fresh profile.
    pub fn open(screen: Screen) -> Result<Browser> {
        let profile = Profile::new()?;
        let mut browser = Browser::open_in(screen, &profile)?;
        browser._own = Some(profile);
        Ok(browser)
    }

    /// Opens a browser with this profile, so that what it keeps (storage,
    /// service workers) is there again in the next browser with it. One
    /// browser at a time: close the one before first.
    pub fn open_in(screen: Screen, profile: &Profile) -> Result<Browser> {
        let driver = Driver::start(profile.folder())?;
        let wire = Wire::new(driver.port());
        let mut browser = Browser {
            id: None,
            wire,
            driver,
            _own: None,
        };
        let options = screen::options(screen, profile.folder())?;
        let answer = browser.wire.post("/session", options)?;
        let id = answer["sessionId"]
            .as_str()
            .ok_or("The driver opened no browser.")?;
        browser.id = Some(id.to_string());
        // What the browser's own first page did is not about ours.
        browser.go("about:blank")?;
        browser.console()?;
        browser.requests()?;
        Ok(browser)
    }

    /// Closes the browser the orderly way, so that everything is stored.
    pub fn close(mut self) -> Result<()> {
        self.leave()
    }

    /// Ends the browser at once, in the middle of whatever it does.
    pub fn kill(mut self) {
        self.id = None;
        self.driver.kill();
    }

    fn leave(&mut self) -> Result<()> {
        match self.id.take() {
            Some(id) => {
                let closed = self.wire.delete(&format!("/session/{id}"));
                self.driver.end();
                closed.map(|_| ())
            }
            None => Ok(()),
        }
    }

    fn path(&self, command: &str) -> String {
        let id = self.id.as_deref().unwrap_or("closed");
        format!("/session/{id}{command}")
    }

    fn get(&self, command: &str) -> Result<Value> {
        self.wire.get(&self.path(command))
    }

    fn post(&self, command: &str, body: Value) -> Result<Value> {
        self.wire.post(&self.path(command), body)
    }

    /// Opens an address and waits until it has loaded.
    pub fn go(&self, url: &str) -> Result<()> {
        self.post("/url", json!({ "url": url })).map(|_| ())
    }

    /// The address on show.
    pub fn url(&self) -> Result<String> {
        wire::text(self.get("/url")?)
    }

    /// The title of the page.
    pub fn title(&self) -> Result<String> {
        wire::text(self.get("/title")?)
    }

    /// Loads the page again.
    pub fn refresh(&self) -> Result<()> {
        self.post("/refresh", json!({})).map(|_| ())
    }

    /// Goes one page back.
    pub fn back(&self) -> Result<()> {
        self.post("/back", json!({})).map(|_| ())
    }

    /// Runs JavaScript as the body of a function; `arguments` holds `args`. A
    /// promise is waited for.
    pub fn script(&self, code: &str, args: &[Value]) -> Result<Value> {
        self.post("/execute/sync", json!({ "script": code, "args": args }))
    }

    /// Sends a command of the browser's own debugging protocol, such as
    /// `Emulation.setCPUThrottlingRate`.
    pub fn devtools(&self, command: &str, params: Value) -> Result<Value> {
        self.post(
            "/goog/cdp/execute",
            json!({ "cmd": command, "params": params }),
        )
    }

    /// Sets the size of the window, in CSS pixels (desk screens only).
    pub fn resize(&self, width: u32, height: u32) -> Result<()> {
        self.post("/window/rect", json!({ "width": width, "height": height }))
            .map(|_| ())
    }

    /// The text of an open dialog.
    pub fn dialog_text(&self) -> Result<String> {
        wire::text(self.get("/alert/text")?)
    }

    /// Answers an open dialog with yes or no.
    pub fn dialog_answer(&self, yes: bool) -> Result<()> {
        let command = if yes {
            "/alert/accept"
        } else {
            "/alert/dismiss"
        };
        self.post(command, json!({})).map(|_| ())
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        self.leave().ok();
    }
}
