//! Waiting until something has happened on the page.

use super::{Browser, Element, Result};
use serde_json::{Value, json};
use std::{
    thread,
    time::{Duration, Instant},
};

/// How long the page may take over anything, in a busy test run.
const PATIENCE: Duration = Duration::from_secs(120);
const PAUSE: Duration = Duration::from_millis(50);

impl Browser {
    /// Waits until an element matches and can be seen.
    pub fn wait_for(&self, css: &str) -> Result<Element<'_>> {
        patiently(|| {
            let element = self.find(css)?;
            match element.shown()? {
                true => Ok(element),
                false => Err(format!("{css} is on the page, but cannot be seen.")),
            }
        })
    }

    /// Waits until an element has the cursor.
    pub fn wait_focused(&self, element: &Element) -> Result<()> {
        patiently(|| match self.focused()?.as_arg() == element.as_arg() {
            true => Ok(()),
            false => Err("The cursor is elsewhere.".to_string()),
        })
    }

    /// Waits until no element that matches can be seen.
    pub fn wait_gone(&self, css: &str) -> Result<()> {
        patiently(|| {
            for element in self.find_all(css)? {
                if element.shown()? {
                    return Err(format!("{css} can still be seen."));
                }
            }
            Ok(())
        })
    }

    /// Waits until an element that matches holds this text.
    pub fn wait_text(&self, css: &str, part: &str) -> Result<Element<'_>> {
        patiently(|| {
            let element = self.find(css)?;
            let text = element.text()?;
            match text.contains(part) {
                true => Ok(element),
                false => Err(format!("{css} says {text:?}, not {part:?}.")),
            }
        })
    }

    /// Waits until JavaScript, as the body of a function, returns something
    /// true, and returns that.
    pub fn wait_script(&self, code: &str) -> Result<Value> {
        patiently(|| {
            let value = self.script(code, &[])?;
            let empty = [json!(null), json!(false), json!(0), json!("")].contains(&value);
            match empty {
                true => Err(format!("Still {value}: {code}")),
                false => Ok(value),
            }
        })
    }

    /// Waits until a `data-NAME` of the whole page has this value.
    pub fn wait_data(&self, name: &str, value: &str) -> Result<()> {
        patiently(|| {
            let now = self.script(
                "return document.documentElement.dataset[arguments[0]] ?? null",
                &[json!(name)],
            )?;
            match now == json!(value) {
                true => Ok(()),
                false => Err(format!("data-{name} of the page is {now}, not {value}.")),
            }
        })
    }
}

/// Tries again until it works or the time is over; then the last reason.
///
/// # Errors
/// That reason.
pub fn patiently<T>(mut step: impl FnMut() -> Result<T>) -> Result<T> {
    let end = Instant::now() + PATIENCE;
    loop {
        match step() {
            Ok(found) => return Ok(found),
            Err(reason) if Instant::now() > end => {
                return Err(format!("After {} s: {reason}", PATIENCE.as_secs()));
            }
            Err(_) => thread::sleep(PAUSE),
        }
    }
}
