//! Limits of a regulator as they are set in practice.

use ampwright_core::boat::{Leg, LegRow, Purpose};
use ampwright_core::guidance::settings::{GroupCode, SettingCode};
use ampwright_core::simulation::Limit;

use crate::boat::Boat;

#[test]
fn a_field_capped_for_a_weak_belt() {
    // Some 85 to 93 A cold at charging speed; with 60 % of the field 51 to 56 A.
    Boat::new("field capped at 60 %")
        .set("reg_field_cap_pct", 60.0)
        .check(|says| {
            says.peak_bank_amps_between(43.0, 52.0);
            says.dump_amps_between(48.0, 57.0);
            says.limited_by(&["temperature", "field_cap"]);
            says.setting_says(GroupCode::Regulator, SettingCode::FieldCap, &["60 %"]);
            says.no_danger();
        });
}

#[test]
fn a_field_cap_that_keeps_it_cool() {
    // 40 % of 85 to 93 A are 34 to 37 A cold; a rotor 80 to 100 K warmer has 30 to
    // 40 % more resistance and takes a tenth to a fifth off that, 27 to 33 A, less
    // than it holds hot (40 to 60): nothing folds back. 120 A·h / those: 3.6 to
    // 4.4 h, a little less for the cold beginning.
    Boat::new("field capped at 40 %")
        .set("reg_field_cap_pct", 40.0)
        .check(|says| {
            says.limited_by(&["field_cap"]);
            says.hours_between(3.4, 4.4);
            says.survives();
        });
}

#[test]
fn a_built_in_regulator_has_no_field_cap() {
    Boat::new("built-in regulator, field cap entered")
        .choose("reg_kind", "internal")
        .set("reg_field_cap_pct", 60.0)
        .check(|says| {
            says.dump_amps_between(80.0, 95.0);
        });
}

#[test]
fn four_fifths_of_what_it_holds_hot() {
    // It holds 45 to 60 A hot: 36 to 48 A from the first minute, and with a third
    // less heat nothing folds back. 120 A·h at 31 to 43 A into the bank: 2.5 to 3.9 h.
    let open = Boat::new("no cap").answers();
    let hot_a = open.report.analyses.output.hot_a;
    Boat::new("capped at 80 % of the hot output")
        .set("reg_hot_cap_pct", 80.0)
        .check(|says| {
            let output = &says.report.analyses.output;
            says.between("A of those uncapped", output.hot_a / hot_a, 0.77, 0.81);
            says.limited_by(&["current_cap"]);
            says.hours_between(2.4, 3.6);
            says.survives();
            says.setting_between(
                GroupCode::Regulator,
                SettingCode::CurrentCap,
                0.75 * hot_a,
                0.81 * hot_a,
            );
            says.setting_says(GroupCode::Regulator, SettingCode::CurrentCap, &["80 %"]);
        });
    // The lower of two caps counts, and a tenth above the hot output binds only
    // while all is cold.
    Boat::new("30 A and 80 % of the hot output")
        .set("reg_hot_cap_pct", 80.0)
        .set("reg_current_cap_a", 30.0)
        .check(|says| says.peak_bank_amps_between(24.0, 25.5));
    Boat::new("capped at 115 % of the hot output")
        .set("reg_hot_cap_pct", 115.0)
        .check(|says| {
            says.hot_share_between(0.0, 70.0);
            let output = &says.report.analyses.output;
            says.between("A of those uncapped", output.hot_a / hot_a, 0.99, 1.01);
            let start_a = says.report.analyses.run.start_a;
            says.between("of the hot output at the start", start_a / hot_a, 1.1, 1.16);
        });
}

#[test]
fn each_of_two_alternators_by_its_own_hot_output() {
    // One regulator, and two of their own: each gives its own four fifths.
    for regulators in ["together", "apart", "linked_share"] {
        let two = |name| {
            Boat::new(name)
                .choose("two_role", "house")
                .choose("two_regulators", regulators)
                .set("alt2_rated_a", 60.0)
                .set("bank_capacity_ah", 800.0)
        };
        let open = two("two alternators").answers();
        two("two alternators at 80 %")
            .set("reg_hot_cap_pct", 80.0)
            .check(|says| {
                let each = says.report.analyses.alternators.iter();
                for (capped, open) in each.zip(&open.report.analyses.alternators) {
                    let part = capped.hot_a / open.hot_a;
                    says.between("of its own hot output", part, 0.76, 0.82);
                }
            });
    }
}

#[test]
fn the_field_held_back_while_manoeuvring() {
    // 30 % of 85 to 93 A for ten minutes, and then all of it: that loses some 9 A·h
    // of 120, a tenth of an hour at 80 A.
    let open = Boat::new("nothing held back").answers();
    let open_h = open.report.analyses.day.engine_hours.expect("hours");
    Boat::new("30 % field for ten minutes")
        .set("reg_manoeuvre_field_pct", 30.0)
        .set("reg_manoeuvre_min", 10.0)
        .check(|says| {
            let run = &says.report.analyses.run;
            says.between("A at the start", run.start_a, 23.0, 28.0);
            let at = |minute: f64| {
                let later = run.series.iter().find(|moment| moment.minute >= minute);
                later.map_or(0.0, |moment| moment.alternator_a)
            };
            says.between("A after nine minutes", at(9.0), 22.0, 28.0);
            says.between("A after eleven", at(11.0), 75.0, 90.0);
            let hours = says.report.analyses.day.engine_hours.unwrap_or(0.0);
            says.between("h longer", hours - open_h, 0.05, 0.2);
            says.between(
                "of the hot output",
                says.report.analyses.output.hot_a / open.report.analyses.output.hot_a,
                0.999,
                1.001,
            );
            says.setting_says(
                GroupCode::Regulator,
                SettingCode::Manoeuvring,
                &["30 %", "10 min", "propeller"],
            );
        });
    Boat::new("built-in regulator, manoeuvring entered")
        .choose("reg_kind", "internal")
        .set("reg_manoeuvre_field_pct", 30.0)
        .set("reg_manoeuvre_min", 10.0)
        .check(|says| says.limited_by(&["alternator_output", "charge_voltage"]));
}

#[test]
fn a_leg_to_manoeuvre() {
    // Half field by a switch at the helm: half of some 90 A, and none of it at
    // nought; the leg after it is charged with all.
    let leg = |purpose, minutes| Leg {
        name: String::new(),
        row: LegRow {
            rpm: 1500.0,
            minutes: Some(minutes),
            purpose,
            ..LegRow::default()
        },
    };
    for (field_pct, low_a, high_a) in [(50.0, 40.0, 47.0), (0.0, 0.0, 0.0)] {
        let mut boat = Boat::new("out of the berth").set("reg_manoeuvre_field_pct", field_pct);
        boat.sheet_mut().legs = vec![leg(Purpose::Manoeuvring, 15.0), leg(Purpose::Anyway, 30.0)];
        boat.check(|says| {
            let day = says.report.analyses.legs.as_ref().expect("legs");
            says.between("A held back", day.legs[0].start_a, low_a, high_a);
            let limit = day.legs[0].limit;
            says.holds(limit == Limit::Manoeuvring, || format!("{limit:?}"));
            says.between("A on passage", day.legs[1].start_a, 75.0, 93.0);
            says.between("h motoring", day.motoring_h, 0.749, 0.751);
        });
    }
}
