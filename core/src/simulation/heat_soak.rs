//! After the engine stops: no fan turns, no air is drawn, and the block goes
//! on heating the space.

use crate::numerics::ode::{Point, Tolerance, between, solve};
use crate::physics::losses::Losses;
use crate::physics::thermal::{Temperatures, ThermalNetwork};
use crate::simulation::per_alternator::{MOST_ALTERNATORS, PerAlternator};
use crate::simulation::plant::Plant;
use crate::simulation::trace::Trace;

/// How long to watch \[s\].
const WATCH_S: f64 = 3600.0;

/// The heat after stopping.
#[derive(Debug, Clone, PartialEq)]
pub struct Soak {
    /// Hottest of each node of each alternator in the hour after.
    pub hottest: PerAlternator<Temperatures>,
    /// When the air is hottest \[s\] after stopping.
    pub air_peak_s: f64,
    /// When the first alternator's rectifier is \[s\] after stopping.
    pub(crate) rectifier_peak_s: f64,
    /// Everything when the first alternator's rectifier is hottest.
    pub(crate) rectifier_peak: Stopped,
    /// Everything when the air is hottest.
    pub(crate) air_peak: Stopped,
}

/// A moment of the engine that has stopped; or how fast it changes, each a second.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Stopped {
    /// Each alternator and its air.
    pub(crate) alternators: PerAlternator<Temperatures>,
    /// The air of the space \[°C\].
    pub(crate) air_c: f64,
    /// The engine block \[°C\].
    pub(crate) engine_c: f64,
}

/// Parts of a state beside those of the alternators: air and engine block.
const SHARED: usize = 2;

/// How many figures the state of a number of alternators has.
const fn parts(alternators: usize) -> usize {
    SHARED + 3 * alternators
}

impl Stopped {
    /// As the solver wants it.
    fn to_row<const N: usize>(&self) -> [f64; N] {
        let mut row = [0.0; N];
        row[..SHARED].copy_from_slice(&[self.air_c, self.engine_c]);
        for (alternator, t) in self.alternators.iter().enumerate() {
            let first = parts(alternator);
            row[first..first + 3].copy_from_slice(&[t.winding_c, t.body_c, t.rectifier_c]);
        }
        row
    }

    /// The state of a number of alternators, from a row of figures.
    fn of_row<const N: usize>(row: &[f64; N], alternators: usize) -> Stopped {
        let [air_c, engine_c] = [row[0], row[1]];
        let temperatures = |alternator: usize| {
            let first = parts(alternator);
            Temperatures {
                winding_c: row[first],
                body_c: row[first + 1],
                rectifier_c: row[first + 2],
                air_c,
            }
        };
        Stopped {
            alternators: (0..alternators).map(temperatures).collect(),
            air_c,
            engine_c,
        }
    }

    /// The first alternator's rectifier; the air where there is none \[°C\].
    fn rectifier_c(&self) -> f64 {
        let first = self.alternators.first();
        first.map_or(self.air_c, |t| t.rectifier_c)
    }
}

/// Watches the hour after a run was stopped at a time \[s\].
pub fn soak(plant: &Plant, trace: &Trace, stopped_s: f64) -> Soak {
    const ONE: usize = parts(1);
    const SEVERAL: usize = parts(MOST_ALTERNATORS);
    if plant.alternators.len() > 1 {
        watched::<SEVERAL>(plant, trace, stopped_s)
    } else {
        watched::<ONE>(plant, trace, stopped_s)
    }
}

fn watched<const N: usize>(plant: &Plant, trace: &Trace, stopped_s: f64) -> Soak {
    let count = plant.alternators.len();
    let alternators = trace.temperatures(stopped_s);
    let start = Stopped {
        air_c: trace.air_c(stopped_s),
        engine_c: plant.space.engine_c(stopped_s),
        alternators,
    };
    let pieces = cooled::<N>(plant, &start, WATCH_S);
    let mut soak = Soak {
        hottest: start.alternators.clone(),
        air_peak_s: 0.0,
        rectifier_peak_s: 0.0,
        rectifier_peak: start.clone(),
        air_peak: start,
    };
    let pairs = pieces.iter().flat_map(|points| points.windows(2));
    for pair in pairs {
        let [a, b] = pair else { break };
        for k in 0..4 {
            let seconds = a.seconds + (b.seconds - a.seconds) * f64::from(k) / 4.0;
            soak.watch(seconds, Stopped::of_row(&between(a, b, seconds), count));
        }
    }
    soak
}

/// Everything step by step from the moment the engine stops, for a time \[s\]: until
/// a blower that runs on is switched off, and from there.
fn cooled<const N: usize>(plant: &Plant, start: &Stopped, last_s: f64) -> Vec<Vec<Point<N>>> {
    let run_on_s = plant.space.run_on_s;
    let ends = if run_on_s > 0.0 && run_on_s < last_s {
        vec![run_on_s, last_s]
    } else {
        vec![last_s]
    };
    let count = plant.alternators.len();
    let (mut begin_s, mut state) = (0.0, start.clone());
    let mut pieces = Vec::new();
    for end_s in ends {
        let points = cooled_between::<N>(plant, &state, [begin_s, end_s]);
        if let Some(last) = points.last() {
            state = Stopped::of_row(&last.state, count);
        }
        begin_s = end_s;
        pieces.push(points);
    }
    pieces
}

/// How the alternators and their air cool between two times after stopping \[s\], in
/// which nothing is switched.
fn cooled_between<const N: usize>(
    plant: &Plant,
    start: &Stopped,
    [begin_s, end_s]: [f64; 2],
) -> Vec<Point<N>> {
    let count = plant.alternators.len();
    let networks: PerAlternator<ThermalNetwork> = plant
        .alternators
        .iter()
        .map(|one| one.network.fan_stopped(one.fan))
        .collect();
    let rate = |_: f64, row: &[f64; N]| {
        let state = Stopped::of_row(row, count);
        rates(plant, &networks, begin_s, &state).to_row()
    };
    let tolerance = Tolerance {
        per_step: [0.02; N],
        feeds: std::array::from_fn(|part| part < parts(count)),
        longest_s: 300.0,
        shortest_s: 1.0,
    };
    // Nothing here depends on the clock.
    let drift = |_: &Point<N>| [0.0; N];
    let takes_s = end_s - begin_s;
    let mut points = solve(rate, drift, start.to_row(), takes_s, &tolerance, |_| false);
    for point in &mut points {
        point.seconds += begin_s;
    }
    points
}

/// How warm everything is a time \[s\] after the engine stopped.
pub(super) fn after_stop(plant: &Plant, start: &Stopped, seconds: f64) -> Stopped {
    const MOST: usize = parts(MOST_ALTERNATORS);
    let pieces = cooled::<MOST>(plant, start, seconds);
    let last = pieces.last().and_then(|points| points.last());
    last.map_or(start.clone(), |point| {
        Stopped::of_row(&point.state, plant.alternators.len())
    })
}

/// How everything changes a time \[s\] after stopping.
fn rates(plant: &Plant, networks: &[ThermalNetwork], seconds: f64, state: &Stopped) -> Stopped {
    let nothing_lost = Losses::default();
    let mut to_air_w = 0.0;
    let each = networks.iter().zip(&state.alternators);
    let alternators = each
        .map(|(network, t)| {
            to_air_w += network.heat_to_air_w(t, &nothing_lost);
            let [winding_c, body_c, rectifier_c] = network.rates(t, &nothing_lost);
            Temperatures {
                winding_c,
                body_c,
                rectifier_c,
                air_c: 0.0,
            }
        })
        .collect();
    let [air_c, engine_c] =
        plant
            .space
            .rates_stopped(seconds, state.air_c, state.engine_c, to_air_w);
    Stopped {
        alternators,
        air_c,
        engine_c,
    }
}

impl Soak {
    /// Looks at a moment \[s\] after stopping.
    fn watch(&mut self, seconds: f64, now: Stopped) {
        for (hottest, t) in self.hottest.iter_mut().zip(&now.alternators) {
            *hottest = hottest.hotter(t);
        }
        if now.rectifier_c() > self.rectifier_peak.rectifier_c() {
            self.rectifier_peak_s = seconds;
            self.rectifier_peak = now.clone();
        }
        if now.air_c > self.air_peak.air_c {
            self.air_peak_s = seconds;
            self.air_peak = now;
        }
    }
}
