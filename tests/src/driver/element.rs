//! Things on the page: finding, reading, touching and typing.

use super::{Browser, Result, wire};
use serde_json::{Value, json};

/// The name under which the protocol hands over an element.
const HANDLE: &str = "element-6066-11e4-a52e-4f735466cecf";

/// Keys without a letter, for [`Element::type_text`].
pub mod keys {
    pub const BACKSPACE: &str = "\u{E003}";
    pub const TAB: &str = "\u{E004}";
    pub const ENTER: &str = "\u{E007}";
    pub const SHIFT: &str = "\u{E008}";
    pub const CONTROL: &str = "\u{E009}";
    pub const ESCAPE: &str = "\u{E00C}";
    pub const SPACE: &str = "\u{E00D}";
    pub const LEFT: &str = "\u{E012}";
    pub const UP: &str = "\u{E013}";
    pub const RIGHT: &str = "\u{E014}";
    pub const DOWN: &str = "\u{E015}";
}

/// One element of the page.
pub struct Element<'b> {
    browser: &'b Browser,
    id: String,
}

impl Browser {
    /// The first element that matches a CSS selector, now.
    pub fn find(&self, css: &str) -> Result<Element<'_>> {
        let found = self
            .post("/element", json!({ "using": "css selector", "value": css }))
            .map_err(|e| format!("{css}: {e}"))?;
        self.element(&found)
    }

    /// All elements that match a CSS selector, now.
    pub fn find_all(&self, css: &str) -> Result<Vec<Element<'_>>> {
        let body = json!({ "using": "css selector", "value": css });
        let found = self.post("/elements", body)?;
        let list = found.as_array().ok_or("The driver sent no list.")?;
        list.iter().map(|item| self.element(item)).collect()
    }

    /// The element that has the focus.
    pub fn focused(&self) -> Result<Element<'_>> {
        self.element(&self.get("/element/active")?)
    }

    /// Types into whatever has the focus, for instance [`keys::TAB`].
    pub fn press(&self, text: &str) -> Result<()> {
        self.focused()?.type_text(text)
    }

    fn element(&self, value: &Value) -> Result<Element<'_>> {
        let id = value[HANDLE]
            .as_str()
            .ok_or_else(|| format!("This is no element: {value}"))?
            .to_string();
        Ok(Element { browser: self, id })
    }
}

impl Element<'_> {
    fn get(&self, command: &str) -> Result<Value> {
        self.browser.get(&format!("/element/{}{command}", self.id))
    }

    fn post(&self, command: &str, body: Value) -> Result<()> {
        let command = format!("/element/{}{command}", self.id);
        self.browser.post(&command, body).map(|_| ())
    }

    /// Clicks it, or taps it on a touch screen, after scrolling it into view.
    pub fn click(&self) -> Result<()> {
        self.post("/click", json!({}))
    }

    /// Empties a field.
    pub fn clear(&self) -> Result<()> {
        self.post("/clear", json!({}))
    }

    /// Types at the end of what a field holds.
    pub fn type_text(&self, text: &str) -> Result<()> {
        self.post("/value", json!({ "text": text }))
    }

    /// Replaces what a field holds, key by key as a person does.
    pub fn fill(&self, text: &str) -> Result<()> {
        self.click()?;
        self.type_text(&format!("{}a{}", keys::CONTROL, keys::CONTROL))?;
        self.type_text(keys::BACKSPACE)?;
        self.type_text(text)
    }

    /// The text as a person sees it.
    pub fn text(&self) -> Result<String> {
        wire::text(self.get("/text")?)
    }

    /// An attribute as written in the page.
    pub fn attribute(&self, name: &str) -> Result<Option<String>> {
        Ok(self
            .script("return arguments[0].getAttribute(arguments[1])", name)?
            .as_str()
            .map(str::to_string))
    }

    /// A property as it is now, for instance `value` or `checked`.
    pub fn property(&self, name: &str) -> Result<Value> {
        self.get(&format!("/property/{name}"))
    }

    /// A computed style, for instance `font-size`.
    pub fn style(&self, name: &str) -> Result<String> {
        wire::text(self.get(&format!("/css/{name}"))?)
    }

    /// Whether a person can see it.
    pub fn shown(&self) -> Result<bool> {
        Ok(self.get("/displayed")? == json!(true))
    }

    /// Whether it can be used.
    pub fn enabled(&self) -> Result<bool> {
        Ok(self.get("/enabled")? == json!(true))
    }

    /// Its name as a screen reader says it.
    pub fn label(&self) -> Result<String> {
        wire::text(self.get("/computedlabel")?)
    }

    /// Its role as a screen reader says it.
    pub fn role(&self) -> Result<String> {
        wire::text(self.get("/computedrole")?)
    }

    /// Its place and size in CSS pixels: x, y, width, height.
    pub fn rect(&self) -> Result<[f64; 4]> {
        let rect = self.get("/rect")?;
        Ok(["x", "y", "width", "height"].map(|key| rect[key].as_f64().unwrap_or(f64::NAN)))
    }

    /// As an argument for [`Browser::script`].
    pub fn as_arg(&self) -> Value {
        json!({ HANDLE: self.id })
    }

    fn script(&self, code: &str, arg: &str) -> Result<Value> {
        self.browser.script(code, &[self.as_arg(), json!(arg)])
    }
}
