//! What winding and rectifier plate give their heat to the alternator's body through.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::heat_balance::{rated_w, size, to_body_w_k};
use crate::physics::thermal_shares::RECTIFIER_BODY as RECTIFIER_BODY_1520;

/// How sure its size is.
pub(super) const SIZED: &str = "Its surfaces grow with the power: own reasoning.";

/// That of an alternator of 1520 W.
pub(super) fn reference(w_k: f64) -> Term {
    described("That of an alternator of 1520 W", "W/K", w_k)
}

/// Its surfaces over those of an alternator of 1520 W.
pub(super) fn sized(s: &Instant) -> Term {
    let given = [s.input(key!(alt.rated_a)), s.input(key!(alt.test_v))];
    Term::of(size::FORMULA, [Term::of(rated_w::FORMULA, given)])
}

fn to_body(s: &Instant, reference: Term) -> Explanation {
    Explanation::of(Term::of(to_body_w_k::FORMULA, [reference, sized(s)])).note(SIZED)
}

pub(super) static WINDING_BODY: Figure =
    Figure::new("inner.winding_body_w_k", "Winding to body", "W/K", 2, |s| {
        to_body(s, s.input(key!(alt.coupling_w_k)))
    })
    .is(|s| Some(s.network.winding_body));

pub(super) static RECTIFIER_BODY: Figure = Figure::new(
    "inner.rectifier_body_w_k",
    "Rectifier to body",
    "W/K",
    2,
    |s| to_body(s, reference(RECTIFIER_BODY_1520)),
)
.is(|s| Some(s.network.rectifier_body));
