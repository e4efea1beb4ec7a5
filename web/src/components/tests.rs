//! Folds and tables as they are printed.

use leptos::prelude::*;

use super::{Fold, TextTable, text_table::TextRow, texts};
use crate::prerender::part;
use crate::state::AppState;

fn fold(class: &'static str, prepare: impl FnOnce(AppState)) -> String {
    part(prepare, move || {
        view! { <Fold id="a-fold" title="Belts" class>"What is inside"</Fold> }
    })
}

#[test]
fn a_closed_fold_holds_its_heading_alone() {
    let html = fold("finer", |_| ());
    assert!(
        html.contains("Belts") && !html.contains("What is inside"),
        "{html}"
    );
}

#[test]
fn what_an_open_fold_holds_is_there() {
    let html = fold("finer", |state| state.folds.set("a-fold", true));
    assert!(html.contains("What is inside"), "{html}");
    let other = fold("finer", |state| state.folds.set("another", true));
    assert!(!other.contains("What is inside"), "{other}");
}

#[test]
fn a_search_in_the_page_finds_what_is_folded_away() {
    let html = fold("finer", |state| state.folds.search.set(true));
    assert!(html.contains("What is inside"), "{html}");
}

#[test]
fn sections_open_on_paper_and_finer_folds_do_not() {
    let printed = |class| fold(class, |state| state.printing.set(true));
    assert!(printed("section").contains("What is inside"));
    assert!(!printed("finer").contains("What is inside"));
}

#[test]
fn words_of_users_are_text_and_never_markup() {
    let html = part(
        |_| (),
        || {
            let row = TextRow {
                head: "<b>Dust</b>".to_string(),
                cells: vec!["5 & 6".to_string()],
            };
            view! { <TextTable heads=texts(["", "A·h"]) rows=vec![row] /> }
        },
    );
    assert!(
        html.contains("&lt;b>Dust&lt;/b>") || html.contains("&lt;b&gt;Dust"),
        "{html}"
    );
    assert!(html.contains("5 &amp; 6"), "{html}");
    // A column of what the rows are of goes without a head.
    assert_eq!(html.matches(r#"<th scope="col">"#).count(), 1, "{html}");
    assert_eq!(html.matches(r#"<th scope="row">"#).count(), 1, "{html}");
}
