//! What the engine gives a bank, read off its tables. Uses the steps of the tables
//! and the built-in regulator.

use crate::analysis::year::charger::built_in::BuiltIn;
use crate::analysis::year::charger::steps::{CHARGES, SETTLED, STEPS, STEPS_AN_HOUR, between};
use crate::numerics::interpolate_evenly;
use crate::physics::battery::Bank;
use crate::physics::charging::warmed_h;

/// A run that hardly grows older still grows by this much \[h\].
const LEAST_AGE_H: f64 = 1e-4;

/// The engine as a charger.
#[derive(Debug, Clone, PartialEq)]
pub struct Charger {
    /// Ampere-hours since a cold start, at each step of time.
    pub warming_ah: Vec<f64>,
    /// Current once hot \[A\].
    pub hot_a: f64,
    /// What a bank's voltage leaves of it, 0 to about 1, at each step of charge.
    pub filled: Vec<f64>,
    /// Most current the bank lets come from a cold alternator \[A\], at each
    /// step of charge.
    pub taken_a: Vec<f64>,
    /// What the shafts take for an ampere-hour onto the house side \[kWh/A·h\],
    /// at each step of charge, once hot.
    pub shaft_kwh_ah: Vec<f64>,
    /// Where a built-in regulator holds the bank's voltage.
    pub built_in: Option<BuiltIn>,
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
            built_in: built_in.map(|(one, other)| BuiltIn::between(one, other, share, bank)),
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
        warmed_h(span_h, most_a, warm_a).max(LEAST_AGE_H)
    }

    /// How much older a run grows in `span_h` \[h\]. Into a bank that takes all
    /// there is, by just that; one that takes less leaves the alternator cooler,
    /// as if it had run for less time: see [`warmed_h()`].
    pub fn ages_h(&self, age_h: f64, span_h: f64, soc: f64) -> f64 {
        let most_a = self.most_a(age_h, span_h, soc);
        let aged_h = self.cooler_h(age_h, span_h, soc, most_a);
        let warm_a = self.warm_a(age_h, aged_h, soc);
        if warm_a <= most_a || warm_a <= 0.0 {
            return aged_h.min(span_h);
        }
        warmed_h(span_h, most_a, warm_a)
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
