//! What engine and generator burn over the hours of a month. Uses nothing else of
//! the year.

use crate::boat::{Worksheet, mean_draw_a};
use crate::physics::fuel::{marginal_l, run_l};
use crate::physics::generator::{FOOT, burnt_l, load_share, part_load_l_h};
use crate::simulation::plant::Plant;

/// What engine and generator burn.
#[derive(Debug, Clone, Copy, Default)]
pub struct MonthFuel {
    /// To turn the engine \[L/h\].
    idle_l_h: f64,
    /// For the energy of the alternators' shafts \[L/kW·h\].
    shaft_l_kwh: f64,
    /// What the generator gives for hours on end \[kW\].
    generator_kw: f64,
    /// What it burns then \[L/h\].
    generator_full_l_h: f64,
}

impl MonthFuel {
    /// Those of a boat.
    pub fn of(sheet: &Worksheet) -> MonthFuel {
        let plant = Plant::new(&sheet.inputs, mean_draw_a(sheet));
        MonthFuel {
            idle_l_h: plant.fuel.idle_l_h,
            shaft_l_kwh: plant.marginal_l_kwh(),
            generator_kw: sheet.inputs.generator_kw(),
            generator_full_l_h: sheet.inputs.generator_full_l_h(),
        }
    }

    /// The engine's \[L\], for so many hours of charging and so much energy at the
    /// shafts \[kW·h\].
    pub fn engine_l(&self, charging_h: f64, shaft_kwh: f64) -> f64 {
        let shafts_l = marginal_l(self.shaft_l_kwh, shaft_kwh);
        run_l(self.idle_l_h, charging_h, shafts_l)
    }

    /// The generator's \[L\], for so many hours and so much energy \[kW·h\].
    pub fn generator_l(&self, hours: f64, kwh: f64) -> f64 {
        if hours <= 0.0 {
            return 0.0;
        }
        let load = load_share(kwh, hours, self.generator_kw);
        burnt_l(part_load_l_h(self.generator_full_l_h, FOOT, load), hours)
    }
}
