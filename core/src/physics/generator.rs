//! What a small diesel generator burns at part load.

use crate::formula::formula;
use crate::physics::sources;

/// Part of the fuel at full output that turns the generator, whatever it gives,
/// 0 to 1: 0.08145 of 0.08145 + 0.246 L/h for each kilowatt.
pub const FOOT: f64 = 0.08145 / (0.08145 + 0.246);

/// Fuel at full output of a diesel generator \[L/h\] by its rating \[kW\]:
/// 0.08145 L/h for each kilowatt of its rating and 0.246 for each it gives.
/// O. Skarstein, K. Uhlen, "Fuel considerations with respect to diesel
/// generation in wind/diesel systems", Wind Engineering 13(2), 1989 (from
/// memory).
#[formula(symbol = "B_full", unit = "L/h", source = sources::GENERATOR)]
pub fn usual_full_l_h(#[symbol("P_gen")] rated_kw: f64) -> f64 {
    (0.08145 + 0.246) * rated_kw
}

/// Fuel at a part of full output \[L/h\]: a straight line from the foot, 0 to 1
/// of the fuel at full output, up to that.
#[formula(symbol = "B_h", unit = "L/h", source = sources::GENERATOR)]
pub fn part_load_l_h(
    #[symbol("B_full")] full_l_h: f64,
    #[symbol("f_foot")] foot: f64,
    #[symbol("f_load")] load: f64,
) -> f64 {
    full_l_h * (foot + (1.0 - foot) * load)
}

/// What a mains charger takes for a current at a voltage \[kW\]; efficiency 0 to 1.
#[formula(symbol = "P_mains", unit = "kW", source = sources::ARITHMETIC)]
pub fn charger_takes_kw(
    #[symbol("I_charger")] amperes: f64,
    #[symbol("V")] volts: f64,
    #[symbol("η_charger")] efficiency: f64,
) -> f64 {
    amperes * volts / efficiency / 1000.0
}

/// Part of full output that an energy \[kW·h\] in a time \[h\] asks for, 0 to 1.
#[formula(symbol = "f_load", unit = "", source = sources::ARITHMETIC)]
pub fn load_share(
    #[symbol("E_mains")] kwh: f64,
    #[symbol("t_gen")] hours: f64,
    #[symbol("P_gen")] rated_kw: f64,
) -> f64 {
    kwh / hours / rated_kw
}

/// Fuel over a time \[L\].
#[formula(symbol = "B_gen", unit = "L", source = sources::ARITHMETIC)]
pub fn burnt_l(#[symbol("B_h")] l_h: f64, #[symbol("t_gen")] hours: f64) -> f64 {
    l_h * hours
}
