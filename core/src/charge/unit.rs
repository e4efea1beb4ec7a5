//! One alternator on this boat: its curve, losses and lumps at the speed it
//! turns, and what its regulator allows.

use super::Limit;
use crate::physics::losses::{LossModel, LossesAtSpeed, OpenLosses, RatedLosses};
use crate::physics::output::{CurveAtSpeed, OutputCurve, through_points, through_rating};
use crate::physics::thermal::{Anchor, Machine, Temperatures, calibrate_cooling, fan_factor};
use crate::worksheet::{Curve, Inputs, RegulatorKind, SensorPlace};

/// A sensor quicker than this does not lag \[s\].
const LEAST_LAG_S: f64 = 1.0;

/// An alternator, worked out once.
#[derive(Debug, Clone, Copy)]
pub struct Unit {
    /// Its output.
    pub curve: OutputCurve,
    /// Its losses.
    pub losses: LossModel,
    /// Its output at the speed it turns.
    pub curve_here: CurveAtSpeed,
    losses_here: LossesAtSpeed,
    /// Its lumps at the speed it turns.
    pub machine: Machine,
    /// Factor on its air conductances that meets the anchor.
    pub cooling: f64,
    /// Whether the anchor could be met.
    pub anchored: bool,
    /// Whether the two points of the output curve make a curve.
    pub curve_fits: bool,
    /// Its own speed \[rpm\].
    pub shaft_rpm: f64,
    /// How its cooling at this speed compares with that at the anchor's.
    pub fan: f64,
    /// Most the regulator lets it give \[A\].
    pub cap_a: f64,
    /// Whether it is of the voltage of the battery it is led to; one that is
    /// not must not be connected and gives nothing.
    pub fits: bool,
    guard: Option<Guard>,
}

/// What an external regulator watches.
#[derive(Debug, Clone, Copy)]
struct Guard {
    set_point_c: f64,
    band_k: f64,
    sensor: SensorPlace,
    lag_s: f64,
    ramp_s: f64,
    speed_cap: f64,
}

impl Unit {
    /// The worksheet's alternator at an engine speed \[rpm\].
    pub fn new(inputs: &Inputs, engine_rpm: f64) -> Unit {
        let alt = &inputs.alt;
        let (curve, curve_fits) = output_curve(inputs);
        let rated = |efficiency_pct: f64| RatedLosses {
            rated_a: alt.rated_a,
            efficiency: efficiency_pct / 100.0,
            field_w: inputs.field_w(),
            iron_share: alt.iron_share_pct / 100.0,
            fan_share: alt.fan_share_pct / 100.0,
            fan_exponent: alt.fan_exponent,
        };
        let losses = LossModel::calibrate(&rated(alt.efficiency_pct), &curve);
        let (anchor_c, anchor_efficiency_pct) = inputs.cooling_anchor();
        let anchor = Anchor {
            winding_c: anchor_c,
            shaft_rpm: alt.anchor_rpm,
            air_c: alt.anchor_air_c,
        };
        let anchor_losses = LossModel::calibrate(&rated(anchor_efficiency_pct), &curve)
            .at_speed(&curve, alt.anchor_rpm);
        let (cooling, anchored) = calibrate_cooling(
            alt.mass_kg,
            alt.rotor_rise_k,
            &curve,
            &anchor_losses,
            &anchor,
        );
        let shaft_rpm = inputs.shaft_rpm(engine_rpm);
        let fan = fan_factor(shaft_rpm, alt.anchor_rpm, alt.cooling_exponent);
        let mut machine = Machine::new(alt.mass_kg, cooling * fan, alt.rotor_rise_k)
            .with_heat_capacity(alt.heat_capacity_factor);
        machine.recirculation = inputs.space.recirculation_pct / 100.0;
        machine.hose = inputs.space.cold_air_pct / 100.0;
        machine.hose_c = inputs.space.outside_c;
        let guarded = inputs.reg.kind == RegulatorKind::External;
        Unit {
            curve,
            losses,
            curve_here: curve.at_speed(shaft_rpm),
            losses_here: losses.at_speed(&curve, shaft_rpm),
            machine,
            cooling,
            anchored,
            curve_fits,
            shaft_rpm,
            fan,
            fits: inputs.alternator_fits(),
            cap_a: inputs
                .reg
                .current_cap_a
                .filter(|_| guarded)
                .unwrap_or(f64::INFINITY),
            guard: guarded.then_some(Guard {
                set_point_c: inputs.reg.set_point_c,
                band_k: inputs.reg.fold_band_k,
                sensor: inputs.reg.sensor,
                lag_s: inputs.reg.sensor_lag_s,
                ramp_s: inputs.reg.ramp_min * 60.0,
                speed_cap: if shaft_rpm < inputs.reg.low_speed_rpm {
                    inputs.reg.low_speed_pct / 100.0
                } else {
                    1.0
                },
            }),
        }
    }

    /// Part of full field the regulator allows, 0 to 1, and why, at a time
    /// \[s\] after the start with its sensor at a temperature \[°C\].
    ///
    /// The fold-back goes from 1 to 0 across the band around the set-point:
    /// (T_set + b/2 − T)/b. Common practice, no source.
    pub fn allowed(&self, seconds: f64, sensed_c: f64) -> (f64, Limit) {
        if !self.fits {
            return (0.0, Limit::WrongVoltage);
        }
        let Some(guard) = &self.guard else {
            return (1.0, Limit::Machine);
        };
        let fold =
            ((guard.set_point_c + 0.5 * guard.band_k - sensed_c) / guard.band_k).clamp(0.0, 1.0);
        let ramp = if guard.ramp_s > 0.0 {
            (seconds / guard.ramp_s).clamp(0.0, 1.0)
        } else {
            1.0
        };
        let least = [
            (1.0, Limit::Machine),
            (fold, Limit::Temperature),
            (ramp, Limit::Ramp),
            (guard.speed_cap, Limit::LowSpeed),
        ];
        least
            .into_iter()
            .reduce(|least, other| if other.0 < least.0 { other } else { least })
            .unwrap_or((1.0, Limit::Machine))
    }

    /// Whether its field is let up over some time.
    pub fn starts_slowly(&self) -> bool {
        self.guard.is_some_and(|guard| guard.ramp_s > 0.0)
    }

    /// What the sensor would feel if it did not lag \[°C\].
    pub fn felt_c(&self, t: &Temperatures) -> f64 {
        match self.guard.map_or(SensorPlace::Case, |guard| guard.sensor) {
            SensorPlace::Case => t.body_c,
            SensorPlace::Winding => t.winding_c,
            SensorPlace::Rectifier => t.rectifier_c,
        }
    }

    /// Whether the sensor lags behind its place.
    pub fn lags(&self) -> bool {
        self.guard.is_some_and(|guard| guard.lag_s >= LEAST_LAG_S)
    }

    /// What the sensor feels \[°C\]: one that lags has a temperature of its own.
    pub fn sensed_c(&self, t: &Temperatures, own_c: f64) -> f64 {
        if self.lags() { own_c } else { self.felt_c(t) }
    }

    /// Rate of change of a lagging sensor's own temperature \[K/s\]: (T − T_sensor)/τ.
    pub fn sensor_rate(&self, t: &Temperatures, own_c: f64) -> f64 {
        match &self.guard {
            Some(guard) if self.lags() => (self.felt_c(t) - own_c) / guard.lag_s,
            _ => 0.0,
        }
    }

    /// Full-field output as rated, at this speed \[A\].
    pub fn as_rated_a(&self) -> f64 {
        self.curve
            .full_field_a(self.shaft_rpm, self.curve.test_v, self.curve.rotor_c)
    }

    /// Losses at a current and voltage, temperature still open.
    pub fn open_losses(&self, amperes: f64, volts: f64) -> OpenLosses {
        self.losses_here.at(amperes, volts)
    }
}

fn output_curve(inputs: &Inputs) -> (OutputCurve, bool) {
    let alt = &inputs.alt;
    let rating = || through_rating(alt.rated_a, alt.rated_rpm, alt.zero_rpm);
    let points = match alt.curve {
        Curve::Rating => Some(rating()),
        Curve::Points => {
            through_points((alt.second_rpm, alt.second_a), (alt.rated_rpm, alt.rated_a))
        }
    };
    let (infinite_a, zero_rpm) = points.unwrap_or_else(rating);
    let curve = OutputCurve {
        infinite_a,
        zero_rpm,
        test_v: inputs.alternator_test_v(),
        rotor_c: inputs.plate_rotor_c(),
        diode_v: alt.diode_v,
        field_exponent: alt.field_exponent,
        speed_exponent: alt.speed_exponent,
    };
    (curve, points.is_some())
}
