//! What the alternators give, cold and hot: together, and each of them.

use serde::Serialize;

use crate::analysis::temperatures::PartTemperatures;
use crate::analysis::when_asked::WhenAsked;
use crate::boat::key;
use crate::boat::{Inputs, WhichAlternator};
use crate::numerics::bracketed_root;
use crate::physics::full_field::COLD_ROTOR_C;
use crate::physics::life::{grease_h, insulation_h, told_life_h};
use crate::simulation::Limit;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::alternators::Alternators;
use crate::simulation::plant::Plant;
use crate::simulation::steady_state::{Settled, settled};

/// What all that charge the house bank give together, cold and hot.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct OutputReport {
    /// Full-field output at this speed, their rotors cold \[A\].
    pub full_cold_a: f64,
    /// What they hold on and on, everything settled, the bank half-way \[A\].
    pub hot_a: f64,
    /// What holds it there.
    pub hot_limit: Limit,
    /// Air through the engine space \[m³/h\].
    pub space_air_m3h: f64,
    /// Blower, as printed on it, that would hold `space_wanted_a` \[m³/h\];
    /// none when not asked, or when no blower does it.
    pub blower_for_wanted_m3h: Option<f64>,
    /// Output against engine speed, hot and settled, and cold.
    pub by_engine_rpm: WhenAsked<Vec<SpeedPoint>>,
}

/// One alternator, cold and hot.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct AlternatorReport {
    /// Which one.
    pub alternator: WhichAlternator,
    /// Its own speed while charging \[rpm\].
    pub shaft_rpm: f64,
    /// Its own speed with the engine at its highest \[rpm\].
    pub top_shaft_rpm: f64,
    /// Full-field output at the charging speed with a cold rotor \[A\].
    pub full_cold_a: f64,
    /// What it gives on and on, everything settled, the bank half-way \[A\].
    pub hot_a: f64,
    /// Temperatures then; none when the alternators never settle.
    pub hot: Option<PartTemperatures>,
    /// Hours that the winding's insulation lasts at that temperature, or at the most
    /// that it may be, and 100 000 h at the most; none when the alternators never
    /// settle.
    pub insulation_h: Option<f64>,
    /// Hours that the bearings' grease lasts at the temperature of the case; none
    /// when the alternators never settle.
    pub grease_h: Option<f64>,
    /// Output at endless speed of the fitted curve \[A\].
    pub infinite_a: f64,
    /// Speed the fitted curve begins at \[rpm\].
    pub zero_rpm: f64,
    /// Resistance of one phase as if in star, at 20 °C \[Ω\].
    pub phase_20c_ohm: f64,
    /// Factor that fits the cooling to the temperature it was seen at.
    pub cooling_factor: f64,
}

/// Output at an engine speed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SpeedPoint {
    /// Engine speed \[rpm\].
    pub engine_rpm: f64,
    /// Full-field output with a cold rotor, at the voltage it holds when hot \[A\]:
    /// a battery below the voltage of the rating lets an alternator begin sooner.
    pub cold_a: f64,
    /// What it holds on and on \[A\].
    pub hot_a: f64,
}

/// Full-field output of all that charge the house bank, their rotors cold \[A\].
fn full_cold_a(plant: &Plant) -> f64 {
    plant
        .charging()
        .map(|(_, alternator)| cold_a(alternator))
        .sum()
}

fn cold_a(alternator: &AlternatorAtSpeed) -> f64 {
    alternator.curve.cold_full_field_a(alternator.shaft_rpm)
}

/// Full-field output of all that charge the house bank, their rotors cold, at the
/// voltages they work at when settled \[A\].
fn cold_there_a(plant: &Plant, hot: &Settled) -> f64 {
    let cold_a = |(at, alternator): (usize, &AlternatorAtSpeed)| {
        let volts = hot.flow.outputs[at].volts;
        alternator
            .curve
            .full_field_a(alternator.shaft_rpm, volts, COLD_ROTOR_C)
    };
    plant.charging().map(cold_a).sum()
}

fn charging_a(plant: &Plant, settled: &Settled) -> f64 {
    plant.charging_a(&settled.flow)
}

/// The smallest blower, as printed on it, that lets the alternators hold a current.
fn blower_for(
    inputs: &Inputs,
    alternators: &Alternators,
    load_a: f64,
    soc: f64,
    wanted_a: f64,
) -> Option<f64> {
    let most_m3h = most_blower_m3h()?;
    let short_a = |blower_m3h: f64| {
        let mut with = *inputs;
        with.space.blower_m3h = blower_m3h;
        let plant = alternators.plant(&with, load_a);
        wanted_a - charging_a(&plant, &settled(&plant, soc))
    };
    (short_a(most_m3h) <= 0.0).then(|| bracketed_root(short_a, 0.0, most_m3h, 1e-6))
}

/// The largest blower the worksheet takes \[m³/h\].
fn most_blower_m3h() -> Option<f64> {
    let range = key!(space.blower_m3h).spec().range();
    range.map(|(_, most)| most)
}

/// What all give together, with the bank held at a state of charge, 0 to 1, and
/// `hot` where they settle there.
pub(super) fn output_report(
    inputs: &Inputs,
    alternators: &Alternators,
    plant: &Plant,
    soc: f64,
    hot: &Settled,
) -> OutputReport {
    let by_engine_rpm = {
        let (inputs, alternators, load_a) = (*inputs, alternators.clone(), plant.load_a);
        WhenAsked::new(move || by_engine_rpm(&inputs, &alternators, load_a, soc))
    };
    OutputReport {
        full_cold_a: full_cold_a(plant),
        hot_a: charging_a(plant, hot),
        hot_limit: hot.flow.limit,
        space_air_m3h: plant.space.flow_m3h,
        blower_for_wanted_m3h: inputs
            .space
            .wanted_a
            .and_then(|wanted_a| blower_for(inputs, alternators, plant.load_a, soc, wanted_a)),
        by_engine_rpm,
    }
}

/// From a low idle to the engine's highest, closer where the curve bends.
fn by_engine_rpm(
    inputs: &Inputs,
    alternators: &Alternators,
    load_a: f64,
    soc: f64,
) -> Vec<SpeedPoint> {
    const STEPS: u32 = 12;
    let (low, high) = (600.0_f64.min(inputs.eng.rpm), inputs.eng.top_rpm);
    let point = |step: u32| {
        let share = (f64::from(step) / f64::from(STEPS)).powf(1.5);
        // Round figures, for the table.
        let engine_rpm = ((low + (high - low).max(0.0) * share) / 10.0).round() * 10.0;
        let there = alternators.plant_at(inputs, load_a, engine_rpm);
        let hot = settled(&there, soc);
        SpeedPoint {
            engine_rpm,
            cold_a: cold_there_a(&there, &hot),
            hot_a: charging_a(&there, &hot),
        }
    };
    (0..=STEPS).map(point).collect()
}

/// Each alternator, and what it does where they settle.
pub(super) fn alternator_reports(
    inputs: &Inputs,
    plant: &Plant,
    hot: &Settled,
) -> Vec<AlternatorReport> {
    let settled = hot.flow.outputs.iter().zip(&hot.temperatures);
    inputs
        .alternators()
        .zip(&plant.alternators)
        .zip(settled)
        .map(|((installed, here), (output, t))| {
            let hot_parts = hot.stable.then(|| PartTemperatures::of(here, t));
            let class_c = installed.alternator.class.limit_c();
            AlternatorReport {
                alternator: installed.which,
                shaft_rpm: here.shaft_rpm,
                top_shaft_rpm: installed.shaft_rpm(inputs.eng.top_rpm),
                full_cold_a: cold_a(here),
                hot_a: output.amperes,
                hot: hot_parts,
                insulation_h: hot_parts
                    .map(|hot| told_life_h(insulation_h(class_c, hot.winding_at_most_c()))),
                grease_h: hot_parts.map(|hot| grease_h(hot.case_c)),
                infinite_a: here.curve.infinite_a,
                zero_rpm: here.curve.zero_rpm,
                phase_20c_ohm: here.losses.phase_20c_ohm,
                cooling_factor: here.cooling,
            }
        })
        .collect()
}
