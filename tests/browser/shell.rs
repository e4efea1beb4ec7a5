//! Opening the page: on a phone, without a network, after a new version, and
//! when part of it is missing.

use crate::site::Site;
use ampwright_core::worksheet::{Key, QUESTIONS};
use ampwright_core::{Worksheet, report};
use ampwright_tests::driver::{Browser, Profile, Screen};
use serde_json::json;
use std::{fs, path::Path};

#[test]
fn the_page_opens_on_a_phone_and_asks_nobody_else() {
    let site = Site::start();
    let browser = Browser::open(Screen::Phone).unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_for("#paper:enabled h1").unwrap();
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
fn the_second_visit_needs_no_network() {
    let mut site = Site::start();
    let browser = Browser::open(Screen::Phone).unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_data("offline", "ready").unwrap();

    site.stop();
    browser.refresh().unwrap();
    browser.wait_for("#paper:enabled h1").unwrap();
    browser.go(&format!("{}any/deep/path", site.url())).unwrap();
    browser.wait_for("#paper:enabled h1").unwrap();
    assert_eq!(browser.url().unwrap(), site.url());
    browser.shot("shell-offline").unwrap();
}

#[test]
fn a_new_version_waits_until_it_is_wanted() {
    let site = Site::changed(|_| ());
    let browser = Browser::open(Screen::Desk).unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_data("offline", "ready").unwrap();

    mark_as_new(site.folder());
    browser.refresh().unwrap();
    browser.wait_data("update", "waiting").unwrap();
    let old = "return document.title";
    assert_eq!(browser.script(old, &[]).unwrap(), json!("Ampwright"));

    let take = "window.dispatchEvent(new Event('ampwright:take-over'))";
    browser.script(take, &[]).unwrap();
    let new = "return document.title === 'New' && document.documentElement.dataset.offline";
    assert_eq!(browser.wait_script(new).unwrap(), json!("ready"));
    browser.shot("shell-update").unwrap();

    let names = browser.script("return caches.keys()", &[]).unwrap();
    let names = names.as_array().unwrap();
    assert_eq!(names.len(), 1, "{names:?}");
    assert!(names[0].as_str().unwrap().ends_with("-new"), "{names:?}");
}

/// Turns a served copy into the next version of the page.
fn mark_as_new(folder: &Path) {
    change(&folder.join("index.html"), "<title>Ampwright", "<title>New");
    change(
        &folder.join("sw.js"),
        "';\nconst FILES",
        "-new';\nconst FILES",
    );
}

fn change(file: &Path, from: &str, to: &str) {
    let text = fs::read_to_string(file).unwrap();
    assert!(text.contains(from), "{} lacks {from}", file.display());
    fs::write(file, text.replace(from, to)).unwrap();
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
    let site = Site::changed(|folder| fs::write(folder.join("boot.js"), "").unwrap());
    let browser = Browser::open(Screen::Phone).unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_text("#static", "opening").unwrap();
    let text = |css: &str| browser.find(css).unwrap().text().unwrap();
    let asks = text(".questions ol");
    for question in QUESTIONS {
        assert!(asks.contains(question.asks), "{}", question.asks);
    }
    let help = Key::named("bank_capacity_ah").unwrap().spec().help;
    assert!(!help.is_empty() && asks.contains(help), "{asks}");
    // What a fresh worksheet says stands there, and nothing can be typed yet.
    let findings = report(&Worksheet::default()).findings;
    assert!(text("#findings-list").contains(&findings[0].text));
    let open = "return document.querySelectorAll('#app :is(input, select, textarea, button):enabled').length";
    assert_eq!(browser.script(open, &[]).unwrap(), json!(0));
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
fn a_page_that_cannot_start_says_so() {
    let site = Site::changed(|folder| {
        for entry in fs::read_dir(folder).unwrap() {
            let file = entry.unwrap().path();
            if file.extension().is_some_and(|e| e == "wasm") {
                fs::remove_file(file).unwrap();
            }
        }
    });
    let browser = Browser::open(Screen::Phone).unwrap();
    browser.go(&site.url()).unwrap();
    let said = browser.wait_for("#no-start").unwrap().text().unwrap();
    browser.shot("shell-no-start").unwrap();
    assert!(said.contains("could not start"), "{said}");
    assert!(!browser.find("#opening").unwrap().shown().unwrap());
}
