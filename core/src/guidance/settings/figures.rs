//! The numbers behind the settings.

use crate::analysis::{Part, PartTemperatures};
use crate::boat::house_load_a;
use crate::boat::key;
use crate::boat::{
    Chemistry, Connection, Inputs, InstalledAlternator, Key, SensorPlace, WhichAlternator,
    Worksheet, usual_charge_v,
};
use crate::guidance::settings::Source;
use crate::guidance::settings::cap::own_a;
use crate::guidance::settings::steps::{high_v, lead_low_v, lithium_low_v};
use crate::physics::battery::LFP_CHARGE_V;
use crate::simulation::alone::{fed_charger_a, holds_hot_a};
use crate::simulation::management::setting_within_a;
use crate::simulation::per_alternator::PerAlternator;

/// The numbers behind the settings.
#[derive(Debug, Clone)]
pub(crate) struct Figures {
    pub lithium: bool,
    /// 12 V blocks in series.
    pub blocks: f64,
    /// Cells in series.
    pub cells: f64,
    /// Charge voltage at 25 °C \[V\].
    pub charge_v: f64,
    pub charge_from: Source,
    /// The worksheet's figure, where it is more than such a bank is charged to
    /// day by day \[V\].
    pub charge_too_high_v: Option<f64>,
    /// The worksheet's figure, where it is too low to charge such a bank \[V\].
    pub charge_too_low_v: Option<f64>,
    /// Float voltage; for lithium the most, where there must be one \[V\].
    pub float_v: f64,
    /// Current into the bank at which absorption ends \[A\].
    pub tail_a: f64,
    /// Current into the bank at which absorption ends, of the capacity \[%\].
    pub tail_pct: f64,
    /// Compensation \[mV for each cell and kelvin\].
    pub compensation_mv: f64,
    /// Most the bank may take at its usual temperatures \[A\].
    pub bank_limit_a: f64,
    pub limit_from: Source,
    /// The most to set at everything that charges it \[A\]: that limit, or what its
    /// packs still bear once one of them has opened.
    pub setting_limit_a: f64,
    /// Part of what it could send that each charging source may use, 0 to 1.
    pub share: f64,
    /// What each alternator holds hot where only its own heat and regulator
    /// keep it back \[A\].
    pub hot_a: PerAlternator<f64>,
    /// Most output of the DC-DC charger to the house bank by itself \[A\].
    pub converter_a: f64,
    /// Charge warning, charging off, contactor \[V\]; lithium only.
    pub high_v: [f64; 3],
    /// Low warning, loads off, contactor \[V\]; of lead under load.
    pub low_v: [f64; 3],
}

/// No sensor is set lower \[°C\].
const LEAST_SET_C: f64 = 60.0;

/// Most a 12 V block is charged to \[V\]: 3.55 V for each lithium cell, which
/// leaves room for the steps of its management system; for lead what its kind
/// withstands day by day.
fn most_v(chemistry: Chemistry) -> f64 {
    chemistry
        .lead()
        .map_or(4.0 * LFP_CHARGE_V, |kind| kind.most_v)
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
fn bank_figure(sheet: &Worksheet, key: Key) -> Source {
    let known = sheet.figure(key).is_some() && sheet.is_said(key) && sheet.knowledge(key).is_read();
    if known {
        Source::Worksheet(key)
    } else {
        Source::BatteryMaker
    }
}

impl Figures {
    /// Most output to set at the DC-DC charger to the house bank, beside what else
    /// charges it \[A\].
    pub(crate) fn converter_setting_a(&self) -> f64 {
        (self.converter_a * self.share).min(self.setting_limit_a)
    }

    pub(crate) fn of(sheet: &Worksheet) -> Figures {
        let inputs = &sheet.inputs;
        let chemistry = inputs.bank.chemistry;
        let lithium = chemistry == Chemistry::Lfp;
        let blocks = inputs.bank.nominal_v.blocks();
        let cells = if lithium { 4.0 } else { 6.0 } * blocks;
        let (stated_v, most_v) = (inputs.charge_v(), most_v(chemistry) * blocks);
        let too_high = stated_v > most_v + 1e-9;
        // Below its float a bank takes next to nothing: another system's figure.
        let too_low = stated_v < float_v(chemistry) * blocks - 1e-9;
        let charge_v = if too_low {
            usual_charge_v(inputs)
        } else {
            stated_v.min(most_v)
        };
        let bank_limit_a = inputs.own_charge_limit_a();
        let setting_limit_a = inputs.own_setting_limit_a();
        let hot_a = if inputs.engine_charges() {
            holds_hot_a(inputs, house_load_a(sheet))
        } else {
            inputs.alternators().map(|_| 0.0).collect()
        };
        let first_hot_a = hot_a.first().copied().unwrap_or(0.0);
        let converter_a = converter_a(inputs, first_hot_a, charge_v);
        let together_a = sources_a(inputs, &hot_a, converter_a);
        let tail_pct = if lithium { 5.0 } else { 2.0 };
        Figures {
            lithium,
            blocks,
            cells,
            charge_v,
            charge_from: match (too_high || too_low, bank_figure(sheet, key!(bank.charge_v))) {
                (true, _) => Source::BatteryMaker,
                (false, from) => from,
            },
            charge_too_high_v: too_high.then_some(stated_v),
            charge_too_low_v: too_low.then_some(stated_v),
            float_v: (float_v(chemistry) * blocks).min(charge_v),
            tail_a: tail_pct / 100.0 * inputs.bank.capacity_ah,
            tail_pct,
            compensation_mv: if lithium {
                0.0
            } else {
                sheet.figure(key!(bank.compensation_mv)).unwrap_or(0.0)
            },
            bank_limit_a,
            setting_limit_a,
            limit_from: bank_figure(sheet, key!(bank.charge_limit_a)),
            share: if together_a > setting_within_a(setting_limit_a) {
                setting_within_a(setting_limit_a) / together_a
            } else {
                1.0
            },
            hot_a,
            converter_a,
            high_v: high_v(cells),
            low_v: if lithium {
                lithium_low_v(cells)
            } else {
                lead_low_v(sheet)
            },
        }
    }

    /// What an alternator holds hot where only its own heat and regulator keep it
    /// back \[A\]; 0 for one that is not there.
    pub(crate) fn hot_a_of(&self, which: WhichAlternator) -> f64 {
        self.hot_a.get(which.index()).copied().unwrap_or(0.0)
    }

    /// Volts of the whole bank for one cell.
    pub(crate) fn cell_v(&self, bank_v: f64) -> f64 {
        bank_v / self.cells
    }
}

/// What the sources that the engine drives may send to the house bank together,
/// each by itself \[A\]: alternators on it, and the DC-DC charger.
fn sources_a(inputs: &Inputs, hot_a: &[f64], converter_a: f64) -> f64 {
    if !inputs.engine_charges() {
        return 0.0;
    }
    let each = inputs.alternators().zip(hot_a);
    each.map(|(installed, hot_a)| match installed.connection {
        Connection::HouseBank => own_a(inputs, installed.alternator, *hot_a).0,
        Connection::ThroughCharger => converter_a,
        Connection::StartBattery => 0.0,
    })
    .sum()
}

/// What the DC-DC charger to the house bank may give by itself \[A\]: its rating,
/// or less where the alternator, hot, would be asked for more than it holds.
fn converter_a(inputs: &Inputs, hot_a: f64, house_v: f64) -> f64 {
    let rated_a = inputs.charger_a();
    fed_charger_a(inputs, hot_a, house_v).map_or(rated_a, |fed_a| rated_a.min(fed_a))
}

/// A regulator's temperature set-point.
#[derive(Debug, Clone, Copy)]
pub(crate) struct SetPoint {
    /// \[°C\]
    pub celsius: f64,
    /// Limit of the part it sits on \[°C\].
    pub limit_c: f64,
    /// The part.
    pub part: Part,
    /// By how much a part passes its limit in the run as it stands \[K\].
    pub over_k: f64,
    /// Whether it is the worksheet's own figure.
    pub stated: bool,
}

/// The set-point for an alternator that gets as hot as this in the run: the
/// worksheet's, unless it leaves less than 5 K to the limit of the part the
/// sensor sits on, when it is 20 K under that limit (common practice); then
/// lower by what any part is over its limit, as all of them follow the
/// sensor's part at least degree for degree once settled (own reasoning; the
/// overshoot of the first minutes follows less, so it is to be looked at
/// again); never below 60 °C, where no sensor is set.
pub(crate) fn set_point(installed: &InstalledAlternator, peak: &PartTemperatures) -> SetPoint {
    let (alternator, reg) = (installed.alternator, installed.regulator());
    let class_c = alternator.class.limit_c();
    let part = sensor_part(reg.sensor);
    let limit_c = part.limit_c(alternator);
    let stated_c = reg.set_point_c;
    let allowed_c = if stated_c > limit_c - 5.0 {
        limit_c - 20.0
    } else {
        stated_c
    };
    let over_k = (peak.winding_at_most_c() - class_c)
        .max(peak.rectifier_c - alternator.rectifier_limit_c)
        .max(peak.case_c - alternator.case_limit_c)
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

/// The part a regulator's sensor sits on.
pub(crate) const fn sensor_part(sensor: SensorPlace) -> Part {
    match sensor {
        SensorPlace::Case => Part::Case,
        SensorPlace::Winding => Part::Winding,
        SensorPlace::Rectifier => Part::Rectifier,
    }
}
