//! Finds what harms a bank of lead.

use crate::analysis::Analyses;
use crate::analysis::engine_day::DayTrouble;
use crate::boat::{Inputs, RegulatorKind, WayKind, Worksheet};
use crate::findings::lead::{FrozenWhen, HOT_C, LeadFinding, LeadHigh, LeadLow, SetBy};
use crate::findings::{Finding, add};
use crate::physics::battery::{LeadKind, lead_freezes_c};

/// Nearer than this to its freezing point a bank is warned of it \[K\].
const NEAR_FREEZING_K: f64 = 10.0;
/// A state of charge is safe with so much left to the freezing point \[K\].
const SAFE_K: f64 = 5.0;
/// Above this state of charge a lead bank counts as full \[%\].
const FULL_PCT: f64 = 98.0;

/// What there is to say of a bank of lead; nothing of lithium.
pub(crate) fn lead_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let Some(kind) = inputs.bank.chemistry.lead() else {
        return;
    };
    let bank_c = inputs.bank.temperature_c;
    if bank_c > HOT_C {
        add(found, LeadFinding::LeadHot { bank_c });
    }
    freezing(inputs, report, found);
    let kind = InBlocks::of(inputs, &kind);
    too_much(inputs, &kind, found);
    too_little(inputs, &kind, found);
    never_full(inputs, report, found);
}

/// Voltages of the whole bank at its temperature.
struct InBlocks {
    blocks: f64,
    /// What fills it at least \[V\].
    least_v: f64,
    /// What it withstands \[V\].
    most_v: f64,
    /// What it withstands at 25 °C \[V\].
    most_25c_v: f64,
}

impl InBlocks {
    fn of(inputs: &Inputs, kind: &LeadKind) -> InBlocks {
        let blocks = inputs.bank.nominal_v.blocks();
        let shift_v = inputs.lead_shift_v();
        InBlocks {
            blocks,
            least_v: kind.least_v * blocks + shift_v,
            most_v: kind.most_v * blocks + shift_v,
            most_25c_v: kind.most_v * blocks,
        }
    }
}

/// Whether a built-in regulator charges the bank, at a voltage of its own.
fn built_in(inputs: &Inputs) -> bool {
    inputs.engine_charges()
        && inputs.way.kind == WayKind::Direct
        && inputs.reg.kind == RegulatorKind::Internal
}

/// What everything that follows the bank's settings charges it to \[V\].
fn set_v(inputs: &Inputs) -> f64 {
    inputs.charge_v() + inputs.compensation_v()
}

/// Whether anything else than a built-in regulator charges the bank.
fn others(inputs: &Inputs) -> bool {
    !built_in(inputs) || inputs.mains_charger_a() > 0.0 || inputs.sun.panel_w > 0.0
}

fn too_much(inputs: &Inputs, kind: &InBlocks, found: &mut Vec<Finding>) {
    let regulator_v = built_in(inputs).then(|| inputs.held_v());
    let others_v = others(inputs).then(|| set_v(inputs));
    let over = |v: &f64| *v > kind.most_v + 1e-9;
    let (charge_v, set_by) = match (regulator_v.filter(over), others_v.filter(over)) {
        (Some(held_v), other) if other.is_none_or(|v| v <= held_v) => {
            (held_v, SetBy::BuiltInRegulator)
        }
        (_, Some(held_v)) => (held_v, SetBy::Setting),
        _ => return,
    };
    add(
        found,
        LeadFinding::LeadOvervoltage(LeadHigh {
            chemistry: inputs.bank.chemistry,
            set_by,
            charge_v,
            bank_c: inputs.bank.temperature_c,
            highest_v: kind.most_v,
            highest_25c_v: kind.most_25c_v,
            blocks: kind.blocks,
        }),
    );
}

fn too_little(inputs: &Inputs, kind: &InBlocks, found: &mut Vec<Finding>) {
    let (charge_v, set_by) = if built_in(inputs) {
        (inputs.held_v(), SetBy::BuiltInRegulator)
    } else {
        (set_v(inputs), SetBy::Setting)
    };
    if kind.least_v - charge_v < 0.01 * kind.blocks {
        return;
    }
    let others_fill = set_v(inputs) >= kind.least_v;
    add(
        found,
        LeadFinding::LeadUndervoltage(LeadLow {
            chemistry: inputs.bank.chemistry,
            set_by,
            charge_v,
            bank_c: inputs.bank.temperature_c,
            least_v: kind.least_v,
            blocks: kind.blocks,
            others_fill,
            panels_fill: inputs.sun.panel_w > 0.0 && others_fill,
        }),
    );
}

/// Lowest state of charge the bank gets to, 0 to 1.
fn lowest_soc(inputs: &Inputs, report: &Analyses) -> f64 {
    let day_pct = report.day.from_pct.unwrap_or(100.0);
    let mut lowest_pct = inputs.window_low_pct();
    if inputs.engine_charges() {
        lowest_pct = lowest_pct.min(inputs.run.from_pct);
    }
    lowest_pct.min(day_pct).clamp(0.0, 100.0) / 100.0
}

/// The state of charge, 0 to 1, at which the engine finds the bank frozen; none
/// where it does not, or is not run.
fn frozen_at_start(inputs: &Inputs, report: &Analyses) -> Option<f64> {
    let day = &report.day;
    if !inputs.engine_charges() {
        None
    } else if report.run.bank_frozen {
        Some(inputs.run.from_pct / 100.0)
    } else if day.trouble == Some(DayTrouble::BankFrozen) {
        Some(day.from_pct? / 100.0)
    } else {
        None
    }
}

fn freezing(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let bank_c = inputs.bank.temperature_c;
    let soc = lowest_soc(inputs, report);
    let (freezes_c, flat_freezes_c) = (lead_freezes_c(soc), lead_freezes_c(0.0));
    let lowest_pct = 100.0 * soc;
    if let Some(frozen_soc) = frozen_at_start(inputs, report) {
        add(
            found,
            LeadFinding::LeadFrozen {
                when: FrozenWhen::EngineStarts,
                bank_c,
                lowest_pct: 100.0 * frozen_soc,
                freezes_c: lead_freezes_c(frozen_soc),
                safe_pct: safe_pct(bank_c),
            },
        );
    } else if bank_c <= freezes_c {
        add(
            found,
            LeadFinding::LeadFrozen {
                when: FrozenWhen::AtTheLowest,
                bank_c,
                lowest_pct,
                freezes_c,
                safe_pct: safe_pct(bank_c),
            },
        );
    } else if bank_c <= (freezes_c + NEAR_FREEZING_K).max(flat_freezes_c) {
        add(
            found,
            LeadFinding::LeadMayFreeze {
                bank_c,
                lowest_pct,
                freezes_c,
                flat_freezes_c,
            },
        );
    }
}

/// The state of charge that keeps the acid from freezing, in steps of 5 \[%\].
fn safe_pct(bank_c: f64) -> Option<f64> {
    (0..=20)
        .map(f64::from)
        .find(|step| lead_freezes_c(step / 20.0) < bank_c - SAFE_K)
        .map(|step| 5.0 * step)
}

fn never_full(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let target_pct = inputs.run.to_pct;
    let panels_fill = inputs.sun.panel_w > 0.0 && report.energy.rest_ah <= 0.0;
    if target_pct >= FULL_PCT || !inputs.engine_charges() || panels_fill {
        return;
    }
    add(
        found,
        LeadFinding::LeadNeverFull {
            target_pct,
            to_full_h: to_full_h(inputs),
        },
    );
}

/// Hours from where the daily charge ends to full, at the charge voltage: the
/// missing charge falls to a third in each of its tail's hours.
fn to_full_h(inputs: &Inputs) -> f64 {
    let Some(kind) = inputs.lead_cells() else {
        return 0.0;
    };
    let missing = (100.0 - inputs.run.to_pct) / (100.0 - FULL_PCT);
    kind.taper_h * missing.max(1.0).ln() / kind.efficiency
}
