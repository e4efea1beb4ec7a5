//! Packs in parallel: how they share a current, what they take together, and what a
//! short circuit draws from each.

use crate::analysis::packs::{PackLoad, PacksReport, carried_a};
use crate::boat::key;
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::cable;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described, maybe};
use crate::physics::fuse::least_rating_a;
use crate::physics::packs::{
    conductances, limits_a, other_packs_a, pack_a, pack_share_pct, relative_ohm, together_a,
};

pub(super) const FIGURES: &[&Figure] = &[
    &MOST_SHARE_PCT,
    &LEAST_SHARE_PCT,
    &LIMITS_A,
    &TOGETHER_A,
    &CHARGING_MOST_A,
    &DISCHARGING_MOST_A,
    &SHORT_A,
    &OTHERS_SHORT_A,
    &FUSE_LEAST_A,
];

fn has_packs(boat: &Boat) -> bool {
    boat.report.analyses.packs.is_some()
}

fn packs<'a>(s: &'a Instant) -> Option<&'a PacksReport> {
    s.report().analyses.packs.as_ref()
}

fn count(s: &Instant) -> Term {
    described("Packs in parallel", "", s.inputs().pack_count() as f64)
}

/// What each pack takes at most.
fn pack_limit(s: &Instant) -> Term {
    described("Charge limit of each pack", "A", s.inputs().pack_limit_a())
}

/// Part of a current that the pack with a number takes.
fn share(s: &Instant, number: usize) -> Explanation {
    let inputs = s.inputs();
    let given = [
        described(
            "Number of the pack, the one with the least resistance 0",
            "",
            number as f64,
        ),
        count(s),
        s.input(key!(packs.spread_pct)),
    ];
    let all = conductances(inputs.pack_count(), inputs.pack_spread());
    let sum = described("Sum over all packs of one over that", "", all);
    let given = [Term::of(relative_ohm::FORMULA, given), sum];
    Explanation::of(Term::of(pack_share_pct::FORMULA, given))
        .note("Packs share a current as their conductances do; how they differ is spread evenly.")
}

static MOST_SHARE_PCT: Figure = Figure::new(
    "packs.most_share_pct",
    "The pack with the least resistance takes",
    "%",
    0,
    |s| share(s, 0),
)
.only(has_packs)
.is(|s| packs(s).map(|packs| packs.most_share_pct));

static LEAST_SHARE_PCT: Figure = Figure::new(
    "packs.least_share_pct",
    "The pack with the most resistance takes",
    "%",
    0,
    |s| share(s, s.inputs().pack_count().saturating_sub(1)),
)
.only(has_packs)
.is(|s| packs(s).map(|packs| packs.least_share_pct));

static LIMITS_A: Figure = Figure::new(
    "packs.limits_a",
    "Charge limits of all packs, added up",
    "A",
    0,
    |s| Explanation::of(Term::of(limits_a::FORMULA, [count(s), pack_limit(s)])),
)
.only(has_packs)
.is(|s| packs(s).map(|packs| packs.limits_a));

static TOGETHER_A: Figure = Figure::new(
    "packs.together_a",
    "What the packs may take together",
    "A",
    0,
    |s| {
        let given = [pack_limit(s), s.figure(&MOST_SHARE_PCT)];
        Explanation::of(Term::of(together_a::FORMULA, given))
            .note("Until the pack with the least resistance is at its own limit.")
    },
)
.only(has_packs)
.is(|s| packs(s).map(|packs| packs.together_a));

/// What the pack with the least resistance gets of a load.
fn most(s: &Instant, of: &str, load: Option<&PackLoad>) -> Explanation {
    let Some(load) = load else {
        return Explanation::none("Nothing flows, or the limit is not known.");
    };
    let given = [described(of, "A", load.bank_a), s.figure(&MOST_SHARE_PCT)];
    Explanation::of(Term::of(pack_a::FORMULA, given))
}

static CHARGING_MOST_A: Figure = Figure::new(
    "packs.charging.most_a",
    "While charging, the most loaded pack gets",
    "A",
    0,
    |s| {
        let load = packs(s).and_then(|packs| packs.charging.as_ref());
        most(s, "The most that flows into the bank in the run", load)
    },
)
.only(has_packs)
.is(|s| Some(packs(s)?.charging.as_ref()?.most_a));

static DISCHARGING_MOST_A: Figure = Figure::new(
    "packs.discharging.most_a",
    "At the peak house load, the most loaded pack gives",
    "A",
    0,
    |s| {
        let load = packs(s).and_then(|packs| packs.discharging.as_ref());
        most(s, "Peak house load", load)
    },
)
.only(has_packs)
.is(|s| Some(packs(s)?.discharging.as_ref()?.most_a));

static SHORT_A: Figure = Figure::new(
    "packs.short_a",
    "A short circuit draws from one pack",
    "A",
    0,
    |s| {
        let given = [s.figure(&cable::SHORT_CIRCUIT_A), s.figure(&MOST_SHARE_PCT)];
        Explanation::of(Term::of(pack_a::FORMULA, given))
    },
)
.only(has_packs)
.is(|s| packs(s).map(|packs| packs.short_a));

static OTHERS_SHORT_A: Figure = Figure::new(
    "packs.others_short_a",
    "A short circuit at one pack draws from the others",
    "A",
    0,
    |s| {
        let given = [
            s.figure(&cable::SHORT_CIRCUIT_A),
            s.figure(&LEAST_SHARE_PCT),
        ];
        Explanation::of(Term::of(other_packs_a::FORMULA, given))
            .note("At the pack with the most resistance, to which all the others give.")
    },
)
.only(has_packs)
.is(|s| packs(s).map(|packs| packs.others_short_a));

static FUSE_LEAST_A: Figure = Figure::new(
    "packs.fuse_least_a",
    "Least rating of each pack's fuse",
    "A",
    0,
    |s| {
        let carried = maybe(
            "The peak house load, or what the packs may take together",
            "A",
            packs(s).map(|_| carried_a(s.boat.sheet)),
        );
        let carries = Term::of(pack_a::FORMULA, [carried, s.figure(&MOST_SHARE_PCT)]);
        Explanation::of(Term::of(least_rating_a::FORMULA, [carries]))
            .note("A quarter above what the most loaded pack carries on and on.")
    },
)
.only(has_packs)
.is(|s| packs(s).map(|packs| packs.fuse_least_a));
