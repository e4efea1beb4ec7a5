//! Output against engine speed: what the plate promises, and what is held hot.

use std::fmt::Write;

use ampwright_core::analysis::{MachineReport, SpeedPoint};

use super::drawing::{Anchor, Drawing};
use super::plot::{LEFT, RIGHT, WIDTH, sample};
use super::scale::Scale;
use crate::legacy::{Section, Text, written};
use crate::words::figure;

const HEIGHT: f64 = 172.0;
const FIELD: (f64, f64) = (18.0, 146.0);

/// The curves, with the engine speed of the worksheet marked.
pub const SPEED: Section = Section {
    paper: written(|| {
        format!(
            r#"<section class="chart" aria-labelledby="speed-title"><h2 id="speed-title">Amperes against engine speed</h2><p class="lead" id="speed-lead"></p>
<svg viewBox="0 0 {WIDTH} {HEIGHT}" role="img" aria-labelledby="speed-title" id="speed-plot"></svg>
<details class="finer" id="speed-fold" data-toggle="fold"><summary>The curves as a table</summary><div class="scroll" tabindex="0" role="region" aria-label="The curves as a table" id="speed-table"></div></details></section>"#
        )
    }),
    parts: &[
        (
            "speed-lead",
            Text::Late(|sheet, report| {
                let machine = &report.analyses.machine;
                format!(
                    "At {} engine rpm the alternator turns {} and holds {} A hot, of {} A cold.",
                    figure(sheet.inputs.eng.rpm, 0),
                    figure(machine.shaft_rpm, 0),
                    figure(machine.hot_a, 0),
                    figure(machine.full_cold_a, 0)
                )
            }),
        ),
        (
            "speed-plot",
            Text::Late(|sheet, report| drawing(&report.analyses.machine, sheet.inputs.eng.rpm)),
        ),
        (
            "speed-table",
            Text::Own(|desk| {
                desk.tell_open("speed-fold", |_, report| table(&report.analyses.machine))
            }),
        ),
    ],
    acts: &[],
    start: |_| (),
};

fn drawing(machine: &MachineReport, rpm: f64) -> String {
    let points = &machine.by_engine_rpm;
    let (Some(first), Some(last)) = (points.first(), points.last()) else {
        return String::new();
    };
    let most_a = points.iter().map(|point| point.cold_a).fold(10.0, f64::max);
    let across = Scale::new(first.engine_rpm, last.engine_rpm, LEFT, RIGHT);
    let up = Scale::rounded(0.0, most_a, FIELD.1, FIELD.0);
    let mut drawing = Drawing::default();
    for tick in up.ticks(4.0) {
        let y = up.place(tick);
        drawing.line("rule", (LEFT, y), (RIGHT, y));
        drawing.word("tick", (LEFT - 4.0, y + 3.5), Anchor::End, &figure(tick, 0));
    }
    for tick in across.ticks(5.0) {
        let x = across.place(tick);
        drawing.line("rule", (x, FIELD.0), (x, FIELD.1));
        let anchor = if x > RIGHT - 8.0 {
            Anchor::End
        } else {
            Anchor::Middle
        };
        drawing.word("tick", (x, FIELD.1 + 13.0), anchor, &figure(tick, 0));
    }
    drawing.line("edge", (LEFT, FIELD.1), (RIGHT, FIELD.1));
    drawing.word("unit", (LEFT - 4.0, FIELD.0 - 6.0), Anchor::End, "A");
    drawing.word("unit", (RIGHT, HEIGHT - 2.0), Anchor::End, "engine rpm");
    let line = |get: fn(&SpeedPoint) -> f64| {
        let mut path = String::new();
        for point in points {
            let letter = if path.is_empty() { 'M' } else { 'L' };
            let (x, y) = (across.place(point.engine_rpm), up.place(get(point)));
            // Writing to a String cannot fail.
            let _ = write!(path, "{letter}{x:.1} {y:.1}");
        }
        path
    };
    drawing.path("line third", &line(|point| point.cold_a));
    drawing.path("line first", &line(|point| point.hot_a));
    let next = sample(&mut drawing, (LEFT, FIELD.0 - 7.0), "first", "held hot");
    sample(
        &mut drawing,
        (next, FIELD.0 - 7.0),
        "third",
        "at full field, cold",
    );
    if (across.low..=across.high).contains(&rpm) {
        let (x, y) = (across.place(rpm), up.place(machine.hot_a));
        drawing.line("cursor", (x, FIELD.0), (x, FIELD.1));
        drawing.path("dots", &format!("M{x:.1} {y:.1}h0"));
    }
    drawing.finish()
}

/// The same figures, written as text: all of them our own.
fn table(machine: &MachineReport) -> String {
    let rows: String = machine
        .by_engine_rpm
        .iter()
        .map(|point| {
            format!(
                "<tr><th scope=row>{}</th><td>{}</td><td>{}</td></tr>",
                figure(point.engine_rpm, 0),
                figure(point.hot_a, 0),
                figure(point.cold_a, 0)
            )
        })
        .collect();
    format!(
        "<table class=run><thead><tr><th scope=col>Engine rpm</th><th scope=col>Held hot, A</th><th scope=col>Full field cold, A</th></tr></thead><tbody>{rows}</tbody></table>"
    )
}
