//! What goes in comes out or stays: ampere-hours over a run, heat at every
//! moment of it.

use ampwright_core::physics::losses::Losses;
use ampwright_core::physics::thermal::{Temperatures, ThermalNetwork};
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, charge};
use proptest::prelude::*;

use crate::draw::{Drawn, normal_boat};
use crate::regulated::regulated;

/// Heat stored each second, given to the air, and lost, all \[W\].
fn heat(machine: &ThermalNetwork, t: &Temperatures, losses: &Losses) -> (f64, f64, f64) {
    let [winding, body, rectifier] = machine.rates(t, losses);
    let stored_w =
        machine.winding_j_k * winding + machine.body_j_k * body + machine.rectifier_j_k * rectifier;
    (stored_w, machine.heat_to_air_w(t, losses), losses.total_w())
}

proptest! {
    #![proptest_config(crate::cases(200))]

    #[test]
    fn heat_is_stored_or_given_to_the_air(Drawn(sheet) in normal_boat()) {
        let plant = Plant::new(&sheet.inputs, 5.0);
        let trace = charge(&plant, 0.3, 0.9, 8.0 * 3600.0, &Fineness::USUAL);
        for k in 0..=20 {
            let sample = trace.sample(trace.last_s() * f64::from(k) / 20.0);
            let each = plant.alternators.iter().zip(&sample.thermal);
            for ((alternator, warm), losses) in each.zip(&sample.moment.losses) {
                let (stored_w, to_air_w, lost_w) = heat(&alternator.network, &warm.t, losses);
                prop_assert!(
                    (stored_w + to_air_w - lost_w).abs() <= 1e-6 * (1.0 + lost_w),
                    "stored {stored_w} W, to the air {to_air_w} W, lost {lost_w} W"
                );
            }
        }
    }

    #[test]
    fn what_the_machine_gives_goes_to_house_and_bank(Drawn(sheet) in normal_boat()) {
        let mut inputs = sheet.inputs;
        inputs.way = regulated().inputs.way;
        inputs.two = Default::default();
        let plant = Plant::new(&inputs, 5.0);
        let trace = charge(&plant, 0.3, 0.8, 8.0 * 3600.0, &Fineness::USUAL);
        let end_s = trace.last_s();
        // What a bank gives on the way comes out one for one: look only at
        // runs that never take from it, the regulator's first dip included.
        let fills = (0..=2000).all(|k| {
            trace.sample(end_s * f64::from(k) / 2000.0).moment.flow.bank_a > 0.0
        });
        prop_assume!(fills);
        prop_assume!(trace.soc_at(end_s) > 0.35);
        let into_bank_ah = (trace.soc_at(end_s) - 0.3) * plant.bank.capacity_ah
            / plant.bank.charge_efficiency;
        let given_ah = trace.alternator_ah(end_s);
        let house_ah = plant.load_a * end_s / 3600.0;
        prop_assert!(
            (given_ah - house_ah - into_bank_ah).abs() <= 1e-6 * given_ah,
            "given {given_ah}, house {house_ah}, bank {into_bank_ah} A·h"
        );
    }
}
