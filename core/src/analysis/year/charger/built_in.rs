//! A bank at the voltage of a regulator built into an alternator. Uses the steps of
//! the tables.

use crate::analysis::year::charger::steps::{SETTLED, STEPS_AN_HOUR, between};
use crate::numerics::interpolate_evenly;
use crate::physics::battery::Bank;
use crate::physics::charging::held_a;

/// A bank at the voltage of a regulator built into an alternator.
#[derive(Debug, Clone, PartialEq)]
pub struct BuiltIn {
    /// That voltage at each step of time \[V\].
    pub held_v: Vec<f64>,
    /// The bank that it charges.
    pub bank: Bank,
    /// What the house draws meanwhile \[A\].
    pub load_a: f64,
    /// What it drives once settled at each step of charge \[A\].
    pub settled_a: Vec<f64>,
}

impl BuiltIn {
    /// What it is in weather between that of two others of the same boat, so far
    /// from the first to the second, 0 to 1, into a bank of that weather.
    pub fn between(one: &BuiltIn, other: &BuiltIn, share: f64, bank: &Bank) -> BuiltIn {
        BuiltIn {
            held_v: between(&one.held_v, &other.held_v, share),
            bank: *bank,
            load_a: one.load_a,
            settled_a: between(&one.settled_a, &other.settled_a, share),
        }
    }

    /// What it drives onto the house side \[A\] at a time after the start \[h\] and
    /// a state of charge, 0 to 1. An alternator that a full bank leaves little to
    /// do cools again, to what it would settle at.
    pub fn drives_a(&self, hours: f64, soc: f64) -> f64 {
        let held_v = interpolate_evenly(&self.held_v, hours * STEPS_AN_HOUR);
        let bank = &self.bank;
        let driven_a = held_a(
            held_v,
            bank.rest_v(soc),
            bank.resistance_ohm(soc),
            self.load_a,
        );
        driven_a.max(interpolate_evenly(&self.settled_a, soc * SETTLED as f64))
    }
}
