//! The engine space follows the engine: a bigger engine gives it more heat,
//! and does not cool it.

use crate::regulated::regulated;
use ampwright_core::boat::{Inputs, Key};
use ampwright_core::exchange::open_link;
use ampwright_core::physics::thermal::AirBalance;
use ampwright_core::schema::Value;
use ampwright_core::simulation::engine_space::SpaceAir;
use ampwright_core::{Worksheet, report};

/// From one small cylinder to a trawler's engine \[L\].
const SIZES_L: [f64; 8] = [0.3, 0.5, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0];

fn boat(displacement_l: f64, engine_rpm: f64) -> Worksheet {
    let mut sheet = regulated();
    for (name, number) in [
        ("eng_displacement_l", displacement_l),
        ("eng_rpm", engine_rpm),
        // As much heat as a usual alternator gives, hot.
        ("alt_rated_a", 80.0),
    ] {
        let key = Key::named(name).expect("a key");
        sheet.state(key, Value::Number(number)).expect("in range");
    }
    sheet
}

/// MIL-HDBK-1003/11, "Diesel-Electric Generating Plants", 1987, section
/// 15.6.2.1: up to 7 % of the fuel's heat goes into the engine room. The band
/// about it is own reasoning.
#[test]
fn the_block_gives_its_share_of_the_fuels_heat() {
    for displacement_l in SIZES_L {
        for engine_rpm in [1200.0, 1500.0, 1800.0] {
            let sheet = boat(displacement_l, engine_rpm);
            let (inputs, report) = (&sheet.inputs, report(&sheet));
            let air_c = report.analyses.alternators[0]
                .hot
                .expect("it settles")
                .air_c;
            let block_w = inputs.engine_surface_w_k() * (inputs.eng.running_c - air_c);
            let fuel_l_h = report.analyses.run.fuel_l / (report.analyses.run.minutes / 60.0);
            let fuel_w = fuel_l_h * inputs.eng.fuel_kg_l * inputs.eng.fuel_mj_kg * 1e6 / 3600.0;
            let share_pct = 100.0 * block_w / fuel_w;
            assert!(
                (4.0..=8.0).contains(&share_pct),
                "{displacement_l} L at {engine_rpm} rpm: {share_pct:.1} %"
            );
        }
    }
}

/// Air of the space with nothing but the engine in it \[°C\].
fn engine_alone_c(inputs: &Inputs) -> f64 {
    match SpaceAir::new(inputs, inputs.eng.rpm).balance(0.0) {
        AirBalance::Fixed(air_c) => air_c,
        AirBalance::Open {
            conductance_w_k,
            heat_w,
        } => heat_w / conductance_w_k,
    }
}

#[test]
fn a_bigger_engine_does_not_cool_its_space() {
    let alone: Vec<f64> = SIZES_L
        .map(|size| engine_alone_c(&boat(size, 1500.0).inputs))
        .to_vec();
    assert!(alone.is_sorted(), "{alone:?}");
    // The same alternator warms a large space less than a small one: what is
    // left of the difference is that.
    let with: Vec<f64> = SIZES_L
        .map(|size| {
            report(&boat(size, 1500.0)).analyses.alternators[0]
                .hot
                .expect("it settles")
                .air_c
        })
        .to_vec();
    for air_c in &with {
        assert!((air_c - with[3]).abs() < 2.0, "{with:?}");
    }
}

/// A link of version 1 had one engine space for every engine.
#[test]
fn older_links_keep_their_space() {
    let old = open_link("v=1&eng_displacement_l=6&end")
        .expect("a link")
        .sheet;
    let inputs = &old.inputs;
    assert_eq!(
        [
            inputs.engine_surface_w_k(),
            inputs.space_wall_w_k(),
            inputs.space_leak_m3h(),
            inputs.space_heat_capacity_kj_k(),
        ],
        [18.0, 12.0, 15.0, 30.0]
    );
    // That is what 1.5 L have.
    let usual = regulated().inputs;
    assert_eq!(
        [
            usual.engine_surface_w_k(),
            usual.space_wall_w_k(),
            usual.space_leak_m3h(),
            usual.space_heat_capacity_kj_k(),
        ],
        [18.0, 12.0, 15.0, 30.0]
    );
}
