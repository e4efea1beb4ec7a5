//! The link as a code to scan.

use leptos::either::Either;
use leptos::prelude::*;

use crate::sections::share::qr::{self, Drawing};

/// The code, or why there is none.
#[component]
pub fn LinkCode(link: Signal<String>) -> impl IntoView {
    let drawing = move |Drawing { wide, dark }: Drawing| {
        view! {
            <svg
                class="code"
                viewBox=format!("0 0 {wide} {wide}")
                role="img"
                aria-label="Code with the link to this boat"
            >
                <path d=dark></path>
            </svg>
        }
    };
    let shown = move || match qr::draw(&link.read()) {
        Some(code) => Either::Left(drawing(code)),
        None => Either::Right(view! {
            <p>
                {format!(
                    "The link is too long for a code that a phone can scan: more than {} characters. Each load less in the list saves some thirty.",
                    qr::MOST_BYTES,
                )}
            </p>
        }),
    };
    view! { <div id="code">{shown}</div> }
}
