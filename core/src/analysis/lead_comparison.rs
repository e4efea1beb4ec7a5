//! What a lead bank of the same capacity would have done with this alternator.

use serde::Serialize;

use crate::analysis::energy::energy;
use crate::analysis::engine_day::{DailyRun, DayNeed, daily_run};
use crate::analysis::when_asked::WhenAsked;
use crate::boat::house_load_a;
use crate::boat::{Bank, Chemistry, Inputs, Worksheet};
use crate::simulation::alternators::Alternators;
use crate::simulation::run::{Fineness, charge};

/// The flooded lead bank beside this one; none for a bank of lead.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(transparent)]
pub struct LeadComparison(Option<WhenAsked<LeadReport>>);

impl LeadComparison {
    pub(super) fn new(sheet: &Worksheet, alternators: &Alternators) -> LeadComparison {
        let is_lithium = sheet.inputs.bank.chemistry == Chemistry::Lfp;
        let with_lead = || Worksheet {
            inputs: flooded(&sheet.inputs),
            loads: sheet.loads.clone(),
            ..Worksheet::default()
        };
        LeadComparison(is_lithium.then(|| {
            let (sheet, alternators) = (with_lead(), alternators.clone());
            WhenAsked::new(move || lead_report(&sheet, &alternators))
        }))
    }

    /// Whether there is one: a bank of lead already has none.
    pub fn applies(&self) -> bool {
        self.0.is_some()
    }

    /// What it would have done; none when the bank is of lead already.
    pub fn report(&self) -> Option<LeadReport> {
        self.0.as_ref().map(|answer| **answer)
    }
}

/// The boat with a flooded lead bank of its own bank's ampere-hours.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LeadReport {
    /// What the engine must put back into it a day \[A·h\]: more than into
    /// lithium where sun goes through the bank.
    pub need_ah: f64,
    /// What the boat draws while charging \[A\].
    pub house_load_a: f64,
    /// Engine time a day \[h\]; none when there is no daily run.
    pub engine_hours: Option<f64>,
    /// In how many equal runs; 0 without any.
    pub runs: u32,
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

/// The boat with a flooded lead bank of its own bank's ampere-hours and voltage.
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

/// What a boat with a lead bank does.
fn lead_report(sheet: &Worksheet, alternators: &Alternators) -> LeadReport {
    let old = &sheet.inputs;
    let house_load_a = house_load_a(sheet);
    let plant = alternators.plant_of(sheet);
    let (from, to) = (old.run.from_pct / 100.0, old.run.to_pct / 100.0);
    let last_s = old.run.longest_h * 3600.0;
    let trace = charge(&plant, from, to, last_s, &Fineness::USUAL);
    let reached_s = trace.reaches(to);
    let mid = trace.sample(0.5 * reached_s.unwrap_or(trace.last_s()));
    let need = DayNeed::of(old, &energy(sheet));
    let (engine_hours, runs, day_mean_bank_a) = match daily_run(&plant, &need) {
        DailyRun::SunCovers => (Some(0.0), 0, None),
        DailyRun::Runs(runs) => (
            Some(runs.hours()),
            runs.runs,
            Some(runs.mean_bank_a(plant.bank.charge_efficiency)),
        ),
        DailyRun::Trouble(_) => (None, 0, None),
    };
    LeadReport {
        need_ah: need.need_ah,
        house_load_a,
        engine_hours,
        runs,
        day_mean_bank_a,
        minutes_to_target: reached_s.map(|seconds| seconds / 60.0),
        mid_bank_a: mid.moment.flow.bank_a,
        mid_bank_v: mid.moment.flow.bank_v,
        mid_charge_pct: 100.0 * mid.soc,
    }
}
