//! Readings, a dot each, against the calculated line: while the trial goes on,
//! and after the fit.

use std::fmt::Write;

use ampwright_core::decision::calibration::Compared;
use ampwright_core::decision::calibration::stop::StopLimits;
use ampwright_core::units::quantity::celsius;
use ampwright_core::units::{QuantityKind, Reader};
use leptos::prelude::*;

use crate::components::chart::{
    Axis, ChartLine, Field, LEFT, Legend, LineStyle, RIGHT, Scale, Stroke, TimeTicks, WIDTH, Words,
    path, tenths,
};
use crate::state::{AppState, Trial};

use super::plan::{Places, Plan};

/// Fields of the trial: amps, and the case below.
const AMPERES: (f64, f64) = (20.0, 92.0);
const CASE: (f64, f64) = (122.0, 236.0);
const TRIAL_HEIGHT: f64 = 254.0;

/// The calculated run, drawn beforehand, and the readings as they land on it.
#[component]
pub fn TrialDrawing(limits: Memo<StopLimits>) -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let plan = Memo::new(move |_| {
        let (limits, typed) = (limits.get(), trial.typed_so_far());
        state.settled(|_, report| {
            let run = &report.analyses.run;
            trial.with_log(|log| Plan::of(run, log, typed.as_ref(), &limits))
        })
    });
    let drawn = move || {
        let (plan, reader) = (plan.get(), state.reader.get());
        view! { <Drawn plan reader /> }
    };
    view! {
        <div class="chart" id="trial-chart">
            {drawn}
        </div>
    }
}

#[component]
fn Drawn(plan: Plan, reader: Reader) -> impl IntoView {
    let time = Scale::new(0.0, plan.to_min, LEFT, RIGHT);
    let axis =
        |kind, ends, (top, bottom): (f64, f64)| Axis::rounded(&reader, kind, ends, (bottom, top));
    let current = axis(QuantityKind::Current, plan.amperes(), AMPERES);
    let heat = axis(QuantityKind::Temperature, plan.temperatures(), CASE);
    let drawn = [current, heat].into_iter().enumerate();
    let drawn = drawn.map(|(at, axis)| {
        let line = plan.calculated[at].iter();
        let line = path(line.map(|(minute, figure)| (time.place(*minute), axis.place(*figure))));
        view! {
            <g class="field">
                <ChartLine style=LineStyle::Third d=line />
                <path class="dots" d=dots(plan.read[at].iter().copied(), &time, &axis) />
                <path class="typed" d=crosses(&plan.typed[at], &time, &axis) />
            </g>
        }
    });
    let named = |name: &'static str, (top, _): (f64, f64)| {
        let y = top - 7.0;
        view! {
            <Legend names=vec![(LineStyle::Third, "calculated")] x=LEFT + 52.0 y />
            <path class="dots" d=format!("M{} {}h0", tenths(LEFT + 140.0), tenths(y)) />
            <Words class="name" at=(LEFT + 146.0, y + 3.5) anchor="start" says="as read" />
            <Words class="name" at=(LEFT, y + 3.5) anchor="start" says=name />
        }
    };
    let show = |level_c| reader.show(celsius(level_c));
    let stop_y = heat.place(plan.stop_c);
    let stop = format!("stop {}", show(plan.stop_c));
    let holds = plan.holds_c.filter(|holds_c| heat.holds(*holds_c));
    let holds = holds.map(|holds_c| {
        let words = format!("regulator holds {}", show(holds_c));
        view! { <HoldMark y=heat.place(holds_c) words /> }
    });
    view! {
        <svg
            viewBox=format!("0 0 {WIDTH} {TRIAL_HEIGHT}")
            role="img"
            aria-label="Amps and case temperature over time: dashed lines as calculated, dots as read"
        >
            <Field field=AMPERES ticks=3.0 time axis=current names=Vec::new() />
            <Field field=CASE ticks=4.0 time axis=heat names=Vec::new() />
            {named("amps", AMPERES)}
            {named("case", CASE)}
            {drawn.collect_view()}
            {holds}
            <Stroke class="mark-line open" from=(LEFT, stop_y) to=(RIGHT, stop_y) />
            <Words class="mark-words open" at=(RIGHT, stop_y - 2.5) anchor="end" says=stop />
            <TimeTicks time y=TRIAL_HEIGHT - 5.0 />
        </svg>
    }
}

/// What the regulator holds; its words stand below it, away from those of the
/// stop line.
#[component]
fn HoldMark(y: f64, words: String) -> impl IntoView {
    view! {
        <Stroke class="mark-line" from=(LEFT, y) to=(RIGHT, y) />
        <Words class="mark-words" at=(RIGHT, y + 10.0) anchor="end" says=words />
    }
}

/// A dot at each place.
fn dots(places: impl Iterator<Item = (f64, f64)>, time: &Scale, axis: &Axis) -> String {
    let mut dots = String::new();
    for (minute, figure) in places {
        let (x, y) = (time.place(minute), axis.place(figure));
        // Writing to a String cannot fail.
        let _ = write!(dots, "M{} {}h0", tenths(x), tenths(y));
    }
    dots
}

/// A cross where a reading is being typed.
fn crosses(places: &Places, time: &Scale, axis: &Axis) -> String {
    let mut crosses = String::new();
    for (minute, figure) in places {
        let (x, y) = (time.place(*minute), axis.place(*figure));
        // Writing to a String cannot fail.
        let _ = write!(
            crosses,
            "M{} {}l8 8m0 -8l-8 8",
            tenths(x - 4.0),
            tenths(y - 4.0)
        );
    }
    crosses
}

/// Top and bottom of the field.
const FIELD: (f64, f64) = (18.0, 150.0);
const HEIGHT: f64 = 168.0;

/// The drawing.
#[component]
pub fn CaseDrawing(series: Vec<Compared>, reader: Reader) -> impl IntoView {
    let (first, last) = (series.first()?, series.last()?);
    let figures = series.iter().flat_map(|at| [at.measured_c, at.modelled_c]);
    let (low, high) = figures.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), figure| {
        (figure.min(low), figure.max(high))
    });
    let time = Scale::new(first.minute, last.minute, LEFT, RIGHT);
    let heat = Axis::rounded(
        &reader,
        QuantityKind::Temperature,
        (low, high),
        (FIELD.1, FIELD.0),
    );
    let modelled = series
        .iter()
        .map(|at| (time.place(at.minute), heat.place(at.modelled_c)));
    let measured = series.iter().map(|at| (at.minute, at.measured_c));
    let dots = dots(measured, &time, &heat);
    Some(view! {
        <div class="chart">
            <svg
                viewBox=format!("0 0 {WIDTH} {HEIGHT}")
                role="img"
                aria-label="Case temperature over time: dots as read, a line as fitted"
            >
                <Field field=FIELD ticks=5.0 time axis=heat names=Vec::new() />
                <TimeTicks time y=FIELD.1 + 13.0 />
                <ChartLine style=LineStyle::Second d=path(modelled) />
                <path class="dots" d=dots />
                <path class="dots" d="M120 10h0" />
                <Words class="name" at=(126.0, 13.5) anchor="start" says="case, as read" />
                <Legend names=vec![(LineStyle::Second, "as fitted")] x=210.0 y=10.0 />
            </svg>
        </div>
    })
}
