//! Which arrangement: ways to set up the same boat, each worked out by the
//! same report and put beside the others by hours, heat, fuel, risk and money.
//!
//! `changes` turns one arrangement into another, `alternators` are those that
//! are proposed, `propose` writes the usual arrangements down, `harm` says what
//! must not be proposed, `parts` what would have to be bought, `outcome` works
//! one out and `year_cost` what it costs.

mod alternators;
mod changes;
mod harm;
mod outcome;
mod parts;
mod propose;
mod year_cost;

use serde::Serialize;

use crate::boat::{Arrangement, Worksheet};
use crate::findings::Finding;
use crate::report::{Report, report_without_lead};

pub(crate) use alternators::{larger_a, second_a};
pub(crate) use changes::{
    Stated, add_second, as_engines_come, can_charge_start, cap_wanted_a, direct, hold_current,
    may_pass_limit, regulate, replace,
};
pub(crate) use harm::harm;
pub use outcome::{Disconnect, Hottest, Outcome};
pub(crate) use parts::price;
pub use parts::{Part, Purchase, parts};
pub use year_cost::YearCost;

/// The arrangements of a boat beside each other.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Comparison {
    /// The worksheet as it stands first, then the usual arrangements that
    /// differ from it and do no harm, then the user's own.
    pub outcomes: Vec<Outcome>,
    /// Usual arrangements that are not proposed, and why.
    pub left_out: Vec<LeftOut>,
}

/// A usual arrangement that is not proposed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LeftOut {
    /// Its name.
    pub name: &'static str,
    /// What speaks against it, worst first, in the size tried first.
    pub harm: Vec<Finding>,
}

/// An arrangement, the boat set up like that, and what follows.
struct WorkedOut {
    arrangement: Arrangement,
    with: Worksheet,
    report: Report,
}

impl WorkedOut {
    fn of(sheet: &Worksheet, arrangement: Arrangement) -> WorkedOut {
        let with = arrangement.on(sheet);
        WorkedOut {
            report: report_without_lead(&with),
            arrangement,
            with,
        }
    }
}

/// Works out all arrangements of a boat.
pub fn compare(sheet: &Worksheet) -> Comparison {
    let (all, left_out) = worked_out(sheet);
    let mut outcomes: Vec<Outcome> = Vec::with_capacity(all.len());
    for one in &all {
        let next = Outcome::of(sheet, one, outcomes.first());
        outcomes.push(next);
    }
    Comparison { outcomes, left_out }
}

/// The worksheet as it stands, the usual arrangements that do no harm, and the
/// user's own: those of [`compare`], in the same order.
pub fn all(sheet: &Worksheet) -> Vec<Arrangement> {
    let (all, _) = worked_out(sheet);
    all.into_iter().map(|one| one.arrangement).collect()
}

/// The usual arrangements that differ from the worksheet and do no harm.
pub fn proposals(sheet: &Worksheet) -> Vec<Arrangement> {
    let (all, _) = worked_out(sheet);
    let usual = all.len() - sheet.arrangements.len();
    let proposed = all.into_iter().take(usual).skip(1);
    proposed.map(|one| one.arrangement).collect()
}

fn worked_out(sheet: &Worksheet) -> (Vec<WorkedOut>, Vec<LeftOut>) {
    let today = Arrangement {
        name: propose::as_it_stands(&sheet.inputs).to_string(),
        changes: Vec::new(),
    };
    let mut all = vec![WorkedOut::of(sheet, today)];
    let safe_today = all.iter().all(|today| harm(&today.report).is_empty());
    let (proposed, left_out) = proposed(sheet, safe_today);
    all.extend(proposed);
    let own = sheet.arrangements.iter().cloned();
    all.extend(own.map(|arrangement| WorkedOut::of(sheet, arrangement)));
    (all, left_out)
}

/// Of each usual arrangement the first size that does no harm, and those that
/// have none. One that the boat is already is no proposal; other sizes of it
/// are looked at only where it does harm as it is.
fn proposed(sheet: &Worksheet, safe_today: bool) -> (Vec<WorkedOut>, Vec<LeftOut>) {
    let (mut proposed, mut left_out) = (Vec::new(), Vec::new());
    for usual in propose::usual(sheet) {
        if safe_today && usual.sizes.contains(&sheet.inputs) {
            continue;
        }
        let mut against: Option<Vec<Finding>> = None;
        for with in usual.sizes.iter().filter(|with| **with != sheet.inputs) {
            let arrangement = Arrangement::between(usual.name, &sheet.inputs, with);
            let one = WorkedOut::of(sheet, arrangement);
            let harm = harm(&one.report);
            if harm.is_empty() {
                against = None;
                proposed.push(one);
                break;
            }
            against.get_or_insert(harm);
        }
        left_out.extend(against.map(|harm| LeftOut {
            name: usual.name,
            harm,
        }));
    }
    (proposed, left_out)
}
