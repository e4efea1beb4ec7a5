//! A regulator obeys only what it can know, and the bank's management system
//! opens when the bank is asked to take more than it may.

use ampwright_core::boat::{Chemistry, RegulatorKind, Worksheet};
use ampwright_core::findings::{Code, Finding, Severity};
use ampwright_core::report;
use ampwright_core::report::Report;
use ampwright_core::simulation::Limit;
use ampwright_core::simulation::management::OpeningCause;
use ampwright_core::text::load_dump::sentences;
use ampwright_core::units::Reader;
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet, normal_boat};
use crate::regulated;

fn boat(link: &str) -> Worksheet {
    regulated::opened(link)
}

fn says(report: &Report, key: &str) -> Option<String> {
    let found = report
        .findings
        .iter()
        .find(|finding| finding.code() == crate::code(key));
    found.map(crate::said)
}

/// The first finding of a boat that the management system disconnects.
fn opens(link: &str, cause: OpeningCause) -> Report {
    let report = report(&boat(link));
    let opening = report.analyses.run.opening.expect(link);
    assert_eq!(opening.cause, cause, "{link}");
    let first = &report.findings[0];
    assert_eq!(first.code(), Code::ManagementOpens, "{link}");
    assert_eq!(first.severity(), Severity::Danger, "{link}");
    assert_eq!(report.analyses.run.minutes_to_target, None, "{link}");
    report
}

/// It used to be shown a steady 55 A and a load dump of 41 V.
#[test]
fn a_built_in_regulator_does_not_hold_the_banks_limit() {
    let link = "v=2&reg_kind=internal&bank_charge_limit_a=50&end";
    let report = opens(link, OpeningCause::OverCurrent);
    let opening = report.analyses.run.opening.expect("it opens");
    assert!((5.0..=10.0).contains(&opening.after_s), "{opening:?}");
    assert!((80.0..90.0).contains(&opening.alternator_a), "{opening:?}");
    assert!(opening.bank_a > 75.0, "{opening:?}");
    assert!(report.analyses.run.start_a > 80.0);
    let dumps = &report.analyses.load_dump;
    let dump = &dumps.alternators[0];
    assert!((60.0..80.0).contains(&dump.peak_v()), "{}", dump.peak_v());
    assert!((80.0..90.0).contains(&dump.opening.expect("it opens").amperes));
    let text = says(&report, "management_opens").expect("said");
    assert!(text.contains("cap of 47 A"), "{text}");
    // No share of the run is held by a limit that nothing knows.
    let shares = &report.analyses.run.limit_shares;
    assert!(shares.iter().all(|share| share.limit != Limit::BankLimit));
}

#[test]
fn an_external_regulator_does_not_know_it_either() {
    opens("v=2&bank_charge_limit_a=50&end", OpeningCause::OverCurrent);
    opens(
        "v=2&bank_charge_limit_a=50&reg_current_cap_a=70&end",
        OpeningCause::OverCurrent,
    );
}

#[test]
fn a_data_link_holds_the_limit() {
    let report = report(&boat("v=2&bank_charge_limit_a=50&reg_link=limits&end"));
    assert_eq!(report.analyses.run.opening, None);
    let most_a = report
        .analyses
        .run
        .series
        .iter()
        .map(|moment| moment.bank_a);
    assert!((most_a.fold(0.0, f64::max) - 50.0).abs() < 1e-6);
    assert!(report.analyses.run.minutes_to_target.is_some());
    assert!(says(&report, "bank_limit_binds").is_some());
}

#[test]
fn a_current_cap_holds_it() {
    let held = report(&boat("v=2&bank_charge_limit_a=50&reg_current_cap_a=50&end"));
    assert_eq!(held.analyses.run.opening, None);
    assert_eq!(says(&held, "limit_held_by_loads"), None);
    // With the house's 5 A drawn, and not without.
    let by_loads = report(&boat("v=2&bank_charge_limit_a=50&reg_current_cap_a=54&end"));
    assert_eq!(by_loads.analyses.run.opening, None);
    assert!(says(&by_loads, "limit_held_by_loads").is_some());
}

/// A DC-DC charger gives what it is set to; the alternator keeps a battery.
#[test]
fn a_dc_dc_charger_larger_than_the_limit() {
    let link = "v=2&way_kind=converter&way_converter_a=40&bank_charge_limit_a=30&end";
    let report = opens(link, OpeningCause::OverCurrent);
    let text = says(&report, "management_opens").expect("said");
    assert!(text.contains("output to 28 A"), "{text}");
    assert!(text.contains("keeps its start battery"), "{text}");
    let dumps = &report.analyses.load_dump;
    assert_eq!(dumps.alternators[0].opening, None);
    let small = ampwright_core::report(&boat(
        "v=2&way_kind=converter&way_converter_a=30&bank_charge_limit_a=30&end",
    ));
    assert_eq!(small.analyses.run.opening, None);
}

#[test]
fn a_frozen_bank_cannot_be_charged() {
    let report = opens("v=2&bank_temperature_c=-5&end", OpeningCause::Cold);
    let text = says(&report, "management_opens").expect("said");
    assert!(text.contains("cannot be charged"), "{text}");
    opens("v=2&bank_temperature_c=61&end", OpeningCause::Hot);
    // Told by its link, the regulator lets nothing in.
    let linked = ampwright_core::report(&boat("v=2&bank_temperature_c=-5&reg_link=limits&end"));
    assert_eq!(linked.analyses.run.opening, None);
    assert!(says(&linked, "lithium_frozen").is_some());
}

/// A small bank that a strong alternator lifts above 3.65 V a cell.
#[test]
fn too_many_volts() {
    let report = opens(
        "v=2&bank_capacity_ah=50&bank_charge_limit_a=200&bank_charge_v=15.2&alt_rated_a=200&end",
        OpeningCause::OverVoltage,
    );
    let text = says(&report, "management_opens").expect("said");
    assert!(text.contains("14.2 V"), "{text}");
    assert_eq!(says(&report, "lithium_overvoltage"), None);
}

#[test]
fn a_charge_voltage_leaves_the_cells_room() {
    for (charge_v, key) in [
        ("14.2", None),
        ("14.5", Some("charge_voltage_no_room")),
        ("14.9", Some("lithium_overvoltage")),
    ] {
        let report = report(&boat(&format!("v=2&bank_charge_v={charge_v}&end")));
        for other in ["charge_voltage_no_room", "lithium_overvoltage"] {
            let said = says(&report, other).is_some();
            assert_eq!(said, key == Some(other), "{charge_v}");
        }
    }
}

/// Lead has no contactor: the current flows, and that is told.
#[test]
fn lead_takes_it_and_suffers() {
    let over = report(&boat("v=2&bank_chemistry=agm&bank_charge_limit_a=40&end"));
    assert_eq!(over.analyses.run.opening, None);
    assert!(over.analyses.run.start_a > 60.0);
    assert!(says(&over, "lead_over_current").is_some());
    let held = report(&boat(
        "v=2&bank_chemistry=agm&bank_charge_limit_a=40&reg_current_cap_a=40&end",
    ));
    assert_eq!(says(&held, "lead_over_current"), None);
}

/// 400 A·h draw 18 kA from a short at their posts, not the 7 kA that their
/// resistance to charging would give: 13.8 V over 0.3 Ω·A·h.
#[test]
fn a_short_meets_the_ohmic_resistance() {
    for (link, kilo) in [
        ("v=2&end", 18.4),
        ("v=2&bank_resistance_ohm_ah=0.15&end", 36.8),
        ("v=2&bank_capacity_ah=200&end", 9.2),
    ] {
        let sheet = boat(link);
        let wiring = report(&sheet).analyses.cables;
        let found = wiring.short_circuit_a / 1000.0;
        assert!((found - kilo).abs() < 0.1, "{link}: {found}");
    }
}

/// 24 V electronics withstand the standard's suppressed 65 V, 48 V ones about
/// 70 V (ISO 21780, from memory): not 140 V.
#[test]
fn what_electronics_withstand() {
    for (volts, withstand_v, clamp_v) in
        [("12", 35.0, 35.0), ("24", 65.0, 65.0), ("48", 70.0, 65.0)]
    {
        let sheet = boat(&format!("v=2&bank_nominal_v={volts}&end"));
        let dumps = report(&sheet).analyses.load_dump;
        let dump = &dumps.alternators[0];
        assert_eq!(dump.bear_v, withstand_v);
        assert_eq!(dump.clamp_v, clamp_v);
        let said = sentences(dump, &Reader::METRIC);
        let touch = said.iter().any(|text| text.contains("against touch"));
        assert_eq!(touch, volts == "48");
        let span = said
            .iter()
            .any(|text| text.contains(" to ") && text.contains("estimate"));
        assert!(span, "{:?}", said);
    }
    // The standard's 79 to 101 V.
    let sheet = boat("v=2&end");
    let margin = report(&sheet).analyses.load_dump.alternators[0].margin;
    assert!((margin - 101.0 / 79.0).abs() < 1e-9);
}

proptest! {
    #![proptest_config(crate::cases(300))]

    /// Without a link or a lower cap nothing flows otherwise for a lower limit.
    #[test]
    fn a_limit_that_nothing_knows_moves_no_current(Drawn(sheet) in normal_boat(), part in 0.1..1.0f64) {
        let mut low = sheet.clone();
        low.inputs.bank.charge_limit_a = Some((part * sheet.inputs.charge_limit_a()).max(1.0));
        // One that nobody stated suits the limit.
        low.inputs.way.converter_a = Some(sheet.inputs.charger_a());
        prop_assume!(!sheet.inputs.limit_linked() && !low.inputs.limit_linked());
        let (before, after) = (report(&sheet), report(&low));
        prop_assert_eq!(&before.analyses.run.series, &after.analyses.run.series);
        prop_assert_eq!(before.analyses.output.hot_a, after.analyses.output.hot_a);
    }

    /// Lead never opens, a link never lets the current pass, and whatever opens
    /// is the first thing said.
    #[test]
    fn an_opening_is_told_first(Drawn(sheet) in any_sheet()) {
        let report = report(&sheet);
        let inputs = &sheet.inputs;
        let opening = report.analyses.run.opening;
        let told = |f: &Finding| f.code() == Code::ManagementOpens;
        prop_assert_eq!(opening.is_some(), report.findings.iter().any(told));
        // Where the field is off first nothing is cut off: other things may be worse.
        if !inputs.field_off_first() {
            prop_assert_eq!(opening.is_some(), report.findings.first().is_some_and(told));
        }
        let Some(opening) = opening else { return Ok(()) };
        prop_assert!(inputs.bank.chemistry == Chemistry::Lfp);
        prop_assert!(opening.after_s >= 2.0 && opening.after_s <= 60.0 * report.analyses.run.minutes + 1e-6);
        prop_assert!(opening.bank_a > 0.0);
        if inputs.limit_linked() {
            prop_assert!(inputs.reg.kind == RegulatorKind::External);
            prop_assert_eq!(opening.cause, OpeningCause::OverVoltage);
        }
        prop_assert_eq!(report.analyses.run.minutes_to_target, None);
    }
}
