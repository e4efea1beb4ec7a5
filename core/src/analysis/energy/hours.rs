//! A mean day hour by hour: what the loads want, what panels and other sources
//! give, and what of it reaches the loads at once or through the bank.

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
    /// From the other sources \[A·h\].
    pub other_ah: [f64; HOURS],
}

/// What the bank can do with what the loads leave of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SolarStorage {
    /// Ampere-hours kept of those put in, 0 to 1.
    pub charge_efficiency: f64,
    /// Most current the bank may take \[A\].
    pub limit_a: f64,
    /// Room for it: the usable window \[A·h\].
    pub room_ah: f64,
}

/// Where a day's sun goes, or what the other sources bring.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Split {
    /// Straight to the loads; it pays no charge efficiency \[A·h\].
    pub direct_ah: f64,
    /// Kept by the bank for the hours without enough, its charge efficiency taken
    /// off \[A·h\].
    pub stored_ah: f64,
}

/// Where a day's sun and the other sources' current go.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SourceSplit {
    /// The sun.
    pub sun: Split,
    /// The other sources.
    pub other: Split,
}

impl SourceSplit {
    /// Straight to the loads, of sun and other sources together \[A·h\].
    pub fn direct_ah(&self) -> f64 {
        self.sun.direct_ah + self.other.direct_ah
    }

    /// Through the bank, of both together \[A·h\].
    pub fn stored_ah(&self) -> f64 {
        self.sun.stored_ah + self.other.stored_ah
    }
}

/// The hours of a day in which the boat is under way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UnderWay {
    /// The hour of the clock they begin at \[h\].
    pub from_h: f64,
    /// How many they are \[h\]; 0 for a day at anchor.
    pub hours: f64,
    /// What the other sources bring meanwhile \[A\].
    pub amperes: f64,
}

impl UnderWay {
    /// A day at anchor.
    pub const NEVER: UnderWay = UnderWay {
        from_h: 0.0,
        hours: 0.0,
        amperes: 0.0,
    };

    /// How much of an hour of the day the boat is under way, 0 to 1.
    fn part_of(&self, hour: usize) -> f64 {
        let begins_h = hour as f64;
        let until_h = self.from_h + self.hours;
        ((begins_h + 1.0).min(until_h) - begins_h.max(self.from_h)).clamp(0.0, 1.0)
    }
}

impl SolarStorage {
    /// The bank of a worksheet.
    pub fn of(inputs: &Inputs) -> SolarStorage {
        let window_pct = (inputs.window_high_pct() - inputs.window_low_pct()).max(0.0);
        SolarStorage {
            charge_efficiency: inputs.house_bank().charge_efficiency,
            limit_a: inputs.charge_limit_a(),
            room_ah: window_pct / 100.0 * inputs.bank_ah(),
        }
    }
}

impl DayHours {
    /// Spreads a day's use over its hours, beside the sun of that day. The
    /// night's share of the use is spread evenly over the dark, the rest over
    /// the light; where there is no dark, or no light, its share is spread over
    /// the whole day. Own reasoning. The other sources bring nothing; see
    /// [`DayHours::with_other`].
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
            other_ah: [0.0; HOURS],
        }
    }

    /// This day with other sources: so much in each hour at anchor \[A\], and so
    /// much in the hours under way \[A\], from one hour of the day on.
    pub fn with_other(self, anchor_a: f64, way: UnderWay) -> DayHours {
        DayHours {
            other_ah: std::array::from_fn(|hour| {
                let part = way.part_of(hour);
                part * way.amperes + (1.0 - part) * anchor_a
            }),
            ..self
        }
    }

    /// This day with its use and its sun each multiplied by a factor.
    pub fn scaled(&self, used: f64, sun: f64) -> DayHours {
        DayHours {
            use_ah: self.use_ah.map(|ah| ah * used),
            sun_ah: self.sun_ah.map(|ah| ah * sun),
            ..*self
        }
    }

    /// Where the day's sun and the other sources' current go. In each hour they
    /// serve the loads first, the other sources before the sun. What is left goes
    /// into the bank: no faster than the bank's charge limit, no more in a day than
    /// the usable window holds, and less the charge efficiency; where not all of it
    /// fits, each is turned away by its share. Own reasoning.
    pub fn split(&self, bank: &SolarStorage) -> SourceSplit {
        let limit_a = bank.limit_a.max(0.0);
        let mut split = SourceSplit::default();
        let (mut sun_spare_ah, mut other_spare_ah) = (0.0, 0.0);
        let hours = self.sun_ah.iter().zip(&self.other_ah).zip(&self.use_ah);
        for ((sun_ah, other_ah), use_ah) in hours {
            let other_direct_ah = other_ah.min(*use_ah);
            let left_ah = use_ah - other_direct_ah;
            split.other.direct_ah += other_direct_ah;
            split.sun.direct_ah += sun_ah.min(left_ah);
            let sun_left_ah = (sun_ah - left_ah).max(0.0);
            let other_left_ah = other_ah - other_direct_ah;
            let spare_ah = (sun_left_ah + other_left_ah).min(limit_a);
            if other_left_ah > 0.0 {
                let other_part = other_left_ah / (sun_left_ah + other_left_ah);
                other_spare_ah += spare_ah * other_part;
                sun_spare_ah += spare_ah * (1.0 - other_part);
            } else {
                sun_spare_ah += spare_ah;
            }
        }
        let spare_ah = sun_spare_ah + other_spare_ah;
        let stored_ah = (spare_ah * bank.charge_efficiency).min(bank.room_ah);
        if other_spare_ah > 0.0 {
            split.other.stored_ah = stored_ah * other_spare_ah / spare_ah;
            split.sun.stored_ah = stored_ah * sun_spare_ah / spare_ah;
        } else {
            split.sun.stored_ah = stored_ah;
        }
        split
    }

    /// What sun and other sources leave to be put back into the bank over the day
    /// \[A·h\], never less than 0: the use less what they give the loads at once
    /// and through the bank.
    pub fn rest_ah(&self, bank: &SolarStorage) -> f64 {
        let use_ah = self.use_ah.iter().fold(0.0, |sum, ah| sum + ah);
        let split = self.split(bank);
        rest_ah(use_ah, split.direct_ah(), split.stored_ah())
    }
}
