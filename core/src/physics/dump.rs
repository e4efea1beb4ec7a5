//! What happens when an alternator loses its battery while it charges: the
//! load dump.
//!
//! ISO 16750-2, "Road vehicles: environmental conditions and testing for
//! electrical and electronic equipment, part 2", tests A and B, as several
//! makers of test equipment restate it; the standard's text was not at hand.

use std::f64::consts::LN_10;

use crate::formula::formula;
use crate::physics::sources;

/// The pulse of the standard for one system voltage.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StandardPulse {
    /// Peak without any suppression, least and most \[V\].
    pub peak_v: (f64, f64),
    /// Internal resistance, least and most \[Ω\].
    pub ohm: (f64, f64),
    /// Time to a tenth, least and most \[s\].
    pub decay_s: (f64, f64),
    /// What is left with a central clamp \[V\].
    pub clamped_v: f64,
}

/// The pulse for a system of `blocks` 12 V blocks in series; none for 48 V, which the
/// standard does not cover. ISO 16750-2, tests A and B. In 24 V systems the
/// clamp is agreed with the customer, 58 to 65 V; the higher is taken.
pub fn standard_pulse(blocks: f64) -> Option<StandardPulse> {
    if blocks < 1.5 {
        Some(StandardPulse {
            peak_v: (79.0, 101.0),
            ohm: (0.5, 4.0),
            decay_s: (0.04, 0.4),
            clamped_v: 35.0,
        })
    } else if blocks < 2.5 {
        Some(StandardPulse {
            peak_v: (151.0, 202.0),
            ohm: (1.0, 8.0),
            decay_s: (0.1, 0.35),
            clamped_v: 65.0,
        })
    } else {
        None
    }
}

/// What electronics withstand for a moment in a system of `blocks` 12 V blocks in
/// series \[V\]: 35 V in 12 V (common practice), the suppressed pulse of ISO 16750-2 in
/// 24 V, and 70 V in 48 V, where ISO 21780 allows 60 V for long (from memory).
pub fn withstand_v(blocks: f64) -> f64 {
    if blocks < 1.5 {
        35.0
    } else if blocks < 2.5 {
        65.0
    } else {
        70.0
    }
}

/// What a surge suppressor for a system of `blocks` 12 V blocks in series usually lets
/// through \[V\]: by ISO 16750-2, and 65 V in 48 V, above the 58.4 V that 16
/// lithium cells may reach and below the 70 V that electronics withstand (own
/// reasoning).
pub fn suppressed_v(blocks: f64) -> f64 {
    standard_pulse(blocks).map_or(65.0, |pulse| pulse.clamped_v)
}

/// What an estimate of an unsuppressed peak has to be multiplied by for its
/// upper end: the standard's own highest peak over its lowest, 1.28 in 12 V and
/// 1.34 in 24 V; the latter is taken for 48 V too (own reasoning).
pub fn peak_margin(blocks: f64) -> f64 {
    let (low_v, high_v) = standard_pulse(blocks.min(2.0)).map_or((1.0, 1.0), |pulse| pulse.peak_v);
    high_v / low_v
}

/// From here on \[V, direct current\] protection against touch begins: ISO
/// 21780 and the rules of electrical safety, from memory.
pub const TOUCH_V: f64 = 60.0;

/// Internal resistance of the pulse \[Ω\]: 10·U·n/(0.8·I·12 000), for an
/// alternator voltage \[V\], its speed \[rpm\] and the current \[A, above 0\]
/// it is rated for at 6000 rpm. ISO 16750-2, load dump.
#[formula(symbol = "R_i", unit = "Ω", source = sources::LOAD_DUMP)]
pub fn internal_ohm(
    #[symbol("U")] alternator_v: f64,
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("I_rated")] rated_a: f64,
) -> f64 {
    10.0 * alternator_v * shaft_rpm / (0.8 * rated_a * 12_000.0)
}

/// Peak without any suppression \[V\]: √3·(2/π)·φ·(V + 2·Vd)·n/n₀ − 2·Vd, for
/// the voltage V and the speed n₀ at which the output curve begins, the drop
/// of one diode Vd, and φ, the flux over that of full field.
///
/// Own reasoning: the voltage behind the machine's reactance stays when the
/// current stops, and the bridge then shows the peak between two phases. Iron
/// that saturates keeps the true peak lower; an order of magnitude only.
#[formula(symbol = "U_peak", unit = "V", source = sources::OWN_REASONING, constants(PER_SPEED("k_bridge", "√3 · 2/π: the peak between two phases over the mean behind the bridge", "")))]
pub fn open_peak_v(
    #[symbol("V")] test_v: f64,
    #[symbol("V_d")] diode_v: f64,
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("n₀")] zero_rpm: f64,
    #[symbol("φ")] flux: f64,
) -> f64 {
    let drop_v = 2.0 * diode_v;
    PER_SPEED * flux * (test_v + drop_v) * shaft_rpm / zero_rpm - drop_v
}

/// Peak that an alternator's voltage jumps to with nothing to hold it \[V\]: as
/// [`open_peak_v()`] has it, and never below the voltage before the jump \[V\].
#[formula(symbol = "U_peak", unit = "V", source = sources::OWN_REASONING)]
pub fn peak_v(
    #[symbol("V")] test_v: f64,
    #[symbol("V_d")] diode_v: f64,
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("n₀")] zero_rpm: f64,
    #[symbol("φ")] flux: f64,
    #[symbol("U")] volts: f64,
) -> f64 {
    open_peak_v(test_v, diode_v, shaft_rpm, zero_rpm, flux).max(volts)
}

/// √3·2/π: the peak between two phases over the mean that the bridge gives.
const PER_SPEED: f64 = 1.732_050_807_568_877_2 * std::f64::consts::FRAC_2_PI;

/// What a lead battery left on the alternator lets the voltage rise to \[V\]: the
/// voltage before \[V\], and what the current \[A\] adds over the resistance of each
/// \[Ω\] of `blocks` 12 V blocks in series.
#[formula(symbol = "U_lead", unit = "V", source = sources::OHM)]
pub fn lead_left_v(
    #[symbol("U")] volts: f64,
    #[symbol("I")] amperes: f64,
    #[symbol("R_block")] block_ohm: f64,
    #[symbol("N")] blocks: f64,
) -> f64 {
    volts + block_ohm * blocks * amperes
}

/// Energy that a suppressor of a voltage \[V\] takes of a pulse \[J\]: see
/// [`Pulse::clamp_j`]. Peak and rest \[V\], internal resistance \[Ω, above 0\] and the
/// time until a tenth is left \[s\].
#[formula(symbol = "E", unit = "J", source = sources::LOAD_DUMP)]
pub fn clamp_j(
    #[symbol("U_c")] clamp_v: f64,
    #[symbol("U_peak")] peak_v: f64,
    #[symbol("U")] rest_v: f64,
    #[symbol("R_i")] ohm: f64,
    #[symbol("t_d")] decay_s: f64,
) -> f64 {
    let above = peak_v - rest_v;
    let below = (clamp_v - rest_v).max(0.0);
    if above <= below {
        return 0.0;
    }
    let whole = clamp_v / ohm * (decay_s / LN_10);
    if below <= 0.0 {
        return whole * above;
    }
    whole * (above - below - below * (above / below).ln()).max(0.0)
}

/// A pulse that dies away as e^(−t/τ) above a resting voltage.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pulse {
    /// Its peak \[V\].
    pub peak_v: f64,
    /// What it dies away to \[V\].
    pub rest_v: f64,
    /// Internal resistance \[Ω, above 0\].
    pub ohm: f64,
    /// Time until a tenth of it is left \[s\].
    pub decay_s: f64,
}

impl Pulse {
    /// Energy a clamp at a voltage \[V\] takes \[J\]:
    /// (Uc/Ri)·(τ·(A − B) − B·τ·ln(A/B)), τ = t_d/ln 10, A = peak − rest,
    /// B = clamp − rest; 0 where the pulse stays below it. A clamp at or below
    /// rest takes the whole pulse, B = 0. The integral of Uc·(u − Uc)/Ri.
    pub fn clamp_j(&self, clamp_v: f64) -> f64 {
        clamp_j(clamp_v, self.peak_v, self.rest_v, self.ohm, self.decay_s)
    }
}
