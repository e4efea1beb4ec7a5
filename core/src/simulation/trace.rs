//! A charging run that was reckoned, and what is read off it.

use crate::numerics::bracketed_root;
use crate::numerics::ode::{Point, between};
use crate::physics::thermal::Temperatures;
use crate::simulation::Limit;
use crate::simulation::moment::{Flow, Moment, ThermalState};
use crate::simulation::plant::Plant;
use crate::simulation::run_state::{MAIN, PARTS, SECOND, State, machines, moment, temperatures};

/// A run that was reckoned, from which anything can be read off.
#[derive(Debug, Clone, PartialEq)]
pub struct Trace {
    pub(super) plant: Plant,
    pub(super) points: Vec<Point<PARTS>>,
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

    /// What flows at a time \[s\].
    pub(super) fn flow(&self, seconds: f64) -> Flow {
        let state = self.state(seconds);
        let [main, second] = machines(&self.plant, &state);
        self.plant.flow(seconds, state[0], &main, &second)
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
    pub(crate) fn states(&self, seconds: f64) -> [ThermalState; 2] {
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

    /// When something of a machine (0 the alternator, 1 the second one) first
    /// passes a temperature \[°C\] until a time \[s\], looked at as by
    /// [`Trace::hottest`].
    pub(crate) fn passes(
        &self,
        until_s: f64,
        machine: usize,
        part: fn(&Temperatures) -> f64,
        limit_c: f64,
    ) -> Option<f64> {
        let first = if machine == 0 { MAIN } else { SECOND };
        let below_k = |seconds: f64| limit_c - part(&temperatures(&self.state(seconds), first));
        let mut before_s = 0.0;
        if below_k(before_s) < 0.0 {
            return Some(before_s);
        }
        for pair in self.points.windows(2) {
            let [a, b] = pair else { break };
            if a.seconds >= until_s {
                break;
            }
            for k in 1..=4 {
                let end_s = b.seconds.min(until_s);
                let at_s = a.seconds + (end_s - a.seconds) * f64::from(k) / 4.0;
                if below_k(at_s) < 0.0 {
                    return Some(bracketed_root(below_k, before_s, at_s, 1e-6));
                }
                before_s = at_s;
            }
        }
        None
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
                bracketed_root(
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
        let limit = |seconds: f64| self.flow(seconds).limit;
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
