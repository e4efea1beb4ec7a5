//! Whether the bank gets what it needs.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::analysis::RunReport;
use crate::boat::{Chemistry, Inputs, RegulatorKind, WayKind, Worksheet};
use crate::findings::{Code, Finding, Severity, add};
use crate::simulation::Limit;

/// The bank gets less or more than it should.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ChargeFinding {
    /// The boat draws more than the alternator gives.
    BankIsEmptied {
        /// What it draws \[A\].
        house_a: f64,
    },
    /// The run ends before the target.
    TargetNotReached {
        /// Length of the run \[min\].
        run_min: f64,
        /// State of charge at its end \[%\].
        end_pct: f64,
        /// State of charge wanted \[%\].
        target_pct: f64,
        /// Whether it is the charge voltage that keeps the current down.
        by_voltage: bool,
    },
    /// The regulator follows the bank's limit over a data link.
    BankLimitBinds {
        /// What the bank allows \[A\].
        limit_a: f64,
    },
    /// More flows into a bank of lead than its maker allows.
    LeadOverCurrent {
        /// Most that flows into it \[A\].
        bank_a: f64,
        /// What it may take \[A\].
        limit_a: f64,
        /// What to set.
        remedy: LowerTo,
    },
    /// Shore power is to charge the bank, and does not.
    ShoreNotEnough {
        /// What the mains charger gives; 0 without one \[A\].
        charger_a: f64,
        /// What it leaves to be put back a day \[A·h\].
        day_ah: f64,
    },
    /// The DC-DC charger never starts.
    ConverterLockedOut {
        /// Voltage of the start battery with the engine running \[V\].
        start_v: f64,
        /// Voltage below which the charger locks out \[V\].
        lockout_v: f64,
    },
    /// The DC-DC charger asks for more than the alternator gives.
    ConverterStarves {
        /// Share of the run in which it does \[%\].
        share_pct: f64,
        /// Voltage at which the charger locks out \[V\].
        lockout_v: f64,
    },
    /// The DC-DC charger is large for the alternator.
    ConverterLarge {
        /// Its output \[A\].
        charger_a: f64,
        /// What it takes \[W\].
        takes_w: f64,
        /// What the alternator is rated for \[W\].
        rated_w: f64,
    },
}

/// What to set to a bank's limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LowerTo {
    /// The DC-DC charger's output.
    ChargerOutput,
    /// The external regulator's current cap.
    CurrentCap,
    /// The current cap of an external regulator that is to be fitted.
    NewRegulatorsCap,
}

impl ChargeFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            ChargeFinding::BankIsEmptied { .. }
            | ChargeFinding::ShoreNotEnough { .. }
            | ChargeFinding::ConverterLockedOut { .. } => Severity::Danger,
            ChargeFinding::TargetNotReached { .. }
            | ChargeFinding::LeadOverCurrent { .. }
            | ChargeFinding::ConverterStarves { .. } => Severity::Fix,
            ChargeFinding::BankLimitBinds { .. } | ChargeFinding::ConverterLarge { .. } => {
                Severity::Note
            }
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            ChargeFinding::BankIsEmptied { .. } => Code::BankIsEmptied,
            ChargeFinding::TargetNotReached { .. } => Code::TargetNotReached,
            ChargeFinding::BankLimitBinds { .. } => Code::BankLimitBinds,
            ChargeFinding::LeadOverCurrent { .. } => Code::LeadOverCurrent,
            ChargeFinding::ShoreNotEnough { .. } => Code::ShoreNotEnough,
            ChargeFinding::ConverterLockedOut { .. } => Code::ConverterLockedOut,
            ChargeFinding::ConverterStarves { .. } => Code::ConverterStarves,
            ChargeFinding::ConverterLarge { .. } => Code::ConverterLarge,
        }
    }
}

/// Whether the bank gets what it needs.
pub(super) fn charge_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let run = &report.run;
    let limit_a = inputs.charge_limit_a();
    let wrong_voltage = inputs.alternators().any(|installed| !installed.fits());
    if run.mid_bank_a < 0.0 && wrong_voltage {
        // Said by the finding of the voltage.
    } else if !sheet.engine_runs() {
        // Nobody waits for the bank with an engine that never runs.
    } else if run.mid_bank_a < 0.0 {
        let house_a = run.house_load_a;
        add(found, ChargeFinding::BankIsEmptied { house_a });
    } else if inputs.engine_charges()
        && run.opening.is_none()
        && !run.bank_frozen
        && limit_a > 0.0
        && run.minutes_to_target.is_none()
        && inputs.run.to_pct > inputs.run.from_pct
    {
        add(
            found,
            ChargeFinding::TargetNotReached {
                run_min: run.minutes,
                end_pct: run.end_charge_pct,
                target_pct: inputs.run.to_pct,
                by_voltage: report.output.hot_limit == Limit::ChargeVoltage,
            },
        );
    }
    let shore = &report.shore;
    // Cold cells and a frozen bank have findings of their own.
    let may = inputs.charge_barred().is_none() && shore.frozen_pct.is_none();
    if inputs.dock_charges() && shore.day_ah > 0.0 && shore.fill_h.is_none() && may {
        let (charger_a, day_ah) = (inputs.shore.charger_a, shore.day_ah);
        add(found, ChargeFinding::ShoreNotEnough { charger_a, day_ah });
    }
    let held = run.limit_shares.iter().any(|s| s.limit == Limit::BankLimit);
    if held && limit_a > 0.0 {
        add(found, ChargeFinding::BankLimitBinds { limit_a });
    }
    lead_current(inputs, run, found);
    if inputs.way.kind == WayKind::Converter {
        charger_findings(inputs, run, found);
    }
}

/// Whether a lead bank gets more than its maker allows: nothing opens.
fn lead_current(inputs: &Inputs, run: &RunReport, found: &mut Vec<Finding>) {
    let limit_a = inputs.charge_limit_a();
    let bank_a = run
        .series
        .iter()
        .map(|moment| moment.bank_a)
        .fold(0.0, f64::max);
    if inputs.bank.chemistry == Chemistry::Lfp || bank_a <= 1.02 * limit_a + 0.5 {
        return;
    }
    let remedy = match (inputs.way.kind, inputs.reg.kind) {
        (WayKind::Converter, _) => LowerTo::ChargerOutput,
        (WayKind::Direct, RegulatorKind::External) => LowerTo::CurrentCap,
        (WayKind::Direct, RegulatorKind::Internal) => LowerTo::NewRegulatorsCap,
    };
    add(
        found,
        ChargeFinding::LeadOverCurrent {
            bank_a,
            limit_a,
            remedy,
        },
    );
}

/// Whether the DC-DC charger and the alternator before it get on with each other.
fn charger_findings(inputs: &Inputs, run: &RunReport, found: &mut Vec<Finding>) {
    let way = &inputs.way;
    let (start_v, lockout_v) = (way.start_v, way.lockout_v);
    let starved = |limit: Limit| matches!(limit, Limit::AlternatorOutput | Limit::Temperature);
    if start_v < lockout_v {
        add(
            found,
            ChargeFinding::ConverterLockedOut { start_v, lockout_v },
        );
    } else if let Some(share) = run.limit_shares.iter().find(|s| starved(s.limit))
        && share.share_pct > 5.0
    {
        let share_pct = share.share_pct;
        add(
            found,
            ChargeFinding::ConverterStarves {
                share_pct,
                lockout_v,
            },
        );
    }
    // In watts: its two sides need not be of one voltage.
    let charger_a = inputs.charger_a();
    let (takes_w, rated_w) = (
        inputs.charger_takes_w(charger_a),
        inputs.first_alternator().rated_w(),
    );
    if !inputs.leaves_enough(charger_a, rated_w) {
        add(
            found,
            ChargeFinding::ConverterLarge {
                charger_a,
                takes_w,
                rated_w,
            },
        );
    }
}
