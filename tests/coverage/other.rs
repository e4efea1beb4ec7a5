//! Alternators with another thermal network, stepped by other means: five nodes,
//! the rectifier in the air that is drawn in, the end windings in what the rest
//! has warmed. Its cooling and divisions are drawn widely; none of them is the
//! model's.

use std::fmt::Write;

use ampwright_core::Worksheet;
use ampwright_core::decision::calibration;
use ampwright_core::decision::uncertainty::Answers;
use ampwright_core::physics::losses::{LossModel, Losses};
use ampwright_core::physics::output::OutputCurve;
use ampwright_core::simulation::alternator::CalibratedAlternator;

use super::random::Random;
use super::told::{Coverage, told};

/// Steps of the transient \[s\]: a fiftieth of the quickest node's own time.
const STEP_S: f64 = 1.0;
const TRIAL_MIN: u32 = 45;
/// Air of the bench \[°C\], and the shaft speed there \[rpm\].
const BENCH: (f64, f64) = (25.0, 3000.0);

/// How often the range of the hot current holds what so many such alternators
/// give, before a trial and after one.
pub fn coverage(sheet: &Worksheet, count: u64) -> (Coverage, Coverage) {
    let range = told(sheet);
    let (mut before, mut after) = (Coverage::default(), Coverage::default());
    for seed in 0..count {
        let machine = Machine::drawn(sheet, seed);
        let run = machine.run(TRIAL_MIN);
        let truth = Answers {
            engine_h: f64::NAN,
            hot_a: machine.hot_a(),
        };
        before.count(&range, &truth);
        let log = calibration::read(&run);
        if let Ok(fit) = calibration::fit(sheet, &log) {
            let mut fitted = sheet.clone();
            calibration::apply(&mut fitted, &fit);
            after.count(&told(&fitted), &truth);
        }
    }
    (before, after)
}

/// Slot windings, end windings, stator, rotor, rectifier \[°C\].
type Nodes = [f64; 5];

/// One alternator in its air.
struct Machine {
    curve: OutputCurve,
    losses: LossModel,
    /// To the air that passes \[W/K\], in the order of the nodes, at the bench's speed.
    to_air: Nodes,
    /// What the passing air carries for each kelvin \[W/K\].
    stream: f64,
    /// Slot windings to stator, slot to end windings, stator to rotor, rectifier
    /// to stator \[W/K\].
    between: [f64; 4],
    /// Heat capacities \[J/K\].
    capacity: Nodes,
    /// How cooling goes with speed.
    exponent: f64,
    shaft_rpm: f64,
    air_c: f64,
    set_point_c: f64,
    band_k: f64,
    volts: f64,
    seed: u64,
}

impl Machine {
    /// One that a worksheet may stand for.
    fn drawn(sheet: &Worksheet, seed: u64) -> Machine {
        let mut random = Random::new(seed + 77);
        let inputs = &sheet.inputs;
        let installed = inputs.first_alternator();
        let calibrated = CalibratedAlternator::of(&installed);
        let near = |random: &mut Random, share: f64| (share * random.normal()).exp();
        let size = (installed.alternator.rated_a * installed.test_v() / 1520.0).powf(0.57);
        let kg = installed.mass_kg() * near(&mut random, 0.1);
        let mut curve = calibrated.curve;
        curve.infinite_a *= near(&mut random, 0.08);
        let mut of = |w_k: f64| size * w_k * near(&mut random, 0.3);
        let mut machine = Machine {
            to_air: [of(0.3), of(2.6), of(2.6), of(1.4), of(2.8)],
            stream: of(28.0),
            between: [of(4.5), of(5.0), of(1.2), of(0.8)],
            capacity: [
                45.0 * kg,
                55.0 * kg,
                240.0 * kg,
                150.0 * kg,
                45.0 * kg + 40.0,
            ],
            exponent: random.between(0.5, 0.8),
            shaft_rpm: installed.shaft_rpm(inputs.eng.rpm) * near(&mut random, 0.05),
            air_c: inputs.space.hot_c + 4.0 * random.normal(),
            set_point_c: inputs.reg.set_point_c,
            band_k: inputs.reg.fold_band_k,
            volts: installed.test_v() * 0.965,
            losses: calibrated.losses,
            curve,
            seed,
        };
        machine.cool_to(random.between(108.0, 162.0));
        machine
    }

    /// Scales its cooling so that its hottest winding reaches a temperature at full
    /// field on the bench \[°C\].
    fn cool_to(&mut self, winding_c: f64) {
        let (mut low, mut high) = (0.05f64, 20.0f64);
        let unit = self.to_air;
        for _ in 0..40 {
            let middle = (low * high).sqrt();
            self.to_air = unit.map(|w_k| w_k * middle);
            let bench = self.settled(BENCH.1, BENCH.0, |machine, t| {
                machine.full_a(BENCH.1, machine.curve.test_v, t)
            });
            if bench[0].max(bench[1]) > winding_c {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    fn full_a(&self, shaft_rpm: f64, volts: f64, t: &Nodes) -> f64 {
        self.curve.full_field_a(shaft_rpm, volts, t[3])
    }

    /// Rates of change \[K/s\].
    fn rates(&self, t: &Nodes, amperes: f64, shaft_rpm: f64, air_c: f64) -> Nodes {
        let volts = self.volts;
        let at_speed = self.losses.at_speed(&self.curve, shaft_rpm);
        let winding_c = 0.5 * (t[0] + t[1]);
        let Losses {
            copper_w,
            diode_w,
            field_w,
            iron_w,
            fan_w,
        } = at_speed.at(amperes, volts).with(winding_c, t[3]);
        let fan = (shaft_rpm / BENCH.1).powf(self.exponent);
        let g = self.to_air.map(|w_k| w_k * fan);
        let stream = self.stream * fan;
        // The air passes the rectifier, then stator and rotor, then the windings.
        let rectifier_w = g[4] * (t[4] - air_c);
        let after_c = air_c + rectifier_w / stream;
        let (stator_w, rotor_w) = (g[2] * (t[2] - after_c), g[3] * (t[3] - after_c));
        let last_c = after_c + (stator_w + rotor_w) / stream;
        let (slot_w, end_w) = (g[0] * (t[0] - last_c), g[1] * (t[1] - last_c));
        let [to_stator, along, to_rotor, to_plate] = self.between;
        let slot_to_stator_w = to_stator * (t[0] - t[2]);
        let end_to_slot_w = along * (t[1] - t[0]);
        let stator_to_rotor_w = to_rotor * (t[2] - t[3]);
        let plate_to_stator_w = to_plate * (t[4] - t[2]);
        [
            (0.5 * copper_w + end_to_slot_w - slot_to_stator_w - slot_w) / self.capacity[0],
            (0.5 * copper_w - end_to_slot_w - end_w) / self.capacity[1],
            (0.8 * iron_w + slot_to_stator_w + plate_to_stator_w - stator_to_rotor_w - stator_w)
                / self.capacity[2],
            (0.2 * iron_w + field_w + 0.3 * fan_w + stator_to_rotor_w - rotor_w) / self.capacity[3],
            (diode_w - plate_to_stator_w - rectifier_w) / self.capacity[4],
        ]
    }

    /// Where it settles in air of a temperature, giving a current that follows from
    /// its temperatures: stepped until nothing moves.
    fn settled(
        &self,
        shaft_rpm: f64,
        air_c: f64,
        gives: impl Fn(&Machine, &Nodes) -> f64,
    ) -> Nodes {
        let mut t = [air_c + 40.0; 5];
        for _ in 0..6000 {
            let rates = self.rates(&t, gives(self, &t), shaft_rpm, air_c);
            let most = rates.iter().fold(0.0f64, |most, rate| most.max(rate.abs()));
            for (t, rate) in t.iter_mut().zip(rates) {
                *t = (*t + 3.0 * STEP_S * rate).min(400.0);
            }
            if most < 1e-5 {
                break;
            }
        }
        t
    }

    /// What the regulator lets it give, by its sensor on the case.
    fn regulated_a(&self, t: &Nodes) -> f64 {
        let above = (t[2] - (self.set_point_c - 0.5 * self.band_k)) / self.band_k;
        self.full_a(self.shaft_rpm, self.volts, t) * (1.0 - above.clamp(0.0, 1.0))
    }

    /// What it holds, hot \[A\].
    fn hot_a(&self) -> f64 {
        let t = self.settled(self.shaft_rpm, self.air_c, Machine::regulated_a);
        self.regulated_a(&t)
    }

    /// What instruments show of a run of so many minutes.
    fn run(&self, minutes: u32) -> String {
        let mut random = Random::new(self.seed ^ 0x5eed);
        let clamp = 1.0 + 0.02 * random.triangle();
        let (gun_k, thermometer_k) = (2.0 * random.triangle(), 2.0 * random.triangle());
        let engine_rpm = self.shaft_rpm / 2.2 * (1.0 + 0.02 * random.triangle());
        let mut t = [self.air_c - 25.0; 5];
        let mut text = String::from("minute amps case air rpm volts\n");
        for minute in 0..=minutes {
            let warmed = 1.0 - (-f64::from(minute) / 12.0).exp();
            let air_c = self.air_c - 25.0 * (1.0 - warmed);
            let amperes = self.regulated_a(&t);
            let line = writeln!(
                text,
                "{minute} {:.1} {:.1} {:.1} {engine_rpm:.0} {:.2}",
                amperes * clamp * (1.0 + 0.01 * random.normal()),
                t[2] + gun_k + 0.5 * random.normal(),
                air_c + thermometer_k + 0.5 * random.normal(),
                self.volts,
            );
            line.expect("a text");
            for _ in 0..(60.0 / STEP_S) as u32 {
                let rates = self.rates(&t, self.regulated_a(&t), self.shaft_rpm, air_c);
                for (t, rate) in t.iter_mut().zip(rates) {
                    *t += STEP_S * rate;
                }
            }
        }
        text
    }
}
