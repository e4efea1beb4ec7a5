//! Parts of the page as a reader knows them, found by role and name. What is
//! not there fails the test.

use crate::desk::Desk;
use ampwright_core::boat::Key;
use ampwright_tests::driver::{Browser, Element, Role, Scope};
use serde_json::Value;

/// A part of the page: a section with a name, or a fold.
pub struct Part<'b>(Element<'b>);

impl<'b> Scope<'b> for &Part<'b> {
    fn scope(self) -> (&'b Browser, Value) {
        (&self.0).scope()
    }
}

/// What an input is called on the page.
pub fn label(key: &str) -> &'static str {
    Key::named(key).unwrap().spec().label
}

impl Desk {
    /// The section of this name.
    pub fn part(&self, name: &str) -> Part<'_> {
        Part(self.region(name).unwrap())
    }

    pub fn strip(&self) -> Part<'_> {
        self.part("The answer")
    }

    pub fn questions(&self) -> Part<'_> {
        self.part("Your boat in eight questions")
    }

    pub fn sheet(&self) -> Part<'_> {
        self.part("All inputs")
    }

    pub fn shelf(&self) -> Part<'_> {
        self.part("Saved boats")
    }

    pub fn share(&self) -> Part<'_> {
        self.part("Share and print")
    }

    /// Names the worksheet.
    pub fn name(&self, name: &str) {
        self.shelf().fill("Name of this boat", name);
    }

    /// Presses the button of this name, wherever it is.
    pub fn push(&self, button: &str) {
        self.button(button).unwrap().press().unwrap();
    }

    /// What the strip says is not included, or nothing.
    pub fn left_out(&self) -> String {
        let said = self.strip().text();
        let line = said.lines().find(|line| line.starts_with("Not included"));
        line.unwrap_or_default().to_string()
    }
}

impl<'b> Part<'b> {
    pub fn press(&self, button: &str) {
        self.button(button).unwrap().press().unwrap();
    }

    pub fn fill(&self, field: &str, text: &str) {
        self.field(field).unwrap().fill(text).unwrap();
    }

    /// Chooses what is called so, of a list.
    pub fn choose(&self, list: &str, option: &str) {
        self.choice(list).unwrap().choose(option).unwrap();
    }

    /// Takes one of a few kinds.
    pub fn pick(&self, kind: &str) {
        self.by_role(Role::Radio, kind).unwrap().press().unwrap();
    }

    /// What stands in a field.
    pub fn value(&self, field: &str) -> String {
        self.field(field).unwrap().value().unwrap()
    }

    /// Waits until this stands in a field.
    pub fn wait_value(&self, field: &str, text: &str) {
        self.field(field).unwrap().wait_value(text).unwrap();
    }

    /// What is wrong with what stands in a field, or nothing.
    pub fn complaint(&self, field: &str) -> String {
        self.field(field).unwrap().complaint().unwrap()
    }

    /// What a fold holds, once it is open.
    pub fn opened(&self, fold: &str) -> Part<'b> {
        let opener = self.fold(fold).unwrap();
        let whole = opener.parent().unwrap();
        if whole.property("open").unwrap() != true {
            opener.press().unwrap();
        }
        Part(whole)
    }

    /// Opens all folds in it, and those that come with what a fold holds.
    pub fn open_all(&self) {
        let open = "const [part] = arguments;
            return new Promise((done) => {
                const look = () => {
                    const closed = [...part.querySelectorAll('details:not([open])')];
                    for (const fold of closed) fold.open = true;
                    if (closed.length) setTimeout(look, 100);
                    else done();
                };
                look();
            })";
        self.0.browser().script(open, &[self.0.as_arg()]).unwrap();
    }

    pub fn text(&self) -> String {
        self.0.text().unwrap()
    }

    /// The entries of its lists.
    pub fn items(&self) -> Vec<String> {
        // What is out of sight is not laid out, and says nothing.
        let items = "const [part] = arguments;
            part.scrollIntoView();
            const said = () => [...part.querySelectorAll('li')].map((item) => item.innerText.replaceAll('\\u00a0', ' '));
            return new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(said()))))";
        let items = self.0.browser().script(items, &[self.0.as_arg()]).unwrap();
        let items = items.as_array().unwrap().iter();
        items
            .map(|item| item.as_str().unwrap().to_string())
            .collect()
    }

    /// Waits until this can be read in it.
    pub fn wait_text(&self, text: &str) {
        self.0.wait_text(text).unwrap();
    }
}
