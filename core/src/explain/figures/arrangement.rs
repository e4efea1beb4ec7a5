//! What comes of an arrangement; `year_cost` says what a year with it costs.

use crate::decision::arrangements::{Outcome, YearCost};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::daily_run::{ENGINE_HOURS, FUEL_L};
use crate::explain::figures::day::{BANK_V, ENGINE_AH, USE_WH};
use crate::explain::figures::terms::told;
use crate::explain::figures::year_cost::{TOTAL, WEAR};
use crate::explain::inputs::cost;
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

pub(super) const NOT_COVERED: &str = "No engine run covers the day, so a year with it has no cost.";

impl<'a> Instant<'a> {
    /// What comes of the arrangement that is looked at.
    fn outcome(&self) -> Option<&'a Outcome> {
        self.boat.costs.map(|costs| costs.outcome)
    }

    /// A part of what a year costs.
    pub(super) fn year(&self, part: fn(&YearCost) -> f64) -> Option<f64> {
        self.outcome()?.year.as_ref().map(part)
    }

    /// A figure of a day, over the days aboard in a year.
    pub(super) fn a_year(&self, a_day: Term) -> Term {
        Term::of(over_year::FORMULA, [a_day, self.input(cost::DAYS)])
    }
}

/// A formula of a year's cost, where there is one.
pub(super) fn of_year(s: &Instant, term: impl FnOnce() -> Term) -> Explanation {
    match s.year(|year| year.total) {
        Some(_) => Explanation::of(term()),
        None => Explanation::none(NOT_COVERED),
    }
}

static HOURS_YEAR: Figure = Figure::new("arrangement.hours_year", "Engine, a year", "h", 0, |s| {
    if s.report().analyses.day.engine_hours.is_none() {
        return Explanation::none(NOT_COVERED);
    }
    Explanation::of(s.a_year(s.figure(&ENGINE_HOURS).symbol("t_day")))
})
.is(|s| s.outcome()?.hours_year);

static FUEL_YEAR_L: Figure = Figure::new("arrangement.fuel_year_l", "Fuel, a year", "L", 0, |s| {
    if s.report().analyses.day.fuel_l.is_none() {
        return Explanation::none(NOT_COVERED);
    }
    Explanation::of(s.a_year(s.figure(&FUEL_L).symbol("B_day")))
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
            s.input(cost::FUEL_L),
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
        if s.report().analyses.energy.anchor.use_wh <= 0.0 {
            return Explanation::none("Nothing is used.");
        }
        of_year(s, || {
            let energy = s.a_year(s.figure(&USE_WH).symbol("E_day"));
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
