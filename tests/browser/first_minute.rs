//! The first minute: from an example that says so to an answer of one's own.

use ampwright_tests::driver::{Scope, Screen, keys};

use crate::desk::{Desk, SCREENS};
use crate::page::label;

/// Before anything is entered the answer is of an example, in the words and in
/// the strip; with the first answer it is of one's own boat.
#[test]
fn an_example_until_something_is_entered() {
    for screen in SCREENS {
        let desk = Desk::open(screen);
        let short = desk.part("In short");
        assert!(
            short.text().starts_with("Example boat: "),
            "{}",
            short.text()
        );
        assert!(desk.text("#answer-verdict").starts_with("Example: "));
        desk.questions().fill(label("bank_capacity_ah"), "2 x 230");
        short.wait_text("Your boat: ");
        short.wait_text("460 A·h of lithium");
        assert!(!desk.text("#answer-verdict").starts_with("Example: "));
        // Forgotten again, it is an example again; taken back, one's own.
        desk.questions()
            .press(&format!("{}: I don't know", label("bank_capacity_ah")));
        short.wait_text("Example boat: ");
        desk.push("Undo");
        short.wait_text("460 A·h of lithium");
        desk.assert_quiet();
    }
}

/// How long, whether it survives, what to do first: in words.
#[test]
fn three_things_in_words() {
    let desk = Desk::open(Screen::Phone);
    let short = desk.part("In short");
    assert!(short.text().contains("The engine must run"));
    assert!(
        short
            .text()
            .contains("The alternator stays within its limits.")
    );
    assert!(short.text().contains("First: "));
    // The usual mistake: a stock alternator direct to lithium.
    desk.choose("#ask-way_kind", "direct");
    short.wait_text("The alternator overheats");
    desk.browser.shot("first-minute-danger").unwrap();
    desk.assert_quiet();
}

/// Every short question answered, counted as somebody does it: a touch for each
/// choice and each figure, the figures themselves typed.
#[test]
fn few_touches_to_a_first_answer() {
    let desk = Desk::open(Screen::Phone);
    let (mut touches, mut keys_pressed) = (0, 0);
    let questions = desk.questions();
    for (key, option) in [("before_battery", "agm"), ("before_connection", "relay")] {
        desk.choose(&format!("#ask-{key}"), option);
        touches += 2;
    }
    for (key, figure) in [
        ("bank_capacity_ah", "300"),
        ("daily_use_ah", "110"),
        ("sun_panel_w", "200"),
        ("alt_rated_a", "90"),
        ("eng_rpm", "1300"),
        ("alt_pulley_ratio", "150/65"),
    ] {
        questions.fill(label(key), figure);
        touches += 1;
        keys_pressed += figure.len();
    }
    println!("a first own answer: {touches} touches, {keys_pressed} keys");
    assert!(touches <= 10, "{touches}");
    desk.part("In short").wait_text("300 A·h of lithium");
    // What joins lead batteries is no way for lithium.
    desk.part("Warnings and notes")
        .wait_text("Take out the relay");
    desk.assert_quiet();
}

/// A figure is typed over: touching it chooses all of it.
#[test]
fn a_touch_chooses_the_figure() {
    let desk = Desk::open(Screen::Phone);
    let touch = |key: &str| {
        let field = desk.questions().field(label(key)).unwrap();
        let to_middle = "arguments[0].scrollIntoView({ block: 'center' })";
        desk.browser.script(to_middle, &[field.as_arg()]).unwrap();
        field.click().unwrap();
    };
    touch("alt_rated_a");
    let chosen = "return document.activeElement.value.slice(
        document.activeElement.selectionStart, document.activeElement.selectionEnd)";
    assert_eq!(desk.browser.script(chosen, &[]).unwrap(), "100");
    desk.browser.press("85").unwrap();
    desk.questions().wait_value(label("alt_rated_a"), "85");
    // What opens for the touch stands beside the entry and moves nothing.
    let top = "return document.querySelector('#ask-eng_rpm').getBoundingClientRect().top + scrollY";
    let before = desk.browser.script(top, &[]).unwrap();
    touch("bank_capacity_ah");
    assert_eq!(desk.browser.script(top, &[]).unwrap(), before);
    desk.browser.press(keys::TAB).unwrap();
}

/// Figures as people write them.
#[test]
fn figures_as_people_write_them() {
    let desk = Desk::open(Screen::Desk);
    let sheet = desk.sheet();
    sheet.open_all();
    desk.questions().fill(label("sun_panel_w"), "2 x 120");
    sheet.choose(label("sun_basis"), "From latitude, month and sky");
    for (key, typed, stands) in [
        ("bank_capacity_ah", "1 200", 1200.0),
        ("bank_capacity_ah", "400 Ah", 400.0),
        ("alt_pulley_ratio", "150/60", 2.5),
        ("eng_rated_kw", "20 hp", 20.0 * 0.745_699_87),
        ("sun_latitude_deg", "18 S", -18.0),
    ] {
        // What may be left empty says in its label what it stands for.
        let entry = match key {
            "eng_rated_kw" => format!("{}…", label(key)),
            _ => label(key).to_string(),
        };
        sheet.fill(&entry, typed);
        let key = ampwright_core::boat::Key::named(key).unwrap();
        let linked = desk.linked().inputs.get(key);
        assert_eq!(
            linked,
            ampwright_core::schema::Value::Number(stands),
            "{typed}"
        );
    }
    desk.browser.press(keys::TAB).unwrap();
    assert_eq!(sheet.value(label("sun_latitude_deg")), "18 S");
    desk.assert_quiet();
}

/// Steps can be taken back, also after a reload.
#[test]
fn steps_are_taken_back_after_a_reload() {
    let desk = Desk::open(Screen::Phone);
    desk.push("Help me add it up");
    let loads = desk.browser.find_all(".questions .load").unwrap().len();
    assert!(loads > 3);
    desk.questions()
        .opened("Anchor light…")
        .press("Delete this load");
    desk.browser
        .wait_text("#undo-place", "Anchor light")
        .unwrap();
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(crate::desk::OPENED).unwrap();
    assert_eq!(
        desk.browser.find_all(".questions .load").unwrap().len(),
        loads - 1
    );
    desk.push("Undo");
    desk.browser
        .wait_script(&format!(
            "return document.querySelectorAll('.questions .load').length === {loads}"
        ))
        .unwrap();
    desk.assert_quiet();
}
