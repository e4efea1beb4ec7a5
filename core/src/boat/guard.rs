//! What protects against the alternator's voltage when its battery goes.

use crate::boat::section;
use crate::boat::{Chemistry, Inputs, RegulatorKind, RegulatorLink};
use crate::boat::{choose, number, optional};
use crate::physics::dump::{suppressed_v, withstand_v};
use crate::schema::{choice, effects};
use crate::units::{JOULE, SECOND, VOLT};

choice! {
    /// The answer to a plain question.
    Said {
        Unsaid = "unsaid", "Not known yet";
        Yes = "yes", "Yes";
        No = "no", "No";
    }
}

choice! {
    /// What holds a pulse of voltage down.
    ClampKind {
        Unsaid = "unsaid", "Not known yet";
        None = "none", "Nothing";
        Clamp = "clamp", "A surge suppressor at the alternator's output";
        Avalanche = "avalanche", "The alternator's own avalanche diodes";
    }
}

section! {
    /// What stands between the alternator and the electronics.
    Guard {
        warning: Said = choose("Charge-disable signal cuts the field", Said::OPTIONS, 0)
            .help("Many battery management systems give a charge-disable signal some seconds before they disconnect. Wired to the regulator, it stops the alternator first.")
            .when(|i| managed(i) && signal_is_asked(i));
        clamp: ClampKind = choose("Surge suppressor", ClampKind::OPTIONS, 0).nameplate()
            .help("A surge suppressor across the output, or a rectifier of avalanche diodes; the alternator's papers say which diodes it has.")
            .when(Inputs::on_house);
        clamp_v: Option<f64> = optional("Surge suppressor holds", VOLT, 12.0, 400.0, "35 V in 12 V, 65 V in 24 V and 48 V systems", |w| Some(usual_clamp_v(&w.inputs))).nameplate()
            .help("The most volts it lets through while it takes the whole current.")
            .when(clamped);
        clamp_j: Option<f64> = optional("Surge suppressor takes in one spike", JOULE, 0.1, 100_000.0, "not known", |_| None).nameplate()
            .help("From its maker's data sheet.")
            .when(clamped);
        lead: Said = choose("Lead battery stays on the alternator", Said::OPTIONS, 0)
            .help("A lead battery on the alternator's own output, with nothing between them that can open, goes on taking the current.")
            .when(managed);
        switch: Said = choose("Switch in the output lead", Said::OPTIONS, 0)
            .help("Any switch, contactor or plug between the alternator and its battery that can be opened with the engine running. A fuse is not meant.");
        bear_v: Option<f64> = optional("Most volts the electronics withstand", VOLT, 13.0, 400.0, "35 V in 12 V, 65 V in 24 V, 70 V in 48 V systems", |w| Some(usual_bear_v(&w.inputs))).nameplate()
            .help("The least of all that is connected to that circuit, for a moment. 35 V is usual for 12 V gear (common practice), 65 V for 24 V gear (ISO 16750-2), 70 V for 48 V gear (ISO 21780, from memory).");
        decay_s: f64 = number("Voltage spike lasts", SECOND, 0.02, 1.5, 0.4).advanced()
            .help("Until a tenth is left. 0.04 to 0.4 s in the standard's test; the field of a usual alternator takes 0.2 to 0.7 s.");
    }
}

effects! {
    Guard: no effect
}

/// Whether a machine here lies on a house bank that can part itself from it.
fn managed(inputs: &Inputs) -> bool {
    inputs.on_house() && inputs.bank.chemistry == Chemistry::Lfp
}

/// Whether a signal could cut the field, and is not said elsewhere.
fn signal_is_asked(inputs: &Inputs) -> bool {
    inputs.reg.kind == RegulatorKind::External
        && !inputs.packs_closed()
        && inputs.link() != RegulatorLink::Signal
}

fn clamped(inputs: &Inputs) -> bool {
    inputs.on_house() && matches!(inputs.guard.clamp, ClampKind::Clamp | ClampKind::Avalanche)
}

fn usual_clamp_v(inputs: &Inputs) -> f64 {
    suppressed_v(inputs.bank.nominal_v.blocks())
}

fn usual_bear_v(inputs: &Inputs) -> f64 {
    withstand_v(inputs.bank.nominal_v.blocks())
}

impl Inputs {
    /// Voltage of the clamp \[V\]; none without one.
    pub fn clamp_v(&self) -> Option<f64> {
        clamped(self).then(|| self.guard.clamp_v.unwrap_or_else(|| usual_clamp_v(self)))
    }

    /// Most volts the electronics bear \[V\].
    pub fn bear_v(&self) -> f64 {
        self.guard.bear_v.unwrap_or_else(|| usual_bear_v(self))
    }
}
