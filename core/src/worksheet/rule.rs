//! When the engine is run, for the reckoning of a whole year.

use crate::fields::units::{DAY, HOUR, PERCENT};
use crate::fields::{effects, number, section};

section! {
    /// The rule by which the engine is started and stopped.
    Rule {
        start_pct: f64 = number("Start the engine at", PERCENT, 0.0, 99.0, 30.0)
            .decided()
            .help("State of charge at which you would go and start it.");
        stop_pct: f64 = number("Stop it at", PERCENT, 1.0, 100.0, 80.0)
            .decided()
            .help("80 leaves room for the sun. Never above what is full for daily use.");
        quiet_from_h: f64 = number("Quiet from", HOUR, 0.0, 24.0, 21.0)
            .decided()
            .help("No engine for charging from this hour of the clock…");
        quiet_to_h: f64 = number("Quiet until", HOUR, 0.0, 24.0, 8.0)
            .decided()
            .help("… to this one. The same hour twice: no quiet hours.");
        under_way_days_week: f64 = number("Days under way, of seven", DAY, 0.0, 7.0, 1.0)
            .help("Their loads are those of a day under way.");
        motoring_h: f64 = number("Engine run on those days", HOUR, 0.0, 24.0, 2.0)
            .help("Run anyway, for getting out and in; it charges meanwhile as at charging speed.");
    }
}

effects! {
    Rule: no effect
}
