//! What the alternators ask of the engine.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::fuel::{FRICTION_KPA, FRICTION_KW, IDLE_L_H, MARGINAL_L_KWH};
use crate::explain::figures::run::{PEAK_SHAFT_W, RUN_MINUTES};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::drive::{belts_kw, hours, mean_belts_kw, percent};
use crate::physics::sources::ARITHMETIC;
use crate::physics::torque::{available_kw, speed_share, torque_share};

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
                described(
                    "Energy the alternators' shafts took, added up along the run",
                    "kW·h",
                    run.shaft_kwh,
                ),
                Term::of(hours::FORMULA, [described(RUN_MINUTES, "min", run.minutes)]),
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

static TORQUE_SHARE: Figure = Figure::new(
    "inner.torque_share",
    "Torque it has, over that at its highest speed",
    "",
    2,
    |s| {
        let foot = described(
            "Where its torque curve would begin at a standstill, by the way of injection",
            "",
            s.inputs().eng.injection.torque_foot(),
        );
        Explanation::of(Term::of(torque_share::FORMULA, [speed(s), foot]))
            .note("Less as it comes near idle. What most have above the rated torque half-way is not counted on.")
            .inputs(&[key!(eng.injection)])
    },
);
