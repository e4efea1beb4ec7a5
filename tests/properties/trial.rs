//! The sea trial: any text is read, logs of known machines give them back, and
//! logs of other machines break nothing.
//!
//! The logs here come from our own equations, so that they show what a log can
//! tell, not how near the model is to a boat.

mod any;
mod heading_for;
mod refused;
mod told;

use std::fmt::Write;

use ampwright_core::boat::{Key, demo};
use ampwright_core::decision::calibration;
use ampwright_core::decision::calibration::{Fit, apply};
use ampwright_core::schema::{Confidence, Value};
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, charge};
use ampwright_core::text::calibration as calibration_text;
use ampwright_core::text::calibration::{fit_remarks, refusal as refusal_sentence};
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

/// What the house draws meanwhile \[A\].
const LOAD_A: f64 = 6.0;

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

/// What a log holds.
#[derive(Debug, Clone, Copy)]
struct Logged {
    /// Minutes of the run it begins and ends at.
    minutes: (u32, u32),
    air: bool,
    volts: bool,
}

const HALF_AN_HOUR: Logged = Logged {
    minutes: (0, 45),
    air: true,
    volts: false,
};

/// A log of a boat's first minutes, one reading a minute, with 2 % of noise on
/// the amps and 1 K on thermometers.
fn log_of(truth: &Worksheet, logged: Logged, seed: u64) -> String {
    let mut noise = Noise(seed | 1);
    let (first, last) = logged.minutes;
    let plant = Plant::new(&truth.inputs, LOAD_A);
    let trace = charge(&plant, 0.3, 1.0, f64::from(last) * 60.0, &Fineness::USUAL);
    let mut text = String::from("minute;amps;case;air;volts\n");
    for minute in first..=last {
        let sample = trace.sample(60.0 * f64::from(minute));
        let (given, t) = (sample.moment.flow.outputs[0], sample.thermal[0].t);
        let amps = given.amperes * (1.0 + 0.02 * noise.normal());
        let mut kept = |kept: bool, value: f64| match kept {
            true => format!("{:.2}", value + noise.normal()),
            false => String::new(),
        };
        let case = kept(true, t.body_c);
        let air = kept(logged.air, t.air_c);
        let volts = match logged.volts {
            true => format!("{:.2}", given.volts),
            false => String::new(),
        };
        writeln!(text, "{minute};{amps:.1};{case};{air};{volts}").expect("a text");
    }
    text
}

fn fitted(sheet: &Worksheet, text: &str) -> Fit {
    let log = calibration::read(text);
    assert!(log.remarks.is_empty(), "{:?}", log.remarks);
    calibration::fit(sheet, &log).unwrap_or_else(|wrong| panic!("{wrong}\n{text}"))
}

fn refusal(sheet: &Worksheet, text: &str) -> String {
    match calibration::fit(sheet, &calibration::read(text)) {
        Ok(fit) => panic!("{:?}", fit.figures),
        Err(wrong) => refusal_sentence(&wrong),
    }
}

fn corrected(sheet: &Worksheet, fit: &Fit) -> Worksheet {
    let mut sheet = sheet.clone();
    apply(&mut sheet, fit);
    sheet
}

fn has(fit: &Fit, label: &str) -> bool {
    fit.figures
        .iter()
        .any(|figure| calibration_text::fitted(figure.what).contains(label))
}

fn remarks(fit: &Fit) -> String {
    fit_remarks(&fit.remarks).join("\n")
}

/// A boat on which nobody has looked at heat, its bank large enough to take
/// all the machine gives.
fn unseen() -> Worksheet {
    let mut sheet = demo();
    say(&mut sheet, "bank_capacity_ah", 900.0);
    say(&mut sheet, "run_house_load_a", LOAD_A);
    sheet
}

/// The same boat as it really is.
fn truth(anchor_c: f64, capacity: f64) -> Worksheet {
    let mut truth = unseen();
    say(&mut truth, "alt_anchor_winding_c", anchor_c);
    say(&mut truth, "alt_heat_capacity_factor", capacity);
    truth
}

fn cooling(sheet: &Worksheet) -> f64 {
    Plant::new(&sheet.inputs, LOAD_A).alternators[0]
        .network
        .winding_air
}
