//! Browsers lent to one test after another: opening one takes longer than many
//! a test. Each page is served at an address of its own, so that what a browser
//! keeps of one is none of another's business; what a test leaves behind is
//! cleared away all the same.

use ampwright_tests::driver::{Browser, Engine, Screen};
use std::{ops::Deref, sync::Mutex, thread};

/// Browsers that nobody uses now. When the tests are over they end by
/// themselves.
static IDLE: Mutex<Vec<(Screen, Browser)>> = Mutex::new(Vec::new());

/// No more than these are kept.
const MOST: usize = 4;

/// A browser lent to a test.
pub struct Lent {
    screen: Screen,
    /// There until it goes back.
    browser: Option<Browser>,
}

impl Lent {
    /// One with such a screen, as good as new.
    pub fn new(screen: Screen) -> Lent {
        let idle = {
            let mut idle = IDLE.lock().unwrap();
            let at = idle.iter().position(|(of, _)| *of == screen);
            at.map(|at| idle.remove(at).1)
        };
        let browser = idle.unwrap_or_else(|| Browser::open(screen).unwrap());
        let browser = Some(browser);
        Lent { screen, browser }
    }
}

impl Lent {
    /// One of another kind, which goes with the test.
    pub fn own(engine: Engine, screen: Screen) -> Lent {
        let browser = Some(Browser::open_as(engine, screen).unwrap());
        Lent { screen, browser }
    }
}

impl Deref for Lent {
    type Target = Browser;

    fn deref(&self) -> &Browser {
        self.browser.as_ref().expect("it is lent still")
    }
}

impl Drop for Lent {
    fn drop(&mut self) {
        let Some(browser) = self.browser.take() else {
            return;
        };
        // After a failure nobody knows what state it is in.
        if thread::panicking() || browser.forget() != Ok(true) {
            return;
        }
        let too_many = {
            let mut idle = IDLE.lock().unwrap();
            idle.push((self.screen, browser));
            (idle.len() > MOST).then(|| idle.remove(0))
        };
        drop(too_many);
    }
}
