//! How long insulation and bearing grease last at a temperature. Orders of
//! magnitude: how often it gets warm and cold, dirt and vibration are not in them.

use crate::formula::formula;
use crate::physics::sources;

/// Life of insulation at the temperature of its class \[h\]: the index of IEC 60172
/// and IEC 60085 is found with 20 000 h (as summarised).
const AT_CLASS_H: f64 = 20_000.0;
/// Longest life that is told \[h\]; own reasoning: nobody has tried insulation for
/// longer, and other causes end an alternator before.
const LONGEST_H: f64 = 100_000.0;
/// Life of a mineral lithium grease in a small ball bearing at 70 °C \[h\]; from
/// memory.
const GREASE_H: f64 = 20_000.0;
/// Up to here grease ages no faster \[°C\].
const GREASE_C: f64 = 70.0;

/// Hours that insulation lasts at a temperature \[°C\], of a class that bears `class_c`
/// \[°C\]: half as long for each 10 K.
#[formula(symbol = "t_ins", unit = "h", source = sources::INSULATION_LIFE)]
pub fn insulation_h(#[symbol("T_class")] class_c: f64, #[symbol("T_w")] winding_c: f64) -> f64 {
    AT_CLASS_H * 2.0_f64.powf((class_c - winding_c) / 10.0)
}

/// Hours of a life \[h\] that are worth telling: 100 000 h at the most.
#[formula(symbol = "t", unit = "h", source = sources::OWN_REASONING)]
pub fn told_life_h(#[symbol("t_life")] life_h: f64) -> f64 {
    life_h.min(LONGEST_H)
}

/// Hours that a bearing's grease lasts at the temperature of the case \[°C\]: half as
/// long for each 15 K above 70 °C.
#[formula(symbol = "t_grease", unit = "h", source = sources::GREASE_LIFE)]
pub fn grease_h(#[symbol("T_b")] case_c: f64) -> f64 {
    GREASE_H * 2.0_f64.powf((GREASE_C - case_c).min(0.0) / 15.0)
}
