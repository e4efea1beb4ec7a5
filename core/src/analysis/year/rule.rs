//! The user's rule for charging, made ready.

use crate::analysis::energy::hours::UnderWay;
use crate::analysis::engine_day::DayTrouble;
use crate::analysis::year::HOURS_A_DAY;
use crate::boat::{Inputs, Rest};

/// Least distance between starting and stopping, in state of charge: an engine
/// is not started for less.
const LEAST_GAP: f64 = 0.01;
/// When the engine is started on a day under way, unless the hours of it do
/// not fit in the rest of the day.
const SETS_OUT_H: f64 = 9.0;

/// What charges the bank when the rule says so.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Source {
    /// The engine, outside the quiet hours.
    Engine,
    /// Shore power: the boat lies at the dock for it, at any hour.
    Shore,
    /// A generator, outside the quiet hours and no longer than it may run a day.
    Generator,
    /// Nothing: neither engine nor mains can charge this bank, or they must not, and
    /// are not run for it.
    Nothing,
}

/// The rule. States of charge from 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EngineSchedule {
    /// Start the engine here.
    pub start: f64,
    /// Stop it here.
    pub stop: f64,
    /// Nothing charges beyond this.
    pub full: f64,
    /// The lowest wanted.
    pub low: f64,
    /// What charges the bank between starting and stopping.
    pub source: Source,
    quiet_from_h: f64,
    quiet_to_h: f64,
    sets_out_h: f64,
    motoring_h: f64,
    under_way_days_week: f64,
    /// How long a generator may run a day \[h\].
    pub generator_h: f64,
}

impl EngineSchedule {
    /// From the worksheet.
    pub fn of(inputs: &Inputs) -> EngineSchedule {
        let rule = &inputs.rule;
        let stop = rule.stop_pct.min(inputs.window_high_pct()) / 100.0;
        let start = inputs.rule_start_pct() / 100.0;
        EngineSchedule {
            start: start.min(stop - LEAST_GAP).max(0.0),
            stop,
            full: inputs.window_high_pct() / 100.0,
            source: match inputs.shore.rest {
                Rest::Engine => Source::Engine,
                Rest::Shore => Source::Shore,
                Rest::Generator => Source::Generator,
            },
            low: inputs.window_low_pct() / 100.0,
            quiet_from_h: rule.quiet_from_h,
            quiet_to_h: rule.quiet_to_h,
            sets_out_h: SETS_OUT_H.min(HOURS_A_DAY as f64 - rule.motoring_h).floor(),
            motoring_h: rule.motoring_h,
            under_way_days_week: rule.under_way_days_week,
            generator_h: inputs.genset.hours_day,
        }
    }

    /// This rule where the engine gives nothing: it is not run for charging then.
    pub fn without_engine(self, gives_nothing: bool) -> EngineSchedule {
        let source = match self.source {
            Source::Engine if gives_nothing => Source::Nothing,
            source => source,
        };
        EngineSchedule { source, ..self }
    }

    /// This rule where the mains give the bank nothing: no generator is run for that,
    /// and no charger is left on a frozen bank. At the dock one still feeds the house
    /// beside cells whose management system lets nothing in.
    pub fn without_mains(self, trouble: Option<DayTrouble>) -> EngineSchedule {
        let source = match (self.source, trouble) {
            (Source::Generator, Some(_)) | (Source::Shore, Some(DayTrouble::BankFrozen)) => {
                Source::Nothing
            }
            (source, _) => source,
        };
        EngineSchedule { source, ..self }
    }

    /// Whether nothing is charged by the rule in an hour of the day: its middle
    /// lies in the quiet hours, which may reach over midnight. Shore power knows
    /// no quiet hours.
    pub fn is_quiet(&self, hour: usize) -> bool {
        match self.source {
            Source::Shore => return false,
            Source::Nothing => return true,
            Source::Engine | Source::Generator => {}
        }
        let (from_h, to_h) = (self.quiet_from_h, self.quiet_to_h);
        let middle_h = hour as f64 + 0.5;
        if from_h <= to_h {
            (from_h..to_h).contains(&middle_h)
        } else {
            middle_h >= from_h || middle_h < to_h
        }
    }

    /// How long what charges by the rule may run a day, whatever the hour \[h\].
    pub fn charging_h(&self) -> f64 {
        match self.source {
            Source::Generator => self.generator_h,
            Source::Engine | Source::Shore | Source::Nothing => HOURS_A_DAY as f64,
        }
    }

    /// How much of an hour of a day under way the engine is run for, from its
    /// beginning \[h\].
    pub fn motoring_h(&self, hour: usize) -> f64 {
        let since_h = hour as f64 - self.sets_out_h;
        if since_h < 0.0 {
            0.0
        } else {
            (self.motoring_h - since_h).clamp(0.0, 1.0)
        }
    }

    /// Whether the boat is under way on a day aboard, counted from 0: such days
    /// stand as evenly as whole days can.
    pub fn under_way(&self, day: u32) -> bool {
        let until = |day: u32| (f64::from(day) * self.under_way_days_week / 7.0).floor();
        until(day + 1) > until(day)
    }
}

/// The hours under way of a day under way, and what the other sources bring in
/// them: from when the boat sets out on, or earlier where they would not fit in
/// the rest of the day.
pub fn hours_under_way(inputs: &Inputs) -> UnderWay {
    let hours = inputs.other.way_h;
    UnderWay {
        from_h: SETS_OUT_H.min(HOURS_A_DAY as f64 - hours),
        hours,
        amperes: inputs.other_under_way_a(),
    }
}
