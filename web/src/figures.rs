//! The results as tables of figures, each of which opens its working.

use ampwright_core::report::{Report, clock};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::paper::{Section, Text};
use crate::words::figure;
use crate::working::{TICK, is_open, opener, panel};

/// A line of a table: its name in the report, what, figure, unit.
type Line = (&'static str, &'static str, String, &'static str);

/// Caption and id of each table.
const TABLES: [(&str, &str); 6] = [
    ("The day at anchor", "figures-day"),
    ("The alternator", "figures-machine"),
    ("The charging run", "figures-run"),
    ("Hottest in the run, and after", "figures-heat"),
    ("The engine", "figures-engine"),
    ("Beside a lead bank", "figures-lead"),
];

/// Tables of the day, the machine and the run.
pub const SECTION: Section = Section {
    paper: || {
        let mut text = r#"<section class="figures" aria-labelledby="figures-title"><h2 id="figures-title">Figures</h2><p class="lead">Press a figure to see how it came about.</p><div class="tables">"#.to_string();
        for (caption, id) in TABLES {
            text += &format!("<table><caption>{caption}</caption><tbody id={id}></tbody></table>");
        }
        text + "</div>" + TICK + "</section>"
    },
    parts: &[
        ("figures-day", Text::Own(|desk| rows(desk, "day", day))),
        (
            "figures-machine",
            Text::Own(|desk| rows(desk, "machine", machine)),
        ),
        ("figures-run", Text::Own(|desk| rows(desk, "run", run))),
        ("figures-heat", Text::Own(|desk| rows(desk, "heat", heat))),
        (
            "figures-engine",
            Text::Own(|desk| rows(desk, "engine", engine)),
        ),
        ("figures-lead", Text::Own(|desk| rows(desk, "lead", lead))),
    ],
    acts: &[],
    start: |_| (),
};

/// The rows of a table; under one of them the working that lies open.
fn rows(desk: Desk, at: &str, lines: fn(&Report) -> Vec<Line>) -> String {
    desk.aside.track();
    desk.track_later();
    desk.look(&|sheet, report| {
        let mut rows = String::new();
        for (id, what, figure, unit) in lines(report) {
            let figure = match id {
                "" => figure,
                id => opener(at, id, &figure, unit),
            };
            rows += &format!(
                "<tr><th scope=row>{what}</th><td class=figure>{figure}</td><td class=unit>{unit}</td></tr>"
            );
            if is_open(at, id) {
                let panel = panel(desk, sheet, report);
                rows += &format!("<tr class=opened><td colspan=3>{panel}</td></tr>");
            }
        }
        rows
    })
}

fn day(report: &Report) -> Vec<Line> {
    let (energy, day) = (&report.energy, &report.day);
    vec![
        (
            "energy.anchor.use_ah",
            "Used",
            figure(energy.anchor.use_ah, 0),
            "A·h",
        ),
        (
            "energy.anchor.use_wh",
            "… as energy",
            figure(energy.anchor.use_wh, 0),
            "W·h",
        ),
        (
            "energy.anchor.night_share_pct",
            "… of that at night",
            figure(energy.anchor.night_share_pct, 0),
            "%",
        ),
        (
            "energy.sun_ah",
            "From the sun",
            figure(energy.sun_ah, 0),
            "A·h",
        ),
        (
            "energy.engine_ah",
            "Left to the engine",
            figure(energy.engine_ah, 0),
            "A·h",
        ),
        (
            "energy.autonomy_days",
            "Without the engine",
            energy
                .autonomy_days
                .map_or("no end".to_string(), |days| figure(days, 1)),
            "days",
        ),
        (
            "day.engine_hours",
            "Engine",
            engine_time(day.engine_hours),
            "",
        ),
        (
            "day.fuel_l",
            "Fuel for it",
            day.fuel_l
                .map_or("–".to_string(), |litres| figure(litres, 1)),
            "L",
        ),
        (
            "day.marginal_fuel_l",
            "… while motoring anyway",
            day.marginal_fuel_l
                .map_or("–".to_string(), |litres| figure(litres, 1)),
            "L",
        ),
    ]
}

fn engine_time(hours: Option<f64>) -> String {
    match hours {
        None => "no run is long enough".to_string(),
        Some(0.0) => "none".to_string(),
        Some(hours) => clock(hours * 60.0),
    }
}

fn machine(report: &Report) -> Vec<Line> {
    let machine = &report.machine;
    let mut lines = vec![
        (
            "machine.shaft_rpm",
            "Its own speed",
            figure(machine.shaft_rpm, 0),
            "rpm",
        ),
        (
            "machine.full_cold_a",
            "Full field, as rated",
            figure(machine.full_cold_a, 0),
            "A",
        ),
        ("machine.hot_a", "Held, hot", figure(machine.hot_a, 0), "A"),
    ];
    match machine.hot {
        Some(hot) => lines.extend([
            (
                "machine.hot.winding_c",
                "… winding",
                figure(hot.winding_c, 0),
                "°C",
            ),
            (
                "machine.hot.rectifier_c",
                "… rectifier plate",
                figure(hot.rectifier_c, 0),
                "°C",
            ),
            ("machine.hot.case_c", "… case", figure(hot.case_c, 0), "°C"),
            (
                "machine.hot.air_c",
                "… air of the space",
                figure(hot.air_c, 0),
                "°C",
            ),
        ]),
        None => lines.push(("", "… temperatures", "never settle".to_string(), "")),
    }
    lines.push((
        "machine.space_air_m3h",
        "Air through the space",
        figure(machine.space_air_m3h, 0),
        "m³/h",
    ));
    lines
}

fn run(report: &Report) -> Vec<Line> {
    let run = &report.run;
    let time = |minutes: Option<f64>| minutes.map_or("not reached".to_string(), clock);
    vec![
        (
            "run.minutes_to_target",
            "To the target",
            time(run.minutes_to_target),
            "",
        ),
        ("run.minutes_to_80", "To 80 %", time(run.minutes_to_80), ""),
        ("run.minutes_to_90", "To 90 %", time(run.minutes_to_90), ""),
        (
            "run.minutes_to_100",
            "To 100 %",
            time(run.minutes_to_100),
            "",
        ),
        (
            "run.start_a",
            "Alternator, at the start",
            figure(run.start_a, 0),
            "A",
        ),
        ("run.mid_a", "… half-way", figure(run.mid_a, 0), "A"),
        (
            "run.mean_bank_a",
            "Into the bank, mean",
            figure(run.mean_bank_a, 0),
            "A",
        ),
        (
            "run.bank_energy_pct",
            "Energy kept of what went in",
            figure(run.bank_energy_pct, 0),
            "%",
        ),
        (
            "run.house_load_a",
            "House load meanwhile",
            figure(run.house_load_a, 1),
            "A",
        ),
        (
            "run.peak_shaft_w",
            "Most power at its shaft",
            figure(run.peak_shaft_w / 1000.0, 2),
            "kW",
        ),
        (
            "run.fuel_l",
            "Fuel, run for charging",
            figure(run.fuel_l, 1),
            "L",
        ),
        (
            "run.marginal_fuel_l",
            "… while motoring anyway",
            figure(run.marginal_fuel_l, 1),
            "L",
        ),
    ]
}

fn heat(report: &Report) -> Vec<Line> {
    let (run, soak) = (&report.run, &report.run.soak);
    let peak = &run.peak;
    let mut lines = vec![
        (
            "run.peak.winding_c",
            "Winding",
            figure(peak.winding_c, 0),
            "°C",
        ),
        (
            "run.peak.rectifier_c",
            "Rectifier plate",
            figure(peak.rectifier_c, 0),
            "°C",
        ),
        ("run.peak.case_c", "Case", figure(peak.case_c, 0), "°C"),
        (
            "run.peak.air_c",
            "Air of the space",
            figure(peak.air_c, 0),
            "°C",
        ),
    ];
    if let Some(second) = &run.second_peak {
        lines.extend([
            (
                "run.second_peak.winding_c",
                "Second machine, winding",
                figure(second.winding_c, 0),
                "°C",
            ),
            (
                "run.second_peak.rectifier_c",
                "… rectifier plate",
                figure(second.rectifier_c, 0),
                "°C",
            ),
            (
                "run.second_peak.case_c",
                "… case",
                figure(second.case_c, 0),
                "°C",
            ),
        ]);
    }
    if let Some(minutes) = run.air_settles_min {
        lines.push((
            "run.air_settles_min",
            "The air settles after",
            clock(minutes),
            "",
        ));
    }
    lines.extend([
        (
            "run.soak.peak.rectifier_c",
            "After stopping: rectifier",
            figure(soak.peak.rectifier_c, 0),
            "°C",
        ),
        (
            "run.soak.peak.air_c",
            "… air of the space",
            figure(soak.peak.air_c, 0),
            "°C",
        ),
        (
            "run.soak.air_peak_min",
            "… after",
            clock(soak.air_peak_min),
            "",
        ),
    ]);
    lines
}

fn engine(report: &Report) -> Vec<Line> {
    let engine = &report.engine;
    vec![
        (
            "engine.available_kw",
            "It has, at this speed",
            figure(engine.available_kw, 1),
            "kW",
        ),
        (
            "engine.peak_kw",
            "The belts take at most",
            figure(engine.peak_kw, 2),
            "kW",
        ),
        (
            "engine.peak_share_pct",
            "… of what it has",
            figure(engine.peak_share_pct, 0),
            "%",
        ),
        (
            "engine.mean_share_pct",
            "… mean of the run",
            figure(engine.mean_share_pct, 0),
            "%",
        ),
        (
            "engine.idle_l_h",
            "To turn itself",
            figure(engine.idle_l_h, 2),
            "L/h",
        ),
        (
            "engine.marginal_l_kwh",
            "For a kW·h at the shaft",
            figure(engine.marginal_l_kwh, 2),
            "L",
        ),
    ]
}

/// What flooded lead of the same ampere-hours would have done.
fn lead(report: &Report) -> Vec<Line> {
    let time = |minutes: Option<f64>| minutes.map_or("not reached".to_string(), clock);
    match &report.lead {
        None => vec![("", "This bank is of lead", "–".to_string(), "")],
        Some(lead) => vec![
            (
                "day.engine_hours",
                "Engine a day, this bank",
                engine_time(report.day.engine_hours),
                "",
            ),
            (
                "lead.engine_hours",
                "… flooded lead",
                engine_time(lead.engine_hours),
                "",
            ),
            (
                "run.minutes_to_target",
                "To the target, this bank",
                time(report.run.minutes_to_target),
                "",
            ),
            (
                "lead.minutes_to_target",
                "… flooded lead",
                time(lead.minutes_to_target),
                "",
            ),
            (
                "run.mid_bank_a",
                "Half-way, into this bank",
                figure(report.run.mid_bank_a, 0),
                "A",
            ),
            (
                "lead.mid_bank_a",
                "… into flooded lead",
                figure(lead.mid_bank_a, 0),
                "A",
            ),
        ],
    }
}
