//! Arrangements beside each other.

use ampwright_core::arrange::{compare, parts, proposals};
use ampwright_core::report;
use ampwright_core::worksheet::{Arrangement, Key, SecondRole, WayKind, Worksheet, demo};
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::draw::{any_sheet, normal_boat};

/// What may be missing.
const MAY_BE_NULL: &[&str] = &[
    "hours_day",
    "hours_year",
    "minutes_to_target",
    "fuel_year_l",
    "year",
    "engine_kwh",
    "used_kwh",
    "payback_years",
    "belt_pct",
];

proptest! {
    #![proptest_config(crate::cases(150))]

    #[test]
    fn every_outcome_is_finite(drawn in any_sheet()) {
        let compared = compare(&drawn.0);
        prop_assert!(!compared.outcomes.is_empty());
        let json = serde_json::to_value(&compared).expect("is JSON");
        for outcome in json["outcomes"].as_array().expect("a list") {
            for (name, part) in outcome.as_object().expect("an object") {
                prop_assert!(
                    *part != Json::Null || MAY_BE_NULL.contains(&name.as_str()),
                    "{name} is no number"
                );
            }
            for (name, part) in outcome["year"].as_object().into_iter().flatten() {
                prop_assert!(*part != Json::Null, "year.{name}");
            }
        }
    }

    /// The first is the worksheet itself: its own report, nothing bought.
    #[test]
    fn the_first_is_the_worksheet_as_it_stands(drawn in normal_boat()) {
        let compared = compare(&drawn.0);
        let today = &compared.outcomes[0];
        let report = report(&drawn.0);
        prop_assert!(today.parts.is_empty() && today.bought == 0.0);
        prop_assert_eq!(today.hours_day, report.day.engine_hours);
        prop_assert_eq!(today.hot_a, report.machine.hot_a);
        if let Some(year) = today.year {
            prop_assert_eq!(year.capital, 0.0);
            let sum = year.fuel + year.engine + year.shore + year.bank + year.capital;
            prop_assert!((year.total - sum).abs() <= 1e-9 * sum.abs());
        }
    }

    /// An arrangement is what differs: laid on the worksheet it gives the
    /// other inputs, exactly.
    #[test]
    fn laid_on_it_gives_the_other(one in any_sheet(), other in any_sheet()) {
        let (one, other) = (one.0, other.0);
        let between = Arrangement::between("x", &one.inputs, &other.inputs);
        prop_assert_eq!(between.on(&one).inputs, other.inputs);
        prop_assert!(Arrangement::between("x", &one.inputs, &one.inputs).changes.is_empty());
    }

    /// Going there and staying there costs nothing more.
    #[test]
    fn what_is_there_is_not_bought(drawn in normal_boat()) {
        for proposal in proposals(&drawn.0) {
            let with = proposal.on(&drawn.0);
            prop_assert!(parts(&with, &with).is_empty());
            for part in parts(&drawn.0, &with) {
                prop_assert!(part.price >= 0.0, "{part:?}");
            }
        }
    }
}

fn outcome_of(sheet: &Worksheet, name: &str) -> ampwright_core::arrange::Outcome {
    compare(sheet)
        .outcomes
        .into_iter()
        .find(|outcome| outcome.name.contains(name))
        .unwrap_or_else(|| panic!("no arrangement called {name}"))
}

#[test]
fn the_demo_has_every_usual_arrangement() {
    let compared = compare(&demo());
    let names: Vec<&str> = compared.outcomes.iter().map(|o| o.name.as_str()).collect();
    assert_eq!(
        names,
        [
            "Regulated, straight to the bank",
            "Stock machine and converter",
            "A second machine for the bank",
            "A larger machine in its place",
            "Converter, and more panels",
            "Sun and shore, no engine",
        ]
    );
    for (outcome, exposed) in compared
        .outcomes
        .iter()
        .zip([true, false, true, true, false, false])
    {
        assert_eq!(outcome.exposed, exposed, "{}", outcome.name);
    }
}

#[test]
fn a_converter_draws_what_its_output_and_losses_ask() {
    // By hand: 40 A at about 13.5 V, 91 % efficient, from 14 V, and 5 A of
    // services: 40·13.5/(0.91·14) + 5 = 47.4 A.
    let outcome = outcome_of(&demo(), "converter");
    assert!((outcome.hot_a - 47.4).abs() < 1.0, "{}", outcome.hot_a);
}

#[test]
fn a_converter_turned_round_takes_from_the_bank() {
    // By hand: 5 A at 14 V through 91 % from 13.2 V is 5.83 A.
    let mut apart = demo();
    let kept = Key::named("way_start_kept").expect("an input");
    apart
        .state(kept, kept.spec().default())
        .expect("its default");
    let begins_a = |sheet: &Worksheet| report(sheet).run.series[0].bank_a;
    let gain_a = begins_a(&apart) - begins_a(&demo());
    // A little less taken is a little more volts, and a little less given.
    assert!((gain_a - 5.83).abs() < 0.3, "{gain_a}");
}

#[test]
fn below_its_lock_out_a_converter_passes_nothing() {
    let mut sheet = demo();
    for (name, text) in [("way_kind", "converter"), ("way_start_v", "12.8")] {
        let key = Key::named(name).expect("an input");
        let value = key.spec().read(text).expect("fits");
        sheet.state(key, value).expect("fits");
    }
    let report = report(&sheet);
    assert!(report.run.start_a <= sheet.inputs.way.services_a);
    assert!(
        report
            .findings
            .iter()
            .any(|f| f.key == "converter_locked_out")
    );
    assert_eq!(report.day.engine_hours, None);
}

/// A second machine on the house bank brings a lead of its own, whatever the
/// first one feeds.
#[test]
fn a_second_machine_on_the_bank_brings_its_lead() {
    let mut now = Worksheet::default();
    now.inputs.way.kind = WayKind::Converter;
    let mut with = now.clone();
    with.inputs.two.role = SecondRole::House;
    with.inputs.alt2.rated_a = 180.0;
    let bought: Vec<String> = parts(&now, &with).into_iter().map(|p| p.what).collect();
    for what in ["Alternator, 180 A", "Cable and fuses of the charge lead"] {
        assert!(bought.iter().any(|part| part == what), "{bought:?}");
    }
}
