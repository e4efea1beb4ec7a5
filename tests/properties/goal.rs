//! The cheapest way to a goal.

use ampwright_core::analysis::year::year_sums;
use ampwright_core::boat::{GoalKind, May, RegulatorKind, WayKind, Worksheet, demo};
use ampwright_core::decision::goal_search::{Change, Found, Plan, Search, Unmet};
use ampwright_core::findings::{Code, Severity};
use ampwright_core::report;
use ampwright_core::report::Report;
use ampwright_core::text::goal_search;
use ampwright_core::units::Reader;
use proptest::prelude::*;

use crate::draw::normal_boat;
use crate::regulated;

fn search(sheet: &Worksheet) -> Found {
    let mut search = Search::new(sheet);
    while !search.done() {
        search.step(500);
    }
    search.found()
}

/// What an electrician would not leave the boat with: each Danger, and what is
/// too hot, too fast, too much for belt or engine, or for the bank.
fn harm(report: &Report) -> Vec<&'static str> {
    const FIXES: [&str; 8] = [
        "belt_too_small",
        "case_too_hot",
        "day_below_window",
        "engine_overloaded",
        "management_opens",
        "overspeed",
        "rectifier_too_hot",
        "winding_too_hot",
    ];
    let found = report.findings.iter();
    found
        .filter(|f| f.severity() == Severity::Danger || FIXES.contains(&f.code().name()))
        .map(|f| f.code().name())
        .collect()
}

fn boat(link: &str) -> Worksheet {
    regulated::opened(&format!("v=2&{link}&end"))
}

/// The boats of the plans, after a look that none of them does harm.
fn safe_plans(sheet: &Worksheet, found: &Found) -> Vec<Worksheet> {
    let with = |plan: &Plan| plan.arrangement.on(sheet);
    let boats: Vec<Worksheet> = found.plans.iter().map(with).collect();
    for boat in &boats {
        assert_eq!(harm(&report(boat)), Vec::<&str>::new());
    }
    boats
}

/// Leaves few enough combinations to try them all.
fn narrowed(mut sheet: Worksheet) -> Worksheet {
    let goal = &mut sheet.inputs.goal;
    goal.machine = May::Stay;
    goal.second = May::Stay;
    goal.bank = May::Stay;
    goal.pulley = May::Stay;
    goal.panels = May::Stay;
    sheet
}

proptest! {
    #![proptest_config(crate::cases(40))]

    /// A plan's hours, fuel and amperes are those of the whole report of the
    /// boat so changed.
    #[test]
    fn a_plan_is_what_the_report_says(drawn in normal_boat()) {
        let sheet = narrowed(drawn.0);
        for plan in search(&sheet).plans {
            let report = report(&plan.arrangement.on(&sheet));
            let engine_h = report.analyses.day.engine_hours.expect("a plan has hours");
            let generator_h = report.analyses.generator.map_or(Some(0.0), |generator| generator.hours);
            let hours = engine_h + generator_h.expect("its generator too");
            prop_assert!((hours - plan.hours_day).abs() < 1e-6, "{hours} {}", plan.hours_day);
            let year = year_sums(&plan.arrangement.on(&sheet));
            prop_assert_eq!(plan.fuel_year_l, year.covered.then_some(year.fuel_l));
            prop_assert_eq!(plan.hours_year, year.covered.then_some(year.charging_h + year.generator_h));
            prop_assert!((report.analyses.output.hot_a - plan.hot_a).abs() < 1e-3);
        }
    }

    /// Whatever the boat is like today, no plan does harm, and leaving a boat
    /// as it is that does is no plan.
    #[test]
    fn no_plan_does_harm(drawn in normal_boat()) {
        let sheet = narrowed(drawn.0);
        let found = search(&sheet);
        for plan in &found.plans {
            let against = harm(&report(&plan.arrangement.on(&sheet)));
            prop_assert!(against.is_empty(), "{against:?}");
        }
        for key in harm(&report(&sheet)) {
            prop_assert!(found.today.iter().any(|f| f.code().name() == key), "{key}");
        }
        if !found.today.is_empty() {
            prop_assert!(found.plans.iter().all(|plan| !plan.steps.is_empty()));
        }
        prop_assert_eq!(found.best.is_none(), found.unmet.is_some());
        prop_assert_eq!(found.plans.is_empty(), matches!(found.unmet, Some(Unmet::NothingSafe { .. })));
    }

    /// Dearer plans are quicker, and the steps of each add up.
    #[test]
    fn nothing_on_the_list_is_beaten(drawn in normal_boat()) {
        let found = search(&narrowed(drawn.0));
        for pair in found.plans.windows(2) {
            prop_assert!(pair[0].bought <= pair[1].bought);
            prop_assert!(pair[0].hours_day > pair[1].hours_day);
        }
        for plan in &found.plans {
            let price: f64 = plan.steps.iter().map(|step| step.price).sum();
            prop_assert!((price - plan.bought).abs() < 1e-6 * (1.0 + plan.bought));
        }
    }

    /// The best is the cheapest, or the quickest, of those that meet the goal.
    #[test]
    fn the_best_meets_the_goal(drawn in normal_boat(), kind in 0..3usize) {
        let mut sheet = narrowed(drawn.0);
        let kind = [GoalKind::Hours, GoalKind::Fuel, GoalKind::Budget][kind];
        sheet.inputs.goal.kind = kind;
        let found = search(&sheet);
        let met: Vec<_> = found.plans.iter().filter(|plan| plan.meets).collect();
        match found.best {
            None => prop_assert!(met.is_empty()),
            Some(best) => {
                let best = &found.plans[best];
                prop_assert!(best.meets);
                for plan in met {
                    let (least, other) = match kind {
                        GoalKind::Budget => (best.hours_day, plan.hours_day),
                        GoalKind::Hours | GoalKind::Fuel => (best.bought, plan.bought),
                    };
                    prop_assert!(least <= other);
                }
            }
        }
    }
}

/// Going from change to change finds what trying everything finds.
#[test]
fn the_short_way_finds_the_same() {
    let boats: [fn(&mut Worksheet); 7] = [
        |_| {},
        // Boats that are not safe as they stand.
        |sheet| sheet.inputs.reg.kind = RegulatorKind::Internal,
        |sheet| {
            sheet.inputs.bank.charge_limit_a = Some(60.0);
            sheet.inputs.reg.kind = RegulatorKind::Internal;
        },
        |sheet| sheet.inputs.alt.max_rpm = 7000.0,
        |sheet| sheet.inputs.way.kind = WayKind::Converter,
        |sheet| sheet.inputs.alt.pulley_ratio = 1.9,
        |sheet| {
            sheet.inputs.sun.panel_w = 0.0;
            sheet.inputs.space.outside_c = 38.0;
        },
    ];
    for (number, change) in boats.iter().enumerate() {
        let mut sheet = demo();
        change(&mut sheet);
        let short = {
            let mut search = Search::trying_all(&sheet, 1);
            while !search.done() {
                search.step(500);
            }
            search.found()
        };
        let mut search = Search::trying_all(&sheet, 1_000_000);
        while !search.done() {
            search.step(500);
        }
        let whole = search.found();
        let points = |found: &Found| -> Vec<(f64, f64)> {
            found
                .plans
                .iter()
                .map(|p| (p.bought, p.hours_day))
                .collect()
        };
        assert_eq!(points(&short), points(&whole), "boat {number}");
        assert_eq!(short.best, whole.best, "boat {number}");
        // The same few, and not for having tried everything.
        assert!(short.tried < whole.tried, "boat {number}");
    }
}

#[test]
fn what_stays_is_not_changed() {
    let mut sheet = demo();
    let goal = &mut sheet.inputs.goal;
    for lever in [
        &mut goal.blower,
        &mut goal.duct,
        &mut goal.pulley,
        &mut goal.set_point,
        &mut goal.converter,
        &mut goal.straight,
        &mut goal.machine,
        &mut goal.second,
        &mut goal.panels,
        &mut goal.bank,
        &mut goal.loads,
        &mut goal.regulator,
        &mut goal.cap,
    ] {
        *lever = May::Stay;
    }
    let found = search(&sheet);
    assert_eq!(found.tried, 1);
    assert_eq!(found.plans.len(), 1);
    assert!(found.plans[0].steps.is_empty());
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

#[test]
fn a_goal_that_cannot_be_had_says_why() {
    let frozen = boat("bank_temperature_c=-5");
    let found = search(&frozen);
    assert!(found.plans.is_empty() && found.best.is_none());
    assert!(!found.today.is_empty());
    assert!(matches!(found.unmet, Some(Unmet::NothingSafe { .. })));
    // It does not go on looking where nothing helps.
    assert!(found.tried < 3000, "{}", found.tried);
    let said = goal_search(&found, &Reader::METRIC).join(" ");
    assert!(said.contains("−5 °C") || said.contains("-5 °C"), "{said}");

    let mut greedy = narrowed(demo());
    greedy.inputs.goal.hours = 0.0;
    let found = search(&greedy);
    assert!(!found.plans.is_empty());
    assert_eq!(found.unmet, Some(Unmet::OutOfReach));
    assert_eq!(goal_search(&found, &Reader::METRIC).len(), 1);
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
