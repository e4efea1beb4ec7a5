//! The drawing: three fields of lines over one time axis, and a band that
//! shows what limits when. Lines differ by their strokes, not by colour alone.

use ampwright_core::analysis::{Moment, RunReport};
use ampwright_core::simulation::Limit;
use ampwright_core::text::words;

use super::drawing::{Anchor, Drawing, tenths};
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
    ("first", "winding", |m| m.alternators[0].winding_c),
    ("third", "rectifier", |m| m.alternators[0].rectifier_c),
    ("second", "case", |m| m.alternators[0].case_c),
    ("fourth", "air", |m| m.air_c),
];
const CHARGE_LINES: [Line; 1] = [("first", "state of charge", |m| m.charge_pct)];

/// The time axis of a run.
pub fn time_scale(run: &RunReport) -> Scale {
    Scale::new(0.0, run.minutes, LEFT, RIGHT)
}

/// Everything but the cursor.
pub fn plot(run: &RunReport, marks: &[(f64, &'static str)]) -> String {
    let time = time_scale(run);
    let most_a = highest(run, &AMPS_LINES).max(10.0);
    let least_a = lowest(run, &AMPS_LINES).min(0.0);
    let amps = Scale::rounded(least_a, most_a, AMPS.1, AMPS.0);
    let most_c = highest(run, &HEAT_LINES);
    let near = |mark: &&(f64, &str)| mark.0 < most_c + 25.0;
    let top_c = marks
        .iter()
        .filter(near)
        .map(|mark| mark.0)
        .fold(most_c, f64::max);
    let heat = Scale::rounded(lowest(run, &HEAT_LINES), top_c, HEAT.1, HEAT.0);
    let charge = Scale::new(0.0, 100.0, CHARGE.1, CHARGE.0);
    let mut drawing = Drawing::default();
    let mut field = |scale: &Scale, field: (f64, f64), unit: &str, count: f64, lines: &[Line]| {
        grid(&mut drawing, &time, scale, field, unit, count);
        for (class, _, get) in lines {
            drawing.path(&format!("line {class}"), &path(run, &time, scale, *get));
        }
        legend(&mut drawing, lines, field.0);
    };
    field(&amps, AMPS, "A", 4.0, &AMPS_LINES);
    field(&heat, HEAT, "°C", 5.0, &HEAT_LINES);
    field(&charge, CHARGE, "%", 2.0, &CHARGE_LINES);
    for (celsius, words) in marks.iter().filter(near) {
        mark(
            &mut drawing,
            heat.place(*celsius),
            &format!("{words} {}", figure(*celsius, 0)),
        );
    }
    if let Some(opening) = &run.opening {
        disconnects(&mut drawing, time.place(opening.after_s / 60.0));
    }
    band(&mut drawing, run, &time);
    minutes(&mut drawing, &time, HEIGHT - 12.0);
    drawing.finish()
}

/// Where the battery disconnects: what follows is as if it had not.
fn disconnects(drawing: &mut Drawing, x: f64) {
    drawing.line("mark-line open", (x, AMPS.0), (x, BAND.1));
    let (at, anchor) = match x < 0.5 * (LEFT + RIGHT) {
        true => (x + 4.0, Anchor::Start),
        false => (x - 4.0, Anchor::End),
    };
    let place = (at, AMPS.1 - 6.0);
    drawing.word(
        "mark-words open",
        place,
        anchor,
        "the battery disconnects here",
    );
}

/// A level worth knowing.
pub fn mark(drawing: &mut Drawing, y: f64, words: &str) {
    drawing.line("mark-line", (LEFT, y), (RIGHT, y));
    drawing.word("mark-words", (RIGHT, y - 2.5), Anchor::End, words);
}

/// Times along the bottom.
pub fn minutes(drawing: &mut Drawing, time: &Scale, y: f64) {
    for minute in time.time_ticks(6.0) {
        let x = time.place(minute);
        let anchor = if x > RIGHT - 8.0 {
            Anchor::End
        } else {
            Anchor::Middle
        };
        drawing.word("tick", (x, y), anchor, &axis_time(minute));
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
    drawing: &mut Drawing,
    time: &Scale,
    scale: &Scale,
    field: (f64, f64),
    unit: &str,
    count: f64,
) {
    let (top, bottom) = field;
    for tick in scale.ticks(count) {
        let y = scale.place(tick);
        drawing.line("rule", (LEFT, y), (RIGHT, y));
        drawing.word("tick", (LEFT - 4.0, y + 3.5), Anchor::End, &figure(tick, 0));
    }
    for minute in time.time_ticks(6.0) {
        let x = time.place(minute);
        drawing.line("rule", (x, top), (x, bottom));
    }
    drawing.line("edge", (LEFT, bottom), (RIGHT, bottom));
    drawing.word("unit", (LEFT - 4.0, top - 6.0), Anchor::End, unit);
}

fn path(run: &RunReport, time: &Scale, scale: &Scale, get: fn(&Moment) -> f64) -> String {
    let mut path = String::new();
    for (at, moment) in run.series.iter().enumerate() {
        let letter = if at == 0 { 'M' } else { 'L' };
        let (x, y) = (time.place(moment.minute), scale.place(get(moment)));
        path.push(letter);
        tenths(&mut path, x);
        path.push(' ');
        tenths(&mut path, y);
    }
    path
}

/// A stroke sample and its name; where the next one may begin.
pub fn sample(drawing: &mut Drawing, at: (f64, f64), class: &str, name: &str) -> f64 {
    let (x, y) = at;
    drawing.line(&format!("line {class}"), (x, y), (x + 16.0, y));
    drawing.word("name", (x + 19.0, y + 3.5), Anchor::Start, name);
    x + 28.0 + 5.2 * name.len() as f64
}

/// Stroke samples and names, in a row above a field.
fn legend(drawing: &mut Drawing, lines: &[Line], top: f64) {
    let mut x = LEFT;
    for (class, name, _) in lines {
        x = sample(drawing, (x, top - 7.0), class, name);
    }
}

fn band(drawing: &mut Drawing, run: &RunReport, time: &Scale) {
    let (top, bottom) = BAND;
    for stretch in &run.stretches {
        let from = time.place(stretch.from_min);
        let width = (time.place(stretch.to_min) - from).max(0.5);
        let (class, word) = (limit_class(stretch.limit), words::limit(stretch.limit));
        drawing.area(
            &format!("limit {class}"),
            (from, top),
            (width, bottom - top),
        );
        if width > 6.0 * word.len() as f64 + 6.0 {
            let middle = (from + 0.5 * width, bottom - 5.5);
            drawing.word("limit-word", middle, Anchor::Middle, word);
        }
    }
}

/// Class of a limit in the band.
fn limit_class(limit: Limit) -> &'static str {
    match limit {
        Limit::AlternatorOutput | Limit::WrongVoltage => "machine",
        Limit::CurrentCap | Limit::Ramp | Limit::LowSpeed => "cap",
        Limit::Temperature => "heat",
        Limit::BankLimit => "bank",
        Limit::ChargeVoltage => "voltage",
        Limit::Converter => "converter",
    }
}
