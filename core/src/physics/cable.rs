//! Copper cable: its sizes, what it resists and what is lost along it.

use crate::formula::formula;
use crate::physics::copper;
use crate::physics::sources;

/// Resistivity of annealed copper at 20 °C \[Ω·mm²/km\]: IEC 60028:1925,
/// International standard of resistance for copper (from memory).
pub const COPPER_OHM_MM2_KM: f64 = 17.241;

/// What stranding adds to the resistance of the plain area: strands run in a
/// spiral and are 2 % longer than the cable; ASTM B8 (from memory).
const STRANDED: f64 = 1.02;

/// The most that the tinned column of IEC 60228 class 5 adds to its plain one
/// (13.7 over 13.3 Ω/km at 1.5 mm²), taken for gauge sizes too: own reasoning.
const TINNED: f64 = 1.03;

/// A gauge size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gauge {
    /// As it is written: "2/0 AWG".
    pub name: &'static str,
    /// Its number in the formula: 0 for 1/0, −1 for 2/0.
    pub number: i32,
}

const fn gauge(name: &'static str, number: i32) -> Gauge {
    Gauge { name, number }
}

/// The gauge sizes of 33 CFR 183.425 table 5 that may be laid on their own:
/// its paragraph (e) begins at No. 16.
pub const GAUGES: [Gauge; 14] = [
    gauge("16 AWG", 16),
    gauge("14 AWG", 14),
    gauge("12 AWG", 12),
    gauge("10 AWG", 10),
    gauge("8 AWG", 8),
    gauge("6 AWG", 6),
    gauge("4 AWG", 4),
    gauge("3 AWG", 3),
    gauge("2 AWG", 2),
    gauge("1 AWG", 1),
    gauge("1/0 AWG", 0),
    gauge("2/0 AWG", -1),
    gauge("3/0 AWG", -2),
    gauge("4/0 AWG", -3),
];

/// A metric size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Metric {
    /// As it is written: "70 mm²".
    pub name: &'static str,
    /// Nominal area \[mm²\].
    pub mm2: f64,
    /// Most it may resist at 20 °C, plain copper \[Ω/km\].
    pub plain_ohm_km: f64,
    /// Most it may resist at 20 °C, tinned strands \[Ω/km\].
    pub tinned_ohm_km: f64,
}

const fn metric(name: &'static str, mm2: f64, plain_ohm_km: f64, tinned_ohm_km: f64) -> Metric {
    Metric {
        name,
        mm2,
        plain_ohm_km,
        tinned_ohm_km,
    }
}

/// Flexible conductors of class 5: IEC 60228, Conductors of insulated cables,
/// 2004, table 3, as several published cable tables restate it.
pub const METRICS: [Metric; 16] = [
    metric("1.5 mm²", 1.5, 13.3, 13.7),
    metric("2.5 mm²", 2.5, 7.98, 8.21),
    metric("4 mm²", 4.0, 4.95, 5.09),
    metric("6 mm²", 6.0, 3.30, 3.39),
    metric("10 mm²", 10.0, 1.91, 1.95),
    metric("16 mm²", 16.0, 1.21, 1.24),
    metric("25 mm²", 25.0, 0.780, 0.795),
    metric("35 mm²", 35.0, 0.554, 0.565),
    metric("50 mm²", 50.0, 0.386, 0.393),
    metric("70 mm²", 70.0, 0.272, 0.277),
    metric("95 mm²", 95.0, 0.206, 0.210),
    metric("120 mm²", 120.0, 0.161, 0.164),
    metric("150 mm²", 150.0, 0.129, 0.132),
    metric("185 mm²", 185.0, 0.106, 0.108),
    metric("240 mm²", 240.0, 0.0801, 0.0817),
    metric("300 mm²", 300.0, 0.0641, 0.0654),
];

impl Gauge {
    /// Diameter of the solid wire \[mm\]: 0.127·92^((36 − n)/39); ASTM B258,
    /// Standard nominal diameters of solid round wires used as electrical
    /// conductors. For n from 36 to −3.
    pub fn diameter_mm(self) -> f64 {
        0.127 * 92.0_f64.powf(f64::from(36 - self.number) / 39.0)
    }

    /// Area of the copper \[mm²\]: π·d²/4.
    pub fn mm2(self) -> f64 {
        std::f64::consts::FRAC_PI_4 * self.diameter_mm().powi(2)
    }

    /// Area in circular mils: the square of the diameter in thousandths of an inch.
    pub fn circular_mils(self) -> f64 {
        (self.diameter_mm() / 0.0254).powi(2)
    }

    /// Resistance at 20 °C of a solid wire of that area \[Ω/km\].
    pub fn solid_ohm_km(self) -> f64 {
        COPPER_OHM_MM2_KM / self.mm2()
    }

    /// Resistance at 20 °C of a stranded cable \[Ω/km\].
    pub fn ohm_km(self, tinned: bool) -> f64 {
        self.solid_ohm_km() * STRANDED * if tinned { TINNED } else { 1.0 }
    }
}

impl Metric {
    /// Most it may resist at 20 °C \[Ω/km\].
    pub fn ohm_km(self, tinned: bool) -> f64 {
        if tinned {
            self.tinned_ohm_km
        } else {
            self.plain_ohm_km
        }
    }
}

/// Volts lost along a run, out and back \[V\]: 2·l·I·R′(T), with the length one
/// way \[m\], the current \[A\], the resistance at 20 °C \[Ω/km\] and the
/// copper's temperature \[°C\]; Ohm's law.
#[formula(symbol = "U_drop", unit = "V", source = sources::OHM)]
pub fn drop_v(
    #[symbol("l")] length_m: f64,
    #[symbol("I")] amperes: f64,
    #[symbol("R₂₀")] ohm_km_20c: f64,
    #[symbol("T_Cu")] copper_c: f64,
) -> f64 {
    2.0 * length_m / 1000.0 * amperes * ohm_km_20c * copper::ratio(copper_c)
}

/// Temperature of the copper \[°C\] that carries a part of what would warm it
/// from that of the place to that of its insulation: the heat goes with the
/// square of the current, T = T_place + (T_insulation − T_place)·(I/I_most)².
/// Own reasoning; from 0 to 1 of what it bears, held at the ends.
#[formula(symbol = "T_Cu", unit = "°C", source = sources::OWN_REASONING)]
pub fn copper_c(
    #[symbol("T_air")] place_c: f64,
    #[symbol("T_ins")] insulation_c: f64,
    #[symbol("s")] share: f64,
) -> f64 {
    place_c + (insulation_c - place_c).max(0.0) * share.clamp(0.0, 1.0).powi(2)
}

/// Circular mils by the rule of the trade CM = K·I·L/E with K = 10.75, I in A,
/// L out and back in ft and E in V: ABYC E-11, DC and AC electrical systems on
/// boats (from memory). Shown beside; nothing is chosen by it.
#[formula(symbol = "CM", unit = "", source = sources::CIRCULAR_MILS)]
pub fn circular_mils(
    #[symbol("I")] amperes: f64,
    #[symbol("l")] length_m: f64,
    #[symbol("U_allowed")] allowed_v: f64,
) -> f64 {
    10.75 * amperes * (2.0 * length_m / 0.3048) / allowed_v
}

/// What each of several cables side by side carries \[A\].
#[formula(symbol = "I", unit = "A", source = sources::ARITHMETIC)]
pub fn each_a(#[symbol("I_all")] amperes: f64, #[symbol("N")] cables: f64) -> f64 {
    amperes / cables
}

/// What a cable carries \[A\] over its ampacity \[A\].
#[formula(symbol = "s", unit = "", source = sources::ARITHMETIC)]
pub fn load_share(#[symbol("I")] amperes: f64, #[symbol("I_z")] ampacity_a: f64) -> f64 {
    amperes / ampacity_a
}

/// What a cable's ampacity \[A\] leaves over what it carries \[A\], of that \[%\].
#[formula(symbol = "f", unit = "%", source = sources::ARITHMETIC)]
pub fn spare_pct(#[symbol("I_z")] ampacity_a: f64, #[symbol("I")] amperes: f64) -> f64 {
    100.0 * (ampacity_a / amperes - 1.0)
}

/// What an inverter takes of a bank \[A\] for a power \[W\], at an efficiency from 0 to 1
/// and a voltage \[V\].
#[formula(symbol = "I", unit = "A", source = sources::ARITHMETIC)]
pub fn inverter_a(
    #[symbol("P")] power_w: f64,
    #[symbol("η")] efficiency: f64,
    #[symbol("V")] volts: f64,
) -> f64 {
    power_w / (efficiency * volts)
}

/// Voltage drop allowed \[V\] as a share (0 to 1) of the nominal voltage of a system
/// of `blocks` 12 V blocks in series.
#[formula(symbol = "U_allowed", unit = "V", source = sources::ARITHMETIC)]
pub fn allowed_v(#[symbol("p")] share: f64, #[symbol("N")] blocks: f64) -> f64 {
    share * 12.0 * blocks
}

/// The smallest gauge with at least this area \[circular mils\]; none beyond 4/0.
pub fn gauge_of_mils(circular_mils: f64) -> Option<Gauge> {
    GAUGES
        .into_iter()
        .find(|gauge| gauge.circular_mils() >= circular_mils)
}
