//! The drawing: three fields of lines over one time axis, and a band that
//! shows what limits when. Lines differ by their strokes, not by colour alone.

use std::fmt::Write;

use ampwright_core::charge::Limit;
use ampwright_core::report::{Moment, RunReport};
use leptos::prelude::*;

use super::scale::Scale;
use crate::words::{axis_time, figure};

/// Width of the drawing, in its own units.
pub const WIDTH: f64 = 360.0;
/// Height of the drawing.
pub const HEIGHT: f64 = 424.0;
/// Where the fields begin and end across.
pub const LEFT: f64 = 34.0;
pub const RIGHT: f64 = 352.0;

const AMPS: (f64, f64) = (18.0, 128.0);
const HEAT: (f64, f64) = (158.0, 288.0);
const CHARGE: (f64, f64) = (318.0, 372.0);
const BAND: (f64, f64) = (380.0, 398.0);

/// A line of a field: class, name, and the figure it draws.
type Line = (&'static str, &'static str, fn(&Moment) -> f64);

const AMPS_LINES: [Line; 2] = [
    ("first", "alternator", |m| m.alternator_a),
    ("second", "into the bank", |m| m.bank_a),
];
const HEAT_LINES: [Line; 4] = [
    ("first", "winding", |m| m.winding_c),
    ("third", "rectifier", |m| m.rectifier_c),
    ("second", "case", |m| m.case_c),
    ("fourth", "air", |m| m.air_c),
];
const CHARGE_LINES: [Line; 1] = [("first", "state of charge", |m| m.charge_pct)];

/// The time axis of a run.
pub fn time_scale(run: &RunReport) -> Scale {
    Scale::new(0.0, run.minutes, LEFT, RIGHT)
}

/// Everything but the cursor.
pub fn plot(run: &RunReport, marks: &[(f64, &'static str)]) -> impl IntoView + use<> {
    let time = time_scale(run);
    let most_a = highest(run, &AMPS_LINES).max(10.0);
    let least_a = lowest(run, &AMPS_LINES).min(0.0);
    let amps = Scale::rounded(least_a, most_a, AMPS.1, AMPS.0);
    let most_c = highest(run, &HEAT_LINES);
    let marks: Vec<_> = marks
        .iter()
        .copied()
        .filter(|(celsius, _)| *celsius < most_c + 25.0)
        .collect();
    let top_c = marks.iter().map(|mark| mark.0).fold(most_c, f64::max);
    let heat = Scale::rounded(lowest(run, &HEAT_LINES), top_c, HEAT.1, HEAT.0);
    let charge = Scale::new(0.0, 100.0, CHARGE.1, CHARGE.0);
    let mark_lines = marks
        .into_iter()
        .map(|(celsius, words)| {
            let y = heat.place(celsius);
            view! {
                <line class="mark-line" x1=LEFT x2=RIGHT y1=y y2=y></line>
                <text class="mark-words" x=RIGHT y=y - 2.5 text-anchor="end">{format!("{words} {}", figure(celsius, 0))}</text>
            }
        })
        .collect_view();
    view! {
        {grid(&time, &amps, AMPS, "A", 4.0)}
        {lines(run, &time, &amps, &AMPS_LINES)}
        {legend(&AMPS_LINES, AMPS.0)}
        {grid(&time, &heat, HEAT, "°C", 5.0)}
        {lines(run, &time, &heat, &HEAT_LINES)}
        {mark_lines}
        {legend(&HEAT_LINES, HEAT.0)}
        {grid(&time, &charge, CHARGE, "%", 2.0)}
        {lines(run, &time, &charge, &CHARGE_LINES)}
        {legend(&CHARGE_LINES, CHARGE.0)}
        {band(run, &time)}
        {time.time_ticks(6.0).into_iter().map(|minute| view! {
            <text class="tick" x=time.place(minute) y=HEIGHT - 12.0 text-anchor="middle">{axis_time(minute)}</text>
        }).collect_view()}
    }
}

fn highest(run: &RunReport, lines: &[Line]) -> f64 {
    figures(run, lines).fold(f64::MIN, f64::max)
}

fn lowest(run: &RunReport, lines: &[Line]) -> f64 {
    figures(run, lines).fold(f64::MAX, f64::min)
}

fn figures<'a>(run: &'a RunReport, lines: &'a [Line]) -> impl Iterator<Item = f64> + 'a {
    lines
        .iter()
        .flat_map(|(_, _, get)| run.series.iter().map(get))
}

/// Lines of a field at its ticks, and the figures beside it.
pub fn grid(
    time: &Scale,
    scale: &Scale,
    field: (f64, f64),
    unit: &'static str,
    count: f64,
) -> impl IntoView + use<> {
    let (top, bottom) = field;
    let across = scale
        .ticks(count)
        .into_iter()
        .map(|tick| {
            let y = scale.place(tick);
            view! {
                <line class="rule" x1=LEFT x2=RIGHT y1=y y2=y></line>
                <text class="tick" x=LEFT - 4.0 y=y + 3.5 text-anchor="end">{figure(tick, 0)}</text>
            }
        })
        .collect_view();
    let down = time
        .time_ticks(6.0)
        .into_iter()
        .map(|minute| {
            let x = time.place(minute);
            view! { <line class="rule" x1=x x2=x y1=top y2=bottom></line> }
        })
        .collect_view();
    view! {
        {across}
        {down}
        <line class="edge" x1=LEFT x2=RIGHT y1=bottom y2=bottom></line>
        <text class="unit" x=LEFT - 4.0 y=top - 6.0 text-anchor="end">{unit}</text>
    }
}

fn lines(run: &RunReport, time: &Scale, scale: &Scale, lines: &[Line]) -> impl IntoView + use<> {
    lines
        .iter()
        .map(|(class, _, get)| {
            let mut path = String::new();
            for (at, moment) in run.series.iter().enumerate() {
                let letter = if at == 0 { 'M' } else { 'L' };
                // Writing to a String cannot fail.
                let _ = write!(
                    path,
                    "{letter}{:.1} {:.1}",
                    time.place(moment.minute),
                    scale.place(get(moment))
                );
            }
            view! { <path class=format!("line {class}") d=path></path> }
        })
        .collect_view()
}

/// Stroke samples and names, in a row above a field.
fn legend(lines: &[Line], top: f64) -> impl IntoView + use<> {
    let y = top - 7.0;
    let mut x = LEFT;
    lines
        .iter()
        .map(|(class, name, _)| {
            let from = x;
            x += 28.0 + 5.2 * name.len() as f64;
            view! {
                <line class=format!("line {class}") x1=from x2=from + 16.0 y1=y y2=y></line>
                <text class="name" x=from + 19.0 y=y + 3.5>{*name}</text>
            }
        })
        .collect_view()
}

fn band(run: &RunReport, time: &Scale) -> impl IntoView + use<> {
    let (top, bottom) = BAND;
    run.stretches
        .iter()
        .map(|stretch| {
            let from = time.place(stretch.from_min);
            let width = (time.place(stretch.to_min) - from).max(0.5);
            let word = stretch.limit.short();
            let fits = width > 6.0 * word.len() as f64 + 6.0;
            view! {
                <rect class=format!("limit {}", limit_class(stretch.limit)) x=from y=top width=width height=bottom - top></rect>
                {fits.then(|| view! {
                    <text class="limit-word" x=from + 0.5 * width y=bottom - 5.5 text-anchor="middle">{word}</text>
                })}
            }
        })
        .collect_view()
}

/// Class of a limit in the band.
pub fn limit_class(limit: Limit) -> &'static str {
    match limit {
        Limit::Machine => "machine",
        Limit::CurrentCap | Limit::Ramp | Limit::LowSpeed => "cap",
        Limit::Temperature => "heat",
        Limit::BankLimit => "bank",
        Limit::ChargeVoltage => "voltage",
        Limit::Converter => "converter",
    }
}
