//! Whether a bank of lead may be charged like this, and is ever full.

use crate::analysis::Analyses;
use crate::boat::{Chemistry, Inputs, RegulatorKind, WayKind, Worksheet};
use crate::findings::{Finding, Severity, add};
use crate::physics::battery::{LeadKind, lead_freezes_c};
use crate::units::{degrees, volts};

/// Above this a lead battery may run away \[°C\]; common practice, no source.
const HOT_C: f64 = 50.0;
/// How far above what its kind withstands a 12 V block is harmed within days
/// \[V\], and how far below what fills it it stays far from full. Own reasoning.
const FAR_ABOVE_V: f64 = 0.4;
/// See [`FAR_ABOVE_V`].
const FAR_BELOW_V: f64 = 0.2;
/// Nearer than this to its freezing point a bank is warned of it \[K\].
const NEAR_FREEZING_K: f64 = 10.0;
/// Above this state of charge a lead bank counts as full \[%\].
const FULL_PCT: f64 = 98.0;

/// What there is to say of a bank of lead; nothing of lithium.
pub(super) fn lead_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let Some(kind) = inputs.bank.chemistry.lead() else {
        return;
    };
    if inputs.bank.temperature_c > HOT_C {
        add(
            found,
            Severity::Stop,
            "lead_hot",
            format!(
                "A lead battery at {} °C must not be charged: it can run away and boil. Let it cool below {HOT_C:.0} °C.",
                degrees(inputs.bank.temperature_c)
            ),
        );
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
    /// The same at 25 °C \[V\].
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
    !built_in(inputs) || inputs.shore.charger_a > 0.0 || inputs.sun.panel_w > 0.0
}

fn too_much(inputs: &Inputs, kind: &InBlocks, found: &mut Vec<Finding>) {
    let regulator_v = built_in(inputs).then(|| inputs.held_v());
    let others_v = others(inputs).then(|| set_v(inputs));
    let over = |v: &f64| *v > kind.most_v + 1e-9;
    let (held_v, what, do_what) = match (regulator_v.filter(over), others_v.filter(over)) {
        (Some(held_v), other) if other.is_none_or(|v| v <= held_v) => (
            held_v,
            "The built-in regulator holds",
            "Fit a regulator that can be set, or charge through a DC-DC charger.".to_string(),
        ),
        (_, Some(held_v)) => (
            held_v,
            "The charge voltage comes to",
            format!(
                "Set {} at 25 °C or less, with temperature compensation.",
                volts(kind.most_25c_v)
            ),
        ),
        _ => return,
    };
    let severity = if held_v > kind.most_v + FAR_ABOVE_V * kind.blocks {
        Severity::Stop
    } else {
        Severity::Mend
    };
    let bank = named(inputs);
    let gassing = match inputs.bank.chemistry {
        Chemistry::Flooded => "It gases hard, loses water and warms; more is only for equalising.",
        _ => "It vents gas that cannot be put back, dries out and may run away.",
    };
    add(
        found,
        severity,
        "lead_overvoltage",
        format!(
            "{what} {} on {bank} at {} °C; data sheets usually allow {} there ({} at 25 °C). {gassing} {do_what}",
            volts(held_v),
            degrees(inputs.bank.temperature_c),
            volts(kind.most_v),
            volts(kind.most_25c_v),
        ),
    );
}

fn too_little(inputs: &Inputs, kind: &InBlocks, found: &mut Vec<Finding>) {
    let held_v = if built_in(inputs) {
        inputs.held_v()
    } else {
        set_v(inputs)
    };
    let short_v = kind.least_v - held_v;
    if short_v < 0.01 * kind.blocks {
        return;
    }
    let panels_fill = inputs.sun.panel_w > 0.0 && set_v(inputs) >= kind.least_v;
    let severity = if short_v > FAR_BELOW_V * kind.blocks && !panels_fill {
        Severity::Mend
    } else {
        Severity::Mind
    };
    let bank = named(inputs);
    let do_what = match (built_in(inputs), set_v(inputs) >= kind.least_v) {
        (false, _) => format!("Set at least {}.", volts(kind.least_v)),
        (true, true) => {
            "Let panels or a shore charger fill it about once a week, or fit a regulator that can be set.".to_string()
        }
        (true, false) => "Fit a regulator that can be set, and set the other chargers higher.".to_string(),
    };
    add(
        found,
        severity,
        "lead_undervoltage",
        format!(
            "{} {}, and {bank} at {} °C needs at least {}: it never gets full, sulphates and loses capacity. {do_what}",
            if built_in(inputs) {
                "The built-in regulator holds"
            } else {
                "The charge voltage comes to"
            },
            volts(held_v),
            degrees(inputs.bank.temperature_c),
            volts(kind.least_v),
        ),
    );
}

/// Lowest state of charge the bank gets to, 0 to 1.
fn lowest(inputs: &Inputs, report: &Analyses) -> f64 {
    let day_pct = report.day.from_pct.unwrap_or(100.0);
    let lowest_pct = inputs.window_low_pct().min(inputs.run.from_pct);
    lowest_pct.min(day_pct).clamp(0.0, 100.0) / 100.0
}

fn freezing(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let bank_c = inputs.bank.temperature_c;
    let charge = lowest(inputs, report);
    let (freezes_c, flat_c) = (lead_freezes_c(charge), lead_freezes_c(0.0));
    let pct = 100.0 * charge;
    if bank_c <= freezes_c {
        add(
            found,
            Severity::Stop,
            "lead_frozen",
            format!(
                "The bank is at {} °C, and at {pct:.0} % charge its acid freezes at {} °C. Ice cracks plates and cases, and a frozen battery can burst when it is charged: warm it first. {}",
                degrees(bank_c),
                degrees(freezes_c),
                keep_above(bank_c)
            ),
        );
    } else if bank_c <= (freezes_c + NEAR_FREEZING_K).max(flat_c) {
        add(
            found,
            Severity::Mind,
            "lead_may_freeze",
            format!(
                "The bank is at {} °C. At {pct:.0} % charge its acid freezes at {} °C, flat already at {} °C. Do not leave it discharged in frost, and never charge a frozen battery.",
                degrees(bank_c),
                degrees(freezes_c),
                degrees(flat_c)
            ),
        );
    }
}

/// The charge that keeps the acid from freezing, with 5 K in hand.
fn keep_above(bank_c: f64) -> String {
    let safe = (0..=20).find(|step| lead_freezes_c(f64::from(*step) / 20.0) < bank_c - 5.0);
    match safe {
        Some(step) => format!("Keep it above {} % in such cold.", 5 * step),
        None => "Even a full one is not safe in such cold.".to_string(),
    }
}

fn never_full(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let to_pct = inputs.run.to_pct;
    let panels_fill = inputs.sun.panel_w > 0.0 && report.energy.rest_ah <= 0.0;
    if to_pct >= FULL_PCT || !inputs.engine_charges() || panels_fill {
        return;
    }
    add(
        found,
        Severity::Mind,
        "lead_never_full",
        format!(
            "The daily charge ends at {to_pct:.0} %, so the engine never fills this bank. Lead that is not full about once a week sulphates and loses capacity: from there to full takes some {:.0} h more at the charge voltage. Let panels or a shore charger do it.",
            to_full_h(inputs).ceil()
        ),
    );
}

/// Hours from where the daily charge ends to full, at the charge voltage: the
/// missing charge falls to a third in each of its tail's hours.
fn to_full_h(inputs: &Inputs) -> f64 {
    let Some(kind) = inputs.bank.chemistry.lead() else {
        return 0.0;
    };
    let kind = kind.at_temperature(inputs.bank.temperature_c);
    let missing = (100.0 - inputs.run.to_pct) / (100.0 - FULL_PCT);
    kind.taper_h * missing.max(1.0).ln() / kind.efficiency
}

/// What the bank is, within a sentence.
fn named(inputs: &Inputs) -> &'static str {
    match inputs.bank.chemistry {
        Chemistry::Lfp => "a lithium bank",
        Chemistry::Agm => "an AGM bank",
        Chemistry::Gel => "a gel bank",
        Chemistry::Flooded => "a flooded bank",
    }
}
