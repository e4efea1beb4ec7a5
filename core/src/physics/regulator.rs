//! How far a regulator lets the field up.

use crate::formula::formula;
use crate::physics::sources;

/// Part of full field that is left, 0 to 1, as the regulator folds back across
/// a band \[K\] around its set-point \[°C\]: 1 at its lower end, 0 at its upper.
#[formula(symbol = "u", unit = "", source = sources::COMMON_PRACTICE)]
pub fn folded(
    #[symbol("T_set")] set_point_c: f64,
    #[symbol("b")] band_k: f64,
    #[symbol("T_sensor")] sensed_c: f64,
) -> f64 {
    ((set_point_c + band_k / 2.0 - sensed_c) / band_k).clamp(0.0, 1.0)
}

/// Part of full field, 0 to 1, that a soft start of `ramp_min` \[min\] allows after
/// `minutes` \[min\].
#[formula(symbol = "u", unit = "", source = sources::COMMON_PRACTICE)]
pub fn soft_start(#[symbol("t")] minutes: f64, #[symbol("t_ramp")] ramp_min: f64) -> f64 {
    (minutes / ramp_min).clamp(0.0, 1.0)
}

/// Part of full field that a regulator lets up by its voltage, 0 to 1: none at what
/// it holds \[V\], all of it a band \[V\] below that.
#[formula(symbol = "u_V", unit = "", source = sources::OWN_REASONING)]
pub fn held_part(
    #[symbol("V_held")] held_v: f64,
    #[symbol("V_bank")] bank_v: f64,
    #[symbol("b_V")] band_v: f64,
) -> f64 {
    ((held_v - bank_v) / band_v).clamp(0.0, 1.0)
}

/// The band of [`held_part()`] for each 12 V \[V\]: two regulators that are set 0.1 V
/// apart already take turns (common practice), half of that is own reasoning.
pub const HELD_BAND_V: f64 = 0.05;

/// What an alternator may give \[A\]: the part of full field that is allowed.
#[formula(symbol = "I_can", unit = "A", source = sources::OWN_REASONING)]
pub fn allowed_a(#[symbol("u")] allowed: f64, #[symbol("I_full")] full_a: f64) -> f64 {
    allowed * full_a
}
