//! A whole charging run.

use super::Limit;
use super::integrate::{Point, Tolerance, between, solve};
use super::plant::{Moment, Plant};
use crate::physics::roots;
use crate::physics::thermal::Temperatures;

/// State of charge, winding, body, rectifier, air, and carried along:
/// alternator ampere-seconds and shaft joules.
const PARTS: usize = 7;
type State = [f64; PARTS];

/// No machine works at this temperature \[°C\]; a run ends there.
const BURNT_C: f64 = 1000.0;

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
        charge: 1e-5,
        kelvin: 0.01,
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
    /// Temperatures.
    pub temperatures: Temperatures,
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

fn temperatures(state: &State) -> Temperatures {
    Temperatures {
        winding_c: state[1],
        body_c: state[2],
        rectifier_c: state[3],
        air_c: state[4],
    }
}

/// Charges from one state of charge (0 to 1) until another, or `last_s` seconds.
pub fn charge(plant: &Plant, from: f64, until: f64, last_s: f64, fineness: &Fineness) -> Trace {
    let rate = |seconds: f64, state: &State| -> State {
        let t = temperatures(state);
        let moment = plant.moment(state[0], &t);
        let [winding, body, rectifier] = plant.machine.rates(&t, &moment.losses);
        let to_air_w = plant.machine.heat_to_air_w(&t, &moment.losses);
        [
            plant.bank.charge_rate(moment.bank_a),
            winding,
            body,
            rectifier,
            plant.space.rate(seconds, t.air_c, to_air_w),
            moment.alternator_a,
            moment.shaft_w(),
        ]
    };
    let kelvin = fineness.kelvin;
    let tolerance = Tolerance {
        per_step: [
            fineness.charge,
            kelvin,
            kelvin,
            kelvin,
            kelvin,
            f64::INFINITY,
            f64::INFINITY,
        ],
        longest_s: fineness.longest_s,
    };
    let start_c = plant.start_c;
    let start = [from, start_c, start_c, start_c, start_c, 0.0, 0.0];
    // A bank that is being emptied will not come up again, and a machine that
    // glows is gone.
    let done = |point: &Point<PARTS>| {
        let [charge, winding_c, body_c, rectifier_c, ..] = point.state;
        let hottest_c = winding_c.max(body_c).max(rectifier_c);
        charge >= until || charge <= -0.05 || hottest_c > BURNT_C
    };
    Trace {
        plant: *plant,
        points: solve(rate, start, last_s, &tolerance, done),
    }
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
        let temperatures = temperatures(&state);
        Sample {
            seconds,
            charge: state[0],
            temperatures,
            moment: self.plant.moment(state[0], &temperatures),
        }
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

    /// Ampere-hours the alternator gave until a time \[s\].
    pub fn alternator_ah(&self, seconds: f64) -> f64 {
        self.state(seconds)[5] / 3600.0
    }

    /// Kilowatt-hours its shaft took until a time \[s\].
    pub fn shaft_kwh(&self, seconds: f64) -> f64 {
        self.state(seconds)[6] / 3.6e6
    }

    /// Hottest of each until a time \[s\].
    pub fn hottest(&self, seconds: f64) -> Temperatures {
        let mut hottest = temperatures(&self.state(seconds));
        for pair in self.points.windows(2) {
            let [a, b] = pair else { break };
            if a.seconds >= seconds {
                break;
            }
            let end = b.seconds.min(seconds);
            // The cubics bulge between step ends: look a few times inside.
            for k in 0..4 {
                let t = temperatures(&between(
                    a,
                    b,
                    a.seconds + (end - a.seconds) * f64::from(k) / 4.0,
                ));
                hottest.winding_c = hottest.winding_c.max(t.winding_c);
                hottest.body_c = hottest.body_c.max(t.body_c);
                hottest.rectifier_c = hottest.rectifier_c.max(t.rectifier_c);
                hottest.air_c = hottest.air_c.max(t.air_c);
            }
        }
        hottest
    }

    /// What limits when, until a time \[s\].
    pub fn stretches(&self, until_s: f64) -> Vec<Stretch> {
        let limit = |seconds: f64| {
            let state = self.state(seconds);
            self.plant.flow(state[0], &temperatures(&state)).limit
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
