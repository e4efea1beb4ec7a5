//! A figure that an explanation used.

use crate::components::Button;
use ampwright_core::explain::{MathNode, Used};
use leptos::either::Either;
use leptos::prelude::*;

use super::formula::sign;
use crate::state::{AppState, ExplainedAt};

/// Its sign, what it is and how well it is known, and the figure; on screen
/// with the way to its entry or to its own explanation.
pub fn used(state: AppState, used: Used, at: Option<ExplainedAt>) -> impl IntoView + use<> {
    let reader = state.reader.get();
    let sign = (!used.symbol.is_empty()).then(|| {
        let node = MathNode::symbol(&used.symbol);
        sign(&node, &reader)
    });
    let figure = used.shown(&reader);
    let in_formula = used.shown_in_formula(&reader);
    // Without a figure what is said stands in its place.
    let says = (figure.is_some() && !used.says.is_empty()).then_some(used.says);
    let words = figure.unwrap_or_else(|| used.says.to_string());
    let says = says.map(|says| view! { " " <small>{says}</small> });
    let known = used.known.map(|known| {
        let guess = !known.is_read();
        view! {
            " "
            <span class="mark" class:guess=guess>
                {known.word()}
            </span>
        }
    });
    let name = used.name;
    let entry = at.zip(used.key).map(|(at, key)| {
        let label = format!("go there: {name}");
        go_there(state, at, key, label)
    });
    let figure = match at.and(used.working) {
        Some(id) => Either::Left(follow(state, id, words, &name)),
        None => Either::Right(words),
    };
    view! {
        <li>
            <span class="sign">{sign}</span>
            <span>{name} {says} {known} {entry}</span>
            <span class="value">
                {figure} {in_formula.map(|figure| view! { <small>{format!(" ({figure})")}</small> })}
            </span>
        </li>
    }
}

/// Leads to the entry of an input.
fn go_there(state: AppState, at: ExplainedAt, key: String, label: String) -> impl IntoView + use<> {
    let id = format!("use.{key}");
    let go = move |_| {
        // At the answer it would lie over the entry.
        if at == ExplainedAt::Answer {
            state.explanations.put_away();
        }
        state.go_to_entry(&format!("sheet-{key}"));
    };
    view! {
        <Button says="go there" id=id class="plain forget" name=label press=go />
    }
}

/// A figure that leads on to its own explanation.
fn follow(state: AppState, id: &'static str, words: String, name: &str) -> impl IntoView + use<> {
    let label = format!("How {words} came about: {name}");
    view! {
        <Button
            says=words
            id=format!("on.{id}")
            class="how"
            name=label
            press=move |()| state.explanations.follow(id)
        />
    }
}
