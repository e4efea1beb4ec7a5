//! What comes of an arrangement: finite figures, and those of its own report.

use ampwright_core::boat::{Arrangement, Key, Worksheet, demo};
use ampwright_core::decision::arrangements::compare;
use ampwright_core::findings::{Code, Severity};
use ampwright_core::report;
use ampwright_core::text::arrangements;
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::arrange::boats::{boat, outcome_of};
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
    "trouble",
    "belt_pct",
    "opens_s",
    "generator_h_day",
    "generator_h_year",
    "dock_fill_h",
    "bank_years",
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
        prop_assert_eq!(today.hours_day, report.analyses.day.engine_hours);
        prop_assert_eq!(today.hot_a, report.analyses.output.hot_a);
        if let Some(year) = today.year {
            prop_assert_eq!(year.capital, 0.0);
            let sources = year.fuel + year.engine + year.generator + year.shore;
            let sum = sources + year.bank + year.capital;
            prop_assert!((year.total - sum).abs() <= 1e-9 * sum.abs());
        }
    }

    /// An arrangement is what differs: laid on the worksheet it gives the
    /// other inputs, exactly.
    #[test]
    fn laid_on_it_gives_the_other(one in any_sheet(), other in any_sheet()) {
        let (one, other) = (one.0, other.0);
        let between = Arrangement::between(&one.inputs, &other.inputs);
        prop_assert_eq!(between.on(&one).inputs, other.inputs);
        prop_assert!(Arrangement::between(&one.inputs, &one.inputs).changes.is_empty());
    }

    /// A few words about a load dump say what the whole of it says.
    #[test]
    fn exposed_is_what_the_load_dump_says(drawn in normal_boat()) {
        let sheet = drawn.0;
        let today = &compare(&sheet).outcomes[0];
        let dumps = report(&sheet).analyses.load_dump.alternators;
        let too_much = dumps
            .iter()
            .any(|dump| dump.bank_left_v().is_some_and(|volts| dump.too_much(volts)));
        prop_assert_eq!(today.exposed, too_much && sheet.inputs.engine_charges());
    }
}

#[test]
fn the_demo_has_every_usual_arrangement() {
    let compared = compare(&demo());
    let names: Vec<&str> = compared.outcomes.iter().map(arrangements::name).collect();
    assert_eq!(
        names,
        [
            "Direct, with an external regulator",
            "Stock alternator direct, nothing watching its heat",
            "Through a DC-DC charger",
            "Direct, with a data link to the battery",
            "A second alternator for the bank",
            "A larger alternator in its place",
            "DC-DC charger, and more panels",
            "Solar and shore power, no engine",
            "A generator with a mains charger, no engine",
        ]
    );
    for (outcome, exposed) in compared
        .outcomes
        .iter()
        .zip([true, true, false, false, true, true, false, false, false])
    {
        assert_eq!(outcome.exposed, exposed, "{}", arrangements::name(outcome));
    }
}

#[test]
fn a_converter_draws_what_its_output_and_losses_ask() {
    // By hand: 40 A at about 13.5 V, 91 % efficient, from 14 V, and 5 A of
    // services: 40·13.5/(0.91·14) + 5 = 47.4 A.
    let mut sheet = demo();
    sheet.inputs.way.converter_a = Some(40.0);
    let outcome = outcome_of(&sheet, "Through a DC-DC charger");
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
    let begins_a = |sheet: &Worksheet| report(sheet).analyses.run.series[0].bank_a;
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
    assert!(report.analyses.run.start_a <= sheet.inputs.way.services_a);
    assert!(
        report
            .findings
            .iter()
            .any(|f| f.code() == Code::ConverterLockedOut)
    );
    assert_eq!(report.analyses.day.engine_hours, None);
}

/// A few thousandths of a litre are no reason to buy anything.
#[test]
fn dust_pays_nothing_back() {
    let mut sheet = demo();
    let value = |name: &str, text: &str| {
        let key = Key::named(name).expect("an input");
        (key, key.spec().read(text).expect("fits"))
    };
    sheet.arrangements = vec![Arrangement {
        name: "Dust".to_string(),
        changes: vec![
            value("eng_fuel_kg_l", "0.8401"),
            value("price_other", "500"),
        ],
    }];
    let outcome = outcome_of(&sheet, "Dust");
    assert!(outcome.bought > 0.0);
    let today = compare(&sheet).outcomes[0].year.expect("a year").running();
    assert!(outcome.year.expect("a year").running() < today);
    assert_eq!(outcome.payback_years, None);
}

#[test]
fn findings_that_speak_against_a_boat_are_named() {
    let outcome = &compare(&boat("reg_kind=internal")).outcomes[0];
    assert!(outcome.harm.iter().any(|f| f.code() == Code::WindingTooHot));
    let stops = outcome
        .harm
        .iter()
        .filter(|f| f.severity() == Severity::Danger);
    assert_eq!(stops.count(), outcome.dangers);
}
