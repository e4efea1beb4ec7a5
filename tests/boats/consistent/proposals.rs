//! Neither arrangements nor the search propose a boat that is in danger.

use ampwright_core::decision::arrangements::Role;
use ampwright_core::decision::goal_search::Found;

use ampwright_core::text::arrangements::name;

use crate::answers::{Answers, Weight};
use crate::says::Says;

/// Dangers that the boat as it stands has and no arrangement is about: those
/// of the bank and its fuses, entries that cannot be, and that there is not
/// enough, which the row of the comparison says itself. What burns, opens or
/// breaks is never among them.
const NOT_ITS_BUSINESS: &[&str] = &[
    "lithium_frozen",
    "lithium_hot",
    "lead_frozen",
    "lead_hot",
    "lithium_overvoltage",
    "lead_overvoltage",
    "cannot_be_charged",
    "fuse_cannot_break",
    "cable_insulation_too_hot",
    "cable_none",
    "curve_points",
    "efficiency_too_high",
    "anchor_out_of_reach",
    "day_not_covered",
    "bank_is_emptied",
    "too_slow",
    "converter_locked_out",
];

pub fn check(says: &Says) {
    arrangements(says);
    for found in says.found() {
        plans(says, found);
    }
}

fn arrangements(says: &Says) {
    let own = says.sheet.arrangements.len();
    let proposed = says.proposed();
    let usual = proposed.len() - own;
    for (name, sheet) in proposed.into_iter().take(usual) {
        let answers = Answers::of(sheet);
        let mut dangers = answers.codes(Weight::Danger);
        dangers.retain(|code| !(NOT_ITS_BUSINESS.contains(code) && says.has(code)));
        says.holds(dangers.is_empty(), || {
            format!("“{name}” is proposed with {dangers:?}")
        });
        larger(says, &name, &answers);
    }
    let today = says
        .comparison()
        .outcomes
        .first()
        .and_then(|first| first.year);
    let outcomes = says.comparison().outcomes.iter();
    for outcome in outcomes.filter(|one| matches!(one.role, Role::Proposed | Role::Own)) {
        let share = outcome.engine_share_pct;
        says.holds(share < 100.0, || {
            format!(
                "“{}” takes {share:.0} % of what the engine has",
                name(outcome)
            )
        });
        let payback = outcome.payback_years;
        says.holds(payback.is_none_or(|years| years < 1000.0), || {
            format!("“{}” pays back in {payback:?} years", name(outcome))
        });
        if let (Some(today), Some(then), Some(years)) = (today, outcome.year, payback) {
            let saved = today.running() - then.running();
            says.holds(saved > 0.0, || {
                format!(
                    "“{}” saves {saved:.0} a year and pays back in {years:.1}",
                    name(outcome)
                )
            });
        }
    }
}

/// A larger alternator is larger than the one there, in watts.
fn larger(says: &Says, name: &str, with: &Answers) {
    if !name.contains("larger alternator") {
        return;
    }
    let watts = |answers: &Answers| {
        answers.figure("alt_rated_a") * answers.sheet.inputs.first_alternator().test_v()
    };
    let (old_w, new_w) = (watts(says), watts(with));
    says.holds(new_w > old_w, || {
        format!("“{name}” has {new_w:.0} W in place of {old_w:.0}")
    });
}

/// No plan with a change is in danger.
pub fn plans(says: &Says, found: &Found) {
    let plans = found.plans.iter().filter(|plan| !plan.steps.is_empty());
    for plan in plans {
        let answers = Answers::of(plan.arrangement.on(&says.sheet));
        let dangers = answers.codes(Weight::Danger);
        says.holds(dangers.is_empty(), || {
            let steps: Vec<_> = plan.steps.iter().map(|step| step.change).collect();
            format!("a plan has {dangers:?}: {steps:?}")
        });
        says.holds(
            plan.hours_day.is_finite() && plan.bought.is_finite(),
            || "a plan without hours or price".to_string(),
        );
    }
    if let Some(best) = found.best.and_then(|at| found.plans.get(at)) {
        says.holds(best.meets, || {
            "the best plan does not meet the goal".to_string()
        });
    }
}
