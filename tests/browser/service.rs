//! The settings sheet and the first run: they follow the worksheet, ticks are
//! kept but not sent, and each prints by itself.

use crate::desk::Desk;
use ampwright_core::boat::{Key, Worksheet};
use ampwright_core::guidance::settings;
use ampwright_core::report;
use ampwright_core::schema::Value;
use ampwright_core::text::settings as text;
use ampwright_core::units::Reader;
use ampwright_tests::driver::Screen;

/// What the page prints is not sent to a printer here.
const NO_PRINTER: &str =
    "window.print = () => { window.asked = document.documentElement.className }";
const FITS: &str = "return document.documentElement.scrollWidth <= innerWidth";

#[test]
fn a_tick_is_kept_and_no_link_carries_it() {
    let desk = Desk::open(Screen::Phone);
    desk.fill("#ask-bank_capacity_ah", "333");
    desk.press("#fit-first > summary");
    desk.browser.wait_for("#first-isolate").unwrap();
    let link = desk.link();
    let before = desk.text("#first-count");
    assert!(before.starts_with("0 of "), "{before}");
    desk.press("#first-isolate");
    desk.browser.wait_text("#first-count", "1 of ").unwrap();
    assert_eq!(desk.link(), link);
    desk.browser.wait_script(FITS).unwrap();
    desk.wait_kept("isolate");

    desk.browser.go(&desk.site.url()).unwrap();
    desk.browser.wait_for("#answer").unwrap();
    // The fold is left open.
    desk.browser.wait_text("#first-count", "1 of ").unwrap();
    desk.browser.wait_for("#first-isolate:checked").unwrap();

    // From the sheet for the readings to where they are typed.
    desk.press("#to-trial");
    let there = "return document.activeElement.id === 'trial-amps'";
    desk.browser.wait_script(there).unwrap();
    desk.assert_quiet();
}

#[test]
fn settings_follow_an_input_and_print_alone() {
    let desk = Desk::open(Screen::Phone);
    desk.press("#fit-settings > summary");
    desk.browser.wait_for("#settings-table").unwrap();
    let mut sheet = Worksheet::default();
    let key = Key::named("bank_capacity_ah").unwrap();
    sheet.state(key, Value::Number(333.0)).unwrap();
    desk.fill("#ask-bank_capacity_ah", "333");
    for group in settings(&sheet, &report(&sheet)).groups {
        for setting in &group.settings {
            let value = text::value(setting, &Reader::METRIC);
            desk.browser.wait_text("#settings-table", &value).unwrap();
        }
    }
    desk.browser.wait_script(FITS).unwrap();

    desk.browser.script(NO_PRINTER, &[]).unwrap();
    for (fold, class) in [("settings", "print-settings"), ("first", "print-first")] {
        if fold == "first" {
            desk.press("#fit-first > summary");
            desk.browser.wait_for("#first-form").unwrap();
        }
        desk.press(&format!("#print-{fold}"));
        let asked = format!("return window.asked === '{class}'");
        desk.browser.wait_script(&asked).unwrap();
        let head = "return document.getElementById(arguments[0]).textContent";
        let head = desk
            .browser
            .script(head, &[format!("fit-{fold}-head").into()])
            .unwrap();
        let head = head.as_str().unwrap();
        assert!(head.contains(&desk.link()), "{head}");
        let done = "dispatchEvent(new Event('afterprint')); return document.documentElement.className === ''";
        desk.browser.wait_script(done).unwrap();
    }
    desk.assert_quiet();
}
