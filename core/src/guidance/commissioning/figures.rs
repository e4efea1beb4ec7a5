//! The numbers of this boat that stand in the commissioning list.

use crate::analysis::PartTemperatures;
use crate::boat::{Inputs, InstalledAlternator, RegulatorKind, SensorPlace, WayKind, Worksheet};
use crate::guidance::settings::{Figures as Settings, set_point};
use crate::report::Report;

/// The numbers of this boat.
pub(super) struct Figures<'a> {
    pub inputs: &'a Inputs,
    pub report: &'a Report,
    pub settings: Settings,
    /// Case to stop at \[°C\].
    pub case_c: f64,
    /// Rectifier plate to stop at \[°C\].
    pub rectifier_c: f64,
    /// Winding to stop at \[°C\].
    pub winding_c: f64,
    /// Cable lug to stop at \[°C\].
    pub lug_c: f64,
    /// Bank to stop at \[°C\].
    pub bank_c: f64,
    /// Volts at the bank to stop at \[V\].
    pub bank_v: f64,
    /// What charges the bank at the worksheet's temperature \[V\].
    pub charge_v: f64,
    /// Coolant to stop at \[°C\].
    pub coolant_c: f64,
}

impl Figures<'_> {
    pub(super) fn of<'a>(sheet: &'a Worksheet, report: &'a Report) -> Figures<'a> {
        let inputs = &sheet.inputs;
        let settings = Settings::of(sheet);
        let charge_v = charge_v(&settings, inputs.bank.temperature_c);
        // The lowest of several alternators serves for all.
        let each = inputs.alternators().zip(&report.analyses.run.alternators);
        let [case_c, rectifier_c, winding_c] = each
            .map(|(installed, run)| stops_c(&installed, &run.peak))
            .reduce(|one, other| std::array::from_fn(|part| one[part].min(other[part])))
            .unwrap_or([f64::INFINITY; 3]);
        Figures {
            case_c,
            rectifier_c,
            winding_c,
            lug_c: lug_c(inputs.cable.insulation.rated_c()),
            bank_c: MOST_BANK_C,
            bank_v: if settings.lithium {
                settings.high_v[0]
            } else {
                charge_v + 0.3 * settings.blocks
            },
            charge_v,
            coolant_c: inputs.eng.running_c + COOLANT_K,
            inputs,
            report,
            settings,
        }
    }

    /// 12 V blocks in series of the battery the alternator charges.
    pub(super) fn alternator_blocks(&self) -> f64 {
        match self.inputs.way.kind {
            WayKind::Direct => self.settings.blocks,
            WayKind::Converter => self.inputs.start_blocks(),
        }
    }
}

/// Cells above this get a fifth of their current, lead nothing \[°C\]; the first
/// run stops there. Telecom battery manual, table 4.3; common practice for lead.
const MOST_BANK_C: f64 = 50.0;

/// How far above its usual an engine's coolant may be \[K\]: own reasoning.
const COOLANT_K: f64 = 15.0;

/// What the bank is charged to at a temperature of its own \[V\]: on a cold
/// morning a lead bank's compensation raises the volts that are right.
fn charge_v(settings: &Settings, bank_c: f64) -> f64 {
    let moved_v = settings.compensation_mv / 1000.0 * settings.cells * (bank_c - 25.0);
    (settings.charge_v + moved_v).max(0.0)
}

/// Temperatures of case, rectifier plate and winding at which a run is broken
/// off \[°C\]: 5 K under the limit of case and plate, 15 K under that of the
/// winding, whose hottest place no sensor reaches; where a sensor guards one of
/// them, no more than 10 K above its set-point, as the regulator has failed by
/// then. Own reasoning.
fn stops_c(installed: &InstalledAlternator, peak: &PartTemperatures) -> [f64; 3] {
    let (alternator, reg) = (installed.alternator, installed.regulator());
    let mut stops_c = [
        alternator.case_limit_c - 5.0,
        alternator.rectifier_limit_c - 5.0,
        alternator.class.limit_c() - 15.0,
    ];
    if reg.kind == RegulatorKind::External {
        let [case_c, rectifier_c, winding_c] = &mut stops_c;
        let guarded_c = match reg.sensor {
            SensorPlace::Case => case_c,
            SensorPlace::Rectifier => rectifier_c,
            SensorPlace::Winding => winding_c,
        };
        let set_c = set_point(installed, peak).celsius;
        *guarded_c = guarded_c.min(set_c + 10.0);
    }
    stops_c
}

/// A lug to stop at \[°C\]: 70 °C, common practice; no more than 5 K under what
/// the cable's insulation is rated for.
fn lug_c(insulation_c: f64) -> f64 {
    (insulation_c - 5.0).min(70.0)
}

#[cfg(test)]
mod tests {
    use crate::analysis::PartTemperatures;
    use crate::boat::{Inputs, RegulatorKind, SensorPlace};
    use crate::guidance::commissioning::figures::{lug_c, stops_c};

    const COOL: PartTemperatures = PartTemperatures {
        winding_c: 90.0,
        winding_may_be_c: None,
        case_c: 80.0,
        rectifier_c: 85.0,
        air_c: 50.0,
    };

    /// By hand: case limit 120 − 5 and set-point 105 + 10 are both 115; plate
    /// 135 − 5; class F 155 − 15.
    #[test]
    fn stops_of_a_usual_alternator() {
        let mut inputs = Inputs::default();
        inputs.reg.kind = RegulatorKind::External;
        assert_eq!(
            stops_c(&inputs.first_alternator(), &COOL),
            [115.0, 130.0, 140.0]
        );
        inputs.reg.set_point_c = 95.0;
        assert_eq!(
            stops_c(&inputs.first_alternator(), &COOL),
            [105.0, 130.0, 140.0]
        );
        inputs.reg.sensor = SensorPlace::Winding;
        assert_eq!(
            stops_c(&inputs.first_alternator(), &COOL),
            [115.0, 130.0, 105.0]
        );
        inputs.reg.kind = RegulatorKind::Internal;
        assert_eq!(
            stops_c(&inputs.first_alternator(), &COOL),
            [115.0, 130.0, 140.0]
        );
    }

    /// By hand: 105 − 5 is above 70; 60 − 5 is 55.
    #[test]
    fn stops_of_lugs() {
        assert_eq!(lug_c(105.0), 70.0);
        assert_eq!(lug_c(60.0), 55.0);
    }
}
