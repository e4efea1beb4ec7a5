//! A boat made ready to run: its alternators calibrated and capped as the worksheet
//! has them, and its plant.

use crate::boat::Inputs;
use crate::physics::regulator::hot_cap_a;
use crate::simulation::alone::holds_hot_a;
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::alternators::Alternators;
use crate::simulation::plant::Plant;

impl Alternators {
    /// Calibrates those of a worksheet, each with the cap that it has of what it
    /// holds hot.
    pub fn of(inputs: &Inputs) -> Alternators {
        let alternators = Alternators::calibrate(&inputs.alternators().collect());
        match inputs.hot_cap() {
            Some(part) => capped_hot(&alternators, part, inputs),
            None => alternators,
        }
    }
}

impl Plant {
    /// Works out a boat whose house draws `load_a` \[A\] while charging. Who
    /// asks for several of one boat calibrates its [`Alternators`] once.
    pub fn new(inputs: &Inputs, load_a: f64) -> Plant {
        Alternators::of(inputs).plant(inputs, load_a)
    }
}

/// Alternators, each capped at a part of what it holds hot, 0 to 2. One that never
/// settles has no such cap.
fn capped_hot(alternators: &Alternators, part: f64, inputs: &Inputs) -> Alternators {
    let each = alternators.list.iter().zip(holds_hot_a(inputs, 0.0));
    let capped = |(one, hot_a): (&CalibratedAlternator, f64)| match hot_a > 0.0 {
        true => one.capped(hot_cap_a(part, hot_a)),
        false => *one,
    };
    Alternators {
        list: each.map(capped).collect(),
    }
}
