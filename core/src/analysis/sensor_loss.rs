//! What would happen if the regulator's temperature sensor failed and the
//! regulator went on.

use serde::Serialize;

use crate::analysis::limits::{Part, PartLimit, first_passed, nearest};
use crate::analysis::temperatures::PartTemperatures;
use crate::analysis::when_asked::WhenAsked;
use crate::boat::{Inputs, InstalledAlternator, RegulatorKind, SensorFailure, WhichAlternator};
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, charge};

/// Part of full field of a regulator that holds back without its sensor.
const HALF: f64 = 0.5;

/// The charging run with a sensor that has failed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SensorLossReport {
    /// What the regulator does then; taken to go on at full field where nobody knows.
    pub regulator: SensorFailure,
    /// Each alternator with its own sensor gone and all others at work; none where
    /// charging stops.
    pub alternators: Vec<SensorLost>,
}

/// One alternator whose sensor has failed before the start.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SensorLost {
    /// Which alternator.
    pub alternator: WhichAlternator,
    /// Its hottest in the run.
    pub peak: PartTemperatures,
    /// The part that comes nearest to its limit, or passes it most.
    pub part: Part,
    /// How hot that gets, or may get \[°C\].
    pub part_c: f64,
    /// Whether it may get so hot at most, as nobody has measured it.
    pub at_most: bool,
    /// What it withstands for long \[°C\].
    pub limit_c: f64,
    /// When the first part passes its limit \[min\]; none where all stay within.
    pub passes_min: Option<f64>,
}

impl SensorLost {
    /// Whether a part passes its limit.
    pub fn too_hot(&self) -> bool {
        self.part_c > self.limit_c
    }
}

/// The run without a sensor; none where no regulator goes by one.
pub(super) fn sensor_loss(inputs: &Inputs, plant: &Plant) -> Option<WhenAsked<SensorLossReport>> {
    let has_one = inputs.reg.kind == RegulatorKind::External && inputs.engine_charges();
    has_one.then(|| {
        let (inputs, plant) = (*inputs, plant.clone());
        WhenAsked::new(move || sensor_loss_report(&inputs, &plant))
    })
}

fn sensor_loss_report(inputs: &Inputs, plant: &Plant) -> SensorLossReport {
    let part_of_field = match inputs.reg.sensor_failure {
        SensorFailure::Unsaid | SensorFailure::Full => Some(1.0),
        SensorFailure::Half => Some(HALF),
        SensorFailure::Stops => None,
    };
    let lost = |part: f64| {
        let each = inputs.alternators().filter(InstalledAlternator::fits);
        each.filter_map(|installed| without_sensor(inputs, plant, &installed, part))
            .collect()
    };
    SensorLossReport {
        regulator: inputs.reg.sensor_failure,
        alternators: part_of_field.map_or_else(Vec::new, lost),
    }
}

/// The run with one alternator's sensor gone, its regulator at a part of full field.
fn without_sensor(
    inputs: &Inputs,
    plant: &Plant,
    installed: &InstalledAlternator,
    part_of_field: f64,
) -> Option<SensorLost> {
    let run = &inputs.run;
    let at = installed.which.index();
    let mut plant = plant.clone();
    plant.alternators[at] = plant.alternators[at].without_sensor(part_of_field);
    let (from, to) = (run.from_pct / 100.0, run.to_pct / 100.0);
    let trace = charge(&plant, from, 1.0, run.longest_h * 3600.0, &Fineness::USUAL);
    let end_s = trace.reaches(to).unwrap_or(trace.last_s());
    let peak = PartTemperatures {
        winding_may_be_c: trace.winding_may_be_c(end_s, at),
        ..(*trace.hottest(end_s).get(at)?).into()
    };
    let limits = Part::ALL.map(|part| PartLimit {
        alternator: installed.which,
        part,
        peak_c: part.of(&peak),
        settled_c: None,
        limit_c: part.limit_c(installed.alternator),
        at_most: part == Part::Winding && installed.winding_unknown(),
    });
    let worst = nearest(&limits)?;
    Some(SensorLost {
        alternator: installed.which,
        peak,
        part: worst.part,
        part_c: worst.peak_c,
        at_most: worst.at_most,
        limit_c: worst.limit_c,
        passes_min: first_passed(&limits, &trace, end_s).map(|(_, after_s)| after_s / 60.0),
    })
}
