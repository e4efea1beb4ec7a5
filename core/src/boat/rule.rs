//! When the engine is run, for the reckoning of a whole year.

use crate::boat::section;
use crate::boat::{Chemistry, Inputs};
use crate::boat::{choose, number, optional};
use crate::schema::{choice, effects};
use crate::units::{DAY, HOUR, PERCENT};

choice! {
    /// How the days aboard of a month come.
    Aboard {
        Stretch = "stretch", "One after the other";
        Weekends = "weekends", "A few in each week";
    }
}

section! {
    /// The rule by which the engine is started and stopped.
    Rule {
        start_pct: Option<f64> = optional("Start the engine at", PERCENT, 0.0, 99.0, "30 % lithium, 55 % lead; at least 5 above the lowest wanted", |w| Some(w.inputs.rule_start_pct()))
            .decided()
            .help("State of charge at which you would go and start it, or plug in at the dock. Lead that is emptied below half ages fast.");
        stop_pct: f64 = number("Stop it at", PERCENT, 1.0, 100.0, 80.0)
            .decided()
            .help("80 leaves room for the sun. Never above the daily charge target.");
        quiet_from_h: f64 = number("Quiet from", HOUR, 0.0, 24.0, 21.0)
            .decided()
            .help("No engine for charging from this hour of the clock…");
        quiet_to_h: f64 = number("Quiet until", HOUR, 0.0, 24.0, 8.0)
            .decided()
            .help("… to this one. The same hour twice: no quiet hours.");
        under_way_days_week: f64 = number("Days under way, of seven", DAY, 0.0, 7.0, 1.0)
            .help("Their loads are those of a day under way.");
        motoring_h: f64 = number("Engine hours on those days", HOUR, 0.0, 24.0, 2.0)
            .help("Run anyway, to get in and out; it charges as at charging speed.");
        aboard: Aboard = choose("Days aboard come", Aboard::OPTIONS, 0)
            .help("With a few in each week the boat lies alone in between: nothing is used, and the sun goes on charging the bank.");
    }
}

effects! {
    Rule: no effect
}

/// Points above the lowest state of charge wanted: what the boat uses until
/// somebody has started the engine.
const AHEAD_PCT: f64 = 5.0;
/// Where a lithium bank is charged again, common practice.
const LITHIUM_START_PCT: f64 = 30.0;
/// Highest figure the input takes \[%\].
const HIGHEST_PCT: f64 = 99.0;

impl Inputs {
    /// State of charge at which the engine is started \[%\]: as given, or by the
    /// chemistry and the lowest state of charge wanted.
    pub fn rule_start_pct(&self) -> f64 {
        let ahead_pct = (self.window_low_pct() + AHEAD_PCT).min(HIGHEST_PCT);
        self.rule.start_pct.unwrap_or(match self.bank.chemistry {
            Chemistry::Lfp => ahead_pct.max(LITHIUM_START_PCT),
            _ => ahead_pct,
        })
    }
}
