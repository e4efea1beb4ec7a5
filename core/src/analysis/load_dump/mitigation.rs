//! What stands between an alternator that lost its battery and the
//! electronics. Order and advice: common practice, no source.

use serde::Serialize;

use crate::analysis::load_dump::{DumpReport, Exposure, clamped, lead_left_v};
use crate::analysis::peak_loads::AlternatorPeaks;
use crate::boat::{ClampKind, RegulatorKind, Said};

/// Whether a defence is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// It is said to be there.
    Present,
    /// It is said not to be there.
    Missing,
    /// Nobody has said.
    Unsaid,
    /// It cannot help this machine.
    NoUse,
}

impl Standing {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Standing::Present => "there",
            Standing::Missing => "missing",
            Standing::Unsaid => "not said",
            Standing::NoUse => "no use here",
        }
    }
}

/// One defence.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Mitigation {
    /// Its name, the same for ever.
    pub key: &'static str,
    /// What it is.
    pub what: &'static str,
    /// Whether it is there.
    pub standing: Standing,
    /// What it does, and what to do about it.
    pub says: String,
}

fn stands(said: Said) -> Standing {
    match said {
        Said::Unsaid => Standing::Unsaid,
        Said::Yes => Standing::Present,
        Said::No => Standing::Missing,
    }
}

/// The defences that matter for a machine, in the order of their worth.
pub(super) fn mitigations(machine: &AlternatorPeaks, dump: &DumpReport) -> Vec<Mitigation> {
    let installed = &machine.installed;
    let guard = &installed.boat.guard;
    let mut list = Vec::new();
    if !installed.fits() {
        return list;
    }
    let mut put = |key, what, standing, says| {
        list.push(Mitigation {
            key,
            what,
            standing,
            says,
        });
    };
    if dump.exposure == Exposure::Bank {
        let wired = installed.regulator().kind == RegulatorKind::External;
        put(
            "warning",
            "Warning contact that cuts the field first",
            if wired {
                stands(guard.warning)
            } else {
                Standing::NoUse
            },
            if wired {
                "With the field cut 1 to 5 s before the bank opens, nothing flows any more and nothing jumps. Try it once with the engine running: the current must be gone before anything opens. A management system that opens without warning, on a short circuit or a fault of its own, is not met by it: keep a second defence.".to_string()
            } else {
                "The regulator is built in: there is no field wire that a contact could cut."
                    .to_string()
            },
        );
    }
    if dump.exposure != Exposure::StartBattery {
        put(
            "clamp",
            "Clamp, or a rectifier of avalanche diodes",
            match guard.clamp {
                ClampKind::Unsaid => Standing::Unsaid,
                ClampKind::None => Standing::Missing,
                ClampKind::Clamp | ClampKind::Avalanche => Standing::Present,
            },
            clamp_says(machine, dump),
        );
    }
    if dump.exposure == Exposure::Bank {
        let most = &machine.charging;
        put(
            "lead",
            "Lead battery that stays on the machine",
            stands(guard.lead),
            format!(
                "It goes on taking the {:.0} A and holds the voltage near {:.0} V for a moment, as long as nothing can part it from the machine and it is in fair health.",
                most.amperes,
                lead_left_v(most, installed.blocks())
            ),
        );
    }
    put(
        "no_switch",
        "No switch in the output lead",
        match guard.switch {
            Said::Unsaid => Standing::Unsaid,
            Said::Yes => Standing::Missing,
            Said::No => Standing::Present,
        },
        "Opened with the engine running, a switch there makes the same pulse, and only a clamp on the machine's side of it helps. A fuse protects the cable and stays.".to_string(),
    );
    list
}

fn clamp_says(machine: &AlternatorPeaks, dump: &DumpReport) -> String {
    let guard = &machine.installed.boat.guard;
    let needs = format!(
        "it has to take {:.0} J at {:.0} engine rpm and {:.0} J at {:.0}",
        dump.charging.clamp_j, dump.charging.engine_rpm, dump.top.clamp_j, dump.top.engine_rpm
    );
    let worst_j = dump.charging.clamp_j.max(dump.top.clamp_j);
    match guard.clamp_j.filter(|_| clamped(guard.clamp)) {
        Some(most_j) if most_j < worst_j => format!(
            "Holding {:.0} V {needs}, more than the {most_j:.0} J it bears: it may be gone with the first pulse.",
            dump.clamp_v
        ),
        Some(most_j) => {
            let standard_j = dump.charging.standard_high_j.unwrap_or_default();
            let enough = if most_j < standard_j {
                format!(
                    "enough for our estimate, not for the {standard_j:.0} J of the standard's highest peak"
                )
            } else {
                "enough".to_string()
            };
            format!(
                "Holding {:.0} V {needs}; it bears {most_j:.0} J, {enough}.",
                dump.clamp_v
            )
        }
        None if clamped(guard.clamp) => format!(
            "Holding {:.0} V {needs}; see in its maker's sheet whether it bears that.",
            dump.clamp_v
        ),
        None => format!("At {:.0} V {needs}, by our estimate.", dump.clamp_v),
    }
}
