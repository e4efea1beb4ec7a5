//! A part of the page that is made only while it lies open.

use leptos::either::Either;
use leptos::prelude::*;

use crate::state::AppState;

/// A fold: a line that is always there, and a body that exists only while it
/// is open. Nothing in a closed fold costs anything at a keystroke.
#[component]
pub fn Fold(
    /// Its name among [`crate::state::Folds`], and its id on the page.
    #[prop(into)]
    id: String,
    /// Its heading.
    #[prop(into)]
    title: Signal<String>,
    /// How it looks: "section" in a list of folds, "finer" inside a section,
    /// "load" for a row of a list.
    #[prop(default = "finer")]
    class: &'static str,
    /// What is told of it beside the heading.
    #[prop(optional, into)]
    note: MaybeProp<String>,
    /// Whether it lies open on paper, whatever the screen shows; sections do.
    #[prop(optional)]
    printed: Option<bool>,
    /// Whether it concerns this boat at all.
    #[prop(default = true.into(), into)]
    applies: Signal<bool>,
    children: ChildrenFn,
) -> impl IntoView {
    let state = AppState::expect();
    let open = Memo::new({
        let id = id.clone();
        move |_| state.folds.is_open(&id)
    });
    let printed = printed.unwrap_or(class == "section");
    let on_paper = move || printed && state.printing.get();
    let wanted = Memo::new(move |_| open.get() || state.folds.search.get() || on_paper());
    let noted = class != "finer";
    view! {
        <details
            class=class
            class:hidden=Signal::derive(move || !applies.get())
            prop:open=Signal::derive(move || open.get() || on_paper())
            on:toggle:target={
                let id = id.clone();
                move |event| {
                    if !state.printing.get_untracked() {
                        state.folds.set(&id, event.target().open());
                    }
                }
            }
            id=id.clone()
        >
            <summary>
                {if noted {
                    Either::Left(view! {
                        <span class="title">{title}</span>
                        <span class="leader"></span>
                        <span class="said">{note}</span>
                    })
                } else {
                    Either::Right(move || title.get())
                }}
            </summary>
            <div class="body">{move || wanted.get().then(|| children())}</div>
        </details>
    }
}
