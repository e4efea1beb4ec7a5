//! Sends commands to the driver and reads its answers.

use super::Result;
use serde_json::Value;
use std::time::Duration;
use ureq::{
    Agent,
    http::{Request, Response},
};

/// A line to one driver process.
pub struct Wire {
    agent: Agent,
    base: String,
}

impl Wire {
    pub fn new(port: u16) -> Wire {
        let agent = Agent::config_builder()
            .http_status_as_error(false)
            .timeout_global(Some(Duration::from_secs(120)))
            .build()
            .new_agent();
        let base = format!("http://127.0.0.1:{port}");
        Wire { agent, base }
    }

    pub fn get(&self, path: &str) -> Result<Value> {
        self.send("GET", path, String::new())
    }

    pub fn delete(&self, path: &str) -> Result<Value> {
        self.send("DELETE", path, String::new())
    }

    pub fn post(&self, path: &str, body: Value) -> Result<Value> {
        self.send("POST", path, body.to_string())
    }

    fn send(&self, method: &str, path: &str, body: String) -> Result<Value> {
        let lost = |e: &dyn std::fmt::Display| format!("The driver gave no answer: {e}");
        let request = Request::builder()
            .method(method)
            .uri(format!("{}{path}", self.base))
            .header("Content-Type", "application/json; charset=utf-8")
            .body(body)
            .map_err(|e| lost(&e))?;
        let answer = self.agent.run(request).map_err(|e| lost(&e))?;
        read(answer)
    }
}

fn read(answer: Response<ureq::Body>) -> Result<Value> {
    let good = answer.status().is_success();
    let text = answer
        .into_body()
        .into_with_config()
        .limit(256 * 1024 * 1024)
        .read_to_string()
        .map_err(|e| format!("The driver's answer broke off: {e}"))?;
    let mut json: Value = serde_json::from_str(&text)
        .map_err(|e| format!("The driver's answer makes no sense ({e}): {text}"))?;
    let value = json["value"].take();
    if good {
        return Ok(value);
    }
    let say = |key: &str| value[key].as_str().unwrap_or("").to_string();
    Err(format!("{}: {}", say("error"), say("message")))
}

/// An answer that must be text.
pub fn text(value: Value) -> Result<String> {
    match value {
        Value::String(text) => Ok(text),
        other => Err(format!("The driver answered {other} in place of text.")),
    }
}
