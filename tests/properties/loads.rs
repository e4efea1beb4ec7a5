//! What the alternators ask of belts and engine: never less than at any
//! moment of the run, and of an engine that has less torque near idle.

use ampwright_core::boat::house_load_a;
use ampwright_core::boat::{Injection, Key, Plate, RegulatorKind, demo};
use ampwright_core::schema::Value;
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, charge};
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::{any_sheet, normal_boat};

/// How far below a moment's figure a peak may lie.
const BELOW: f64 = 1e-3;
/// Moments a run is looked at.
const LOOKS: u32 = 3000;

/// Every peak of the report against the run at many moments.
fn peaks_cover_the_run(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let inputs = &sheet.inputs;
    let report = report(sheet);
    let plant = Plant::new(inputs, house_load_a(sheet));
    let (from, last_s) = (inputs.run.from_pct / 100.0, inputs.run.longest_h * 3600.0);
    let trace = charge(&plant, from, 1.0, last_s, &Fineness::USUAL);
    let belts = &report.analyses.belts;
    let end_s = report.analyses.run.minutes * 60.0;
    for look in 0..=LOOKS {
        // Closer at the start, where most happens.
        let seconds = end_s * (f64::from(look) / f64::from(LOOKS)).powi(2);
        let moment = trace.sample(seconds).moment;
        let mut all = vec![(
            "all shafts",
            moment.shaft_w(),
            report.analyses.run.peak_shaft_w,
        )];
        prop_assert_eq!(belts.len(), moment.flow.outputs.len());
        for ((output, losses), belt) in moment.alternators().zip(belts) {
            let shaft_w = output.amperes * output.volts + losses.total_w();
            all.push(("amperes", output.amperes, belt.charging.amperes));
            all.push(("shaft", shaft_w, belt.charging.shaft_w));
        }
        for (what, now, peak) in all {
            prop_assert!(
                peak >= now * (1.0 - BELOW) - 1e-6,
                "{what}: {now} after {seconds} s of {end_s}, {peak} at most"
            );
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(100))]

    #[test]
    fn no_moment_of_a_normal_run_lies_above_the_peak(drawn in normal_boat()) {
        peaks_cover_the_run(&drawn.0)?;
    }

    #[test]
    fn no_moment_of_any_run_lies_above_the_peak(drawn in any_sheet()) {
        peaks_cover_the_run(&drawn.0)?;
    }

    /// Faster engines have more power, and never more than their torque at the
    /// highest speed would give.
    #[test]
    fn power_follows_the_engine_speed(drawn in any_sheet(), factor in 1.0..2.0f64) {
        let inputs = drawn.0.inputs;
        let mut faster = inputs;
        faster.eng.rpm *= factor;
        prop_assert!(faster.available_kw() >= inputs.available_kw() - 1e-9);
        let level_kw = inputs.rated_kw() * (inputs.eng.rpm / inputs.eng.top_rpm).min(1.0);
        prop_assert!(inputs.available_kw() <= level_kw + 1e-9);
        let mut direct = inputs;
        direct.eng.injection = Injection::Direct;
        prop_assert!(direct.available_kw() <= inputs.available_kw() + 1e-9);
    }
}

/// A boat with some inputs said.
fn boat(said: &[(&str, f64)]) -> Worksheet {
    let mut sheet = Worksheet::default();
    for (name, number) in said {
        let key = Key::named(name).expect("a key");
        sheet.state(key, Value::Number(*number)).expect("in range");
    }
    sheet
}

/// A slow start peaks between two of the printed minutes.
#[test]
fn a_slow_start_peaks_between_the_printed_moments() {
    for ramp_min in [1.3, 2.5, 7.4, 12.6, 33.3] {
        let sheet = boat(&[("reg_ramp_min", ramp_min), ("alt_rated_a", 200.0)]);
        let run = report(&sheet).analyses.run;
        let printed_w = run.series.iter().map(|m| m.shaft_w).fold(0.0, f64::max);
        assert!(run.peak_shaft_w >= printed_w, "{ramp_min} min");
        peaks_cover_the_run(&sheet).expect("covered");
    }
}

/// An engine at idle has less torque: the same alternator takes a larger share
/// of it than speed alone explains.
#[test]
fn an_alternator_at_idle_takes_a_larger_share() {
    let sheet = boat(&[("eng_rpm", 800.0), ("alt_pulley_ratio", 3.0)]);
    let engine = report(&sheet).analyses.engine;
    let level_kw = sheet.inputs.rated_kw() * 800.0 / 3000.0;
    assert!(engine.available_kw < 0.85 * level_kw, "{engine:?}");
    assert!(
        engine.peak_share_pct > 1.17 * 100.0 * engine.peak_kw / level_kw,
        "{engine:?}"
    );
}

/// "Cold" means a rotor that has stood, however warm it was when the plate was
/// read: a plate read warmed up stands for about a fifth more, cold.
#[test]
fn full_field_cold_is_cold_whatever_the_plate() {
    let cold = Worksheet::default();
    let mut warm = cold.clone();
    warm.inputs.alt.plate = Plate::Warm;
    let (cold_a, warm_a) = [&cold, &warm]
        .map(|s| report(s).analyses.output.full_cold_a)
        .into();
    assert!(
        (1.15..1.45).contains(&(warm_a / cold_a)),
        "{cold_a} A with a cold plate, {warm_a} A with a warm one"
    );
    for rotor_c in [0.0, 60.0, 130.0] {
        let sheet = boat(&[("alt_plate_rotor_c", rotor_c)]);
        let report = report(&sheet);
        let curve = report.analyses.calibrated.list[0].curve;
        let shaft_rpm = report.analyses.alternators[0].shaft_rpm;
        let expected_a = curve.full_field_a(shaft_rpm, curve.test_v, 25.0);
        assert!((report.analyses.output.full_cold_a - expected_a).abs() < 1e-9);
        for point in report.analyses.output.by_engine_rpm.iter() {
            let shaft_rpm = point.engine_rpm * sheet.inputs.alt.pulley_ratio;
            // At the voltage it works at, between the bank's at rest and the rating's.
            let rest_v = sheet.inputs.house_bank().rest_v(0.5);
            let there_a = (0..=50).map(|step| {
                let volts = rest_v + (curve.test_v - rest_v) * f64::from(step) / 50.0;
                curve.full_field_a(shaft_rpm, volts, 25.0)
            });
            let least_a = there_a.clone().fold(f64::INFINITY, f64::min);
            let most_a = there_a.fold(0.0, f64::max);
            assert!(
                (least_a - 1e-3..=most_a + 1e-3).contains(&point.cold_a),
                "{point:?}, not {least_a} to {most_a} A"
            );
        }
    }
}

/// An alternator with a built-in regulator on a flat bank, no start battery
/// between: nothing hot gives more than the same thing cold.
#[test]
fn nothing_hot_gives_more_than_it_gives_cold() {
    for plate in [Plate::Cold, Plate::Warm] {
        for rpm in [1000.0, 1500.0, 2400.0] {
            let mut sheet = demo();
            sheet.inputs.alt.plate = plate;
            sheet.inputs.reg.kind = RegulatorKind::Internal;
            sheet.inputs.eng.rpm = rpm;
            let output = report(&sheet).analyses.output;
            assert!(
                output.hot_a < output.full_cold_a,
                "{} A hot, {} A cold",
                output.hot_a,
                output.full_cold_a
            );
        }
    }
}
