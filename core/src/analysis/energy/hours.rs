//! A mean day hour by hour: what the loads want, what the panels give, and what
//! of it reaches the loads at once or through the bank.

use crate::analysis::solar_day::SolarDay;
use crate::boat::DayUse;
use crate::boat::Inputs;
use crate::physics::charging::rest_ah;

/// Hours in a day.
const HOURS: usize = 24;

/// What each hour of a mean day wants and brings, from midnight by the sun.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayHours {
    /// Wanted by the loads \[A·h\].
    pub use_ah: [f64; HOURS],
    /// From the panels \[A·h\].
    pub sun_ah: [f64; HOURS],
}

/// What the bank can do with sun that the loads leave.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SolarStorage {
    /// Ampere-hours kept of those put in, 0 to 1.
    pub charge_efficiency: f64,
    /// Most current the bank may take \[A\].
    pub limit_a: f64,
    /// Room for it: the usable window \[A·h\].
    pub room_ah: f64,
}

/// Where a day's sun goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SolarSplit {
    /// Straight to the loads; it pays no charge efficiency \[A·h\].
    pub direct_ah: f64,
    /// Kept by the bank for the hours without enough sun, its charge efficiency
    /// taken off \[A·h\].
    pub stored_ah: f64,
}

impl SolarStorage {
    /// The bank of a worksheet.
    pub fn of(inputs: &Inputs) -> SolarStorage {
        let window_pct = (inputs.window_high_pct() - inputs.window_low_pct()).max(0.0);
        SolarStorage {
            charge_efficiency: inputs.house_bank().charge_efficiency,
            limit_a: inputs.charge_limit_a(),
            room_ah: window_pct / 100.0 * inputs.bank.capacity_ah,
        }
    }
}

impl DayHours {
    /// Spreads a day's use over its hours, beside the sun of that day. The
    /// night's share of the use is spread evenly over the dark, the rest over
    /// the light; where there is no dark, or no light, its share is spread over
    /// the whole day. Own reasoning.
    pub fn new(day: &DayUse, sky: &SolarDay, bank_v: f64) -> DayHours {
        let night = day.night_share_pct / 100.0;
        let light_h = sky.daylight_h;
        let dark_h = HOURS as f64 - light_h;
        let part = |hours: f64, whole_h: f64| {
            if whole_h > 1e-6 {
                hours / whole_h
            } else {
                1.0 / HOURS as f64
            }
        };
        DayHours {
            use_ah: std::array::from_fn(|hour| {
                let lit = sky.light(hour);
                day.use_ah * ((1.0 - night) * part(lit, light_h) + night * part(1.0 - lit, dark_h))
            }),
            sun_ah: std::array::from_fn(|hour| {
                sky.hours_w.get(hour).copied().unwrap_or_default() / bank_v
            }),
        }
    }

    /// This day with its use and its sun each multiplied by a factor.
    pub fn scaled(&self, used: f64, sun: f64) -> DayHours {
        DayHours {
            use_ah: self.use_ah.map(|ah| ah * used),
            sun_ah: self.sun_ah.map(|ah| ah * sun),
        }
    }

    /// Where the day's sun goes. In each hour it serves the loads first. What
    /// they leave goes into the bank: no faster than the bank's charge limit, no
    /// more in a day than the usable window holds, and less the charge
    /// efficiency. Own reasoning.
    pub fn split(&self, bank: &SolarStorage) -> SolarSplit {
        let (mut direct_ah, mut spare_ah) = (0.0, 0.0);
        for (sun_ah, use_ah) in self.sun_ah.iter().zip(&self.use_ah) {
            direct_ah += sun_ah.min(*use_ah);
            spare_ah += (sun_ah - use_ah).clamp(0.0, bank.limit_a.max(0.0));
        }
        SolarSplit {
            direct_ah,
            stored_ah: (spare_ah * bank.charge_efficiency).min(bank.room_ah),
        }
    }

    /// What the sun leaves to be put back into the bank over the day \[A·h\],
    /// never less than 0: the use less what the sun gives the loads at once and
    /// through the bank.
    pub fn rest_ah(&self, bank: &SolarStorage) -> f64 {
        let use_ah = self.use_ah.iter().fold(0.0, |sum, ah| sum + ah);
        let split = self.split(bank);
        rest_ah(use_ah, split.direct_ah, split.stored_ah)
    }
}
