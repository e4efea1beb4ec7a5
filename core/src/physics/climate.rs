//! Air and sea through the months of a mean year, by latitude: an annual wave
//! whose height grows with the sine of the latitude.
//!
//! The form is that of G. R. North, J. A. Coakley, "Differences between seasonal
//! and mean annual energy balance model calculations of climate", J. Atmos. Sci.
//! 36, 1979 (from memory), whose height of 15.5 K is for land and sea together.
//! Heights and means here are for coasts: own reasoning, held by a test against
//! monthly means of coastal places from memory. A boat that matters has its own
//! months typed in.

use std::f64::consts::PI;

/// Days of each month, of a mean year January first.
pub const MONTH_DAYS: [f64; 12] = [
    31.0, 28.25, 31.0, 30.0, 31.0, 30.0, 31.0, 31.0, 30.0, 31.0, 30.0, 31.0,
];

/// When the air is warmest in the north, in months after the middle of January: on the
/// first of August.
const AIR_WARMEST: f64 = 6.5;
/// When the sea is warmest there, in months after the middle of January: in the last
/// week of August.
const SEA_WARMEST: f64 = 7.3;
/// Half of the difference between summer and winter at the pole, north \[K\].
const AIR_NORTH_K: f64 = 10.5;
const SEA_NORTH_K: f64 = 7.5;
/// South, where there is more sea \[K\].
const AIR_SOUTH_K: f64 = 7.0;
const SEA_SOUTH_K: f64 = 4.5;
/// Mean of the sea at the equator, and how much less it is at the pole \[°C, K\].
const SEA_EQUATOR_C: f64 = 28.3;
const SEA_TO_POLE_K: f64 = 27.0;
/// Where the sea freezes \[°C\].
const SEA_FREEZES_C: f64 = -1.8;

/// Where a month stands in the annual wave, −1 in the coldest to 1 in the
/// warmest. Months count from 0 for January.
fn wave(latitude_deg: f64, month: usize, warmest: f64) -> f64 {
    let half_a_year = if latitude_deg < 0.0 { 6.0 } else { 0.0 };
    let since = month as f64 - warmest - half_a_year;
    (2.0 * PI * since / 12.0).cos()
}

fn height_k(latitude_deg: f64, north_k: f64, south_k: f64) -> f64 {
    let sine = latitude_deg.to_radians().sin();
    sine.abs() * if sine < 0.0 { south_k } else { north_k }
}

/// How much warmer than its mean of the year the air is in a month \[K\], at a
/// latitude \[°\], south negative; months count from 0 for January.
pub fn air_season_k(latitude_deg: f64, month: usize) -> f64 {
    height_k(latitude_deg, AIR_NORTH_K, AIR_SOUTH_K) * wave(latitude_deg, month, AIR_WARMEST)
}

/// Temperature of the sea's surface in a month \[°C\], at a latitude \[°\], south
/// negative; months count from 0 for January. Never below freezing.
pub fn sea_c(latitude_deg: f64, month: usize) -> f64 {
    let mean_c = SEA_EQUATOR_C - SEA_TO_POLE_K * latitude_deg.to_radians().sin().powi(2);
    let season_k =
        height_k(latitude_deg, SEA_NORTH_K, SEA_SOUTH_K) * wave(latitude_deg, month, SEA_WARMEST);
    (mean_c + season_k).max(SEA_FREEZES_C)
}
