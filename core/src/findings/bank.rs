//! Whether a lithium bank may be charged like this.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::boat::TooColdOrHot;
use crate::boat::{BanksJoined, Chemistry, Inputs, OldConnection, Worksheet};
use crate::findings::management::less_voltage;
use crate::findings::{Code, Finding, LessVoltage, Severity, add};
use crate::physics::battery::{LFP_BLOCK_CELLS, LFP_CHARGE_V, LFP_MOST_V};
use crate::simulation::management::OpeningCause;

/// What a lithium bank does not withstand.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LithiumFinding {
    /// The charge voltage moves with temperature, as is meant for lead.
    LithiumCompensated {
        /// For each cell \[mV/K\].
        compensation_mv: f64,
        /// By how much that moves the charge voltage now \[V\].
        moves_v: f64,
    },
    /// The cells are too cold to be charged.
    LithiumFrozen {
        /// Temperature of the bank \[°C\].
        bank_c: f64,
        /// Coldest at which it may be charged \[°C\].
        coldest_c: f64,
    },
    /// The cells are too hot to be charged.
    LithiumTooHot {
        /// Temperature of the bank \[°C\].
        bank_c: f64,
    },
    /// Cold cells may take less.
    LithiumCold {
        /// Temperature of the bank \[°C\].
        bank_c: f64,
        /// What it may take \[A\].
        limit_a: f64,
    },
    /// Hot cells may take less.
    LithiumHot {
        /// Temperature of the bank \[°C\].
        bank_c: f64,
        /// What it may take \[A\].
        limit_a: f64,
    },
    /// The charge voltage is more than the cells may reach.
    LithiumOvervoltage {
        /// Charge voltage \[V\].
        charge_v: f64,
        /// What to do.
        remedy: LessVoltage,
    },
    /// The charge voltage leaves the cells no room.
    ChargeVoltageNoRoom {
        /// Whether it is what the regulator holds; what all chargers are set to
        /// otherwise.
        regulator: bool,
        /// Charge voltage \[V\].
        charge_v: f64,
        /// Charge voltage of each cell \[V\].
        cell_v: f64,
        /// Where the management system opens \[V\].
        opens_v: f64,
        /// What to set \[V\].
        set_v: f64,
    },
    /// What is to join or split the batteries does not suit a lithium bank.
    BanksJoinedToLithium {
        /// What that is.
        joined: BanksJoined,
        /// Whether the alternator's own regulator holds the voltage, before
        /// what a splitter loses.
        built_in: bool,
        /// Voltage at the bank \[V\].
        held_v: f64,
        /// What it should be charged to \[V\].
        charge_v: f64,
    },
    /// What connects the batteries today does not suit a lithium bank.
    OldConnectionGoes {
        /// What that is.
        connection: OldConnection,
    },
}

impl LithiumFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            LithiumFinding::LithiumFrozen { .. }
            | LithiumFinding::LithiumTooHot { .. }
            | LithiumFinding::LithiumOvervoltage { .. } => Severity::Danger,
            LithiumFinding::LithiumCompensated { .. }
            | LithiumFinding::LithiumHot { .. }
            | LithiumFinding::BanksJoinedToLithium { .. }
            | LithiumFinding::ChargeVoltageNoRoom { .. } => Severity::Fix,
            LithiumFinding::LithiumCold { .. } | LithiumFinding::OldConnectionGoes { .. } => {
                Severity::Note
            }
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            LithiumFinding::LithiumCompensated { .. } => Code::LithiumCompensated,
            LithiumFinding::LithiumFrozen { .. } => Code::LithiumFrozen,
            LithiumFinding::LithiumTooHot { .. } => Code::LithiumTooHot,
            LithiumFinding::LithiumCold { .. } => Code::LithiumCold,
            LithiumFinding::LithiumHot { .. } => Code::LithiumHot,
            LithiumFinding::LithiumOvervoltage { .. } => Code::LithiumOvervoltage,
            LithiumFinding::ChargeVoltageNoRoom { .. } => Code::ChargeVoltageNoRoom,
            LithiumFinding::BanksJoinedToLithium { .. } => Code::BanksJoinedToLithium,
            LithiumFinding::OldConnectionGoes { .. } => Code::OldConnectionGoes,
        }
    }
}

/// What there is to say of a lithium bank; nothing of lead.
pub(super) fn bank_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    if inputs.bank.chemistry != Chemistry::Lfp {
        return;
    }
    // A cause that the management system opens for in the run is told by that.
    let opening = report.run.opening.map(|opening| opening.cause);
    let over_voltage = opening == Some(OpeningCause::OverVoltage);
    if opening.is_none() || over_voltage {
        lithium_temperature(inputs, found);
    }
    let compensation_mv = inputs.compensation_mv();
    if compensation_mv != 0.0 {
        add(
            found,
            LithiumFinding::LithiumCompensated {
                compensation_mv,
                moves_v: inputs.compensation_v(),
            },
        );
    }
    if !over_voltage {
        lithium_voltage(inputs, found);
    }
    connection(sheet, found);
}

/// Whether what is to join or split the batteries suits, or what does so today
/// must go.
fn connection(sheet: &Worksheet, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let joined = inputs.joined();
    if joined != BanksJoined::Nothing {
        add(
            found,
            LithiumFinding::BanksJoinedToLithium {
                joined,
                built_in: inputs.first_alternator().built_in_on_house(),
                held_v: inputs.held_v(),
                charge_v: inputs.charge_v(),
            },
        );
        return;
    }
    let connection = inputs.before.connection;
    let suits = connection == OldConnection::Charger;
    if !suits && sheet.before().is_some() {
        add(found, LithiumFinding::OldConnectionGoes { connection });
    }
}

/// Whether the cells are too cold or too hot.
fn lithium_temperature(inputs: &Inputs, found: &mut Vec<Finding>) {
    let bank_c = inputs.bank.temperature_c;
    let limit_a = inputs.charge_limit_a();
    let finding = match (inputs.charge_barred(), inputs.ladder_a()) {
        (Some(TooColdOrHot::Cold), _) => LithiumFinding::LithiumFrozen {
            bank_c,
            coldest_c: inputs.bank.coldest_charge_c.unwrap_or(0.0),
        },
        (Some(_), _) => LithiumFinding::LithiumTooHot { bank_c },
        (None, Some(_)) if bank_c < 25.0 => LithiumFinding::LithiumCold { bank_c, limit_a },
        (None, Some(_)) => LithiumFinding::LithiumHot { bank_c, limit_a },
        (None, None) => return,
    };
    add(found, finding);
}

/// Whether the charge voltage leaves the cells room, what the regulator holds
/// or what all others are set to.
fn lithium_voltage(inputs: &Inputs, found: &mut Vec<Finding>) {
    let cells = LFP_BLOCK_CELLS * inputs.bank.nominal_v.blocks();
    let (held_v, set_v) = (inputs.held_v(), inputs.charge_v());
    let charge_v = held_v.max(set_v);
    if charge_v > LFP_MOST_V * cells + 1e-9 {
        add(
            found,
            LithiumFinding::LithiumOvervoltage {
                charge_v,
                remedy: less_voltage(inputs),
            },
        );
    } else if charge_v > LFP_CHARGE_V * cells + 1e-9 {
        add(
            found,
            LithiumFinding::ChargeVoltageNoRoom {
                regulator: held_v > set_v,
                charge_v,
                cell_v: charge_v / cells,
                opens_v: LFP_MOST_V * cells,
                set_v: LFP_CHARGE_V * cells,
            },
        );
    }
}
