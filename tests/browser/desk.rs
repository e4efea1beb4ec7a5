//! The page as a user meets it: open it, type into a field, read the answer.

use crate::site::Site;
use ampwright_core::Worksheet;
use ampwright_core::exchange::open_link;
use ampwright_tests::driver::{Browser, Element, Screen};

/// A browser with the page open on a phone, and the server behind it.
pub struct Desk {
    pub site: Site,
    pub browser: Browser,
}

/// What stands in the strip at the top.
#[derive(Debug, PartialEq, Eq, Clone)]
pub struct Answer {
    pub time: String,
    pub amps: String,
    pub limit: String,
}

/// The answer, once the worksheet has started.
pub const OPENED: &str = "[data-ready] #answer";

impl Desk {
    /// A fresh visitor.
    pub fn open(screen: Screen) -> Desk {
        let desk = Desk {
            site: Site::start(),
            browser: Browser::open(screen).unwrap(),
        };
        desk.browser.go(&desk.site.url()).unwrap();
        desk.browser.wait_for(OPENED).unwrap();
        desk
    }

    /// Types a text into a field in place of what stands there.
    pub fn fill(&self, css: &str, text: &str) {
        self.in_sight(css).fill(text).unwrap();
    }

    /// Presses a button.
    pub fn press(&self, css: &str) {
        self.in_sight(css).click().unwrap();
    }

    /// An element, scrolled to the middle: the strip covers the top.
    fn in_sight(&self, css: &str) -> Element<'_> {
        let element = self.browser.find(css).unwrap();
        // What comes into sight only now is laid out with the next frame, and
        // moves what follows.
        // A person turns the wheel, which ends what the page does by itself.
        let scroll = "const element = arguments[0];
            dispatchEvent(new WheelEvent('wheel'));
            return new Promise((done) => {
                let looks = 6;
                (function look() {
                    element.scrollIntoView({ block: 'center' });
                    looks -= 1;
                    requestAnimationFrame(looks ? look : done);
                })();
            })";
        self.browser.script(scroll, &[element.as_arg()]).unwrap();
        element
    }

    /// Chooses an option as a user's choice is heard.
    pub fn choose(&self, css: &str, option: &str) {
        let chosen = self
            .browser
            .find(&format!("{css} option[value=\"{option}\"]"));
        chosen.unwrap().click().unwrap();
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
        // It follows the frame that shows the answer.
        let drawn = "return new Promise((done) =>
            requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 60))))";
        self.browser.script(drawn, &[]).unwrap();
        let drawn = "return new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)))";
        self.browser.script(drawn, &[]).unwrap();
        let link = self.browser.find("#link").unwrap().property("value");
        link.unwrap().as_str().unwrap().to_string()
    }

    /// The text of an element.
    pub fn text(&self, css: &str) -> String {
        self.browser.find(css).unwrap().text().unwrap()
    }

    /// Waits until the worksheet is kept in the browser.
    pub fn wait_kept(&self) {
        self.browser
            .wait_script(
                "return Object.keys(localStorage).some(k => k.startsWith('ampwright.sheet.'))",
            )
            .unwrap();
        // The last half second of typing is kept after it rests.
        std::thread::sleep(std::time::Duration::from_millis(600));
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
