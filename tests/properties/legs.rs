//! The day as legs.

use ampwright_core::boat::{Leg, LegRow, Purpose};
use ampwright_core::exchange::{open_link, report_json};
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet, report};
use proptest::prelude::*;
use serde_json::Value;

use crate::draw::{Drawn, normal_boat, with_legs};

pub fn boat(link: &str) -> Worksheet {
    open_link(link).expect("a link").sheet
}

pub fn legs(rows: &[LegRow]) -> Vec<Leg> {
    let leg = |row: &LegRow| Leg {
        name: String::new(),
        row: *row,
    };
    rows.iter().map(leg).collect()
}

/// The default run as a leg.
pub fn as_the_run(sheet: &Worksheet) -> LegRow {
    LegRow {
        rpm: sheet.inputs.eng.rpm,
        ..LegRow::default()
    }
}

fn json(sheet: &Worksheet, report: &Report) -> Value {
    report_json(sheet, report, &Reader::METRIC)
}

/// Boats of every kind: volts, chemistry, connection, regulator, sensor, soft start.
pub const BOATS: &[&str] = &[
    "v=2&end",
    "v=2&reg_kind=external&way_kind=direct&end",
    "v=2&reg_kind=internal&way_kind=direct&end",
    "v=2&reg_kind=external&way_kind=direct&bank_nominal_v=48&alt_nominal_v=48&bank_capacity_ah=200&end",
    "v=2&reg_kind=external&way_kind=direct&bank_chemistry=flooded&run_from_pct=50&end",
    "v=2&reg_kind=external&way_kind=direct&two_role=house&reg_ramp_min=5&reg_sensor_lag_s=120&end",
    "v=2&reg_kind=external&way_kind=direct&two_role=start&space_outside_c=40&end",
    "v=2&reg_kind=internal&way_kind=converter&way_converter_a=60&space_outside_c=-5&end",
];

/// One leg like the charging run is that run, to the last digit; and without legs
/// nothing of a report has to do with them.
#[test]
fn one_leg_is_the_charging_run() {
    for link in BOATS {
        let plain = boat(link);
        let without = report(&plain);
        assert_eq!(without.analyses.legs, None);
        assert!(json(&plain, &without).get("legs").is_none());
        assert!(json(&plain, &without)["run"].get("engine_loads").is_none());
        let mut sheet = plain.clone();
        sheet.legs = legs(&[as_the_run(&plain)]);
        let with = report(&sheet);
        let day = with.analyses.legs.clone().expect("legs");
        assert_eq!(day.legs[0].run, without.analyses.run, "{link}");
        assert_eq!(day.legs[0].fuel_l, without.analyses.run.fuel_l);
        let minutes = without.analyses.run.minutes;
        assert!((60.0 * day.charging_h - minutes).abs() <= 4.0 * f64::EPSILON * minutes);
        assert_eq!(day.motoring_h, 0.0);
        // Nothing else moves, and nothing is said of a leg that the run does not say.
        let mut same = json(&sheet, &with);
        same.as_object_mut().expect("an object").remove("legs");
        assert_eq!(same, json(&plain, &without), "{link}");
    }
}

/// What one half leaves, the other goes on from: as one long leg, as near as the
/// steps are.
#[test]
fn two_legs_without_a_pause_are_one() {
    for link in BOATS {
        let mut sheet = boat(link);
        let timed = |minutes: f64| LegRow {
            minutes: Some(minutes),
            ..as_the_run(&sheet)
        };
        let (one, two) = ([timed(50.0)], [timed(13.0), timed(37.0)]);
        sheet.legs = legs(&one);
        let whole = report(&sheet).analyses.legs.expect("legs");
        sheet.legs = legs(&two);
        let halves = report(&sheet).analyses.legs.expect("legs");
        let last = &halves.legs[1];
        let near = |what: &str, a: f64, b: f64, by: f64| {
            assert!((a - b).abs() <= by, "{link}: {what} {a} and {b}");
        };
        near("charge", whole.end_pct, halves.end_pct, 0.005);
        near("into the bank", whole.bank_ah, halves.bank_ah, 0.02);
        near("fuel", whole.fuel_l, halves.fuel_l, 0.001);
        near("current", whole.legs[0].end_a, last.end_a, 0.05);
        for (at, alternator) in last.alternators.iter().enumerate() {
            let ends = |leg: &ampwright_core::analysis::legs::LegReport| {
                let end = leg.run.series.last().expect("a moment").alternators[at];
                [end.winding_c, end.case_c, end.rectifier_c]
            };
            for (a, b) in ends(&whole.legs[0]).into_iter().zip(ends(last)) {
                near("temperature", a, b, 0.1);
            }
            let begins = halves.legs[0].run.series.last().expect("a moment");
            near(
                "carried over",
                alternator.start.winding_c,
                begins.alternators[at].winding_c,
                1e-9,
            );
        }
    }
}

/// Every ampere-hour of the day: from leg to leg, and within each.
fn balanced(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let report = report(sheet);
    let day = report.analyses.legs.as_ref().expect("legs");
    let capacity_ah = sheet.inputs.bank.capacity_ah;
    let kept = report.analyses.plant.bank.charge_efficiency;
    let mut soc_ah = day.from_pct / 100.0 * capacity_ah;
    let (mut given_ah, mut spent_ah) = (0.0, 0.0);
    for leg in &day.legs {
        soc_ah -= leg.pause_ah;
        prop_assert!((leg.from_pct / 100.0 * capacity_ah - soc_ah).abs() <= 1e-6 * capacity_ah);
        // Where the current never turns round, what flowed is what was kept.
        let flows = |sign: f64| leg.run.series.iter().all(|m| sign * m.bank_a >= 0.0);
        let gained_ah = (leg.to_pct - leg.from_pct) / 100.0 * capacity_ah;
        if flows(1.0) && gained_ah > 0.0 {
            prop_assert!((leg.bank_ah * kept - gained_ah).abs() <= 1e-6 * capacity_ah);
        } else if flows(-1.0) {
            prop_assert!((leg.bank_ah - gained_ah).abs() <= 1e-6 * capacity_ah);
        }
        soc_ah += gained_ah;
        given_ah += leg.alternator_ah;
        spent_ah += leg.bank_ah + leg.house_ah;
    }
    prop_assert!((day.end_pct / 100.0 * capacity_ah - soc_ah).abs() <= 1e-6 * capacity_ah);
    // All that comes of alternators on the house bank goes to bank and house.
    if sheet
        .inputs
        .alternators()
        .all(|one| one.connection.on_house())
    {
        prop_assert!(
            (given_ah - spent_ah).abs() <= 1e-6 * given_ah.max(capacity_ah),
            "given {given_ah}, spent {spent_ah}"
        );
    }
    let sum: f64 = day.legs.iter().map(|leg| leg.minutes / 60.0).sum();
    prop_assert!((day.charging_h + day.motoring_h - sum).abs() < 1e-9);
    prop_assert!((day.engine_h - sum).abs() < 1e-9);
    for leg in &day.legs {
        for alternator in &leg.alternators {
            prop_assert!(alternator.peak.winding_c >= alternator.start.winding_c - 1e-9);
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(60))]

    #[test]
    fn the_balance_of_a_day_closes(Drawn(sheet) in with_legs(normal_boat())) {
        balanced(&sheet)?;
    }
}

#[test]
fn the_balance_closes_on_every_kind_of_boat() {
    for link in BOATS {
        let mut sheet = boat(link);
        let row = as_the_run(&sheet);
        sheet.legs = legs(&[
            LegRow {
                rpm: 2200.0,
                minutes: Some(40.0),
                purpose: Purpose::Anyway,
                ..row
            },
            LegRow {
                rpm: 600.0,
                minutes: Some(20.0),
                extra_a: 80.0,
                pause_h: 4.0,
                ..row
            },
            LegRow {
                pause_h: 0.25,
                ..row
            },
            LegRow {
                rpm: 2200.0,
                minutes: Some(300.0),
                purpose: Purpose::Anyway,
                ..row
            },
        ]);
        balanced(&sheet).unwrap_or_else(|broken| panic!("{link}: {broken}"));
    }
}

/// A pause cools, and a longer one more; a short one leaves the alternator warm.
#[test]
fn a_pause_cools() {
    let mut sheet = boat(BOATS[2]);
    let begins_c = |sheet: &mut Worksheet, pause_h: f64| {
        let row = LegRow {
            minutes: Some(40.0),
            ..as_the_run(sheet)
        };
        sheet.legs = legs(&[row, LegRow { pause_h, ..row }]);
        let day = report(sheet).analyses.legs.expect("legs");
        day.legs[1].alternators[0].start.winding_c
    };
    let at_once = begins_c(&mut sheet, 0.0);
    let [short, hour, night] = [0.2, 1.0, 12.0].map(|h| begins_c(&mut sheet, h));
    assert!(at_once > short && short > hour && hour > night);
    assert!(night < sheet.inputs.space.outside_c + 5.0, "{night}");
}
