//! Figures as bars on a rule, and across them the most that is allowed. The
//! same figures stand in words beside it.

use leptos::prelude::*;

use crate::components::chart::{Scale, tenths};

/// Where bars begin and end across.
const FROM: f64 = 106.0;
const TO: f64 = 292.0;
/// From one bar to the next.
const STEP: f64 = 19.0;

/// A bar: what it is, from where to where, and its figure in words.
#[derive(Clone, PartialEq)]
pub struct Bar {
    /// What it is.
    pub what: &'static str,
    /// Where it begins, in the unit of all bars.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// The figure with its unit.
    pub words: String,
}

/// Bars, and the most that is allowed.
#[derive(Clone, PartialEq)]
pub struct Bars {
    /// The most that is allowed.
    pub limit: f64,
    /// What is allowed, in words.
    pub limit_words: String,
    /// The bars, from above.
    pub bars: Vec<Bar>,
}

/// The drawing.
#[component]
pub fn BarChart(bars: Bars) -> impl IntoView {
    let Bars {
        limit,
        limit_words,
        bars,
    } = bars;
    let most = bars.iter().fold(limit, |most, bar| most.max(bar.to));
    let axis = Scale::new(0.0, most, FROM, TO);
    let foot = 20.0 + STEP * bars.len() as f64;
    let x = tenths(axis.place(limit));
    let bar = |(at, bar): (usize, Bar)| {
        let (from, to) = (axis.place(bar.from), axis.place(bar.to));
        let base = 33.0 + STEP * at as f64;
        view! {
            <text class="tick" x=FROM - 6.0 y=base text-anchor="end">
                {bar.what}
            </text>
            <rect
                class="range"
                x=tenths(from)
                y=base - 8.0
                width=tenths((to - from).max(1.0))
                height="8"
            />
            <text class="tick" x=tenths(to + 5.0) y=base text-anchor="start">
                {bar.words}
            </text>
        }
    };
    view! {
        <svg viewBox=format!("0 0 360 {}", foot + 4.0) aria-hidden="true">
            <text class="tick" x=x.clone() y="11" text-anchor="middle">
                {limit_words}
            </text>
            <line class="edge" x1=FROM y1="18" x2=FROM y2=foot />
            <line class="bound" x1=x.clone() y1="15" x2=x y2=foot />
            {bars.into_iter().enumerate().map(bar).collect_view()}
        </svg>
    }
}
