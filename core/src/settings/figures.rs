//! The numbers behind the settings.

use super::{Source, down};
use crate::fields::Knowledge;
use crate::report::Temps;
use crate::worksheet::{
    Alternator, Chemistry, Inputs, Key, RegulatorKind, SecondRole, SensorPlace, WayKind, Worksheet,
};

/// The numbers behind the settings.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Figures {
    pub lithium: bool,
    /// 12 V blocks in series.
    pub blocks: f64,
    /// Cells in series.
    pub cells: f64,
    /// Charge voltage at 25 °C \[V\].
    pub charge_v: f64,
    pub charge_from: Source,
    /// The worksheet's figure, where it is more than such cells bear \[V\].
    pub charge_too_high_v: Option<f64>,
    /// Float voltage; for lithium the most, where there must be one \[V\].
    pub float_v: f64,
    /// Current into the bank at which absorption ends \[A\].
    pub tail_a: f64,
    /// The same of the capacity \[%\].
    pub tail_pct: f64,
    /// Compensation \[mV for each cell and kelvin\].
    pub compensation_mv: f64,
    /// Most the bank may take \[A\].
    pub bank_limit_a: f64,
    pub limit_from: Source,
    /// Part of the bank's limit that each charging source may use, 0 to 1.
    pub share: f64,
    /// Charge warning, field off, contactor \[V\]; lithium only.
    pub high_v: [f64; 3],
    /// Low warning, loads off, contactor \[V\].
    pub low_v: [f64; 3],
}

/// Volts a cell above the charge voltage at which a lithium bank warns, has the
/// charging cut, and opens: 3.59, 3.62 and 3.65 V on top of 3.55. Own
/// reasoning: 40 mV is clear of a regulator's ripple, the steps are a tenth of
/// a volt apart in 12 V, and the last is the usual most of a cell.
const HIGH_V: [f64; 3] = [0.04, 0.07, 0.10];
/// Volts a cell at which a lithium bank warns, drops loads and opens; common practice.
const LOW_V: [f64; 3] = [3.10, 3.00, 2.80];
/// Volts of a 12 V lead block below its rest voltage at the least charge wanted
/// at which it warns, drops loads, and drops all; own reasoning.
const LEAD_BELOW_V: [f64; 3] = [0.0, 0.3, 0.9];
/// No sensor is set lower \[°C\].
const LEAST_SET_C: f64 = 60.0;

/// Most a 12 V block is charged to \[V\]: 3.65 V for each lithium cell, 2.4 V
/// for gel and 2.5 V for other lead; common practice.
fn most_v(chemistry: Chemistry) -> f64 {
    match chemistry {
        Chemistry::Lfp => 14.6,
        Chemistry::Gel => 14.4,
        Chemistry::Agm | Chemistry::Flooded => 15.0,
    }
}

/// Float of a 12 V block at 25 °C \[V\]: the middle of 13.2 to 13.5 flooded,
/// 13.4 to 13.6 AGM, 13.5 to 13.8 gel; 3.35 V for a lithium cell, below which
/// it hardly takes anything; common practice.
fn float_v(chemistry: Chemistry) -> f64 {
    match chemistry {
        Chemistry::Lfp | Chemistry::Flooded => 13.4,
        Chemistry::Agm => 13.5,
        Chemistry::Gel => 13.6,
    }
}

/// Who says a figure of the bank: the worksheet once somebody has looked, the
/// battery maker until then.
fn bank_figure(sheet: &Worksheet, name: &'static str) -> Source {
    let known = Key::named(name).is_some_and(|key| {
        sheet.figure(key).is_some()
            && sheet.is_said(key)
            && sheet.knowledge(key) != Knowledge::Guess
    });
    if known {
        Source::Worksheet(name)
    } else {
        Source::BatteryMaker
    }
}

impl Figures {
    pub(crate) fn of(sheet: &Worksheet) -> Figures {
        let inputs = &sheet.inputs;
        let chemistry = inputs.bank.chemistry;
        let lithium = chemistry == Chemistry::Lfp;
        let blocks = inputs.bank.nominal_v.blocks();
        let cells = if lithium { 4.0 } else { 6.0 } * blocks;
        let (stated_v, most_v) = (inputs.charge_v(), most_v(chemistry) * blocks);
        let too_high = stated_v > most_v + 1e-9;
        let charge_v = stated_v.min(most_v);
        let bank_limit_a = inputs.charge_limit_a();
        let together_a = sources_a(inputs).iter().sum::<f64>();
        let tail_pct = if lithium { 5.0 } else { 2.0 };
        let rest_v = inputs.house_bank().rest_v(inputs.window_low_pct() / 100.0);
        Figures {
            lithium,
            blocks,
            cells,
            charge_v,
            charge_from: match (too_high, bank_figure(sheet, "bank_charge_v")) {
                (true, _) => Source::BatteryMaker,
                (false, from) => from,
            },
            charge_too_high_v: too_high.then_some(stated_v),
            float_v: (float_v(chemistry) * blocks).min(charge_v),
            tail_a: tail_pct / 100.0 * inputs.bank.capacity_ah,
            tail_pct,
            compensation_mv: if lithium {
                0.0
            } else {
                let key = Key::named("bank_compensation_mv");
                key.and_then(|key| sheet.figure(key)).unwrap_or(0.0)
            },
            bank_limit_a,
            limit_from: bank_figure(sheet, "bank_charge_limit_a"),
            share: if together_a > bank_limit_a {
                bank_limit_a / together_a
            } else {
                1.0
            },
            high_v: HIGH_V.map(|above| charge_v + above * cells),
            low_v: if lithium {
                LOW_V.map(|v| v * cells)
            } else {
                LEAD_BELOW_V.map(|below| rest_v - below * blocks)
            },
        }
    }

    /// Volts of the whole bank for one cell.
    pub(crate) fn cell_v(&self, bank_v: f64) -> f64 {
        bank_v / self.cells
    }
}

/// What the sources that the engine drives may each send to the house bank
/// \[A\] by their plates and the regulator's cap: the alternator or the
/// converter behind it, the second alternator.
fn sources_a(inputs: &Inputs) -> [f64; 2] {
    if !inputs.engine_charges() {
        return [0.0; 2];
    }
    [
        match inputs.way.kind {
            WayKind::Direct => own_a(inputs, &inputs.alt),
            WayKind::Converter => inputs.way.converter_a,
        },
        match inputs.two.role {
            SecondRole::House => own_a(inputs, &inputs.alt2),
            SecondRole::None | SecondRole::Start => 0.0,
        },
    ]
}

/// The least of a machine's plate and the worksheet's cap \[A\].
fn own_a(inputs: &Inputs, machine: &Alternator) -> f64 {
    machine.rated_a.min(stated_cap_a(inputs))
}

/// The worksheet's cap; endless without one \[A\].
fn stated_cap_a(inputs: &Inputs) -> f64 {
    match inputs.reg.kind {
        RegulatorKind::External => inputs.reg.current_cap_a.unwrap_or(f64::INFINITY),
        RegulatorKind::Internal => f64::INFINITY,
    }
}

/// What decides a current cap.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Cap {
    Stated,
    Plate,
    Bank,
}

/// The current cap of a machine \[A\], whole amperes: the least of its plate,
/// the worksheet's cap, and its share of what the bank may take. `share` is 1
/// and the bank's limit endless for one that charges the start battery.
pub(super) fn cap(
    inputs: &Inputs,
    machine: &Alternator,
    share: f64,
    bank_limit_a: f64,
) -> (f64, Cap) {
    let own_a = own_a(inputs, machine);
    let shared_a = (own_a * share).min(bank_limit_a);
    if shared_a < own_a {
        (down(shared_a), Cap::Bank)
    } else if stated_cap_a(inputs) < machine.rated_a {
        (down(own_a), Cap::Stated)
    } else {
        (down(own_a), Cap::Plate)
    }
}

/// A regulator's temperature set-point.
#[derive(Debug, Clone, Copy)]
pub(crate) struct SetPoint {
    /// \[°C\]
    pub celsius: f64,
    /// Limit of the part it sits on \[°C\].
    pub limit_c: f64,
    /// The part.
    pub part: &'static str,
    /// By how much a part passes its limit in the run as it stands \[K\].
    pub over_k: f64,
    /// Whether it is the worksheet's own figure.
    pub stated: bool,
}

/// The set-point for a machine that gets as hot as this in the run: the
/// worksheet's, unless it leaves less than 5 K to the limit of the part the
/// sensor sits on, when it is 20 K under that limit (common practice); then
/// lower by what any part is over its limit, as all of them follow the
/// sensor's part at least degree for degree once settled (own reasoning; the
/// overshoot of the first minutes follows less, so it is to be looked at
/// again); never below 60 °C, where no sensor is set.
pub(crate) fn set_point(inputs: &Inputs, machine: &Alternator, peak: &Temps) -> SetPoint {
    let class_c = machine.class.limit_c();
    let (part, limit_c) = match inputs.reg.sensor {
        SensorPlace::Case => ("case", machine.case_limit_c),
        SensorPlace::Winding => ("winding", class_c),
        SensorPlace::Rectifier => ("rectifier plate", machine.rectifier_limit_c),
    };
    let stated_c = inputs.reg.set_point_c;
    let allowed_c = if stated_c > limit_c - 5.0 {
        limit_c - 20.0
    } else {
        stated_c
    };
    let over_k = (peak.winding_c - class_c)
        .max(peak.rectifier_c - machine.rectifier_limit_c)
        .max(peak.case_c - machine.case_limit_c)
        .max(0.0);
    let lowered_c = (allowed_c - over_k.ceil()).max(LEAST_SET_C).min(allowed_c);
    SetPoint {
        celsius: lowered_c,
        limit_c,
        part,
        over_k,
        stated: lowered_c == stated_c,
    }
}
