//! Finding by role and name, as a reader with a screen reader does.

use super::{Browser, Element, Result, waiting::patiently};
use serde_json::{Value, json};

/// What something on the page is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    Button,
    /// A box to tick.
    Checkbox,
    /// A list of which one is chosen.
    Choice,
    /// An entry to type into.
    Field,
    /// What opens and closes a fold.
    Fold,
    /// What belongs together: fields with a title, or a fold as a whole.
    Group,
    Heading,
    Link,
    Navigation,
    /// One of a few kinds.
    Radio,
    /// A section with a name.
    Region,
    Slider,
    Table,
}

impl Role {
    /// The name of the role in WAI-ARIA; a fold's opener has none there.
    pub fn aria(self) -> &'static str {
        match self {
            Role::Button => "button",
            Role::Checkbox => "checkbox",
            Role::Choice => "combobox",
            Role::Field => "textbox",
            Role::Fold => "fold",
            Role::Group => "group",
            Role::Heading => "heading",
            Role::Link => "link",
            Role::Navigation => "navigation",
            Role::Radio => "radio",
            Role::Region => "region",
            Role::Slider => "slider",
            Role::Table => "table",
        }
    }
}

/// Where something is looked for: on the whole page, or in an element. A name
/// that ends in `…` stands for all that begin so; any other must be met in full.
/// What cannot be seen is not found.
pub trait Scope<'b>: Copy {
    /// The browser, and the element to look in as an argument for a script.
    fn scope(self) -> (&'b Browser, Value);

    /// All that have this role and name, now, with their names.
    fn named(self, role: Role, name: Option<&str>) -> Result<Vec<(Element<'b>, String)>> {
        let (browser, within) = self.scope();
        let args = [json!(role.aria()), json!(name), within];
        let found = browser.script(include_str!("role.js"), &args)?;
        let found = found.as_array().ok_or("The script found no list.")?;
        let element = |row: &Value| {
            let name = row[1].as_str().unwrap_or_default().to_string();
            Ok((browser.returned(&row[0])?, name))
        };
        found.iter().map(element).collect()
    }

    /// The names of all that have this role, now, from top to bottom.
    fn names(self, role: Role) -> Result<Vec<String>> {
        let all = self.named(role, None)?;
        Ok(all.into_iter().map(|(_, name)| name).collect())
    }

    /// Whether there is one or more of this role and name, now.
    fn has(self, role: Role, name: &str) -> Result<bool> {
        Ok(!self.named(role, Some(name))?.is_empty())
    }

    /// Waits for the one that has this role and name. Several are a mistake of
    /// who looks: say in which region.
    fn by_role(self, role: Role, name: &str) -> Result<Element<'b>> {
        patiently(|| {
            let mut found = self.named(role, Some(name))?;
            match found.len() {
                1 => Ok(found.remove(0).0),
                0 => Err(format!(
                    "There is no {} {name:?}, only {:?}.",
                    role.aria(),
                    self.names(role)?
                )),
                many => Err(format!("There are {many} of {} {name:?}.", role.aria())),
            }
        })
    }

    /// Waits until nothing of this role and name can be seen.
    fn wait_without(self, role: Role, name: &str) -> Result<()> {
        patiently(|| match self.has(role, name)? {
            true => Err(format!("{} {name:?} can still be seen.", role.aria())),
            false => Ok(()),
        })
    }

    fn button(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Button, name)
    }

    fn checkbox(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Checkbox, name)
    }

    fn choice(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Choice, name)
    }

    fn field(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Field, name)
    }

    fn fold(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Fold, name)
    }

    fn group(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Group, name)
    }

    fn heading(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Heading, name)
    }

    fn link(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Link, name)
    }

    fn region(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Region, name)
    }

    fn slider(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Slider, name)
    }

    fn table(self, name: &str) -> Result<Element<'b>> {
        self.by_role(Role::Table, name)
    }
}

impl<'b> Scope<'b> for &'b Browser {
    fn scope(self) -> (&'b Browser, Value) {
        (self, Value::Null)
    }
}

impl<'b> Scope<'b> for &Element<'b> {
    fn scope(self) -> (&'b Browser, Value) {
        (self.browser(), self.as_arg())
    }
}
