//! The charging run: currents, means, fuel.

use crate::analysis::bank_volts;
use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::bank_limit::BANK_LIMIT_A;
use crate::explain::figures::day::USE_AH;
use crate::explain::figures::flow;
use crate::explain::figures::fuel::{IDLE_L_H, MARGINAL_L_KWH};
use crate::explain::figures::notes::{AS_GIVEN, DRAWN, FUEL, SHAFT};
use crate::explain::instant::{Instant, When};
use crate::explain::term::{Term, described};
use crate::physics::charging::{kept_energy_pct, mean_bank_a, mean_draw_a};
use crate::physics::drive::{hours, percent};
use crate::physics::fuel::{marginal_l, run_l};
use crate::physics::sources::{CELLS, LOSSES, OWN_REASONING};
use crate::units::clock;

pub(super) const FIGURES: &[&Figure] = &[
    &START_A,
    &MID_A,
    &MID_EFFICIENCY_PCT,
    &MEAN_BANK_A,
    &BANK_ENERGY_PCT,
    &HOUSE_LOAD_A,
    &PEAK_SHAFT_W,
    &FUEL_L,
    &MARGINAL_FUEL_L,
    &BANK_LIMIT_A,
];

/// What the run's time is called.
pub(super) const RUN_MINUTES: &str = "Time of the run";

static START_A: Figure = Figure::new("run.start_a", "Alternator, at the start", "A", 0, held)
    .at(When::Start)
    .source(OWN_REASONING)
    .is(|s| Some(s.report().analyses.run.start_a));

pub(super) static MID_A: Figure = Figure::new("run.mid_a", "… half-way", "A", 0, held)
    .named("Alternator, half-way")
    .at(When::Middle)
    .source(OWN_REASONING)
    .is(|s| Some(s.report().analyses.run.mid_a));

pub(super) fn held(s: &Instant) -> Explanation {
    Explanation::of(flow::held(s)).note(flow::limited_by(s))
}

static MID_EFFICIENCY_PCT: Figure = Figure::new(
    "run.mid_efficiency_pct",
    "… its efficiency then",
    "%",
    0,
    |s| {
        if s.moment.given_w() <= 0.0 {
            return Explanation::none("The alternator gives nothing then.");
        }
        let given = [flow::given_w(s), flow::taken_w(s)];
        Explanation::of(Term::of(percent::FORMULA, given)).note("What comes out, of what goes in.")
    },
)
.named("Efficiency of the alternator, half-way")
.at(When::Middle)
.source(LOSSES)
.is(|s| Some(s.report().analyses.run.mid_efficiency_pct));

static MEAN_BANK_A: Figure = Figure::new("run.mean_bank_a", "Into the bank, mean", "A", 0, |s| {
    let minutes = s.report().analyses.run.minutes;
    if minutes <= 0.0 {
        return Explanation::none("There is no run: what flows at the start.");
    }
    let end_pct = 100.0 * s.boat.trace.soc_at(minutes * 60.0);
    let given = [
        s.bank_ah(),
        described("State of charge at its end", "%", end_pct),
        s.input(key!(run.from_pct)),
        s.input(key!(bank.charge_efficiency_pct)),
        described(RUN_MINUTES, "min", minutes),
    ];
    Explanation::of(Term::of(mean_bank_a::FORMULA, given))
        .note("The charge that was gained, by the time it took; the run is stepped through time.")
})
.is(|s| Some(s.report().analyses.run.mean_bank_a));

static BANK_ENERGY_PCT: Figure = Figure::new(
    "run.bank_energy_pct",
    "Energy kept of what went in",
    "%",
    0,
    |s| {
        let Some((rest_v, volts)) = bank_volts(s.boat.plant, &s.report().analyses.run.series)
        else {
            return Explanation::none("Nothing went into the bank.");
        };
        let given = [
            s.input(key!(bank.charge_efficiency_pct)),
            described("At rest, the mean of the run's moments", "V", rest_v),
            described("At the bank, the mean of the run's moments", "V", volts),
        ];
        Explanation::of(Term::of(kept_energy_pct::FORMULA, given))
            .note("Both means count each moment by the charge that went in.")
    },
)
.source(CELLS)
.is(|s| Some(s.report().analyses.run.bank_energy_pct));

pub(super) static HOUSE_LOAD_A: Figure =
    Figure::new("run.house_load_a", "House load meanwhile", "A", 1, |s| {
        if s.inputs().run.house_load_a.is_some() {
            return Explanation::of(s.input(key!(run.house_load_a)).symbol("I_given"))
                .note(AS_GIVEN);
        }
        if !s.report().analyses.run.engine_loads.is_empty() {
            let steady_ah = 24.0 * s.boat.plant.load_a;
            let name = "Day's use, without the loads that run only with the engine";
            return Explanation::of(Term::of(
                mean_draw_a::FORMULA,
                [described(name, "A·h", steady_ah)],
            ))
            .note("The day's mean draw; what runs only with the engine comes on top.");
        }
        let given = [s.figure(&USE_AH)];
        Explanation::of(Term::of(mean_draw_a::FORMULA, given)).note("The day's mean draw.")
    })
    .is(|s| Some(s.boat.plant.load_a));

pub(super) static PEAK_SHAFT_W: Figure =
    Figure::new("run.peak_shaft_w", "Most power at its shaft", "W", 0, |s| {
        let after = clock(s.seconds / 60.0);
        Explanation::of(flow::taken_w(s))
            .note(format!("The highest of the run's moments, after {after}."))
    })
    .at(When::Hardest)
    .source(LOSSES)
    .is(|s| Some(s.report().analyses.run.peak_shaft_w));

/// What the alternators ask for along the run.
fn marginal(s: &Instant) -> Term {
    let shaft = described(
        "Energy the alternators' shafts took, added up along the run",
        "kW·h",
        s.report().analyses.run.shaft_kwh,
    );
    Term::of(marginal_l::FORMULA, [s.figure(&MARGINAL_L_KWH), shaft])
}

static FUEL_L: Figure = Figure::new("run.fuel_l", "Fuel, run for charging", "L", 1, |s| {
    let minutes = described(RUN_MINUTES, "min", s.report().analyses.run.minutes);
    let given = [
        s.figure(&IDLE_L_H),
        Term::of(hours::FORMULA, [minutes]),
        marginal(s),
    ];
    Explanation::of(Term::of(run_l::FORMULA, given)).note(FUEL)
})
.is(|s| Some(s.report().analyses.run.fuel_l));

static MARGINAL_FUEL_L: Figure = Figure::new(
    "run.marginal_fuel_l",
    "… while motoring anyway",
    "L",
    1,
    |s| Explanation::of(marginal(s)).note(SHAFT),
)
.named("Fuel of the run while motoring anyway")
.is(|s| Some(s.report().analyses.run.marginal_fuel_l));

pub(super) static MID_BANK_A: Figure =
    Figure::new("run.mid_bank_a", "Half-way, into this bank", "A", 0, |s| {
        Explanation::of(flow::into_bank(s, &MID_A)).note(DRAWN)
    })
    .at(When::Middle)
    .is(|s| Some(s.report().analyses.run.mid_bank_a));
