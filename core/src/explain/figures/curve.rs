//! The alternator's output curve: its speed, what it gives at endless speed, where it
//! begins.

use crate::boat::{Curve, key};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::instant::Instant;
use crate::explain::term::Term;
use crate::physics::drive::shaft_rpm;
use crate::physics::full_field::{
    cold_field, infinite_through_points_a, infinite_through_rating_a, square_slope,
    zero_below_rating_rpm, zero_through_points_rpm,
};

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

pub(super) static COLD_FIELD_X: Figure = Figure::new(
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
