//! The sea trial: a log is pasted, the model fitted, and the boat has it.

use crate::desk::Desk;
use ampwright_core::boat::Key;
use ampwright_core::decision::calibration;
use ampwright_core::decision::calibration::{SAMPLE, apply};
use ampwright_core::report;
use ampwright_core::text::answer;
use ampwright_core::units::Reader;
use ampwright_tests::driver::Screen;

#[test]
fn readings_correct_the_worksheet() {
    let desk = Desk::open(Screen::Phone);
    let mut sheet = desk.regulate();
    let before = desk.answer();
    let trial = desk.part("Sea trial");
    trial.press("Fill in an example log");
    trial.press("Fit the model");
    let table = desk.text("#trial-figures");
    assert!(table.contains("Case at a known current"), "{table}");
    assert!(table.contains("Amps held hot"), "{table}");
    assert_eq!(desk.answer(), before, "nothing is taken over unasked");
    desk.browser.shot("trial-fitted").unwrap();
    desk.press("#trial-use");

    let fit = calibration::fit(&sheet, &calibration::read(SAMPLE)).expect("the sample fits");
    apply(&mut sheet, &fit);
    let expected = answer(&report(&sheet), &Reader::METRIC);
    let after = desk.answer();
    assert_ne!(after.amps, before.amps);
    assert_eq!(after.amps, expected.hot_amps);
    assert_eq!(after.time, expected.time);
    trial.wait_text("marked as measured");
    let linked = desk.linked();
    for name in ["alt_anchor_case_c", "space_hot_c"] {
        let key = Key::named(name).expect("an input");
        assert_eq!(linked.inputs.get(key), sheet.inputs.get(key), "{name}");
    }
    desk.assert_quiet();
}

#[test]
fn readings_that_say_nothing_are_answered_in_a_sentence() {
    let desk = Desk::open(Screen::Phone);
    let trial = desk.part("Sea trial");
    let log = trial.opened("Paste a log instead");
    log.fill("Your readings…", "Zeit; Strom; Temp\nhello\n3; 81; 44\n");
    log.wait_text("Line 2 was left out");
    log.press("Take these readings");
    trial.wait_text("81 A, case 44 °C");
    trial.press("Fit the model");
    let said = desk.text("#trial-outcome");
    assert!(said.contains("at least 6 are needed"), "{said}");
    assert!(desk.browser.find("#trial-use").is_err());
    // Readings belong to the boat they were taken on.
    trial.press("Fill in an example log");
    trial.press("Replace them");
    trial.press("Fit the model");
    desk.browser.wait_for("#trial-use").unwrap();
    desk.shelf().press("New boat");
    assert!(desk.browser.find("#trial-use").is_err());
    desk.browser.shot("trial-refused").unwrap();
    desk.assert_quiet();
}

/// A fit rests on the boat it was made with.
#[test]
fn a_fit_of_earlier_figures_says_so_and_is_not_used() {
    let desk = Desk::open(Screen::Phone);
    desk.regulate();
    let trial = desk.part("Sea trial");
    trial.press("Fill in an example log");
    trial.press("Fit the model");
    desk.browser.wait_for("#trial-use").unwrap();
    assert_eq!(desk.text("#trial-of-earlier"), "");
    desk.questions().fill("Rated current", "85");
    trial.wait_text("You have changed the boat since this fit");
    let can_use = "return !document.querySelector('#trial-use').disabled";
    assert_eq!(desk.browser.script(can_use, &[]).unwrap(), false);
    // With the figures of the fit it is of this boat again.
    desk.questions().fill("Rated current", "100");
    desk.browser.wait_script(can_use).unwrap();
    trial.press("Use these values");
    trial.wait_text("marked as measured");
    assert_eq!(desk.text("#trial-of-earlier"), "");
    // Another boat has none.
    desk.shelf().press("New boat");
    assert_eq!(desk.text("#trial-outcome"), "");
    desk.assert_quiet();
}
