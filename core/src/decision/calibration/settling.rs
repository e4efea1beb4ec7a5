//! Where the case settles at the current of a log, as the worksheet keeps it.

use crate::boat::key;
use crate::decision::calibration::guess::Guess;
use crate::decision::calibration::model::Trial;
use crate::physics::thermal::{AirBalance, Temperatures};

/// What an alternator's case is told to settle at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Settling {
    /// What it gives \[A\].
    pub amperes: f64,
    /// Its own speed \[rpm\].
    pub shaft_rpm: f64,
    /// The air it draws in \[°C\].
    pub air_c: f64,
}

impl Trial {
    /// The current and the air of the last fifth of the log and its mean speed, in
    /// figures as round as a worksheet has them; `run` are the temperatures at its
    /// rows. Where next to nothing flowed in the end, the mean current of the log.
    pub fn settling(&self, run: &[Temperatures]) -> Settling {
        /// Less than this part of the mean current says little of the cooling.
        const LITTLE: f64 = 0.4;
        let inlet_c = run.last().map_or(self.first_case_c, |t| t.air_c);
        let last_s = self.seconds(self.rows.last());
        let mean_a = self.amps.mean().unwrap_or(0.0);
        let late_a = self
            .amps
            .mean_from(0.8 * last_s)
            .filter(|late_a| *late_a >= LITTLE * mean_a);
        let shaft_rpm = self
            .inputs
            .first_alternator()
            .shaft_rpm(self.mean_engine_rpm);
        let (slowest, fastest) = key!(alt.anchor_rpm)
            .spec()
            .range()
            .unwrap_or((1500.0, 12_000.0));
        Settling {
            amperes: rounded(late_a.unwrap_or(mean_a), 1),
            shaft_rpm: rounded(shaft_rpm, 0).clamp(slowest, fastest),
            air_c: rounded(inlet_c, 1),
        }
    }

    /// Where the case settles at a current and a shaft speed in air of a temperature,
    /// with a factor on the cooling of a guess \[°C\].
    pub fn settled_case_c(&self, guess: &Guess, anchor: &Settling, factor: f64) -> Option<f64> {
        let network = self.network_at(guess, anchor.shaft_rpm, factor);
        let (losses, curve) = (&self.alternator.losses, &self.alternator.curve);
        let open = losses
            .at_speed(curve, anchor.shaft_rpm)
            .at(anchor.amperes, curve.test_v);
        let settled = network.settled(&open, &AirBalance::Fixed(anchor.air_c));
        settled.map(|t| t.body_c)
    }
}

/// A figure with so many decimals.
pub(super) fn rounded(number: f64, decimals: usize) -> f64 {
    let scale = 10f64.powi(decimals as i32);
    (number * scale).round() / scale
}
