//! The cheapest way to a goal.

use ampwright_core::analysis::year::year_sums;
use ampwright_core::boat::{GoalKind, May, RegulatorKind, WayKind, Worksheet, demo};
use ampwright_core::decision::goal_search::{Found, Search, Unmet};
use ampwright_core::findings::Severity;
use ampwright_core::report;
use ampwright_core::report::Report;
use ampwright_core::text::goal_search;
use ampwright_core::units::Reader;
use proptest::prelude::*;

use crate::draw::normal_boat;
use crate::regulated;

pub fn search(sheet: &Worksheet) -> Found {
    let mut search = Search::new(sheet);
    while !search.done() {
        search.step(500);
    }
    search.found()
}

/// What an electrician would not leave the boat with: each Danger, and what is
/// too hot, too fast, too much for belt or engine, or for the bank.
pub fn harm(report: &Report) -> Vec<&'static str> {
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

pub fn boat(link: &str) -> Worksheet {
    regulated::opened(&format!("v=2&{link}&end"))
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

    /// Dearer plans are quicker, apart from the answer to a goal that is not of
    /// hours, and the steps of each add up.
    #[test]
    fn nothing_on_the_list_is_beaten(drawn in normal_boat()) {
        let found = search(&narrowed(drawn.0));
        for pair in found.plans.windows(2) {
            prop_assert!(pair[0].bought <= pair[1].bought);
        }
        let plans = found.plans.iter().enumerate();
        let others: Vec<_> = plans.filter(|(at, _)| found.best != Some(*at)).collect();
        for pair in others.windows(2) {
            prop_assert!(pair[0].1.hours_day > pair[1].1.hours_day);
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
