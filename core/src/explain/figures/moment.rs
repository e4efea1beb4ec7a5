//! What the run shows at a minute.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::bank::{resists_ohm, rest_v};
use crate::explain::figures::flow;
use crate::explain::figures::notes::DRAWN;
use crate::explain::figures::run::held;
use crate::explain::figures::temperatures::OF_A_MINUTE;
use crate::explain::instant::When;
use crate::explain::term::{Term, described};
use crate::physics::charging::{charge_pct, terminal_v};
use crate::physics::sources::{LOSSES, OWN_REASONING};
use crate::simulation::moment::Output;

pub(super) const FIGURES: &[&Figure] = &[
    &ALTERNATOR_A,
    &BANK_A,
    &BANK_V,
    &CHARGE_PCT,
    OF_A_MINUTE[0],
    OF_A_MINUTE[1],
    OF_A_MINUTE[2],
    OF_A_MINUTE[3],
    &SHAFT_W,
];

pub(super) static ALTERNATOR_A: Figure =
    Figure::new("moment.alternator_a", "Alternator", "A", 0, held)
        .at(When::Moment)
        .source(OWN_REASONING)
        .is(|s| Some(s.boat.plant.charging_a(&s.moment.flow)));

static BANK_A: Figure = Figure::new("moment.bank_a", "Into the bank", "A", 0, |s| {
    Explanation::of(flow::into_bank(s, &ALTERNATOR_A)).note(DRAWN)
})
.at(When::Moment)
.is(|s| Some(s.moment.flow.bank_a));

static BANK_V: Figure = Figure::new("moment.bank_v", "At the bank", "V", 2, |s| {
    let flow = &s.moment.flow;
    let then = Output {
        amperes: flow.bank_a,
        volts: flow.bank_v,
    };
    let given = [
        rest_v(s),
        s.figure(&BANK_A),
        described(
            "What the bank resists then",
            "Ω",
            resists_ohm(&s.boat.plant.bank, s.soc, then),
        ),
    ];
    Explanation::of(Term::of(terminal_v::FORMULA, given))
})
.at(When::Moment)
.is(|s| Some(s.moment.flow.bank_v));

static CHARGE_PCT: Figure = Figure::new("moment.charge_pct", "Charge", "%", 0, |s| {
    let gained = s.soc - s.inputs().run.from_pct / 100.0;
    let given = [
        s.input(key!(run.from_pct)),
        described(
            "Charge gained until then, added up along the run",
            "A·h",
            gained * s.boat.plant.bank.capacity_ah,
        ),
        s.bank_ah(),
    ];
    Explanation::of(Term::of(charge_pct::FORMULA, given)).note("The run is stepped through time.")
})
.at(When::Moment)
.is(|s| Some(100.0 * s.soc));

static SHAFT_W: Figure = Figure::new("moment.shaft_w", "At its shaft", "W", 0, |s| {
    Explanation::of(flow::taken_w(s)).note("What comes out and what is lost.")
})
.at(When::Moment)
.source(LOSSES)
.is(|s| Some(s.moment.shaft_w()));
