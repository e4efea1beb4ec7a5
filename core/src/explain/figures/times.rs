//! How long the charging run takes.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::notes::STEPPED;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::charging::{charging_minutes, mean_bank_a};

pub(super) const FIGURES: &[&Figure] = &[
    &MINUTES_TO_TARGET,
    &MINUTES_TO_80,
    &MINUTES_TO_90,
    &MINUTES_TO_100,
];

static MINUTES_TO_TARGET: Figure =
    Figure::new("run.minutes_to_target", "To the target", "min", 0, |s| {
        let to = s.input(key!(run.to_pct));
        let to_pct = s.inputs().run.to_pct;
        reached(s, s.report().analyses.run.minutes_to_target, to, to_pct)
    })
    .is(|s| s.report().analyses.run.minutes_to_target);

static MINUTES_TO_80: Figure = Figure::new("run.minutes_to_80", "To 80 %", "min", 0, |s| {
    reached(
        s,
        s.report().analyses.run.minutes_to_80,
        Term::Number(0.8),
        80.0,
    )
})
.is(|s| s.report().analyses.run.minutes_to_80);

static MINUTES_TO_90: Figure = Figure::new("run.minutes_to_90", "To 90 %", "min", 0, |s| {
    reached(
        s,
        s.report().analyses.run.minutes_to_90,
        Term::Number(0.9),
        90.0,
    )
})
.is(|s| s.report().analyses.run.minutes_to_90);

static MINUTES_TO_100: Figure = Figure::new("run.minutes_to_100", "To 100 %", "min", 0, |s| {
    reached(
        s,
        s.report().analyses.run.minutes_to_100,
        Term::Number(1.0),
        100.0,
    )
})
.is(|s| s.report().analyses.run.minutes_to_100);

/// Time of the run to a state of charge, `to` in the formula.
fn reached(s: &Instant, minutes: Option<f64>, to: Term, to_pct: f64) -> Explanation {
    let house = &s.boat.plant.bank;
    let Some(minutes) = minutes else {
        return Explanation::none(if s.report().analyses.run.opening.is_some() {
            "Not reached: the battery management system opens first."
        } else {
            NOT_REACHED
        });
    };
    let mean_a = mean_to(
        s,
        house.capacity_ah,
        house.charge_efficiency,
        minutes,
        to_pct,
    );
    let efficiency = s.input(key!(bank.charge_efficiency_pct));
    time_to(s, s.bank_ah(), minutes, to, efficiency, mean_a)
}

pub(super) const NOT_REACHED: &str =
    "Not reached: the run is stepped through time until it gives up.";

/// The mean current of the run to a state of charge \[A\].
pub(super) fn mean_to(
    s: &Instant,
    capacity_ah: f64,
    efficiency: f64,
    minutes: f64,
    to_pct: f64,
) -> f64 {
    let from = s.inputs().run.from_pct / 100.0;
    mean_bank_a(capacity_ah, to_pct / 100.0, from, efficiency, minutes)
}

/// The time that such a mean current takes to fill a capacity.
pub(super) fn time_to(
    s: &Instant,
    capacity: Term,
    minutes: f64,
    to: Term,
    efficiency: Term,
    mean_a: f64,
) -> Explanation {
    if minutes <= 0.0 {
        return Explanation::none("The run begins there or above.");
    }
    let given = [
        capacity,
        to,
        s.input(key!(run.from_pct)),
        efficiency,
        described(
            "Mean current into the bank, of this run to there",
            "A",
            mean_a,
        ),
    ];
    Explanation::of(Term::of(charging_minutes::FORMULA, given)).note(STEPPED)
}
