//! Running the engine: what flows, what limits it, and what gets hot.
//!
//! [`alternator`] is one alternator, `rated` as its plate says, `cooling` how well it
//! is cooled, `sensor` what its regulator's sensor feels, [`alternators`] all of the
//! boat's, [`engine_space`] the air around them, [`plant`] the whole boat as prepared
//! numbers, `flow` what flows at one [`moment`] (`operating_point`, `sources` from
//! whom, `sharing` how several share it); [`management`] what the bank's management
//! system does about it, [`opening`] when; [`run`] steps through a whole run and
//! [`Trace`](run::Trace) reads the answers off it; [`carried`] is what one run leaves
//! to the next, `charge_balance` where its ampere-hours went, `switched` what is
//! switched in its course, such as an [`engine_load`]; [`heat_soak`] watches the heat
//! after the engine stops; [`steady_state`] finds where everything settles without a
//! run; [`mains_charger`] charges from shore power or a generator.
//!
//! It asks numerics, physics and the worksheet, and draws no conclusions.

pub mod alternator;
pub mod alternators;
pub mod carried;
mod charge_balance;
pub(crate) mod cooling;
#[cfg(test)]
pub(crate) mod counted;
mod drives;
pub(crate) mod engine_fuel;
pub mod engine_load;
pub mod engine_space;
mod flow;
pub mod heat_soak;
pub mod mains_charger;
pub mod management;
pub mod moment;
pub mod opening;
mod operating_point;
mod peaks;
pub mod per_alternator;
pub mod plant;
pub(crate) mod rated;
mod regulators;
pub mod run;
mod run_state;
mod sensor;
mod sharing;
mod sources;
pub mod steady_state;
mod stretches;
mod switched;
mod trace;

use serde::Serialize;

/// What holds the current down at a moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Limit {
    /// The alternator gives all it can at this speed and heat.
    AlternatorOutput,
    /// The regulator's current cap.
    CurrentCap,
    /// The regulator holds the temperature.
    Temperature,
    /// The regulator lets the field up slowly.
    Ramp,
    /// The regulator holds back while the fan is slow.
    LowSpeed,
    /// The regulator's cap on the field.
    FieldCap,
    /// The bank takes no more.
    BankLimit,
    /// The bank has come up to its charge voltage.
    ChargeVoltage,
    /// The bank's electrolyte is frozen and takes no charge.
    FrozenBank,
    /// The DC-DC charger gives no more.
    Converter,
    /// The alternator is of another voltage than the battery it is led to and
    /// must not be connected.
    WrongVoltage,
}

impl Limit {
    /// All of them, in the order they are listed.
    pub const ALL: [Limit; 11] = [
        Limit::AlternatorOutput,
        Limit::Temperature,
        Limit::CurrentCap,
        Limit::Ramp,
        Limit::LowSpeed,
        Limit::FieldCap,
        Limit::Converter,
        Limit::BankLimit,
        Limit::FrozenBank,
        Limit::ChargeVoltage,
        Limit::WrongVoltage,
    ];
}
