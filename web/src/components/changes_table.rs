//! What differs between two boats.

use ampwright_core::exchange::Difference;
use leptos::either::Either;
use leptos::prelude::*;

/// A table of differences: what, before and now; or why there is none.
#[component]
pub fn ChangesTable(
    /// The id of its rows.
    id: &'static str,
    /// What stands in the first column of figures.
    #[prop(into)]
    was: Signal<String>,
    /// What stands in the second.
    #[prop(into)]
    is: Signal<String>,
    /// The differences.
    found: Memo<Result<Vec<Difference>, String>>,
) -> impl IntoView {
    let row = |one: Difference| {
        view! {
            <tr>
                <th scope="row">
                    <small>{one.section}</small>
                    " "
                    {one.label}
                </th>
                <td>{one.was}</td>
                <td>{one.is}</td>
            </tr>
        }
    };
    let rows = move || match found.get() {
        Ok(found) if !found.is_empty() => Either::Left(found.into_iter().map(row).collect_view()),
        other => {
            let said = other.err().unwrap_or("Nothing differs.".to_string());
            Either::Right(view! {
                <tr>
                    <td colspan="3">{said}</td>
                </tr>
            })
        }
    };
    view! {
        <table class="changes">
            <thead>
                <tr>
                    <th scope="col">"What"</th>
                    <th scope="col">{was}</th>
                    <th scope="col">{is}</th>
                </tr>
            </thead>
            <tbody id=id>{rows}</tbody>
        </table>
    }
}
