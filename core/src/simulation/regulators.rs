//! The regulators of an alternator as prepared numbers.

use crate::boat::{InstalledAlternator, RegulatorKind, SensorPlace};
use crate::physics::regulator::{folded, soft_start};
use crate::simulation::Limit;

/// What a built-in regulator holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct BuiltInRegulator {
    /// At [`BUILT_IN_AT_C`] \[V\].
    pub(super) volts: f64,
    pub(super) drop_v_k: f64,
}

/// Temperature at which the voltage of a built-in regulator is stated \[°C\].
pub(super) const BUILT_IN_AT_C: f64 = 20.0;

/// An external regulator's settings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct ExternalRegulator {
    pub(super) set_point_c: f64,
    pub(super) band_k: f64,
    pub(super) sensor: SensorPlace,
    pub(super) lag_s: f64,
    /// What the sensor reads too low \[K\].
    pub(super) low_k: f64,
    /// Part of full field that it goes on with because its sensor has failed.
    pub(super) without_sensor: Option<f64>,
    pub(super) ramp_s: f64,
    pub(super) low_speed_rpm: f64,
    pub(super) low_speed_share: f64,
    pub(super) field_cap: f64,
    /// Part of full field while the boat manoeuvres.
    manoeuvre_field: f64,
    /// Until when it does, after the engine's start \[s\].
    pub(super) manoeuvre_until_s: f64,
}

impl BuiltInRegulator {
    /// That of an alternator on the house bank; none where another regulator, or
    /// none that lies there, decides its voltage.
    pub(super) fn of(installed: &InstalledAlternator) -> Option<BuiltInRegulator> {
        let inputs = installed.boat;
        installed.built_in_on_house().then_some(BuiltInRegulator {
            volts: inputs.built_in_v(),
            drop_v_k: inputs.built_in_drop_v_k(),
        })
    }
}

impl ExternalRegulator {
    /// That of an alternator; none with a built-in one.
    pub(super) fn of(installed: &InstalledAlternator) -> Option<ExternalRegulator> {
        let reg = installed.regulator();
        (reg.kind == RegulatorKind::External).then_some(ExternalRegulator {
            set_point_c: reg.set_point_c,
            band_k: reg.fold_band_k,
            sensor: reg.sensor,
            lag_s: reg.sensor_lag_s,
            low_k: reg.sensor_low_k,
            without_sensor: None,
            ramp_s: reg.ramp_min * 60.0,
            low_speed_rpm: reg.low_speed_rpm,
            low_speed_share: reg.low_speed_pct / 100.0,
            field_cap: reg.field_cap_pct / 100.0,
            manoeuvre_field: reg.manoeuvre_field_pct / 100.0,
            manoeuvre_until_s: reg.manoeuvre_min * 60.0,
        })
    }

    /// Part of full field it allows, 0 to 1, and why, at a time \[s\] after the
    /// start with its sensor at a temperature \[°C\] and the shaft at a speed \[rpm\].
    pub(super) fn allowed(&self, seconds: f64, sensed_c: f64, shaft_rpm: f64) -> (f64, Limit) {
        let when = |holds: bool, part: f64| if holds { part } else { 1.0 };
        let fold = self
            .without_sensor
            .unwrap_or_else(|| folded(self.set_point_c, self.band_k, sensed_c));
        let ramp = if self.ramp_s > 0.0 {
            soft_start(seconds / 60.0, self.ramp_s / 60.0)
        } else {
            1.0
        };
        let slow = when(shaft_rpm < self.low_speed_rpm, self.low_speed_share);
        let manoeuvre = when(seconds < self.manoeuvre_until_s, self.manoeuvre_field);
        let least = [
            (1.0, Limit::AlternatorOutput),
            (fold, Limit::Temperature),
            (ramp, Limit::Ramp),
            (slow, Limit::LowSpeed),
            (self.field_cap, Limit::FieldCap),
            (manoeuvre, Limit::Manoeuvring),
        ];
        least
            .into_iter()
            .reduce(|least, other| if other.0 < least.0 { other } else { least })
            .unwrap_or((1.0, Limit::AlternatorOutput))
    }
}
