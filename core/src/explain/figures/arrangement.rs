//! What comes of an arrangement; `year_cost` says what a year with it costs.

use crate::analysis::year::YearSums;
use crate::boat::key;
use crate::decision::arrangements::{Outcome, YearCost};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::daily_run::{ENGINE_HOURS, FUEL_L};
use crate::explain::figures::day::{BANK_V, ENGINE_AH};
use crate::explain::figures::terms::told;
use crate::explain::figures::year_cost::{TOTAL, WEAR};
use crate::explain::instant::Instant;
use crate::explain::term::Term;
use crate::physics::charging::energy_wh;
use crate::physics::drive::kilo;
use crate::physics::money::{each_kwh, engine_each_kwh, made_up_years, over_year};
use crate::text::purchase;
use crate::units::Reader;

/// What a year with it takes, and what has to be bought.
pub(super) const TAKEN: &[&Figure] = &[&HOURS_YEAR, &FUEL_YEAR_L, &BOUGHT];

/// What it comes to for a kilowatt-hour, and when it is paid back.
pub(super) const PAID: &[&Figure] = &[&ENGINE_KWH, &USED_KWH, &PAYBACK_YEARS];

pub(super) const NOT_COVERED: &str =
    "The bank runs empty in this year, so it has no cost: see “Through the year”.";
/// What a mean day aboard is the mean of.
const BY_MONTHS: &str =
    "The year by months, hour by hour, over the days aboard: the same as under “Through the year”.";

impl<'a> Instant<'a> {
    /// What comes of the arrangement that is looked at.
    fn outcome(&self) -> Option<&'a Outcome> {
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
            told(&name, unit, a_day).symbol(symbol),
            told("Days aboard a year", "d", days).symbol("N_days"),
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
        told(&purchase(part, &Reader::METRIC), "", part.price).symbol(&format!("K_{number}"))
    });
    Explanation::of(Term::Sum(parts.collect()))
        .note("Each part at the price of your list; what is aboard already is not bought again.")
})
.is(|s| Some(s.outcome()?.bought));

static ENGINE_KWH: Figure = Figure::new(
    "arrangement.engine_kwh",
    "A kW·h from the engine",
    "/kW·h",
    2,
    |s| {
        if s.outcome().and_then(|outcome| outcome.engine_kwh).is_none() {
            return Explanation::none("No engine runs for charging.");
        }
        let energy = [s.figure(&ENGINE_AH).symbol("Q"), s.figure(&BANK_V)];
        let given = [
            s.figure(&FUEL_L),
            s.input(key!(cost.fuel_l)),
            s.figure(&ENGINE_HOURS),
            s.figure(&WEAR),
            Term::of(kilo::FORMULA, [Term::of(energy_wh::FORMULA, energy)]),
        ];
        Explanation::of(Term::of(engine_each_kwh::FORMULA, given))
            .note("Fuel and wear of the day's run, for each kilowatt-hour that it puts back.")
    },
)
.is(|s| s.outcome()?.engine_kwh);

static USED_KWH: Figure = Figure::new(
    "arrangement.used_kwh",
    "A kW·h used aboard, all in",
    "/kW·h",
    2,
    |s| {
        let used_wh = s.outcome().map_or(0.0, |outcome| outcome.sums.use_wh);
        if used_wh <= 0.0 {
            return Explanation::none("Nothing is used.");
        }
        of_year(s, || {
            let energy = s.a_year("Used", "W·h", "E_day", |sums| sums.use_wh);
            Term::of(each_kwh::FORMULA, [s.figure(&TOTAL), energy])
        })
    },
)
.is(|s| s.outcome()?.used_kwh);

static PAYBACK_YEARS: Figure = Figure::new(
    "arrangement.payback_years",
    "Paid back after",
    "years",
    1,
    |s| {
        let Some(costs) = s.boat.costs else {
            return Explanation::default();
        };
        let years = (costs.today.year, costs.outcome.year);
        let (Some(today), Some(then), Some(_)) = (years.0, years.1, costs.outcome.payback_years)
        else {
            return Explanation::none(
                "Never: it saves nothing worth the name in a year, or takes longer than parts last.",
            );
        };
        if costs.outcome.bought <= 0.0 {
            return Explanation::none("Nothing has to be bought.");
        }
        let running = |name: &str, symbol: &str, year: &YearCost| {
            told(name, "", year.running()).symbol(symbol)
        };
        let saved = running("A year as it stands, without the purchase", "K_today", &today)
            .less(running("A year with it, without the purchase", "K_then", &then));
        let given = [s.figure(&BOUGHT), saved];
        Explanation::of(Term::of(made_up_years::FORMULA, given))
    },
)
.is(|s| s.outcome()?.payback_years);
