//! What the engine puts on the house side, as a table: reckoned once, so that
//! a year of runs costs next to nothing.
//!
//! Two things hold the current down. Heat: a run from a cold start into a bank
//! that does not fill gives the current against the time since the start, and
//! after its end the last of it; as a bank fills its voltage rises, and the
//! current of a hot alternator falls with it. The bank: what flows from a cold
//! alternator at each state of charge, and from a built-in regulator what its
//! voltage, which falls as it warms, drives into the bank. The least of these is
//! what the engine gives. Every start is a cold one. It takes as long as a run
//! calculated in full within one per cent, as a test holds.

use crate::numerics::interpolate_evenly;
use crate::physics::battery::Bank;
use crate::simulation::moment::Flow;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Sample, charge};
use crate::simulation::steady_state::settled;

/// Steps of the table of time, and how many an hour has.
const STEPS: usize = 480;
const STEPS_AN_HOUR: f64 = 60.0;
/// Steps of the table of charge.
const CHARGES: usize = 100;

/// The engine as a charger.
#[derive(Debug, Clone, PartialEq)]
pub struct Charger {
    /// Ampere-hours since a cold start, at each step of time.
    warming_ah: Vec<f64>,
    /// Current once hot \[A\].
    hot_a: f64,
    /// What a bank's voltage leaves of it, 0 to about 1, at each step of charge.
    filled: Vec<f64>,
    /// Most current the bank lets come from a cold alternator \[A\], at each
    /// step of charge.
    taken_a: Vec<f64>,
    /// Where a built-in regulator holds the bank's voltage.
    built_in: Option<BuiltIn>,
}

/// A bank at the voltage of a regulator built into an alternator.
#[derive(Debug, Clone, PartialEq)]
struct BuiltIn {
    /// That voltage at each step of time \[V\].
    held_v: Vec<f64>,
    bank: Bank,
    load_a: f64,
    /// What it drives once settled at each step of charge \[A\].
    settled_a: Vec<f64>,
}

impl BuiltIn {
    /// What it drives onto the house side \[A\] at a time after the start \[h\] and
    /// a state of charge, 0 to 1. An alternator that a full bank leaves little to
    /// do cools again, to what it would settle at.
    fn drives_a(&self, hours: f64, soc: f64) -> f64 {
        let over_v =
            interpolate_evenly(&self.held_v, hours * STEPS_AN_HOUR) - self.bank.rest_v(soc);
        let driven_a = over_v / self.bank.resistance_ohm(soc) + self.load_a;
        driven_a.max(interpolate_evenly(&self.settled_a, soc * CHARGES as f64))
    }
}

/// The steps of the table of charge, 0 to 1.
fn charges() -> impl Iterator<Item = f64> {
    (0..=CHARGES).map(|step| step as f64 / CHARGES as f64)
}

/// What reaches the house side \[A\].
fn house_a(plant: &Plant, flow: &Flow) -> f64 {
    (flow.bank_a + plant.load_a).max(0.0)
}

/// What a hot alternator gives at each step of charge \[A\].
fn settled_a(plant: &Plant) -> Vec<f64> {
    charges()
        .map(|soc| house_a(plant, &settled(plant, soc).flow))
        .collect()
}

impl Charger {
    /// An engine that gives the bank nothing.
    pub fn nothing() -> Charger {
        Charger {
            warming_ah: Vec::new(),
            hot_a: 0.0,
            filled: Vec::new(),
            taken_a: Vec::new(),
            built_in: None,
        }
    }

    /// Calculates the tables of a boat that charges around a state of charge.
    pub fn of(plant: &Plant, around: f64) -> Charger {
        let mut endless = plant.clone();
        endless.bank.capacity_ah = 1e12;
        let seconds = |step: usize| step as f64 / STEPS_AN_HOUR * 3600.0;
        let warming = charge(
            &endless,
            around,
            f64::INFINITY,
            seconds(STEPS),
            &Fineness::USUAL,
        );
        let warm_a: Vec<f64> = (0..=STEPS)
            .map(|step| {
                // An alternator that has burnt gives nothing more.
                if seconds(step) <= warming.last_s() {
                    house_a(plant, &warming.sample(seconds(step)).moment.flow)
                } else {
                    0.0
                }
            })
            .collect();
        let mut warming_ah = vec![0.0];
        let mut sum_ah = 0.0;
        for pair in warm_a.windows(2) {
            sum_ah += 0.5 * pair.iter().sum::<f64>() / STEPS_AN_HOUR;
            warming_ah.push(sum_ah);
        }
        let cold = plant.resting();
        let taken_a: Vec<f64> = charges()
            // Long after any slow start.
            .map(|soc| house_a(plant, &plant.flow(seconds(STEPS), soc, &cold)))
            .collect();
        let hot_a = warm_a.last().copied().unwrap_or(0.0);
        let held_v = |at: &Sample| plant.held_at(&at.thermal);
        let built_in = plant.held_by_built_in().then(|| BuiltIn {
            held_v: (0..=STEPS)
                .map(|step| held_v(&warming.sample(seconds(step))))
                .collect(),
            bank: plant.bank,
            load_a: plant.load_a,
            settled_a: settled_a(plant),
        });
        Charger {
            warming_ah,
            hot_a,
            filled: match built_in {
                None => filled(&settled_a(plant), &taken_a, hot_a),
                Some(_) => vec![1.0],
            },
            taken_a,
            built_in,
        }
    }

    /// Mean current onto the house side \[A\] from an age of the run (h, see
    /// [`Charger::ages_h`]) for `span_h` (more than 0), at a state of charge,
    /// 0 to 1.
    pub fn mean_a(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let held_a = self.built_in.as_ref().map_or(f64::INFINITY, |built_in| {
            built_in.drives_a(age_h + 0.5 * span_h, soc)
        });
        let taken_a = interpolate_evenly(&self.taken_a, soc * CHARGES as f64);
        self.warm_a(age_h, span_h, soc).min(taken_a).min(held_a)
    }

    /// How much older a run grows in `span_h` \[h\]. Into a bank that takes all
    /// there is, by just that; one that takes less leaves the alternator cooler,
    /// as if it had run for less time: copper's heat goes with the square of the
    /// current. Own reasoning.
    pub fn ages_h(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let warm_a = self.warm_a(age_h, span_h, soc);
        if warm_a <= 0.0 {
            return span_h;
        }
        span_h * (self.mean_a(age_h, span_h, soc) / warm_a).min(1.0).powi(2)
    }

    /// What heat lets through \[A\].
    fn warm_a(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let given_ah = self.until_ah(age_h + span_h) - self.until_ah(age_h);
        given_ah / span_h * interpolate_evenly(&self.filled, soc * CHARGES as f64)
    }

    /// Ampere-hours until a time after the start \[h\].
    fn until_ah(&self, hours: f64) -> f64 {
        let step = hours * STEPS_AN_HOUR;
        let beyond_h = (step - STEPS as f64).max(0.0) / STEPS_AN_HOUR;
        interpolate_evenly(&self.warming_ah, step) + beyond_h * self.hot_a
    }
}

/// What a hot alternator gives at each state of charge, as a part of what it gives
/// a bank that does not fill \[-\]. Where the bank holds the current, as it does
/// when it is nearly full, the last part at which heat held it.
fn filled(settled_a: &[f64], cold_a: &[f64], hot_a: f64) -> Vec<f64> {
    let mut part = 1.0;
    settled_a
        .iter()
        .zip(cold_a)
        .map(|(settled_a, cold_a)| {
            if *settled_a < 0.99 * cold_a && hot_a > 0.0 {
                part = settled_a / hot_a;
            }
            part
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use crate::analysis::year::charger::Charger;
    use crate::boat::mean_draw_a;
    use crate::boat::{Key, Worksheet, demo};
    use crate::schema::Value;
    use crate::simulation::plant::Plant;
    use crate::simulation::run::{Fineness, charge};

    /// Hours from one state of charge to another, by the table, in small steps.
    fn hours_by_table(plant: &Plant, from: f64, to: f64) -> f64 {
        const STEP_H: f64 = 0.01;
        let charger = Charger::of(plant, 0.5 * (from + to));
        let (mut soc, mut hours, mut age_h) = (from, 0.0, 0.0);
        while soc < to && hours < 100.0 {
            let bank_a = charger.mean_a(age_h, STEP_H, soc) - plant.load_a;
            age_h += charger.ages_h(age_h, STEP_H, soc);
            soc += plant.bank.charge_rate(bank_a) * 3600.0 * STEP_H;
            hours += STEP_H;
        }
        hours
    }

    #[track_caller]
    fn close(sheet: &Worksheet, to: f64) {
        let plant = Plant::new(&sheet.inputs, mean_draw_a(sheet));
        let run = charge(&plant, 0.3, to, 360_000.0, &Fineness::USUAL);
        let hours = run.reaches(to).expect("reached") / 3600.0;
        let by_table = hours_by_table(&plant, 0.3, to);
        assert!(
            (by_table - hours).abs() < 0.01 * hours,
            "{by_table} h by the table, {hours} h in full"
        );
    }

    fn boat(said: &[(&str, Value)]) -> Worksheet {
        let mut sheet = Worksheet::default();
        for (name, value) in said {
            let key = Key::named(name).expect("a key");
            sheet.state(key, *value).expect("in range");
        }
        sheet
    }

    #[test]
    fn the_table_takes_as_long_as_the_run() {
        close(&Worksheet::default(), 0.8);
        close(&Worksheet::default(), 0.99);
        close(&demo(), 0.8);
        // A bank that is full before anything is hot.
        let linked = ("reg_link", Value::Choice(1));
        close(
            &boat(&[("bank_capacity_ah", Value::Number(60.0)), linked]),
            0.8,
        );
        // Through a converter; lead, which takes less and less.
        close(&boat(&[("way_kind", Value::Choice(1))]), 0.8);
        close(&boat(&[("bank_chemistry", Value::Choice(1))]), 0.85);
        close(
            &boat(&[
                ("bank_chemistry", Value::Choice(3)),
                ("bank_nominal_v", Value::Choice(1)),
            ]),
            0.9,
        );
        close(
            &boat(&[
                ("reg_kind", Value::Choice(1)),
                ("alt_rated_a", Value::Number(180.0)),
            ]),
            0.8,
        );
    }
}
