//! How certain the answer is: the ranges it lies in, and which reading would
//! narrow them most.

mod decisions;
mod range_bar;

use std::sync::Arc;

use ampwright_core::boat::Key;
use ampwright_core::decision::uncertainty::{Certainty, Range, Reading, Uncertainty};
use ampwright_core::text;
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::percent;
use leptos::either::Either;
use leptos::prelude::*;

use crate::state::AppState;
use decisions::WhatItDecides;
use range_bar::{RangeBar, RangeOf};

/// The section.
#[component]
pub fn HowCertain() -> impl IntoView {
    const RUNS: usize = Uncertainty::RUNS;
    let uncertainty = AppState::expect().uncertainty;
    let progress = Signal::derive(move || {
        let runs = uncertainty.runs_done();
        runs.map(|runs| format!("Calculating: {runs} of {RUNS}."))
    });
    let is_known = Memo::new(move |_| uncertainty.latest().is_some());
    let is_pending = Signal::derive(move || uncertainty.runs_done().is_some());
    view! {
        <section class="sure" class:pending=is_pending id="sure" aria-labelledby="sure-title">
            <h2 id="sure-title">"How certain is this?"</h2>
            <p class="lead">
                {format!(
                    "The same boat calculated {RUNS} times, every figure moved within what it may be. In 80 % of cases the answer lies in these ranges. ",
                )} <span id="sure-progress">{progress}</span>
            </p>
            <div id="sure-told" class:stale=is_pending>
                <Show when=move || is_known.get()>
                    {move || uncertainty.latest().map(|certainty| view! { <Ranges certainty /> })}
                </Show>
                <WhatItDecides />
            </div>
            <p class="about">
                "A guess moves within its plausible range, a figure off a nameplate by 5 % or 5 K, one you measured by 2 % or 2 K. What you decide, such as the temperature limit the regulator holds, stays put. How far the formulas themselves may be off is in the ranges too."
            </p>
        </section>
    }
}

/// Both ranges, and the readings that narrow the one that matters.
#[component]
fn Ranges(certainty: Arc<Certainty>) -> impl IntoView {
    let state = AppState::expect();
    let (engine, hot) = (&certainty.engine_h, &certainty.hot_a);
    // Where the engine time is certain, the current may still not be.
    let asked = match engine.readings.is_empty() {
        true => hot,
        false => engine,
    };
    let rows: Vec<_> = asked.readings.to_vec();
    let readings = match rows.is_empty() {
        true => Either::Left(view! { <p class="lead">"Nothing: no single figure moves it."</p> }),
        false => {
            let of = asked.clone();
            let rows = move || {
                let reader = state.reader.get();
                rows.iter()
                    .map(|reading| {
                        let worth = worth(reading, &of, &reader);
                        view! { <ReadingRow reading=reading.clone() worth /> }
                    })
                    .collect_view()
            };
            Either::Right(view! { <ol class="readings">{rows}</ol> })
        }
    };
    view! {
        <p class="told">{text::uncertainty::sentence(engine)}</p>
        <RangeBar range=RangeOf::EngineTime.bar(engine) />
        <p class="told">{text::uncertainty::sentence(hot)}</p>
        <RangeBar range=RangeOf::HotCurrent.bar(hot) />
        <h3>"What to measure next"</h3>
        {readings}
    }
}

/// What a reading is worth.
fn worth(reading: &Reading, of: &Range, reader: &Reader) -> String {
    let share = reader.show(percent(reading.share_pct));
    let width = |width| text::uncertainty::width(of.answer, width);
    let (once_measured, now) = (width(reading.width), width(of.width));
    let narrows = if once_measured == now {
        String::new()
    } else {
        format!(" Once measured, a range about {once_measured} wide instead of {now}.")
    };
    format!("{share} of the uncertainty.{narrows}")
}

/// A reading, what it is worth, how to take it, and the way to its entry.
#[component]
fn ReadingRow(reading: Reading, worth: String) -> impl IntoView {
    let name = reading.key.name();
    view! {
        <li>
            <div>
                <p>
                    <b>{reading.what}</b>
                    " "
                    <span class="said">{reading.section}</span>
                </p>
                <GoThere key=reading.key what=reading.what id=format!("go-{name}") />
            </div>
            <p>{worth}</p>
            <p class="margin">{reading.how}</p>
        </li>
    }
}

/// The way to the entry of a reading.
#[component]
fn GoThere(key: Key, what: &'static str, #[prop(optional)] id: Option<String>) -> impl IntoView {
    let state = AppState::expect();
    let name = key.name();
    let entry = format!("sheet-{name}");
    view! {
        <button
            type="button"
            class="plain"
            id=id
            data-key=name
            aria-label=format!("go there: {what}")
            on:click=move |_| state.go_to_entry(&entry)
        >
            "go there"
        </button>
    }
}
