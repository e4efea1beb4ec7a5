//! The first run: steps to tick off, and the sheet for the readings of the hot
//! run.

use ampwright_core::guidance::commissioning::{StageCode, Step, StepCode};
use ampwright_core::guidance::{CautionTopic, commissioning};
use ampwright_core::text::commissioning as text;
use ampwright_core::units::Reader;
use leptos::prelude::*;

use super::print::PrintAlone;
use super::readings::ReadingsForm;
use crate::components::Caution;
use crate::state::AppState;

/// What the fold holds.
#[component]
pub fn FirstRun() -> impl IntoView {
    let state = AppState::expect();
    let stages = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|sheet, report| {
            let stages = commissioning(sheet, report).into_iter();
            let words = |step: &Step| StepWords::of(step, &reader);
            stages
                .map(|stage| (stage.code, stage.steps.iter().map(words).collect()))
                .collect::<Vec<StageWords>>()
        })
    });
    let count = Signal::derive(move || {
        let steps = stages.get().into_iter().flat_map(|(_, steps)| steps);
        let done = |step: &StepWords| state.sheet.with(|sheet| sheet.is_done(step.code.name()));
        let ticks: Vec<bool> = steps.map(|step| done(&step)).collect();
        let done = ticks.iter().filter(|done| **done).count();
        format!("{done} of {} done", ticks.len())
    });
    let has_hot_run = Memo::new(move |_| {
        let stages = stages.read();
        stages.iter().any(|(code, _)| *code == StageCode::Hot)
    });
    view! {
        <Caution topic=CautionTopic::Cable />
        <PrintAlone fold="first" button="Print the list" />
        <div id="fit-first-told">
            <p class="told" id="first-count">
                {count}
            </p>
            {move || stages.get().into_iter().map(|stage| view! { <Stage stage /> }).collect_view()}
            {move || has_hot_run.get().then(|| view! { <ReadingsForm /> })}
        </div>
    }
}

/// A stage and its steps.
type StageWords = (StageCode, Vec<StepWords>);

/// A step as it is told; whether it is done is not part of it.
#[derive(Clone, PartialEq)]
struct StepWords {
    code: StepCode,
    text: String,
    /// When to stop and not go on: the word for it, and the rest.
    stop: Option<(&'static str, String)>,
}

impl StepWords {
    fn of(step: &Step, reader: &Reader) -> StepWords {
        StepWords {
            code: step.code,
            text: text::text(step, reader),
            stop: step.stop.as_ref().map(|stop| {
                let stop = text::stop(stop, reader);
                // "Stop at 70 °C" has the word in it already.
                match stop.strip_prefix("Stop ") {
                    Some(rest) => ("Stop ", rest.to_string()),
                    None => ("Stop: ", stop),
                }
            }),
        }
    }
}

/// A stage of the list.
#[component]
fn Stage(stage: StageWords) -> impl IntoView {
    let (code, steps) = stage;
    view! {
        <h3>{text::title(code)}</h3>
        <p class="about">{text::about(code)}</p>
        <ul class="firsts">
            {steps.into_iter().map(|step| view! { <StepToTick step /> }).collect_view()}
        </ul>
    }
}

/// A step with its tick.
#[component]
fn StepToTick(step: StepWords) -> impl IntoView {
    let state = AppState::expect();
    let name = step.code.name();
    let is_done = Memo::new(move |_| state.sheet.with(|sheet| sheet.is_done(name)));
    view! {
        <li>
            <label class="tick">
                <input
                    type="checkbox"
                    id=format!("first-{name}")
                    prop:checked=is_done
                    on:change:target=move |event| {
                        let done = event.target().checked();
                        state
                            .edit(|sheet| {
                                sheet.tick(name, done);
                            });
                    }
                />
                <span>{step.text}</span>
            </label>
            {text::caution(step.code)
                .map(|caution| {
                    view! {
                        <p class="beware">
                            <b>"Beware:"</b>
                            " "
                            {caution}
                        </p>
                    }
                })}
            {step
                .stop
                .map(|(word, rest)| {
                    view! {
                        <p class="halt">
                            <b>{word}</b>
                            {rest}
                        </p>
                    }
                })}
        </li>
    }
}
