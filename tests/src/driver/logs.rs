//! What the page wrote to the console, and what it asked the network for.

use super::{Browser, Result, command::Command};
use serde_json::{Value, json};

/// A line of the console.
#[derive(Clone, Debug)]
pub struct Note {
    /// `SEVERE`, `WARNING`, `INFO` or `DEBUG`.
    pub level: String,
    pub text: String,
}

impl Browser {
    /// The lines of the console since the last call.
    pub fn console(&self) -> Result<Vec<Note>> {
        let say = |entry: &Value, key: &str| entry[key].as_str().unwrap_or("").to_string();
        Ok(self
            .log("browser")?
            .iter()
            .map(|entry| Note {
                level: say(entry, "level"),
                text: say(entry, "message"),
            })
            .collect())
    }

    /// The errors and warnings of the console since the last call.
    pub fn complaints(&self) -> Result<Vec<String>> {
        let mut notes = self.console()?;
        notes.retain(|note| note.level == "SEVERE" || note.level == "WARNING");
        Ok(notes
            .into_iter()
            .map(|n| format!("{}: {}", n.level, n.text))
            .collect())
    }

    /// The addresses that the page has asked for since the last call.
    pub fn requests(&self) -> Result<Vec<String>> {
        let mut addresses = Vec::new();
        for entry in self.log("performance")? {
            let message = entry["message"].as_str().unwrap_or("");
            let event: Value = serde_json::from_str(message).unwrap_or_default();
            let event = &event["message"];
            if event["method"] == "Network.requestWillBeSent"
                && let Some(url) = event["params"]["request"]["url"].as_str()
            {
                addresses.push(url.to_string());
            }
        }
        Ok(addresses)
    }

    /// The addresses among [`Browser::requests`] that lie elsewhere.
    pub fn requests_beyond(&self, origin: &str) -> Result<Vec<String>> {
        let mut addresses = self.requests()?;
        addresses.retain(|url| {
            !["data:", "blob:", "about:", origin]
                .iter()
                .any(|start| url.starts_with(start))
        });
        Ok(addresses)
    }

    fn log(&self, kind: &str) -> Result<Vec<Value>> {
        match self.send(Command::post("se/log", json!({ "type": kind })))? {
            Value::Array(entries) => Ok(entries),
            other => Err(format!("The driver sent no log but {other}.")),
        }
    }
}
