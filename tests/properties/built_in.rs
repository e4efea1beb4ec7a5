//! A built-in regulator holds less as it warms.

use crate::regulated;
use ampwright_core::boat::Key;
use ampwright_core::schema::Value;
use ampwright_core::simulation::Limit;
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, charge};
use ampwright_core::simulation::steady_state::settled;
use ampwright_core::{Worksheet, report};

fn opened(link: &str) -> Worksheet {
    regulated::opened(link)
}

fn falling(sheet: &Worksheet, mv_k: f64) -> Worksheet {
    let mut other = sheet.clone();
    let key = Key::named("reg_drop_mv_k").expect("a key");
    other.state(key, Value::Number(mv_k)).expect("in range");
    other
}

const BOATS: [&str; 5] = [
    "v=2&reg_kind=internal&end",
    "v=2&reg_kind=internal&bank_chemistry=flooded&end",
    "v=2&reg_kind=internal&bank_chemistry=agm&bank_nominal_v=24&end",
    "v=2&reg_kind=internal&bank_nominal_v=48&space_outside_c=-10&end",
    "v=2&reg_kind=internal&two_role=house&alt_rated_a=60&end",
];

/// 14.4 V at 20 °C falling by 10 mV/K: technical manuals of a small marine
/// diesel and of passenger cars. By hand: air drawn in at 54 °C (40 °C, and 15 %
/// of the way to a body of 133.3), half-way to the body 93.7 °C, 73.7 K warmer.
#[test]
fn held_by_hand() {
    let sheet = opened("v=2&reg_kind=internal&reg_fixed_v=14.4&end");
    let alternator = Plant::new(&sheet.inputs, 0.0).alternators[0];
    let mut t = ampwright_core::physics::thermal::Temperatures::all(20.0);
    assert_eq!(alternator.holds_v(&t), Some(14.4));
    (t.air_c, t.body_c) = (40.0, 400.0 / 3.0);
    let held_v = alternator.holds_v(&t).expect("it holds");
    assert!((held_v - (14.4 - 0.01 * 73.667)).abs() < 1e-3, "{held_v}");
    // An external one holds what the bank is to get.
    assert_eq!(
        Plant::new(&Worksheet::default().inputs, 0.0).alternators[0].holds_v(&t),
        None
    );
}

#[test]
fn the_hotter_the_less() {
    for link in BOATS {
        let sheet = opened(link);
        let mut before: Option<(f64, f64)> = None;
        for mv_k in [0.0, 3.5, 7.0, 10.0, 12.0] {
            let of = report(&falling(&sheet, mv_k));
            let minutes = of.analyses.run.minutes_to_target.unwrap_or(f64::INFINITY);
            if let Some((hot_a, earlier)) = before {
                assert!(
                    of.analyses.output.hot_a <= hot_a + 1e-6,
                    "{link}: {mv_k} mV/K"
                );
                assert!(minutes >= earlier - 0.1, "{link}: {mv_k} mV/K");
            }
            before = Some((of.analyses.output.hot_a, minutes));
        }
    }
}

/// Within one run the voltage comes down as the alternator warms.
#[test]
fn it_falls_within_the_run() {
    let sheet = opened("v=2&reg_kind=internal&bank_chemistry=flooded&end");
    let run = report(&sheet).analyses.run;
    let held: Vec<&ampwright_core::analysis::Moment> = run
        .series
        .iter()
        .filter(|m| m.limit == Limit::ChargeVoltage)
        .collect();
    let (first, last) = (held[0], held[held.len() - 1]);
    let lowest_v = held.iter().map(|m| m.bank_v).fold(first.bank_v, f64::min);
    assert!(first.bank_v - lowest_v > 0.3, "{first:?}, {lowest_v} V");
    assert!(last.alternators[0].case_c > first.alternators[0].case_c);
    // Without it the voltage stands.
    let level = report(&falling(&sheet, 0.0)).analyses.run;
    for m in level
        .series
        .iter()
        .filter(|m| m.limit == Limit::ChargeVoltage)
    {
        assert!((m.bank_v - 14.2).abs() < 1e-6, "{m:?}");
    }
}

/// Where everything settles is where a long run ends: with the bank so large
/// that its charge hardly moves.
#[test]
fn a_long_run_settles_there() {
    for link in BOATS {
        let mut sheet = opened(link);
        let inputs = &mut sheet.inputs;
        inputs.bank.resistance_ohm_ah = 10.0;
        inputs.bank.capacity_ah = 5000.0;
        let plant = Plant::new(inputs, 0.0);
        let run = charge(&plant, 0.5, 1.0, 6.0 * 3600.0, &Fineness::USUAL);
        let last = run.sample(run.last_s());
        let steady = settled(&plant, last.soc);
        let (ran_a, settled_a) = (last.moment.flow.bank_a, steady.flow.bank_a);
        assert!(
            (ran_a - settled_a).abs() < 0.01 * settled_a,
            "{link}: {ran_a} A, {settled_a} A"
        );
        let (ran, settled) = (last.thermal[0].t, steady.temperatures[0]);
        assert!(
            (ran.body_c - settled.body_c).abs() < 1.0,
            "{link}: {ran:?}, {settled:?}"
        );
    }
}

/// In version 1 a built-in regulator held the bank's charge voltage.
#[test]
fn older_links_hold_what_they_held() {
    let old = opened("v=1&reg_kind=internal&bank_chemistry=flooded&end").inputs;
    assert_eq!((old.held_v(), old.built_in_drop_v_k()), (14.6, 0.0));
    let new = opened("v=2&reg_kind=internal&bank_chemistry=flooded&bank_nominal_v=24&end").inputs;
    assert_eq!((new.held_v(), new.built_in_drop_v_k()), (28.4, 0.02));
}
