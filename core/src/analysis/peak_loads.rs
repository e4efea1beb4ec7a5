//! The most each alternator gives and takes: in the charging run, and cold with
//! the bank low and the engine at its highest. Belts and what happens when the
//! battery goes are reckoned for these.

use crate::analysis::RunReport;
use crate::boat::house_load_a;
use crate::boat::{Inputs, SecondRole, WayKind, Worksheet};
use crate::physics::losses::Losses;
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::alternators::Alternators;
use crate::simulation::moment::{Moment, Output, ThermalState};
use crate::simulation::plant::Plant;
use crate::simulation::run::PeakLoad;

/// One machine at one engine speed.
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

/// One machine at both speeds, and when its bank goes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct AlternatorPeaks {
    /// Whether it is the second one.
    pub(crate) second: bool,
    /// The worksheet as this machine sees it.
    pub(crate) seen: Inputs,
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
pub(crate) fn peak_loads(
    sheet: &Worksheet,
    alternators: &Alternators,
    run: &RunReport,
) -> Vec<AlternatorPeaks> {
    let inputs = &sheet.inputs;
    let (rpm, top_rpm) = (inputs.eng.rpm, inputs.eng.top_rpm);
    let fast = alternators.plant_at(inputs, house_load_a(sheet), top_rpm);
    let top = cold(&fast, inputs.run.from_pct / 100.0);
    let (peak, second_peak) = (&run.peak_load, &run.second_peak_load);
    let on_bank = [
        (inputs.way.kind == WayKind::Direct).then_some(peak.amperes),
        second_peak
            .filter(|_| inputs.two.role == SecondRole::House)
            .map(|peak| peak.amperes),
    ];
    let together_a: f64 = on_bank.iter().flatten().sum();
    // What flows when the management system opens, shared as at the peak.
    let opening = |at: usize, alternator: &CalibratedAlternator, peak: &PeakLoad| {
        let opening = run.opening?;
        let own_a = (*on_bank.get(at)?)?;
        let amperes = opening.alternator_a * own_a / together_a.max(1e-9);
        let load = PeakLoad {
            amperes,
            volts: opening.volts,
            shaft_w: peak.shaft_w * amperes / own_a.max(1e-9),
        };
        Some(load_at_speed(alternator, rpm, &load))
    };
    let mut machines = vec![AlternatorPeaks {
        second: false,
        seen: *inputs,
        zero_rpm: alternators.main.curve.zero_rpm,
        charging: load_at_speed(&alternators.main, rpm, peak),
        top: load_at_speed(
            &alternators.main,
            top_rpm,
            &load(&top.flow.main, &top.losses),
        ),
        opening: opening(0, &alternators.main, peak),
    }];
    if let (Some(seen), Some(second), Some(peak)) =
        (inputs.as_second(), &alternators.second, second_peak)
    {
        machines.push(AlternatorPeaks {
            second: true,
            seen,
            zero_rpm: second.curve.zero_rpm,
            charging: load_at_speed(second, rpm, peak),
            top: load_at_speed(second, top_rpm, &load(&top.flow.second, &top.second_losses)),
            opening: opening(1, second, peak),
        });
    }
    machines
}

/// Everything cold and the field let up.
fn cold(plant: &Plant, charge: f64) -> Moment {
    let resting = ThermalState::resting(plant.start_c);
    plant.moment(LATE_S, charge, &resting, &resting)
}

/// What an alternator gives and takes at one moment.
fn load(output: &Output, losses: &Losses) -> PeakLoad {
    PeakLoad {
        amperes: output.amperes,
        volts: output.volts,
        shaft_w: output.amperes * output.volts + losses.total_w(),
    }
}

fn load_at_speed(
    alternator: &CalibratedAlternator,
    engine_rpm: f64,
    load: &PeakLoad,
) -> LoadAtSpeed {
    let unit = alternator.at_engine_rpm(engine_rpm);
    // Nothing is never minus nought.
    let amperes = load.amperes.max(0.0) + 0.0;
    LoadAtSpeed {
        engine_rpm,
        shaft_rpm: unit.shaft_rpm,
        amperes,
        volts: load.volts,
        shaft_w: load.shaft_w,
        flux: unit.curve_here.flux_square(amperes, load.volts).sqrt(),
    }
}
