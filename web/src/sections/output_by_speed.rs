//! Output against engine speed: cold, and what is held hot.

use ampwright_core::analysis::SpeedPoint;
use ampwright_core::text;
use ampwright_core::units::QuantityKind;
use ampwright_core::units::quantity::{amperes, rpm};
use leptos::prelude::*;

use crate::components::chart::{
    Axis, AxisTicks, ChartLine, Cursor, Grid, LEFT, Legend, LineStyle, RIGHT, WIDTH, Words, path,
    tenths,
};
use crate::components::{Fold, ScrollingTable, TextRow, texts};
use crate::state::AppState;

const HEIGHT: f64 = 172.0;
/// Top and bottom of the field.
const FIELD: (f64, f64) = (18.0, 146.0);

/// The section.
#[component]
pub fn OutputBySpeed() -> impl IntoView {
    let state = AppState::expect();
    let lead = Signal::derive(move || {
        let reader = state.reader.get();
        state.settled(|sheet, report| text::output_at_speed(sheet, report, &reader))
    });
    view! {
        <section class="chart" aria-labelledby="speed-title">
            <h2 id="speed-title">"Output against engine speed"</h2>
            <p class="lead" id="speed-lead">
                {lead}
            </p>
            <Curves />
            <Fold id="speed-fold" title="The curves as a table">
                <SpeedTable />
            </Fold>
        </section>
    }
}

/// The curves, with the engine speed of the worksheet marked.
#[component]
fn Curves() -> impl IntoView {
    let state = AppState::expect();
    let across = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let points = &report.analyses.output.by_engine_rpm;
            let ends = [points.first(), points.last()].map(|end| end.map(|end| end.engine_rpm));
            let range = (ends[0].unwrap_or_default(), ends[1].unwrap_or_default());
            Axis::new(&reader, QuantityKind::Speed, range, (LEFT, RIGHT))
        })
    });
    let up = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let points = report.analyses.output.by_engine_rpm.iter();
            let most_a = points.map(|point| point.cold_a).fold(10.0, f64::max);
            let (top, bottom) = FIELD;
            Axis::rounded(&reader, QuantityKind::Current, (0.0, most_a), (bottom, top))
        })
    });
    let curve = move |figure: fn(&SpeedPoint) -> f64| {
        let (across, up) = (across.get(), up.get());
        state.settled(|_, report| {
            let points = report.analyses.output.by_engine_rpm.iter();
            path(points.map(|point| (across.place(point.engine_rpm), up.place(figure(point)))))
        })
    };
    let now = Memo::new(move |_| {
        let (across, up) = (across.get(), up.get());
        state.settled(|sheet, report| {
            let rpm = sheet.inputs.eng.rpm;
            let place = (across.place(rpm), up.place(report.analyses.output.hot_a));
            across.holds(rpm).then_some(place)
        })
    });
    let cursor = Memo::new(move |_| now.get().map(|(x, _)| x));
    let dot = Signal::derive(move || {
        now.get()
            .map(|(x, y)| format!("M{} {}h0", tenths(x), tenths(y)))
    });
    view! {
        <svg
            viewBox=format!("0 0 {WIDTH} {HEIGHT}")
            role="img"
            aria-labelledby="speed-title"
            id="speed-plot"
        >
            <Grid field=FIELD ticks=4.0 axis=up />
            <AxisTicks field=FIELD ticks=5.0 axis=across />
            <Words class="unit" at=(RIGHT, HEIGHT - 2.0) anchor="end" says="engine rpm" />
            <ChartLine
                style=LineStyle::Third
                d=Signal::derive(move || curve(|point| point.cold_a))
            />
            <ChartLine
                style=LineStyle::First
                d=Signal::derive(move || curve(|point| point.hot_a))
            />
            <Legend
                names=vec![
                    (LineStyle::First, "held hot"),
                    (LineStyle::Third, "at full field, cold"),
                ]
                x=LEFT
                y=FIELD.0 - 7.0
            />
            <Cursor x=cursor fields=vec![FIELD] />
            <path class="dots" d=dot />
        </svg>
    }
}

/// The figures of the curves as a table.
#[component]
fn SpeedTable() -> impl IntoView {
    const HEADS: [&str; 3] = ["Engine rpm", "Held hot, A", "Full field cold, A"];
    let state = AppState::expect();
    let rows = Signal::derive(move || {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let row = |point: &SpeedPoint| TextRow {
                head: reader.number(rpm(point.engine_rpm)),
                cells: [point.hot_a, point.cold_a]
                    .map(|figure| reader.number(amperes(figure)))
                    .into(),
            };
            let points = report.analyses.output.by_engine_rpm.iter();
            points.map(row).collect::<Vec<_>>()
        })
    });
    view! {
        <ScrollingTable id="speed-table" name="The curves as a table" heads=texts(HEADS) rows />
    }
}
