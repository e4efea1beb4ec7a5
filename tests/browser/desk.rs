//! The page as a user meets it: open it, type into a field, read the answer.

use crate::pool::Lent;
use crate::site::Site;
use ampwright_core::Worksheet;
use ampwright_core::boat::Key;
use ampwright_core::exchange::open_link;
use ampwright_core::schema::Value as InputValue;
use ampwright_tests::driver::{Browser, Element, Engine, Scope, Screen};
use serde_json::Value;

/// A browser with the page open on a phone, and the server behind it.
pub struct Desk {
    pub site: Site,
    pub browser: Lent,
}

/// What stands in the strip at the top.
#[derive(Debug, PartialEq, Eq, Clone)]
pub struct Answer {
    pub time: String,
    pub amps: String,
    pub limit: String,
}

/// Screens that the page must suit: a phone, one that lies on its side, a desk.
pub const SCREENS: [Screen; 3] = [
    Screen::Phone,
    Screen::Touch {
        width: 800,
        height: 360,
    },
    Screen::Desk,
];

/// The answer, once the worksheet has started.
pub const OPENED: &str = "[data-complete] #answer";

impl<'b> Scope<'b> for &'b Desk {
    fn scope(self) -> (&'b Browser, Value) {
        self.browser.scope()
    }
}

impl Desk {
    /// A fresh visitor.
    pub fn open(screen: Screen) -> Desk {
        Desk::with(Lent::new(screen))
    }

    /// A fresh visitor with another browser.
    pub fn open_in(engine: Engine, screen: Screen) -> Desk {
        Desk::with(Lent::own(engine, screen))
    }

    fn with(browser: Lent) -> Desk {
        let desk = Desk {
            site: Site::start(),
            browser,
        };
        desk.browser.go(&desk.site.url()).unwrap();
        desk.browser.wait_for(OPENED).unwrap();
        desk
    }

    /// Makes the boat one with an external regulator, direct to the house bank;
    /// that boat for the core.
    pub fn regulate(&self) -> Worksheet {
        self.choose("#ask-reg_kind", "external");
        self.choose("#ask-way_kind", "direct");
        let mut sheet = Worksheet::default();
        for key in ["reg_kind", "way_kind"] {
            let key = Key::named(key).unwrap();
            sheet.state(key, InputValue::Choice(0)).unwrap();
        }
        sheet
    }

    /// What matches, once it is there: what a fold holds comes a moment after
    /// the fold opens.
    fn found(&self, css: &str) -> Element<'_> {
        let there = format!("return document.querySelector({css:?}) !== null");
        self.browser.wait_script(&there).unwrap();
        self.browser.find(css).unwrap()
    }

    /// Types a text into a field in place of what stands there.
    pub fn fill(&self, css: &str, text: &str) {
        self.found(css).fill(text).unwrap();
    }

    /// Presses a button.
    pub fn press(&self, css: &str) {
        self.found(css).press().unwrap();
    }

    /// Chooses an option as a user's choice is heard.
    pub fn choose(&self, css: &str, option: &str) {
        let chosen = self.found(&format!("{css} option[value=\"{option}\"]"));
        chosen.click().unwrap();
    }

    /// The answer as it stands.
    pub fn answer(&self) -> Answer {
        answer(&self.browser)
    }

    /// The worksheet that the page's link carries.
    pub fn linked(&self) -> Worksheet {
        let link = self.link();
        let (_, fragment) = link.split_once('#').unwrap();
        open_link(fragment).unwrap().sheet
    }

    /// The link to the worksheet as it stands, once what is typed is drawn.
    pub fn link(&self) -> String {
        // It follows the frame that shows the answer, and what is said here comes
        // after what the page has said already.
        let drawn = "return new Promise((done) => {
            const frame = (left) => requestAnimationFrame(() =>
                setTimeout(() => left > 0 ? frame(left - 1) : done()));
            frame(2);
        })";
        self.browser.script(drawn, &[]).unwrap();
        let link = self.browser.find("#link").unwrap().property("value");
        link.unwrap().as_str().unwrap().to_string()
    }

    /// The text of an element.
    pub fn text(&self, css: &str) -> String {
        self.browser.find(css).unwrap().text().unwrap()
    }

    /// Waits until a worksheet with this text is kept in the browser: what was
    /// typed last, as typing is kept when it rests.
    pub fn wait_kept(&self, text: &str) {
        let held = format!(
            "return Object.entries(localStorage).some(([key, kept]) =>
                key.startsWith('ampwright.sheet.') && kept.includes({text:?}))"
        );
        self.browser.wait_script(&held).unwrap();
    }

    /// Nothing was complained of, and nobody else was asked.
    pub fn assert_quiet(&self) {
        assert_eq!(self.browser.complaints().unwrap(), [""; 0]);
        assert_eq!(
            self.browser.requests_beyond(&self.site.url()).unwrap(),
            [""; 0]
        );
    }
}

/// The answer in a browser's page.
pub fn answer(browser: &Browser) -> Answer {
    let text = |css: &str| browser.find(css).unwrap().text().unwrap();
    Answer {
        time: text("#answer-time"),
        amps: text("#answer-amps"),
        limit: text("#answer-limit"),
    }
}

/// Opens every fold, and the folds in them, and waits until all they hold is
/// drawn.
pub fn unfold(browser: &Browser) {
    // Drawn is what no longer changes for a while, once the ranges are reckoned: they
    // are in the part of the page that comes last.
    let open = "return new Promise((done) => {
        const reckoned = () => document.querySelector('#sure-progress')?.textContent === '';
        const quiet = () => setTimeout(() => {
            if (!reckoned()) { timer = quiet(); return; }
            watch.disconnect();
            done();
        }, 400);
        let timer;
        const watch = new MutationObserver(() => {
            for (const fold of document.querySelectorAll('details:not([open])')) fold.open = true;
            clearTimeout(timer);
            timer = quiet();
        });
        watch.observe(document.body, { subtree: true, childList: true, characterData: true });
        for (const fold of document.querySelectorAll('details')) fold.open = true;
        timer = quiet();
    })";
    browser.script(open, &[]).unwrap();
}

/// Lays all of the page out, in sight or not.
pub fn lay_out(browser: &Browser) {
    let style = "const sheet = new CSSStyleSheet();
        sheet.replaceSync('* { content-visibility: visible !important }');
        document.adoptedStyleSheets = [sheet];";
    browser.script(style, &[]).unwrap();
}

/// Waits until the journal of what is kept holds this text.
pub fn wait_journal(browser: &Browser, text: &str) {
    let held = format!(
        "return new Promise((done) => {{
            indexedDB.open('ampwright').onsuccess = ({{ target: {{ result: base }} }}) => {{
                base.transaction('kept').objectStore('kept').getAll().onsuccess = ({{ target }}) => {{
                    base.close();
                    done(target.result.some((kept) => kept.text.includes({text:?})));
                }};
            }};
        }})"
    );
    browser.wait_script(&held).unwrap();
}
