//! Findings in words: every one is reached, each sentence is said in the units
//! and with the decimals its reader wants, and no figure is left behind.

use std::collections::BTreeSet;

use ampwright_core::exchange::open_link;
use ampwright_core::findings::{Code, Finding};
use ampwright_core::text::findings::sentence;
use ampwright_core::text::{question, verdict};
use ampwright_core::units::{CHOICES, Reader};
use ampwright_core::{Report, report};
use ampwright_tests::troubled::TROUBLED;
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet, normal_boat};

/// The units that a reader of the other units never meets.
fn first_units() -> Vec<&'static str> {
    let units = CHOICES.iter().flat_map(|(_, units)| *units);
    units.map(|unit| unit.symbol).collect()
}

/// Whether a number stands before a unit somewhere: "20 °C", "1 to 3 m".
fn told_in(text: &str, unit: &str) -> bool {
    let words: Vec<&str> = text.split([' ', '(', ')']).collect();
    words.windows(2).any(|pair| {
        let number = pair[0].ends_with(|last: char| last.is_ascii_digit());
        number && pair[1].trim_end_matches(['.', ',', ':', ';']) == unit
    })
}

/// Whether a decimal point stands between two digits.
fn decimal_point(text: &str) -> bool {
    let signs: Vec<char> = text.chars().collect();
    signs
        .windows(3)
        .any(|three| three[0].is_ascii_digit() && three[1] == '.' && three[2].is_ascii_digit())
}

/// All that is said of a boat, to a reader.
fn all_said(report: &Report, reader: &Reader) -> Vec<String> {
    let findings = report.findings.iter().map(|found| sentence(found, reader));
    let questions = report.questions.iter().map(|asked| question(asked, reader));
    let mut said: Vec<String> = findings.chain(questions).collect();
    said.push(verdict(&report.verdict, reader));
    said
}

fn holds(report: &Report) -> Result<(), TestCaseError> {
    let metric = all_said(report, &Reader::METRIC);
    for (said, plain) in all_said(report, &Reader::US).iter().zip(&metric) {
        for unit in first_units() {
            // Sizes of belts and cables are names, whatever the units.
            let name = unit == "mm" && plain.contains(" mm V-belt");
            prop_assert!(name || !told_in(said, unit), "{unit} in {said}");
        }
    }
    let comma = Reader::METRIC.with_decimal_comma(true);
    for (said, plain) in all_said(report, &comma).iter().zip(&metric) {
        prop_assert!(!decimal_point(&without_names(said)), "{said}");
        // Nothing else changes.
        prop_assert_eq!(said.replace(',', "."), plain.replace(',', "."));
    }
    for said in &metric {
        for wrong in ["NaN", "inf ", "-0", "−0 ", "−0.0 ", "  ", "{", "}", " -"] {
            prop_assert!(!said.contains(wrong), "“{wrong}” in {said}");
        }
        prop_assert!(said.ends_with(['.', '?']), "{said}");
    }
    Ok(())
}

/// Without the numbers of standards, which are names.
fn without_names(said: &str) -> String {
    said.replace("46 CFR 111.01-15", "")
}

proptest! {
    #![proptest_config(crate::cases(100))]

    #[test]
    fn each_reader_is_told_in_own_units_on_any_boat(Drawn(sheet) in any_sheet()) {
        holds(&report(&sheet))?;
    }

    #[test]
    fn each_reader_is_told_in_own_units_on_usual_boats(Drawn(sheet) in normal_boat()) {
        holds(&report(&sheet))?;
    }
}

#[test]
fn units_and_points_are_seen() {
    assert!(told_in("It reaches 20 °C.", "°C") && told_in("(1 to 3 m)", "m"));
    assert!(!told_in("It reaches 68 °F. A 12 mm", "m"));
    assert!(decimal_point("14.2 V") && !decimal_point("14,2 V. 3"));
}

/// Boats that between them have every finding there is.
fn troubled() -> impl Iterator<Item = Report> {
    TROUBLED.iter().map(|link| {
        let opened = open_link(link).expect("a link");
        assert!(opened.remarks.is_empty(), "{link}: {:?}", opened.remarks);
        report(&opened.sheet)
    })
}

#[test]
fn every_finding_is_reached_and_said_in_own_units() {
    let mut seen = BTreeSet::new();
    for report in troubled() {
        seen.extend(report.findings.iter().map(Finding::code));
        holds(&report).expect("said in own units");
    }
    let never: Vec<_> = Code::ALL
        .iter()
        .filter(|code| !seen.contains(code))
        .collect();
    assert!(never.is_empty(), "{never:?}");
}

/// JSON names a finding as its code does, and a code belongs to one subject.
#[test]
fn json_has_code_and_severity() {
    let mut subjects = Vec::new();
    for finding in troubled().flat_map(|report| report.findings) {
        let json = serde_json::to_value(&finding).expect("JSON");
        assert_eq!(json["code"], finding.code().name());
        assert_eq!(json["severity"], serde_json::json!(finding.severity()));
        let own = (finding.code(), std::mem::discriminant(&finding));
        if !subjects.contains(&own) {
            subjects.push(own);
        }
    }
    assert_eq!(subjects.len(), Code::ALL.len());
}

/// Worst first, and in one order within each severity.
#[test]
fn worst_first() {
    for report in troubled() {
        assert!(report.findings.is_sorted_by_key(Finding::severity));
    }
}
