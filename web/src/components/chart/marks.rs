//! Strokes, words and blocks, and levels worth knowing.

use leptos::prelude::*;

use super::path::tenths;
use super::{LEFT, RIGHT};

/// A straight stroke from one point to another.
#[component]
pub fn Stroke(
    #[prop(into)] class: String,
    from: (f64, f64),
    to: (f64, f64),
    /// Lengths of dashes and gaps, where it has any.
    #[prop(optional_no_strip)]
    dashes: Option<&'static str>,
) -> impl IntoView {
    view! {
        <line
            class=class
            stroke-dasharray=dashes
            x1=tenths(from.0)
            y1=tenths(from.1)
            x2=tenths(to.0)
            y2=tenths(to.1)
        />
    }
}

/// Words at a point, which is their middle, "start" or "end".
#[component]
pub fn Words(
    class: &'static str,
    at: (f64, f64),
    #[prop(default = "middle")] anchor: &'static str,
    #[prop(into)] says: Signal<String>,
) -> impl IntoView {
    view! {
        <text class=class x=tenths(at.0) y=tenths(at.1) text-anchor=anchor>
            {says}
        </text>
    }
}

/// A filled rectangle: its upper left corner, width and height.
#[component]
pub fn Block(#[prop(into)] class: String, at: (f64, f64), size: (f64, f64)) -> impl IntoView {
    view! {
        <rect
            class=class
            x=tenths(at.0)
            y=tenths(at.1)
            width=tenths(size.0)
            height=tenths(size.1)
        />
    }
}

/// How far above its level the words of one stand.
pub const LEVEL_ABOVE: f64 = 2.5;

/// A level worth knowing, and what it is.
#[component]
pub fn LevelMark(y: f64, words: String) -> impl IntoView {
    view! {
        <Stroke class="mark-line" from=(LEFT, y) to=(RIGHT, y) />
        <Words class="mark-words" at=(RIGHT, y - LEVEL_ABOVE) anchor="end" says=words />
    }
}
