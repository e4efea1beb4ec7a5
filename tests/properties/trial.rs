//! The sea trial: any text is read, logs of known machines give them back, and
//! logs of other machines break nothing.
//!
//! The logs here come from our own equations, so that they show what a log can
//! tell, not how near the model is to a boat.

use std::fmt::Write;

use ampwright_core::Worksheet;
use ampwright_core::charge::plant::Plant;
use ampwright_core::charge::run::{Fineness, charge};
use ampwright_core::fields::Value;
use ampwright_core::trial::{self, Fit, apply};
use ampwright_core::worksheet::{Key, demo};
use proptest::prelude::*;

/// Random numbers: G. Marsaglia, "Xorshift RNGs", J. Statistical Software
/// 8(14), 2003, the triple 13, 7, 17.
struct Noise(u64);

impl Noise {
    fn even(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Normal with standard deviation 1, to within what twelve even ones sum to.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.even()).sum::<f64>() - 6.0
    }
}

fn say(sheet: &mut Worksheet, name: &str, number: f64) {
    let key = Key::named(name).expect("a key");
    sheet.state(key, Value::Number(number)).expect("in range");
}

/// Which columns a log has, beside minute, amps and case.
#[derive(Debug, Clone, Copy)]
struct Logged {
    minutes: u32,
    air: bool,
}

/// A log of a boat's first minutes: 2 % noise on the amps, 1 K on thermometers.
fn log_of(truth: &Worksheet, logged: Logged, seed: u64) -> String {
    let mut noise = Noise(seed | 1);
    let plant = Plant::new(&truth.inputs, 6.0);
    let last_s = f64::from(logged.minutes) * 60.0;
    let trace = charge(&plant, 0.3, 1.0, last_s, &Fineness::USUAL);
    let mut text = String::from("minute;amps;case;air\n");
    for minute in 0..=logged.minutes {
        let sample = trace.sample(60.0 * f64::from(minute));
        let amps = sample.moment.alternator_a * (1.0 + 0.02 * noise.normal());
        let case = sample.temperatures.body_c + noise.normal();
        let air = sample.temperatures.air_c + noise.normal();
        let air = if logged.air { format!("{air:.1}") } else { String::new() };
        writeln!(text, "{minute};{amps:.1};{case:.1};{air}").expect("a text");
    }
    text
}

fn fitted(sheet: &Worksheet, text: &str) -> Fit {
    let log = trial::read(text);
    assert!(log.remarks.is_empty(), "{:?}", log.remarks);
    trial::fit(sheet, &log).unwrap_or_else(|wrong| panic!("{wrong}\n{text}"))
}

/// A boat on which nobody has looked at heat, and the same boat as it is.
fn boats(anchor_c: f64, capacity: f64) -> (Worksheet, Worksheet) {
    let mut sheet = demo();
    say(&mut sheet, "bank_capacity_ah", 900.0);
    let mut truth = sheet.clone();
    say(&mut truth, "alt_anchor_winding_c", anchor_c);
    say(&mut truth, "alt_heat_capacity_factor", capacity);
    (sheet, truth)
}

fn check_return(anchor_c: f64, capacity: f64, seed: u64) -> Result<(), TestCaseError> {
    let (sheet, truth) = boats(anchor_c, capacity);
    let logged = Logged { minutes: 45, air: true };
    let fit = fitted(&sheet, &log_of(&truth, logged, seed));
    let mut corrected = sheet.clone();
    apply(&mut corrected, &fit);
    let cooling = |sheet: &Worksheet| Plant::new(&sheet.inputs, 6.0).cooling;
    let g = cooling(&corrected) / cooling(&truth);
    let c = corrected.inputs.alt.heat_capacity_factor / capacity;
    prop_assert!((g - 1.0).abs() < 0.05, "cooling {g} of the true one");
    prop_assert!((c - 1.0).abs() < 0.10, "capacity {c} of the true one");
    prop_assert!((0.5..1.6).contains(&fit.residual_k), "residual {} K", fit.residual_k);
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(60))]

    /// 2 % and 1 K of noise: cooling within 5 %, capacity within 10 %.
    #[test]
    fn a_known_machine_is_given_back(anchor_c in 125.0..190.0f64, capacity in 0.7..1.5f64, seed in any::<u64>()) {
        check_return(anchor_c, capacity, seed)?;
    }
}
#[test]
fn sample_gen() {
    let mut truth = Worksheet::default();
    say(&mut truth, "alt_anchor_winding_c", 138.0);
    say(&mut truth, "alt_heat_capacity_factor", 1.12);
    say(&mut truth, "space_outside_c", 26.0);
    let plant = Plant::new(&truth.inputs, 6.0);
    let trace = charge(&plant, 0.4, 1.0, 3000.0, &Fineness::USUAL);
    let mut n = Noise(77);
    for m in [0,1,2,3,4,5,6,8,10,12,15,18,21,24,27,30,33,36,40,45] {
        let s = trace.sample(60.0 * f64::from(m));
        println!("{m}, {:.0}, {:.0}, {:.0}, {:.0}, {:.1}", s.moment.alternator_a*(1.0+0.015*n.normal()), s.temperatures.body_c+0.8*n.normal(), s.temperatures.air_c+0.8*n.normal(), 1500.0+8.0*n.normal(), s.moment.alternator_v+0.03*n.normal());
    }
}
#[test]
fn sample_fit() {
    for sheet in [Worksheet::default(), demo()] {
    match trial::fit(&sheet, &trial::read(trial::SAMPLE)) { Ok(f) => {
        for x in &f.figures { println!("  {x:?}"); }
        println!("  {} {:#?}", f.residual_k, f.remarks);
        let mut a = sheet.clone(); apply(&mut a, &f);
        println!("{} -> {}", ampwright_core::report(&sheet).machine.hot_a, ampwright_core::report(&a).machine.hot_a);
     }
        Err(e) => println!("{e}") }
    }
}
