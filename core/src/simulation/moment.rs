//! One moment aboard: how warm the alternators are, what flows, what is lost.

use crate::physics::drive::power_w;
use crate::physics::losses::Losses;
use crate::physics::thermal::Temperatures;
use crate::simulation::Limit;

/// Temperatures of a machine and what its regulator's sensor feels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThermalState {
    /// Its lumps, and the air.
    pub t: Temperatures,
    /// What the sensor feels \[°C\].
    pub sensed_c: f64,
}

impl ThermalState {
    /// A machine that has stood, all of it at one temperature \[°C\].
    pub fn resting(celsius: f64) -> ThermalState {
        ThermalState {
            t: Temperatures::all(celsius),
            sensed_c: celsius,
        }
    }
}

/// Current and voltage of one machine.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Output {
    /// \[A\]
    pub amperes: f64,
    /// \[V\]
    pub volts: f64,
}

/// Currents and voltages at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flow {
    /// The alternator.
    pub main: Output,
    /// The second one; zero without.
    pub second: Output,
    /// Current into the bank \[A\]; negative when the boat draws more than it gets.
    pub bank_a: f64,
    /// Voltage at the bank \[V\].
    pub bank_v: f64,
    /// What holds it there.
    pub limit: Limit,
}

/// What happens aboard at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// Currents and voltages.
    pub flow: Flow,
    /// Losses in the alternator.
    pub losses: Losses,
    /// Losses in the second one.
    pub second_losses: Losses,
}

impl Moment {
    /// Power the alternators' shafts take \[W\].
    pub fn shaft_w(&self) -> f64 {
        self.given_w() + self.losses.total_w() + self.second_losses.total_w()
    }

    /// Power the alternators give \[W\].
    pub fn given_w(&self) -> f64 {
        let power = |output: &Output| power_w(output.amperes, output.volts);
        power(&self.flow.main) + power(&self.flow.second)
    }
}
