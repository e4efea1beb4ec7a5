//! What each hour of a day brings: sun, other sources, use, and whether the engine may run or
//! runs anyway. Uses the rule.

use crate::analysis::energy::hours::DayHours;
use crate::analysis::year::rule::EngineSchedule;

/// What an hour brings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hour {
    /// From the panels \[A\].
    pub sun_a: f64,
    /// From the other sources \[A\].
    pub other_a: f64,
    /// Wanted by the loads \[A\].
    pub use_a: f64,
    /// Whether anybody is aboard.
    pub aboard: bool,
    /// No charging by the rule.
    pub quiet: bool,
    /// How much of it, from its beginning, the engine is run anyway \[h\].
    pub motoring_h: f64,
}

impl Hour {
    /// This hour with nobody aboard: nothing is used, and nothing but sun and other
    /// sources charges.
    pub fn alone(self) -> Hour {
        Hour {
            use_a: 0.0,
            aboard: false,
            quiet: true,
            motoring_h: 0.0,
            ..self
        }
    }

    /// This hour with so much more drawn \[A\].
    pub fn drawing(self, more_a: f64) -> Hour {
        Hour {
            use_a: self.use_a + more_a,
            ..self
        }
    }
}

/// The hours of a day with its motoring, from midnight.
pub fn hours(day: &DayHours, orders: &EngineSchedule) -> Vec<Hour> {
    let hour = |(at, ((sun_a, other_a), use_a)): (usize, ((&f64, &f64), &f64))| Hour {
        sun_a: *sun_a,
        other_a: *other_a,
        use_a: *use_a,
        aboard: true,
        quiet: orders.is_quiet(at),
        motoring_h: orders.motoring_h(at),
    };
    let hours = day.sun_ah.iter().zip(&day.other_ah).zip(&day.use_ah);
    hours.enumerate().map(hour).collect()
}
