//! The results as tables of figures.

use ampwright_core::report::{Report, clock};

use crate::paper::{Section, Text, written};
use crate::words::figure;

/// A line of a table: what, figure, unit.
type Line = (&'static str, String, &'static str);

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
    paper: written(|| {
        let mut text = r#"<section class="figures" aria-labelledby="figures-title"><h2 id="figures-title">Figures</h2><div class="tables">"#.to_string();
        for (caption, id) in TABLES {
            text += &format!("<table><caption>{caption}</caption><tbody id={id}></tbody></table>");
        }
        text + "</div></section>"
    }),
    parts: &[
        ("figures-day", Text::Late(|_, report| rows(day(report)))),
        (
            "figures-machine",
            Text::Late(|_, report| rows(machine(report))),
        ),
        ("figures-run", Text::Late(|_, report| rows(run(report)))),
        ("figures-heat", Text::Late(|_, report| rows(heat(report)))),
        (
            "figures-engine",
            Text::Late(|_, report| rows(engine(report))),
        ),
        ("figures-lead", Text::Late(|_, report| rows(lead(report)))),
    ],
    acts: &[],
    start: |_| (),
};

fn rows(lines: Vec<Line>) -> String {
    let mut rows = String::new();
    for (what, figure, unit) in lines {
        rows += &format!(
            "<tr><th scope=row>{what}</th><td class=figure>{figure}</td><td class=unit>{unit}</td></tr>"
        );
    }
    rows
}

fn day(report: &Report) -> Vec<Line> {
    let (energy, day) = (&report.energy, &report.day);
    vec![
        ("Used", figure(energy.anchor.use_ah, 0), "A·h"),
        ("… as energy", figure(energy.anchor.use_wh, 0), "W·h"),
        (
            "… of that at night",
            figure(energy.anchor.night_share_pct, 0),
            "%",
        ),
        ("From the sun", figure(energy.sun_ah, 0), "A·h"),
        ("Left to the engine", figure(energy.engine_ah, 0), "A·h"),
        (
            "Without the engine",
            energy
                .autonomy_days
                .map_or("no end".to_string(), |days| figure(days, 1)),
            "days",
        ),
        ("Engine", engine_time(day.engine_hours), ""),
        (
            "Fuel for it",
            day.fuel_l
                .map_or("–".to_string(), |litres| figure(litres, 1)),
            "L",
        ),
        (
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
        ("Its own speed", figure(machine.shaft_rpm, 0), "rpm"),
        ("Full field, as rated", figure(machine.full_cold_a, 0), "A"),
        ("Held, hot", figure(machine.hot_a, 0), "A"),
    ];
    match machine.hot {
        Some(hot) => lines.extend([
            ("… winding", figure(hot.winding_c, 0), "°C"),
            ("… rectifier plate", figure(hot.rectifier_c, 0), "°C"),
            ("… case", figure(hot.case_c, 0), "°C"),
            ("… air of the space", figure(hot.air_c, 0), "°C"),
        ]),
        None => lines.push(("… temperatures", "never settle".to_string(), "")),
    }
    lines.push((
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
        ("To the target", time(run.minutes_to_target), ""),
        ("To 80 %", time(run.minutes_to_80), ""),
        ("To 90 %", time(run.minutes_to_90), ""),
        ("To 100 %", time(run.minutes_to_100), ""),
        ("Alternator, at the start", figure(run.start_a, 0), "A"),
        ("… half-way", figure(run.mid_a, 0), "A"),
        ("Into the bank, mean", figure(run.mean_bank_a, 0), "A"),
        (
            "Energy kept of what went in",
            figure(run.bank_energy_pct, 0),
            "%",
        ),
        ("House load meanwhile", figure(run.house_load_a, 1), "A"),
        (
            "Most power at its shaft",
            figure(run.peak_shaft_w / 1000.0, 2),
            "kW",
        ),
        ("Fuel, run for charging", figure(run.fuel_l, 1), "L"),
        (
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
        ("Winding", figure(peak.winding_c, 0), "°C"),
        ("Rectifier plate", figure(peak.rectifier_c, 0), "°C"),
        ("Case", figure(peak.case_c, 0), "°C"),
        ("Air of the space", figure(peak.air_c, 0), "°C"),
    ];
    if let Some(second) = &run.second_peak {
        lines.extend([
            ("Second machine, winding", figure(second.winding_c, 0), "°C"),
            ("… rectifier plate", figure(second.rectifier_c, 0), "°C"),
            ("… case", figure(second.case_c, 0), "°C"),
        ]);
    }
    if let Some(minutes) = run.air_settles_min {
        lines.push(("The air settles after", clock(minutes), ""));
    }
    lines.extend([
        (
            "After stopping: rectifier",
            figure(soak.peak.rectifier_c, 0),
            "°C",
        ),
        ("… air of the space", figure(soak.peak.air_c, 0), "°C"),
        ("… after", clock(soak.air_peak_min), ""),
    ]);
    lines
}

fn engine(report: &Report) -> Vec<Line> {
    let engine = &report.engine;
    vec![
        (
            "It has, at this speed",
            figure(engine.available_kw, 1),
            "kW",
        ),
        ("The belts take at most", figure(engine.peak_kw, 2), "kW"),
        ("… of what it has", figure(engine.peak_share_pct, 0), "%"),
        ("… mean of the run", figure(engine.mean_share_pct, 0), "%"),
        ("To turn itself", figure(engine.idle_l_h, 2), "L/h"),
        (
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
        None => vec![("This bank is of lead", "–".to_string(), "")],
        Some(lead) => vec![
            (
                "Engine a day, this bank",
                engine_time(report.day.engine_hours),
                "",
            ),
            ("… flooded lead", engine_time(lead.engine_hours), ""),
            (
                "To the target, this bank",
                time(report.run.minutes_to_target),
                "",
            ),
            ("… flooded lead", time(lead.minutes_to_target), ""),
            (
                "Half-way, into this bank",
                figure(report.run.mid_bank_a, 0),
                "A",
            ),
            ("… into flooded lead", figure(lead.mid_bank_a, 0), "A"),
        ],
    }
}
