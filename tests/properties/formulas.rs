//! Where an inner loop has a quicker form of a formula, or steps what a formula
//! solves, both say the same.

use ampwright_core::physics::full_field::{
    flux_square, full_field_a, relative_field, voltage_behind,
};
use ampwright_core::physics::heat_balance::{body_c, body_heat_w, rectifier_c, winding_c};
use ampwright_core::physics::losses::Losses;
use ampwright_core::physics::output::OutputCurve;
use ampwright_core::physics::thermal::{Temperatures, ThermalNetwork};
use ampwright_core::physics::thermal_build::{Build, HeatPaths};
use proptest::prelude::*;

fn curve() -> impl Strategy<Value = OutputCurve> {
    let first = (20.0..300.0, 800.0..2500.0, 12.0..60.0, 15.0..120.0);
    let second = (0.2..1.2, 0.3..1.2, 0.0..0.5);
    (first, second).prop_map(
        |((infinite_a, zero_rpm, test_v, rotor_c), (diode_v, field_exponent, speed_exponent))| {
            OutputCurve {
                infinite_a,
                zero_rpm,
                test_v,
                rotor_c,
                diode_v,
                field_exponent,
                speed_exponent,
            }
        },
    )
}

fn near(one: f64, two: f64, size: f64) -> bool {
    (one - two).abs() <= 1e-9 * size
}

proptest! {
    #![proptest_config(crate::cases(400))]

    #[test]
    fn full_field_is_its_quick_form(
        curve in curve(), shaft_rpm in 500.0..16_000.0, volts in 8.0..70.0, rotor_c in -10.0..200.0
    ) {
        let formula = full_field_a(
            curve.infinite_a,
            relative_field(volts, curve.test_v, curve.rotor_c, rotor_c),
            curve.field_exponent,
            curve.zero_rpm,
            shaft_rpm,
            voltage_behind(volts, curve.diode_v, curve.test_v),
            curve.speed_exponent,
        );
        let quick = curve.full_field_a(shaft_rpm, volts, rotor_c);
        prop_assert!(near(formula, quick, curve.infinite_a), "{formula} {quick}");
    }

    #[test]
    fn flux_is_its_quick_form(
        curve in curve(), shaft_rpm in 500.0..16_000.0, volts in 0.0..70.0, share in 0.0..1.2
    ) {
        let amperes = share * curve.infinite_a;
        let behind = voltage_behind(volts, curve.diode_v, curve.test_v);
        let formula =
            flux_square(amperes, curve.infinite_a, curve.zero_rpm, shaft_rpm, behind);
        let quick = curve.at_speed(shaft_rpm).flux_square(amperes, volts);
        prop_assert!(near(formula, quick, 1.0), "{formula} {quick}");
    }

    /// What a part's rate of change leaves for warming it, put into its balance,
    /// gives back its temperature.
    #[test]
    fn balances_give_back_what_is_stepped(
        (winding_c_now, body_c_now, rectifier_c_now, air_c) in
            (-10.0..250.0, -10.0..200.0, -10.0..200.0, -10.0..80.0),
        (copper_w, diode_w, field_w, iron_w, fan_w) in
            (0.0..900.0, 0.0..300.0, 0.0..100.0, 0.0..200.0, 0.0..200.0),
        (rated_w, cooling, mass_kg, recirculation, ducted) in
            (400.0..6000.0, 0.1..3.0, 3.0..20.0, 0.0..0.5, 0.0..1.0)
    ) {
        let paths = HeatPaths { winding_body_w_k: 4.0, body_air: 1.5, rectifier_air: 1.05, still_air: 0.2 };
        let build = Build { mass_kg, rated_w, rotor_rise_k: 10.0, paths };
        let machine = ThermalNetwork { recirculation, ducted, duct_c: 20.0, ..ThermalNetwork::new(&build, cooling) };
        let t = Temperatures {
            winding_c: winding_c_now,
            body_c: body_c_now,
            rectifier_c: rectifier_c_now,
            air_c,
        };
        let losses = Losses { copper_w, diode_w, field_w, iron_w, fan_w };
        let [winding, body, rectifier] = machine.rates(&t, &losses);
        let inlet_c = machine.inlet_c(&t);
        let (to_body, plate) = (machine.winding_body, machine.rectifier_body);
        let balanced = [
            winding_c(
                copper_w, to_body, t.body_c, machine.winding_air, inlet_c,
                winding * machine.winding_j_k,
            ),
            body_c(
                body_heat_w(iron_w, field_w, fan_w), to_body, t.winding_c, plate, t.rectifier_c,
                machine.body_air, inlet_c, body * machine.body_j_k,
            ),
            rectifier_c(
                diode_w, plate, t.body_c, machine.rectifier_air, inlet_c,
                rectifier * machine.rectifier_j_k,
            ),
        ];
        for (one, two) in balanced.into_iter().zip([t.winding_c, t.body_c, t.rectifier_c]) {
            prop_assert!(near(one, two, 1000.0), "{one} {two}");
        }
    }
}
