//! Every worksheet the form accepts has an answer made of finite numbers.

use ampwright_core::boat::house_load_a;
use ampwright_core::exchange::report_json;
use ampwright_core::report::Report;
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, charge};
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::draw::any_sheet;

/// The names under which `null` means "does not happen".
const MAY_BE_NULL: &[&str] = &[
    "energy.autonomy_days",
    "alternators.hot",
    "alternators.insulation_h",
    "alternators.grease_h",
    "output.blower_for_wanted_m3h",
    "run.opening",
    "run.minutes_to_target",
    "run.minutes_to_80",
    "run.minutes_to_90",
    "run.minutes_to_100",
    "run.air_settles_min",
    "legs.next_day_pct",
    "legs.legs.reaches_target",
    "legs.legs.opening",
    "lead",
    "lead.minutes_to_target",
    "lead.engine_hours",
    "shore.frozen_pct",
    "generator.frozen_pct",
    "generator.trouble",
    "generator.hours",
    "generator.from_pct",
    "generator.mean_bank_a",
    "generator.mains_kwh",
    "generator.load_pct",
    "generator.fuel_l",
    "day.engine_hours",
    "day.run_hours",
    "day.trouble",
    "day.from_pct",
    "day.fuel_l",
    "day.marginal_fuel_l",
    "day.mean_bank_a",
    "day.shaft_kwh",
    "findings.left",
    "findings.load_lost",
    "findings.load_lost.left_v",
    "findings.load_lost.top_spike",
    "findings.one_run_ah",
    "findings.remedy",
    "findings.remedy.runs",
    "findings.ribs",
    "findings.safe_pct",
    "findings.settled",
    "findings.v_belts",
    "lead.day_mean_bank_a",
    "questions.ribs",
    "questions.v_belts",
    "shore.fill_h",
    "verdict.quantities.after_min",
    "belts.belt",
    "belts.tight_n",
    "belts.slips_at_ratio",
    "belts.rule_low_a",
    "belts.rule_high_a",
    "belts.asks_v",
    "belts.asks_ribs",
    "belts.shared_with_pump_a",
    "belts.worst_pct",
    "belts.side_n",
    "belts.charging.carries_w",
    "belts.charging.formula_pct",
    "belts.charging.rule_pct",
    "belts.charging.side_n",
    "belts.top.carries_w",
    "belts.top.formula_pct",
    "belts.top.rule_pct",
    "belts.top.side_n",
    "link_loss.opening",
    "sensor_loss.alternators.passes_min",
    "sharing.idle",
    "packs.charging",
    "packs.discharging",
    "packs.breaks_ka",
    "packs.fuse_a",
    "findings.lost.cap_a",
    "load_dump.alternators.standard_low_v",
    "load_dump.alternators.standard_high_v",
    "load_dump.alternators.standard_low_ohm",
    "load_dump.alternators.standard_high_ohm",
    "load_dump.alternators.opening",
    "load_dump.alternators.clamp_rated_j",
    "load_dump.alternators.charging.standard_low_j",
    "load_dump.alternators.charging.standard_high_j",
    "load_dump.alternators.charging.bank_left_v",
    "load_dump.alternators.charging.switch_left_v",
    "load_dump.alternators.top.standard_low_j",
    "load_dump.alternators.top.standard_high_j",
    "load_dump.alternators.top.bank_left_v",
    "load_dump.alternators.top.switch_left_v",
    "load_dump.alternators.opening.standard_low_j",
    "load_dump.alternators.opening.standard_high_j",
    "load_dump.alternators.opening.bank_left_v",
    "load_dump.alternators.opening.switch_left_v",
    "cables.breaks_ka",
    "cables.runs.breaks_ka",
    "cables.runs.alternator_fuse",
    "cables.runs.gauge",
    "cables.runs.gauge.ampacity_from_memory_a",
    "cables.runs.gauge_from_memory",
    "cables.runs.metric",
    "cables.runs.metric.ampacity_from_memory_a",
];

/// The parts that are sentences with figures in them.
const SENTENCES: &[&str] = &[
    "findings.text",
    "questions.text",
    "sentence",
    "verdict.text",
    "legs.text",
    "belts.text",
    "load_dump.alternators.text",
    "load_dump.alternators.mitigations.text.advice",
    "cables.text.remarks",
    "cables.runs.text.asks",
    "cables.runs.text.fuse",
    "cables.runs.text.fuse_place",
    "cables.runs.text.notes",
];

/// JSON holds no number that is not finite, it writes `null`.
fn walk(path: &str, json: &Json) -> Result<(), TestCaseError> {
    match json {
        Json::Null => prop_assert!(MAY_BE_NULL.contains(&path), "{path} is no number"),
        Json::Array(rows) => rows.iter().try_for_each(|row| walk(path, row))?,
        Json::Object(parts) => {
            for (name, part) in parts {
                let inner = if path.is_empty() {
                    name.clone()
                } else {
                    format!("{path}.{name}")
                };
                walk(&inner, part)?;
            }
        }
        Json::String(text) => {
            for word in ["NaN", "inf ", "inf.", "-0 "] {
                prop_assert!(
                    !SENTENCES.contains(&path) || !text.contains(word),
                    "“{word}” in {text}"
                );
            }
        }
        Json::Bool(_) | Json::Number(_) => {}
    }
    Ok(())
}

fn optional(report: &Report) -> impl Iterator<Item = f64> {
    let (run, day) = (&report.analyses.run, &report.analyses.day);
    let lead = report.analyses.lead.report();
    [
        report.analyses.energy.autonomy_days,
        report.analyses.output.blower_for_wanted_m3h,
        run.air_settles_min,
        lead.and_then(|lead| lead.minutes_to_target),
        lead.and_then(|lead| lead.engine_hours),
        run.minutes_to_target,
        run.minutes_to_80,
        run.minutes_to_90,
        run.minutes_to_100,
        day.engine_hours,
        day.from_pct,
        day.fuel_l,
        day.marginal_fuel_l,
    ]
    .into_iter()
    .flatten()
}

fn sound(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let report = report(sheet);
    walk(
        "",
        &report_json(sheet, &report, &ampwright_core::units::Reader::METRIC),
    )?;
    prop_assert!(optional(&report).all(|x| x.is_finite() && x >= 0.0));
    let output = &report.analyses.output;
    prop_assert!(output.hot_a >= 0.0, "hot {}", output.hot_a);
    for t in report.analyses.alternators.iter().filter_map(|one| one.hot) {
        let all = [t.winding_c, t.case_c, t.rectifier_c, t.air_c];
        prop_assert!(
            all.iter()
                .all(|t| t.is_finite() && (-60.0..1e4).contains(t)),
            "{t:?}"
        );
    }
    let run = &report.analyses.run;
    let shares: f64 = run.limit_shares.iter().map(|share| share.share_pct).sum();
    prop_assert!(
        run.minutes < 0.01 || (shares - 100.0).abs() < 0.1,
        "shares {shares}"
    );
    prop_assert!(run.end_charge_pct < 100.1, "end {}", run.end_charge_pct);
    for pair in run.series.windows(2) {
        prop_assert!(pair[0].minute < pair[1].minute);
    }
    let reached = [run.minutes_to_80, run.minutes_to_90, run.minutes_to_100];
    for pair in reached.windows(2) {
        let later = pair[1].unwrap_or(f64::INFINITY);
        prop_assert!(pair[0].unwrap_or(f64::INFINITY) <= later, "{reached:?}");
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(10_000))]

    #[test]
    fn every_worksheet_has_a_finite_report(drawn in any_sheet()) {
        sound(&drawn.0)?;
    }

    /// At its target, empty, burnt or when its time is over: not for want of steps.
    #[test]
    fn every_run_ends_by_itself(drawn in any_sheet()) {
        let inputs = &drawn.0.inputs;
        let plant = Plant::new(inputs, house_load_a(&drawn.0));
        let last_s = inputs.run.longest_h * 3600.0;
        let trace = charge(&plant, inputs.run.from_pct / 100.0, 1.0, last_s, &Fineness::USUAL);
        let end = trace.sample(trace.last_s());
        let burnt = end
            .thermal
            .iter()
            .any(|one| one.t.winding_c.max(one.t.body_c).max(one.t.rectifier_c) > 1000.0);
        prop_assert!(
            trace.last_s() >= last_s || end.soc >= 1.0 || end.soc <= -0.05 || burnt,
            "ends after {} of {last_s} s at {} and {} steps",
            trace.last_s(), end.soc, trace.steps()
        );
    }
}
