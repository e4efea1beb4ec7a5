//! The cheapest way to a goal.

use ampwright_core::goal::{Found, Search};
use ampwright_core::report;
use ampwright_core::worksheet::{GoalKind, May, WayKind, Worksheet, demo};
use proptest::prelude::*;

use crate::draw::normal_boat;

fn search(sheet: &Worksheet) -> Found {
    let mut search = Search::new(sheet);
    while !search.done() {
        search.step(500);
    }
    search.found()
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
            let hours = report.day.engine_hours.expect("a plan has hours");
            prop_assert!((hours - plan.hours_day).abs() < 1e-6, "{hours} {}", plan.hours_day);
            let litres = report.day.fuel_l.expect("and fuel") * sheet.inputs.cost.days;
            prop_assert!((litres - plan.fuel_year_l).abs() < 1e-4 * (1.0 + litres));
            prop_assert!((report.machine.hot_a - plan.hot_a).abs() < 1e-3);
        }
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
    let boats: [fn(&mut Worksheet); 4] = [
        |_| {},
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
    ] {
        *lever = May::Stay;
    }
    let found = search(&sheet);
    assert_eq!(found.tried, 1);
    assert_eq!(found.plans.len(), 1);
    assert!(found.plans[0].steps.is_empty());
}
