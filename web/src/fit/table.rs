//! What the folds have in common: a table of figures in two columns, bars on a
//! rule, sentences.

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::scale::Scale;
use crate::words::{escape, figure};

/// A figure with its unit; a dash for none.
pub fn with_unit(number: Option<f64>, decimals: usize, unit: &str) -> String {
    match number {
        Some(number) => figure(number, decimals) + "\u{a0}" + unit,
        None => "–".to_string(),
    }
}

/// Two figures and their unit: "70 to 100 A".
pub fn between(low: Option<f64>, high: Option<f64>, decimals: usize, unit: &str) -> String {
    match low {
        Some(low) => figure(low, decimals) + " to " + &with_unit(high, decimals, unit),
        None => "–".to_string(),
    }
}

/// A line of a table: what, and its two figures.
pub type Line = (&'static str, String, String);

/// Figures in two columns; words of our own only.
pub fn table(caption: &str, columns: [&str; 2], lines: &[Line]) -> String {
    let [one, other] = columns;
    let mut rows = String::new();
    for (what, one, other) in lines {
        rows += &format!("<tr><th scope=row>{what}</th><td>{one}</td><td>{other}</td></tr>");
    }
    format!(
        "<table class=run><caption>{caption}</caption><thead><tr><td></td><th scope=col>{one}</th><th scope=col>{other}</th></tr></thead><tbody>{rows}</tbody></table>"
    )
}

/// Sentences under one another.
pub fn sentences<T: AsRef<str>>(all: &[T]) -> String {
    let mut list = String::from("<ul class=remarks>");
    for sentence in all {
        list += &format!("<li>{}</li>", escape(sentence.as_ref()));
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
    drawing.word("tick", (x.min(TO), 11.0), Anchor::Middle, limit_words);
    drawing.line("edge", (FROM, 18.0), (FROM, foot));
    let mut base = 33.0;
    for Bar(what, from, to, words) in bars {
        let (from, to) = (axis.place(*from), axis.place(*to));
        drawing.word("tick", (FROM - 6.0, base), Anchor::End, what);
        drawing.area("range", (from, base - 8.0), ((to - from).max(1.0), 8.0));
        drawing.word("mark-words", (to + 5.0, base), Anchor::Start, words);
        base += STEP;
    }
    drawing.line("bound", (x, 15.0), (x, foot));
    format!(
        "<svg viewBox='0 0 360 {}' aria-hidden=true>{}</svg>",
        foot + 4.0,
        drawing.finish()
    )
}
