//! Loads that run with the engine.

use ampwright_core::boat::{Basis, Current, Drawn, LegRow, Load, LoadRow, key};
use ampwright_core::schema::FieldType;
use ampwright_core::{Worksheet, report};

use crate::legs::{BOATS, as_the_run, boat, legs};

/// A load of 60 W for an hour, over the day or with the engine.
fn cooking(drawn: Drawn) -> Worksheet {
    let mut sheet = boat(BOATS[1]);
    let basis = Basis::Listed.to_value();
    let load = |name: &str, draw: f64, hours: f64, drawn: Drawn| Load {
        name: name.to_string(),
        row: LoadRow {
            draw,
            kind: Current::DcAmperes,
            hours,
            drawn,
            ..LoadRow::default()
        },
    };
    sheet.state(key!(daily.basis), basis).expect("a choice");
    sheet.loads = vec![
        load("Refrigerator", 4.0, 24.0, Drawn::OverDay),
        load("Cooking", 30.0, 1.0, drawn),
    ];
    sheet
}

/// What runs with the engine draws its whole current in the run, and the day's
/// need is the same.
#[test]
fn a_load_with_the_engine_draws_in_the_run() {
    let (day, run) = (cooking(Drawn::OverDay), cooking(Drawn::WithEngine));
    let (over_day, with_engine) = (report(&day).analyses, report(&run).analyses);
    assert_eq!(
        over_day.energy.anchor.use_ah,
        with_engine.energy.anchor.use_ah
    );
    assert_eq!(over_day.day.need_ah, with_engine.day.need_ah);
    let house = |a: &ampwright_core::analysis::Analyses| a.run.house_load_a;
    assert!((house(&over_day) - (4.0 + 30.0 / 24.0)).abs() < 1e-9);
    assert!((house(&with_engine) - 4.0).abs() < 1e-9);
    let [load] = &with_engine.run.engine_loads[..] else {
        panic!("one load")
    };
    assert!((load.amperes - 30.0).abs() < 1e-9 && load.hours == 1.0);
    // In the first hour the bank gets what the alternator gives less 34 A, then 30 more.
    let at = |minute: f64| {
        let series = &with_engine.run.series;
        series
            .iter()
            .find(|m| m.minute == minute)
            .expect("a moment")
    };
    for minute in [10.0, 55.0] {
        assert!((at(minute).alternator_a - at(minute).bank_a - 34.0).abs() < 1e-6);
    }
    assert!((at(65.0).alternator_a - at(65.0).bank_a - 4.0).abs() < 1e-6);
    assert!(with_engine.run.minutes > over_day.run.minutes);
    // Of the day's need the engine carries the cooking instead of the bank.
    let hours = |a: &ampwright_core::analysis::Analyses| a.day.engine_hours.expect("hours");
    let carried_ah = |a: &ampwright_core::analysis::Analyses, switched: f64| {
        house(a) * hours(a) + switched * hours(a).min(1.0)
    };
    let gained_ah = |a: &ampwright_core::analysis::Analyses| {
        let kept = a.plant.bank.charge_efficiency;
        a.day.mean_bank_a.expect("a mean") * hours(a) * kept
    };
    for (a, switched) in [(&over_day, 0.0), (&with_engine, 30.0)] {
        let whole_ah = gained_ah(a) + carried_ah(a, switched);
        assert!(
            (whole_ah - a.day.need_ah).abs() < 1e-3 * a.day.need_ah,
            "{whole_ah}"
        );
    }
}

/// Over the legs of a day it runs for its hours and no longer.
#[test]
fn a_load_with_the_engine_runs_for_its_hours() {
    let mut sheet = cooking(Drawn::WithEngine);
    let row = as_the_run(&sheet);
    let timed = |minutes: f64| LegRow {
        minutes: Some(minutes),
        pause_h: 1.0,
        ..row
    };
    sheet.legs = legs(&[timed(20.0), timed(20.0), timed(60.0), timed(30.0)]);
    let day = report(&sheet).analyses.legs.expect("legs");
    let switched_ah: Vec<f64> = day
        .legs
        .iter()
        .map(|leg| leg.house_ah - 4.0 * leg.minutes / 60.0)
        .collect();
    for (drawn, expected) in switched_ah.iter().zip([10.0, 10.0, 10.0, 0.0]) {
        assert!((drawn - expected).abs() < 1e-6, "{switched_ah:?}");
    }
}
