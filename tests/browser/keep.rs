//! Worksheets that are kept, and worksheets that travel as links.

use crate::desk::{Desk, answer};
use crate::pool::Lent;
use ampwright_tests::driver::Screen;

#[test]
fn a_worksheet_is_still_there_after_a_reload() {
    let desk = Desk::open(Screen::Phone);
    desk.fill("#ask-alt_rated_a", "85");
    desk.fill("#sheet-name", "Plover");
    desk.wait_kept("Plover");
    let before = desk.answer();
    desk.browser.refresh().unwrap();
    desk.browser.wait_text("#title", "Plover").unwrap();
    assert_eq!(desk.answer(), before);
    let field = desk.browser.find("#ask-alt_rated_a").unwrap();
    assert_eq!(field.property("value").unwrap(), "85");
    desk.assert_quiet();
}

#[test]
fn two_worksheets_are_kept_apart() {
    let desk = Desk::open(Screen::Desk);
    desk.fill("#sheet-name", "First");
    desk.wait_kept("First");
    desk.press("#new-sheet");
    desk.fill("#sheet-name", "Second");
    desk.fill("#ask-eng_rpm", "1111");
    desk.browser
        .wait_text(".sheets li:first-child", "Second")
        .unwrap();
    desk.press(".sheets li:nth-child(2) .title");
    desk.browser.wait_text("#title", "First").unwrap();
    let rpm = desk.browser.find("#ask-eng_rpm").unwrap().property("value");
    assert_eq!(rpm.unwrap(), "1500");
    desk.browser.shot("keep-shelf").unwrap();
    desk.assert_quiet();
}

#[test]
fn a_link_gives_the_same_numbers_in_another_browser() {
    let desk = Desk::open(Screen::Phone);
    desk.fill("#ask-bank_capacity_ah", "610");
    desk.fill("#ask-eng_rpm", "1250");
    desk.press("#add-it-up");
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
    desk.fill("#sheet-name", "Mine");
    desk.fill("#ask-alt_rated_a", "77");
    desk.wait_kept(r#""alt_rated_a":77"#);
    let foreign = format!("{}#v=2&name=Theirs&alt_rated_a=150&end", desk.site.url());
    desk.browser.go(&foreign).unwrap();
    desk.browser.wait_text("#title", "Theirs").unwrap();
    desk.browser.wait_text(".sheets", "Theirs").unwrap();
    desk.press(".sheets li:nth-child(2) .title");
    desk.browser.wait_text("#title", "Mine").unwrap();
    let rated = desk
        .browser
        .find("#ask-alt_rated_a")
        .unwrap()
        .property("value");
    assert_eq!(rated.unwrap(), "77");
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
    desk.fill("#sheet-name", "Offshore");
    desk.wait_kept("Offshore");
    desk.browser.wait_data("offline", "ready").unwrap();
    let before = desk.answer();
    desk.site.stop();
    desk.browser.refresh().unwrap();
    desk.browser.wait_text("#title", "Offshore").unwrap();
    assert_eq!(desk.answer(), before);
    desk.fill("#ask-eng_rpm", "1200");
    assert_ne!(desk.answer(), before);
    desk.browser.shot("keep-offline").unwrap();
}
