//! The table of contents leads to every chapter.

use ampwright_tests::driver::Screen;

use crate::desk::Desk;

#[test]
fn every_place_is_two_touches_away() {
    for screen in [Screen::Phone, Screen::Desk] {
        let desk = Desk::open(screen);
        let places = desk.browser.find_all(".contents [data-to]").unwrap();
        let ids: Vec<String> = places
            .iter()
            .map(|place| place.attribute("data-to").unwrap().unwrap())
            .collect();
        assert!(ids.len() > 10, "{ids:?}");
        for id in ids {
            desk.browser.find(".thumb").unwrap().click().unwrap();
            let choice = format!(".contents [data-to={id}]");
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
