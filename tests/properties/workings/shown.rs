//! Every result that the page shows has a working.

use ampwright_core::boat::demo;
use ampwright_core::explain::{ids, working};
use ampwright_core::report;

/// The results that the page shows, its answer strip and its tables.
const SHOWN: &[&str] = &[
    "energy.anchor.use_ah",
    "energy.anchor.use_wh",
    "energy.anchor.night_share_pct",
    "energy.sun_ah",
    "energy.engine_ah",
    "energy.autonomy_days",
    "day.need_ah",
    "day.engine_hours",
    "day.fuel_l",
    "day.marginal_fuel_l",
    "alternators.0.shaft_rpm",
    "output.full_cold_a",
    "output.hot_a",
    "alternators.0.hot.winding_c",
    "alternators.0.hot.rectifier_c",
    "alternators.0.hot.case_c",
    "alternators.0.hot.air_c",
    "output.space_air_m3h",
    "run.minutes_to_target",
    "run.minutes_to_80",
    "run.minutes_to_90",
    "run.minutes_to_100",
    "run.start_a",
    "run.mid_a",
    "run.mean_bank_a",
    "run.bank_energy_pct",
    "run.house_load_a",
    "run.peak_shaft_w",
    "run.fuel_l",
    "run.marginal_fuel_l",
    "run.alternators.0.peak.winding_c",
    "run.alternators.0.peak.rectifier_c",
    "run.alternators.0.peak.case_c",
    "run.peak_air_c",
    "run.alternators.1.peak.winding_c",
    "run.alternators.1.peak.rectifier_c",
    "run.alternators.1.peak.case_c",
    "run.air_settles_min",
    "run.alternators.0.soak_peak.rectifier_c",
    "run.soak.air_peak_c",
    "run.soak.air_peak_min",
    "engine.available_kw",
    "engine.peak_kw",
    "engine.peak_share_pct",
    "engine.mean_share_pct",
    "engine.idle_l_h",
    "engine.marginal_l_kwh",
    "lead.engine_hours",
    "lead.minutes_to_target",
    "lead.mid_bank_a",
    "run.mid_bank_a",
    "belts.0.engine_pulley_mm",
    "belts.0.wrap_deg",
    "belts.0.charging.belt_m_s",
    "belts.0.charging.shaft_nm",
    "belts.0.top.engine_w",
    "belts.0.top.rule_w",
    "load_dump.alternators.0.charging.internal_ohm",
    "load_dump.alternators.0.top.peak_v",
    "load_dump.alternators.0.charging.clamp_j",
    "load_dump.alternators.0.lead_left_v",
    "cables.short_circuit_a",
    "cables.runs.0.carries_a",
    "cables.runs.0.allowed_v",
    "cables.runs.0.metric.ampacity_a",
    "cables.runs.0.metric.drop_v",
    "cables.runs.0.gauge.copper_c",
    "cables.runs.0.gauge.fuse_least_a",
    "cables.runs.0.gauge.fuse_most_a",
];

#[test]
fn every_shown_result_has_one_working() {
    let (sheet, all) = (demo(), ids().collect::<Vec<_>>());
    let report = report(&sheet);
    for id in SHOWN {
        assert_eq!(all.iter().filter(|other| *other == id).count(), 1, "{id}");
        let there = !id.starts_with("run.alternators.1");
        let made = working(&sheet, &report, id);
        assert_eq!(made.is_some(), there, "{id}");
        assert!(made.is_none_or(|made| made.id == *id));
    }
    assert_eq!(working(&sheet, &report, "machine"), None);
}
