//! What an arrangement comes to for a kilowatt-hour, and when it is paid back.

use crate::boat::key;
use crate::decision::arrangements::YearCost;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::arrangement::{BOUGHT, of_year};
use crate::explain::figures::bank::BANK_V;
use crate::explain::figures::daily_run::{ENGINE_HOURS, FUEL_L};
use crate::explain::figures::day::ENGINE_AH;
use crate::explain::figures::year_cost::{TOTAL, WEAR};
use crate::explain::term::{Term, described};
use crate::physics::charging::energy_wh;
use crate::physics::drive::kilo;
use crate::physics::money::{each_kwh, engine_each_kwh, made_up_years};

pub(super) const FIGURES: &[&Figure] = &[&ENGINE_KWH, &USED_KWH, &PAYBACK_YEARS];

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
            described(name, "", year.running()).symbol(symbol)
        };
        let saved = running("A year as it stands, without the purchase", "K_today", &today)
            .less(running("A year with it, without the purchase", "K_then", &then));
        let given = [s.figure(&BOUGHT), saved];
        Explanation::of(Term::of(made_up_years::FORMULA, given))
    },
)
.is(|s| s.outcome()?.payback_years);
