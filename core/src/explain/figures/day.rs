//! The day: what is used, what the sun gives, what is left to the engine.

use crate::boat::{Basis, key};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::bank::BANK_V;
use crate::explain::figures::notes::{AS_GIVEN, LISTED};
use crate::explain::figures::sun;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::charging::{
    autonomy_days, charge_ah, day_ah, energy_wh, mean_draw_a, part_wh, peukert_share, rest_ah,
    saved_ah, usable_ah,
};
use crate::physics::drive::percent;

pub(super) const FIGURES: &[&Figure] = &[
    &USE_AH,
    &USE_WH,
    &NIGHT_SHARE_PCT,
    &BANK_V,
    &sun::SUN_WH,
    &sun::SUN_FULL_HOURS,
    &sun::SUN_AH,
    &OTHER_AH,
    &ENGINE_AH,
    &BANK_AH,
    &USABLE_AH,
    &AUTONOMY_DAYS,
    &NEED_AH,
];

pub(super) static USE_AH: Figure = Figure::new("energy.anchor.use_ah", "Used", "A·h", 0, use_ah_of)
    .named("Used a day")
    .is(|s| Some(s.report().analyses.energy.anchor.use_ah));

fn is_listed(s: &Instant) -> bool {
    s.inputs().daily.basis == Basis::Listed
}

fn use_ah_of(s: &Instant) -> Explanation {
    if is_listed(s) {
        let given = [s.figure(&USE_WH).symbol("E_day"), s.figure(&BANK_V)];
        Explanation::of(Term::of(charge_ah::FORMULA, given)).note(LISTED)
    } else if s.inputs().daily.saved_pct > 0.0 {
        let given = [s.input(key!(daily.use_ah)), s.input(key!(daily.saved_pct))];
        Explanation::of(Term::of(saved_ah::FORMULA, given)).note("Less what lighter loads save.")
    } else {
        Explanation::of(s.input(key!(daily.use_ah)).symbol("Q_given")).note(AS_GIVEN)
    }
}

pub(super) static USE_WH: Figure =
    Figure::new("energy.anchor.use_wh", "… as energy", "W·h", 0, |s| {
        if is_listed(s) {
            let rows = rows(s).into_iter().map(|(energy, _)| energy).collect();
            return Explanation::of(Term::Sum(rows)).note(LISTED);
        }
        let given = [s.figure(&USE_AH).symbol("Q_day"), s.figure(&BANK_V)];
        Explanation::of(Term::of(energy_wh::FORMULA, given))
    })
    .named("Used a day, as energy")
    .is(|s| Some(s.report().analyses.energy.anchor.use_wh));

/// Energy and night share of each load that uses any.
fn rows(s: &Instant) -> Vec<(Term, Term)> {
    let rows = s.report().analyses.energy.rows.iter().enumerate();
    rows.filter(|(_, row)| row.anchor_wh != 0.0)
        .map(|(at, row)| {
            let name = if row.name.is_empty() {
                "A load"
            } else {
                &row.name
            };
            let at_night = format!("{name}, at night");
            let number = at + 1;
            (
                described(name, "W·h", row.anchor_wh).symbol(&format!("E_{number}")),
                described(&at_night, "%", row.night_share_pct).symbol(&format!("f_{number}")),
            )
        })
        .collect()
}

static NIGHT_SHARE_PCT: Figure = Figure::new(
    "energy.anchor.night_share_pct",
    "… of that at night",
    "%",
    0,
    |s| {
        if !is_listed(s) {
            let given = [
                s.input(key!(daily.night_share_pct)).symbol("f_night"),
                Term::Number(1.0),
            ];
            return Explanation::of(Term::of(percent::FORMULA, given)).note(AS_GIVEN);
        }
        if s.report().analyses.energy.anchor.use_wh <= 0.0 {
            return Explanation::none("Nothing is used.");
        }
        let nights = rows(s).into_iter();
        let nights = nights.map(|(energy, night)| Term::of(part_wh::FORMULA, [energy, night]));
        let given = [
            Term::Sum(nights.collect()),
            s.figure(&USE_WH).symbol("E_day"),
        ];
        Explanation::of(Term::of(percent::FORMULA, given)).note(LISTED)
    },
)
.named("Used at night")
.is(|s| Some(s.report().analyses.energy.anchor.night_share_pct));

static OTHER_AH: Figure = Figure::new("energy.other_ah", "From other sources", "A·h", 0, |s| {
    let given = [s.input(key!(other.wind_a)).symbol("I_other")];
    Explanation::of(Term::of(day_ah::FORMULA, given))
        .note("The mean current at anchor, day and night.")
})
.only(|boat| boat.inputs().has_other_sources())
.is(|s| Some(s.report().analyses.energy.other_ah));

/// What sun and other sources leave.
fn rest(s: &Instant) -> Term {
    let energy = &s.report().analyses.energy;
    let direct = described(
        "Solar used by the loads at once, hour by hour",
        "A·h",
        energy.sun_direct_ah,
    );
    let stored = described(
        "Solar stored in the bank for the other hours, less its charge efficiency",
        "A·h",
        energy.sun_stored_ah,
    );
    if energy.other_ah <= 0.0 {
        return Term::of(rest_ah::FORMULA, [s.figure(&USE_AH), direct, stored]);
    }
    let other_direct = described(
        "The other sources' used by the loads at once",
        "A·h",
        energy.other_direct_ah,
    );
    let other_stored = described(
        "The other sources' stored in the bank, less its charge efficiency",
        "A·h",
        energy.other_stored_ah,
    );
    let given = [
        s.figure(&USE_AH),
        Term::Sum(vec![
            direct.symbol("Q_sun,direct"),
            other_direct.symbol("Q_other,direct"),
        ]),
        Term::Sum(vec![
            stored.symbol("Q_sun,stored"),
            other_stored.symbol("Q_other,stored"),
        ]),
    ];
    Term::of(rest_ah::FORMULA, given)
}

pub(super) static ENGINE_AH: Figure = Figure::new(
    "energy.engine_ah",
    "Left to the engine",
    "A·h",
    0,
    |s| {
        if s.inputs().generator_charges() {
            return Explanation::none("The engine is not run for charging: the generator puts back what is left.");
        }
        if !s.inputs().engine_charges() {
            return Explanation::none("The engine is not run for charging: shore power puts back what solar does not cover.");
        }
        Explanation::of(rest(s))
            .note("What solar does not cover, hour by hour: what the loads use at once counts in full, what goes through the bank counts less its charge efficiency.")
            .inputs(&[key!(bank.charge_efficiency_pct)])
    },
)
.is(|s| Some(s.report().analyses.energy.engine_ah));

static BANK_AH: Figure = Figure::new(
    "energy.bank_ah",
    "The bank holds, at its age",
    "A·h",
    0,
    |s| Explanation::of(s.bank_ah()),
)
.only(|boat| boat.inputs().bank.age_years > 0.0)
.is(|s| Some(s.report().analyses.energy.bank_ah));

static USABLE_AH: Figure = Figure::new(
    "energy.usable_ah",
    "Usable from the bank",
    "A·h",
    0,
    |s| {
        let window = [
            s.input(key!(bank.window_high_pct)),
            s.input(key!(bank.window_low_pct)),
            s.bank_ah(),
        ];
        let [high, low, capacity] = window;
        let lead = s.inputs().bank.chemistry.lead();
        let Some(lead) = lead.filter(|_| s.report().analyses.energy.anchor.use_ah > 0.0) else {
            let given = [high, low, capacity, Term::Number(1.0)];
            return Explanation::of(Term::of(usable_ah::FORMULA, given));
        };
        let draw = Term::of(mean_draw_a::FORMULA, [s.figure(&USE_AH)]);
        let given = [draw, capacity.clone(), described("Peukert's exponent", "", lead.peukert)];
        let share = Term::of(peukert_share::FORMULA, given);
        Explanation::of(Term::of(usable_ah::FORMULA, [high, low, capacity, share]))
            .note("Lead gives less to a draw harder than that of its 20-hour rating (W. Peukert, 1897, from memory).")
    },
)
.is(|s| Some(s.report().analyses.energy.usable_ah));

static AUTONOMY_DAYS: Figure = Figure::new(
    "energy.autonomy_days",
    "Without the engine",
    "days",
    1,
    |s| {
        if s.report().analyses.energy.autonomy_days.is_none() {
            return Explanation::none("Solar and other sources cover the use: there is no end.");
        }
        let given = [s.figure(&USABLE_AH), rest(s)];
        Explanation::of(Term::of(autonomy_days::FORMULA, given))
            .note("From full to the end of the window.")
    },
)
.is(|s| s.report().analyses.energy.autonomy_days);

pub(super) static NEED_AH: Figure = Figure::new("day.need_ah", "To put back", "A·h", 0, |s| {
    Explanation::of(s.figure(&ENGINE_AH).symbol("Q"))
        .note("What is left to the engine has to be put back.")
})
.is(|s| Some(s.report().analyses.day.need_ah));
