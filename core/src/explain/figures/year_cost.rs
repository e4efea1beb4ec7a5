//! What a year with an arrangement costs, part by part.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::arrangement::{BOUGHT, hours_a_year, litres_a_year, of_year};
use crate::explain::term::Term;
use crate::physics::ageing::{bank_years, cycle_years};
use crate::physics::money::{bank_a_year, capital_recovery, priced, wear_per_hour, year_total};
use crate::physics::sources::ECONOMY;

pub(super) const FIGURES: &[&Figure] = &[
    &WEAR,
    &FUEL,
    &ENGINE,
    &GENERATOR,
    &SHORE,
    &BANK_YEARS,
    &BANK,
    &CAPITAL,
    &TOTAL,
];

pub(super) static WEAR: Figure = Figure::new(
    "inner.arrangement.wear_hour",
    "An hour of engine, besides fuel",
    "",
    2,
    |s| {
        let given = [
            s.input(key!(cost.service)),
            s.input(key!(cost.service_h)),
            s.input(key!(cost.overhaul)),
            s.input(key!(cost.overhaul_h)),
        ];
        Explanation::of(Term::of(wear_per_hour::FORMULA, given))
            .note("Service and overhaul, each its price over the hours it serves.")
    },
);

static FUEL: Figure = Figure::new("arrangement.year.fuel", "A year: fuel", "", 0, |s| {
    of_year(s, || {
        let litre = s.input(key!(cost.fuel_l)).symbol("K_L");
        Term::of(priced::FORMULA, [litres_a_year(s), litre])
    })
})
.is(|s| s.year(|year| year.fuel));

static ENGINE: Figure = Figure::new("arrangement.year.engine", "A year: engine", "", 0, |s| {
    of_year(s, || {
        let wear = s.figure(&WEAR).symbol("w");
        Term::of(priced::FORMULA, [hours_a_year(s), wear])
    })
})
.is(|s| s.year(|year| year.engine));

static GENERATOR: Figure = Figure::new(
    "arrangement.year.generator",
    "A year: generator",
    "",
    0,
    |s| {
        of_year(s, || {
            let hours = s.a_year("Generator", "h", "t_gen,day", |sums| sums.generator_h);
            let wear = s.input(key!(genset.wear_h)).symbol("K_gen,h");
            Term::of(priced::FORMULA, [hours, wear])
        })
        .note("Service and wear for each hour it runs.")
    },
)
.is(|s| s.year(|year| year.generator));

static SHORE: Figure = Figure::new(
    "arrangement.year.shore",
    "A year: shore power",
    "",
    0,
    |s| {
        of_year(s, || {
            let kwh = s.a_year("From shore power", "kW·h", "E_shore", |sums| {
                sums.shore_kwh
            });
            let each = s.input(key!(cost.shore_kwh)).symbol("K_shore,kWh");
            Term::of(priced::FORMULA, [kwh, each])
        })
    },
)
.is(|s| s.year(|year| year.shore));

static BANK_YEARS: Figure = Figure::new(
    "arrangement.year.bank_years",
    "The bank lasts",
    "years",
    1,
    |s| {
        of_year(s, || {
            let given = [
                s.input(key!(cost.cycles)),
                s.input(key!(bank.capacity_ah)),
                s.a_year("Used", "A·h", "Q_day", |sums| sums.use_ah),
            ];
            let by_cycles = Term::of(cycle_years::FORMULA, given);
            Term::of(
                bank_years::FORMULA,
                [by_cycles, s.input(key!(cost.calendar_years))],
            )
        })
        .note("Until its full cycles or its years are over, whichever is first.")
    },
)
.is(|s| s.year(|year| year.bank_years));

static BANK: Figure = Figure::new(
    "arrangement.year.bank",
    "A year: wear of the bank",
    "",
    0,
    |s| {
        of_year(s, || {
            let years = s.figure(&BANK_YEARS).symbol("N_bank");
            Term::of(bank_a_year::FORMULA, [s.input(key!(cost.bank)), years])
        })
        .note("Its price over the years that it lasts.")
    },
)
.is(|s| s.year(|year| year.bank));

static CAPITAL: Figure = Figure::new(
    "arrangement.year.capital",
    "A year: what was bought",
    "",
    0,
    |s| {
        of_year(s, || {
            let given = [s.input(key!(cost.interest_pct)), s.input(key!(cost.years))];
            let recovery = Term::of(capital_recovery::FORMULA, given);
            Term::of(
                priced::FORMULA,
                [s.figure(&BOUGHT).symbol("K_buy"), recovery],
            )
        })
        .note("The purchase as an equal cost each year, with interest (capital recovery factor).")
    },
)
.source(ECONOMY)
.is(|s| s.year(|year| year.capital));

pub(super) static TOTAL: Figure =
    Figure::new("arrangement.year.total", "A year, all in", "", 0, |s| {
        of_year(s, || {
            let given = [
                s.figure(&FUEL),
                s.figure(&ENGINE),
                s.figure(&GENERATOR),
                s.figure(&SHORE),
                s.figure(&BANK),
                s.figure(&CAPITAL),
            ];
            Term::of(year_total::FORMULA, given)
        })
    })
    .is(|s| s.year(|year| year.total));
