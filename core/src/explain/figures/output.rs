//! The alternator: its curve, its rated losses, the air of its space.

use crate::boat::{Breathing, Curve, key};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::flow;
use crate::explain::figures::heat::HOT_CARRIED_W;
use crate::explain::figures::steps::HOT_LOSSES;
use crate::explain::figures::terms::told;
use crate::explain::instant::{Instant, When};
use crate::explain::term::Term;
use crate::physics::air::{blown_m3h, combustion_m3h, flow_w_k};
use crate::physics::copper::ratio;
use crate::physics::drive::shaft_rpm;
use crate::physics::full_field::COLD_ROTOR_C;
use crate::physics::full_field::{
    cold_field, full_field_a, infinite_through_points_a, infinite_through_rating_a, square_slope,
    zero_below_rating_rpm, zero_through_points_rpm,
};
use crate::physics::sources::{OUTPUT_CURVE, OWN_REASONING};
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::text::words;

/// Its output, up to what it holds when hot.
pub(super) const OUTPUT: &[&Figure] = &[
    &SHAFT_RPM,
    &INFINITE_A,
    &ZERO_RPM,
    &FULL_COLD_A,
    &COLD_FIELD_X,
    &HOT_A,
];

/// The air of its space.
pub(super) const SPACE: &[&Figure] = &[&SPACE_AIR_M3H, &AIR_W_K];

pub(super) static SHAFT_RPM: Figure =
    Figure::new("alternators.0.shaft_rpm", "Its own speed", "rpm", 0, |s| {
        let given = [s.input(key!(alt.pulley_ratio)), s.input(key!(eng.rpm))];
        Explanation::of(Term::of(shaft_rpm::FORMULA, given))
    })
    .named("Shaft speed of the alternator")
    .is(|s| Some(s.report().analyses.alternators[0].shaft_rpm));

/// How I² changes with 1/n², where the curve is from two points.
fn through_points(s: &Instant) -> Option<Term> {
    let points = s.inputs().alt.curve == Curve::Points && s.boat.first().curve_fits;
    points.then(|| {
        let given = [
            s.input(key!(alt.second_a)),
            s.input(key!(alt.rated_a)),
            s.input(key!(alt.second_rpm)),
            s.input(key!(alt.rated_rpm)),
        ];
        Term::of(square_slope::FORMULA, given)
    })
}

pub(super) static INFINITE_A: Figure = Figure::new(
    "alternators.0.infinite_a",
    "Output at endless speed",
    "A",
    1,
    |s| {
        let (rated_a, rated_rpm) = (s.input(key!(alt.rated_a)), s.input(key!(alt.rated_rpm)));
        let explanation = match through_points(s) {
            Some(slope) => {
                let given = [rated_a, slope, rated_rpm];
                Explanation::of(Term::of(infinite_through_points_a::FORMULA, given))
                    .note("Through both points: I² is linear in 1/n².")
            }
            None => {
                let given = [rated_a, s.figure(&ZERO_RPM), rated_rpm];
                Explanation::of(Term::of(infinite_through_rating_a::FORMULA, given))
                    .note("Through the rating.")
            }
        };
        explanation.inputs(&[key!(alt.curve)])
    },
)
.is(|s| Some(s.report().analyses.alternators[0].infinite_a));

pub(super) static ZERO_RPM: Figure = Figure::new(
    "alternators.0.zero_rpm",
    "Cut-in speed of the fitted curve",
    "rpm",
    0,
    |s| match through_points(s) {
        Some(slope) => {
            let given = [slope, s.figure(&INFINITE_A)];
            Explanation::of(Term::of(zero_through_points_rpm::FORMULA, given))
                .note("Where the curve through both points comes to nothing.")
        }
        None => {
            let given = [s.input(key!(alt.zero_rpm)), s.input(key!(alt.rated_rpm))];
            Explanation::of(Term::of(zero_below_rating_rpm::FORMULA, given))
                .note("As given, and below the speed of the rating.")
        }
    },
)
.is(|s| Some(s.report().analyses.alternators[0].zero_rpm));

static FULL_COLD_A: Figure = Figure::new("output.full_cold_a", "Full field, cold", "A", 0, |s| {
    let given = [
        s.figure(&INFINITE_A),
        s.figure(&COLD_FIELD_X).symbol("x_N"),
        s.input(key!(alt.field_exponent)),
        s.figure(&ZERO_RPM),
        s.figure(&SHAFT_RPM),
        Term::Number(1.0),
        s.input(key!(alt.speed_exponent)),
    ];
    let mut all = vec![Term::of(full_field_a::FORMULA, given)];
    let mut beside = Vec::new();
    for (installed, alternator) in s.boat.others_on_house() {
        all.push(other_cold_a(words::alternator(installed.which), alternator));
        beside.extend([
            key!(alt2.rated_a),
            key!(alt2.rated_rpm),
            key!(alt2.curve),
            key!(alt2.zero_rpm),
            key!(alt2.pulley_ratio),
        ]);
    }
    Explanation::of(Term::Sum(all))
        .note("At the voltage of the rating, the rotor at 25 °C.")
        .inputs(&beside)
})
.source(OUTPUT_CURVE)
.is(|s| Some(s.report().analyses.output.full_cold_a));

/// Another alternator's part of it.
fn other_cold_a(name: &str, alternator: &AlternatorAtSpeed) -> Term {
    let (curve, shaft_rpm) = (&alternator.curve, alternator.shaft_rpm);
    let of = |what: &str, unit, value| {
        let (first, rest) = name.split_at(1);
        told(
            &format!("{}{rest}: {what}", first.to_ascii_uppercase()),
            unit,
            value,
        )
    };
    let given = [
        of("output at endless speed", "A", curve.infinite_a),
        of(
            "field of its cold rotor, over that of its rating",
            "",
            ratio(curve.rotor_c) / ratio(COLD_ROTOR_C),
        )
        .symbol("x_N"),
        of("how its output follows the field", "", curve.field_exponent),
        of("cut-in speed of its curve", "rpm", curve.zero_rpm),
        of("its own speed", "rpm", shaft_rpm),
        Term::Number(1.0),
        of(
            "how its cut-in speed follows the field",
            "",
            curve.speed_exponent,
        ),
    ];
    Term::of(full_field_a::FORMULA, given).of_second()
}

static COLD_FIELD_X: Figure = Figure::new(
    "inner.cold_field_x",
    "Field of a cold rotor, over that of the rating",
    "",
    3,
    |s| {
        Explanation::of(Term::of(
            cold_field::FORMULA,
            [s.input(key!(alt.plate_rotor_c))],
        ))
        .note("A rating that was read warmed up is exceeded by a cold rotor.")
        .inputs(&[key!(alt.plate)])
    },
);

static HOT_A: Figure = Figure::new("output.hot_a", "Hot output", "A", 0, |s| {
    let balance = "Its losses at this current, and the heat its air carries away, are the two sides of the balance that finds it.";
    Explanation::of(flow::held(s))
        .note(format!("{} {balance}", flow::limited_by(s)))
        .figures(&[HOT_LOSSES, &HOT_CARRIED_W])
})
.at(When::Hot)
.source(OWN_REASONING)
.is(|s| Some(s.report().analyses.output.hot_a));

pub(super) static SPACE_AIR_M3H: Figure = Figure::new(
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
