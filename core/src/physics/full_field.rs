//! Full field of a claw-pole machine behind a diode rectifier, formula by
//! formula; `output` says where they are from and puts them to use.

use crate::formula::formula;
use crate::physics::{copper, sources};

/// Rotor temperature of an alternator that has stood \[°C\], at which plates
/// that say nothing else are taken to be read: common practice, no source.
pub const COLD_ROTOR_C: f64 = 25.0;

/// n₀ as it is given, kept below the speed of the rating \[rpm\].
#[formula(symbol = "n₀", unit = "rpm", source = sources::OUTPUT_CURVE)]
pub fn zero_below_rating_rpm(
    #[symbol("n_begin")] given_rpm: f64,
    #[symbol("n_N")] rated_rpm: f64,
) -> f64 {
    given_rpm.min(0.95 * rated_rpm)
}

/// I∞ of the curve that leaves zero at n₀ and passes through the rating \[A\].
#[formula(symbol = "I∞", unit = "A", source = sources::OUTPUT_CURVE)]
pub fn infinite_through_rating_a(
    #[symbol("I_N")] rated_a: f64,
    #[symbol("n₀")] zero_rpm: f64,
    #[symbol("n_N")] rated_rpm: f64,
) -> f64 {
    rated_a / (1.0 - (zero_rpm / rated_rpm).powi(2)).sqrt()
}

/// How I² changes with 1/n² between two points \[A²·rpm²\]; below 0 where the
/// faster one gives more.
#[formula(symbol = "m", unit = "A²·rpm²", source = sources::OUTPUT_CURVE)]
pub fn square_slope(
    #[symbol("I_2")] slow_a: f64,
    #[symbol("I_N")] fast_a: f64,
    #[symbol("n_2")] slow_rpm: f64,
    #[symbol("n_N")] fast_rpm: f64,
) -> f64 {
    (slow_a.powi(2) - fast_a.powi(2)) / (1.0 / slow_rpm.powi(2) - 1.0 / fast_rpm.powi(2))
}

/// I∞ from the faster of two points and [`square_slope()`] \[A\]; not a number
/// where there is none.
#[formula(symbol = "I∞", unit = "A", source = sources::OUTPUT_CURVE)]
pub fn infinite_through_points_a(
    #[symbol("I_N")] fast_a: f64,
    #[symbol("m")] slope: f64,
    #[symbol("n_N")] fast_rpm: f64,
) -> f64 {
    (fast_a.powi(2) - slope / fast_rpm.powi(2)).sqrt()
}

/// n₀ from I∞ and [`square_slope()`] \[rpm\]; not a number where there is none.
#[formula(symbol = "n₀", unit = "rpm", source = sources::OUTPUT_CURVE)]
pub fn zero_through_points_rpm(
    #[symbol("m")] slope: f64, #[symbol("I∞")] infinite_a: f64
) -> f64 {
    (-slope).sqrt() / infinite_a
}

/// Most a machine gives \[A\] at a shaft speed: `field` is its field current
/// over that of the rating, `behind` the voltage behind its diodes over that of
/// the rating; 0 below the speed at which it begins.
///
/// The split of the heat's effect in two exponents is our own reasoning: at
/// speed the machine is nearly short-circuited and follows the field, near its
/// beginning the iron is saturated and it hardly does.
#[formula(symbol = "I", unit = "A", source = sources::OUTPUT_CURVE)]
pub fn full_field_a(
    #[symbol("I∞")] infinite_a: f64,
    #[symbol("x")] field: f64,
    #[symbol("s")] field_exponent: f64,
    #[symbol("n₀")] zero_rpm: f64,
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("v")] behind: f64,
    #[symbol("s₀")] speed_exponent: f64,
) -> f64 {
    let begins = zero_rpm / shaft_rpm * behind / field.powf(speed_exponent);
    infinite_a * field.powf(field_exponent) * (1.0 - begins.powi(2)).max(0.0).sqrt()
}

/// Voltage behind two diodes over that of the rating.
#[formula(symbol = "v", unit = "", source = sources::OUTPUT_CURVE)]
pub fn voltage_behind(
    #[symbol("V")] volts: f64,
    #[symbol("V_d")] diode_v: f64,
    #[symbol("V_N")] test_v: f64,
) -> f64 {
    (volts + 2.0 * diode_v) / (test_v + 2.0 * diode_v)
}

/// Field current at full field over that of the rating: it follows the voltage,
/// and a warm rotor resists more. Temperatures of the rotor \[°C\].
#[formula(symbol = "x", unit = "", source = sources::COPPER)]
pub fn relative_field(
    #[symbol("V")] volts: f64,
    #[symbol("V_N")] test_v: f64,
    #[symbol("T_N")] rating_c: f64,
    #[symbol("T_rotor")] rotor_c: f64,
) -> f64 {
    volts / test_v * copper::ratio(rating_c) / copper::ratio(rotor_c)
}

/// The field current of a cold rotor over that of a rating that was read with
/// the rotor at `rating_c` \[°C\].
#[formula(symbol = "x", unit = "", source = sources::COPPER)]
pub fn cold_field(#[symbol("T_N")] rating_c: f64) -> f64 {
    copper::ratio(rating_c) / copper::ratio(COLD_ROTOR_C)
}

/// Square of the flux over that of the rating, for a current \[A\], shaft speed
/// \[rpm\] and voltage behind the diodes over that of the rating: what current
/// and voltage ask of the iron. Below n₀ the flux is what the field can make,
/// and no current flows.
#[formula(symbol = "Φ", unit = "", source = sources::OUTPUT_CURVE)]
pub fn flux_square(
    #[symbol("I")] amperes: f64,
    #[symbol("I∞")] infinite_a: f64,
    #[symbol("n₀")] zero_rpm: f64,
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("v")] behind: f64,
) -> f64 {
    (amperes / infinite_a).powi(2) + (zero_rpm / shaft_rpm * behind).powi(2).min(1.0)
}
