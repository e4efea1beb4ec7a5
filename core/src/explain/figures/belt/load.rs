//! What a belt is asked for: torque at the alternator's shaft, power of the engine.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::belt::looked_at::{AtSpeeds, is_there, shaft_rpm, shaft_w};
use crate::explain::instant::Instant;
use crate::explain::term::Term;
use crate::physics::belt::{engine_w, torque_nm};

pub(super) static SHAFT_NM: AtSpeeds = each_load!(
    "shaft_nm",
    "torque at the alternator's shaft",
    "N·m",
    1,
    torque,
    |load| load.shaft_nm,
    is_there
);
pub(super) static ENGINE_W: AtSpeeds = each_load!(
    "engine_w",
    "power asked of the engine",
    "W",
    0,
    of_engine,
    |load| load.engine_w,
    is_there
);

pub(super) fn torque(s: &Instant) -> Explanation {
    Explanation::of(Term::of(torque_nm::FORMULA, [shaft_w(s), shaft_rpm(s)]))
}

pub(super) fn of_engine(s: &Instant) -> Explanation {
    let given = [shaft_w(s), s.input(key!(eng.belt_efficiency_pct))];
    Explanation::of(Term::of(engine_w::FORMULA, given))
}
