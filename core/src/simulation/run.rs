//! A whole charging run: how everything aboard changes, stepped through time.
//! What came of it is read off in `trace.rs`.

use std::cell::RefCell;

use crate::numerics::ode::{Point, Tolerance, by_difference, solve};
use crate::simulation::carried::Carried;
use crate::simulation::drives::Drives;
use crate::simulation::moment::Output;
use crate::simulation::per_alternator::MOST_ALTERNATORS;
use crate::simulation::plant::Plant;
use crate::simulation::run_state::{Nodes, RunState, parts, parts_with_sensors};
use crate::simulation::trace::TracePoint;

pub use crate::simulation::peaks::{PeakLoad, Peaks};
pub use crate::simulation::stretches::Stretch;
pub use crate::simulation::trace::{Sample, Trace};

/// No alternator works at this temperature \[°C\]; a run ends there.
const BURNT_C: f64 = 1000.0;

/// A step this short is taken whatever its error \[s\].
const SHORTEST_S: f64 = 1.0;

/// How finely to step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fineness {
    /// Error a step may make: state of charge.
    pub soc: f64,
    /// Error a step may make: temperature \[K\].
    pub kelvin: f64,
    /// Longest step \[s\].
    pub longest_s: f64,
}

impl Fineness {
    /// For every day: well inside 0.2 % of a run ten times finer.
    pub const USUAL: Fineness = Fineness {
        soc: 1e-5,
        kelvin: 0.01,
        longest_s: 3600.0,
    };

    /// The same, finer by a factor.
    pub fn finer(self, factor: f64) -> Fineness {
        Fineness {
            soc: self.soc / factor,
            kelvin: self.kelvin / factor,
            longest_s: self.longest_s / factor,
        }
    }
}

/// Puts how everything changes in the place of the state.
fn rates(plant: &Plant, seconds: f64, state: &mut RunState, drives: &mut Drives) {
    let states = state.thermal(plant);
    let drive = drives.at(plant, seconds, state.soc, &states);
    let outputs = drive.flow.outputs.iter();
    state.soc = plant.bank.charge_rate(drive.flow.bank_a);
    state.given_as = outputs.clone().map(|output| output.amperes).sum();
    state.shaft_j = outputs.map(Output::power_w).sum();
    let mut to_air_w = 0.0;
    let each = plant.alternators.iter().zip(&states).zip(&drive.losses);
    for (((alternator, warm), open), nodes) in each.zip(&mut state.alternators) {
        let losses = alternator.losses_at(open, &warm.t);
        let [winding_c, body_c, rectifier_c] = alternator.network.rates(&warm.t, &losses);
        to_air_w += alternator.network.heat_to_air_w(&warm.t, &losses);
        state.shaft_j += losses.total_w();
        *nodes = Nodes {
            winding_c,
            body_c,
            rectifier_c,
            sensor_c: alternator.sensor_rate(&warm.t, nodes.sensor_c),
        };
    }
    state.air_c = plant.space.rate(seconds, state.air_c, to_air_w);
}

/// Charges from one state of charge (0 to 1) until another, or `last_s` seconds,
/// everything cold at the start.
pub fn charge(plant: &Plant, from: f64, until: f64, last_s: f64, fineness: &Fineness) -> Trace {
    charge_on(plant, &Carried::cold(plant, from), until, last_s, fineness)
}

/// Charges on from what was left until a state of charge (0 to 1), or `last_s`
/// seconds. What is switched at a time is not stepped across.
pub fn charge_on(
    plant: &Plant,
    start: &Carried,
    until: f64,
    last_s: f64,
    fineness: &Fineness,
) -> Trace {
    let mut points: Vec<TracePoint> = Vec::new();
    let (mut state, mut begin_s) = (start.state.clone(), 0.0);
    for end_s in plant.switched_until(last_s) {
        let here = plant.switched_at(begin_s);
        let piece = stepped(&here, &state, until, [begin_s, end_s], fineness);
        points.extend(piece);
        match points.last() {
            Some(last) if last.seconds >= end_s => state = last.state.clone(),
            _ => break,
        }
        begin_s = end_s;
    }
    Trace {
        plant: plant.clone(),
        points,
    }
}

/// Runs the engine for `last_s` seconds from what was left, and on when the bank
/// is full: it then takes nothing more, and the house alone is fed.
pub fn run_for(plant: &Plant, start: &Carried, last_s: f64, fineness: &Fineness) -> Trace {
    let trace = charge_on(plant, start, 1.0, last_s, fineness);
    match trace.reaches(1.0).filter(|full_s| *full_s < last_s) {
        None => trace,
        Some(full_s) => {
            let plant = Plant {
                full_s,
                ..plant.clone()
            };
            charge_on(&plant, start, f64::INFINITY, last_s, fineness)
        }
    }
}

/// Steps from a state between two times \[s\], in which nothing is switched.
fn stepped(
    plant: &Plant,
    start: &RunState,
    until: f64,
    times_s: [f64; 2],
    fineness: &Fineness,
) -> Vec<TracePoint> {
    const ONE: usize = parts(1);
    const ONE_LAGGING: usize = parts_with_sensors(1);
    const TWO: usize = parts(2);
    const TWO_LAGGING: usize = parts_with_sensors(2);
    const MOST: usize = parts_with_sensors(MOST_ALTERNATORS);
    let lags = plant.alternators.iter().any(|one| one.lags());
    match (plant.alternators.len(), lags) {
        (0 | 1, false) => step_through::<ONE>(plant, start, until, times_s, fineness),
        (0 | 1, true) => step_through::<ONE_LAGGING>(plant, start, until, times_s, fineness),
        (2, false) => step_through::<TWO>(plant, start, until, times_s, fineness),
        (2, true) => step_through::<TWO_LAGGING>(plant, start, until, times_s, fineness),
        _ => step_through::<MOST>(plant, start, until, times_s, fineness),
    }
}

fn step_through<const N: usize>(
    plant: &Plant,
    start: &RunState,
    until: f64,
    [begin_s, end_s]: [f64; 2],
    fineness: &Fineness,
) -> Vec<TracePoint> {
    let count = plant.alternators.len();
    // What is carried along feeds nothing but is read off: as near as the charge.
    let ampere_s = fineness.soc * plant.bank.capacity_ah * 3600.0;
    let per_step = RunState {
        soc: fineness.soc,
        given_as: ampere_s,
        shaft_j: ampere_s * plant.bank.rest_v(1.0),
        ..RunState::all(fineness.kelvin, count)
    };
    let tolerance = Tolerance {
        per_step: per_step.to_row(),
        feeds: feeds(plant).to_row().map(|feeds| feeds > 0.0),
        longest_s: fineness.longest_s,
        shortest_s: SHORTEST_S,
    };
    // A bank that is being emptied will not come up again, and an alternator
    // that glows is gone.
    let done = |point: &Point<N>| {
        let state = RunState::of_row(&point.state, count);
        state.soc >= until || state.soc <= -0.05 || state.hottest_c() > BURNT_C
    };
    let drives = RefCell::new(Drives::default());
    let rate = |seconds: f64, row: &[f64; N]| {
        let mut state = RunState::of_row(row, count);
        let now_s = begin_s + seconds;
        rates(plant, now_s, &mut state, &mut drives.borrow_mut());
        state.to_row()
    };
    // Of all rates only the air's depends on the clock, through the block that
    // warms up; and the current's during a slow start.
    let numeric = by_difference(rate);
    let drift = |here: &Point<N>| {
        if plant.starts_slowly() {
            return numeric(here);
        }
        let drift = RunState {
            air_c: plant.space.drift(begin_s + here.seconds),
            ..RunState::all(0.0, count)
        };
        drift.to_row()
    };
    let takes_s = end_s - begin_s;
    let points = solve(rate, drift, start.to_row(), takes_s, &tolerance, done);
    points
        .iter()
        .map(|point| TracePoint {
            seconds: if point.seconds < takes_s {
                begin_s + point.seconds
            } else {
                end_s
            },
            state: RunState::of_row(&point.state, count),
            rate: RunState::of_row(&point.rate, count),
        })
        .collect()
}

/// Which parts feed any other: 1 for those that do, 0 for those that are only
/// carried along.
fn feeds(plant: &Plant) -> RunState {
    let mut feeds = RunState {
        given_as: 0.0,
        shaft_j: 0.0,
        ..RunState::all(1.0, plant.alternators.len())
    };
    for (nodes, alternator) in feeds.alternators.iter_mut().zip(&plant.alternators) {
        nodes.sensor_c = f64::from(u8::from(alternator.lags()));
    }
    feeds
}
