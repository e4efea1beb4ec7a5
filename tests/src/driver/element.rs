//! Things on the page: finding, reading, touching and typing.

use super::{Browser, Result, command::Command};
use fantoccini::{Locator, elements::ElementRef, error::CmdError};
use serde_json::{Value, json};
use std::future::Future;

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
    inner: fantoccini::elements::Element,
}

impl Browser {
    /// The first element that matches a CSS selector, now.
    pub fn find(&self, css: &str) -> Result<Element<'_>> {
        let found = self.ask(|client| async move { client.find(Locator::Css(css)).await });
        let inner = found.map_err(|e| format!("{css}: {e}"))?;
        Ok(self.element(inner))
    }

    /// All elements that match a CSS selector, now.
    pub fn find_all(&self, css: &str) -> Result<Vec<Element<'_>>> {
        let found = self.ask(|client| async move { client.find_all(Locator::Css(css)).await })?;
        Ok(found.into_iter().map(|inner| self.element(inner)).collect())
    }

    /// The element that has the focus.
    pub fn focused(&self) -> Result<Element<'_>> {
        let inner = self.ask(|client| async move { client.active_element().await })?;
        Ok(self.element(inner))
    }

    /// Types into whatever has the focus, for instance [`keys::TAB`].
    pub fn press(&self, text: &str) -> Result<()> {
        self.focused()?.type_text(text)
    }

    fn element(&self, inner: fantoccini::elements::Element) -> Element<'_> {
        Element {
            browser: self,
            inner,
        }
    }

    /// An element that a script returned.
    pub(super) fn returned(&self, value: &Value) -> Result<Element<'_>> {
        let id = value[HANDLE]
            .as_str()
            .ok_or_else(|| format!("This is no element: {value}"))?;
        let id = ElementRef::from(id.to_string());
        self.ask(
            |client| async move { Ok(fantoccini::elements::Element::from_element_id(client, id)) },
        )
        .map(|inner| self.element(inner))
    }
}

impl<'b> Element<'b> {
    /// Asks the driver for something about it.
    fn ask<T, F>(&self, work: impl FnOnce(fantoccini::elements::Element) -> F) -> Result<T>
    where
        F: Future<Output = std::result::Result<T, CmdError>>,
    {
        self.browser.ask(|_| work(self.inner.clone()))
    }

    /// The browser whose page it is on.
    pub fn browser(&self) -> &'b Browser {
        self.browser
    }

    /// Clicks it, or taps it on a touch screen, after scrolling it into view.
    pub fn click(&self) -> Result<()> {
        self.ask(|element| async move { element.click().await })
    }

    /// Empties a field.
    pub fn clear(&self) -> Result<()> {
        self.ask(|element| async move { element.clear().await })
    }

    /// Types at the end of what a field holds.
    pub fn type_text(&self, text: &str) -> Result<()> {
        self.ask(|element| async move { element.send_keys(text).await })
    }

    /// The text as a person sees it.
    pub fn text(&self) -> Result<String> {
        self.ask(|element| async move { element.text().await })
    }

    /// An attribute as written in the page.
    pub fn attribute(&self, name: &str) -> Result<Option<String>> {
        let value = self.script("return arguments[0].getAttribute(arguments[1])", name)?;
        Ok(value.as_str().map(str::to_string))
    }

    /// A property as it is now, for instance `value` or `checked`.
    pub fn property(&self, name: &str) -> Result<Value> {
        self.script("return arguments[0][arguments[1]]", name)
    }

    /// What an entry or a list holds now.
    pub fn value(&self) -> Result<String> {
        let value = self.ask(|element| async move { element.prop("value").await })?;
        value.ok_or_else(|| "This holds no value.".into())
    }

    /// A computed style, for instance `font-size`.
    pub fn style(&self, name: &str) -> Result<String> {
        self.ask(|element| async move { element.css_value(name).await })
    }

    /// Whether a person can see it.
    pub fn shown(&self) -> Result<bool> {
        self.ask(|element| async move { element.is_displayed().await })
    }

    /// Whether it can be used.
    pub fn enabled(&self) -> Result<bool> {
        self.ask(|element| async move { element.is_enabled().await })
    }

    /// Its name as a screen reader says it, to which every space is one.
    pub fn label(&self) -> Result<String> {
        Ok(self.computed("computedlabel")?.replace('\u{a0}', " "))
    }

    /// Its role as a screen reader says it.
    pub fn role(&self) -> Result<String> {
        self.computed("computedrole")
    }

    fn computed(&self, what: &str) -> Result<String> {
        let id = String::from(self.inner.element_id());
        let answer = self
            .browser
            .send(Command::get(format!("element/{id}/{what}")))?;
        let text = answer.as_str().map(str::to_string);
        text.ok_or_else(|| format!("The driver answered {answer} in place of text."))
    }

    /// Its place and size in CSS pixels: x, y, width, height.
    pub fn rect(&self) -> Result<[f64; 4]> {
        let (x, y, width, height) = self.ask(|element| async move { element.rectangle().await })?;
        Ok([x, y, width, height])
    }

    /// As an argument for [`Browser::script`].
    pub fn as_arg(&self) -> Value {
        json!({ HANDLE: String::from(self.inner.element_id()) })
    }

    fn script(&self, code: &str, arg: &str) -> Result<Value> {
        self.browser.script(code, &[self.as_arg(), json!(arg)])
    }
}
