//! Sources beside the sun that need no engine: wind, and what the water turns.

use crate::boat::Inputs;
use crate::boat::number;
use crate::boat::section;
use crate::schema::effects;
use crate::units::{AMPERE, HOUR};

section! {
    /// Wind, towed and hydro generators, each by the mean current it brings.
    OtherSources {
        wind_a: f64 = number("Wind generator at anchor", AMPERE, 0.0, 300.0, 0.0).measured().spread_pct(50.0)
            .help("Its average over day and night, calms and sheltered bays among them, not its peak: 2 to 6 A at 12 V for one of 400 W in a steady breeze (common practice). Add one that turns at anchor in a tidal stream. 0 without one.");
        wind_way_a: f64 = number("Wind generator under way", AMPERE, 0.0, 300.0, 0.0).measured().spread_pct(50.0)
            .help("Its average in the hours under way: less before the wind, when the boat runs away from it. Counts on days under way in the year.");
        water_a: f64 = number("Towed or hydro generator under way", AMPERE, 0.0, 300.0, 0.0).measured().spread_pct(40.0)
            .help("Its average in the hours under way at your usual speed: about 1 A at 12 V for each knot with a towed one, three times that with a large hydro generator (common practice). It slows the boat a little. Counts on days under way in the year.");
        way_h: f64 = number("Hours under way", HOUR, 0.0, 24.0, 24.0)
            .help("On a day under way: 24 on passage, 5 to 8 along a coast. For the rest of that day the wind generator gives what it does at anchor.")
            .when(|i| i.other.wind_way_a > 0.0 || i.other.water_a > 0.0);
    }
}

effects! {
    OtherSources {
        wind_a: Level, Down;
        wind_way_a: Level, Level;
        water_a: Level, Level;
        way_h: Level, Level;
    }
}

impl Inputs {
    /// What the other sources bring in an hour of a day at anchor \[A\].
    pub fn other_at_anchor_a(&self) -> f64 {
        self.other.wind_a
    }

    /// What they bring while the boat is under way \[A\].
    pub fn other_under_way_a(&self) -> f64 {
        self.other.wind_way_a + self.other.water_a
    }

    /// Whether there is any source beside sun, engine and mains.
    pub fn has_other_sources(&self) -> bool {
        self.other_at_anchor_a() > 0.0 || self.other_under_way_a() > 0.0
    }
}
