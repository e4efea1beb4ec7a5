//! Arrangements beside each other.

use ampwright_core::boat::{
    AlternatorVolts, Arrangement, ClampKind, Inputs, InstalledAlternator, Key, RegulatorKind,
    SecondRole, WayKind, WhichAlternator, Worksheet, demo,
};
use ampwright_core::decision::arrangements::{Purchase, Role, all, compare, parts, proposals};
use ampwright_core::findings::{Code, Severity};
use ampwright_core::report;
use ampwright_core::text::purchase;
use ampwright_core::units::Reader;
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::draw::{any_sheet, normal_boat};
use crate::regulated;

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

    /// Only the boat as it stands, and the user's own, may be harmful.
    #[test]
    fn no_proposal_does_harm(drawn in normal_boat()) {
        let mut sheet = drawn.0;
        sheet.arrangements.clear();
        let compared = compare(&sheet);
        let outcomes = compared.outcomes.iter();
        for outcome in outcomes.filter(|one| one.role == Role::Proposed) {
            prop_assert_eq!((outcome.dangers, outcome.harm.len()), (0, 0), "{}", &outcome.name);
        }
        for left_out in &compared.left_out {
            prop_assert!(!left_out.harm.is_empty());
        }
        let names = |all: Vec<Arrangement>| -> Vec<String> {
            all.into_iter().map(|a| a.name).collect()
        };
        let outcomes = compared.outcomes.iter().map(|o| o.name.clone());
        prop_assert_eq!(names(all(&sheet)), outcomes.collect::<Vec<_>>());
    }

    /// Wherever a proposal leads an alternator, it is of that battery's voltage,
    /// and one that was there is the one it was.
    #[test]
    fn proposals_keep_voltages(drawn in any_sheet()) {
        let sheet = drawn.0;
        for proposal in proposals(&sheet) {
            let with = proposal.on(&sheet).inputs;
            for now in with.alternators() {
                prop_assert!(now.fits(), "{}", proposal.name);
                let same = |then: &InstalledAlternator| {
                    let (then, now) = (then.alternator, now.alternator);
                    then.rated_a == now.rated_a && then.mass_kg == now.mass_kg
                };
                // A bank of 48 V alone made it one of 48; it starts an engine of 12.
                let was = |then: &InstalledAlternator| {
                    let taken_for_48 = then.voltage_assumed() && then.blocks() > 2.0;
                    then.blocks() == now.blocks() || taken_for_48 && now.blocks() == 1.0
                };
                let mut alike = sheet.inputs.alternators().filter(same).peekable();
                prop_assert!(
                    alike.peek().is_none() || alike.any(|then| was(&then)),
                    "{}", proposal.name
                );
            }
        }
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

fn boat(link: &str) -> Worksheet {
    regulated::opened(&format!("v=2&{link}&end"))
}

fn proposal_of(sheet: &Worksheet, name: &str) -> Option<Worksheet> {
    let proposals = proposals(sheet);
    let found = proposals.iter().find(|proposal| proposal.name == name)?;
    Some(found.on(sheet))
}

const DIRECT: &str = "Direct, with an external regulator";
const CHARGER: &str = "Through a DC-DC charger";
const LARGER: &str = "A larger alternator in its place";
const SECOND: &str = "A second alternator for the bank";

fn outcome_of(sheet: &Worksheet, name: &str) -> ampwright_core::decision::arrangements::Outcome {
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
            "Direct, with an external regulator",
            "Stock alternator direct, nothing watching its heat",
            "Through a DC-DC charger",
            "Direct, with a data link to the battery",
            "A second alternator for the bank",
            "A larger alternator in its place",
            "DC-DC charger, and more panels",
            "Solar and shore power, no engine",
        ]
    );
    for (outcome, exposed) in compared
        .outcomes
        .iter()
        .zip([true, true, false, false, true, true, false, false])
    {
        assert_eq!(outcome.exposed, exposed, "{}", outcome.name);
    }
}

#[test]
fn a_converter_draws_what_its_output_and_losses_ask() {
    // By hand: 40 A at about 13.5 V, 91 % efficient, from 14 V, and 5 A of
    // services: 40·13.5/(0.91·14) + 5 = 47.4 A.
    let outcome = outcome_of(&demo(), "Through a DC-DC charger");
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

/// What there is to buy, in words.
fn bought(now: &Worksheet, with: &Worksheet) -> Vec<String> {
    let parts = parts(now, with);
    parts
        .iter()
        .map(|part| purchase(part, &Reader::METRIC))
        .collect()
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
    let bought = bought(&now, &with);
    for what in ["Alternator, 180 A", "Cable and fuses of a charge lead"] {
        assert!(bought.iter().any(|part| part == what), "{bought:?}");
    }
}

#[test]
fn a_direct_boat_with_a_built_in_regulator_is_offered_an_external_one() {
    let sheet = boat("reg_kind=internal&bank_charge_limit_a=50");
    let compared = compare(&sheet);
    assert_eq!(
        compared.outcomes[0].name,
        "Direct, with the built-in regulator"
    );
    assert!(!compared.outcomes[0].harm.is_empty());
    let with = proposal_of(&sheet, DIRECT).expect("the regulator");
    assert_eq!(with.inputs.reg.kind, RegulatorKind::External);
    let cap_a = with.inputs.reg.current_cap_a.expect("a cap");
    assert!(cap_a <= 50.0 && cap_a > 40.0, "{cap_a}");
    // The regulator and nothing else: the lead is there.
    let bought = bought(&sheet, &with);
    assert_eq!(bought, ["External regulator with sensors"]);
}

#[test]
fn a_12_v_alternator_is_not_proposed_for_a_48_v_bank() {
    let sheet =
        boat("bank_nominal_v=48&bank_capacity_ah=200&way_kind=converter&way_converter_a=10");
    assert!(proposal_of(&sheet, DIRECT).is_none());
    let with = proposal_of(&sheet, SECOND).expect("a second alternator");
    assert_eq!(with.inputs.alt.nominal_v, AlternatorVolts::V48);
    assert_eq!(
        with.inputs
            .alternator(WhichAlternator::Second)
            .expect("the stock one")
            .blocks(),
        1.0
    );
    assert!(
        parts(&sheet, &with)
            .iter()
            .any(|part| part.item == Purchase::Alternator)
    );
}

#[test]
fn a_24_v_alternator_brings_its_start_battery() {
    let link = "bank_nominal_v=24&alt_nominal_v=24&alt_rated_a=80";
    let with = proposal_of(&boat(link), CHARGER).expect("through a charger");
    assert_eq!(with.inputs.way.start_v, 28.0);
    assert_eq!(with.inputs.way.lockout_v, 26.0);
    assert_eq!(with.inputs.first_alternator().blocks(), 2.0);
    // With a start battery of 12 V there is no such arrangement.
    let twelve = boat(&format!("{link}&way_start_v=13.9"));
    assert!(proposal_of(&twelve, CHARGER).is_none());
}

#[test]
fn a_larger_alternator_is_larger_and_its_engine_turns_it() {
    let rated_w = |inputs: &Inputs| {
        let installed = inputs.first_alternator();
        installed.alternator.rated_a * 14.0 * installed.blocks()
    };
    for link in [
        "alt_rated_a=35&eng_displacement_l=0.5&reg_kind=internal",
        "alt_rated_a=200&eng_displacement_l=3",
        "bank_nominal_v=24&alt_nominal_v=24&alt_rated_a=100&eng_displacement_l=3",
        "alt_rated_a=250&eng_displacement_l=3",
    ] {
        let sheet = boat(link);
        let Some(with) = proposal_of(&sheet, LARGER) else {
            continue;
        };
        assert!(rated_w(&with.inputs) > rated_w(&sheet.inputs), "{link}");
        let share_pct = report(&with).analyses.engine.peak_share_pct;
        assert!(share_pct <= 60.0, "{share_pct} {link}");
    }
    // 180 A are less than the 200 there, and nothing usual is more than 250.
    assert!(proposal_of(&boat("alt_rated_a=250"), LARGER).is_none());
}

/// A charger of 40 A at 12 V takes 40·14/0.91 = 615 W, more than half of the
/// 490 W of a 35 A alternator.
#[test]
fn a_charger_suits_its_alternator() {
    let sheet = boat("alt_rated_a=35&reg_kind=internal");
    let with = proposal_of(&sheet, CHARGER).expect("a small one");
    assert!(with.inputs.way.converter_a <= 15.0);
    // One that is too much is told, in watts whatever the voltages.
    let says = |link: &str| {
        let report = report(&boat(link));
        report
            .findings
            .iter()
            .any(|f| f.code() == Code::ConverterLarge)
    };
    // 30 A at 28 V are 923 W, of 1400; 20 A are 615.
    assert!(says(
        "bank_nominal_v=24&way_kind=converter&way_converter_a=30"
    ));
    assert!(!says(
        "bank_nominal_v=24&way_kind=converter&way_converter_a=20"
    ));
}

/// What the parts come to, as an electrician would write the bill.
#[test]
fn parts_are_what_a_yard_would_bill() {
    // A second alternator beside one that is regulated and led to the bank.
    let now = boat("way_kind=direct");
    let with = proposal_of(&now, SECOND).expect("a second one");
    assert_eq!(
        bought(&now, &with),
        [
            "Alternator, 180 A",
            "Bracket, pulleys and belt",
            "External regulator with sensors",
            "Cable and fuses of a charge lead",
        ]
    );
    // In its place the regulator moves over.
    let with = proposal_of(&now, LARGER).expect("a larger one");
    assert!(!bought(&now, &with).contains(&"External regulator with sensors".to_string()));
    // The same figures at another voltage are another alternator.
    let mut with = now.clone();
    with.inputs.bank.nominal_v = ampwright_core::boat::NominalVolts::V24;
    with.inputs.alt.nominal_v = AlternatorVolts::V24;
    assert!(bought(&now, &with).contains(&"Alternator, 100 A".to_string()));
    // A suppressor that is there is not bought again.
    let mut now = boat("way_kind=converter&reg_kind=internal");
    now.inputs.guard.clamp = ClampKind::Clamp;
    let with = proposal_of(&now, DIRECT).expect("direct");
    assert!(bought(&now, &with).contains(&"Protection against a load dump".to_string()));
    let mut guarded = with.clone();
    guarded.inputs.reg.kind = RegulatorKind::Internal;
    let gained = bought(&guarded, &with);
    assert_eq!(gained, ["External regulator with sensors"]);
}

#[test]
fn a_charger_is_turned_round_between_like_voltages_only() {
    let back = |link: &str| {
        let now = boat(link);
        let mut with = now.clone();
        with.inputs.way.kind = WayKind::Direct;
        with.inputs.way.start_kept = ampwright_core::boat::StartKept::House;
        let charger = parts(&now, &with)
            .into_iter()
            .find(|part| part.item == Purchase::Charger);
        charger.map(|part| part.price)
    };
    assert_eq!(back("way_kind=converter"), None);
    // From 24 V down to 12 V is another device than from 12 up to 24.
    assert!(back("way_kind=converter&bank_nominal_v=24").is_some());
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
