//! A charging run that was stepped through, and what is read off it.

use crate::numerics::bracketed_root;
use crate::numerics::hermite::Blend;
use crate::physics::thermal::Temperatures;
use crate::simulation::moment::{Flow, Moment, ThermalState};
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::plant::Plant;
use crate::simulation::run_state::RunState;

/// A run that was stepped through, from which anything can be read off.
#[derive(Debug, Clone, PartialEq)]
pub struct Trace {
    pub(super) plant: Plant,
    pub(super) points: Vec<TracePoint>,
}

/// The end of a step: time \[s\], state, and how fast that changes.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct TracePoint {
    pub(super) seconds: f64,
    pub(super) state: RunState,
    pub(super) rate: RunState,
}

/// The state between two neighbouring points.
fn between(a: &TracePoint, b: &TracePoint, seconds: f64) -> RunState {
    let blend = Blend::at(a.seconds, b.seconds, seconds);
    RunState::between(&blend, [&a.state, &a.rate], [&b.state, &b.rate])
}

/// The state of charge between two neighbouring points.
fn soc_between(a: &TracePoint, b: &TracePoint, seconds: f64) -> f64 {
    let blend = Blend::at(a.seconds, b.seconds, seconds);
    blend.of([a.state.soc, a.rate.soc], [b.state.soc, b.rate.soc])
}

/// One moment of a run.
#[derive(Debug, Clone, PartialEq)]
pub struct Sample {
    /// Time since the start \[s\].
    pub seconds: f64,
    /// State of charge, 0 to 1.
    pub soc: f64,
    /// How warm each alternator and its air are, and what its sensor feels.
    pub thermal: PerAlternator<ThermalState>,
    /// Currents, voltages, losses.
    pub moment: Moment,
}

impl Trace {
    /// The boat it is of.
    pub fn plant(&self) -> &Plant {
        &self.plant
    }

    /// When it ends \[s\].
    pub fn last_s(&self) -> f64 {
        self.points.last().map_or(0.0, |point| point.seconds)
    }

    /// How many steps it took.
    pub fn steps(&self) -> usize {
        self.points.len().saturating_sub(1)
    }

    pub(super) fn state(&self, seconds: f64) -> RunState {
        let after = self
            .points
            .partition_point(|point| point.seconds < seconds)
            .max(1);
        match (self.points.get(after - 1), self.points.get(after)) {
            (Some(a), Some(b)) => between(a, b, seconds),
            (Some(a), None) => a.state.clone(),
            _ => RunState::all(0.0, self.plant.alternators.len()),
        }
    }

    /// What flows at a time \[s\].
    pub(super) fn flow(&self, seconds: f64) -> Flow {
        let state = self.state(seconds);
        self.plant
            .flow(seconds, state.soc, &state.thermal(&self.plant))
    }

    /// What happens at a time \[s\].
    pub fn sample(&self, seconds: f64) -> Sample {
        let state = self.state(seconds);
        let thermal = state.thermal(&self.plant);
        Sample {
            seconds,
            soc: state.soc,
            moment: self.plant.moment(seconds, state.soc, &thermal),
            thermal,
        }
    }

    /// Air of the engine space at a time \[s\] \[°C\].
    pub(super) fn air_c(&self, seconds: f64) -> f64 {
        self.state(seconds).air_c
    }

    /// Temperatures of each alternator at a time \[s\].
    pub fn temperatures(&self, seconds: f64) -> PerAlternator<Temperatures> {
        self.state(seconds).temperatures()
    }

    /// How warm each alternator is at a time \[s\], and what its sensor feels.
    pub(crate) fn thermal(&self, seconds: f64) -> PerAlternator<ThermalState> {
        self.state(seconds).thermal(&self.plant)
    }

    /// A temperature of one of the alternators at a time \[s\]; far below any
    /// other where there is no such one \[°C\].
    fn node_c(&self, seconds: f64, alternator: usize, node: impl Fn(&Temperatures) -> f64) -> f64 {
        let t = self.state(seconds).temperatures_of(alternator);
        t.as_ref().map_or(f64::NEG_INFINITY, node)
    }

    /// When a node of an alternator, by its place in the list, is hottest until a
    /// time \[s\], looked at as by [`Trace::hottest`].
    pub(crate) fn peak_s(
        &self,
        until_s: f64,
        alternator: usize,
        node: impl Fn(&Temperatures) -> f64,
    ) -> f64 {
        let last_s = until_s.min(self.last_s());
        let mut peak = (self.node_c(last_s, alternator, &node), last_s);
        for pair in self.points.windows(2) {
            let [a, b] = pair else { break };
            if a.seconds >= until_s {
                break;
            }
            for k in 0..4 {
                let end = b.seconds.min(until_s);
                let at = a.seconds + (end - a.seconds) * f64::from(k) / 4.0;
                let t = between(a, b, at).temperatures_of(alternator);
                let here = t.as_ref().map_or(f64::NEG_INFINITY, &node);
                if here > peak.0 {
                    peak = (here, at);
                }
            }
        }
        peak.1
    }

    /// The hottest that the winding of an alternator, by its place in the list, may
    /// be until a time \[s\], where only its case is known of \[°C\].
    pub(crate) fn winding_may_be_c(&self, until_s: f64, alternator: usize) -> Option<f64> {
        let each = self.plant.alternators.get(alternator);
        let here = each.filter(|here| !here.winding_known())?;
        let node = |t: &Temperatures| here.winding_may_be_c(t).unwrap_or(t.winding_c);
        let hottest_s = self.peak_s(until_s, alternator, node);
        Some(self.node_c(hottest_s, alternator, node))
    }

    /// When a node of an alternator, by its place in the list, first passes a
    /// temperature \[°C\] until a time \[s\], looked at as by
    /// [`Trace::hottest`].
    pub(crate) fn passes(
        &self,
        until_s: f64,
        alternator: usize,
        node: impl Fn(&Temperatures) -> f64,
        limit_c: f64,
    ) -> Option<f64> {
        let below_k = |seconds: f64| limit_c - self.node_c(seconds, alternator, &node);
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
    pub fn reaches(&self, soc: f64) -> Option<f64> {
        let first = self.points.first()?;
        if first.state.soc >= soc {
            return Some(0.0);
        }
        self.points.windows(2).find_map(|pair| {
            let [a, b] = pair else { return None };
            (b.state.soc >= soc).then(|| {
                bracketed_root(
                    |seconds| soc - soc_between(a, b, seconds),
                    a.seconds,
                    b.seconds,
                    1e-12,
                )
            })
        })
    }

    /// State of charge at a time \[s\], 0 to 1.
    pub fn soc_at(&self, seconds: f64) -> f64 {
        self.state(seconds).soc
    }

    /// Ampere-hours the alternators gave until a time \[s\].
    pub fn alternator_ah(&self, seconds: f64) -> f64 {
        self.state(seconds).given_as / 3600.0
    }

    /// Kilowatt-hours their shafts took until a time \[s\].
    pub fn shaft_kwh(&self, seconds: f64) -> f64 {
        self.state(seconds).shaft_j / 3.6e6
    }

    /// Hottest that each node of each alternator and its air get until a time \[s\].
    pub fn hottest(&self, seconds: f64) -> PerAlternator<Temperatures> {
        let mut hottest = self.temperatures(seconds.min(self.last_s()));
        for pair in self.points.windows(2) {
            let [a, b] = pair else { break };
            if a.seconds >= seconds {
                break;
            }
            let end = b.seconds.min(seconds);
            // The cubics bulge between step ends: look a few times inside.
            for k in 0..4 {
                let at = a.seconds + (end - a.seconds) * f64::from(k) / 4.0;
                let here = between(a, b, at).temperatures();
                for (hottest, here) in hottest.iter_mut().zip(&here) {
                    *hottest = hottest.hotter(here);
                }
            }
        }
        hottest
    }
}
