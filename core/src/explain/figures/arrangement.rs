//! What comes of an arrangement; `year_cost` says what a year with it costs, `payback`
//! when it is paid back.

use crate::analysis::year::YearSums;
use crate::decision::arrangements::{Outcome, YearCost};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::money::over_year;
use crate::text::purchase;
use crate::units::Reader;

/// What a year with it takes, and what has to be bought.
pub(super) const FIGURES: &[&Figure] = &[&HOURS_YEAR, &FUEL_YEAR_L, &BOUGHT];

const NOT_COVERED: &str =
    "The bank runs empty in this year, so it has no cost: see “Through the year”.";
/// What a mean day aboard is the mean of.
const BY_MONTHS: &str =
    "The year by months, hour by hour, over the days aboard: the same as under “Through the year”.";

impl<'a> Instant<'a> {
    /// What comes of the arrangement that is looked at.
    pub(super) fn outcome(&self) -> Option<&'a Outcome> {
        self.boat.costs.map(|costs| costs.outcome)
    }

    /// A part of what a year costs.
    pub(super) fn year(&self, part: fn(&YearCost) -> f64) -> Option<f64> {
        self.outcome()?.year.as_ref().map(part)
    }

    /// A sum of the year by months, as a mean day aboard over those days.
    pub(super) fn a_year(
        &self,
        name: &str,
        unit: &'static str,
        symbol: &str,
        sum: fn(&YearSums) -> f64,
    ) -> Term {
        let sums = self.outcome().map(|outcome| outcome.sums);
        let sums = sums.unwrap_or_default();
        let days = sums.days_aboard;
        let a_day = sum(&sums) / if days > 0.0 { days } else { 1.0 };
        let name = format!("{name}, the mean of the days aboard");
        let given = [
            described(&name, unit, a_day).symbol(symbol),
            described("Days aboard a year", "d", days).symbol("N_days"),
        ];
        Term::of(over_year::FORMULA, given)
    }
}

/// A formula of a year's cost, where there is one.
pub(super) fn of_year(s: &Instant, term: impl FnOnce() -> Term) -> Explanation {
    match s.year(|year| year.total) {
        Some(_) => Explanation::of(term()),
        None => Explanation::none(NOT_COVERED),
    }
}

/// Engine time for charging in a year.
pub(super) fn hours_a_year(s: &Instant) -> Term {
    s.a_year("Engine time for charging", "h", "t_day", |sums| {
        sums.charging_h
    })
}

/// Fuel of a year.
pub(super) fn litres_a_year(s: &Instant) -> Term {
    s.a_year("Fuel for charging", "L", "B_day", |sums| sums.fuel_l)
}

static HOURS_YEAR: Figure = Figure::new("arrangement.hours_year", "Engine, a year", "h", 0, |s| {
    of_year(s, || hours_a_year(s)).note(BY_MONTHS)
})
.is(|s| s.outcome()?.hours_year);

static FUEL_YEAR_L: Figure = Figure::new("arrangement.fuel_year_l", "Fuel, a year", "L", 0, |s| {
    of_year(s, || litres_a_year(s)).note(BY_MONTHS)
})
.is(|s| s.outcome()?.fuel_year_l);

pub(super) static BOUGHT: Figure = Figure::new("arrangement.bought", "To buy", "", 0, |s| {
    let parts = s.outcome().map_or(&[][..], |outcome| &outcome.parts);
    if parts.is_empty() {
        return Explanation::none("Nothing has to be bought.");
    }
    let parts = parts.iter().enumerate().map(|(at, part)| {
        let number = at + 1;
        described(&purchase(part, &Reader::METRIC), "", part.price).symbol(&format!("K_{number}"))
    });
    Explanation::of(Term::Sum(parts.collect()))
        .note("Each part at the price of your list; what is aboard already is not bought again.")
})
.is(|s| Some(s.outcome()?.bought));
