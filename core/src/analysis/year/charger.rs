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
//! calculated in full within one per cent, and its shafts take as much within
//! two, as tests hold.

use crate::numerics::interpolate_evenly;
use crate::physics::battery::Bank;
use crate::simulation::moment::Flow;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Sample, charge};
use crate::simulation::steady_state::settled;

/// Steps of the table of time, and how many an hour has.
const STEPS: usize = 120;
const STEPS_AN_HOUR: f64 = 20.0;
/// Steps of the table of charge for what is quickly found, and for what has to
/// settle first.
const CHARGES: usize = 40;
const SETTLED: usize = 12;
/// A run that hardly grows older still grows by this much \[h\].
const LEAST_AGE_H: f64 = 1e-4;
/// Less current than this tells nothing of what a shaft takes for it \[A\].
const LEAST_A: f64 = 0.1;

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
    /// What the shafts take for an ampere-hour onto the house side \[kWh/A·h\],
    /// at each step of charge, once hot.
    shaft_kwh_ah: Vec<f64>,
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
        driven_a.max(interpolate_evenly(&self.settled_a, soc * SETTLED as f64))
    }
}

/// So many steps of charge, 0 to 1.
fn charges(steps: usize) -> impl Iterator<Item = f64> {
    (0..=steps).map(move |step| step as f64 / steps as f64)
}

/// What reaches the house side \[A\].
fn house_a(plant: &Plant, flow: &Flow) -> f64 {
    (flow.bank_a + plant.load_a).max(0.0)
}

/// What a hot alternator gives at each step of charge \[A\], and what its shaft
/// takes for each ampere-hour \[kWh/A·h\].
fn settled_at_charges(plant: &Plant) -> (Vec<f64>, Vec<f64>) {
    let mut shaft_kwh_ah = 0.0;
    charges(SETTLED)
        .map(|soc| {
            let hot = settled(plant, soc);
            let amperes = house_a(plant, &hot.flow);
            // A bank that takes nothing asks what it asked before.
            if amperes > LEAST_A {
                shaft_kwh_ah = hot.shaft_w(plant) / 1000.0 / amperes;
            }
            (amperes, shaft_kwh_ah)
        })
        .unzip()
}

/// Each figure of two lists, so far from the first to the second.
fn between(one: &[f64], other: &[f64], share: f64) -> Vec<f64> {
    let each = one.iter().zip(other);
    each.map(|(one, other)| one + share * (other - one))
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
            shaft_kwh_ah: Vec::new(),
            built_in: None,
        }
    }

    /// What it is in weather between that of two others of the same boat, so far
    /// from the first to the second, 0 to 1, into a bank of that weather.
    pub fn between(one: &Charger, other: &Charger, share: f64, bank: &Bank) -> Charger {
        let built_in = one.built_in.as_ref().zip(other.built_in.as_ref());
        Charger {
            warming_ah: between(&one.warming_ah, &other.warming_ah, share),
            hot_a: one.hot_a + share * (other.hot_a - one.hot_a),
            filled: between(&one.filled, &other.filled, share),
            taken_a: between(&one.taken_a, &other.taken_a, share),
            shaft_kwh_ah: between(&one.shaft_kwh_ah, &other.shaft_kwh_ah, share),
            built_in: built_in.map(|(one, other)| BuiltIn {
                held_v: between(&one.held_v, &other.held_v, share),
                bank: *bank,
                load_a: one.load_a,
                settled_a: between(&one.settled_a, &other.settled_a, share),
            }),
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
        let taken_a: Vec<f64> = charges(CHARGES)
            // Long after any slow start.
            .map(|soc| house_a(plant, &plant.flow(seconds(STEPS), soc, &cold)))
            .collect();
        let (settled_a, shaft_kwh_ah) = settled_at_charges(plant);
        let ends_a = warm_a.last().copied().unwrap_or(0.0);
        // A space that warms for longer than the table goes on to where it
        // settles; an alternator that never does stays at what it gave last.
        let settles_a = interpolate_evenly(&settled_a, around * SETTLED as f64);
        let hot_a = if settles_a > 0.0 {
            ends_a.min(settles_a)
        } else {
            ends_a
        };
        let held_v = |at: &Sample| plant.held_at(&at.thermal);
        let built_in = plant.held_by_built_in().then(|| BuiltIn {
            held_v: (0..=STEPS)
                .map(|step| held_v(&warming.sample(seconds(step))))
                .collect(),
            bank: plant.bank,
            load_a: plant.load_a,
            settled_a: settled_a.clone(),
        });
        Charger {
            warming_ah,
            hot_a,
            filled: match built_in {
                None => filled(
                    &settled_a,
                    |soc| interpolate_evenly(&taken_a, soc * CHARGES as f64),
                    hot_a,
                ),
                Some(_) => vec![1.0],
            },
            taken_a,
            shaft_kwh_ah,
            built_in,
        }
    }

    /// Mean current onto the house side \[A\] from an age of the run (h, see
    /// [`Charger::ages_h`]) for `span_h` (more than 0), at a state of charge,
    /// 0 to 1.
    pub fn mean_a(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let most_a = self.most_a(age_h, span_h, soc);
        let aged_h = self.cooler_h(age_h, span_h, soc, most_a);
        self.warm_a(age_h, aged_h, soc).min(most_a)
    }

    /// Most current that bank and built-in regulator let come \[A\].
    fn most_a(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let held_a = self.built_in.as_ref().map_or(f64::INFINITY, |built_in| {
            built_in.drives_a(age_h + 0.5 * span_h, soc)
        });
        let taken_a = interpolate_evenly(&self.taken_a, soc * CHARGES as f64);
        taken_a.min(held_a)
    }

    /// How much older a run grows in a time \[h\] if no more than so much flows,
    /// at the current that flows at its end.
    fn cooler_h(&self, age_h: f64, span_h: f64, soc: f64, most_a: f64) -> f64 {
        let warm_a = self.warm_a(age_h, span_h, soc);
        if warm_a <= most_a || warm_a <= 0.0 {
            return span_h;
        }
        (span_h * (most_a / warm_a).powi(2)).max(LEAST_AGE_H)
    }

    /// How much older a run grows in `span_h` \[h\]. Into a bank that takes all
    /// there is, by just that; one that takes less leaves the alternator cooler,
    /// as if it had run for less time: copper's heat goes with the square of the
    /// current. Own reasoning.
    pub fn ages_h(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let most_a = self.most_a(age_h, span_h, soc);
        let aged_h = self.cooler_h(age_h, span_h, soc, most_a);
        let warm_a = self.warm_a(age_h, aged_h, soc);
        if warm_a <= most_a || warm_a <= 0.0 {
            return aged_h.min(span_h);
        }
        span_h * (most_a / warm_a).powi(2)
    }

    /// What the shafts take for an ampere-hour onto the house side at a state of
    /// charge, 0 to 1 \[kWh/A·h\].
    pub fn shaft_kwh_ah(&self, soc: f64) -> f64 {
        interpolate_evenly(&self.shaft_kwh_ah, soc * SETTLED as f64)
    }

    /// What heat lets through \[A\].
    fn warm_a(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let given_ah = self.until_ah(age_h + span_h) - self.until_ah(age_h);
        given_ah / span_h * interpolate_evenly(&self.filled, soc * SETTLED as f64)
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
fn filled(settled_a: &[f64], cold_a: impl Fn(f64) -> f64, hot_a: f64) -> Vec<f64> {
    let mut part = 1.0;
    settled_a
        .iter()
        .zip(charges(SETTLED))
        .map(|(settled_a, soc)| {
            if *settled_a < 0.99 * cold_a(soc) && hot_a > 0.0 {
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
    use crate::boat::{Key, RegulatorKind, WayKind, Worksheet, demo};
    use crate::schema::Value;
    use crate::simulation::plant::Plant;
    use crate::simulation::run::{Fineness, charge};

    /// Hours from one state of charge to another and what the shafts take
    /// meanwhile \[kWh\], by the table, in small steps.
    fn by_table(plant: &Plant, from: f64, to: f64) -> (f64, f64) {
        const STEP_H: f64 = 0.01;
        let charger = Charger::of(plant, 0.5 * (from + to));
        let (mut soc, mut hours, mut age_h, mut shaft_kwh) = (from, 0.0, 0.0, 0.0);
        while soc < to && hours < 100.0 {
            let given_a = charger.mean_a(age_h, STEP_H, soc);
            let bank_a = given_a - plant.load_a;
            shaft_kwh += given_a * STEP_H * charger.shaft_kwh_ah(soc);
            age_h += charger.ages_h(age_h, STEP_H, soc);
            soc += plant.bank.charge_rate(bank_a) * 3600.0 * STEP_H;
            hours += STEP_H;
        }
        (hours, shaft_kwh)
    }

    #[track_caller]
    fn close(sheet: &Worksheet, to: f64) {
        let plant = Plant::new(&sheet.inputs, mean_draw_a(sheet));
        let run = charge(&plant, 0.3, to, 360_000.0, &Fineness::USUAL);
        let seconds = run.reaches(to).expect("reached");
        let (hours, shaft_kwh) = (seconds / 3600.0, run.shaft_kwh(seconds));
        let (by_table, by_table_kwh) = by_table(&plant, 0.3, to);
        assert!(
            (by_table - hours).abs() < 0.01 * hours,
            "{by_table} h by the table, {hours} h in full"
        );
        assert!(
            (by_table_kwh - shaft_kwh).abs() < 0.02 * shaft_kwh,
            "{by_table_kwh} kWh by the table, {shaft_kwh} kWh in full"
        );
    }

    /// Under an external regulator, direct to the house bank.
    fn regulated() -> Worksheet {
        let mut sheet = Worksheet::default();
        sheet.inputs.reg.kind = RegulatorKind::External;
        sheet.inputs.way.kind = WayKind::Direct;
        sheet
    }

    fn boat(said: &[(&str, Value)]) -> Worksheet {
        let mut sheet = regulated();
        for (name, value) in said {
            let key = Key::named(name).expect("a key");
            sheet.state(key, *value).expect("in range");
        }
        sheet
    }

    #[test]
    fn the_table_takes_as_long_as_the_run() {
        close(&Worksheet::default(), 0.8);
        close(&regulated(), 0.8);
        close(&regulated(), 0.99);
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
