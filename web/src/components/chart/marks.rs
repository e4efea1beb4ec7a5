//! Levels worth knowing, and the line where a drawing is read off.

use leptos::prelude::*;

use super::path::tenths;
use super::{LEFT, RIGHT};

/// A level worth knowing, and what it is.
#[component]
pub fn LevelMark(y: f64, words: String) -> impl IntoView {
    view! {
        <line class="mark-line" x1=LEFT y1=tenths(y) x2=RIGHT y2=tenths(y) />
        <text class="mark-words" x=RIGHT y=tenths(y - 2.5) text-anchor="end">
            {words}
        </text>
    }
}

/// An upright line where a drawing is read off.
#[component]
pub fn Cursor(#[prop(into)] x: Signal<Option<f64>>, top: f64, bottom: f64) -> impl IntoView {
    let x = move || x.get().map(tenths);
    view! { <line class="cursor" class:hidden=move || x().is_none() x1=x x2=x y1=top y2=bottom /> }
}
