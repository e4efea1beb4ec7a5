//! Every figure explains itself: its numbers, put through somebody else's
//! calculator, give it back, and what it used is the worksheet's own.
//!
//! `calculator` is the other calculator, `used`, `words` and `mathml` hold a working's
//! parts, `shown` says what must have one.

mod calculator;
mod mathml;
mod shown;
mod used;
mod words;

use ampwright_core::Worksheet;
use ampwright_core::boat::demo;
use ampwright_core::decision::arrangements::compare;
use ampwright_core::explain::{
    Working, arrangement_ids, arrangement_working, arrangement_workings, workings, workings_at,
};
use ampwright_core::report;
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet, normal_boat};
use crate::workings::mathml::mathml_says_the_same;
use crate::workings::used::{agrees, used_is_own};
use crate::workings::words::symbols_are_told;

fn all_hold(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let report = report(sheet);
    let json = serde_json::to_value(&report).expect("a report is JSON");
    let all = workings(sheet, &report);
    for working in &all {
        agrees(&json, working)?;
        used_is_own(sheet, &all, working)?;
        symbols_are_told(working)?;
        mathml_says_the_same(working)?;
    }
    for share in [0.0, 0.1, 0.6, 1.0] {
        let there = workings_at(sheet, &report, share * report.analyses.run.minutes);
        let both: Vec<Working> = there.iter().chain(&all).cloned().collect();
        for working in &there {
            agrees(&json, working)?;
            used_is_own(sheet, &both, working)?;
            symbols_are_told(working)?;
            mathml_says_the_same(working)?;
        }
    }
    Ok(())
}

/// What is said of each arrangement: its figures are the outcome's own, and
/// follow from its boat.
fn arrangements_hold(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let outcomes = compare(sheet).outcomes;
    let Some(today) = outcomes.first() else {
        return Ok(());
    };
    for outcome in &outcomes {
        let with = outcome.arrangement.on(sheet);
        let report = report(&with);
        let json = serde_json::to_value(outcome).expect("an outcome is JSON");
        let costs = arrangement_workings(&with, &report, outcome, today);
        let both: Vec<Working> = costs
            .iter()
            .cloned()
            .chain(workings(&with, &report))
            .collect();
        prop_assert_eq!(costs.len(), arrangement_ids().count());
        for working in &costs {
            let alone = arrangement_working(&with, &report, outcome, today, working.id);
            prop_assert_eq!(alone.as_ref(), Some(working));
            agrees(&json, working)?;
            used_is_own(&with, &both, working)?;
            symbols_are_told(working)?;
            mathml_says_the_same(working)?;
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(8))]

    #[test]
    fn the_numbers_of_arrangements_give_their_costs(Drawn(sheet) in normal_boat()) {
        arrangements_hold(&sheet)?;
    }

    #[test]
    fn the_numbers_of_odd_boats_arrangements_too(Drawn(sheet) in any_sheet()) {
        arrangements_hold(&sheet)?;
    }
}

proptest! {
    #![proptest_config(crate::cases(60))]

    #[test]
    fn the_numbers_give_the_result(Drawn(sheet) in normal_boat()) {
        all_hold(&sheet)?;
    }

    #[test]
    fn the_numbers_give_the_result_of_odd_boats_too(Drawn(sheet) in any_sheet()) {
        all_hold(&sheet)?;
    }
}

#[test]
fn the_default_and_the_demo_hold() {
    for sheet in [Worksheet::default(), demo()] {
        if let Err(fault) = all_hold(&sheet).and_then(|()| arrangements_hold(&sheet)) {
            panic!("{fault}");
        }
    }
}
