//! What a generator with a mains charger puts back in a day.

use crate::analysis::generator::GeneratorReport;
use crate::boat::key;
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::notes::{DAILY, STEPPED, SUN_COVERS};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described, maybe};
use crate::physics::charging::engine_hours;
use crate::physics::drive::percent;
use crate::physics::generator::{FOOT, burnt_l, load_share, part_load_l_h};

pub(super) const FIGURES: &[&Figure] = &[&HOURS, &LOAD_PCT, &FUEL_L];

fn charges(boat: &Boat) -> bool {
    boat.report.analyses.generator.is_some()
}

fn generator(s: &Instant) -> Option<GeneratorReport> {
    s.report().analyses.generator
}

/// Why it does not run; none where it does.
fn no_run(s: &Instant) -> Option<&'static str> {
    match generator(s).and_then(|generator| generator.hours) {
        Some(hours) if hours > 0.0 => None,
        Some(_) => Some(SUN_COVERS),
        None => Some("No run of the generator puts back what the boat uses."),
    }
}

static HOURS: Figure = Figure::new("generator.hours", "Generator", "h", 2, |s| {
    if let Some(why) = no_run(s) {
        return Explanation::none(why);
    }
    let need_ah = generator(s).map(|generator| generator.day_ah);
    let mean_a = generator(s).and_then(|generator| generator.mean_bank_a);
    let house_a = generator(s).map(|generator| generator.house_load_a);
    let given = [
        maybe("Left to the generator", "A·h", need_ah).symbol("Q"),
        s.input(key!(bank.charge_efficiency_pct)),
        maybe("Mean current into the bank, of this run", "A", mean_a),
        maybe("House load meanwhile", "A", house_a),
    ];
    Explanation::of(Term::of(engine_hours::FORMULA, given)).note([STEPPED, DAILY].concat())
})
.named("Generator a day")
.only(charges)
.is(|s| generator(s)?.hours);

/// Mean part of what it can give.
fn load(s: &Instant) -> Term {
    let kwh = generator(s).and_then(|generator| generator.mains_kwh);
    let given = [
        maybe("Taken by its charger in the day", "kW·h", kwh),
        s.figure(&HOURS).symbol("t_gen"),
        s.input(key!(genset.kw)),
    ];
    Term::of(load_share::FORMULA, given)
}

static LOAD_PCT: Figure =
    Figure::new(
        "generator.load_pct",
        "… its mean load",
        "%",
        0,
        |s| match no_run(s) {
            Some(why) => Explanation::none(why),
            None => Explanation::of(Term::of(percent::FORMULA, [load(s), Term::Number(1.0)])),
        },
    )
    .named("Generator's mean load")
    .only(charges)
    .is(|s| generator(s)?.load_pct);

static FUEL_L: Figure = Figure::new("generator.fuel_l", "… its fuel", "L", 1, |s| {
    if let Some(why) = no_run(s) {
        return Explanation::none(why);
    }
    let foot = described(
        "Part of the fuel at full output that it takes to turn it",
        "",
        FOOT,
    );
    let l_h = Term::of(
        part_load_l_h::FORMULA,
        [s.input(key!(genset.full_l_h)), foot, load(s)],
    );
    Explanation::of(Term::of(
        burnt_l::FORMULA,
        [l_h, s.figure(&HOURS).symbol("t_gen")],
    ))
    .note("A straight line from turning it with no load to full output.")
})
.named("Generator's fuel a day")
.only(charges)
.is(|s| generator(s)?.fuel_l);
