//! The tables of the engine, calculated for a boat. Uses what the engine gives, the
//! built-in regulator and the steps of the tables.

use crate::analysis::year::charger::built_in::BuiltIn;
use crate::analysis::year::charger::gives::Charger;
use crate::analysis::year::charger::steps::{CHARGES, SETTLED, STEPS, STEPS_AN_HOUR, charges};
use crate::numerics::interpolate_evenly;
use crate::simulation::moment::Flow;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Sample, charge};
use crate::simulation::steady_state::settled;

/// Less current than this tells nothing of what a shaft takes for it \[A\].
const LEAST_A: f64 = 0.1;

impl Charger {
    /// Calculates the tables of a boat that charges around a state of charge.
    pub fn of(plant: &Plant, around: f64) -> Charger {
        // One that keeps nothing does not fill, and has the volts of the bank.
        let mut endless = plant.clone();
        endless.bank.charge_efficiency = 0.0;
        let seconds = |step: usize| step as f64 / STEPS_AN_HOUR * 3600.0;
        let warming = charge(
            &endless,
            around,
            f64::INFINITY,
            seconds(STEPS),
            &Fineness::USUAL,
        );
        let warm_a: Vec<f64> = (0..=STEPS)
            .map(|step| {
                // An alternator that has burnt gives nothing more.
                if seconds(step) <= warming.last_s() {
                    house_a(plant, &warming.sample(seconds(step)).moment.flow)
                } else {
                    0.0
                }
            })
            .collect();
        let mut warming_ah = vec![0.0];
        let mut sum_ah = 0.0;
        for pair in warm_a.windows(2) {
            sum_ah += 0.5 * pair.iter().sum::<f64>() / STEPS_AN_HOUR;
            warming_ah.push(sum_ah);
        }
        let cold = plant.resting();
        let taken_a: Vec<f64> = charges(CHARGES)
            // Long after any slow start.
            .map(|soc| house_a(plant, &plant.flow(seconds(STEPS), soc, &cold)))
            .collect();
        let (settled_a, shaft_kwh_ah) = settled_at_charges(plant);
        let ends_a = warm_a.last().copied().unwrap_or(0.0);
        // A space that warms for longer than the table goes on to where it
        // settles; an alternator that never does stays at what it gave last.
        let settles_a = interpolate_evenly(&settled_a, around * SETTLED as f64);
        let hot_a = if settles_a > 0.0 {
            ends_a.min(settles_a)
        } else {
            ends_a
        };
        let held_v = |at: &Sample| plant.held_at(&at.thermal);
        let built_in = plant.held_by_built_in().then(|| BuiltIn {
            held_v: (0..=STEPS)
                .map(|step| held_v(&warming.sample(seconds(step))))
                .collect(),
            bank: plant.bank,
            load_a: plant.load_a,
            settled_a: settled_a.clone(),
        });
        Charger {
            warming_ah,
            hot_a,
            filled: match built_in {
                None => filled(
                    &settled_a,
                    |soc| interpolate_evenly(&taken_a, soc * CHARGES as f64),
                    hot_a,
                ),
                Some(_) => vec![1.0],
            },
            taken_a,
            shaft_kwh_ah,
            built_in,
        }
    }
}

/// What reaches the house side \[A\].
fn house_a(plant: &Plant, flow: &Flow) -> f64 {
    (flow.bank_a + plant.load_a).max(0.0)
}

/// What a hot alternator gives at each step of charge \[A\], and what its shaft
/// takes for each ampere-hour \[kWh/A·h\].
fn settled_at_charges(plant: &Plant) -> (Vec<f64>, Vec<f64>) {
    let mut shaft_kwh_ah = 0.0;
    charges(SETTLED)
        .map(|soc| {
            let hot = settled(plant, soc);
            let amperes = house_a(plant, &hot.flow);
            // A bank that takes nothing asks what it asked before.
            if amperes > LEAST_A {
                shaft_kwh_ah = hot.shaft_w(plant) / 1000.0 / amperes;
            }
            (amperes, shaft_kwh_ah)
        })
        .unzip()
}

/// What a hot alternator gives at each state of charge, as a part of what it gives
/// a bank that does not fill \[-\]. Where the bank holds the current, as it does
/// when it is nearly full, the last part at which heat held it.
fn filled(settled_a: &[f64], cold_a: impl Fn(f64) -> f64, hot_a: f64) -> Vec<f64> {
    let mut part = 1.0;
    settled_a
        .iter()
        .zip(charges(SETTLED))
        .map(|(settled_a, soc)| {
            if *settled_a < 0.99 * cold_a(soc) && hot_a > 0.0 {
                part = settled_a / hot_a;
            }
            part
        })
        .collect()
}
