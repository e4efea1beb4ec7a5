//! What readings would decide, worked out once the ranges are known.

use std::ops::ControlFlow;
use std::sync::Arc;
use std::time::Duration;

use ampwright_core::decision::uncertainty::{Choice, Deciding, Decisions, SettingChoice};
use ampwright_core::text::decisions::{arrangement, setting};
use leptos::prelude::*;

use crate::sections::uncertainty::GoThere;
use crate::state::{AppState, Slices};

/// How long a slice may hold up the page \[ms\].
const SLICE_MS: f64 = 10.0;

/// Each decision in a sentence, with the way to the reading that decides it.
#[component]
pub fn WhatItDecides() -> impl IntoView {
    let state = AppState::expect();
    let decided: RwSignal<Option<Arc<Decisions>>> = RwSignal::new(None);
    let slices = Slices::new();
    Effect::new(move |_| {
        state.opened.track();
        decided.set(None);
        slices.stop();
        if state.uncertainty.certainty().is_none() {
            return;
        }
        slices.start(Duration::ZERO, SLICE_MS, move || {
            let mut choice = state.sheet.with_untracked(Choice::new);
            move || {
                choice.step();
                if !choice.done() {
                    return ControlFlow::Continue(());
                }
                decided.set(Some(Arc::new(choice.decisions())));
                ControlFlow::Break(())
            }
        });
    });
    let lines = move || {
        let decisions = decided.get()?;
        let reader = state.reader.get();
        let choice = decisions.arrangement.as_ref();
        let choice = choice.map(|choice| (arrangement(choice), choice.reading));
        let settings = decisions.settings.iter();
        let settings = settings.map(|one| (setting(one, &reader), reading(one)));
        let lines: Vec<_> = choice.into_iter().chain(settings).collect();
        (!lines.is_empty()).then(|| {
            view! {
                <h3>"What a reading would decide"</h3>
                <ul>{lines.into_iter().map(line).collect_view()}</ul>
            }
        })
    };
    view! { <div id="sure-decides">{lines}</div> }
}

fn reading(choice: &SettingChoice) -> Option<Deciding> {
    match choice {
        SettingChoice::CurrentCap { reading, .. }
        | SettingChoice::TemperatureLimit { reading, .. }
        | SettingChoice::ChargerOutput { reading, .. } => *reading,
    }
}

fn line((sentence, reading): (String, Option<Deciding>)) -> impl IntoView {
    let go = reading.map(|reading| view! { <GoThere key=reading.key what=reading.what /> });
    view! {
        <li><span>{sentence}</span> {go}</li>
    }
}
