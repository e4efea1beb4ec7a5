//! Which browser is driven, and by what.

use super::{Result, Screen, screen};
use serde_json::{Map, Value, json};
use std::{
    net::TcpListener,
    path::{Path, PathBuf},
    process::Command,
};
use xtask::programs;

/// A browser to try the page in. All tests run in Chromium; the others are
/// asked for what a browser may do otherwise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Chromium, with its log, its network and its touch screens.
    Chromium,
    /// Firefox.
    Firefox,
    /// WebKit, in the small browser that comes with its library, on a display
    /// of its own that nobody sees.
    WebKit,
}

impl Engine {
    /// The program that drives it.
    pub(super) fn driver(self) -> Result<PathBuf> {
        let (found, name) = match self {
            Engine::Chromium => (programs::chromedriver(), "chromedriver"),
            Engine::Firefox => (programs::geckodriver(), "geckodriver"),
            Engine::WebKit => (programs::webkit_driver(), "WebKitWebDriver"),
        };
        found.ok_or_else(|| {
            format!("The program {name} is missing; `cargo xtask test` says how to install it.")
        })
    }

    /// Has what keeps the driver start it on a port; one that it does not pick
    /// itself is the answer.
    pub(super) fn prepare(self, keeper: &mut Command) -> Result<Option<u16>> {
        let port = match self {
            Engine::Chromium | Engine::Firefox => None,
            // It says nothing of a port that it picked.
            Engine::WebKit => Some(free_port()?),
        };
        keeper.env("PORT", port.unwrap_or(0).to_string());
        if self == Engine::WebKit {
            keeper.env("DISPLAY_FIRST", "setsid xvfb-run --auto-servernum");
            keeper.env("GROUP", "-");
            // As root its processes cannot be put into boxes of their own.
            keeper.env("WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1");
        }
        Ok(port)
    }

    /// The port in what a driver says when it has started.
    pub(super) fn port_in(line: &str) -> Option<u16> {
        let told = ["successfully on port ", "Listening on 127.0.0.1:"];
        let (_, after) = told.iter().find_map(|words| line.split_once(words))?;
        after.trim_end_matches(['.', '\r']).parse().ok()
    }

    /// The wishes with which the driver opens a browser.
    pub(super) fn wishes(self, screen: Screen, profile: &Path) -> Result<Map<String, Value>> {
        let options = match self {
            Engine::Chromium => return screen::options(screen, profile),
            Engine::Firefox => {
                let (width, height) = screen.size();
                let (width, height) = (width.to_string(), height.to_string());
                let profile = profile.to_string_lossy();
                let args = [
                    "-headless",
                    "-profile",
                    &profile,
                    "-width",
                    &width,
                    "-height",
                    &height,
                ];
                json!({ "moz:firefoxOptions": { "args": args } })
            }
            Engine::WebKit => {
                let browser = programs::webkit_browser()
                    .ok_or("WebKit's MiniBrowser is missing; `cargo xtask test` installs it.")?;
                let options = json!({ "binary": browser, "args": ["--automation"] });
                json!({ "webkitgtk:browserOptions": options })
            }
        };
        let mut wishes = options.as_object().cloned().unwrap_or_default();
        wishes.insert("timeouts".into(), json!({ "script": 180_000 }));
        Ok(wishes)
    }
}

/// A port that nobody listens on now.
fn free_port() -> Result<u16> {
    let free = TcpListener::bind(("127.0.0.1", 0)).and_then(|listener| listener.local_addr());
    free.map(|address| address.port())
        .map_err(|e| format!("No free port: {e}."))
}

/// Whether somebody listens on a port.
pub(super) fn is_heard(port: u16) -> bool {
    std::net::TcpStream::connect(("127.0.0.1", port)).is_ok()
}

#[cfg(test)]
mod tests {
    use super::Engine;

    #[test]
    fn the_port_is_read_from_the_greeting() {
        let chromium = "ChromeDriver was started successfully on port 40123.";
        assert_eq!(Engine::port_in(chromium), Some(40123));
        let firefox = "1790000000000\tgeckodriver\tINFO\tListening on 127.0.0.1:40124";
        assert_eq!(Engine::port_in(firefox), Some(40124));
        assert_eq!(Engine::port_in("Please protect ports used by it."), None);
    }
}
