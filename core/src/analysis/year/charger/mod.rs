//! What the engine puts on the house side, as tables: calculated once, so that
//! a year of runs costs next to nothing.
//!
//! Two things hold the current down. Heat: a run from a cold start into a bank
//! that does not fill gives the current against the time since the start, and
//! after its end the last of it; as a bank fills its voltage rises, and the
//! current of a hot alternator falls with it. The bank: what flows from a cold
//! alternator at each state of charge, and from a built-in regulator what its
//! voltage, which falls as it warms, drives into the bank. The least of these is
//! what the engine gives. Every start is a cold one. It takes as long as a run
//! calculated in full within one per cent, and its shafts take as much within
//! two, as tests hold.
//!
//! `tables` calculates them from runs, `gives` reads off them what flows,
//! `built_in` is a regulator of the alternator's own, `steps` how finely they are
//! stepped. Uses the simulation.

mod built_in;
mod gives;
mod steps;
mod tables;
#[cfg(test)]
mod tests;

pub use gives::Charger;
