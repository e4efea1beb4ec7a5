//! The engine's daily run: how long, and its fuel.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::day::NEED_AH;
use crate::explain::figures::fuel::{IDLE_L_H, MARGINAL_L_KWH};
use crate::explain::figures::notes::{DAILY, FUEL, SHAFT, STEPPED, SUN_COVERS};
use crate::explain::figures::run::HOUSE_LOAD_A;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described, maybe};
use crate::physics::charging::engine_hours;
use crate::physics::fuel::{marginal_l, run_l};
use crate::text::words;

pub(super) const FIGURES: &[&Figure] = &[&ENGINE_HOURS, &FUEL_L, &MARGINAL_FUEL_L];

/// Why there is no daily run; none where there is one.
fn no_run(s: &Instant) -> Option<&'static str> {
    match s.report().analyses.day.engine_hours {
        Some(hours) if hours > 0.0 => None,
        Some(_) => Some(SUN_COVERS),
        None => Some(
            s.report()
                .analyses
                .day
                .trouble
                .map_or("", words::why_not_charged),
        ),
    }
}

pub(super) static ENGINE_HOURS: Figure = Figure::new("day.engine_hours", "Engine", "h", 2, |s| {
    if let Some(why) = no_run(s) {
        return Explanation::none(why);
    }
    let house = if s.report().analyses.run.engine_loads.is_empty() {
        s.figure(&HOUSE_LOAD_A)
    } else {
        let day = &s.report().analyses.day;
        let run_s = 3600.0 * day.run_hours.unwrap_or(0.0);
        let plant = s.boat.plant.in_runs(f64::from(day.runs.max(1)));
        let mean_a = 3600.0 * plant.house_ah(run_s) / run_s.max(f64::MIN_POSITIVE);
        described("House load, the mean of this run", "A", mean_a)
    };
    let given = [
        s.figure(&NEED_AH),
        s.input(key!(bank.charge_efficiency_pct)),
        maybe(
            "Mean current into the bank, of this run",
            "A",
            s.report().analyses.day.mean_bank_a,
        ),
        house,
    ];
    Explanation::of(Term::of(engine_hours::FORMULA, given)).note([STEPPED, DAILY].concat())
})
.named("Engine a day")
.is(|s| s.report().analyses.day.engine_hours);

/// What the alternators ask for the day's runs.
fn marginal(s: &Instant) -> Term {
    let shaft = maybe(
        "Energy the alternators' shafts took, added up along the run",
        "kW·h",
        s.report().analyses.day.shaft_kwh,
    );
    Term::of(marginal_l::FORMULA, [s.figure(&MARGINAL_L_KWH), shaft])
}

pub(super) static FUEL_L: Figure = Figure::new("day.fuel_l", "Fuel for it", "L", 1, |s| {
    if let Some(why) = no_run(s) {
        return Explanation::none(why);
    }
    let given = [s.figure(&IDLE_L_H), s.figure(&ENGINE_HOURS), marginal(s)];
    Explanation::of(Term::of(run_l::FORMULA, given)).note(FUEL)
})
.named("Fuel a day")
.is(|s| s.report().analyses.day.fuel_l);

static MARGINAL_FUEL_L: Figure = Figure::new(
    "day.marginal_fuel_l",
    "… while motoring anyway",
    "L",
    1,
    |s| match no_run(s) {
        Some(why) => Explanation::none(why),
        None => Explanation::of(marginal(s)).note(SHAFT),
    },
)
.named("Fuel a day while motoring anyway")
.is(|s| s.report().analyses.day.marginal_fuel_l);
