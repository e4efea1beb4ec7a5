//! The alternators that are proposed: usual sizes, and what they are made of.

use crate::boat::{
    Alternator, AlternatorVolts, Belt, BeltKind, Engine, Inputs, InsulationClass, Plate,
};
use crate::physics::output::through_rating;

/// Usual sizes of alternators of 12 V, 24 V and 48 V \[A\]: common practice, no
/// source.
const SIZES_A: [[f64; 5]; 3] = [
    [70.0, 100.0, 150.0, 180.0, 250.0],
    [35.0, 55.0, 75.0, 110.0, 150.0],
    [20.0, 35.0, 50.0, 70.0, 90.0],
];
/// So many sizes are tried.
const TRIED: usize = 3;
/// A larger alternator gives at least so many times as much.
const LARGER: f64 = 1.2;
/// From here on an alternator is of the large case \[W\]: common practice, no
/// source.
const LARGE_CASE_W: f64 = 2000.0;
/// What a usual alternator can give at any speed, over its rating: its curve
/// ends 3 to 6 % above it; own reasoning.
const MOST_OVER_RATING: f64 = 1.1;
/// Highest shaft speed of one of the large case \[rpm\]: common practice, no
/// source.
const LARGE_CASE_RPM: f64 = 10_000.0;

/// Voltage that ratings are taken at for each 12 V block \[V\]: common practice.
const TEST_BLOCK_V: f64 = 14.0;

/// Usual sizes \[A\] of alternators for a battery of so many 12 V blocks.
fn usual_a(blocks: f64) -> [f64; 5] {
    let [of_12, of_24, of_48] = SIZES_A;
    if blocks > 2.0 {
        of_48
    } else if blocks > 1.0 {
        of_24
    } else {
        of_12
    }
}

/// The next usual sizes \[A\] that give clearly more watts, at the voltage of the
/// battery the alternator is led to, than the alternator that is there.
pub(crate) fn larger_a(inputs: &Inputs) -> Vec<f64> {
    let there = inputs.first_alternator();
    larger_than(there.rated_w(), there.battery_blocks())
}

/// Usual sizes \[A\] for a second alternator, on the house bank: the next above
/// the one that is there, or the largest where there is none.
pub(crate) fn second_a(inputs: &Inputs) -> Vec<f64> {
    let blocks = inputs.bank.nominal_v.blocks();
    let larger_a = larger_than(inputs.first_alternator().rated_w(), blocks);
    if larger_a.is_empty() {
        usual_a(blocks).into_iter().skip(5 - TRIED).collect()
    } else {
        larger_a
    }
}

fn larger_than(there_w: f64, blocks: f64) -> Vec<f64> {
    let larger = |rated_a: &f64| rated_a * TEST_BLOCK_V * blocks >= LARGER * there_w;
    let sizes = usual_a(blocks).into_iter().filter(larger);
    sizes.take(TRIED).collect()
}

/// About the most an alternator ever gives, cold and turned fast \[A\]: its
/// curve levels off above its rating, and a rating taken hot is worth a
/// quarter more when cold; own reasoning.
pub(super) fn most_a(alternator: &Alternator) -> f64 {
    const COLD_OVER_WARM: f64 = 1.25;
    let (level_a, _) = through_rating(
        alternator.rated_a,
        alternator.rated_rpm,
        alternator.zero_rpm,
    );
    let cold = match alternator.plate {
        Plate::Cold => 1.0,
        Plate::Warm => COLD_OVER_WARM,
    };
    cold * level_a.max(MOST_OVER_RATING * alternator.rated_a)
}

/// A usual alternator of a rating \[A\] on this engine, for a battery of so many
/// 12 V blocks. From 2 kW on it has the large case: 9.5 kg, insulation class H,
/// 60 % efficient, 140 °C at full field on the bench, good for 10 000 rpm.
/// Common practice, no source. Its pulley is that of the alternator it
/// replaces, or a larger one where that would turn it too fast.
pub(super) fn usual(
    rated_a: f64,
    blocks: f64,
    instead_of: &Alternator,
    engine: &Engine,
) -> Alternator {
    let small = Alternator {
        rated_a,
        nominal_v: AlternatorVolts::of_blocks(blocks).unwrap_or(AlternatorVolts::Same),
        ..Alternator::default()
    };
    let mut alternator = if rated_a * TEST_BLOCK_V * blocks < LARGE_CASE_W {
        small
    } else {
        Alternator {
            mass_kg: Some(9.5),
            class: InsulationClass::H,
            efficiency_pct: 60.0,
            max_rpm: LARGE_CASE_RPM,
            ..small
        }
    };
    let fastest_rpm = engine.top_rpm.max(engine.rpm);
    // To a hundredth, as a tape measures pulleys.
    let most_ratio = (100.0 * alternator.max_rpm / fastest_rpm).floor() / 100.0;
    alternator.pulley_ratio = instead_of.pulley_ratio.min(most_ratio).max(0.5);
    alternator
}

/// The smallest multi-rib belt that the rule of the trade trusts with a rating
/// \[A\] in a system of so many 12 V blocks, on pulleys of usual size.
pub(super) fn belt_for(rated_a: f64, blocks: f64) -> Belt {
    let carries = |kind: &BeltKind| {
        let table = kind.table();
        table.is_some_and(|table| rated_a * blocks <= table.rule_a.1)
    };
    let kind = BeltKind::RIBS.into_iter().find(carries);
    Belt {
        kind: kind.unwrap_or(BeltKind::Ribs10),
        ..Belt::default()
    }
}
