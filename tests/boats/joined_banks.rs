//! A relay or a splitter between the alternator and the house bank, as what the
//! boat is to be. Both are made for two banks of lead.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

/// A split-charge relay of a 12 V system opens at about 12.8 V, and a lithium
/// bank rests at 13.2 to 13.4 V (common practice, no source): it never opens.
#[test]
fn a_relay_never_parts_lithium_from_the_start_battery() {
    Boat::new("lithium behind a relay")
        .choose("way_joined", "relay")
        .check(|says| {
            says.fix("banks_joined_to_lithium");
            says.finding_says("banks_joined_to_lithium", &["12.8 V", "DC-DC charger"]);
            says.no_danger();
        });
}

/// 0.7 to 0.9 V are lost in a diode splitter (common practice, no source), and a
/// built-in regulator that holds 14.2 V before it leaves the bank 13.4 V.
#[test]
fn a_splitter_keeps_the_volts_from_the_bank() {
    Boat::new("lithium behind a diode splitter, built-in regulator")
        .choose("reg_kind", "internal")
        .choose("way_joined", "splitter")
        .set("alt_rated_a", 60.0)
        .check(|says| {
            says.fix("banks_joined_to_lithium");
            says.finding_says("banks_joined_to_lithium", &["0.8 V", "13.4 V"]);
            // Cold it would reach the target; 10 mV less for each degree (common
            // practice, no source), and it does not.
            says.finding_says("cannot_be_charged", &["90 %", "holds less as it warms"]);
        });
}

/// A relay or a splitter joins banks of one voltage: a 12 V start battery on a 24 V
/// alternator would boil.
#[test]
fn joined_banks_are_of_one_voltage() {
    for joined in ["relay", "splitter"] {
        Boat::new("24 V AGM, joined to its start battery")
            .choose("bank_chemistry", "agm")
            .choose("bank_nominal_v", "24")
            .choose("alt_nominal_v", "24")
            .choose("reg_kind", "internal")
            .choose("way_joined", joined)
            .check(|says| {
                says.setting_between(GroupCode::StartBattery, SettingCode::Most, 28.4, 29.7);
            });
    }
}

/// What the bank gets behind each: less by what it loses.
#[test]
fn each_splitter_costs_its_volts_and_a_relay_none() {
    let held_v = |joined| {
        let boat = Boat::new("built-in").choose("reg_kind", "internal");
        let mut boat = boat.choose("way_joined", joined);
        boat.sheet_mut().inputs.held_v()
    };
    let whole_v = held_v("nothing");
    for (joined, lost_v) in [("relay", 0.0), ("splitter", 0.8), ("low_loss", 0.1)] {
        let lost = whole_v - held_v(joined);
        assert!((lost - lost_v).abs() < 1e-9, "{joined}: {lost} V");
    }
}

/// Lead is what they are made for: nothing is said against a relay there. A
/// voltage measured at the battery has the splitter's loss in it already.
#[test]
fn lead_may_be_joined() {
    Boat::new("lead behind a relay")
        .choose("bank_chemistry", "agm")
        .choose("way_joined", "relay")
        .check(|says| says.must_not_find("banks_joined_to_lithium"));
    let measured = Boat::new("measured").choose("reg_kind", "internal");
    let mut measured = measured
        .set("reg_fixed_v", 13.5)
        .choose("way_joined", "splitter");
    assert_eq!(measured.sheet_mut().inputs.held_v(), 13.5);
}

/// With a second alternator for the start battery, or through a DC-DC charger,
/// nothing joins the banks, whatever was chosen before.
#[test]
fn what_does_not_apply_is_not_found() {
    for (key, option) in [("way_kind", "converter"), ("two_role", "start")] {
        Boat::new("a relay once chosen")
            .choose("way_joined", "relay")
            .choose(key, option)
            .check(|says| says.must_not_find("banks_joined_to_lithium"));
    }
}
