//! Efficiency of usual machines: Commission Implementing Decision (EU)
//! 2017/785, efficient 12 V alternators: at half the rated current and 14.3 V,
//! weighted 0.25, 0.40, 0.25, 0.10 at 1800, 3000, 6000 and 10 000 rpm, a
//! baseline machine reaches 67 %.

use ampwright_core::Worksheet;
use ampwright_core::simulation::plant::Plant;

use crate::within;

#[test]
fn the_default_machine_is_near_the_baseline() {
    let inputs = Worksheet::default().inputs;
    let plant = Plant::new(&inputs, 0.0);
    let amperes = 0.5 * inputs.alt.rated_a;
    let mut weighted = 0.0;
    for (rpm, weight) in [
        (1800.0, 0.25),
        (3000.0, 0.40),
        (6000.0, 0.25),
        (10_000.0, 0.10),
    ] {
        let alternator = &plant.alternators[0];
        let losses = alternator
            .losses
            .at_speed(&alternator.curve, rpm)
            .at(amperes, 14.3);
        // Warmed up on the bench at half load; the decision names no temperatures.
        let total_w = losses.with(80.0, 80.0).total_w();
        let efficiency = 14.3 * amperes / (14.3 * amperes + total_w);
        println!("{rpm} rpm: {:.1} %", 100.0 * efficiency);
        weighted += weight * efficiency;
    }
    println!("weighted: {:.1} %, baseline 67 %", 100.0 * weighted);
    within("weighted", weighted, 0.62, 0.72);
}
