//! One moment aboard: how warm the alternators are, what flows, what is lost.

use crate::physics::drive::power_w;
use crate::physics::losses::Losses;
use crate::physics::thermal::Temperatures;
use crate::simulation::Limit;
use crate::simulation::per_alternator::PerAlternator;

/// Temperatures of an alternator and what its regulator's sensor feels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThermalState {
    /// Its nodes, and the air.
    pub t: Temperatures,
    /// What the sensor feels \[°C\].
    pub sensed_c: f64,
}

impl ThermalState {
    /// An alternator that has stood, all of it at one temperature \[°C\].
    pub fn resting(celsius: f64) -> ThermalState {
        ThermalState {
            t: Temperatures::all(celsius),
            sensed_c: celsius,
        }
    }
}

/// Current and voltage of one alternator.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Output {
    /// \[A\]
    pub amperes: f64,
    /// \[V\]
    pub volts: f64,
}

impl Output {
    /// Its power \[W\].
    pub fn power_w(&self) -> f64 {
        power_w(self.amperes, self.volts)
    }
}

/// Currents and voltages at one moment.
#[derive(Debug, Clone, PartialEq)]
pub struct Flow {
    /// What each alternator gives.
    pub outputs: PerAlternator<Output>,
    /// Current into the bank \[A\]; negative when the boat draws more than it gets.
    pub bank_a: f64,
    /// Voltage at the bank \[V\].
    pub bank_v: f64,
    /// What holds it there.
    pub limit: Limit,
}

/// What happens aboard at one moment.
#[derive(Debug, Clone, PartialEq)]
pub struct Moment {
    /// Currents and voltages.
    pub flow: Flow,
    /// Losses in each alternator.
    pub losses: PerAlternator<Losses>,
}

impl Moment {
    /// Power the alternators' shafts take \[W\].
    pub fn shaft_w(&self) -> f64 {
        let losses = self.losses.iter().map(Losses::total_w);
        losses.fold(self.given_w(), |sum, lost_w| sum + lost_w)
    }

    /// Power the alternators give \[W\].
    pub fn given_w(&self) -> f64 {
        self.flow.outputs.iter().map(Output::power_w).sum()
    }

    /// What each alternator gives and loses.
    pub fn alternators(&self) -> impl Iterator<Item = (&Output, &Losses)> {
        self.flow.outputs.iter().zip(&self.losses)
    }
}
