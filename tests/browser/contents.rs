//! The table of contents leads to every chapter.

use ampwright_tests::driver::{Scope, Screen};

use crate::desk::{Desk, SCREENS};

#[test]
fn every_place_is_two_touches_away() {
    for screen in [Screen::Phone, Screen::Desk] {
        let desk = Desk::open(screen);
        let places = desk.browser.find_all(".contents a").unwrap();
        let ids: Vec<String> = places
            .iter()
            .map(|place| place.attribute("href").unwrap().unwrap().replace('#', ""))
            .collect();
        assert!(ids.len() > 10, "{ids:?}");
        for id in ids {
            desk.push("Contents");
            let choice = format!(".contents a[href='#{id}']");
            desk.browser.find(&choice).unwrap().click().unwrap();
            // In sight below the strip, and the list gone.
            let there = format!(
                "const top = document.getElementById('{id}').getBoundingClientRect().top;
                 const strip = document.querySelector('.answer').getBoundingClientRect().bottom;
                 return top >= strip - 1 && top < innerHeight - 40
                   && !document.querySelector('.contents').matches(':popover-open')"
            );
            desk.browser.wait_script(&there).unwrap();
        }
        desk.assert_quiet();
    }
}

/// A chapter has an address; the browser's way back closes what it opened, and
/// leads to where one was.
#[test]
fn back_leads_back() {
    let desk = Desk::open(Screen::Phone);
    desk.push("Contents");
    let contents = &*desk.browser;
    contents.link("Units").unwrap().press().unwrap();
    desk.browser
        .wait_script("return document.querySelector('#units').open")
        .unwrap();
    assert!(desk.browser.url().unwrap().ends_with("#units"));
    desk.browser.back().unwrap();
    desk.browser
        .wait_script("return !document.querySelector('#units').open && scrollY < 100")
        .unwrap();
    // The boat is the one it was, and the address opens the chapter again.
    let address = format!("{}#units", desk.site.url());
    desk.browser.go(&address).unwrap();
    desk.browser.refresh().unwrap();
    desk.browser
        .wait_script("return document.querySelector('#units')?.open && scrollY > 100")
        .unwrap();
    assert_eq!(desk.text("#summary-whose"), "Example boat");
    desk.assert_quiet();
}

/// The bar at the foot has a space of its own: nothing of the page ends under it.
#[test]
fn the_bar_covers_nothing() {
    for screen in SCREENS {
        let desk = Desk::open(screen);
        let free = "scrollTo(0, document.documentElement.scrollHeight);
            const bar = document.querySelector('.footbar').getBoundingClientRect();
            const last = document.querySelector('#paper').lastElementChild;
            return last.getBoundingClientRect().bottom <= bar.top + 1";
        desk.browser.wait_script(free).unwrap();
    }
}
