//! Worksheets that are kept, and worksheets that travel as links.

use crate::desk::{Desk, answer};
use crate::pool::Lent;
use ampwright_tests::driver::{Scope, Screen};

#[test]
fn a_worksheet_is_still_there_after_a_reload() {
    let desk = Desk::open(Screen::Phone);
    desk.questions().fill("Rated current", "85");
    desk.name("Plover");
    desk.wait_kept("Plover");
    let before = desk.answer();
    desk.browser.refresh().unwrap();
    desk.browser.wait_text("#title", "Plover").unwrap();
    assert_eq!(desk.answer(), before);
    assert_eq!(desk.questions().value("Rated current"), "85");
    desk.assert_quiet();
}

#[test]
fn two_worksheets_are_kept_apart() {
    let desk = Desk::open(Screen::Desk);
    desk.name("First");
    desk.wait_kept("First");
    desk.shelf().press("New boat");
    desk.name("Second");
    let speed = "Engine speed while charging";
    desk.questions().fill(speed, "1111");
    // The newest stands first.
    desk.shelf().button("Second").unwrap();
    assert!(desk.shelf().items()[0].starts_with("Second"));
    desk.shelf().press("First");
    desk.browser.wait_text("#title", "First").unwrap();
    assert_eq!(desk.questions().value(speed), "1500");
    desk.browser.shot("keep-shelf").unwrap();
    desk.assert_quiet();
}

#[test]
fn a_link_gives_the_same_numbers_in_another_browser() {
    let desk = Desk::open(Screen::Phone);
    let questions = desk.questions();
    questions.fill("Capacity", "610");
    questions.fill("Engine speed while charging", "1250");
    questions.press("Help me add it up");
    let (link, before) = (desk.link(), desk.answer());
    assert!(link.contains("#v=2&"), "{link}");

    let other = Lent::new(Screen::Desk);
    other.go(&link).unwrap();
    other.wait_text("#arrival", "as a copy").unwrap();
    assert_eq!(answer(&other), before);
    other.shot("keep-link-opened").unwrap();
    assert_eq!(other.complaints().unwrap(), [""; 0]);
}

#[test]
fn a_link_never_replaces_ones_own_worksheet() {
    let desk = Desk::open(Screen::Phone);
    desk.name("Mine");
    desk.questions().fill("Rated current", "77");
    desk.wait_kept(r#""alt_rated_a":77"#);
    let foreign = format!("{}#v=2&name=Theirs&alt_rated_a=150&end", desk.site.url());
    desk.browser.go(&foreign).unwrap();
    desk.browser.wait_text("#title", "Theirs").unwrap();
    desk.shelf().button("Theirs").unwrap();
    desk.shelf().press("Mine");
    desk.browser.wait_text("#title", "Mine").unwrap();
    assert_eq!(desk.questions().value("Rated current"), "77");
}

#[test]
fn a_link_that_was_cut_says_so() {
    let desk = Desk::open(Screen::Phone);
    let cut = format!("{}#v=2&alt_rated_a=90&eng_rp", desk.site.url());
    desk.browser.go(&cut).unwrap();
    let said = desk.browser.wait_text("#arrival", "incomplete").unwrap();
    assert!(said.text().unwrap().contains("eng_rp"));
    desk.browser.shot("keep-cut-link").unwrap();
    desk.assert_quiet();
}

#[test]
fn kept_worksheets_open_without_a_server() {
    let mut desk = Desk::open(Screen::Phone);
    desk.name("Offshore");
    desk.wait_kept("Offshore");
    desk.browser.wait_data("offline", "ready").unwrap();
    let before = desk.answer();
    desk.site.stop();
    desk.browser.refresh().unwrap();
    desk.browser.wait_text("#title", "Offshore").unwrap();
    assert_eq!(desk.answer(), before);
    desk.questions().fill("Day's use", "77");
    assert_ne!(desk.answer(), before);
    desk.browser.shot("keep-offline").unwrap();
}
