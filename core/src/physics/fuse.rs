//! Fuses: how large, how much they must be able to break, and where they go.

use crate::formula::formula;
use crate::physics::sources;

/// Ratings that fuses and breakers are commonly sold in \[A\]: common practice,
/// no source.
pub const RATINGS_A: [f64; 26] = [
    5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 100.0, 125.0, 150.0,
    175.0, 200.0, 225.0, 250.0, 300.0, 350.0, 400.0, 450.0, 500.0, 600.0, 800.0,
];

/// What a fuse is rated for over what it carries, lest it ages and opens of
/// itself: common practice (1.25 to 1.4).
pub const OVER_LOAD: f64 = 1.25;

/// What it may be over what the cable bears, under 50 V: 33 CFR 183.455(c)(1).
pub const OVER_CABLE: f64 = 1.5;

/// From here on \[V\] the stricter bound holds: 33 CFR 183.455(c)(2).
pub const STRICT_V: f64 = 50.0;

/// Along the cable from the source of power \[mm\], where the fuse cannot sit
/// on it: 7 in; 33 CFR 183.455(b)(1).
pub const BARE_MM: f64 = 177.8;
/// Along a cable from the source of power \[mm\] that lies in a sheath or box all
/// that way, where the fuse cannot sit on it: 40 in; 33 CFR 183.455(b)(2).
pub const SHEATHED_MM: f64 = 1016.0;
/// Along a cable from a battery's post \[mm\] that lies in a sheath or box all that
/// way: 72 in; ABYC E-11, 2004, as quoted by others.
pub const SHEATHED_POST_MM: f64 = 1828.8;

/// What fuses are commonly built to break \[kA\]: strips and blades 1 to 5,
/// 10 for better ones, 20 for ceramic ones of class T, beyond that industrial
/// ones: common practice, no source.
pub const BREAKS_KA: [f64; 6] = [2.0, 5.0, 10.0, 20.0, 50.0, 100.0];

/// Least a fuse on a lithium bank should be able to break \[kA\]: common practice.
pub const LITHIUM_KA: f64 = 10.0;
/// What the largest fuses commonly sold for boats can break \[kA\], ceramic ones of
/// class T: common practice.
pub const CLASS_T_KA: f64 = 20.0;
/// Least a fuse on a start battery of lead should be able to break \[kA\]: common practice.
pub const START_KA: f64 = 5.0;

/// Smallest and largest rating \[A\] for a current \[A\] in a cable that bears
/// so much \[A\] at a voltage \[V\].
///
/// Under 50 V up to 150 % of what the cable bears. From 50 V on no more than
/// it bears, or the next rating up where that is no rating, within 150 %:
/// 33 CFR 183.455(c).
pub fn bounds_a(amperes: f64, ampacity_a: f64, volts: f64) -> (f64, f64) {
    let most_a = most_rating_a(ampacity_a);
    let most_a = if volts < STRICT_V {
        most_a
    } else {
        // Of two ratings above one another the next may lie beyond 150 %.
        next_a(ampacity_a)
            .filter(|next_a| *next_a <= most_a)
            .unwrap_or(ampacity_a)
    };
    (least_rating_a(amperes), most_a)
}

/// Least rating of a fuse \[A\] for a current \[A\].
#[formula(symbol = "I_least", unit = "A", source = sources::FUSES)]
pub fn least_rating_a(#[symbol("I")] amperes: f64) -> f64 {
    OVER_LOAD * amperes
}

/// Largest rating of a fuse \[A\] for a cable's ampacity \[A\], under 50 V.
#[formula(symbol = "I_most", unit = "A", source = sources::FUSES)]
pub fn most_rating_a(#[symbol("I_z")] ampacity_a: f64) -> f64 {
    OVER_CABLE * ampacity_a
}

/// The smallest rating sold not below so much \[A\]; none beyond the largest.
pub fn next_a(amperes: f64) -> Option<f64> {
    RATINGS_A.into_iter().find(|rating| *rating >= amperes)
}

/// Current of a short right at the posts \[A\]: rest voltage \[V\] over the
/// resistance of the cells and of what lies between \[Ω\]; Ohm's law.
#[formula(symbol = "I_short", unit = "A", source = sources::OHM)]
pub fn short_circuit_a(
    #[symbol("V₀")] rest_v: f64,
    #[symbol("R_cells")] cells_ohm: f64,
    #[symbol("R_lead")] lead_ohm: f64,
) -> f64 {
    rest_v / (cells_ohm + lead_ohm).max(1e-6)
}

/// What a fuse should be able to break \[kA\]; none where none is built for it.
pub fn breaks_ka(short_circuit_a: f64, least_ka: f64) -> Option<f64> {
    let wanted_ka = (short_circuit_a / 1000.0).max(least_ka);
    BREAKS_KA.into_iter().find(|class| *class >= wanted_ka)
}
