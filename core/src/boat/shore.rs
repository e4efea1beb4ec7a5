//! Shore power.

use crate::boat::section;
use crate::boat::{Inputs, Worksheet};
use crate::boat::{choose, number};
use crate::schema::{choice, effects};
use crate::units::{AMPERE, PERCENT};

choice! {
    /// What puts back what the sun does not.
    Rest {
        Engine = "engine", "The engine";
        Shore = "shore", "Shore power; the engine is not run for it";
        Generator = "generator", "A generator with a mains charger; the engine is not run for it";
    }
}

section! {
    /// Shore power.
    Shore {
        rest: Rest = choose("What solar does not cover comes from", Rest::OPTIONS, 0)
            .help("With shore power you see how many days the bank lasts from dock to dock and how long it charges there; through the year it is charged at the dock by the start and stop rule. With a generator you see its hours and its fuel.");
        charger_a: f64 = number("Shore charger", AMPERE, 0.0, 1000.0, 30.0).nameplate()
            .help("Most it gives the house bank and what draws meanwhile; it tapers as the bank fills. 0 without one.");
        efficiency_pct: f64 = number("Shore charger's efficiency", PERCENT, 30.0, 99.0, 88.0).nameplate().advanced()
            .help("From the dock's kilowatt-hours to the bank's: 85 to 92 % for a modern charger (common practice). Taken for the charger on a generator as well.");
    }
}

effects! {
    Shore: no effect
}

impl Worksheet {
    /// Whether the engine ever runs: for charging, or to motor.
    pub fn engine_runs(&self) -> bool {
        let rule = &self.inputs.rule;
        let motors = rule.under_way_days_week > 0.0 && rule.motoring_h > 0.0;
        self.inputs.engine_charges() || motors || !self.legs.is_empty()
    }
}

impl Inputs {
    /// Whether the engine is run for charging at all.
    pub fn engine_charges(&self) -> bool {
        self.shore.rest == Rest::Engine
    }

    /// Whether the bank is charged at the dock in place of that.
    pub fn dock_charges(&self) -> bool {
        self.shore.rest == Rest::Shore
    }

    /// Most that a mains charger aboard gives the house bank, whichever mains it
    /// is on \[A\]; 0 without any.
    pub fn mains_charger_a(&self) -> f64 {
        let on_generator_a = match self.has_generator() {
            true => self.generator_charger_a(),
            false => 0.0,
        };
        self.shore.charger_a.max(on_generator_a)
    }
}
