//! When the bank disconnects under load: the pulse, what stands against it,
//! and what is left.

mod mitigation;
mod words;

use serde::Serialize;

use crate::analysis::peak_loads::{AlternatorPeaks, LoadAtSpeed};
use crate::boat::{Chemistry, ClampKind, RegulatorKind, Said, WhichAlternator};
use crate::physics::dump::{
    Pulse, internal_ohm, open_peak_v, peak_margin, standard_pulse, suppressed_v, withstand_v,
};

pub use mitigation::{Mitigation, Standing};

/// What a lead battery still on the alternator resists a surge with, for each
/// 12 V block \[Ω\]: a start battery in fair health and its leads. Own reasoning.
const LEAD_BLOCK_OHM: f64 = 0.02;

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
    /// The same, most \[V\].
    pub standard_high_v: Option<f64>,
    /// Its internal resistance, least \[Ω\].
    pub standard_low_ohm: Option<f64>,
    /// The same, most \[Ω\].
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
    /// What there is to say, one sentence each.
    pub sentences: Vec<String>,
}

/// Where an estimated voltage lies; both ends are the same where it is certain.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct VoltageRange {
    /// Its lower end \[V\].
    pub low_v: f64,
    /// Its upper end \[V\].
    pub high_v: f64,
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

impl DumpReport {
    /// Most volts left at either speed when the bank opens; none where it cannot.
    pub fn bank_left_v(&self) -> Option<f64> {
        worse(self.charging.bank_left_v, self.top.bank_left_v)
    }

    /// Most volts left at either speed when the switch is opened; none without one.
    pub fn switch_left_v(&self) -> Option<f64> {
        worse(self.charging.switch_left_v, self.top.switch_left_v)
    }

    /// Whether a voltage left is too much for the electronics; one that nothing
    /// holds down rests on a rough estimate and has to keep well below.
    pub fn too_much(&self, left_v: f64) -> bool {
        self.highest_v(left_v) > self.bear_v
    }

    /// Whether a voltage left is a jump that nothing holds down.
    fn bare(&self, left_v: f64) -> bool {
        let before_v = self.charging.volts.max(self.top.volts);
        left_v >= self.peak_v() && left_v > before_v
    }

    /// Upper end of a voltage left \[V\]: of a bare jump, with the estimate's margin.
    fn highest_v(&self, left_v: f64) -> f64 {
        if self.bare(left_v) {
            self.margin * left_v
        } else {
            left_v
        }
    }

    /// A voltage left: of a bare jump, with the estimate's margin.
    pub(crate) fn left_range(&self, left_v: f64) -> VoltageRange {
        VoltageRange {
            low_v: left_v,
            high_v: self.highest_v(left_v),
        }
    }

    /// The peak of a pulse that nothing holds down.
    pub(crate) fn peak_range(&self, dump: &Dump) -> VoltageRange {
        let margin = if dump.peak_v > dump.volts {
            self.margin
        } else {
            1.0
        };
        VoltageRange {
            low_v: dump.peak_v,
            high_v: margin * dump.peak_v,
        }
    }

    /// The higher of the two peaks.
    pub(crate) fn highest_peak(&self) -> VoltageRange {
        self.left_range(self.peak_v())
    }

    /// Whether anything is said to be there that helps when the bank opens.
    pub fn defended(&self) -> bool {
        self.mitigations.iter().any(|mitigation| {
            mitigation.standing == Standing::Present && mitigation.key != "no_switch"
        })
    }

    /// Highest of the two peaks with nothing against it \[V\].
    pub fn peak_v(&self) -> f64 {
        self.charging.peak_v.max(self.top.peak_v)
    }
}

fn worse(one: Option<f64>, other: Option<f64>) -> Option<f64> {
    one.into_iter().chain(other).reduce(f64::max)
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
    let mut dump = DumpReport {
        alternator: peaks.installed.which,
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
        charging: pulse(peaks, &peaks.charging, exposure, clamp_v),
        top: pulse(peaks, &peaks.top, exposure, clamp_v),
        opening: peaks
            .opening
            .as_ref()
            .map(|most| pulse(peaks, most, exposure, clamp_v)),
        mitigations: Vec::new(),
        sentences: Vec::new(),
    };
    dump.mitigations = mitigation::mitigations(peaks, &dump);
    dump.sentences = words::sentences(peaks, &dump);
    dump
}

fn pulse(
    peaks: &AlternatorPeaks,
    most: &LoadAtSpeed,
    exposure: Exposure,
    clamp_v: Option<f64>,
) -> Dump {
    let installed = &peaks.installed;
    let guard = &installed.boat.guard;
    let blocks = installed.blocks();
    let standard = standard_pulse(blocks);
    let ohm = internal_ohm(
        installed.test_v(),
        most.shaft_rpm,
        installed.alternator.rated_a,
    );
    let volts = most.volts;
    let peak_v = if most.amperes > 0.0 {
        open_peak_v(
            installed.test_v(),
            installed.alternator.diode_v,
            most.shaft_rpm,
            peaks.zero_rpm,
            most.flux,
        )
        .max(volts)
    } else {
        volts
    };
    let usual_clamp_v = suppressed_v(blocks);
    let taken_j = |peak_v: f64| {
        Pulse {
            peak_v,
            rest_v: volts,
            ohm,
            decay_s: guard.decay_s,
        }
        .clamp_j(clamp_v.unwrap_or(usual_clamp_v))
    };
    let clamp_j = taken_j(peak_v);
    // A clamp that cannot take the pulse is gone with it.
    let holds = clamp_v
        .filter(|_| guard.clamp_j.is_none_or(|most_j| clamp_j <= most_j))
        .map_or(peak_v, |clamp_v| peak_v.min(clamp_v.max(volts)));
    let mut bank_left_v = holds;
    if guard.lead == Said::Yes {
        bank_left_v = bank_left_v.min(lead_left_v(most, blocks));
    }
    if guard.warning == Said::Yes && installed.regulator().kind == RegulatorKind::External {
        bank_left_v = bank_left_v.min(volts);
    }
    Dump {
        engine_rpm: most.engine_rpm,
        shaft_rpm: most.shaft_rpm,
        amperes: most.amperes,
        volts,
        internal_ohm: ohm,
        peak_v,
        clamp_j,
        standard_low_j: standard.map(|pulse| taken_j(pulse.peak_v.0)),
        standard_high_j: standard.map(|pulse| taken_j(pulse.peak_v.1)),
        // One that must not be connected has no bank to lose.
        bank_left_v: (exposure == Exposure::Bank && installed.fits()).then_some(bank_left_v),
        // The switch parts the alternator from contact and lead battery alike.
        switch_left_v: (guard.switch == Said::Yes).then_some(holds),
    }
}

/// What a lead battery on the alternator lets the voltage rise to \[V\].
fn lead_left_v(most: &LoadAtSpeed, blocks: f64) -> f64 {
    most.volts + LEAD_BLOCK_OHM * blocks * most.amperes
}

/// Whether a clamp is said to be there.
fn clamped(kind: ClampKind) -> bool {
    matches!(kind, ClampKind::Clamp | ClampKind::Avalanche)
}
