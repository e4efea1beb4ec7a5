//! Any number of alternators on one engine: the model does not care whether
//! there are one, two or three, nor in which order they are listed.

use ampwright_core::boat::{
    AirBasis, Alternator, Belt, Connection, Inputs, InstalledAlternator, RegulatorKind,
    WhichAlternator, Worksheet,
};
use ampwright_core::physics::thermal::Temperatures;
use ampwright_core::simulation::alternators::Alternators;
use ampwright_core::simulation::heat_soak::soak;
use ampwright_core::simulation::per_alternator::PerAlternator;
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, Trace, charge};
use ampwright_core::simulation::steady_state::settled;
use proptest::prelude::*;
use proptest::test_runner::TestCaseError;

use crate::draw::{Drawn, normal_boat};

/// What the boat draws meanwhile \[A\].
const LOAD_A: f64 = 6.0;
const LAST_S: f64 = 4.0 * 3600.0;

/// A boat with these alternators on its engine, whatever its worksheet says of
/// its own. A worksheet describes two at most, so that the third one has no name.
fn plant(inputs: &Inputs, alternators: &[(Alternator, Connection)]) -> Plant {
    let belt = Belt::default();
    let installed: PerAlternator<InstalledAlternator> = alternators
        .iter()
        .map(|(alternator, connection)| InstalledAlternator {
            which: WhichAlternator::First,
            alternator,
            belt: &belt,
            connection: *connection,
            boat: inputs,
        })
        .collect();
    Alternators::calibrate(&installed).plant(inputs, LOAD_A)
}

fn run(plant: &Plant) -> Trace {
    charge(plant, 0.3, 0.95, LAST_S, &Fineness::USUAL)
}

/// A bank that three alternators do not fill at once, in air that they warm.
fn roomy(mut inputs: Inputs) -> Inputs {
    inputs.bank.capacity_ah = 1500.0;
    inputs.bank.charge_limit_a = Some(5000.0);
    inputs
}

fn near(what: &str, one: f64, other: f64, part: f64) -> Result<(), TestCaseError> {
    prop_assert!(
        (one - other).abs() <= part * (1.0 + one.abs()),
        "{what}: {one} and {other}"
    );
    Ok(())
}

fn as_warm(one: &Temperatures, other: &Temperatures, kelvin: f64) -> Result<(), TestCaseError> {
    for (what, one_c, other_c) in [
        ("winding", one.winding_c, other.winding_c),
        ("body", one.body_c, other.body_c),
        ("rectifier", one.rectifier_c, other.rectifier_c),
        ("air", one.air_c, other.air_c),
    ] {
        prop_assert!(
            (one_c - other_c).abs() <= kelvin,
            "{what}: {one_c} and {other_c} °C"
        );
    }
    Ok(())
}

/// At any moment of a run what the alternators give goes to house and bank, what
/// their shafts take is what they give and lose, and each one's losses warm it or
/// its air.
fn balanced(plant: &Plant) -> Result<(), TestCaseError> {
    let trace = run(plant);
    for look in 0..=20 {
        let sample = trace.sample(trace.last_s() * f64::from(look) / 20.0);
        let moment = &sample.moment;
        let flow = &moment.flow;
        prop_assert_eq!(flow.outputs.len(), plant.alternators.len());
        let direct = plant.alternators.iter().zip(&flow.outputs);
        let to_house_a: f64 = direct
            .filter(|(one, _)| one.connection.on_house())
            .map(|(_, output)| output.amperes)
            .sum();
        near(
            "to the house",
            to_house_a - plant.taken_a(0.0),
            flow.bank_a,
            1e-9,
        )?;
        let shafts_w: f64 = moment
            .alternators()
            .map(|(output, losses)| output.power_w() + losses.total_w())
            .sum();
        near("shafts", shafts_w, moment.shaft_w(), 1e-12)?;
        let each = plant.alternators.iter().zip(&sample.thermal);
        for ((alternator, warm), losses) in each.zip(&moment.losses) {
            let network = &alternator.network;
            let [winding, body, rectifier] = network.rates(&warm.t, losses);
            let stored_w = winding * network.winding_j_k
                + body * network.body_j_k
                + rectifier * network.rectifier_j_k;
            let to_air_w = network.heat_to_air_w(&warm.t, losses);
            near("heat", stored_w + to_air_w, losses.total_w(), 1e-6)?;
        }
    }
    // What the run carries along is what flowed.
    let end_s = trace.last_s();
    let steps = 4000;
    let mean_a: f64 = (0..steps)
        .map(|k| {
            let seconds = end_s * (f64::from(k) + 0.5) / f64::from(steps);
            let outputs = trace.sample(seconds).moment.flow.outputs;
            outputs.iter().map(|output| output.amperes).sum::<f64>()
        })
        .sum::<f64>()
        / f64::from(steps);
    near(
        "carried along",
        mean_a * end_s / 3600.0,
        trace.alternator_ah(end_s),
        2e-3,
    )
}

proptest! {
    #![proptest_config(crate::cases(40))]

    #[test]
    fn three_keep_the_balance(Drawn(sheet) in normal_boat(), second_a in 40.0..150.0f64, third_a in 40.0..150.0f64) {
        let inputs = roomy(sheet.inputs);
        let of = |rated_a| Alternator { rated_a, ..inputs.alt };
        let house = Connection::HouseBank;
        balanced(&plant(&inputs, &[(inputs.alt, house), (of(second_a), house), (of(third_a), house)]))?;
    }

    /// Three of a kind give and take alike, in the run, settled and after it.
    #[test]
    fn three_of_a_kind_share_alike(Drawn(sheet) in normal_boat()) {
        let inputs = roomy(sheet.inputs);
        let one = (inputs.alt, Connection::HouseBank);
        let plant = plant(&inputs, &[one; 3]);
        let trace = run(&plant);
        for look in 0..=10 {
            let sample = trace.sample(trace.last_s() * f64::from(look) / 10.0);
            let outputs = &sample.moment.flow.outputs;
            for other in 1..3 {
                near("amperes", outputs[0].amperes, outputs[other].amperes, 1e-9)?;
                as_warm(&sample.thermal[0].t, &sample.thermal[other].t, 1e-6)?;
            }
        }
        let hot = settled(&plant, 0.5);
        let after = soak(&plant, &trace, trace.last_s());
        let peaks = trace.peaks(trace.last_s());
        for other in 1..3 {
            if hot.stable {
                near("hot", hot.flow.outputs[0].amperes, hot.flow.outputs[other].amperes, 1e-5)?;
            }
            as_warm(&after.hottest[0], &after.hottest[other], 1e-5)?;
            near("peak", peaks.loads[0].shaft_w, peaks.loads[other].shaft_w, 1e-7)?;
        }
    }

    /// The order of the list changes nothing.
    #[test]
    fn the_order_does_not_matter(Drawn(sheet) in normal_boat(), other_a in 40.0..150.0f64, role in 0..3usize) {
        let inputs = roomy(sheet.inputs);
        let other = Alternator { rated_a: other_a, ..inputs.alt };
        // A DC-DC charger is there where the worksheet has one.
        let connection = match role {
            0 => Connection::HouseBank,
            1 => Connection::StartBattery,
            _ => inputs.first_alternator().connection,
        };
        let pair = [(inputs.alt, inputs.first_alternator().connection), (other, connection)];
        let (one, swapped) = (plant(&inputs, &pair), plant(&inputs, &[pair[1], pair[0]]));
        let (there, back) = (run(&one), run(&swapped));
        near("time", there.last_s(), back.last_s(), 1e-3)?;
        let until_s = there.last_s().min(back.last_s());
        for (at, opposite) in [(0, 1), (1, 0)] {
            as_warm(&there.hottest(until_s)[at], &back.hottest(until_s)[opposite], 0.1)?;
        }
        let (hot, turned) = (settled(&one, 0.5), settled(&swapped, 0.5));
        prop_assert_eq!(hot.stable, turned.stable);
        if hot.stable {
            near("bank", hot.flow.bank_a, turned.flow.bank_a, 1e-4)?;
            for (at, opposite) in [(0, 1), (1, 0)] {
                let (amperes, other) = (hot.flow.outputs[at].amperes, turned.flow.outputs[opposite].amperes);
                near("hot", amperes, other, 1e-4)?;
            }
        }
    }

    /// One that turns too slowly to give anything leaves the other as it is, in air
    /// that neither warms.
    #[test]
    fn one_that_gives_nothing_changes_nothing(Drawn(sheet) in normal_boat()) {
        let mut inputs = roomy(sheet.inputs);
        inputs.space.basis = AirBasis::Measured;
        inputs.reg.kind = RegulatorKind::External;
        let idle = Alternator { pulley_ratio: 0.01, ..inputs.alt };
        let [first, idle] = [inputs.alt, idle].map(|one| (one, Connection::HouseBank));
        let (alone, both) = (run(&plant(&inputs, &[first])), run(&plant(&inputs, &[first, idle])));
        let seconds = alone.last_s().min(both.last_s());
        near("charge", alone.soc_at(seconds), both.soc_at(seconds), 1e-4)?;
    }
}

/// By hand: three equal alternators on the house bank start with three times the
/// current of one, as long as nothing but their curves holds them back.
#[test]
fn three_cold_ones_give_about_three_times_one() {
    let mut inputs = roomy(Worksheet::default().inputs);
    // A bank that hardly resists: its voltage does not rise with the current.
    inputs.bank.resistance_ohm_ah = 0.1;
    inputs.bank.harness_mohm = 0.0;
    let one = (inputs.alt, Connection::HouseBank);
    let cold_a = |count: usize| {
        let plant = plant(&inputs, &vec![one; count]);
        plant.charging_a(&plant.flow(0.0, 0.3, &plant.resting()))
    };
    let (alone, three) = (cold_a(1), cold_a(3));
    assert!(alone > 50.0, "{alone} A");
    assert!((three / alone - 3.0).abs() < 0.01, "{alone} and {three} A");
}

/// Two on the start battery share its engine services, and none goes missing.
#[test]
fn two_on_the_start_battery_share_its_services() {
    let inputs = Worksheet::default().inputs;
    let small = Alternator {
        rated_a: 50.0,
        ..inputs.alt
    };
    let plant = plant(
        &inputs,
        &[
            (inputs.alt, Connection::HouseBank),
            (inputs.alt, Connection::StartBattery),
            (small, Connection::StartBattery),
        ],
    );
    let flow = plant.flow(0.0, 0.5, &plant.resting());
    let [_, larger, smaller] = flow.outputs.into_inner().expect("three");
    let services_a = inputs.way.services_a;
    assert!((larger.amperes + smaller.amperes - services_a).abs() < 1e-9);
    assert!(larger.amperes > 1.5 * smaller.amperes);
    assert_eq!(larger.volts, inputs.way.start_v);
}
