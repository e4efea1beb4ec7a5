//! Where everything settles, found as a root and without stepping through time.

use super::Limit;
use super::plant::{Flow, Plant};
use crate::physics::roots;
use crate::physics::thermal::Temperatures;

/// The settled state of a machine that keeps charging.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Settled {
    /// Currents and voltages.
    pub flow: Flow,
    /// Temperatures.
    pub temperatures: Temperatures,
    /// Whether there is such a state: without a regulator a machine can be
    /// beyond the point where more heat always means more loss.
    pub stable: bool,
}

/// Where the machine settles with the bank held at a state of charge (0 to 1)
/// and the engine warm.
///
/// For a trial current the temperatures follow from a linear balance; the
/// current that then flows falls as they rise, so that there is one answer.
pub fn settled(plant: &Plant, charge: f64) -> Settled {
    let air = plant.space.balance();
    let coldest = Temperatures {
        winding_c: plant.start_c,
        body_c: plant.start_c,
        rectifier_c: plant.start_c,
        air_c: plant.start_c,
    };
    let start = plant.flow(charge, &coldest);
    let heated = |amperes: f64| {
        let trial = Flow {
            alternator_a: amperes,
            alternator_v: trial_v(plant, &start, amperes),
            ..start
        };
        plant.machine.settled(&plant.open_losses(&trial), &air)
    };
    let spare_a = |amperes: f64| match heated(amperes) {
        Some(t) => plant.flow(charge, &t).alternator_a - amperes,
        None => -amperes - 1.0,
    };
    let most_a = 2.0 * plant.curve.infinite_a + plant.load_a;
    let amperes = roots::falling(spare_a, 0.0, most_a, 1e-9);
    match heated(amperes) {
        Some(temperatures) => Settled {
            flow: plant.flow(charge, &temperatures),
            temperatures,
            stable: true,
        },
        None => Settled {
            flow: Flow {
                alternator_a: 0.0,
                limit: Limit::Machine,
                ..start
            },
            temperatures: coldest,
            stable: false,
        },
    }
}

/// Voltage at the alternator for a trial current: it moves with the bank's
/// resistance only where the machine stands on the bank itself.
fn trial_v(plant: &Plant, start: &Flow, amperes: f64) -> f64 {
    if start.alternator_v == start.bank_v {
        start.bank_v + (amperes - start.alternator_a) * plant.bank.resistance_ohm
    } else {
        start.alternator_v
    }
}
