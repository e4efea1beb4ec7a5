//! Loss by loss, formula by formula; `losses` says where they are from and
//! gathers them.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::physics::{copper, sources};

/// Copper loss of a three-phase winding behind a bridge over R·I²: π²/6, from
/// I_phase = π/(3√2)·I, the rms of the fundamental when the bridge conducts
/// without gaps.
pub const COPPER_FACTOR: f64 = PI * PI / 6.0;

/// Winding temperature at which the rated efficiency is taken \[°C\].
const RATED_WINDING_C: f64 = 110.0;
/// Speed that efficiency, iron and fan loss are stated at \[rpm\].
const RATED_RPM: f64 = 6000.0;
/// Exponent of iron loss with speed; measured 1.40 to 1.50.
const IRON_EXPONENT: f64 = 1.5;

/// Part of the rated loss that is the copper's at the least.
pub(super) const LEAST_COPPER: f64 = 0.05;

/// What goes in at the rating and does not come out \[W\]; efficiency 0 to 1.
#[formula(symbol = "P_N", unit = "W", source = sources::LOSSES)]
pub fn rated_loss_w(
    #[symbol("V_N")] test_v: f64,
    #[symbol("I_N")] rated_a: f64,
    #[symbol("η_N")] efficiency: f64,
) -> f64 {
    test_v * rated_a * (1.0 / efficiency - 1.0)
}

/// What iron, fan, diodes and field leave of the rated loss \[W\]; shares 0 to 1.
#[formula(symbol = "P_rest", unit = "W", source = sources::LOSSES)]
pub fn rest_of_rated_w(
    #[symbol("P_N")] loss_w: f64,
    #[symbol("f_Fe")] iron_share: f64,
    #[symbol("f_fan")] fan_share: f64,
    #[symbol("V_d")] diode_v: f64,
    #[symbol("I_N")] rated_a: f64,
    #[symbol("P_field,N")] field_w: f64,
) -> f64 {
    loss_w - loss_w * iron_share - loss_w * fan_share - 2.0 * diode_v * rated_a - field_w
}

/// The winding's part of the rated loss \[W\]: the rest, or a twentieth where
/// the efficiency leaves less.
#[formula(symbol = "P_Cu,N", unit = "W", source = sources::LOSSES)]
pub fn rated_copper_w(#[symbol("P_rest")] rest_w: f64, #[symbol("P_N")] loss_w: f64) -> f64 {
    if rest_w > LEAST_COPPER * loss_w {
        rest_w
    } else {
        LEAST_COPPER * loss_w
    }
}

/// Resistance of one phase as if in star, at 20 °C \[Ω\]: the winding's part of
/// the rated loss is taken at 110 °C.
#[formula(
    symbol = "R_phase",
    unit = "Ω",
    source = sources::LOSSES,
    constants(COPPER_FACTOR("k_Cu", "π²/6: three phases behind a bridge", ""))
)]
pub fn phase_20c_ohm(#[symbol("P_Cu,N")] copper_w: f64, #[symbol("I_N")] rated_a: f64) -> f64 {
    copper_w / (COPPER_FACTOR * rated_a.powi(2) * copper::ratio(RATED_WINDING_C))
}

/// Winding loss at 20 °C \[W\].
#[formula(
    symbol = "P_Cu,20",
    unit = "W",
    source = sources::LOSSES,
    constants(COPPER_FACTOR("k_Cu", "π²/6: three phases behind a bridge", ""))
)]
pub fn copper_20c_w(#[symbol("R_phase")] phase_20c_ohm: f64, #[symbol("I")] amperes: f64) -> f64 {
    COPPER_FACTOR * phase_20c_ohm * amperes.powi(2)
}

/// Winding loss with the winding at a temperature \[°C\], \[W\].
#[formula(symbol = "P_Cu", unit = "W", source = sources::LOSSES)]
pub fn copper_w(#[symbol("P_Cu,20")] at_20c_w: f64, #[symbol("T_w")] winding_c: f64) -> f64 {
    at_20c_w * copper::ratio(winding_c)
}

/// Diode loss \[W\]: two are always in the way.
#[formula(symbol = "P_d", unit = "W", source = sources::LOSSES)]
pub fn diode_w(#[symbol("V_d")] diode_v: f64, #[symbol("I")] amperes: f64) -> f64 {
    2.0 * diode_v * amperes
}

/// Field loss at 20 °C \[W\], from that of the rating, the rotor temperature it
/// was read at \[°C\] and the square of the flux: the field follows the flux
/// backwards through saturation.
#[formula(symbol = "P_field,20", unit = "W", source = sources::LOSSES)]
pub fn field_20c_w(
    #[symbol("P_field,N")] rated_w: f64,
    #[symbol("T_N")] rating_c: f64,
    #[symbol("Φ")] flux_square: f64,
    #[symbol("s")] field_exponent: f64,
) -> f64 {
    rated_w / copper::ratio(rating_c) * flux_square.powf(1.0 / field_exponent)
}

/// Field loss with the rotor at a temperature \[°C\], \[W\].
#[formula(symbol = "P_field", unit = "W", source = sources::LOSSES)]
pub fn field_w(#[symbol("P_field,20")] at_20c_w: f64, #[symbol("T_rotor")] rotor_c: f64) -> f64 {
    at_20c_w * copper::ratio(rotor_c)
}

/// Iron loss \[W\], from that at the rating, the shaft speed \[rpm\] and the
/// square of the flux.
#[formula(symbol = "P_Fe", unit = "W", source = sources::LOSSES)]
pub fn iron_w(
    #[symbol("f_Fe")] iron_share: f64,
    #[symbol("P_N")] rated_loss_w: f64,
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("Φ")] flux_square: f64,
) -> f64 {
    iron_share * rated_loss_w * (shaft_rpm / RATED_RPM).powf(IRON_EXPONENT) * flux_square
}

/// Loss in fan, bearings and brushes \[W\], from that at the rating and the shaft
/// speed \[rpm\].
#[formula(symbol = "P_fan", unit = "W", source = sources::LOSSES)]
pub fn fan_w(
    #[symbol("f_fan")] fan_share: f64,
    #[symbol("P_N")] rated_loss_w: f64,
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("k_fan")] exponent: f64,
) -> f64 {
    fan_share * rated_loss_w * (shaft_rpm / RATED_RPM).powf(exponent)
}

/// All that is lost in an alternator \[W\].
#[formula(symbol = "P_loss", unit = "W", source = sources::LOSSES)]
pub fn total_w(
    #[symbol("P_Cu")] copper_w: f64,
    #[symbol("P_d")] diode_w: f64,
    #[symbol("P_field")] field_w: f64,
    #[symbol("P_Fe")] iron_w: f64,
    #[symbol("P_fan")] fan_w: f64,
) -> f64 {
    copper_w + diode_w + field_w + iron_w + fan_w
}
