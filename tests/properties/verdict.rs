//! The verdict says what the findings say.

use ampwright_core::analysis::Part;
use ampwright_core::boat::WhichAlternator;
use ampwright_core::findings::{Finding, Severity, Verdict};
use ampwright_core::report::Report;
use ampwright_core::text::{answer, sentence};
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet, normal_boat, with_legs};
use crate::regulated::{self, regulated};

fn opened(link: &str) -> Worksheet {
    regulated::opened(link)
}

fn found(report: &Report, key: &str) -> Option<Severity> {
    let finding = report
        .findings
        .iter()
        .find(|finding| finding.code() == crate::code(key));
    finding.map(|finding| finding.severity())
}

const TOO_HOT: [&str; 3] = ["winding_too_hot", "rectifier_too_hot", "case_too_hot"];

fn agrees(sheet: &Worksheet, report: &Report) -> Result<(), TestCaseError> {
    let too_hot = TOO_HOT.iter().any(|key| found(report, key).is_some());
    let near = found(report, "near_limit").is_some() || found(report, "set_point_high").is_some();
    let soaks = found(report, "soak_rectifier").is_some();
    match report.verdict {
        Verdict::NotRun => prop_assert!(!sheet.inputs.engine_charges()),
        Verdict::WrongVoltage { .. } => {
            prop_assert!(found(report, "alternator_voltage_mismatch").is_some());
        }
        Verdict::BatteryDisconnects {
            after_s,
            field_off_first,
            load_lost,
            ..
        } => {
            let opening = report.analyses.run.opening.expect("an opening");
            prop_assert_eq!(after_s, opening.after_s);
            // With the field off first nothing is cut off under load.
            let severity = if field_off_first {
                Severity::Fix
            } else {
                Severity::Danger
            };
            prop_assert!(!(field_off_first && load_lost));
            prop_assert_eq!(found(report, "management_opens"), Some(severity));
        }
        Verdict::BankFrozen => {
            prop_assert!(report.analyses.run.bank_frozen);
            prop_assert_eq!(found(report, "lead_frozen"), Some(Severity::Danger));
            prop_assert!(report.analyses.run.series.iter().all(|m| m.bank_a <= 0.0));
            // A target below the start is reached before anything flows.
            let run = &sheet.inputs.run;
            let reached = (run.to_pct <= run.from_pct).then_some(0.0);
            prop_assert_eq!(report.analyses.run.minutes_to_target, reached);
            let hours = report.analyses.day.engine_hours;
            prop_assert!(hours.is_none_or(|hours| hours == 0.0));
        }
        Verdict::NotCharged => {
            prop_assert!(report.analyses.run.series.iter().all(|m| m.bank_a <= 0.0))
        }
        Verdict::Overheats { after_min, .. } => {
            prop_assert!(too_hot);
            prop_assert!(
                after_min.is_none_or(|minutes| minutes <= report.analyses.run.minutes + 1e-6)
            );
        }
        Verdict::DisconnectsInLeg { leg, after_s, .. } => {
            let legs = report.analyses.legs.as_ref().expect("legs");
            let opening = legs.legs[leg - 1].opening.expect("an opening");
            prop_assert_eq!(after_s, opening.after_s);
            prop_assert!(found(report, "leg_disconnects").is_some());
        }
        Verdict::OverheatsInLeg { .. } => {
            prop_assert!(found(report, "leg_too_hot").is_some());
        }
        Verdict::NeverSettles => prop_assert!(report.analyses.alternators[0].hot.is_none()),
        Verdict::HotAfterStop { .. } => prop_assert!(soaks && !too_hot),
        Verdict::RunsHot {
            celsius, limit_c, ..
        } => {
            prop_assert!(near && !too_hot && !soaks);
            prop_assert!((0.0..5.0).contains(&(limit_c - celsius)));
        }
        Verdict::HeldByRegulator | Verdict::Survives => {
            prop_assert!(!too_hot && !soaks && found(report, "near_limit").is_none());
            prop_assert!(report.analyses.alternators[0].hot.is_some());
        }
    }
    if report.verdict != Verdict::NotRun {
        prop_assert!(
            sentence(sheet, report, &Reader::METRIC)
                .starts_with(&answer(report, &Reader::METRIC).verdict)
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(150))]

    #[test]
    fn as_the_findings_on_any_boat(Drawn(sheet) in any_sheet()) {
        agrees(&sheet, &report(&sheet))?;
    }

    #[test]
    fn as_the_findings_on_boats_with_legs(Drawn(sheet) in with_legs(normal_boat())) {
        agrees(&sheet, &report(&sheet))?;
    }

    #[test]
    fn as_the_findings_on_usual_boats(Drawn(sheet) in normal_boat()) {
        agrees(&sheet, &report(&sheet))?;
    }
}

#[test]
fn one_of_each() {
    for (link, code) in [
        ("v=2&end", "held_by_regulator"),
        ("v=2&reg_kind=internal&end", "overheats"),
        (
            "v=2&reg_kind=internal&way_kind=converter&way_converter_a=20&end",
            "survives",
        ),
        ("v=2&reg_set_point_c=118&end", "runs_hot"),
        ("v=2&eng_rpm=600&end", "not_charged"),
        ("v=2&shore_rest=shore&end", "not_run"),
        ("v=2&bank_charge_limit_a=50&end", "battery_disconnects"),
        (
            "v=2&bank_nominal_v=24&alt_nominal_v=12&end",
            "wrong_voltage",
        ),
    ] {
        let sheet = opened(link);
        let report = report(&sheet);
        let json = serde_json::to_value(report.verdict).expect("JSON");
        assert_eq!(json["code"], code, "{link}: {:?}", report.verdict);
        agrees(&sheet, &report).expect(link);
    }
}

/// The moment it is said to pass its limit, it does.
#[test]
fn the_minute_is_right() {
    let sheet = opened("v=2&reg_kind=internal&end");
    let of = report(&sheet);
    let Verdict::Overheats {
        part: Part::Case,
        after_min: Some(minutes),
        limit_c,
        ..
    } = of.verdict
    else {
        panic!("{:?}", of.verdict)
    };
    let at = |minute: f64| {
        of.analyses
            .run
            .series
            .iter()
            .find(|m| m.minute == minute)
            .expect("a minute")
    };
    assert!(at(minutes.floor()).alternators[0].case_c <= limit_c);
    assert!(at(minutes.ceil()).alternators[0].case_c >= limit_c);
    assert_eq!(
        answer(&of, &Reader::METRIC).verdict,
        "The alternator overheats in 28 min: the case passes 120 °C."
    );
}

/// A second alternator is held to its own limits, not to the first one's.
#[test]
fn each_has_limits_of_its_own() {
    let boat = "v=2&two_role=house&alt2_class=b&reg_set_point_c=110&alt_class=n";
    let of = report(&opened(&format!("{boat}&end")));
    assert!(
        matches!(
            of.verdict,
            Verdict::Overheats {
                alternator: WhichAlternator::Second,
                part: Part::Winding,
                ..
            }
        ),
        "{:?}",
        of.verdict
    );
}

/// A DC-DC charger of 40 A behind a small alternator: within 5 K of a limit,
/// which passed in silence.
#[test]
fn within_5_k_of_a_limit_is_to_be_put_right() {
    let boat = "v=2&reg_kind=internal&way_kind=converter&way_converter_a=40";
    let plain = opened(&format!("{boat}&end"));
    let hottest_c = report(&plain).analyses.run.alternators[0].peak.case_c;
    for (above_k, near) in [(1.0, true), (4.5, true), (6.0, false)] {
        let limit_c = hottest_c + above_k;
        let sheet = opened(&format!("{boat}&alt_case_limit_c={limit_c}&end"));
        let of = report(&sheet);
        let expected = near.then_some(Severity::Fix);
        assert_eq!(found(&of, "near_limit"), expected, "{above_k} K");
        assert_eq!(matches!(of.verdict, Verdict::RunsHot { .. }), near);
    }
}

/// What is said of nearly every boat is said where it decides something.
#[test]
fn not_said_of_every_boat() {
    let usual = report(&regulated());
    for key in ["case_sensor_lags", "engine_low_load"] {
        assert_eq!(found(&usual, key), None, "{key}");
    }
    let long = report(&opened("v=2&daily_use_ah=300&end"));
    assert_eq!(found(&long, "engine_low_load"), Some(Severity::Note));
    let close = report(&opened("v=2&alt_rated_a=200&bank_capacity_ah=600&end"));
    assert_eq!(found(&close, "case_sensor_lags"), Some(Severity::Note));
}
/// Three parts too hot are told three times, what to do about it once.
#[test]
fn what_to_do_is_said_once() {
    for link in [
        "v=2&reg_kind=internal&end",
        "v=2&reg_kind=internal&way_kind=converter&way_converter_a=60&end",
        "v=2&reg_kind=internal&way_kind=converter&way_converter_a=40&bank_nominal_v=24&alt_rated_a=120&end",
    ] {
        let of = report(&opened(link));
        let hot = || {
            of.findings
                .iter()
                .filter(|f| TOO_HOT.contains(&f.code().name()))
        };
        let worst = hot().map(|f| f.severity()).min();
        // A Danger of what nothing holds back says it before them.
        let advises = |f: &&Finding| {
            let said = crate::said(f);
            let says = |words| said.contains(words);
            says("cooler air") || (says("Put an external regulator") && Some(f.severity()) == worst)
        };
        let advice: Vec<_> = of.findings.iter().filter(advises).collect();
        assert!(hot().count() > 1, "{link}: {:?}", of.findings);
        assert_eq!(advice.len(), 1, "{link}: {advice:?}");
        assert_eq!(Some(advice[0].severity()), worst, "{link}");
    }
}
