//! The sea trial's form for winding and rotor by their resistance.
//!
//! Copper by IEC 60034-1: resistances are to each other as temperatures plus 235 K. A
//! winding of 50 mΩ at 20 °C that has 69.62 mΩ is at 255 × 69.62 / 50 − 235 = 120 °C;
//! a field of 3 Ω at 20 °C that takes 3.2 A at 12.6 V is at 100 °C.

use crate::desk::Desk;
use crate::sea_trial_form::{add, wait};
use ampwright_core::boat::Key;
use ampwright_core::schema::{Confidence, Value};
use ampwright_tests::driver::Screen;

const FOLD: &str = "Winding and rotor by resistance";

#[test]
fn the_winding_goes_into_the_reading() {
    let desk = Desk::open(Screen::Phone);
    let trial = desk.part("Sea trial");
    let form = trial.opened(FOLD);
    form.fill("Temperature of all parts…", "20");
    form.fill("Winding, cold…", "50");
    form.fill("After stopping…", "twenty");
    form.wait_text("“twenty” is not seconds after stopping");
    form.fill("After stopping…", "20 69,62");
    form.wait_text("The winding was at 120 °C when the engine stopped.");
    form.press("Put the winding into the reading");
    let winding = desk.browser.wait_for("#trial-winding").unwrap();
    winding.wait_value("120").unwrap();
    desk.assert_quiet();
}

/// Later readings are led back along the curve by which it cools to the air: from
/// 120 °C at the moment of stopping to half as far above 40 °C after four minutes.
#[test]
fn later_readings_are_led_back_to_the_moment_of_stopping() {
    let desk = Desk::open(Screen::Phone);
    let form = desk.part("Sea trial").opened(FOLD);
    form.fill("Temperature of all parts…", "20");
    form.fill("Winding, cold…", "50");
    form.fill("Air when stopped…", "40");
    form.fill("After stopping…", "60 67.12\n120 65.01\n240 61.76");
    form.wait_text("The winding was at 120 °C when the engine stopped.");
    desk.browser.shot("trial-by-resistance").unwrap();
    desk.assert_quiet();
}

#[test]
fn the_rise_of_the_rotor_goes_into_the_boat() {
    let desk = Desk::open(Screen::Desk);
    let trial = desk.part("Sea trial");
    add(&trial, "30", "47", "85");
    let form = trial.opened(FOLD);
    form.fill("Temperature of all parts…", "20");
    form.fill("Field, cold…", "3");
    form.fill("Field, hot, V…", "12.6");
    form.fill("Field, hot, A…", "3.2");
    wait(
        &desk,
        "#trial-stopped",
        "15 K above the last reading of the case",
    );
    form.press("Take this rise of the rotor over the case");
    let rise = Key::named("alt_rotor_rise_k").unwrap();
    desk.wait_kept("rotor_rise");
    let sheet = desk.linked();
    assert_eq!(sheet.inputs.get(rise), Value::Number(15.0));
    assert_eq!(sheet.knowledge(rise), Confidence::Measured);
    desk.assert_quiet();
}
