//! The reference file's names for the inputs, in ours.

use ampwright_core::Worksheet;
use ampwright_core::boat::{Key, RegulatorKind, WayKind};
use ampwright_core::schema::Value;
use serde_json::Value as Json;

/// Reference name, our key, and the factor between their units.
const NAMES: &[(&str, &str, f64)] = &[
    ("I_rated", "alt_rated_a", 1.0),
    ("n_rated", "alt_rated_rpm", 1.0),
    ("n0", "alt_zero_rpm", 1.0),
    ("V_ref", "alt_test_v", 1.0),
    ("Vd", "alt_diode_v", 1.0),
    ("s", "alt_field_exponent", 1.0),
    ("s0", "alt_speed_exponent", 1.0),
    ("T_cold", "alt_plate_rotor_c", 1.0),
    ("eta_rated", "alt_efficiency_pct", 100.0),
    ("P_field", "alt_field_w", 1.0),
    ("f_iron", "alt_iron_share_pct", 100.0),
    ("f_wind", "alt_fan_share_pct", 100.0),
    ("x_wind", "alt_fan_exponent", 1.0),
    ("mass", "alt_mass_kg", 1.0),
    ("n_th", "alt_anchor_rpm", 1.0),
    ("T_amb_th", "alt_anchor_air_c", 1.0),
    ("Tw_th", "alt_anchor_winding_c", 1.0),
    ("m", "alt_cooling_exponent", 1.0),
    ("ratio", "alt_pulley_ratio", 1.0),
    ("rpm", "eng_rpm", 1.0),
    ("T_set", "reg_set_point_c", 1.0),
    ("band", "reg_fold_band_k", 1.0),
    ("V_cv", "bank_charge_v", 1.0),
    ("eta_dcdc", "way_converter_efficiency_pct", 100.0),
    ("I_dcdc", "way_converter_a", 1.0),
    ("Ah", "bank_capacity_ah", 1.0),
    ("soc0", "run_from_pct", 100.0),
    ("soc_end", "run_to_pct", 100.0),
    ("RQ", "bank_resistance_ohm_ah", 1.0),
    ("R_harness", "bank_harness_mohm", 1000.0),
    ("I_load", "run_house_load_a", 1.0),
    ("eta_q", "bank_charge_efficiency_pct", 100.0),
    ("T_amb", "space_outside_c", 1.0),
    ("T_cabin", "space_cabin_c", 1.0),
    ("T_a0", "space_start_c", 1.0),
    ("Vd_eng", "eng_displacement_l", 1000.0),
    ("eta_v", "eng_filling_pct", 100.0),
    ("blower_m3h", "space_blower_m3h", 1.0),
    ("blower_factor", "space_blower_installed_pct", 100.0),
    ("leak_m3h", "space_leak_m3h", 1.0),
    ("UA_wall", "space_wall_w_k", 1.0),
    ("C_comp", "space_heat_capacity_kj_k", 0.001),
    ("UA_eng", "eng_surface_w_k", 1.0),
    ("T_eng", "eng_running_c", 1.0),
    ("tau_eng", "eng_warm_up_min", 1.0 / 60.0),
    ("recirc", "space_recirculation_pct", 100.0),
    ("rho_air", "space_air_kg_m3", 1.0),
    ("V_start", "way_start_v", 1.0),
    ("I_services", "way_services_a", 1.0),
    ("G_wb", "alt_coupling_w_k", 1.0),
    ("still_air", "alt_still_air_pct", 100.0),
    ("rotor_K", "alt_rotor_rise_k", 1.0),
    ("t_max", "run_longest_h", 1.0 / 3600.0),
];

/// A worksheet with the reference's inputs; its "no limit" (1e9) and "not
/// used" (null) are our empty fields, or for the bank the top of the range.
pub fn worksheet(inputs: &Json) -> Worksheet {
    let mut sheet = Worksheet::default();
    sheet.inputs.reg.kind = RegulatorKind::External;
    sheet.inputs.way.kind = WayKind::Direct;
    let mut say = |name: &str, value: Value| {
        let key = Key::named(name).expect("a key");
        sheet.state(key, value).expect("within its range");
    };
    for (theirs, ours, factor) in NAMES {
        if let Some(number) = inputs[theirs].as_f64() {
            // Percent of two decimals, without the factor's rounding dust.
            let number = (number * factor * 1e9).round() / 1e9;
            say(ours, Value::Number(number));
        }
    }
    // From winding to body it is told for an alternator of the usual size; the others
    // as parts of what goes from the winding to the air.
    let share = |of: &str| 100.0 * inputs[of].as_f64().expect("a number") / 3.0;
    assert_eq!(inputs["G_wa"].as_f64(), Some(3.0), "as the model has it");
    say("alt_case_air_pct", Value::Number(share("G_ba")));
    say("alt_rectifier_air_pct", Value::Number(share("G_da")));
    say("bank_charge_limit_a", Value::Number(10_000.0));
    if inputs["I_cap"].as_f64().is_some_and(|cap| cap < 1e6) {
        say(
            "reg_current_cap_a",
            Value::Number(inputs["I_cap"].as_f64().expect("a number")),
        );
    }
    if inputs["I_dcdc"].is_number() {
        say("way_kind", Value::Choice(1));
    }
    sheet
}
