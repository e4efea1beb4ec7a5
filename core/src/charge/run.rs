//! A whole charging run.

use std::cell::Cell;

use super::Limit;
use super::integrate::{Point, Tolerance, between, by_difference, solve};
use super::plant::{Drive, MachineState, Moment, Plant};
use super::unit::Unit;
use crate::physics::losses::Losses;
use crate::physics::roots;
use crate::physics::thermal::Temperatures;

/// Parts of a state: charge, air, and carried along alternator ampere-seconds
/// and shaft joules; then winding, body, rectifier and sensor of each machine.
/// One machine alone, its sensor quick, needs the first of them only.
const ALONE: usize = 7;
const PARTS: usize = 12;
type State = [f64; PARTS];

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

/// A run that was reckoned, from which anything can be read off.
#[derive(Debug, Clone)]
pub struct Trace {
    plant: Plant,
    points: Vec<Point<PARTS>>,
}

/// One moment of a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Time since the start \[s\].
    pub seconds: f64,
    /// State of charge, 0 to 1.
    pub charge: f64,
    /// Temperatures of the alternator and its air.
    pub temperatures: Temperatures,
    /// Those of the second one, if there is one.
    pub second: Option<Temperatures>,
    /// Currents, voltages, losses.
    pub moment: Moment,
}

/// A stretch of a run with one limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    /// From \[s\].
    pub from_s: f64,
    /// To \[s\].
    pub to_s: f64,
    /// What holds the current down.
    pub limit: Limit,
}

/// Where the parts of the alternator begin, and those of the second one.
const MAIN: usize = 4;
const SECOND: usize = 8;

fn part<const N: usize>(state: &[f64; N], at: usize) -> f64 {
    state.get(at).copied().unwrap_or(state[1])
}

/// Temperatures of the machine whose parts begin at `first`.
fn temperatures<const N: usize>(state: &[f64; N], first: usize) -> Temperatures {
    Temperatures {
        winding_c: part(state, first),
        body_c: part(state, first + 1),
        rectifier_c: part(state, first + 2),
        air_c: state[1],
    }
}

fn machine<const N: usize>(unit: &Unit, state: &[f64; N], first: usize) -> MachineState {
    let t = temperatures(state, first);
    MachineState {
        t,
        sensed_c: unit.sensed_c(&t, part(state, first + 3)),
    }
}

/// Both machines; the second one is only meant where there is one.
fn machines<const N: usize>(plant: &Plant, state: &[f64; N]) -> [MachineState; 2] {
    let second = plant
        .second
        .as_ref()
        .map_or(&plant.main, |beside| &beside.unit);
    [
        machine(&plant.main, state, MAIN),
        machine(second, state, SECOND),
    ]
}

/// What happens at a time and state.
fn moment<const N: usize>(plant: &Plant, seconds: f64, state: &[f64; N]) -> Moment {
    let [main, second] = machines(plant, state);
    plant.moment(seconds, state[0], &main, &second)
}

/// The two drives asked for last: a winding, a plate or air a little warmer
/// drives the same, and how rates change with them is asked at every step.
#[derive(Default)]
struct Drives {
    kept: [Cell<Option<Drive>>; 2],
    /// Time, charge, and the sensor and the rotor of each machine.
    asked: [Cell<[f64; 6]>; 2],
    last: Cell<bool>,
}

impl Drives {
    fn find(
        &self,
        plant: &Plant,
        seconds: f64,
        charge: f64,
        main: &MachineState,
        second: &MachineState,
    ) -> Drive {
        let mut asked = [seconds, charge, main.sensed_c, main.t.body_c, 0.0, 0.0];
        if plant.second.is_some() {
            (asked[4], asked[5]) = (second.sensed_c, second.t.body_c);
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
    let mut warm = |unit: &Unit, first: usize, losses: &Losses| {
        let t = temperatures(state, first);
        let lumps = unit.machine.rates(&t, losses);
        to_air_w += unit.machine.heat_to_air_w(&t, losses);
        let sensor = unit.sensor_rate(&t, part(state, first + 3));
        for (rate, lump) in rates
            .iter_mut()
            .skip(first)
            .zip(lumps.into_iter().chain([sensor]))
        {
            *rate = lump;
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
    let alone = plant.second.is_none() && !plant.main.lags();
    let points = if alone {
        step_through::<ALONE>(plant, from, until, last_s, fineness)
    } else {
        step_through::<PARTS>(plant, from, until, last_s, fineness)
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

impl Trace {
    /// When it ends \[s\].
    pub fn last_s(&self) -> f64 {
        self.points.last().map_or(0.0, |point| point.seconds)
    }

    /// How many steps it took.
    pub fn steps(&self) -> usize {
        self.points.len().saturating_sub(1)
    }

    fn state(&self, seconds: f64) -> State {
        let after = self
            .points
            .partition_point(|point| point.seconds < seconds)
            .max(1);
        match (self.points.get(after - 1), self.points.get(after)) {
            (Some(a), Some(b)) => between(a, b, seconds),
            (Some(a), None) => a.state,
            _ => [0.0; PARTS],
        }
    }

    /// What happens at a time \[s\].
    pub fn sample(&self, seconds: f64) -> Sample {
        let state = self.state(seconds);
        Sample {
            seconds,
            charge: state[0],
            temperatures: temperatures(&state, MAIN),
            second: self.plant.second.map(|_| temperatures(&state, SECOND)),
            moment: moment(&self.plant, seconds, &state),
        }
    }

    /// The machines' temperatures at a time \[s\].
    pub fn machines(&self, seconds: f64) -> [Temperatures; 2] {
        let state = self.state(seconds);
        [temperatures(&state, MAIN), temperatures(&state, SECOND)]
    }

    /// The machines and their sensors at a time \[s\]; the second one's are
    /// only meant where there is one.
    pub(crate) fn states(&self, seconds: f64) -> [MachineState; 2] {
        machines(&self.plant, &self.state(seconds))
    }

    /// When something of a machine (0 the alternator, 1 the second one) is at
    /// its highest until a time \[s\], looked at as by [`Trace::hottest`].
    pub(crate) fn peak_s(
        &self,
        until_s: f64,
        machine: usize,
        part: fn(&Temperatures) -> f64,
    ) -> f64 {
        let first = if machine == 0 { MAIN } else { SECOND };
        let last_s = until_s.min(self.last_s());
        let mut peak = (part(&temperatures(&self.state(last_s), first)), last_s);
        for pair in self.points.windows(2) {
            let [a, b] = pair else { break };
            if a.seconds >= until_s {
                break;
            }
            for k in 0..4 {
                let end = b.seconds.min(until_s);
                let at = a.seconds + (end - a.seconds) * f64::from(k) / 4.0;
                let here = part(&temperatures(&between(a, b, at), first));
                if here > peak.0 {
                    peak = (here, at);
                }
            }
        }
        peak.1
    }

    /// When a state of charge (0 to 1) is reached \[s\].
    pub fn reaches(&self, charge: f64) -> Option<f64> {
        let first = self.points.first()?;
        if first.state[0] >= charge {
            return Some(0.0);
        }
        self.points.windows(2).find_map(|pair| {
            let [a, b] = pair else { return None };
            (b.state[0] >= charge).then(|| {
                roots::falling(
                    |seconds| charge - between(a, b, seconds)[0],
                    a.seconds,
                    b.seconds,
                    1e-12,
                )
            })
        })
    }

    /// State of charge at a time \[s\].
    pub fn charge_at(&self, seconds: f64) -> f64 {
        self.state(seconds)[0]
    }

    /// Ampere-hours the alternators gave until a time \[s\].
    pub fn alternator_ah(&self, seconds: f64) -> f64 {
        self.state(seconds)[2] / 3600.0
    }

    /// Kilowatt-hours their shafts took until a time \[s\].
    pub fn shaft_kwh(&self, seconds: f64) -> f64 {
        self.state(seconds)[3] / 3.6e6
    }

    /// Most that the shafts took at any step until a time \[W\].
    pub fn peak_shaft_w(&self, seconds: f64) -> f64 {
        self.points
            .iter()
            .take_while(|point| point.seconds <= seconds)
            .map(|point| point.rate[3])
            .fold(0.0, f64::max)
    }

    /// Hottest of each until a time \[s\]: the alternator, and the second one.
    pub fn hottest(&self, seconds: f64) -> [Temperatures; 2] {
        let mut hottest = self.machines(seconds.min(self.last_s()));
        for pair in self.points.windows(2) {
            let [a, b] = pair else { break };
            if a.seconds >= seconds {
                break;
            }
            let end = b.seconds.min(seconds);
            // The cubics bulge between step ends: look a few times inside.
            for k in 0..4 {
                let at = a.seconds + (end - a.seconds) * f64::from(k) / 4.0;
                let state = between(a, b, at);
                for (hottest, first) in hottest.iter_mut().zip([MAIN, SECOND]) {
                    *hottest = hottest.hotter(&temperatures(&state, first));
                }
            }
        }
        hottest
    }

    /// What limits when, until a time \[s\].
    pub fn stretches(&self, until_s: f64) -> Vec<Stretch> {
        let limit = |seconds: f64| {
            let state = self.state(seconds);
            let [main, second] = machines(&self.plant, &state);
            let flow = self.plant.flow(seconds, state[0], &main, &second);
            flow.limit
        };
        let mut stretches: Vec<Stretch> = Vec::new();
        let mut begin = (0.0, limit(0.0));
        for point in &self.points {
            let to_s = point.seconds.min(until_s);
            if to_s <= begin.0 {
                continue;
            }
            let here = limit(to_s);
            let turn_s = if here == begin.1 {
                to_s
            } else {
                // Halve until the change is found to a tenth of a second.
                let (mut before, mut after) = (begin.0, to_s);
                while after - before > 0.1 {
                    let middle = 0.5 * (before + after);
                    if limit(middle) == begin.1 {
                        before = middle;
                    } else {
                        after = middle;
                    }
                }
                after
            };
            push(&mut stretches, begin.0, turn_s, begin.1);
            push(&mut stretches, turn_s, to_s, here);
            begin = (to_s, here);
        }
        stretches
    }
}

fn push(stretches: &mut Vec<Stretch>, from_s: f64, to_s: f64, limit: Limit) {
    if to_s <= from_s {
        return;
    }
    match stretches.last_mut() {
        Some(last) if last.limit == limit => last.to_s = to_s,
        _ => stretches.push(Stretch {
            from_s,
            to_s,
            limit,
        }),
    }
}
