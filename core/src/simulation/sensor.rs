//! What the temperature sensor of an alternator's regulator feels.

use crate::boat::SensorPlace;
use crate::physics::thermal::Temperatures;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::moment::ThermalState;

/// A sensor quicker than this does not lag \[s\].
const LEAST_LAG_S: f64 = 1.0;

impl AlternatorAtSpeed {
    /// What the sensor would read if it did not lag \[°C\].
    pub fn felt_c(&self, t: &Temperatures) -> f64 {
        let Some(regulator) = &self.regulator else {
            return t.body_c;
        };
        let place_c = match regulator.sensor {
            SensorPlace::Case => t.body_c,
            SensorPlace::Winding => t.winding_c,
            SensorPlace::Rectifier => t.rectifier_c,
        };
        place_c - regulator.low_k
    }

    /// Whether the sensor lags behind its place.
    pub fn lags(&self) -> bool {
        self.regulator
            .is_some_and(|regulator| regulator.lag_s >= LEAST_LAG_S)
    }

    /// What the sensor feels \[°C\]: one that lags has a temperature of its own.
    pub fn sensed_c(&self, t: &Temperatures, own_c: f64) -> f64 {
        if self.lags() { own_c } else { self.felt_c(t) }
    }

    /// Rate of change of a lagging sensor's own temperature \[K/s\]: (T − T_sensor)/τ.
    pub fn sensor_rate(&self, t: &Temperatures, own_c: f64) -> f64 {
        match &self.regulator {
            Some(regulator) if self.lags() => (self.felt_c(t) - own_c) / regulator.lag_s,
            _ => 0.0,
        }
    }

    /// What the sensor feels after the alternator has stood for a time \[s\] and
    /// come to temperatures, having felt `own_c` before \[°C\].
    pub(super) fn sensor_after(&self, t: &Temperatures, own_c: f64, seconds: f64) -> f64 {
        let felt_c = self.felt_c(t);
        match &self.regulator {
            Some(regulator) if self.lags() => {
                felt_c + (own_c - felt_c) * (-seconds / regulator.lag_s).exp()
            }
            _ => felt_c,
        }
    }

    /// This alternator with a sensor that has failed: its regulator goes on with a
    /// part of full field, 0 to 1, whatever the temperature.
    pub fn without_sensor(mut self, part: f64) -> AlternatorAtSpeed {
        if let Some(regulator) = &mut self.regulator {
            regulator.without_sensor = Some(part);
        }
        self
    }

    /// The alternator so warm, its sensor having felt all of it \[°C\].
    pub(crate) fn warm(&self, t: &Temperatures) -> ThermalState {
        ThermalState {
            t: *t,
            sensed_c: self.felt_c(t),
        }
    }
}
