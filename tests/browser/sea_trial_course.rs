//! What the sea trial says while it goes on: where the case is heading, and when to
//! stop.

use crate::desk::Desk;
use crate::sea_trial_form::{add, wait};
use ampwright_core::boat::{RegulatorKind, Worksheet};
use ampwright_core::decision::calibration::stop::StopLimits;
use ampwright_core::report;
use ampwright_core::text::sea_trial::stop_line;
use ampwright_core::units::Reader;
use ampwright_tests::driver::{Scope, Screen};

#[test]
fn words_say_where_the_case_is_heading() {
    let desk = Desk::open(Screen::Phone);
    desk.regulate();
    let trial = desk.part("Sea trial");
    add(&trial, "4", "80", "60");
    wait(&desk, "#trial-outlook", "Two readings of the case");
    add(&trial, "6", "79", "66");
    // 3 K a minute: 39 K on is 13 min, if it goes on like that.
    wait(&desk, "#trial-outlook", "rises by 3.0 K a minute");
    wait(
        &desk,
        "#trial-outlook",
        "reaches 105 °C, where the regulator begins to hold it, in 13 min at the earliest",
    );
    for (minute, case) in [
        ("8", "72"),
        ("10", "78"),
        ("12", "84"),
        ("14", "90"),
        ("16", "96"),
    ] {
        add(&trial, minute, "78", case);
    }
    wait(&desk, "#trial-outlook", "in 3 min");
    add(&trial, "18", "50", "103");
    add(&trial, "21", "50", "103");
    add(&trial, "24", "50", "103");
    add(&trial, "27", "50", "103");
    add(&trial, "30", "50", "103");
    wait(&desk, "#trial-outlook", "The case holds steady at 103 °C.");
    trial
        .by_role(ampwright_tests::driver::Role::Group, "A reading")
        .unwrap();
    desk.browser.shot("trial-outlook").unwrap();
    desk.assert_quiet();
}

#[test]
fn the_stop_line_is_told_before_and_shouted_after() {
    let desk = Desk::open(Screen::Phone);
    let trial = desk.part("Sea trial");
    let limits = |sheet: &Worksheet| StopLimits::of(&sheet.inputs, &report(sheet));
    let mut sheet = desk.regulate();
    let line = stop_line(&limits(&sheet), &Reader::METRIC);
    assert!(desk.text("#trial-stop").contains(&line), "{line}");
    let how = trial.opened("How to stop, and before you start");
    how.wait_text("Never open a battery switch");
    assert_eq!(desk.text("#trial-stop-now"), "");
    // While it is typed, before it is added.
    trial.fill("Minute…", "9");
    trial.fill("Case…", "125");
    wait(&desk, "#trial-stop-now", "STOP: the case is at 125 °C");
    wait(&desk, "#trial-stop-now", "Switch the regulator off now");
    desk.browser
        .find("#trial-stop-now")
        .unwrap()
        .into_sight()
        .unwrap();
    desk.browser.shot("trial-stop").unwrap();
    // Stopped otherwise where the regulator is built in.
    sheet.inputs.reg.kind = RegulatorKind::Internal;
    desk.browser
        .go(&format!(
            "{}#v=2&reg_kind=internal&way_kind=direct&end",
            desk.site.url()
        ))
        .unwrap();
    let line = stop_line(&limits(&sheet), &Reader::METRIC);
    wait(&desk, "#trial-stop", &line);
    let trial = desk.part("Sea trial");
    trial.fill("Minute…", "9");
    trial.fill("Volts…", "16.2");
    wait(&desk, "#trial-stop-now", "16.2 V at the alternator");
    wait(&desk, "#trial-stop-now", "Stop the engine now");
    desk.assert_quiet();
}
