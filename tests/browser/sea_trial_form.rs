//! The sea trial aboard: a reading at a time, on a phone, with one hand.

use crate::desk::{Desk, OPENED};
use crate::page::Part;
use ampwright_tests::driver::{Scope, Screen};
use serde_json::json;

const LANDSCAPE: Screen = Screen::Touch {
    width: 800,
    height: 360,
};

/// Holds the clock on the wall so many minutes after an hour of some day: a busy
/// machine takes its own time.
fn hold_clock(desk: &Desk, minutes: f64) {
    let hold = "const at = 1.8e12 + arguments[0] * 60000; Date.now = () => at;";
    desk.browser.script(hold, &[json!(minutes)]).unwrap();
}

/// Types and adds a reading with its minute.
pub fn add(trial: &Part, minute: &str, amps: &str, case: &str) {
    trial.fill("Amps…", amps);
    trial.fill("Case…", case);
    trial.fill("Minute…", minute);
    trial.press("Add reading");
    trial.wait_text(&format!("minute {minute}"));
}

/// How many dots or crosses are drawn.
fn drawn(desk: &Desk, class: &str) -> u64 {
    let count = format!(
        "return [...document.querySelectorAll('#trial-chart path.{class}')]
            .reduce((sum, path) => sum + (path.getAttribute('d').match(/M/g) ?? []).length, 0)"
    );
    desk.browser.script(&count, &[]).unwrap().as_u64().unwrap()
}

/// Waits until something of the trial is said.
pub fn wait(desk: &Desk, css: &str, text: &str) {
    desk.browser.wait_text(css, text).unwrap();
}

#[test]
fn the_first_figure_stamps_a_reading() {
    let desk = Desk::open(Screen::Phone);
    let trial = desk.part("Sea trial");
    // Without a clock the minute is asked for.
    trial.fill("Amps…", "80");
    trial.press("Add reading");
    wait(&desk, "#trial-complaint", "press “Engine started”");
    trial.fill("Amps…", "");
    hold_clock(&desk, 0.0);
    trial.press("Engine started");
    hold_clock(&desk, 12.3);
    trial.fill("Amps…", "80");
    trial.wait_value("Minute…", "12.3");
    hold_clock(&desk, 14.3);
    trial.fill("Case…", "95");
    assert_eq!(trial.value("Minute…"), "12.3", "read when it was begun");
    trial.press("Add reading");
    trial.wait_text("minute 12.3");
    trial.wait_text("80 A, case 95 °C");
    assert_eq!(trial.value("Amps…"), "");
    assert_eq!(trial.value("Minute…"), "");
    wait(&desk, "#trial-clock", "Engine on for 14:18");
    // It can be set right.
    trial.press("Correct minute 12.3");
    trial.wait_value("Amps…", "80");
    trial.fill("Minute…", "11");
    trial.press("Save the correction");
    trial.wait_text("minute 11");
    desk.assert_quiet();
}

#[test]
fn targets_are_of_a_thumbs_size_and_keys_are_numbers() {
    for screen in [Screen::Phone, LANDSCAPE] {
        let desk = Desk::open(screen);
        let trial = desk.part("Sea trial");
        for name in ["Amps…", "Case…", "Volts…", "Air…", "Engine rpm…", "Minute…"] {
            let field = trial.field(name).unwrap();
            let [.., height] = field.rect().unwrap();
            assert!(height >= 44.0, "{name}: {height}");
            let keys = field.attribute("inputmode").unwrap().unwrap();
            assert!(["decimal", "numeric"].contains(&keys.as_str()), "{keys}");
        }
        hold_clock(&desk, 0.0);
        trial.press("Engine started");
        trial.fill("Amps…", "80");
        trial.fill("Case…", "98");
        trial.press("Add reading");
        trial.wait_text("case 98 °C");
        for name in [
            "Add reading",
            "Stop the clock",
            "Correct minute 0",
            "Delete minute 0",
        ] {
            let [_, _, width, height] = trial.button(name).unwrap().rect().unwrap();
            assert!(
                width >= 44.0 && height >= 44.0,
                "{name}: {width} x {height}"
            );
        }
        let fits = "return document.documentElement.scrollWidth <= innerWidth";
        desk.browser.wait_script(fits).unwrap();
        let name = match screen {
            Screen::Phone => "trial-form",
            _ => "trial-form-landscape",
        };
        trial.button("Add reading").unwrap().into_sight().unwrap();
        desk.browser.shot(name).unwrap();
        desk.assert_quiet();
    }
}

#[test]
fn a_draft_survives_a_reload_with_its_clock() {
    let desk = Desk::open(Screen::Phone);
    let trial = desk.part("Sea trial");
    trial.press("Engine started");
    trial.fill("Amps…", "80");
    trial.fill("Case…", "41");
    trial.press("Add reading");
    trial.wait_text("case 41 °C");
    trial.fill("Amps…", "79");
    trial.fill("Case…", "4");
    let minute = trial.value("Minute…");
    assert_ne!(minute, "");
    // At once, while the finger is still on the keys.
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(OPENED).unwrap();
    let trial = desk.part("Sea trial");
    trial.wait_value("Amps…", "79");
    assert_eq!(trial.value("Case…"), "4");
    assert_eq!(trial.value("Minute…"), minute);
    trial.wait_text("case 41 °C");
    wait(&desk, "#trial-clock", "Engine on for");
    trial.fill("Case…", "48");
    trial.press("Add reading");
    trial.wait_text("79 A, case 48 °C");
    // Another boat has none of it, and this one has it again.
    desk.shelf().press("New boat");
    let without = "return document.querySelectorAll('#trial-readings li').length === 0";
    desk.browser.wait_script(without).unwrap();
    assert_eq!(desk.text("#trial-clock"), "");
    desk.assert_quiet();
}

#[test]
fn readings_land_on_what_was_drawn_beforehand() {
    let desk = Desk::open(Screen::Phone);
    let trial = desk.part("Sea trial");
    let lines = "return [...document.querySelectorAll('#trial-chart path.line')]
        .every((line) => line.getAttribute('d').length > 100)";
    desk.browser.wait_script(lines).unwrap();
    assert_eq!(
        (drawn(&desk, "dots"), drawn(&desk, "typed")),
        (2, 0),
        "the legends' own"
    );
    trial.fill("Minute…", "5");
    trial.fill("Amps…", "78");
    trial.fill("Case…", "58");
    let typed = "return (document.querySelectorAll('#trial-chart path.typed')[1]
        .getAttribute('d').match(/M/g) ?? []).length === 1";
    desk.browser.wait_script(typed).unwrap();
    trial.press("Add reading");
    trial.wait_text("case 58 °C");
    assert_eq!((drawn(&desk, "dots"), drawn(&desk, "typed")), (4, 0));
    wait(&desk, "#trial-against", "calculated for this minute");
    desk.assert_quiet();
}

#[test]
fn an_example_never_takes_the_place_of_readings_unasked() {
    let desk = Desk::open(Screen::Phone);
    let trial = desk.part("Sea trial");
    add(&trial, "3", "80", "44");
    trial.press("Fill in an example log");
    wait(&desk, "#trial-question", "takes the place of the reading");
    trial.press("Keep mine");
    trial.wait_text("80 A, case 44 °C");
    assert!(
        !trial
            .has(ampwright_tests::driver::Role::Button, "Replace them")
            .unwrap()
    );
    trial.press("Fill in an example log");
    trial.press("Replace them");
    trial.wait_text("minute 45");
    trial.wait_text("nobody has taken them");
    desk.push("Undo");
    trial.wait_text("80 A, case 44 °C");
    assert!(!trial.text().contains("minute 45"));
    // Deleting can be taken back too, also after a reload.
    trial.press("Delete minute 3");
    let without = "return document.querySelectorAll('#trial-readings li').length === 0";
    desk.browser.wait_script(without).unwrap();
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(OPENED).unwrap();
    let trial = desk.part("Sea trial");
    desk.push("Undo");
    trial.wait_text("80 A, case 44 °C");
    desk.assert_quiet();
}

#[test]
fn the_screen_is_kept_awake_while_the_clock_runs() {
    let desk = Desk::open(Screen::Phone);
    let watch = "window.awake = [];
        const wakeLock = { request: async (kind) => { awake.push(kind);
            return { release: async () => { awake.push('released') } } } };
        Object.defineProperty(navigator, 'wakeLock', { value: wakeLock });";
    desk.browser.script(watch, &[]).unwrap();
    let trial = desk.part("Sea trial");
    trial.press("Engine started");
    desk.browser
        .wait_script("return awake.join() === 'screen'")
        .unwrap();
    trial.press("Stop the clock");
    desk.browser
        .wait_script("return awake.join() === 'screen,released'")
        .unwrap();
    trial.press("Let the clock go on");
    desk.browser
        .wait_script("return awake.join() === 'screen,released,screen'")
        .unwrap();
    desk.assert_quiet();
}
