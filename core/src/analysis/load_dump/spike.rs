//! The voltage spike of one alternator at one engine speed.

use crate::analysis::load_dump::{Dump, Exposure};
use crate::analysis::peak_loads::{AlternatorPeaks, LoadAtSpeed};
use crate::boat::{ClampKind, Said};
use crate::physics::dump::{self, Pulse, internal_ohm, standard_pulse, suppressed_v};

/// What a lead battery still on the alternator resists a surge with, for each
/// 12 V block \[Ω\]: a start battery in fair health and its leads. Own reasoning.
pub(crate) const LEAD_BLOCK_OHM: f64 = 0.02;

/// The spike, and what is left of it with what is entered to stand against it.
pub(super) fn spike(
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
        dump::peak_v(
            installed.test_v(),
            installed.alternator.diode_v,
            most.shaft_rpm,
            peaks.zero_rpm,
            most.flux,
            volts,
        )
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
    if installed.boat.field_off_first() {
        bank_left_v = bank_left_v.min(volts);
    }
    Dump {
        engine_rpm: most.engine_rpm,
        shaft_rpm: most.shaft_rpm,
        amperes: most.amperes,
        volts,
        flux: most.flux,
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
pub(super) fn lead_left_v(most: &LoadAtSpeed, blocks: f64) -> f64 {
    dump::lead_left_v(most.volts, most.amperes, LEAD_BLOCK_OHM, blocks)
}

/// Whether a clamp is said to be there.
pub(super) fn clamped(kind: ClampKind) -> bool {
    matches!(kind, ClampKind::Clamp | ClampKind::Avalanche)
}
