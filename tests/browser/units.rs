//! The units figures are told in: on the page only.

use ampwright_core::boat::Key;
use ampwright_core::schema::Value;
use ampwright_core::{Worksheet, report};
use ampwright_tests::driver::Screen;

use crate::desk::Desk;

const OUTSIDE: &str = "#ask-space_outside_c";

/// Chooses the units of a kind; the page follows without being opened anew.
fn choose(desk: &Desk, list: &str, what: &str) {
    let browser = &desk.browser;
    browser.script("window.before = true", &[]).unwrap();
    if browser.find("#units[open]").is_err() {
        desk.press("#units > summary");
    }
    browser.wait_for(list).unwrap();
    desk.choose(list, what);
}

fn value(desk: &Desk) -> String {
    let entry = desk.browser.find(OUTSIDE).unwrap();
    let value = entry.property("value").unwrap();
    value.as_str().unwrap_or_default().to_string()
}

#[test]
fn degrees_are_told_and_typed_as_chosen_and_kept_as_ever() {
    let desk = Desk::open(Screen::Phone);
    let outside = Key::named("space_outside_c").unwrap();
    desk.fill(OUTSIDE, "30");
    choose(&desk, "#unit-temperature", "other");
    // 30 °C is 86 °F; a bank must not be charged below freezing point.
    desk.browser
        .find(OUTSIDE)
        .unwrap()
        .wait_value("86")
        .unwrap();
    assert_eq!(value(&desk), "86");
    assert_eq!(desk.text(&format!("{OUTSIDE} + .unit")), "°F");
    let page = |told: &str| {
        let told = format!(
            "return document.body.textContent.replaceAll('\\u00a0', ' ').includes('{told}')"
        );
        desk.browser.wait_script(&told).unwrap();
    };
    page("battery below 32 °F");
    // What is drawn later is told the same way.
    desk.fill(OUTSIDE, "104");
    assert_eq!(desk.linked().inputs.get(outside), Value::Number(40.0));
    desk.fill(OUTSIDE, "999");
    let complaint = desk.text("#ask-space_outside_c-complaint");
    assert!(complaint.contains("takes −4 to 122 °F"), "{complaint}");
    desk.fill(OUTSIDE, "95");
    assert_eq!(desk.linked().inputs.get(outside), Value::Number(35.0));
    choose(&desk, "#unit-temperature", "");
    assert_eq!(value(&desk), "35");
    page("battery below 0 °C");
    let before = desk.browser.script("return window.before", &[]).unwrap();
    assert_eq!(before, true, "nothing was loaded anew");
    // The choice is kept for the next visit.
    choose(&desk, "#unit-temperature", "other");
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(crate::desk::OPENED).unwrap();
    assert_eq!(value(&desk), "95");
    desk.assert_quiet();
}

#[test]
fn energy_is_told_in_watt_hours_of_the_system_voltage() {
    let desk = Desk::open(Screen::Desk);
    let need = || desk.text("#answer-need");
    let figure = |text: &str| -> f64 {
        let figure = text.split(' ').find_map(|word| word.parse().ok());
        figure.unwrap()
    };
    let ah = need();
    assert!(ah.ends_with(" A·h"), "{ah}");
    choose(&desk, "#unit-charge", "other");
    let told = desk.browser.wait_text("#answer-need", " W·h").unwrap();
    let wh = told.text().unwrap();
    assert!(wh.ends_with(" W·h"), "{wh}");
    let need_ah = report(&Worksheet::default()).analyses.day.need_ah;
    assert_eq!(figure(&ah), need_ah.round());
    assert_eq!(figure(&wh), (12.0 * need_ah).round());
    // Who hears the page hears the same.
    let heard = desk.browser.find("#answer-need .how").unwrap();
    let heard = heard.label().unwrap();
    assert!(heard.contains(" W·h came"), "{heard}");
    desk.assert_quiet();
}
