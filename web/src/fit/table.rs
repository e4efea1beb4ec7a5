//! What the folds have in common: a table of figures in two columns, bars on a
//! rule, sentences.

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::scale::Scale;
use crate::words::{escape, figure};

/// A figure with its unit.
pub fn with_unit(number: f64, decimals: usize, unit: &str) -> String {
    let space = if unit == "°" { "" } else { "\u{a0}" };
    figure(number, decimals) + space + unit
}

/// A figure of a table, or a range of two.
pub type Cell = (Option<f64>, Option<f64>);

/// A line of a table: what, its figures, decimals and units.
pub struct Line(
    pub &'static str,
    pub [Cell; 2],
    pub usize,
    pub [&'static str; 2],
);

/// A line of one figure for each column.
pub fn line(
    what: &'static str,
    figures: [Option<f64>; 2],
    decimals: usize,
    unit: &'static str,
) -> Line {
    Line(
        what,
        figures.map(|figure| (figure, None)),
        decimals,
        [unit; 2],
    )
}

/// A figure with its unit, or a range; a dash for none.
pub fn in_words((low, high): Cell, decimals: usize, unit: &str) -> String {
    match (low, high) {
        (Some(low), Some(high)) => {
            figure(low, decimals) + " to " + &with_unit(high, decimals, unit)
        }
        (Some(low), None) => with_unit(low, decimals, unit),
        _ => "–".to_string(),
    }
}

/// Figures in two columns, without the lines that have none.
pub fn table(caption: &str, columns: [&str; 2], lines: &[Line]) -> String {
    let [one, other] = columns;
    let mut text = format!(
        "<table class=run><caption>{caption}</caption><thead><tr><td></td><th scope=col>{one}</th><th scope=col>{other}</th></tr></thead><tbody>"
    );
    for Line(what, cells, decimals, units) in lines {
        if cells.iter().all(|cell| cell.0.is_none()) {
            continue;
        }
        text += &format!("<tr><th scope=row>{what}</th>");
        for (cell, unit) in cells.iter().zip(units) {
            text += &format!("<td>{}</td>", in_words(*cell, *decimals, unit));
        }
    }
    text + "</tbody></table>"
}

/// A sentence of a list of them.
pub fn sentence(text: &str) -> String {
    format!("<li>{}</li>", escape(text))
}

/// Sentences under one another.
pub fn sentences(all: &[String]) -> String {
    let mut list = String::from("<ul class=remarks>");
    for text in all {
        list += &sentence(text);
    }
    list + "</ul>"
}

/// A bar: what it is, from where to where, and its figure in words.
pub struct Bar(pub &'static str, pub f64, pub f64, pub String);

/// Bars under one another, and across them all the most that is allowed. The
/// same figures stand in words beside it.
pub fn bars(limit: f64, limit_words: &str, bars: &[Bar]) -> String {
    const FROM: f64 = 106.0;
    const TO: f64 = 292.0;
    const STEP: f64 = 19.0;
    let most = bars.iter().fold(limit, |most, bar| most.max(bar.2));
    let axis = Scale::new(0.0, most, FROM, TO);
    let foot = 20.0 + STEP * bars.len() as f64;
    let x = axis.place(limit);
    let mut drawing = Drawing::default();
    drawing.word("tick", (x, 11.0), Anchor::Middle, limit_words);
    drawing.line("edge", (FROM, 18.0), (FROM, foot));
    drawing.line("bound", (x, 15.0), (x, foot));
    let mut base = 33.0;
    for Bar(what, from, to, words) in bars {
        let (from, to) = (axis.place(*from), axis.place(*to));
        drawing.word("tick", (FROM - 6.0, base), Anchor::End, what);
        drawing.area("range", (from, base - 8.0), ((to - from).max(1.0), 8.0));
        drawing.word("tick", (to + 5.0, base), Anchor::Start, words);
        base += STEP;
    }
    format!(
        "<svg viewBox='0 0 360 {}' aria-hidden=true>{}</svg>",
        foot + 4.0,
        drawing.finish()
    )
}
