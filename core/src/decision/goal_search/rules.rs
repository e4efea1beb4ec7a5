//! Quick rules of what does harm, each absolute: they spare the whole report
//! for most of the combinations. The report has the last word.

use crate::boat::{Alternator, Belt, BeltKind, Inputs, InstalledAlternator, RegulatorKind};
use crate::physics::thermal::Temperatures;
use crate::simulation::plant::Plant;
use crate::simulation::run::Trace;
use crate::simulation::steady_state::settled;

/// Part of the engine's power that charging may take: the bound at which the
/// findings begin to complain.
const MOST_SHARE: f64 = 0.6;

/// Whether it does harm by how it is built, before anything runs: an alternator
/// that turns too fast or is of another voltage than its battery, or a pulley
/// made smaller than its belt bears.
pub(super) fn stands_to_harm(inputs: &Inputs, smaller_pulley: bool) -> bool {
    let fastest_rpm = inputs.eng.top_rpm.max(inputs.eng.rpm);
    let wrong = |installed: InstalledAlternator| {
        let alternator = installed.alternator;
        alternator.pulley_ratio * fastest_rpm > alternator.max_rpm || !installed.fits()
    };
    inputs.alternators().any(wrong)
        || smaller_pulley && inputs.belt.pulley_mm < least_pulley_mm(&inputs.belt)
}

/// The smallest pulley a belt bears for long \[mm\]; as long as no belt is named
/// the smallest that any does.
fn least_pulley_mm(belt: &Belt) -> f64 {
    let of = |kind: BeltKind| kind.table().map(|table| table.least_pulley_mm);
    of(belt.kind).unwrap_or_else(|| {
        let any = BeltKind::V.into_iter().chain(BeltKind::RIBS);
        any.filter_map(of).fold(f64::INFINITY, f64::min)
    })
}

/// Whether the day's run does harm: a part beyond its limit, an engine that
/// labours, or a bank emptied below the least it is to keep. Where its management
/// system opens there is no such run.
pub(super) fn run_harms(inputs: &Inputs, plant: &Plant, trace: &Trace, seconds: f64) -> bool {
    const ROUNDING: f64 = 1e-6;
    let too_hot = inputs
        .alternators()
        .zip(trace.hottest(seconds))
        .any(|(installed, hottest)| over_k(installed.alternator, &hottest) > 0.0);
    let share =
        trace.peak_shaft_w(seconds) / 1000.0 / plant.belt_efficiency / inputs.available_kw();
    let lowest = trace.soc_at(0.0);
    too_hot || share > MOST_SHARE || lowest < inputs.window_low_pct() / 100.0 - ROUNDING
}

/// Whether an alternator that nothing but volts holds back would cook if the
/// bank went on taking what it gives.
pub(super) fn unwatched_harms(inputs: &Inputs, plant: &Plant) -> bool {
    let first = inputs.first_alternator();
    if inputs.reg.kind == RegulatorKind::External || !first.connection.on_house() {
        return false;
    }
    let half_way = (inputs.run.from_pct + inputs.run.to_pct) / 200.0;
    let hot = settled(plant, half_way);
    let first_hot = hot.temperatures.first();
    !hot.stable || first_hot.is_some_and(|t| over_k(first.alternator, t) > 0.0)
}

/// How far the worst part is beyond its limit \[K\]; negative below it.
fn over_k(alternator: &Alternator, t: &Temperatures) -> f64 {
    (t.winding_c - alternator.class.limit_c())
        .max(t.rectifier_c - alternator.rectifier_limit_c)
        .max(t.body_c - alternator.case_limit_c)
}
