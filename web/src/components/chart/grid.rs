//! Rules of a field at round figures, and the figures beside and below it.

use leptos::prelude::*;

use super::axis::Axis;
use super::legend::Legend;
use super::path::tenths;
use super::scale::Scale;
use super::{LEFT, RIGHT};
use ampwright_core::units::axis_clock;

/// A field over an axis of time: its rules and figures, and above it the names
/// of the lines that are drawn into it.
#[component]
pub fn Field(
    /// Top and bottom.
    field: (f64, f64),
    /// About how many rules.
    ticks: f64,
    #[prop(into)] time: Signal<Scale>,
    #[prop(into)] axis: Signal<Axis>,
    /// Style and name of each line.
    names: Vec<(&'static str, &'static str)>,
) -> impl IntoView {
    let (top, bottom) = field;
    let hours = move || {
        let time = time.get();
        let places = time.time_ticks(6.0).into_iter();
        places.map(|minute| time.place(minute)).collect::<Vec<_>>()
    };
    view! {
        <Grid field ticks axis />
        {move || {
            hours()
                .into_iter()
                .map(|x| {
                    let x = tenths(x);
                    view! { <line class="rule" x1=x.clone() y1=top x2=x y2=bottom /> }
                })
                .collect_view()
        }}
        <Legend names x=LEFT y=top - 7.0 />
    }
}

/// Rules across a field, their figures, its bottom edge and its unit.
#[component]
pub fn Grid(
    /// Top and bottom.
    field: (f64, f64),
    /// About how many rules.
    ticks: f64,
    #[prop(into)] axis: Signal<Axis>,
) -> impl IntoView {
    let (top, bottom) = field;
    let rules = move || {
        let ticks = axis.get().ticks(ticks).into_iter();
        ticks
            .map(|tick| {
                view! {
                    <line class="rule" x1=LEFT y1=tenths(tick.place) x2=RIGHT y2=tenths(tick.place) />
                    <text class="tick" x=LEFT - 4.0 y=tenths(tick.place + 3.5) text-anchor="end">
                        {tick.label}
                    </text>
                }
            })
            .collect_view()
    };
    view! {
        {rules}
        <line class="edge" x1=LEFT y1=bottom x2=RIGHT y2=bottom />
        <text class="unit" x=LEFT - 4.0 y=top - 6.0 text-anchor="end">
            {move || axis.get().unit}
        </text>
    }
}

/// Figures below a field, each with an upright rule through it.
#[component]
pub fn AxisTicks(
    /// Top and bottom of the field.
    field: (f64, f64),
    /// About how many.
    ticks: f64,
    #[prop(into)] axis: Signal<Axis>,
) -> impl IntoView {
    let (top, bottom) = field;
    move || {
        let ticks = axis.get().ticks(ticks).into_iter();
        ticks
            .map(|tick| {
                let x = tenths(tick.place);
                view! {
                    <line class="rule" x1=x.clone() y1=top x2=x.clone() y2=bottom />
                    <text class="tick" x=x y=bottom + 13.0 text-anchor=anchor(tick.place)>
                        {tick.label}
                    </text>
                }
            })
            .collect_view()
    }
}

/// Times along the bottom.
#[component]
pub fn TimeTicks(#[prop(into)] time: Signal<Scale>, y: f64) -> impl IntoView {
    move || {
        let time = time.get();
        let minutes = time.time_ticks(6.0).into_iter();
        minutes
            .map(|minute| {
                let x = time.place(minute);
                view! {
                    <text class="tick" x=tenths(x) y=y text-anchor=anchor(x)>
                        {axis_clock(minute)}
                    </text>
                }
            })
            .collect_view()
    }
}

/// Words stand in the middle of their place, but for the last ones.
fn anchor(x: f64) -> &'static str {
    if x > RIGHT - 8.0 { "end" } else { "middle" }
}
