//! The thermal network of the charging run, with current, volts and speed prescribed by
//! a log: what its thermometers should have shown.

use crate::boat::{AirBasis, Inputs};
use crate::decision::calibration::columns::Column;
use crate::decision::calibration::course::{Course, thinned};
use crate::decision::calibration::guess::Guess;
use crate::decision::calibration::log::{Log, Row};
use crate::numerics::ode::{Point, Tolerance, between, by_difference, solve};
use crate::physics::heat_balance::fan_factor;
use crate::physics::losses::Losses;
use crate::physics::thermal::{AirBalance, Temperatures, ThermalNetwork};
use crate::physics::thermal_build::{Build, HeatPaths};
use crate::simulation::alternator::{AlternatorAtSpeed, CalibratedAlternator};
use crate::simulation::engine_space::SpaceAir;
use crate::simulation::plant::Plant;
use crate::simulation::rated::alternator_build;

/// Case above its surroundings from which a log is said to begin warm \[K\].
const WARM_K: f64 = 15.0;
/// No machine works at this temperature \[°C\].
const BURNT_C: f64 = 1000.0;

/// A log against a worksheet.
#[derive(Debug, Clone)]
pub struct Trial {
    /// The worksheet's inputs.
    pub inputs: Inputs,
    /// Its alternator at the mean speed of the log.
    pub alternator: AlternatorAtSpeed,
    /// The readings, thinned out.
    pub rows: Vec<Row>,
    pub(super) amps: Course,
    volts: Course,
    rpm: Course,
    air: Course,
    usual_v: f64,
    pub(super) mean_engine_rpm: f64,
    pub(super) first_case_c: f64,
    /// Whether the machine was warm at the first reading.
    pub begins_warm: bool,
}

/// Winding, body, rectifier, air \[°C\].
type State = [f64; 4];

fn temperatures([winding_c, body_c, rectifier_c, air_c]: State) -> Temperatures {
    Temperatures {
        winding_c,
        body_c,
        rectifier_c,
        air_c,
    }
}

impl Trial {
    /// Prepares a log whose case temperatures and amps are known to be there.
    pub fn new(inputs: &Inputs, log: &Log) -> Trial {
        let rows = thinned(&log.rows);
        let rpm = Course::of(
            &rows,
            Column::Rpm,
            match log.shaft_speed {
                true => 1.0 / inputs.alt.pulley_ratio,
                false => 1.0,
            },
        );
        let mean_engine_rpm = rpm.mean().unwrap_or(inputs.eng.rpm);
        let start_c = inputs.start_c();
        let air = Course::of(&rows, Column::Air, 1.0);
        let first_case_c = Course::of(&rows, Column::Case, 1.0)
            .first()
            .unwrap_or(start_c);
        let around_c = air.first().unwrap_or(start_c);
        Trial {
            inputs: *inputs,
            amps: Course::of(&rows, Column::Amps, 1.0),
            volts: Course::of(&rows, Column::Volts, 1.0),
            usual_v: usual_v(inputs),
            begins_warm: first_case_c - around_c > WARM_K,
            alternator: CalibratedAlternator::of(&inputs.first_alternator())
                .at_engine_rpm(mean_engine_rpm),
            rows,
            rpm,
            air,
            mean_engine_rpm,
            first_case_c,
        }
    }

    /// Whether the air near the machine was logged.
    pub fn has_air(&self) -> bool {
        self.air.first().is_some()
    }

    /// Whether the air has to be worked out from the engine space.
    pub fn models_air(&self) -> bool {
        !self.has_air() && self.inputs.space.basis == AirBasis::Modelled
    }

    /// Voltage at the machine \[V\] at a time \[s\]: as logged, or the worksheet's.
    pub fn volts(&self, seconds: f64) -> f64 {
        self.volts.at(seconds).unwrap_or(self.usual_v)
    }

    /// Speed of its shaft \[rpm\] at a time \[s\].
    pub fn shaft_rpm(&self, seconds: f64) -> f64 {
        let engine_rpm = self.rpm.at(seconds).unwrap_or(self.mean_engine_rpm);
        self.inputs.first_alternator().shaft_rpm(engine_rpm)
    }

    fn network(&self, guess: &Guess, seconds: f64) -> ThermalNetwork {
        self.network_at(guess, self.shaft_rpm(seconds), 1.0)
    }

    /// Its network at a shaft speed \[rpm\], for a guess whose cooling is multiplied
    /// by a factor.
    pub(super) fn network_at(&self, guess: &Guess, shaft_rpm: f64, factor: f64) -> ThermalNetwork {
        let cooling = self.alternator.cooling * guess.cooling * factor * self.fan(shaft_rpm);
        ThermalNetwork {
            recirculation: guess.recirculation,
            ducted: self.alternator.network.ducted,
            duct_c: self.alternator.network.duct_c,
            ..ThermalNetwork::new(&self.build(guess), cooling).with_heat_capacity(guess.capacity)
        }
    }

    /// How its alternator is built, for a guess.
    fn build(&self, guess: &Guess) -> Build {
        let build = alternator_build(&self.inputs.first_alternator());
        Build {
            paths: HeatPaths {
                winding_body_w_k: build.paths.winding_body_w_k * guess.coupling,
                ..build.paths
            },
            ..build
        }
    }

    /// Whether a kind of reading was logged at all.
    pub fn logged(&self, column: Column) -> bool {
        self.rows.iter().any(|row| row.get(column).is_some())
    }

    fn fan(&self, shaft_rpm: f64) -> f64 {
        let alt = &self.inputs.alt;
        fan_factor(
            shaft_rpm,
            alt.anchor_rpm,
            alt.cooling_exponent,
            self.alternator.network.still_air,
        )
    }

    fn losses(&self, seconds: f64, network: &ThermalNetwork, t: &Temperatures) -> Losses {
        let amps = self.amps.at(seconds).unwrap_or(0.0);
        self.alternator
            .losses
            .at_speed(&self.alternator.curve, self.shaft_rpm(seconds))
            .at(amps, self.volts(seconds))
            .with(t.winding_c, network.rotor_c(t.body_c))
    }

    /// Temperatures at every row, for a guess.
    pub fn run(&self, guess: &Guess) -> Vec<Temperatures> {
        let mut inputs = self.inputs;
        inputs.space.wall_w_k = Some(inputs.space_wall_w_k() * guess.walls);
        let space = SpaceAir::new(&inputs, self.mean_engine_rpm);
        // A machine that begins warm has a warm engine beside it.
        let engine_s = match self.begins_warm {
            true => 600.0 * inputs.eng.warm_up_min,
            false => 0.0,
        };
        let rate = |seconds: f64, state: &State| self.rate(guess, &space, engine_s, seconds, state);
        let tolerance = Tolerance {
            per_step: [0.02, 0.005, 0.02, 0.01],
            feeds: [true, true, true, !self.has_air()],
            longest_s: 120.0,
            shortest_s: 1.0,
        };
        let last_s = self.seconds(self.rows.last());
        let hot = |point: &Point<4>| point.state.iter().any(|c| *c > BURNT_C);
        let start = self.start(guess, &space.balance(0.0));
        let points = solve(rate, by_difference(rate), start, last_s, &tolerance, hot);
        self.rows
            .iter()
            .map(|row| {
                let seconds = self.seconds(Some(row));
                let after = points
                    .partition_point(|point| point.seconds < seconds)
                    .max(1);
                let state = match (points.get(after - 1), points.get(after)) {
                    (Some(a), Some(b)) => between(a, b, seconds),
                    (Some(a), None) => a.state,
                    _ => start,
                };
                self.at(seconds, &state)
            })
            .collect()
    }

    /// The temperatures of a state, with the air that was logged.
    fn at(&self, seconds: f64, state: &State) -> Temperatures {
        let mut t = temperatures(*state);
        t.air_c = self.air.at(seconds).unwrap_or(t.air_c);
        t
    }

    /// Rates of change \[K/s\], the engine having run `engine_s` longer \[s\].
    fn rate(
        &self,
        guess: &Guess,
        space: &SpaceAir,
        engine_s: f64,
        seconds: f64,
        state: &State,
    ) -> State {
        let t = self.at(seconds, state);
        let network = self.network(guess, seconds);
        let losses = self.losses(seconds, &network, &t);
        let [winding, body, rectifier] = network.rates(&t, &losses);
        let to_air_w = network.heat_to_air_w(&t, &losses);
        let air = match self.has_air() {
            true => 0.0,
            false => space.rate(seconds + engine_s, t.air_c, to_air_w),
        };
        [winding, body, rectifier, air]
    }

    /// Time of a row since the first \[s\].
    pub fn seconds(&self, row: Option<&Row>) -> f64 {
        match (self.rows.first(), row) {
            (Some(first), Some(row)) => 60.0 * (row.minute - first.minute),
            _ => 0.0,
        }
    }

    /// Temperatures at the first reading: all alike from cold; of a warm
    /// machine, winding and rectifier where they would settle on such a body,
    /// which takes them a minute or two.
    fn start(&self, guess: &Guess, space: &AirBalance) -> State {
        let body_c = self.first_case_c + guess.start_k;
        let logged = |column: Column| self.rows.first().and_then(|row| row.get(column));
        let network = self.network(guess, 0.0);
        let air_c = match (self.air.at(0.0), self.begins_warm, space) {
            (Some(air_c), ..) => air_c,
            (None, false, _) => body_c,
            (None, true, AirBalance::Fixed(air_c)) => *air_c,
            (
                None,
                true,
                AirBalance::Open {
                    conductance_w_k,
                    heat_w,
                },
            ) => {
                // With all of the machine's losses in it.
                let t = temperatures([body_c; 4]);
                let lost_w = self.losses(0.0, &network, &t).total_w();
                ((heat_w + lost_w) / conductance_w_k.max(0.1)).min(body_c)
            }
        };
        let mut t = temperatures([body_c, body_c, body_c, air_c]);
        if self.begins_warm {
            let inlet_c = network.inlet_c(&t);
            let between = |lost_w: f64, to_body: f64, to_air: f64| {
                (lost_w + to_body * body_c + to_air * inlet_c) / (to_body + to_air)
            };
            let losses = self.losses(0.0, &network, &t);
            t.winding_c = between(losses.copper_w, network.winding_body, network.winding_air);
            t.rectifier_c = between(
                losses.diode_w,
                network.rectifier_body,
                network.rectifier_air,
            );
        }
        [
            logged(Column::Winding).unwrap_or(t.winding_c),
            body_c,
            logged(Column::Rectifier).unwrap_or(t.rectifier_c),
            air_c,
        ]
    }
}

/// The worksheet's voltage at the machine, cold, as a run begins \[V\]. Losses
/// hardly depend on it.
fn usual_v(inputs: &Inputs) -> f64 {
    /// Any slow start is over by then.
    const LATER_S: f64 = 1e5;
    let plant = Plant::new(inputs, 0.0);
    let soc = inputs.run.from_pct / 100.0;
    let flow = plant.flow(LATER_S, soc, &plant.resting());
    flow.outputs
        .first()
        .map_or(flow.bank_v, |first| first.volts)
}
