//! The cheapest way to a goal: what is wanted, what may be changed for it, and
//! the few plans that nothing beats. The search goes on in slices while the
//! page stays alive.

mod levers;
mod plans;

use std::ops::ControlFlow;
use std::sync::Arc;
use std::time::Duration;

use ampwright_core::boat::{Goal, SectionId, Worksheet};
use ampwright_core::decision::goal_search::{Found, Search};
use leptos::prelude::*;

use crate::components::{Button, FieldRow, Fold};
use crate::state::{AppState, Slices};
use levers::Levers;
use plans::Plans;

/// How long a slice of the search may hold up the page \[ms\].
const BUDGET_MS: f64 = 12.0;
/// Combinations tried in one step of it.
const STEP: usize = 4;
/// The count on the page moves on by so many.
const TELL_EVERY: usize = 200;

/// Stands above plans of a boat that has changed.
const EARLIER: &str = "You have changed the boat since this search: the plans below are for your earlier figures. Search again.";

/// The section.
#[component]
pub fn GoalSearch() -> impl IntoView {
    let search = UnderWay::new(AppState::expect());
    search.follow_boat();
    view! {
        <section class="goal" id="goal" aria-labelledby="goal-title">
            <h2 id="goal-title">{SectionId::goal.title()}</h2>
            <p class="lead">
                "Say what you are after and what may be changed for it. Combinations of those changes are calculated with the real charging run, prices as above. None that does harm is ever a plan."
            </p>
            <Fold id="goal-fold" title="Set a goal">
                <Form search />
            </Fold>
        </section>
    }
}

/// A search, and what came of the last one.
#[derive(Clone, Copy)]
struct UnderWay {
    state: AppState,
    slices: Slices,
    /// Combinations tried so far, in steps of [`TELL_EVERY`].
    tried: RwSignal<usize>,
    /// What was found, and for which worksheet.
    found: RwSignal<Option<Arc<(Worksheet, Found)>>>,
    /// The boat it was found for, by the count of those opened.
    of: StoredValue<u32>,
}

impl UnderWay {
    fn new(state: AppState) -> UnderWay {
        UnderWay {
            state,
            slices: Slices::new(),
            tried: RwSignal::new(0),
            found: RwSignal::new(None),
            of: StoredValue::new(0),
        }
    }

    fn start(self) {
        let sheet = self.state.sheet.get_untracked();
        self.tried.set(0);
        self.of.set_value(self.state.opened.get_untracked());
        self.slices.start(Duration::ZERO, BUDGET_MS, move || {
            let mut search = Search::new(&sheet);
            move || {
                search.step(STEP);
                let tried = search.tried() / TELL_EVERY * TELL_EVERY;
                if tried != self.tried.get_untracked() {
                    self.tried.set(tried);
                }
                if !search.done() {
                    return ControlFlow::Continue(());
                }
                let found = search.found();
                self.found.set(Some(Arc::new((sheet.clone(), found))));
                ControlFlow::Break(())
            }
        });
    }

    /// Gives up what was found, or is still looked for, when another boat is
    /// opened.
    fn follow_boat(self) {
        Effect::new(move |_| {
            if self.state.opened.get() != self.of.get_value() {
                self.slices.stop();
                self.found.set(None);
            }
        });
    }

    /// Whether the boat has changed since the search.
    fn is_stale(self) -> bool {
        self.found.with(|found| {
            found.as_ref().is_some_and(|found| {
                let (of, _) = &**found;
                let differs = |sheet: &Worksheet| {
                    sheet.inputs != of.inputs
                        || sheet.loads != of.loads
                        || sheet.legs != of.legs
                        || sheet.months != of.months
                };
                self.state.sheet.with(differs)
            })
        })
    }

    fn progress(self) -> Option<String> {
        let tried = self.tried.get();
        let runs = self.slices.are_running();
        runs.then(|| format!("{tried} combinations calculated…"))
    }
}

/// What is wanted, what may be changed, and what came of it.
#[component]
fn Form(search: UnderWay) -> impl IntoView {
    let wanted = Goal::wanted().map(|key| view! { <FieldRow place="goal" key /> });
    let is_stale = Memo::new(move |_| search.is_stale());
    view! {
        {wanted.collect_view()}
        <Levers />
        <p class="buttons">
            <Button
                says="Search"
                id="goal-look"
                press=move |()| search.start()
            />
            <Button
                says="Stop the search"
                id="goal-stop"
                hidden=Signal::derive(move || !search.slices.are_running())
                press=move |()| search.slices.stop()
            />
            <span class="said" id="goal-progress" role="status">
                {Signal::derive(move || search.progress())}
            </span>
        </p>
        <p class="told" role="status" id="goal-earlier">
            {move || is_stale.get().then_some(EARLIER)}
        </p>
        <div id="goal-found">
            {move || search.found.get().map(|found| view! { <Plans found /> })}
        </div>
    }
}
