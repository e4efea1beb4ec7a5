//! When the bank disconnects: finite, and a further defence never leaves more volts.

use ampwright_core::analysis::load_dump::{DumpReport, Exposure, LoadDump, Standing};
use ampwright_core::boat::{ClampKind, Key, RegulatorKind, Said, SecondRole, WayKind};
use ampwright_core::schema::Value;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet};
use crate::fit::sound;
use crate::regulated::regulated;

/// 48 V is not in the standard; not every event can happen.
const MAY_BE_NULL: &[&str] = &[
    "standard_low_v",
    "standard_high_v",
    "standard_low_ohm",
    "clamp_rated_j",
    "standard_high_ohm",
    "standard_low_j",
    "standard_high_j",
    "bank_left_v",
    "switch_left_v",
    "opening",
];

/// What is left at each speed, when the bank opens and when the switch is opened.
fn left(machine: &DumpReport) -> [Option<f64>; 4] {
    let (now, top) = (&machine.charging, &machine.top);
    [
        now.bank_left_v,
        top.bank_left_v,
        now.switch_left_v,
        top.switch_left_v,
    ]
}

fn no_more(before: &LoadDump, after: &LoadDump) -> Result<(), TestCaseError> {
    for (before, after) in before.alternators.iter().zip(&after.alternators) {
        for (b, a) in left(before).into_iter().zip(left(after)) {
            let more = a.unwrap_or(0.0) > b.unwrap_or(0.0);
            prop_assert!(!more, "{before:?} became {after:?}");
        }
        prop_assert!(after.peak_v() == before.peak_v());
    }
    Ok(())
}

/// Adds one defence that was not there.
fn defended(sheet: &Worksheet, which: usize) -> Worksheet {
    let mut other = sheet.clone();
    let guard = &mut other.inputs.guard;
    match which {
        0 => guard.warning = Said::Yes,
        1 => guard.clamp = ClampKind::Clamp,
        2 => guard.clamp = ClampKind::Avalanche,
        3 => guard.lead = Said::Yes,
        _ => guard.switch = Said::No,
    }
    other
}

proptest! {
    #![proptest_config(crate::cases(2_000))]

    #[test]
    fn every_worksheet_has_a_finite_pulse(Drawn(sheet) in any_sheet()) {
        let all = report(&sheet).analyses.load_dump;
        sound(&serde_json::to_value(&all).expect("JSON"), MAY_BE_NULL)?;
        for machine in &all.alternators {
            for dump in [&machine.charging, &machine.top] {
                prop_assert!(dump.peak_v >= dump.volts && dump.clamp_j >= 0.0, "{dump:?}");
                prop_assert!(dump.bank_left_v.is_none_or(|v| v <= dump.peak_v), "{dump:?}");
                prop_assert!(dump.internal_ohm > 0.0, "{dump:?}");
            }
        }
    }

    #[test]
    fn a_further_defence_never_leaves_more_volts(Drawn(sheet) in any_sheet(), first in 0..5usize, second in 0..5usize) {
        let undefended = report(&sheet);
        let with = defended(&sheet, first);
        let (before, after) = (undefended.analyses.load_dump, report(&with).analyses.load_dump);
        no_more(&before, &after)?;
        no_more(&after, &report(&defended(&with, second)).analyses.load_dump)?;
    }

    /// One machine that no regulator holds back for its speed: of two, the
    /// other may take over a part.
    #[test]
    fn a_quicker_engine_peaks_higher(Drawn(mut sheet) in any_sheet(), more in 0.0..1000.0f64) {
        sheet.inputs.two.role = SecondRole::None;
        sheet.inputs.reg.low_speed_rpm = 0.0;
        sheet.inputs.eng.top_rpm = sheet.inputs.eng.top_rpm.min(7000.0);
        let slower = report(&sheet);
        let mut quicker = sheet.clone();
        quicker.inputs.eng.top_rpm += more;
        let (before, after) = (slower.analyses.load_dump, report(&quicker).analyses.load_dump);
        for (before, after) in before.alternators.iter().zip(&after.alternators) {
            prop_assert!(after.top.internal_ohm >= before.top.internal_ohm);
            prop_assert!(after.top.peak_v >= before.top.peak_v * 0.999, "{:?} became {:?}", before.top, after.top);
        }
    }
}

fn boat(said: &[(&str, usize)]) -> LoadDump {
    let mut sheet = regulated();
    for (name, at) in said {
        let key = Key::named(name).expect("a key");
        sheet.state(key, Value::Choice(*at)).expect("in range");
    }
    report(&sheet).analyses.load_dump
}

fn standing(machine: &DumpReport, key: &str) -> Option<Standing> {
    let found = machine
        .mitigations
        .iter()
        .find(|mitigation| mitigation.code.name() == key);
    found.map(|mitigation| mitigation.standing)
}

#[test]
fn who_is_exposed() {
    let (converter, house) = (WayKind::Converter as usize, SecondRole::House as usize);
    let start = SecondRole::Start as usize;
    let plain = boat(&[]);
    assert_eq!(plain.alternators[0].exposure, Exposure::Bank);
    assert!(!plain.answered);
    // Through a converter: no pulse from the bank, the rule of the switch holds.
    let through = boat(&[("way_kind", converter)]);
    let machine = &through.alternators[0];
    assert_eq!(machine.exposure, Exposure::StartBattery);
    assert_eq!(machine.bank_left_v(), None);
    let keys: Vec<_> = machine.mitigations.iter().map(|d| d.code.name()).collect();
    assert_eq!(keys, ["no_switch"]);
    // The second one only, and not that of the start battery.
    let two = boat(&[("way_kind", converter), ("two_role", house)]);
    assert_eq!(two.alternators[0].exposure, Exposure::StartBattery);
    assert_eq!(two.alternators[1].exposure, Exposure::Bank);
    let kept = boat(&[("two_role", start)]);
    assert_eq!(kept.alternators[1].exposure, Exposure::StartBattery);
    // A lead bank does not open by itself.
    let lead = boat(&[("bank_chemistry", 1)]);
    assert_eq!(lead.alternators[0].exposure, Exposure::LeadBank);
    assert_eq!(lead.alternators[0].bank_left_v(), None);
}

#[test]
fn a_built_in_regulator_has_no_field_to_cut() {
    let internal = RegulatorKind::Internal as usize;
    let said = [
        ("reg_kind", internal),
        ("guard_warning", Said::Yes as usize),
    ];
    let (with, without) = (boat(&said), boat(&said[..1]));
    assert_eq!(
        standing(&with.alternators[0], "warning"),
        Some(Standing::NoUse)
    );
    assert_eq!(
        with.alternators[0].bank_left_v(),
        without.alternators[0].bank_left_v()
    );
    let external = boat(&said[1..]);
    assert_eq!(
        standing(&external.alternators[0], "warning"),
        Some(Standing::Present)
    );
    let machine = &external.alternators[0];
    assert_eq!(machine.charging.bank_left_v, Some(machine.charging.volts));
}
