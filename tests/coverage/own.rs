//! Boats drawn from what each figure may be, with the model's own network.

use std::fmt::Write;

use ampwright_core::Worksheet;
use ampwright_core::decision::calibration;
use ampwright_core::decision::uncertainty::{PossibleBoat, PossibleBoats};
use ampwright_core::simulation::run::{Fineness, charge};

use super::random::Random;
use super::told::{Coverage, told};

/// How long a trial lasts \[min\].
const TRIAL_MIN: u32 = 45;

/// How often the ranges hold so many boats that a worksheet may stand for.
pub fn before_a_trial(sheet: &Worksheet, count: u64) -> Coverage {
    let range = told(sheet);
    let mut coverage = Coverage::default();
    for seed in 0..count {
        coverage.count(&range, &drawn(sheet, seed).answers());
    }
    coverage
}

/// The same after each has been taken out for a trial and its readings applied.
pub fn after_a_trial(sheet: &Worksheet, count: u64) -> Coverage {
    let mut coverage = Coverage::default();
    for seed in 0..count {
        let boat = drawn(sheet, seed);
        let log = calibration::read(&readings(&boat, seed));
        let Ok(fit) = calibration::fit(sheet, &log) else {
            continue;
        };
        let mut fitted = sheet.clone();
        calibration::apply(&mut fitted, &fit);
        coverage.count(&told(&fitted), &boat.answers());
    }
    coverage
}

fn drawn(sheet: &Worksheet, seed: u64) -> PossibleBoat {
    let mut random = Random::new(seed);
    PossibleBoats::of(sheet).draw(|_| random.share())
}

/// What instruments show of a boat's run: each reading scatters, and each
/// instrument is off as a whole.
fn readings(boat: &PossibleBoat, seed: u64) -> String {
    let mut random = Random::new(seed ^ 0xabc_def0);
    let run = &boat.sheet.inputs.run;
    let last_s = f64::from(TRIAL_MIN) * 60.0;
    let trace = charge(
        &boat.plant(),
        run.from_pct / 100.0,
        1.0,
        last_s,
        &Fineness::USUAL,
    );
    // Off by what readings are told to be: 2 % and 2 K at most.
    let clamp = 1.0 + 0.02 * random.triangle();
    let (gun_k, air_k) = (2.0 * random.triangle(), 2.0 * random.triangle());
    let engine_rpm = boat.sheet.inputs.eng.rpm * (1.0 + 0.02 * random.triangle());
    let mut text = String::from("minute amps case air rpm volts\n");
    for minute in 0..=TRIAL_MIN {
        let then = trace.sample((f64::from(minute) * 60.0).min(trace.last_s()));
        let output = then.moment.flow.outputs[0];
        let t = then.thermal[0].t;
        let line = writeln!(
            text,
            "{minute} {:.1} {:.1} {:.1} {engine_rpm:.0} {:.2}",
            output.amperes * clamp * (1.0 + 0.01 * random.normal()),
            t.body_c + gun_k + 0.5 * random.normal(),
            t.air_c + air_k + 0.5 * random.normal(),
            output.volts,
        );
        line.expect("a text");
    }
    text
}
