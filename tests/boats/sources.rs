//! Wind, what the water turns, and generators with a mains charger.
//!
//! A mains charger holds its amperes on lithium nearly to the end, so that its
//! hours are ampere-hours over amperes: it carries the house load meanwhile. What
//! it takes is amperes times some 13.6 V for each 12 V block, over 88 %. A small
//! diesel generator burns about 0.33 L for each kW·h at full output, a quarter of
//! that whatever it gives (common practice, no source).

use ampwright_core::analysis::generator::GeneratorReport;
use ampwright_core::analysis::year;
use ampwright_core::boat::{Drawn, When};
use ampwright_core::decision::arrangements::{Kind, Outcome, Purchase};
use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;
use crate::says::Says;

fn generator(says: &Says) -> GeneratorReport {
    says.report.analyses.generator.expect("a generator charges")
}

/// A boat that a generator charges, with so many kilowatts and amperes.
fn on_generator(name: &'static str, kw: f64, charger_a: f64) -> Boat {
    Boat::new(name)
        .choose("shore_rest", "generator")
        .set("genset_kw", kw)
        .set("genset_charger_a", charger_a)
}

/// An arrangement of the comparison; it is that of the year's section to the hour.
fn arrangement(says: &Says, kind: Kind) -> Option<&Outcome> {
    let outcomes = &says.comparison().outcomes;
    let outcome = outcomes.iter().find(|outcome| outcome.kind == kind)?;
    let year = year(&outcome.arrangement.on(&says.sheet));
    says.holds(outcome.sums == year.sums, || {
        format!("{kind:?}: {:?} in place of {:?}", outcome.sums, year.sums)
    });
    Some(outcome)
}

#[test]
fn a_wind_generator_that_covers_the_day() {
    // 6 A are 144 A·h a day of 120: nothing is left, the engine stays off.
    Boat::new("6 A of wind")
        .set("other_wind_a", 6.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            says.between(
                "A·h of wind",
                says.report.analyses.energy.other_ah,
                143.9,
                144.1,
            );
            says.year_hours_between(0.0, 0.5);
            says.year_never_short();
            says.verdict_contains(&["other sources cover"]);
        });
}

#[test]
fn a_wind_generator_beside_the_engine() {
    // 2 A never meet the 4.5 to 5.5 A in use: all 48 A·h go to the loads at once,
    // 72 of 120 are left, at 35 to 60 A 1.2 to 2.06 h.
    Boat::new("2 A of wind")
        .set("other_wind_a", 2.0)
        .check(|says| {
            let energy = &says.report.analyses.energy;
            says.between("A·h used at once", energy.other_direct_ah, 47.9, 48.1);
            says.between("A·h left", energy.rest_ah, 71.9, 72.1);
            says.hours_between(1.15, 2.15);
        });
}

#[test]
fn wind_by_night_and_sun_by_day_at_24_v() {
    // 4 A of wind are 96 A·h, 300 W × 4.5 h × 75 % at 26.3 V 38.5: 134 of 120, but
    // by day more than is used: what goes through the bank comes back nearly whole.
    Boat::new("24 V, wind and sun")
        .choose("bank_nominal_v", "24")
        .set("other_wind_a", 4.0)
        .set("sun_panel_w", 300.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            says.verdict_contains(&["solar and other sources cover"]);
            let short = says.year().sums.covered;
            says.holds(short, || "the year goes short".to_string());
        });
}

#[test]
fn a_towed_generator_helps_only_under_way() {
    // 8 A through 24 h are 192 A·h of 120 on passage; at anchor it hangs still.
    let passage = |name, days: f64| {
        Boat::new(name)
            .set("other_water_a", 8.0)
            .set("rule_motoring_h", 0.0)
            .set("rule_under_way_days_week", days)
    };
    passage("on passage all week", 7.0).check(|says| {
        says.between(
            "A·h left at anchor",
            says.report.analyses.energy.rest_ah,
            119.9,
            120.1,
        );
        says.year_hours_between(0.0, 0.5);
        says.year_never_short();
    });
    // One day of seven: that day's use and some 70 A·h into the bank are spared.
    let anchored = Boat::new("no towed one").set("rule_motoring_h", 0.0);
    let without_h = anchored.answers().year().sums.charging_h;
    passage("on passage one day a week", 1.0).check(|says| {
        let share = says.year().sums.charging_h / without_h;
        says.between("part of the engine hours left", share, 0.72, 0.8);
    });
}

#[test]
fn a_coastal_day_of_six_hours_with_a_hydro_generator() {
    // 10 A for 6 of 24 hours: 60 A·h on each day under way, all of them taken.
    Boat::new("hydro generator along a coast")
        .set("other_water_a", 10.0)
        .set("other_way_h", 6.0)
        .set("rule_under_way_days_week", 7.0)
        .check(|says| {
            let month = &says.year().months[0];
            says.between("A·h a day", month.other_ah_day, 59.9, 60.1);
        });
}

#[test]
fn lithium_charged_by_a_generator() {
    // 120 A·h at 80 A: 1.5 h. 80 × 13.6 / 0.88 = 1.24 kW of 4: 31 %. A full load
    // burns 4 × 0.327 = 1.31 L/h, 31 % of it 1.31 × (0.25 + 0.75 × 0.31) = 0.63:
    // 0.95 L a day.
    on_generator("4 kW, 80 A", 4.0, 80.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            let generator = generator(says);
            says.some_between("h of generator", generator.hours, 1.48, 1.6);
            says.some_between("load, %", generator.load_pct, 29.0, 33.0);
            says.some_between("L a day", generator.fuel_l, 0.88, 1.05);
            says.verdict_contains(&["generator must run"]);
            says.no_danger();
            says.must_not_find("generator_too_small");
            // The same day in, day out: 180 days of 1.5 h.
            let year = says.year();
            says.between("h a year", year.sums.generator_h, 255.0, 300.0);
            says.between("L a year", year.sums.generator_fuel_l, 155.0, 195.0);
            says.holds(year.sums.fuel_l == year.sums.generator_fuel_l, || {
                "the engine burns too".to_string()
            });
        });
}

#[test]
fn a_generator_at_24_v() {
    // 100 A·h at 100 A: 1.0 h; 100 × 27.2 / 0.88 = 3.1 kW of 6: 52 %.
    on_generator("24 V, 6 kW", 6.0, 100.0)
        .choose("bank_nominal_v", "24")
        .set("daily_use_ah", 100.0)
        .check(|says| {
            let generator = generator(says);
            says.some_between("h of generator", generator.hours, 0.98, 1.1);
            says.some_between("load, %", generator.load_pct, 48.0, 55.0);
            says.must_not_find("generator_low_load");
            says.setting_between(GroupCode::ShoreCharger, SettingCode::Current, 99.0, 100.5);
        });
}

#[test]
fn a_generator_too_small_for_its_charger() {
    // 100 A × 14 V / 0.88 are 1.59 kW, and it gives 1: 63 A, 120 / 63 = 1.9 h.
    on_generator("1 kW under 100 A", 1.0, 100.0).check(|says| {
        says.fix("generator_too_small");
        says.some_between("h of generator", generator(says).hours, 1.85, 2.1);
    });
}

#[test]
fn a_quiet_anchorage_allows_an_hour() {
    // 30 A put back 120 A·h in 4 h; in one only 30: the bank runs empty.
    on_generator("one hour a day", 3.0, 30.0)
        .set("genset_hours_day", 1.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.fix("generator_too_long");
            says.some_between("h of generator", generator(says).hours, 3.95, 4.2);
            let year = says.year();
            says.holds(!year.sums.covered, || "the year is covered".to_string());
            let days = year.sums.days_aboard;
            let most_h = 1.0 + 1e-6;
            says.between("h a day", year.sums.generator_h / days, 0.9, most_h);
        });
}

#[test]
fn a_generator_sleeps_at_night() {
    on_generator("quiet from 21 to 8", 4.0, 80.0).check(|says| {
        for month in &says.year().months {
            let nightly = month
                .day
                .hours
                .iter()
                .filter(|hour| hour.hour < 8 || hour.hour >= 21);
            let minutes: f64 = nightly.map(|hour| hour.generator_min).sum();
            says.holds(minutes == 0.0, || format!("{minutes} min at night"));
        }
    });
}

#[test]
fn flooded_lead_on_a_generator() {
    // Lead takes less and less: 400 A·h from 60 to 90 % want longer than the 1.7 h
    // of 80 A, and the generator idles along at low load.
    on_generator("flooded lead, 6 kW", 6.0, 80.0)
        .choose("bank_chemistry", "flooded")
        .check(|says| {
            says.some_between("h of generator", generator(says).hours, 1.8, 5.0);
            says.note("generator_low_load");
        });
}

#[test]
fn frozen_lithium_takes_nothing_from_a_generator_either() {
    on_generator("lithium at −5 °C", 4.0, 80.0)
        .set("bank_temperature_c", -5.0)
        .check(|says| {
            says.danger("management_opens");
            says.must_not_find("generator_not_enough");
            says.holds(generator(says).hours.is_none(), || "it charges".to_string());
        });
}

#[test]
fn a_generator_is_proposed_beside_the_alternator_in_the_tropics() {
    // The bank of 400 A·h takes 200 A: a charger of 150 A, 150 × 14 / 0.88 = 2.39 kW,
    // over 0.75 3.2, so 3.5 kW. 2000 for each, and 10 for each ampere above the 30
    // aboard: 7000 + 1200.
    Boat::new("35 °C")
        .set("space_outside_c", 35.0)
        .set("bank_temperature_c", 32.0)
        .check(|says| {
            let Some(outcome) = arrangement(says, Kind::Generator) else {
                says.holds(false, || "no generator is proposed".to_string());
                return;
            };
            says.between("bought", outcome.bought, 8190.0, 8210.0);
            let bought = |item| outcome.parts.iter().any(|part| part.item == item);
            says.holds(
                bought(Purchase::Generator) && bought(Purchase::MainsCharger),
                || format!("{:?}", outcome.parts),
            );
            // 120 A·h at 150 A.
            says.some_between("h of generator", outcome.generator_h_day, 0.78, 0.9);
            says.holds(outcome.hours_day == Some(0.0), || {
                "the engine runs".to_string()
            });
        });
}

#[test]
fn a_generator_at_48_v_of_its_own_size() {
    // 150 A at 12 V are 37.5 at 48 V, and as many watts: again 3.5 kW.
    Boat::new("48 V")
        .choose("bank_nominal_v", "48")
        .set("reg_current_cap_a", 50.0)
        .set("bank_capacity_ah", 150.0)
        .set("daily_use_ah", 40.0)
        .check(|says| {
            let outcome = arrangement(says, Kind::Generator);
            let hours = outcome.and_then(|outcome| outcome.generator_h_day);
            // 40 A·h at 37.5 A.
            says.some_between("h of generator", hours, 1.05, 1.2);
        });
}

#[test]
fn a_larger_charger_shortens_the_night_at_the_dock() {
    // 10 to 90 % of 400 A·h through 30 A, 5 of them for the house: 12.8 h; 150 A
    // need little more than a sixth of that.
    Boat::new("shore power, 30 A")
        .choose("shore_rest", "shore")
        .check(|says| {
            let outcome = arrangement(says, Kind::LargerMainsCharger);
            let fill_h = outcome.and_then(|outcome| outcome.dock_fill_h);
            says.some_between("h to fill", fill_h, 2.1, 2.8);
        });
}

#[test]
fn the_search_may_buy_a_generator() {
    // Half an hour of noise a day: no panels, no other alternator allowed. 120 A·h
    // in 0.5 h would be 240 A, so none of the sizes up to 150 A gets there; an hour
    // asks for 120 A.
    let mut boat = Boat::new("an hour a day at most").choose("goal_generator", "yes");
    for lever in ["blower", "duct", "pulley", "set_point", "machine", "second"] {
        boat = boat.choose(&format!("goal_{lever}"), "no");
    }
    for lever in ["panels", "bank", "loads", "cap", "straight", "converter"] {
        boat = boat.choose(&format!("goal_{lever}"), "no");
    }
    boat.set("goal_hours", 1.05).check(|says| {
        let plans = says.found().iter().flat_map(|found| &found.plans);
        let best = plans.filter(|plan| plan.meets).map(|plan| plan.hours_day);
        says.some_between("h a day", best.reduce(f64::min), 0.75, 1.05);
    });
}

#[test]
fn a_bank_ten_years_on() {
    // 2 % a year: 320 of 400 A·h are left, 80 % of them usable: 256, and at 120 a
    // day 2.13 days. The day's use is the same: so is about the engine time.
    let new = Boat::new("new").answers();
    Boat::new("ten years old")
        .set("bank_age_years", 10.0)
        .check(|says| {
            let energy = &says.report.analyses.energy;
            says.between("A·h left", energy.bank_ah, 319.9, 320.1);
            says.autonomy_between(2.1, 2.16);
            let (then, now) = (
                says.report.analyses.day.engine_hours.unwrap_or(0.0),
                new.report.analyses.day.engine_hours.unwrap_or(0.0),
            );
            says.between("engine time over that of a new one", then / now, 0.95, 1.1);
        });
}

#[test]
fn no_bank_lasts_for_ever() {
    // 180 days × 120 A·h are 54 full cycles of 400 A·h: 3000 last 55 years, and 15
    // years of the calendar end first. Lead's 500 cycles last 9.3, its 6 years less.
    Boat::new("a lithium bank's life").check(|says| {
        let lasts = says.comparison().outcomes[0].bank_years;
        says.some_between("years", lasts, 15.0, 15.0);
    });
    Boat::new("hard use all the year")
        .set("cost_days", 365.0)
        .set("daily_use_ah", 250.0)
        .set("cost_cycles", 2000.0)
        .check(|says| {
            // 228 cycles a year, and a few more under way: 2000 last 8.8.
            let lasts = says.comparison().outcomes[0].bank_years;
            says.some_between("years", lasts, 8.3, 8.9);
        });
    Boat::new("flooded lead's life")
        .choose("bank_chemistry", "flooded")
        .check(|says| {
            let lasts = says.comparison().outcomes[0].bank_years;
            says.some_between("years", lasts, 6.0, 6.0);
        });
}

#[test]
fn a_watermaker_waits_for_the_engine_through_the_year() {
    // 40 A·h of watermaker in an hour, on top of 60 through the day: in an hour
    // without the engine the boat draws 60 W·h and not a watt of watermaker.
    let mut boat = Boat::new("watermaker on the engine")
        .load_w("refrigerator", 33.0, 24.0)
        .load_w("watermaker", 530.0, 1.0)
        .set("rule_under_way_days_week", 0.0);
    let watermaker = &mut boat.sheet_mut().loads[1].row;
    watermaker.drawn = Drawn::WithEngine;
    watermaker.when = When::Always;
    boat.check(|says| {
        let month = &says.year().months[5];
        let idle = month.day.hours.iter().filter(|hour| hour.engine_min == 0.0);
        let most_w = idle.map(|hour| hour.use_w).fold(0.0, f64::max);
        says.between("W without the engine", most_w, 30.0, 40.0);
        let busiest_w = month.day.hours.iter().map(|hour| hour.use_w);
        says.between("W with it", busiest_w.fold(0.0, f64::max), 200.0, 570.0);
        // (33 × 24 + 530) / 13.16 = 100.5 A·h a day all the same.
        says.between("A·h a day", month.use_ah_day, 97.0, 104.0);
    });
}
