//! What a belt carries by the rule of thumb, and how much of that is used. Uses the
//! geometry.

use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::belt::geometry::WRAP_DEG;
use crate::explain::figures::belt::looked_at::{
    AtSpeeds, OfBelts, amperes, blocks, is_entered, is_there, of_belt, table,
};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::belt::{rule_a, rule_w, used_pct};

pub(super) static RULE_LOW_A: OfBelts = each_belt!(
    "rule_low_a",
    "carries by the rule of thumb, at least",
    "A",
    0,
    rule_low,
    |belt| belt.rule_low_a,
    is_entered
);
pub(super) static RULE_HIGH_A: OfBelts = each_belt!(
    "rule_high_a",
    "carries by the rule of thumb, at most",
    "A",
    0,
    rule_high,
    |belt| belt.rule_high_a,
    is_entered
);
pub(super) static RULE_W: AtSpeeds = each_load!(
    "rule_w",
    "power by the rule of thumb",
    "W",
    0,
    by_rule,
    |load| load.rule_w,
    is_there
);
pub(super) static RULE_PCT: AtSpeeds = each_load!(
    "rule_pct",
    "used of what it carries by the rule of thumb",
    "%",
    0,
    used_of_rule,
    |load| load.rule_pct,
    is_entered
);

pub(super) fn rule(s: &Instant, rule_12v_a: Option<f64>) -> Explanation {
    let given = [
        described(
            "What the rule of thumb gives such a belt in a 12 V system, half round the pulley",
            "A",
            rule_12v_a.unwrap_or(f64::NAN),
        ),
        of_belt(s, &WRAP_DEG),
        blocks(s),
    ];
    Explanation::of(Term::of(rule_a::FORMULA, given))
        .note("The bracket is what is left of it for this wrap; more than half a turn counts as half a turn.")
}

pub(super) fn rule_low(s: &Instant) -> Explanation {
    rule(s, table(s).map(|table| table.rule_a.0))
}

pub(super) fn rule_high(s: &Instant) -> Explanation {
    rule(s, table(s).map(|table| table.rule_a.1))
}

pub(super) fn by_rule(s: &Instant) -> Explanation {
    Explanation::of(Term::of(rule_w::FORMULA, [amperes(s), blocks(s)]))
        .note("A horsepower for each 25 A at 12 V.")
}

pub(super) fn used_of_rule(s: &Instant) -> Explanation {
    let given = [
        amperes(s).symbol("I"),
        of_belt(s, &RULE_HIGH_A).symbol("I_rule"),
    ];
    Explanation::of(Term::of(used_pct::FORMULA, given))
}
