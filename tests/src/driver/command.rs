//! Commands of the driver for which the client has no function.

use fantoccini::wd::WebDriverCompatibleCommand;
use serde_json::Value;

/// A command of an open browser.
#[derive(Debug)]
pub struct Command {
    /// After `/session/ID/`.
    path: String,
    /// What is posted; without it the command only asks.
    body: Option<Value>,
}

impl Command {
    /// Asks for something.
    pub fn get(path: impl Into<String>) -> Command {
        let path = path.into();
        Command { path, body: None }
    }

    /// Does something.
    pub fn post(path: impl Into<String>, body: Value) -> Command {
        let (path, body) = (path.into(), Some(body));
        Command { path, body }
    }
}

impl WebDriverCompatibleCommand for Command {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> std::result::Result<url::Url, url::ParseError> {
        base.join(&format!(
            "session/{}/{}",
            session.unwrap_or("closed"),
            self.path
        ))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        match &self.body {
            Some(body) => (http::Method::POST, Some(body.to_string())),
            None => (http::Method::GET, None),
        }
    }
}
