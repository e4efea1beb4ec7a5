//! The day's ampere-hours close, and day and year tell the same story.

use crate::says::Says;

/// Findings that say why no engine run covers the day.
const CANNOT: &[&str] = &[
    "day_not_covered",
    "cannot_be_charged",
    "bank_is_emptied",
    "bank_too_small",
    "too_slow",
    "converter_locked_out",
    "alternator_voltage_mismatch",
    "management_opens",
    "lithium_frozen",
    "lithium_hot",
    "lead_frozen",
    "lead_hot",
];

pub fn check(says: &Says) {
    sums(says);
    too_slow(says);
    closes(says);
    window(says);
    year(says);
}

/// What the engine has to put back is what is used less what the sun gives;
/// what of the sun goes through a lead bank comes out less.
fn sums(says: &Says) {
    let energy = &says.report.analyses.energy;
    let kept = says.figure("bank_charge_efficiency_pct") / 100.0;
    let (used_ah, sun_ah) = (energy.anchor.use_ah, energy.sun_ah + energy.other_ah);
    let least_ah = (used_ah - sun_ah).max(0.0);
    // What is used by day comes straight from the panels; what is used at night
    // has to fit into the bank's window.
    let window_pct = says.figure("bank_window_high_pct") - says.figure("bank_window_low_pct");
    let fits_ah = window_pct.max(0.0) / 100.0 * energy.bank_ah;
    let by_day_ah = used_ah * (1.0 - energy.anchor.night_share_pct / 100.0);
    // The wind blows at night too.
    let by_day_ah = by_day_ah.max(energy.other_direct_ah);
    let of_use_ah = match says.sheet.inputs.charge_barred() {
        // Cells that must not be charged keep nothing for later.
        Some(_) => energy.sun_direct_ah + energy.other_direct_ah,
        None => (kept * sun_ah).min(by_day_ah + fits_ah),
    };
    let most_ah = (used_ah - of_use_ah).max(0.0);
    let within = energy.rest_ah > 0.99 * least_ah - 0.1 && energy.rest_ah < 1.01 * most_ah + 0.1;
    says.holds(within, || {
        let rest_ah = energy.rest_ah;
        format!("{used_ah:.1} used less {sun_ah:.1} of sun and other sources is told as {rest_ah:.1} A·h")
    });
    let never = says.report.analyses.day.engine_hours.is_none();
    let told = CANNOT.iter().any(|code| says.has(code));
    says.holds(!never || told, || {
        "no engine run covers the day, and no finding says why".to_string()
    });
    for code in ["day_not_covered", "cannot_be_charged"] {
        says.holds(never || !says.has(code), || {
            format!(
                "{code} is found, and the day takes {:?} h",
                says.report.analyses.day.engine_hours
            )
        });
    }
}

/// An alternator that is said to give nothing gives nothing.
fn too_slow(says: &Says) {
    let start_a = says.report.analyses.run.start_a;
    says.holds(!says.has("too_slow") || start_a < 1.0, || {
        format!("too slow to give anything, and {start_a:.1} A at the start")
    });
    let never = says
        .report
        .analyses
        .day
        .engine_hours
        .is_some_and(|hours| hours > 0.0);
    says.holds(!(says.has("too_slow") && never), || {
        format!(
            "too slow to give anything, and {:?} h a day are enough",
            says.report.analyses.day.engine_hours
        )
    });
}

/// A day's run that ends at “charge to”: over it the bank keeps what the loads
/// take in the hours without it, and it begins where these left the bank.
/// Only without sun, with the day's mean draw, one alternator's worth of a run.
fn closes(says: &Says) {
    let day = &says.report.analyses.day;
    let (Some(hours), Some(mean_a), Some(from_pct)) =
        (day.engine_hours, day.mean_bank_a, day.from_pct)
    else {
        return;
    };
    let inputs = &says.sheet.inputs;
    let plain = says.at_default("run_house_load_a")
        && says.report.analyses.energy.sun_ah == 0.0
        && says.report.analyses.energy.other_ah == 0.0
        && !inputs.feeds_start_back();
    if !plain || hours <= 0.0 {
        return;
    }
    let kept = says.figure("bank_charge_efficiency_pct") / 100.0;
    let load_a = day.need_ah / 24.0;
    let in_ah = mean_a * kept * hours;
    let out_ah = if says.report.analyses.run.engine_loads.is_empty() {
        load_a * (24.0 - hours)
    } else {
        // What runs with the engine is drawn in the run.
        day.need_ah - says.report.analyses.plant.house_ah(3600.0 * hours)
    };
    says.holds((in_ah - out_ah).abs() < 0.02 * out_ah + 0.2, || {
        format!(
            "the day keeps {in_ah:.1} A·h in {hours:.2} h, and the rest of it takes {out_ah:.1}"
        )
    });
    // Several runs a day begin higher.
    let capacity_ah = says.report.analyses.energy.bank_ah;
    let wanted_pct = says.figure("run_to_pct") - 100.0 * out_ah / capacity_ah;
    says.holds(from_pct > wanted_pct - 1.5, || {
        format!(
            "the day's run begins at {from_pct:.1} %; without it the bank falls to {wanted_pct:.1}"
        )
    });
}

/// A day that goes below the lowest state of charge says so.
fn window(says: &Says) {
    let low_pct = says.figure("bank_window_low_pct");
    if let Some(from_pct) = says.report.analyses.day.from_pct {
        let below = from_pct < low_pct - 1.0;
        // A bank that is ice there says so first.
        let told = says.has("day_below_window") || says.has("lead_frozen");
        says.holds(!below || told, || {
            format!(
                "the day falls to {from_pct:.0} %, below {low_pct:.0} %, and no finding says so"
            )
        });
        let above = from_pct > low_pct + 1.0;
        says.holds(!above || !says.has("day_below_window"), || {
            format!(
                "the day falls to {from_pct:.0} %, not below {low_pct:.0} %, and a finding says so"
            )
        });
    }
}

/// Neither says “never” where the other one runs, nor is either far from the
/// other where they speak of the same days.
fn year(says: &Says) {
    let year = says.year();
    let charging_h_day = |m: &ampwright_core::analysis::year::MonthReport| {
        (m.engine_h_week - m.motoring_h_week) / 7.0
    };
    let short_ah = year
        .months
        .iter()
        .map(|m| m.short_ah_day)
        .fold(0.0, f64::max);
    let most_h = year.months.iter().map(charging_h_day).fold(0.0, f64::max);
    match says.report.analyses.day.engine_hours {
        None => {
            // The year's rule starts the engine before the bank is ice.
            let started_before = says.has("lead_frozen") && year.trouble.is_none();
            says.holds(most_h < 0.1 || short_ah > 0.5 || started_before, || {
                format!("no engine run covers the day, and {most_h:.2} h a day cover the year's")
            });
        }
        Some(hours) => {
            // The same sun every month, no motoring that charges too, and nothing
            // that turns only under way.
            let inputs = &says.sheet.inputs;
            let same_sources = inputs.rule.under_way_days_week == 0.0
                || inputs.other_under_way_a() == inputs.other_at_anchor_a();
            let same_days = same_sources
                && !year.months_differ
                && year.months.iter().all(|m| m.motoring_h_week == 0.0);
            if same_days && hours > 0.3 && says.sheet.inputs.engine_charges() && short_ah < 0.5 {
                says.holds(most_h > 0.4 * hours && most_h < 2.5 * hours, || {
                    format!("{hours:.2} h in the day, {most_h:.2} h a day in the year")
                });
            }
            if same_days && hours == 0.0 {
                says.holds(most_h < 0.1, || {
                    format!("no engine in the day, {most_h:.2} h a day in the year")
                });
            }
        }
    }
}
