//! Finds whether the daily engine runs are enough.

use crate::analysis::Analyses;
use crate::analysis::DayReport;
use crate::analysis::engine_day::{DayTrouble, MOST_RUNS};
use crate::boat::{Inputs, Worksheet, usual_charge_v};
use crate::findings::day::{BelowWindowRemedy, DayFinding, NotCharged, NotCovered};
use crate::findings::{Finding, add};
use crate::numerics::bracketed_root;
use crate::simulation::plant::Plant;

/// Shown percents are whole: less than this below the lowest wanted is none \[%\].
const BELOW_PCT: f64 = 0.5;

/// Whether the daily engine runs put back what the boat uses, and how low the
/// bank gets.
pub(crate) fn day_findings(
    sheet: &Worksheet,
    plant: &Plant,
    report: &Analyses,
    found: &mut Vec<Finding>,
) {
    let inputs = &sheet.inputs;
    let day = &report.day;
    let Some(trouble) = day.trouble else {
        low_findings(inputs, day, found);
        return;
    };
    let elsewhere = match trouble {
        // Said by the finding of cells too cold or too hot.
        DayTrouble::CannotBeCharged => inputs.charge_barred().is_some(),
        // Said by the finding of the frozen bank.
        DayTrouble::BankFrozen => true,
        // Said by the finding of the management system.
        DayTrouble::ManagementOpens => report.run.opening.is_some(),
        // Said by the finding of the voltage.
        DayTrouble::WrongVoltage => true,
        // Said by the finding of the bank that is emptied.
        DayTrouble::NothingLeft => report.run.mid_bank_a < 0.0,
        DayTrouble::TooSlow | DayTrouble::BankTooSmall => false,
    };
    if elsewhere {
        return;
    }
    let need_ah = day.need_ah;
    let finding = match trouble {
        DayTrouble::CannotBeCharged => DayFinding::CannotBeCharged(not_charged(inputs, plant)),
        DayTrouble::ManagementOpens => DayFinding::DayDisconnects,
        DayTrouble::WrongVoltage | DayTrouble::BankFrozen => return,
        DayTrouble::NothingLeft => DayFinding::DayNotCovered(NotCovered::NothingLeft {
            house_a: report.run.house_load_a,
        }),
        DayTrouble::TooSlow => DayFinding::DayNotCovered(NotCovered::TooSlow {
            need_ah,
            target_pct: inputs.run.to_pct,
        }),
        DayTrouble::BankTooSmall => DayFinding::BankTooSmall {
            capacity_ah: inputs.bank.capacity_ah,
            need_ah,
        },
    };
    add(found, finding);
}

/// Why nothing goes into the bank.
fn not_charged(inputs: &Inputs, plant: &Plant) -> NotCharged {
    if inputs.charge_limit_a() <= 0.0 {
        return NotCharged::Temperature {
            bank_c: inputs.bank.temperature_c,
        };
    }
    let charge_v = plant.held_v;
    let ends = bracketed_root(|soc| charge_v - plant.bank.rest_v(soc), 0.0, 1.0, 1e-6);
    NotCharged::ChargeVoltage {
        chemistry: inputs.bank.chemistry,
        charge_v,
        usual_v: usual_charge_v(inputs) + inputs.compensation_v(),
        ends_pct: 100.0 * ends,
        target_pct: inputs.run.to_pct,
    }
}

/// How low the bank gets, and how often the engine has to be started.
fn low_findings(inputs: &Inputs, day: &DayReport, found: &mut Vec<Finding>) {
    let (Some(from_pct), Some(run_hours)) = (day.from_pct, day.run_hours) else {
        return;
    };
    let (low_pct, to_pct) = (inputs.window_low_pct(), inputs.run.to_pct);
    // The capacity that holds what a day takes from the bank; a little less
    // does, as the engine carries the loads while it runs.
    let holds_ah = |window_pct: f64| round_up(100.0 * day.need_ah / window_pct.max(1.0));
    if day.runs > 1 {
        add(
            found,
            DayFinding::SeveralRunsADay {
                capacity_ah: inputs.bank.capacity_ah,
                runs: day.runs,
                run_hours,
                one_run_ah: (to_pct > low_pct).then(|| holds_ah(to_pct - low_pct)),
            },
        );
    }
    if from_pct >= low_pct - BELOW_PCT {
        return;
    }
    let remedy = if to_pct > low_pct + 1.0 {
        let runs = (f64::from(day.runs) * (to_pct - from_pct) / (to_pct - low_pct)).ceil();
        BelowWindowRemedy::MoreRunsOrLargerBank {
            runs: (runs <= f64::from(MOST_RUNS)).then_some(runs),
            capacity_ah: holds_ah(to_pct - low_pct),
        }
    } else {
        BelowWindowRemedy::ChargeHigher { target_pct: to_pct }
    };
    add(
        found,
        DayFinding::DayBelowWindow {
            chemistry: inputs.bank.chemistry,
            from_pct,
            low_pct,
            remedy,
        },
    );
}

/// Up to the next whole ten ampere-hours.
fn round_up(capacity_ah: f64) -> f64 {
    10.0 * (0.1 * capacity_ah - 1e-6).ceil()
}
