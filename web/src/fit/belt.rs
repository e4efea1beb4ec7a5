//! Belt and shaft: by formula and by rule of thumb.

use ampwright_core::belt::{BeltLoad, BeltReport};
use ampwright_core::{Report, Worksheet, belts};

use super::table::{Bar, Line, bars, between, sentences, table, with_unit};
use super::{found, heading};
use crate::words::figure;

const FINDINGS: [&str; 8] = [
    "belt_not_said",
    "belt_too_small",
    "pulleys_overlap",
    "ratio_disagrees",
    "belt_wrap_small",
    "belt_pulley_small",
    "belt_shared_pump",
    "crank_side_load",
];

/// What to mind, and how much of each belt is used.
pub fn told(sheet: &Worksheet, report: &Report) -> String {
    let mut text = found(report, &FINDINGS);
    let belts = belts(sheet, report);
    for belt in &belts {
        let Some(worst_pct) = belt.worst_pct else {
            continue;
        };
        let mut drawn = Vec::new();
        for (what, used_pct) in [
            ("formula, charging", belt.charging.formula_pct),
            ("formula, top speed", belt.top.formula_pct),
            ("rule, charging", belt.charging.rule_pct),
            ("rule, top speed", belt.top.rule_pct),
        ] {
            let used_pct = used_pct.unwrap_or_default().min(999.0);
            let words = with_unit(Some(used_pct), 0, "%");
            drawn.push(Bar(what, 0.0, used_pct, words));
        }
        text += &format!(
            "{}<p class=told>Used of what the belt carries, at worst: {}\u{a0}%</p>{}",
            heading(belts.len() > 1, belt.second),
            figure(worst_pct.min(999.0), 0),
            bars(100.0, "all it carries", &drawn)
        );
    }
    text
}

/// The figures and the sentences.
pub fn more(sheet: &Worksheet, report: &Report) -> String {
    let belts = belts(sheet, report);
    let mut text = String::new();
    for belt in &belts {
        text += heading(belts.len() > 1, belt.second);
        for (when, load) in [
            ("While charging", &belt.charging),
            ("Cold, engine at its highest", &belt.top),
        ] {
            text += &side_by_side(when, belt, load);
        }
        text += &both(belt);
        text += &sentences(&belt.sentences);
    }
    text
}

/// At one engine speed: the formula beside the rule of thumb.
fn side_by_side(when: &str, belt: &BeltReport, load: &BeltLoad) -> String {
    let lines = [
        (
            "At its shaft",
            with_unit(Some(load.shaft_w), 0, "W"),
            with_unit(Some(load.rule_w), 0, "W"),
        ),
        (
            "The belt carries",
            with_unit(load.carries_w, 0, "W"),
            between(belt.rule_low_a, belt.rule_high_a, 0, "A"),
        ),
        (
            "… of that used",
            with_unit(load.formula_pct, 0, "%"),
            with_unit(load.rule_pct, 0, "%"),
        ),
    ];
    let caption = format!("{when}: {:.0} rpm, {:.0} A", load.engine_rpm, load.amperes);
    table(&caption, ["by formula", "by rule of thumb"], &lines)
}

/// What has no rule of thumb.
fn both(belt: &BeltReport) -> String {
    let line = |what: &'static str, of: fn(&BeltLoad) -> Option<f64>, decimals, unit| -> Line {
        let cell = |load| with_unit(of(load), decimals, unit);
        (what, cell(&belt.charging), cell(&belt.top))
    };
    let same = |what: &'static str, number, decimals, unit| -> Line {
        let cell = with_unit(number, decimals, unit);
        (what, cell.clone(), cell)
    };
    let lines = [
        line("Engine", |l| Some(l.engine_rpm), 0, "rpm"),
        line("Alternator's own speed", |l| Some(l.shaft_rpm), 0, "rpm"),
        line("Gives", |l| Some(l.amperes), 0, "A"),
        line("Torque at its shaft", |l| Some(l.shaft_nm), 1, "N·m"),
        line("Asked of the engine", |l| Some(l.engine_w), 0, "W"),
        line("Belt runs at", |l| Some(l.belt_m_s), 1, "m/s"),
        same("Lies round the smaller pulley", Some(belt.wrap_deg), 0, "°"),
        same("Tight side may pull", belt.tight_n, 0, "N"),
        same(
            "Slips when tight is slack times",
            belt.slips_at_ratio,
            1,
            "",
        ),
        line("Pulls the crankshaft's end", |l| l.side_n, 0, "N"),
    ];
    table("The belt at both speeds", ["charging", "top speed"], &lines)
}
