//! What a belt carries before it slips, by its geometry and by the rules of
//! the trade.
//!
//! The belt formula with the wedge of the groove and the belt's own weight:
//! R. G. Budynas, J. K. Nisbett, "Shigley's Mechanical Engineering Design",
//! chapter on flexible elements (from memory); L. Euler, 1762, and J. A.
//! Eytelwein, 1808, for the rope without either.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::physics::sources;

/// A kind of belt: what one takes from tables.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeltType {
    /// Angle between the flanks of a groove \[°\].
    pub groove_deg: f64,
    /// Mass of all its belts or ribs \[kg/m\].
    pub kg_m: f64,
    /// Most pull of the tight side, all belts or ribs together \[N\].
    pub tight_n: f64,
    /// Alternator current the trade trusts it with in a 12 V system: wary, bold \[A\].
    pub rule_a: (f64, f64),
    /// Least wrap the trade wants on the smaller pulley \[°\].
    pub least_wrap_deg: f64,
    /// Smallest pulley it bends round for long \[mm\].
    pub least_pulley_mm: f64,
    /// Tight over slack side a drive is tightened for.
    pub usual_ratio: f64,
}

/// One or more V-belts side by side. Groove 36° (34 to 40°); a pull of
/// 350 N for 10 mm and 475 N for 13 mm (450 to 500 N); 0.065 and 0.11 kg/m;
/// tight over slack 5: all from memory. Rule, wrap and pulley: common practice.
const fn v_belts(
    kg_m: f64,
    tight_n: f64,
    rule_a: (f64, f64),
    least_pulley_mm: f64,
    count: f64,
) -> BeltType {
    BeltType {
        groove_deg: 36.0,
        kg_m: kg_m * count,
        tight_n: tight_n * count,
        rule_a,
        least_wrap_deg: 120.0,
        least_pulley_mm,
        usual_ratio: 5.0,
    }
}

/// A multi-rib belt of the car's profile (ISO 9982; 3.56 mm a rib). Groove
/// 40°; 105 N a rib (90 to 120 N); 0.02 kg/m a rib; pulleys from 50 mm; tight
/// over slack 4: all from memory. Rule and wrap: common practice.
const fn ribs(count: f64, rule_a: (f64, f64)) -> BeltType {
    BeltType {
        groove_deg: 40.0,
        kg_m: 0.02 * count,
        tight_n: 105.0 * count,
        rule_a,
        least_wrap_deg: 140.0,
        least_pulley_mm: 50.0,
        usual_ratio: 4.0,
    }
}

/// One V-belt 10 mm wide.
pub const V10: BeltType = v_belts(0.065, 350.0, (75.0, 80.0), 60.0, 1.0);
/// One V-belt 13 mm wide.
pub const V13: BeltType = v_belts(0.11, 475.0, (100.0, 110.0), 65.0, 1.0);
/// Two V-belts 13 mm wide.
pub const TWO_V13: BeltType = v_belts(0.11, 475.0, (160.0, 200.0), 65.0, 2.0);
/// Six ribs.
pub const RIBS_6: BeltType = ribs(6.0, (180.0, 200.0));
/// Eight ribs.
pub const RIBS_8: BeltType = ribs(8.0, (250.0, 300.0));
/// Ten ribs; its rule is that of eight, by the rib: own reasoning.
pub const RIBS_10: BeltType = ribs(10.0, (312.5, 375.0));

/// Radians in degrees.
#[formula(symbol = "θ", unit = "°", source = sources::ARITHMETIC, constants(PI("π", "Half a turn in radians", "")))]
pub fn degrees(#[symbol("θ")] angle_rad: f64) -> f64 {
    angle_rad * 180.0 / PI
}

/// Degrees in radians.
#[formula(symbol = "θ", unit = "", source = sources::ARITHMETIC, constants(PI("π", "Half a turn in radians", "")))]
pub fn radians(#[symbol("θ")] angle_deg: f64) -> f64 {
    angle_deg * PI / 180.0
}

/// Engine pulley \[mm\] that makes a pulley ratio with an alternator pulley \[mm\].
#[formula(symbol = "D", unit = "mm", source = sources::ARITHMETIC)]
pub fn engine_pulley_mm(#[symbol("i")] pulley_ratio: f64, #[symbol("d")] pulley_mm: f64) -> f64 {
    pulley_ratio * pulley_mm
}

/// Speed of a belt \[m/s\] on a pulley \[mm, at the belt's middle line\]: π·d·n/60.
#[formula(symbol = "v", unit = "m/s", source = sources::ARITHMETIC, constants(PI("π", "Half a turn in radians", "")))]
pub fn speed_m_s(#[symbol("d")] pulley_mm: f64, #[symbol("n")] rpm: f64) -> f64 {
    PI * pulley_mm / 1000.0 * rpm / 60.0
}

/// Torque of a power \[W\] at a speed \[rpm, above 0\], \[N·m\]: P/(2π·n/60).
#[formula(symbol = "M", unit = "N·m", source = sources::ARITHMETIC, constants(PI("π", "Half a turn in radians", "")))]
pub fn torque_nm(#[symbol("P")] power_w: f64, #[symbol("n")] rpm: f64) -> f64 {
    power_w / (2.0 * PI * rpm / 60.0)
}

/// What the engine gives \[W\] for a power at a shaft \[W\]; efficiency of the belt
/// 0 to 1.
#[formula(symbol = "P_engine", unit = "W", source = sources::ARITHMETIC)]
pub fn engine_w(#[symbol("P")] shaft_w: f64, #[symbol("η_belt")] belt_efficiency: f64) -> f64 {
    shaft_w / belt_efficiency
}

/// Wrap on the smaller of two pulleys \[rad\], diameters and centre distance
/// in the same unit: π − 2·asin((D − d)/(2C)); 0 where the centres are too
/// near for that. Shigley, open belt.
#[formula(symbol = "θ", unit = "", source = sources::BELTS, constants(PI("π", "Half a turn in radians", "")))]
pub fn wrap_rad(
    #[symbol("D")] one: f64,
    #[symbol("d")] other: f64,
    #[symbol("C")] centres: f64,
) -> f64 {
    PI - 2.0 * (0.5 * (one - other).abs() / centres).min(1.0).asin()
}

/// Wrap on the smaller of two pulleys \[°\], diameters and centre distance in the
/// same unit, at least [`LEAST_WRAP_DEG`]: pulleys that near do not fit side by side.
#[formula(symbol = "θ", unit = "°", source = sources::BELTS)]
pub fn usual_wrap_deg(
    #[symbol("D")] one: f64,
    #[symbol("d")] other: f64,
    #[symbol("C")] centres: f64,
) -> f64 {
    degrees(wrap_rad(one, other, centres)).max(LEAST_WRAP_DEG)
}

/// The least wrap that is calculated with \[°\].
pub const LEAST_WRAP_DEG: f64 = 30.0;

/// Tight over slack pull at which a belt begins to slip, both less the pull
/// from its own weight: exp(μ·θ/sin(β/2)), friction μ (0.2 wet or cold to
/// 0.4), groove β \[°\], wrap θ \[rad\].
#[formula(symbol = "r", unit = "", source = sources::BELTS)]
pub fn grip(
    #[symbol("μ")] friction: f64,
    #[symbol("β")] groove_deg: f64,
    #[symbol("θ")] wrap_rad: f64,
) -> f64 {
    (friction * wrap_rad / radians(0.5 * groove_deg).sin()).exp()
}

/// Pull a running belt has from its own weight \[N\]: m'·v².
#[formula(symbol = "T_c", unit = "N", source = sources::STATICS)]
pub fn own_pull_n(#[symbol("m")] kg_m: f64, #[symbol("v")] speed_m_s: f64) -> f64 {
    kg_m * speed_m_s * speed_m_s
}

/// Pull of the slack side when the tight side has all it may \[N\] and the
/// belt is about to slip: Tc + (T₁ − Tc)/ratio.
#[formula(symbol = "T₂", unit = "N", source = sources::BELTS)]
pub fn slack_n(
    #[symbol("T₁")] tight_n: f64,
    #[symbol("T_c")] own_n: f64,
    #[symbol("r")] ratio: f64,
) -> f64 {
    own_n + (tight_n - own_n) / ratio
}

/// Most power a belt carries \[W\]: (T₁ − T₂)·v; 0 where its own weight takes
/// all the pull it may have.
#[formula(symbol = "P_most", unit = "W", source = sources::BELTS)]
pub fn carries_w(
    #[symbol("T₁")] tight_n: f64,
    #[symbol("T_c")] own_n: f64,
    #[symbol("r")] ratio: f64,
    #[symbol("v")] speed_m_s: f64,
) -> f64 {
    ((tight_n - slack_n(tight_n, own_n, ratio)) * speed_m_s).max(0.0)
}

/// Pull that transmits a power \[W\] at the speed of a belt \[m/s\], \[N\].
#[formula(symbol = "F", unit = "N", source = sources::STATICS)]
pub fn transmits_n(#[symbol("P")] shaft_w: f64, #[symbol("v")] speed_m_s: f64) -> f64 {
    shaft_w / speed_m_s
}

/// Pull on a shaft \[N\] from a belt that transmits `pull_n` \[N\] at a ratio
/// of tight over slack side, with a wrap \[rad\]: the sum, as arrows, of
/// F·r/(r − 1) and F/(r − 1), which have the angle π − θ between them. The
/// pull from the belt's own weight loads no shaft. Statics.
#[formula(symbol = "F_side", unit = "N", source = sources::STATICS)]
pub fn side_n(
    #[symbol("F")] pull_n: f64,
    #[symbol("r")] ratio: f64,
    #[symbol("θ")] wrap_rad: f64,
) -> f64 {
    let square = ratio * ratio + 1.0 - 2.0 * ratio * wrap_rad.cos();
    pull_n * square.max(0.0).sqrt() / (ratio - 1.0)
}

/// Part of what a V-belt carries at 180° that is left at a wrap \[°, 90 to
/// 180\]; lower wraps follow the same curve, higher ones count as 180°:
/// 0.143543 + 0.007468·θ − 0.000015052·θ². Shigley, fit below the table of
/// the angle-of-contact factor K₁ (from memory).
#[formula(symbol = "k_θ", unit = "", source = sources::BELTS)]
pub fn wrap_factor(#[symbol("θ")] wrap_deg: f64) -> f64 {
    let wrap_deg = wrap_deg.clamp(0.0, 180.0);
    (0.143_543 + 0.007_468 * wrap_deg - 0.000_015_052 * wrap_deg * wrap_deg).min(1.0)
}

/// What the trade trusts a belt with \[A\]: what it trusts it with in a 12 V system
/// and half round the pulley \[A\], less the less it is wrapped \[°\], and less
/// current the higher the voltage, in 12 V blocks. Common practice, no source.
#[formula(symbol = "I_rule", unit = "A", source = sources::COMMON_PRACTICE)]
pub fn rule_a(
    #[symbol("I₁₂")] rule_12v_a: f64,
    #[symbol("θ")] wrap_deg: f64,
    #[symbol("N")] blocks: f64,
) -> f64 {
    rule_12v_a * wrap_factor(wrap_deg) / blocks
}

/// How much of what a belt carries is used \[%\]; at most a thousandfold, also where
/// it carries nothing.
#[formula(symbol = "f", unit = "%", source = sources::ARITHMETIC)]
pub fn used_pct(#[symbol("a")] used: f64, #[symbol("b")] most: f64) -> f64 {
    if used <= 0.0 {
        return 0.0;
    }
    if most <= 0.0 {
        return MOST_USED_PCT;
    }
    (100.0 * used / most).min(MOST_USED_PCT)
}

/// The largest figure given for how much of a belt is used \[%\].
const MOST_USED_PCT: f64 = 1e5;

/// Power of an alternator by the rule of the trade \[W\]: a horsepower for
/// each 25 A at 12 V; in a system of several 12 V blocks for each 25 A and
/// block. Common practice, no source.
#[formula(symbol = "P_rule", unit = "W", source = sources::COMMON_PRACTICE, constants(HORSEPOWER_W("P_hp", "A horsepower", "W")))]
pub fn rule_w(#[symbol("I")] amperes: f64, #[symbol("N")] blocks: f64) -> f64 {
    HORSEPOWER_W * amperes * blocks / 25.0
}

/// A horsepower \[W\].
const HORSEPOWER_W: f64 = 745.7;
