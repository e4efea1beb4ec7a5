//! After the engine stops: no fan turns, no air is drawn, and the block goes
//! on heating the space.

use crate::numerics::ode::{Point, Tolerance, between, solve};
use crate::physics::losses::Losses;
use crate::physics::thermal::Temperatures;
use crate::simulation::plant::Plant;
use crate::simulation::run::Trace;

/// How long to watch \[s\].
const WATCH_S: f64 = 3600.0;
/// Air, engine block, then winding, body and rectifier of each machine.
const PARTS: usize = 8;

/// The heat after stopping.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Soak {
    /// Hottest of each in the hour after: the alternator, and the second one.
    pub hottest: [Temperatures; 2],
    /// When the air is hottest \[s\] after stopping.
    pub air_peak_s: f64,
    /// Everything when the alternator's rectifier is hottest, and when the air is.
    pub(crate) at_peak: [Standing; 2],
}

/// A moment of the standing engine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Standing {
    /// The alternator and its air, and the second one.
    pub(crate) machines: [Temperatures; 2],
    /// The engine block \[°C\].
    pub(crate) engine_c: f64,
}

/// Watches the hour after a run was stopped at a time \[s\].
pub fn soak(plant: &Plant, trace: &Trace, stopped_s: f64) -> Soak {
    let [main, second] = trace.machines(stopped_s);
    let start = [
        main.air_c,
        plant.space.engine_c(stopped_s),
        main.winding_c,
        main.body_c,
        main.rectifier_c,
        second.winding_c,
        second.body_c,
        second.rectifier_c,
    ];
    let machines = [
        Some(plant.main.machine.standing(plant.main.fan)),
        plant
            .second
            .map(|beside| beside.unit.machine.standing(beside.unit.fan)),
    ];
    let still = Losses::default();
    let rate = |_: f64, state: &[f64; PARTS]| {
        let mut rates = [0.0; PARTS];
        let mut to_air_w = 0.0;
        for (machine, (at, first)) in machines.iter().zip([(0, 2), (1, 5)]) {
            let Some(machine) = machine else { continue };
            let t = temperatures(state, at);
            to_air_w += machine.heat_to_air_w(&t, &still);
            rates[first..first + 3].copy_from_slice(&machine.rates(&t, &still));
        }
        let [air, engine] = plant.space.rates_standing(state[0], state[1], to_air_w);
        (rates[0], rates[1]) = (air, engine);
        rates
    };
    let tolerance = Tolerance {
        per_step: [0.02; PARTS],
        feeds: [true; PARTS],
        longest_s: 300.0,
        shortest_s: 1.0,
    };
    // Nothing here depends on the clock.
    let drift = |_: &Point<PARTS>| [0.0; PARTS];
    let points = solve(rate, drift, start, WATCH_S, &tolerance, |_| false);
    let mut soak = Soak {
        hottest: [main, second],
        air_peak_s: 0.0,
        at_peak: [standing(&start); 2],
    };
    for pair in points.windows(2) {
        let [a, b] = pair else { break };
        for k in 0..4 {
            let seconds = a.seconds + (b.seconds - a.seconds) * f64::from(k) / 4.0;
            watch(&mut soak, a, b, seconds);
        }
    }
    soak
}

fn standing(state: &[f64; PARTS]) -> Standing {
    Standing {
        machines: [temperatures(state, 0), temperatures(state, 1)],
        engine_c: state[1],
    }
}

fn temperatures(state: &[f64; PARTS], machine: usize) -> Temperatures {
    let first = 2 + 3 * machine;
    Temperatures {
        winding_c: state[first],
        body_c: state[first + 1],
        rectifier_c: state[first + 2],
        air_c: state[0],
    }
}

fn watch(soak: &mut Soak, a: &Point<PARTS>, b: &Point<PARTS>, seconds: f64) {
    let state = between(a, b, seconds);
    if state[0] > soak.hottest[0].air_c {
        soak.air_peak_s = seconds;
        soak.at_peak[1] = standing(&state);
    }
    if state[4] > soak.hottest[0].rectifier_c {
        soak.at_peak[0] = standing(&state);
    }
    for (at, hottest) in soak.hottest.iter_mut().enumerate() {
        *hottest = hottest.hotter(&temperatures(&state, at));
    }
}
