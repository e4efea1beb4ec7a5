//! The most each alternator gives and takes: in the charging run, and cold with
//! the bank low and the engine at its highest. Belts and what happens when the
//! battery goes are calculated for these.

use crate::analysis::{Moment, RunReport};
use crate::boat::house_load_a;
use crate::boat::{InstalledAlternator, Regulators, Worksheet};
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::alternators::Alternators;
use crate::simulation::moment;
use crate::simulation::plant::Plant;
use crate::simulation::run::PeakLoad;

/// One alternator at one engine speed.
#[derive(Debug, Clone, Copy)]
pub(crate) struct LoadAtSpeed {
    pub(crate) engine_rpm: f64,
    pub(crate) shaft_rpm: f64,
    pub(crate) amperes: f64,
    pub(crate) volts: f64,
    pub(crate) shaft_w: f64,
    /// Flux over that of the rating.
    pub(crate) flux: f64,
}

/// One alternator at both speeds, and when its bank goes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct AlternatorPeaks<'a> {
    /// Which one it is, and all that belongs to it.
    pub(crate) installed: InstalledAlternator<'a>,
    /// Speed its output curve begins at \[rpm\].
    pub(crate) zero_rpm: f64,
    /// In the run: its peak there.
    pub(crate) charging: LoadAtSpeed,
    /// With the engine at its highest.
    pub(crate) top: LoadAtSpeed,
    /// When the bank's management system opens in the run; none where it does
    /// not, and for an alternator that does not lie on that bank.
    pub(crate) opening: Option<LoadAtSpeed>,
}

/// Long after any slow start \[s\].
const LATE_S: f64 = 1e9;

/// Every alternator of the boat.
pub(crate) fn peak_loads<'a>(
    sheet: &'a Worksheet,
    alternators: &Alternators,
    run: &RunReport,
) -> Vec<AlternatorPeaks<'a>> {
    let inputs = &sheet.inputs;
    let (rpm, top_rpm) = (inputs.eng.rpm, inputs.eng.top_rpm);
    // A frozen bank thaws one day: what is fitted has to bear that.
    let fast = alternators
        .plant_at(inputs, house_load_a(sheet), top_rpm)
        .thawed();
    let top = cold(&fast, inputs.run.from_pct / 100.0);
    let peaks = inputs.alternators().zip(&run.alternators);
    let on_bank = peaks.clone().filter(|(one, _)| one.connection.on_house());
    let together_a: f64 = on_bank.map(|(_, run)| run.peak_load.amperes).sum();
    // What flows when the management system opens, shared as at the peak; where they
    // do not peak together, as about then.
    let opening = |installed: &InstalledAlternator, peak: &PeakLoad| {
        let opening = run.opening.filter(|_| installed.connection.on_house())?;
        let part = if inputs.regulators() == Regulators::Together {
            peak.amperes / together_a.max(1e-9)
        } else {
            part_then(run, opening.after_s / 60.0, installed.which.index())
        };
        let amperes = opening.alternator_a * part;
        Some(PeakLoad {
            amperes,
            volts: opening.volts,
            shaft_w: peak.shaft_w * amperes / peak.amperes.max(1e-9),
        })
    };
    peaks
        .zip(&alternators.list)
        .zip(top.alternators())
        .map(|(((installed, run), alternator), (output, losses))| {
            let peak = &run.peak_load;
            let at_top = PeakLoad {
                amperes: output.amperes,
                volts: output.volts,
                shaft_w: output.power_w() + losses.total_w(),
            };
            AlternatorPeaks {
                installed,
                zero_rpm: alternator.curve.zero_rpm,
                charging: load_at_speed(alternator, rpm, peak),
                top: load_at_speed(alternator, top_rpm, &at_top),
                opening: opening(&installed, peak)
                    .map(|load| load_at_speed(alternator, rpm, &load)),
            }
        })
        .collect()
}

/// Part of the current that an alternator gives about a minute of the run, 0 to 1,
/// where both lie on the house bank.
fn part_then(run: &RunReport, minute: f64, alternator: usize) -> f64 {
    let off = |moment: &&Moment| (moment.minute - minute).abs();
    let nearest = run
        .series
        .iter()
        .min_by(|one, other| off(one).total_cmp(&off(other)));
    nearest.map_or(0.0, |moment| {
        let own_a = moment
            .alternators
            .get(alternator)
            .map_or(0.0, |one| one.amperes);
        own_a / moment.alternator_a.max(1e-9)
    })
}

/// Everything cold and the field let up.
fn cold(plant: &Plant, soc: f64) -> moment::Moment {
    plant.moment(LATE_S, soc, &plant.resting())
}

fn load_at_speed(
    alternator: &CalibratedAlternator,
    engine_rpm: f64,
    load: &PeakLoad,
) -> LoadAtSpeed {
    let here = alternator.at_engine_rpm(engine_rpm);
    // Nothing is never minus nought.
    let amperes = load.amperes.max(0.0) + 0.0;
    LoadAtSpeed {
        engine_rpm,
        shaft_rpm: here.shaft_rpm,
        amperes,
        volts: load.volts,
        shaft_w: load.shaft_w,
        flux: here.curve_here.flux_square(amperes, load.volts).sqrt(),
    }
}
