//! What must not help does not help.

use ampwright_core::boat::{Key, SecondRole};
use ampwright_core::schema::Value;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet};

/// Part of the way from where an input stands towards one end of its range.
fn moved(sheet: &Worksheet, name: &str, part: f64, up: bool) -> Option<(f64, Worksheet)> {
    let key = Key::named(name).expect("a key");
    let (low, high) = key.spec().range().expect("a number");
    let now = sheet.figure(key)?;
    let to = now + part * (if up { high } else { low } - now);
    let mut other = sheet.clone();
    other
        .state(key, Value::Number(to.clamp(low, high)))
        .expect("within its range");
    Some((now, other))
}

/// A boat whose regulator feels at once: a lagging sensor makes it hunt, and
/// what hunts knows no order.
fn steady_boat() -> impl Strategy<Value = Drawn> {
    any_sheet().prop_map(|mut drawn| {
        drawn.0.inputs.reg.sensor_lag_s = 0.0;
        // At 13.8 V, usual for drop-in packs, a bank comes ever nearer to full and
        // never gets there: whether it does is a matter of the last digit.
        if drawn.0.inputs.packs_closed() {
            let run = &mut drawn.0.inputs.run;
            run.to_pct = run.to_pct.min(99.0);
        }
        drawn
    })
}

/// Minutes to the target; endless when it is not reached.
fn minutes(sheet: &Worksheet) -> f64 {
    report(sheet)
        .analyses
        .run
        .minutes_to_target
        .unwrap_or(f64::INFINITY)
}

/// As long as the bank stays connected: what weakens the alternator may be what
/// keeps the management system from opening.
fn never_faster(sheet: &Worksheet, other: &Worksheet) -> Result<(), TestCaseError> {
    let opens = |sheet: &Worksheet| report(sheet).analyses.run.opening.is_some();
    if opens(sheet) || opens(other) {
        return Ok(());
    }
    let (before, after) = (minutes(sheet), minutes(other));
    prop_assert!(
        after >= before * 0.999 || before - after < 0.01,
        "{before} min became {after}"
    );
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(500))]

    #[test]
    fn hotter_outside_air(Drawn(sheet) in steady_boat(), part in 0.0..1.0f64) {
        let (_, hotter) = moved(&sheet, "space_outside_c", part, true).expect("a figure");
        never_faster(&sheet, &hotter)?;
    }

    #[test]
    fn a_lower_set_point(Drawn(sheet) in steady_boat(), part in 0.0..1.0f64) {
        let (_, lower) = moved(&sheet, "reg_set_point_c", part, false).expect("a figure");
        never_faster(&sheet, &lower)?;
    }

    /// With a sound switch and cable, and a bank charged at no more than 16 V for
    /// each 12 V: behind a resistance, a higher load lowers the voltage that a
    /// converter short of power works into, and it gives more amperes there.
    /// That is so aboard, too.
    #[test]
    fn a_higher_house_load(Drawn(mut sheet) in steady_boat(), more in 0.0..100.0f64) {
        let bank = &mut sheet.inputs.bank;
        bank.harness_mohm = bank.harness_mohm.min(3.0);
        bank.charge_v = bank.charge_v.map(|volts| volts.min(16.0 * bank.nominal_v.blocks()));
        let key = Key::named("run_house_load_a").expect("a key");
        let now = sheet.figure(key).expect("a figure");
        prop_assume!(now + more <= 1000.0);
        let mut other = sheet.clone();
        other.state(key, Value::Number(now + more)).expect("within its range");
        never_faster(&sheet, &other)?;
    }

    /// As long as the air it brings is not the warmest thing aboard, and for
    /// one machine: of two, the other may take over a part.
    #[test]
    fn more_blower_air(Drawn(mut sheet) in steady_boat(), part in 0.0..1.0f64) {
        sheet.inputs.two.role = SecondRole::None;
        let outside = sheet.inputs.space.outside_c;
        for name in ["space_cabin_c", "eng_running_c"] {
            let key = Key::named(name).expect("a key");
            let now = sheet.figure(key).expect("a figure");
            sheet.state(key, Value::Number(now.max(outside))).expect("within its range");
        }
        let (_, more) = moved(&sheet, "space_blower_m3h", part, true).expect("a figure");
        let (before, after) = (report(&sheet).analyses, report(&more).analyses);
        // What is burnt is burnt.
        prop_assume!(before.alternators[0].hot.is_none_or(|hot| hot.winding_c < 300.0));
        let (before, after) = (before.output.hot_a, after.output.hot_a);
        prop_assert!(after >= before * 0.999 - 1e-6, "{before} A became {after}");
    }
}
