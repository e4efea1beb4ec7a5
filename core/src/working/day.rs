//! The day: what is used, what the sun gives, what is left to the engine.

use super::Made;
use super::boat::{At, Boat, given, made, told};
use super::expr::{Expr, least, most, num, power, sum};
use crate::worksheet::Basis;

const LISTED: &str = "Added up from the list of loads.";

/// The rows of the list of loads that run at anchor, as energy.
fn rows(boat: &Boat) -> Vec<(Expr, Expr)> {
    let rows = boat.report.energy.rows.iter().enumerate();
    rows.filter(|(_, row)| row.anchor_wh != 0.0)
        .map(|(at, row)| {
            let symbol = format!("E_{}", at + 1);
            let load = if row.name.is_empty() {
                "A load"
            } else {
                &row.name
            };
            let wh = given(&symbol, load, row.anchor_wh, "W·h");
            let (symbol, name) = (format!("f_{}", at + 1), format!("{load}, at night"));
            (wh, given(&symbol, &name, row.night_share_pct, "%"))
        })
        .collect()
}

pub(super) fn bank_v(boat: &Boat) -> Expr {
    boat.worked("V", At::Never, "energy.bank_v", boat.report.energy.bank_v)
}

fn use_ah_leaf(boat: &Boat) -> Expr {
    let ah = boat.report.energy.anchor.use_ah;
    boat.worked("Q_day", At::Never, "anchor.use_ah", ah)
}

pub(super) fn rest_v(boat: &Boat, _: At) -> Option<Made> {
    let bank = &boat.plant.bank;
    let block = given(
        "V_block",
        "One 12 V block at rest, half full, from the table",
        boat.report.energy.bank_v / bank.blocks,
        "V",
    );
    let blocks = given("N", "12 V blocks in series", bank.blocks, "");
    let mut made = made(
        boat.report.energy.bank_v,
        blocks * block,
        "Watt-hours and ampere-hours are turned into each other with it.",
    );
    made.also = &["bank_chemistry", "bank_nominal_v"];
    Some(made)
}

pub(super) fn use_wh(boat: &Boat, _: At) -> Option<Made> {
    let value = boat.report.energy.anchor.use_wh;
    Some(match boat.inputs().daily.basis {
        Basis::Figure => made(value, use_ah_leaf(boat) * bank_v(boat), ""),
        Basis::Listed => {
            let rows = rows(boat).into_iter().map(|(wh, _)| wh).collect();
            made(value, sum(rows), LISTED)
        }
    })
}

pub(super) fn use_ah(boat: &Boat, _: At) -> Option<Made> {
    let day = &boat.report.energy.anchor;
    Some(match boat.inputs().daily.basis {
        Basis::Figure if boat.inputs().daily.saved_pct > 0.0 => made(
            day.use_ah,
            boat.input("daily_use_ah") * (num(1.0) - boat.input("daily_saved_pct")),
            "Less what lighter loads save.",
        ),
        Basis::Figure => made(day.use_ah, boat.input("daily_use_ah"), "As you gave it."),
        Basis::Listed => {
            let wh = boat.worked("E_day", At::Never, "anchor.use_wh", day.use_wh);
            made(day.use_ah, wh / bank_v(boat), LISTED)
        }
    })
}

pub(super) fn night_share(boat: &Boat, _: At) -> Option<Made> {
    let day = &boat.report.energy.anchor;
    let value = day.night_share_pct;
    Some(match boat.inputs().daily.basis {
        Basis::Figure => {
            let share = num(100.0) * boat.input("daily_night_share_pct");
            made(value, share, "As you gave it.")
        }
        Basis::Listed if day.use_wh > 0.0 => {
            let parts = rows(boat).into_iter().map(|(wh, share)| wh * share);
            let night = sum(parts.collect());
            let wh = boat.worked("E_day", At::Never, "anchor.use_wh", day.use_wh);
            made(value, num(100.0) * night / wh, LISTED)
        }
        Basis::Listed => told(Some(value), "Nothing is used."),
    })
}

/// What is used less what the sun gives.
fn left(boat: &Boat) -> Expr {
    let sun_ah = boat.report.energy.sun_ah;
    use_ah_leaf(boat) - boat.worked("Q_sun", At::Never, "energy.sun_ah", sun_ah)
}

pub(super) fn engine_ah(boat: &Boat, _: At) -> Option<Made> {
    let energy = &boat.report.energy;
    if !boat.inputs().engine_charges() {
        return Some(told(
            Some(energy.engine_ah),
            "The engine is not run for charging: shore power puts back what the sun leaves.",
        ));
    }
    Some(made(
        energy.engine_ah,
        most(num(0.0), left(boat)),
        "What the sun leaves, and never less than nothing.",
    ))
}

pub(super) fn usable_ah(boat: &Boat, _: At) -> Option<Made> {
    let window = boat.input("bank_window_high_pct") - boat.input("bank_window_low_pct");
    let mut ah = most(num(0.0), window) * boat.input("bank_capacity_ah");
    let mut note = "";
    let draw_a = boat.report.energy.anchor.use_ah / 24.0;
    if let Some(lead) = boat.inputs().bank.chemistry.lead()
        && draw_a > 0.0
    {
        // Over twenty hours, the time lead is rated at.
        let draw = use_ah_leaf(boat) / num(24.0);
        let rated = num(20.0) * draw / boat.input("bank_capacity_ah");
        let exponent = given("p", "Peukert's exponent", lead.peukert, "");
        ah = ah * least(vec![num(1.0), power(rated, num(1.0) - exponent)]);
        note = "Lead gives less to a draw harder than that of its 20-hour rating (W. Peukert, 1897, from memory).";
    }
    Some(made(boat.report.energy.usable_ah, ah, note))
}

pub(super) fn autonomy(boat: &Boat, _: At) -> Option<Made> {
    let energy = &boat.report.energy;
    Some(match energy.autonomy_days {
        None => told(None, "The sun covers the use: there is no end."),
        Some(days) => {
            let usable = boat.worked("Q_usable", At::Never, "energy.usable_ah", energy.usable_ah);
            made(
                days,
                usable / left(boat),
                "From full to the end of the window.",
            )
        }
    })
}

pub(super) fn need(boat: &Boat, _: At) -> Option<Made> {
    let need_ah = boat.report.day.need_ah;
    let left = boat.worked("Q", At::Never, "energy.engine_ah", need_ah);
    Some(made(
        need_ah,
        left,
        "What is left to the engine has to be put back.",
    ))
}

/// The notes for a run there is none of.
pub(super) fn no_run(hours: Option<f64>) -> Option<Made> {
    match hours {
        None => Some(told(
            None,
            "The run was stepped through a whole day: no run is long enough, or the bank is too small for a day.",
        )),
        Some(0.0) => Some(told(
            Some(0.0),
            "The sun covers the use, or shore power does; the engine need not run.",
        )),
        Some(_) => None,
    }
}

pub(super) const STEPPED: &str = "There is no closed formula: the run is stepped through time, as current and heat change. The mean current is the run's own, so this line ties time and current together and does not replace the stepping.";

pub(super) fn engine_hours(boat: &Boat, _: At) -> Option<Made> {
    let day = &boat.report.day;
    if let Some(none) = no_run(day.engine_hours) {
        return Some(none);
    }
    let need = boat.worked("Q", At::Never, "day.need_ah", day.need_ah);
    let mean_a = day.mean_bank_a.unwrap_or(0.0);
    let mean = given(
        "I_mean",
        "Mean current into the bank, of this run",
        mean_a,
        "A",
    );
    let kept = boat.input("bank_charge_efficiency_pct") * mean;
    Some(made(
        day.engine_hours.unwrap_or(0.0),
        need / (kept + super::held::house(boat)),
        STEPPED,
    ))
}

pub(super) fn marginal_fuel(boat: &Boat, _: At) -> Option<Made> {
    let day = &boat.report.day;
    Some(no_run(day.engine_hours).unwrap_or_else(|| {
        made(
            day.marginal_fuel_l.unwrap_or(0.0),
            super::engine::marginal(boat, day.shaft_kwh),
            "Energy at the shaft is added up along the run.",
        )
    }))
}

pub(super) fn fuel(boat: &Boat, _: At) -> Option<Made> {
    let day = &boat.report.day;
    Some(no_run(day.engine_hours).unwrap_or_else(|| {
        let hours = day.engine_hours.unwrap_or(0.0);
        let time = boat.worked("t", At::Never, "day.engine_hours", hours);
        made(
            day.fuel_l.unwrap_or(0.0),
            super::engine::idle(boat) * time + super::engine::marginal(boat, day.shaft_kwh),
            "What turns the engine, and what the alternator asks on top.",
        )
    }))
}
