//! Whether the daily engine runs put back what the boat uses, and how low the
//! bank gets.

use crate::analysis::Analyses;
use crate::analysis::DayReport;
use crate::analysis::engine_day::{DayTrouble, MOST_RUNS};
use crate::boat::{Chemistry, Inputs, Worksheet, usual_charge_v};
use crate::findings::{Finding, Severity, add};
use crate::numerics::bracketed_root;
use crate::simulation::plant::Plant;
use crate::units::clock;
use crate::units::degrees;

/// Shown percents are whole: less than this below the lowest wanted is none \[%\].
const BELOW_PCT: f64 = 0.5;

/// Whether the daily engine runs put back what the boat uses, and how low the
/// bank gets.
pub(super) fn day_findings(
    sheet: &Worksheet,
    plant: &Plant,
    report: &Analyses,
    found: &mut Vec<Finding>,
) {
    let inputs = &sheet.inputs;
    let day = &report.day;
    match day.trouble {
        None => low_findings(inputs, day, found),
        // Said by the finding of cells too cold or too hot.
        Some(DayTrouble::CannotBeCharged) if inputs.charge_barred().is_some() => {}
        Some(DayTrouble::CannotBeCharged) => add(
            found,
            Severity::Stop,
            "cannot_be_charged",
            cannot_be_charged(inputs, plant),
        ),
        // Said by the findings of the management system and of the voltage.
        Some(DayTrouble::ManagementOpens) if report.run.opening.is_some() => {}
        Some(DayTrouble::WrongVoltage) => {}
        Some(DayTrouble::ManagementOpens) => add(
            found,
            Severity::Stop,
            "day_disconnects",
            "On the daily engine run the battery management system disconnects the bank with the alternator working. Keep current and voltage below what the bank may take: see its charge limit and charge voltage.".to_string(),
        ),
        // Said by the finding of the bank that is emptied.
        Some(DayTrouble::NothingLeft) if report.run.mid_bank_a < 0.0 => {}
        Some(DayTrouble::NothingLeft) => add(
            found,
            Severity::Stop,
            "day_not_covered",
            format!(
                "The boat draws {:.0} A while the engine runs, all that reaches the house side: nothing is left to charge the bank with. Switch loads off meanwhile, or bring more current to the house side.",
                report.run.house_load_a
            ),
        ),
        Some(DayTrouble::TooSlow) => add(
            found,
            Severity::Stop,
            "day_not_covered",
            format!(
                "Charging works, but a whole day of engine does not put back {:.0} A·h. Bring more current to the bank, use less, add panels, or stop at a lower state of charge than {} %.",
                day.need_ah, inputs.run.to_pct
            ),
        ),
        Some(DayTrouble::BankTooSmall) => add(
            found,
            Severity::Stop,
            "bank_too_small",
            format!(
                "A bank of {} A·h is too small for {:.0} A·h a day: even with an engine run every two hours it is empty before the next one. Fit a larger bank or use less.",
                inputs.bank.capacity_ah, day.need_ah
            ),
        ),
    }
}

/// Why nothing goes into the bank, and what to do.
fn cannot_be_charged(inputs: &Inputs, plant: &Plant) -> String {
    let bank_c = degrees(inputs.bank.temperature_c);
    if inputs.charge_limit_a() <= 0.0 {
        return format!(
            "The engine cannot charge this bank: at {bank_c} °C it may get no current. Warm its cells before you start the engine, with a heating mat or by moving the bank to a warmer place."
        );
    }
    let held_v = plant.held_v;
    let ends_pct =
        100.0 * bracketed_root(|charge| held_v - plant.bank.rest_v(charge), 0.0, 1.0, 1e-6);
    let usual_v = usual_charge_v(inputs) + inputs.compensation_v();
    let target_pct = inputs.run.to_pct;
    let reaches = if ends_pct < 1.0 {
        "does not charge this bank at all".to_string()
    } else {
        format!(
            "charges this bank to about {ends_pct:.0} % and no further; your target is {target_pct} %"
        )
    };
    let kind = match inputs.bank.chemistry {
        Chemistry::Lfp => "a lithium bank",
        _ => "a lead bank of this kind",
    };
    format!(
        "A charge voltage of {held_v:.1} V {reaches}. Set what the battery maker gives, {usual_v:.1} V is usual for {kind}, or stop at a lower state of charge."
    )
}

/// How low the bank gets, and how often the engine has to be started.
fn low_findings(inputs: &Inputs, day: &DayReport, found: &mut Vec<Finding>) {
    let (Some(from_pct), Some(run_hours)) = (day.from_pct, day.run_hours) else {
        return;
    };
    let (low_pct, to_pct) = (inputs.window_low_pct(), inputs.run.to_pct);
    // The capacity that holds what a day takes from the bank; a little less
    // does, as the engine carries the loads while it runs.
    let holds = |window_pct: f64| round_up(100.0 * day.need_ah / window_pct.max(1.0));
    if day.runs > 1 {
        let larger = if to_pct > low_pct {
            format!(
                " A bank of {:.0} A·h needs one run a day.",
                holds(to_pct - low_pct)
            )
        } else {
            String::new()
        };
        add(
            found,
            Severity::Mend,
            "several_runs_a_day",
            format!(
                "The bank of {} A·h does not hold a day's use: the engine has to be run {} a day, {} each time.{larger}",
                inputs.bank.capacity_ah,
                times(f64::from(day.runs)),
                clock(run_hours * 60.0)
            ),
        );
    }
    if from_pct >= low_pct - BELOW_PCT {
        return;
    }
    let remedy = if to_pct > low_pct + 1.0 {
        let runs = (f64::from(day.runs) * (to_pct - from_pct) / (to_pct - low_pct)).ceil();
        let oftener = if runs <= f64::from(MOST_RUNS) {
            format!("Run the engine {} a day, fit", times(runs))
        } else {
            "Fit".to_string()
        };
        format!(
            "{oftener} a bank of {:.0} A·h, add panels or use less.",
            holds(to_pct - low_pct)
        )
    } else {
        format!("Charge to more than {to_pct} %: that is no higher than the lowest you want.")
    };
    let why = match inputs.bank.chemistry {
        Chemistry::Lfp => "little is left for a day without engine",
        _ => "lead that is emptied so far every day ages fast",
    };
    add(
        found,
        Severity::Mend,
        "day_below_window",
        format!(
            "The bank falls to {:.0} % before each engine run, below the {low_pct:.0} % you want to keep: {why}. {remedy}",
            from_pct.max(0.0)
        ),
    );
}

/// "twice", "3 times".
fn times(runs: f64) -> String {
    if runs == 2.0 {
        "twice".to_string()
    } else {
        format!("{runs:.0} times")
    }
}

/// Up to the next whole ten ampere-hours.
fn round_up(capacity_ah: f64) -> f64 {
    10.0 * (0.1 * capacity_ah - 1e-6).ceil()
}
