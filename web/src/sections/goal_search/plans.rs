//! What a search found: what there is to say before the plans, and each plan
//! step by step.

use std::sync::Arc;

use crate::components::Button;
use ampwright_core::boat::{Arrangement, Worksheet};
use ampwright_core::decision::goal_search::{Found, Plan, Step};
use ampwright_core::text;
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::{amperes, minutes, money};
use leptos::either::{Either, EitherOf3};
use leptos::prelude::*;

use crate::sections::arrangements;
use crate::state::AppState;

/// What came of a search; it is told in the reader's units of now.
#[component]
pub fn Plans(found: Arc<(Worksheet, Found)>) -> impl IntoView {
    let state = AppState::expect();
    move || {
        let reader = state.reader.get();
        let (_, found) = &*found;
        let said = text::goal_search(found, &reader).into_iter();
        let plan = |(at, plan): (usize, &Plan)| {
            view! { <PlanItem at plan best=found.best == Some(at) reader=&reader /> }
        };
        let plans = (!found.plans.is_empty()).then(|| {
            view! { <ol class="plans">{found.plans.iter().enumerate().map(plan).collect_view()}</ol> }
        });
        view! {
            {said.map(|sentence| view! { <p class="told">{sentence}</p> }).collect_view()}
            <p class="about">{counted(found)}</p>
            {plans}
        }
    }
}

/// How much was looked at.
fn counted(found: &Found) -> String {
    let mut text = format!(
        "{} of {} combinations calculated; {} left out because they would overheat or overload a part, or disconnect the bank.",
        found.tried, found.combinations, found.harmful
    );
    if !found.plans.is_empty() {
        text += " No other beats these on money and hours:";
    }
    text
}

/// One plan: what it costs and gives, its steps, and a way to keep it.
#[component]
fn PlanItem<'a>(
    at: usize,
    plan: &'a Plan,
    best: bool,
    reader: &'a Reader,
) -> impl IntoView + use<> {
    let state = AppState::expect();
    let class = match (best, plan.meets) {
        (true, _) => "best",
        (_, true) => "",
        _ => "short",
    };
    let steps = if plan.steps.is_empty() {
        Either::Left(view! { <p class="margin">"Nothing is changed."</p> })
    } else {
        let keep = {
            let arrangement = Arrangement {
                name: format!("Plan {}", at + 1),
                ..plan.arrangement.clone()
            };
            move |_| arrangements::add(state, arrangement.clone())
        };
        Either::Right(view! {
            <ol class="steps">
                {plan.steps.iter().map(|step| view! { <li>{told(step, reader)}</li> }).collect_view()}
            </ol>
            <Button
                says="Put it beside the arrangements"
                id=format!("goal-keep-{at}")
                class="plain"
                press=keep
            />
        })
    };
    let fuel = text::year::plan_fuel(plan.fuel_year_l, reader);
    view! {
        <li class=class>
            <p>
                <b>{reader.show(money(plan.bought))}</b>
                ": engine "
                <b>{reader.show(minutes(60.0 * plan.hours_day))}</b>
                {format!(
                    " per day at anchor, {} hot, {fuel} ",
                    reader.show(amperes(plan.hot_a)),
                )}
                <Flag best meets=plan.meets />
            </p>
            {steps}
        </li>
    }
}

/// Whether a plan meets the goal.
#[component]
fn Flag(best: bool, meets: bool) -> impl IntoView {
    match (best, meets) {
        (true, _) => {
            EitherOf3::A(view! { <small class="best">"this one meets the goal best"</small> })
        }
        (_, true) => EitherOf3::B(view! { <small>"meets the goal"</small> }),
        _ => EitherOf3::C(view! { <small>"falls short of the goal"</small> }),
    }
}

/// A step with its price.
fn told(step: &Step, reader: &Reader) -> String {
    format!(
        "{}, for {}",
        text::plan_step(step, reader),
        reader.show(money(step.price))
    )
}
