//! Pulleys, wrap and speed of a belt.

use crate::boat::{Alternator, Belt};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::belt::looked_at::{
    AtSpeeds, OfBelts, input, installed, is_there, of_belt, pulley, shaft_rpm,
};
use crate::explain::instant::Instant;
use crate::explain::term::Term;
use crate::physics::belt::{engine_pulley_mm, radians, speed_m_s, usual_wrap_deg};

pub(super) static ENGINE_PULLEY_MM: OfBelts = each_belt!(
    "engine_pulley_mm",
    "engine pulley",
    "mm",
    0,
    engine_pulley,
    |belt| belt.engine_pulley_mm,
    is_there
);
pub(super) static WRAP_DEG: OfBelts = each_belt!(
    "wrap_deg",
    "wrap on the smaller pulley",
    "°",
    0,
    wrap,
    |belt| belt.wrap_deg,
    is_there
);
pub(super) static BELT_M_S: AtSpeeds = each_load!(
    "belt_m_s",
    "speed",
    "m/s",
    1,
    speed,
    |load| load.belt_m_s,
    is_there
);

pub(super) fn engine_pulley(s: &Instant) -> Explanation {
    if installed(s).belt.engine_mm.is_some() {
        return Explanation::of(input(s, Belt::engine_mm).symbol("D"));
    }
    let ratio = s.input(installed(s).key(Alternator::pulley_ratio));
    Explanation::of(Term::of(engine_pulley_mm::FORMULA, [ratio, pulley(s)]))
}

pub(super) fn wrap(s: &Instant) -> Explanation {
    if installed(s).belt.wrap_deg.is_some() {
        return Explanation::of(input(s, Belt::wrap_deg).symbol("θ"));
    }
    let given = [
        of_belt(s, &ENGINE_PULLEY_MM),
        pulley(s),
        input(s, Belt::centres_mm),
    ];
    Explanation::of(Term::of(usual_wrap_deg::FORMULA, given))
        .note("An open belt: π is half a turn.")
}

pub(super) fn wrap_in_radians(s: &Instant) -> Term {
    Term::of(radians::FORMULA, [of_belt(s, &WRAP_DEG)])
}

pub(super) fn speed(s: &Instant) -> Explanation {
    Explanation::of(Term::of(speed_m_s::FORMULA, [pulley(s), shaft_rpm(s)]))
}
