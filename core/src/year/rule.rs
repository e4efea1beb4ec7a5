//! The user's rule for the engine, made ready.

use super::HOURS_A_DAY;
use crate::worksheet::Inputs;

/// Least distance between starting and stopping, in state of charge: an engine
/// is not started for less.
const LEAST_GAP: f64 = 0.01;
/// When the engine is started on a day under way, unless the hours of it do
/// not fit in the rest of the day.
const SETS_OUT_H: f64 = 9.0;

/// The rule. States of charge from 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Orders {
    /// Start the engine here.
    pub start: f64,
    /// Stop it here.
    pub stop: f64,
    /// Nothing charges beyond this.
    pub full: f64,
    /// The lowest wanted.
    pub low: f64,
    /// Hours of the day without engine.
    pub quiet: [bool; HOURS_A_DAY],
    /// How much of each hour of a day under way the engine is run for, from
    /// the hour's beginning \[h\].
    pub motoring_h: [f64; HOURS_A_DAY],
    under_way_days_week: f64,
}

impl Orders {
    /// From the worksheet.
    pub fn of(inputs: &Inputs) -> Orders {
        let rule = &inputs.rule;
        let full = inputs.window_high_pct() / 100.0;
        let stop = (rule.stop_pct / 100.0).min(full);
        let sets_out = SETS_OUT_H.min(HOURS_A_DAY as f64 - rule.motoring_h).floor();
        Orders {
            start: (rule.start_pct / 100.0).min(stop - LEAST_GAP).max(0.0),
            stop,
            full,
            low: inputs.window_low_pct() / 100.0,
            quiet: std::array::from_fn(|hour| {
                is_quiet(hour as f64 + 0.5, rule.quiet_from_h, rule.quiet_to_h)
            }),
            motoring_h: std::array::from_fn(|hour| {
                let since_h = hour as f64 - sets_out;
                if since_h < 0.0 {
                    0.0
                } else {
                    (rule.motoring_h - since_h).clamp(0.0, 1.0)
                }
            }),
            under_way_days_week: rule.under_way_days_week,
        }
    }

    /// Whether the boat is under way on a day: such days stand as evenly as
    /// whole days can.
    pub fn under_way(&self, day: u32) -> bool {
        let until = |day: u32| (f64::from(day) * self.under_way_days_week / 7.0).floor();
        until(day + 1) > until(day)
    }
}

/// Whether a time lies in quiet hours, which may reach over midnight.
fn is_quiet(time_h: f64, from_h: f64, to_h: f64) -> bool {
    if from_h <= to_h {
        (from_h..to_h).contains(&time_h)
    } else {
        time_h >= from_h || time_h < to_h
    }
}
