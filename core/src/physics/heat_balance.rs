//! Heat that passes through an alternator and its engine space, balance by
//! balance. `thermal` steps and solves them; each temperature here is the one
//! at which its balance leaves a given heat for warming.

#![allow(
    clippy::too_many_arguments,
    reason = "a balance has as many arguments as heat has ways"
)]

use crate::formula::formula;
use crate::physics::sources;
use crate::physics::thermal_shares::{
    FAN_HEAT_IN_AIR, FAN_HEAT_IN_BODY, SHARES_EXPONENT, SHARES_OF_W,
};

/// Rated power \[W\].
#[formula(symbol = "P", unit = "W", source = sources::THERMAL_NETWORK)]
pub fn rated_w(#[symbol("I_N")] rated_a: f64, #[symbol("V_N")] test_v: f64) -> f64 {
    rated_a * test_v
}

/// Surfaces of an alternator of a rated power \[W\] over those of one of 1520 W.
#[formula(symbol = "k_size", unit = "", source = sources::THERMAL_NETWORK)]
pub fn size(#[symbol("P")] rated_w: f64) -> f64 {
    (rated_w / SHARES_OF_W).powf(SHARES_EXPONENT)
}

/// Heat from a part to the air for each kelvin \[W/K\]: that of an alternator of
/// 1520 W, its size, the cooling factor and the fan.
#[formula(symbol = "G", unit = "W/K", source = sources::THERMAL_NETWORK)]
pub fn to_air_w_k(
    #[symbol("G_1520")] reference_w_k: f64,
    #[symbol("k_size")] size: f64,
    #[symbol("g")] cooling: f64,
    #[symbol("k_fan")] fan: f64,
) -> f64 {
    reference_w_k * size * cooling * fan
}

/// Heat from body or rectifier plate to the air for each kelvin \[W/K\], of
/// an alternator of 1520 W: a share of what its winding gives.
#[formula(symbol = "G_1520", unit = "W/K", source = sources::THERMAL_NETWORK)]
pub fn beside_winding_w_k(
    #[symbol("G_w,1520")] winding_w_k: f64,
    #[symbol("k_part")] share: f64,
) -> f64 {
    winding_w_k * share
}

/// Heat from a part to the body for each kelvin \[W/K\].
#[formula(symbol = "G", unit = "W/K", source = sources::THERMAL_NETWORK)]
pub fn to_body_w_k(#[symbol("G_1520")] reference_w_k: f64, #[symbol("k_size")] size: f64) -> f64 {
    reference_w_k * size
}

/// How cooling follows the fan: k_still + (1 − k_still)·(n/n_ref)^m, k_still the
/// part of it (0 to 1) that there is without a fan.
///
/// The end-winding law of small fan-cooled motors, 6.5 + 5.25·u^0.6 W/(m²·K)
/// with u the peripheral speed in m/s, and that of the air inside against the
/// housing, 15 + 6.75·u^0.65, have this form: 0.19 + 0.81·r^0.6 and 0.27 +
/// 0.73·r^0.65 at 3000 rpm of a rotor of 0.1 m. G. Kylander, "Temperature
/// prediction of electrical machines", thesis, Chalmers, 1995, as coded by
/// others; a second code disagrees on a coefficient.
#[formula(symbol = "k_fan", unit = "", source = sources::END_WINDINGS)]
pub fn fan_factor(
    #[symbol("n")] shaft_rpm: f64,
    #[symbol("n_anchor")] anchor_rpm: f64,
    #[symbol("k_cool")] exponent: f64,
    #[symbol("k_still")] still_air: f64,
) -> f64 {
    still_air + (1.0 - still_air) * (shaft_rpm / anchor_rpm).powf(exponent)
}

/// Temperature of the rotor \[°C\], from the body's.
#[formula(symbol = "T_rotor", unit = "°C", source = sources::THERMAL_NETWORK)]
pub fn rotor_c(#[symbol("T_b")] body_c: f64, #[symbol("ΔT_rotor")] rise_k: f64) -> f64 {
    body_c + rise_k
}

/// Air at the alternator's inlet \[°C\]: some of its own warm air is drawn in
/// again (0 to 1), and a duct brings a part (0 to 1) from elsewhere \[°C\].
#[formula(symbol = "T_in", unit = "°C", source = sources::THERMAL_NETWORK)]
pub fn inlet_c(
    #[symbol("T_air")] air_c: f64,
    #[symbol("β")] recirculated: f64,
    #[symbol("T_b")] body_c: f64,
    #[symbol("k_duct")] ducted: f64,
    #[symbol("T_out")] duct_c: f64,
) -> f64 {
    let drawn_c = air_c + recirculated * (body_c - air_c);
    if ducted == 0.0 {
        drawn_c
    } else {
        drawn_c + ducted * (duct_c - drawn_c)
    }
}

/// Heat an alternator gives to the air of the space \[W\]: from winding, body and
/// rectifier, and that part of the fan's own loss that leaves as warm air.
#[formula(symbol = "P_alt", unit = "W", source = sources::THERMAL_NETWORK)]
pub fn heat_to_air_w(
    #[symbol("G_w")] winding_w_k: f64,
    #[symbol("T_w")] winding_c: f64,
    #[symbol("T_in")] inlet_c: f64,
    #[symbol("G_b")] body_w_k: f64,
    #[symbol("T_b")] body_c: f64,
    #[symbol("G_r")] rectifier_w_k: f64,
    #[symbol("T_r")] rectifier_c: f64,
    #[symbol("P_fan")] fan_w: f64,
) -> f64 {
    winding_w_k * (winding_c - inlet_c)
        + body_w_k * (body_c - inlet_c)
        + rectifier_w_k * (rectifier_c - inlet_c)
        + FAN_HEAT_IN_AIR * fan_w
}

/// Winding \[°C\] at which its balance leaves `stored_w` \[W\] for warming it:
/// what it loses, what it gets from the body and the air it gives heat to.
#[formula(symbol = "T_w", unit = "°C", source = sources::THERMAL_NETWORK)]
pub fn winding_c(
    #[symbol("P_Cu")] copper_w: f64,
    #[symbol("G_wb")] to_body_w_k: f64,
    #[symbol("T_b")] body_c: f64,
    #[symbol("G_w")] to_air_w_k: f64,
    #[symbol("T_in")] inlet_c: f64,
    #[symbol("P_stored")] stored_w: f64,
) -> f64 {
    (copper_w + to_body_w_k * body_c + to_air_w_k * inlet_c - stored_w) / (to_body_w_k + to_air_w_k)
}

/// Rectifier plate \[°C\], likewise.
#[formula(symbol = "T_r", unit = "°C", source = sources::THERMAL_NETWORK)]
pub fn rectifier_c(
    #[symbol("P_d")] diode_w: f64,
    #[symbol("G_rb")] to_body_w_k: f64,
    #[symbol("T_b")] body_c: f64,
    #[symbol("G_r")] to_air_w_k: f64,
    #[symbol("T_in")] inlet_c: f64,
    #[symbol("P_stored")] stored_w: f64,
) -> f64 {
    (diode_w + to_body_w_k * body_c + to_air_w_k * inlet_c - stored_w) / (to_body_w_k + to_air_w_k)
}

/// Heat that arises in the body \[W\]: in iron and rotor, and that part of the
/// fan's loss that stays in it.
#[formula(symbol = "P_body", unit = "W", source = sources::THERMAL_NETWORK)]
pub fn body_heat_w(
    #[symbol("P_Fe")] iron_w: f64,
    #[symbol("P_field")] field_w: f64,
    #[symbol("P_fan")] fan_w: f64,
) -> f64 {
    iron_w + field_w + FAN_HEAT_IN_BODY * fan_w
}

/// Body \[°C\], likewise.
#[formula(symbol = "T_b", unit = "°C", source = sources::THERMAL_NETWORK)]
pub fn body_c(
    #[symbol("P_body")] body_w: f64,
    #[symbol("G_wb")] winding_w_k: f64,
    #[symbol("T_w")] winding_c: f64,
    #[symbol("G_rb")] rectifier_w_k: f64,
    #[symbol("T_r")] rectifier_c: f64,
    #[symbol("G_b")] to_air_w_k: f64,
    #[symbol("T_in")] inlet_c: f64,
    #[symbol("P_stored")] stored_w: f64,
) -> f64 {
    (body_w + winding_w_k * winding_c + rectifier_w_k * rectifier_c + to_air_w_k * inlet_c
        - stored_w)
        / (winding_w_k + rectifier_w_k + to_air_w_k)
}

/// Air of the engine space \[°C\], likewise: alternators and engine block warm it,
/// the air that passes and the walls carry heat away.
#[formula(symbol = "T_air", unit = "°C", source = sources::HEAT_OF_AIR)]
pub fn space_air_c(
    #[symbol("P_alt")] alternators_w: f64,
    #[symbol("G_E")] engine_w_k: f64,
    #[symbol("T_E")] engine_c: f64,
    #[symbol("G_air")] flow_w_k: f64,
    #[symbol("T_out")] outside_c: f64,
    #[symbol("G_wall")] wall_w_k: f64,
    #[symbol("T_cabin")] cabin_c: f64,
    #[symbol("P_stored")] stored_w: f64,
) -> f64 {
    (alternators_w + engine_w_k * engine_c + flow_w_k * outside_c + wall_w_k * cabin_c - stored_w)
        / (engine_w_k + flow_w_k + wall_w_k)
}

/// Temperature of what warms up from `start_c` to `hot_c` \[°C\], after `minutes`
/// \[min\]; in each `two_thirds_min` \[min\] it covers about two thirds of what is left.
#[formula(symbol = "T", unit = "°C", source = sources::HEAT_OF_AIR)]
pub fn warming_c(
    #[symbol("T_hot")] hot_c: f64,
    #[symbol("T_start")] start_c: f64,
    #[symbol("t")] minutes: f64,
    #[symbol("τ")] two_thirds_min: f64,
) -> f64 {
    hot_c + (start_c - hot_c) * (-minutes / two_thirds_min).exp()
}
