//! Running the engine: what flows, what limits it, and what gets hot.
//!
//! [`plant`] turns a worksheet into prepared numbers and says what happens at
//! one moment; [`integrate`] steps through time; [`run`] reads the answers off
//! a whole run; [`steady`] finds where everything settles without one; [`day`]
//! asks how long the engine must run each day.

pub mod day;
pub mod integrate;
pub mod plant;
pub mod run;
pub mod steady;

use serde::Serialize;

/// What holds the current down at a moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Limit {
    /// The machine gives all it can at this speed and heat.
    Machine,
    /// The regulator's current cap.
    CurrentCap,
    /// The regulator holds the temperature.
    Temperature,
    /// The bank takes no more.
    BankLimit,
    /// The bank has come up to its charge voltage.
    ChargeVoltage,
    /// The DC-DC converter gives no more.
    Converter,
}

impl Limit {
    /// All of them, in the order they are listed.
    pub const ALL: [Limit; 6] = [
        Limit::Machine,
        Limit::Temperature,
        Limit::CurrentCap,
        Limit::Converter,
        Limit::BankLimit,
        Limit::ChargeVoltage,
    ];

    /// In a few words.
    pub const fn words(self) -> &'static str {
        match self {
            Limit::Machine => "the machine, at full field",
            Limit::CurrentCap => "the current cap",
            Limit::Temperature => "heat: the regulator holds back",
            Limit::BankLimit => "the bank's current limit",
            Limit::ChargeVoltage => "the charge voltage",
            Limit::Converter => "the converter's size",
        }
    }

    /// In one word or two, for tight places.
    pub const fn short(self) -> &'static str {
        match self {
            Limit::Machine => "machine",
            Limit::CurrentCap => "cap",
            Limit::Temperature => "heat",
            Limit::BankLimit => "bank limit",
            Limit::ChargeVoltage => "voltage",
            Limit::Converter => "converter",
        }
    }
}
