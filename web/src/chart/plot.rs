//! What drawings of sections that are still text share.

use super::drawing::{Anchor, Drawing};
use super::scale::Scale;
pub use crate::components::chart::{LEFT, RIGHT, WIDTH};
use crate::words::{axis_time, figure};

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

/// A stroke sample and its name; where the next one may begin.
pub fn sample(drawing: &mut Drawing, at: (f64, f64), class: &str, name: &str) -> f64 {
    let (x, y) = at;
    drawing.line(&format!("line {class}"), (x, y), (x + 16.0, y));
    drawing.word("name", (x + 19.0, y + 3.5), Anchor::Start, name);
    x + 28.0 + 5.2 * name.len() as f64
}
