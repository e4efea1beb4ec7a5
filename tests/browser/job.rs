//! The main job: put in a boat, read how long the engine must run.

use crate::desk::Desk;
use ampwright_core::boat::{Key, Worksheet};
use ampwright_core::report;
use ampwright_core::schema::Value;
use ampwright_core::text::answer;
use ampwright_core::units::Reader;
use ampwright_tests::driver::Screen;

/// A boat of our own invention, through the short path.
const BOAT: [(&str, f64); 5] = [
    ("bank_capacity_ah", 560.0),
    ("daily_use_ah", 140.0),
    ("alt_rated_a", 90.0),
    ("eng_rpm", 1300.0),
    ("alt_pulley_ratio", 2.6),
];

fn boat_on(desk: &Desk) {
    for (key, number) in BOAT {
        desk.fill(&format!("#ask-{key}"), &number.to_string());
    }
}

#[test]
fn the_short_path_gives_the_answer_of_the_core() {
    let desk = Desk::open(Screen::Phone);
    boat_on(&desk);
    desk.choose("#ask-space_basis", "measured");
    desk.fill("#ask-space_hot_c", "52,5");
    desk.choose("#ask-reg_kind", "internal");
    desk.browser.shot("job-short-path").unwrap();

    let mut sheet = Worksheet::default();
    let mut say = |name: &str, value: Value| {
        sheet.state(Key::named(name).unwrap(), value).unwrap();
    };
    for (key, number) in BOAT {
        say(key, Value::Number(number));
    }
    say("space_basis", Value::Choice(1));
    say("space_hot_c", Value::Number(52.5));
    say("reg_kind", Value::Choice(1));
    let expected = answer(&report(&sheet), &Reader::METRIC);
    let shown = desk.answer();
    assert_eq!(shown.time, expected.engine_time);
    assert_eq!(shown.amps, expected.hot_amps);
    // Nothing watches the heat: the first finding says so.
    let first = desk.text("#findings li:first-child");
    assert!(first.contains("temperature"), "{first}");
    desk.assert_quiet();
}

#[test]
fn a_changed_rpm_moves_the_answer_at_once_and_it_stays_in_sight() {
    let desk = Desk::open(Screen::Phone);
    let before = desk.answer();
    desk.fill("#ask-eng_rpm", "1100");
    let after = desk.answer();
    assert_ne!(before.amps, after.amps);
    assert_ne!(before.time, after.time);

    let field = desk.browser.find("#ask-reg_set_point_c").unwrap();
    field.fill("95").unwrap();
    let strip = desk.browser.find("#answer").unwrap();
    let [_, top, _, height] = strip.rect().unwrap();
    let scrolled = desk.browser.script("return window.scrollY", &[]).unwrap();
    let top = top - scrolled.as_f64().unwrap();
    assert!(top >= -1.0 && top + height < 300.0, "the strip is at {top}");
    desk.browser.shot("job-answer-in-sight").unwrap();
}

#[test]
fn the_day_is_added_up_from_a_list() {
    let desk = Desk::open(Screen::Phone);
    desk.press("#add-it-up");
    let rows = desk.browser.find_all(".questions .load").unwrap();
    assert!(rows.len() >= 8, "{} loads", rows.len());
    let before = desk.text(".questions .total");
    desk.press(".questions .load summary");
    desk.fill("#ask-load-0-draw", "90");
    let after = desk.text(".questions .total");
    assert_ne!(before, after);
    desk.browser.shot("job-list-of-loads").unwrap();
    desk.assert_quiet();
}

#[test]
fn the_chart_is_read_off_with_the_keyboard() {
    let desk = Desk::open(Screen::Desk);
    let slider = desk.browser.find("#reading").unwrap();
    let before = desk.text("#reading-values");
    slider
        .type_text(ampwright_tests::driver::keys::RIGHT)
        .unwrap();
    let after = desk.text("#reading-values");
    assert_ne!(before, after);
    assert!(after.contains("winding"), "{after}");
    desk.browser.shot("job-chart").unwrap();
    desk.assert_quiet();
}

#[test]
fn wrong_figures_are_answered_in_a_sentence_and_nothing_is_lost() {
    let desk = Desk::open(Screen::Phone);
    let done = format!("444{}", ampwright_tests::driver::keys::ENTER);
    desk.fill("#ask-bank_capacity_ah", &done);
    let answer = desk.answer();
    for (typed, said) in [
        ("", "Empty: 444 A·h is used"),
        ("abc", "not a number"),
        ("-5", "too little"),
        ("1e99", "too much"),
    ] {
        desk.fill("#ask-bank_capacity_ah", typed);
        let complaint = desk.text("#ask-bank_capacity_ah-complaint");
        assert!(complaint.contains(said), "{typed:?}: {complaint}");
        assert!(complaint.contains("10 to 5000 A·h"), "{complaint}");
        assert_eq!(desk.answer(), answer, "after {typed:?}");
        let field = desk.browser.find("#ask-bank_capacity_ah").unwrap();
        assert_eq!(field.property("value").unwrap(), typed);
    }
    desk.browser.shot("job-wrong-figure").unwrap();
    desk.fill("#ask-bank_capacity_ah", "444,0");
    assert_eq!(desk.text("#ask-bank_capacity_ah-complaint"), "");
    assert_eq!(desk.answer(), answer);
    desk.assert_quiet();
}
