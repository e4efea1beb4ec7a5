//! Belts in words.

use crate::analysis::belt::{BeltReport, SHARED_WITH_PUMP_A};
use crate::analysis::peak_loads::AlternatorPeaks;
use crate::boat::Said;

/// What there is to say of one belt, one sentence each.
pub(super) fn sentences(machine: &AlternatorPeaks, belt: &BeltReport) -> Vec<String> {
    let (now, top) = (&belt.charging, &belt.top);
    let name = machine.name();
    let mut said = vec![
        format!(
            "While charging at {:.0} engine rpm the {name} takes up to {:.1} kW and {:.1} N·m at its shaft for {:.0} A; by the rule of a horsepower for each 25 A at 12 V it would be {:.1} kW.",
            now.engine_rpm,
            now.shaft_w / 1000.0,
            now.shaft_nm,
            now.amperes,
            now.rule_w / 1000.0
        ),
        format!(
            "Cold, with the engine at {:.0} rpm, it can take {:.1} kW for {:.0} A.",
            top.engine_rpm,
            top.shaft_w / 1000.0,
            top.amperes
        ),
    ];
    match (belt.belt, now.carries_w, belt.rule_low_a, belt.rule_high_a) {
        (Some(kind), Some(carries_w), Some(low_a), Some(high_a)) => {
            said.push(format!(
                "By the belt formula {kind} running at {:.1} m/s, wrapped {:.0}°, carries {:.1} kW before it slips; {:.0} % of that is used, and {:.0} % of what it carries with the engine at its highest.",
                now.belt_m_s,
                belt.wrap_deg,
                carries_w / 1000.0,
                now.formula_pct.unwrap_or_default(),
                top.formula_pct.unwrap_or_default()
            ));
            said.push(format!(
                "By the rule of the trade it is good for {low_a:.0} to {high_a:.0} A; {:.0} % of that is used while charging, {:.0} % with the engine at its highest.",
                now.rule_pct.unwrap_or_default(),
                top.rule_pct.unwrap_or_default()
            ));
            said.push("The formula is for a new, tight and dry belt; the rule leaves room for age, heat and damp. Where they differ, go by the one that allows less.".to_string());
        }
        _ => said.push(format!(
            "Which belt turns it is still to be entered. {}",
            asks(belt.asks_v, belt.asks_ribs)
        )),
    }
    if let Some(side_n) = belt.side_n {
        said.push(format!(
            "As tight as usual it pulls the crankshaft's end sideways with up to {side_n:.0} N; how far out the pulley sits counts too, and only the engine's maker knows what it bears."
        ));
    }
    if machine.installed.belt.pump == Said::Yes {
        let shared_a = SHARED_WITH_PUMP_A / machine.installed.blocks();
        said.push(format!(
            "It turns the water pump too: the pump's bearing carries the same pull. One belt for both is good for about {shared_a:.0} A (common practice)."
        ));
    }
    said.push("Tighten a new belt again after 10 to 15 minutes and once more after 5 hours (common practice).".to_string());
    said
}

/// "That asks for two 13 mm V-belts or a multi-rib belt of 6 ribs."
pub(crate) fn asks(v_belts: Option<&str>, ribs: Option<&str>) -> String {
    match (v_belts, ribs) {
        (Some(v), Some(ribs)) => format!("That asks for {v} or {ribs}."),
        (Some(one), None) | (None, Some(one)) => format!("That asks for {one}."),
        (None, None) => {
            "No belt listed here carries that: cap the current or share it between two alternators."
                .to_string()
        }
    }
}
