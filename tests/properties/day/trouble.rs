//! A day without an answer says why, and what keeps the bank from its charge.

use ampwright_core::analysis::engine_day::DayTrouble;
use ampwright_core::analysis::year;
use ampwright_core::findings::Severity;
use ampwright_core::report;
use ampwright_core::text::words::{day_trouble, why_not_charged};
use ampwright_core::text::{answer, sentence};
use ampwright_core::units::Reader;
use proptest::prelude::*;

use crate::day::boats::{boat, finding, put};
use crate::draw::any_sheet;

proptest! {
    #![proptest_config(crate::cases(300))]

    /// A trouble and a time exclude each other, and the answer says which.
    #[test]
    fn a_day_without_an_answer_says_why(drawn in any_sheet()) {
        let report = report(&drawn.0);
        let day = report.analyses.day;
        prop_assert_eq!(day.trouble.is_some(), day.engine_hours.is_none());
        prop_assert_eq!(day.runs > 0, day.run_hours.is_some());
        prop_assert_eq!(day.runs > 0, day.engine_hours.is_some_and(|hours| hours > 0.0));
        let said = sentence(&drawn.0, &report, &Reader::METRIC);
        if let Some(trouble) = day.trouble {
            prop_assert_eq!(answer(&report, &Reader::METRIC).time, day_trouble(trouble));
            prop_assert!(said.contains(why_not_charged(trouble)), "{}", said);
            // Whatever keeps the bank from its charge is a danger of its own.
            prop_assert!(report.findings.iter().any(|found| found.severity() == Severity::Danger));
        }
    }
}

#[test]
fn a_bank_far_too_small_says_so() {
    let sheet = boat(&[
        ("bank_capacity_ah", "10"),
        ("daily_use_ah", "400"),
        ("reg_link", "limits"),
        ("run_house_load_a", "2"),
    ]);
    let report = report(&sheet);
    assert_eq!(report.analyses.day.trouble, Some(DayTrouble::BankTooSmall));
    assert!(finding(&report, "bank_too_small").is_some());
}

#[test]
fn below_the_lowest_wanted_is_said() {
    // 200 A·h of lead and 120 A·h a day: it begins near 40 %, 50 % are wanted.
    let lead = boat(&[("bank_chemistry", "flooded"), ("bank_capacity_ah", "200")]);
    let low = report(&lead);
    let text = finding(&low, "day_below_window").expect("a finding");
    assert!(
        text.contains("the 50 % you want") && text.contains("twice a day"),
        "{text}"
    );
    let ample = boat(&[("bank_chemistry", "flooded"), ("bank_capacity_ah", "400")]);
    assert_eq!(finding(&report(&ample), "day_below_window"), None);
    // At the very edge nothing is said.
    let from_pct = low.analyses.day.from_pct.expect("a run");
    for (low_pct, said) in [(from_pct - 0.1, false), (from_pct + 1.0, true)] {
        let mut edge = lead.clone();
        put(&mut edge, "bank_window_low_pct", low_pct);
        assert_eq!(finding(&report(&edge), "day_below_window").is_some(), said);
    }
}

#[test]
fn a_bank_that_cannot_be_charged_says_so() {
    let low_v = boat(&[("bank_charge_v", "13.2")]);
    let cold = boat(&[("bank_temperature_c", "-5"), ("reg_link", "limits")]);
    for sheet in [&low_v, &cold] {
        let report = report(sheet);
        assert_eq!(
            report.analyses.day.trouble,
            Some(DayTrouble::CannotBeCharged)
        );
        assert_eq!(answer(&report, &Reader::METRIC).time, "cannot be charged");
        assert!(
            sentence(sheet, &report, &Reader::METRIC).contains("The engine cannot charge the bank")
        );
        let said = report.findings.iter().find(|found| {
            found.severity() == Severity::Danger && crate::said(found).contains("charge")
        });
        assert!(said.is_some());
    }
    let text = report(&low_v);
    let text = finding(&text, "cannot_be_charged").expect("a finding");
    // It rests at 13.2 V when 60 % full.
    assert!(
        text.contains("about 60 %") && text.contains("14.2 V is usual"),
        "{text}"
    );
}

#[test]
fn a_bank_that_disconnects_has_no_daily_run() {
    for said in [
        [("bank_charge_limit_a", "20"), ("reg_kind", "internal")],
        [("bank_temperature_c", "-5"), ("reg_kind", "internal")],
    ] {
        let report = report(&boat(&said));
        assert_eq!(
            report.analyses.day.trouble,
            Some(DayTrouble::ManagementOpens),
            "{said:?}"
        );
        assert!(finding(&report, "management_opens").is_some(), "{said:?}");
    }
}

#[test]
fn an_alternator_of_another_voltage_charges_nothing() {
    let sheet = boat(&[("bank_nominal_v", "48"), ("alt_nominal_v", "12")]);
    let day = report(&sheet).analyses.day;
    assert_eq!(day.trouble, Some(DayTrouble::WrongVoltage));
    assert_eq!(year(&sheet).trouble, Some(DayTrouble::WrongVoltage));
}

/// More house load than the hot alternator gives: the bank would be emptied.
#[test]
fn a_load_beyond_the_alternator_leaves_nothing() {
    for said in [("run_house_load_a", "60"), ("daily_use_ah", "2000")] {
        let sheet = boat(&[said]);
        let found = report(&sheet).analyses.day.trouble;
        assert_eq!(found, Some(DayTrouble::NothingLeft), "{said:?}");
        assert_eq!(year(&sheet).trouble, found, "{said:?}");
    }
}

/// 10 A from a DC-DC charger, of which lead keeps 8.7: 240 A·h in 24 h of engine
/// with nothing drawn meanwhile would be 27.6 h.
#[test]
fn charging_too_slowly_is_not_never() {
    let sheet = boat(&[
        ("bank_chemistry", "flooded"),
        ("way_kind", "converter"),
        ("way_converter_a", "10"),
        ("run_house_load_a", "0"),
        ("daily_use_ah", "240"),
    ]);
    let report = report(&sheet);
    assert_eq!(report.analyses.day.trouble, Some(DayTrouble::TooSlow));
    assert!(
        finding(&report, "day_not_covered").is_some_and(|text| text.contains("Charging works"))
    );
}
