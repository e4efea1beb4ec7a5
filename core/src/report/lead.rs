//! What a lead bank of the same capacity would have done with this alternator.

use serde::Serialize;

use crate::charge::alternators::Alternators;
use crate::charge::day::{DailyRun, daily_run};
use crate::charge::run::{Fineness, charge};
use crate::worksheet::{Bank, Chemistry, Inputs};

/// The same boat with a flooded lead bank of the same ampere-hours.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LeadReport {
    /// Engine time a day \[h\]; none when no day is long enough.
    pub engine_hours: Option<f64>,
    /// Time of the charging run to the same target \[min\].
    pub minutes_to_target: Option<f64>,
    /// Current into it half-way through the time \[A\].
    pub mid_bank_a: f64,
    /// Voltage at it then \[V\].
    pub mid_bank_v: f64,
    /// Its state of charge then \[%\].
    pub mid_charge_pct: f64,
    /// Mean current into it on the daily run \[A\].
    pub day_mean_bank_a: Option<f64>,
}

/// The same boat with that bank.
pub(crate) fn flooded(inputs: &Inputs) -> Inputs {
    Inputs {
        bank: Bank {
            chemistry: Chemistry::Flooded,
            nominal_v: inputs.bank.nominal_v,
            capacity_ah: inputs.bank.capacity_ah,
            temperature_c: inputs.bank.temperature_c,
            ..Bank::default()
        },
        ..*inputs
    }
}

/// None when the bank is of lead already.
pub(super) fn lead_report(
    inputs: &Inputs,
    alternators: &Alternators,
    load_a: f64,
    need_ah: f64,
) -> Option<LeadReport> {
    if inputs.bank.chemistry != Chemistry::Lfp {
        return None;
    }
    let old = flooded(inputs);
    let plant = alternators.plant(&old, load_a);
    let (from, to) = (old.run.from_pct / 100.0, old.run.to_pct / 100.0);
    let last_s = old.run.longest_h * 3600.0;
    let trace = charge(&plant, from, to, last_s, &Fineness::USUAL);
    let reached_s = trace.reaches(to);
    let mid = trace.sample(0.5 * reached_s.unwrap_or(trace.last_s()));
    let (engine_hours, day_mean_bank_a) = match daily_run(&plant, need_ah, to) {
        DailyRun::SunCovers => (Some(0.0), None),
        DailyRun::Hours {
            hours, gained_ah, ..
        } => (
            Some(hours),
            Some(gained_ah / hours.max(f64::MIN_POSITIVE) / plant.bank.charge_efficiency),
        ),
        DailyRun::Never => (None, None),
    };
    Some(LeadReport {
        engine_hours,
        day_mean_bank_a,
        minutes_to_target: reached_s.map(|seconds| seconds / 60.0),
        mid_bank_a: mid.moment.flow.bank_a,
        mid_bank_v: mid.moment.flow.bank_v,
        mid_charge_pct: 100.0 * mid.charge,
    })
}
