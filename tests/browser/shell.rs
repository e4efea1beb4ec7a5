//! Opening the page: on a phone, in the night, before it starts, and when part
//! of it is missing.

use crate::desk::{self, OPENED};
use crate::pool::Lent;
use crate::site::{Site, part};
use ampwright_core::boat::{Key, QUESTIONS};
use ampwright_core::schema::Value;
use ampwright_core::text::answer;
use ampwright_core::text::findings::sentence;
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};
use ampwright_tests::driver::{Browser, Profile, Screen};
use serde_json::json;
use std::fs;

#[test]
fn the_page_opens_on_a_phone_and_asks_nobody_else() {
    let site = Site::start();
    let browser = Lent::new(Screen::Phone);
    browser.go(&site.url()).unwrap();
    browser.wait_for("[data-ready] h1").unwrap();
    browser.wait_gone("#static").unwrap();
    browser.wait_data("offline", "ready").unwrap();
    browser.shot("shell-phone").unwrap();

    assert_eq!(browser.title().unwrap(), "Ampwright");
    let width = "return document.documentElement.scrollWidth";
    assert_eq!(browser.script(width, &[]).unwrap(), json!(360));
    assert_eq!(browser.complaints().unwrap(), [""; 0]);
    assert_eq!(browser.requests_beyond(&site.url()).unwrap(), [""; 0]);
}

#[test]
fn the_night_colours_are_there_at_the_next_opening() {
    let site = Site::start();
    let profile = Profile::new().unwrap();
    let browser = Browser::open_in(Screen::Desk, &profile).unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_data("look", "day").unwrap();
    let choose = "localStorage.setItem('ampwright.look', 'night')";
    browser.script(choose, &[]).unwrap();
    browser.close().unwrap();

    let browser = Browser::open_in(Screen::Desk, &profile).unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_data("look", "night").unwrap();
    browser.shot("shell-night").unwrap();
}

#[test]
fn the_page_can_be_read_before_it_starts() {
    // A loader that never comes to its end.
    let site = Site::changed(|folder| fs::write(part(folder, "boot-"), "").unwrap());
    let browser = Lent::new(Screen::Phone);
    browser.go(&site.url()).unwrap();
    browser.wait_text("#static", "opening").unwrap();
    let text = |css: &str| browser.find(css).unwrap().text().unwrap();
    let asks = text(".questions ol");
    for question in QUESTIONS {
        assert!(asks.contains(question.asks), "{}", question.asks);
    }
    let help = Key::named("bank_capacity_ah").unwrap().spec().help;
    assert!(!help.is_empty() && asks.contains(help), "{asks}");
    // What a fresh worksheet says stands there.
    let findings = report(&Worksheet::default()).findings;
    assert!(text("#findings-list").contains(&sentence(&findings[0], &Reader::METRIC)));
    browser.shot("shell-opening").unwrap();

    // Another worksheet is coming: these figures are not its.
    let kept = "localStorage.setItem('ampwright.last', '1')";
    browser.script(kept, &[]).unwrap();
    browser.refresh().unwrap();
    browser.wait_text(".questions", QUESTIONS[0].asks).unwrap();
    assert_eq!(text("#findings-list"), "");
    browser.shot("shell-opening-kept").unwrap();
    assert_eq!(browser.complaints().unwrap(), [""; 0]);
}

#[test]
fn what_is_entered_before_the_page_starts_is_taken_over() {
    // A loader that waits until it is told.
    let site = Site::changed(|folder| {
        let boot = part(folder, "boot-");
        let loader = fs::read_to_string(&boot).unwrap();
        let waits = "await new Promise((go) => { window.go = go });\n";
        fs::write(&boot, waits.to_string() + &loader).unwrap();
    });
    let browser = Lent::new(Screen::Phone);
    browser.go(&site.url()).unwrap();
    browser
        .wait_script("return typeof window.go === 'function'")
        .unwrap();
    browser
        .find("#ask-alt_rated_a")
        .unwrap()
        .fill("77")
        .unwrap();
    let regulator = "#ask-reg_kind option[value=external]";
    browser.find(regulator).unwrap().click().unwrap();
    browser.script("window.go()", &[]).unwrap();
    browser.wait_for(OPENED).unwrap();

    let mut sheet = Worksheet::default();
    let said = [
        ("alt_rated_a", Value::Number(77.0)),
        ("reg_kind", Value::Choice(0)),
    ];
    for (name, value) in said {
        sheet.state(Key::named(name).unwrap(), value).unwrap();
    }
    let expected = answer(&report(&sheet), &Reader::METRIC);
    browser
        .wait_text("#answer-amps", &expected.hot_amps)
        .unwrap();
    let shown = desk::answer(&browser);
    assert_eq!(shown.time, expected.time);
    let entry = browser.find("#ask-alt_rated_a").unwrap();
    assert_eq!(entry.value().unwrap(), "77");
    assert_eq!(browser.complaints().unwrap(), [""; 0]);
}

#[test]
fn a_page_that_cannot_start_says_so() {
    let site = Site::changed(|folder| fs::remove_file(part(folder, "_bg.wasm")).unwrap());
    let browser = Lent::new(Screen::Phone);
    browser.go(&site.url()).unwrap();
    let said = browser.wait_for("#no-start").unwrap().text().unwrap();
    browser.shot("shell-no-start").unwrap();
    assert!(said.contains("could not start"), "{said}");
    assert!(!browser.find("#opening").unwrap().shown().unwrap());
}

/// The first screen answers without the second part of the program, says what is
/// missing, and shows no figures of another boat below.
#[test]
fn a_page_of_which_the_rest_is_missing_answers_and_says_so() {
    let site = Site::changed(|folder| fs::remove_file(part(folder, "later-")).unwrap());
    let browser = Lent::new(Screen::Phone);
    browser.go(&site.url()).unwrap();
    browser.wait_text("#missing", "did not arrive").unwrap();
    browser
        .find("#ask-alt_rated_a")
        .unwrap()
        .fill("77")
        .unwrap();
    let mut sheet = Worksheet::default();
    sheet
        .state(Key::named("alt_rated_a").unwrap(), Value::Number(77.0))
        .unwrap();
    let expected = answer(&report(&sheet), &Reader::METRIC);
    browser
        .wait_text("#answer-amps", &expected.hot_amps)
        .unwrap();
    assert_eq!(desk::answer(&browser).time, expected.time);
    browser
        .find("#answer-amps button")
        .unwrap()
        .click()
        .unwrap();
    browser
        .wait_text("#answer-working", "is not here yet")
        .unwrap();
    assert!(!browser.find("#figures-title").unwrap().shown().unwrap());
    browser.shot("shell-rest-missing").unwrap();
}
