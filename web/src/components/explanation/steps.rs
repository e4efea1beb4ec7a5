//! What an explanation says: formula, numbers, what it used, note and source.

use ampwright_core::explain::Working;
use leptos::prelude::*;

use super::formula::formula;
use super::uses::used;
use crate::state::{AppState, ExplainedAt};

/// An explanation; with the ways on where it lies open at a place of the page.
pub fn steps(state: AppState, made: Working, at: Option<ExplainedAt>) -> impl IntoView {
    let reader = state.reader.get();
    let result = made.result(&reader);
    let lines = made
        .mathml
        .symbols
        .zip(made.mathml.figures)
        .map(|(symbols, figures)| {
            view! {
                <p class="formula">{formula(&symbols, &reader)}</p>
                <p class="formula">{formula(&figures, &reader)}</p>
                <p class="formula">"= " {result}</p>
            }
        });
    let uses = (!made.uses.is_empty()).then(|| {
        let rows = made.uses.into_iter().map(|one| used(state, one, at));
        view! {
            <ul class="uses" aria-label="What it used">
                {rows.collect_view()}
            </ul>
        }
    });
    view! {
        {lines}
        {uses}
        <p class="margin">{made.note}</p>
        <p class="margin source">{made.source}</p>
    }
}
