//! Lines of a drawing. Dashes tell them apart, in either look and on paper;
//! width and colour only help.

use leptos::prelude::*;

/// How a line is drawn. Lines of one field never share a style.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineStyle {
    /// Unbroken: what the field is about.
    First,
    /// Long dashes.
    Second,
    /// Short dashes.
    Third,
    /// Dots.
    Fourth,
}

impl LineStyle {
    /// What the style sheet knows it by.
    pub const fn class(self) -> &'static str {
        match self {
            LineStyle::First => "line first",
            LineStyle::Second => "line second",
            LineStyle::Third => "line third",
            LineStyle::Fourth => "line fourth",
        }
    }

    /// Lengths of its dashes and gaps; none for an unbroken one.
    pub const fn dashes(self) -> Option<&'static str> {
        match self {
            LineStyle::First => None,
            LineStyle::Second => Some("10 3"),
            LineStyle::Third => Some("4 2.5"),
            LineStyle::Fourth => Some("1.2 2.4"),
        }
    }
}

/// A line through places.
#[component]
pub fn ChartLine(style: LineStyle, #[prop(into)] d: Signal<String>) -> impl IntoView {
    view! { <path class=style.class() stroke-dasharray=style.dashes() d=d /> }
}
