//! What a belt carries before it slips, by its geometry and by the rules of
//! the trade.
//!
//! The belt formula with the wedge of the groove and the belt's own weight:
//! R. G. Budynas, J. K. Nisbett, "Shigley's Mechanical Engineering Design",
//! chapter on flexible elements (from memory); L. Euler, 1762, and J. A.
//! Eytelwein, 1808, for the rope without either.

use std::f64::consts::PI;

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

/// V-belts, so many of them side by side. Groove 36° (34 to 40°); a pull of
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

/// Speed of a belt \[m/s\] on a pulley \[mm, at the belt's middle line\]: π·d·n/60.
pub fn speed_m_s(pulley_mm: f64, rpm: f64) -> f64 {
    PI * pulley_mm / 1000.0 * rpm / 60.0
}

/// Torque of a power \[W\] at a speed \[rpm, above 0\], \[N·m\]: P/(2π·n/60).
pub fn torque_nm(power_w: f64, rpm: f64) -> f64 {
    power_w / (2.0 * PI * rpm / 60.0)
}

/// Wrap on the smaller of two pulleys \[rad\], diameters and centre distance
/// in the same unit: π − 2·asin((D − d)/(2C)); 0 where the centres are too
/// near for that. Shigley, open belt.
pub fn wrap_rad(one: f64, other: f64, centres: f64) -> f64 {
    PI - 2.0 * (0.5 * (one - other).abs() / centres).min(1.0).asin()
}

/// Tight over slack pull at which a belt begins to slip, both less the pull
/// from its own weight: exp(μ·θ/sin(β/2)), friction μ (0.2 wet or cold to
/// 0.4), wrap θ \[rad\], groove β \[°\].
pub fn grip(friction: f64, groove_deg: f64, wrap_rad: f64) -> f64 {
    (friction * wrap_rad / (0.5 * groove_deg.to_radians()).sin()).exp()
}

/// Pull a running belt has from its own weight \[N\]: m'·v².
pub fn own_pull_n(kg_m: f64, speed_m_s: f64) -> f64 {
    kg_m * speed_m_s * speed_m_s
}

/// Pull of the slack side when the tight side has all it may \[N\] and the
/// belt is about to slip: Tc + (T₁ − Tc)/ratio.
pub fn slack_n(tight_n: f64, own_n: f64, ratio: f64) -> f64 {
    own_n + (tight_n - own_n) / ratio
}

/// Most power a belt carries \[W\]: (T₁ − T₂)·v; 0 where its own weight takes
/// all the pull it may have.
pub fn carries_w(tight_n: f64, own_n: f64, ratio: f64, speed_m_s: f64) -> f64 {
    ((tight_n - slack_n(tight_n, own_n, ratio)) * speed_m_s).max(0.0)
}

/// Pull on a shaft \[N\] from a belt that transmits `pull_n` \[N\] at a ratio
/// of tight over slack side, with a wrap \[rad\]: the sum, as arrows, of
/// F·r/(r − 1) and F/(r − 1), which have the angle π − θ between them. The
/// pull from the belt's own weight loads no shaft. Statics.
pub fn side_n(pull_n: f64, ratio: f64, wrap_rad: f64) -> f64 {
    let square = ratio * ratio + 1.0 - 2.0 * ratio * wrap_rad.cos();
    pull_n * square.max(0.0).sqrt() / (ratio - 1.0)
}

/// Part of what a V-belt carries at 180° that is left at a wrap \[°, 90 to
/// 180\]; lower wraps follow the same curve, higher ones count as 180°:
/// 0.143543 + 0.007468·θ − 0.000015052·θ². Shigley, fit below the table of
/// the angle-of-contact factor K₁ (from memory).
pub fn wrap_factor(wrap_deg: f64) -> f64 {
    let wrap_deg = wrap_deg.clamp(0.0, 180.0);
    (0.143_543 + 0.007_468 * wrap_deg - 0.000_015_052 * wrap_deg * wrap_deg).min(1.0)
}

/// Power of an alternator by the rule of the trade \[W\]: a horsepower for
/// each 25 A at 12 V; in a system of several 12 V blocks for each 25 A and
/// block. Common practice, no source.
pub fn rule_w(amperes: f64, blocks: f64) -> f64 {
    const HORSEPOWER_W: f64 = 745.7;
    HORSEPOWER_W * amperes * blocks / 25.0
}
