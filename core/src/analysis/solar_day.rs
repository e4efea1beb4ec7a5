//! What the panels give on a day of a month, hour by hour.

use std::f64::consts::PI;

use crate::boat::{Inputs, Month, SunBasis};
use crate::physics::solar::{
    MIDDLE_DAYS, SunPlace, cell_c, daylight_h, heat_factor, hour_shares, sun_wh, warm_yield,
};

/// A mean day of a month.
#[derive(Debug, Clone, PartialEq)]
pub struct SolarDay {
    /// Hours of full sun on a level surface that would give the same energy.
    pub full_hours: f64,
    /// Sun on a level square metre outside the air \[MJ/m²\]; none where the user
    /// gives the hours.
    pub outside_air_mj: Option<f64>,
    /// From sunrise to sunset \[h\].
    pub daylight_h: f64,
    /// What the panels give in each hour \[W\], the first from 0 to 1 o'clock
    /// by the sun.
    pub hours_w: Vec<f64>,
    given_wh: Option<f64>,
}

impl SolarDay {
    /// What the panels give in the day \[W·h\].
    pub fn day_wh(&self) -> f64 {
        self.given_wh
            .unwrap_or_else(|| self.hours_w.iter().fold(0.0, |sum, w| sum + w))
    }

    /// How much of an hour lies between sunrise and sunset, 0 to 1.
    pub fn light(&self, hour: usize) -> f64 {
        let (from, half) = (hour as f64 - 12.0, 0.5 * self.daylight_h);
        ((from + 1.0).min(half) - from.max(-half)).max(0.0)
    }
}

/// The mean day of a month. Where the user gives the sun hours, every month is
/// the same, and the sun is spread over the twelve hours of an equinox.
pub fn solar_day(inputs: &Inputs, month: Month) -> SolarDay {
    solar_day_of(inputs, month, inputs.full_sun_hours(month))
}

/// The mean day of a month with so many hours of full sun \[h\].
pub(crate) fn solar_day_of(inputs: &Inputs, month: Month, full_hours: f64) -> SolarDay {
    let sun = &inputs.sun;
    let yield_share = sun.yield_pct / 100.0;
    match sun.basis {
        SunBasis::Hours => {
            let day_wh = sun_wh(sun.panel_w, full_hours, yield_share);
            SolarDay {
                full_hours,
                outside_air_mj: None,
                daylight_h: 12.0,
                hours_w: hour_shares(0.5 * PI).map(|share| share * day_wh).collect(),
                given_wh: Some(day_wh),
            }
        }
        SunBasis::Place => {
            let day = MIDDLE_DAYS.get(month as usize).copied().unwrap_or(1.0);
            let place = SunPlace::on(day);
            let sunset = place.sunset_rad(sun.latitude_deg);
            let outside_air_mj = place.outside_air_mj(sun.latitude_deg);
            let panels_w = |share: f64| {
                let w_m2 = 1000.0 * full_hours * share;
                let cells_c = cell_c(inputs.space.outside_c, w_m2, sun.noct_c);
                let factor = heat_factor(cells_c, sun.heat_loss_pct_k / 100.0);
                sun_wh(
                    sun.panel_w,
                    full_hours * share,
                    warm_yield(yield_share, factor),
                )
            };
            SolarDay {
                full_hours,
                outside_air_mj: Some(outside_air_mj),
                daylight_h: daylight_h(sunset),
                hours_w: hour_shares(sunset).map(panels_w).collect(),
                given_wh: None,
            }
        }
    }
}
