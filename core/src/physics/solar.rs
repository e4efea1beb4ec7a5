//! The sun on a level surface and what panels make of it. All times are solar:
//! at 12 the sun stands highest.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::physics::sources;

/// Days of the year whose sun is about the mean of their month, January
/// first: S. A. Klein, "Calculation of monthly average insolation on tilted
/// surfaces", Solar Energy 19, 325–329, 1977 (from memory).
pub const MIDDLE_DAYS: [f64; 12] = [
    17.0, 47.0, 75.0, 105.0, 135.0, 162.0, 198.0, 228.0, 258.0, 288.0, 318.0, 344.0,
];

/// Energy of an hour of full sun, 1000 W/m² \[MJ/m²\].
pub const FULL_SUN_MJ: f64 = 3.6;

/// Hours of full sun that give a day's energy \[h\]: what reaches the ground (part
/// of 0 to 1) of the sun on a level square metre outside the air \[MJ/m²\]; an
/// hour of full sun is 3.6 MJ.
#[formula(symbol = "h_sun", unit = "h", source = sources::SOLAR)]
pub fn full_sun_hours(#[symbol("K")] clearness: f64, #[symbol("H₀")] outside_air_mj: f64) -> f64 {
    clearness * outside_air_mj / FULL_SUN_MJ
}

/// Part of their rated power that panels give, 0 to 1: what a cool panel would give,
/// times what heat leaves of it.
#[formula(symbol = "η", unit = "", source = sources::SOLAR)]
pub fn warm_yield(#[symbol("η_sun")] yield_share: f64, #[symbol("k_heat")] heat: f64) -> f64 {
    yield_share * heat
}

/// Where the sun stands on a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunPlace {
    /// Sine of the declination, north positive.
    pub sin_declination: f64,
    /// Square of the mean distance over that of the day.
    pub nearness: f64,
}

impl SunPlace {
    /// On a day of the year, 1 to 366: the low-precision formulas of "The
    /// Astronomical Almanac" (page C24 of that for 2000, as restated
    /// publicly), half a day late, which is the mean over leap years. The day's
    /// sun is then within 0.3 % of a full reckoning; the plainer equation 24 of
    /// the FAO paper below is a degree off in late September, 5 % at 60° N.
    pub fn on(day: f64) -> SunPlace {
        let days = day - 0.5;
        let anomaly = (357.528 + 0.985_600_3 * days).to_radians();
        let longitude =
            (280.460 + 0.985_647_4 * days + 1.915 * anomaly.sin() + 0.020 * (2.0 * anomaly).sin())
                .to_radians();
        let distance = 1.00014 - 0.01671 * anomaly.cos() - 0.00014 * (2.0 * anomaly).cos();
        SunPlace {
            sin_declination: 23.439_f64.to_radians().sin() * longitude.sin(),
            nearness: distance.powi(-2),
        }
    }

    /// Hour angle of sunset \[rad\] at a latitude \[°\], south negative: R. G.
    /// Allen et al., "Crop evapotranspiration", FAO Irrigation and Drainage
    /// Paper 56, 1998, equation 25. 0 where the sun does not rise, π where it
    /// does not set.
    pub fn sunset_rad(&self, latitude_deg: f64) -> f64 {
        let (up, across) = self.height(latitude_deg);
        (-up / across).clamp(-1.0, 1.0).acos()
    }

    /// Sun of a day on a level surface outside the air \[MJ/m²\] at a latitude
    /// \[°\]: the same paper, equation 21, with 0.0820 MJ/m² a minute.
    pub fn outside_air_mj(&self, latitude_deg: f64) -> f64 {
        let (up, across) = self.height(latitude_deg);
        let sunset = self.sunset_rad(latitude_deg);
        let through_day = sunset * up + across * sunset.sin();
        (24.0 * 60.0 / PI * 0.0820 * self.nearness * through_day).max(0.0)
    }

    /// sin φ sin δ and cos φ cos δ: the sun's height is the first plus the
    /// second times the cosine of the hour angle.
    fn height(&self, latitude_deg: f64) -> (f64, f64) {
        let latitude = latitude_deg.to_radians();
        let cos_declination = (1.0 - self.sin_declination.powi(2)).sqrt();
        (
            latitude.sin() * self.sin_declination,
            latitude.cos() * cos_declination,
        )
    }
}

/// Hours from sunrise to sunset for the hour angle of sunset \[rad\]: the same
/// paper, equation 34.
pub fn daylight_h(sunset_rad: f64) -> f64 {
    24.0 / PI * sunset_rad
}

/// Part of the day's sun in each hour, the first from 0 to 1 o'clock; they add
/// up to 1. The long-term mean shape r = (a + b·cos ω)(cos ω − cos ω_s) of M.
/// Collares-Pereira, A. Rabl, "The average distribution of solar radiation",
/// Solar Energy 22, 155–164, 1979 (equation as restated publicly), integrated
/// over each hour and scaled to the whole. For a sun that does not rise the
/// sum falls to the two hours at noon.
pub fn hour_shares(sunset_rad: f64) -> impl Iterator<Item = f64> {
    let a = 0.409 + 0.5016 * (sunset_rad - PI / 3.0).sin();
    let b = 0.6609 - 0.4767 * (sunset_rad - PI / 3.0).sin();
    let c = sunset_rad.cos();
    // The integral from noon.
    let until = move |w: f64| {
        let w = w.clamp(-sunset_rad, sunset_rad);
        (a - b * c) * w.sin() - a * c * w + b * (0.5 * w + 0.25 * (2.0 * w).sin())
    };
    let whole = 2.0 * until(sunset_rad);
    (-12..12).map(move |hour| {
        if sunset_rad < 1e-3 {
            return if hour == -1 || hour == 0 { 0.5 } else { 0.0 };
        }
        let angle = PI / 12.0 * f64::from(hour);
        (until(angle + PI / 12.0) - until(angle)) / whole
    })
}

/// Temperature of a panel's cells \[°C\] in air of `air_c` \[°C\] under a sun
/// of `w_m2` \[W/m²\]: air + G·(NOCT − 20)/800, NOCT \[°C\] being measured at
/// 800 W/m² in air of 20 °C; J. A. Duffie, W. A. Beckman, "Solar Engineering
/// of Thermal Processes" (from memory).
pub fn cell_c(air_c: f64, w_m2: f64, noct_c: f64) -> f64 {
    air_c + w_m2 * (noct_c - 20.0) / 800.0
}

/// Power of a panel over that of its label, which is at 25 °C, for cells of
/// `cell_c` \[°C\] that lose the part `loss_per_k` \[1/K\] with each degree;
/// never below 0. Common practice, no source.
pub fn heat_factor(cell_c: f64, loss_per_k: f64) -> f64 {
    (1.0 - loss_per_k * (cell_c - 25.0)).max(0.0)
}

/// Energy from panels \[W·h\]: label power \[W\] times hours of full sun times
/// yield (0 to 1); J. A. Duffie, W. A. Beckman, "Solar Engineering of Thermal
/// Processes" (from memory), for the idea of full-sun hours.
#[formula(symbol = "E_sun", unit = "W·h", source = sources::SOLAR)]
pub fn sun_wh(
    #[symbol("P_sun")] panel_w: f64,
    #[symbol("h_sun")] full_hours: f64,
    #[symbol("η_sun")] yield_share: f64,
) -> f64 {
    panel_w * full_hours * yield_share
}
