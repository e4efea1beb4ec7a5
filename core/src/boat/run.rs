//! The charging run.

use crate::boat::section;
use crate::boat::{number, optional};
use crate::schema::effects;
use crate::units::{AMPERE, HOUR, PERCENT};

section! {
    /// From where to where the bank is charged, and what draws meanwhile.
    Run {
        from_pct: f64 = number("Charge from", PERCENT, 0.0, 99.0, 30.0).measured()
            .help("State of charge when the engine is started.");
        to_pct: f64 = number("Charge to", PERCENT, 1.0, 100.0, 90.0)
            .decided()
            .help("Where you would stop the engine.");
        house_load_a: Option<f64> = optional("House load meanwhile", AMPERE, 0.0, 1000.0, "the day's mean draw", |w| Some(crate::boat::steady_draw_a(w))).measured().spread_pct(50.0)
            .help("What the boat draws from the bank while charging; the bank gets the rest.");
        longest_h: f64 = number("Give up after", HOUR, 0.5, 24.0, 16.0).advanced()
            .decided()
            .help("The calculation of a run ends here if the target is not reached.");
    }
}

effects! {
    Run {
        from_pct: Depends("the hot current is that of the bank half-way: a fuller bank takes less, but at more volts"), Level;
        to_pct: Depends("as for the start"), Up;
        house_load_a: Up, Depends("it adds to the current where the charge voltage is the limit, and takes from it where heat is");
        longest_h: Level, Level;
    }
}
