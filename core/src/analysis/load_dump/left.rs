//! What is left of a voltage spike, against what the electronics withstand.

use serde::Serialize;

use crate::analysis::load_dump::{Dump, DumpReport, MitigationCode, Standing};

/// Where an estimated voltage lies; both ends are the same where it is certain.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct VoltageRange {
    /// Its lower end \[V\].
    pub low_v: f64,
    /// Its upper end \[V\].
    pub high_v: f64,
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
            mitigation.standing == Standing::Present && mitigation.code != MitigationCode::NoSwitch
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
