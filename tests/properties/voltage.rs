//! An alternator has a voltage of its own, wherever its cable leads.

use ampwright_core::boat::{
    AlternatorVolts, Inputs, NominalVolts, SecondRole, WayKind, WhichAlternator, Worksheet,
};
use ampwright_core::findings::{Code, Severity};
use ampwright_core::report;
use ampwright_core::report::Report;
use ampwright_core::simulation::Limit;
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet};
use crate::regulated;

fn boat(link: &str) -> Worksheet {
    regulated::opened(link)
}

fn says(report: &Report, key: &str) -> bool {
    report
        .findings
        .iter()
        .any(|finding| finding.code() == crate::code(key))
}

/// A 12 V alternator on a 48 V bank used to become one of 48 V without a word.
#[test]
fn a_12_v_alternator_gives_a_48_v_bank_nothing() {
    for link in [
        "v=2&bank_nominal_v=48&alt_nominal_v=12&alt_rated_a=150&end",
        "v=2&bank_nominal_v=48&alt_test_v=14&alt_rated_a=150&end",
        "v=2&alt_nominal_v=24&end",
        "v=2&alt_nominal_v=24&way_kind=converter&end",
        "v=2&way_kind=converter&way_start_v=28&alt_nominal_v=12&end",
    ] {
        let report = report(&boat(link));
        let first = &report.findings[0];
        assert_eq!(first.code(), Code::AlternatorVoltageMismatch, "{link}");
        assert_eq!(first.severity(), Severity::Danger, "{link}");
        assert_eq!(report.analyses.output.hot_a, 0.0, "{link}");
        assert_eq!(
            report.analyses.output.hot_limit,
            Limit::WrongVoltage,
            "{link}"
        );
        assert_eq!(report.analyses.run.start_a, 0.0, "{link}");
        assert_eq!(report.analyses.day.engine_hours, None, "{link}");
    }
}

#[test]
fn the_second_alternator_is_held_to_its_own_battery() {
    let report = report(&boat(
        "v=2&bank_nominal_v=24&alt_nominal_v=24&two_role=start&alt2_nominal_v=24&end",
    ));
    assert!(says(&report, "alternator_voltage_mismatch"));
    assert!(report.analyses.output.hot_a > 0.0);
    assert_eq!(report.analyses.alternators[1].hot_a, 0.0);
}

#[test]
fn an_alternator_of_its_banks_voltage_charges_it() {
    for (link, assumed) in [
        ("v=2&end", false),
        ("v=2&bank_nominal_v=24&end", true),
        ("v=2&bank_nominal_v=48&end", true),
        ("v=2&bank_nominal_v=24&alt_nominal_v=24&end", false),
        ("v=2&bank_nominal_v=24&alt_test_v=28&end", false),
        ("v=2&bank_nominal_v=48&way_kind=converter&end", false),
        (
            "v=2&bank_nominal_v=24&two_role=house&alt_nominal_v=24&end",
            true,
        ),
    ] {
        let report = report(&boat(link));
        assert!(report.analyses.output.hot_a > 10.0, "{link}");
        assert!(!says(&report, "alternator_voltage_mismatch"), "{link}");
        assert_eq!(
            says(&report, "alternator_voltage_assumed"),
            assumed,
            "{link}"
        );
    }
}

/// A sheet of version 1 took the alternator as one of its battery's voltage.
#[test]
fn version_1_keeps_its_alternators() {
    let sheet = boat("v=1&alt_test_v=28&end");
    assert_eq!(sheet.inputs.alt.nominal_v, AlternatorVolts::V12);
    assert!(report(&sheet).analyses.output.hot_a > 10.0);
    let sheet = boat("v=1&bank_nominal_v=24&end");
    assert_eq!(sheet.inputs.alt.nominal_v, AlternatorVolts::Same);
}

proptest! {
    #![proptest_config(crate::cases(300))]

    /// Wherever the cable leads, the alternator stays the one it is.
    #[test]
    fn a_new_arrangement_makes_no_new_alternator(
        Drawn(sheet) in any_sheet(),
        direct: bool,
        volts in 0..3usize,
    ) {
        let before = sheet.inputs;
        let mut after = before;
        after.way.kind = if direct { WayKind::Direct } else { WayKind::Converter };
        after.bank.nominal_v = NominalVolts::ALL[volts];
        after.keep_alternator_voltages(&before);
        // A start battery of 36 V is no option of an alternator's.
        let there = |inputs: &Inputs| inputs.first_alternator().blocks();
        prop_assume!(there(&before) != 3.0);
        prop_assert_eq!(there(&after), there(&before));
        let second = WhichAlternator::Second;
        if let Some((now, then)) = after.alternator(second).zip(before.alternator(second)) {
            prop_assert!(before.two.role != SecondRole::None);
            prop_assert!(then.blocks() == 3.0 || now.blocks() == then.blocks());
        }
    }

    /// What must not be connected gives nothing at any moment.
    #[test]
    fn a_mismatch_gives_nothing_and_is_told(Drawn(sheet) in any_sheet()) {
        let report = report(&sheet);
        let fits = sheet.inputs.first_alternator().fits();
        let all_fit = sheet.inputs.alternators().all(|installed| installed.fits());
        prop_assert_eq!(says(&report, "alternator_voltage_mismatch"), !all_fit);
        if !fits && sheet.inputs.two.role != SecondRole::House {
            prop_assert!(report.analyses.run.series.iter().all(|moment| moment.alternator_a == 0.0));
        }
    }
}
