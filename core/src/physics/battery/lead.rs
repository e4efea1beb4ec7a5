//! Lead-acid batteries: a sloping rest voltage, an appetite that falls as they
//! fill and as they cool, and an electrolyte that freezes the sooner the
//! emptier they are.

use crate::numerics::interpolate;

/// What tells one kind of lead battery from another; voltages of a 12 V block
/// of six cells at 25 °C, common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeadKind {
    /// At rest, empty and full \[V\].
    pub rest_v: (f64, f64),
    /// Absorption voltage \[V\].
    pub absorption_v: f64,
    /// Lowest absorption voltage that still fills it \[V\].
    pub least_v: f64,
    /// Highest voltage it withstands day by day \[V\].
    pub most_v: f64,
    /// Usual limit of the charge current \[A for each A·h\].
    pub usual_rate: f64,
    /// Most it takes at that voltage \[A for each A·h\].
    pub acceptance_per_ah: f64,
    /// Hours in which the missing charge falls to a third at that voltage.
    pub taper_h: f64,
    /// Ampere-hours that come out for those that went in, 0 to 1.
    pub efficiency: f64,
    /// Peukert's exponent, from memory.
    pub peukert: f64,
}

/// Flooded cells: 14.4 to 14.8 V, more than 15.0 V only to equalise; 0.2 of 0.2
/// to 0.25 C.
pub const FLOODED: LeadKind = LeadKind {
    rest_v: (11.85, 12.65),
    absorption_v: 14.6,
    least_v: 14.4,
    most_v: 15.0,
    usual_rate: 0.2,
    acceptance_per_ah: 0.2,
    taper_h: 2.0,
    efficiency: 0.87,
    peukert: 1.25,
};

/// Absorbed in glass mat: 14.2 to 14.8 V; 0.35 of 0.3 to 0.4 C.
pub const AGM: LeadKind = LeadKind {
    rest_v: (11.9, 12.85),
    absorption_v: 14.4,
    least_v: 14.2,
    most_v: 14.8,
    usual_rate: 0.35,
    acceptance_per_ah: 0.4,
    taper_h: 1.2,
    efficiency: 0.93,
    peukert: 1.15,
};

/// Gelled acid: 14.1 to 14.4 V, as gas cannot come back into the gel; 0.25 of
/// 0.2 to 0.25 C.
pub const GEL: LeadKind = LeadKind {
    rest_v: (11.9, 12.85),
    absorption_v: 14.2,
    least_v: 14.1,
    most_v: 14.4,
    usual_rate: 0.25,
    acceptance_per_ah: 0.25,
    taper_h: 1.8,
    efficiency: 0.92,
    peukert: 1.15,
};

/// Usual temperature compensation \[mV for each cell and kelvin\], common practice.
pub const COMPENSATION_MV: f64 = -4.0;
/// Cells in a 12 V block.
const CELLS: f64 = 6.0;

/// What a lead battery takes at its compensated voltage, over what it takes at
/// 25 °C, against its temperature \[°C\]. Common practice, no source: cold acid
/// diffuses slowly, half is taken at the freezing point of water. EN 50342-1
/// (from memory) asks a starter battery at 0 °C for 0.1 A for each A·h, half
/// the 0.2 of [`FLOODED`].
const ACCEPTANCE: [(f64, f64); 5] = [
    (-30.0, 0.1),
    (-20.0, 0.2),
    (0.0, 0.5),
    (25.0, 1.0),
    (40.0, 1.4),
];

/// Density of the electrolyte of a flooded battery, empty and full \[kg/L\],
/// by the 20-hour capacity; common practice, no source.
const DENSITY: (f64, f64) = (1.12, 1.265);

/// Freezing point of sulphuric acid \[°C\] against its density \[kg/L\]: US Army
/// TM 5-1185, "Electrolyte freezing points": 1.100 +19 °F, 1.150 +5, 1.200 −16,
/// 1.250 −62, 1.280 −90; 1.000 is water.
const FREEZING: [(f64, f64); 6] = [
    (1.0, 0.0),
    (1.1, -7.2),
    (1.15, -15.0),
    (1.2, -26.7),
    (1.25, -52.2),
    (1.28, -67.8),
];

impl LeadKind {
    /// Rest voltage of a 12 V block \[V\].
    pub fn rest_v(&self, soc: f64) -> f64 {
        let (empty, full) = self.rest_v;
        interpolate(&[(0.0, empty), (1.0, full)], soc).unwrap_or_default()
    }

    /// This battery at a temperature \[°C\]: a cold one takes less at its
    /// compensated voltage and fills more slowly, a warm one more.
    pub fn at_temperature(self, celsius: f64) -> LeadKind {
        self.of_condition(interpolate(&ACCEPTANCE, celsius).unwrap_or_default())
    }

    /// This battery in such a condition that it takes a multiple of what a healthy
    /// one takes, and fills as much sooner.
    pub fn of_condition(self, factor: f64) -> LeadKind {
        LeadKind {
            acceptance_per_ah: factor * self.acceptance_per_ah,
            taper_h: self.taper_h / factor,
            ..self
        }
    }

    /// What a bank takes at its absorption voltage \[A\]: the lesser of its
    /// appetite and the charge still missing over the tail.
    ///
    /// The falling part is the ampere-hour law, "amperes no more than the
    /// ampere-hours missing" (J. L. Woodbridge, 1935, as commonly restated),
    /// with a tail longer than its one hour, as practice finds.
    pub fn acceptance_a(&self, capacity_ah: f64, soc: f64) -> f64 {
        let missing_ah = capacity_ah * (1.0 - soc).max(0.0);
        (self.acceptance_per_ah * capacity_ah).min(missing_ah / self.taper_h)
    }
}

/// Charging voltage at a temperature \[V\], from the one at 25 °C: `blocks`
/// 12 V blocks of six cells, `mv` millivolts for each cell and kelvin.
pub fn compensated_v(at_25c_v: f64, blocks: f64, mv: f64, temperature_c: f64) -> f64 {
    at_25c_v + mv / 1000.0 * CELLS * blocks * (temperature_c - 25.0)
}

/// Temperature at which the electrolyte of a lead battery begins to freeze
/// \[°C\] at a state of charge, 0 to 1: its density falls in step with its
/// charge. Sealed batteries are taken for flooded ones.
pub fn lead_freezes_c(soc: f64) -> f64 {
    let (empty, full) = DENSITY;
    acid_freezes_c(empty + (full - empty) * soc.clamp(0.0, 1.0))
}

/// Freezing point of sulphuric acid of a density \[kg/L\], \[°C\].
pub fn acid_freezes_c(density_kg_l: f64) -> f64 {
    interpolate(&FREEZING, density_kg_l).unwrap_or_default()
}

/// Hours a battery lasts at a current: t = H·(C/(I·H))^k for a capacity C
/// \[A·h\] rated over H hours (W. Peukert, Elektrotechnische Zeitschrift 20, 1897; from memory).
pub fn peukert_hours(capacity_ah: f64, rated_h: f64, amperes: f64, exponent: f64) -> f64 {
    if amperes <= 0.0 {
        return f64::INFINITY;
    }
    rated_h * (capacity_ah / (amperes * rated_h)).powf(exponent)
}
