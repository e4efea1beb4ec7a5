//! What the alternator gives: cold, and once all has settled.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::curve::{COLD_FIELD_X, INFINITE_A, SHAFT_RPM, ZERO_RPM};
use crate::explain::figures::flow;
use crate::explain::figures::heat::HOT_CARRIED_W;
use crate::explain::figures::steps::HOT_LOSSES;
use crate::explain::instant::When;
use crate::explain::term::{Term, described};
use crate::physics::copper::ratio;
use crate::physics::full_field::{COLD_ROTOR_C, full_field_a};
use crate::physics::sources::{OUTPUT_CURVE, OWN_REASONING};
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::text::words;

/// Its output, up to what it holds when hot.
pub(super) const FIGURES: &[&Figure] = &[
    &SHAFT_RPM,
    &INFINITE_A,
    &ZERO_RPM,
    &FULL_COLD_A,
    &COLD_FIELD_X,
    &HOT_A,
];

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
        described(
            &format!("{}{rest}: {what}", first.to_uppercase()),
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

static HOT_A: Figure = Figure::new("output.hot_a", "Hot output", "A", 0, |s| {
    let balance = "Its losses at this current, and the heat its air carries away, are the two sides of the balance that finds it.";
    Explanation::of(flow::held(s))
        .note(format!("{} {balance}", flow::limited_by(s)))
        .figures(&[HOT_LOSSES, &HOT_CARRIED_W])
})
.at(When::Hot)
.source(OWN_REASONING)
.is(|s| Some(s.report().analyses.output.hot_a));
