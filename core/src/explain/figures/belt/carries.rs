//! What a belt carries by the formula before it slips, and what it pulls at. Uses
//! the geometry.

use crate::boat::Belt;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::belt::geometry::{BELT_M_S, wrap_in_radians};
use crate::explain::figures::belt::looked_at::{
    AtSpeeds, OfBelts, at_speed, input, installed, is_entered, of_belt, shaft_w, table,
};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::belt::{carries_w, grip, own_pull_n, side_n, transmits_n, used_pct};

pub(super) static TIGHT_N: OfBelts = each_belt!(
    "tight_n",
    "most pull of the tight side",
    "N",
    0,
    tight,
    |belt| belt.tight_n,
    is_entered
);
pub(super) static SLIPS_AT_RATIO: OfBelts = each_belt!(
    "slips_at_ratio",
    "slips when the tight side is the slack side times",
    "",
    1,
    slips,
    |belt| belt.slips_at_ratio,
    is_entered
);
pub(super) static CARRIES_W: AtSpeeds = each_load!(
    "carries_w",
    "carries by the formula",
    "W",
    0,
    carries,
    |load| load.carries_w,
    is_entered
);
pub(super) static FORMULA_PCT: AtSpeeds = each_load!(
    "formula_pct",
    "used of what it carries by the formula",
    "%",
    0,
    used_of_formula,
    |load| load.formula_pct,
    is_entered
);
pub(super) static SIDE_N: AtSpeeds = each_load!(
    "side_n",
    "pull on the end of the crankshaft",
    "N",
    0,
    side,
    |load| load.side_n,
    is_entered
);

pub(super) fn tight(s: &Instant) -> Explanation {
    if installed(s).belt.tight_n.is_some() {
        return Explanation::of(input(s, Belt::tight_n).symbol("T₁"));
    }
    let kind = installed(s).which.belt_key(Belt::kind);
    Explanation::none("What tables give such a belt, from memory; all its belts or ribs together.")
        .inputs(&[kind])
}

pub(super) fn slips(s: &Instant) -> Explanation {
    let groove_deg = table(s).map_or(f64::NAN, |table| table.groove_deg);
    let given = [
        input(s, Belt::friction),
        described(
            "Angle between the flanks of a groove, from memory",
            "°",
            groove_deg,
        ),
        wrap_in_radians(s),
    ];
    Explanation::of(Term::of(grip::FORMULA, given))
        .note("Both sides less the pull from the belt's own weight.")
}

pub(super) fn carries(s: &Instant) -> Explanation {
    let kg_m = table(s).map_or(f64::NAN, |table| table.kg_m);
    let weight = [
        described(
            "Weight of the belt, all belts or ribs together, from memory",
            "kg/m",
            kg_m,
        ),
        at_speed(s, &BELT_M_S),
    ];
    let given = [
        of_belt(s, &TIGHT_N),
        Term::of(own_pull_n::FORMULA, weight),
        of_belt(s, &SLIPS_AT_RATIO),
        at_speed(s, &BELT_M_S),
    ];
    Explanation::of(Term::of(carries_w::FORMULA, given))
        .note("The pull that the belt hands on when it is about to slip, times its speed; m · v² is the pull from its own weight. For a new, tight and dry belt.")
}

pub(super) fn used_of_formula(s: &Instant) -> Explanation {
    let given = [shaft_w(s), at_speed(s, &CARRIES_W).symbol("P_most")];
    Explanation::of(Term::of(used_pct::FORMULA, given))
}

pub(super) fn side(s: &Instant) -> Explanation {
    let usual = table(s).map_or(f64::NAN, |table| table.usual_ratio);
    let ratio = Term::Least(vec![
        of_belt(s, &SLIPS_AT_RATIO).symbol("r_slip"),
        described(
            "Tight over slack side that such a belt is tightened for, from memory",
            "",
            usual,
        )
        .symbol("r_usual"),
    ]);
    let pull = Term::of(transmits_n::FORMULA, [shaft_w(s), at_speed(s, &BELT_M_S)]);
    Explanation::of(Term::of(side_n::FORMULA, [pull, ratio, wrap_in_radians(s)]))
        .note("The pulls of both sides of the belt added as arrows.")
}
