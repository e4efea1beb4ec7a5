//! Lead banks whose acid is frozen.
//!
//! Acid of a density of 1.15 kg/L freezes at −15 °C and of 1.20 at −27 (US Army
//! TM 5-1185); a flooded battery goes from 1.12 flat to 1.265 full (common
//! practice, no source): one fifth charged, 1.149 kg/L, it is ice at −15 °C.
//! Ice takes no charge, and a battery that is charged frozen can burst (common
//! practice, no source).

use ampwright_core::text;
use ampwright_core::units::Reader;

use crate::boat::Boat;

fn flooded(name: &'static str, celsius: f64, from_pct: f64) -> Boat {
    Boat::new(name)
        .choose("bank_chemistry", "flooded")
        .set("bank_temperature_c", celsius)
        .set("space_outside_c", celsius)
        .set("daily_use_ah", 60.0)
        .set("run_from_pct", from_pct)
}

#[test]
fn a_frozen_bank_takes_no_charge() {
    flooded("flooded, frozen at 15 %", -20.0, 15.0)
        .set("bank_window_low_pct", 10.0)
        .check(|says| {
            says.danger("lead_frozen");
            says.finding_says(
                "lead_frozen",
                &["takes no charge", "−20 °C", "15 %", "Thaw"],
            );
            says.must_not_find("target_not_reached");
            says.must_not_find("bank_limit_binds");
            says.cannot_charge();
            says.verdict_contains(&["frozen"]);
            says.verdict_lacks("must run");
            says.verdict_lacks("more than a day");
            let run = &says.report.analyses.run;
            says.holds(run.minutes_to_target.is_none(), || {
                format!("{:?} min to the target", run.minutes_to_target)
            });
            let most_a = run.series.iter().map(|moment| moment.bank_a);
            says.between("A into the ice", most_a.fold(0.0, f64::max), 0.0, 0.0);
            // The bank is thawed one day: what is fitted has to bear that.
            let thawed = flooded("flooded, thawed", -20.0, 60.0).answers();
            let (cold, warm) = (
                says.report.analyses.belts[0].clone(),
                &thawed.report.analyses.belts[0],
            );
            says.between(
                "current the belt is told, over that of the thawed bank",
                cold.top.amperes / warm.top.amperes,
                0.9,
                1.2,
            );
        });
}

#[test]
fn frozen_where_a_day_without_engine_leaves_it() {
    // 60 A·h of 100 a day, charged to 60 %: less than 15 % is left when the engine
    // starts, ice at −14 °C (1.142 kg/L). The charging run is from 50 %, where it
    // is not (1.193 kg/L, −25 °C).
    flooded("100 A·h, run down every day at −14 °C", -14.0, 50.0)
        .choose("bank_chemistry", "agm")
        .set("bank_capacity_ah", 100.0)
        .set("run_to_pct", 60.0)
        .check(|says| {
            says.danger("lead_frozen");
            says.finding_says("lead_frozen", &["takes no charge"]);
            says.cannot_charge();
        });
}

#[test]
fn well_charged_it_does_not_freeze() {
    // 400 A·h from 60 to 90 %: no ice at −20 °C, and it charges, slowly.
    flooded("flooded at −20 °C, kept above 60 %", -20.0, 60.0)
        .set("bank_window_low_pct", 55.0)
        .check(|says| {
            says.must_not_find("lead_frozen");
            let start_a = says.report.analyses.run.start_a;
            says.holds(start_a > 5.0, || format!("{start_a:.1} A at the start"));
        });
}

#[test]
fn it_would_freeze_if_it_were_let_down_so_far() {
    // The engine finds it at 60 %: it charges; but 10 % is allowed, and that is ice.
    flooded("flooded at −20 °C, allowed down to 10 %", -20.0, 60.0)
        .set("bank_window_low_pct", 10.0)
        .check(|says| {
            says.danger("lead_frozen");
            says.finding_says("lead_frozen", &["lowest you allow"]);
            let charged = says.report.analyses.day.engine_hours;
            says.holds(charged.is_some_and(|hours| hours > 0.0), || {
                format!("{charged:?} h a day, though it is not frozen then")
            });
        });
}

#[test]
fn lithium_has_nothing_to_freeze() {
    Boat::new("lithium at −20 °C")
        .set("bank_temperature_c", -20.0)
        .check(|says| {
            says.must_not_find("lead_frozen");
            says.cannot_charge();
        });
}

#[test]
fn what_no_arrangement_mends_is_said_once() {
    flooded("flooded, frozen at 15 %, arrangements", -20.0, 15.0).check(|says| {
        let left_out = &says.comparison().left_out;
        let told = text::arrangements::not_proposed(left_out, &Reader::METRIC);
        says.holds(left_out.len() > 2 && told.len() <= 2, || {
            format!(
                "{} left out in {} sentences: {told:?}",
                left_out.len(),
                told.len()
            )
        });
    });
}
