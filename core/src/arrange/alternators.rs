//! The alternators that are proposed: usual sizes, and what they are made of.

use crate::physics::output::through_rating;
use crate::worksheet::{
    Alternator, AlternatorVolts, Belt, BeltKind, Engine, Inputs, InsulationClass, Plate,
};

/// Usual sizes of large alternators of 12 V, 24 V and 48 V \[A\]: common
/// practice, no source.
const SIZES_A: [[f64; 3]; 3] = [
    [150.0, 180.0, 250.0],
    [75.0, 110.0, 150.0],
    [50.0, 70.0, 90.0],
];
/// A larger alternator gives at least so many times as much.
const LARGER: f64 = 1.1;
/// What a usual alternator can give at any speed, over its rating: its curve
/// ends 3 to 6 % above it; own reasoning.
const MOST_OVER_RATING: f64 = 1.1;
/// Highest shaft speed of a large alternator \[rpm\]: common practice, no source.
const MOST_RPM: f64 = 10_000.0;

/// Voltage that ratings are taken at for each 12 V block \[V\]: common practice.
const TEST_BLOCK_V: f64 = 14.0;

/// Usual sizes of large alternators \[A\] for a battery of so many 12 V blocks.
pub(crate) fn sizes_a(blocks: f64) -> [f64; 3] {
    let [of_12, of_24, of_48] = SIZES_A;
    if blocks > 2.0 {
        of_48
    } else if blocks > 1.0 {
        of_24
    } else {
        of_12
    }
}

/// The usual sizes \[A\] that give clearly more watts, at the voltage of the
/// battery the alternator is led to, than the alternator that is there.
pub(crate) fn larger_a(inputs: &Inputs) -> impl Iterator<Item = f64> + use<> {
    let blocks = inputs.led_to_blocks();
    let there_w = rated_w(inputs);
    sizes_a(blocks)
        .into_iter()
        .filter(move |rated_a| rated_a * TEST_BLOCK_V * blocks > LARGER * there_w)
}

/// What the alternator gives at its rating \[W\].
pub(crate) fn rated_w(inputs: &Inputs) -> f64 {
    inputs.alt.rated_a * TEST_BLOCK_V * inputs.alternator_blocks()
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

/// A large-case alternator of a rating \[A\] on this engine, for a battery of
/// so many 12 V blocks: 9.5 kg, insulation class H, 60 % efficient, 140 °C at
/// full field on the bench, good for 10 000 rpm. Common practice, no source.
/// Its pulley is that of the alternator it replaces, or a larger one where that
/// would turn it too fast.
pub(super) fn large(
    rated_a: f64,
    blocks: f64,
    instead_of: &Alternator,
    engine: &Engine,
) -> Alternator {
    let fastest_rpm = engine.top_rpm.max(engine.rpm);
    Alternator {
        rated_a,
        mass_kg: Some(9.5),
        class: InsulationClass::H,
        efficiency_pct: 60.0,
        anchor_winding_c: Some(140.0),
        max_rpm: MOST_RPM,
        // To a hundredth, as a tape measures pulleys.
        pulley_ratio: instead_of
            .pulley_ratio
            .min((100.0 * MOST_RPM / fastest_rpm).floor() / 100.0)
            .max(0.5),
        nominal_v: AlternatorVolts::of_blocks(blocks).unwrap_or(AlternatorVolts::Same),
        ..Alternator::default()
    }
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
