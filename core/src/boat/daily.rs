//! The day's use.

use crate::boat::section;
use crate::boat::{choose, number};
use crate::schema::{choice, effects};
use crate::units::{AMPERE_HOUR, HOUR, PERCENT, WATT};

choice! {
    /// Where the day's use comes from.
    Basis {
        Figure = "figure", "I know the day's ampere-hours";
        Listed = "listed", "Add it up from the list of loads";
    }
}

section! {
    /// The day's use.
    Daily {
        basis: Basis = choose("Day's use from", Basis::OPTIONS, 0).spread_pct(25.0)
            .help("A battery monitor shows a day's ampere-hours. Without one, list what runs and for how long.");
        use_ah: f64 = number("Day's use", AMPERE_HOUR, 1.0, 3000.0, 120.0).measured().spread_pct(25.0)
            .help("Ampere-hours at bank voltage from morning to morning at anchor, without what the sun put back. 80 to 250 on most 12 V cruising boats (common practice).")
            .when(|i| i.daily.basis == Basis::Figure);
        saved_pct: f64 = number("Saved by lighter loads", PERCENT, 0.0, 90.0, 0.0).advanced()
            .help("Taken off the day's use, whichever way it was found: what better insulation, lamps or habits would save.");
        night_share_pct: f64 = number("Used at night", PERCENT, 0.0, 100.0, 45.0).advanced()
            .help("Share of the day's use while no sun reaches the panels: anchor light, refrigerator, autopilot on a night passage.")
            .when(|i| i.daily.basis == Basis::Figure);
        inverter_efficiency_pct: f64 = number("Inverter efficiency", PERCENT, 50.0, 99.0, 90.0).nameplate().advanced()
            .help("For mains loads in the list. 88 to 92 % between a fifth and two thirds of its rating.")
            .when(|i| i.daily.basis == Basis::Listed);
        inverter_idle_w: f64 = number("Inverter idle draw", WATT, 0.0, 200.0, 12.0).nameplate().advanced()
            .help("What it takes with nothing plugged in; in its data sheet as no-load power.")
            .when(|i| i.daily.basis == Basis::Listed);
        inverter_on_h: f64 = number("Inverter left on", HOUR, 0.0, 24.0, 3.0).advanced()
            .help("Hours a day it is switched on, used or not. Counted only if the list holds a mains load.")
            .when(|i| i.daily.basis == Basis::Listed);
    }
}

effects! {
    Daily {
        use_ah: Up, Up;
        saved_pct: Down, Down;
        night_share_pct: Level, Level;
        inverter_efficiency_pct: Down, Down;
        inverter_idle_w: Up, Up;
        inverter_on_h: Up, Up;
    }
}
