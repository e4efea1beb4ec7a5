//! Finer steps change nothing worth seeing.

use ampwright_core::Worksheet;
use ampwright_core::boat::house_load_a;
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, Trace, charge};
use proptest::prelude::*;

use crate::draw::{any_sheet, normal_boat};

/// Allowed difference, besides a tenth of a second, 20 mA·h, 1 W·h and for the
/// hottest of each a tenth of a kelvin (two on boats nobody owns).
const MOST: f64 = 0.002;

fn run(sheet: &Worksheet, fineness: &Fineness) -> Trace {
    let inputs = &sheet.inputs;
    let plant = Plant::new(inputs, house_load_a(sheet));
    let last_s = inputs.run.longest_h * 3600.0;
    charge(&plant, inputs.run.from_pct / 100.0, 1.0, last_s, fineness)
}

fn same(what: &str, usual: f64, finer: f64, slack: f64) -> Result<(), TestCaseError> {
    prop_assert!(
        (usual - finer).abs() <= MOST * finer.abs() + slack,
        "{what}: {usual} against {finer}"
    );
    Ok(())
}

fn compare(
    sheet: &Worksheet,
    usual: &Trace,
    finer: &Trace,
    kelvin: f64,
) -> Result<(), TestCaseError> {
    let target = sheet.inputs.run.to_pct / 100.0;
    for charge in [0.8, 0.9, target] {
        let last_s = usual.last_s().min(finer.last_s());
        match (usual.reaches(charge), finer.reaches(charge)) {
            (Some(usual), Some(finer)) => same("seconds", usual, finer, 0.1)?,
            (None, None) => {}
            // Reached at the very end of one and just not in the other.
            _ => {
                let short = charge - usual.soc_at(last_s).max(finer.soc_at(last_s));
                prop_assert!(short.abs() < 1e-3, "{charge} reached in one only");
            }
        }
    }
    let end_s = usual.last_s().min(finer.last_s());
    // What is burnt is burnt: what it gave in its last seconds is of no use.
    let burnt = finer.hottest(end_s).iter().any(|t| t.winding_c > 300.0);
    if !burnt {
        // An emptied bank ends somewhere below nothing, wherever a step ends.
        let held = |trace: &Trace| trace.soc_at(end_s).max(0.0);
        same("charge", held(usual), held(finer), 1e-5)?;
        let given = |trace: &Trace| trace.alternator_ah(end_s);
        same("Ah", given(usual), given(finer), 0.02)?;
        same("kWh", usual.shaft_kwh(end_s), finer.shaft_kwh(end_s), 1e-3)?;
    }
    // The second of each is the second machine, or nothing.
    for (a, b) in usual.hottest(end_s).iter().zip(finer.hottest(end_s)) {
        for (what, usual_c, finer_c) in [
            ("winding", a.winding_c, b.winding_c),
            ("body", a.body_c, b.body_c),
            ("rectifier", a.rectifier_c, b.rectifier_c),
            ("air", a.air_c, b.air_c),
        ] {
            same(what, usual_c.min(300.0), finer_c.min(300.0), kelvin)?;
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn half_the_step(drawn in any_sheet()) {
        let usual = run(&drawn.0, &Fineness::USUAL);
        let finer = run(&drawn.0, &Fineness::USUAL.finer(2.0));
        // A machine of 1 kg and 650 A crosses its regulator's band in one step.
        compare(&drawn.0, &usual, &finer, 2.0)?;
    }

    #[test]
    fn a_tenth_of_the_step(drawn in normal_boat()) {
        let usual = run(&drawn.0, &Fineness::USUAL);
        let finer = run(&drawn.0, &Fineness::USUAL.finer(10.0));
        compare(&drawn.0, &usual, &finer, 0.1)?;
    }
}
