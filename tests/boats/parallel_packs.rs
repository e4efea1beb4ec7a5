//! Packs in parallel, each with a management system of its own, with what a marine
//! electrician would say.
//!
//! The sums: three packs whose resistances are 0.9, 1 and 1.1 of the middle share
//! as 1/0.9 : 1 : 1/1.1, that is 36.8, 33.1 and 30.1 %; three times 50 A are then
//! 136 A together, not 150. When the first one is gone the other two take 52 and
//! 48 %, so that they bear 95 A.

use ampwright_core::guidance::commissioning;
use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;
use crate::says::Says;

/// 300 A·h of three packs of 50 A each, a 200 A alternator on two belts.
pub fn three(name: &'static str) -> Boat {
    Boat::new(name)
        .set("bank_capacity_ah", 300.0)
        .set("packs_count", 3.0)
        .set("alt_rated_a", 200.0)
        .set("alt_mass_kg", 9.0)
        .set("eng_displacement_l", 2.5)
        .choose("belt_kind", "ribs8")
}

pub fn has_step(says: &Says, id: &str) -> bool {
    let stages = commissioning(&says.sheet, &says.report);
    let mut steps = stages.iter().flat_map(|stage| &stage.steps);
    steps.any(|step| step.code.name() == id)
}

#[test]
fn three_packs_and_a_cap_for_all_of_them() {
    // 125 A are within the 136 the three bear. One opens by itself: 65 A each for
    // the other two and more for the better of them, and both open.
    three("3 × 100 A·h, 130 A")
        .set("reg_current_cap_a", 130.0)
        .check(|says| {
            says.must_not_find("management_opens");
            says.fix("packs_follow");
            says.finding_says(
                "packs_follow",
                &["3 packs of 100 A·h", "50 A each", "all of them"],
            );
            let packs = says.report.analyses.packs.as_ref();
            let load = packs.and_then(|packs| packs.charging.as_ref());
            says.some_between(
                "A for the second pack",
                load.and_then(|load| load.after_first_a()),
                62.0,
                70.0,
            );
            says.some_between(
                "packs that follow",
                load.map(|load| load.followers() as f64),
                2.0,
                2.0,
            );
            says.some_between(
                "A for all together",
                packs.map(|packs| packs.together_a),
                135.5,
                136.4,
            );
        });
}

#[test]
fn a_cap_that_two_of_them_bear() {
    // 90 A and the house's 5: 85 A into two packs are 45 A at most.
    three("3 × 100 A·h, 90 A")
        .set("reg_current_cap_a", 90.0)
        .check(|says| {
            says.must_not_find("packs_follow");
            says.must_not_find("management_opens");
            says.no_danger();
        });
}

#[test]
fn more_than_three_unequal_packs_bear() {
    // 145 A are less than three times 50, and yet the best pack gets 53 A.
    three("3 × 100 A·h, 150 A")
        .set("reg_current_cap_a", 150.0)
        .check(|says| {
            says.danger("management_opens");
            says.finding_says("management_opens", &["136 A", "do not share alike"]);
        });
}

#[test]
fn a_link_lowers_the_current_when_one_goes() {
    three("3 × 100 A·h, limits sent")
        .choose("reg_link", "limits")
        .choose("reg_link_loss", "stops")
        .check(|says| {
            says.must_not_find("management_opens");
            says.must_not_find("packs_follow");
            says.peak_bank_amps_between(120.0, 136.5);
        });
}

#[test]
fn the_windlass_takes_the_boat_dark() {
    // 180 A of windlass and inverter over two packs of 100 A: 99 A for the better
    // one; when one goes the other gets all 180.
    let two = |name, peak_a: f64| {
        Boat::new(name)
            .set("bank_capacity_ah", 200.0)
            .set("daily_use_ah", 60.0)
            .set("packs_count", 2.0)
            .set("packs_discharge_limit_a", 100.0)
            .set("cable_bus_peak_a", peak_a)
    };
    two("180 A on two packs", 180.0).check(|says| {
        says.fix("packs_follow_in_use");
        says.finding_says("packs_follow_in_use", &["the other one gets 180 A", "dark"]);
        says.must_not_find("pack_over_discharged");
    });
    two("220 A on two packs", 220.0).check(|says| {
        says.fix("pack_over_discharged");
        // 220 × 55 % = 121 A; 100/55 % = 181 A.
        says.finding_says("pack_over_discharged", &["121 A", "181 A"]);
    });
    two("90 A on two packs", 90.0).check(|says| {
        says.must_not_find("packs_follow_in_use");
        says.must_not_find("pack_over_discharged");
    });
}

#[test]
fn four_packs_at_24_v() {
    // 4 × 100 A·h of 24 V; short circuit of each: 26.8 to 27.6 V behind
    // 0.3 Ω·A·h × 2 / 100 A·h = 6 mΩ: 4.5 kA, 4.9 for the one with the least
    // resistance; the other three send three times that into a short at one.
    Boat::new("24 V, 4 × 100 A·h")
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .set("bank_capacity_ah", 400.0)
        .set("packs_count", 4.0)
        .set("alt_rated_a", 80.0)
        .set("eng_displacement_l", 2.5)
        .check(|says| {
            let packs = says.report.analyses.packs.as_ref();
            let kilo = |a: Option<f64>| a.map(|a| a / 1000.0);
            says.some_between("kA of a pack", kilo(packs.map(|p| p.short_a)), 4.5, 5.4);
            says.some_between(
                "kA of the others",
                kilo(packs.map(|p| p.others_short_a)),
                13.0,
                15.5,
            );
            says.setting_says(GroupCode::Management, SettingCode::PackFuse, &["20"]);
            says.must_not_find("packs_follow");
            says.no_danger();
        });
}

#[test]
fn frost_halves_what_the_packs_bear() {
    // At 3 °C a tenth of 100 A·h is 10 A for each pack: 27 A for three.
    three("3 × 100 A·h at 3 °C")
        .set("bank_temperature_c", 3.0)
        .set("reg_current_cap_a", 25.0)
        .check(|says| {
            says.must_not_find("management_opens");
            // 20 A into two packs are 10.5 A: still held.
            says.must_not_find("packs_follow");
        });
    three("3 × 100 A·h at 3 °C, 60 A")
        .set("bank_temperature_c", 3.0)
        .set("reg_current_cap_a", 60.0)
        .check(|says| {
            says.danger("management_opens");
            says.finding_says("management_opens", &["27 A"]);
        });
}

#[test]
fn packs_under_a_built_in_regulator() {
    // 150 A and more into two packs of 50 A: the first one opens, then the other.
    Boat::new("two packs, built-in regulator")
        .choose("reg_kind", "internal")
        .set("bank_capacity_ah", 200.0)
        .set("packs_count", 2.0)
        .set("alt_rated_a", 180.0)
        .check(|says| {
            says.danger("management_opens");
            says.fix("packs_follow");
            says.finding_says("packs_follow", &["the other one gets", "loses its load"]);
        });
}

#[test]
fn packs_that_do_not_add_up() {
    three("3 packs of 200 A·h on 300")
        .set("packs_capacity_ah", 200.0)
        .set("reg_current_cap_a", 90.0)
        .check(|says| {
            says.note("packs_disagree");
            says.finding_says("packs_disagree", &["600 A·h", "300 A·h"]);
        });
}

#[test]
fn lead_has_no_packs_that_open() {
    Boat::new("AGM, 4 in parallel")
        .choose("bank_chemistry", "agm")
        .set("packs_count", 4.0)
        .set("run_from_pct", 60.0)
        .check(|says| {
            says.holds(says.report.analyses.packs.is_none(), || {
                "lead has no management system".into()
            });
            says.must_not_find("packs_follow");
        });
}

#[test]
fn the_season_is_set_for_the_packs_that_are_left() {
    // Four packs of 50 A: 181 A together, as they share unequally; three of them bear
    // 140 A once one has opened, and that is what the sheet says to set.
    Boat::new("four drop-in packs of 50 A")
        .choose("packs_management", "closed")
        .set("packs_count", 4.0)
        .set("packs_charge_limit_a", 50.0)
        .check(|says| {
            let season = SettingCode::To50;
            says.setting_between(GroupCode::ByTemperature, season, 178.0, 184.0);
            says.setting_says(GroupCode::ByTemperature, season, &["to 140 A in all"]);
        });
    Boat::new("one pack").check(|says| {
        let season = SettingCode::To50;
        says.setting_says(
            GroupCode::ByTemperature,
            season,
            &["the setting for the season"],
        );
    });
}
