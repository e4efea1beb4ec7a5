//! What charges the bank by the rule: shore power through the year, and where the
//! engine is started.

use ampwright_core::analysis::year;
use ampwright_core::text::year::sentences;
use ampwright_core::units::Reader;

use crate::day::boats::{boat, put};

/// At the dock: 120 A·h a day and 30 A of charger. Never empty, no engine but for
/// motoring, and what the shore gives is what the bank and boat took.
#[test]
fn shore_power_carries_the_year() {
    for chemistry in ["lfp", "flooded"] {
        let sheet = boat(&[("shore_rest", "shore"), ("bank_chemistry", chemistry)]);
        let year = year(&sheet);
        assert!(year.at_dock);
        let kept = sheet.inputs.house_bank().charge_efficiency;
        for month in &year.months {
            assert_eq!(
                (month.short_ah_day, month.days_below),
                (0.0, 0),
                "{chemistry}"
            );
            assert!((month.engine_h_week - month.motoring_h_week).abs() < 1e-9);
            let balance = month.balance;
            assert!((month.shore_ah_day * month.days_aboard - balance.shore_ah).abs() < 1e-9);
            // At the dock the charger carries loads, and fills the bank with the rest.
            let wanted_ah = balance.use_ah + balance.change_ah + balance.lost_ah;
            let given_ah = balance.shore_ah + balance.engine_ah;
            assert!((given_ah - wanted_ah).abs() < 1e-6, "{chemistry}");
            // 88 % of the dock's energy, at 13 to 14.6 V.
            let volts = 0.88 * 1000.0 * month.shore_kwh / balance.shore_ah;
            assert!((12.5..14.6).contains(&volts), "{chemistry}: {volts} V");
        }
        let use_ah: f64 = year.months.iter().map(|month| month.balance.use_ah).sum();
        let shore_ah: f64 = year.months.iter().map(|month| month.balance.shore_ah).sum();
        assert!(shore_ah > 0.7 * use_ah && shore_ah < use_ah / kept);
        let words = sentences(&year, &Reader::METRIC).join(" ");
        assert!(words.contains("charged at the dock"), "{words}");
    }
}

/// A dock without a charger, or one too small, lets the bank run empty, and the
/// year says so.
#[test]
fn no_shore_charger_leaves_the_bank_empty() {
    for amps in ["0", "3"] {
        let year = year(&boat(&[("shore_rest", "shore"), ("shore_charger_a", amps)]));
        assert!(year.months.iter().all(|month| month.short_ah_day > 0.0));
        let words = sentences(&year, &Reader::METRIC).join(" ");
        assert!(words.contains("mains charger is too small"), "{words}");
    }
}

#[test]
fn the_start_rule_suits_the_chemistry() {
    let start = |said: &[(&str, &str)]| boat(said).inputs.rule_start_pct();
    assert_eq!(start(&[]), 30.0);
    assert_eq!(start(&[("bank_chemistry", "agm")]), 55.0);
    assert_eq!(start(&[("bank_window_low_pct", "40")]), 45.0);
    assert_eq!(
        start(&[("bank_chemistry", "gel"), ("rule_start_pct", "30")]),
        30.0
    );
    // A bank whose engine is started at the very lowest wanted, at any hour, does
    // not count as below it.
    for chemistry in ["lfp", "flooded"] {
        let mut sheet = boat(&[("bank_chemistry", chemistry), ("rule_start_pct", "50")]);
        for (name, number) in [
            ("bank_window_low_pct", 50.0),
            ("rule_quiet_from_h", 0.0),
            ("rule_quiet_to_h", 0.0),
        ] {
            put(&mut sheet, name, number);
        }
        let year = year(&sheet);
        assert!(year.months.iter().all(|month| month.days_below == 0));
        let lowest = year.months.iter().map(|month| month.lowest_pct);
        assert!(lowest.fold(100.0, f64::min) < 50.5, "{chemistry}");
    }
}
