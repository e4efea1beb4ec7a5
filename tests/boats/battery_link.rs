//! How the battery talks to the regulator, each boat with what a marine
//! electrician would say.
//!
//! The sum behind most bands: the ordinary 100 A alternator gives some 80 to 90 A
//! cold into a low bank. A bank that may take 50 A is opened by that within seconds
//! unless something holds the current; 120 A·h a day at 50 A and the house load on
//! top are 2.1 h at least.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};
use ampwright_core::guidance::{MakerQuestion, commissioning, maker_questions};

use crate::boat::Boat;
use crate::says::Says;

/// A bank that may take 50 A, an alternator that gives 90.
fn small_limit(name: &'static str) -> Boat {
    Boat::new(name).set("bank_charge_limit_a", 50.0)
}

/// Whether the commissioning list has a step.
fn has_step(says: &Says, id: &str) -> bool {
    let stages = commissioning(&says.sheet, &says.report);
    let mut steps = stages.iter().flat_map(|stage| &stage.steps);
    steps.any(|step| step.code.name() == id)
}

fn asks(says: &Says, question: MakerQuestion) -> bool {
    maker_questions(&says.sheet.inputs).contains(&question)
}

#[test]
fn nothing_tells_the_regulator() {
    // 90 A into 50: the contactor opens within ten seconds, under load.
    small_limit("no link").check(|says| {
        says.danger("management_opens");
        says.finding_says("management_opens", &["loses its load", "50 A"]);
        says.verdict_contains(&["under load"]);
        says.holds(asks(says, MakerQuestion::SameLanguage), || {
            "the makers are not asked whether both speak the same language".into()
        });
    });
}

#[test]
fn a_signal_saves_the_alternator_and_not_the_charge() {
    // The field goes off first, nothing jumps; but it is on and off all day.
    small_limit("a charge-disable signal only")
        .choose("reg_link", "signal")
        .check(|says| {
            says.fix("management_opens");
            says.no_danger();
            says.finding_says("management_opens", &["field is off first", "50 A"]);
            says.verdict_lacks("under load");
            says.must_not_find("disconnect_unguarded");
            says.cannot_charge();
            says.holds(has_step(says, "cut_gentle"), || {
                "nobody tries whether the field goes off".into()
            });
            says.holds(!asks(says, MakerQuestion::SameLanguage), || {
                "a wire has no language".into()
            });
            says.holds(asks(says, MakerQuestion::EarlyOrTogether), || {
                "early or together is not asked".into()
            });
        });
}

#[test]
fn a_signal_and_a_cap_are_enough() {
    // 45 A at most, of which the house takes 5: 120/45 = 2.7 h.
    small_limit("a signal and a cap of 45 A")
        .choose("reg_link", "signal")
        .set("reg_current_cap_a", 45.0)
        .check(|says| {
            says.must_not_find("management_opens");
            says.hours_between(2.6, 3.2);
            says.no_danger();
            says.survives();
        });
}

#[test]
fn limits_are_followed_until_it_is_full() {
    // 50 A into the bank; from 95 % on the battery asks for less, down to a
    // twentieth of its capacity, so the last tenth takes longer than at 50 A:
    // 40 A·h/50 A = 48 min.
    small_limit("current and voltage limits, to 100 %")
        .choose("reg_link", "limits_and_volts")
        .choose("reg_link_loss", "stops")
        .set("run_from_pct", 90.0)
        .set("run_to_pct", 100.0)
        .check(|says| {
            says.must_not_find("management_opens");
            says.must_not_find("link_loss_not_said");
            says.peak_bank_amps_between(40.0, 50.5);
            says.minutes_between(50.0, 90.0);
            says.setting_says(
                GroupCode::Regulator,
                SettingCode::LinkLoss,
                &["stop charging"],
            );
            says.setting_says(
                GroupCode::Regulator,
                SettingCode::LinkLimits,
                &["voltage limit"],
            );
            says.holds(has_step(says, "link_pulled"), || {
                "nobody pulls the plug".into()
            });
        });
}

#[test]
fn a_voltage_limit_overrules_a_wrong_setting() {
    // 15.0 V set is 3.75 V a cell: the battery says 14.2 and gets 14.2.
    let wrong = || {
        Boat::new("15.0 V set")
            .set("bank_charge_v", 15.0)
            .set("run_to_pct", 100.0)
    };
    wrong()
        .called("15.0 V set, current limit only")
        .choose("reg_link", "limits")
        .check(|says| {
            says.must_find_one_of(&["management_opens", "lithium_overvoltage"]);
        });
    wrong()
        .called("15.0 V set, voltage limit sent")
        .choose("reg_link", "limits_and_volts")
        .choose("reg_link_loss", "stops")
        .check(|says| {
            says.must_not_find("management_opens");
            let most = says.report.analyses.run.series.iter();
            let most_v = most.map(|moment| moment.bank_v).fold(0.0, f64::max);
            says.between("most volts at the bank", most_v, 13.4, 14.21);
        });
}

#[test]
fn frost_with_limits_sent() {
    // At 3 °C a tenth of the capacity: 40 A, and the regulator knows it.
    Boat::new("3 °C, limits sent")
        .set("bank_temperature_c", 3.0)
        .choose("reg_link", "limits")
        .choose("reg_link_loss", "stops")
        .check(|says| {
            says.must_not_find("management_opens");
            says.peak_bank_amps_between(35.0, 40.5);
            says.note("lithium_cold");
        });
}

#[test]
fn frost_with_a_signal() {
    // At −5 °C nothing may flow: the battery keeps the field off, and that is all
    // that happens; without it current goes into frozen cells until it opens.
    let frost = |name| Boat::new(name).set("bank_temperature_c", -5.0);
    frost("−5 °C, signal")
        .choose("reg_link", "signal")
        .check(|says| {
            says.fix("management_opens");
            says.finding_says("management_opens", &["stops the alternator", "Warm"]);
            says.cannot_charge();
        });
    frost("−5 °C, no link").check(|says| says.danger("management_opens"));
}

#[test]
fn a_lost_link_that_goes_on() {
    small_limit("link lost, goes on with its own volts")
        .choose("reg_link", "limits")
        .choose("reg_link_loss", "own")
        .check(|says| {
            says.fix("link_loss_opens");
            // 95 % of 50 A is the cap that would hold without it.
            says.finding_says("link_loss_opens", &["50 A", "47 A", "goes on"]);
            says.setting_says(
                GroupCode::Regulator,
                SettingCode::LinkLoss,
                &["14.2 V", "47 A"],
            );
        });
    small_limit("link lost, a cap holds")
        .choose("reg_link", "limits")
        .choose("reg_link_loss", "own")
        .set("reg_current_cap_a", 45.0)
        .check(|says| {
            says.must_not_find("link_loss_opens");
            says.must_not_find("link_loss_not_said");
        });
    small_limit("link lost, not known what happens")
        .choose("reg_link", "limits")
        .check(|says| says.note("link_loss_not_said"));
}

#[test]
fn a_lost_link_in_the_frost_at_24_v() {
    // 200 A·h at 24 V and −3 °C: with the link nothing flows, without it the cold
    // cells are charged and the contactor opens.
    Boat::new("24 V, −3 °C, link lost")
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .set("bank_capacity_ah", 200.0)
        .set("alt_rated_a", 80.0)
        .set("bank_temperature_c", -3.0)
        .choose("reg_link", "limits_and_volts")
        .choose("reg_link_loss", "own")
        .check(|says| {
            says.must_not_find("management_opens");
            says.fix("link_loss_opens");
            says.finding_says("link_loss_opens", &["too cold"]);
            says.cannot_charge();
        });
}

#[test]
fn a_built_in_regulator_hears_nothing() {
    Boat::new("built-in regulator with a link")
        .choose("reg_kind", "internal")
        .choose("reg_link", "limits")
        .set("bank_charge_limit_a", 50.0)
        .check(|says| {
            says.fix("link_has_no_effect");
            says.finding_says(
                "link_has_no_effect",
                &["built-in regulator has no data link"],
            );
            says.danger("management_opens");
            says.holds(!has_step(says, "link_pulled"), || {
                "a plug is to be pulled that is not there".into()
            });
        });
}

#[test]
fn through_a_charger_the_signal_belongs_to_the_charger() {
    Boat::new("DC-DC charger and a link to the regulator")
        .choose("way_kind", "converter")
        .set("way_converter_a", 30.0)
        .choose("reg_link", "limits")
        .check(|says| {
            says.note("link_has_no_effect");
            says.finding_says("link_has_no_effect", &["DC-DC charger"]);
            says.holds(asks(says, MakerQuestion::ChargerStops), || {
                "whether the charger can be stopped is not asked".into()
            });
        });
}

#[test]
fn at_48_v_over_a_link() {
    // 100 A·h at 48 V may take 50 A; a 48 V alternator of 100 A is told so.
    Boat::new("48 V, 100 A·h, limits sent")
        .choose("bank_nominal_v", "48")
        .choose("alt_nominal_v", "48")
        .set("bank_capacity_ah", 100.0)
        .set("daily_use_ah", 30.0)
        .set("eng_displacement_l", 3.0)
        .choose("reg_link", "limits_and_volts")
        .choose("reg_link_loss", "stops")
        .check(|says| {
            says.must_not_find("management_opens");
            says.peak_bank_amps_between(40.0, 50.5);
            says.note("warning_alone");
            says.finding_says("warning_alone", &["data link"]);
        });
}

#[test]
fn two_alternators_on_one_link() {
    // Two of 100 A on a bank that may take 100: without the link some 160 flow.
    let two = |name| {
        Boat::new(name)
            .choose("two_role", "house")
            .set("bank_charge_limit_a", 100.0)
            .set("eng_displacement_l", 2.5)
    };
    two("two alternators, no link").check(|says| says.danger("management_opens"));
    two("two alternators, limits sent")
        .choose("reg_link", "limits")
        .choose("reg_link_loss", "stops")
        .check(|says| {
            says.must_not_find("management_opens");
            says.peak_bank_amps_between(80.0, 100.5);
        });
}
