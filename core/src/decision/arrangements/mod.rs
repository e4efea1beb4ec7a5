//! Which arrangement: ways to set up the same boat, each worked out by the
//! same report and put beside the others by hours, heat, fuel, risk and money.
//!
//! `kind` says which of the usual ways one is, `changes` turns one arrangement into
//! another, `alternators` are those that are proposed, `propose` writes the usual
//! arrangements down, `mains` has generator and mains charger, `harm` says what must not be proposed, `parts` what would
//! have to be bought, `outcome` works one out, `hottest` and `disconnect` what
//! threatens it, and `year_cost` what it costs.

mod alternators;
mod changes;
mod disconnect;
mod harm;
mod hottest;
mod kind;
mod mains;
mod outcome;
mod parts;
mod propose;
mod year_cost;

use serde::Serialize;

use crate::boat::{Arrangement, Worksheet};
use crate::findings::Finding;
use crate::report::{Report, report};

pub(crate) use alternators::{larger_a, second_a};
pub(crate) use changes::{
    Stated, add_second, as_engines_come, can_charge_start, cap_wanted_a, direct, hold_current,
    regulate, replace,
};
pub use disconnect::Disconnect;
pub(crate) use harm::harm;
pub use hottest::Hottest;
pub use kind::Kind;
pub(crate) use mains::{larger_chargers_a, put_on_generator, set_mains_charger, usual_chargers_a};
pub use outcome::Outcome;
pub(crate) use parts::price;
pub use parts::{Part, Purchase, parts};
pub use year_cost::YearCost;

/// The arrangements of a boat beside each other.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Comparison {
    /// The worksheet as it stands first, then the boat before the change, the
    /// usual mistake, the usual arrangements that differ from the worksheet and
    /// do no harm, and the user's own.
    pub outcomes: Vec<Outcome>,
    /// Usual arrangements that are not proposed, and why.
    pub left_out: Vec<LeftOut>,
}

/// A usual arrangement that is not proposed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LeftOut {
    /// Which it is.
    pub kind: Kind,
    /// What speaks against it, worst first, in the size tried first.
    pub harm: Vec<Finding>,
}

/// What an arrangement is in the comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// The worksheet as it stands.
    Worksheet,
    /// The boat before the change.
    Before,
    /// The usual mistake, with what comes of it.
    Warning,
    /// A usual arrangement that does no harm.
    Proposed,
    /// One of the user's own.
    Own,
}

/// An arrangement, the boat set up like that, and what follows.
struct WorkedOut {
    role: Role,
    kind: Kind,
    arrangement: Arrangement,
    with: Worksheet,
    report: Report,
}

impl WorkedOut {
    fn of(sheet: &Worksheet, role: Role, kind: Kind, arrangement: Arrangement) -> WorkedOut {
        let with = arrangement.on(sheet);
        WorkedOut {
            role,
            kind,
            report: report(&with),
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

/// The usual arrangements that differ from the worksheet and do no harm.
pub fn proposals(sheet: &Worksheet) -> Vec<(Kind, Arrangement)> {
    let (all, _) = worked_out(sheet);
    let proposed = all.into_iter().filter(|one| one.role == Role::Proposed);
    proposed.map(|one| (one.kind, one.arrangement)).collect()
}

fn worked_out(sheet: &Worksheet) -> (Vec<WorkedOut>, Vec<LeftOut>) {
    let kind = Kind::as_it_stands(&sheet.inputs);
    let as_it_stands = WorkedOut::of(sheet, Role::Worksheet, kind, Arrangement::default());
    let is_safe = harm(&as_it_stands.report).is_empty();
    let mut all = vec![as_it_stands];
    all.extend(before(sheet));
    all.extend(warning(sheet));
    let (proposed, left_out) = proposed(sheet, is_safe);
    all.extend(proposed);
    let own = sheet.arrangements.iter().cloned();
    all.extend(own.map(|arrangement| WorkedOut::of(sheet, Role::Own, Kind::Own, arrangement)));
    (all, left_out)
}

/// The boat before the change, where somebody has said what is aboard.
fn before(sheet: &Worksheet) -> Option<WorkedOut> {
    let old = sheet.before()?;
    let arrangement = Arrangement::between(&sheet.inputs, &old);
    Some(WorkedOut::of(
        sheet,
        Role::Before,
        Kind::Before,
        arrangement,
    ))
}

/// A stock alternator with its built-in regulator, direct to a lithium bank: no
/// proposal, but what many boats are given. Shown where it does harm.
fn warning(sheet: &Worksheet) -> Option<WorkedOut> {
    let mistake = propose::stock_direct(&sheet.inputs)?;
    let arrangement = Arrangement::between(&sheet.inputs, &mistake);
    let one = WorkedOut::of(sheet, Role::Warning, Kind::StockDirect, arrangement);
    (!harm(&one.report).is_empty()).then_some(one)
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
            let arrangement = Arrangement::between(&sheet.inputs, with);
            let one = WorkedOut::of(sheet, Role::Proposed, usual.kind, arrangement);
            let harm = harm(&one.report);
            if harm.is_empty() {
                against = None;
                proposed.push(one);
                break;
            }
            against.get_or_insert(harm);
        }
        left_out.extend(against.map(|harm| LeftOut {
            kind: usual.kind,
            harm,
        }));
    }
    (proposed, left_out)
}
