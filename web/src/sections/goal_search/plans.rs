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
        // What was asked for comes first, then what is cheaper and nearly does.
        let price = found
            .best
            .and_then(|best| Some(found.plans.get(best)?.bought));
        let is_best = |at: usize| found.best == Some(at);
        let is_cheaper = |plan: &Plan| price.is_some_and(|price| plan.bought < price);
        let mut answer = Vec::new();
        let mut cheaper = Vec::new();
        let mut others = Vec::new();
        for (at, plan) in found.plans.iter().enumerate() {
            let item = view! { <PlanItem at plan best=is_best(at) reader=&reader /> };
            match plan {
                _ if is_best(at) => answer.push(item),
                plan if is_cheaper(plan) => cheaper.push(item),
                _ => others.push(item),
            }
        }
        cheaper.reverse();
        let others_are = if price.is_some() {
            "Dearer, with less engine"
        } else {
            "The nearest there is"
        };
        view! {
            <PlanList heading="The answer" plans=answer />
            {said.map(|sentence| view! { <p class="told">{sentence}</p> }).collect_view()}
            <PlanList heading="Cheaper near misses" plans=cheaper />
            <PlanList heading=others_are plans=others />
            <p class="about">{counted(found)}</p>
        }
    }
}

/// Plans under a heading; nothing where there are none.
#[component]
fn PlanList(heading: &'static str, plans: Vec<impl IntoView + 'static>) -> impl IntoView {
    (!plans.is_empty()).then(|| {
        view! {
            <h3>{heading}</h3>
            <ol class="plans">{plans.into_iter().collect_view()}</ol>
        }
    })
}

/// How much was looked at.
fn counted(found: &Found) -> String {
    let mut text = format!(
        "{} of {} combinations calculated; {} left out because they would overheat or overload a part, or disconnect the bank.",
        found.tried, found.combinations, found.harmful
    );
    if !found.plans.is_empty() {
        text += " No other beats these on money and hours.";
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
