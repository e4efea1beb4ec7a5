//! Figures as bars on a rule, and across them the most that is allowed. The
//! same figures stand in words beside it.

use leptos::prelude::*;

use crate::components::chart::{Block, Scale, Stroke, Words};

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
    let x = axis.place(limit);
    let bar = |(at, bar): (usize, Bar)| {
        let (from, to) = (axis.place(bar.from), axis.place(bar.to));
        let base = 33.0 + STEP * at as f64;
        view! {
            <Words class="tick" at=(FROM - 6.0, base) anchor="end" says=bar.what />
            <Block class="range" at=(from, base - 8.0) size=((to - from).max(1.0), 8.0) />
            <Words class="tick" at=(to + 5.0, base) anchor="start" says=bar.words />
        }
    };
    view! {
        <svg viewBox=format!("0 0 360 {}", foot + 4.0) aria-hidden="true">
            <Words class="tick" at=(x, 11.0) says=limit_words />
            <Stroke class="edge" from=(FROM, 18.0) to=(FROM, foot) />
            <Stroke class="bound" from=(x, 15.0) to=(x, foot) />
            {bars.into_iter().enumerate().map(bar).collect_view()}
        </svg>
    }
}
