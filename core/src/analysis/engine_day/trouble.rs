//! Why a day's need is not met.

use serde::Serialize;

use crate::analysis::engine_day::DAY_S;
use crate::simulation::Limit;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, charge};
use crate::simulation::steady_state::{LATE_S, settled};

/// Why no daily engine run puts back what the boat uses.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum DayTrouble {
    /// The charge voltage is too low to reach the target, or the bank is too
    /// cold to be charged at all.
    CannotBeCharged,
    /// The electrolyte of a lead bank is frozen where a run would begin.
    BankFrozen,
    /// The boat draws all that reaches the house side: nothing is left for the
    /// bank.
    NothingLeft,
    /// The bank's management system disconnects it while the engine charges.
    ManagementOpens,
    /// The alternator is of another voltage than the battery it is led to.
    WrongVoltage,
    /// Charging works, but more than a day is needed.
    TooSlow,
    /// The bank is too small even for many runs a day.
    BankTooSmall,
}

impl DayTrouble {
    /// Every one of them.
    pub const ALL: [DayTrouble; 7] = [
        DayTrouble::CannotBeCharged,
        DayTrouble::BankFrozen,
        DayTrouble::NothingLeft,
        DayTrouble::ManagementOpens,
        DayTrouble::WrongVoltage,
        DayTrouble::TooSlow,
        DayTrouble::BankTooSmall,
    ];
}

/// Why the engine can never bring the bank to a state of charge, 0 to 1; none
/// when it can. Everything cold, and long after any soft start: what does not
/// flow then never flows.
pub fn blocked(plant: &Plant, to: f64) -> Option<DayTrouble> {
    let flow = plant.flow(LATE_S, to, &plant.resting());
    if flow.bank_a > 0.0 {
        return None;
    }
    Some(match flow.limit {
        Limit::ChargeVoltage | Limit::BankLimit => DayTrouble::CannotBeCharged,
        Limit::FrozenBank => DayTrouble::BankFrozen,
        Limit::WrongVoltage => DayTrouble::WrongVoltage,
        _ => DayTrouble::NothingLeft,
    })
}

/// Why the engine gives a bank nothing between two states of charge, 0 to 1: it
/// never brings it there, it is frozen where it begins, or the bank disconnects on
/// the way. None when it
/// charges, however slowly.
pub fn gives_nothing(plant: &Plant, from: f64, to: f64) -> Option<DayTrouble> {
    if let Some(trouble) = blocked(plant, to) {
        return Some(trouble);
    }
    if plant.bank.is_frozen(from) {
        return Some(DayTrouble::BankFrozen);
    }
    let trace = charge(plant, from, to, DAY_S, &Fineness::USUAL);
    if trace.opening(trace.last_s()).is_some() {
        return Some(DayTrouble::ManagementOpens);
    }
    let slow = trace.reaches(to).is_none().then(|| too_slow(plant, to));
    slow.filter(|trouble| *trouble != DayTrouble::TooSlow)
}

/// Why the engine cannot charge a bank between two states of charge, 0 to 1, as
/// [`gives_nothing`] finds it, for a boat that is charged without trouble in colder
/// weather with the same charge limit: its management system then has nothing to
/// open for in hotter weather either, where less flows. Spares the run in most cases.
pub fn gives_nothing_hotter(plant: &Plant, from: f64, to: f64) -> Option<DayTrouble> {
    let flows = blocked(plant, to).is_none() && settled(plant, to).flow.bank_a > 0.0;
    if flows {
        None
    } else {
        gives_nothing(plant, from, to)
    }
}

/// Why runs of a whole day do not reach a state of charge, 0 to 1: once hot, the
/// alternator gives no more than the boat draws, or too little more.
pub(super) fn too_slow(plant: &Plant, to: f64) -> DayTrouble {
    if settled(plant, to).flow.bank_a > 0.0 {
        DayTrouble::TooSlow
    } else {
        DayTrouble::NothingLeft
    }
}
