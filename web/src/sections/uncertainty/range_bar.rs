//! A range as a bar on a rule, with the answer as it stands.

use ampwright_core::decision::uncertainty::Range;
use ampwright_core::units::quantity::amperes;
use leptos::prelude::*;

use crate::components::chart::{Block, Scale, Stroke, Words};
use crate::state::AppState;
use ampwright_core::units::axis_clock;

/// Where the rule begins and ends across.
const ENDS: (f64, f64) = (8.0, 352.0);
/// How high it lies.
const RULE: f64 = 12.0;

/// What a range is of.
#[derive(Clone, Copy, PartialEq)]
pub enum RangeOf {
    /// The engine's time of a day, drawn in minutes.
    EngineTime,
    /// The hot alternator's current, drawn in amperes.
    HotCurrent,
}

/// What is drawn of a range.
#[derive(Clone, Copy)]
pub struct DrawnRange {
    of: RangeOf,
    low: Option<f64>,
    high: Option<f64>,
    stands: Option<f64>,
}

impl RangeOf {
    /// A range of this kind, to be drawn.
    pub fn bar(self, range: &Range) -> DrawnRange {
        let scale = match self {
            RangeOf::EngineTime => 60.0,
            RangeOf::HotCurrent => 1.0,
        };
        let scaled = |figure: Option<f64>| figure.map(|figure| figure * scale);
        DrawnRange {
            of: self,
            low: scaled(range.low),
            high: scaled(range.high),
            stands: scaled(range.stands),
        }
    }
}

/// The drawing; the same stands in words beside it.
#[component]
pub fn RangeBar(range: DrawnRange) -> impl IntoView {
    let state = AppState::expect();
    let figures = [range.low, range.high, range.stands];
    let most = figures.into_iter().flatten().fold(0.0, f64::max);
    let axis = Scale::new(0.0, (1.15 * most).max(10.0), ENDS.0, ENDS.1);
    // "Never" lies beyond the paper.
    let place = |figure: Option<f64>| figure.map_or(ENDS.1, |figure| axis.place(figure));
    let [from, to, stands] = figures.map(place);
    let ticks = match range.of {
        RangeOf::EngineTime => axis.time_ticks(7.0),
        RangeOf::HotCurrent => axis.ticks(6.0),
    };
    let tick = |figure: f64| {
        let x = axis.place(figure);
        let words = move || match range.of {
            RangeOf::EngineTime => axis_clock(figure),
            RangeOf::HotCurrent => state.show(amperes(figure)),
        };
        let anchor = match x {
            _ if figure == 0.0 => "start",
            x if x > ENDS.1 - 12.0 => "end",
            _ => "middle",
        };
        view! {
            <Stroke class="edge" from=(x, RULE) to=(x, RULE + 4.0) />
            <Words class="tick" at=(x, RULE + 16.0) anchor=anchor says=words />
        }
    };
    view! {
        <svg viewBox="0 0 360 34" aria-hidden="true">
            <Stroke class="edge" from=(ENDS.0, RULE) to=(ENDS.1, RULE) />
            {ticks.into_iter().map(tick).collect_view()}
            <Block class="range" at=(from, RULE - 5.0) size=((to - from).max(1.0), 5.0) />
            <Stroke class="stands" from=(stands, RULE - 10.0) to=(stands, RULE) />
        </svg>
    }
}
