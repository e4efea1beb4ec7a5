//! Where everything settles, found as a root and without stepping through time.

use crate::numerics::bracketed_root;
use crate::physics::thermal::{AirBalance, Temperatures};
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::moment::{Flow, Output, ThermalState};
use crate::simulation::plant::Plant;

/// The settled state of machines that keep charging.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Settled {
    /// Currents and voltages.
    pub flow: Flow,
    /// Temperatures of the alternator and its air.
    pub temperatures: Temperatures,
    /// Those of the second one; the alternator's without one.
    pub second: Temperatures,
    /// Whether there is such a state: without a regulator a machine can be
    /// beyond the point where more heat always means more loss.
    pub stable: bool,
}

/// Long after any slow start \[s\].
pub(crate) const LATE_S: f64 = 1e9;

/// Where the machines settle with the bank held at a state of charge (0 to 1)
/// and the engine warm.
///
/// For a trial current a machine's temperatures follow from a linear balance;
/// the current that then flows falls as they rise, so that there is one
/// answer. Two machines warm each other's air: each is settled in the other's
/// warmth until neither moves.
pub fn settled(plant: &Plant, charge: f64) -> Settled {
    let mut at = Settled {
        flow: plant.flow(
            0.0,
            charge,
            &ThermalState::resting(plant.start_c),
            &ThermalState::resting(plant.start_c),
        ),
        temperatures: Temperatures::all(plant.start_c),
        second: Temperatures::all(plant.start_c),
        stable: true,
    };
    let Some(second) = plant.second else {
        settle_main(plant, charge, 0.0, &mut at);
        return at;
    };
    for _ in 0..60 {
        let before = at;
        let from_second_w = warmth_w(&second.unit, &at.flow.second, &at.second);
        settle_main(plant, charge, from_second_w, &mut at);
        let from_main_w = warmth_w(&plant.main, &at.flow.main, &at.temperatures);
        settle_second(plant, &second.unit, charge, from_main_w, &mut at);
        let moved_k = (at.temperatures.body_c - before.temperatures.body_c)
            .abs()
            .max((at.second.body_c - before.second.body_c).abs());
        if moved_k < 1e-7 || !at.stable {
            break;
        }
    }
    at
}

pub(crate) fn warm(unit: &AlternatorAtSpeed, t: &Temperatures) -> ThermalState {
    ThermalState {
        t: *t,
        sensed_c: unit.felt_c(t),
    }
}

/// Heat a machine gives the air of the space \[W\].
fn warmth_w(unit: &AlternatorAtSpeed, output: &Output, t: &Temperatures) -> f64 {
    let losses = unit
        .open_losses(output.amperes, output.volts)
        .with(t.winding_c, unit.machine.rotor_c(t.body_c));
    unit.machine.heat_to_air_w(t, &losses)
}

fn settle_main(plant: &Plant, charge: f64, other_w: f64, at: &mut Settled) {
    let second = plant
        .second
        .map_or(ThermalState::resting(plant.start_c), |beside| {
            warm(&beside.unit, &at.second)
        });
    let flow = |t: &Temperatures| plant.flow(LATE_S, charge, &warm(&plant.main, t), &second);
    let air = plant.space.balance(other_w);
    match settle(&plant.main, &air, &at.flow.main, |t| flow(t).main) {
        Some(t) => {
            at.flow = flow(&t);
            at.temperatures = t;
        }
        None => {
            at.flow.main.amperes = 0.0;
            at.stable = false;
        }
    }
}

fn settle_second(
    plant: &Plant,
    unit: &AlternatorAtSpeed,
    charge: f64,
    other_w: f64,
    at: &mut Settled,
) {
    let main = warm(&plant.main, &at.temperatures);
    let flow = |t: &Temperatures| plant.flow(LATE_S, charge, &main, &warm(unit, t));
    let air = plant.space.balance(other_w);
    match settle(unit, &air, &at.flow.second, |t| flow(t).second) {
        Some(t) => {
            at.flow = flow(&t);
            at.second = t;
        }
        None => at.stable = false,
    }
}

/// The temperatures at which a machine gives just the current they come from.
fn settle(
    unit: &AlternatorAtSpeed,
    air: &AirBalance,
    near: &Output,
    gives: impl Fn(&Temperatures) -> Output,
) -> Option<Temperatures> {
    let heated =
        |amperes: f64, volts: f64| unit.machine.settled(&unit.open_losses(amperes, volts), air);
    // The voltage moves a little with the current: follow it.
    let mut volts = near.volts;
    let mut found = None;
    let mut last_a = None;
    for _ in 0..20 {
        let spare_a = |amperes: f64| match heated(amperes, volts) {
            Some(t) => gives(&t).amperes - amperes,
            None => -amperes - 1.0,
        };
        let most_a = 2.0 * unit.curve.infinite_a + near.amperes;
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
