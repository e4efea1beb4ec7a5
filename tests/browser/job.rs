//! The main job: put in a boat, read how long the engine must run.

use crate::desk::Desk;
use crate::page::label;
use ampwright_core::boat::{Key, Worksheet};
use ampwright_core::report;
use ampwright_core::schema::Value;
use ampwright_core::text::answer;
use ampwright_core::units::Reader;
use ampwright_tests::driver::{Role, Scope, Screen};

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
        desk.questions().fill(label(key), &number.to_string());
    }
}

#[test]
fn the_short_path_gives_the_answer_of_the_core() {
    let desk = Desk::open(Screen::Phone);
    boat_on(&desk);
    let questions = desk.questions();
    questions.choose("Air temperature there", "I have measured it");
    questions.fill("Hot, near the alternator", "52,5");
    desk.choose("#ask-way_kind", "direct");
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
    say("way_kind", Value::Choice(0));
    let expected = answer(&report(&sheet), &Reader::METRIC);
    let shown = desk.answer();
    assert_eq!(shown.time, expected.time);
    assert_eq!(shown.amps, expected.hot_amps);
    // Nothing watches the heat: the first finding says so.
    let first = desk.part("Warnings and notes").items().remove(0);
    assert!(first.contains("temperature"), "{first}");
    desk.assert_quiet();
}

#[test]
fn a_changed_rpm_moves_the_answer_at_once_and_it_stays_in_sight() {
    let desk = Desk::open(Screen::Phone);
    desk.regulate();
    let before = desk.answer();
    let questions = desk.questions();
    questions.fill("Engine speed while charging", "1100");
    let after = desk.answer();
    assert_ne!(before.amps, after.amps);
    assert_ne!(before.time, after.time);

    questions.fill("Temperature limit the regulator holds", "95");
    let strip = desk.region("The answer").unwrap();
    let [_, top, _, height] = strip.rect().unwrap();
    let scrolled = desk.browser.script("return window.scrollY", &[]).unwrap();
    let top = top - scrolled.as_f64().unwrap();
    assert!(top >= -1.0 && top + height < 300.0, "the strip is at {top}");
    desk.browser.shot("job-answer-in-sight").unwrap();
}

#[test]
fn the_day_is_added_up_from_a_list() {
    let desk = Desk::open(Screen::Phone);
    let questions = desk.questions();
    questions.press("Help me add it up");
    let loads = questions.names(Role::Fold).unwrap();
    assert!(loads.len() >= 8, "{loads:?}");
    let before = desk.text(".questions .total");
    questions.opened(&loads[0]).fill("Draw", "90");
    let after = desk.text(".questions .total");
    assert_ne!(before, after);
    desk.browser.shot("job-list-of-loads").unwrap();
    desk.assert_quiet();
}

#[test]
fn the_chart_is_read_off_with_the_keyboard() {
    let desk = Desk::open(Screen::Desk);
    let slider = desk.slider("Time into the run").unwrap();
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
    let questions = desk.questions();
    questions.fill("Capacity", &done);
    let answer = desk.answer();
    for (typed, said) in [
        ("", "Empty: 444 A·h is used"),
        ("abc", "not a number"),
        ("-5", "too little"),
        ("1e99", "too much"),
    ] {
        questions.fill("Capacity", typed);
        let complaint = questions.complaint("Capacity");
        assert!(complaint.contains(said), "{typed:?}: {complaint}");
        assert!(complaint.contains("10 to 5000 A·h"), "{complaint}");
        assert_eq!(desk.answer(), answer, "after {typed:?}");
        assert_eq!(questions.value("Capacity"), typed);
    }
    desk.browser.shot("job-wrong-figure").unwrap();
    questions.fill("Capacity", "444,0");
    assert_eq!(questions.complaint("Capacity"), "");
    assert_eq!(desk.answer(), answer);
    desk.assert_quiet();
}
