//! What stands between an alternator that lost its battery and the
//! electronics. Order: common practice, no source.

use serde::Serialize;

use crate::analysis::load_dump::Exposure;
use crate::boat::{ClampKind, InstalledAlternator, RegulatorKind, Said};
use crate::schema::codes;

/// Whether something that protects is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// It is entered as there.
    Present,
    /// It is entered as not there.
    Missing,
    /// Nothing is entered.
    Unsaid,
    /// It cannot help this alternator.
    NoUse,
}

codes! {
    /// Something that protects when a battery disconnects under load. The names
    /// stay the same from version to version.
    MitigationCode {
        /// Over the data link the battery's limit goes to nothing before the bank
        /// disconnects.
        DataLink = "data_link",
        /// The charge-disable signal of the battery management system cuts the
        /// field before the bank disconnects.
        ChargeDisable = "warning",
        /// A surge suppressor, or a rectifier of avalanche diodes.
        SurgeSuppressor = "clamp",
        /// A lead battery that stays on the alternator.
        LeadBattery = "lead",
        /// No switch in the output lead.
        NoSwitch = "no_switch",
    }
}

/// Something that protects, and whether it is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Mitigation {
    /// Which.
    pub code: MitigationCode,
    /// Whether it is there.
    pub standing: Standing,
}

fn stands(said: Said) -> Standing {
    match said {
        Said::Unsaid => Standing::Unsaid,
        Said::Yes => Standing::Present,
        Said::No => Standing::Missing,
    }
}

/// What matters for an alternator, in the order of its worth.
pub(super) fn mitigations(installed: &InstalledAlternator, exposure: Exposure) -> Vec<Mitigation> {
    if !installed.fits() {
        return Vec::new();
    }
    let guard = &installed.boat.guard;
    let mut list = Vec::new();
    let mut put = |code, standing| list.push(Mitigation { code, standing });
    if exposure == Exposure::Bank {
        let boat = installed.boat;
        if boat.link().sends_limits() {
            put(MitigationCode::DataLink, Standing::Present);
        }
        let signal = match installed.regulator().kind {
            RegulatorKind::External if !boat.packs_closed() => stands(boat.charge_disable()),
            RegulatorKind::External | RegulatorKind::Internal => Standing::NoUse,
        };
        put(MitigationCode::ChargeDisable, signal);
    }
    if exposure != Exposure::StartBattery {
        let clamp = match guard.clamp {
            ClampKind::Unsaid => Standing::Unsaid,
            ClampKind::None => Standing::Missing,
            ClampKind::Clamp | ClampKind::Avalanche => Standing::Present,
        };
        put(MitigationCode::SurgeSuppressor, clamp);
    }
    if exposure == Exposure::Bank {
        put(MitigationCode::LeadBattery, stands(guard.lead));
    }
    let no_switch = match guard.switch {
        Said::Unsaid => Standing::Unsaid,
        Said::Yes => Standing::Missing,
        Said::No => Standing::Present,
    };
    put(MitigationCode::NoSwitch, no_switch);
    list
}
