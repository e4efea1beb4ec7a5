//! The case as measured, a dot each, against the modelled line.

use std::fmt::Write;

use ampwright_core::decision::calibration::Compared;
use ampwright_core::units::{QuantityKind, Reader};
use leptos::prelude::*;

use crate::components::chart::{
    Axis, Field, LEFT, Legend, RIGHT, Scale, TimeTicks, WIDTH, Words, path, tenths,
};

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
    let mut dots = String::new();
    for at in &series {
        let (x, y) = (time.place(at.minute), heat.place(at.measured_c));
        // Writing to a String cannot fail.
        let _ = write!(dots, "M{} {}h0", tenths(x), tenths(y));
    }
    Some(view! {
        <div class="chart">
            <svg
                viewBox=format!("0 0 {WIDTH} {HEIGHT}")
                role="img"
                aria-label="Case temperature over time: dots as measured, a line as modelled"
            >
                <Field field=FIELD ticks=5.0 time axis=heat names=Vec::new() />
                <TimeTicks time y=FIELD.1 + 13.0 />
                <path class="line second" d=path(modelled) />
                <path class="dots" d=dots />
                <path class="dots" d="M120 10h0" />
                <Words class="name" at=(126.0, 13.5) anchor="start" says="case, measured" />
                <Legend names=vec![("second", "modelled")] x=210.0 y=10.0 />
            </svg>
        </div>
    })
}
