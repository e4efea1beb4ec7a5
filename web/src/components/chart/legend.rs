//! Which stroke is what: lines differ by their strokes, not by colour alone.

use leptos::prelude::*;

use super::marks::{Stroke, Words};

/// Samples of strokes with their names, in a row.
#[component]
pub fn Legend(
    /// Style and name of each line.
    names: Vec<(&'static str, &'static str)>,
    /// Where the row begins.
    x: f64,
    y: f64,
) -> impl IntoView {
    let place = |x: &mut f64, (class, name): (&'static str, &'static str)| {
        let at = *x;
        *x += 28.0 + 5.2 * name.len() as f64;
        Some((at, class, name))
    };
    names
        .into_iter()
        .scan(x, place)
        .map(|(x, class, name)| {
            view! {
                <Stroke class=format!("line {class}") from=(x, y) to=(x + 16.0, y) />
                <Words class="name" at=(x + 19.0, y + 3.5) anchor="start" says=name />
            }
        })
        .collect_view()
}
