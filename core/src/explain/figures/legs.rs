//! The totals of a day of several legs.

use crate::analysis::legs::{LegReport, LegsReport};
use crate::boat::Purpose;
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::drive::hours;

pub(super) const FIGURES: &[&Figure] =
    &[&ENGINE_H, &CHARGING_H, &MOTORING_H, &BANK_AH, &LEGS_FUEL_L];

fn has_legs(boat: &Boat) -> bool {
    boat.report.analyses.legs.is_some()
}

fn legs<'a>(s: &'a Instant) -> Option<&'a LegsReport> {
    s.report().analyses.legs.as_ref()
}

/// The sum of something of each leg that counts.
fn sum(
    s: &Instant,
    what: &str,
    counts: fn(&LegReport) -> bool,
    term: fn(&str, &LegReport) -> Term,
) -> Explanation {
    let all = legs(s).into_iter().flat_map(|legs| &legs.legs).enumerate();
    let terms: Vec<Term> = all
        .filter(|(_, leg)| counts(leg))
        .map(|(at, leg)| term(&format!("{what} of leg {}", at + 1), leg))
        .collect();
    if terms.is_empty() {
        return Explanation::none("No leg is run for that.");
    }
    Explanation::of(Term::Sum(terms))
        .note("Each leg is stepped through time from what the one before and the pause have left.")
}

fn time(name: &str, leg: &LegReport) -> Term {
    Term::of(hours::FORMULA, [described(name, "min", leg.minutes)])
}

static ENGINE_H: Figure = Figure::new("legs.engine_h", "Engine, all legs", "h", 2, |s| {
    sum(s, "Time", |_| true, time)
})
.only(has_legs)
.is(|s| legs(s).map(|legs| legs.engine_h));

static CHARGING_H: Figure = Figure::new("legs.charging_h", "… only for charging", "h", 2, |s| {
    sum(s, "Time", |leg| leg.purpose == Purpose::Charging, time)
})
.named("Engine only for charging, all legs")
.only(has_legs)
.is(|s| legs(s).map(|legs| legs.charging_h));

static MOTORING_H: Figure = Figure::new("legs.motoring_h", "… motoring anyway", "h", 2, |s| {
    sum(s, "Time", |leg| leg.purpose == Purpose::Anyway, time)
})
.named("Engine motoring anyway, all legs")
.only(has_legs)
.is(|s| legs(s).map(|legs| legs.motoring_h));

static BANK_AH: Figure = Figure::new("legs.bank_ah", "Into the bank, all legs", "A·h", 0, |s| {
    let into = |name: &str, leg: &LegReport| described(name, "A·h", leg.bank_ah);
    sum(s, "Into the bank in the time", |_| true, into)
})
.only(has_legs)
.is(|s| legs(s).map(|legs| legs.bank_ah));

static LEGS_FUEL_L: Figure =
    Figure::new("legs.fuel_l", "Fuel for charging, all legs", "L", 1, |s| {
        let burnt = |name: &str, leg: &LegReport| described(name, "L", leg.fuel_l);
        sum(s, "Fuel for charging", |_| true, burnt)
    })
    .only(has_legs)
    .is(|s| legs(s).map(|legs| legs.fuel_l));
