//! The regulators of an alternator as prepared numbers.

use crate::boat::{InstalledAlternator, RegulatorKind, SensorPlace};

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
        })
    }
}
