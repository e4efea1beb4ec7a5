//! Lead banks: flooded, AGM, gel.
//!
//! Their appetite falls as they fill: at half charge 0.2 to 0.25 A for each
//! ampere-hour flooded and gel, 0.3 to 0.4 AGM; the last tenth takes hours. Of
//! the ampere-hours put in 85 to 95 % come out (common practice, no source).

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

fn lead(name: &'static str, chemistry: &str, capacity_ah: f64) -> Boat {
    Boat::new(name)
        .choose("bank_chemistry", chemistry)
        .set("bank_capacity_ah", capacity_ah)
}

#[test]
fn flooded_and_a_stock_alternator() {
    // 60 A·h a day from 200 A·h, back to 90 %. The run begins near 62 %; with
    // 76 A·h missing falling to 20, a tail of 2 h and 87 % kept, it lasts
    // ln(76/20) × 2 / 0.87 = 3.1 h; the trade would say three to four.
    lead("200 A·h flooded, 55 A alternator", "flooded", 200.0)
        .choose("reg_kind", "internal")
        .set("alt_rated_a", 55.0)
        .set("alt_mass_kg", 5.0)
        .set("daily_use_ah", 60.0)
        .set("run_from_pct", 60.0)
        .check(|says| {
            says.hours_between(2.5, 5.5);
            // Most engines come like this and live long.
            says.no_danger();
            says.must_not_find("management_opens");
            // 3 kA for each 100 A·h, from memory.
            says.short_circuit_ka_between(4.0, 9.0);
            says.autonomy_between(1.2, 1.4);
        });
}

#[test]
fn agm_with_an_external_regulator() {
    // 90 A·h a day from 300 A·h: from about 62 % back to 90.
    lead("300 A·h AGM, 100 A alternator", "agm", 300.0)
        .set("daily_use_ah", 90.0)
        .check(|says| {
            says.hours_between(1.8, 3.8);
            says.no_danger();
            says.setting_between(GroupCode::Charge, SettingCode::Voltage, 14.2, 14.7);
            says.setting_between(GroupCode::Charge, SettingCode::Float, 13.2, 13.8);
            // The built-in rule of the year keeps it above its window.
            says.year_never_short();
            let below = says.year().months.iter().map(|m| m.days_below).max();
            says.holds(below == Some(0), || {
                format!("below its window on {below:?} days")
            });
        });
}

#[test]
fn gel_in_the_heat_with_a_built_in_regulator() {
    // Gel at 25 °C gets 14.1 to 14.2 V; at 45 °C 4 mV × 6 cells × 20 K = 0.48 V
    // less: 13.7 V. A built-in regulator that holds 14.4 V dries it out.
    lead("gel at 45 °C, built-in regulator at 14.4 V", "gel", 300.0)
        .choose("reg_kind", "internal")
        .set("reg_fixed_v", 14.4)
        .set("bank_temperature_c", 45.0)
        .check(|says| {
            says.fix_or_danger("lead_overvoltage");
        });
}

#[test]
fn gel_in_the_heat_compensated() {
    lead("gel at 45 °C, compensated", "gel", 300.0)
        .set("bank_temperature_c", 45.0)
        .check(|says| {
            says.must_not_find("lead_overvoltage");
            says.setting_between(GroupCode::Charge, SettingCode::Voltage, 14.0, 14.3);
            says.no_danger();
        });
}

#[test]
fn flooded_in_the_heat_with_a_built_in_regulator() {
    // 24 V flooded wants 29.2 V at 25 °C; at 38 °C 4 mV × 12 cells × 13 K = 0.62 V
    // less, 28.6 V: a built-in regulator that holds 28.4 V all but fills it. At 5 °C
    // it wants 30.2 V and is not filled.
    let flooded = |name, bank_c: f64| {
        lead(name, "flooded", 400.0)
            .choose("bank_nominal_v", "24")
            .choose("alt_nominal_v", "24")
            .choose("reg_kind", "internal")
            .set("bank_temperature_c", bank_c)
    };
    let (group, code) = (GroupCode::BuiltIn, SettingCode::Voltage);
    flooded("24 V flooded at 38 °C, built-in regulator", 38.0).check(|says| {
        says.setting_says(group, code, &["charged to 28.58 V at 38 °C"]);
    });
    flooded("24 V flooded at 5 °C, built-in regulator", 5.0).check(|says| {
        says.setting_says(group, code, &["short of the 30.16 V"]);
    });
}

#[test]
fn flooded_in_hard_frost_well_charged() {
    // At 60 % and more the acid freezes below −25 °C; at −15 it is safe
    // (tables of the trade, from memory: half charge about −25, empty −7 to −10 °C).
    lead("flooded at −15 °C, kept above 60 %", "flooded", 400.0)
        .set("bank_temperature_c", -15.0)
        .set("space_outside_c", -15.0)
        .set("bank_window_low_pct", 60.0)
        .set("run_from_pct", 65.0)
        .set("daily_use_ah", 60.0)
        .set("rule_start_pct", 65.0)
        .set("rule_stop_pct", 90.0)
        .check(|says| {
            says.must_not_find("lead_frozen");
            says.must_not_find("lead_overvoltage");
        });
}

#[test]
fn flooded_in_hard_frost_run_down() {
    // At 15 % the acid freezes near −12 °C: at −15 the cases burst.
    lead("flooded at −15 °C, run down to 15 %", "flooded", 400.0)
        .set("bank_temperature_c", -15.0)
        .set("space_outside_c", -15.0)
        .set("bank_window_low_pct", 10.0)
        .set("run_from_pct", 15.0)
        .check(|says| {
            says.must_find_one_of(&["lead_frozen", "lead_may_freeze"]);
        });
}

#[test]
fn boiling() {
    lead("AGM at 55 °C", "agm", 300.0)
        .set("bank_temperature_c", 55.0)
        .check(|says| says.danger("lead_hot"));
}

#[test]
fn hard_draw() {
    // 10 A from 100 A·h: by Peukert's law with 1.2 to 1.25 it gives 84 to 87 %
    // of its 20 h rating. Window 50 to 90 %: 40 A·h × 0.85 = 34, of 240 a day:
    // many runs a day, or a day that goes far below the window.
    lead("10 A day and night from 100 A·h flooded", "flooded", 100.0)
        .set("daily_use_ah", 240.0)
        .check(|says| {
            says.autonomy_between(0.13, 0.15);
            says.must_find_one_of(&["several_runs_a_day", "day_below_window", "day_not_covered"]);
        });
}

#[test]
fn more_than_the_bank_should_take() {
    // 150 A of alternator on a bank whose maker allows 40 A, and nothing caps it.
    lead("AGM that may take 40 A", "agm", 300.0)
        .set("alt_rated_a", 150.0)
        .set("bank_charge_limit_a", 40.0)
        .check(|says| {
            says.fix("lead_over_current");
            says.must_not_find("management_opens");
        });
}

#[test]
fn capped_to_what_the_bank_should_take() {
    lead("AGM that may take 40 A, capped", "agm", 300.0)
        .set("alt_rated_a", 150.0)
        .set("bank_charge_limit_a", 40.0)
        .set("reg_current_cap_a", 40.0)
        .check(|says| {
            says.must_not_find("lead_over_current");
            says.no_danger();
        });
}

#[test]
fn too_many_volts() {
    // 15.4 V is 2.57 V a cell: AGM loses its water for ever.
    lead("AGM charged to 15.4 V", "agm", 300.0)
        .set("bank_charge_v", 15.4)
        .check(|says| says.fix_or_danger("lead_overvoltage"));
}

#[test]
fn the_usual_rule_keeps_lead_in_its_window() {
    // Nothing is said but the chemistry. 11 quiet hours at 5 A are 55 A·h, 14 % of
    // 400: the engine has to be started early enough for the night.
    for chemistry in ["agm", "gel", "flooded"] {
        lead("400 A·h of lead, all else as it comes", chemistry, 400.0).check(|says| {
            let lowest = says.year().months.iter().map(|m| m.lowest_pct);
            let lowest = lowest.fold(100.0, f64::min);
            says.holds(lowest > 49.0, || {
                format!("{chemistry} falls to {lowest:.0} % by the usual rule")
            });
        });
    }
}

#[test]
fn too_few_volts() {
    // 13.8 V never fills a flooded bank in good time: clearly longer than at 14.6.
    let at = |volts: f64| {
        lead("flooded charged to few volts", "flooded", 400.0).set("bank_charge_v", volts)
    };
    let full = at(14.6).answers().report.analyses.day.engine_hours;
    at(13.8).check(|says| {
        let hours = says.report.analyses.day.engine_hours;
        let longer = hours.is_none_or(|hours| full.is_some_and(|full| hours > 1.2 * full));
        says.holds(longer, || {
            format!("{hours:?} h at 13.8 V, {full:?} h at 14.6")
        });
        says.must_not_find("lead_overvoltage");
    });
}

#[test]
fn equalising_is_for_flooded_cells() {
    lead("flooded", "flooded", 400.0).check(|says| {
        // 2.55 to 2.7 V a cell, common practice.
        says.setting_between(GroupCode::Charge, SettingCode::Equalising, 15.0, 16.2);
    });
    lead("gel", "gel", 400.0).check(|says| {
        let line = says.setting(GroupCode::Charge, SettingCode::Equalising);
        says.holds(line.is_none_or(|line| line.number().is_none()), || {
            format!("gel is to be equalised: {line:?}")
        });
    });
}
