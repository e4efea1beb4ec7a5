//! Where everything settles, found as a root and without stepping through time.

use crate::numerics::bracketed_root;
use crate::physics::thermal::{AirBalance, Temperatures};
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::moment::{Flow, Output, ThermalState};
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::plant::Plant;

/// The settled state of alternators that keep charging.
#[derive(Debug, Clone, PartialEq)]
pub struct Settled {
    /// Currents and voltages.
    pub flow: Flow,
    /// Temperatures of each alternator and its air.
    pub temperatures: PerAlternator<Temperatures>,
    /// Whether there is such a state: without a regulator an alternator can be
    /// beyond the point where more heat always means more loss.
    pub stable: bool,
}

impl Settled {
    /// Power the alternators' shafts take \[W\].
    pub fn shaft_w(&self, plant: &Plant) -> f64 {
        let each = plant.alternators.iter().zip(&self.flow.outputs);
        each.zip(&self.temperatures)
            .map(|((alternator, output), t)| {
                let open = alternator.open_losses(output.amperes, output.volts);
                output.power_w() + alternator.losses_at(&open, t).total_w()
            })
            .sum()
    }
}

/// Long after any slow start \[s\].
pub(crate) const LATE_S: f64 = 1e9;

/// Times that alternators which warm each other's air are settled in turn.
const ROUNDS: u32 = 60;

/// Where the alternators settle with the bank held at a state of charge (0 to 1)
/// and the engine warm.
///
/// For a trial current an alternator's temperatures follow from a linear balance;
/// the current that then flows falls as they rise, so that there is one answer.
/// Several warm each other's air: each is settled in the others' warmth until
/// none moves.
pub fn settled(plant: &Plant, soc: f64) -> Settled {
    let start = |_: &AlternatorAtSpeed| Temperatures::all(plant.start_c);
    let mut at = Settled {
        flow: plant.flow(0.0, soc, &plant.resting()),
        temperatures: plant.alternators.iter().map(start).collect(),
        stable: true,
    };
    for _ in 0..ROUNDS {
        let before = at.temperatures.clone();
        for alternator in 0..plant.alternators.len() {
            settle_in_turn(plant, soc, alternator, &mut at);
        }
        let each = at.temperatures.iter().zip(&before);
        let moved_k = each
            .map(|(now, before)| (now.body_c - before.body_c).abs())
            .fold(0.0, f64::max);
        if plant.alternators.len() < 2 || moved_k < 1e-7 || !at.stable {
            break;
        }
    }
    at
}

/// Heat that an alternator gives the air of the space \[W\].
fn warmth_w(alternator: &AlternatorAtSpeed, output: &Output, t: &Temperatures) -> f64 {
    let open = alternator.open_losses(output.amperes, output.volts);
    let losses = alternator.losses_at(&open, t);
    alternator.network.heat_to_air_w(t, &losses)
}

/// Settles one of the alternators in the warmth of the others.
fn settle_in_turn(plant: &Plant, soc: f64, this: usize, at: &mut Settled) {
    let Some(alternator) = plant.alternators.get(this) else {
        return;
    };
    let each = plant.alternators.iter().zip(&at.temperatures);
    let thermal: PerAlternator<ThermalState> = each.clone().map(|(one, t)| one.warm(t)).collect();
    let others_w = each
        .zip(&at.flow.outputs)
        .enumerate()
        .filter(|(other, _)| *other != this)
        .map(|(_, ((one, t), output))| warmth_w(one, output, t))
        .sum();
    let flow = |t: &Temperatures| {
        let mut thermal = thermal.clone();
        thermal[this] = alternator.warm(t);
        plant.flow(LATE_S, soc, &thermal)
    };
    let air = plant.space.balance(others_w);
    let near = at.flow.outputs[this];
    match settle(alternator, &air, &near, |t| flow(t).outputs[this]) {
        Some(t) => {
            at.flow = flow(&t);
            at.temperatures[this] = t;
        }
        None => {
            at.flow.outputs[this].amperes = 0.0;
            at.stable = false;
        }
    }
}

/// The temperatures at which an alternator gives just the current they come from.
fn settle(
    alternator: &AlternatorAtSpeed,
    air: &AirBalance,
    near: &Output,
    gives: impl Fn(&Temperatures) -> Output,
) -> Option<Temperatures> {
    let heated = |amperes: f64, volts: f64| {
        let open = alternator.open_losses(amperes, volts);
        alternator.network.settled(&open, air)
    };
    // The voltage moves a little with the current: follow it.
    let mut volts = near.volts;
    let mut found = None;
    let mut last_a = None;
    for _ in 0..20 {
        let spare_a = |amperes: f64| match heated(amperes, volts) {
            Some(t) => gives(&t).amperes - amperes,
            None => -amperes - 1.0,
        };
        let most_a = 2.0 * alternator.curve.infinite_a + near.amperes;
        // The voltage moved little: the current is near the last one.
        let (low_a, high_a) = last_a
            .map(|last_a: f64| (0.999 * last_a, 1.001 * last_a + 1e-6))
            .filter(|(low_a, high_a)| spare_a(*low_a) > 0.0 && spare_a(*high_a) < 0.0)
            .unwrap_or((0.0, most_a));
        let amperes = bracketed_root(spare_a, low_a, high_a, 1e-9);
        last_a = Some(amperes);
        found = heated(amperes, volts);
        let Some(t) = found else { break };
        let given = gives(&t);
        let met = given.amperes - amperes < 1e-3 * (1.0 + amperes);
        if !met {
            // At the edge of runaway it would still give more: no answer there.
            found = None;
            break;
        }
        let next_v = given.volts;
        if (next_v - volts).abs() < 1e-4 {
            break;
        }
        volts = next_v;
    }
    found
}
