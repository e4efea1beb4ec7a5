//! What belts carry and what they pull at.

use crate::analysis::Analyses;
use crate::analysis::belt::words::asks;
use crate::analysis::belt::{BeltReport, SHARED_WITH_PUMP_A, USUAL_SIDE_N};
use crate::analysis::peak_loads::called;
use crate::boat::{BeltKind, Inputs, Said, Worksheet};
use crate::findings::{Finding, Severity, add};

/// What belts carry and what they pull at.
pub(crate) fn belt_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let belts = &report.belts;
    // Said once, of the first that is not entered.
    let unsaid = |belt: &&BeltReport| belt.belt.is_none() && !carried_by_one(belt);
    if let Some(belt) = belts.iter().find(unsaid) {
        decides(belt, found);
    }
    let second = sheet.inputs.as_second();
    for belt in belts {
        let seen = second.as_ref().filter(|_| belt.second);
        of_one(seen.unwrap_or(&sheet.inputs), belt, found);
    }
    let side_n: f64 = belts.iter().filter_map(|belt| belt.side_n).sum();
    if side_n > USUAL_SIDE_N {
        add(
            found,
            Severity::Mind,
            "crank_side_load",
            format!(
                "{} the crankshaft's end sideways with up to {side_n:.0} N; one 13 mm belt, which many engines are built for, gives about {USUAL_SIDE_N:.0} N. Ask the engine's maker what it withstands, or take the pull on a pulley with its own bearing.",
                if belts.len() > 1 {
                    "Both alternators' belts together pull"
                } else {
                    "The alternator's belt pulls"
                }
            ),
        );
    }
}

/// Whether one V-belt of the size most engines have carries it: then which belt
/// it is stays a question and is no finding.
fn carried_by_one(belt: &BeltReport) -> bool {
    [BeltKind::V10, BeltKind::V13]
        .iter()
        .any(|kind| belt.asks_v == Some(kind.words()))
}

/// A belt that is not said, and that an engine's usual one would not do for.
fn decides(belt: &BeltReport, found: &mut Vec<Finding>) {
    let (now, top) = (&belt.charging, &belt.top);
    add(
        found,
        Severity::Mind,
        "belt_not_said",
        format!(
            "The {} needs up to {:.1} kW for {:.0} A, more than the one V-belt that most engines have carries: it would slip, heat and wear. {} Enter which belt it has.",
            called(belt.second),
            now.shaft_w.max(top.shaft_w) / 1000.0,
            now.amperes.max(top.amperes),
            asks(belt.asks_v, belt.asks_ribs)
        ),
    );
}

fn of_one(seen: &Inputs, belt: &BeltReport, found: &mut Vec<Finding>) {
    let (Some(kind), Some(worst_pct)) = (belt.belt, belt.worst_pct) else {
        return;
    };
    let name = called(belt.second);
    if worst_pct > 100.0 {
        let (now, top) = (&belt.charging, &belt.top);
        add(
            found,
            Severity::Mend,
            "belt_too_small",
            format!(
                "The {name}'s belt, {kind}, has to carry {:.0} % of what the belt formula or the rule of thumb allows, with up to {:.1} kW and {:.0} A: it will slip, heat and wear. {}",
                worst_pct.min(999.0),
                now.shaft_w.max(top.shaft_w) / 1000.0,
                now.amperes.max(top.amperes),
                asks(belt.asks_v, belt.asks_ribs)
            ),
        );
    }
    if belt.pulleys_overlap {
        add(
            found,
            Severity::Mend,
            "pulleys_overlap",
            format!(
                "Pulleys of {:.0} and {:.0} mm do not fit side by side at a centre distance of {:.0} mm. Measure the {name}'s again.",
                seen.belt.pulley_mm, belt.engine_pulley_mm, seen.belt.centres_mm
            ),
        );
    }
    let ratio = belt.engine_pulley_mm / seen.belt.pulley_mm;
    if (ratio / seen.alt.pulley_ratio - 1.0).abs() > 0.05 {
        add(
            found,
            Severity::Mend,
            "ratio_disagrees",
            format!(
                "The {name}'s pulleys of {:.0} and {:.0} mm make a ratio of {ratio:.2}, and you entered {:.2}. Speed, current and heat depend on it: measure again and correct the wrong one.",
                belt.engine_pulley_mm, seen.belt.pulley_mm, seen.alt.pulley_ratio
            ),
        );
    }
    if belt.wrap_too_small {
        add(
            found,
            Severity::Mind,
            "belt_wrap_small",
            format!(
                "The {name}'s belt lies only {:.0}° round the smaller pulley; at least 120° for a V-belt and 140° for a multi-rib belt is common practice. An idler on the slack side, or a greater centre distance, gives it more grip.",
                belt.wrap_deg.floor()
            ),
        );
    }
    if belt.pulley_too_small {
        add(
            found,
            Severity::Mind,
            "belt_pulley_small",
            format!(
                "A pulley of {:.0} mm bends {kind} so sharply that it heats and cracks early. A larger pair with the same ratio makes it last.",
                seen.belt.pulley_mm.min(belt.engine_pulley_mm)
            ),
        );
    }
    let shared_a = SHARED_WITH_PUMP_A / seen.alternator_blocks();
    let most_a = belt.charging.amperes.max(belt.top.amperes);
    if seen.belt.pump == Said::Yes && most_a > shared_a {
        add(
            found,
            Severity::Mend,
            "belt_shared_pump",
            format!(
                "One belt turns the water pump and an alternator of up to {most_a:.0} A: the pump's bearing carries all that pull, and a belt that slips stops the cooling. Above about {shared_a:.0} A give the alternator a belt of its own (common practice), or cap its current."
            ),
        );
    }
}
