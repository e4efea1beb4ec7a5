//! The results as tables of figures, each of which opens its working.

use ampwright_core::Report;
use ampwright_core::analysis::PartTemperatures;
use ampwright_core::explain;
use ampwright_core::text::words::day_trouble;
use ampwright_core::units::clock;
use leptos::prelude::*;

use crate::desk::Desk;
use crate::paper::{Section, Text, written};
use crate::words::figure;
use crate::working::{TICK, is_open, opener, panel};

/// A line of a table: its name in the report, what it is called where that is not
/// [`explain::label`], its unit, decimals,
/// and what stands there without a figure; the line is left out if nothing does.
/// Hours and minutes are written as a clock has them.
type Line = (Word, Word, Word, usize, Word);
type Word = &'static str;

/// A table: its name, what stands over it, its lines, and their figures.
type Table = (Word, Word, &'static [Line], fn(&Report) -> Vec<Option<f64>>);

/// Tables of the day, the machine and the run.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut text = r#"<section class="figures" aria-labelledby="figures-title"><h2 id="figures-title">Figures</h2><p class="lead">Press a figure to see how it came about.</p><div class="tables">"#.to_string();
        for (name, caption, _, _) in TABLES {
            text += &format!(
                "<table><caption>{caption}</caption><tbody id=figures-{name}></tbody></table>"
            );
        }
        text + "</div>" + TICK + "</section>"
    }),
    parts: &[
        ("figures-day", Text::Own(|desk| rows(desk, 0))),
        ("figures-machine", Text::Own(|desk| rows(desk, 1))),
        ("figures-run", Text::Own(|desk| rows(desk, 2))),
        ("figures-heat", Text::Own(|desk| rows(desk, 3))),
        ("figures-engine", Text::Own(|desk| rows(desk, 4))),
        ("figures-lead", Text::Own(|desk| rows(desk, 5))),
    ],
    acts: &[],
    start: |_| (),
};

const LONG: &str = "none does";
const NEVER: &str = "not reached";

/// In the order of the parts.
#[rustfmt::skip]
static TABLES: [Table; 6] = [
    ("day", "The day at anchor", &[
        ("energy.anchor.use_ah", "", "A·h", 0, ""),
        ("energy.anchor.use_wh", "", "W·h", 0, ""),
        ("energy.anchor.night_share_pct", "", "%", 0, ""),
        ("energy.sun_ah", "", "A·h", 0, ""),
        ("energy.engine_ah", "", "A·h", 0, ""),
        ("energy.autonomy_days", "", "days", 1, "no end"),
        ("day.engine_hours", "", "h", 2, LONG),
        ("day.fuel_l", "", "L", 1, "–"),
        ("day.marginal_fuel_l", "", "L", 1, "–"),
    ], day),
    ("machine", "The alternator", &[
        ("machine.shaft_rpm", "", "rpm", 0, ""),
        ("machine.full_cold_a", "", "A", 0, ""),
        ("machine.hot_a", "", "A", 0, ""),
        ("machine.hot.winding_c", "", "°C", 0, "never settles"),
        ("machine.hot.rectifier_c", "", "°C", 0, ""),
        ("machine.hot.case_c", "", "°C", 0, ""),
        ("machine.hot.air_c", "", "°C", 0, ""),
        ("machine.space_air_m3h", "", "m³/h", 0, ""),
    ], machine),
    ("run", "The charging run", &[
        ("run.minutes_to_target", "", "min", 0, NEVER),
        ("run.minutes_to_80", "", "min", 0, NEVER),
        ("run.minutes_to_90", "", "min", 0, NEVER),
        ("run.minutes_to_100", "", "min", 0, NEVER),
        ("run.start_a", "", "A", 0, ""),
        ("run.mid_a", "", "A", 0, ""),
        ("run.mean_bank_a", "", "A", 0, ""),
        ("run.bank_energy_pct", "", "%", 0, ""),
        ("run.house_load_a", "", "A", 1, ""),
        ("run.peak_shaft_w", "", "kW", 2, ""),
        ("run.fuel_l", "", "L", 1, ""),
        ("run.marginal_fuel_l", "", "L", 1, ""),
    ], run),
    ("heat", "Hottest in the run, and after", &[
        ("run.peak.winding_c", "", "°C", 0, ""),
        ("run.peak.rectifier_c", "", "°C", 0, ""),
        ("run.peak.case_c", "", "°C", 0, ""),
        ("run.peak.air_c", "", "°C", 0, ""),
        ("run.second_peak.winding_c", "", "°C", 0, ""),
        ("run.second_peak.rectifier_c", "", "°C", 0, ""),
        ("run.second_peak.case_c", "", "°C", 0, ""),
        ("run.air_settles_min", "", "min", 0, ""),
        ("run.soak.peak.rectifier_c", "", "°C", 0, ""),
        ("run.soak.peak.air_c", "", "°C", 0, ""),
        ("run.soak.air_peak_min", "", "min", 0, ""),
    ], heat),
    ("engine", "The engine", &[
        ("engine.available_kw", "", "kW", 1, ""),
        ("engine.peak_kw", "", "kW", 2, ""),
        ("engine.peak_share_pct", "", "%", 0, ""),
        ("engine.mean_share_pct", "", "%", 0, ""),
        ("engine.idle_l_h", "", "L/h", 2, ""),
        ("engine.marginal_l_kwh", "", "L", 2, ""),
    ], engine),
    // What flooded lead of the same ampere-hours would have done.
    ("lead", "Beside a lead bank", &[
        ("day.engine_hours", "Engine a day, this bank", "h", 2, LONG),
        ("lead.engine_hours", "… flooded lead", "h", 2, LONG),
        ("run.minutes_to_target", "To the target, this bank", "min", 0, NEVER),
        ("lead.minutes_to_target", "… flooded lead", "min", 0, NEVER),
        ("run.mid_bank_a", "", "A", 0, ""),
        ("lead.mid_bank_a", "", "A", 0, ""),
    ], lead),
];

/// The rows of a table; under one of them the working that lies open.
fn rows(desk: Desk, table: usize) -> String {
    desk.aside.track();
    desk.track_later();
    let Some((at, _, lines, figures)) = TABLES.get(table) else {
        return String::new();
    };
    desk.look(&|sheet, report| {
        let (mut rows, figures) = (String::new(), figures(report));
        if figures.is_empty() {
            return "<tr><th scope=row>This bank is of lead</th><td class=figure>–</td></tr>".into();
        }
        for ((id, what, unit, decimals, none), number) in lines.iter().zip(figures) {
            if number.is_none() && none.is_empty() {
                continue;
            }
            let what = if what.is_empty() { explain::label(id) } else { what };
            let runs = match *id {
                "day.engine_hours" => report.analyses.day.runs,
                "lead.engine_hours" => report.analyses.lead.map_or(0, |lead| lead.runs),
                _ => 0,
            };
            let several = format!("{runs} runs");
            let none = match report.analyses.day.trouble {
                Some(trouble) if *id == "day.engine_hours" => day_trouble(trouble),
                _ => none,
            };
            let (words, unit) = match (number, *unit) {
                (Some(hours), "h") if runs > 1 => (clock(hours * 60.0), several.as_str()),
                (None, unit @ ("days" | "L")) => (none.to_string(), unit),
                (None, _) => (none.to_string(), ""),
                (Some(0.0), "h") => ("none".to_string(), ""),
                (Some(hours), "h") => (clock(hours * 60.0), ""),
                (Some(minutes), "min") => (clock(minutes), ""),
                (Some(number), unit) => (figure(number, *decimals), unit),
            };
            rows += &format!(
                "<tr><th scope=row>{what}</th><td class=figure>{}</td><td class=unit>{unit}</td></tr>",
                opener(at, id, &words, unit)
            );
            if is_open(at, id) {
                let panel = panel(desk, sheet, report);
                rows += &format!("<tr class=opened><td colspan=3>{panel}</td></tr>");
            }
        }
        rows
    })
}

fn some(figures: &[f64]) -> Vec<Option<f64>> {
    figures.iter().copied().map(Some).collect()
}

fn day(report: &Report) -> Vec<Option<f64>> {
    let (energy, day) = (&report.analyses.energy, &report.analyses.day);
    let used = &energy.anchor;
    vec![
        Some(used.use_ah),
        Some(used.use_wh),
        Some(used.night_share_pct),
        Some(energy.sun_ah),
        Some(energy.engine_ah),
        energy.autonomy_days,
        day.engine_hours,
        day.fuel_l,
        day.marginal_fuel_l,
    ]
}

/// Winding, rectifier, case and air.
fn temperatures(figures: &mut Vec<Option<f64>>, temps: Option<PartTemperatures>) {
    let parts: [fn(PartTemperatures) -> f64; 4] = [
        |t| t.winding_c,
        |t| t.rectifier_c,
        |t| t.case_c,
        |t| t.air_c,
    ];
    figures.extend(parts.map(|part| temps.map(part)));
}

fn machine(report: &Report) -> Vec<Option<f64>> {
    let machine = &report.analyses.machine;
    let mut figures = some(&[machine.shaft_rpm, machine.full_cold_a, machine.hot_a]);
    temperatures(&mut figures, machine.hot);
    figures.push(Some(machine.space_air_m3h));
    figures
}

fn run(report: &Report) -> Vec<Option<f64>> {
    let run = &report.analyses.run;
    vec![
        run.minutes_to_target,
        run.minutes_to_80,
        run.minutes_to_90,
        run.minutes_to_100,
        Some(run.start_a),
        Some(run.mid_a),
        Some(run.mean_bank_a),
        Some(run.bank_energy_pct),
        Some(run.house_load_a),
        Some(run.peak_shaft_w / 1000.0),
        Some(run.fuel_l),
        Some(run.marginal_fuel_l),
    ]
}

fn heat(report: &Report) -> Vec<Option<f64>> {
    let (run, soak) = (&report.analyses.run, &report.analyses.run.soak);
    let mut figures = Vec::new();
    temperatures(&mut figures, Some(run.peak));
    temperatures(&mut figures, run.second_peak);
    // The air is the same one.
    figures.pop();
    figures.extend([
        run.air_settles_min,
        Some(soak.peak.rectifier_c),
        Some(soak.peak.air_c),
        Some(soak.air_peak_min),
    ]);
    figures
}

fn engine(report: &Report) -> Vec<Option<f64>> {
    let engine = &report.analyses.engine;
    some(&[
        engine.available_kw,
        engine.peak_kw,
        engine.peak_share_pct,
        engine.mean_share_pct,
        engine.idle_l_h,
        engine.marginal_l_kwh,
    ])
}

fn lead(report: &Report) -> Vec<Option<f64>> {
    let (run, Some(lead)) = (&report.analyses.run, &report.analyses.lead) else {
        return Vec::new();
    };
    vec![
        report.analyses.day.engine_hours,
        lead.engine_hours,
        run.minutes_to_target,
        lead.minutes_to_target,
        Some(run.mid_bank_a),
        Some(lead.mid_bank_a),
    ]
}
