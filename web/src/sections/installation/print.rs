//! Prints one fold by itself, headed by whose it is, where to find it again,
//! and when it was printed.

use crate::components::Button;
use ampwright_core::exchange::to_link;
use leptos::prelude::*;

use crate::browser::{page, printing};
use crate::state::AppState;
use crate::state::saved_boats::title;

/// The head of a printed fold.
#[derive(Clone)]
struct Head {
    boat: String,
    date: String,
    link: String,
}

/// The button that prints a fold, and the head that is seen in print only. The
/// style leaves out all but the fold.
#[component]
pub fn PrintAlone(
    /// Its id without "fit-".
    fold: &'static str,
    button: &'static str,
) -> impl IntoView {
    let state = AppState::expect();
    let head = RwSignal::new(None::<Head>);
    let print = move |_| {
        let (boat, link) = state
            .sheet
            .with_untracked(|sheet| (title(&sheet.name).to_string(), to_link(sheet)));
        head.set(Some(Head {
            boat,
            date: printing::today(),
            link: format!("{}#{link}", page::address()),
        }));
        printing::print_only(format!("print-{fold}"));
    };
    // A fold's body is only ever made in the browser.
    let printed = window_event_listener_untyped("afterprint", |_| printing::leave_nothing_out());
    on_cleanup(move || printed.remove());
    view! {
        <p class="buttons">
            <Button says=button id=format!("print-{fold}") press=print />
        </p>
        <div class="head" id=format!("fit-{fold}-head")>
            {move || {
                head.get()
                    .map(|head| {
                        view! {
                            <p>
                                <b>{head.boat}</b>
                                " "
                                {head.date}
                            </p>
                            <p>{head.link}</p>
                        }
                    })
            }}
        </div>
    }
}
