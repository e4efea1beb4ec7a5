//! What the alternator breathes, what its regulator feels, what the engine burns.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;

#[test]
fn a_blower() {
    // 300 m³/h printed, half of it installed: 50 l/s of outside air carry off
    // 1.16 × 0.042 × 1005 = 49 W/K, and the space stays within 10 to 25 K of it.
    let still = Boat::new("no blower").answers();
    Boat::new("300 m³/h of blower")
        .set("space_blower_m3h", 300.0)
        .check(|says| {
            let (cool_c, warm_c) = (
                says.report.analyses.run.peak_air_c,
                still.report.analyses.run.peak_air_c,
            );
            says.holds(cool_c < warm_c - 3.0, || {
                format!("{cool_c:.0} °C with a blower, {warm_c:.0} without")
            });
            says.space_between(30.0, 53.0);
            says.hot_share_between(40.0, 70.0);
            let (more_a, less_a) = (
                says.report.analyses.output.hot_a,
                still.report.analyses.output.hot_a,
            );
            says.holds(more_a > less_a, || format!("{more_a:.1} and {less_a:.1} A"));
        });
}

#[test]
fn cool_air_by_a_duct() {
    let without = Boat::new("no duct").answers();
    Boat::new("cool-air duct")
        .set("space_cold_air_pct", 60.0)
        .check(|says| {
            let (more_a, less_a) = (
                says.report.analyses.output.hot_a,
                without.report.analyses.output.hot_a,
            );
            says.between("A hot with a duct over without", more_a / less_a, 1.02, 1.5);
        });
}

#[test]
fn sensor_on_the_winding() {
    // Set to 130 °C on the stator: the winding never passes it by much.
    Boat::new("sensor on the winding at 130 °C")
        .choose("reg_sensor", "winding")
        .set("reg_set_point_c", 130.0)
        .check(|says| {
            says.winding_between(115.0, 137.0);
            says.must_not_find("winding_too_hot");
            says.must_not_find("case_sensor_lags");
        });
}

#[test]
fn a_gentle_set_point() {
    // 85 °C on the case in 50 to 60 °C air: half the room for heat of 105.
    let usual = Boat::new("105 °C").answers();
    Boat::new("85 °C on the case")
        .set("reg_set_point_c", 85.0)
        .check(|says| {
            let (low_a, high_a) = (
                says.report.analyses.output.hot_a,
                usual.report.analyses.output.hot_a,
            );
            says.between("A at 85 over 105 °C", low_a / high_a, 0.4, 0.92);
            says.no_danger();
            says.must_not_find("near_limit");
            says.survives();
        });
}

#[test]
fn a_soft_start_spares_the_belt() {
    // Full field after 10 min: cold it never gives all it could.
    let at_once = Boat::new("at once").answers();
    Boat::new("soft start of 10 min")
        .set("reg_ramp_min", 10.0)
        .check(|says| {
            let (soft_kw, hard_kw) = (
                says.report.analyses.engine.peak_kw,
                at_once.report.analyses.engine.peak_kw,
            );
            says.holds(soft_kw < 0.98 * hard_kw, || {
                format!("{soft_kw:.2} kW with a soft start, {hard_kw:.2} without")
            });
            says.hours_between(2.0, 3.5);
        });
}

#[test]
fn fuel_of_the_day() {
    // 1.5 L at 1500 rpm burns 0.35 to 0.75 L/h for itself; a kilowatt-hour more
    // costs 0.22 to 0.30 L (common practice, no source). 120 A·h are 1.6 kW·h into
    // the bank, 2.7 to 3.4 at the belt: 0.6 to 1.0 L. In 2.0 to 3.4 h: 1.3 to 3.5 L.
    Boat::new("litres").check(|says| {
        says.litres_between(1.3, 3.5);
        let marginal = says.report.analyses.day.marginal_fuel_l;
        says.some_between("L of the alternator's", marginal, 0.55, 1.1);
    });
}

#[test]
fn minutes_of_the_run() {
    // 30 to 90 % of 400 A·h is 240, the house's 5 A meanwhile: at 35 to 60 A of
    // alternator 240 / (30 to 55) = 4.4 to 8 h.
    Boat::new("minutes").check(|says| says.minutes_between(260.0, 480.0));
}

#[test]
fn transistors_in_place_of_diodes() {
    // 0.1 V in place of 0.9: 1.6 V × 90 A = 145 W less in the rectifier plate.
    let diodes = Boat::new("diodes").answers();
    Boat::new("transistor rectifier")
        .set("alt_diode_v", 0.1)
        .set("alt_efficiency_pct", 64.0)
        .check(|says| {
            let (new_a, old_a) = (
                says.report.analyses.output.hot_a,
                diodes.report.analyses.output.hot_a,
            );
            says.holds(new_a > old_a, || {
                format!("{new_a:.1} A, {old_a:.1} with diodes")
            });
            let (new_c, old_c) = (
                says.report.analyses.run.alternators[0].peak.rectifier_c,
                diodes.report.analyses.run.alternators[0].peak.rectifier_c,
            );
            says.holds(new_c < old_c - 3.0, || {
                format!("{new_c:.0} °C, {old_c:.0} with diodes")
            });
        });
}

#[test]
fn sheet_of_an_ordinary_boat() {
    Boat::new("settings").check(|says| {
        says.setting_between(GroupCode::Charge, SettingCode::Voltage, 13.8, 14.2);
        says.setting_says(
            GroupCode::Charge,
            SettingCode::Equalising,
            &["none", "never"],
        );
        says.setting_says(GroupCode::Charge, SettingCode::Temperature, &["0 °C"]);
        says.setting_between(GroupCode::Management, SettingCode::HighWarning, 14.3, 14.4);
        says.setting_between(
            GroupCode::Management,
            SettingCode::HighChargingOff,
            14.4,
            14.55,
        );
        says.setting_between(
            GroupCode::Management,
            SettingCode::HighContactor,
            14.5,
            14.6,
        );
        // 2.8 V a cell is 11.2, 3.1 is 12.4.
        says.setting_between(GroupCode::Management, SettingCode::LowContactor, 10.0, 11.6);
        says.setting_between(GroupCode::Management, SettingCode::LowWarning, 12.0, 12.8);
        // What it holds hot and a margin, not what stands on it.
        says.setting_between(GroupCode::Regulator, SettingCode::CurrentCap, 35.0, 90.0);
    });
}
