//! Belt and shaft: by formula and by rule of thumb.

use ampwright_core::analysis::belt::{BeltLoad, BeltReport};
use ampwright_core::findings::Finding;
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet, text};

use super::table::{Bar, Line, bars, line, sentences, table, with_unit};
use super::{found, heading};
use crate::words::escape;

/// Warnings and notes, and how much of each belt is used.
pub fn told(_: &Worksheet, report: &Report) -> String {
    let mut text = found(report, |finding| matches!(finding, Finding::Belt(_)));
    for question in &report.questions {
        text += &format!(
            "<p class=lead>{}</p>",
            escape(&text::question(question, &Reader::METRIC))
        );
    }
    let belts = &report.analyses.belts;
    for belt in belts {
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
            let words = with_unit(used_pct, 0, "%");
            drawn.push(Bar(what, 0.0, used_pct, words));
        }
        text += &format!(
            "{}<p class=told>Used of what the belt carries, at worst: {}</p>{}",
            heading(belts.len() > 1, belt.second),
            with_unit(worst_pct.min(999.0), 0, "%"),
            bars(100.0, "all it carries", &drawn)
        );
    }
    text
}

/// The figures and the sentences.
pub fn more(_: &Worksheet, report: &Report) -> String {
    let belts = &report.analyses.belts;
    let mut said = String::new();
    for belt in belts {
        said += heading(belts.len() > 1, belt.second);
        for (when, load) in [
            ("While charging", &belt.charging),
            ("Cold, engine at its highest", &belt.top),
        ] {
            said += &side_by_side(when, belt, load);
        }
        said += &both(belt);
        said += &sentences(&text::belt::sentences(belt, &Reader::METRIC));
    }
    said
}

/// At one engine speed: the formula beside the rule of thumb.
fn side_by_side(when: &str, belt: &BeltReport, load: &BeltLoad) -> String {
    let shaft_w = [Some(load.shaft_w), Some(load.rule_w)];
    let carries = [(load.carries_w, None), (belt.rule_low_a, belt.rule_high_a)];
    let lines = [
        line("At its shaft", shaft_w, 0, "W"),
        Line("The belt carries", carries, 0, ["W", "A"]),
        line("… of that used", [load.formula_pct, load.rule_pct], 0, "%"),
    ];
    let caption = format!("{when}: {:.0} rpm, {:.0} A", load.engine_rpm, load.amperes);
    table(&caption, ["by formula", "by rule of thumb"], &lines)
}

/// What has no rule of thumb.
fn both(belt: &BeltReport) -> String {
    let (now, top) = (&belt.charging, &belt.top);
    let two = |now, top| [Some(now), Some(top)];
    let same = |figure| [figure, figure];
    let lines = [
        line("Engine", two(now.engine_rpm, top.engine_rpm), 0, "rpm"),
        line(
            "Alternator's own speed",
            two(now.shaft_rpm, top.shaft_rpm),
            0,
            "rpm",
        ),
        line("Gives", two(now.amperes, top.amperes), 0, "A"),
        line(
            "Torque at its shaft",
            two(now.shaft_nm, top.shaft_nm),
            1,
            "N·m",
        ),
        line(
            "Asked of the engine",
            two(now.engine_w, top.engine_w),
            0,
            "W",
        ),
        line("Belt runs at", two(now.belt_m_s, top.belt_m_s), 1, "m/s"),
        line(
            "Lies round the smaller pulley",
            same(Some(belt.wrap_deg)),
            0,
            "°",
        ),
        line("Tight side may pull", same(belt.tight_n), 0, "N"),
        line(
            "Slips when tight is slack times",
            same(belt.slips_at_ratio),
            1,
            "",
        ),
        line(
            "Pulls the crankshaft's end",
            [now.side_n, top.side_n],
            0,
            "N",
        ),
    ];
    table("The belt at both speeds", ["charging", "top speed"], &lines)
}
