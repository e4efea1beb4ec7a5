//! A part of the page that is made only while it lies open.

use leptos::either::Either;
use leptos::html::Div;
use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use crate::state::AppState;

/// A fold: a line that is always there, and a body that exists only while it
/// is open. Nothing in a closed fold costs anything at a keystroke.
///
/// The body is mounted by hand instead of shown by `<Show>`: what is never
/// printed needs no code to be taken over, and that code is large.
#[component]
pub fn Fold<C>(
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
    children: TypedChildrenFn<C>,
) -> impl IntoView
where
    C: IntoView + 'static,
{
    let state = AppState::expect();
    let children = children.into_inner();
    let open = Memo::new({
        let id = id.clone();
        move |_| state.folds.is_open(&id)
    });
    let printed = printed.unwrap_or(class == "section");
    let on_paper = move || printed && state.printing.get();
    let body = NodeRef::<Div>::new();
    // What the effect holds leaves the page when it runs again.
    Effect::new(move |_| {
        let wanted = open.get() || state.folds.search.get() || on_paper();
        let body = body.get().filter(|_| wanted)?;
        let children = children.clone();
        Some(mount_to(body.unchecked_into(), move || children()))
    });
    let noted = class != "finer";
    view! {
        <details
            class=class
            class:hidden=move || !applies.get()
            prop:open=move || open.get() || on_paper()
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
                        <span class="title">{move || title.get()}</span>
                        <span class="leader"></span>
                        <span class="said">{move || note.get()}</span>
                    })
                } else {
                    Either::Right(move || title.get())
                }}
            </summary>
            <div class="body" node_ref=body></div>
        </details>
    }
}
