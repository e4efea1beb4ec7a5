//! Where a trial is to be stopped.

use crate::analysis::Part;
use crate::boat::{Chemistry, Connection, InsulationClass, RegulatorKind, WayKind, Worksheet};
use crate::decision::calibration::columns::{COLUMNS, Column};
use crate::decision::calibration::log::Row;
use crate::decision::calibration::stop::{StopCause, StopLimits, StopWay};
use crate::report;

fn limits(change: impl FnOnce(&mut Worksheet)) -> StopLimits {
    let mut sheet = Worksheet::default();
    sheet.inputs.reg.kind = RegulatorKind::External;
    sheet.inputs.way.kind = WayKind::Direct;
    change(&mut sheet);
    StopLimits::of(&sheet.inputs, &report(&sheet))
}

fn row(readings: &[(Column, f64)]) -> Row {
    let mut figures = [None; COLUMNS];
    for (column, value) in readings {
        figures[*column as usize] = Some(*value);
    }
    Row::new(1, 10.0, figures)
}

/// The case may never pass its own limit, nor the temperature at which the
/// calculated winding is at its limit.
#[test]
fn the_part_nearest_to_its_limit_decides() {
    let usual = limits(|_| {});
    assert!(usual.case_c <= 120.0, "{usual:?}");
    let low = limits(|sheet| sheet.inputs.alt.case_limit_c = 90.0);
    assert_eq!((low.decided_by, low.case_c), (Part::Case, 90.0));
    let of_class = |class: InsulationClass| {
        limits(|sheet| {
            sheet.inputs.alt.class = class;
            sheet.inputs.alt.rectifier_limit_c = 200.0;
        })
    };
    let heat_proof = of_class(InsulationClass::N);
    assert_eq!(heat_proof.decided_by, Part::Case);
    assert_eq!(heat_proof.case_c, 120.0);
    let tender = of_class(InsulationClass::B);
    assert_eq!(tender.decided_by, Part::Winding);
    assert_eq!(tender.part_limit_c, 130.0);
    assert!(tender.case_c < 120.0, "{tender:?}");
}

/// 3.65 V for each of four cells is 14.6 V; the cable adds what it takes.
#[test]
fn volts_are_those_of_the_battery_on_its_cable() {
    let lithium = limits(|_| {});
    assert!(lithium.disconnects);
    assert!((14.6..15.6).contains(&lithium.volts), "{lithium:?}");
    let lead = limits(|sheet| sheet.inputs.bank.chemistry = Chemistry::Agm);
    assert!(!lead.disconnects && lead.volts >= 15.0, "{lead:?}");
    let mut sheet = Worksheet::default();
    sheet.inputs.way.kind = WayKind::Converter;
    assert_eq!(
        sheet.inputs.first_alternator().connection,
        Connection::ThroughCharger
    );
    let through = StopLimits::of(&sheet.inputs, &report(&sheet));
    assert_eq!((through.volts, through.disconnects), (15.0, false));
}

#[test]
fn a_built_in_regulator_is_stopped_with_the_engine() {
    let external = limits(|_| {});
    assert_eq!(external.way, StopWay::CutField);
    assert_eq!(external.holds_c, Some(105.0));
    let built_in = limits(|sheet| sheet.inputs.reg.kind = RegulatorKind::Internal);
    assert_eq!(built_in.way, StopWay::StopEngine);
    assert_eq!(built_in.holds_c, None);
    assert_eq!(built_in.next_c(40.0), built_in.case_c);
}

#[test]
fn readings_at_a_limit_stop_the_trial() {
    let limits = StopLimits {
        case_c: 113.0,
        decided_by: Part::Winding,
        part_limit_c: 155.0,
        winding_c: 155.0,
        rectifier_c: 135.0,
        volts: 14.8,
        disconnects: true,
        holds_c: Some(105.0),
        way: StopWay::CutField,
    };
    assert_eq!(
        limits.reached(&row(&[(Column::Case, 112.9), (Column::Volts, 14.7)])),
        []
    );
    assert_eq!(
        limits.reached(&row(&[(Column::Case, 113.0), (Column::Volts, 14.8)])),
        [
            StopCause::Volts {
                read_v: 14.8,
                stop_v: 14.8
            },
            StopCause::Hot {
                part: Part::Case,
                read_c: 113.0,
                stop_c: 113.0
            }
        ]
    );
    assert_eq!(limits.next_c(90.0), 105.0);
    assert_eq!(limits.next_c(106.0), 113.0);
    assert!(!limits.is_not_held(110.0) && limits.is_not_held(110.1));
}
