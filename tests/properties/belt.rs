//! Belts: finite, and never smaller for more current.

use ampwright_core::analysis::belt::BeltReport;
use ampwright_core::boat::{BeltKind, Key, RegulatorKind, SecondRole, WhichAlternator};
use ampwright_core::schema::Value;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet};
use crate::fit::sound;

/// What is not said or not listed.
const MAY_BE_NULL: &[&str] = &[
    "belt",
    "tight_n",
    "slips_at_ratio",
    "rule_low_a",
    "rule_high_a",
    "asks_v",
    "asks_ribs",
    "shared_with_pump_a",
    "worst_pct",
    "side_n",
    "carries_w",
    "formula_pct",
    "rule_pct",
];

fn of(sheet: &Worksheet) -> Vec<BeltReport> {
    report(sheet).analyses.belts
}

/// Place in its family; behind the largest where none is large enough.
fn place(family: &[BeltKind], asked: Option<BeltKind>) -> usize {
    let at = asked.and_then(|asked| family.iter().position(|kind| *kind == asked));
    at.unwrap_or(family.len())
}

fn set(sheet: &mut Worksheet, name: &str, number: f64) {
    let key = Key::named(name).expect("a key");
    sheet.state(key, Value::Number(number)).expect("in range");
}

proptest! {
    #![proptest_config(crate::cases(2_000))]

    #[test]
    fn every_worksheet_has_finite_belts(Drawn(sheet) in any_sheet()) {
        let belts = of(&sheet);
        prop_assert_eq!(belts.len(), if sheet.inputs.two.role == SecondRole::None { 1 } else { 2 });
        sound(&serde_json::to_value(&belts).expect("JSON"), MAY_BE_NULL)?;
        for belt in &belts {
            for load in [&belt.charging, &belt.top] {
                prop_assert!(load.amperes >= 0.0 && load.shaft_w > 0.0, "{load:?}");
                prop_assert!(load.side_n.unwrap_or(1.0) > 0.0, "{load:?}");
            }
        }
    }

    /// A higher current cap lets more current flow. One machine, its sensor
    /// quick and its field up at once: what hunts knows no order.
    #[test]
    fn more_current_never_asks_a_smaller_belt(Drawn(mut sheet) in any_sheet(), low in 5.0..300.0f64, more in 0.0..300.0f64) {
        sheet.inputs.two.role = SecondRole::None;
        sheet.inputs.reg.kind = RegulatorKind::External;
        sheet.inputs.reg.sensor_lag_s = 0.0;
        sheet.inputs.reg.ramp_min = 0.0;
        let mut larger = sheet.clone();
        set(&mut sheet, "reg_current_cap_a", low);
        set(&mut larger, "reg_current_cap_a", low + more);
        for (small, large) in of(&sheet).iter().zip(&of(&larger)) {
            prop_assert!(large.charging.amperes >= small.charging.amperes * 0.999, "{small:?} {large:?}");
            let places = |belt: &BeltReport| {
                (place(&BeltKind::V, belt.asks_v), place(&BeltKind::RIBS, belt.asks_ribs))
            };
            let (before, after) = (places(small), places(large));
            prop_assert!(after.0 >= before.0 && after.1 >= before.1, "{small:?} became {large:?}");
        }
    }

    /// A belt that slips at more pull, or lies further round, is used less.
    #[test]
    fn more_wrap_carries_more(Drawn(mut sheet) in any_sheet(), wrap in 30.0..290.0f64, more in 0.0..10.0f64) {
        if sheet.inputs.belt.kind == BeltKind::Unsaid {
            sheet.inputs.belt.kind = BeltKind::V13;
        }
        let mut further = sheet.clone();
        set(&mut sheet, "belt_wrap_deg", wrap);
        set(&mut further, "belt_wrap_deg", wrap + more);
        let (nearer, further) = (report(&sheet).analyses.belts, report(&further).analyses.belts);
        for (near, far) in nearer.iter().zip(&further) {
            if near.alternator != WhichAlternator::First {
                continue;
            }
            prop_assert!(far.worst_pct <= near.worst_pct, "{near:?} became {far:?}");
        }
    }
}
