//! What is switched in the course of a run: loads that draw for a time, and a
//! bank that is full.

use crate::boat::{Worksheet, house_load_a};
use crate::simulation::alternators::Alternators;
use crate::simulation::engine_load::{SwitchedLoad, anchor_loads};
use crate::simulation::plant::Plant;

impl Alternators {
    /// A worksheet's boat on its charging run at anchor.
    pub fn plant_of(&self, sheet: &Worksheet) -> Plant {
        self.plant(&sheet.inputs, house_load_a(sheet))
            .with_engine_loads(anchor_loads(sheet))
    }
}

impl Plant {
    /// This boat with loads that draw from the start of the run.
    pub fn with_engine_loads(self, engine_loads: Vec<SwitchedLoad>) -> Plant {
        Plant {
            engine_loads,
            ..self
        }
    }

    /// This boat with its engine loads shared by `runs` equal runs.
    pub(crate) fn in_runs(&self, runs: f64) -> Plant {
        let share = |load: &SwitchedLoad| SwitchedLoad {
            until_s: load.until_s / runs,
            ..*load
        };
        self.clone()
            .with_engine_loads(self.engine_loads.iter().map(share).collect())
    }

    /// What the engine loads draw at a time \[s\] after the start \[A\].
    pub fn engine_load_a(&self, seconds: f64) -> f64 {
        let on = self
            .engine_loads
            .iter()
            .filter(|load| seconds < load.until_s);
        on.fold(0.0, |sum, load| sum + load.amperes)
    }

    /// What the house and, through a DC-DC charger from the house bank, the start
    /// battery draw from the house bank at a time \[s\] after the start \[A\].
    pub fn taken_a(&self, seconds: f64) -> f64 {
        self.load_a + self.back_a + self.engine_load_a(seconds)
    }

    /// What the house has drawn until a time \[s\] after the start \[A·h\].
    pub fn house_ah(&self, seconds: f64) -> f64 {
        let switched = self.engine_loads.iter().map(|load| load.drawn_ah(seconds));
        self.load_a * seconds / 3600.0 + switched.fold(0.0, |sum, ah| sum + ah)
    }

    /// The time in which the house draws a charge \[A·h\], \[s\]; without end
    /// where it draws nothing.
    pub fn draws_in_s(&self, charge_ah: f64) -> f64 {
        let (mut begin_s, mut left_ah) = (0.0, charge_ah);
        for end_s in self.switched_until(f64::INFINITY) {
            let draws_a = self.load_a + self.engine_load_a(begin_s);
            let here_ah = draws_a * (end_s - begin_s) / 3600.0;
            if here_ah >= left_ah || end_s.is_infinite() {
                return begin_s + 3600.0 * left_ah / draws_a;
            }
            (begin_s, left_ah) = (end_s, left_ah - here_ah);
        }
        f64::INFINITY
    }

    /// The times until one \[s\] at which something is switched, in order, and
    /// that time itself.
    pub(super) fn switched_until(&self, last_s: f64) -> Vec<f64> {
        let loads = self.engine_loads.iter().map(|load| load.until_s);
        let mut times: Vec<f64> = loads
            .chain([self.full_s])
            .filter(|seconds| *seconds > 0.0 && *seconds < last_s)
            .collect();
        times.push(last_s);
        times.sort_by(f64::total_cmp);
        times.dedup();
        times
    }

    /// The boat as it is from a time \[s\] until something is switched next.
    pub(super) fn switched_at(&self, seconds: f64) -> Plant {
        // As one: each is asked for at every step.
        let on = SwitchedLoad {
            amperes: self.engine_load_a(seconds),
            until_s: f64::INFINITY,
        };
        Plant {
            engine_loads: vec![on],
            full_s: if seconds >= self.full_s {
                f64::NEG_INFINITY
            } else {
                f64::INFINITY
            },
            ..self.clone()
        }
    }
}
