//! The picture of the README: how wide ranges are, and how often they hold the truth.

use std::fmt::Write;
use std::{fs, io};

use crate::coverage::Coverage;

/// Where the middle of a range lies across, and how wide a per cent of it is.
const MIDDLE: f64 = 400.0;
const PERCENT: f64 = 4.0;

/// A group of boats before and after a trial.
pub struct Group {
    /// What they are called.
    pub name: &'static str,
    pub before: Coverage,
    pub after: Coverage,
}

/// Writes the picture beside the others.
pub fn write(groups: &[Group]) -> io::Result<()> {
    let high = 60 + 84 * groups.len();
    let mut svg = format!(
        r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 760 {high}" font-family="serif" font-size="14"><rect width="760" height="{high}" fill="#f8f4e9"/>"##
    );
    for (at, group) in groups.iter().enumerate() {
        let top = 30.0 + 84.0 * at as f64;
        text(&mut svg, 12.0, top, group.name);
        bar(
            &mut svg,
            top + 10.0,
            "before a trial",
            &group.before,
            "#b9b09a",
        );
        bar(&mut svg, top + 38.0, "after one", &group.after, "#8f2a1b");
    }
    axis(&mut svg, high as f64 - 30.0);
    svg.push_str("</svg>\n");
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../web/pictures/trust.svg");
    fs::write(path, svg)
}

fn text(svg: &mut String, x: f64, y: f64, says: &str) {
    push(svg, format_args!(r#"<text x="{x}" y="{y}">{says}</text>"#));
}

/// A range as wide as it is on average, and what it holds.
fn bar(svg: &mut String, top: f64, when: &str, found: &Coverage, colour: &str) {
    let wide = PERCENT * found.width_pct();
    let left = MIDDLE - 0.5 * wide;
    text(svg, 28.0, top + 15.0, when);
    push(
        svg,
        format_args!(
            r#"<rect x="{left:.0}" y="{top}" width="{wide:.0}" height="20" fill="{colour}"/>"#
        ),
    );
    let held = format!("holds {:.0} of 100 boats", found.hot_a_pct());
    text(svg, 570.0, top + 15.0, &held);
}

/// Per cent of the middle, either way.
fn axis(svg: &mut String, y: f64) {
    for percent in [-40, -20, 0, 20, 40] {
        let x = MIDDLE + PERCENT * f64::from(percent);
        let says = format!("{percent:+} %")
            .replace("+0", "middle")
            .replace("middle %", "middle");
        push(
            svg,
            format_args!(
                r##"<path d="M{x} 20V{y}" stroke="#5b564a" stroke-dasharray="2 3"/><text x="{x}" y="{}" text-anchor="middle" fill="#555">{says}</text>"##,
                y + 18.0
            ),
        );
    }
}

fn push(svg: &mut String, part: std::fmt::Arguments) {
    svg.write_fmt(part).expect("a text");
}
