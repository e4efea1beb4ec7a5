//! The charging run as a chart: a finger, the mouse or the keyboard reads off
//! a moment, and the same figures stand in a table behind it.

pub(crate) mod drawing;
pub(crate) mod plot;
mod reading;
pub(crate) mod scale;
mod speed;

use ampwright_core::Worksheet;
use ampwright_core::analysis::{Moment, RunReport};
use ampwright_core::boat::RegulatorKind;
use ampwright_core::schema::parse_number;
use ampwright_core::text::words;
use ampwright_core::units::clock;
use leptos::prelude::*;
use leptos::web_sys::{Element, Event, KeyboardEvent, PointerEvent};
use wasm_bindgen::JsCast;

use crate::desk::{Desk, count};
use crate::paper::{Section, Text, value, written};
use crate::words::figure;
use crate::working::opened;
use reading::reading;
pub use speed::SPEED;

use plot::{HEIGHT, LEFT, RIGHT, WIDTH, plot, time_scale};

/// The chart with its reading line and table.
pub const RUN: Section = Section {
    paper: written(|| {
        format!(
            r#"<section class="chart" aria-labelledby="chart-title"><h2 id="chart-title"></h2><p class="lead" id="run-lead"></p>
<svg viewBox="0 0 {WIDTH} {HEIGHT}" role="img" aria-labelledby="chart-title" data-pointerdown="read-off" data-pointermove="read-off"><g id="run-plot"></g><g id="run-cursor"></g></svg>
<label class="reading-label" for="reading">Read off at</label>
<input id="reading" type="range" min="0" max="100" step="any" data-input="slide" data-keydown="step">
<dl class="reading" id="reading-values"></dl><div id="reading-working"></div>
<details class="finer" id="run-fold" data-toggle="fold"><summary>The run as a table</summary><div class="scroll" tabindex="0" role="region" aria-label="The run as a table" id="run-table"></div></details></section>"#
        )
    }),
    parts: &[
        (
            "chart-title",
            Text::Soon(|sheet, _| {
                let run = &sheet.inputs.run;
                format!("The charging run, {} to {} %", run.from_pct, run.to_pct)
            }),
        ),
        (
            "run-lead",
            Text::Late(|_, report| shares(&report.analyses.run)),
        ),
        (
            "run-plot",
            Text::Late(|sheet, report| plot(&report.analyses.run, &marks(sheet))),
        ),
        (
            "run-cursor",
            Text::Own(|desk| {
                with_moment(desk, |run, moment| {
                    let x = time_scale(run).place(moment.minute);
                    format!(
                        "<line class=cursor x1={x:.1} x2={x:.1} y1=14 y2={} />",
                        HEIGHT - 24.0
                    )
                })
            }),
        ),
        (
            "reading@value",
            Text::Own(|desk| (desk.reading.get() * 100.0).to_string()),
        ),
        (
            "reading@aria-valuetext",
            Text::Own(|desk| with_moment(desk, |_, moment| clock(moment.minute))),
        ),
        (
            "reading-values",
            Text::Own(|desk| {
                desk.aside.track();
                with_moment(desk, |_, moment| reading(moment))
            }),
        ),
        ("reading-working", Text::Own(|desk| opened(desk, "reading"))),
        (
            "run-table",
            Text::Own(|desk| desk.tell_open("run-fold", |_, report| table(&report.analyses.run))),
        ),
    ],
    acts: &[
        ("read-off", read_off),
        ("slide", |desk, slider, _| {
            if let Some(percent) = parse_number(&value(slider)) {
                desk.reading.set(percent / 100.0);
            }
        }),
        ("step", step),
        ("fold", |desk, _, _| count(desk.aside)),
    ],
    start: |_| (),
};

fn marks(sheet: &Worksheet) -> Vec<(f64, &'static str)> {
    let mut marks = vec![(sheet.inputs.alt.class.limit_c(), "winding limit")];
    if sheet.inputs.reg.kind == RegulatorKind::External {
        marks.push((sheet.inputs.reg.set_point_c, "set-point"));
    }
    marks
}

/// A text about the moment that is read off.
fn with_moment(desk: Desk, text: fn(&RunReport, &Moment) -> String) -> String {
    desk.track_later();
    let at = desk.reading.get();
    desk.report.with_untracked(|report| {
        let run = &report.analyses.run;
        nearest(run, at * run.minutes).map_or(String::new(), |moment| text(run, moment))
    })
}

/// The place of a finger, or of the mouse, on the time axis.
fn read_off(desk: Desk, drawing: &Element, event: &Event) {
    let event = event.unchecked_ref::<PointerEvent>();
    if event.type_() == "pointermove" && event.buttons() == 0 && event.pointer_type() != "mouse" {
        return;
    }
    let place = drawing.get_bounding_client_rect();
    if place.width() > 0.0 {
        let across = (f64::from(event.client_x()) - place.left()) / place.width() * WIDTH;
        desk.reading
            .set(((across - LEFT) / (RIGHT - LEFT)).clamp(0.0, 1.0));
    }
}

/// Arrow keys go from moment to moment.
fn step(desk: Desk, _: &Element, event: &Event) {
    let by: isize = match event.unchecked_ref::<KeyboardEvent>().key().as_str() {
        "ArrowRight" | "ArrowUp" => 1,
        "ArrowLeft" | "ArrowDown" => -1,
        _ => return,
    };
    event.prevent_default();
    let at = desk.reading.get_untracked();
    let next = desk.report.with_untracked(|report| {
        let run = &report.analyses.run;
        let here = nearest_at(run, at * run.minutes)?;
        let last = run.series.len().saturating_sub(1);
        let next = here.saturating_add_signed(by).min(last);
        let moment = run.series.get(next)?;
        Some(moment.minute / run.minutes.max(1e-9))
    });
    if let Some(next) = next {
        desk.reading.set(next);
    }
}

fn nearest_at(run: &RunReport, minute: f64) -> Option<usize> {
    let distance = |moment: &Moment| (moment.minute - minute).abs();
    (0..run.series.len())
        .min_by(|a, b| distance(&run.series[*a]).total_cmp(&distance(&run.series[*b])))
}

fn nearest(run: &RunReport, minute: f64) -> Option<&Moment> {
    nearest_at(run, minute).and_then(|at| run.series.get(at))
}

/// The minute that is read off at a share of the run.
pub fn minute(run: &RunReport, at: f64) -> f64 {
    nearest(run, at * run.minutes).map_or(0.0, |moment| moment.minute)
}

/// "Limited by alternator temperature 78 %, alternator output 22 %."
fn shares(run: &RunReport) -> String {
    if run.limit_shares.is_empty() {
        return "There is nothing to charge.".to_string();
    }
    let parts: Vec<String> = run
        .limit_shares
        .iter()
        .map(|share| {
            format!(
                "{} {} %",
                words::limited_by(share.limit),
                figure(share.share_pct, 0)
            )
        })
        .collect();
    format!("Limited by {}.{}", parts.join(", "), opening(run))
}

/// When the battery disconnects, and what the drawing then is.
fn opening(run: &RunReport) -> String {
    let Some(opening) = &run.opening else {
        return String::new();
    };
    let after = match opening.after_s {
        seconds if seconds < 60.0 => format!("{} s", figure(seconds, 0)),
        seconds => clock(seconds / 60.0),
    };
    format!(
        " After {after} the battery management system disconnects the bank; from there on the chart shows what would flow if it stayed connected."
    )
}

// What follows is written as text, figures and words of our own only.

/// The same figures as a table, some twenty rows of them.
fn table(run: &RunReport) -> String {
    const HEADS: [&str; 8] = [
        "After",
        "Alt. A",
        "Bank A",
        "Full %",
        "Wind. °C",
        "Case °C",
        "Air °C",
        "Limited by",
    ];
    let every = (run.series.len() / 20).max(1);
    let last = run.series.len().saturating_sub(1);
    let heads = HEADS
        .map(|head| format!("<th scope=col>{head}</th>"))
        .concat();
    let mut text = format!("<table class=run><thead><tr>{heads}</tr></thead><tbody>");
    for (at, m) in run.series.iter().enumerate() {
        if at % every != 0 && at != last {
            continue;
        }
        let figures = [
            m.alternator_a,
            m.bank_a,
            m.charge_pct,
            m.winding_c,
            m.case_c,
            m.air_c,
        ];
        let cells = figures
            .map(|number| format!("<td>{}</td>", figure(number, 0)))
            .concat();
        text += &format!(
            "<tr><th scope=row>{}</th>{cells}<td>{}</td></tr>",
            clock(m.minute),
            words::limit(m.limit)
        );
    }
    text + "</tbody></table>"
}
