//! Everything aboard at the moment that a figure is of.

use crate::analysis::PartTemperatures;
use crate::boat::WhichAlternator;
use crate::explain::boat::Boat;
use crate::physics::losses::Losses;
use crate::physics::thermal::{Temperatures, ThermalNetwork};
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::heat_soak::soak;
use crate::simulation::moment::{Moment, ThermalState};
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::steady_state::LATE_S;

/// When a figure is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum When {
    /// It hangs on no moment.
    Any,
    /// All has settled, the engine warm and the bank half-way.
    Hot,
    /// The start of the run.
    Start,
    /// Half-way through the run's time.
    Middle,
    /// When the shafts take most.
    Hardest,
    /// When the part that is looked at of an alternator is hottest.
    Peak(WhichAlternator),
    /// In the hour after the engine stops, when the part is hottest.
    Soak,
    /// The minute somebody looks at.
    Moment,
}

/// A part that gets hot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Part {
    Winding,
    Case,
    Rectifier,
    Air,
}

impl Part {
    /// Its temperature.
    pub(super) fn of(self, t: &Temperatures) -> f64 {
        self.reads()(t)
    }

    fn reads(self) -> fn(&Temperatures) -> f64 {
        match self {
            Part::Winding => |t| t.winding_c,
            Part::Case => |t| t.body_c,
            Part::Rectifier => |t| t.rectifier_c,
            Part::Air => |t| t.air_c,
        }
    }

    /// Its temperature in a report.
    pub(super) fn reported(self, t: &PartTemperatures) -> f64 {
        match self {
            Part::Winding => t.winding_c,
            Part::Case => t.case_c,
            Part::Rectifier => t.rectifier_c,
            Part::Air => t.air_c,
        }
    }
}

/// Everything at one moment.
pub(super) struct Instant<'a> {
    pub(super) boat: &'a Boat<'a>,
    pub(super) when: When,
    /// The part that is looked at.
    pub(super) part: Part,
    /// The place in its list of the figure that is looked at: which belt, which
    /// run of cable, which month.
    pub(super) place: usize,
    /// Since the start of the run \[s\].
    pub(super) seconds: f64,
    /// State of charge, 0 to 1.
    pub(super) soc: f64,
    pub(super) states: PerAlternator<ThermalState>,
    pub(super) moment: Moment,
    /// The alternator that is looked at.
    pub(super) alternator: WhichAlternator,
    /// Its thermal network, temperatures and losses.
    pub(super) network: ThermalNetwork,
    pub(super) t: Temperatures,
    pub(super) losses: Losses,
    /// Whether the engine turns.
    pub(super) turning: bool,
    /// How long the engine has stood where it does not turn \[s\].
    pub(super) stopped_s: f64,
    pub(super) engine_c: f64,
    /// Heat that each alternator gives the air \[W\].
    pub(super) heat_w: PerAlternator<f64>,
}

impl<'a> Instant<'a> {
    /// A boat at a moment, as one of its parts is looked at.
    pub(super) fn new(boat: &'a Boat<'a>, when: When, part: Part) -> Instant<'a> {
        let (plant, space) = (&boat.plant, &boat.plant.space);
        let end_s = boat.report.analyses.run.minutes * 60.0;
        let alternator = match when {
            When::Peak(alternator) => alternator,
            _ => WhichAlternator::First,
        };
        let seconds = match when {
            When::Hot => LATE_S,
            When::Middle => 0.5 * end_s,
            When::Hardest => boat.report.analyses.run.peak_shaft_min * 60.0,
            When::Peak(_) => boat.trace.peak_s(end_s, alternator.index(), part.reads()),
            When::Moment => boat.minute * 60.0,
            When::Soak => end_s,
            When::Any | When::Start => 0.0,
        };
        let mut soc = boat.trace.soc_at(seconds);
        let mut states = boat.trace.thermal(seconds);
        if when == When::Hot {
            let run = &boat.inputs().run;
            soc = (run.from_pct + run.to_pct) / 200.0;
            let each = plant.alternators.iter().zip(&boat.hot.temperatures);
            states = each.map(|(alternator, t)| alternator.warm(t)).collect();
        }
        let mut moment = plant.moment(seconds, soc, &states);
        let mut engine_c = space.engine_c(seconds);
        let turning = when != When::Soak;
        let mut stopped_s = 0.0;
        if !turning {
            let soak = soak(plant, boat.trace, end_s);
            let then;
            (stopped_s, then) = if part == Part::Air {
                (soak.air_peak_s, soak.air_peak)
            } else {
                (soak.rectifier_peak_s, soak.rectifier_peak)
            };
            for (state, t) in states.iter_mut().zip(then.alternators) {
                state.t = t;
            }
            moment.losses.fill(Losses::default());
            engine_c = then.engine_c;
        }
        let network_of = |one: &AlternatorAtSpeed| match turning {
            true => one.network,
            false => one.network.fan_stopped(one.fan),
        };
        let each = plant.alternators.iter().zip(&states).zip(&moment.losses);
        let heat_w = each
            .map(|((one, state), losses)| network_of(one).heat_to_air_w(&state.t, losses))
            .collect();
        // One that is not there is looked at as if it were the first.
        let place = alternator.index();
        let place = if place < states.len() { place } else { 0 };
        Instant {
            boat,
            when,
            part,
            place: 0,
            seconds,
            soc,
            alternator,
            network: network_of(&plant.alternators[place]),
            t: states[place].t,
            losses: moment.losses[place],
            states,
            moment,
            turning,
            stopped_s,
            engine_c,
            heat_w,
        }
    }

    /// This instant, looked at for one place of a list.
    pub(super) fn nth(mut self, place: usize) -> Instant<'a> {
        self.place = place;
        self
    }

    /// Whether it is a settled state that does not come about.
    pub(super) fn is_unsettled(&self) -> bool {
        self.when == When::Hot && !self.boat.hot.stable
    }

    /// A figure of a settled state; none where nothing settles.
    pub(super) fn settled(&self, figure: f64) -> Option<f64> {
        (!self.is_unsettled()).then_some(figure)
    }

    /// Whether the first alternator is looked at while it turns: figures of
    /// others have no working of their own.
    pub(super) fn is_first(&self) -> bool {
        self.alternator == WhichAlternator::First && self.turning
    }

    /// Heat that goes by air, walls and engine for each kelvin \[W/K\].
    pub(super) fn air_w_k(&self) -> f64 {
        let space = &self.boat.plant.space;
        let flow_w_k = if self.turning {
            space.flow_w_k
        } else {
            space.after_w_k(self.stopped_s)
        };
        space.engine_w_k + flow_w_k + space.wall_w_k
    }

    /// Heat that goes into warming the part that is looked at \[W\], below 0 while
    /// it cools; nothing where it moves the balance by less than the hundredth
    /// of a kelvin.
    pub(super) fn stored_w(&self) -> f64 {
        let (m, space) = (&self.network, &self.boat.plant.space);
        let [winding, body, rectifier] = m.rates(&self.t, &self.losses);
        let (stored_w, sum_w_k) = match self.part {
            Part::Winding => (winding * m.winding_j_k, m.winding_body + m.winding_air),
            Part::Rectifier => (
                rectifier * m.rectifier_j_k,
                m.rectifier_body + m.rectifier_air,
            ),
            Part::Case => {
                let sum_w_k = m.winding_body + m.rectifier_body + m.body_air;
                (body * m.body_j_k, sum_w_k)
            }
            Part::Air => {
                let (air_c, heat_w) = (self.t.air_c, self.heat_w.iter().sum());
                let rate = if self.turning {
                    space.rate(self.seconds, air_c, heat_w)
                } else {
                    space.rates_stopped(self.stopped_s, air_c, self.engine_c, heat_w)[0]
                };
                (rate * space.heat_j_k, self.air_w_k())
            }
        };
        if stored_w.abs() < 0.01 * sum_w_k {
            0.0
        } else {
            stored_w
        }
    }
}

impl Boat<'_> {
    /// Everything at a moment, as one of its parts is looked at.
    pub(super) fn instant(&self, when: When, part: Part) -> Instant<'_> {
        Instant::new(self, when, part)
    }
}
