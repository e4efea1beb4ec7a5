//! What no plan of the goal search may do to a boat.

use ampwright_core::boat::{May, RegulatorKind, WayKind, Worksheet};
use ampwright_core::decision::goal_search::{Change, Found, Plan};
use ampwright_core::findings::Code;
use ampwright_core::report;
use ampwright_core::text::goal_search;
use ampwright_core::units::Reader;

use crate::goal::{boat, harm, search};

/// The boats of the plans, after a look that none of them does harm.
fn safe_plans(sheet: &Worksheet, found: &Found) -> Vec<Worksheet> {
    let with = |plan: &Plan| plan.arrangement.on(sheet);
    let boats: Vec<Worksheet> = found.plans.iter().map(with).collect();
    for boat in &boats {
        assert_eq!(harm(&report(boat)), Vec::<&str>::new());
    }
    boats
}

/// An alternator with nothing but its built-in regulator cooks on a lithium
/// bank, and the plan began with leaving it so.
#[test]
fn a_built_in_regulator_on_the_bank_is_replaced() {
    let sheet = boat("reg_kind=internal");
    assert!(harm(&report(&sheet)).contains(&"winding_too_hot"));
    let found = search(&sheet);
    let boats = safe_plans(&sheet, &found);
    assert!(!boats.is_empty());
    assert!(found.today.iter().any(|f| f.code() == Code::WindingTooHot));
    for boat in &boats {
        assert_eq!(boat.inputs.reg.kind, RegulatorKind::External);
    }
    // What puts an end to harm comes first.
    let first = found.plans[0].steps[0].change;
    assert!(
        matches!(first, Change::Regulator | Change::Direct),
        "{first:?}"
    );
    assert!(goal_search(&found, &Reader::METRIC)[0].contains("not safe"));
}

#[test]
fn a_plan_keeps_the_current_within_what_the_bank_may_take() {
    for link in [
        "reg_kind=internal&bank_charge_limit_a=50",
        "bank_charge_limit_a=50",
        "way_kind=converter&bank_charge_limit_a=50",
    ] {
        let sheet = boat(link);
        let found = search(&sheet);
        let boats = safe_plans(&sheet, &found);
        assert!(!boats.is_empty(), "{link}");
        for boat in boats {
            let inputs = &boat.inputs;
            let limit_a = inputs.charge_limit_a();
            let most_a = match inputs.way.kind {
                WayKind::Direct => inputs.reg.current_cap_a.unwrap_or(inputs.alt.rated_a),
                WayKind::Converter => inputs.charger_a(),
            };
            assert!(most_a <= limit_a, "{most_a} {limit_a} {link}");
        }
    }
}

#[test]
fn no_plan_has_a_pulley_smaller_than_its_belt_bears() {
    // Table of belts: 60 mm for one 10 mm V-belt, 65 mm for 13 mm, 50 mm for
    // multi-rib belts, which is the least of all.
    for (link, least_mm) in [
        ("alt_rated_a=60&belt_kind=v10", 60.0),
        ("belt_kind=v13", 65.0),
        ("belt_kind=ribs6", 50.0),
        ("belt_kind=unsaid", 50.0),
    ] {
        let mut sheet = boat(link);
        // Other alternators bring belts of their own.
        sheet.inputs.goal.machine = May::Stay;
        sheet.inputs.goal.second = May::Stay;
        let found = search(&sheet);
        assert!(!found.plans.is_empty(), "{link}");
        for boat in safe_plans(&sheet, &found) {
            let belt = &boat.inputs.belt;
            assert!(belt.pulley_mm >= least_mm, "{} {link}", belt.pulley_mm);
            // The engine's pulley stays the one it is.
            let (then_mm, now_mm) = (
                sheet.inputs.first_alternator().engine_pulley_mm(),
                boat.inputs.first_alternator().engine_pulley_mm(),
            );
            assert!((then_mm - now_mm).abs() < 0.5, "{then_mm} {now_mm} {link}");
        }
    }
}

#[test]
fn an_alternator_keeps_its_voltage_in_every_plan() {
    for (link, blocks) in [
        (
            "bank_nominal_v=48&way_kind=converter&bank_capacity_ah=200",
            1.0,
        ),
        ("bank_nominal_v=24&alt_nominal_v=24&alt_rated_a=60", 2.0),
        (
            "alt_rated_a=35&eng_displacement_l=0.5&way_kind=converter&way_converter_a=10",
            1.0,
        ),
    ] {
        let mut sheet = boat(link);
        let goal = &mut sheet.inputs.goal;
        (goal.blower, goal.duct, goal.bank) = (May::Stay, May::Stay, May::Stay);
        let found = search(&sheet);
        assert!(!found.plans.is_empty(), "{link}");
        for boat in safe_plans(&sheet, &found) {
            for installed in boat.inputs.alternators() {
                assert!(installed.fits(), "{link}");
                if installed.alternator.rated_a == sheet.inputs.alt.rated_a {
                    assert_eq!(installed.blocks(), blocks, "{link}");
                }
            }
        }
    }
}

/// A large alternator on a small engine: 150 A at 14 V and 55 % are 3.8 kW of
/// the 3.5 kW that half a litre has at 1500 rpm (14 kW a litre at 3000).
#[test]
fn no_plan_stalls_a_small_engine() {
    let sheet = boat("alt_rated_a=35&eng_displacement_l=0.5");
    let found = search(&sheet);
    for boat in safe_plans(&sheet, &found) {
        assert!(report(&boat).analyses.engine.peak_share_pct <= 60.0);
    }
}
