//! What bank and house take at most.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::sources::COMMON_PRACTICE;
use crate::simulation::Limit;

pub(super) static BANK_LIMIT_A: Figure = Figure::new(
    "inner.bank_limit_a",
    "What bank and house may take",
    "A",
    0,
    |s| {
        let mut limits = vec![s.input(key!(bank.charge_limit_a)).symbol("I_lim")];
        if s.inputs().pack_count() > 1 {
            let name = "What the packs take together until the first one is at its limit";
            limits.push(described(name, "A", s.inputs().own_charge_limit_a()).symbol("I_packs"));
        }
        limits.extend(s.inputs().ladder_a().map(|step_a| {
            let name = "Most at this cell temperature, from the ladder or the maker's sheet";
            described(name, "A", step_a).symbol("I_step")
        }));
        Explanation::of(Term::Sum(vec![Term::Least(limits), s.drawn()]))
            .note("What the bank may take, and what the house draws meanwhile.")
            .inputs(&[key!(bank.temperature_c), key!(bank.coldest_charge_c)])
    },
)
.source(COMMON_PRACTICE)
.is(|s| Some(s.boat.plant.bank_limit_a + s.boat.plant.taken_a(s.seconds)));

/// What the bank takes at most: its limit, where the regulator is told it, and
/// nothing beside the house load where it is frozen.
pub(super) fn bank_limits(s: &Instant) -> Vec<Term> {
    let plant = &s.boat.plant;
    let told_a = plant.told_limit_a(s.soc);
    let linked = plant.linked.then(|| {
        if told_a < plant.bank_limit_a {
            let name =
                "What the battery sends as its limit at that state of charge, and the house load";
            described(name, "A", told_a + plant.taken_a(s.seconds)).symbol("I_bank")
        } else {
            s.figure(&BANK_LIMIT_A).symbol("I_bank")
        }
    });
    let frozen = (s.moment.flow.limit == Limit::FrozenBank).then(|| {
        let name = "For the house alone: the bank is frozen and takes nothing";
        described(name, "A", plant.taken_a(s.seconds)).symbol("I_house")
    });
    let cap = plant.bank_cap_a.is_finite().then(|| {
        let name = "The current cap, measured at the house bank, and the house load";
        described(name, "A", plant.bank_cap_a + plant.taken_a(s.seconds)).symbol("I_cap")
    });
    linked.into_iter().chain(cap).chain(frozen).collect()
}
