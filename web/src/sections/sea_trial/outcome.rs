//! What came of the readings: the figures they gave, or why they give none.

use std::sync::Arc;

use ampwright_core::boat::Inputs;
use ampwright_core::decision::calibration;
use ampwright_core::decision::calibration::{Fit, Fitted, Log, Refusal, apply};
use ampwright_core::text;
use ampwright_core::text::calibration::{fit_remarks, refusal};
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::{amperes, kelvin};
use ampwright_core::{Report, Worksheet, report};
use leptos::either::Either;
use leptos::prelude::*;

use super::drawing::CaseDrawing;
use crate::components::{TextRow, TextTable, texts};
use crate::state::AppState;

/// What came of a log.
pub struct Outcome {
    /// The readings.
    log: Log,
    /// What they gave.
    pub found: Found,
    /// The boat it belongs to, by the count of those opened.
    pub opened: u32,
    /// Its inputs, and what they become once the figures are used.
    inputs: [Inputs; 2],
}

/// Figures, or why there are none.
pub enum Found {
    /// The figures, and what the alternator gives hot before and with them \[A\].
    Fit {
        /// The figures.
        fit: Fit,
        /// Current of the hot alternator before \[A\].
        before_a: f64,
        /// Current of the hot alternator with the figures of the log \[A\].
        after_a: f64,
    },
    /// Nothing can be learnt from it.
    Refused(Refusal),
}

impl Found {
    /// Whether there are figures.
    pub fn is_fit(&self) -> bool {
        matches!(self, Found::Fit { .. })
    }
}

impl Outcome {
    /// Fits the model of the open boat to readings.
    pub fn of(state: AppState, log: &Log) -> Outcome {
        let fitted = |sheet: &Worksheet, before: &Report| {
            let mut after = sheet.clone();
            let found = match calibration::fit(sheet, log) {
                Ok(fit) => {
                    apply(&mut after, &fit);
                    Found::Fit {
                        fit,
                        before_a: before.analyses.output.hot_a,
                        after_a: report(&after).analyses.output.hot_a,
                    }
                }
                Err(why) => Found::Refused(why),
            };
            (found, [sheet.inputs, after.inputs])
        };
        let (found, inputs) = state.glance(fitted);
        Outcome {
            log: log.clone(),
            found,
            opened: state.opened.get_untracked(),
            inputs,
        }
    }

    /// Whether it is of the boat as it stands, its figures used or not.
    pub fn stands_for(&self, inputs: &Inputs) -> bool {
        self.inputs.contains(inputs)
    }

    /// Whether it came of these readings.
    pub fn is_of(&self, log: &Log) -> bool {
        self.log == *log
    }
}

/// What came of the readings, on the page.
#[component]
pub fn OutcomeShown(outcome: Arc<Outcome>) -> impl IntoView {
    let state = AppState::expect();
    match &outcome.found {
        Found::Refused(why) => Either::Left(view! { <p class="complaint">{refusal(why)}</p> }),
        Found::Fit {
            fit,
            before_a,
            after_a,
        } => {
            let (fit, hot_a) = (fit.clone(), (*before_a, *after_a));
            Either::Right(move || {
                let (fit, reader) = (fit.clone(), state.reader.get());
                view! { <Fitting fit hot_a reader /> }
            })
        }
    }
}

/// Sentences under one another.
#[component]
fn Remarks(remarks: Vec<String>) -> impl IntoView {
    let item = |remark| view! { <li>{remark}</li> };
    view! { <ul class="remarks">{remarks.into_iter().map(item).collect_view()}</ul> }
}

/// The figures as a table, how well they fit, and the case as measured and as
/// modelled.
#[component]
fn Fitting(
    fit: Fit,
    /// What the alternator gives hot, before and with the figures \[A\].
    hot_a: (f64, f64),
    reader: Reader,
) -> impl IntoView {
    const HEADS: [&str; 4] = ["What the log says", "fitted", "±", "was"];
    let mut rows: Vec<TextRow> = fit.figures.iter().map(|one| row(one, &reader)).collect();
    rows.push(TextRow {
        head: "Amps held hot".to_string(),
        cells: vec![
            reader.show(amperes(hot_a.1)),
            String::new(),
            reader.number(amperes(hot_a.0)),
        ],
    });
    view! {
        <TextTable id="trial-figures" heads=texts(HEADS) rows />
        <p class="margin">
            {format!(
                "The model misses the thermometer by {} on average (root mean square). ± is one standard deviation, a fair share for the meters included.",
                reader.show(kelvin(fit.residual_k).to(1)),
            )}
        </p>
        <CaseDrawing series=fit.series reader />
        <Remarks remarks=fit_remarks(&fit.remarks) />
    }
}

/// A figure the log gave: what it is, its value, how certain it is, and what
/// the worksheet had.
fn row(fitted: &Fitted, reader: &Reader) -> TextRow {
    let Fitted { unit, decimals, .. } = *fitted;
    let number = |value| reader.number_in(unit, value, decimals);
    TextRow {
        head: text::calibration::fitted(fitted.what).to_string(),
        cells: vec![
            reader.show_in(unit, fitted.value, decimals),
            reader.number_in(unit.of_differences(), fitted.deviation, decimals),
            fitted.was.map_or("–".to_string(), number),
        ],
    }
}
