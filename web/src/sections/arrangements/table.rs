//! All arrangements side by side, for a wide screen.

use ampwright_core::decision::arrangements::{Outcome, Role};
use ampwright_core::text::arrangements::name;
use leptos::either::EitherOf3;
use leptos::prelude::*;

use super::letter;
use super::rows::{Judged, JudgedRow};

/// The table: a column for each arrangement.
#[component]
pub fn Table<'a>(outcomes: &'a [Outcome], rows: &'a [JudgedRow]) -> impl IntoView + use<> {
    let head = |(at, outcome): (usize, &Outcome)| {
        let role = role(outcome.role).map(|role| view! { <small>{role}</small> });
        let unsafe_one = (!outcome.harm.is_empty()).then(|| {
            view! {
                " "
                <small class="worst">"not safe"</small>
            }
        });
        view! {
            <th scope="col">
                <i>{letter(at)}</i>
                " "
                {name(outcome).to_string()}
                {role}
                {unsafe_one}
            </th>
        }
    };
    let cell = |(text, judged): &(String, Judged)| {
        view! {
            <td>
                <Cell text=text.clone() judged=*judged />
            </td>
        }
    };
    let row = |row: &JudgedRow| {
        view! {
            <tr>
                <th scope="row">{row.title}</th>
                {row.cells.iter().map(cell).collect_view()}
            </tr>
        }
    };
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label="Arrangements side by side">
            <table class="run ways">
                <thead>
                    <tr>
                        <td></td>
                        {outcomes.iter().enumerate().map(head).collect_view()}
                    </tr>
                </thead>
                <tbody>{rows.iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}

/// What an arrangement is in the comparison, where that needs saying.
pub const fn role(role: Role) -> Option<&'static str> {
    match role {
        Role::Worksheet => Some("as entered here"),
        Role::Before => Some("before the change"),
        Role::Warning => Some("a warning, not a proposal"),
        Role::Own => Some("your own"),
        Role::Proposed => None,
    }
}

/// What one cell says, the best and the worst of its row named in words.
#[component]
pub fn Cell(text: String, judged: Judged) -> impl IntoView {
    match judged {
        Judged::Best => EitherOf3::A(view! {
            <b>{text}</b>
            " "
            <small class="best">"best"</small>
        }),
        Judged::Worst => EitherOf3::B(view! {
            {text}
            " "
            <small class="worst">"worst"</small>
        }),
        Judged::Between => EitherOf3::C(text),
    }
}
