//! The engine's fuel: what it takes to turn itself, and for the work it does.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::fuel::{friction_kpa, friction_kw, idle_l_h, marginal_l_kwh, slope_l_kwh};
use crate::simulation::engine_fuel::chamber_kpa;

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

pub(super) static FRICTION_KPA: Figure = Figure::new(
    "inner.friction_kpa",
    "Friction, as pressure on the pistons",
    "kPa",
    1,
    |s| {
        let given = [
            described(
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

pub(super) static FRICTION_KW: Figure =
    Figure::new("inner.friction_kw", "Friction", "kW", 2, |s| {
        let given = [
            s.figure(&FRICTION_KPA),
            s.input(key!(eng.displacement_l)),
            s.input(key!(eng.rpm)),
        ];
        Explanation::of(Term::of(friction_kw::FORMULA, given))
            .note("Every cylinder works every second turn.")
    });
