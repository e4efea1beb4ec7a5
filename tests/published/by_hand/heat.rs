//! Heat: the machine's lumps and the engine space's air, by hand.

use ampwright_core::physics::air;
use ampwright_core::physics::heat_balance::fan_factor;
use ampwright_core::physics::losses::OpenLosses;
use ampwright_core::physics::thermal::{AirBalance, ThermalNetwork};
use ampwright_core::physics::thermal_build::{Build, HeatPaths};

use crate::near;

#[test]
fn ventilation() {
    // 1500 W into 200 m³/h of 1.164 kg/m³; and what 12.5 K would need.
    near("rise", 1500.0 / air::flow_w_k(200.0, 1.164), 23.06, 0.01);
    near(
        "flow",
        1500.0 / (12.5 * air::flow_w_k(1.0, 1.164)),
        368.9,
        0.1,
    );
}

#[test]
fn combustion_air() {
    near(
        "1.5 L, 1500 rpm",
        air::combustion_m3h(1.5, 1500.0, 0.85),
        57.4,
        0.05,
    );
}

fn build(mass_kg: f64) -> Build {
    Build {
        mass_kg,
        rated_w: 1520.0,
        rotor_rise_k: 10.0,
        paths: PATHS,
    }
}

/// The division of heat of the independent runs in `tests/reference`.
const PATHS: HeatPaths = HeatPaths {
    winding_body_w_k: 6.0,
    body_air: 1.5,
    rectifier_air: 3.2 / 3.0,
    still_air: 0.15,
};

/// Twice the power in machines of one design: 2^0.57 is 1.4845.
#[test]
fn surfaces_follow_the_rating() {
    let twice = Build {
        rated_w: 3040.0,
        ..build(6.0)
    };
    near("size", build(6.0).size(), 1.0, 1e-12);
    near("twice", twice.size(), 1.4845, 1e-4);
    for kg in [3.0, 15.0] {
        let machine = ThermalNetwork::new(&build(kg), 1.0);
        near("winding to body", machine.winding_body, 6.0, 1e-12);
        near("body to air", machine.body_air, 4.5, 1e-12);
    }
}

#[test]
fn heat_capacities() {
    for (kg, winding, body, rectifier) in
        [(6.0, 594.0, 2430.0, 310.0), (10.0, 990.0, 4050.0, 490.0)]
    {
        let machine = ThermalNetwork::new(&build(kg), 0.5);
        near("winding", machine.winding_j_k, winding, 1e-6);
        near("body", machine.body_j_k, body, 1e-6);
        near("rectifier", machine.rectifier_j_k, rectifier, 1e-6);
    }
}

#[test]
fn fan() {
    near(
        "1800",
        fan_factor(1800.0, 3000.0, 0.7, 0.15),
        0.15 + 0.85 * 0.6994,
        1e-4,
    );
    near("3000", fan_factor(3000.0, 3000.0, 0.7, 0.15), 1.0, 1e-12);
    near(
        "6000",
        fan_factor(6000.0, 3000.0, 0.7, 0.15),
        0.15 + 0.85 * 1.6245,
        1e-4,
    );
}

const LOSSES: OpenLosses = OpenLosses {
    copper_20c_w: 300.0,
    field_20c_w: 40.0,
    diode_w: 150.0,
    iron_w: 100.0,
    fan_w: 60.0,
};

/// Settled, all that is lost reaches the air and nothing warms any further.
#[test]
fn settled_heat_balance() {
    let machine = ThermalNetwork {
        recirculation: 0.15,
        ..ThermalNetwork::new(&build(6.0), 0.5)
    };
    for air in [
        AirBalance::Fixed(55.0),
        AirBalance::Open {
            conductance_w_k: 70.0,
            heat_w: 2800.0,
        },
    ] {
        let t = machine.settled(&LOSSES, &air).expect("it settles");
        let losses = LOSSES.with(t.winding_c, machine.rotor_c(t.body_c));
        near(
            "heat",
            machine.heat_to_air_w(&t, &losses),
            losses.total_w(),
            1e-6,
        );
        for rate in machine.rates(&t, &losses) {
            near("rate", rate, 0.0, 1e-9);
        }
        if let AirBalance::Open {
            conductance_w_k,
            heat_w,
        } = air
        {
            let given_w = conductance_w_k * t.air_c - heat_w;
            near("air", given_w, losses.total_w(), 1e-6);
        }
    }
}

/// Copper whose loss grows faster than its cooling has no settled state.
#[test]
fn runaway() {
    let machine = ThermalNetwork::new(&build(6.0), 0.02);
    let losses = OpenLosses {
        copper_20c_w: 3000.0,
        ..LOSSES
    };
    assert_eq!(machine.settled(&losses, &AirBalance::Fixed(40.0)), None);
}
