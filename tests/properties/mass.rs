//! The mass of an alternator moves the time to get hot and nothing else.

use ampwright_core::boat::{Key, RegulatorKind, SecondRole, WayKind};
use ampwright_core::exchange::open_link;
use ampwright_core::schema::Value;
use ampwright_core::{Worksheet, report};

fn boats() -> [Worksheet; 4] {
    let usual = Worksheet::default();
    let mut built_in = usual.clone();
    built_in.inputs.reg.kind = RegulatorKind::Internal;
    let mut converter = built_in.clone();
    converter.inputs.way.kind = WayKind::Converter;
    let mut two = usual.clone();
    two.inputs.two.role = SecondRole::House;
    [usual, built_in, converter, two]
}

fn weighing(sheet: &Worksheet, key: &str, kg: f64) -> Worksheet {
    let mut other = sheet.clone();
    let key = Key::named(key).expect("a key");
    other.state(key, Value::Number(kg)).expect("in range");
    other
}

/// Minutes until the case is half-way to its hottest.
fn minutes_to_half(sheet: &Worksheet) -> f64 {
    let run = report(sheet).analyses.run;
    let start_c = run.series[0].alternators[0].case_c;
    let half_c = 0.5 * (start_c + run.alternators[0].peak.case_c);
    let past = run
        .series
        .iter()
        .find(|m| m.alternators[0].case_c >= half_c);
    past.expect("it gets there").minute
}

#[test]
fn the_same_current_hot_whatever_the_mass() {
    for sheet in boats() {
        for key in ["alt_mass_kg", "alt2_mass_kg"] {
            let [light, heavy] =
                [3.0, 15.0].map(|kg| report(&weighing(&sheet, key, kg)).analyses.alternators);
            assert_eq!(light, heavy, "{key}");
        }
        let [light, heavy] =
            [3.0, 15.0].map(|kg| minutes_to_half(&weighing(&sheet, "alt_mass_kg", kg)));
        assert!(light < heavy, "{light} min, {heavy} min");
    }
}

/// 180 A weigh 9.5 kg where nothing is said, and 6 kg in a link of version 1.
#[test]
fn a_larger_one_is_heavier() {
    let mut sheet = Worksheet::default();
    assert!((sheet.inputs.first_alternator().mass_kg() - 6.0).abs() < 1e-9);
    sheet.inputs.alt.rated_a = 180.0;
    assert!((sheet.inputs.first_alternator().mass_kg() - 9.5).abs() < 0.05);
    let old = open_link("v=1&alt_rated_a=180&end").expect("a link").sheet;
    assert_eq!(old.inputs.first_alternator().mass_kg(), 6.0);
}
