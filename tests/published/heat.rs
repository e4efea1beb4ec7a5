//! Heat. No open measurement of winding, case and rectifier temperatures of a
//! small alternator against speed and load was found. S. C. Tang, T. A. Keim,
//! D. J. Perreault, "Thermal modeling of Lundell alternators", IEEE Trans. Energy
//! Conversion 20(1), 2005, reports agreement with an experiment; its numbers have
//! not been seen. What stands here is what others printed about what follows from
//! such heat.

use ampwright_core::boat::{AirBasis, Chemistry, Key, RegulatorKind, WayKind};
use ampwright_core::physics::heat_balance::fan_factor;
use ampwright_core::physics::life::{grease_h, insulation_h};
use ampwright_core::schema::Value;
use ampwright_core::{Worksheet, report};

use crate::{near, near_part, within};

fn boat(regulator: RegulatorKind, figures: &[(&str, f64)]) -> Worksheet {
    let mut sheet = Worksheet::default();
    sheet.inputs.reg.kind = regulator;
    sheet.inputs.way.kind = WayKind::Direct;
    sheet.inputs.space.basis = AirBasis::Measured;
    for (name, number) in figures {
        let key = Key::named(name).expect("a key");
        sheet.state(key, Value::Number(*number)).expect("in range");
    }
    sheet
}

/// Technical manual of a small marine diesel, p. 83: its alternator of some 50 A
/// gives 41 A hot and 50 A cold at 2500 rpm of the shaft and 13.5 V, "hot" not
/// defined. Ours of 60 A, on its bench at 25 °C, settled, is somewhat below: 70 to
/// 85 %, theirs 82 %.
#[test]
fn hot_against_cold() {
    let sheet = boat(
        RegulatorKind::Internal,
        &[
            ("alt_rated_a", 60.0),
            ("bank_capacity_ah", 1000.0),
            ("bank_charge_limit_a", 1000.0),
            ("eng_rpm", 2500.0 / 2.2),
            ("space_hot_c", 25.0),
            ("space_recirculation_pct", 0.0),
        ],
    );
    let output = report(&sheet).analyses.output;
    within(
        "hot, %",
        100.0 * output.hot_a / output.full_cold_a,
        70.0,
        85.0,
    );
    let theirs: f64 = 100.0 * 41.0 / 50.0;
    within("theirs, %", theirs, 70.0, 85.0);
}

/// End windings of small fan-cooled motors, 6.5 + 5.25·u^0.6 W/(m²·K), and the air
/// inside against the housing, 15 + 6.75·u^0.65, u the rotor's peripheral speed in
/// m/s: G. Kylander, thesis, Chalmers, 1995, as coded by others (a second code
/// disagrees on a coefficient). Our one law for all parts lies between them or
/// within 6 % of the nearer, from 1500 to 7000 rpm of a rotor of 0.1 m.
#[test]
fn cooling_against_speed() {
    let u = |rpm: f64| std::f64::consts::PI * 0.1 * rpm / 60.0;
    let end_windings = |rpm: f64| 6.5 + 5.25 * u(rpm).powf(0.6);
    let housing = |rpm: f64| 15.0 + 6.75 * u(rpm).powf(0.65);
    for rpm in [1500.0, 2000.0, 4000.0, 5500.0, 7000.0] {
        let theirs = [
            end_windings(rpm) / end_windings(3000.0),
            housing(rpm) / housing(3000.0),
        ];
        let (low, high) = (theirs[0].min(theirs[1]), theirs[0].max(theirs[1]));
        let defaults = Worksheet::default().inputs.alt;
        let ours = fan_factor(
            rpm,
            3000.0,
            defaults.cooling_exponent,
            defaults.still_air_pct / 100.0,
        );
        within(&format!("{rpm} rpm"), ours, 0.94 * low, 1.06 * high);
    }
}

/// 46 CFR 183.320(b)(2): a generator rated for air of 40 °C may be used in one of
/// 50 °C at 80 % of its rating. A regulator that holds the case lets ours give more
/// than that, and less than all of it.
#[test]
fn hotter_air() {
    let held_a = |air_c: f64| {
        let sheet = boat(
            RegulatorKind::External,
            &[
                ("bank_capacity_ah", 1000.0),
                ("bank_charge_limit_a", 1000.0),
                ("space_hot_c", air_c),
            ],
        );
        report(&sheet).analyses.output.hot_a
    };
    within("50 over 40 °C", held_a(50.0) / held_a(40.0), 0.80, 0.97);
}

/// Technical manual of a small marine diesel and of a passenger car: a built-in
/// regulator holds 14.4 V at 20 °C and 10 mV less for each kelvin. Newer ones hold
/// with 3.5 ± 2 mV/K (another car's manual): within what the input may be.
#[test]
fn built_in_regulators() {
    let inputs = Worksheet::default().inputs;
    // Theirs is the upper end of what the trade finds, 14.0 to 14.4 V.
    within("at 20 °C", inputs.built_in_v(), 14.0, 14.4);
    near("each kelvin", inputs.built_in_drop_v_k(), 0.010, 1e-9);
}

/// Battery manual of a telecom supplier, table 4.3, continuous fast charging of
/// lithium iron phosphate: none below 0 °C, 0.1 C to 5, 0.2 C to 10 and, hot, 0.1 C
/// from 50 to 60 °C. Between 10 and 50 °C it allows 0.75 to 1 C, more than the
/// half that is taken here.
#[test]
fn lithium_by_temperature() {
    for (celsius, share) in [(-1.0, 0.0), (3.0, 0.1), (7.0, 0.2), (55.0, 0.1)] {
        let mut sheet = boat(RegulatorKind::External, &[("bank_temperature_c", celsius)]);
        sheet.inputs.bank.chemistry = Chemistry::Lfp;
        let ours = sheet.inputs.charge_limit_a() / sheet.inputs.bank.capacity_ah;
        near(&format!("{celsius} °C"), ours, share, 1e-9);
    }
    for celsius in [15.0, 30.0, 45.0] {
        let sheet = boat(RegulatorKind::External, &[("bank_temperature_c", celsius)]);
        let ours = sheet.inputs.charge_limit_a() / sheet.inputs.bank.capacity_ah;
        within(&format!("{celsius} °C"), ours, 0.2, 0.75);
    }
}

/// IEC 60172 and IEC 60085 (as summarised): 20 000 h at the temperature of the
/// class, half for each 10 K. The trade's rule for lithium grease in rolling
/// bearings: half for each 15 K above 70 °C.
#[test]
fn ageing() {
    near_part(
        "class F at 155 °C",
        insulation_h(155.0, 155.0),
        20_000.0,
        1e-12,
    );
    near_part("20 K hotter", insulation_h(155.0, 175.0), 5_000.0, 1e-12);
    near_part("H at 150 °C", insulation_h(180.0, 150.0), 160_000.0, 1e-12);
    near_part(
        "grease at 100 °C",
        grease_h(100.0) / grease_h(70.0),
        0.25,
        1e-12,
    );
    near_part("no longer when cold", grease_h(40.0), grease_h(70.0), 1e-12);
}
