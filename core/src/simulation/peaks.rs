//! The most that alternators give and their shafts take in a run: looked for
//! at every step's end, then closer and closer around the highest of them.

use serde::Serialize;

use crate::simulation::moment::Moment;
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::trace::{Trace, TracePoint};

/// The most of one alternator in a run. Current and power may have their
/// highest at different moments.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PeakLoad {
    /// Most current it gives \[A\].
    pub amperes: f64,
    /// Its voltage at that moment \[V\].
    pub volts: f64,
    /// Most power its shaft takes \[W\].
    pub shaft_w: f64,
}

/// The most of a run.
#[derive(Debug, Clone, PartialEq)]
pub struct Peaks {
    /// Most power all shafts take together \[W\].
    pub shaft_w: f64,
    /// When that is \[s\].
    pub shaft_s: f64,
    /// The most of each alternator.
    pub loads: PerAlternator<PeakLoad>,
}

/// When a figure is at its highest \[s\], and the figure.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Highest {
    seconds: f64,
    figure: f64,
}

impl Trace {
    /// The most of the run until a time \[s\].
    pub fn peaks(&self, until_s: f64) -> Peaks {
        let shafts = self.highest_shaft(until_s);
        let alternators = 0..self.plant.alternators.len();
        let ends = self.step_ends(until_s);
        let ends: Vec<(f64, Moment)> = ends
            .map(|end| (end.seconds, end.state.moment(&self.plant, end.seconds)))
            .collect();
        Peaks {
            shaft_w: shafts.figure,
            shaft_s: shafts.seconds,
            loads: alternators
                .map(|at| self.peak_load(until_s, &ends, at))
                .collect(),
        }
    }

    /// The ends of steps before a time \[s\].
    fn step_ends(&self, until_s: f64) -> impl Iterator<Item = &TracePoint> {
        let last_s = until_s.min(self.last_s());
        let points = self.points.iter();
        points.take_while(move |point| point.seconds < last_s)
    }

    /// The most of one alternator, by its place in the list, until a time \[s\];
    /// `ends` is what happens at each step's end.
    fn peak_load(&self, until_s: f64, ends: &[(f64, Moment)], alternator: usize) -> PeakLoad {
        let amperes = |m: &Moment| m.flow.outputs[alternator].amperes;
        let shaft_w =
            |m: &Moment| m.flow.outputs[alternator].power_w() + m.losses[alternator].total_w();
        let current = self.highest(until_s, ends, amperes);
        let then = self.sample(current.seconds).moment;
        PeakLoad {
            amperes: current.figure,
            volts: then.flow.outputs[alternator].volts,
            shaft_w: self.highest(until_s, ends, shaft_w).figure,
        }
    }

    /// Most power all shafts take together until a time \[W\].
    pub fn peak_shaft_w(&self, until_s: f64) -> f64 {
        self.highest_shaft(until_s).figure
    }

    /// The most power of all shafts, and when. The power at each step's end was kept by the run.
    fn highest_shaft(&self, until_s: f64) -> Highest {
        let at = |seconds: f64| self.sample(seconds).moment.shaft_w();
        let ends = self.step_ends(until_s).map(|end| Highest {
            seconds: end.seconds,
            figure: end.rate.shaft_j,
        });
        self.highest_of(until_s, ends, at)
    }

    /// When a figure is at its highest until a time \[s\].
    fn highest(
        &self,
        until_s: f64,
        ends: &[(f64, Moment)],
        figure: impl Fn(&Moment) -> f64,
    ) -> Highest {
        let at_ends = ends.iter().map(|(seconds, moment)| Highest {
            seconds: *seconds,
            figure: figure(moment),
        });
        let at = |seconds: f64| figure(&self.sample(seconds).moment);
        self.highest_of(until_s, at_ends, at)
    }

    /// When a figure is at its highest until a time \[s\]: first of what it is at
    /// the ends of steps, then at any time around that.
    fn highest_of(
        &self,
        until_s: f64,
        ends: impl Iterator<Item = Highest>,
        at: impl Fn(f64) -> f64,
    ) -> Highest {
        /// Equal parts the time around the highest is looked at in, and how
        /// often: each time a quarter of the time is left.
        const LOOKS: u32 = 8;
        const ROUNDS: u32 = 4;
        let last_s = until_s.min(self.last_s());
        let end = Highest {
            seconds: last_s,
            figure: at(last_s),
        };
        let mut best = ends.fold(end, Highest::or);
        let before = |point: &&TracePoint| point.seconds < best.seconds;
        let mut from_s = self
            .points
            .iter()
            .rev()
            .find(before)
            .map_or(0.0, |point| point.seconds);
        let mut to_s = self
            .points
            .iter()
            .find(|point| point.seconds > best.seconds)
            .map_or(last_s, |point| point.seconds.min(last_s));
        for _ in 0..ROUNDS {
            let part_s = (to_s - from_s) / f64::from(LOOKS);
            for look in 1..LOOKS {
                let seconds = from_s + part_s * f64::from(look);
                let figure = at(seconds);
                best = best.or(Highest { seconds, figure });
            }
            from_s = from_s.max(best.seconds - part_s);
            to_s = to_s.min(best.seconds + part_s);
        }
        best
    }
}

impl Highest {
    /// The higher of two, this one where they are level.
    fn or(self, other: Highest) -> Highest {
        if other.figure > self.figure {
            other
        } else {
            self
        }
    }
}
