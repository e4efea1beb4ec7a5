//! Shore power, solar, and lists of loads.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

#[test]
fn shore_only() {
    // 10 to 90 % of 400 A·h is 320, of 120 a day: 2.67 days. The charger's 30 A
    // less the house's 5: 320 / 25 = 12.8 h, a little more as it tapers.
    Boat::new("shore power only")
        .choose("shore_rest", "shore")
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            says.autonomy_between(2.62, 2.7);
            says.some_between("h to fill", says.report.analyses.shore.fill_h, 12.7, 16.0);
            says.year_hours_between(0.0, 0.5);
            says.year_never_short();
            says.must_not_find("day_not_covered");
        });
}

#[test]
fn a_shore_charger_below_the_mean_draw() {
    // 4 A against 5: it never fills.
    Boat::new("4 A shore charger")
        .choose("shore_rest", "shore")
        .set("shore_charger_a", 4.0)
        .check(|says| {
            let fill_h = says.report.analyses.shore.fill_h;
            says.holds(fill_h.is_none(), || format!("full after {fill_h:?} h"));
        });
}

#[test]
fn a_shore_charger_beyond_the_banks_limit() {
    Boat::new("100 A shore charger, bank bears 50 A")
        .set("bank_capacity_ah", 100.0)
        .set("bank_charge_limit_a", 50.0)
        .set("daily_use_ah", 40.0)
        .set("reg_current_cap_a", 50.0)
        .set("shore_charger_a", 100.0)
        .check(|says| {
            says.setting_between(GroupCode::ShoreCharger, SettingCode::Current, 45.0, 52.0);
            says.must_not_find("management_opens");
        });
}

#[test]
fn sun_only() {
    // 800 W × 4.5 h × 75 % = 2700 W·h, at 13.2 V 205 A·h: more than the 120 used.
    Boat::new("800 W of panels")
        .set("sun_panel_w", 800.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            says.year_hours_between(0.0, 0.5);
            says.year_never_short();
            says.between(
                "A·h of sun",
                says.report.analyses.energy.sun_ah,
                200.0,
                210.0,
            );
            says.no_danger();
            says.verdict_contains(&["sun", "solar"]);
        });
}

#[test]
fn sun_and_engine() {
    // 300 W × 4.5 h × 75 % = 1013 W·h, 77 A·h of 120: 43 left for the engine,
    // at 35 to 60 A 0.7 to 1.25 h.
    Boat::new("300 W of panels")
        .set("sun_panel_w", 300.0)
        .check(|says| {
            says.hours_between(0.6, 1.3);
            says.between("A·h of sun", says.report.analyses.energy.sun_ah, 75.0, 79.0);
        });
}

#[test]
fn december_and_june_at_52_degrees() {
    // A level surface gets next to nothing at 52° north in December and some ten
    // times as much in June: the engine does nearly all, or nearly none.
    let at = |name, month: &str| {
        Boat::new(name)
            .set("sun_panel_w", 300.0)
            .choose("sun_basis", "place")
            .set("sun_latitude_deg", 52.0)
            .choose("sun_month", month)
    };
    let june = at("June at 52°", "6").answers();
    at("December at 52°", "12").check(|says| {
        says.hours_between(1.6, 3.3);
        let most = june.report.analyses.day.engine_hours;
        says.some_between("engine h/day in June", most, 0.0, 0.9);
        let darkest = says.year().months.iter().max_by(|a, b| {
            let of = |m: &ampwright_core::analysis::year::MonthReport| {
                m.engine_h_week - m.motoring_h_week
            };
            of(a).total_cmp(&of(b))
        });
        let month = darkest.map(|m| m.month);
        says.holds(matches!(month, Some(11 | 12 | 1)), || {
            format!("the year runs its engine most in month {month:?}")
        });
    });
}

#[test]
fn sun_through_a_flooded_bank() {
    // All is used at night: the 1013 W·h, 83 A·h at 12.25 V, go through the bank,
    // of which 87 % come out: 100 − 72 = 28 A·h are left for the engine.
    Boat::new("flooded, sun by day, use by night")
        .choose("bank_chemistry", "flooded")
        .set("sun_panel_w", 300.0)
        .set("daily_use_ah", 100.0)
        .set("daily_night_share_pct", 100.0)
        .check(|says| {
            says.between("A·h left", says.report.analyses.energy.rest_ah, 26.0, 31.0);
        });
}

#[test]
fn sun_by_day_use_by_night_through_a_small_bank() {
    // 400 W × 4.5 h × 75 % = 1350 W·h, 102 A·h; a bank of 100 A·h with 80 in its
    // window holds no more than 80 of them, and bears 50 A of the 88 that flow.
    Boat::new("100 A·h, 400 W, all used at night")
        .set("sun_panel_w", 400.0)
        .set("daily_night_share_pct", 100.0)
        .set("bank_capacity_ah", 100.0)
        .set("daily_use_ah", 100.0)
        .check(|says| {
            says.between("A·h left", says.report.analyses.energy.rest_ah, 19.0, 21.0);
            says.danger("management_opens");
            says.setting_between(GroupCode::Regulator, SettingCode::CurrentCap, 30.0, 50.0);
        });
}

#[test]
fn next_to_nothing() {
    Boat::new("1 A·h a day")
        .set("daily_use_ah", 1.0)
        .check(|says| {
            says.hours_between(0.0, 0.05);
            says.no_danger();
        });
}

#[test]
fn a_list_of_loads() {
    // 45 × 24 = 1080, 20 × 5 = 100, 1000 × 0.5 / 90 % = 556, the inverter's
    // 12 W × 3 h = 36: 1772 W·h; at 13.2 V 134 A·h, at 35 to 60 A 2.2 to 3.9 h.
    Boat::new("refrigerator, lights, kettle")
        .load_w("refrigerator", 45.0, 24.0)
        .load_w("lights", 20.0, 5.0)
        .mains_w("kettle", 1000.0, 0.5)
        .check(|says| {
            says.between(
                "A·h a day",
                says.report.analyses.energy.anchor.use_ah,
                132.0,
                136.5,
            );
            says.hours_between(2.1, 3.9);
            says.must_find("cable_inverter_unsaid");
        });
}

#[test]
fn sun_engine_and_shore_at_24_v() {
    // 600 W × 4.5 × 75 % = 2025 W·h, at 26.4 V 77 A·h of 100: 23 left, through a
    // 20 A DC-DC charger 1.15 h.
    Boat::new("24 V with all there is")
        .choose("bank_nominal_v", "24")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .set("way_converter_a", 20.0)
        .set("bank_capacity_ah", 300.0)
        .set("daily_use_ah", 100.0)
        .set("sun_panel_w", 600.0)
        .set("shore_charger_a", 40.0)
        .check(|says| {
            says.hours_between(0.95, 1.35);
            says.no_danger();
            says.must_not_find("alternator_voltage_mismatch");
        });
}
