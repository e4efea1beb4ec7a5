//! Rules of a field at round figures, and the figures beside and below it.

use leptos::prelude::*;

use super::axis::Axis;
use super::legend::Legend;
use super::line::LineStyle;
use super::marks::{Stroke, Words};
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
    names: Vec<(LineStyle, &'static str)>,
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
                    view! { <Stroke class="rule" from=(x, top) to=(x, bottom) /> }
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
                    <Stroke class="rule" from=(LEFT, tick.place) to=(RIGHT, tick.place) />
                    <Words
                        class="tick"
                        at=(LEFT - 4.0, tick.place + 3.5)
                        anchor="end"
                        says=tick.label
                    />
                }
            })
            .collect_view()
    };
    view! {
        {rules}
        <Stroke class="edge" from=(LEFT, bottom) to=(RIGHT, bottom) />
        <Words
            class="unit"
            at=(LEFT - 4.0, top - 6.0)
            anchor="end"
            says=Signal::derive(move || axis.get().unit.to_string())
        />
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
                let x = tick.place;
                view! {
                    <Stroke class="rule" from=(x, top) to=(x, bottom) />
                    <Words
                        class="tick"
                        at=(x, bottom + 13.0)
                        anchor=anchor(tick.place)
                        says=tick.label
                    />
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
                    <Words class="tick" at=(x, y) anchor=anchor(x) says=axis_clock(minute) />
                }
            })
            .collect_view()
    }
}

/// Words stand in the middle of their place, but for the last ones.
fn anchor(x: f64) -> &'static str {
    if x > RIGHT - 8.0 { "end" } else { "middle" }
}
