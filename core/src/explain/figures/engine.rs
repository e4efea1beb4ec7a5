//! What the alternators ask of the engine, and its fuel.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::run::{PEAK_SHAFT_W, RUN_MINUTES};
use crate::explain::figures::terms::told;
use crate::explain::instant::Instant;
use crate::explain::term::Term;
use crate::physics::drive::{belts_kw, hours, mean_belts_kw, percent};
use crate::physics::fuel::{friction_kpa, friction_kw, idle_l_h, marginal_l_kwh, slope_l_kwh};
use crate::physics::sources::ARITHMETIC;
use crate::physics::torque::{available_kw, speed_share, torque_share};
use crate::simulation::engine_fuel::chamber_kpa;

pub(super) const FIGURES: &[&Figure] = &[
    &AVAILABLE_KW,
    &PEAK_KW,
    &PEAK_SHARE_PCT,
    &MEAN_SHARE_PCT,
    &IDLE_L_H,
    &MARGINAL_L_KWH,
    &TORQUE_SHARE,
    &FRICTION_KPA,
    &FRICTION_KW,
];

/// Speed of the engine over its highest.
fn speed(s: &Instant) -> Term {
    let given = [s.input(key!(eng.rpm)), s.input(key!(eng.top_rpm))];
    Term::of(speed_share::FORMULA, given)
}

static AVAILABLE_KW: Figure = Figure::new(
    "engine.available_kw",
    "It has, at this speed",
    "kW",
    1,
    |s| {
        let given = [
            s.input(key!(eng.rated_kw)),
            speed(s),
            s.figure(&TORQUE_SHARE),
        ];
        Explanation::of(Term::of(available_kw::FORMULA, given))
            .note("Power follows speed and torque.")
    },
)
.named("Power the engine has at this speed")
.source(ARITHMETIC)
.is(|s| Some(s.report().analyses.engine.available_kw));

static PEAK_KW: Figure = Figure::new("engine.peak_kw", "The belts take at most", "kW", 2, |s| {
    let given = [
        s.figure(&PEAK_SHAFT_W),
        s.input(key!(eng.belt_efficiency_pct)),
    ];
    Explanation::of(Term::of(belts_kw::FORMULA, given))
})
.is(|s| Some(s.report().analyses.engine.peak_kw));

static PEAK_SHARE_PCT: Figure =
    Figure::new("engine.peak_share_pct", "… of what it has", "%", 0, |s| {
        let given = [
            s.figure(&PEAK_KW).symbol("P_belt"),
            s.figure(&AVAILABLE_KW).symbol("P_has"),
        ];
        Explanation::of(Term::of(percent::FORMULA, given))
    })
    .named("The belts take at most, of what the engine has")
    .is(|s| Some(s.report().analyses.engine.peak_share_pct));

static MEAN_SHARE_PCT: Figure = Figure::new(
    "engine.mean_share_pct",
    "… mean of the run",
    "%",
    0,
    |s| {
        let run = &s.report().analyses.run;
        let mean = if run.minutes > 0.0 {
            let given = [
                told(
                    "Energy the alternators' shafts took, added up along the run",
                    "kW·h",
                    run.shaft_kwh,
                ),
                Term::of(hours::FORMULA, [told(RUN_MINUTES, "min", run.minutes)]),
                s.input(key!(eng.belt_efficiency_pct)),
            ];
            Term::of(mean_belts_kw::FORMULA, given)
        } else {
            s.figure(&PEAK_KW).symbol("P_belt")
        };
        let given = [mean, s.figure(&AVAILABLE_KW).symbol("P_has")];
        Explanation::of(Term::of(percent::FORMULA, given))
    },
)
.named("The belts take, mean of the run, of what the engine has")
.is(|s| Some(s.report().analyses.engine.mean_share_pct));

/// Fuel for a kilowatt-hour of the pistons' work.
fn slope(s: &Instant) -> Term {
    let given = [
        s.input(key!(eng.indicated_efficiency_pct)),
        s.input(key!(eng.fuel_mj_kg)),
        s.input(key!(eng.fuel_kg_l)),
    ];
    Term::of(slope_l_kwh::FORMULA, given)
}

pub(super) static IDLE_L_H: Figure =
    Figure::new("engine.idle_l_h", "To turn itself", "L/h", 2, |s| {
        let given = [s.figure(&FRICTION_KW), slope(s)];
        Explanation::of(Term::of(idle_l_h::FORMULA, given))
            .note("The foot of the Willans line: fuel that goes into friction alone.")
    })
    .named("Fuel the engine takes to turn itself")
    .is(|s| Some(s.boat.plant.fuel.idle_l_h));

pub(super) static MARGINAL_L_KWH: Figure = Figure::new(
    "engine.marginal_l_kwh",
    "For a kW·h at the shaft",
    "L",
    2,
    |s| {
        let given = [slope(s), s.input(key!(eng.belt_efficiency_pct))];
        Explanation::of(Term::of(marginal_l_kwh::FORMULA, given))
            .note("The slope of the Willans line, through the belt; 3.6 MJ is one kilowatt-hour.")
    },
)
.named("Fuel for a kW·h at the shaft")
.is(|s| Some(s.report().analyses.engine.marginal_l_kwh));

static TORQUE_SHARE: Figure = Figure::new(
    "inner.torque_share",
    "Torque it has, over that at its highest speed",
    "",
    2,
    |s| {
        let foot = told(
            "Where its torque curve would begin at a standstill, by the way of injection",
            "",
            s.inputs().eng.injection.torque_foot(),
        );
        Explanation::of(Term::of(torque_share::FORMULA, [speed(s), foot]))
            .note("Less as it comes near idle. What most have above the rated torque half-way is not counted on.")
            .inputs(&[key!(eng.injection)])
    },
);

static FRICTION_KPA: Figure = Figure::new(
    "inner.friction_kpa",
    "Friction, as pressure on the pistons",
    "kPa",
    1,
    |s| {
        let given = [
            told(
                "Friction at a standstill, by the way of injection",
                "kPa",
                chamber_kpa(s.inputs().eng.injection),
            ),
            s.input(key!(eng.rpm)),
            s.input(key!(eng.stroke_mm)),
        ];
        Explanation::of(Term::of(friction_kpa::FORMULA, given))
            .note("The bracket is the mean speed of the piston in m/s.")
            .inputs(&[key!(eng.injection)])
    },
);

static FRICTION_KW: Figure = Figure::new("inner.friction_kw", "Friction", "kW", 2, |s| {
    let given = [
        s.figure(&FRICTION_KPA),
        s.input(key!(eng.displacement_l)),
        s.input(key!(eng.rpm)),
    ];
    Explanation::of(Term::of(friction_kw::FORMULA, given))
        .note("Every cylinder works every second turn.")
});
