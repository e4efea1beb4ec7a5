//! The sun of a day, outside the air and aboard.
//!
//! R. G. Allen et al., "Crop evapotranspiration", FAO Irrigation and Drainage
//! Paper 56, 1998, example 8 (as printed, restated publicly); J. A. Duffie,
//! W. A. Beckman, "Solar Engineering of Thermal Processes" (from memory); a
//! table worked out with pvlib-python 0.16.1, whose sun stands where the NREL
//! algorithm puts it.

use std::f64::consts::PI;

use ampwright_core::Worksheet;
use ampwright_core::boat::SunBasis;
use ampwright_core::physics::solar::{
    FULL_SUN_MJ, MIDDLE_DAYS, SunPlace, cell_c, daylight_h, heat_factor, hour_shares,
};

use crate::{near, near_part, table};

/// The plainer sun of FAO-56, equations 23 and 24, which its example and its
/// column of the table are worked out with.
fn plain_sun(day: f64) -> SunPlace {
    let angle = 2.0 * PI * day / 365.0;
    SunPlace {
        sin_declination: (0.409 * (angle - 1.39).sin()).sin(),
        nearness: 1.0 + 0.033 * angle.cos(),
    }
}

#[test]
fn example_8() {
    // 3 September at 20° S.
    let sun = plain_sun(246.0);
    near("declination", sun.sin_declination.asin(), 0.120, 0.0005);
    near("nearness", sun.nearness, 0.985, 0.0005);
    near("sunset", sun.sunset_rad(-20.0), 1.527, 0.0005);
    near("MJ/m²", sun.outside_air_mj(-20.0), 32.2, 0.05);
}

#[test]
fn middle_of_april() {
    // 43° N, 15 April, declination 9.4°.
    let sun = SunPlace {
        sin_declination: 9.4_f64.to_radians().sin(),
        nearness: plain_sun(105.0).nearness,
    };
    near("MJ/m²", sun.outside_air_mj(43.0), 33.8, 0.05);
}

/// Latitude, day, FAO-56, Duffie & Beckman, by the minute, daylight, clear sky
/// in MJ/m² and in hours of full sun.
fn solar_table() -> Vec<[f64; 8]> {
    table::rows(include_str!("data/solar.csv"))
}

#[test]
fn ten_latitudes_seven_days() {
    let mut worst = (0.0_f64, 0.0, 0.0);
    for [latitude, day, _, _, by_minute, ..] in solar_table() {
        let ours = SunPlace::on(day).outside_air_mj(latitude);
        // 1.5 %, or 0.15 MJ where the sun is small.
        near(
            &format!("{latitude}°, day {day}"),
            ours,
            by_minute,
            (0.015 * by_minute).max(0.15),
        );
        let off = (ours / by_minute - 1.0).abs();
        if off > worst.0 {
            worst = (off, latitude, day);
        }
    }
    let (off, latitude, day) = worst;
    println!("worst {:.2} % at {latitude}°, day {day}", 100.0 * off);
}

/// A month of the year by months has the sun of its middle day: the table's
/// column by the minute at days 17 and 105, the middles of January and April.
#[test]
fn months_of_the_year() {
    for [latitude, day, _, _, by_minute, ..] in solar_table() {
        let Some(month) = MIDDLE_DAYS.iter().position(|middle| *middle == day) else {
            continue;
        };
        let mut sheet = Worksheet::default();
        sheet.inputs.sun.basis = SunBasis::Place;
        sheet.inputs.sun.latitude_deg = latitude;
        sheet.inputs.sun.clearness = 0.55;
        let hours = sheet.month_figures()[month].sun_h;
        let theirs = 0.55 * by_minute / FULL_SUN_MJ;
        near_part(&format!("{latitude}°, day {day}"), hours, theirs, 0.015);
    }
}

#[test]
fn the_same_by_the_plain_sun() {
    for [latitude, day, fao_mj, _, by_minute, fao_h, ..] in solar_table() {
        let sun = plain_sun(day);
        let what = format!("{latitude}°, day {day}");
        near(&what, sun.outside_air_mj(latitude), fao_mj, 0.005001);
        near(&what, daylight_h(sun.sunset_rad(latitude)), fao_h, 0.005001);
        // Why it is not the one aboard: late in September it is 5 % low.
        near_part(&what, fao_mj, by_minute, 0.047);
    }
}

#[test]
fn a_clear_sky_lets_through_less_than_the_air_could() {
    for [latitude, day, _, _, by_minute, _, clear_mj, clear_h] in solar_table() {
        let what = format!("{latitude}°, day {day}");
        near(&what, clear_mj / FULL_SUN_MJ, clear_h, 0.006);
        assert!(clear_mj < 0.8 * by_minute, "{what}: clearness above 0.8");
    }
}

#[test]
fn polar_day_and_night() {
    let (june, december) = (SunPlace::on(172.0), SunPlace::on(355.0));
    near("night, h", daylight_h(december.sunset_rad(70.0)), 0.0, 0.0);
    near("night, MJ/m²", december.outside_air_mj(70.0), 0.0, 0.0);
    near("day, h", daylight_h(june.sunset_rad(70.0)), 24.0, 1e-12);
    // All day long: 24·60·0.0820·d·sin φ·sin δ.
    let all_day = 24.0 * 60.0 * 0.0820 * june.nearness;
    let height = 70.0_f64.to_radians().sin() * june.sin_declination;
    near(
        "day, MJ/m²",
        june.outside_air_mj(70.0),
        all_day * height,
        1e-9,
    );
}

/// S. A. Klein's days, 1977, by the declinations printed beside them (from
/// memory), which are P. I. Cooper's, 23.45°·sin(360°·(284 + n)/365).
#[test]
fn middle_days() {
    let printed = [
        -20.9, -13.0, -2.4, 9.4, 18.8, 23.1, 21.2, 13.5, 2.2, -9.6, -18.9, -23.0,
    ];
    for (day, declination) in MIDDLE_DAYS.into_iter().zip(printed) {
        let cooper = 23.45 * (2.0 * PI * (284.0 + day) / 365.0).sin();
        near(&format!("day {day}"), cooper, declination, 0.051);
    }
}

/// M. Collares-Pereira, A. Rabl, 1979: the hours at noon of a twelve-hour day
/// hold π/24·(a + b) = 0.142 each as a rate; the mean over the hour is a little
/// less. Worked out by hand from their equation.
#[test]
fn hours_of_an_equinox() {
    let shares: Vec<f64> = hour_shares(0.5 * PI).collect();
    let (a, b) = (0.409 + 0.5016 * 0.5, 0.6609 - 0.4767 * 0.5);
    let rate = |w: f64| PI / 24.0 * (a + b * w.cos()) * w.cos();
    // Simpson over the hour from noon.
    let hour = PI / 12.0;
    let mean = (rate(0.0) + 4.0 * rate(0.5 * hour) + rate(hour)) / 6.0;
    near_part("noon", shares[12], mean, 0.01);
    near("whole", shares.iter().sum(), 1.0, 1e-12);
    near("morning and afternoon", shares[8], shares[15], 1e-12);
    near("before sunrise", shares[5], 0.0, 0.0);
}

/// NOCT 45 °C, 30 °C, 1000 W/m², by hand: 61.25 °C; 0.4 % for each degree.
#[test]
fn hot_panel() {
    near("cells", cell_c(30.0, 1000.0, 45.0), 61.25, 1e-9);
    near("power", heat_factor(61.25, 0.004), 0.855, 1e-9);
}
