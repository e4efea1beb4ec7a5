//! Where the shaft's power goes that does not come out as current.
//!
//! Loss by loss after M. Örn, "Towards better alternator efficiency", MSc
//! thesis, Linköping University, 2014 (abstract seen; the split is from memory).

use std::f64::consts::PI;

use super::output::{CurveAtSpeed, OutputCurve};
use super::{copper, sources};
use crate::formula::formula;

/// Copper loss of a three-phase winding behind a bridge over R·I²: π²/6, from
/// I_phase = π/(3√2)·I, the rms of the fundamental when the bridge conducts
/// without gaps.
pub const COPPER_FACTOR: f64 = PI * PI / 6.0;

/// Winding temperature at which the rated efficiency is taken \[°C\].
pub(crate) const RATED_WINDING_C: f64 = 110.0;
/// Speed that efficiency, iron and fan loss are stated at \[rpm\].
pub(crate) const RATED_RPM: f64 = 6000.0;
/// Exponent of iron loss with speed; measured 1.40 to 1.50.
pub(crate) const IRON_EXPONENT: f64 = 1.5;

/// Part of the rated loss that is the copper's at the least.
const LEAST_COPPER: f64 = 0.05;

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

/// What is known of a machine's losses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RatedLosses {
    /// Rated current \[A\].
    pub rated_a: f64,
    /// Efficiency at the rating, 0 to 1.
    pub efficiency: f64,
    /// Field power at full field \[W\].
    pub field_w: f64,
    /// Share of iron in the rated loss, 0 to 1.
    pub iron_share: f64,
    /// Share of fan and bearings, 0 to 1.
    pub fan_share: f64,
    /// Exponent of fan and bearing loss with speed.
    pub fan_exponent: f64,
}

/// A machine's losses at any current, speed and temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LossModel {
    /// Resistance of one phase as if in star, at 20 °C \[Ω\].
    pub phase_20c_ohm: f64,
    rated_loss_w: f64,
    iron_share: f64,
    fan_share: f64,
    fan_exponent: f64,
    field_w: f64,
    flux_exponent: f64,
    /// Whether the efficiency left anything for the copper; if not it was
    /// given a twentieth of the loss.
    pub plausible: bool,
}

/// Losses at one moment, all \[W\].
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Losses {
    /// In the stator winding.
    pub copper_w: f64,
    /// In the diodes.
    pub diode_w: f64,
    /// In the rotor's field winding.
    pub field_w: f64,
    /// In the stator iron.
    pub iron_w: f64,
    /// In fan, bearings and brushes.
    pub fan_w: f64,
}

impl Losses {
    /// Their sum \[W\].
    pub fn total_w(&self) -> f64 {
        total_w(
            self.copper_w,
            self.diode_w,
            self.field_w,
            self.iron_w,
            self.fan_w,
        )
    }
}

impl LossModel {
    /// Splits the rated loss V·I·(1/η − 1): iron and fan take their shares,
    /// diodes 2·Vd·I, the field its power, and the copper the rest.
    pub fn calibrate(rated: &RatedLosses, curve: &OutputCurve) -> LossModel {
        let loss_w = rated_loss_w(curve.test_v, rated.rated_a, rated.efficiency);
        let rest_w = rest_of_rated_w(
            loss_w,
            rated.iron_share,
            rated.fan_share,
            curve.diode_v,
            rated.rated_a,
            rated.field_w,
        );
        LossModel {
            phase_20c_ohm: phase_20c_ohm(rated_copper_w(rest_w, loss_w), rated.rated_a),
            rated_loss_w: loss_w,
            iron_share: rated.iron_share,
            fan_share: rated.fan_share,
            fan_exponent: rated.fan_exponent,
            field_w: rated.field_w,
            flux_exponent: 1.0 / curve.field_exponent,
            plausible: rest_w > LEAST_COPPER * loss_w,
        }
    }

    /// Losses at one speed, for use at many currents and temperatures.
    pub fn at_speed(&self, curve: &OutputCurve, shaft_rpm: f64) -> LossesAtSpeed {
        LossesAtSpeed {
            model: *self,
            curve: curve.at_speed(shaft_rpm),
            field_20c_w: field_20c_w(self.field_w, curve.rotor_c, 1.0, 1.0),
            diode_v: curve.diode_v,
            iron_w: iron_w(self.iron_share, self.rated_loss_w, shaft_rpm, 1.0),
            fan_w: fan_w(
                self.fan_share,
                self.rated_loss_w,
                shaft_rpm,
                self.fan_exponent,
            ),
        }
    }
}

/// A machine's losses at one speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LossesAtSpeed {
    model: LossModel,
    curve: CurveAtSpeed,
    field_20c_w: f64,
    diode_v: f64,
    iron_w: f64,
    fan_w: f64,
}

/// Losses at a current and voltage with their temperature dependence still
/// open; both copper losses are linear in temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OpenLosses {
    /// Winding loss at 20 °C \[W\].
    pub copper_20c_w: f64,
    /// Field loss at 20 °C \[W\].
    pub field_20c_w: f64,
    /// Diode loss \[W\].
    pub diode_w: f64,
    /// Iron loss \[W\].
    pub iron_w: f64,
    /// Fan and bearing loss \[W\].
    pub fan_w: f64,
}

impl LossesAtSpeed {
    /// At a current and voltage.
    ///
    /// What the square of the flux multiplies was worked out at a flux of one.
    pub fn at(&self, amperes: f64, volts: f64) -> OpenLosses {
        let flux_square = self.curve.flux_square(amperes, volts);
        OpenLosses {
            copper_20c_w: copper_20c_w(self.model.phase_20c_ohm, amperes),
            field_20c_w: self.field_20c_w * flux_square.powf(self.model.flux_exponent),
            diode_w: diode_w(self.diode_v, amperes),
            iron_w: self.iron_w * flux_square,
            fan_w: self.fan_w,
        }
    }
}

impl OpenLosses {
    /// With winding and rotor at these temperatures \[°C\].
    pub fn with(&self, winding_c: f64, rotor_c: f64) -> Losses {
        Losses {
            copper_w: copper_w(self.copper_20c_w, winding_c),
            diode_w: self.diode_w,
            field_w: field_w(self.field_20c_w, rotor_c),
            iron_w: self.iron_w,
            fan_w: self.fan_w,
        }
    }
}
