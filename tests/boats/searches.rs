//! The search for the cheapest way, gone through whole.

use crate::answers::search;
use crate::boat::Boat;
use crate::consistent::proposals;

#[test]
fn for_an_ordinary_boat() {
    // Half an hour a day: nothing of what it proposes is in danger, and something
    // meets it: panels alone can.
    Boat::new("half an hour a day wanted")
        .set("goal_hours", 0.5)
        .check(|says| {
            let found = search(&says.sheet);
            proposals::plans(says, &found);
            says.holds(found.best.is_some(), || {
                "nothing meets half an hour".to_string()
            });
        });
}

#[test]
fn for_a_stock_alternator_that_cooks() {
    // An external regulator is among what is offered to a boat whose built-in one
    // burns the alternator.
    Boat::new("built-in regulator direct, one hour a day wanted")
        .choose("reg_kind", "internal")
        .check(|says| {
            let found = search(&says.sheet);
            proposals::plans(says, &found);
            let offered = found.plans.iter().any(|plan| {
                let with = plan.arrangement.on(&says.sheet);
                with.inputs.reg.kind != says.sheet.inputs.reg.kind
            });
            says.holds(offered, || "no external regulator is offered".to_string());
        });
}

#[test]
fn for_a_bank_that_bears_little() {
    // 50 A and no link: every plan that stays direct caps its current.
    Boat::new("bank bears 50 A")
        .set("bank_charge_limit_a", 50.0)
        .check(|says| proposals::plans(says, &search(&says.sheet)));
}

#[test]
fn what_cannot_be_had() {
    // 2500 A·h a day in half an hour: no plan meets it, and none is called best.
    Boat::new("2500 A·h a day")
        .set("daily_use_ah", 2500.0)
        .set("bank_capacity_ah", 3000.0)
        .set("goal_hours", 0.5)
        .check(|says| {
            let found = search(&says.sheet);
            says.holds(found.best.is_none(), || format!("best: {:?}", found.best));
        });
}
