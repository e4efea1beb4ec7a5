//! What the alternator sheds its heat through.

use crate::boat::{Key, key};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::curve::SHAFT_RPM;
use crate::explain::figures::rating::COOLING_FACTOR;
use crate::explain::figures::step::Step;
use crate::explain::figures::to_body::{RECTIFIER_BODY, SIZED, WINDING_BODY, reference, sized};
use crate::explain::instant::{Instant, Part, When};
use crate::explain::term::Term;
use crate::physics::heat_balance::{
    beside_winding_w_k, fan_factor, heat_to_air_w, inlet_c, to_air_w_k,
};
use crate::physics::thermal_shares::WINDING_AIR as WINDING_AIR_1520;

pub(super) const FIGURES: &[&Figure] = &[
    &FAN_FACTOR,
    &WINDING_AIR,
    &BODY_AIR,
    &RECTIFIER_AIR,
    &WINDING_BODY,
    &RECTIFIER_BODY,
    &HOT_INLET,
    &HOT_CARRIED_W,
];

static FAN_FACTOR: Figure = Figure::new(
    "inner.fan_factor",
    "Cooling by the fan at this speed",
    "",
    3,
    |s| {
        let given = [
            s.figure(&SHAFT_RPM),
            s.input(key!(alt.anchor_rpm)),
            s.input(key!(alt.cooling_exponent)),
            s.input(key!(alt.still_air_pct)),
        ];
        Explanation::of(Term::of(fan_factor::FORMULA, given))
            .note("Part of the cooling does not come from the fan.")
    },
)
.is(|s| Some(s.boat.first().fan));

/// That of body or rectifier plate, told against the winding's.
fn beside_winding(s: &Instant, share: Key) -> Term {
    let given = [reference(WINDING_AIR_1520), s.input(share)];
    Term::of(beside_winding_w_k::FORMULA, given)
}

fn to_air(s: &Instant, reference: Term) -> Explanation {
    let given = [
        reference,
        sized(s),
        s.figure(&COOLING_FACTOR),
        s.figure(&FAN_FACTOR),
    ];
    Explanation::of(Term::of(to_air_w_k::FORMULA, given)).note(SIZED)
}

pub(super) static WINDING_AIR: Figure =
    Figure::new("inner.winding_air_w_k", "Winding to air", "W/K", 2, |s| {
        to_air(s, reference(WINDING_AIR_1520))
    })
    .is(|s| Some(s.network.winding_air));

pub(super) static BODY_AIR: Figure =
    Figure::new("inner.body_air_w_k", "Body to air", "W/K", 2, |s| {
        to_air(s, beside_winding(s, key!(alt.case_air_pct)))
    })
    .is(|s| Some(s.network.body_air));

pub(super) static RECTIFIER_AIR: Figure = Figure::new(
    "inner.rectifier_air_w_k",
    "Rectifier to air",
    "W/K",
    2,
    |s| to_air(s, beside_winding(s, key!(alt.rectifier_air_pct))),
)
.is(|s| Some(s.network.rectifier_air));

pub(super) static HOT_INLET: Figure =
    Figure::new("inner.hot.inlet_c", "Air it draws in, hot", "°C", 1, |s| {
        let given = [
            s.temperature(Part::Air),
            s.input(key!(space.recirculation_pct)),
            s.temperature(Part::Case),
            s.input(key!(space.cold_air_pct)),
            s.input(key!(space.outside_c)),
        ];
        Explanation::of(Term::of(inlet_c::FORMULA, given)).note(
            "Some of its own warm air is recirculated; a cool-air duct brings air from outside.",
        )
    })
    .at(When::Hot)
    .is(|s| s.settled(s.network.inlet_c(&s.t)));

pub(super) static HOT_CARRIED_W: Figure = Figure::new(
    "inner.hot.carried_w",
    "Heat the alternator gives the air",
    "W",
    0,
    |s| {
        let given = [
            s.winding_air(),
            s.temperature(Part::Winding),
            s.inlet(),
            s.body_air(),
            s.temperature(Part::Case),
            s.rectifier_air(),
            s.temperature(Part::Rectifier),
            s.step(Step::FanW),
        ];
        Explanation::of(Term::of(heat_to_air_w::FORMULA, given)).note(
            "Settled, this is what the alternator loses: heat in is heat carried away. Most of the fan's own loss leaves as warm air.",
        )
    },
)
.at(When::Hot)
.is(|s| s.settled(s.heat_w[0]));
