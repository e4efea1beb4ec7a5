//! Touching and typing as a person does: where it can be seen, and when it can
//! be touched.

use super::{Element, Result, keys, waiting::patiently};

/// Scrolls an element to the middle, as the page's strip covers the top. What
/// comes into sight only then is laid out with the next frame, and moves what
/// follows: done when it lies still for two frames. A person turns the wheel,
/// which ends what the page does by itself.
const INTO_SIGHT: &str = "
const element = arguments[0];
dispatchEvent(new WheelEvent('wheel'));
return new Promise((done) => {
    let [still, before] = [0, NaN];
    (function look() {
        element.scrollIntoView({ block: 'center' });
        const now = element.getBoundingClientRect().top;
        still = now === before ? still + 1 : 0;
        before = now;
        if (still < 2) requestAnimationFrame(look); else done();
    })();
});";

impl Element<'_> {
    /// Brings it to where a person would look at it.
    pub fn into_sight(&self) -> Result<()> {
        self.browser().script(INTO_SIGHT, &[self.as_arg()])?;
        Ok(())
    }

    /// Clicks or taps it, once it can be touched.
    pub fn press(&self) -> Result<()> {
        patiently(|| {
            self.into_sight()?;
            self.click()
        })
    }

    /// Types a text into it in place of what stands there, key by key.
    pub fn fill(&self, text: &str) -> Result<()> {
        self.press()?;
        let all = format!("{}a{}", keys::CONTROL, keys::CONTROL);
        self.type_text(&format!("{all}{}{text}", keys::BACKSPACE))
    }

    /// Chooses what is called so, of a list.
    pub fn choose(&self, option: &str) -> Result<()> {
        let find = "const [list, text] = arguments;
            return [...list.options].find((option) => option.text === text) ?? null";
        let found = patiently(|| {
            let found = self
                .browser()
                .script(find, &[self.as_arg(), option.into()])?;
            match found.is_null() {
                true => Err(format!("The list holds no {option:?}.")),
                false => Ok(found),
            }
        })?;
        self.browser().returned(&found)?.click()
    }

    /// The complaint about what stands in it, or nothing.
    pub fn complaint(&self) -> Result<String> {
        let say = "const ids = arguments[0].getAttribute('aria-describedby')?.split(' ') ?? [];
            const beside = ids.map((id) => document.getElementById(id));
            return beside.find((text) => text?.role === 'alert')?.innerText ?? ''";
        let said = self.browser().script(say, &[self.as_arg()])?;
        Ok(said.as_str().unwrap_or_default().replace('\u{a0}', " "))
    }

    /// What it is directly in.
    pub fn parent(&self) -> Result<Self> {
        let parent = "return arguments[0].parentElement";
        let parent = self.browser().script(parent, &[self.as_arg()])?;
        self.browser().returned(&parent)
    }

    /// Waits until an entry holds this.
    pub fn wait_value(&self, part: &str) -> Result<()> {
        patiently(|| {
            let value = self.value()?;
            match value.contains(part) {
                true => Ok(()),
                false => Err(format!("It holds {value:?}, not {part:?}.")),
            }
        })
    }

    /// Waits until this can be read in it.
    pub fn wait_text(&self, part: &str) -> Result<()> {
        patiently(|| {
            let text = self.text()?;
            match text.contains(part) {
                true => Ok(()),
                false => Err(format!("It says {text:?}, not {part:?}.")),
            }
        })
    }
}
