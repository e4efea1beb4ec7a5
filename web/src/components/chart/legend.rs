//! Which stroke is what: lines differ by their strokes, not by colour alone.

use leptos::prelude::*;

use super::line::LineStyle;
use super::marks::{Stroke, Words};

/// How long a sample is: long enough for two dashes of any style.
const SAMPLE: f64 = 23.0;

/// Samples of strokes with their names, in a row.
#[component]
pub fn Legend(
    /// Style and name of each line.
    names: Vec<(LineStyle, &'static str)>,
    /// Where the row begins.
    x: f64,
    y: f64,
) -> impl IntoView {
    let place = |x: &mut f64, (style, name): (LineStyle, &'static str)| {
        let at = *x;
        *x += SAMPLE + 12.0 + 5.2 * name.len() as f64;
        Some((at, style, name))
    };
    names
        .into_iter()
        .scan(x, place)
        .map(|(x, style, name)| {
            view! {
                <Stroke
                    class=style.class()
                    dashes=style.dashes()
                    from=(x, y)
                    to=(x + SAMPLE, y)
                />
                <Words class="name" at=(x + SAMPLE + 3.0, y + 3.5) anchor="start" says=name />
            }
        })
        .collect_view()
}
