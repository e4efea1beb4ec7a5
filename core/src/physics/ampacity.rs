//! What a cable may carry for ever.
//!
//! 33 CFR 183.425, Conductors: general, table 5, Allowable amperage of
//! conductors: one cable in air of 30 °C, for each temperature its insulation
//! is rated for. Binding for boats with petrol engines under the flag of the
//! United States; a published table for everybody else.

use crate::formula::formula;
use crate::physics::cable::{GAUGES, Gauge};
use crate::physics::sources;

/// Air that table 5 is for \[°C\].
pub const TABLE_AIR_C: f64 = 30.0;
/// Air that note 1 of table 5 takes an engine space to have \[°C\].
pub const ENGINE_AIR_C: f64 = 50.0;

/// Temperatures insulation is rated for \[°C\], the columns of table 5 up to 125.
pub const RATINGS_C: [f64; 6] = [60.0, 75.0, 80.0, 90.0, 105.0, 125.0];

/// Table 5 from No. 16 to 4/0 \[A\].
const TABLE_A: [[f64; 6]; GAUGES.len()] = [
    [15.0, 15.0, 20.0, 25.0, 25.0, 30.0],
    [20.0, 20.0, 25.0, 30.0, 35.0, 40.0],
    [25.0, 25.0, 35.0, 40.0, 45.0, 50.0],
    [40.0, 40.0, 50.0, 55.0, 60.0, 70.0],
    [55.0, 65.0, 70.0, 70.0, 80.0, 90.0],
    [80.0, 95.0, 100.0, 100.0, 120.0, 125.0],
    [105.0, 125.0, 130.0, 135.0, 160.0, 170.0],
    [120.0, 145.0, 150.0, 155.0, 180.0, 195.0],
    [140.0, 170.0, 175.0, 180.0, 210.0, 225.0],
    [165.0, 195.0, 210.0, 210.0, 245.0, 265.0],
    [195.0, 230.0, 245.0, 245.0, 285.0, 305.0],
    [225.0, 265.0, 285.0, 285.0, 330.0, 355.0],
    [260.0, 310.0, 330.0, 330.0, 385.0, 410.0],
    [300.0, 360.0, 385.0, 385.0, 445.0, 475.0],
];

/// Note 1 of table 5, for engine spaces: 0.85 at 105 °C as reprints of the
/// Coast Guard's guideline have it, the others from memory. Each is what
/// [`air_factor()`] gives at 50 °C, to half a hundredth.
const NOTE_1: [f64; 6] = [0.58, 0.75, 0.78, 0.82, 0.85, 0.89];

/// ISO 10133:2012, Small craft: electrical systems: extra-low-voltage d.c.
/// installations, table A.1, insulation of 105 °C \[mm²\] \[A\] (from memory,
/// and since replaced). Shown beside; nothing is chosen by it.
const ISO_10133_105C: [(f64, f64); 14] = [
    (1.0, 20.0),
    (1.5, 25.0),
    (2.5, 35.0),
    (4.0, 45.0),
    (6.0, 60.0),
    (10.0, 90.0),
    (16.0, 130.0),
    (25.0, 170.0),
    (35.0, 210.0),
    (50.0, 270.0),
    (70.0, 330.0),
    (95.0, 390.0),
    (120.0, 450.0),
    (150.0, 475.0),
];

/// Position of a column \[°C\]: the hottest rating not above that asked.
fn column(rated_c: f64) -> usize {
    RATINGS_C
        .partition_point(|column_c| *column_c <= rated_c)
        .saturating_sub(1)
}

/// What a gauge may carry in air of 30 °C \[A\] with insulation of a rating
/// \[°C\]; nothing for a size the table does not have.
pub fn gauge_a(gauge: Gauge, rated_c: f64) -> f64 {
    GAUGES
        .iter()
        .position(|known| known.number == gauge.number)
        .and_then(|row| TABLE_A.get(row)?.get(column(rated_c)))
        .copied()
        .unwrap_or(0.0)
}

/// What a metric size \[mm²\] may carry in air of 30 °C \[A\]: as the largest
/// gauge whose copper is no more than its own. The table has gauges only, and
/// this never credits a cable with more than the table gives to less copper;
/// beyond 4/0 it stays at that. Own reasoning. Nothing below No. 16.
pub fn metric_a(mm2: f64, rated_c: f64) -> f64 {
    let after = GAUGES.partition_point(|gauge| gauge.mm2() <= mm2);
    after
        .checked_sub(1)
        .and_then(|at| GAUGES.get(at))
        .map_or(0.0, |gauge| gauge_a(*gauge, rated_c))
}

/// Part of the amperage left in hotter air \[°C\]: the heat a cable may shed
/// goes with what is left to its insulation's rating \[°C\] and the heat made
/// in it with the square of the current, √((T_rated − T_air)/(T_rated − 30)).
/// Own reasoning; 1 up to 30 °C, 0 from the rating on.
#[formula(symbol = "k_air", unit = "", source = sources::AMPACITY)]
pub fn air_factor(#[symbol("T_ins")] rated_c: f64, #[symbol("T_air")] air_c: f64) -> f64 {
    let left_k = (rated_c - air_c.max(TABLE_AIR_C)).max(0.0);
    (left_k / (rated_c - TABLE_AIR_C)).sqrt()
}

/// Part of the amperage left in an engine space: note 1 of table 5, or less
/// where its air is hotter than the 50 °C of that note.
pub fn engine_factor(rated_c: f64, air_c: f64) -> f64 {
    engine_share(rated_c, air_c, note_1(rated_c))
}

/// Note 1 of table 5 for insulation of a rating \[°C\].
pub fn note_1(rated_c: f64) -> f64 {
    NOTE_1.get(column(rated_c)).copied().unwrap_or(0.0)
}

/// Part of the ampacity left in an engine space: `note`, that of note 1, or less
/// where its air is hotter than the 50 °C of that note.
#[formula(symbol = "k_engine", unit = "", source = sources::AMPACITY)]
pub fn engine_share(
    #[symbol("T_ins")] rated_c: f64,
    #[symbol("T_air")] air_c: f64,
    #[symbol("k_note")] note: f64,
) -> f64 {
    air_factor(rated_c, air_c.max(ENGINE_AIR_C)).min(note)
}

/// Ampacity \[A\] of a cable of the table \[A\] where a part of it is left.
#[formula(symbol = "I_z", unit = "A", source = sources::AMPACITY)]
pub fn ampacity_a(#[symbol("k_air")] factor: f64, #[symbol("I_table")] table_a: f64) -> f64 {
    factor * table_a
}

/// What ISO 10133 would give a metric size with insulation of 105 °C, outside
/// the engine space \[A\] (from memory); none beyond its table.
pub fn iso_10133_a(mm2: f64) -> Option<f64> {
    ISO_10133_105C
        .iter()
        .find(|(size, _)| *size == mm2)
        .map(|(_, amperes)| *amperes)
}
