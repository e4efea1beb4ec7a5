//! How the demo's figures came about, as plain text.

use ampwright_core::boat::demo;
use ampwright_core::explain::{Working, workings, workings_at};
use ampwright_core::report::report;

fn text(workings: &[Working]) -> String {
    workings
        .iter()
        .map(|working| format!("{}\n{}", working.id, working.text()))
        .collect()
}

#[test]
fn demo_workings() {
    let sheet = demo();
    insta::assert_snapshot!(text(&workings(&sheet, &report(&sheet))));
}

#[test]
fn demo_workings_at_twenty_minutes() {
    let sheet = demo();
    insta::assert_snapshot!(text(&workings_at(&sheet, &report(&sheet), 20.0)));
}
