//! A table of texts.

use leptos::either::Either;
use leptos::prelude::*;

/// A row: what it is of, and its cells.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct TextRow {
    /// What it is of.
    pub head: String,
    /// In the order of the columns.
    pub cells: Vec<String>,
}

/// Texts that stay as they are, such as heads of columns.
pub fn texts<const COUNT: usize>(texts: [&str; COUNT]) -> Vec<String> {
    texts.map(str::to_string).into()
}

/// A table with a line of heads and rows that begin with what they are of.
#[component]
pub fn TextTable(
    /// What stands over the columns, that of the first column included.
    #[prop(into)]
    heads: Signal<Vec<String>>,
    #[prop(into)] rows: Signal<Vec<TextRow>>,
    /// What stands over the table.
    #[prop(optional, into)]
    caption: Option<Signal<String>>,
    #[prop(default = "run")] class: &'static str,
    #[prop(optional)] id: Option<&'static str>,
) -> impl IntoView {
    // A column of what the rows are of may go without a head.
    let head = |words: String| match words.as_str() {
        "" => Either::Left(view! { <td></td> }),
        _ => Either::Right(view! { <th scope="col">{words}</th> }),
    };
    let row = |TextRow { head, cells }: TextRow| {
        let cell = |words: String| view! { <td>{words}</td> };
        view! {
            <tr>
                <th scope="row">{head}</th>
                {cells.into_iter().map(cell).collect_view()}
            </tr>
        }
    };
    view! {
        <table class=class id=id>
            {caption.map(|caption| view! { <caption>{caption}</caption> })}
            <thead>
                <tr>{move || heads.get().into_iter().map(head).collect_view()}</tr>
            </thead>
            <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
        </table>
    }
}

/// A text table that scrolls sideways where the page is narrow.
#[component]
pub fn ScrollingTable(
    id: &'static str,
    /// What it is called.
    name: &'static str,
    #[prop(into)] heads: Signal<Vec<String>>,
    #[prop(into)] rows: Signal<Vec<TextRow>>,
) -> impl IntoView {
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=name id=id>
            <TextTable heads rows />
        </div>
    }
}
