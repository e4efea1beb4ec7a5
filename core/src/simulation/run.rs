//! A whole charging run: how everything aboard changes, stepped through time.
//! What came of it is read off in `trace.rs`.

use std::cell::Cell;

use crate::numerics::ode::{Point, Tolerance, by_difference, solve};
use crate::physics::losses::Losses;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::moment::ThermalState;
use crate::simulation::plant::{Drive, Plant};
use crate::simulation::run_state::{MAIN, PARTS, SECOND, State, machines, part, temperatures};

pub use crate::simulation::peaks::{PeakLoad, Peaks};
pub use crate::simulation::trace::{Sample, Stretch, Trace};

/// Parts of the state of one alternator, and of one whose sensor lags; see
/// [`run_state`](crate::simulation::run_state).
const ALONE: usize = 7;
const ALONE_LAGGING: usize = 8;
/// No machine works at this temperature \[°C\]; a run ends there.
const BURNT_C: f64 = 1000.0;

/// A step this short is taken whatever its error \[s\].
const SHORTEST_S: f64 = 1.0;

/// How finely to step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fineness {
    /// Error a step may make: state of charge.
    pub charge: f64,
    /// Error a step may make: temperature \[K\].
    pub kelvin: f64,
    /// Longest step \[s\].
    pub longest_s: f64,
}

impl Fineness {
    /// For every day: well inside 0.2 % of a run ten times finer.
    pub const USUAL: Fineness = Fineness {
        charge: 3e-6,
        kelvin: 0.003,
        longest_s: 900.0,
    };

    /// The same, finer by a factor.
    pub fn finer(self, factor: f64) -> Fineness {
        Fineness {
            charge: self.charge / factor,
            kelvin: self.kelvin / factor,
            longest_s: self.longest_s / factor,
        }
    }
}

/// The two drives asked for last: a winding, a plate or air a little warmer
/// drives the same (but air a built-in regulator feels), and how rates change
/// with them is asked at every step.
#[derive(Default)]
struct Drives {
    kept: [Cell<Option<Drive>>; 2],
    /// Time, charge, the sensor and the rotor of each machine, and the air.
    asked: [Cell<[f64; 7]>; 2],
    last: Cell<bool>,
}

impl Drives {
    fn find(
        &self,
        plant: &Plant,
        seconds: f64,
        charge: f64,
        main: &ThermalState,
        second: &ThermalState,
    ) -> Drive {
        let mut asked = [0.0; 7];
        asked[..4].copy_from_slice(&[seconds, charge, main.sensed_c, main.t.body_c]);
        if plant.second.is_some() {
            (asked[4], asked[5]) = (second.sensed_c, second.t.body_c);
        }
        if plant.held_by_built_in() {
            asked[6] = main.t.air_c;
        }
        let last = self.last.get();
        for at in [last, !last] {
            let slot = usize::from(at);
            if self.asked[slot].get() == asked
                && let Some(drive) = self.kept[slot].get()
            {
                self.last.set(at);
                return drive;
            }
        }
        let drive = plant.drive(seconds, charge, main, second);
        let oldest = usize::from(!last);
        self.kept[oldest].set(Some(drive));
        self.asked[oldest].set(asked);
        self.last.set(!last);
        drive
    }
}

/// How everything changes.
fn rates<const N: usize>(
    plant: &Plant,
    seconds: f64,
    state: &[f64; N],
    drives: &Drives,
) -> [f64; N] {
    let [main, second] = machines(plant, state);
    let now = drives
        .find(plant, seconds, state[0], &main, &second)
        .at(plant, &main.t, &second.t);
    let mut rates = [0.0; N];
    let mut to_air_w = 0.0;
    let mut warm = |unit: &AlternatorAtSpeed, first: usize, losses: &Losses| {
        let t = temperatures(state, first);
        let nodes = unit.machine.rates(&t, losses);
        to_air_w += unit.machine.heat_to_air_w(&t, losses);
        let sensor = unit.sensor_rate(&t, part(state, first + 3));
        for (rate, node) in rates
            .iter_mut()
            .skip(first)
            .zip(nodes.into_iter().chain([sensor]))
        {
            *rate = node;
        }
    };
    warm(&plant.main, MAIN, &now.losses);
    if let Some(second) = &plant.second {
        warm(&second.unit, SECOND, &now.second_losses);
    }
    rates[0] = plant.bank.charge_rate(now.flow.bank_a);
    rates[1] = plant.space.rate(seconds, state[1], to_air_w);
    rates[2] = now.flow.main.amperes + now.flow.second.amperes;
    rates[3] = now.shaft_w();
    rates
}

/// Charges from one state of charge (0 to 1) until another, or `last_s` seconds.
pub fn charge(plant: &Plant, from: f64, until: f64, last_s: f64, fineness: &Fineness) -> Trace {
    let points = match (plant.second.is_some(), plant.main.lags()) {
        (false, false) => step_through::<ALONE>(plant, from, until, last_s, fineness),
        (false, true) => step_through::<ALONE_LAGGING>(plant, from, until, last_s, fineness),
        (true, _) => step_through::<PARTS>(plant, from, until, last_s, fineness),
    };
    Trace {
        plant: *plant,
        points,
    }
}

fn step_through<const N: usize>(
    plant: &Plant,
    from: f64,
    until: f64,
    last_s: f64,
    fineness: &Fineness,
) -> Vec<Point<PARTS>> {
    let mut start = [plant.start_c; N];
    (start[0], start[2], start[3]) = (from, 0.0, 0.0);
    let mut per_step = [fineness.kelvin; N];
    // What is carried along feeds nothing but is read off: as near as the charge.
    let ampere_s = fineness.charge * plant.bank.capacity_ah * 3600.0;
    let joule = ampere_s * plant.bank.rest_v(1.0);
    (per_step[0], per_step[2], per_step[3]) = (fineness.charge, ampere_s, joule);
    let feeds = std::array::from_fn(|part| match part {
        2 | 3 => false,
        7 => plant.main.lags(),
        8..=10 => plant.second.is_some(),
        11 => plant.second.is_some_and(|beside| beside.unit.lags()),
        _ => true,
    });
    let tolerance = Tolerance {
        per_step,
        feeds,
        longest_s: fineness.longest_s,
        shortest_s: SHORTEST_S,
    };
    // A bank that is being emptied will not come up again, and a machine that
    // glows is gone.
    let done = |point: &Point<N>| {
        let hottest_c = point.state.iter().skip(MAIN).copied().fold(0.0, f64::max);
        let charge = point.state[0];
        charge >= until || charge <= -0.05 || hottest_c > BURNT_C
    };
    let drives = Drives::default();
    let rate = |seconds: f64, state: &[f64; N]| rates(plant, seconds, state, &drives);
    let widened = |parts: &[f64; N]| -> State {
        std::array::from_fn(|at| parts.get(at).copied().unwrap_or_default())
    };
    // Of all rates only the air's depends on the clock, through the block that
    // warms up; and the current's during a slow start.
    let numeric = by_difference(rate);
    let drift = |here: &Point<N>| {
        if plant.starts_slowly() {
            return numeric(here);
        }
        let mut drift = [0.0; N];
        drift[1] = plant.space.drift(here.seconds);
        drift
    };
    solve(rate, drift, start, last_s, &tolerance, done)
        .iter()
        .map(|point| Point {
            seconds: point.seconds,
            state: widened(&point.state),
            rate: widened(&point.rate),
        })
        .collect()
}
