//! The air of the engine space.

use crate::boat::{Breathing, key};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::term::Term;
use crate::physics::air::{blown_m3h, combustion_m3h, flow_w_k};
use crate::physics::sources::OWN_REASONING;

pub(super) const FIGURES: &[&Figure] = &[&SPACE_AIR_M3H, &AIR_W_K];

static SPACE_AIR_M3H: Figure = Figure::new(
    "output.space_air_m3h",
    "Air through the space",
    "m³/h",
    0,
    |s| {
        let mut all = Vec::new();
        if s.inputs().eng.breathing == Breathing::Space {
            let given = [
                s.input(key!(eng.displacement_l)),
                s.input(key!(eng.rpm)),
                s.input(key!(eng.filling_pct)),
            ];
            all.push(Term::of(combustion_m3h::FORMULA, given));
        }
        let blower = [
            s.input(key!(space.blower_m3h)),
            s.input(key!(space.blower_installed_pct)),
        ];
        all.push(Term::of(blown_m3h::FORMULA, blower));
        all.push(s.input(key!(space.leak_m3h)).symbol("q_gaps"));
        Explanation::of(Term::Sum(all))
            .note("What the engine breathes every second turn, the blower as installed, and the gaps.")
            .inputs(&[key!(eng.breathing)])
    },
)
.source(OWN_REASONING)
.is(|s| Some(s.report().analyses.output.space_air_m3h));

pub(super) static AIR_W_K: Figure = Figure::new(
    "inner.air_w_k",
    "Carried off by air for each kelvin",
    "W/K",
    2,
    |s| {
        let given = [s.figure(&SPACE_AIR_M3H), s.input(key!(space.air_kg_m3))];
        Explanation::of(Term::of(flow_w_k::FORMULA, given))
    },
)
.is(|s| Some(s.boat.plant.space.flow_w_k));
