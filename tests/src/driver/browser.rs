//! A browser under control.

use super::{Engine, Profile, Result, Screen, command::Command, process::Driver};
use fantoccini::{Client, ClientBuilder, error::CmdError};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use std::{
    cell::{Cell, RefCell},
    collections::BTreeSet,
    future::Future,
    time::Duration,
};
use tokio::{
    runtime::{self, Runtime},
    time::timeout,
};
use url::Url;

/// How long the browser may take over one command. A script that looks at
/// every element takes its time on a busy machine.
const PATIENCE: Duration = Duration::from_secs(240);

/// A browser under control.
pub struct Browser {
    /// The line to the driver, until the browser is closed.
    client: Option<Client>,
    runtime: Runtime,
    driver: Driver,
    engine: Engine,
    /// Taken away with the browser, when it is the browser's own.
    _own: Option<Profile>,
    /// Where it has been.
    origins: RefCell<BTreeSet<String>>,
    /// Whether its own debugging protocol was used, which may last.
    changed: Cell<bool>,
}

impl Browser {
    /// Opens a browser with a fresh profile.
    pub fn open(screen: Screen) -> Result<Browser> {
        Browser::open_as(Engine::Chromium, screen)
    }

    /// Opens a browser of this kind with a fresh profile.
    pub fn open_as(engine: Engine, screen: Screen) -> Result<Browser> {
        let profile = Profile::new()?;
        let mut browser = Browser::start(engine, screen, &profile, true)?;
        browser._own = Some(profile);
        Ok(browser)
    }

    /// Opens a browser with this profile, so that what it keeps (storage,
    /// service workers) is there again in the next browser with it. One
    /// browser at a time: close the one before first.
    pub fn open_in(screen: Screen, profile: &Profile) -> Result<Browser> {
        Browser::start(Engine::Chromium, screen, profile, false)
    }

    fn start(engine: Engine, screen: Screen, profile: &Profile, litter: bool) -> Result<Browser> {
        let driver = Driver::start(engine, profile.folder(), litter)?;
        let runtime = runtime::Builder::new_current_thread()
            .enable_all()
            .build()
            .map_err(|e| format!("No thread for the driver: {e}."))?;
        let wishes = engine.wishes(screen, profile.folder())?;
        let address = format!("http://127.0.0.1:{}", driver.port());
        let client = runtime
            .block_on(async {
                let mut builder = ClientBuilder::new(HttpConnector::new());
                let opened = builder.capabilities(wishes).connect(&address);
                timeout(PATIENCE, opened).await
            })
            .map_err(|_| "The driver opened no browser in time.".to_string())?
            .map_err(|e| format!("The driver opened no browser: {e}."))?;
        let browser = Browser {
            client: Some(client),
            runtime,
            driver,
            engine,
            _own: None,
            origins: RefCell::default(),
            changed: Cell::new(false),
        };
        browser.rest()?;
        Ok(browser)
    }

    /// Shows an empty page. What was logged until now is not about the next one.
    fn rest(&self) -> Result<()> {
        self.go("about:blank")?;
        // Only Chromium's driver tells of these.
        if self.engine == Engine::Chromium {
            self.console()?;
            self.requests()?;
        }
        Ok(())
    }

    /// Makes it as good as new for somebody else's page; `false` when it cannot
    /// be sure of that.
    pub fn forget(&self) -> Result<bool> {
        let windows = self.ask(|client| async move { client.windows().await })?;
        let is_told = self.engine == Engine::Chromium;
        if !is_told || self.changed.get() || windows.len() != 1 {
            return Ok(false);
        }
        self.rest()?;
        for origin in self.origins.take() {
            let all = json!({ "origin": origin, "storageTypes": "all" });
            self.devtools("Storage.clearDataForOrigin", all)?;
        }
        self.changed.set(false);
        Ok(true)
    }

    /// Closes the browser the orderly way, so that everything is stored.
    pub fn close(mut self) -> Result<()> {
        self.leave()
    }

    /// Ends the browser at once, in the middle of whatever it does.
    pub fn kill(mut self) {
        self.client = None;
        self.driver.kill();
    }

    fn leave(&mut self) -> Result<()> {
        let Some(client) = self.client.take() else {
            return Ok(());
        };
        let closed = self.wait_on(client.close());
        self.driver.end();
        closed
    }

    /// Waits until the driver has done something.
    fn wait_on<T>(
        &self,
        work: impl Future<Output = std::result::Result<T, CmdError>>,
    ) -> Result<T> {
        match self
            .runtime
            .block_on(async { timeout(PATIENCE, work).await })
        {
            Ok(done) => done.map_err(|e| e.to_string()),
            Err(_) => Err("The driver gave no answer.".into()),
        }
    }

    /// Asks the driver for something and waits until it is done.
    pub(super) fn ask<T, F>(&self, work: impl FnOnce(Client) -> F) -> Result<T>
    where
        F: Future<Output = std::result::Result<T, CmdError>>,
    {
        let client = self.client.clone().ok_or("The browser is closed.")?;
        self.wait_on(work(client))
    }

    /// Sends a command for which the client has no function.
    pub(super) fn send(&self, command: Command) -> Result<Value> {
        self.ask(|client| async move { client.issue_cmd(command).await })
    }

    /// Opens an address and waits until it has loaded.
    pub fn go(&self, url: &str) -> Result<()> {
        let origin =
            Url::parse(url).map_or("null".into(), |url| url.origin().ascii_serialization());
        if origin != "null" {
            self.origins.borrow_mut().insert(origin);
        }
        self.ask(|client| async move { client.goto(url).await })
    }

    /// The address on show.
    pub fn url(&self) -> Result<String> {
        let url = self.ask(|client| async move { client.current_url().await })?;
        Ok(url.into())
    }

    /// The title of the page.
    pub fn title(&self) -> Result<String> {
        self.ask(|client| async move { client.title().await })
    }

    /// Loads the page again.
    pub fn refresh(&self) -> Result<()> {
        self.ask(|client| async move { client.refresh().await })
    }

    /// Goes one page back.
    pub fn back(&self) -> Result<()> {
        self.ask(|client| async move { client.back().await })
    }

    /// Runs JavaScript as the body of a function; `arguments` holds `args`. A
    /// promise is waited for.
    pub fn script(&self, code: &str, args: &[Value]) -> Result<Value> {
        let args = args.to_vec();
        self.ask(|client| async move { client.execute(code, args).await })
    }

    /// Sends a command of the browser's own debugging protocol, such as
    /// `Emulation.setCPUThrottlingRate`.
    pub fn devtools(&self, command: &str, params: Value) -> Result<Value> {
        self.changed.set(true);
        let body = json!({ "cmd": command, "params": params });
        self.send(Command::post("goog/cdp/execute", body))
    }

    /// Sets the size of the window, in CSS pixels (desk screens only).
    pub fn resize(&self, width: u32, height: u32) -> Result<()> {
        self.ask(|client| async move { client.set_window_size(width, height).await })
    }

    /// The text of an open dialog.
    pub fn dialog_text(&self) -> Result<String> {
        self.ask(|client| async move { client.get_alert_text().await })
    }

    /// Answers an open dialog with yes or no.
    pub fn dialog_answer(&self, yes: bool) -> Result<()> {
        self.ask(|client| async move {
            match yes {
                true => client.accept_alert().await,
                false => client.dismiss_alert().await,
            }
        })
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        self.leave().ok();
    }
}
