//! Where the shaft's power goes that does not come out as current.
//!
//! Loss by loss after M. Örn, "Towards better alternator efficiency", MSc
//! thesis, Linköping University, 2014 (abstract seen; the split is from memory).

use crate::physics::loss_terms::{
    LEAST_COPPER, copper_20c_w, copper_w, diode_w, fan_w, field_20c_w, field_w, iron_w,
    phase_20c_ohm, rated_copper_w, rated_loss_w, rest_of_rated_w, total_w,
};
use crate::physics::output::{CurveAtSpeed, OutputCurve};

pub use crate::physics::loss_terms::COPPER_FACTOR;

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
