//! Figures of standards.
//!
//! IEC 60028:1925, International standard of resistance for copper (from
//! memory). IEC 60085, Electrical insulation: thermal evaluation and
//! designation. U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF). ISO
//! 8854:2012, Road vehicles: alternators with regulators: rated current at
//! 6000 rpm (from memory; ISO 16750-2 refers its rated current to that speed).
//! EN 590, Automotive fuels: diesel: 820 to 845 kg/m³ at 15 °C (from memory).

use ampwright_core::boat::{InsulationClass, Key};
use ampwright_core::physics::{air, copper};
use ampwright_core::schema::Value;

use crate::{near, within};

fn default(name: &str) -> f64 {
    match Key::named(name).expect("a key").spec().default() {
        Value::Number(number) => number,
        other => panic!("{name} is {other:?}"),
    }
}

#[test]
fn iec_60028_copper() {
    near("coefficient", copper::COEFFICIENT_PER_K, 0.003_93, 0.0);
    near("at 20 °C", copper::ratio(20.0), 1.0, 1e-12);
    near("at 120 °C", copper::ratio(120.0), 1.393, 1e-12);
    // The standard's own form of the same line: 234.45 °C is where it meets zero.
    near("zero", copper::ratio(-34.45), 200.0 / 254.45, 1e-4);
}

#[test]
fn iec_60085_classes() {
    near("B", InsulationClass::B.limit_c(), 130.0, 0.0);
    near("F", InsulationClass::F.limit_c(), 155.0, 0.0);
    near("H", InsulationClass::H.limit_c(), 180.0, 0.0);
    near("N", InsulationClass::N.limit_c(), 200.0, 0.0);
}

#[test]
fn standard_atmosphere() {
    // p/(R·T), R = 287.05 J/(kg·K): what the worksheet's density is meant to be.
    let density_kg_m3 = |celsius: f64, pascal: f64| pascal / (287.05 * (celsius + 273.15));
    // Sea level: 288.15 K, 101 325 Pa, 1.2250 kg/m³; 1000 m: 281.65 K, 89 875 Pa, 1.1116 kg/m³.
    near("sea level", density_kg_m3(15.0, 101_325.0), 1.2250, 5e-5);
    near("1000 m", density_kg_m3(8.5, 89_875.0), 1.1116, 1e-4);
    // Handbook values, from memory.
    near("30 °C", density_kg_m3(30.0, 101_325.0), 1.164, 1e-3);
    near("40 °C", density_kg_m3(40.0, 101_325.0), 1.127, 1e-3);
    near("60 °C", density_kg_m3(60.0, 101_325.0), 1.060, 1e-3);
    near("cp", air::SPECIFIC_HEAT, 1006.0, 0.5);
    // The default belongs to 31 °C, and a tenth is lost in 1000 m.
    let lost = 1.0 - density_kg_m3(8.5, 89_875.0) / density_kg_m3(15.0, 101_325.0);
    near("1000 m up", lost, 0.1, 0.01);
    near(
        "default",
        default("space_air_kg_m3"),
        density_kg_m3(31.0, 101_325.0),
        5e-3,
    );
}

#[test]
fn defaults_as_the_standards_have_them() {
    near("ISO 8854 speed", default("alt_rated_rpm"), 6000.0, 0.0);
    within("EN 590 density", default("eng_fuel_kg_l"), 0.820, 0.845);
    within("heating value", default("eng_fuel_mj_kg"), 42.5, 43.0);
}
