//! The boat that is explained, and a moment of it.

use crate::analysis::PartTemperatures;
use crate::boat::Worksheet;
use crate::boat::house_load_a;
use crate::physics::losses::Losses;
use crate::physics::thermal::{Temperatures, ThermalNetwork};
use crate::report::Report;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::heat_soak::soak;
use crate::simulation::moment::{Moment, ThermalState};
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Trace, charge};
use crate::simulation::steady_state::{LATE_S, Settled, settled, warm};

/// A boat to explain.
pub(super) struct Boat<'a> {
    pub(super) sheet: &'a Worksheet,
    pub(super) report: &'a Report,
    pub(super) plant: Plant,
    pub(super) trace: Trace,
    pub(super) hot: Settled,
    pub(super) minute: f64,
}

/// Everything at one moment.
pub(super) struct Scene<'a> {
    pub(super) boat: &'a Boat<'a>,
    /// Which: `hot` when all has settled, `start`, `mid` and `hardest` of the
    /// run, a machine's `peak` or `second_peak`, the hour after it (`soak`),
    /// the `moment` somebody asks for; empty where none matters.
    pub(super) at: &'static str,
    pub(super) seconds: f64,
    pub(super) charge: f64,
    pub(super) machines: [ThermalState; 2],
    pub(super) moment: Moment,
    /// The machine that is looked at, the second one's number being 1, and its losses.
    pub(super) number: usize,
    pub(super) machine: ThermalNetwork,
    pub(super) t: Temperatures,
    pub(super) losses: Losses,
    pub(super) turning: bool,
    pub(super) engine_c: f64,
    /// Heat that each machine gives the air \[W\].
    pub(super) heat_w: [f64; 2],
    /// Heat that goes into warming the part that is looked at \[W\].
    pub(super) stored_w: f64,
    /// What carries heat to and from the air \[W/K\].
    pub(super) air_w_k: f64,
}

/// A part that gets hot.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Part {
    Winding,
    Case,
    Rectifier,
    Air,
}

impl Part {
    /// The part that a name ends in.
    pub(super) fn named(id: &str) -> Part {
        for (end, part) in [
            ("g_c", Part::Winding),
            ("e_c", Part::Case),
            ("er_c", Part::Rectifier),
        ] {
            if id.ends_with(end) {
                return part;
            }
        }
        Part::Air
    }

    fn of(self) -> fn(&Temperatures) -> f64 {
        match self {
            Part::Winding => |t| t.winding_c,
            Part::Case => |t| t.body_c,
            Part::Rectifier => |t| t.rectifier_c,
            Part::Air => |t| t.air_c,
        }
    }
}

/// The temperature that a name ends in, of a report's.
pub(super) fn of(t: &PartTemperatures, id: &str) -> f64 {
    match Part::named(id) {
        Part::Winding => t.winding_c,
        Part::Case => t.case_c,
        Part::Rectifier => t.rectifier_c,
        Part::Air => t.air_c,
    }
}

impl Boat<'_> {
    pub(super) fn new<'a>(sheet: &'a Worksheet, report: &'a Report) -> Boat<'a> {
        let run = &sheet.inputs.run;
        let alternators = &report.analyses.alternators;
        let plant = alternators.plant(&sheet.inputs, house_load_a(sheet));
        let (from, last_s) = (run.from_pct / 100.0, run.longest_h * 3600.0);
        Boat {
            sheet,
            report,
            trace: charge(&plant, from, 1.0, last_s, &Fineness::USUAL),
            hot: settled(&plant, 0.5 * (from + run.to_pct / 100.0)),
            plant,
            minute: 0.0,
        }
    }

    /// The second machine where a machine is asked for by number.
    pub(super) fn unit(&self, machine: usize) -> &AlternatorAtSpeed {
        match &self.plant.second {
            Some(second) if machine == 1 => &second.unit,
            _ => &self.plant.main,
        }
    }

    /// Everything at the moment of a working.
    #[inline(never)]
    pub(super) fn scene(&self, at: &'static str, id: &str) -> Scene<'_> {
        let (plant, space) = (&self.plant, &self.plant.space);
        let (run, part) = (&self.report.analyses.run, Part::named(id));
        let end_s = run.minutes * 60.0;
        let number = usize::from(at == "second_peak");
        let seconds = match at {
            "hot" => LATE_S,
            "mid" => 0.5 * end_s,
            "hardest" => run.peak_shaft_min * 60.0,
            "peak" | "second_peak" => self.trace.peak_s(end_s, number, part.of()),
            "moment" => self.minute * 60.0,
            "soak" => end_s,
            _ => 0.0,
        };
        let mut charge = self.trace.charge_at(seconds);
        let mut machines = self.trace.states(seconds);
        if at == "hot" {
            let run = &self.sheet.inputs.run;
            charge = (run.from_pct + run.to_pct) / 200.0;
            machines = [
                warm(&plant.main, &self.hot.temperatures),
                warm(self.unit(1), &self.hot.second),
            ];
        }
        let [main, second] = &machines;
        let mut moment = plant.moment(seconds, charge, main, second);
        let mut engine_c = space.engine_c(seconds);
        let (turning, mut flow_w_k) = (at != "soak", space.flow_w_k);
        if !turning {
            let [at_rectifier, at_air] = soak(plant, &self.trace, end_s).at_peak;
            let then = if part == Part::Air {
                at_air
            } else {
                at_rectifier
            };
            for (state, t) in machines.iter_mut().zip(then.machines) {
                state.t = t;
            }
            (moment.losses, moment.second_losses) = Default::default();
            (engine_c, flow_w_k) = (then.engine_c, space.after_w_k);
        }
        let mut scene = Scene {
            boat: self,
            at,
            seconds,
            charge,
            machines,
            moment,
            number: 0,
            machine: plant.main.machine,
            t: machines[0].t,
            losses: moment.losses,
            turning,
            engine_c,
            heat_w: [0.0; 2],
            stored_w: 0.0,
            air_w_k: space.engine_w_k + flow_w_k + space.wall_w_k,
        };
        // The one that is looked at comes last.
        for one in [1 - number, number] {
            let unit = self.unit(one);
            scene.number = one;
            scene.machine = unit.machine;
            if !turning {
                scene.machine = unit.machine.standing(unit.fan);
            }
            (scene.t, scene.losses) = (machines[0].t, moment.losses);
            if one == 1 {
                (scene.t, scene.losses) = (machines[1].t, moment.second_losses);
            }
            let there = one == 0 || plant.second.is_some();
            if let Some(heat_w) = scene.heat_w.get_mut(one).filter(|_| there) {
                *heat_w = scene.machine.heat_to_air_w(&scene.t, &scene.losses);
            }
        }
        scene.stored_w = scene.stored(part);
        scene
    }
}

impl Scene<'_> {
    /// Heat that goes into warming a part \[W\]; nothing where it moves the
    /// balance by less than the hundredth of a kelvin.
    fn stored(&self, part: Part) -> f64 {
        let (m, space) = (&self.machine, &self.boat.plant.space);
        let [winding, body, rectifier] = m.rates(&self.t, &self.losses);
        let (stored_w, sum_w_k) = match part {
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
                let (air_c, heat_w) = (self.machines[0].t.air_c, self.heat_w[0] + self.heat_w[1]);
                let rate = if self.turning {
                    space.rate(self.seconds, air_c, heat_w)
                } else {
                    space.rates_standing(air_c, self.engine_c, heat_w)[0]
                };
                (rate * space.heat_j_k, self.air_w_k)
            }
        };
        if stored_w.abs() < 0.01 * sum_w_k {
            0.0
        } else {
            stored_w
        }
    }
}
