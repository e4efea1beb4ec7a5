//! How the demo's figures came about, as plain text.

use ampwright_core::boat::demo;
use ampwright_core::decision::arrangements::compare;
use ampwright_core::explain::{Working, arrangement_workings, workings, workings_at};
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

/// Of the demo's first arrangement that something has to be bought for.
#[test]
fn demo_workings_of_an_arrangement() {
    let sheet = demo();
    let outcomes = compare(&sheet).outcomes;
    let mut bought = outcomes.iter().filter(|outcome| outcome.bought > 0.0);
    let outcome = bought.next().expect("something to buy");
    let with = outcome.arrangement.on(&sheet);
    let told = arrangement_workings(&with, &report(&with), outcome, &outcomes[0]);
    insta::assert_snapshot!(text(&told));
}

#[test]
fn demo_workings_at_twenty_minutes() {
    let sheet = demo();
    insta::assert_snapshot!(text(&workings_at(&sheet, &report(&sheet), 20.0)));
}
