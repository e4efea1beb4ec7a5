//! What the engine puts on the house side, as a table: reckoned once, so that
//! a year of runs costs next to nothing.
//!
//! Two things hold the current down, and each is taken as if the other did not
//! matter. Heat: one run from a cold start into a bank that does not fill
//! gives the current against the time since the start, and after its end the
//! last of it. The bank: what flows from a cold alternator at each state of
//! charge, and where a built-in regulator holds less as it warms from one that
//! has settled there, in between as far as it has warmed up. The lesser of the two is what the
//! engine gives. So every start is a cold one, and the few tenths of a volt by
//! which a filling bank slows the alternator are left out; that is within one
//! per cent of the time of a run calculated in full, as a test holds.

use crate::charge::plant::{Flow, MachineState, Plant};
use crate::charge::run::{Fineness, Sample, charge};
use crate::charge::steady::settled;

/// Steps of the table of time, and how many an hour has.
const STEPS: usize = 160;
const STEPS_AN_HOUR: f64 = 20.0;
/// Steps of the table of charge.
const CHARGES: usize = 100;

/// The engine as a charger.
#[derive(Debug, Clone, PartialEq)]
pub struct Charger {
    /// Ampere-hours since a cold start, at each step of time.
    warming_ah: Vec<f64>,
    /// Current once hot \[A\].
    hot_a: f64,
    /// Most current the bank lets come from a cold alternator \[A\], at each
    /// step of charge.
    taken_cold_a: Vec<f64>,
    /// The same from one that has settled there.
    taken_hot_a: Vec<f64>,
    /// How far a built-in regulator has warmed up, 0 to 1, at each step of time.
    warmth: Vec<f64>,
}

impl Charger {
    /// An engine that gives the bank nothing.
    pub fn nothing() -> Charger {
        Charger {
            warming_ah: Vec::new(),
            hot_a: 0.0,
            taken_cold_a: Vec::new(),
            taken_hot_a: Vec::new(),
            warmth: Vec::new(),
        }
    }

    /// Calculates the tables of a boat that charges around a state of charge.
    pub fn of(plant: &Plant, around: f64) -> Charger {
        let mut endless = *plant;
        endless.bank.capacity_ah = 1e12;
        let seconds = |step: usize| step as f64 / STEPS_AN_HOUR * 3600.0;
        let warming = charge(
            &endless,
            around,
            f64::INFINITY,
            seconds(STEPS),
            &Fineness::USUAL,
        );
        let house_a = |flow: &Flow| (flow.bank_a + plant.load_a).max(0.0);
        let warm_a: Vec<f64> = (0..=STEPS)
            .map(|step| {
                // A machine that has burnt gives nothing more.
                if seconds(step) <= warming.last_s() {
                    house_a(&warming.sample(seconds(step)).moment.flow)
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
        let end = warming.sample(warming.last_s());
        let cold = MachineState::resting(plant.start_c);
        let charges = (0..=CHARGES).map(|step| step as f64 / CHARGES as f64);
        let taken_cold_a: Vec<f64> = charges
            .clone()
            // Long after any slow start.
            .map(|charge| house_a(&plant.flow(seconds(STEPS), charge, &cold, &cold)))
            .collect();
        let taken_hot_a = if plant.held_by_built_in() {
            charges
                .map(|charge| house_a(&settled(plant, charge).flow))
                .collect()
        } else {
            taken_cold_a.clone()
        };
        let held_v =
            |at: &Sample| plant.held_at(&at.temperatures, &at.second.unwrap_or(at.temperatures));
        let (cold_v, end_v) = (held_v(&warming.sample(0.0)), held_v(&end));
        let warmth = |step: usize| {
            let fallen_v = cold_v - held_v(&warming.sample(seconds(step)));
            (fallen_v / (cold_v - end_v).max(1e-6)).clamp(0.0, 1.0)
        };
        Charger {
            warming_ah,
            hot_a: warm_a.last().copied().unwrap_or(0.0),
            taken_cold_a,
            taken_hot_a,
            warmth: (0..=STEPS).map(warmth).collect(),
        }
    }

    /// Mean current onto the house side \[A\] from `since_h` after the start
    /// for `span_h` (more than 0), at a state of charge, 0 to 1.
    pub fn mean_a(&self, since_h: f64, span_h: f64, charge: f64) -> f64 {
        let warm_a = (self.until_ah(since_h + span_h) - self.until_ah(since_h)) / span_h;
        let warmth = level(&self.warmth, (since_h + 0.5 * span_h) * STEPS_AN_HOUR);
        let at = |table: &[f64]| level(table, charge * CHARGES as f64);
        let cold_a = at(&self.taken_cold_a);
        warm_a.min(cold_a + warmth * (at(&self.taken_hot_a) - cold_a))
    }

    /// Ampere-hours until a time after the start \[h\].
    fn until_ah(&self, hours: f64) -> f64 {
        let step = hours * STEPS_AN_HOUR;
        let beyond_h = (step - STEPS as f64).max(0.0) / STEPS_AN_HOUR;
        level(&self.warming_ah, step) + beyond_h * self.hot_a
    }
}

/// Straight lines between the entries of a table, level outside.
fn level(table: &[f64], place: f64) -> f64 {
    let last = table.len().saturating_sub(1);
    let before = (place.max(0.0) as usize).min(last);
    match (table.get(before), table.get(before + 1)) {
        (Some(a), Some(b)) => a + (b - a) * (place - before as f64).clamp(0.0, 1.0),
        (Some(a), None) => *a,
        _ => 0.0,
    }
}

#[cfg(test)]
mod tests {
    use super::Charger;
    use crate::charge::plant::Plant;
    use crate::charge::run::{Fineness, charge};
    use crate::energy::mean_draw_a;
    use crate::fields::Value;
    use crate::worksheet::{Key, Worksheet, demo};

    /// Hours from one state of charge to another, by the table, in small steps.
    fn hours_by_table(plant: &Plant, from: f64, to: f64) -> f64 {
        const STEP_H: f64 = 0.01;
        let charger = Charger::of(plant, 0.5 * (from + to));
        let (mut charge, mut hours) = (from, 0.0);
        while charge < to && hours < 100.0 {
            let bank_a = charger.mean_a(hours, STEP_H, charge) - plant.load_a;
            charge += plant.bank.charge_rate(bank_a) * 3600.0 * STEP_H;
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
