//! When the bank disconnects under load: the voltage spike, what stands against
//! it, and what is left.
//!
//! `spike` works out one spike, `left` says how much of it is left, `mitigation`
//! what stands against it.

mod left;
mod mitigation;
pub(crate) mod spike;

use serde::Serialize;

use crate::analysis::peak_loads::AlternatorPeaks;
use crate::boat::{Chemistry, RegulatorKind, WhichAlternator};
use crate::physics::dump::{peak_margin, standard_pulse, suppressed_v, withstand_v};

pub use left::VoltageRange;
pub use mitigation::{Mitigation, MitigationCode, Standing};
use spike::{clamped, lead_left_v, spike};

/// What can part an alternator from its battery.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Exposure {
    /// The house bank's management system, by itself.
    Bank,
    /// The house bank is of lead: only a switch, a fuse or a loose lug.
    LeadBank,
    /// It feeds the start battery, which stays: only a switch, a fuse or a loose lug.
    StartBattery,
}

/// What happens when an alternator's battery goes.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LoadDump {
    /// Every alternator, the first one first.
    pub alternators: Vec<DumpReport>,
    /// Whether anything has been said of what stands against it.
    pub answered: bool,
}

/// What happens when one alternator's battery goes.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct DumpReport {
    /// Which alternator.
    pub alternator: WhichAlternator,
    /// What can part it from its battery.
    pub exposure: Exposure,
    /// Most volts the electronics on it withstand for a moment \[V\].
    pub bear_v: f64,
    /// What an estimate of a peak that nothing holds down is multiplied by for
    /// its upper end: see [`peak_margin`].
    pub margin: f64,
    /// Peak without suppression that ISO 16750-2 tests with, least \[V\]; none for 48 V.
    pub standard_low_v: Option<f64>,
    /// Peak without suppression that ISO 16750-2 tests with, most \[V\]; none for 48 V.
    pub standard_high_v: Option<f64>,
    /// Internal resistance of that test, least \[Ω\]; none for 48 V.
    pub standard_low_ohm: Option<f64>,
    /// Internal resistance of that test, most \[Ω\]; none for 48 V.
    pub standard_high_ohm: Option<f64>,
    /// Voltage a clamp lets through: the one said, or what is usual \[V\].
    pub clamp_v: f64,
    /// In the run, at its peak.
    pub charging: Dump,
    /// Cold, with the engine at its highest speed.
    pub top: Dump,
    /// When the bank's management system opens in the run; none where it does not.
    pub opening: Option<Dump>,
    /// What stands against it, in the order of their worth.
    pub mitigations: Vec<Mitigation>,
    /// Nominal voltage of the system it works on \[V\].
    pub nominal_v: f64,
    /// Voltage that the alternator's output is rated at \[V\].
    pub test_v: f64,
    /// Speed at which its output curve begins \[rpm\].
    pub cut_in_rpm: f64,
    /// Whether it is built for the battery its cable leads to. Where it is not
    /// there is nothing to lose: it must not be connected.
    pub fits: bool,
    /// Whether its regulator is external, with a field wire to cut.
    pub external_regulator: bool,
    /// Energy that the surge suppressor is entered to take at once \[J\].
    pub clamp_rated_j: Option<f64>,
    /// What a lead battery left on the alternator would let the voltage rise to
    /// while charging \[V\].
    pub lead_left_v: f64,
}

/// The pulse at one engine speed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Dump {
    /// Engine speed \[rpm\].
    pub engine_rpm: f64,
    /// The alternator's own \[rpm\].
    pub shaft_rpm: f64,
    /// Current that is cut off \[A\].
    pub amperes: f64,
    /// Voltage before \[V\].
    pub volts: f64,
    /// Flux over that of the rating.
    pub flux: f64,
    /// Internal resistance by ISO 16750-2 \[Ω\].
    pub internal_ohm: f64,
    /// Peak with nothing against it, our own estimate \[V\].
    pub peak_v: f64,
    /// What a clamp takes of that \[J\].
    pub clamp_j: f64,
    /// What a clamp takes of the standard's lowest peak \[J\].
    pub standard_low_j: Option<f64>,
    /// What a clamp takes of the standard's highest peak \[J\].
    pub standard_high_j: Option<f64>,
    /// Left when the bank opens, with what is said to stand against it \[V\];
    /// none where it cannot.
    pub bank_left_v: Option<f64>,
    /// Left when the switch in the output lead is opened \[V\]; none as long
    /// as none is said to be there.
    pub switch_left_v: Option<f64>,
}

/// What happens when the alternators' batteries go.
pub(crate) fn load_dump(peaks: &[AlternatorPeaks]) -> LoadDump {
    let alternators: Vec<DumpReport> = peaks.iter().map(dump).collect();
    LoadDump {
        answered: alternators
            .iter()
            .flat_map(|dump| &dump.mitigations)
            .any(|mitigation| matches!(mitigation.standing, Standing::Present | Standing::Missing)),
        alternators,
    }
}

fn exposure(peaks: &AlternatorPeaks) -> Exposure {
    let installed = &peaks.installed;
    if !installed.connection.on_house() {
        return Exposure::StartBattery;
    }
    match installed.boat.bank.chemistry {
        Chemistry::Lfp => Exposure::Bank,
        Chemistry::Agm | Chemistry::Gel | Chemistry::Flooded => Exposure::LeadBank,
    }
}

fn dump(peaks: &AlternatorPeaks) -> DumpReport {
    let installed = &peaks.installed;
    let exposure = exposure(peaks);
    let blocks = installed.blocks();
    let standard = standard_pulse(blocks);
    let on_house = exposure != Exposure::StartBattery;
    // The start battery's circuit may be of another voltage than the house's.
    let same_volts = on_house || blocks == installed.boat.bank.nominal_v.blocks();
    let clamp_v = installed.boat.clamp_v().filter(|_| on_house);
    DumpReport {
        alternator: installed.which,
        exposure,
        bear_v: if same_volts {
            installed.boat.bear_v()
        } else {
            withstand_v(blocks)
        },
        margin: peak_margin(blocks),
        standard_low_v: standard.map(|pulse| pulse.peak_v.0),
        standard_high_v: standard.map(|pulse| pulse.peak_v.1),
        standard_low_ohm: standard.map(|pulse| pulse.ohm.0),
        standard_high_ohm: standard.map(|pulse| pulse.ohm.1),
        clamp_v: clamp_v.unwrap_or_else(|| suppressed_v(blocks)),
        charging: spike(peaks, &peaks.charging, exposure, clamp_v),
        top: spike(peaks, &peaks.top, exposure, clamp_v),
        opening: peaks
            .opening
            .as_ref()
            .map(|most| spike(peaks, most, exposure, clamp_v)),
        mitigations: mitigation::mitigations(installed, exposure),
        nominal_v: 12.0 * blocks,
        test_v: installed.test_v(),
        cut_in_rpm: peaks.zero_rpm,
        fits: installed.fits(),
        external_regulator: installed.regulator().kind == RegulatorKind::External,
        clamp_rated_j: installed
            .boat
            .guard
            .clamp_j
            .filter(|_| clamped(installed.boat.guard.clamp)),
        lead_left_v: lead_left_v(&peaks.charging, blocks),
    }
}
